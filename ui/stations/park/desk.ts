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
  type OnHill,
  onHill,
  type Parked,
  parkedAxle,
  presetRow,
  type Spent,
  spend,
  takenUp,
  type WheelFault,
} from '../../../sim/index.ts';
import { type ParkingRule, parkingRules } from '../../../sim/workshop/index.ts';
import type { Session } from '../../session.ts';

export type ParkPanel = 'lever' | 'wheels' | 'hot';
export type Nose = 'down' | 'up';

/** Full travel of the parking lever on the page, N at each cable. */
export const MOST_PULL = 600;
/** Farthest that a cable is set too tight or too slack here, mm. */
const MOST_OFF_STOP = 8;
const MOST_SLACK = 30;
/** What a rule of one's own may ask, per cent of slope. */
const SLOPES = [1, 60] as const;

const usual = parkingRules[0] as ParkingRule;

/** One value kept for the state and the settings it was made for. */
class Kept<T> {
  #key: readonly unknown[] = [];
  #value: T | undefined;

  of(key: readonly unknown[], make: () => T): T {
    if (this.#value === undefined || key.some((k, i) => k !== this.#key[i])) {
      this.#key = key;
      this.#value = make();
    }
    return this.#value;
  }
}

/** What the station is set to, and what the simulator says of it: computed once for each setting. */
export class ParkDesk {
  readonly session: Session;
  cable = 300;
  nose: Nose = 'down';
  rule: ParkingRule = usual;
  moreSlack = 0;
  fault: WheelFault = 'none';
  panel: ParkPanel = 'lever';
  /** Rise of the drum's temperature when it was parked hot, K. */
  rise = 100;
  readonly #wheels = new Kept<Parked[]>();
  readonly #alone = new Kept<LeverAlone>();
  readonly #instant = new Kept<Instant>();
  readonly #hot = new Kept<HotParking>();
  readonly #stops = new Kept<{ readonly home: number; readonly off: number }>();
  readonly #locked = new Kept<ReturnType<typeof handLocked>>();

  constructor(session: Session) {
    this.session = session;
  }

  #set(change: () => void): void {
    change();
    this.session.changed();
  }

  /** The hand lever drawn to a pull at each cable, N; 0 lets go. */
  pull(newton: number): void {
    this.#set(() => {
      this.cable = Math.max(0, Math.min(MOST_PULL, Math.round(newton)));
    });
  }

  /** The hand lever one notch on or back. */
  notch(by: 1 | -1): void {
    const { rig, state } = this.session;
    const now = this.spent.notches;
    // A whole notch that is at least a tenth away.
    const to = by > 0 ? Math.floor(now + 1.1 - 1e-9) : Math.ceil(now - 1.1 + 1e-9);
    const total = Math.max(0, to) * rig.brake.parkingLever.perNotch;
    const cable = cableAt(rig, state, total, { moreSlack: this.moreSlack });
    this.pull(Number.isFinite(cable) ? cable : MOST_PULL);
  }

  turn(nose: Nose): void {
    this.#set(() => {
      this.nose = nose;
    });
  }

  judgeBy(id: string): void {
    const rule = parkingRules.find((r) => r.id === id);
    if (rule) this.#set(() => (this.rule = rule));
    else this.slope(this.rule.percent);
  }

  /** A slope of one's own, per cent. */
  slope(percent: number): void {
    const wanted = Math.max(SLOPES[0], Math.min(SLOPES[1], Math.round(percent)));
    this.#set(() => {
      this.rule = {
        id: 'own',
        kind: 'slope',
        percent: wanted,
        what: 'A slope of your own choice',
        sure: 'own choice',
        hand: null,
      };
    });
  }

  slacken(mm: number): void {
    this.#set(() => {
      this.moreSlack = Math.max(0, Math.min(MOST_SLACK, this.moreSlack + mm));
    });
  }

  /** Cable set so tight that it holds the lever off its stop, mm at the hook. */
  tighten(mm: number): void {
    const { state } = this.session;
    const off = Math.max(0, Math.min(MOST_OFF_STOP, state.leverOffStop + mm));
    this.session.load({ ...state, leverOffStop: off });
  }

  choose(fault: WheelFault): void {
    this.#set(() => {
      this.fault = fault;
    });
  }

  open(panel: ParkPanel): void {
    this.#set(() => {
      this.panel = panel;
    });
  }

  heat(by: number): void {
    this.#set(() => {
      this.rise = Math.max(20, Math.min(300, this.rise + by));
    });
  }

  /** Both wheels: the left one sound, the right one with its fault. A worn face is both wheels' alike. */
  get wheels(): readonly [Parked, Parked] {
    const { rig, state } = this.session;
    const { cable, fault } = this;
    const list = this.#wheels.of([rig, state, cable, fault], () =>
      parkedAxle(rig, state, cable, [fault === 'glazed' ? fault : 'none', fault]),
    );
    return [list[0] as Parked, list[1] as Parked];
  }

  /** The wheel that the stage shows: the left one. */
  get wheel(): Parked {
    return this.wheels[0];
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
