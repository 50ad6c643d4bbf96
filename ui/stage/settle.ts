import { flatten } from './flatten.ts';
import { textWidth } from './layers/label.ts';
import { moved } from './path.ts';
import type { Drawing, Label, LabelStyle, Shape } from './shapes.ts';
import { toPx } from './view.ts';
import { FRAME_MARGIN } from './zone-frame.ts';

/**
 * The last step before texts are shown: a text that would lie on another, on what carries a value, on
 * a loupe or under something laid over the stage goes as far aside as it must. One that finds no room
 * is left out: a value that cannot be read tells nothing. What has its place by its meaning (names
 * at their leaders, numbers of teeth, the sheet's own words) stays, and the others keep clear of it.
 */

/** px of the stage, y down. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Those that may go aside; the first have the first choice. */
const ASIDE: readonly LabelStyle[] = [
  'dial',
  'lens',
  'lens scale',
  'caption',
  'role',
  'peak',
  'gap',
  'force',
  'heat',
  'turning',
  'role note',
  'gap word',
  'zone',
];

/** Shapes that carry a value, and fastenings as dark as letters. */
const STRONG: ReadonlySet<string> = new Set([
  'fan',
  'comb',
  'overlap',
  'turning',
  'forces',
  'cut',
  'dial',
  'polygons',
]);
const isStrong = (s: Shape): boolean =>
  (STRONG.has(s.group) && !s.key.includes('leader') && s.key !== 'polygon ground') ||
  s.part === 'hold-down' ||
  s.key === 'loupe rim' ||
  s.key === 'loupe mark';

/** px between points that stand for a line. */
const APART = 3;
/** Side of a square in which points are looked up, px. */
const SQUARE = 32;
/** Height of a text's letters as a share of its size. */
const CAPITAL = 0.74;
/** Letters that reach below their line, and how far; of small type it is less than what is kept free. */
const BELOW = /[gjpqyQ]/;
const DEEP = 0.2;
/** Kept free around a text, px. */
const CLEAR = 2;
/**
 * How far a text may go aside, px, in steps; on a wall further, as its texts are larger. A peak goes
 * far: beside a comb that fills the width there is room only above or below its middle.
 */
const STEP = 7;
const STEPS = 9;
/** From one corner of a large stage to the next. */
const FAR = 120;
const stepsOf = (style: LabelStyle): number =>
  style === 'zone' ? 0 : style === 'peak' ? FAR / 2 : STEPS;
/** Directions in the order in which they are tried: straight ones first. */
const WAYS = [
  [0, -1],
  [0, 1],
  [-1, 0],
  [1, 0],
  [-0.7, -0.7],
  [0.7, -0.7],
  [-0.7, 0.7],
  [0.7, 0.7],
] as const;

export function boxOf(label: Label, { view }: Drawing): Box {
  const [x0, y0] = toPx(view, label.at);
  const [x, y] = [x0 + label.dx, y0 + label.dy];
  const width = textWidth(label.text, label.size) * 1.04;
  const left = label.anchor === 'start' ? x : label.anchor === 'end' ? x - width : x - width / 2;
  const half = (CAPITAL * label.size) / 2;
  const below = label.style === 'role' && BELOW.test(label.text) ? DEEP * label.size : 0;
  return { left, top: y - half, right: left + width, bottom: y + half + below };
}

const meets = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

/** What lies over a drawing's lower ones: a loupe's glass, or the ground of the shoe edge-on. */
function coverOf(drawing: Drawing): ((x: number, y: number) => boolean) | null {
  const { clip, view } = drawing;
  if (clip) return (x, y) => Math.hypot(x - clip.at[0], y - clip.at[1]) < clip.radius;
  const ground = drawing.shapes.find((s) => s.key === 'edge ground' || s.key === 'polygon ground');
  if (!ground) return null;
  const corners = ground.path.flatMap((c) =>
    c[0] === 'M' || c[0] === 'L' ? [toPx(view, [c[1], c[2]])] : [],
  );
  const xs = corners.map(([x]) => x);
  const ys = corners.map(([, y]) => y);
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  const [top, bottom] = [Math.min(...ys), Math.max(...ys)];
  return (x, y) => x > left && x < right && y > top && y < bottom;
}

/** Points along strong lines, by squares of the stage. */
class Lines {
  readonly #squares = new Map<number, number[]>();

  add(drawing: Drawing, hidden: (x: number, y: number) => boolean): void {
    const { view } = drawing;
    for (const shape of drawing.shapes) {
      if (!isStrong(shape)) continue;
      const path = shape.place ? moved(shape.path, shape.place) : shape.path;
      for (const { points, closed } of flatten(path, 1 / view.scale)) {
        const n = points.length / 2;
        for (let i = 0; i < (closed ? n : n - 1); i++) {
          const j = (i + 1) % n;
          const a = toPx(view, [points[2 * i] as number, points[2 * i + 1] as number]);
          const b = toPx(view, [points[2 * j] as number, points[2 * j + 1] as number]);
          const parts = Math.ceil(Math.hypot(b[0] - a[0], b[1] - a[1]) / APART);
          for (let k = 0; k <= parts; k++) {
            const share = parts === 0 ? 0 : k / parts;
            const x = a[0] + (b[0] - a[0]) * share;
            const y = a[1] + (b[1] - a[1]) * share;
            if (!hidden(x, y)) this.#put(x, y);
          }
        }
      }
    }
  }

  #put(x: number, y: number): void {
    const key = Math.floor(x / SQUARE) * 4096 + Math.floor(y / SQUARE);
    const square = this.#squares.get(key);
    if (square) square.push(x, y);
    else this.#squares.set(key, [x, y]);
  }

  meet({ left, top, right, bottom }: Box): boolean {
    for (let i = Math.floor(left / SQUARE); i <= Math.floor(right / SQUARE); i++) {
      for (let j = Math.floor(top / SQUARE); j <= Math.floor(bottom / SQUARE); j++) {
        const square = this.#squares.get(i * 4096 + j) ?? [];
        for (let k = 0; k < square.length; k += 2) {
          const [x, y] = [square[k] as number, square[k + 1] as number];
          if (x > left && x < right && y > top && y < bottom) return true;
        }
      }
    }
    return false;
  }
}

/** What goes where a name or a number has to stand: the outer band, the arrow of turning, and forces. */
const GIVES: ReadonlySet<string> = new Set(['fan', 'comb', 'turning', 'forces']);

/**
 * Names and numbers stand where their leaders lead. Where the outer band or a force would run through
 * them, it is left out as long as they are shown, its values too.
 */
export function giveWay<D extends Drawing>(drawing: D): D {
  const fixed = drawing.labels.filter((l) => l.style === 'name' || l.style === 'number');
  if (fixed.length === 0) return drawing;
  const boxes = fixed.map((l) => boxOf(l, drawing));
  const gone = [...GIVES].filter((group) => {
    const lines = new Lines();
    const shapes = drawing.shapes.filter((s) => s.group === group);
    lines.add({ ...drawing, shapes }, () => false);
    return boxes.some((b) => lines.meet(b));
  });
  if (gone.length === 0) return drawing;
  const values = ({ key }: Label): boolean => gone.includes(key.split(' ')[0] ?? '');
  return {
    ...drawing,
    shapes: drawing.shapes.filter((s) => !gone.includes(s.group)),
    labels: drawing.labels.filter((l) => !values(l)),
  };
}

const shifted = (b: Box, dx: number, dy: number): Box => ({
  left: b.left + dx,
  top: b.top + dy,
  right: b.right + dx,
  bottom: b.bottom + dy,
});

/** Corners and middles of the sides of a box, and its middle. */
const spots = ({ left, top, right, bottom }: Box): [number, number][] => {
  const [x, y] = [(left + right) / 2, (top + bottom) / 2];
  return [left, x, right].flatMap((a) => [top, y, bottom].map((b): [number, number] => [a, b]));
};

/** How far the sheet's frame stands inside a drawing's edge, px; texts lie within it. */
const sheetOf = ({ shapes }: Drawing): number =>
  shapes.some((s) => s.group === 'zones') ? FRAME_MARGIN : 0;

const inBlock = (l: Label, of: Label): boolean =>
  l === of || (of.block !== undefined && l.block === of.block);

/**
 * The drawings with their texts settled.
 *
 * @param taken what else lies over the stage, px
 */
export function settle(drawings: readonly Drawing[], taken: readonly Box[]): Drawing[] {
  const first = drawings[0]?.view;
  if (!first) return [];
  const covers = drawings.map(coverOf);
  /** Is a place of a drawing under one that lies over it? */
  const hiddenIn = (of: number) => (x: number, y: number) =>
    covers.some((cover, i) => i > of && cover?.(x, y));
  const lines = new Lines();
  drawings.forEach((d, i) => {
    lines.add(d, hiddenIn(i));
  });
  const placed: Box[] = [...taken];
  const out = drawings.map((d) => new Map(d.labels.map((l) => [l, l as Label | null])));
  const all = drawings.flatMap((drawing, of) =>
    drawing.labels.filter((l) => l.text !== '').map((label) => ({ label, drawing, of })),
  );
  for (const { label, drawing, of } of all) {
    if (ASIDE.includes(label.style)) continue;
    const box = boxOf(label, drawing);
    // What a loupe covers is not told over it.
    if (spots(box).some(([x, y]) => hiddenIn(of)(x, y))) out[of]?.set(label, null);
    else placed.push(box);
  }
  const edge = sheetOf(drawings[0] as Drawing);
  const free = (box: Box, of: number, style: LabelStyle): boolean => {
    const wide = {
      left: box.left - CLEAR,
      top: box.top - CLEAR,
      right: box.right + CLEAR,
      bottom: box.bottom + CLEAR,
    };
    // The frame's own letters stand outside it.
    const rim = style === 'zone' ? 0 : edge;
    return (
      wide.left >= rim &&
      wide.top >= rim &&
      wide.right <= first.width - rim &&
      wide.bottom <= first.height - rim &&
      !placed.some((b) => meets(b, wide)) &&
      !lines.meet(wide) &&
      !spots(box).some(([x, y]) => hiddenIn(of)(x, y))
    );
  };
  const times = first.wall ? 2 : 1;
  for (const style of ASIDE) {
    for (const { label, drawing, of } of all) {
      if (label.style !== style || out[of]?.get(label) !== label) continue;
      const block = all.filter((l) => l.of === of && inBlock(l.label, label));
      const near = { lines: block, steps: stepsOf(style) };
      // Lines of one text go to another corner together; where none has room the first goes alone.
      const tries =
        block.length > 1
          ? [near, { lines: block, steps: FAR }, { lines: block.slice(0, 1), steps: FAR }]
          : [near];
      for (const { lines, steps } of tries) {
        const boxes = lines.map((l) => boxOf(l.label, drawing));
        const found = placeFor(boxes, times, steps, (b) => free(b, of, style));
        for (const l of block) out[of]?.set(l.label, null);
        if (!found) continue;
        const [dx, dy] = found;
        for (const { label: l } of lines) out[of]?.set(l, { ...l, dx: l.dx + dx, dy: l.dy + dy });
        placed.push(...boxes.map((b) => shifted(b, dx, dy)));
        break;
      }
    }
  }
  return drawings.map((d, i) => ({
    ...d,
    labels: d.labels.flatMap((l) => out[i]?.get(l) ?? []),
  }));
}

/** The nearest place that is free for all boxes of a text, as a shift in px; null when there is none within reach. */
function placeFor(
  boxes: readonly Box[],
  times: number,
  steps: number,
  free: (box: Box) => boolean,
): readonly [number, number] | null {
  if (boxes.every(free)) return [0, 0];
  for (let n = 1; n <= steps; n++) {
    for (const [x, y] of WAYS) {
      const by = [x * n * STEP * times, y * n * STEP * times] as const;
      if (boxes.every((b) => free(shifted(b, ...by)))) return by;
    }
  }
  return null;
}
