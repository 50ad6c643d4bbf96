/**
 * Dry friction at one place as an elastic bristle clamped at its limit (the same law as in rub.ts):
 * the force is stiffness × (place − anchor), never more than the limit; when it would be more, the
 * anchor is dragged along. Reversal gives hysteresis by itself.
 */
export interface StickForce {
  force: number;
  slope: number;
  anchor: number;
}

/**
 * @param place where the part is, mm
 * @param anchor where its bristle holds, mm
 * @returns force on the part (against the motion, N), its slope (N/mm, never positive) and the
 * anchor after sliding
 */
export function stickForce(
  place: number,
  anchor: number,
  stiffness: number,
  limit: number,
  out: StickForce,
): StickForce {
  const pull = -stiffness * (place - anchor);
  if (limit <= 0) {
    out.force = 0;
    out.slope = 0;
    out.anchor = place;
  } else if (pull > limit) {
    out.force = limit;
    out.slope = 0;
    out.anchor = place + limit / stiffness;
  } else if (pull < -limit) {
    out.force = -limit;
    out.slope = 0;
    out.anchor = place - limit / stiffness;
  } else {
    out.force = pull;
    out.slope = -stiffness;
    out.anchor = anchor;
  }
  return out;
}
