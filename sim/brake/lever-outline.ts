import { cos, sin } from '../math/trig.ts';
import { DEG } from '../units/units.ts';
import type { LeverForm } from './lever-form.ts';
import { outlineSums, STEEL } from './outline-sums.ts';
import type { Point } from './types.ts';

/**
 * The toothed lever's outline, drawn and weighed: in its own frame, its pin at 0, as it stands at tooth 0.
 * Sizes beside the scene's are a usual form's, in the unit u = 1 at teeth 27 mm from the pin.
 */
export interface LeverOutline {
  readonly outer: readonly Point[];
  readonly hole: readonly Point[];
  /** Middle of the finger's rounded end. */
  readonly nose: Point;
  /** Crests and roots of the row in turn, from the tooth below the first to the one past the last. */
  readonly row: readonly Point[];
}

const HUB = 5.2;
/** The row ends this far beyond its last flanks, and its edges run to the hub so far aside, rad. */
const MARGIN = 1.7 * DEG;
const ASIDE = 50 * DEG;
/** Opening in the fan: its middle line and half its width, mm at u = 1; spoke beside it, rad. */
const OPENING = { at: 14, half: 4.3, spoke: 21 * DEG };
/** Round corners are drawn by chords of this turn. */
const CHORD = 5 * DEG;

const polar = (r: number, a: number, [x, y]: Point = [0, 0]): Point => [
  x + r * cos(a),
  y + r * sin(a),
];

/** Points along an arc, both ends among them; clockwise when `to` is less. */
function arc(middle: Point, r: number, from: number, to: number): Point[] {
  const n = Math.max(1, Math.ceil(Math.abs(to - from) / CHORD));
  return Array.from({ length: n + 1 }, (_, i) => polar(r, from + ((to - from) * i) / n, middle));
}

/** Direction of a place in the row from the pin, rad: tooth n hangs straight down when the lever stands at n. */
export function rowAngle({ angles, startAngle }: LeverForm, tooth: number): number {
  const last = angles.length - 1;
  const n = Math.max(0, Math.min(last - 1, Math.floor(tooth)));
  const [a, b] = [angles[n] as number, angles[n + 1] ?? (angles[n] as number)];
  return -90 * DEG - (a + (tooth - n) * (b - a) - startAngle);
}

/**
 * The saw of the row: from a tooth's root, which lies `toothRadius` from the pin, the flank falls away from
 * the pin by `toothHeight` to the next tooth's crest; there the steep face leads back to the root.
 */
export function rowPoints(form: LeverForm): Point[] {
  const { angles, toothHeight, toothRadius } = form;
  const out: Point[] = [];
  for (let k = -1; k <= angles.length; k++) {
    const a = rowAngle(form, k);
    out.push(polar(toothRadius + toothHeight, a), polar(toothRadius, a));
  }
  return out;
}

export function leverOutline(form: LeverForm): LeverOutline {
  const { angles, noseRadius, startAngle, toothRadius, window } = form;
  const u = toothRadius / 27;
  const right = rowAngle(form, -1) + MARGIN;
  const left = rowAngle(form, angles.length) - MARGIN;
  const row = rowPoints(form);
  const tip = window.x / 2;
  // Places of the finger are told for one straight up and 12 mm long.
  const [c, s] = [sin(startAngle), -cos(startAngle)];
  const f = (x: number, y: number): Point => {
    const long = (y * noseRadius) / 12;
    return [c * x - s * long, s * x + c * long];
  };
  const nose = polar(noseRadius, startAngle);
  const quarter = 90 * DEG;
  const outer: Point[] = [
    polar(toothRadius, right),
    ...arc([0, 0], HUB * u, right + ASIDE, startAngle - 42 * DEG),
    f(2.7, 6.8),
    f(tip, 10.6),
    ...arc(nose, tip, startAngle - quarter, startAngle + quarter),
    f(-tip, 10.6),
    f(-2.7, 6.8),
    ...arc([0, 0], HUB * u, startAngle + 42 * DEG, left - ASIDE + 360 * DEG),
    polar(toothRadius, left),
    ...[...row].reverse(),
  ];
  const [from, to] = [right - OPENING.spoke, left + OPENING.spoke];
  const [at, half] = [OPENING.at * u, OPENING.half * u];
  const hole =
    from > to
      ? [
          ...arc([0, 0], at + half, from, to),
          ...arc(polar(at, to), half, to, to - 180 * DEG),
          ...arc([0, 0], at - half, to, from),
          ...arc(polar(at, from), half, from + 180 * DEG, from),
        ]
      : [];
  return { outer, hole, nose, row };
}

export interface LeverMass {
  /** mm², of the plate as drawn. */
  readonly area: number;
  /** tonne */
  readonly mass: number;
  /** tonne·mm², about the pin. */
  readonly inertia: number;
}

/** Mass and inertia of the lever from its outline, the plate that it is cut of and the density of steel. */
export function leverMass(form: LeverForm): LeverMass {
  const { outer, hole } = leverOutline(form);
  const [whole, out] = [outlineSums(outer), outlineSums(hole)];
  const area = whole.area - out.area;
  const sheet = STEEL * form.thickness;
  return {
    area,
    mass: sheet * area,
    inertia: sheet * (whole.polar - out.polar),
  };
}
