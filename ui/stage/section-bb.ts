import type { Brake, Point } from '../../sim/index.ts';
import { labelWords, stageSectionBb as texts } from '../../sim/words/en.ts';
import { fixed } from '../format.ts';
import { label } from './layers/label.ts';
import { overlapText } from './layers/overlap.ts';
import { type Path, polygon, polyline } from './path.ts';
import {
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
 * Section B–B: a cut along the axle through rim, lip, lining and plate. x runs along the axle, away
 * from the vehicle, at true scale, 0 at the plate's outer face. y is radial from the lip outward:
 * solid thicknesses at true scale, but the steps between lip, bore and lining ten times as high.
 */
export const STEPS = 10;

export interface SectionInput {
  readonly brake: Brake;
  /** Where the cut is: how far the lining stands outside the lip there, mm; negative in hand. */
  readonly overlap: number;
  /** Height of the lip, mm. */
  readonly lip: number;
  /** Lining left there, mm. */
  readonly lining: number;
  /** How far the drum has been drawn off, mm along the axle. */
  readonly slide: number;
  /** The lip has caught the lining and takes the shoe with it. */
  readonly caught: boolean;
  /** Strength of the flash where it has caught, 0 to 1; none when left out. */
  readonly flash?: number;
  readonly width: number;
  readonly height: number;
  readonly narrow: boolean;
}

/** Cut-off depth of web and disc under the lip, mm. */
const DEEP = { wide: 46, narrow: 13 };
/** Slope between lip and bore, mm along the axle. */
const SLOPE = 0.9;
/** Least rim left over the bore in the drawing, mm. */
const RIM_LEFT = 3;
/** Kept free on each side, mm: the value on the left, the pull on the right. */
const ROOM = { wide: { left: 22, right: 17 }, narrow: { left: 3, right: 15 } };

export interface SectionPlaces {
  /** Drum's edge, lip's end, end of the bore, the disc's two faces; mm along the axle, drum home. */
  readonly edge: number;
  readonly lipEnd: number;
  readonly boreEnd: number;
  readonly disc: readonly [number, number];
  /** Lining's two edges. */
  readonly lining: readonly [number, number];
  /** Bore and lining over the lip, mm as drawn. */
  readonly bore: number;
  readonly face: number;
  readonly rim: number;
}

/** Where everything stands in the section, mm as drawn. */
export function sectionPlaces(s: SectionInput): SectionPlaces {
  const { across, shoes, drum } = s.brake;
  const from = across.liningOff;
  const to = from + shoes.front.lining.width;
  const bore = s.lip * STEPS;
  return {
    edge: from - across.lipGap - across.lipWidth,
    lipEnd: from - across.lipGap,
    boreEnd: to + across.lipGap,
    disc: [to + across.discOff, to + across.discOff + across.disc],
    lining: [from, to],
    bore,
    face: s.overlap * STEPS,
    rim: Math.max(drum.rim, bore + RIM_LEFT),
  };
}

function view(s: SectionInput, p: SectionPlaces): View {
  const room = s.narrow ? ROOM.narrow : ROOM.wide;
  const across = p.disc[1] + s.brake.across.plate + room.left + room.right;
  const deep = s.narrow ? DEEP.narrow : DEEP.wide;
  const top = p.rim + (s.narrow ? 1.5 : 16);
  const scale = Math.min(s.width / across, s.height / (deep + top + 1));
  const used = across * scale;
  return {
    width: s.width,
    height: s.height,
    scale,
    origin: [
      (s.width - used) / 2 + (room.left + s.brake.across.plate) * scale,
      s.narrow ? top * scale : (s.height - (deep + top) * scale) / 2 + top * scale,
    ],
    k: s.narrow ? 0.8 : 1,
    text: s.narrow ? 0.8 : Math.min(1, s.width / 400),
    narrow: s.narrow,
  };
}

/** A cut with a break at its foot. */
function bar(x0: number, x1: number, top: number, foot: number): Path {
  const w = x1 - x0;
  return polygon([
    [x0, top],
    [x1, top],
    [x1, foot],
    [x0 + 0.62 * w, foot + 1.2],
    [x0 + 0.38 * w, foot - 1.2],
    [x0, foot],
  ]);
}

function drumOutline(p: SectionPlaces, foot: number): Path {
  const [d0, d1] = p.disc;
  const w = d1 - d0;
  return polygon([
    [p.edge, p.rim],
    [d1, p.rim],
    [d1, foot],
    [d0 + 0.62 * w, foot + 1.2],
    [d0 + 0.38 * w, foot - 1.2],
    [d0, foot],
    [d0, -2],
    [d0 - 1.6, 0],
    [p.boreEnd + SLOPE, 0],
    [p.boreEnd, p.bore],
    [p.lipEnd, p.bore],
    [p.lipEnd - SLOPE, 0],
    [p.edge, 0],
  ]);
}

/** The whole section as shapes and labels in a view of its own. */
export function sectionBB(s: SectionInput): Drawing {
  const p = sectionPlaces(s);
  const v = view(s, p);
  const foot = -(s.narrow ? DEEP.narrow : DEEP.wide);
  const { plate } = s.brake.across;
  const { steel } = s.brake.shoes.front;
  const shoeBy = s.caught ? Math.max(0, s.slide - s.brake.across.lipGap) : 0;
  const shoe = { angle: 0, x: shoeBy, y: 0 };
  const drum = { angle: 0, x: s.slide, y: 0 };
  const [l0, l1] = p.lining;
  const under = p.face - s.lining;
  const table = under - steel.tableThickness;
  const middle = (l0 + l1) / 2;
  const web = steel.webThickness / 2;
  const rect = (x0: number, y0: number, x1: number, y1: number): Path =>
    polygon([
      [x0, y0],
      [x1, y0],
      [x1, y1],
      [x0, y1],
    ]);
  const make = (key: string, path: Path, style: Shape['style'], place?: Shape['place']): Shape => ({
    key: `section ${key}`,
    path,
    style,
    group: 'section',
    ...(place ? { place } : {}),
  });
  const shapes: Shape[] = [
    make(
      'plate',
      bar(-plate, 0, Math.min(p.rim, s.brake.look.plateRadius - s.brake.drum.lipRadius), foot),
      hatched('cylinder', WEIGHT.wide),
    ),
    make(
      'web',
      bar(middle - web, middle + web, table, foot + 1.5),
      hatched('piston', WEIGHT.wide),
      shoe,
    ),
    make('table', rect(l0, table, l1, under), outlined('table', WEIGHT.wide), shoe),
    make('lining', rect(l0, under, l1, p.face), hatched('lining', WEIGHT.wide), shoe),
    make('drum', drumOutline(p, foot), hatched('drum', WEIGHT.heavy), drum),
  ];
  const labels: Label[] = [];
  if (s.overlap > 0.0005) {
    // The band of the overlap from the drum's edge over the lining's end.
    shapes.push(
      make('overlap', rect(p.edge + s.slide, 0, l0 + shoeBy + 4, p.face), { hatch: 'overlap' }),
    );
    if (s.flash) {
      const lit = rect(p.edge + s.slide - 1, -1, l0 + shoeBy + 5, p.face + 1);
      shapes.push(make('caught', lit, { fill: 'bad', fillAlpha: s.flash }));
    }
  }
  if (s.overlap > 0.0005 && !s.narrow) {
    shapes.push(...dimension(p, s.slide, plate, make));
    labels.push(
      label(v, {
        key: 'section value',
        text: overlapText(s.overlap),
        at: [-plate - 5.2, p.face / 2],
        anchor: 'end',
        style: 'peak',
        size: 26 * v.text,
        colour: 'bad',
      }),
    );
  }
  const away = s.slide > s.width / v.scale - p.disc[1];
  if (!away) shapes.push(pull(p, s, make));
  if (!s.narrow) labels.push(...words(s, p, v, shoeBy, away, shapes, make));
  return { shapes, labels, view: v };
}

type Make = (key: string, path: Path, style: Shape['style'], place?: Shape['place']) => Shape;

/** Two thin lines at lip and lining, arrows on them from outside. */
function dimension(p: SectionPlaces, slide: number, plate: number, make: Make): Shape[] {
  const x = -plate - 2.6;
  const arrow = (y: number, way: 1 | -1): Path => [
    ...polygon([
      [x, y],
      [x - 0.8, y + 2.2 * way],
      [x + 0.8, y + 2.2 * way],
    ]),
    ...polyline([x, y + 2.2 * way], [x, y + 5 * way]),
  ];
  return [
    make(
      'lines',
      [
        ...polyline([x - 1.6, 0], [p.edge + slide, 0]),
        ...polyline([x - 1.6, p.face], [p.lining[0], p.face]),
      ],
      stroked('ink2', WEIGHT.narrow),
    ),
    make('arrows', [...arrow(p.face, 1), ...arrow(0, -1)], {
      fill: 'bad',
      stroke: 'bad',
      width: 1.6,
    }),
  ];
}

/** Arrow of the pull on the drum's disc. */
function pull(p: SectionPlaces, s: SectionInput, make: Make): Shape {
  const x = p.disc[1] + 1.6 + Math.min(s.slide, 9);
  const y = s.narrow ? -4 : -24;
  const at = (dx: number, dy: number): Point => [x + dx, y + dy];
  return make(
    'pull',
    polygon([
      at(0, 1.5),
      at(4.2, 1.5),
      at(4.2, 4.2),
      at(9.5, 0),
      at(4.2, -4.2),
      at(4.2, -1.5),
      at(0, -1.5),
    ]),
    { fill: 'ink' },
  );
}

/** Names on leaders; kept off the narrow strip. */
function words(
  s: SectionInput,
  p: SectionPlaces,
  v: View,
  shoeBy: number,
  away: boolean,
  shapes: Shape[],
  make: Make,
): Label[] {
  const { drum } = s.brake;
  const out: Label[] = [];
  const name = (key: string, text: string, at: Point, anchor: Label['anchor']): void => {
    out.push(
      label(v, {
        key: `section ${key}`,
        text,
        at,
        anchor,
        style: 'name',
        size: 16 * v.text,
        colour: 'ink',
      }),
    );
  };
  const leader = (key: string, ...points: Point[]): void => {
    shapes.push(make(texts.leader(key), polyline(...points), stroked('ink', WEIGHT.narrow)));
  };
  const high = p.rim + 9;
  const lipX = p.edge + s.slide + 1.6;
  const boreX = p.lining[0] + 0.4 * (p.lining[1] - p.lining[0]) + s.slide;
  leader('lip', [lipX, 1.2], [lipX, high], [lipX + 2, high]);
  name('lip', texts.lipDiameter(fixed(2 * drum.lipRadius, 2)), [lipX + 2.6, high], 'start');
  leader('bore', [boreX, p.bore], [boreX + 3, high - 5], [boreX + 5, high - 5]);
  name(
    'bore',
    texts.sweptDiameter(fixed(2 * (drum.lipRadius + s.lip), 2)),
    [boreX + 5.6, high - 5],
    'start',
  );
  const [l0, l1] = p.lining;
  const liningX = l0 + 0.8 * (l1 - l0) + shoeBy;
  leader('lining', [liningX, p.face - s.lining / 2], [liningX, -17.5]);
  name('lining', labelWords.lining, [liningX, -20], 'middle');
  name('web', labelWords.web, [(l0 + l1) / 2 + 4 + shoeBy, -38], 'start');
  name('plate', labelWords.plate, [1.6, -38], 'start');
  if (!away) name('pull', texts.pull, [p.disc[1] + 6 + Math.min(s.slide, 9), -31], 'middle');
  return out;
}
