import { usualPressure } from '../brake/duty.ts';
import type { BrakeState } from '../brake/state.ts';
import type { Side, Turning } from '../brake/types.ts';
import { rub, type ShoeStance } from '../contact/rub.ts';
import { acrossZero, rootBetween, type Until } from '../math/root.ts';
import { cos, sin } from '../math/trig.ts';
import { asideOf, type Dressed, dress } from './dress.ts';
import { type Drive, driveToe } from './drive.ts';
import { makePlaced, place, turnsOf } from './place.ts';
import type { Rig, ShoeRig } from './rig.ts';
import { atSpeed } from './rubbing.ts';

/** How far past the touch a pinned shoe is turned, mm at the drum's radius; 10 doublings of it are 20 mm. */
const PRESSED = 0.02;
const DOUBLINGS = 10;
/** Gaps and turns, mm, that are alike at the touch. */
const TOUCHED: Until = { near: 1e-9, apart: (a, b) => Math.abs(b - a) <= 1e-9, trials: 60 };

/**
 * Does a shoe lock by itself? The toe is moved outward past the touch and the push it then needs is
 * asked for: none or a pull means that friction alone holds the drum (the practical limit of
 * friction in design texts: drag moment exceeds the moment of the radial thrust). For a shoe on a
 * pin this is the sign of mu·M_F − M_N: moments about it, of the friction at mu = 1 and of the normal
 * forces (Shigley, Mechanical Engineering Design, internal expanding shoes: self-locking at M_N = mu·M_F).
 */
function pinLocks(shoe: ShoeRig, d: Dressed, turning: Turning): boolean {
  const worn = shoe.side === 'front' ? d.front : d.rear;
  const law = { kind: 'slide', mu: d.friction[shoe.side], sense: turning } as const;
  const stance: ShoeStance = {
    freedoms: 1,
    at: 0,
    q: new Float64Array(1),
    slopes: false,
    cos: 1,
    sin: 0,
  };
  /** Least gap of the lining, mm, turned outward by so much at the drum's radius, mm. */
  const gapAt = (outward: number): number => {
    const turn = (outward / d.drum.radius) * shoe.opening;
    stance.q[0] = turn;
    stance.cos = cos(turn);
    stance.sin = sin(turn);
    rub(worn, stance, d.drum, law, shoe.rub);
    return shoe.rub.gap.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY);
  };
  const home = gapAt(0);
  let touch = 0;
  if (home > 0) {
    const clear = [0, home] as const;
    const past = acrossZero(gapAt, clear, [PRESSED, gapAt(PRESSED)], DOUBLINGS);
    // Turned so far its lining would long have passed the drum: it lies beside it.
    if (past[1] > 0) return false;
    touch = rootBetween(gapAt, clear, past, TOUCHED)[0];
  }
  gapAt(touch + PRESSED);
  return (shoe.rub.force[0] as number) * shoe.opening >= 0;
}

/** First movement of the toe past the touch, mm, doubled from step to step; the last still asked for. */
const FIRST = 0.01;
const LAST = 2;
/** A lining that bears less than this has not really touched, N. */
const TOUCHING = 1;

/** x of a shoe's toe in the built rest pose, mm. */
function toeAt(shoe: ShoeRig, { rig, restPose }: Dressed): number {
  const turns = { frontCos: 1, frontSin: 0, rearCos: 1, rearSin: 0, leverCos: 1, leverSin: 0 };
  return place(rig, restPose, turnsOf(rig, restPose, turns), shoe.toe, makePlaced(rig.n)).x;
}

/** A step that does not settle is halved, at most so often. */
const HALVINGS = 12;

/** A toe that is driven outward, at its last place where the balance settled. */
interface Driven {
  target: number;
  drive: Drive;
}

/**
 * Moves the toe outward by a step. A step on to a narrow patch may be more than the balance can follow at
 * once: then it is halved from the last settled place, until it is there.
 *
 * @returns false when there is a place from which no balance is found; `at` then stays at the last settled one
 */
function moveOut(
  at: Driven,
  step: number,
  drivenTo: (target: number, from: Drive) => Drive | null,
): boolean {
  const goal = at.target + step;
  let [part, halved] = [step, 0];
  while (at.target < goal) {
    const target = Math.min(goal, at.target + part);
    const drive = drivenTo(target, at.drive);
    if (drive) {
      at.target = target;
      at.drive = drive;
    } else if (halved === HALVINGS) return false;
    else {
      part /= 2;
      halved++;
    }
  }
  return true;
}

/**
 * A shoe that bends, or stands on an abutment, finds its own shape in contact, and a worn lining makes
 * the answer depend on the load. So the toe is moved outward step by step, the push asked for at each,
 * until the push that the piston has is reached; only settled answers are read. (The sign of the tangent
 * alone would miss a flexible shoe, which lifts its toe end first.) At friction far beyond it even a held
 * toe does not hold a bending shoe: its middle runs into the drum, and no balance is found.
 */
function freeLocks(shoe: ShoeRig, d: Dressed, turning: -1 | 1, most: number): boolean {
  const drivenTo = (target: number, from: Drive): Drive | null => {
    const drive = { ...from, pose: from.pose.slice() };
    return driveToe(d, shoe, turning, target, drive) ? drive : null;
  };
  const home = shoe.outward * toeAt(shoe, d);
  const begun = drivenTo(home, { pose: d.restPose.slice(), push: 0, bearing: 0, gap: 0 });
  if (!begun) return false;
  const at: Driven = { target: home, drive: begun };
  const stuck = shoe.freedoms === 1;
  // Up to the touch, along the line of the last two gaps; the first step is one that any face outlasts.
  let rate = 1;
  for (let i = 0; i < 40 && !(at.drive.bearing > TOUCHING); i++) {
    const { gap } = at.drive;
    const step = Math.max(FIRST / 5, (0.98 * gap) / rate);
    if (!moveOut(at, step, drivenTo)) return stuck;
    rate = Math.max(0.1, (gap - at.drive.gap) / step);
  }
  for (let step = FIRST; step <= LAST; step *= 2) {
    if (at.drive.bearing > TOUCHING && at.drive.push <= 0) return true;
    if (at.drive.push >= most) return false;
    if (!moveOut(at, step, drivenTo)) return stuck;
  }
  return at.drive.bearing > TOUCHING && at.drive.push <= 0;
}

/**
 * The shoe that would lock at this turning, or null.
 *
 * @param pressure up to which a shoe is asked that does not lock at any push alike, MPa; that of the first duty's first stop when left out
 * @param speed of the vehicle, mm/s, for friction that hangs on it (where it hangs on pressure: as it is told)
 */
export function lockedShoe(
  rig: Rig,
  state: BrakeState,
  turning: Turning,
  pressure = usualPressure(rig.brake),
  speed?: number,
): Side | null {
  if (turning === 0) return null;
  const still = dress(rig, state);
  const { rubbing } = rig.brake;
  const d = rubbing ? { ...still, friction: atSpeed(rubbing, still.friction, speed) } : still;
  const aside = asideOf(rig).rig;
  for (const shoe of [aside.front, aside.rear]) {
    const locks =
      shoe.n === 1
        ? pinLocks(shoe, d, turning)
        : freeLocks(shoe, d, turning, pressure * rig.brake.cylinder.area);
    if (locks) return shoe.side;
  }
  return null;
}
