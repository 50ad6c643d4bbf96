import type { Brake, Instant } from '../../../sim/index.ts';
import { labelWords, awayCutStrutOther as words } from '../../../sim/words/en.ts';
import type { Frame } from '../../stage/geometry.ts';
import type { PartId } from '../../stage/part-names.ts';
import { drawingOf } from '../../stage/parts/adjuster.ts';
import { leverBody } from '../../stage/parts/parking.ts';
import { moved, slotPath } from '../../stage/path.ts';
import type { Places } from '../../stage/place.ts';
import type { Shape } from '../../stage/shapes.ts';
import type { CutPart, CutSettings } from './part.ts';
import {
  type Area,
  areaOf,
  boxOf,
  common,
  minus,
  placed,
  rectangle,
  scaled,
  union,
  unplaced,
} from './polygons.ts';

/** Struts without a toothed lever, taken from the drawing as it stands at rest. Temperature and flash draw nothing more. */

const COLD = 20;

const shapesOf = (brake: Brake, rest: Instant, places: Places): readonly Shape[] =>
  drawingOf(brake).shapes(brake, rest, places, COLD, 0);

/** Filled and closed outlines of a part where they stand, mm of the brake. */
const outlinesOf = (shapes: readonly Shape[], part: PartId): Area[] =>
  shapes
    .filter((s) => s.part === part && s.style.fill && s.path.some(([c]) => c === 'Z'))
    .map((s) => areaOf(s.place ? moved(s.path, s.place) : s.path));

const WIDE = 1e4;
/** Half the strut's height as drawn: above it is the arm alone, mm of the brake. */
const HALF = 3.8;

/**
 * Wedge, seat and strut lie flat on each other's sides already. The strut's hook reaches over the parking lever,
 * so it is cut in three: the strut before the lever, the arm over it, and the tine behind it.
 */
export function wedgeCut(brake: Brake, rest: Instant, places: Places, set: CutSettings): CutPart[] {
  const shapes = shapesOf(brake, rest, places);
  // As all parts, in the reference pose: the drawing has them where they stand at rest.
  const first = (part: PartId, at: Frame): Area => unplaced(outlinesOf(shapes, part)[0] ?? [], at);
  const [nx, ny] = brake.shoes.rear.strutSeat;
  const strut = first('strut', places.strut);
  const { front } = places.shoes;
  const box = boxOf(strut);
  const all = { left: -WIDE, right: WIDE, low: -WIDE, high: WIDE };
  const body = common(strut, rectangle({ ...all, right: nx, high: ny + HALF }));
  const arm = common(strut, rectangle({ ...all, left: nx - 14 }));
  // The lever, further out by the lost motion, just meets it.
  const lever = areaOf(leverBody(brake));
  const play = { angle: 0, x: brake.adjuster.lostMotion, y: 0 };
  const tine = minus(
    common(strut, rectangle({ ...all, left: nx + 2, high: ny + 7 })),
    lever,
    placed(lever, play),
  );
  const model = (area: Area): Area => scaled(area, set.factor);
  const part = (
    id: string,
    name: string,
    layer: 2 | 3,
    area: Area,
    does: string,
    count = 1,
  ): CutPart => ({ id, name, layer, count, area: model(area), holes: [], does });
  return [
    part('seat', words.wedgeSeat, 2, first('wedge seat', front), words.gluedOnTheFrontWeb),
    part(
      ...(['wedge', labelWords.wedge, 2, first('wedge', front)] as const),
      words.looseBetweenSeatAndStrut,
    ),
    part(...(['strut', labelWords.strut, 2, body] as const), words.itsSlopedEndLiesOn),
    part(
      ...(['arm', words.armOfTheStrut, 3, arm] as const),
      words.gluedOverTheStrutsEnd((box.right - box.left).toFixed(0)),
    ),
    part(...(['tine', words.tineOfTheHook, 2, tine] as const), words.gluedUnderTheArmsEnd),
  ].filter((p) => p.area.length > 0);
}

/** How far the front web may go out from the strut, mm of the brake: more than any press takes it. */
const AWAY = 8;

/**
 * A thread cannot be cut flat: the strut is one piece, as long as the screw stands. A pin in the front web stands
 * at the end of its slot when the shoes rest on it, and slides away in it when they go out.
 */
export function screwCut(brake: Brake, rest: Instant, places: Places, set: CutSettings): CutPart[] {
  const shapes = shapesOf(brake, rest, places);
  const names: readonly PartId[] = ['strut fork', 'screw', 'star wheel', 'sleeve'];
  // Its tongue reaches through the notch of the parking lever, which lies as high as the strut here.
  const [nx] = brake.shoes.rear.strutSeat;
  const before = rectangle({ left: -WIDE, right: nx, low: -WIDE, high: WIDE });
  const drawn = unplaced(union(...names.flatMap((n) => outlinesOf(shapes, n))), places.strut);
  const whole = common(drawn, before);
  const f = set.factor;
  // The strut's front end at rest, reckoned from its rear one.
  const fx = nx - rest.strutLength;
  const [, fy] = brake.shoes.front.strutSeat;
  const r = (set.pin + set.play) / 2;
  const slot = areaOf(slotPath([fx * f - AWAY * f, fy * f], [fx * f, fy * f], r));
  return [
    {
      ...{ id: 'strut', name: words.strutScrewAtStep(rest.tooth), layer: 2, count: 1, holes: [] },
      area: minus(scaled(whole, f), slot),
      does: words.onePieceAThreadCannot,
    },
  ];
}
