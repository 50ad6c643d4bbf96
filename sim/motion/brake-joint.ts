import { type Dressed, workOf } from '../balance/dress.ts';
import type { Inertia } from '../balance/newton.ts';
import { type Mus, settleFriction } from '../balance/rubbing.ts';
import { type Solution, solvePose } from '../balance/solve.ts';
import type { Acting, Rig, ShoeRig } from '../balance/types.ts';
import type { Sticking } from '../contact/friction.ts';
import { holdOnDrum, rubsAlike, torqueOnDrum } from '../contact/rub.ts';
import { acrossZero, rootBetween } from '../math/root.ts';
import { Masses } from './carried.ts';
import { type Body, inSolver, Joint, type TimeStep, Vec2 } from './engine.ts';
import { bearingTorque, type RimHand, rimTorque } from './rim.ts';

/** Way of a step, mm or rad, from which on the next is not taken to go as far: 0.1 mm at a toe. */
const FAR = 1e-3;
/** Way of a step that is rounding. */
const NOTHING = 1e-9;

/** Torque on a free drum that counts as balanced, N·mm: 1e-6 of an ordinary stop. */
const DRUM_NOTHING = 0.2;

/**
 * How far a drum is tried past the speed at which its bristles, shoes standing still, would hold it: shoes give way by a
 * fifth to a third (tried on the shipped brakes), so mostly the answer lies between, where it is closed in on quickest.
 */
const PAST = 1.35;

/** A drum left to itself: its inertia, tonne·mm², the torque on it from outside, N·mm, and a hand on its rim. */
export interface FreeDrum {
  readonly inertia: number;
  readonly torque: number;
  readonly rim: RimHand | null;
  /** The hub's bearing rubs. */
  readonly bearing: boolean;
}

/** A shoe in time: its body in the engine, and its lining's law, with its bristles. */
export interface MovingShoe {
  readonly shoe: ShoeRig;
  readonly body: Body;
  readonly law: Sticking;
}

/**
 * The one joint of the brake: both shoes, both linings on the drum, springs, pistons, strut, ratchet
 * and lever. In the engine's velocity stage it finds the velocities with which the step ends in
 * balance of inertia and all forces (backward Euler, M (y − y0 − h v0)/h² = Q(y)), by the very
 * Newton that Balance uses; the engine then moves the bodies. Lining stiffness is far above what a
 * joint solved element by element can carry at this step, which is why it is one joint.
 */
export class BrakeJoint extends Joint {
  static readonly TYPE = 'brake-joint';
  readonly #rig: Rig;
  readonly #shoes: readonly [MovingShoe, MovingShoe];
  readonly masses: Masses;
  readonly #inertia: Inertia;
  /** Pose at the end of the last step. */
  readonly pose: Float64Array;
  /** Pose at the beginning of this one. */
  readonly #start: Float64Array;
  /** Where the step's end is sought first. */
  readonly #guess: Float64Array;
  solution: Solution;
  /** What acts in the step; set by Motion before it. */
  act: Acting;
  leverStop: number;
  /** Friction of the linings; where it hangs on pressure, before that has its say. Set by Motion. */
  friction: Mus;
  /** The drum turns in this step. */
  turning: boolean;
  /** Speed of the parking lever against its shoe, rad/s, in its own sense. */
  leverSpeed = 0;
  /** Speed of a driven drum, rad/s; of a free one before the step, and after it. */
  drumSpeed = 0;
  /** A drum left to itself: its inertia, and what turns it from outside. Null: driven. */
  freeDrum: FreeDrum | null = null;
  /** Turn of a free drum before the step, rad. */
  drumAngle = 0;

  constructor(
    rig: Rig,
    shoes: readonly [front: MovingShoe, rear: MovingShoe],
    act: Acting,
    d: Dressed,
  ) {
    super({ collideConnected: false }, shoes[0].body, shoes[1].body);
    this.#rig = rig;
    this.#shoes = shoes;
    this.masses = new Masses(rig);
    this.#inertia = {
      massOverH2: new Float64Array(rig.n * rig.n),
      free: new Float64Array(rig.n),
    };
    this.pose = Float64Array.from(d.restPose);
    this.#start = new Float64Array(rig.n);
    this.#guess = new Float64Array(rig.n);
    this.act = act;
    this.leverStop = d.leverStop;
    this.friction = d.friction;
    this.turning = false;
    this.solution = {
      strutOn: true,
      leverFree: false,
      clamp: 0,
      residual: 0,
      iterations: 0,
      converged: true,
      settled: true,
    };
  }

  override initVelocityConstraints(step: TimeStep): void {
    const { massOverH2, free } = this.#inertia;
    const h = step.dt;
    const { matrix } = this.masses;
    for (let i = 0; i < massOverH2.length; i++) massOverH2[i] = (matrix[i] as number) / (h * h);
    const { leverAt } = this.#rig;
    if (!this.solution.leverFree) this.pose[leverAt] = this.leverStop;
    free[leverAt] = (this.pose[leverAt] as number) + h * this.leverSpeed;
    for (const { shoe, body } of this.#shoes) {
      const { c_position: c, c_velocity: v } = inSolver(body);
      const at = shoe.at;
      const turn = at + shoe.freedoms - 1;
      this.pose[turn] = c.a;
      free[turn] = c.a + h * v.w;
      if (shoe.freedoms === 3) {
        const [ax, ay] = shoe.shoe.anchor.at;
        this.pose[at] = c.c.x - ax;
        this.pose[at + 1] = c.c.y - ay;
        free[at] = c.c.x - ax + h * v.v.x;
        free[at + 1] = c.c.y - ay + h * v.v.y;
      }
    }
  }

  /** How far the drum turns in the step, rad. */
  turnBy(turn: number): void {
    for (const { law } of this.#shoes) law.turn = turn;
  }

  /**
   * Where a step's end is sought first: as far on as the last step went, which spares an evaluation of three. Not where
   * that is far: a shoe that flies home would be sought deep in its stop; nor where it is nothing: what lies still is
   * found where it is, to the bit.
   */
  #guessFrom(start: Float64Array): Float64Array {
    const { free } = this.#inertia;
    let far = 0;
    for (let j = 0; j < free.length; j++) {
      far = Math.max(far, Math.abs((free[j] as number) - (start[j] as number)));
    }
    this.#guess.set(far > NOTHING && far < FAR ? free : start);
    return this.#guess;
  }

  /** @param start pose to seek from; null: the one found last */
  #solvePose(start: Float64Array | null): void {
    if (start) this.pose.set(start);
    this.solution = solvePose(
      this.#rig,
      workOf(this.#rig),
      this.pose,
      this.act,
      {
        inertia: this.#inertia,
        leverStop: this.leverStop,
        shaken: this.turning ? 'off the strut' : 'not',
        // The driven drum's bits are kept as they were: it is asked once a step.
        clamp: this.freeDrum ? this.solution.clamp : 0,
      },
      this.solution,
    );
  }

  /** Finds the pose at the step's end with the drum turning at a speed; gives the torque on the drum. */
  #solveAt(start: Float64Array | null, speed: number, h: number): number {
    this.turnBy(speed * h);
    const { rubbing } = this.#rig.brake;
    if (rubbing) {
      // From the same friction each step: nothing to remember, so a record goes on bit for bit without it.
      const found = settleFriction(this.#rig, rubbing, this.friction, (mus) => {
        this.#shoes[0].law.mu = mus.front;
        this.#shoes[1].law.mu = mus.rear;
        this.#solvePose(start);
      });
      if (!found) this.solution.settled = false;
    } else this.#solvePose(start);
    const { drum } = this.act;
    return torqueOnDrum(this.#rig.front.rub, drum) + torqueOnDrum(this.#rig.rear.rub, drum);
  }

  /** How stiffly the linings' bristles hold the drum, N·mm/rad, shoes standing still. */
  #hold(): number {
    const { drum } = this.act;
    return this.#shoes.reduce((sum, { shoe, law }) => sum + holdOnDrum(drum, law, shoe.rub), 0);
  }

  /** Do the linings rub just as they do, in the pose found, if the drum turns so far in the step instead? Then it does. */
  #rubsAlike(turn: number): boolean {
    const { drum } = this.act;
    const [front, rear] = this.#shoes;
    const change = turn - front.law.turn;
    const alike = rubsAlike(drum, change, front.shoe.rub) && rubsAlike(drum, change, rear.shoe.rub);
    if (alike) this.turnBy(turn);
    return alike;
  }

  /**
   * A free drum: I·(w − w0)/h = outer torque + torque of the linings, which never grows with w. The
   * linings give at most mu·N·R, so w lies within h·(that + outer)/I of w0: a bracket, closed by regula
   * falsi (Illinois). So a drum that is stopped sticks by its bristles, and slips when they give. A hand on
   * its rim pulls at the step's end as far as the drum has turned by then: that too only falls with w.
   */
  #solveFree(start: Float64Array, h: number, { inertia, torque, rim, bearing }: FreeDrum): void {
    const before = this.drumSpeed;
    const outer = (speed: number): number =>
      torque +
      (rim ? rimTorque(rim, this.drumAngle + speed * h, speed, inertia) : 0) +
      (bearing ? bearingTorque(speed) : 0);
    const leftFrom = (at: Float64Array | null, speed: number): number =>
      (inertia * (speed - before)) / h - outer(speed) - this.#solveAt(at, speed, h);
    // Each asking seeks on from the pose of the one before: it is the same step, a little slower or faster.
    const left = (speed: number): number => leftFrom(null, speed);
    const fa = leftFrom(start, before);
    if (Math.abs(fa) < DRUM_NOTHING) return;
    // Linings that slide give the same at any speed: then what was found stands. Mostly that is it.
    const freely = before - (h * fa) / inertia;
    const linings = -outer(before) - fa;
    const slides = this.#rubsAlike(freely * h);
    // Where bristles hold, one step past the answer of their slope, then on until it is bracketed.
    const b = slides ? freely : before - (PAST * fa) / (inertia / h + h * this.#hold());
    const fb = slides ? (inertia * (b - before)) / h - outer(b) - linings : left(b);
    if (Math.abs(fb) < DRUM_NOTHING) {
      this.drumSpeed = b;
      return;
    }
    const [speed] = rootBetween(left, [before, fa], acrossZero(left, [before, fa], [b, fb], 12), {
      near: DRUM_NOTHING,
      apart: (u, v) => Math.abs(v - u) < 1e-15 * (1 + Math.abs(v)),
      trials: 60,
    });
    this.drumSpeed = speed;
  }

  override solveVelocityConstraints(step: TimeStep): void {
    const start = this.#start;
    start.set(this.pose);
    const guess = this.#guessFrom(start);
    if (this.freeDrum) this.#solveFree(guess, step.dt, this.freeDrum);
    else this.#solveAt(guess, this.drumSpeed, step.dt);
    const { leverAt } = this.#rig;
    this.leverSpeed = this.solution.leverFree
      ? ((this.pose[leverAt] as number) - (start[leverAt] as number)) / step.dt
      : 0;
    for (const { shoe, body } of this.#shoes) {
      const { c_velocity: v } = inSolver(body);
      const at = shoe.at;
      const turn = at + shoe.freedoms - 1;
      v.w = ((this.pose[turn] as number) - (start[turn] as number)) / step.dt;
      if (shoe.freedoms === 3) {
        v.v.x = ((this.pose[at] as number) - (start[at] as number)) / step.dt;
        v.v.y = ((this.pose[at + 1] as number) - (start[at + 1] as number)) / step.dt;
      }
    }
  }

  override solvePositionConstraints(): boolean {
    return true;
  }

  override getAnchorA(): Vec2 {
    return this.#shoes[0].body.getPosition();
  }

  override getAnchorB(): Vec2 {
    return this.#shoes[1].body.getPosition();
  }

  override getReactionForce(): Vec2 {
    return new Vec2(0, 0);
  }

  override getReactionTorque(): number {
    return 0;
  }

  override _reset(): void {}
}
