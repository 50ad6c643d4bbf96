import {
  type Brake,
  type BrakeState,
  leverForm,
  type Point,
  type Shoe,
  type Side,
} from '../../../sim/index.ts';
import { apply, degrees, type Frame, polar } from '../geometry.ts';
import { circlePath, type Path, slotPath, trace } from '../path.ts';
import { hatched, outlined, type Shape, stroked } from '../shapes.ts';
import { liningPath } from './lining.ts';
import { maker } from './make.ts';
import { webPath, webRadius } from './web.ts';

/** Radius of a spring hole and of a hold-down's cup, mm: usual sizes, drawn only. */
export const SPRING_HOLE = 2;
const CUP = 5.8;

interface ShoePaths {
  readonly web: Path;
  readonly table: Path;
  readonly holes: readonly Path[];
  readonly holdDown: readonly [cup: Path, ring: Path, slot: Path];
}
const kept = new WeakMap<Shoe, ShoePaths>();

/** The table in section, reference coordinates. */
export function tablePath(shoe: Shoe): Path {
  const inner = webRadius(shoe);
  const [from, to] = shoe.steel.tableArc;
  return trace()
    .arc([0, 0], inner + shoe.steel.tableThickness, from, to)
    .arc([0, 0], inner, to, from)
    .close().path;
}

function shoePaths(brake: Brake, shoe: Shoe): ShoePaths {
  const seen = kept.get(shoe);
  if (seen) return seen;
  const [hx, hy] = shoe.holdDown.at;
  const made: ShoePaths = {
    web: [
      ...webPath(brake, shoe),
      ...shoe.webHoles.flatMap((hole) => [...circlePath(hole.at, hole.radius)]),
    ],
    table: tablePath(shoe),
    holes: springHoles(brake, shoe.side).map((at) => circlePath(at, SPRING_HOLE)),
    holdDown: [
      circlePath([hx, hy], CUP),
      circlePath([hx, hy], CUP * 0.62),
      slotPath([hx - 2, hy], [hx + 2, hy], 0.85),
    ],
  };
  kept.set(shoe, made);
  return made;
}

/** Corners of the lever's window: the finger's width and the lost motion beside it, from the strut's seat. */
export function windowBox(brake: Brake): { left: number; right: number; y: number } | null {
  const { lostMotion } = brake.adjuster;
  const lever = leverForm(brake);
  if (!lever) return null;
  const left = brake.shoes.front.strutSeat[0];
  const finger = lever.pin[1] + lever.noseRadius * Math.sin(lever.startAngle);
  return { left, right: left + lever.window.x + lostMotion, y: finger - 0.28 };
}

export const springHoles = (brake: Brake, side: Side): Point[] =>
  brake.springs.flatMap(({ ends }) => ends.flatMap((end) => (end.on === side ? [end.at] : [])));

/** One shoe where it stands: web with its holes, table, lining from its true profile. */
export function shoe(brake: Brake, state: BrakeState, side: Side, place: Frame): Shape[] {
  const s = brake.shoes[side];
  const paths = shoePaths(brake, s);
  const web = maker('shoe', 'web', ` ${side}`);
  const shapes = [web(paths.web, outlined('web', 1.7), { place, evenOdd: true })];
  for (const hole of paths.holes) shapes.push(web(hole, outlined('hole', 1), { place }));
  const table = maker('shoe', 'table', ` ${side}`);
  shapes.push(table(paths.table, outlined('table', 1.1), { place }));
  const lining = maker('shoe', 'lining', ` ${side}`);
  shapes.push(lining(liningPath(s.lining, state.wear[side]), hatched('lining'), { place }));
  return shapes;
}

export function holdDown(brake: Brake, side: Side, place: Frame): Shape[] {
  const [cup, ring, slot] = shoePaths(brake, brake.shoes[side]).holdDown;
  const make = maker('shoe', 'hold-down', ` ${side}`);
  return [
    make(cup, outlined('bolt', 1.2), { place }),
    make(ring, stroked('ink', 0.9), { place }),
    make(slot, { fill: 'ink' }, { place }),
  ];
}

/** The outline of web and lining alone, for the rest ghost. */
export const shoeOutlines = (brake: Brake, state: BrakeState, side: Side): Path[] => [
  webPath(brake, brake.shoes[side]),
  liningPath(brake.shoes[side].lining, state.wear[side]),
];

/** Points for the names layer. */
export function shoeSpots(brake: Brake, side: Side, place: Frame) {
  const s = brake.shoes[side];
  const inner = webRadius(s);
  const out = side === 'front' ? 1 : -1;
  const at = (radius: number, degreesDown: number): Point =>
    apply(place, polar(radius, Math.PI / 2 + out * (Math.PI / 2 + degrees(degreesDown))));
  const [hx, hy] = s.holdDown.at;
  return {
    web: at(inner - s.steel.webDepth * 0.45, 17),
    table: at(inner + s.steel.tableThickness / 2, 23),
    lining: at(s.lining.groundRadius - s.lining.thicknessNew * 0.6, 32),
    holdDown: apply(place, [hx + 3, hy + 2.6]),
  };
}
