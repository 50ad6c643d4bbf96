import { expect, it } from 'vitest';
import { Announcer } from '../../ui/app/announcer.ts';
import type { Happening } from '../../ui/session.ts';

const FRAME = 0.1;
const click = (tooth: number): Happening => ({
  kind: 'click',
  distance: 0,
  tooth,
  text: `Click: tooth ${tooth}`,
});

/** All lines that came to stand in the live region, in their order; the pedal and the events as told at each 0.1 s. */
function lines(
  seconds: number,
  pedal: (t: number) => number,
  clicks: (t: number) => Happening[] = () => [],
): string[] {
  let events: readonly Happening[] = [];
  const announcer = new Announcer({ pedal: pedal(0), events });
  const out: string[] = [];
  let before = '';
  for (let i = 0; i * FRAME < seconds; i++) {
    const t = i * FRAME;
    events = [...events, ...clicks(t)];
    const text = announcer.hear(t, { pedal: pedal(t), events });
    if (text !== before && text !== '') out.push(text);
    before = text;
  }
  return out;
}
const at = (t: number, when: number): boolean => Math.abs(t - when) < FRAME / 2;

it('tells a press, a click in it and the release once each', () => {
  const pedal = (t: number) => (t > 1 && t < 6 ? 40 : 0);
  const clicks = (t: number) => (at(t, 1.2) ? [click(3)] : []);
  expect(lines(12, pedal, clicks)).toEqual([
    'Click: tooth 3',
    'Pedal pressed: 40 bar',
    'Pedal released',
  ]);
});

it('tells a drag where it stops, not on its way', () => {
  const pedal = (t: number) => (t < 1 ? 0 : t < 4 ? Math.round((t - 1) * 10) : t < 8 ? 30 : 0);
  expect(lines(14, pedal)).toEqual(['Pedal pressed: 30 bar', 'Pedal released']);
});

it('tells a short press with its release', () => {
  const pedal = (t: number) => (t > 1 && t < 1.35 ? 40 : 0);
  expect(lines(6, pedal)).toEqual(['Pedal pressed to 40 bar and released']);
});

it('tells the same again when it happens again', () => {
  const pedal = (t: number) => ((t > 1 && t < 1.35) || (t > 8 && t < 8.35) ? 40 : 0);
  const short = 'Pedal pressed to 40 bar and released';
  expect(lines(14, pedal)).toEqual([short, short]);
});

it('tells many clicks in a row no faster than they can be spoken, the last of them always', () => {
  const clicks = (t: number) => (t < 4 ? [click(Math.round(t / FRAME))] : []);
  const told = lines(10, () => 0, clicks);
  expect(told.length).toBeLessThanOrEqual(5);
  expect(told.at(-1)).toBe('Click: tooth 39');
});

it('tells nothing of what stood when the page opened', () => {
  expect(lines(6, () => 40)).toEqual([]);
  expect(lines(6, (t) => (t < 3 ? 40 : 0))).toEqual(['Pedal released']);
});

it('waits with a press while the brake is seen slowly: what it does comes first', () => {
  const announcer = new Announcer({ pedal: 0, events: [] });
  const out: string[] = [];
  let events: readonly Happening[] = [];
  for (let t = 0; t < 8; t += FRAME) {
    if (at(t, 2)) events = [click(4)];
    const paceNow = t > 1 && t < 1.9 ? 50 : 1;
    const text = announcer.hear(t, { pedal: t > 0.9 ? 40 : 0, events, paceNow });
    if (text && text !== out.at(-1)) out.push(text);
  }
  expect(out).toEqual(['Click: tooth 4', 'Pedal pressed: 40 bar']);
});

it('tells the station that was opened once, and not where the focus went there', () => {
  const told = (arrives: boolean): string[] => {
    const announcer = new Announcer({ pedal: 0, events: [], place: 'Apply' });
    const out: string[] = [];
    for (let i = 0; i < 60; i++) {
      const place = i < 10 ? 'Apply' : 'Park';
      const text = announcer.hear(i * FRAME, { pedal: 0, events: [], place });
      if (arrives && i === 11) announcer.arrived('Park');
      if (text !== '' && out.at(-1) !== text) out.push(text);
    }
    return out;
  };
  expect(told(false)).toEqual(['Park']);
  expect(told(true)).toEqual([]);
});
