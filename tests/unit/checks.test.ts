import { describe, expect, it } from 'vitest';
import {
  type Axle,
  axleWith,
  BAR,
  faultChanges,
  firstTouch,
  freshState,
  pedalAt,
  releaseTime,
  standingState,
  type WheelBrake,
  withFault,
} from '../../sim/index.ts';
import {
  type ExaminationId,
  examinations,
  examine,
  faults,
  parted,
} from '../../sim/workshop/index.ts';
import { tablesQuay } from '../brakes.ts';
import { near } from '../near.ts';

const { rig, brake } = tablesQuay();
const worn: WheelBrake = { rig, state: standingState(rig, 'Worn-in') };
const fresh: WheelBrake = { rig, state: freshState(brake) };
const with_ = (id: keyof typeof faultChanges, on = worn): WheelBrake =>
  withFault(on, faultChanges[id]);
const found = (a: Axle, id: ExaminationId, name: string) => {
  const f = examine(a, id).find((o) => o.name === name);
  if (!f) throw new Error(`no "${name}" in ${id}`);
  return f.kind === 'number' ? f.value : f.says;
};

describe('pressure of the first touch', () => {
  it('is the springs’ threshold: 5.3 bar new, 5.9 worn-in, half of it with half the springs', () => {
    near(firstTouch(fresh) / BAR, 5.3, { abs: 0.1 }, 'new');
    near(firstTouch(worn) / BAR, 5.9, { abs: 0.15 }, 'worn-in');
    near(firstTouch(with_('weak springs')) / BAR, 5.9 / 2, { abs: 0.1 }, 'weak');
    near(firstTouch(with_('strong springs')) / BAR, 5.9 * 1.5, { abs: 0.15 }, 'strong');
  });
  it('cups that rub by 100 N more ask for 100 N over the bore’s area more: 3.5 bar', () => {
    const later = firstTouch(with_('sluggish pistons')) - firstTouch(worn);
    near(later, 100 / ((Math.PI / 4) * 19.05 ** 2), { rel: 0.01 });
  });
  it('friction and linings do not move it; what drags already has none', () => {
    near(firstTouch(with_('glazed')), firstTouch(worn), { abs: 0.1 * BAR });
    expect(firstTouch(with_('kept pull'))).toBe(0);
  });
});

describe('time of release', () => {
  it('goes with one over what the springs have left on the toe: half a second when sound', () => {
    expect(releaseTime(worn)).toBe(0.5);
    // Moments about the pin: springs of 155 N at 139 and 12 mm over it, the toe at 156: 150 N; less
    // 100 N of the cups a third is left.
    near(
      releaseTime(with_('sluggish pistons', fresh)),
      (0.5 * 150) / 50,
      { rel: 0.15 },
      'sluggish',
    );
    near(releaseTime(with_('weak springs')), 1, { rel: 0.05 }, 'weak');
    near(releaseTime(with_('strong springs')), 0.5 / 1.5, { rel: 0.05 }, 'strong');
  });
  it('does not end while pressure stays, or where the cups hold as much as the springs push', () => {
    expect(releaseTime(with_('hose'))).toBe(Number.POSITIVE_INFINITY);
    const stuck = { ...worn.state, condition: { ...worn.state.condition, cupExtra: 200 } };
    expect(releaseTime({ rig, state: stuck })).toBe(Number.POSITIVE_INFINITY);
  });
});

describe('the pedal pumped quickly', () => {
  it('rises by what is still out of the gaps after 0.4 s, seen from one seized wheel on', () => {
    const sound = axleWith(worn, null);
    const one = { left: worn, right: with_('seized short') };
    near(pedalAt(one, 40 * BAR).total, 28.3, { abs: 0.25 });
    // Less 4 mm of free play and 4 · 120 · 4 / (π/4 · 20.64²) of the circuit, times exp(−0.4 / 0.5).
    const circuit = (4 * 120 * 4) / ((Math.PI / 4) * 20.64 ** 2);
    const rise = (total: number): number => (total - 4 - circuit) * Math.exp(-0.8);
    near(Number(found(sound, 'pump', 'pumped quickly up by')), rise(18.4), { abs: 0.1 }, 'sound');
    near(Number(found(one, 'pump', 'pumped quickly up by')), rise(28.3), { abs: 0.1 }, 'one');
    expect(parted(examine(sound, 'pump'), examine(one, 'pump')).map((f) => f.name)).toContain(
      'pumped quickly up by',
    );
  });
});

it('a groove comes on late and all at once, and shows on the pads', () => {
  const a = axleWith(worn, faultChanges.groove);
  expect(found(a, 'press', 'right, comes on')).toBe('late, all at once');
  expect(found(a, 'press', 'left, comes on')).toBe('smoothly');
  expect(found(a, 'off', 'right, pads')).toBe('grooved');
});

it('of all 666 pairs of faults and the sound van none is left without a check that parts it', () => {
  const vans = [null, ...faults].map((f) => {
    const axle = axleWith(worn, f);
    const all = examinations.map((e) => examine(axle, e.id, f?.allWheels));
    return { name: f?.id ?? 'sound', all };
  });
  const alike: string[] = [];
  let pairs = 0;
  vans.forEach((a, i) => {
    for (const b of vans.slice(0, i)) {
      pairs++;
      const parts = a.all.some((found, k) => {
        const other = b.all[k] ?? [];
        return parted(found, other).length > 0 || parted(other, found).length > 0;
      });
      if (!parts) alike.push(`${a.name} and ${b.name}`);
    }
  });
  expect(pairs).toBe(666);
  expect(alike).toEqual([]);
});
