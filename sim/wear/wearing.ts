import { ofKind } from '../balance/forces/list.ts';
import { Piston } from '../balance/forces/piston.ts';
import { type From, type Path, pressInSteps, remembers } from '../balance/press.ts';
import {
  builtRest,
  faceAt,
  makeRestRig,
  noteRest,
  type Resting,
  type RestRig,
  reach,
  restClamp,
} from '../balance/rest.ts';
import { atSpeed, settleFriction } from '../balance/rubbing.ts';
import {
  balances,
  type Shaken,
  type Solution,
  type Supports,
  solvePose,
} from '../balance/solve.ts';
import type { Acting, Rig } from '../balance/types.ts';
import { gaveWay, prepare } from '../balance/work.ts';
import type { FilmShares } from '../brake/film.ts';
import type { Film } from '../brake/films.ts';
import { climbForceAt } from '../brake/lever-form.ts';
import { type BrakeState, type Condition, SOUND, strutLength } from '../brake/state.ts';
import type { Surface } from '../brake/surface.ts';
import type { Side } from '../brake/types.ts';
import { wheelPressure } from '../brake/upstream.ts';
import { boreAt, frictionAt } from '../brake/warm.ts';
import { thinnestLeft, type WornBed, wearBed, wornBed } from '../contact/bed.ts';
import { type DrumNow, roundDrum, runningDrum } from '../contact/drum.ts';
import { torqueOnDrum } from '../contact/rub.ts';
import { PI } from '../units/units.ts';
import { wornUnder } from './under.ts';

/** How a press stood last time: where the next one of its kind starts from. */
export interface Warm extends Supports {
  readonly pose: Float64Array;
  /** Its change since the time before: the next is likely to change alike. */
  readonly drift: Float64Array;
  known: boolean;
  readonly shaken: Shaken;
  /** How it got there, where it goes by steps. */
  readonly path: Path;
}

/** One moment of a brake that is driven, whole: what restore() goes on from, bit for bit. Own copies. */
export interface WearingRecord {
  readonly state: BrakeState;
  /** Lost in all by the element that wears most, mm: now, and when the rest pose was found. */
  readonly lost: number;
  readonly restAt: number;
  readonly restPose: Float64Array;
  /** Clamp of the strut in it, N. */
  readonly strutRest: number;
  readonly separation: number;
  readonly torque: number;
  readonly strutForce: number;
  readonly balanced: boolean;
}

/** Rest pose is found anew once a lining has lost this much, mm: it moves by less, sideways alone. */
const SAME_REST = 2e-3;

/**
 * A brake while it is driven: wear, drum, tooth and heat in place, so that a hundred thousand presses
 * need no new arrays. The forces are those of Balance (`solvePose`); what lasts comes out as a
 * `BrakeState`. Not for showing: `Solved` and `Instant` are made from the state.
 */
export class Wearing {
  readonly rig: Rig;
  readonly #on: RestRig;
  readonly #act: Acting;
  /** Worn in place. */
  readonly #linings: Readonly<Record<Side, WornBed>>;
  readonly pistons: readonly [Piston, Piston];
  /** Dry friction holds sliding shoes: each press is built up from rest, and no warm pose helps. */
  readonly #remembers: boolean;
  readonly #lawFront = { kind: 'slide' as const, mu: 0, sense: 1 as -1 | 1 };
  readonly #lawRear = { kind: 'slide' as const, mu: 0, sense: 1 as -1 | 1 };
  /** Goes on changing, so it is nobody else's: outside there are copies, as `state()` and `record()`. */
  readonly #wear: Readonly<Record<Side, Float64Array>>;
  #condition: Condition = SOUND;
  tooth = 0;
  drumRadius = 0;
  temperature = 0;
  distance = 0;
  applications = 0;
  leverOffStop = 0;
  /** Speed of the vehicle over a press, mm/s, for friction that hangs on it; undefined: where it is told. */
  speed: number | undefined = undefined;
  /** What lies on the faces, and what of it counts over a press; undefined: nothing. */
  film: Film | undefined = undefined;
  /** Under which shoes the linings wore. */
  #wornBy: BrakeState['wornBy'] = undefined;
  shares: FilmShares | undefined = undefined;
  #leverStop = 0;
  #restAt = Number.NEGATIVE_INFINITY;
  readonly #restPose: Float64Array;
  #lost = 0;
  /** Results of the last press: seats apart, mm, and torque against the turning, N·mm. */
  separation = 0;
  torque = 0;
  /** Clamp of the strut in it, N. */
  strutForce = 0;
  /** Every press up to now found a balance; where not, its numbers mean nothing. */
  balanced = true;

  constructor(rig: Rig, state: BrakeState) {
    this.rig = rig;
    this.#remembers = remembers(rig, 1);
    this.#on = makeRestRig(rig);
    this.#wear = { front: state.wear.front.slice(), rear: state.wear.rear.slice() };
    this.#take(state);
    this.#linings = {
      front: wornBed(rig.front.bed, this.#wear.front),
      rear: wornBed(rig.rear.bed, this.#wear.rear),
    };
    const { memory, forces } = this.#on.work;
    this.pistons = ofKind(forces, Piston) as unknown as readonly [Piston, Piston];
    this.#act = {
      pressure: 0,
      cable: 0,
      drum: roundDrum(this.drumRadius),
      frontLaw: this.#lawFront,
      rearLaw: this.#lawRear,
      memory,
      home: new Float64Array(memory.length),
      strutLength: 0,
      strutRest: 0,
      shaken: 0,
    };
    this.#restPose = new Float64Array(rig.n);
    this.rest();
  }

  /** All of a state but its wear. */
  #take(state: BrakeState): void {
    this.#condition = state.condition;
    this.tooth = state.tooth;
    this.drumRadius = state.drumRadius;
    this.temperature = state.temperature;
    this.distance = state.distance;
    this.applications = state.applications;
    this.leverOffStop = state.leverOffStop;
    this.film = state.film;
    this.#wornBy = state.wornBy;
  }

  get condition(): Condition {
    return this.#condition;
  }

  /** Lost in all by the element that wears most, mm. */
  get lost(): number {
    return this.#lost;
  }

  makeWarm(shaken: Shaken = 'off the strut'): Warm {
    const { n } = this.rig;
    const pose = new Float64Array(n);
    return {
      pose,
      drift: new Float64Array(n),
      known: false,
      strutOn: true,
      leverFree: false,
      shaken,
      path: new Map(),
    };
  }

  /** The work buffers after a press: springs, pistons, travels. */
  get work(): RestRig['work'] {
    return this.#on.work;
  }

  /** The rig whose linings hold the last press. */
  get shoes(): Rig {
    return this.#on.rig;
  }

  /** Inner radius at a temperature, mm. */
  radiusAt(temperature: number): number {
    return boreAt(this.rig.brake, this.drumRadius, temperature);
  }

  /** What lasts, as it stands now: a copy. */
  state(): BrakeState {
    return {
      tooth: this.tooth,
      wear: { front: this.#wear.front.slice(), rear: this.#wear.rear.slice() },
      drumRadius: this.drumRadius,
      temperature: this.temperature,
      distance: this.distance,
      applications: this.applications,
      leverOffStop: this.leverOffStop,
      condition: this.#condition,
      ...(this.film ? { film: this.film } : {}),
      ...(this.#wornBy ? { wornBy: this.#wornBy } : {}),
    };
  }

  /** This moment, to come back to. */
  record(): WearingRecord {
    return {
      state: this.state(),
      lost: this.#lost,
      restAt: this.#restAt,
      restPose: this.#restPose.slice(),
      strutRest: this.#act.strutRest,
      separation: this.separation,
      torque: this.torque,
      strutForce: this.strutForce,
      balanced: this.balanced,
    };
  }

  /** Goes back to a moment of this brake. */
  restore(r: WearingRecord): void {
    const { state } = r;
    this.#wear.front.set(state.wear.front);
    this.#wear.rear.set(state.wear.rear);
    this.#take(state);
    this.#lost = r.lost;
    this.#restAt = r.restAt;
    this.#restPose.set(r.restPose);
    this.#act.strutRest = r.strutRest;
    this.separation = r.separation;
    this.torque = r.torque;
    this.strutForce = r.strutForce;
    this.balanced = r.balanced;
    this.#strut();
    noteRest(this.#on, this.#restPose, this.#act.home);
  }

  /** To be called when the tooth or the lever's stop has changed. */
  rest(): void {
    this.#strut();
    this.#bed('front', 0);
    this.#bed('rear', 0);
    const resting: Resting = {
      on: this.#on,
      state: this,
      worn: this.#linings,
      leverStop: this.#leverStop,
    };
    this.#restPose.set(builtRest(resting));
    this.#act.strutRest = restClamp(resting, this.#restPose);
    noteRest(this.#on, this.#restPose, this.#act.home);
    this.#restAt = this.#lost;
  }

  /** Length of the strut and where the lever stops. */
  #strut(): void {
    const { rig } = this.#on;
    this.#act.strutLength = strutLength(rig.brake, this.tooth);
    this.#leverStop = rig.hookArm > 0 ? this.leverOffStop / rig.hookArm : 0;
  }

  /** The forces take over the brake as it is. */
  #prepare(): void {
    const { growth } = this.rig.brake.adjuster;
    const next = growth[this.tooth + 1];
    prepare(this.#on.work, {
      condition: this.#condition,
      front: this.#linings.front,
      rear: this.#linings.rear,
      strutLength: this.#act.strutLength,
      nextTooth: next === undefined ? 0 : next - (growth[this.tooth] as number),
      climbForce: climbForceAt(this.rig.brake, this.tooth, this.#condition.leverSpring),
    });
  }

  /** Gap of the linings' middle at rest, mean of both shoes (they are alike), at a temperature, mm. */
  restGap(temperature: number): number {
    this.rest();
    const { rig, work } = this.#on;
    const { frontCos, frontSin } = work.turns;
    return (
      this.radiusAt(temperature) -
      reach(rig.front, this.#linings.front, this.#restPose, frontCos, frontSin)
    );
  }

  /** Least gap of any lining element at rest in a round drum, mm; negative: it drags. After restGap. */
  leastGap(temperature: number): number {
    const { rig, work } = this.#on;
    const { turns } = work;
    const radius = this.radiusAt(temperature);
    let least = Number.POSITIVE_INFINITY;
    for (const [shoe, worn, c, s] of [
      [rig.front, this.#linings.front, turns.frontCos, turns.frontSin],
      [rig.rear, this.#linings.rear, turns.rearCos, turns.rearSin],
    ] as const) {
      for (let i = 0; i < worn.x.length; i++) {
        least = Math.min(least, radius - faceAt(shoe, worn, this.#restPose, c, s, i));
      }
    }
    return least;
  }

  #bed(side: Side, softening: number): void {
    wearBed(this.#linings[side], this.#wear[side], softening);
  }

  #drum(radius: number): DrumNow {
    const { offCentre, oval, drumRise } = this.#condition;
    if (offCentre === 0 && oval === 0 && drumRise === 0) return roundDrum(radius);
    return { ...runningDrum(radius, offCentre, oval, 1, 0), y: drumRise };
  }

  /**
   * One press from rest, drum turning.
   *
   * @param surface of both linings; each its own when null
   * @param softening compliance of each lining element by wear taken implicitly, mm/MPa for each unit
   * of its wear rate (sliding distance times factor); 0: as it is
   * @param ahead bore that the press sees beyond the present one, mm
   */
  press(
    warm: Warm,
    pressure: number,
    turning: 1 | -1,
    surface: Surface | null,
    temperature: number,
    softening = 0,
    ahead = 0,
  ): void {
    if (this.#lost - this.#restAt > SAME_REST) this.rest();
    const { rig, work } = this.#on;
    const act = this.#act;
    this.#bed('front', softening * rig.front.shoe.lining.wearRate);
    this.#bed('rear', softening * rig.rear.shoe.lining.wearRate);
    const own = this.#condition.surface;
    const base = {
      front: frictionAt(rig.brake, 'front', surface ?? own.front, temperature, this.shares),
      rear: frictionAt(rig.brake, 'rear', surface ?? own.rear, temperature, this.shares),
    };
    this.#lawFront.sense = turning;
    this.#lawRear.sense = turning;
    this.#prepare();
    act.pressure = wheelPressure(rig.brake.hydraulics, this.#condition.keptPressure, pressure);
    act.cable = this.#condition.keptCable;
    act.drum = this.#drum(this.radiusAt(temperature) + ahead);
    const { pose, drift } = warm;
    if (warm.known) {
      for (let j = 0; j < pose.length; j++) {
        const before = pose[j] as number;
        pose[j] = before + (drift[j] as number);
        drift[j] = before;
      }
    } else {
      pose.set(this.#restPose);
    }
    const under = { inertia: null, leverStop: this.#leverStop, shaken: warm.shaken } as const;
    const solve = (from: From) =>
      solvePose(rig, work, pose, act, from.clamp ? { ...under, clamp: from.clamp } : under, from);
    let from: Supports = warm;
    const solveWith = (mus: typeof base): Solution => {
      this.#lawFront.mu = mus.front;
      this.#lawRear.mu = mus.rear;
      act.memory.set(act.home);
      // What nobody pushes stands where it rests: there is no way to it by steps.
      if (this.#remembers && (act.pressure > 0 || act.cable > 0)) {
        pose.set(this.#restPose);
        return pressInSteps({
          rig,
          work,
          act,
          worn: this.#linings,
          turning,
          pose,
          solve,
          path: warm.path,
        });
      }
      let s = solve(from);
      for (let i = 0; i < 2 && gaveWay(work, act); i++) s = solve(s);
      return s;
    };
    const { rubbing } = rig.brake;
    let s: Solution;
    if (rubbing) {
      let last: Solution | null = null;
      const found = settleFriction(rig, rubbing, atSpeed(rubbing, base, this.speed), (mus) => {
        last = solveWith(mus);
        from = last;
      });
      s = last as unknown as Solution;
      if (!found) this.balanced = false;
    } else {
      s = solveWith(base);
    }
    if (warm.known) {
      for (let j = 0; j < pose.length; j++) drift[j] = (pose[j] as number) - (drift[j] as number);
    }
    warm.known = true;
    warm.strutOn = s.strutOn;
    warm.leverFree = s.leverFree;
    if (!balances(s)) this.balanced = false;
    this.separation = work.strut.length;
    this.strutForce = s.strutOn ? s.clamp : 0;
    const { drum } = act;
    this.torque = -turning * (torqueOnDrum(rig.front.rub, drum) + torqueOnDrum(rig.rear.rub, drum));
  }

  /** Copies what the last press lays on each element, N. */
  pressed(into: Readonly<Record<Side, Float64Array>>): void {
    const { rig } = this.#on;
    into.front.set(rig.front.rub.normal);
    into.rear.set(rig.rear.rub.normal);
  }

  /**
   * Wears off what the last press rubs over a sliding distance: Archard's law (J. F. Archard 1953,
   * "Contact and rubbing of flat surfaces"): depth = k·p·s on each lining element and, spread evenly
   * around the bore, on the drum.
   *
   * @param sliding mm, times the factor of the wear rate's table
   * @param by what another press laid on each element, N
   * @returns depth worn off the drum, mm
   */
  wearOff(sliding: number, by?: Readonly<Record<Side, Float64Array>>): number {
    const { rig } = this.#on;
    let deepest = 0;
    let drum = 0;
    for (const side of ['front', 'rear'] as const) {
      const shoe = rig[side];
      const { lining } = shoe.shoe;
      const normal = by ? by[side] : shoe.rub.normal;
      const rate = lining.wearRate * sliding;
      const { area } = this.#linings[side];
      const worn = this.#wear[side];
      let sum = 0;
      for (let i = 0; i < worn.length; i++) {
        const n = normal[i] as number;
        if (n === 0) continue;
        sum += n;
        const depth = (rate * n) / (area[i] as number);
        if (depth > deepest) deepest = depth;
        worn[i] = (worn[i] as number) + depth;
      }
      drum += (rig.brake.drum.wearRate * sliding * sum) / (lining.width * 2 * PI * this.drumRadius);
    }
    this.drumRadius += drum;
    this.#lost += deepest;
    this.#wornBy = wornUnder(this.rig);
    return drum;
  }

  /** Thinnest lining left, mm. */
  thinnest(side: Side): number {
    return thinnestLeft(this.rig[side].bed, this.#wear[side]);
  }
}
