import type { Point } from '../../../sim/index.ts';
import { handsStage as words } from '../../../sim/words/en.ts';
import { number } from '../../format.ts';
import { direction, distance, mix } from '../../stage/geometry.ts';
import { label } from '../../stage/layers/label.ts';
import { circlePath, polygon, polyline } from '../../stage/path.ts';
import type { StageInput } from '../../stage/scene.ts';
import type { Label, Shape } from '../../stage/shapes.ts';
import { caughtFlash, rimPulled } from '../drum-off/pull.ts';
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
    fist(words.fist(key), end, along),
  ];
}

/** A hand as it is drawn: from the place it holds to where it is, and how hard it pulls, N. */
interface Line {
  readonly from: Point;
  readonly to: Point;
  readonly force: number | null;
}

/** The line ends where a hand is at its strongest; a pointer may be farther off. */
function ending(desk: HandsDesk, from: Point, far: Point): Point {
  const most = desk.limit / desk.rate;
  const reach = distance(from, far);
  return reach > most ? mix(from, far, most / reach) : far;
}

function linesOf(desk: HandsDesk, { brake, instant }: StageInput): readonly Line[] {
  const { hold, part, second } = desk.record;
  if (!hold) return [];
  const now = desk.session.instant();
  const from = placeNow(brake, instant, part, hold.at);
  const to = ending(desk, from, part === 'drum' ? spun(hold.at, hold.turn) : hold.to);
  const lines: Line[] = [{ from, to, force: desk.force(now) }];
  if (part === 'both toes') {
    const other = placeNow(brake, instant, 'rear shoe', brake.shoes.rear.toe);
    const mirrored: Point = [other[0] - (to[0] - from[0]), other[1] + to[1] - from[1]];
    lines.push({ from: other, to: mirrored, force: null });
  }
  if (second) {
    const held = placeNow(brake, instant, second.part, second.at);
    const end = ending(desk, held, second.to);
    lines.push({ from: held, to: end, force: desk.secondForce(now) });
  }
  return lines;
}

/** The rim on its way towards the eye, its middle half as far as a side that is rocked; lit where the lip bears. */
function rimShapes(desk: HandsDesk, { brake, instant, state }: StageInput): Shape[] {
  const { drum } = desk;
  if (!drum || drum.slid === 0) return [];
  const slid = desk.record.part === 'drum rocked' ? drum.slid / 2 : drum.slid;
  const lit = drum.lip > 0 ? caughtFlash(brake, desk.fit, 1, 1) : [];
  return [...rimPulled(brake, instant, state.drumRadius, slid, false), ...lit];
}

/** The hands with their rubber lines, and how hard each pulls. */
export function handStage(
  desk: HandsDesk,
  input: StageInput,
): { readonly shapes: readonly Shape[]; readonly labels: readonly Label[] } {
  const { tool } = desk.record;
  const { view } = input;
  const lines = linesOf(desk, input);
  const labels = lines.flatMap(({ from, to, force }, i): Label[] => {
    if (force === null || view.narrow || view.wall) return [];
    const along = distance(from, to) > 0.5 ? direction(from, to) : ([-1, 0] as const);
    // Beyond the fist, where the bar's is too.
    const at: Point = tool
      ? [to[0] + along[0] * 16 - along[1] * 18, to[1] + along[1] * 16 + along[0] * 18]
      : [to[0] + along[0] * 16, to[1] + along[1] * 16];
    const put = (key: string, text: string, dy: number, style: 'peak' | 'gap word'): Label =>
      label(view, {
        ...{ key: i === 0 ? key : `${key} ${i}`, text, at, dy, style },
        anchor: along[0] < 0 ? 'end' : 'start',
        colour: style === 'peak' ? 'ink' : 'ink2',
      });
    const limit = tool ? words.ofBar1(number(desk.limit, 0), BAR_ARMS) : words.ofAHands(LIMIT);
    return [
      put(words.handForce, `${number(force, 0)}\u00a0N`, -8, 'peak'),
      put(words.handLimit, limit, 14, 'gap word'),
    ];
  });
  const hands = lines.flatMap(({ from, to }, i) => rubber(words.hand(i), from, to, tool));
  return { shapes: [...rimShapes(desk, input), ...hands], labels };
}
