import { ln } from '../math/pow.ts';
import { cos, sin } from '../math/trig.ts';
import { PI } from '../units/units.ts';
import type { Adjuster, Brake, Point, Shoe, Side, StrutPath } from './types.ts';

/**
 * What bears the force of the strut when the shoes are clamped in the drum: strut, lever, contacts, parking
 * lever, anchor pins, shoes and drum, one after another. Each gives by its size; together they are one
 * spring in line with the strut. Each yields at a force of its own.
 */

export const STRUT_PARTS = [
  'strut',
  'lever arm',
  'lever nose',
  'contacts',
  'parking lever',
  'anchor pins',
  'shoes',
  'drum',
] as const;
export type StrutPart = (typeof STRUT_PARTS)[number];

/** Steel: E, G (MPa) and Poisson's ratio (any handbook). */
const E = 210000;
const NU = 0.3;
const G = E / (2 * (1 + NU));
/** Shear area of a rectangle: 5/6 of it (Timoshenko, Strength of Materials). */
const SHEAR = 1.2;
/** Force at which contacts are taken, N: where such levers begin to yield. Twice it gives 4 % less. */
const CONTACT_FORCE = 1500;
/** Depth of a body behind a line contact, mm: half of a lever's. */
const BEHIND = 5;

/** Bending and shear of a cantilever of length l, rectangle t × h, mm/N: l³/3EI + 1.2·l/GA. */
const cantilever = (l: number, t: number, h: number): number =>
  (4 * l * l * l) / (E * t * h * h * h) + (SHEAR * l) / (G * t * h);

/**
 * Approach of a rounded edge (radius r, length along the line l) and a body of depth d, mm/N at a force F:
 * 2(1 − ν²)/(πEl)·(2·ln(2d/b) − ν/(1 − ν)), b² = 4Fr/(πE*l), E* = E/2(1 − ν²) for steel on steel
 * (K. L. Johnson, Contact Mechanics, line contact; from memory).
 */
export function lineContact(r: number, l: number, force = CONTACT_FORCE, d = BEHIND): number {
  const plane = 1 - NU * NU;
  const b = Math.sqrt((8 * force * r * plane) / (PI * E * l));
  return ((2 * plane) / (PI * E * l)) * (2 * ln((2 * d) / b) - NU / (1 - NU));
}

/** Force on the teeth for each newton of strut: the lever's law about its pin, at tooth 0. */
function toothShare({ lever }: Adjuster, path: StrutPath): number {
  if (!path.lever) return 0;
  const { nose, arm } = path.lever;
  // The nose stands across the strut's axis by its sine.
  return lever ? (nose * Math.abs(sin(lever.startAngle))) / arm : nose / arm;
}

/** Most that a pin is taken to bear for each newton of strut. */
const MOST = 4;

/** Lever arm of a direction at a point about another, mm. */
const moment = (at: Point, about: Point, along: Point): number =>
  (at[0] - about[0]) * along[1] - (at[1] - about[1]) * along[0];

/**
 * Force on the anchor pin along the strut for each newton of strut: moments about the pin of strut and
 * lining, all of whose pressure stands in the middle of its arc (the short-shoe theory of any handbook; a
 * long shoe's is a third more on the leading side). Near self-locking it would grow past all bounds; there
 * the pins are no longer what gives, and MOST stands.
 */
export function pinShare(brake: Brake, side: Side): number {
  const { front, rear } = brake.shoes;
  const shoe = brake.shoes[side];
  const out: -1 | 1 = side === 'front' ? -1 : 1;
  const { lining, anchor } = shoe;
  const middle = (lining.from + lining.to) / 2;
  const [c, s] = [cos(middle), sin(middle)];
  const at: Point = [brake.drum.radiusNew * c, brake.drum.radiusNew * s];
  const dx = rear.strutSeat[0] - front.strutSeat[0];
  const dy = rear.strutSeat[1] - front.strutSeat[1];
  const length = Math.sqrt(dx * dx + dy * dy);
  const push: Point = [(out * dx) / length, (out * dy) / length];
  // Drum turning forward, counter-clockwise: it drags the face along e_t.
  const onFace: Point = [-c - lining.friction * s, -s + lining.friction * c];
  const normal = -moment(shoe.strutSeat, anchor.at, push) / moment(at, anchor.at, onFace);
  return Math.min(MOST, Math.abs(push[0] + normal * onFace[0]));
}

/** Give of a pin in its plate, mm/N: its bending, and the plate's tilt under its moment (R. J. Roark, Formulas for Stress and Strain; from memory). */
export function pinGive({
  diameter,
  webOff: a,
  plate,
  heldAt,
}: NonNullable<StrutPath['pins']>): number {
  const radius = diameter / 2;
  const inertia = (PI * radius * radius * radius * radius) / 4;
  const stiff = (E * plate * plate * plate) / (12 * (1 - NU * NU));
  return (a * a * a) / (3 * E * inertia) + (a * a * (ln(heldAt / radius) - 0.5)) / (4 * PI * stiff);
}

/** What a pin's shift is at the strut: a shoe turns about where it bears on the drum. */
function pinArm({ lining, anchor, strutSeat }: Shoe, radius: number): number {
  const seat = strutSeat[1] - anchor.at[1];
  const bears = radius * sin((lining.from + lining.to) / 2) - anchor.at[1];
  return Math.abs((seat - bears) / bears);
}

/** Give of each part, mm at the strut for each newton in it. Empty for a brake whose parts are told as rigid. */
export function strutGives(
  brake: Brake,
): readonly { readonly part: StrutPart; readonly give: number }[] {
  const path = brake.strutPath;
  if (!path) return [];
  const { bar, lever, edgeRadius, parkingLever: p } = path;
  const share = toothShare(brake.adjuster, path);
  const whole = bar.width * bar.thickness;
  const net = (bar.width - bar.slotWidth) * bar.thickness;
  const length = brake.adjuster.lengthAtZero;
  const seat = brake.shoes.rear.strutSeat;
  const { pivot } = brake.parkingLever;
  const [dx, dy] = [pivot[0] - seat[0], pivot[1] - seat[1]];
  const toPivot = Math.sqrt(dx * dx + dy * dy);
  const span = toPivot + p.toStop;
  const inertia = (p.thickness * p.depth * p.depth * p.depth) / 12;
  const pins = (['front', 'rear'] as const).reduce((sum, side) => {
    const shoe = brake.shoes[side];
    if (shoe.anchor.kind !== 'pin' || !path.pins) return sum;
    return sum + pinGive(path.pins) * pinShare(brake, side) * pinArm(shoe, brake.drum.radiusNew);
  }, 0);
  const notch = lineContact(edgeRadius, bar.thickness);
  const nose = lever ? lineContact(edgeRadius, lever.thickness) : 0;
  return [
    // A bar pulled or pushed, L/EA, its slot by the section that is left.
    { part: 'strut', give: (length - bar.slotLength) / (E * whole) + bar.slotLength / (E * net) },
    {
      part: 'lever arm',
      give: lever ? share * share * cantilever(lever.arm, lever.thickness, lever.depth) : 0,
    },
    { part: 'lever nose', give: lever ? cantilever(lever.nose, lever.thickness, lever.depth) : 0 },
    // Two notches; nose, pin and, with what they bear, teeth.
    { part: 'contacts', give: 2 * notch + nose * (2 + share * share) },
    // A beam on two supports with the seat between: a²b²/3EIl, and its shear.
    {
      part: 'parking lever',
      give:
        (toPivot * toPivot * p.toStop * p.toStop) / (3 * E * inertia * span) +
        (SHEAR * toPivot * p.toStop) / (span * G * p.thickness * p.depth),
    },
    { part: 'anchor pins', give: pins },
    { part: 'shoes', give: path.shoesGive },
    { part: 'drum', give: path.drumGive },
  ];
}

/** Give of the whole path, mm/N. @param bending shoes that bend by themselves, so theirs is no part of it */
export const strutGive = (brake: Brake, bending = false): number =>
  strutGives(brake).reduce(
    (sum, { part, give }) => sum + (bending && part === 'shoes' ? 0 : give),
    0,
  );

/** Yield in shear over yield in tension (R. von Mises 1913): 1/√3. */
const IN_SHEAR = 1 / Math.sqrt(3);

/** Part that yields, and at which force in the strut, N. */
export interface Yielding {
  readonly part: 'lever arm' | 'lever nose' | 'lever teeth' | 'strut';
  readonly force: number;
}

const weakest = new WeakMap<Brake, Yielding | null>();

/** What gives way first, and at which force in the strut, N; null without sizes. */
export function firstToYield(brake: Brake): Yielding | null {
  let first = weakest.get(brake);
  if (first === undefined) {
    first = strutYields(brake)[0] ?? null;
    weakest.set(brake, first);
  }
  return first;
}

/**
 * At which strut force each part begins to yield, N, the weakest first: bending 6M/th² of the lever's arm and
 * nose, shear of a tooth's root, pressure in the bar's net section (elementary strength of materials). Empty
 * without sizes. Pins are no part of it: a hard press loads them more than a clamp that the lever can bear.
 */
export function strutYields(brake: Brake): readonly Yielding[] {
  const path = brake.strutPath;
  if (!path) return [];
  const { bar, lever } = path;
  const out: Yielding[] = [];
  const net = (bar.width - bar.slotWidth) * bar.thickness;
  out.push({ part: 'strut', force: path.barYield * net });
  if (lever) {
    const share = toothShare(brake.adjuster, path);
    const section = (lever.thickness * lever.depth * lever.depth) / 6;
    out.push({ part: 'lever arm', force: (path.yield * section) / (share * lever.arm) });
    out.push({ part: 'lever nose', force: (path.yield * section) / lever.nose });
    const teeth = brake.adjuster.lever;
    if (teeth) {
      // As many teeth bear as the finger is wide.
      const pitch = Math.abs(teeth.toothAngle) * teeth.toothRadius;
      const root = Math.max(1, Math.floor(teeth.window.x / pitch)) * pitch * lever.thickness;
      out.push({ part: 'lever teeth', force: (path.yield * IN_SHEAR * root) / share });
    }
  }
  return out.sort((a, b) => a.force - b.force);
}
