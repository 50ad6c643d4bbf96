import type { Brake, BrakeState, Point, Side, Tilt, TiltCause } from '../../sim/index.ts';
import { stageEdgeOn as texts } from '../../sim/words/en.ts';
import { type Frame, IDENTITY, turnAbout } from './geometry.ts';
import { arrowPath } from './layers/arrows.ts';
import { label } from './layers/label.ts';
import { coil } from './parts/coil.ts';
import { maker } from './parts/make.ts';
import { circlePath, type Path, polygon, polyline } from './path.ts';
import {
  DASH,
  type Drawing,
  hatched,
  type Label,
  outlined,
  type Shape,
  stroked,
  WEIGHT,
} from './shapes.ts';
import type { View } from './view.ts';

/**
 * A shoe seen along the plate, cut at its hold-down: axle to the right, drum side up. True scale; the
 * tilt alone is magnified, and says so beside it. Origin: plate side of the table, its inner face.
 */

export const TILT_DRAWN = 5;
/** How far below the table the web is drawn, mm. */
const DEEP = 50;
/** mm above the table and beside it. */
const ABOVE = 9;
const LEFT = 16;
const RIGHT = 9;

export interface EdgeBox {
  /** px of the stage. */
  readonly at: Point;
  readonly width: number;
  readonly height: number;
}

const box = (left: number, low: number, right: number, high: number): Path =>
  polygon([
    [left, low],
    [right, low],
    [right, high],
    [left, high],
  ]);

function viewOf(brake: Brake, view: View, place: EdgeBox): View {
  const { lining } = brake.shoes.front;
  const wide = LEFT + lining.width + RIGHT;
  const high = ABOVE + DEEP;
  const scale = Math.min(place.width / wide, place.height / high);
  const spare = place.width - scale * wide;
  return {
    ...view,
    scale,
    origin: [place.at[0] + spare / 2 + scale * LEFT, place.at[1] + scale * ABOVE],
    k: Math.max(0.8, view.k * 0.9),
  };
}

/** Plate with the pad at the table's middle; the end pads behind the cut, dashed. */
function guides(brake: Brake, tilt: Tilt): Shape[] {
  const make = maker('edge', 'plate', ' on');
  const { plate, liningOff } = brake.across;
  const face = -liningOff;
  const { tableThickness } = brake.shoes.front.steel;
  const ends = tilt.endPads - tilt.middlePad + tableThickness / 2;
  return [
    make(
      polygon([
        [face - plate, ABOVE],
        [face, ABOVE],
        [face, 3.4],
        [0, 3.4],
        [0, -4.2],
        [face, -4.2],
        [face, -DEEP],
        [face - plate, -DEEP],
      ]),
      hatched('cylinder', WEIGHT.medium),
    ),
    make(box(face, ends - 3.8, 0, ends + 3.8), stroked('ink', WEIGHT.narrow, DASH.hidden)),
  ];
}

/** Table, lining and web, leaning by the tilt as drawn. */
function leaning(brake: Brake, state: BrakeState, side: Side, place: Frame): Shape[] {
  const { lining, steel, holdDown } = brake.shoes[side];
  const web = steel.webThickness * steel.webCount;
  const middle = lining.width / 2;
  const [left, right] = [middle - web / 2, middle + web / 2];
  const inner = lining.groundRadius - lining.thicknessNew - steel.tableThickness;
  const hole = Math.abs(holdDown.at[0]) - inner;
  const worn = state.wear[side];
  const thick = lining.thicknessNew - (worn[Math.floor(worn.length / 2)] ?? 0);
  const at = { place };
  const top = steel.tableThickness;
  return [
    maker('edge', 'lining', ` ${side}`)(
      box(0, top, lining.width, top + Math.max(0, thick)),
      hatched('lining', WEIGHT.medium),
      at,
    ),
    maker('edge', 'table', ` ${side}`)(
      box(0, 0, lining.width, top),
      outlined('table', WEIGHT.medium),
      at,
    ),
    ...(() => {
      const make = maker('edge', 'web', ` ${side}`);
      return [
        make(box(left, hole + 2.6, right, 0), hatched('piston', WEIGHT.medium), at),
        make(box(left, -DEEP, right, hole - 2.6), hatched('piston', WEIGHT.medium), at),
        make(
          polyline([middle, ABOVE - 3], [middle, -DEEP]),
          stroked('ink', WEIGHT.axis, DASH.axis),
          at,
        ),
      ];
    })(),
  ];
}

/** Pin through plate and web, its spring on the web, and the cup. */
function fitted(brake: Brake, side: Side, place: Frame): Shape[] {
  const { lining, steel, holdDown } = brake.shoes[side];
  const { plate, liningOff } = brake.across;
  const inner = lining.groundRadius - lining.thicknessNew - steel.tableThickness;
  const v = Math.abs(holdDown.at[0]) - inner;
  const back = -liningOff - plate;
  const out = lining.width / 2 + (steel.webThickness * steel.webCount) / 2;
  const end = lining.width - 2.6;
  const make = maker('edge', 'hold-down', ` ${side}`);
  const face: Point = [place.x + Math.cos(place.angle) * out - Math.sin(place.angle) * v, v];
  return [
    make(box(back - 2.9, v - 2.2, back, v + 2.2), outlined('keeper', WEIGHT.medium)),
    make(box(back, v - 1, end, v + 1), outlined('keeper', WEIGHT.narrow)),
    ...coil(texts.edge(side), 'hold-down', [face[0] + 0.6, v], [end - 0.6, v], {
      lead: [0.3, 0.3],
      turns: 4,
      radius: 4.6,
      wire: 0.9,
    }),
    make(box(end, v - 6, end + 1.6, v + 6), outlined('keeper', WEIGHT.medium)),
    make(box(end + 1.6, v - 2.4, end + 4, v + 2.4), outlined('keeper', WEIGHT.medium)),
  ];
}

/** A shoe as it tips, and what makes it. */
interface Tipping {
  readonly brake: Brake;
  readonly state: BrakeState;
  readonly side: Side;
  readonly tilt: Tilt;
  readonly cause: TiltCause;
}

/** The shoe of a side edge-on, in a frame of its own on the stage. */
export function edgeOn(
  { brake, state, side, tilt, cause }: Tipping,
  view: View,
  place: EdgeBox,
): Drawing {
  const inside = viewOf(brake, view, place);
  const { lining, steel } = brake.shoes[side];
  const ends = tilt.endPads - tilt.middlePad + steel.tableThickness / 2;
  // The top goes away from the plate: clockwise here.
  const lean = tilt.angle > 0 ? turnAbout([0, ends], -tilt.angle * TILT_DRAWN) : IDENTITY;
  const middle = lining.width / 2;
  const hook: Point = [middle + tilt.wire, -30];
  const pull = maker('edge', 'return spring', ` ${side}`);
  const ground: Shape = {
    key: 'edge ground',
    path: box(
      (place.at[0] - inside.origin[0]) / inside.scale,
      (inside.origin[1] - place.at[1] - place.height) / inside.scale,
      (place.at[0] + place.width - inside.origin[0]) / inside.scale,
      (inside.origin[1] - place.at[1]) / inside.scale,
    ),
    style: { fill: 'sheet', stroke: 'ink', width: 2 },
    group: 'edge',
  };
  const ghost: Shape = {
    key: 'edge upright',
    path: box(0, 0, lining.width, steel.tableThickness + lining.thicknessNew),
    style: stroked('ink2', WEIGHT.medium, DASH.ghost),
    group: 'edge',
  };
  return {
    view: inside,
    shapes: [
      ground,
      ...guides(brake, tilt),
      ...leaning(brake, state, side, lean),
      ...(tilt.angle > 0 ? [ghost] : []),
      ...(cause.holdDown === 'fitted' ? fitted(brake, side, lean) : []),
      pull(circlePath(hook, 1.4), outlined('wire', WEIGHT.medium), { place: lean }),
      pull(
        arrowPath([hook[0], hook[1] - 2], [hook[0], hook[1] - 13], 2.3),
        { fill: 'ink' },
        {
          place: lean,
        },
      ),
    ],
    labels: words(inside, side, [
      [texts.pad, [1.6, -7]],
      [texts.endPads, [1.6, ends]],
      ...(cause.holdDown === 'fitted' ? ([[texts.holdDown, [middle + 4, -3.4]]] as const) : []),
      [texts.springs, [hook[0] + 3, hook[1] - 8]],
    ]),
  };
}

/** Names beside what they name. */
const words = (
  view: View,
  side: Side,
  named: readonly (readonly [text: string, at: Point])[],
): Label[] =>
  named.map(([text, at]) =>
    label(view, {
      key: `edge ${side} ${text}`,
      text,
      at,
      anchor: 'start',
      style: 'gap word',
      colour: 'ink',
    }),
  );
