import {
  balance,
  createRig,
  type DrumInHand,
  drumInHand,
  type Hand,
  handForce,
  type Instant,
  type LeverInHand,
  type LipFit,
  type Lock,
  leverForm,
  type MotionPress,
  type Point,
  pullOfHand,
  type Removal,
  type Rig,
  type RimHand,
  removal,
  restingFrom,
  type Side,
  sentBack,
} from '../../../sim/index.ts';
import { putState } from '../../record/bench.ts';
import {
  chooseHand,
  grab,
  grabSecond,
  type HandPart,
  type HandsRecord,
  type Hold,
  handParts,
  letGoHand,
  liftFinger,
  pullSecond,
  pullTo,
  secondParts,
  takeDrum,
} from '../../record/hands.ts';
import { Kept, KeptFor } from '../../record/kept.ts';
import type { Session } from '../../session.ts';
import { distance, nearAngle } from '../../stage/geometry.ts';
import { LeverHand } from './lever.ts';
import { handsOn } from './make.ts';
import { placeNow, spun, unplaced } from './places.ts';

/** A bare hand: its spring, N/mm, and the most it pulls, N. */
const RATE = 5;
export const LIMIT = 200;
/** Arms of the bar that makes it stronger. */
export const BAR_ARMS = 3;

/** What is derived from hands in the brake: forces for the moving brake, places on the stage, readings. */
export class HandsDesk {
  readonly session: Session;
  readonly #hands = new KeptFor<Hold, Kept<readonly Hand[]>>();
  readonly #rims = new KeptFor<Hold, Kept<RimHand>>();
  readonly #removal = new Kept<Removal>();
  readonly #home = new Kept<Instant>();
  readonly #other = new Kept<Rig>();
  readonly #lever: LeverHand;

  constructor(session: Session) {
    this.session = session;
    this.#lever = new LeverHand(this);
  }

  get record(): HandsRecord {
    return this.session.moment.hands;
  }
  get limit(): number {
    return this.record.tool ? LIMIT * BAR_ARMS : LIMIT;
  }
  get rate(): number {
    return this.record.tool ? RATE * BAR_ARMS : RATE;
  }

  /** What can be taken hold of now: no drum that is off. */
  get parts(): readonly HandPart[] {
    const lever = leverForm(this.session.brake) !== null;
    return handParts.filter(
      (p) => (!p.startsWith('drum') || !this.record.drumOff) && (p !== 'adjuster lever' || lever),
    );
  }

  get #now(): Removal {
    const { rig, state, moment } = this.session;
    const { held } = moment.bench;
    return this.#removal.of([rig, state, held], () => removal(rig, state, held));
  }

  /** What holds the drum on its brake, or keeps it off; null: it comes off and goes on. */
  get lock(): Lock | null {
    return this.#now.heldBy;
  }

  /** Teeth to wind the adjuster back until a drum that is off goes on again; null: none would help. */
  get back(): number | null {
    return this.#now.backOff.teeth;
  }

  windBack(): void {
    const { state } = this.session;
    const { back } = this;
    if (back) this.session.do(putState, { ...state, tooth: state.tooth - back });
  }

  /** The brake let go: with the drum off too, where shoes that stand far out press on none. */
  get home(): Instant {
    const { rig, state, rest } = this.session;
    if (!this.record.drumOff) return rest;
    return this.#home.of([rig, state], () =>
      balance(rig, state, { pressure: 0, turning: 0, drumOff: true }),
    );
  }

  /** What the hands do to the moving brake. */
  acts({ pressure }: MotionPress): MotionPress {
    const { record, session } = this;
    const { part, hold, second, drumOff } = record;
    const cable = session.station === 'park' ? session.moment.parts.park.cable : 0;
    const press: MotionPress = { pressure, turning: 0, cable, drumOff };
    if (part === 'drum') {
      const rim = hold ? { rim: this.#rim(hold) } : {};
      return {
        ...press,
        coasts: true,
        ...rim,
        ...(hold && second ? { hands: this.#of(hold) } : {}),
      };
    }
    // Off its studs and on them again the drum moves no shoe in this plane: what it does is a sum of its own.
    if (part === 'drum pulled' || part === 'drum rocked') return press;
    // Lifted off its teeth the lever moves no shoe: what it does to the strut stands in the tooth.
    return hold && part !== 'adjuster lever' ? { ...press, hands: this.#of(hold) } : press;
  }

  #rim(hold: Hold): RimHand {
    const { rate, limit } = this;
    return this.#rims
      .of(hold, () => new Kept())
      .of([rate], () => ({
        ...{ radius: Math.hypot(...hold.at), angle: hold.turn, rate, limit, damped: true },
      }));
  }

  #of(hold: Hold): readonly Hand[] {
    const { part, second } = this.record;
    const { brake } = this.session;
    return this.#hands
      .of(hold, () => new Kept())
      .of([this.rate, part, second, brake], () => {
        const { limit, rate } = this;
        const other = second ? handsOn(brake, second.part, second, rate, limit) : [];
        return [...handsOn(brake, part, hold, rate, limit), ...other];
      });
  }

  /** Where a part is held when no place is chosen, as it stands in the reference pose, mm. */
  usual(part: HandPart): Point {
    const { shoes, parkingLever, drum } = this.session.brake;
    const { front, rear } = shoes;
    switch (part) {
      case 'front shoe':
      case 'both toes':
      case 'front piston':
        return front.toe;
      case 'rear shoe':
      case 'rear piston':
        return rear.toe;
      case 'strut':
        return [
          (front.strutSeat[0] + rear.strutSeat[0]) / 2,
          (front.strutSeat[1] + rear.strutSeat[1]) / 2,
        ];
      case 'adjuster lever':
        // The row of teeth, from the pin.
        return [0, -(leverForm(this.session.brake)?.toothRadius ?? 0)];
      case 'parking lever':
      case 'cable':
        return parkingLever.hook;
      case 'drum pulled':
      case 'drum rocked': {
        // At the front shoe's side, where the rim is.
        const r = drum.radiusNew + drum.rim / 2;
        return [-r, 0];
      }
      case 'drum': {
        const r = drum.radiusNew + drum.rim / 2;
        return spun([-0.77 * r, 0.64 * r], -this.session.instant().drumAngle);
      }
    }
  }

  /** Takes hold of the chosen part, where the hand is now: nothing is pulled yet. */
  take(part: HandPart = this.record.part, at: Point = this.usual(part)): void {
    const { session } = this;
    const now = session.instant();
    const along = part === 'drum pulled' || part === 'drum rocked';
    const turn = along ? 0 : part === 'adjuster lever' ? now.tooth : now.drumAngle;
    session.do(grab, part, at, placeNow(session.brake, now, part, at), turn);
  }

  /** A place of the stage taken hold of; the place is of the drawing, which may make more of the movement. */
  takeAt(part: HandPart, drawn: Instant, at: Point): void {
    const { brake } = this.session;
    const { part: chosen } = this.record;
    const both = chosen === 'both toes' && part === 'front shoe';
    const along = part === 'drum' && (chosen === 'drum pulled' || chosen === 'drum rocked');
    const taken = both ? 'both toes' : along ? chosen : part;
    this.take(taken, unplaced(brake, drawn, taken, at));
  }

  /** A second finger takes hold beside the first; whether there is anything for it. */
  takeSecond(part: HandPart, drawn: Instant, at: Point): boolean {
    const second = secondParts.find((p) => p === part);
    if (!second) return false;
    const { brake } = this.session;
    const place = unplaced(brake, drawn, second, at);
    const to = placeNow(brake, this.session.instant(), second, place);
    this.session.do(grabSecond, second, place, to);
    return this.record.second?.part === second;
  }

  /** How linings and lip stand to each other. */
  get fit(): LipFit {
    return this.#now.fit;
  }

  /** A drum that is pulled off its studs, or rocked, in the hand; null where it is not. */
  get drum(): DrumInHand | null {
    const { hold, part } = this.record;
    if (!hold || (part !== 'drum pulled' && part !== 'drum rocked')) return null;
    const { limit, rate } = this;
    const at = part === 'drum pulled' ? null : hold.at[0] < 0 ? 'front' : 'rear';
    const way = Math.max(0, hold.turn);
    return drumInHand(this.session.brake, this.#now, { way, rate, limit, at });
  }

  /** The hand goes so far from where it took the drum, mm; off, the drum is off. */
  #drumTo(way: number): void {
    const { hold } = this.record;
    if (!hold) return;
    const far = Math.max(0, way);
    this.session.do(pullTo, [hold.at[0], hold.at[1] - far], far);
    if (this.drum?.off) this.session.do(takeDrum, true);
  }

  /** Pulls by so much more, N to the right and up; takes hold first. A drum is turned by as much along its rim. */
  pull(right: number, up: number): void {
    if (!this.record.hold) this.take();
    const { hold } = this.record;
    if (!hold) return;
    if (this.record.part === 'drum') {
      const more = (right === 0 ? up : -right) / (this.rate * Math.hypot(...hold.at));
      this.turnTo(hold.turn + more);
      return;
    }
    const [x, y] = hold.to;
    if (this.drum) {
      this.#drumTo(hold.turn + (right === 0 ? -up : right) / this.rate);
      return;
    }
    if (this.record.part === 'adjuster lever') {
      this.#lever.pull(Math.sign(right), up / this.rate);
      return;
    }
    this.session.do(pullTo, this.#reached([x + right / this.rate, y + up / this.rate]), 0);
  }

  /** A hand goes no farther than it can pull. */
  #reached(to: Point): Point {
    const { hold, part } = this.record;
    if (!hold) return to;
    const from = placeNow(this.session.brake, this.session.instant(), part, hold.at);
    const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
    const far = Math.hypot(dx, dy);
    const most = this.limit / this.rate;
    return far > most ? [from[0] + (dx * most) / far, from[1] + (dy * most) / far] : to;
  }

  /** Pull to the right as it is set, N. */
  get level(): number {
    const { hold, part } = this.record;
    if (!hold) return 0;
    const { brake } = this.session;
    const now = this.session.instant();
    if (part === 'drum') {
      const off = (now.drumAngle - hold.turn) * this.rate * Math.hypot(...hold.at);
      return Math.max(-this.limit, Math.min(this.limit, off));
    }
    if (this.drum) return Math.min(this.limit, hold.turn * this.rate);
    const from = placeNow(brake, now, part, hold.at);
    return Math.max(-this.limit, Math.min(this.limit, (hold.to[0] - from[0]) * this.rate));
  }

  /** The hand follows a pointer, mm: the rubber line is as long as it is drawn, whatever the drawing makes of movements. */
  follow(drawn: Instant, to: Point): void {
    const { hold, part } = this.record;
    if (!hold) return;
    if (part === 'adjuster lever') {
      this.#lever.goTo(to);
      return;
    }
    if (this.drum) {
      this.#drumTo(distance(hold.at, to));
      return;
    }
    if (part !== 'drum') {
      this.session.do(pullTo, this.#asLong(drawn, part, hold.at, to), 0);
      return;
    }
    const angle = Math.atan2(to[1], to[0]) - Math.atan2(hold.at[1], hold.at[0]);
    this.turnTo(nearAngle(angle, hold.turn));
  }

  followSecond(drawn: Instant, to: Point): void {
    const { second } = this.record;
    if (second) this.session.do(pullSecond, this.#asLong(drawn, second.part, second.at, to));
  }

  /** Where a hand is whose line is as long as it is drawn, mm. */
  #asLong(drawn: Instant, part: HandPart, at: Point, to: Point): Point {
    const { brake } = this.session;
    const seen = placeNow(brake, drawn, part, at);
    const is = placeNow(brake, this.session.instant(), part, at);
    return [is[0] + to[0] - seen[0], is[1] + to[1] - seen[1]];
  }

  turnTo(turn: number): void {
    const { hold } = this.record;
    if (hold) this.session.do(pullTo, spun(hold.at, turn), turn);
  }

  /** What is held goes its own way: a lifted toothed lever falls. */
  letGo(): void {
    if (!this.record.hold) return;
    const lift = this.lever?.lift ?? 0;
    this.session.do(letGoHand);
    if (lift > 0) this.session.letLeverFall(lift);
  }
  /** One of the fingers is lifted; the other holds on. */
  lift(finger: number): void {
    if (this.record.second) this.session.do(liftFinger, finger === 1 ? 1 : 0);
    else this.letGo();
  }

  choose(by: 1 | -1): void {
    const { parts } = this;
    const now = parts.indexOf(this.record.part);
    const next = parts[(now + by + parts.length) % parts.length];
    if (next) this.session.do(chooseHand, next);
  }

  /** The toothed lever in the hand; null where it is not held. */
  get lever(): LeverInHand | null {
    return this.#lever.now;
  }

  /** What the hand feels, N. */
  force(instant: Instant): number {
    if (!this.record.hold) return 0;
    if (this.record.part === 'drum') return Math.abs(this.session.motion.rimForce);
    const { drum, lever } = this;
    if (drum) return drum.pull;
    if (lever) return lever.free ? Math.hypot(lever.pull, lever.holds) : lever.pull;
    const { hold, part, second } = this.record;
    return second && hold ? this.#pull(instant, part, hold) : handForce(instant);
  }

  /** What the second hand feels, N. */
  secondForce(instant: Instant): number {
    const { second } = this.record;
    return second ? this.#pull(instant, second.part, second) : 0;
  }

  #pull(
    instant: Instant,
    part: HandPart,
    held: { readonly at: Point; readonly to: Point },
  ): number {
    const { brake } = this.session;
    const [hand] = handsOn(brake, part, held, this.rate, this.limit);
    return hand ? pullOfHand(hand, placeNow(brake, instant, part, hand.at)) : 0;
  }

  /** Torque that the hand has on the drum, N·mm. */
  get torque(): number {
    const { hold, part } = this.record;
    if (!hold || part !== 'drum') return 0;
    return Math.abs(this.session.motion.rimForce) * Math.hypot(...hold.at);
  }

  toeMoved(instant: Instant, side: Side): number {
    return instant.shoes[side].toe[0] - this.home.shoes[side].toe[0];
  }

  hookMoved(instant: Instant): number {
    const { home } = this;
    const { brake } = this.session;
    const { hook } = brake.parkingLever;
    const at = (i: Instant): Point => placeNow(brake, i, 'parking lever', hook);
    return distance(at(instant), at(home));
  }

  /** How far a piston stands behind its toe, mm, and the fluid that went, mm³. */
  pistonBack(instant: Instant, side: Side): { readonly behind: number; readonly fluid: number } {
    const behind = instant.shoes[side].pistonBehind ?? 0;
    return { behind, fluid: sentBack(this.session.brake, behind) };
  }

  /** The moving brake against Balance asked from its own pose: relative difference of the strut's force. */
  agreement(): number {
    const { session } = this;
    const record = session.motion.snapshot();
    if (record.quiet < 2) return 0;
    const { rig: own } = session;
    const rig = this.#other.of([own], () => createRig(own.brake, own.options));
    const asked = restingFrom(rig, record);
    const now = session.instant();
    return Math.abs(asked.strutForce - now.strutForce) / Math.max(10, now.strutForce);
  }
}
