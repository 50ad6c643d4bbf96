import { toeForce } from '../balance/build.ts';
import { pedalFrom } from '../brake/pedal.ts';
import type { Brake } from '../brake/types.ts';
import type { LifeRow } from './life-types.ts';
import type { Plan } from './press-plan.ts';
import type { Wearing } from './wearing.ts';

/** What a row tells beside the press. */
interface Told extends Pick<LifeRow, 'at' | 'drag'> {
  /** Temperature of the drum at which the clearance is told, °C. */
  readonly cold: number;
  /** The hottest that it has been since the row before, °C. */
  readonly hottest: number;
}

/** A row of the chart: the brake at rest, and one press of the duty's first kind, forward. */
export function rowOf(
  brake: Brake,
  w: Wearing,
  plan: Plan,
  { at, cold, hottest, drag }: Told,
): LifeRow {
  const clearance = w.restGap(cold);
  plan.press(w, w.temperature);
  const { work } = w;
  const [front, rear] = w.pistons;
  const push = (toeForce(work, front) + toeForce(work, rear)) / 2;
  return {
    distance: w.distance,
    at,
    clearance,
    liningFront: w.thinnest('front'),
    liningRear: w.thinnest('rear'),
    brakeFactor: push > 0 && plan.drag > 0 ? plan.drag / push : Number.NaN,
    tooth: w.tooth,
    temperature: Math.max(hottest, w.temperature),
    pedalTravel: pedalFrom(brake, front.travel, rear.travel, plan.pressure).total,
    drumRadius: w.drumRadius,
    lip: w.drumRadius - brake.drum.lipRadius,
    drag,
    state: w.state(),
  };
}
