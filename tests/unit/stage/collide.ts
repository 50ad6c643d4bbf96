import { flatten } from '../../../ui/stage/flatten.ts';
import { fontOf } from '../../../ui/stage/layers/label.ts';
import { moved } from '../../../ui/stage/path.ts';
import { type Drawing, type Label, type Shape, strokePx } from '../../../ui/stage/shapes.ts';
import { toPx } from '../../../ui/stage/view.ts';

/** Where texts and strong lines of a stage lie on each other, px. */

export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/**
 * Widths of the font's letters at weight 650, hundredths of its size, as a browser measures them
 * (Encode Sans; figures are tabular, 60 at most). From 520 to 790 they change by 0.024 % a unit.
 */
const WIDTHS: Readonly<Record<string, number>> = Object.fromEntries(
  ' 25,(35,)35,+55,.27,/38,:27,;27,<55,A72,B66,C61,D74,E62,F60,G71,H76,I29,J29,K66,L57,M93,N76,O77,P65,Q77,R68,S57,T63,U74,V71,W112,X68,Y63,Z61,a55,b61,c47,d61,e55,f39,g61,h60,i27,j27,k58,l27,m89,n60,o59,p61,q61,r40,s48,t41,u60,v57,w89,x55,y57,z50,·27,×55,°45'
    .split(',')
    .filter((e) => e.length > 1)
    .map((e) => [e.charAt(0), Number(e.slice(1))]),
);
const FIGURE = 60;

function widthOf(text: string, label: Label): number {
  const { weight, stretch } = fontOf(label.style);
  const sum = [...text.replaceAll('\u00a0', ' ')].reduce(
    (all, c) => all + (WIDTHS[c] ?? FIGURE),
    0,
  );
  return (sum / 100) * label.size * (1 + (weight - 650) * 0.00024) * (stretch / 100);
}

/** Height of a capital as a share of the size. */
const CAPITAL = 0.72;

/** Where the letters of a label stand. */
export function boxOf(label: Label, { view }: Drawing): Box {
  const [x0, y0] = toPx(view, label.at);
  const [x, y] = [x0 + label.dx, y0 + label.dy];
  const width = widthOf(label.text, label);
  const left = label.anchor === 'start' ? x : label.anchor === 'end' ? x - width : x - width / 2;
  const half = (CAPITAL * label.size) / 2;
  // The largest type, whose lower ends are seen from afar.
  const below = label.style === 'role' && /[gjpqyQ]/.test(label.text) ? 0.2 * label.size : 0;
  return { left, top: y - half, right: left + width, bottom: y + half + below };
}

/** px that two boxes share, the lesser of across and down; 0 or less when they are apart. */
export const shared = (a: Box, b: Box): number =>
  Math.min(
    Math.min(a.right, b.right) - Math.max(a.left, b.left),
    Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top),
  );

/** What carries a value or a magnitude: no text may lie on it. */
const STRONG: ReadonlySet<string> = new Set([
  'fan',
  'comb',
  'overlap',
  'turning',
  'forces',
  'dial',
  'polygons',
]);
const isLabelOnly = (key: string): boolean =>
  key.includes('leader') || key === 'overlap lip' || key === 'polygon ground';

const isStrong = (shape: Shape): boolean =>
  (STRONG.has(shape.group) && !isLabelOnly(shape.key)) || shape.key === 'loupe rim';

/** A part of a line inside a box, px; lines cut a box that is smaller by `slack` on each side. */
function inside(points: readonly number[], closed: boolean, box: Box, slack: number): number {
  const low: readonly [number, number] = [box.left + slack, box.top + slack];
  const high: readonly [number, number] = [box.right - slack, box.bottom - slack];
  let length = 0;
  const n = points.length / 2;
  for (let i = 0; i < (closed ? n : n - 1); i++) {
    const j = (i + 1) % n;
    const from = [points[2 * i] as number, points[2 * i + 1] as number] as const;
    const to = [points[2 * j] as number, points[2 * j + 1] as number] as const;
    // Cut to the box (Liang and Barsky 1984).
    let [a, b] = [0, 1];
    for (const axis of [0, 1] as const) {
      const d = to[axis] - from[axis];
      const [l, h] = [low[axis] - from[axis], high[axis] - from[axis]];
      if (Math.abs(d) < 1e-12) {
        if (l > 0 || h < 0) b = -1;
      } else {
        a = Math.max(a, Math.min(l / d, h / d));
        b = Math.min(b, Math.max(l / d, h / d));
      }
    }
    if (b > a) length += (b - a) * Math.hypot(to[0] - from[0], to[1] - from[1]);
  }
  return length;
}

/** Outlines of a shape on the screen. */
export const onScreen = (shape: Shape, { view }: Drawing) =>
  flatten(shape.place ? moved(shape.path, shape.place) : shape.path, 0.5 / view.scale).map(
    ({ points, closed }) => {
      const out: number[] = [];
      for (let i = 0; i < points.length; i += 2) {
        out.push(...toPx(view, [points[i] as number, points[i + 1] as number]));
      }
      return { points: out, closed };
    },
  );

/** What of a line is not under a loupe's glass or the ground of the shoe edge-on. */
function seen(
  { points, closed }: { points: number[]; closed: boolean },
  over: readonly Drawing[],
): { points: number[]; closed: boolean }[] {
  const grounds = over.flatMap((d) => {
    const ground = d.shapes.find((s) => s.key === 'edge ground' || s.key === 'polygon ground');
    return ground ? onScreen(ground, d).map((l) => l.points) : [];
  });
  const under = (x: number, y: number): boolean =>
    over.some(({ clip }) => clip && Math.hypot(x - clip.at[0], y - clip.at[1]) < clip.radius) ||
    grounds.some((p) => {
      const xs = p.filter((_, i) => i % 2 === 0);
      const ys = p.filter((_, i) => i % 2 === 1);
      return (
        x > Math.min(...xs) && x < Math.max(...xs) && y > Math.min(...ys) && y < Math.max(...ys)
      );
    });
  if (over.length === 0) return [{ points, closed }];
  const out: { points: number[]; closed: boolean }[] = [];
  const n = points.length / 2;
  for (let i = 0; i < (closed ? n : n - 1); i++) {
    const j = (i + 1) % n;
    const [x, y, u, v] = [points[2 * i], points[2 * i + 1], points[2 * j], points[2 * j + 1]] as [
      number,
      number,
      number,
      number,
    ];
    if (!under((x + u) / 2, (y + v) / 2)) out.push({ points: [x, y, u, v], closed: false });
  }
  return out;
}

/** Text may come this near to text, or to a line, px; the widths are known about as well. */
const SLACK = 2;
/** px of a line under a text that are seen. */
const SEEN = 3;

/** Each collision of a stage in a line of words. */
export function collisions(
  drawings: readonly Drawing[],
  taken: readonly { readonly name: string; readonly box: Box }[],
): string[] {
  const texts = drawings.flatMap((d, i) =>
    d.labels.filter((l) => l.text !== '').map((l) => ({ label: l, box: boxOf(l, d), of: i })),
  );
  const out: string[] = [];
  const name = (l: Label): string => `"${l.text}" (${l.key})`;
  texts.forEach((a, i) => {
    for (const b of texts.slice(i + 1)) {
      const px = shared(a.box, b.box);
      if (px > SLACK) out.push(`${name(a.label)} on ${name(b.label)} by ${px.toFixed(0)} px`);
    }
    for (const { name: other, box } of taken) {
      const px = shared(a.box, box);
      if (px > SLACK) out.push(`${name(a.label)} under ${other} by ${px.toFixed(0)} px`);
    }
  });
  drawings.forEach((drawing, of) => {
    for (const shape of drawing.shapes) {
      if (!isStrong(shape)) continue;
      const half = shape.style.stroke ? strokePx(shape.style.width, drawing.view) / 2 : 0;
      const lines = onScreen(shape, drawing).flatMap((l) => seen(l, drawings.slice(of + 1)));
      for (const { label, box } of texts) {
        const px = lines.reduce((sum, l) => sum + inside(l.points, l.closed, box, SLACK - half), 0);
        if (px > SEEN) out.push(`${name(label)} on the lines of ${shape.key}, ${px.toFixed(0)} px`);
      }
    }
  });
  return out;
}
