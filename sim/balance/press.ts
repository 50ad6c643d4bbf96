import type { BrakeState, Condition } from '../brake/state.ts';
import type { Brake, Turning } from '../brake/types.ts';
import { wheelPressure } from '../brake/upstream.ts';
import type { WornBed } from '../contact/bed.ts';
import { type Friction, SHEAR_SHARE, type Sticking } from '../contact/friction.ts';
import { type Dressed, dress, drumAt, noDrum, workFor } from './dress.ts';
import { atSpeed, type Mus, settleFriction } from './rubbing.ts';
import { type Settling, type Solution, type Supports, solvePose } from './solve.ts';
import type { Acting, Fitted, Hand, Rig, ShoeRig, Work } from './types.ts';
import { gaveWay } from './work.ts';

/** What is done to the brake: line pressure (MPa), turning of the drum, pull of the cable at the hook (N). */
export interface Press {
  readonly pressure: number;
  readonly turning: Turning;
  readonly cable?: number;
  /** Turn of the drum, rad: matters when it is out of round. */
  readonly drumAngle?: number;
  /**
   * Speed of the vehicle, mm/s, for friction that hangs on it; where it is told when left out. (The drum of a
   * moving brake is turned slowly, to be watched: friction is that of the speed named here.)
   */
  readonly speed?: number;
  /** Hands on the parts. */
  readonly hands?: readonly Hand[] | undefined;
  /** The drum is off. */
  readonly drumOff?: boolean | undefined;
}

/** What really acts: what line and cable keep after release, and what a stiff lever pivot loses. */
export function acting(
  brake: Brake,
  condition: Condition,
  press: Press,
): Required<Omit<Press, 'speed' | 'hands' | 'drumOff'>> {
  const { keptPressure, keptCable, leverLoss } = condition;
  // Named one by one: copying by `...` costs a tenth of a warm solve.
  return {
    pressure: wheelPressure(brake.hydraulics, keptPressure, press.pressure),
    turning: press.turning,
    cable: Math.max((press.cable ?? 0) * (1 - leverLoss), keptCable),
    drumAngle: press.drumAngle ?? 0,
  };
}

/** What acts on a dressed brake, from its rest pose; laws of the front and rear lining. */
export function actingOn(
  d: Dressed,
  press: Pick<Press, 'pressure' | 'cable' | 'drumAngle'>,
  memory: Float64Array,
  front: Friction,
  rear: Friction,
): Acting {
  memory.set(d.home);
  return {
    pressure: press.pressure,
    cable: press.cable ?? 0,
    drum: drumAt(d, press.drumAngle ?? 0),
    frontLaw: front,
    rearLaw: rear,
    memory,
    home: d.home,
    strutLength: d.strutLength,
    strutRest: d.strutRest,
    shaken: 0,
  };
}

/**
 * Standing drum and rigid shoes: share of the normal force that each bristle carries after one press from rest.
 * An element that moved by d from the rest pose touched where its gap closed; from there its
 * tangential to normal motion is J_t·d : J_n·d, so T = −(k_t/k)·N·(J_t·d)/(J_n·d), clamped at mu·N.
 * Exact on a pin up to the turn of the normal (penetration over radius).
 */
function pressShares(
  shoe: ShoeRig,
  y: Float64Array,
  rest: Float64Array,
  mu: number,
  out: Float64Array,
): void {
  const { bed } = shoe;
  const at = shoe.at;
  const turn = at + shoe.freedoms - 1;
  const dphi = (y[turn] as number) - (rest[turn] as number);
  const ux = shoe.freedoms === 3 ? (y[at] as number) - (rest[at] as number) : 0;
  const uy = shoe.freedoms === 3 ? (y[at + 1] as number) - (rest[at + 1] as number) : 0;
  for (let i = 0; i < bed.count; i++) {
    const nx = bed.dirX[i] as number;
    const ny = bed.dirY[i] as number;
    const rx = (bed.face[i] as number) * nx - bed.anchor[0];
    const ry = (bed.face[i] as number) * ny - bed.anchor[1];
    const mx = ux - ry * dphi;
    const my = uy + rx * dphi;
    const normal = mx * nx + my * ny;
    const along = -mx * ny + my * nx;
    out[i] = normal > 1e-12 ? Math.max(-mu, Math.min(mu, (-SHEAR_SHARE * along) / normal)) : 0;
  }
}

/** Steps in which a bending shoe is pressed against a standing drum: within 0.01 % of very many. */
const PRESS_STEPS = 4;
/**
 * Steps in which a sliding shoe is pressed that dry friction holds. It goes one way until its lining
 * touches and then another: straight from rest that friction could point the wrong way. So the step in
 * which a lining touches, or the strut lets go, is parted finer: then the heel's friction is within
 * 0.1 % of that of very many steps.
 */
const SLIDE_STEPS = 16;
const FINER = 16;

/** Does dry friction hold a shoe that can slide? Then where it stands depends on how it came there. */
export const remembers = (rig: Rig, turning: Turning): boolean =>
  [rig.front, rig.rear].some(({ shoe }) => {
    if (shoe.anchor.kind !== 'abutment') return false;
    const { friction, shakenOff } = shoe.holdDown;
    return shoe.anchor.friction > 0 || friction * (turning === 0 ? 1 : 1 - shakenOff) > 0;
  });

/** One step of a press: by how much each freedom went on in it, and what it ended on. */
interface Step extends Supports {
  readonly gone: Float64Array;
  /** N. */
  readonly clamp: number;
}

/** The steps of a press, coarse and fine, by their place in it. */
export type Path = Map<number, Step>;

/** Bristles of a lining on a standing drum, from the rest pose on. */
function bristles(shoe: ShoeRig, worn: WornBed, mu: number): Sticking & { readonly shoe: ShoeRig } {
  const { count, anchor } = worn.bed;
  return {
    kind: 'stick',
    mu,
    deflection: new Float64Array(count),
    beforeX: worn.x.map((x) => x + anchor[0]),
    beforeY: worn.y.map((y) => y + anchor[1]),
    turn: 0,
    shoe,
  };
}

/** A step that is to be solved: what it lies on, and the clamp of its strut, N, where one is known. */
export type From = Supports & { readonly clamp?: number };

/** A press that is to be built up in steps. */
export interface InSteps {
  readonly rig: Rig;
  readonly work: Work;
  /** With its whole pressure and pull; its memory, of the rest pose, goes along with the steps. */
  readonly act: Acting;
  readonly worn: Pick<Fitted, 'front' | 'rear'>;
  readonly turning: Turning;
  /** Rest pose in, solution out. */
  readonly pose: Float64Array;
  /** One step, from the pose of the last. */
  readonly solve: (from: From) => Solution;
  /** The steps of a press nearly alike, where each step starts from; the steps of this one out. */
  readonly path?: Path;
}

/**
 * A press built up in steps, with bristles that remember: of the heels, hold-downs and cups, and those
 * of the linings on a standing drum (the `stick` law, as Motion has it). A bending shoe turns until it
 * touches and bends from there, so no one direction tells how far a face was dragged.
 */
export function pressInSteps(press: InSteps): Solution {
  const { rig, work, act, worn, turning, pose, solve, path } = press;
  const { pressure, cable, hands } = act;
  const standing: ReturnType<typeof bristles>[] = [];
  if (turning === 0) {
    const front = bristles(rig.front, worn.front, act.frontLaw.mu);
    const rear = bristles(rig.rear, worn.rear, act.rearLaw.mu);
    act.frontLaw = front;
    act.rearLaw = rear;
    standing.push(front, rear);
  }
  const slides = remembers(rig, turning);
  const steps = slides ? SLIDE_STEPS : PRESS_STEPS;
  /** @param at place of the step, in fine steps */
  const stepTo = (at: number, from: Supports, coarse = true): Solution => {
    const share = at / (steps * FINER);
    act.pressure = pressure * share;
    act.cable = cable * share;
    if (hands) {
      act.hands = hands.map((h) => ({
        ...h,
        rate: h.rate * share,
        limit: h.limit * share,
      }));
    }
    return path ? again(path, 2 * at + (coarse ? 1 : 0), pose, from, solve) : solve(from);
  };
  /** Takes over what the last step did to all bristles. */
  const keep = (): void => {
    for (const { shoe, deflection, beforeX, beforeY } of standing) {
      deflection.set(shoe.rub.deflection);
      beforeX.set(shoe.rub.faceX);
      beforeY.set(shoe.rub.faceY);
    }
    gaveWay(work, act);
    act.memory.set(work.after);
  };
  let solution = stepTo(0, FROM_REST);
  for (let i = 1; i <= steps; i++) {
    keep();
    const was = solution;
    const from = pose.slice();
    const held = holds(rig, was);
    solution = stepTo(i * FINER, was);
    if (!slides || holds(rig, solution) === held) continue;
    pose.set(from);
    solution = was;
    for (let k = 1; k <= FINER; k++) {
      if (k > 1) keep();
      solution = stepTo((i - 1) * FINER + k, solution, false);
    }
  }
  return solution;
}

/**
 * A step of a press nearly like the one before, which went on from its own last pose by nearly as much and ended on
 * the same supports: that is where Newton starts. From the old pose itself the bristles, which hold a hair elsewhere
 * by now, would seem to stick or slide at random.
 */
function again(
  path: Path,
  at: number,
  pose: Float64Array,
  from: Supports,
  solve: InSteps['solve'],
): Solution {
  const before = path.get(at);
  const gone = before?.gone ?? new Float64Array(pose.length);
  const start = pose.slice();
  for (let j = 0; j < pose.length; j++) pose[j] = (pose[j] as number) + (gone[j] as number);
  const s = solve(before ?? from);
  for (let j = 0; j < pose.length; j++) gone[j] = (pose[j] as number) - (start[j] as number);
  const { strutOn, leverFree, shakenPart, clamp } = s;
  path.set(at, {
    strutOn,
    leverFree,
    ...(shakenPart === undefined ? {} : { shakenPart }),
    clamp,
    gone,
  });
  return s;
}

/** What the shoes lie on, as a number: strut, and drum front and rear. */
function holds(rig: Rig, s: Supports): number {
  const bears = (shoe: ShoeRig): boolean => shoe.rub.normal.some((n) => n > 0);
  return (s.strutOn ? 1 : 0) + (bears(rig.front) ? 2 : 0) + (bears(rig.rear) ? 4 : 0);
}

/** A solved instant and what the solver left behind, for callers that go on from it. */
export interface Solved {
  readonly dressed: Dressed;
  readonly act: Acting;
  readonly work: Work;
  readonly pose: Float64Array;
  readonly solution: Solution;
}

/** A pose near the answer with its supports: saves iterations, changes nothing else. */
export interface Guess extends Supports {
  readonly pose: Float64Array;
}

const NO_SHARES = [new Float64Array(0), new Float64Array(0)] as const;

/** A cold start stands on the strut: the strut is let go when it would have to pull. */
const FROM_REST: Supports = { strutOn: true, leverFree: false };

/**
 * Balance of one instant: one steady press from the built rest pose, without other memory.
 *
 * @param guess pose to start from (only the number of iterations depends on it; a press that goes by
 * steps starts from rest)
 */
export function solveBalance(rig: Rig, state: BrakeState, press: Press, guess?: Guess): Solved {
  return solveDressed(dress(rig, state), press, guess);
}

/**
 * As solveBalance, on a brake already dressed. Friction that hangs on pressure is found together with the
 * balance; a press that goes by steps has that of its end throughout.
 */
export function solveDressed(d: Dressed, press: Press, guess?: Guess): Solved {
  const { rig, friction } = d;
  const { rubbing } = rig.brake;
  if (!rubbing) return solveWith(d, press, friction, guess);
  const base = press.turning === 0 ? friction : atSpeed(rubbing, friction, press.speed);
  let solved: Solved | undefined;
  const found = settleFriction(rig, rubbing, base, (mus) => {
    solved = solveWith(d, press, mus, guess);
  });
  const { solution, ...rest } = solved as unknown as Solved;
  return { ...rest, solution: { ...solution, settled: solution.settled && found } };
}

/** A press with frictions that are known. */
function solveWith(d: Dressed, asked: Press, mus: Mus, guess?: Guess): Solved {
  const press = acting(d.rig.brake, d.state.condition, asked);
  const { rig } = d;
  const work = workFor(d);
  const pose = (guess?.pose ?? d.restPose).slice();
  const shares =
    press.turning === 0
      ? ([new Float64Array(rig.front.bed.count), new Float64Array(rig.rear.bed.count)] as const)
      : NO_SHARES;
  const law = (index: 0 | 1): Friction => {
    const mu = index === 0 ? mus.front : mus.rear;
    return press.turning === 0
      ? { kind: 'press', mu, start: shares[index] }
      : { kind: 'slide', mu, sense: press.turning };
  };
  const act = actingOn(d, press, work.memory, law(0), law(1));
  const hands = asked.hands?.length ? asked.hands : undefined;
  if (hands) act.hands = hands;
  if (asked.drumOff) {
    act.drumOff = true;
    act.drum = noDrum(rig);
  }
  const under: Settling = {
    inertia: null,
    leverStop: d.leverStop,
    shaken: press.turning !== 0 ? 'off the strut' : 'not',
  };
  const clampedGuess = guess ?? FROM_REST;
  // A cable alone is solved without friction on a standing drum: the middle of what a drum about to slip either way
  // gives, which the hand lever's notches are counted by. Motion, which knows how it came there, has the friction.
  const rounds = press.turning === 0 && (press.pressure > 0 || hands) ? 4 : 1;
  let solution: Solution | null = null;
  if (!guess && act.cable > 0) {
    // Does the cable lift the lever off its stop? It must beat the clamp of the released strut there.
    solution = solvePose(
      rig,
      work,
      pose,
      { ...act, cable: 0, pressure: 0, hands: undefined },
      { ...under, shaken: 'not' },
      FROM_REST,
    );
    const notchArm = Math.abs(work.seatGradient[rig.leverAt] as number);
    solution.leverFree = act.cable * rig.hookArm > solution.clamp * notchArm;
  }
  const solve = (from: Supports): Solution => solvePose(rig, work, pose, act, under, from);
  const pushed = press.pressure > 0 || act.cable > 0 || hands !== undefined;
  const slides = pushed && remembers(rig, press.turning);
  if (slides || (rounds > 1 && rig.front.modes > 0)) {
    pose.set(d.restPose);
    return {
      dressed: d,
      act,
      work,
      pose,
      solution: pressInSteps({ rig, work, act, worn: d, turning: press.turning, pose, solve }),
    };
  }
  for (let i = 0; i < rounds; i++) {
    solution = solve(solution ?? clampedGuess);
    if (i + 1 < rounds) {
      pressShares(rig.front, pose, d.restPose, mus.front, shares[0]);
      pressShares(rig.rear, pose, d.restPose, mus.rear, shares[1]);
    }
  }
  // What broke out slides freely from then on: the shoe snaps.
  for (let i = 0; i < 2 && gaveWay(work, act); i++) solution = solve(solution ?? clampedGuess);
  return { dressed: d, act, work, pose, solution: solution as Solution };
}
