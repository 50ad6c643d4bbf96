import type { Point } from '../../../sim/index.ts';
import { labelWords, parkStage as texts } from '../../../sim/words/en.ts';
import { number } from '../../format.ts';
import { add, apply, degrees, polar } from '../../stage/geometry.ts';
import { arrowPath } from '../../stage/layers/arrows.ts';
import { FORCE_SCALE, forceText } from '../../stage/layers/forces.ts';
import { label, sizeOf, textWidth } from '../../stage/layers/label.ts';
import { rimRadius } from '../../stage/parts/drum.ts';
import { leverBody } from '../../stage/parts/parking.ts';
import { polyline } from '../../stage/path.ts';
import { placesOf } from '../../stage/place.ts';
import type { StageInput } from '../../stage/scene.ts';
import { DASH, type Label, type Shape, stroked, WEIGHT } from '../../stage/shapes.ts';
import { toMm, toPx } from '../../stage/view.ts';
import type { ParkDesk } from './desk.ts';

/** Scale under which a wall has no room for the lever's own words, px per mm. */
const SMALL_WALL = 2.2;
/** Kept free at the edge of the sheet, px. */
const MARGIN = 30;
/** The caption's lower edge with and without a frame of zones, px. */
const CAPTION_FOOT = { framed: 58, plain: 30 };

/** Force of the strut and of the lever's pivot on the shoes, the cable's pull, the lever at rest. */
export function parkStage(
  desk: ParkDesk,
  { brake, rest, view, frame }: StageInput,
): { readonly shapes: readonly Shape[]; readonly labels: readonly Label[] } {
  if (desk.cable === 0) return { shapes: [], labels: [] };
  const shapes: Shape[] = [];
  const labels: Label[] = [];
  const { alone, instant } = desk;
  const ghost = placesOf(brake, rest).parking;
  shapes.push({
    key: 'park ghost',
    path: leverBody(brake),
    place: ghost,
    style: stroked('ink', WEIGHT.medium, DASH.ghost),
    group: 'ghost',
  });
  const put = (key: string, from: Point, force: Point): Point => {
    const tip = add(from, force, FORCE_SCALE);
    shapes.push({
      key: `park ${key}`,
      path: arrowPath(from, tip, Math.max(2, Math.min(7, Math.hypot(...force) * 0.0026))),
      style: { fill: 'ink', stroke: 'sheet', width: 1.2 },
      group: 'forces',
    });
    return tip;
  };
  const seat = apply(placesOf(brake, instant).shoes.front, brake.shoes.front.strutSeat);
  const strutTip = put('strut', seat, [-alone.strut[0], -alone.strut[1]]);
  const pivotTip = put('pivot', alone.pivot, [-alone.pivotOnLever[0], -alone.pivotOnLever[1]]);
  put('cable', alone.hook, alone.cable);
  // A phone has no room for words.
  if (view.upper) return { shapes, labels };
  const out = rimRadius(brake) + 5;
  // Where there is no room beside the rim, in the upper corners.
  const corners = view.wall === true || view.narrow;
  const corner = (key: string, side: -1 | 1, force: Point): Label => {
    const [inset, y] = view.wall ? [17 * view.text, 56 * view.text] : [14, 62];
    return label(view, {
      key: `park ${key}`,
      text: `${key === 'strut' ? labelWords.strut : labelWords.pivot} ${forceText(Math.hypot(...force))}`,
      at: toMm(view, [side < 0 ? inset : view.width - inset, y]),
      anchor: side < 0 ? 'start' : 'end',
      style: 'force',
      colour: 'ink',
    });
  };
  const say = (key: string, tip: Point, side: -1 | 1, force: Point, words: readonly string[]) => {
    if (corners) {
      labels.push(corner(key, side, force));
      return;
    }
    const x = side * out;
    const y = Math.max(40, tip[1] + 6);
    shapes.push({
      key: `park leader ${key}`,
      path: polyline(tip, [side * (out - 8), y], [x, y]),
      style: stroked('ink2', WEIGHT.narrow),
      group: 'forces',
    });
    // The drum stands in the middle, so there is as much room on both sides.
    const room = view.origin[0] - out * view.scale - MARGIN;
    const size = sizeOf(view, 'gap word');
    const told = words.filter((text) => textWidth(text, size) < room);
    [forceText(Math.hypot(...force)), ...told].forEach((text, i) => {
      labels.push(
        label(view, {
          key: `park ${key} ${i}`,
          text,
          at: [x + side * 2, y],
          dy: i * 19 * view.text,
          anchor: side < 0 ? 'end' : 'start',
          style: i === 0 ? 'force' : 'gap word',
          colour: 'ink',
        }),
      );
    });
  };
  say('strut', strutTip, -1, alone.strut, [texts.strut, texts.onTheFrontShoe]);
  say('pivot', pivotTip, 1, alone.pivotOnLever, [texts.itsPivot, texts.onTheRearShoe]);
  // On a small wall letters are large and the brake is not: the forces on the shoes come first.
  if (!view.wall || view.scale > SMALL_WALL) {
    labels.push(
      label(view, {
        key: 'park cable',
        text: texts.cableN(number(desk.cable, 0)),
        at: [alone.hook[0] - 6, alone.hook[1] + 8],
        anchor: 'end',
        style: 'force',
        colour: 'ink',
      }),
      label(view, {
        key: 'park turn',
        text: `${number((alone.turn * 180) / Math.PI, 1)}°`,
        at: [alone.hook[0] - 4, (alone.hook[1] + alone.notch[1]) / 2 - 4],
        anchor: 'end',
        style: 'force',
        colour: 'ink',
      }),
    );
  }
  if (!corners) {
    // Over its arrow, or beside it where a low stage has its caption there.
    const above = polar(rimRadius(brake) + 19, degrees(90));
    const crowded = toPx(view, above)[1] < (frame ? CAPTION_FOOT.framed : CAPTION_FOOT.plain);
    labels.push(
      label(view, {
        key: 'park hill',
        text: texts.theHillTurnsTheDrum(desk.nose === 'down' ? texts.forward : texts.backward),
        at: crowded ? polar(rimRadius(brake) + 13, degrees(70)) : above,
        anchor: crowded ? 'start' : 'middle',
        style: 'turning',
        colour: 'ink',
      }),
    );
  }
  return { shapes, labels };
}
