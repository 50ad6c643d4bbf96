import { label } from './layers/label.ts';
import { type Path, polygon, polyline } from './path.ts';
import type { Label, Shape } from './shapes.ts';
import { toMm, type View } from './view.ts';

/** Zone frame of a drawing sheet: columns 1 to 8, rows A to F, so that one can say "look at C3". */
const COLUMNS = 8;
const ROWS = 'ABCDEF';
/** px from the edge. */
export const FRAME_MARGIN = 24;
const MARGIN = FRAME_MARGIN;

export function zoneFrame(view: View): { shapes: Shape[]; labels: Label[] } {
  const { width: w, height: h } = view;
  const at = (x: number, y: number) => toMm(view, [x, y]);
  const labels: Label[] = [];
  const zone = (text: string, x: number, y: number) =>
    labels.push(
      label(view, {
        key: `zone ${text}`,
        text,
        at: at(x, y),
        anchor: 'middle',
        style: 'zone',
        colour: 'ink2',
      }),
    );
  const wide = (w - 2 * MARGIN) / COLUMNS;
  const high = (h - 2 * MARGIN) / ROWS.length;
  const lines: Path = [
    ...polygon([
      at(MARGIN, MARGIN),
      at(w - MARGIN, MARGIN),
      at(w - MARGIN, h - MARGIN),
      at(MARGIN, h - MARGIN),
    ]),
  ];
  const cells: Path[] = [lines];
  for (let i = 0; i < COLUMNS; i++) {
    const x = MARGIN + i * wide;
    zone(String(i + 1), x + wide / 2, MARGIN / 2 + 1);
    if (i > 0)
      cells.push(polyline(at(x, 2), at(x, MARGIN)), polyline(at(x, h - MARGIN), at(x, h - 2)));
  }
  [...ROWS].forEach((row, j) => {
    const y = MARGIN + j * high;
    zone(row, MARGIN / 2 + 1, y + high / 2);
    if (j > 0)
      cells.push(polyline(at(2, y), at(MARGIN, y)), polyline(at(w - MARGIN, y), at(w - 2, y)));
  });
  return {
    shapes: [
      {
        key: 'zones',
        path: cells.flat(),
        style: { stroke: 'rule', width: 1 },
        group: 'zones',
      },
    ],
    labels,
  };
}
