import { expect, it } from 'vitest';
import { driveLife } from '../../../sim/index.ts';
import { putState } from '../../../ui/record/bench.ts';
import { readMoment } from '../../../ui/record/record.ts';
import { plainMoment } from '../../../ui/record/start.ts';
import { quay } from '../../brakes.ts';

it('a brake that was driven until a lining is gone is kept as it is; one worn deeper than its lining is refused', () => {
  const { rig, brake, state: fresh } = quay();
  const life = driveLife(rig, fresh, brake.duties[0], { stopAtLimit: false });
  expect(life.end).toBe('worn through');
  const state = life.state();
  const { thicknessNew } = brake.shoes.front.lining;
  // The life ends a little past the lining's whole thickness: within what it places its end to.
  const most = Math.max(...state.wear.front);
  expect(most).toBeGreaterThanOrEqual(thicknessNew);
  const read = readMoment(putState.does(plainMoment(), state));
  expect(read.ok ? [] : read.wrong).toEqual([]);
  const deeper = {
    ...state,
    wear: { ...state.wear, front: state.wear.front.map((w) => w + 0.01) },
  };
  const refused = readMoment(putState.does(plainMoment(), deeper));
  expect(refused.ok ? '' : refused.wrong[0]?.path).toBe('bench.state.wear.front');
});
