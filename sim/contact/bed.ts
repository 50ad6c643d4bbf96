import { type BedModes, MODE_PLACES } from '../brake/flex.ts';
import type { Drum, Lining, Point } from '../brake/types.ts';
import { cos, sin } from '../math/trig.ts';

/**
 * The lining as N elements along its arc, each a one-sided radial spring
 * (Winkler bed: pressure = modulus / thickness × penetration; e.g. Timoshenko, Strength of
 * Materials II, "beams on elastic foundation", here on a rigid or slender shoe).
 */
export interface Bed {
  readonly count: number;
  /** Middle of each element in the reference pose, rad. */
  readonly angle: Float64Array;
  readonly dirX: Float64Array;
  readonly dirY: Float64Array;
  /** Unworn rubbing face: distance from the drum axis in the reference pose, mm. */
  readonly face: Float64Array;
  /** Unworn thickness, mm. */
  readonly thickness: Float64Array;
  /** 1 where the unworn face is a sloped end. */
  readonly sloped: Uint8Array;
  /** Of the lining, mm, and of one element along it, rad: its face is as large as width·r·arc, r its distance from the axis. */
  readonly width: number;
  readonly arc: number;
  readonly modulus: number;
  /** Pin or heel centre, mm. */
  readonly anchor: Point;
  /** How a bending shoe moves the unworn faces; null on a rigid one. */
  readonly modes: BedModes | null;
}

/** An unworn lining by elements: middle of each (rad), face from the drum axis, thickness (mm), and sloped ends. */
export type LiningShape = Pick<Bed, 'angle' | 'face' | 'thickness' | 'sloped'>;

/**
 * The face is a circle of the ground radius whose middle touches the new drum: its centre lies
 * (R − r_g) along the middle of the arc, so a ray at angle d from the middle meets it at
 * (R − r_g)·cos d + sqrt(r_g² − (R − r_g)²·sin² d) (plane trigonometry). Sloped ends are cut from it.
 */
export function liningShape(lining: Lining, drum: Drum, count: number): LiningShape {
  const angle = new Float64Array(count);
  const face = new Float64Array(count);
  const thickness = new Float64Array(count);
  const sloped = new Uint8Array(count);
  const step = (lining.to - lining.from) / count;
  const middle = (lining.from + lining.to) / 2;
  const shift = drum.radiusNew - lining.groundRadius;
  for (let i = 0; i < count; i++) {
    const a = lining.from + (i + 0.5) * step;
    const s = sin(a - middle) * shift;
    const fromEnd = Math.min(a - lining.from, lining.to - a);
    const onSlope = fromEnd < lining.chamferArc;
    const cut = onSlope ? lining.chamferDepth * (1 - fromEnd / lining.chamferArc) : 0;
    const r =
      cos(a - middle) * shift + Math.sqrt(lining.groundRadius * lining.groundRadius - s * s) - cut;
    angle[i] = a;
    face[i] = r;
    thickness[i] = lining.thicknessNew + r - drum.radiusNew;
    sloped[i] = onSlope && cut > 0 ? 1 : 0;
  }
  return { angle, face, thickness, sloped };
}

/**
 * Thinnest lining left, mm. A sloped end is no wear and is not measured there, as with a gauge
 * (common practice).
 *
 * @param wear depth worn off each element, mm
 */
export function thinnestLeft(
  shape: Pick<Bed, 'thickness' | 'sloped'>,
  wear: ArrayLike<number>,
): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < shape.thickness.length; i++) {
    if (shape.sloped[i]) continue;
    least = Math.min(least, (shape.thickness[i] as number) - (wear[i] as number));
  }
  return least;
}

/** Builds the bed of a lining: its shape, and what each element is. */
export function buildBed(lining: Lining, drum: Drum, anchor: Point, count: number): Bed {
  const shape = liningShape(lining, drum, count);
  return {
    count,
    ...shape,
    dirX: shape.angle.map(cos),
    dirY: shape.angle.map(sin),
    width: lining.width,
    arc: (lining.to - lining.from) / count,
    modulus: lining.modulus,
    anchor,
    modes: null,
  };
}

/**
 * The bed as worn: where each element's face stands, how large and how stiff it is. Made anew when wear
 * changes. A face that has lost w lies on a circle nearer to the axis, and the sides of its element are
 * radii: its area is (r − w)/r of what it was, and what was worn off, b·arc·(r·w − w²/2) (plane geometry).
 */
export interface WornBed {
  readonly bed: Bed;
  /** Face of each element from the anchor, shoe frame, mm. */
  readonly x: Float64Array;
  readonly y: Float64Array;
  /** Area of each face, mm². */
  readonly area: Float64Array;
  /** N/mm of penetration. */
  readonly stiffness: Float64Array;
  /** How a bending shoe moves the faces as they are; null on a rigid one. */
  readonly modes: BedModes | null;
}

/** Least thickness left in the stiffness when a lining is worn through, mm: keeps it finite. */
const WORN_THROUGH = 0.05;

/**
 * @param wear depth worn off each element, mm
 * @param softening extra compliance of each element, mm/MPa: k·s of a wear lump taken implicitly
 * (see wear/lump.ts); 0 otherwise
 */
export function wornBed(bed: Bed, wear: Float64Array, softening = 0): WornBed {
  const make = () => new Float64Array(bed.count);
  const modes = bed.modes && { ...bed.modes, face: bed.modes.face.slice() };
  const worn = { bed, x: make(), y: make(), area: make(), stiffness: make(), modes };
  wearBed(worn, wear, softening);
  return worn;
}

/** Brings a bed to another wear in place; arguments as of wornBed. */
export function wearBed(worn: WornBed, wear: Float64Array, softening: number): void {
  const { bed, x, y, area, stiffness } = worn;
  const { face, dirX, dirY, thickness, anchor, modulus } = bed;
  const across = bed.width * bed.arc;
  for (let i = 0; i < bed.count; i++) {
    const w = wear[i] as number;
    const r = (face[i] as number) - w;
    x[i] = r * (dirX[i] as number) - anchor[0];
    y[i] = r * (dirY[i] as number) - anchor[1];
    const t = Math.max(WORN_THROUGH, (thickness[i] as number) - w);
    const a = across * r;
    area[i] = a;
    stiffness[i] = a / (t / modulus + softening);
  }
  if (worn.modes && bed.modes) wearModes(worn.modes, bed.modes, wear);
}

/** A worn face lies nearer to the steel, so the turn of the section behind it drags it along less. */
function wearModes(worn: BedModes, unworn: BedModes, wear: Float64Array): void {
  const { turning } = unworn;
  for (let i = 0; i < wear.length; i++) {
    const w = wear[i] as number;
    const at = (2 * i + 1) * MODE_PLACES;
    for (let m = 0; m < unworn.count; m++) {
      worn.face[at + m] =
        (unworn.face[at + m] as number) - w * (turning[i * MODE_PLACES + m] as number);
    }
  }
}
