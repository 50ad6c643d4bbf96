import { type Brake, leverForm, type Point } from '../../../sim/index.ts';
import { label } from '../../stage/layers/label.ts';
import type { PartId } from '../../stage/part-names.ts';
import { rimRadius } from '../../stage/parts/drum.ts';
import { circlePath, polygon } from '../../stage/path.ts';
import type { StageInput } from '../../stage/scene.ts';
import { DASH, type Label, outlined, type Shape, stroked, WEIGHT } from '../../stage/shapes.ts';
import type { OrderDesk } from './desk.ts';
import { type Off, springsOf } from './plan.ts';

/** What of the drawing is gone with what is off; springs and hold-downs are gone with the state itself. */
const GONE: Readonly<Partial<Record<Off, (s: Shape | Label) => boolean>>> = {
  strut: (s) => of(s, 'strut', 'teeth') || is(s, 'lever spring', 'strut spring', 'wedge spring'),
  shoes: (s) => of(s, 'shoe') || is(s, 'web', 'table', 'lining', 'lever window', 'hold-down'),
  lever: (s) => is(s, 'parking lever', 'lever stop', 'lever pivot'),
  'front hold-down': (s) => is(s, 'hold-down') && !('path' in s),
  upper: (s) => is(s, 'upper spring') && !('path' in s),
  lower: (s) => is(s, 'lower spring') && !('path' in s),
};

const of = (s: Shape | Label, ...groups: string[]): boolean =>
  'group' in s && groups.includes(s.group);
const is = (s: Shape | Label, ...parts: PartId[]): boolean =>
  s.part !== undefined && parts.includes(s.part);

/** Is this of a part that is off? Null where all of it is there. */
export function lacking(off: ReadonlySet<Off>): ((s: Shape | Label) => boolean) | null {
  const tests = [...off].flatMap((o) => GONE[o] ?? []);
  return tests.length > 0 ? (s) => tests.some((t) => t(s)) : null;
}

/** Places that the open step is about, in the order of its hand, mm. */
function spotsOf(desk: OrderDesk, { brake, instant }: StageInput): readonly Point[] {
  const { front, rear } = brake.shoes;
  const ends = (end: 'upper' | 'lower'): Point[] =>
    springsOf(brake, end).flatMap((i) => {
      const now = instant.springs[i];
      // The rear web's end first: that is the one that the tool takes.
      return now ? [now.to, now.from].sort((a, b) => b[0] - a[0]) : [];
    });
  // The toothed lever's pin; other adjusters sit at the front end of the strut.
  const adjuster = leverForm(brake)?.pin ?? front.strutSeat;
  const { accessHole } = brake.look;
  switch (desk.id) {
    case 'cable':
    case 'load':
      return [brake.parkingLever.hook];
    case 'shorten':
    case 'lift':
    case 'push':
      return [adjuster];
    case 'find':
      return [accessHole.at];
    case 'upper':
    case 'upper-on':
      return ends('upper');
    case 'lower':
    case 'lower-on':
      return ends('lower');
    case 'hold-front':
      return [front.holdDown.at];
    case 'hold-rear':
      return [rear.holdDown.at];
    case 'hold-on':
      return [front.holdDown.at, rear.holdDown.at];
    case 'strut':
    case 'strut-on':
    case 'bench-on':
      return [front.strutSeat, rear.strutSeat];
    case 'clamp':
    case 'toes-in':
      return [front.toe, rear.toe];
    case 'shoes':
      return [front.anchor.at, rear.anchor.at];
    case 'lever':
    case 'lever-on':
    case 'home':
      return [brake.parkingLever.pivot];
    case 'cylinder':
      return [brake.cylinder.at];
    default:
      return [];
  }
}

/** Is the clamp on the pistons as the step stands? */
function clamped({ page, ids, at }: OrderDesk): boolean {
  if (page === 'apart') return at > ids.indexOf('clamp');
  return page === 'together' && at <= ids.indexOf('toes-in');
}

/** A band round both pistons, with its screw: drawn only. */
function clampShapes(brake: Brake): Shape[] {
  const { at, halfLength, outerRadius } = brake.cylinder;
  const [x, y] = at;
  const out = halfLength + 13;
  const up = outerRadius + 9;
  const put = (key: string, points: readonly Point[]): Shape => ({
    key: `clamp ${key}`,
    path: polygon(points),
    style: outlined('bolt', 1.7),
    group: 'clamp',
  });
  const leg = (sign: 1 | -1): readonly Point[] => [
    [x + sign * out, y - 6],
    [x + sign * (out + 5), y - 6],
    [x + sign * (out + 5), y + up + 5],
    [x + sign * out, y + up + 5],
  ];
  return [
    put('left', leg(-1)),
    put('right', leg(1)),
    put('bow', [
      [x - out - 5, y + up],
      [x + out + 5, y + up],
      [x + out + 5, y + up + 5],
      [x - out - 5, y + up + 5],
    ]),
  ];
}

/** The drum that is off as a dashed outline, the clamp, and rings with numbers where the hand goes. */
export function orderStage(
  desk: OrderDesk,
  input: StageInput,
): { readonly shapes: readonly Shape[]; readonly labels: readonly Label[] } {
  const { brake, view } = input;
  const shapes: Shape[] = [];
  const labels: Label[] = [];
  if (desk.off.has('drum')) {
    const rim = rimRadius(brake);
    for (const [name, radius] of [
      ['bore', brake.drum.radiusNew],
      ['rim', rim],
    ] as const)
      shapes.push({
        key: `off ${name}`,
        path: circlePath([0, 0], radius),
        style: stroked('ink', WEIGHT.narrow, DASH.ghost),
        group: 'off drum',
      });
  }
  if (clamped(desk)) shapes.push(...clampShapes(brake));
  const spots = spotsOf(desk, input);
  const radius = (view.wall ? 26 : view.narrow ? 11 : 13) / view.scale;
  spots.forEach((at, i) => {
    shapes.push(
      {
        key: `ring halo ${i}`,
        path: circlePath(at, radius),
        style: { stroke: 'sheet', width: 6 },
        group: 'ring',
      },
      {
        key: `ring ${i}`,
        path: circlePath(at, radius),
        style: { stroke: 'ink', width: 2.6 },
        group: 'ring',
      },
    );
    if (spots.length > 1)
      labels.push(
        label(view, {
          key: `ring number ${i}`,
          text: String(i + 1),
          at: [at[0], at[1] + radius],
          dy: -11 * view.text,
          anchor: 'middle',
          style: 'peak',
          colour: 'ink',
        }),
      );
  });
  return { shapes, labels };
}
