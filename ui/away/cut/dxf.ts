import Drawing from 'dxf-writer';
import type { Point } from '../../../sim/index.ts';
import type { Layout } from './layout.ts';

/** The sheet of cuts as DXF in millimetres: closed polylines and true circles, each kind on a layer of its own. */
export const DXF_LAYERS = { outlines: 'CUT', holes: 'HOLES', names: 'NAMES' } as const;

/** Digits that are written, mm: the library writes numbers out in full. */
const round = (v: number): number => Number(v.toFixed(4));

export function cutDxf({ pieces }: Layout): string {
  const d = new Drawing();
  d.setUnits('Millimeters');
  d.addLayer(DXF_LAYERS.outlines, Drawing.ACI.RED, 'CONTINUOUS');
  d.addLayer(DXF_LAYERS.holes, Drawing.ACI.GREEN, 'CONTINUOUS');
  d.addLayer(DXF_LAYERS.names, Drawing.ACI.BLUE, 'CONTINUOUS');
  for (const { circles, lines, name, part } of pieces) {
    d.setActiveLayer(DXF_LAYERS.outlines);
    for (const p of lines) {
      d.drawPolyline(
        p.map(([x, y]): [number, number] => [round(x), round(y)]),
        true,
      );
    }
    d.setActiveLayer(DXF_LAYERS.holes);
    for (const { at, radius } of circles) d.drawCircle(round(at[0]), round(at[1]), round(radius));
    d.setActiveLayer(DXF_LAYERS.names);
    const [x, y]: Point = name.at;
    // Older readers of this format know no letters beyond ASCII.
    const text = part.name.replaceAll('’', "'").replaceAll('\u2013', '-');
    d.drawText(round(x), round(y), name.size, 0, text, 'left', 'baseline');
  }
  return d.toDxfString();
}
