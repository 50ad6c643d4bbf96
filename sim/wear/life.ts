import { teethPassed } from '../balance/ratchet.ts';
import type { Rig } from '../balance/rig.ts';
import type { Duty } from '../brake/duty.ts';
import type { BrakeState } from '../brake/state.ts';
import type { Side } from '../brake/types.ts';
import { KM } from '../units/units.ts';
import { AIR } from './heat.ts';
import { LifeDrag } from './life-drag.ts';
import { PressHeat } from './life-heat.ts';
import { Limits } from './life-limits.ts';
import { lockedWhenDriven } from './life-locks.ts';
import { rowOf } from './life-row.ts';
import type {
  Life,
  LifeEnd,
  LifeEvent,
  LifeEventKind,
  LifeOptions,
  LifeRow,
} from './life-types.ts';
import { Presses } from './lump.ts';
import { parkingPull } from './parking-pull.ts';
import { type Plan, STIFF, wearStiffness } from './press-plan.ts';
import { type Kind, Schedule } from './schedule.ts';
import { Wearing } from './wearing.ts';

/** Deepest wear of a lump, mm, when not told: a finer one changes nothing that a gauge would see. */
const LUMP_DEPTH = 0.01;
/** Least distance of two rows when not told, mm. */
const ROW_EVERY = 100 * KM;
/** A click, and a lining's limit, are placed to within this share of their distance from new. */
const PLACED = 2e-3;
const PLACED_LIMIT = 1e-4;
/** First lump, mm, and how much longer the next may be. */
const FIRST_LUMP = 2 * KM;
const LONGER = 3;
/** A life without an end in sight ends here, mm. */
const MOST = 1e6 * KM;
/** What a cold press lacks of a step taken hot before it is told, mm at the strut; and after how far again. */
const HOT_STEP = 0.12;
const TOLD_AGAIN = 2000 * KM;
/** Rise of the bore by which the effect of heat on the seats is measured, mm. */
const PROBE = 0.05;

class Driven implements Life {
  readonly rows: LifeRow[] = [];
  readonly events: LifeEvent[] = [];
  end: LifeEnd | null = null;
  readonly #rig: Rig;
  readonly #w: Wearing;
  readonly #duty: Duty;
  readonly #o: LifeOptions;
  readonly #from: number;
  readonly #goal: number;
  readonly #schedule: Schedule;
  readonly #presses: Presses;
  readonly #limits: Limits;
  /** The press that rows show. */
  readonly #shown: Plan;
  readonly #stiffness: number;
  #lastRow = Number.NEGATIVE_INFINITY;
  #lastLost = 0;
  #lump = FIRST_LUMP;
  /** Deepest wear for each mm driven, of the last lump. */
  #depthRate = 0;
  readonly #drag: LifeDrag;
  #hotStep = 0;
  #hotStepAt = Number.NEGATIVE_INFINITY;

  constructor(rig: Rig, state: BrakeState, duty: Duty, options: LifeOptions) {
    const { brake } = rig;
    this.#rig = rig;
    this.#duty = duty;
    this.#o = options;
    this.#from = state.distance;
    this.#goal = options.distance ?? MOST;
    this.#w = new Wearing(rig, state);
    this.#schedule = new Schedule(brake, duty, state.distance);
    const heat = new PressHeat(brake, duty.heat, options.air ?? AIR, state.distance);
    this.#presses = new Presses(brake, this.#w, this.#schedule, heat);
    this.#drag = new LifeDrag(rig, this.#w, heat);
    this.#limits = new Limits(brake, this.#w, options.stopAtLimit !== false);
    this.#stiffness = wearStiffness(rig);
    this.#shown = this.#presses.newPlan(this.#schedule.kinds[0] as Kind, 1, null);
    if (options.askLocks === false || !this.#locks(state)) this.#begin();
  }

  get done(): boolean {
    return this.end !== null;
  }
  get distance(): number {
    return this.#w.distance;
  }
  get progress(): number {
    if (this.end) return 1;
    const way = this.#goal < MOST ? this.#goal - this.#from : MOST;
    const driven = (this.#w.distance - this.#from) / way;
    const worn = this.#o.stopAtLimit === false ? 0 : this.#limits.share(this.#w);
    return Math.min(1, Math.max(0, driven, worn));
  }
  state(): BrakeState {
    return this.#w.state();
  }

  advance(distance: number): void {
    const until = this.#w.distance + distance;
    // More than one press may be due where the way ends.
    while (!this.end && (this.#w.distance < until || this.#w.distance >= this.#goal)) {
      if (this.#o.oneByOne || this.#drag.on) this.#single();
      else this.#piece();
      const { at } = this.#schedule.due;
      if (!this.end && this.#w.distance >= this.#goal && at > this.#goal) this.#finish('distance');
    }
  }

  /** The press before driving off: a fresh brake may step at once. */
  #begin(): void {
    const w = this.#w;
    if (w.leverOffStop > 0) this.#tell('lever off its stop', null, w.leverOffStop);
    if (this.#duty.heat) this.#probe();
    this.#shown.press(w, w.temperature);
    if (this.#cameApart()) return;
    const passed = teethPassed(this.#rig.brake, w, w.separation);
    if (passed !== 0) this.#click(passed, w.separation, w.temperature);
    else {
      this.#dragCheck();
      this.#row('run');
    }
    if (this.end) return;
    if (this.#limits.gone) this.#finish('worn through');
    else if (this.#goal <= w.distance) this.#finish('distance');
  }

  /** Measures how a wider bore parts the seats: nearly a constant of the geometry. */
  #probe(): void {
    const w = this.#w;
    this.#shown.press(w, w.temperature);
    const warm = w.makeWarm();
    w.press(warm, this.#shown.pressure, 1, null, w.temperature);
    const before = w.separation;
    w.press(warm, this.#shown.pressure, 1, null, w.temperature, 0, PROBE);
    this.#presses.gain = (w.separation - before) / PROBE;
  }

  /** Drives one press, or to the end of the way. */
  #single(): void {
    const w = this.#w;
    const { heat } = this.#presses;
    const { due } = this.#schedule;
    const kind = this.#schedule.kinds[Math.max(0, due.kind)] as Kind;
    if (this.#drag.on && !this.#roll(Math.min(this.#goal, due.at - kind.length), kind.speed))
      return;
    if (due.at > this.#goal) {
      w.distance = this.#goal;
      return;
    }
    if (due.kind < 0) {
      w.distance = due.at;
      this.#schedule.advance();
      this.#presses.park(this.#duty, w.distance);
      if (this.#pullsMatter()) this.#park();
      return;
    }
    const plan = this.#presses.take(true);
    plan.press(w, heat.middle);
    const room = heat.swell - heat.swellAfter;
    const apart = this.#presses.sensed(w.separation, heat.middle, heat.after, room);
    w.distance = due.at;
    if (this.#cameApart()) return;
    if (plan.drag > 0 && kind.energy > 0) {
      let sliding = (kind.energy * heat.factor) / plan.drag;
      if (sliding * this.#stiffness > STIFF) {
        plan.pressSoft(w, heat.middle, sliding, kind.energy);
        sliding = (kind.energy * heat.factor) / plan.drag;
      }
      w.wearOff(sliding);
      this.#presses.glaze(plan, sliding);
    }
    if (kind.length === 0) w.applications++;
    this.#schedule.advance();
    this.#after(teethPassed(this.#rig.brake, w, apart), apart, heat.after, heat.swellAfter);
  }

  /**
   * Drives on with linings that rub, to where the next press begins; ends the life where it cannot be driven.
   *
   * @param to mm driven; @param speed mm/s
   */
  #roll(to: number, speed: number): boolean {
    const stuck = this.#drag.roll(to, speed);
    if (!stuck) return true;
    this.#tell(stuck.kind, null, stuck.value);
    this.#finish(stuck.kind);
    return false;
  }

  /** Drives one lump: to the next click, limit or parking that matters, or as far as wear allows. */
  #piece(): void {
    const w = this.#w;
    const presses = this.#presses;
    const start = w.distance;
    const begun = presses.mark();
    const { due } = this.#schedule;
    // At least one press, or to the end of the way.
    const target = Math.min(this.#goal, Math.max(due.at, start + this.#length()));
    /** Takes the lump back; gives where to end it instead. */
    const shorter = (share: number, least: number): number => {
      const reached = w.distance;
      presses.takeBack(begun);
      const part = Math.min(1 - least / 2, Math.max(least, share));
      return Math.max(due.at, start + part * (reached - start));
    };
    let end = target;
    for (let tries = 0; ; tries++) {
      const { presses: count, parked } = presses.gather(end, this.#duty, this.#pullsMatter());
      const { lost } = w;
      presses.wear();
      if (!parked) w.distance = end;
      const length = w.distance - start;
      const deep = w.lost - lost;
      const within = (share: number): boolean =>
        count <= 1 || length <= share * w.distance || tries > 40;
      const over = this.#limits.overrun(w);
      if (over > 0 && !within(PLACED_LIMIT)) {
        end = shorter(1 - over / deep, 0.05);
        continue;
      }
      const verdict = presses.judge();
      if (verdict.passed !== 0 && !within(PLACED)) {
        end = shorter(verdict.share, 0.1);
        continue;
      }
      if (length > 0) this.#depthRate = deep / length;
      this.#lump = Math.max(length, FIRST_LUMP);
      if (this.#cameApart()) return;
      this.#after(verdict.passed, verdict.apart, verdict.temperature, verdict.swell);
      if (parked && !this.end) this.#park();
      return;
    }
  }

  /** How long the next lump may be, mm: by depth, by the last one, and to the next click or limit foreseen. */
  #length(): number {
    const w = this.#w;
    let length = this.#lump * LONGER;
    if (this.#depthRate > 0) {
      const depth = Math.min(this.#o.lump ?? LUMP_DEPTH, this.#limits.nearest(w));
      length = Math.min(length, depth / this.#depthRate + 1);
    }
    // A hair beyond, so that rounding does not stop just short of it.
    length = Math.min(length, 1.0005 * this.#presses.toNextTooth() + 1);
    return Math.max(length, (PLACED / 4) * w.distance);
  }

  /** What follows every press or lump: limits, the ratchet's step, a row. */
  #after(passed: number, apart: number, temperature: number, swell: number): void {
    const w = this.#w;
    for (const { kind, side, end } of this.#limits.take(w)) {
      this.#tell(kind, side, 0);
      if (end && !this.end) this.#finish(end);
    }
    if (this.end) return;
    if (passed !== 0) this.#click(passed, apart, temperature, swell);
    else {
      if (this.#drag.on) this.#dragCheck();
      if (w.distance - this.#lastRow >= (this.#o.rowEvery ?? ROW_EVERY)) this.#row('run');
    }
  }

  /** @param apart seats, mm, with the drum at a temperature, °C, and warm shoes swollen so far, mm */
  #click(passed: number, apart: number, temperature: number, swell = 0): void {
    const w = this.#w;
    const { brake } = this.#rig;
    const { gain, heat } = this.#presses;
    this.#row('before click');
    const coldApart = this.#presses.sensed(apart, temperature, heat.air, swell);
    const cooled = { tooth: w.tooth, condition: w.condition, temperature: heat.air };
    const cold = gain > 0 ? teethPassed(brake, cooled, coldApart) : passed;
    const short = this.#presses.needed() - coldApart;
    const sense = passed > 0 ? 1 : -1;
    for (let i = 0; i < Math.abs(passed); i++) {
      w.tooth += sense;
      w.rest();
      this.#tell('click', null, sense);
      if (w.tooth === brake.adjuster.teeth) this.#tell('teeth used up', null, 0);
    }
    if (passed > 0 && cold < passed && this.#overStepped(short)) {
      this.#tell('stepped hot', null, w.restGap(heat.air), temperature);
    }
    this.#dragCheck();
    this.#row('after click');
    if (this.#o.toNextClick) this.#finish('click');
  }

  /**
   * Whether a step on a hot drum is worth telling: the cold seats lacked a good part of what was needed,
   * and it is the first time, worse than before, or long ago. @param short mm
   */
  #overStepped(short: number): boolean {
    if (short < HOT_STEP) return false;
    const { distance } = this.#w;
    if (short < 1.2 * this.#hotStep && distance - this.#hotStepAt < TOLD_AGAIN) return false;
    this.#hotStep = short;
    this.#hotStepAt = distance;
    return true;
  }

  /** Whether a pull of the parking brake does more than let the drum cool. */
  #pullsMatter(): boolean {
    const { parking } = this.#duty;
    if (!parking) return false;
    return (
      this.#w.condition.teethHold !== null ||
      this.#rig.brake.adjuster.drivenBy === 'parking pull' ||
      parking.tightened > 0
    );
  }

  #park(): void {
    const w = this.#w;
    const { parking } = this.#duty;
    if (!parking) return;
    if (parking.tightened > 0) {
      const first = w.leverOffStop === 0;
      w.leverOffStop += parking.tightened / parking.perKm;
      w.rest();
      if (first) this.#tell('lever off its stop', null, w.leverOffStop);
      this.#dragCheck();
    }
    const { lost, clicked } = parkingPull(this.#rig, w.state(), parking.cable);
    if (lost > 0) {
      this.#row('before click');
      w.tooth -= lost;
      w.rest();
      this.#tell('tooth lost', null, lost);
      this.#row('after click');
    }
    if (clicked !== 0) this.#click(clicked, w.separation, w.temperature);
  }

  /** Tells when a lining begins or ceases to touch the cold drum at rest. */
  #dragCheck(): void {
    const touch = this.#drag.look();
    if (touch) this.#tell(touch.kind, null, touch.gap, 0, touch.torque);
  }

  /** A press without a balance, or a piston that travelled past its stroke in it, ends the life. */
  #cameApart(): boolean {
    const { stroke } = this.#rig.brake.cylinder;
    if (!this.#w.balanced) {
      this.#tell('no balance', null, 0);
      this.#finish('no balance');
      return true;
    }
    const [front, rear] = this.#w.pistons;
    if (!(Math.max(front.travel, rear.travel) > stroke)) return false;
    const out = front.travel > stroke ? 'front' : 'rear';
    this.#tell('piston run-out', out, 0);
    this.#finish('piston run-out');
    return true;
  }

  #locks(state: BrakeState): boolean {
    const side = lockedWhenDriven(this.#rig, state, this.#schedule);
    if (!side) return false;
    this.#tell('locks', side, 0);
    this.end = 'locks';
    return true;
  }

  #tell(kind: LifeEventKind, side: Side | null, value: number, temperature = 0, torque = 0): void {
    const { distance, tooth } = this.#w;
    this.events.push({
      kind,
      distance,
      tooth,
      side,
      temperature,
      value,
      torque,
      state: this.state(),
    });
  }

  #row(at: LifeRow['at']): void {
    const w = this.#w;
    const { heat } = this.#presses;
    const rest = heat.rest(w);
    const drag = this.#drag.told(rest);
    const told = { at, cold: rest, hottest: heat.hottest, drag };
    this.rows.push(rowOf(this.#rig.brake, w, this.#shown, told));
    heat.hottest = Number.NEGATIVE_INFINITY;
    this.#lastRow = w.distance;
    this.#lastLost = w.lost;
  }

  #finish(end: LifeEnd): void {
    this.end = end;
    // Several presses may come at one distance.
    if (this.#lastRow < this.#w.distance || this.#lastLost < this.#w.lost) this.#row('run');
  }
}

/**
 * A life: the brake driven on by a duty from a state. Nothing is driven yet but the first press; call
 * `advance` until `done`.
 */
export const createLife = (
  rig: Rig,
  state: BrakeState,
  duty: Duty,
  options: LifeOptions = {},
): Life => new Driven(rig, state, duty, options);

/** Drives a life to its end in one piece. */
export function driveLife(
  rig: Rig,
  state: BrakeState,
  duty: Duty,
  options: LifeOptions = {},
): Life {
  const life = createLife(rig, state, duty, options);
  while (!life.done) life.advance(1000 * KM);
  return life;
}
