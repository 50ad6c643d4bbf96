import {
  type Brake,
  type LeverForm,
  leverForm,
  leverOutline,
  type Point,
} from '../../../sim/index.ts';
import { awayCutStrutToothed as words } from '../../../sim/words/en.ts';
import { type Frame, IDENTITY } from '../../stage/geometry.ts';
import { leverFrame } from '../../stage/lever.ts';
import { type StrutPaths, strutPaths } from '../../stage/parts/strut.ts';
import { circlePath, polygon, slotPath } from '../../stage/path.ts';
import { type CutPart, type CutSettings, type Hole, SPRING_END } from './part.ts';
import {
  type Area,
  areaOf,
  boxOf,
  common,
  minus,
  offset,
  outside,
  placed,
  rectangle,
  scaled,
  union,
} from './polygons.ts';

/**
 * Strut and toothed lever as a stack of flat parts. Over the shoes (1) lies the strut's plate (2), on it the block
 * with its tooth, in the lever's own height (3), and over the lever the bar with the slot (4): as it is drawn, the
 * lever between plate and bar. The finger cannot dip into the web's window, so a disc under its end does.
 */

/** Free between the lever as it goes round and what is glued beside it, mm of the brake. */
const CLEAR = 0.6;
/** Length of the strut's foot before the parking lever, mm of the brake. */
const FOOT = 14;

/** The lever's own outline, pin at 0, mm of the brake. */
export function leverArea(form: LeverForm): Area {
  const { outer, hole } = leverOutline(form);
  return areaOf([...polygon(outer), ...(hole.length > 0 ? polygon(hole) : [])]);
}

/** Where the lever stands with the strut at rest in the reference pose. */
export const leverPose = (brake: Brake, phase: number, lift: number): Frame =>
  leverFrame(brake, IDENTITY, phase, lift) ?? IDENTITY;

/** What the lever covers somewhere on its way from the first tooth to the last: at each tooth, down and lifted. */
function sweep(brake: Brake, lever: Area, height: number): Area {
  const poses = brake.adjuster.growth.flatMap((_, tooth) =>
    [0, height].map((lift) => placed(outside(lever), leverPose(brake, tooth, lift))),
  );
  return union(...poses);
}

export interface ToothedParts {
  readonly form: LeverForm;
  readonly paths: StrutPaths;
  readonly block: Area;
  readonly lever: Area;
  /** The disc that stands in the window, in the lever's own frame. */
  readonly disc: Area;
}

/** What of the toothed strut moves against each other, mm of the brake. */
export function toothedParts(brake: Brake): ToothedParts | null {
  const form = leverForm(brake);
  const paths = strutPaths(brake);
  if (!form || !paths) return null;
  return {
    form,
    paths,
    block: areaOf(paths.block),
    lever: leverArea(form),
    disc: areaOf(circlePath(leverOutline(form).nose, form.window.x / 2)),
  };
}

/** The slot as it is cut, mm of the model: for the model's pin, not the brake's. */
export function slotArea({ paths }: ToothedParts, set: CutSettings): Area {
  const [a, b] = paths.ways.pin.map(([x, y]): Point => [x * set.factor, y * set.factor]) as [
    Point,
    Point,
  ];
  return areaOf(slotPath(a, b, (set.pin + set.play) / 2));
}

/** Where two pins of the board guide the bar along its long hole, mm of the brake. */
export function guidesOf({ paths }: ToothedParts): readonly [Point, Point] {
  const [[x0, y], [x1]] = paths.ways.bar;
  return [
    [x0 + 0.3 * (x1 - x0), y],
    [x0 + 0.75 * (x1 - x0), y],
  ];
}

export function toothedCut(brake: Brake, set: CutSettings): CutPart[] {
  const parts = toothedParts(brake);
  if (!parts) return [];
  const { block, disc, form, lever, paths } = parts;
  const f = set.factor;
  const [nx] = brake.shoes.rear.strutSeat;
  const model = (area: Area): Area => scaled(area, f);
  const spring = ([x, y]: Point): Hole => ({
    at: [x * f, y * f],
    radius: SPRING_END / 2,
    for: 'spring',
  });
  const pin = ([x, y]: Point): Hole => ({
    at: [x * f, y * f],
    radius: (set.pin + set.play) / 2,
    for: 'pin',
  });
  const bar = outside(areaOf(paths.bar));
  const plate = union(areaOf(paths.plate), rectangleOver(block));
  const end = boxOf(bar);
  const foot = common(
    bar,
    rectangle({ ...end, left: nx - FOOT, right: nx, low: end.low - 1, high: end.high + 1 }),
  );
  const spacer = minus(
    common(areaOf(paths.plate), bar),
    offset(sweep(brake, lever, form.toothHeight), CLEAR, 'round'),
  );
  const [a, b] = paths.ways.bar.map(([x, y]): Point => [x * f, y * f]) as [Point, Point];
  const long = areaOf(slotPath(a, b, (set.pin + set.play) / 2));
  const hook = middleOf(block, paths, form);
  const at = leverPose(brake, 0, 0);
  return [
    {
      ...{ id: 'plate', name: words.strutPlate, layer: 2, count: 1, area: model(plate) },
      holes: [spring(hook)],
      does: words.liesOnTheShoesBlock,
    },
    {
      ...{ id: 'block', name: words.blockWithTheTooth, layer: 3, count: 1, area: model(block) },
      holes: [spring(hook)],
      does: words.gluedOnThePlatesLower,
    },
    {
      ...{ id: 'spacer', name: words.spacer, layer: 3, count: 1, area: model(spacer) },
      holes: [],
      does: words.gluedBetweenPlateAndBar,
    },
    {
      ...{ id: 'foot', name: words.strutFoot, layer: 2, count: 2, area: model(foot) },
      holes: [],
      does: words.twoOnEachOtherUnder,
    },
    {
      ...{ id: 'bar', name: words.strutBarWithTheSlot, layer: 4, count: 1 },
      area: minus(model(bar), slotArea(parts, set), long),
      holes: [spring(paths.spring[0])],
      does: words.gluedOverSpacerAndFoot,
    },
    {
      ...{ id: 'lever', name: words.toothedLever, layer: 3, count: 1 },
      area: model(placed(lever, at)),
      holes: [pin(form.pin)],
      does: words.betweenPlateAndBarIts,
    },
    {
      ...{ id: 'disc', name: words.discOfTheFinger, layer: 1, count: 2 },
      area: model(placed(disc, at)),
      holes: [],
      does: words.twoOnEachOtherGlued,
    },
  ];
}

/** The block without its tooth: what the plate carries it by. */
const rectangleOver = (block: Area): Area => {
  const { left, right, low } = boxOf(block);
  const shoulders = block.flat().filter(([x]) => Math.abs(x - right) < 1e-6);
  return rectangle({ left, right, low, high: Math.max(...shoulders.map(([, y]) => y)) });
};

const middleOf = (block: Area, paths: StrutPaths, form: LeverForm): Point => {
  const { low } = boxOf(block);
  const { high } = boxOf(rectangleOver(areaOf(paths.block)));
  return [form.pin[0], (low + high) / 2];
};
