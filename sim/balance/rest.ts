import { MODE_PLACES } from '../brake/flex.ts';
import { type BrakeState, type Condition, strutLength } from '../brake/state.ts';
import type { Side } from '../brake/types.ts';
import type { WornBed } from '../contact/bed.ts';
import { roundDrum } from '../contact/drum.ts';
import { makeRub } from '../contact/rub.ts';
import { newtonOn } from '../math/root.ts';
import { measure } from './forces/sums.ts';
import { place, turnsOf } from './place.ts';
import { solvePose } from './solve.ts';
import type { Acting, Rig, ShoeRig, Work } from './types.ts';
import { makeWork, prepare } from './work.ts';

/** What of a state a rest pose hangs on, beside the worn linings and the lever's stop. */
export type Standing = Pick<BrakeState, 'tooth' | 'condition'>;

/** A released brake whose rest pose is asked for. */
export interface Resting {
  readonly on: RestRig;
  readonly state: Standing;
  readonly worn: Readonly<Record<Side, WornBed>>;
  /** Turn of the parking lever on its stop, rad. */
  readonly leverStop: number;
}

/** A rig of its own for finding rest poses, so that dressing a brake disturbs no solve's buffers. */
export interface RestRig {
  readonly rig: Rig;
  readonly work: Work;
}

export function makeRestRig(rig: Rig): RestRig {
  const own = (shoe: ShoeRig): ShoeRig => ({ ...shoe, rub: makeRub(shoe.bed.count, shoe.n) });
  const quiet = { ...rig, front: own(rig.front), rear: own(rig.rear) };
  return { rig: quiet, work: makeWork(quiet) };
}

/** Distance of a lining element's face, as bent, from the axis in a pose, mm. @param c, s of the shoe's turn */
export function faceAt(
  shoe: ShoeRig,
  worn: WornBed,
  pose: Float64Array,
  c: number,
  s: number,
  i: number,
): number {
  const { bed, modes } = worn;
  let lx = worn.x[i] as number;
  let ly = worn.y[i] as number;
  for (let m = 0; modes && m < modes.count; m++) {
    const z = pose[shoe.at + shoe.freedoms + m] as number;
    const gr = (modes.face[2 * MODE_PLACES * i + m] as number) * z;
    const gt = (modes.face[(2 * i + 1) * MODE_PLACES + m] as number) * z;
    lx += gr * (bed.dirX[i] as number) - gt * (bed.dirY[i] as number);
    ly += gr * (bed.dirY[i] as number) + gt * (bed.dirX[i] as number);
  }
  const x = bed.anchor[0] + c * lx - s * ly;
  const y = bed.anchor[1] + s * lx + c * ly;
  return Math.sqrt(x * x + y * y);
}

/** Distance of a lining's middle (mean of the two middle elements) from the axis in a pose, mm. */
export function reach(
  shoe: ShoeRig,
  worn: WornBed,
  pose: Float64Array,
  c: number,
  s: number,
): number {
  const half = worn.bed.count / 2;
  return (faceAt(shoe, worn, pose, c, s, half - 1) + faceAt(shoe, worn, pose, c, s, half)) / 2;
}

/** Distance of the strut's seats in a pose, mm. Fills the work's turns and seats. */
export function seatsApart({ rig, work: w }: RestRig, y: Float64Array): number {
  turnsOf(rig, y, w.turns);
  place(rig, y, w.turns, rig.front.seat, w.strut.a);
  place(rig, y, w.turns, rig.rear.seat, w.strut.b);
  return measure(w.strut).length;
}

/** Of a pair of shoes, mm: its strut and its place count as met within this. */
const MET = 1e-12;

/**
 * Turns the pair of shoes on its heels as they are until the strut fits between its seats and the pair
 * stands sideways where it should.
 *
 * @param length of the strut, mm
 * @param off how far the pair stands from there, mm; asked right after the turns of `work` are filled
 */
export function turnPair(on: RestRig, y: Float64Array, length: number, off: () => number): boolean {
  const turn = ({ at, freedoms }: ShoeRig): number => at + freedoms - 1;
  const errors = (): readonly number[] => [seatsApart(on, y) - length, off()];
  return newtonOn(y, [turn(on.rig.front), turn(on.rig.rear)], errors, MET, 30);
}

/**
 * Built rest pose. The strut fixes the distance of the seats; how the pair stands sideways is a
 * rule: both centre gaps alike (mean of the two middle elements), as a brake stands after its drum
 * has turned. Heels at home (shift 0), bent as `y` is.
 */
function turnHome({ on, state, worn }: Resting, y: Float64Array): void {
  const { rig } = on;
  const { turns } = on.work;
  turnPair(
    on,
    y,
    strutLength(rig.brake, state.tooth),
    () =>
      reach(rig.front, worn.front, y, turns.frontCos, turns.frontSin) -
      reach(rig.rear, worn.rear, y, turns.rearCos, turns.rearSin),
  );
}

/** Grip that holds the shoes at home while their bending is found, N: more than any spring. */
const FIRM = 1e9;
/** Nothing but springs and strut acts on the shoes meanwhile. */
const UNPUSHED: Pick<Condition, 'pistonStuck' | 'lean'> = {
  pistonStuck: { front: false, rear: false },
  lean: { front: 0, rear: 0 },
};
/** The brake released and its drum away: what acts then. */
function released({ on, state, worn }: Resting, firm: Partial<Condition> = {}): Acting {
  const { rig, work } = on;
  const length = strutLength(rig.brake, state.tooth);
  const still = { strutLength: length, nextTooth: 0, climbForce: 0 };
  prepare(work, { condition: { ...state.condition, ...firm, ...UNPUSHED }, ...worn, ...still });
  const memory = new Float64Array(work.memory.length);
  const unrubbed = { kind: 'slide', mu: 0, sense: 0 } as const;
  return {
    pressure: 0,
    cable: 0,
    drum: roundDrum(2 * rig.brake.drum.radiusMax),
    frontLaw: unrubbed,
    rearLaw: unrubbed,
    memory,
    home: memory,
    strutLength: length,
    strutRest: Number.POSITIVE_INFINITY,
    shaken: 0,
  };
}

/** Bending is settled when no place moves more than this from round to round, mm. */
const SETTLED = 1e-9;

/**
 * How springs and strut bend the shoes at rest: balance with the drum away and the shoes held at
 * home, repeated since the bent shoes' home is a little elsewhere.
 */
function bend(r: Resting, y: Float64Array): void {
  const { on, leverStop } = r;
  const { rig, work: w } = on;
  const act = released(r, { groove: FIRM });
  const { memory } = act;
  const under = { inertia: null, leverStop, shaken: 'not' } as const;
  const shoes = [rig.front, rig.rear] as const;
  const solved = new Float64Array(rig.n);
  for (let round = 0; round < 8; round++) {
    noteRest(on, y, memory);
    solved.set(y);
    solvePose(rig, w, solved, act, under, { strutOn: true, leverFree: false });
    let moved = 0;
    for (const shoe of shoes) {
      for (let m = 0; m < shoe.modes; m++) {
        const j = shoe.at + shoe.freedoms + m;
        const change = Math.abs((solved[j] as number) - (y[j] as number));
        moved = Math.max(moved, change * (shoe.reach[m] as number));
        y[j] = solved[j] as number;
      }
    }
    turnHome(r, y);
    if (moved < SETTLED) return;
  }
}

/** Puts every force at home in a pose: what it then remembers. */
export function noteRest({ rig, work: w }: RestRig, y: Float64Array, memory: Float64Array): void {
  turnsOf(rig, y, w.turns);
  for (const force of w.forces) force.rest?.(w, y, memory);
}

/**
 * Clamp of the strut in the released brake, N: springs press the shoes on it. Its length is told as it stands
 * there, so only what it bears beyond that shortens it. With the drum away: one that stands in the way is no
 * part of it. Nought where nothing gives.
 *
 * @param restPose the built one
 */
export function restClamp(r: Resting, restPose: Float64Array): number {
  const { on, leverStop } = r;
  const { rig, work } = on;
  if (rig.strutGive === 0) return 0;
  const act = released(r);
  noteRest(on, restPose, act.memory);
  const under = { inertia: null, leverStop, shaken: 'not' } as const;
  const pose = restPose.slice();
  return Math.max(
    0,
    solvePose(rig, work, pose, act, under, { strutOn: true, leverFree: false }).clamp,
  );
}

/** The pose in which the released brake stands, as built. */
export function builtRest(r: Resting): Float64Array {
  const { rig } = r.on;
  const y = new Float64Array(rig.n);
  y[rig.leverAt] = r.leverStop;
  turnHome(r, y);
  if (rig.front.modes > 0) bend(r, y);
  return y;
}
