import { makePlaced, place } from '../balance/place.ts';
import type { Rig, ShoeRig, Spot, Turns } from '../balance/types.ts';
import { parkingLeverMass, pistonMass, strutMass } from '../brake/part-masses.ts';
import type { Point, Shoe } from '../brake/types.ts';
import type { Bed } from '../contact/bed.ts';
import { solveInPlace } from '../math/solve.ts';

/**
 * Masses of the freedoms. A shoe has its own; what rides along with it adds m·JᵀJ, where J is how the freedoms move
 * its place (kinetic energy ½·m·|J·v|², Lagrange; any textbook of mechanics), taken at the pose as built, from which
 * no shoe turns by a degree:
 *
 * - half of the strut at each of its seats;
 * - the parking lever as a body of its own about its pivot: two halves at its radius of gyration to both sides of its
 *   middle have its mass, its middle and its inertia, and so move as it does in the plane;
 * - each piston at its toe, along the bore, as long as it stands there.
 *
 * Modes of bending shoes carry none, as their own mass is left out (they ring far above a step).
 */
export class Masses {
  readonly #rig: Rig;
  /** m·JᵀJ of each piston. */
  readonly #ofPistons: readonly [Float64Array, Float64Array];
  /** Without pistons. */
  readonly #bare: Float64Array;
  /** Pistons that are counted now. */
  readonly #at: [front: boolean, rear: boolean] = [true, true];
  /** Over all freedoms, n×n: tonne, tonne·mm and tonne·mm². */
  readonly matrix: Float64Array;

  constructor(rig: Rig) {
    this.#rig = rig;
    const { n, brake, front, rear, spotOn } = rig;
    this.#bare = new Float64Array(n * n);
    addShoe(rig, front, this.#bare);
    addShoe(rig, rear, this.#bare);
    const half = strutMass(brake) / 2;
    addPoint(rig, front.webSeat, half, this.#bare);
    addPoint(rig, rear.seat, half, this.#bare);
    for (const at of leverHalves(rig)) {
      addPoint(rig, spotOn('lever', at), parkingLeverMass(brake).mass / 2, this.#bare);
    }
    const piston = (shoe: ShoeRig): Float64Array => {
      const m = new Float64Array(n * n);
      addPoint(rig, shoe.toe, pistonMass(brake), m, 'along x');
      return m;
    };
    this.#ofPistons = [piston(front), piston(rear)];
    this.matrix = new Float64Array(n * n);
    this.#sum();
  }

  #sum(): void {
    this.matrix.set(this.#bare);
    this.#at.forEach((there, i) => {
      const m = this.#ofPistons[i as 0 | 1];
      if (there)
        m.forEach((v, j) => {
          this.matrix[j] = (this.matrix[j] as number) + v;
        });
    });
  }

  /** Counts the pistons that stand at their toes. @param off those that stand elsewhere */
  count(off: StandOff): void {
    if (off[0] !== this.#at[0] && off[1] !== this.#at[1]) return;
    this.#at[0] = !off[0];
    this.#at[1] = !off[1];
    this.#sum();
  }

  /**
   * The same after a step. A piston that a toe has met again stood still and takes its share of the toe's momentum,
   * M'·v' = M·v (a plastic hit).
   *
   * @param speeds of all freedoms, 1/s and mm/s; changed where a piston is met
   * @returns whether they changed
   */
  meet(off: StandOff, speeds: () => Float64Array): Float64Array | null {
    const met = off.some((o, i) => !o && !this.#at[i]);
    if (!met) {
      this.count(off);
      return null;
    }
    const { n } = this.#rig;
    const now = speeds();
    const momentum = new Float64Array(n);
    for (let j = 0; j < n; j++) {
      for (let l = 0; l < n; l++) {
        momentum[j] =
          (momentum[j] as number) + (this.matrix[j * n + l] as number) * (now[l] as number);
      }
    }
    this.count(off);
    const m = this.matrix.slice();
    // Freedoms without mass keep the speed that they have: none.
    for (let j = 0; j < n; j++) if (m[j * n + j] === 0) m[j * n + j] = 1;
    solveInPlace(m, momentum, n);
    return momentum;
  }
}

/** The front and the rear piston: does it stand elsewhere than at its toe? */
export type StandOff = readonly [front: boolean, rear: boolean];

/** How far out the middle of a shoe's mass lies, as a share of the drum's radius. */
const OUT = 0.85;

/**
 * Middle of a shoe's mass from its heel, mm, where it rolls on an abutment. A shoe is taken for a uniform arc: its
 * middle lies at sin β/β of its radius, and about that its radius of gyration is √(1 − (sin β/β)²) of it (any
 * handbook). With sin β/β = 0.85, that of some 110°, on the drum's radius and the middle of the lining, inertia and
 * mass of a scene belong to an arc a little larger or smaller: it is brought to theirs, or the masses of the freedoms
 * could be negative.
 */
function middleOf({ brake }: Rig, shoe: Shoe, bed: Bed): Point {
  const middle = bed.count / 2;
  const radius = brake.drum.radiusNew;
  const x = OUT * radius * (bed.dirX[middle] as number) - shoe.anchor.at[0];
  const y = OUT * radius * (bed.dirY[middle] as number) - shoe.anchor.at[1];
  const told = shoe.inertia / shoe.mass;
  const size = Math.sqrt(told / (x * x + y * y + (1 - OUT * OUT) * radius * radius));
  return [size * x, size * y];
}

function addShoe(rig: Rig, { shoe, at, bed, freedoms }: ShoeRig, m: Float64Array): void {
  const set = (i: number, j: number, v: number): void => {
    m[i * rig.n + j] = v;
  };
  if (freedoms === 1) {
    set(at, at, shoe.inertia);
    return;
  }
  const [rx, ry] = middleOf(rig, shoe, bed);
  set(at, at, shoe.mass);
  set(at + 1, at + 1, shoe.mass);
  set(at + 2, at + 2, shoe.inertia);
  set(at, at + 2, -shoe.mass * ry);
  set(at + 2, at, -shoe.mass * ry);
  set(at + 1, at + 2, shoe.mass * rx);
  set(at + 2, at + 1, shoe.mass * rx);
}

/** Two places at the radius of gyration to both sides of the parking lever's middle, mm. */
function leverHalves({ brake }: Rig): readonly Point[] {
  const { mass, middle, inertia } = parkingLeverMass(brake);
  const away = Math.sqrt(inertia / mass);
  return [-away, away].map((d) => [middle[0] + d, middle[1]]);
}

const asBuilt: Turns = {
  frontCos: 1,
  frontSin: 0,
  rearCos: 1,
  rearSin: 0,
  leverCos: 1,
  leverSin: 0,
};

/** Adds m·JᵀJ of a point that a spot carries, over the rigid freedoms. */
function addPoint(rig: Rig, spot: Spot, mass: number, m: Float64Array, along?: 'along x'): void {
  const { n, front, rear, leverAt } = rig;
  const p = place(rig, new Float64Array(n), asBuilt, spot, makePlaced(n));
  const shoe = spot.part === 'front' ? front : rear;
  const rigid = Array.from({ length: shoe.freedoms }, (_, i) => shoe.at + i);
  if (spot.onLever) rigid.push(leverAt);
  for (const j of rigid) {
    for (const l of rigid) {
      const x = (p.dx[j] as number) * (p.dx[l] as number);
      const y = along ? 0 : (p.dy[j] as number) * (p.dy[l] as number);
      m[j * n + l] = (m[j * n + l] as number) + mass * (x + y);
    }
  }
}
