import { describe, expect, it } from 'vitest';
import quayVan from '../../scenes/quay-van.json';
import { putStanding } from '../../ui/record/bench.ts';
import { show } from '../../ui/record/guest.ts';
import { Session } from '../../ui/session.ts';
import { DrumDesk } from '../../ui/stations/drum-off/desk.ts';
import { drumOff } from '../../ui/stations/drum-off/index.ts';
import { caughtFlash, nearer } from '../../ui/stations/drum-off/pull.ts';
import { deskOf } from '../../ui/stations/station.ts';
import { near } from '../near.ts';

const FRAME = 1 / 60;
function second(still = false): { s: Session; desk: DrumDesk } {
  const s = Session.of(quayVan, still);
  s.do(show, 'drum-off');
  s.do(putStanding, 'Second set');
  return { s, desk: deskOf(DrumDesk, s) };
}
/** Pulls, and gives how far it has come in each picture of a second and a half. */
function pull({ s, desk }: ReturnType<typeof second>): { slide: number; flash: number }[] {
  desk.attempt('pull');
  return Array.from({ length: 90 }, () => {
    s.frame(FRAME);
    return { slide: desk.slide(), flash: desk.flash };
  });
}

describe('a drum that is pulled', () => {
  it('slides for 0.6 s, faster and faster, stops at once where the lip catches, and that flashes', () => {
    const van = second();
    const seen = pull(van);
    const moves = seen.findIndex((p) => p.slide >= 6) + 1;
    near(moves * FRAME, 0.6, { abs: 1.5 * FRAME });
    // The lip stands 6 mm off the lining's edge: slide of the second set in the teaching tables.
    near(seen.at(-1)?.slide ?? 0, 6, { abs: 0.5 });
    const steps = seen.slice(1, moves).map((p, i) => p.slide - (seen[i]?.slide ?? 0));
    for (const [i, step] of steps.slice(1, -1).entries())
      expect(step).toBeGreaterThan(steps[i] ?? 0);
    expect(seen[moves]?.slide).toBe(seen.at(-1)?.slide);
    expect(seen.slice(0, moves - 1).every((p) => p.flash === 0)).toBe(true);
    expect(seen[moves]?.flash).toBeGreaterThan(0.9);
    expect(seen.at(-1)?.flash).toBe(0);
    expect(van.desk.off).toBe(false);
  });

  it('is told what came of it when it has stopped, not before', () => {
    const { s, desk } = second();
    desk.attempt('pull');
    s.frame(0.1);
    expect(desk.found).toBe('Pulled straight …');
    for (let n = 0; n < 60; n++) s.frame(FRAME);
    expect(desk.found).toContain('held by the lip');
  });

  it('freed, comes off: the rim leaves the picture when it has gone', () => {
    const van = second();
    van.desk.backOff(5);
    const seen = pull(van);
    expect(van.desk.off).toBe(true);
    expect(seen.every((p) => p.flash === 0)).toBe(true);
    expect(seen.at(-1)?.slide).toBeGreaterThan(50);
    expect(drumOff.without?.(van.s)).toEqual(['drum']);
  });

  it('with reduced motion is at its end at once, and nothing flashes', () => {
    const seen = pull(second(true));
    expect(new Set(seen.map((p) => p.slide)).size).toBe(1);
    near(seen[0]?.slide ?? 0, 6, { abs: 0.5 });
    expect(seen.every((p) => p.flash === 0)).toBe(true);
  });

  it('looks as much larger as what comes nearer does, and flashes where it is caught alone', () => {
    // Seen from 600 mm, what has come 6 mm nearer is 1 % larger, 100 mm nearer a fifth: 600/594, 600/500.
    near(nearer(6), 1.0101, { abs: 1e-4 });
    near(nearer(100), 1.2, { rel: 1e-12 });
    const { s, desk } = second();
    expect(caughtFlash(s.brake, desk.fit, 40, 0.5)).toHaveLength(2);
    desk.backOff(5);
    expect(caughtFlash(s.brake, desk.fit, 40, 0.5)).toHaveLength(0);
  });
});
