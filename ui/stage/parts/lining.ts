import type { Lining, Point } from '../../../sim/index.ts';
import { polar } from '../geometry.ts';
import { type Path, trace } from '../path.ts';

/**
 * Radius of the rubbing face at an angle, in reference coordinates: as ground, less what is worn
 * there. Wear is known at the middle of each element; between them it runs straight on.
 */
export function faceRadius(lining: Lining, wear: Float64Array, angle: number): number {
  const n = wear.length;
  const at = ((angle - lining.from) / (lining.to - lining.from)) * n - 0.5;
  const i = Math.max(0, Math.min(n - 2, Math.floor(at)));
  const low = wear[i] as number;
  const high = wear[i + 1] as number;
  return lining.groundRadius - (low + (high - low) * (at - i)) - chamfer(lining, angle);
}

/** Sloped ends, mm off the face. */
function chamfer({ from, to, chamferArc, chamferDepth }: Lining, angle: number): number {
  if (chamferArc === 0) return 0;
  const inside = Math.max(0, Math.min(angle - from, to - angle));
  return inside < chamferArc ? chamferDepth * (1 - inside / chamferArc) : 0;
}

/** Points of the face: thrice an element, so that chords stay within 0.003 mm on a 100 mm drum. */
const STEPS = 3;

const kept = new WeakMap<Float64Array, { lining: Lining; path: Path }>();

/** Outline of a lining from its true profile, reference coordinates. */
export function liningPath(lining: Lining, wear: Float64Array): Path {
  const seen = kept.get(wear);
  if (seen?.lining === lining) return seen.path;
  const back = lining.groundRadius - lining.thicknessNew;
  const even = lining.chamferArc === 0 && wear.every((w) => w === wear[0]);
  const t = trace();
  if (even) {
    t.arc([0, 0], lining.groundRadius - (wear[0] as number), lining.from, lining.to);
  } else t.line(...facePoints(lining, wear));
  const path = t.arc([0, 0], back, lining.to, lining.from).close().path;
  kept.set(wear, { lining, path });
  return path;
}

function facePoints(lining: Lining, wear: Float64Array): Point[] {
  const n = wear.length * STEPS;
  const corners = [lining.from + lining.chamferArc, lining.to - lining.chamferArc];
  const angles = Array.from(
    { length: n + 1 },
    (_, i) => lining.from + ((lining.to - lining.from) * i) / n,
  );
  if (lining.chamferArc > 0) angles.push(...corners);
  angles.sort((a, b) => a - b);
  return angles.map((a) => polar(faceRadius(lining, wear, a), a));
}
