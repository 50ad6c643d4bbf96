import type { MovingShoe } from './brake-joint.ts';
import type { MotionPress } from './record.ts';

/** Are two presses the same to a step? Hands count as the same only where they are the same object. */
export function samePress(a: MotionPress, b: MotionPress): boolean {
  if (a === b) return true;
  return (
    a.pressure === b.pressure &&
    a.turning === b.turning &&
    (a.cable ?? 0) === (b.cable ?? 0) &&
    a.drumAngle === b.drumAngle &&
    a.speed === b.speed &&
    a.torque === b.torque &&
    a.rim === b.rim &&
    (a.coasts ?? false) === (b.coasts ?? false) &&
    (a.rolling ?? false) === (b.rolling ?? false) &&
    (a.drumOff ?? false) === (b.drumOff ?? false) &&
    a.hands === b.hands
  );
}

/** Steps in a row without motion after which a brake lies still: a tenth of a second. */
export const LIES = 24;

/** Motion in a step that is none, mm and rad: rounding leaves some 1e-16; 1e-12 a step are a hair in a year. */
const NONE = 1e-12;

/**
 * Did anything move in a step? A step is a pure function of pose, speeds, memory, bristles, drum and press; when
 * nothing moves under the same press, nothing will.
 */
export class Still {
  #pose = new Float64Array(0);
  #bristles = new Float64Array(0);

  /** Looks at the end of a step, or at a moment put on; is it as at the last look? */
  look(pose: Float64Array, [front, rear]: readonly [MovingShoe, MovingShoe]): boolean {
    const count = front.law.deflection.length;
    if (this.#pose.length !== pose.length) {
      this.#pose = pose.slice();
      this.#bristles = new Float64Array(count + rear.law.deflection.length);
      return false;
    }
    // What moves most is looked at first: a moving brake pays for a comparison or two.
    const same =
      alike(pose, this.#pose, 0) &&
      alike(front.law.deflection, this.#bristles, 0) &&
      alike(rear.law.deflection, this.#bristles, count);
    this.#pose.set(pose);
    this.#bristles.set(front.law.deflection);
    this.#bristles.set(rear.law.deflection, count);
    return same;
  }
}

function alike(now: Float64Array, before: Float64Array, from: number): boolean {
  for (let i = 0; i < now.length; i++) {
    if (!(Math.abs((now[i] as number) - (before[from + i] as number)) < NONE)) return false;
  }
  return true;
}
