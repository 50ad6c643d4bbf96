import { orderWants as words } from '../../../sim/words/en.ts';
import { brakeOf } from '../../record/derive.ts';
import { opened } from '../../record/guest.ts';
import { intention } from '../../record/intention.ts';
import { type Moment, withPart } from '../../record/moment.ts';
import { tryWorn } from '../drum-off/part.ts';
import { MOST_TICKED, type OrderPart, placeIn } from './part.ts';
import { type OrderPage, stepsOn } from './plan.ts';

/** What can be wanted of the work in its order: beside its part, since nobody wants it before it is opened. */

const partOf = (m: Moment): OrderPart => m.parts.order;
const put = (m: Moment, change: Partial<OrderPart>): Moment => withPart(m, 'order', change);

/** Opens a page of the work where it was left. */
export const openOrder = intention(
  'order.page',
  (m: Moment, page: OrderPage) => put(opened(m, 'order'), { page }),
  (_before, after) => words.pageOfInOrder(after.parts.order.page),
);

/** Goes to a step; what the steps before it take off is off. */
export const goToStep = intention(
  'order.go',
  (m: Moment, at: number) => {
    const { page, at: all } = partOf(m);
    const last = stepsOn(brakeOf(m), page).length - 1;
    const next = Math.max(0, Math.min(last, Math.round(at)));
    return next === placeIn(m) ? m : put(m, { at: { ...all, [page]: next } });
  },
  (_before, after) => words.stepOf(placeIn(after) + 1, partOf(after).page),
);

/** A worn brake as a guest: a new one has no tooth to be backed off. */
export const tryWornHere = intention(
  'order.worn',
  (m: Moment) => put(opened(tryWorn.does(m), 'order'), { page: 'back', back: 0 }),
  words.aWornBrakeToTry,
);

/** A check ticked, or not after all. */
export const tickCheck = intention(
  'order.tick',
  (m: Moment, key: string) => {
    const { ticked } = partOf(m);
    const name = key.slice(0, 30);
    const next = ticked.includes(name) ? ticked.filter((t) => t !== name) : [...ticked, name];
    return next.length > MOST_TICKED ? m : put(m, { ticked: next });
  },
  words.aCheck,
);

/** Steps of the adjuster backed off through the hole; negative: on again. */
export const backOffHere = intention(
  'order.back-off',
  (m: Moment, by: number) => {
    const { back } = partOf(m);
    const next = Math.max(0, Math.min(m.bench.state.tooth, back + Math.round(by)));
    return next === back ? m : put(m, { back: next });
  },
  (_before, after) => words.back(partOf(after).back),
);
