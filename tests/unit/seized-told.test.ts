import { describe, expect, it } from 'vitest';
import quayVan from '../../scenes/quay-van.json';
import {
  createLife,
  dragReadings,
  freshState,
  KMH,
  readingOf,
  roadDrag,
  slidesAt,
} from '../../sim/index.ts';
import { dragNotes, lettersText } from '../../sim/workshop/index.ts';
import { putState } from '../../ui/record/bench.ts';
import { dragOf } from '../../ui/record/derive.ts';
import { Session } from '../../ui/session.ts';
import { ParkDesk } from '../../ui/stations/park/desk.ts';
import { verdict } from '../../ui/stations/park/words.ts';
import { near } from '../near.ts';

/**
 * A van whose strut is so many teeth too long on new linings. 0.8 · 0.4 · 1 150 kg · 9.81 m/s² /2 · 0.27 m = 487 N·m
 * slide the wheel; tooth 3 stands 0.132 mm inside (both by the stand-alone model of tests/reference/drag.test.ts).
 */
function van(tooth: number): Session {
  const s = Session.of(quayVan, true);
  s.do(putState, { ...freshState(s.brake), tooth });
  return s;
}

describe('a seized brake', () => {
  it('is known as such before its drum has turned', () => {
    const s = van(3);
    // Reduced motion: the drum on the stage stands while nothing is pressed.
    expect(s.instant().turning).toBe(0);
    near(slidesAt(s.brake.vehicle) / 1000, 487.2, { rel: 1e-3 }, 'slides');
    expect(Math.abs(dragOf(s.rig, s.shown).torqueOnDrum)).toBeGreaterThan(487e3);
    expect(Math.abs(dragOf(van(2).rig, van(2).shown).torqueOnDrum)).toBe(0);
    expect(dragOf(van(5).rig, van(5).shown).yields?.part).toBe('lever nose');
  });

  it('is not parked, although it stands: no tick, whatever its lever does', () => {
    for (const [tooth, says] of [
      [3, /577.N·m turn the drum/],
      [5, /more than its strut can bear/],
    ] as const) {
      const desk = new ParkDesk(van(tooth));
      const told = verdict(desk.hill(), desk.rule, desk.nose, desk.jam);
      expect([told.mark, told.text]).toEqual(['cross', 'Jammed, not parked']);
      expect(told.margin).toMatch(says);
    }
    const sound = new ParkDesk(van(2));
    expect(sound.jam).toBe(null);
    expect(verdict(sound.hill(), sound.rule, sound.nose, sound.jam).text).not.toMatch(/Jammed/);
  });

  it('is told nothing of driving it: the torque that would turn it, and why no more', () => {
    const { rig, state } = van(3);
    const list = dragReadings(rig, state, 50 * KMH);
    expect(readingOf(list, 'dragTorque').value).toBeGreaterThan(487);
    for (const key of ['dragPower', 'dragForce', 'dragShare', 'dragSettles'] as const)
      expect(readingOf(list, key).value).toBeNaN();
    expect(dragNotes(roadDrag(rig, state, 50 * KMH)).join()).toMatch(/seized/);
    expect(dragNotes(roadDrag(van(5).rig, van(5).state, 50 * KMH)).join()).toMatch(/No force/);
    expect(dragNotes(roadDrag(rig, van(2).state, 50 * KMH))).toEqual([]);
  });

  it('has the clearance that its life’s chart has: so far inside, not what squeezed linings leave', () => {
    for (const tooth of [0, 2, 3]) {
      const s = van(tooth);
      const list = s.readings(s.rest);
      const life = createLife(s.rig, s.state, s.brake.duties[0], { distance: 0, askLocks: false });
      const chart = life.rows[0]?.clearance ?? Number.NaN;
      for (const key of ['restClearanceMean', 'restClearanceFront', 'restClearanceRear'] as const)
        near(readingOf(list, key).value, chart, { abs: 0.002 }, `tooth ${tooth}, ${key}`);
    }
    near(readingOf(van(3).readings(van(3).rest), 'restClearanceMean').value, -0.132, { abs: 5e-4 });
  });
});

it('letters that the tables do not lead to are said to be others, and which of the two is taken', () => {
  const { brake } = van(0);
  const friction = 0.5;
  const side = (s: typeof brake.shoes.front) => ({ ...s, lining: { ...s.lining, friction } });
  // The middle of G, 0.45 to 0.55 (SAE J866), which this van's fade of a twentieth leaves in G.
  const own = { ...brake, shoes: { front: side(brake.shoes.front), rear: side(brake.shoes.rear) } };
  expect(lettersText(own, 'gf')).toMatch(
    /grip as GG would.* You typed GF: its first letter is taken/,
  );
  expect(lettersText(own, 'GG')).not.toMatch(/You typed/);
  expect(lettersText(own, '0.5')).not.toMatch(/You typed/);
});
