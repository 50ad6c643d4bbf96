import { atan2, cos } from '../math/trig.ts';
import { DEG } from '../units/units.ts';
import { kindLaws } from './kinds.ts';
import type { Brake, LeverSpring, ToothedLever } from './types.ts';

/**
 * The toothed lever as a part: its pin slides in a slot of the strut that stands square to it, the finger
 * points up through the web's window, the row of teeth hangs below the pin, and under the pin one tooth of a
 * block on the strut holds it. So the slide over a tooth runs along the window's edge and shifts the finger
 * by nothing: what the edge pulls is growth of the strut alone, and drawing and law are one mechanism.
 */
export interface LeverForm extends ToothedLever {
  /** Direction of the nose from the pin at each tooth, rad, index 0..teeth. */
  readonly angles: readonly number[];
  readonly spring: LeverSpring;
  /** Plate that the lever is cut of, mm. */
  readonly thickness: number;
}

/** Spring of a lever whose scene tells none (from memory: N/mm, N). It climbs for nothing there, as told. */
const USUAL_SPRING: LeverSpring = { rate: 1.5, fitted: 15, at: null };
/** Plate of a lever whose scene tells none, mm (from memory: such levers are pressed of 2 to 3 mm). */
const USUAL_PLATE = 2.5;

/**
 * Direction of the nose when the strut has grown by so much, rad: the crank of brake/adjuster.ts the other
 * way round, nose·(cos start − cos angle) = growth.
 */
export function noseAngle(
  { noseRadius, startAngle }: Pick<ToothedLever, 'noseRadius' | 'startAngle'>,
  growth: number,
): number {
  const c = Math.max(-1, Math.min(1, cos(startAngle) - growth / noseRadius));
  return atan2(Math.sqrt(1 - c * c), c);
}

/** Growth of the strut at a phase between teeth: 3.25 stands a quarter of the way from tooth 3 to 4, mm. */
export function growthAt(growth: readonly number[], phase: number): number {
  const n = Math.max(0, Math.min(growth.length - 1, Math.floor(phase)));
  const here = growth[n] as number;
  const next = growth[n + 1];
  return next === undefined ? here : here + (phase - n) * (next - here);
}

/**
 * A lever of a usual form in the brake's size, where the scene tells only the growth a tooth. Its finger
 * swings to both sides of the upright; its teeth stand where that growth puts them.
 */
function usual({ adjuster, shoes }: Brake): ToothedLever {
  const { growth, lengthAtZero, teeth } = adjuster;
  const { front, rear } = shoes;
  const u = front.lining.groundRadius / 100;
  const most = growth.at(-1) ?? 0;
  const noseRadius = Math.max(12 * u, most * 1.5);
  const c = Math.min(0.95, most / (2 * noseRadius));
  const startAngle = atan2(Math.sqrt(1 - c * c), c);
  const toothAngle = (180 * DEG - 2 * startAngle) / Math.max(1, teeth);
  const toothRadius = 26 * u;
  const window = { x: 4.4 * u, y: 11 * u };
  // At rest the finger's outer side stands where the strut's length is reckoned from.
  const x = rear.strutSeat[0] - lengthAtZero + window.x / 2 - noseRadius * c;
  return {
    pin: [x, front.strutSeat[1] - noseRadius],
    noseRadius,
    startAngle,
    toothAngle,
    toothRadius,
    toothHeight: Math.min(1.3 * u, toothRadius * toothAngle * 0.88),
    window,
  };
}

function make(brake: Brake): LeverForm | null {
  const { growth, kind, lever, spring, teeth } = brake.adjuster;
  if (!kindLaws[kind].toothedLever) return null;
  const own = lever ?? usual(brake);
  const angles = Array.from({ length: teeth + 1 }, (_, n) =>
    lever ? own.startAngle + n * own.toothAngle : noseAngle(own, growth[n] as number),
  );
  const thickness = brake.strutPath?.lever?.thickness ?? USUAL_PLATE;
  return { ...own, angles, spring: spring ?? USUAL_SPRING, thickness };
}

const kept = new WeakMap<Brake, LeverForm | null>();

/** The brake's toothed lever; null for other kinds of adjuster. */
export function leverForm(brake: Brake): LeverForm | null {
  const known = kept.get(brake);
  if (known !== undefined) return known;
  const made = make(brake);
  kept.set(brake, made);
  return made;
}

/**
 * Work that lifts the lever over one tooth against its spring, mJ (N·mm): the spring gives it back when the
 * lever drops (F0·h + k·h²/2).
 */
export const liftWork = ({ spring, toothHeight: h }: LeverForm): number =>
  spring.fitted * h + (spring.rate * h * h) / 2;

/**
 * Force at the strut's seats while the lever climbs from a tooth, N. What a drop gives out the shoes have
 * put in on the way up, so it is that work over the growth of the tooth (virtual work, without friction of
 * the teeth). Where the scene tells no spring it is the climb force that the scene names.
 *
 * @param strength of the spring: 1 sound, 0 broken
 */
export function climbForceAt(brake: Brake, tooth: number, strength: number): number {
  const { climbForce, growth, spring } = brake.adjuster;
  const form = spring && leverForm(brake);
  if (!form) return climbForce;
  const next = growth[tooth + 1];
  if (next === undefined) return 0;
  return (strength * liftWork(form)) / (next - (growth[tooth] as number));
}
