import type { Brake } from '../../../sim/index.ts';
import { labelWords, stageLayersCutMark as texts } from '../../../sim/words/en.ts';
import { polar } from '../geometry.ts';
import { rimRadius } from '../parts/drum.ts';
import { polyline } from '../path.ts';
import { type Label, type Shape, stroked } from '../shapes.ts';
import type { View } from '../view.ts';
import { label, textWidth } from './label.ts';

/** Angle at which section B–B cuts the front lining, rad: its ends that can catch, or its middle. */
export function cutAngle(brake: Brake, word: 'toe' | 'centre' | 'heel'): number {
  const { from, to, cutEdgeArc } = brake.shoes.front.lining;
  if (word === 'centre') return (from + to) / 2;
  return word === 'toe' ? from + cutEdgeArc : to - cutEdgeArc;
}

/** How far the letters stand beside the line, mm. */
const BESIDE = 9;

/** Cutting plane of section B–B: thick ends inside and outside the lining, a letter at each. */
export function cutMark(
  brake: Brake,
  angle: number,
  view: View,
): { shapes: Shape[]; labels: Label[] } {
  const rim = rimRadius(brake);
  const near = brake.drum.radiusNew - 34;
  const far = rim + 24;
  const line = (
    name: string,
    a: number,
    b: number,
    width: number,
    dash?: readonly number[],
  ): Shape => ({
    key: `cut ${name}`,
    path: polyline(polar(a, angle), polar(b, angle)),
    style: stroked('ink', width, dash),
    group: 'cut',
  });
  // Letters beside the line, on the side away from the heel's value.
  const letter = (name: string, radius: number): Label =>
    label(view, {
      key: `cut ${name}`,
      text: 'B',
      at: polar(radius, angle - BESIDE / radius),
      anchor: 'middle',
      style: 'lens',
      size: 24 * view.text,
      colour: 'ink',
    });
  return {
    shapes: [
      line('axis', near + 8, far - 8, 1, [13, 3, 2, 3]),
      line('inner', near, near + 8, 4),
      line('outer', far - 8, far, 4),
    ],
    labels: [letter(texts.innerLetter, near + 1), letter(texts.outerLetter, far - 3)],
  };
}

/** The words at the toes begin at this share of the rim's radius. */
const TOE_WORDS = 0.78;
/** Kept free at the sheet's edge, and where it has a frame, px. */
const EDGE = { plain: 8, framed: 46 };

/** "Leading" and "Trailing" in the brake's upper corners, clear of the outer band; roles of forward travel. */
export function roleCorners(brake: Brake, view: View): Label[] {
  const rim = rimRadius(brake);
  const size = 28 * view.text;
  const put = (text: string, side: -1 | 1, colour: 'lead' | 'trail'): Label => {
    const clear = TOE_WORDS * rim + textWidth(text, size) / view.scale;
    const edge = view.width > 1000 ? EDGE.framed : EDGE.plain;
    const room = (view.origin[0] - edge) / view.scale;
    return label(view, {
      key: `overlap role ${side}`,
      text,
      at: [side * Math.min(room, Math.max(rim + 26, clear)), rim + 6],
      anchor: side < 0 ? 'start' : 'end',
      style: 'role',
      size,
      colour,
    });
  };
  return [put(labelWords.leading, -1, 'lead'), put(labelWords.trailing, 1, 'trail')];
}
