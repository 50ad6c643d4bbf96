import type { Point } from '../../../sim/index.ts';
import { number } from '../../format.ts';
import { direction, distance, mix } from '../../stage/geometry.ts';
import { label } from '../../stage/layers/label.ts';
import { circlePath, polygon, polyline } from '../../stage/path.ts';
import type { StageInput } from '../../stage/scene.ts';
import type { Label, Shape } from '../../stage/shapes.ts';
import { BAR_ARMS, type HandsDesk, LIMIT } from './desk.ts';
import { placeNow, spun } from './places.ts';

/** A fist on its cuff, pulling to +x, mm: drawn only. */
const FIST: readonly Point[] = [
  [-2, -3.4],
  [5.5, -3.4],
  [5.5, -5],
  [11, -5.6],
  [13.6, -3.6],
  [13.6, 3.6],
  [11, 5.6],
  [5.5, 5],
  [5.5, 3.4],
  [-2, 3.4],
];

function fist(key: string, at: Point, [ex, ey]: Point): Shape {
  const place = { angle: Math.atan2(ey, ex), x: at[0], y: at[1] };
  return {
    key,
    path: polygon(FIST),
    place,
    style: { fill: 'sheet', stroke: 'ink', width: 2 },
    group: 'hand',
  };
}

/** A rubber line from the place that is held to the hand. */
function rubber(key: string, from: Point, to: Point, tool: boolean): Shape[] {
  const along = distance(from, to) > 0.5 ? direction(from, to) : ([-1, 0] as const);
  const line = (name: string, stroke: 'ink' | 'warn', width: number): Shape => ({
    key: `${key} ${name}`,
    path: polyline(from, to),
    style: { stroke, width, round: true },
    group: 'hand',
  });
  const bar: Shape[] = tool
    ? [
        {
          key: `${key} bar`,
          // The hand at the long arm's end, the line at the short one's.
          path: polyline(
            [to[0] + along[1] * 6, to[1] - along[0] * 6],
            [to[0] - along[1] * 6 * BAR_ARMS, to[1] + along[0] * 6 * BAR_ARMS],
          ),
          style: { stroke: 'ink', width: 5, round: true },
          group: 'hand',
        },
        {
          key: `${key} rest`,
          path: circlePath(to, 2.2),
          style: { fill: 'warn', stroke: 'ink', width: 1.6 },
          group: 'hand',
        },
      ]
    : [];
  const end: Point = tool ? [to[0] - along[1] * 6 * BAR_ARMS, to[1] + along[0] * 6 * BAR_ARMS] : to;
  return [
    line('edge', 'ink', 6.5),
    line('band', 'warn', 4),
    {
      key: `${key} held`,
      path: circlePath(from, 3.6),
      style: { fill: 'sheet', stroke: 'ink', width: 3 },
      group: 'hand',
    },
    {
      key: `${key} point`,
      path: circlePath(from, 1.2),
      style: { fill: 'ink' },
      group: 'hand',
    },
    ...bar,
    fist(`${key} fist`, end, along),
  ];
}

/** The hand with its rubber line, and how hard it pulls. */
export function handStage(
  desk: HandsDesk,
  { brake, instant, view }: StageInput,
): { readonly shapes: readonly Shape[]; readonly labels: readonly Label[] } {
  const { hold, part, tool } = desk.record;
  if (!hold) return { shapes: [], labels: [] };
  const from = placeNow(brake, instant, part, hold.at);
  const far = part === 'drum' ? spun(hold.at, hold.turn) : hold.to;
  // The line ends where a hand is at its strongest; a pointer may be farther off.
  const most = desk.limit / desk.rate;
  const reach = distance(from, far);
  const to = reach > most ? mix(from, far, most / reach) : far;
  const lines: [Point, Point][] = [[from, to]];
  if (part === 'both toes') {
    const { toe } = brake.shoes.rear;
    const other = placeNow(brake, instant, 'rear shoe', toe);
    lines.push([other, [other[0] - (to[0] - from[0]), other[1] + to[1] - from[1]]]);
  }
  const force = desk.force(desk.session.instant());
  const along = reach > 0.5 ? direction(from, to) : ([-1, 0] as const);
  // Beyond the fist, where the bar's is too.
  const at: Point = tool
    ? [to[0] + along[0] * 16 - along[1] * 18, to[1] + along[1] * 16 + along[0] * 18]
    : [to[0] + along[0] * 16, to[1] + along[1] * 16];
  const left = along[0] < 0;
  const put = (key: string, text: string, dy: number, style: 'peak' | 'gap word'): Label =>
    label(view, {
      ...{ key, text, at, dy, style },
      anchor: left ? 'end' : 'start',
      colour: style === 'peak' ? 'ink' : 'ink2',
    });
  const labels: Label[] =
    view.narrow || view.wall
      ? []
      : [
          put('hand force', `${number(force, 0)}\u00a0N`, -8, 'peak'),
          put(
            'hand limit',
            tool ? `of ${number(desk.limit, 0)}, bar ${BAR_ARMS}:1` : `of a hand’s ${LIMIT}`,
            14,
            'gap word',
          ),
        ];
  return {
    shapes: lines.flatMap(([a, b], i) => rubber(`hand ${i}`, a, b, tool)),
    labels,
  };
}
