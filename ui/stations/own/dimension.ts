import type { OwnKey, Point } from '../../../sim/index.ts';
import { ownDimension as words } from '../../../sim/words/en.ts';
import { number } from '../../format.ts';
import { label } from '../../stage/layers/label.ts';
import { rimRadius } from '../../stage/parts/drum.ts';
import { circlePath, polygon, polyline } from '../../stage/path.ts';
import type { StageInput } from '../../stage/scene.ts';
import { DASH, type Label, type Shape, stroked, WEIGHT } from '../../stage/shapes.ts';
import type { Changed } from './desk.ts';

/** The size that was typed last, as a dimension on the drawing: from where to where, and how much. */

type Drawn = { readonly shapes: readonly Shape[]; readonly labels: readonly Label[] };

/** Room between the drum and a dimension beside it, and the length of an arrowhead, mm. */
const ROOM = 9;
const HEAD = 5;
/** A dimension that is longer than this has its figure over it, mm. */
const LONG = 100;
/** Radius of the circle that shows where a point was before, mm. */
const WAS = 6;

/** A dimension: its two ends, the points they are of, and where those points were before. */
interface Measured {
  readonly ends: readonly [Point, Point];
  readonly of: readonly [Point, Point];
  readonly before: readonly Point[];
}

/** Where a size is measured in this view; null for one that this view does not show, such as a width. */
export function measuredAt(
  { brake }: Pick<StageInput, 'brake'>,
  key: OwnKey,
  was: number,
): Measured | null {
  const { front, rear } = brake.shoes;
  const beside = -rimRadius(brake) - ROOM;
  const under = -rimRadius(brake) - ROOM;
  const [a, b] = [front.anchor.at, rear.anchor.at];
  const upright = (y: number, from: Point, before: readonly Point[]): Measured => ({
    ends: [
      [beside, 0],
      [beside, y],
    ],
    of: [[0, 0], from],
    before,
  });
  switch (key) {
    case 'pinBelow':
      return upright(a[1], a, [
        [a[0], -was],
        [b[0], -was],
      ]);
    case 'toeHeight':
      return upright(front.toe[1], front.toe, [
        [front.toe[0], was],
        [rear.toe[0], was],
      ]);
    case 'strutHeight':
      return upright(rear.strutSeat[1], front.strutSeat, [[rear.strutSeat[0], was]]);
    case 'pinsApart': {
      const middle = (a[0] + b[0]) / 2;
      return {
        ends: [
          [a[0], under],
          [b[0], under],
        ],
        of: [a, b],
        before: [
          [middle - was / 2, a[1]],
          [middle + was / 2, b[1]],
        ],
      };
    }
    case 'drumNew': {
      const r = brake.drum.radiusNew;
      return {
        ends: [
          [-r, under],
          [r, under],
        ],
        of: [
          [-r, 0],
          [r, 0],
        ],
        before: [],
      };
    }
    default:
      return null;
  }
}

export function dimension(
  input: StageInput,
  { key, was }: Pick<Changed, 'key' | 'was'>,
  now: number,
  digits: number,
): Drawn {
  const at = measuredAt(input, key, was);
  if (!at) return { shapes: [], labels: [] };
  const { view } = input;
  const shapes: Shape[] = [];
  const put = (name: string, path: Shape['path'], style: Shape['style']): void => {
    shapes.push({ key: `size ${name}`, path, style, group: 'size typed' });
  };
  const [p, q] = at.ends;
  const length = Math.hypot(q[0] - p[0], q[1] - p[1]);
  const along: Point = [(q[0] - p[0]) / length, (q[1] - p[1]) / length];
  at.ends.forEach((end, i) => {
    const from = at.of[i] as Point;
    put(words.to(i), polyline(from, end), stroked('ink', WEIGHT.axis));
    const inward = i === 0 ? 1 : -1;
    const back: Point = [end[0] + inward * HEAD * along[0], end[1] + inward * HEAD * along[1]];
    put(
      words.head(i),
      polygon([
        end,
        [back[0] - along[1] * 1.6, back[1] + along[0] * 1.6],
        [back[0] + along[1] * 1.6, back[1] - along[0] * 1.6],
      ]),
      { fill: 'ink' },
    );
  });
  put('line', polyline(p, q), stroked('ink', WEIGHT.medium));
  at.before.forEach((point, i) => {
    put(words.was(i), circlePath(point, WAS), stroked('ink', WEIGHT.wide, DASH.ghost));
  });
  const middle: Point = [(p[0] + q[0]) / 2, (p[1] + q[1]) / 2];
  const level = Math.abs(along[0]) > 0.5;
  // Beside a short dimension, over a long one, left of an upright one: never on its line.
  const stand = !level
    ? { at: middle, anchor: 'end' as const, dx: -6 * view.text, dy: 6 * view.text }
    : length > LONG
      ? { at: middle, anchor: 'middle' as const, dy: -5 * view.text }
      : { at: q, anchor: 'start' as const, dx: 8 * view.text, dy: -4 * view.text };
  const labels = [
    label(view, {
      ...{ key: 'size typed', text: number(now, digits), ...stand },
      ...{ style: 'peak' as const, size: 20 * view.text, colour: 'ink' as const },
    }),
  ];
  if (at.before.length > 0)
    labels.push(
      label(view, {
        ...{ key: 'size was', text: words.dashedItWas(number(was, digits)), at: q },
        ...{ anchor: 'start' as const, dx: level ? 8 * view.text : -34 * view.text },
        ...{
          dy: (level ? 15 : q[1] < 0 ? 22 : -12) * view.text,
          style: 'gap word' as const,
          colour: 'ink' as const,
        },
      }),
    );
  return { shapes, labels };
}
