import { expect, it } from 'vitest';
import { readings } from '../../../sim/index.ts';
import { AWAY, restOf, rigOf, startOf, withoutDrum } from '../../../ui/record/derive.ts';
import { plainMoment } from '../../../ui/record/start.ts';

it('with the drum off no figure is told that is measured against it', () => {
  const rig = rigOf(plainMoment());
  const { brake } = rig;
  const on = startOf(brake);
  const off = { ...on, drumRadius: AWAY * brake.drum.radiusMax };
  const told = (state: typeof on): string[] => {
    const rest = restOf(rig, state);
    return withoutDrum(brake, state, readings(brake, state, rest, rest)).map((r) => r.key);
  };
  const without = told(off);
  expect(without.filter((k) => /clearance|drum/i.test(k))).toEqual([]);
  expect(without).toContain('strutForce');
  expect(told(on).filter((k) => !without.includes(k))).toContain('drumDiameter');
  // A drum worn to its mark is still a drum.
  expect(told({ ...on, drumRadius: brake.drum.radiusMax })).toEqual(told(on));
});
