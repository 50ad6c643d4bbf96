import {
  type BrakeState,
  balance,
  cableAt,
  type HotParking,
  handLocked,
  hotParking,
  type Instant,
  type LeverAlone,
  leverAlone,
  type MotionPress,
  type OnHill,
  onHill,
  type Parked,
  parkedAxle,
  presetRow,
  type Spent,
  slidesAt,
  spend,
  takenUp,
  type WheelFault,
} from '../../../sim/index.ts';
import type { ParkingRule } from '../../../sim/workshop/index.ts';
import { bothOf } from '../../record/across.ts';
import { dragOf, rigFor } from '../../record/derive.ts';
import { Kept } from '../../record/kept.ts';
import type { Session } from '../../session.ts';
import {
  chooseWheelFault,
  heat,
  judgeBy,
  letRoll,
  MOST_PULL,
  type Nose,
  openPanel,
  type ParkPanel,
  type ParkPart,
  pull,
  ruleOf,
  slacken,
  slopeTo,
  tighten,
  turnNose,
} from './part.ts';
import type { Jam } from './words.ts';

/** Most notches that are passed over at one pull. */
const MOST_NOTCHES = 20;

/** What the station is set to, and what the simulator says of it: computed once for each setting. */
export class ParkDesk {
  readonly session: Session;
  readonly #rule = new Kept<ParkingRule>();
  readonly #wheels = new Kept<Parked[]>();
  readonly #alone = new Kept<LeverAlone>();
  readonly #instant = new Kept<Instant>();
  readonly #hot = new Kept<HotParking>();
  readonly #stops = new Kept<{ readonly home: number; readonly off: number }>();
  readonly #locked = new Kept<ReturnType<typeof handLocked>>();

  constructor(session: Session) {
    this.session = session;
  }

  get #part(): ParkPart {
    return this.session.moment.parts.park;
  }
  get cable(): number {
    return this.#part.cable;
  }
  get nose(): Nose {
    return this.#part.nose;
  }
  get rule(): ParkingRule {
    return this.#rule.of([this.#part.rule, this.#part.slope], () => ruleOf(this.#part));
  }
  get moreSlack(): number {
    return this.#part.moreSlack;
  }
  get fault(): WheelFault {
    return this.#part.fault;
  }
  get panel(): ParkPanel {
    return this.#part.panel;
  }
  get rise(): number {
    return this.#part.rise;
  }

  pull(newton: number): void {
    this.session.do(pull, newton);
  }

  /** The chocks are away: the moving brake holds the vehicle, or does not. */
  get loose(): boolean {
    return this.#part.loose !== null;
  }

  letRoll(loose: boolean): void {
    this.session.do(letRoll, loose ? this.session.instant().drumAngle : null);
  }

  /** What the slope and the hand lever do to the wheel while the chocks are away. */
  acts(press: MotionPress): MotionPress {
    if (!this.loose) return press;
    const sense = this.nose === 'down' ? 1 : -1;
    const torque = sense * this.hill().need;
    return { pressure: press.pressure, turning: 0, cable: this.cable, rolling: true, torque };
  }

  /** Speed of the rolling vehicle, mm/s, and how far it has come, mm; as its nose points down the road. */
  get rolled(): { readonly speed: number; readonly way: number } {
    const { session } = this;
    const { tyreRadius } = session.brake.vehicle;
    const { drumAngle } = session.instant();
    return {
      speed: Math.abs(session.motion.drumSpeed) * tyreRadius,
      way: Math.abs(drumAngle - (this.#part.loose ?? drumAngle)) * tyreRadius,
    };
  }

  /** The hand lever one notch on or back. */
  notch(by: 1 | -1): void {
    const { rig, state } = this.session;
    const now = this.spent.notches;
    // A whole notch that is at least a tenth away.
    const first = by > 0 ? Math.floor(now + 1.1 - 1e-9) : Math.ceil(now - 1.1 + 1e-9);
    const pullAt = (notch: number): number => {
      const total = Math.max(0, notch) * rig.brake.parkingLever.perNotch;
      const cable = cableAt(rig, state, total, { moreSlack: this.moreSlack });
      return Number.isFinite(cable) ? cable : MOST_PULL;
    };
    let to = first;
    // While the lever turns at one pull, several notches take the same: on to the first that takes more.
    while (by > 0 && to < first + MOST_NOTCHES && pullAt(to) < this.cable + 0.5) to++;
    this.pull(pullAt(to));
  }

  turn(nose: Nose): void {
    this.session.do(turnNose, nose);
  }

  judgeBy(id: string): void {
    this.session.do(judgeBy, id);
  }

  slope(percent: number): void {
    this.session.do(slopeTo, percent);
  }

  slacken(mm: number): void {
    this.session.do(slacken, mm);
  }

  tighten(mm: number): void {
    this.session.do(tighten, mm);
  }

  choose(fault: WheelFault): void {
    this.session.do(chooseWheelFault, fault);
  }

  open(panel: ParkPanel): void {
    this.session.do(openPanel, panel);
  }

  heat(by: number): void {
    this.session.do(heat, by);
  }

  /**
   * Both wheels: the left one sound, the right one with its fault. A worn face is both wheels' alike. Each in its
   * own state where they are not alike, under the shoes that its linings suit.
   */
  get wheels(): readonly [Parked, Parked] {
    const { brake, moment, rig, state } = this.session;
    const { cable, fault } = this;
    const faults = [fault === 'glazed' ? fault : 'none', fault] as const;
    const both = bothOf(moment);
    const list = this.#wheels.of(
      [rig, both?.left ?? state, both?.right ?? state, cable, fault],
      () =>
        both
          ? [both.left, both.right].flatMap((s, at) =>
              parkedAxle(s === state ? rig : rigFor(brake, s), s, cable, [
                faults[at] as WheelFault,
              ]),
            )
          : parkedAxle(rig, state, cable, faults),
    );
    return [list[0] as Parked, list[1] as Parked];
  }

  /** The brake is jammed with its lever let go: the wheel would slide, or a part gives way; null: it is not. */
  get jam(): Jam | null {
    const { brake, rig, state } = this.session;
    const { torqueOnDrum, yields } = dragOf(rig, state);
    const torque = Math.abs(torqueOnDrum);
    return yields || torque > slidesAt(brake.vehicle) ? { torque, yields: yields !== null } : null;
  }

  /** The wheel that the stage shows: of two alike the left one, which is sound. */
  get wheel(): Parked {
    return this.wheels[bothOf(this.session.moment) && this.session.wheel === 'right' ? 1 : 0];
  }

  /** The vehicle on the chosen hill, one way round. */
  hill(nose: Nose = this.nose): OnHill {
    return onHill(this.session.rig, this.wheels, this.rule, nose);
  }

  get spent(): Spent {
    const { rig, state } = this.session;
    return spend(rig, state, this.cable, this.wheel.hookTravel, { moreSlack: this.moreSlack });
  }

  get alone(): LeverAlone {
    const { rig, state } = this.session;
    const sense = this.nose === 'down' ? 1 : -1;
    return this.#alone.of([rig, state, this.cable, sense], () =>
      leverAlone(rig, state, this.cable, sense),
    );
  }

  /** The moment on the stage: parked and about to slip as the hill turns the drum; let go: at rest. */
  get instant(): Instant {
    const { session, cable } = this;
    if (this.loose) return session.instant();
    if (cable === 0) return session.rest;
    const turning = this.nose === 'down' ? 1 : -1;
    return this.#instant.of([session.rig, session.state, cable, turning], () =>
      balance(session.rig, session.state, { pressure: 0, turning, cable }),
    );
  }

  /** The same pull with the hand lever locked, so that the cable's length is kept. */
  get locked(): ReturnType<typeof handLocked> {
    const { rig, state } = this.session;
    const set = { moreSlack: this.moreSlack };
    return this.#locked.of([rig, state, this.cable, this.moreSlack], () =>
      handLocked(rig, state, takenUp(rig, state, this.cable, set), set),
    );
  }

  get hot(): HotParking {
    const { rig, state } = this.session;
    const set = { moreSlack: this.moreSlack };
    return this.#hot.of([rig, state, this.cable, this.rise, this.moreSlack], () =>
      hotParking(rig, state, this.cable, this.rise, set),
    );
  }

  /** How far off its stop the second loupe shows the lever, mm at the hook. */
  get offShown(): number {
    return this.session.state.leverOffStop || 3;
  }

  /** Clearance with the lever on its stop and held off it, mm. */
  get stops(): { readonly home: number; readonly off: number } {
    const { rig, state } = this.session;
    const at = (leverOffStop: number): number => {
      const held: BrakeState = { ...state, leverOffStop };
      return presetRow(rig, held).centre;
    };
    return this.#stops.of([rig, state], () => ({ home: at(0), off: at(this.offShown) }));
  }
}
