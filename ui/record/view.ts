import * as v from 'valibot';
import type { TiltCause, Turning, Wheel } from '../../sim/index.ts';
import { language, recordView as texts } from '../../sim/words/en.ts';
import { PACES, type Pace, paceName } from '../pace.ts';
import { type PartId, partNames } from '../stage/part-names.ts';
import type { ThemeName } from '../theme.ts';
import { crossed } from './across.ts';
import { intention } from './intention.ts';
import { type Moment, type StationId, stationIds, withPart } from './moment.ts';
import { layersOf, withLayers } from './parts.ts';

/** How the bench is looked at: it changes nothing of the brake. */
export type LayerName =
  | 'fan'
  | 'comb'
  | 'forces'
  | 'names'
  | 'ghost'
  | 'heat'
  | 'loupe'
  | 'edge'
  | 'dials'
  | 'polygons';
export type Layers = Readonly<Record<LayerName, boolean>>;

export const layerNames = [
  'fan',
  'comb',
  'forces',
  'names',
  'ghost',
  'heat',
  'loupe',
  'edge',
  'dials',
  'polygons',
] as const satisfies readonly LayerName[];

/** Where the stage looks: the whole brake at factor 1, moved by px of the screen. */
export interface Zoom {
  readonly factor: number;
  readonly dx: number;
  readonly dy: number;
}
export const WHOLE: Zoom = { factor: 1, dx: 0, dy: 0 };
/** Closest look. */
export const MOST_ZOOM = 12;

/** Parts asked for by name, to be tapped, and how it goes. */
export interface Asked {
  /** Still to be found, the one that is asked for first. */
  readonly left: readonly PartId[];
  /** Found so far, and found at the first tap. */
  readonly found: number;
  readonly hits: number;
  /** Tapped last in place of the one that is asked for. */
  readonly wrong: PartId | null;
}

export interface View {
  /** Layers of the stations in which they were switched; the others have their stations' own. */
  readonly layers: Readonly<Partial<Record<StationId, Layers>>>;
  /** Which wheel the drawing shows; null: the one of the brake's scene. */
  readonly wheel: Wheel | null;
  readonly zoom: Zoom;
  readonly theme: ThemeName;
  /** For the wall of a classroom: half drawing, half text, nothing small. */
  readonly wall: boolean;
  /** Parts whose names are told; null: all of them. */
  readonly revealed: readonly PartId[] | null;
  /** Parts are asked for by name; null: none is. */
  readonly asked: Asked | null;
  /** How many times larger than it is the gap is drawn. */
  readonly magnification: 1 | 20 | 40;
  /** What is out of order along the axle; shown in the edge-on drawing alone. */
  readonly tilt: TiltCause;
  /** The brake has shoes that bend, as soon as its linings lie as they wear under them: see `bends` in derive.ts. */
  readonly bending: boolean;
  /** How much slower than the clock the brake's time runs. */
  readonly slow: Pace;
  readonly sound: boolean;
}

export const PLAIN_VIEW: View = {
  layers: {},
  wheel: null,
  zoom: WHOLE,
  theme: 'sheet',
  wall: false,
  revealed: null,
  magnification: 20,
  tilt: { holdDown: 'fitted', groove: 0 },
  asked: null,
  bending: false,
  slow: 1,
  sound: true,
};

const parts = Object.keys(partNames) as PartId[];
const onOff = v.boolean();
const count = v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(100));
const far = v.pipe(v.number(), v.minValue(-1e5), v.maxValue(1e5));

const layers = v.strictObject({
  fan: onOff,
  comb: onOff,
  forces: onOff,
  names: onOff,
  ghost: onOff,
  heat: onOff,
  loupe: onOff,
  edge: onOff,
  // Links from before there were any.
  dials: v.optional(onOff, false),
  polygons: v.optional(onOff, false),
});

/** Layers by station, where they were switched. */
export const layersSchema: v.GenericSchema<unknown, View['layers']> = v.pipe(
  v.record(v.picklist(stationIds), layers),
  v.transform((r): View['layers'] => r),
);

const looks = {
  revealed: v.nullable(v.pipe(v.array(v.picklist(parts)), v.maxLength(parts.length))),
  magnification: v.picklist([1, 20, 40]),
  tilt: v.strictObject({
    holdDown: v.picklist(['fitted', 'lost']),
    groove: v.pipe(v.number(), v.minValue(0), v.maxValue(5)),
  }),
};

/** What a guest may change of the look, to be put back when it leaves. */
export const lookSchema = v.strictObject(looks);

export const viewSchema: v.GenericSchema<unknown, View> = v.strictObject({
  layers: layersSchema,
  wheel: v.nullable(v.picklist(['left', 'right'])),
  zoom: v.strictObject({
    factor: v.pipe(v.number(), v.minValue(1), v.maxValue(MOST_ZOOM)),
    dx: far,
    dy: far,
  }),
  theme: v.picklist(['sheet', 'board']),
  wall: onOff,
  ...looks,
  asked: v.optional(
    v.nullable(
      v.strictObject({
        left: v.pipe(v.array(v.picklist(parts)), v.maxLength(parts.length)),
        found: count,
        hits: count,
        wrong: v.nullable(v.picklist(parts)),
      }),
    ),
    null,
  ),
  bending: onOff,
  // Kept records may have it on or off: a quarter of the clock's time, then the slowest there was.
  slow: v.pipe(
    v.union([onOff, v.picklist(PACES)]),
    v.transform((slow): Pace => (slow === true ? 20 : slow === false ? 1 : slow)),
  ),
  sound: onOff,
});

const seen = (m: Moment, change: Partial<View>): Moment => ({
  ...m,
  view: { ...m.view, ...change },
});

const words: Readonly<Record<LayerName, string>> = {
  ...texts.layers,
  fan: texts.gapFan,
  comb: texts.pressureComb,
  ghost: texts.restGhost,
  polygons: texts.forcePolygons,
};

/** Loupe, edge-on drawing and force polygons take the same place. */
const ONE_PLACE = ['loupe', 'edge', 'polygons'] as const;

export const toggleLayer = intention(
  'view.layer',
  (m: Moment, layer: LayerName) => {
    const on = !layersOf(m)[layer];
    const taken = on && (ONE_PLACE as readonly LayerName[]).includes(layer);
    const gone = taken ? Object.fromEntries(ONE_PLACE.map((l) => [l, false])) : {};
    return withLayers(m, { ...gone, [layer]: on });
  },
  (_before, after, layer) => texts.layer(words[layer], layersOf(after)[layer]),
);

export const magnify = intention(
  'view.magnify',
  (m: Moment, times: 1 | 20 | 40) => withLayers(seen(m, { magnification: times }), { fan: true }),
  (_before, after) => texts.gapDrawn(after.view.magnification),
);

export const tip = intention(
  'view.tip',
  (m: Moment, tilt: TiltCause) => seen(m, { tilt }),
  texts.causeOfTheTilt,
);

/** Hides the names behind their numbers, to be asked for one by one; or tells all again. */
export const hideNames = intention(
  'view.names',
  (m: Moment, hidden: boolean) => seen(m, { revealed: hidden ? [] : null, asked: null }),
  (_before, after) => (after.view.revealed ? texts.namesHidden : texts.namesTold),
);

export const reveal = intention(
  'view.reveal',
  (m: Moment, part: PartId) => {
    const { revealed } = m.view;
    return !revealed || revealed.includes(part) ? m : seen(m, { revealed: [...revealed, part] });
  },
  (_before, _after, part) => texts.nameOf(language.inside(partNames[part][0])),
);

export const look = intention(
  'view.look',
  (m: Moment, theme: ThemeName) => (theme === m.view.theme ? m : seen(m, { theme })),
  (_before, after) => texts.view(after.view.theme === 'sheet' ? texts.sheet : texts.board),
);

export const showOnWall = intention(
  'view.wall',
  (m: Moment, wall: boolean) => (wall === m.view.wall ? m : seen(m, { wall })),
  (_before, after) => (after.view.wall ? 'wall' : texts.wallLeft),
);

export const lookAt = intention(
  'view.wheel',
  (m: Moment, wheel: Wheel) => {
    const on = m.bench.across?.wheel === wheel ? crossed(m) : m;
    const next = wheel === on.view.wheel ? on : seen(on, { wheel });
    // There the drawing turns with the sheet.
    const sheet = m.station === 'inspect' && m.parts.inspect.wheel !== wheel;
    return sheet ? withPart(next, 'inspect', { wheel }) : next;
  },
  (_before, after) => texts.handWheel(after.view.wheel),
);

export const zoomTo = intention(
  'view.zoom',
  (m: Moment, zoom: Zoom) => {
    const { factor, dx, dy } = m.view.zoom;
    const next = zoom.factor <= 1 ? WHOLE : { ...zoom, factor: Math.min(MOST_ZOOM, zoom.factor) };
    return next.factor === factor && next.dx === dx && next.dy === dy ? m : seen(m, { zoom: next });
  },
  (_before, after) => (after.view.zoom.factor > 1 ? 'zoom' : texts.wholeBrake),
  { joins: 'view.zoom' },
);

export const slowDown = intention(
  'view.slow',
  (m: Moment, slow: Pace) => (slow === m.view.slow ? m : seen(m, { slow })),
  (_before, after) => texts.timeAt(paceName(after.view.slow)),
);

export const bend = intention(
  'view.bend',
  (m: Moment, bending: boolean) => (bending === m.view.bending ? m : seen(m, { bending })),
  (_before, after) => (after.view.bending ? texts.shoesThatBend : texts.rigidShoes),
);

export const sound = intention(
  'view.sound',
  (m: Moment, on: boolean) => (on === m.view.sound ? m : seen(m, { sound: on })),
  (_before, after) => (after.view.sound ? texts.soundOn : texts.soundOff),
);

export const turn = intention(
  'view.turn',
  (m: Moment, turning: Turning) => (turning === m.turning ? m : { ...m, turning }),
  (_before, after) =>
    texts.drum(
      after.turning > 0 ? texts.forward : after.turning < 0 ? texts.backward : texts.stopped,
    ),
);
