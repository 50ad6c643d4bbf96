import * as v from 'valibot';
import {
  type BrakeState,
  type FirstPresses,
  PRESS,
  presetTooth,
  pressUntilSilent,
} from '../../../sim/index.ts';
import { brakeOf, rigOf } from '../../record/derive.ts';
import { Kept, KeptFor } from '../../record/kept.ts';
import type { Moment } from '../../record/moment.ts';
import type { Part } from '../../record/part.ts';
import { fittingOf, handsOf } from '../new-shoes/fitting.ts';
import { type OrderPage, offAt, orderPages, stepsOn, withOff } from './plan.ts';

/** How far the work has been taken: the open page, the step of each, and what was looked at. */
export interface OrderPart {
  readonly page: OrderPage;
  readonly at: Readonly<Record<OrderPage, number>>;
  /** Checks that were ticked: "upper 1". */
  readonly ticked: readonly string[];
  /** Steps of the adjuster backed off through the hole. */
  readonly back: number;
}

/** More is not asked. */
export const MOST_TICKED = 200;
const count = (most: number) => v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(most));
const place = count(20);

export const NOT_BEGUN: OrderPart = {
  page: 'apart',
  at: { back: 0, apart: 0, together: 0, set: 0, bed: 0 },
  ticked: [],
  back: 0,
};

export const orderPart: Part<OrderPart> = {
  anew: true,
  layers: {},
  initial: () => NOT_BEGUN,
  shown,
  schema: v.strictObject({
    page: v.picklist(orderPages),
    at: v.strictObject({ back: place, apart: place, together: place, set: place, bed: place }),
    ticked: v.pipe(v.array(v.pipe(v.string(), v.maxLength(30))), v.maxLength(MOST_TICKED)),
    back: count(1e5),
  }),
};

const partOf = (m: Moment): OrderPart => m.parts.order;

/** The open step's place: a link may hold one that this brake has not. */
export const placeIn = (m: Moment, page: OrderPage = partOf(m).page): number =>
  Math.min(partOf(m).at[page], stepsOn(brakeOf(m), page).length - 1);

const presses = new KeptFor<BrakeState, FirstPresses>();

/**
 * New shoes as they are set: sizes from New shoes, the tooth that its gauge asks for, then pressed until
 * silent. The drum is on.
 */
export function setUp(m: Moment): {
  readonly preset: BrakeState;
  /** The same with the strut right back, as new shoes go in. */
  readonly back: BrakeState;
  pressed(): FirstPresses;
} {
  const brake = brakeOf(m);
  const rig = rigOf(m);
  const shoes = m.parts['new-shoes'];
  const hands = handsOf(brake, { ...shoes, aside: 0, cable: 'home', bedded: 0, drumOn: true });
  const fitting = fittingOf(rig);
  const tooth = presetTooth(fitting.rows(hands), shoes.wanted)?.tooth ?? 0;
  const preset = fitting.state({ ...hands, tooth });
  const back = fitting.state({ ...hands, tooth: 0 });
  return {
    preset,
    back,
    pressed: () => presses.of(preset, () => pressUntilSilent(rig, preset, PRESS)),
  };
}

const kept = new KeptFor<BrakeState, Kept<BrakeState>>();

function shown(m: Moment): BrakeState {
  const { page, back } = partOf(m);
  const brake = brakeOf(m);
  const at = placeIn(m);
  if (page === 'set' || page === 'bed') {
    const up = setUp(m);
    return page === 'set' && at <= stepsOn(brake, page).indexOf('silent')
      ? up.preset
      : up.pressed().state;
  }
  const { state } = m.bench;
  return kept
    .of(state, () => new Kept())
    .of([brake, page, at, back], () => {
      const off = withOff(brake, state, offAt(brake, page, at));
      return page === 'back' ? { ...off, tooth: Math.max(0, state.tooth - back) } : off;
    });
}
