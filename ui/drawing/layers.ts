import type { BrakeState } from '../../sim/index.ts';
import {
  dragOf,
  gapsOf,
  type Instant,
  peak,
  type Rig,
  roleOf,
  type Side,
} from '../../sim/index.ts';
import { number } from '../format.ts';
import { Pen } from './pen.ts';
import { arcPoints, type Label, line, polar, polygon, type Shape, type XY } from './shapes.ts';
import { liningOutline, mover } from './shoe-parts.ts';
import type { Token } from './theme.ts';

/** Layers over the brake: what cannot be seen at true scale, each with its magnification said. */

const DEG = 180 / Math.PI;
/** The outer band begins here, beyond the rim, mm. */
export const band = (rig: Rig): number => rig.brake.drum.radiusNew + rig.brake.drum.rim + 2.6;
/** Pressure comb, mm per MPa. */
const COMB = 26;
/** Forces, mm per N. */
export const FORCE = 0.0125;

export interface Layer {
  readonly shapes: Shape[];
  readonly labels: Label[];
}

const tokens = (
  side: Side,
  i: Instant,
): { role: 'leading' | 'trailing'; line: Token; fill: Token } => {
  const role = roleOf(side, i.turning);
  return role === 'leading'
    ? { role, line: 'lead', fill: 'leadFill' }
    : { role, line: 'trail', fill: 'trailFill' };
};

const outward = (side: Side): 'start' | 'end' => (side === 'front' ? 'end' : 'start');

/** Gap at each element, drawn from the outer band outward: height = gap × magnification. */
export function gapFan(rig: Rig, i: Instant, magnification: number, scale: number): Layer {
  const pen = new Pen();
  const labels: Label[] = [];
  const r0 = band(rig);
  // A label every so many px only: on a small stage the middle one alone.
  const roomy = scale > 1.8;
  for (const side of ['front', 'rear'] as const) {
    const s = i.shoes[side];
    const { lining } = rig[side].shoe;
    const t = tokens(side, i);
    const dash = t.role === 'trailing' ? [9, 4] : undefined;
    const out: XY[] = Array.from(s.gap, (g, k) =>
      polar(r0 + Math.max(0, g) * magnification, (s.angle[k] as number) * DEG),
    );
    const from = lining.from * DEG;
    const to = lining.to * DEG;
    const base = arcPoints(r0, from, to);
    pen.add({ path: polygon([...base].reverse().concat(out)), fill: t.fill, opacity: 0.55 });
    pen.path(line(...base), t.line, 1.2);
    pen.path(line(...out), t.line, 2.4, dash);
    const gaps = gapsOf(rig[side].shoe, s);
    const front = side === 'front';
    const marks: [number, number][] = [
      [front ? from : to, gaps.toe],
      [(from + to) / 2, gaps.centre],
      [front ? to : from, gaps.heel],
    ];
    marks.forEach(([angle, gap], k) => {
      const end = polar(r0 + gap * magnification, angle);
      pen.path(line(polar(r0, angle), end), t.line, 1.6);
      if (!roomy && k !== 1) return;
      const c = polar(r0 + gap * magnification + 2.6, angle);
      labels.push({
        at: c,
        dy: 5,
        anchor: outward(side),
        text: number(gap, 2),
        kind: `fan ${t.line}`,
      });
    });
  }
  return { shapes: pen.shapes, labels };
}

/** Pressure on each lining: filled bars for the leading shoe, open ones for the trailing. */
export function pressureComb(rig: Rig, i: Instant): Layer {
  const pen = new Pen();
  const labels: Label[] = [];
  const r0 = band(rig);
  for (const side of ['front', 'rear'] as const) {
    const s = i.shoes[side];
    const t = tokens(side, i);
    const leading = t.role === 'leading';
    const most = peak(s.pressure);
    if (!(most > 1e-4)) continue;
    const n = s.pressure.length;
    for (let k = 1; k < n; k += 2) {
      const p = ((s.pressure[k - 1] as number) + (s.pressure[k] as number)) / 2;
      if (p <= 0) continue;
      const a = (((s.angle[k - 1] as number) + (s.angle[k] as number)) / 2) * DEG;
      const u = polar(1, a);
      const w = 1.25;
      const at = (r: number, v: number): XY => [u[0] * r - u[1] * v, u[1] * r + u[0] * v];
      const r1 = r0 + p * COMB;
      pen.add({
        path: polygon([at(r0, w), at(r1, w), at(r1, -w), at(r0, -w)]),
        fill: leading ? 'lead' : 'sheet',
        stroke: t.line,
        width: leading ? 1 : 1.6,
      });
    }
    const envelope: XY[] = Array.from(s.pressure, (p, k) =>
      polar(r0 + p * COMB, (s.angle[k] as number) * DEG),
    );
    pen.path(line(...envelope), t.line, 2.4, leading ? undefined : [9, 4]);
    const { lining } = rig[side].shoe;
    pen.path(line(...arcPoints(r0, lining.from * DEG, lining.to * DEG)), t.line, 1.2);
    const at = side === 'front' ? 163 : 13;
    labels.push({
      at: polar(r0 + most * COMB + 5, at),
      dy: 6,
      anchor: outward(side),
      text: `${number(most, 2)} MPa`,
      kind: `peak ${t.line}`,
    });
  }
  return { shapes: pen.shapes, labels };
}

/** N below a kilonewton, kN above: as the guide rounds them. */
export const forceText = (f: number): string =>
  f >= 995 ? `${number(f / 1000, 2)} kN` : `${number(Math.round(f / 10) * 10, 0)} N`;

/** Forces as arrows: pistons, drag on the rubbing face, pins, strut. */
export function forces(rig: Rig, i: Instant): Layer {
  const pen = new Pen();
  const labels: Label[] = [];
  const { brake } = rig;
  const [x0, y] = brake.cylinder.at;
  for (const side of ['front', 'rear'] as const) {
    const s = i.shoes[side];
    const sign = side === 'front' ? -1 : 1;
    const t = tokens(side, i);
    const push = Math.max(0, s.toeForce);
    if (push > 20) {
      const start: XY = [s.toe[0] + sign * 2.5, y];
      pen.arrow(start, [start[0] + sign * push * FORCE, y], Math.max(1.6, push * 0.003), 'fluid');
      labels.push({
        at: [x0 + sign * (brake.cylinder.halfLength + 10.5), y + brake.cylinder.outerRadius - 2],
        dy: 0,
        anchor: outward(side),
        text: forceText(push),
        kind: 'force fluid',
      });
    }
    const drag = dragOf(i, side) / i.drumRadius;
    if (drag > 20) {
      const r = i.drumRadius + brake.drum.rim / 2;
      const half = (drag * FORCE * 1.6 * DEG) / r / 2;
      const middle = side === 'front' ? 170 : 10;
      const w = Math.max(1.6, drag * 0.0028);
      // Friction of the drum on the lining points along the turning.
      const from = middle - i.turning * half;
      const to = middle + i.turning * half;
      const head = i.turning * Math.min(half, (w * 1.9 * DEG) / r);
      pen.add({
        path: polygon([
          ...arcPoints(r + w / 2, from, to - head),
          polar(r + w * 1.2, to - head),
          polar(r, to),
          polar(r - w * 1.2, to - head),
          ...arcPoints(r - w / 2, to - head, from),
        ]),
        fill: t.line,
        stroke: 'sheet',
        width: 1.2,
      });
      labels.push({
        at: [sign * brake.drum.radiusNew * 0.822, 14],
        dy: 6,
        anchor: 'middle',
        text: forceText(drag),
        kind: `force ${t.line}`,
      });
    }
    const [fx, fy] = s.anchorForce;
    const size = Math.hypot(fx, fy);
    if (size > 20 && !i.locked) {
      const a = brake.shoes[side].anchor.at;
      const e: XY = [a[0] + fx * FORCE, a[1] + fy * FORCE];
      pen.arrow(a, e, Math.max(1.6, size * 0.0024), t.line);
      const flat = Math.abs(fx) > Math.abs(fy) * 0.5;
      labels.push({
        at: [e[0] + (fx / size) * 3, e[1] + (fy / size) * 4],
        dy: 6,
        anchor: flat ? (fx < 0 ? 'end' : 'start') : 'middle',
        text: forceText(size),
        kind: `force ${t.line}`,
      });
    }
  }
  if (i.strutForce > 20) {
    const seat = brake.shoes.front.strutSeat;
    const rear = brake.shoes.rear.strutSeat;
    const middle: XY = [(seat[0] + rear[0]) / 2 + 18, rear[1]];
    const length = i.strutForce * FORCE;
    pen.arrow(middle, [middle[0] - length, middle[1]], Math.max(1.6, i.strutForce * 0.003), 'ink');
    pen.arrow(
      [middle[0] + 4, middle[1]],
      [middle[0] + 4 + length, middle[1]],
      Math.max(1.6, i.strutForce * 0.003),
      'ink',
    );
    labels.push({
      at: [middle[0] + 2, middle[1] - 9],
      dy: 0,
      anchor: 'middle',
      text: `strut ${forceText(i.strutForce)}`,
      kind: 'force ink',
    });
  }
  return { shapes: pen.shapes, labels };
}

/** Outline of web and lining at rest, its movement drawn eight times as far. */
export function restGhost(
  rig: Rig,
  state: BrakeState,
  i: Instant,
  rest: Instant,
  times: number,
): Layer {
  const pen = new Pen();
  for (const side of ['front', 'rear'] as const) {
    const now = i.shoes[side].pose;
    const free = rest.shoes[side].pose;
    const ghost: Instant = {
      ...i,
      shoes: {
        ...i.shoes,
        [side]: {
          ...i.shoes[side],
          pose: {
            ux: now.ux - (now.ux - free.ux) * times,
            uy: now.uy - (now.uy - free.uy) * times,
            phi: now.phi - (now.phi - free.phi) * times,
            modes: [],
          },
        },
      },
    };
    const outline = liningOutline(rig, state, side).map(mover(rig, side, ghost));
    pen.add({ path: polygon(outline), stroke: 'ink', width: 1.3, dash: [12, 3, 2, 3, 2, 3] });
  }
  return { shapes: pen.shapes, labels: [] };
}
