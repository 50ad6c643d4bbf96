import type { Instant, Motion, MotionPress, Point, Rig, Side } from '../sim/index.ts';
import { Masses, type StandOff } from '../sim/motion/carried.ts';
import { bearingTorque, turningMass } from '../sim/motion/rim.ts';

/** Work from which on a share of it tells something, N·mm: what lies still turns over the solver's rounding alone. */
const MUCH = 1;

/** Work that was done, N·mm, and what it became. */
class Account {
  #left = 0;
  #turned = 0;

  enter(work: readonly number[], became: number): void {
    this.#left -= became;
    for (const part of work) {
      this.#left += part;
      this.#turned += Math.abs(part);
    }
  }

  /** What it is open by, as a share of all work, each force's by itself. */
  get open(): number {
    return Math.abs(this.#left) / Math.max(MUCH, this.#turned);
  }
}

/**
 * Books of a brake in time, kept from what it tells alone: every force of an Instant over the way of the place where it
 * acts. Work on a body in a step is what its kinetic energy gains, and what backward Euler takes from it:
 *
 *   Σ F·Δp = v'·M·(v' − v) = Δ(v·M·v/2) + (v' − v)·M·(v' − v)/2
 *
 * (the kinetic energy theorem, any textbook of mechanics, with the force of a step's end over the whole step).
 */
export class EnergyBook {
  readonly shoes = new Account();
  readonly drum = new Account();
  readonly #rig: Rig;
  readonly #motion: Motion;
  readonly #masses: Masses;
  #before: Moment;

  constructor(motion: Motion) {
    this.#rig = motion.rig;
    this.#motion = motion;
    this.#masses = new Masses(motion.rig);
    this.#before = this.#look();
  }

  #look(): Moment {
    const { speeds, solution, drumSpeed } = this.#motion.snapshot();
    const instant = this.#motion.instant();
    return { instant, speeds, leverFree: solution.leverFree, drumSpeed };
  }

  /** After something else than a step: the books go on from here. */
  skip(): void {
    this.#before = this.#look();
  }

  /** After a step under this press. A tooth that dropped in, and a piston off its toe, are left out with their step. */
  enter(press: MotionPress, clicked: number): void {
    const before = this.#before;
    const after = this.#look();
    this.#before = after;
    if (clicked !== 0) return;
    const { rig } = this.#motion;
    const free = press.torque !== undefined || press.coasts === true;
    if (free) this.#ofDrum(press, before, after);
    const { condition } = this.#motion.state;
    // Where the drum's middle stands is not told.
    const { offCentre, oval, drumRise } = condition;
    if (offCentre !== 0 || oval !== 0 || drumRise !== 0 || rig.front.modes > 0) return;
    this.#ofShoe('front', before, after);
    if (!before.leverFree && !after.leverFree) this.#ofShoe('rear', before, after);
  }

  #ofDrum(press: MotionPress, before: Moment, after: Moment): void {
    const { brake } = this.#rig;
    const { drumSpeed: now, instant } = after;
    const turn = now * this.#motion.dt;
    const outer = press.torque ?? 0;
    const bearing = press.coasts === true ? bearingTorque(now) : 0;
    const inertia = turningMass(brake, press.rolling === true);
    this.drum.enter(
      [instant.torqueOnDrum * turn, outer * turn, bearing * turn],
      inertia * now * (now - before.drumSpeed),
    );
  }

  #ofShoe(side: Side, before: Moment, after: Moment): void {
    const rig = this.#rig;
    const { instant } = after;
    const shoe = instant.shoes[side];
    const was = before.instant.shoes[side];
    if (shoe.pistonBehind || was.pistonBehind) return;
    const { condition } = this.#motion.state;
    const off: StandOff = [condition.pistonStuck.front, condition.pistonStuck.rear];
    this.#masses.count(off);
    const [ax, ay] = rig.brake.shoes[side].anchor.at;
    const { at, freedoms } = rig[side];
    const moved = (j: number): number => (after.speeds[at + j] as number) * this.#motion.dt;
    const turn = moved(freedoms - 1);
    const [shiftX, shiftY] = freedoms === 3 ? [moved(0), moved(1)] : [0, 0];
    /** Work of a force on the place of the shoe that stands there now. */
    const work = ([x, y]: Point, [fx, fy]: Point): number => {
      const rx = x - ax - shoe.pose.ux;
      const ry = y - ay - shoe.pose.uy;
      return fx * (shiftX - turn * ry) + fy * (shiftY + turn * rx);
    };
    const clamp = instant.strutForce;
    const seat = this.#seats(instant, side);
    const [nx, ny] = shoe.normalForce;
    const [tx, ty] = shoe.frictionForce;
    this.shoes.enter(
      [
        work([0, 0], [nx, ny]),
        // Friction: its resultant at the drum's middle, and its moment about that.
        work([0, 0], [tx, ty]) - shoe.torqueOnDrum * turn,
        work(seat.at, [clamp * seat.away[0], clamp * seat.away[1]]),
        ...instant.forces.filter((f) => f.on === side).map((f) => work(f.at, f.force)),
      ],
      this.#gained(side, before.speeds, after.speeds),
    );
  }

  /** The strut's seat on a shoe, and the way in which the strut pushes it. */
  #seats({ shoes, leverAngle }: Instant, side: Side): { at: Point; away: Point } {
    const { brake } = this.#rig;
    const stands = (of: Side): Point => {
      const { pose } = shoes[of];
      const [ax, ay] = brake.shoes[of].anchor.at;
      const [sx, sy] = brake.shoes[of].strutSeat;
      let [x, y] = [sx, sy];
      if (of === 'rear') {
        // The notch turns with the parking lever about its pivot on the web.
        const [px, py] = brake.parkingLever.pivot;
        const turned = this.#rig.leverSense * leverAngle;
        const [c, s] = [Math.cos(turned), Math.sin(turned)];
        [x, y] = [px + c * (sx - px) - s * (sy - py), py + s * (sx - px) + c * (sy - py)];
      }
      const [c, s] = [Math.cos(pose.phi), Math.sin(pose.phi)];
      return [
        ax + pose.ux + c * (x - ax) - s * (y - ay),
        ay + pose.uy + s * (x - ax) + c * (y - ay),
      ];
    };
    const [front, rear] = [stands('front'), stands('rear')];
    const length = Math.hypot(rear[0] - front[0], rear[1] - front[1]);
    const sign = side === 'front' ? -1 : 1;
    return {
      at: side === 'front' ? front : rear,
      away: [(sign * (rear[0] - front[0])) / length, (sign * (rear[1] - front[1])) / length],
    };
  }

  #gained(side: Side, before: Float64Array, after: Float64Array): number {
    const { n, [side]: shoe } = this.#rig;
    let sum = 0;
    for (let j = shoe.at; j < shoe.at + shoe.freedoms; j++) {
      for (let l = shoe.at; l < shoe.at + shoe.freedoms; l++) {
        const more = (after[l] as number) - (before[l] as number);
        sum += (after[j] as number) * (this.#masses.matrix[j * n + l] as number) * more;
      }
    }
    return sum;
  }
}

interface Moment {
  readonly instant: Instant;
  readonly speeds: Float64Array;
  readonly leverFree: boolean;
  readonly drumSpeed: number;
}
