import type { Point } from '../../../sim/index.ts';
import { newShoesStage as texts } from '../../../sim/words/en.ts';
import { label } from '../../stage/layers/label.ts';
import { rimRadius } from '../../stage/parts/drum.ts';
import { circlePath, polygon, polyline } from '../../stage/path.ts';
import type { StageInput } from '../../stage/scene.ts';
import { DASH, type Label, outlined, type Shape, stroked, WEIGHT } from '../../stage/shapes.ts';
import type { ShoeDesk } from './desk.ts';
import { mm2 } from './words.ts';

/** The drum that is off as a dashed outline, and the gauge over the linings. */
export function shoesStage(
  desk: ShoeDesk,
  { brake, view }: StageInput,
): { readonly shapes: readonly Shape[]; readonly labels: readonly Label[] } {
  const shapes: Shape[] = [];
  const labels: Label[] = [];
  const rim = rimRadius(brake);
  if (!view.narrow) {
    labels.push(
      ...(['front', 'rear'] as const).map((side) =>
        label(view, {
          key: `shoe ${side}`,
          text: side === 'front' ? texts.frontShoe : texts.rearShoe,
          at: [(side === 'front' ? -1 : 1) * (rim + 2), rim * 0.9],
          anchor: side === 'front' ? 'start' : 'end',
          style: 'role',
          size: 22 * view.text,
          colour: 'ink',
        }),
      ),
    );
  }
  if (desk.drumOn) return { shapes, labels };
  for (const [name, radius] of [
    ['bore', desk.bore / 2],
    ['rim', rim],
  ] as const) {
    shapes.push({
      key: `off ${name}`,
      path: circlePath([0, 0], radius),
      style: stroked('ink', WEIGHT.narrow, DASH.ghost),
      group: 'off drum',
    });
  }
  if (desk.step === 4) gauge(desk, shapes, labels, { rim, half: desk.row.across / 2 }, view);
  return { shapes, labels };
}

/** A beam gauge: two jaws that touch the linings at their middles, its beam below the brake. */
function gauge(
  desk: ShoeDesk,
  shapes: Shape[],
  labels: Label[],
  { rim, half }: { readonly rim: number; readonly half: number },
  view: StageInput['view'],
): void {
  const foot = -rim - 4;
  const put = (key: string, points: readonly Point[]): void => {
    shapes.push({
      key: `gauge ${key}`,
      path: polygon(points),
      style: outlined('bolt', 1.7),
      group: 'gauge',
    });
  };
  put('beam', [
    [-half - 10, foot],
    [half + 14, foot],
    [half + 14, foot - 9],
    [-half - 10, foot - 9],
  ]);
  for (const side of [-1, 1] as const) {
    const inner = side * half;
    put(texts.jaw(side), [
      [inner, 7],
      [inner + side * 5, 9],
      [inner + side * 8, 4],
      [inner + side * 11, foot],
      [inner + side * 11, foot - 9],
      [inner - side * 10, foot - 9],
      [inner - side * 10, foot],
      [inner + side * 3, foot + 30],
      [inner, -7],
    ]);
  }
  const ticks = Math.floor((2 * half - 24) / 10);
  for (let i = 0; i <= ticks; i++) {
    const x = -half + 12 + 10 * i;
    shapes.push({
      key: `gauge tick ${i}`,
      path: polyline([x, foot], [x, foot - (i % 5 === 0 ? 5 : 3)]),
      style: stroked('ink', 1),
      group: 'gauge',
    });
  }
  const text = mm2(desk.row.across);
  put('plate', [
    [-24, foot + 1],
    [24, foot + 1],
    [24, foot - 10],
    [-24, foot - 10],
  ]);
  labels.push(
    label(view, {
      key: 'gauge reads',
      text,
      at: [0, foot - 4.5],
      anchor: 'middle',
      style: 'peak',
      colour: 'ink',
    }),
  );
  if (view.narrow) return;
  const at: Point = [-half - 15, foot + 26];
  labels.push(
    ...['gauge', texts.overTheLinings].map((words, i) =>
      label(view, {
        key: `gauge word ${i}`,
        text: words,
        at,
        dy: 17 * i * view.text,
        anchor: 'end',
        style: i === 0 ? 'name' : 'gap word',
        colour: 'ink',
      }),
    ),
  );
}
