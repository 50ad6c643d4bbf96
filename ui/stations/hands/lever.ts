import { type LeverInHand, leverForm, leverInHand, type Point } from '../../../sim/index.ts';
import { putState } from '../../record/bench.ts';
import { type HandsRecord, pullTo } from '../../record/hands.ts';
import type { Session } from '../../session.ts';
import { placeNow } from './places.ts';

/** The hand of a desk. */
interface OfDesk {
  readonly session: Session;
  readonly record: HandsRecord;
  readonly rate: number;
  readonly limit: number;
}

/**
 * The toothed lever in the hand: pulled up its slot off its teeth, then turned along its row. What is turned is the
 * strut's tooth at once, since nothing but the hand holds its length then.
 */
export class LeverHand {
  readonly #desk: OfDesk;

  constructor(desk: OfDesk) {
    this.#desk = desk;
  }

  /** Null where it is not held. */
  get now(): LeverInHand | null {
    const { limit, rate, record, session } = this.#desk;
    const { hold, part } = record;
    if (!hold || part !== 'adjuster lever') return null;
    const { brake, state } = session;
    const now = session.instant();
    const reach = hold.to[1] - placeNow(brake, now, part, hold.at)[1];
    return leverInHand(brake, now, state.condition.leverSpring, rate, reach, limit);
  }

  /** Keys: up its slot by a way of the hand, mm, and, off its teeth, along the row by teeth. */
  pull(teeth: number, up: number): void {
    const { record, session } = this.#desk;
    const { hold } = record;
    if (!hold) return;
    const [x, y] = hold.to;
    const { tooth } = session.state;
    const goes = this.now?.free ? tooth + teeth >= 0 && tooth + teeth <= hold.turn : false;
    this.goTo([x + (goes ? teeth * this.#pitch : 0), y + up]);
  }

  /** The hand goes to a place, and the lever with it: back as far as there are teeth, on to where it was taken. */
  goTo(to: Point): void {
    const { session } = this.#desk;
    const { hold } = this.#desk.record;
    if (!hold) return;
    session.do(pullTo, to, hold.turn);
    if (!this.now?.free) return;
    const { state } = session;
    const from = placeNow(session.brake, session.instant(), 'adjuster lever', hold.at);
    const by = Math.round((to[0] - from[0]) / this.#pitch);
    const tooth = Math.max(0, Math.min(hold.turn, state.tooth + by));
    if (tooth !== state.tooth) session.do(putState, { ...state, tooth });
  }

  /** Of its row of teeth, mm. */
  get #pitch(): number {
    const form = leverForm(this.#desk.session.brake);
    return form ? form.toothAngle * form.toothRadius : 0;
  }
}
