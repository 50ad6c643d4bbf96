import type { Brake, BrakeState, Instant, Side } from '../../../sim/index.ts';
import type { Frame } from '../geometry.ts';
import { shoeOutlines } from '../parts/shoe.ts';
import { shoeFrame } from '../place.ts';
import { DASH, type Shape, stroked, WEIGHT } from '../shapes.ts';
import { SIDES } from './band.ts';

/** The ghost shows the way back to rest this many times too large; the solid part never. */
export const GHOST_SCALE = 8;

/** Rest pose of a shoe with its distance from the present one enlarged. */
function ghostFrame(brake: Brake, now: Instant, rest: Instant, side: Side): Frame {
  const a = shoeFrame(brake, now, side);
  const b = shoeFrame(brake, rest, side);
  const anchor = brake.shoes[side].anchor.at;
  const angle = a.angle + GHOST_SCALE * (b.angle - a.angle);
  // Enlarge turn and shift at the anchor, where a pinned shoe does not shift at all.
  const shiftOf = (i: Instant): readonly [number, number] => {
    const { ux, uy } = i.shoes[side].pose;
    return [ux, uy];
  };
  const [ax, ay] = shiftOf(now);
  const [bx, by] = shiftOf(rest);
  const c = Math.cos(angle);
  const s = Math.sin(angle);
  return {
    angle,
    x: anchor[0] + ax + GHOST_SCALE * (bx - ax) - c * anchor[0] + s * anchor[1],
    y: anchor[1] + ay + GHOST_SCALE * (by - ay) - s * anchor[0] - c * anchor[1],
  };
}

/** Outlines of both shoes at rest, movement enlarged. */
export function ghost(brake: Brake, state: BrakeState, now: Instant, rest: Instant): Shape[] {
  return SIDES.flatMap((side) => {
    const place = ghostFrame(brake, now, rest, side);
    return shoeOutlines(brake, state, side).map(
      (path, i): Shape => ({
        key: `ghost ${side} ${i}`,
        path,
        place,
        style: stroked('ink', WEIGHT.medium, DASH.ghost),
        group: 'ghost',
      }),
    );
  });
}
