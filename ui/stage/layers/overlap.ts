import type { Brake, LipFit, Overlap, Point } from '../../../sim/index.ts';
import { stageLayersOverlap as words } from '../../../sim/words/en.ts';
import { fixed } from '../../format.ts';
import { polar } from '../geometry.ts';
import { type Path, polyline, trace } from '../path.ts';
import { DASH, type Label, type Shape, stroked } from '../shapes.ts';
import type { View } from '../view.ts';
import { bandRadius, SIDES } from './band.ts';
import { label } from './label.ts';

/** Overlap under this is a touch, not a band, mm. */
const SEEN = 0.0005;
/** Highest band that stays clear of the stage's edge, mm. */
const ROOM = 20;

/** Magnification that leaves room for the greatest overlap: 40, 20 or true size. */
export const overlapTimes = (greatest: number): 40 | 20 | 1 =>
  greatest * 40 <= ROOM ? 40 : greatest * 20 <= ROOM ? 20 : 1;

/** How far past the lining's ends the values of toe and heel stand, rad. */
const PAST_END = (12 * Math.PI) / 180;

/** Least overlap that two decimals can tell, mm. */
const TOLD = 0.005;

/** "0.29", "<0.01", or "clear" where nothing overlaps. */
export const overlapText = (mm: number): string =>
  mm > SEEN ? (mm < TOLD ? `<${fixed(0.01, 2)}` : fixed(mm, 2)) : words.clearOfIt;

/** Part of the arc where the lining stands outside the lip: outline points from low to high angle. */
function caught(o: Overlap, base: number, times: number): Point[] {
  return Array.from(o.angle, (a, i) =>
    polar(base + Math.max(0, o.overlap[i] as number) * times, a),
  );
}

/** The band's edge where something is caught; pieces that only touch are left out. */
function heldEdge(o: Overlap, edge: readonly Point[]): Path {
  const holds = (i: number): boolean => (o.overlap[i] ?? 0) > 0;
  return edge.flatMap((p, i) => {
    const before = edge[i - 1];
    return before && (holds(i) || holds(i - 1)) ? polyline(before, p) : [];
  });
}

/**
 * Overlap at the lip: outside the rim, at the angle where it is, a band as high as the lining
 * stands outside the lip, times the magnification; its dashed foot is the lip. True millimetres at
 * toe, centre and heel.
 */
export function overlapBand(
  brake: Brake,
  fit: LipFit,
  view: View,
): { shapes: Shape[]; labels: Label[] } {
  const shapes: Shape[] = [];
  const labels: Label[] = [];
  const base = bandRadius(brake);
  const times = overlapTimes(fit.greatest);
  for (const side of SIDES) {
    const o = fit[side];
    const edge = caught(o, base, times);
    const first = o.angle[0] as number;
    const last = o.angle[o.angle.length - 1] as number;
    const make = (name: string, path: Path, style: Shape['style']): Shape => ({
      key: `overlap ${side} ${name}`,
      path,
      style,
      group: 'overlap',
    });
    const lip = trace().arc([0, 0], base, first, last).path;
    shapes.push(make('lip', lip, stroked('ink', 1.4, DASH.lip)));
    if (o.greatest > SEEN) {
      const area = trace()
        .line(...edge)
        .arc([0, 0], base, last, first)
        .close().path;
      shapes.push(
        make('area', area, { hatch: 'overlap' }),
        make('edge', heldEdge(o, edge), stroked('bad', 2.4)),
      );
    }
    labels.push(...values(brake, o, side === 'front', base, times, view));
  }
  return { shapes, labels };
}

/** Values at toe, centre and heel; on a narrow stage only what holds, at its end of the arc. */
function values(
  brake: Brake,
  o: Overlap,
  front: boolean,
  base: number,
  times: number,
  view: View,
): Label[] {
  const first = o.angle[0] as number;
  const last = o.angle[o.angle.length - 1] as number;
  const toe = front ? first : last;
  const heel = front ? last : first;
  // Past the band's ends, clear of the cutting plane's letters; the narrow stage has no such plane.
  const past = view.narrow ? 0 : (front ? 1 : -1) * PAST_END;
  const marks = [
    { word: 'toe', mm: o.toe, angle: toe - past, down: -0.5 },
    { word: 'centre', mm: o.centre, angle: (first + last) / 2, down: 0 },
    { word: 'heel', mm: o.heel, angle: heel + past, down: 0.5 },
  ] as const;
  const out: Label[] = [];
  const size = (view.narrow ? 17 : 24) * view.text;
  for (const { word, mm, angle, down } of marks) {
    const holds = mm > SEEN;
    if (view.narrow && !holds) continue;
    const centre = word === 'centre';
    // On a wall there is no room beside the brake: the middle's value stands on the shoe.
    const within = centre && view.wall === true;
    const rise = view.narrow || centre ? Math.max(0, mm) * times + 1.6 : 5;
    const at = polar(within ? brake.drum.radiusNew - 22 : base + rise, angle);
    const anchor = front !== within ? 'end' : 'start';
    const put = (text: string, dy: number, name: string, strong: boolean) =>
      label(view, {
        key: `overlap ${front ? 'front' : 'rear'} ${word} ${name}`,
        text,
        at,
        dx: anchor === 'end' ? -2 : 2,
        dy,
        anchor,
        style: strong ? 'peak' : 'gap word',
        ...(strong ? { size } : {}),
        colour: strong ? 'bad' : 'ink2',
      });
    const line = size * 0.95;
    const high = down * line;
    if (holds) {
      out.push(put(overlapText(mm), high - 0.1 * line, 'value', true));
      out.push(put(words.place(word), high + Math.max(0.72 * line, 14), 'word', false));
    } else if (centre) {
      out.push(put(words.clearOfIt, high - 0.45 * line, 'value', false));
      out.push(put(words.place(word), high + 0.45 * line, 'word', false));
    } else out.push(put(words.clear(word), high, 'word', false));
  }
  return out;
}
