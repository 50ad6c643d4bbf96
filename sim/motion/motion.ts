import { assemble } from '../balance/assemble.ts';
import { instantOf } from '../balance/build.ts';
import { type Dressed, dress, drumAt, noDrum, workFor, workOf } from '../balance/dress.ts';
import { ofKind } from '../balance/forces/list.ts';
import { Piston } from '../balance/forces/piston.ts';
import type { Instant } from '../balance/instant.ts';
import { lockedShoe } from '../balance/lock.ts';
import { acting, actingOn, type Press, solveBalance } from '../balance/press.ts';
import { teethPassed } from '../balance/ratchet.ts';
import { createRig, type Rig, type ShoeRig } from '../balance/rig.ts';
import { atSpeed, meanPressure } from '../balance/rubbing.ts';
import { gaveWay } from '../balance/work.ts';
import { pressureFactor } from '../brake/rubbing.ts';
import type { BrakeState } from '../brake/state.ts';
import type { Side, Turning } from '../brake/types.ts';
import { BrakeJoint, type MovingShoe } from './brake-joint.ts';
import type { StandOff } from './carried.ts';
import { handInertiaToJoint, makeWorld, setPlace, Vec2, type World } from './engine.ts';
import { AT_REST, type Drop, fallFrom, leverAt, leverStep } from './lever-body.ts';
import {
  type Clockwork,
  copyBristles,
  copyOf,
  fillMemory,
  type MotionPress,
  type MotionRecord,
  makeBristles,
  memoryByName,
  mustFit,
  sticking,
} from './record.ts';
import { rimTorque, turningMass } from './rim.ts';
import { LIES, Still, samePress } from './still.ts';

/** Turn of the driven drum, rad/s: slow enough to watch. Coulomb friction does not depend on it. */
const DRUM_SPEED = 3.14;
/** Time in which a driven drum comes up to speed or stops, s. */
const DRUM_RAMP = 0.1;

/** Slower than this a free drum counts as standing, rad/s: its bristles may still stretch. */
const CREEP = 1e-3;

/**
 * The brake in time: rigid bodies in the engine at a fixed step, forces from the same functions as
 * Balance. Holds the pose, the bristles and the tooth; wear and temperature come with load().
 */
export class Motion {
  readonly rig: Rig;
  readonly #world: World;
  readonly #shoes: readonly [MovingShoe, MovingShoe];
  readonly #joint: BrakeJoint;
  readonly #memory: Float64Array;
  readonly #pistons: readonly Piston[];
  #dressed: Dressed;
  readonly #now: Clockwork = {
    dt: 1 / 240,
    steps: 0,
    since: 0,
    drumAngle: 0,
    drumSpeed: 0,
    clickedThisPress: 0,
    backlog: 0,
    quiet: 0,
    press: { pressure: 0, turning: 0 },
    lever: AT_REST,
  };
  readonly #still = new Still();
  #drops: readonly Drop[] = [];
  /** The present moment as it was last asked for, while nothing has stepped since. */
  #told: Instant | null = null;
  #lockKept: {
    state: BrakeState;
    turning: Turning;
    speed: number | undefined;
    side: Side | null;
  } | null = null;

  /**
   * @param rig its brake is built anew, with buffers of its own: Balance may run between two steps
   * @param dt fixed step, s
   */
  constructor(rig: Rig, state: BrakeState, dt = 1 / 240) {
    this.rig = createRig(rig.brake, rig.options);
    this.#now.dt = dt;
    this.#world = makeWorld();
    this.#shoes = [this.#moving(this.rig.front), this.#moving(this.rig.rear)];
    this.#dressed = dress(this.rig, state);
    this.#memory = this.#dressed.home.slice();
    this.#pistons = ofKind(workOf(this.rig).forces, Piston);
    const [front, rear] = this.#shoes;
    const { press } = this.#now;
    const act = actingOn(this.#dressed, press, this.#memory, front.law, rear.law);
    this.#joint = new BrakeJoint(this.rig, this.#shoes, act, this.#dressed);
    this.#world.createJoint(this.#joint);
    this.load(state);
  }

  #moving(shoe: ShoeRig): MovingShoe {
    const body = this.#world.createBody({
      type: 'dynamic',
      position: new Vec2(shoe.shoe.anchor.at[0], shoe.shoe.anchor.at[1]),
      linearDamping: 0,
      angularDamping: 0,
    });
    handInertiaToJoint(body);
    return { shoe, body, law: sticking(makeBristles(shoe.bed.count)) };
  }

  get state(): BrakeState {
    return this.#dressed.state;
  }

  get tooth(): number {
    return this.state.tooth;
  }

  /** Length of a step, s. */
  get dt(): number {
    return this.#now.dt;
  }

  /**
   * Goes on by steps of another length: slow motion is finer steps, not pictures in between. A part that
   * is home in 1.6 ms needs them; the law of every force is the same at any step.
   */
  setStep(dt: number): void {
    const now = this.#now;
    if (dt === now.dt) return;
    now.quiet = 0;
    now.since += now.steps * now.dt;
    now.steps = 0;
    now.dt = dt;
  }

  /** s since load. */
  get time(): number {
    return this.#now.since + this.#now.steps * this.dt;
  }

  /** Drops of the toothed lever that began in the last step, or in the last stretch that was advanced. */
  get drops(): readonly Drop[] {
    return this.#drops;
  }

  /**
   * Puts a state on, pose from Balance: at rest, after a fast-forward or a fresh build, or in the
   * middle of a steady press with the drum turning.
   */
  load(state: BrakeState, pressed?: Press & { readonly turning: -1 | 1 }): void {
    this.#told = null;
    this.#now.quiet = 0;
    this.#dressed = dress(this.rig, state);
    const press: Press = pressed ?? { pressure: 0, turning: 0 };
    const solved = solveBalance(this.rig, state, press);
    this.#joint.pose.set(solved.pose);
    this.#joint.solution = { ...solved.solution };
    this.#memory.set(pressed ? solved.work.after : this.#dressed.home);
    this.#wear();
    this.#now.drumSpeed = press.turning * DRUM_SPEED;
    this.#now.backlog = 0;
    this.#now.steps = 0;
    this.#now.since = 0;
    this.#now.lever = AT_REST;
    this.#now.clickedThisPress = 0;
    this.#now.press = press;
    this.#joint.masses.count(this.#standOff());
    this.#place();
    this.#keepFaces();
    for (const { law } of this.#shoes) law.deflection.fill(0);
  }

  /** Pistons that ride along with nothing. */
  #standOff(): StandOff {
    const [front, rear] = this.#pistons;
    return [front?.standsOff(this.#memory) === true, rear?.standsOff(this.#memory) === true];
  }

  /** What belongs to the state: the forces take it over. */
  #wear(): void {
    const d = this.#dressed;
    const { act } = this.#joint;
    workFor(d);
    for (const { shoe, law } of this.#shoes) law.mu = d.friction[shoe.side];
    this.#joint.friction = d.friction;
    act.drum = drumAt(d, this.#now.drumAngle);
    act.home = d.home;
    act.strutLength = d.strutLength;
    act.strutRest = d.strutRest;
    this.#joint.leverStop = d.leverStop;
  }

  /** Sets the engine's bodies to the joint's pose, at rest. */
  #place(speeds?: Float64Array): void {
    for (const { shoe, body } of this.#shoes) {
      const { pose } = this.#joint;
      const at = shoe.at;
      const [ax, ay] = shoe.shoe.anchor.at;
      const free = shoe.freedoms === 3;
      setPlace(
        body,
        ax + (free ? (pose[at] as number) : 0),
        ay + (free ? (pose[at + 1] as number) : 0),
        pose[at + shoe.freedoms - 1] as number,
      );
      body.setLinearVelocity(
        new Vec2(free ? (speeds?.[at] ?? 0) : 0, free ? (speeds?.[at + 1] ?? 0) : 0),
      );
      body.setAngularVelocity(speeds?.[at + shoe.freedoms - 1] ?? 0);
    }
    this.#joint.leverSpeed = speeds?.[this.rig.leverAt] ?? 0;
  }

  /** Keeps where each face stands: the bristles of the next step start from there. */
  #keepFaces(): void {
    for (const { shoe, law } of this.#shoes) {
      law.deflection.set(shoe.rub.deflection);
      law.beforeX.set(shoe.rub.faceX);
      law.beforeY.set(shoe.rub.faceY);
    }
  }

  /** Would a shoe lock at this press? Then a driven drum has no balance: it is left to its inertia. */
  #locks(press: Press): boolean {
    if (press.turning === 0 || !(press.pressure > 0)) return false;
    const kept = this.#lockKept;
    if (
      kept?.state !== this.state ||
      kept.turning !== press.turning ||
      kept.speed !== press.speed
    ) {
      this.#lockKept = {
        state: this.state,
        turning: press.turning,
        speed: press.speed,
        side: lockedShoe(this.rig, this.state, press.turning, undefined, press.speed),
      };
    }
    return this.#lockKept?.side !== null;
  }

  /** A drum left to itself, by a torque from outside or since a shoe locks; null: driven. */
  #freeDrum(press: MotionPress): BrakeJoint['freeDrum'] {
    const rim = press.rim ?? null;
    const bearing = press.coasts === true;
    const torque = press.torque ?? (rim || bearing || this.#locks(press) ? 0 : null);
    if (torque === null) return null;
    const inertia = turningMass(this.rig.brake, press.rolling === true);
    return { inertia, torque, rim, bearing };
  }

  /** Pull of the hand on the drum's rim at the end of the last step, N, counter-clockwise; 0 without one. */
  get rimForce(): number {
    const { press, drumAngle, drumSpeed } = this.#now;
    const { rim, rolling } = press;
    if (!rim) return 0;
    const inertia = turningMass(this.rig.brake, rolling === true);
    return rimTorque(rim, drumAngle, drumSpeed, inertia) / rim.radius;
  }

  /** Distance of the two strut seats at the end of the last step, as `instant` tells it with all the rest, mm. */
  get separation(): number {
    return workOf(this.rig).strut.length;
  }

  /** Speed of the drum, rad/s. */
  get drumSpeed(): number {
    return this.#now.drumSpeed;
  }

  /** One fixed step under this press. */
  step(press: MotionPress): { readonly clicked: number } {
    this.#told = null;
    if (!samePress(press, this.#now.press)) this.#now.quiet = 0;
    this.#now.press = press;
    const { act } = this.#joint;
    const joint = this.#joint;
    joint.drumSpeed = this.#now.drumSpeed;
    joint.freeDrum = this.#freeDrum(press);
    if (!joint.freeDrum) {
      const most = (DRUM_SPEED * this.dt) / DRUM_RAMP;
      const change = press.turning * DRUM_SPEED - this.#now.drumSpeed;
      this.#now.drumSpeed += Math.max(-most, Math.min(most, change));
      joint.drumSpeed = this.#now.drumSpeed;
    }
    const { pressure, cable } = acting(this.rig.brake, this.state.condition, press);
    act.pressure = pressure;
    act.cable = cable ?? 0;
    this.#takeHands(press);
    this.#takeSpeed(press);
    if (!press.drumOff)
      act.drum = drumAt(this.#dressed, this.#now.drumAngle + this.#now.drumSpeed * this.dt);
    joint.drumAngle = this.#now.drumAngle;
    joint.turning = joint.freeDrum
      ? Math.abs(this.#now.drumSpeed) > CREEP
      : this.#now.drumSpeed !== 0;
    this.#world.step(this.dt, 1, 1);
    this.#now.drumSpeed = joint.drumSpeed;
    // A free drum's speed is known only after the joint; a driven one's was set before.
    this.#now.drumAngle += this.#now.drumSpeed * this.dt;
    this.#now.steps++;
    const work = workOf(this.rig);
    const gave = gaveWay(work, act);
    this.#memory.set(work.after);
    const met = this.#joint.masses.meet(this.#standOff(), () => this.#speeds());
    if (met) this.#place(met);
    // What broke out slides freely until the shoes are home on the strut again.
    if (!gave && this.#joint.solution.strutOn) {
      for (const force of work.forces) force.takeHold?.(this.#memory);
    }
    this.#keepFaces();
    const clicked = this.#ratchet();
    const lies = clicked === 0 && this.#now.drumSpeed === 0;
    const same = this.#still.look(this.#joint.pose, this.#shoes);
    this.#now.quiet = lies && same ? this.#now.quiet + 1 : 0;
    return { clicked };
  }

  /** Hands on the parts, and a drum that is off. */
  #takeHands({ hands, drumOff }: Press): void {
    const { act } = this.#joint;
    act.hands = hands?.length ? hands : undefined;
    act.drumOff = drumOff === true;
    if (drumOff) act.drum = noDrum(this.rig);
  }

  /** Friction at the speed that a press names. */
  #takeSpeed({ turning, speed }: Press): void {
    const { rubbing } = this.rig.brake;
    if (rubbing)
      this.#joint.friction = atSpeed(
        rubbing,
        this.#dressed.friction,
        turning === 0 ? undefined : speed,
      );
  }

  /** Judges the ratchet at the end of a step. A new tooth makes a longer strut at once. */
  #ratchet(): number {
    const { brake } = this.rig;
    if (this.#joint.solution.strutOn) this.#now.clickedThisPress = 0;
    const { length } = workOf(this.rig).strut;
    const passed = teethPassed(brake, this.state, length, this.#now.clickedThisPress);
    const { record, drops } = leverStep(brake, this.#now.lever, {
      time: this.time,
      dt: this.dt,
      seats: length,
      tooth: this.tooth,
      passed,
      strength: this.state.condition.leverSpring,
      strutLoose: this.state.condition.strutLoose,
    });
    this.#now.lever = record;
    this.#drops = drops;
    if (passed === 0) return 0;
    this.#now.clickedThisPress += Math.abs(passed);
    const before = this.#dressed.home;
    this.#dressed = dress(this.rig, { ...this.state, tooth: this.tooth + passed });
    for (const force of workOf(this.rig).forces) {
      force.moved?.(this.#memory, before, this.#dressed.home);
    }
    this.#wear();
    return passed;
  }

  /**
   * Runs whole steps for a stretch of time; what is left over waits for the next call. A brake that lies still
   * under the same press goes on lying still: its steps are only counted.
   *
   * @param seconds at most a quarter of a second is made up, so that a stalled page does not race
   * @param before called before each step
   * @returns teeth that dropped in
   */
  advance(seconds: number, press: MotionPress, before?: () => void): number {
    this.#now.backlog += Math.min(0.25, seconds);
    let clicked = 0;
    const drops: Drop[] = [];
    while (this.#now.backlog >= this.dt) {
      this.#now.backlog -= this.dt;
      if (this.#now.quiet >= LIES && samePress(press, this.#now.press)) {
        this.#now.steps++;
        continue;
      }
      before?.();
      clicked += this.step(press).clicked;
      drops.push(...this.#drops);
    }
    this.#drops = drops;
    return clicked;
  }

  /** The present moment: the same object for as long as nothing moves. */
  instant(): Instant {
    const told = this.#told ?? this.#tell();
    // Of a brake that lies still, time alone goes on; a lever may ring in it.
    const lever = leverAt(
      this.rig.brake,
      this.#now.lever,
      told,
      this.state.condition.leverSpring,
      this.time,
    );
    const same = lever?.phase === told.lever?.phase && lever?.lift === told.lever?.lift;
    this.#told = same ? told : { ...told, ...(lever ? { lever } : {}) };
    return this.#told;
  }

  #tell(): Instant {
    const work = workOf(this.rig);
    const still = this.#joint.freeDrum ? CREEP : 0;
    const turning: Turning =
      this.#now.drumSpeed > still ? 1 : this.#now.drumSpeed < -still ? -1 : 0;
    const locked = this.#locks(this.#now.press) ? (this.#lockKept?.side ?? null) : null;
    const instant = instantOf(
      {
        dressed: this.#dressed,
        act: this.#joint.act,
        work,
        pose: this.#joint.pose,
        solution: this.#joint.solution,
      },
      { turning, drumAngle: this.#now.drumAngle },
    );
    return { ...instant, ...(locked ? { locked } : {}) };
  }

  /**
   * A hand lets the toothed lever go, so far off the root of its tooth, mm: from now on it falls by its spring and its
   * mass, as over a crest.
   *
   * @returns the fall; null where no spring drives the lever, which then stays with the law
   */
  letFall(lift: number): Drop | null {
    const { leverSpring: strength } = this.state.condition;
    const drop = fallFrom(this.rig.brake, lift, { at: this.time, tooth: this.tooth, strength });
    if (drop) this.#now.lever = { ...this.#now.lever, drop, letGo: null };
    return drop;
  }

  /** This moment, to come back to. */
  snapshot(): MotionRecord {
    const { solution } = this.#joint;
    const [front, rear] = this.#shoes;
    const { pose, speeds, bristles } = copyOf(this.rig.n, front.law, rear.law);
    return {
      ...this.#now,
      state: this.state,
      solution: { ...solution },
      pose: this.#places(pose),
      speeds: this.#speeds(speeds),
      memory: memoryByName(workOf(this.rig).forces, this.#memory),
      bristles,
    };
  }

  /** Pose as the engine's bodies hold it: the last bit may differ from the joint's. */
  #places(out: Float64Array): Float64Array {
    out.set(this.#joint.pose);
    for (const { shoe, body } of this.#shoes) {
      out[shoe.at + shoe.freedoms - 1] = body.getAngle();
      if (shoe.freedoms === 3) {
        const p = body.getPosition();
        out[shoe.at] = p.x - shoe.shoe.anchor.at[0];
        out[shoe.at + 1] = p.y - shoe.shoe.anchor.at[1];
      }
    }
    return out;
  }

  #speeds(out: Float64Array = new Float64Array(this.rig.n)): Float64Array {
    for (const { shoe, body } of this.#shoes) {
      out[shoe.at + shoe.freedoms - 1] = body.getAngularVelocity();
      if (shoe.freedoms === 3) {
        const v = body.getLinearVelocity();
        out[shoe.at] = v.x;
        out[shoe.at + 1] = v.y;
      }
    }
    out[this.rig.leverAt] = this.#joint.leverSpeed;
    return out;
  }

  /** Goes back to a moment of this brake, in whatever state it was. Throws when it is of another one. */
  restore(record: MotionRecord): void {
    this.#told = null;
    mustFit(this.rig, record);
    const { state, solution, pose, speeds, memory, bristles, ...now } = record;
    Object.assign(this.#now, now);
    if (state !== this.state) this.#dressed = dress(this.rig, state);
    this.#joint.solution = { ...solution };
    this.#joint.pose.set(pose);
    fillMemory(workOf(this.rig).forces, memory, this.#memory);
    copyBristles(bristles[0], this.#shoes[0].law);
    copyBristles(bristles[1], this.#shoes[1].law);
    this.#wear();
    this.#joint.freeDrum = this.#freeDrum(this.#now.press);
    this.#joint.masses.count(this.#standOff());
    this.#place(speeds);
    this.#refresh();
    this.#still.look(this.#joint.pose, this.#shoes);
  }

  /** Fills the buffers that instant() reads, at the restored pose and without moving anything. */
  #refresh(): void {
    const { act, pose } = this.#joint;
    const { pressure, cable } = acting(this.rig.brake, this.state.condition, this.#now.press);
    act.pressure = pressure;
    act.cable = cable ?? 0;
    this.#takeHands(this.#now.press);
    this.#joint.turnBy(0);
    assemble(this.rig, workOf(this.rig), pose, act);
    const { rubbing } = this.rig.brake;
    if (!rubbing) return;
    // What presses at a pose does not hang on friction: the friction of those pressures is the step's.
    this.#takeSpeed(this.#now.press);
    for (const { shoe, law } of this.#shoes) {
      law.mu =
        this.#joint.friction[shoe.side] * pressureFactor(rubbing, meanPressure(this.rig, shoe));
    }
    assemble(this.rig, workOf(this.rig), pose, act);
  }
}

/** A brake in time; see Motion. */
export const createMotion = (rig: Rig, state: BrakeState, dt?: number): Motion =>
  new Motion(rig, state, dt);
