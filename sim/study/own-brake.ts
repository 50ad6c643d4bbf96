import { frictionOf } from '../scene/rubbing.ts';
import type { Scene } from '../scene/schema.ts';
import { DEG, PI } from '../units/units.ts';
import { layPlaces, type OwnSeen, slackFor } from './own-places.ts';

/**
 * A brake of one's own: a teaching brake's scene, drawn to the measured drum and then changed in what
 * can be measured at home. What was not measured keeps the teaching brake's proportions; it is assumed.
 *
 * Proportions: all places of the shoes, springs, levers and pins go with the drum's diameter (similar
 * figures); cylinder and thicknesses stay while they fit; the teaching brake's slack between strut and seats is kept in mm, so the clearance is too.
 * Masses go with the square of the size (sheet steel), moments of inertia with the fourth power.
 */
export const ownKeys = [
  'drumNew',
  'drumMax',
  'liningWidth',
  'liningNew',
  'liningMin',
  'liningArc',
  'friction',
  'pinsApart',
  'pinBelow',
  'toeHeight',
  'bore',
  'stroke',
  'strutHeight',
  'strutLength',
  'lostMotion',
  'teeth',
  'upperForce',
  'upperRate',
  'lowerForce',
  'lowerRate',
  'leverNotch',
  'leverHook',
  'perNotch',
  'masterBore',
  'pedalRatio',
  'freePlay',
  'tyre',
  'mass',
] as const;
export type OwnKey = (typeof ownKeys)[number];
export type OwnSizes = Readonly<Partial<Record<OwnKey, number>>>;

type P = [number, number];
type Deep<T> = T extends readonly (infer _)[] | number | string | boolean | undefined
  ? T
  : { -readonly [K in keyof T]: Deep<T[K]> };
type Draft = Deep<Scene>;

const apart = (a: P, b: P): number =>
  Math.sqrt((a[0] - b[0]) * (a[0] - b[0]) + (a[1] - b[1]) * (a[1] - b[1]));

/** Down to this size of the teaching brake its own cylinder and thicknesses have room in the drum. */
const FITS = 0.85;
/** Least of a tyre's radius over the drum's outside, for a wheel between them (common practice). */
const TYRE_OVER_DRUM = 1.2;

/** Similar figure, k times as large. Adjuster teeth and forces stay; so do cylinder, thicknesses and the toothed lever while there is room for them. */
function resized(scene: Draft, k: number): void {
  const at = (p: P): P => [p[0] * k, p[1] * k];
  const { drum, look, parkingLever } = scene;
  drum.inertia *= k * k * k * k;
  drum.heatCapacity *= k * k;
  const { shoes: warm } = scene.heat;
  if (warm) {
    warm.loss *= k * k;
    if (warm.capacity !== undefined) warm.capacity *= k * k;
  }
  for (const side of ['front', 'rear'] as const) {
    const shoe = scene.shoes[side];
    shoe.anchor.at = at(shoe.anchor.at);
    shoe.toe = at(shoe.toe);
    shoe.strutSeat = at(shoe.strutSeat);
    shoe.holdDown.at = at(shoe.holdDown.at);
    shoe.lining.groundRadius *= k;
    shoe.steel.webDepth *= k;
    shoe.mass *= k * k;
    shoe.inertia *= k * k * k * k;
    shoe.webHoles = shoe.webHoles.map((h) => ({ at: at(h.at), radius: h.radius * k }));
  }
  scene.cylinder.at = at(scene.cylinder.at);
  // In a much smaller drum there is no room for them: smaller ones are assumed.
  const fits = Math.min(1, k / FITS);
  for (const key of ['bore', 'stroke', 'outerDiameter', 'length'] as const) {
    scene.cylinder[key] *= fits;
  }
  for (const side of ['front', 'rear'] as const) {
    const { lining, steel } = scene.shoes[side];
    for (const key of ['thicknessNew', 'thicknessMin', 'rivetHeight', 'chamferDepth'] as const) {
      lining[key] *= fits;
    }
    steel.tableThickness *= fits;
    steel.webThickness *= fits;
  }
  const { adjuster } = scene;
  if ('lever' in adjuster && adjuster.lever) {
    adjuster.lever.toothRadius *= fits;
    adjuster.lever.toothHeight *= fits;
  }
  scene.springs = scene.springs.map((s) => ({
    ...s,
    ends: [
      { ...s.ends[0], at: at(s.ends[0].at) },
      { ...s.ends[1], at: at(s.ends[1].at) },
    ],
  }));
  parkingLever.pivot = at(parkingLever.pivot);
  parkingLever.hook = at(parkingLever.hook);
  parkingLever.cableGuide = at(parkingLever.cableGuide);
  for (const key of ['plateRadius', 'hubRadius', 'studCircle', 'studRadius'] as const) {
    look[key] *= k;
  }
  look.accessHole = { ...look.accessHole, at: at(look.accessHole.at) };
}

/** Puts the seats so far apart, middle kept, that the strut has the wanted slack between them. */
function seatsFor(scene: Draft, strut: number, slack: number): void {
  const { front, rear } = scene.shoes;
  const by = (strut + slack - apart(front.strutSeat, rear.strutSeat)) / 2;
  front.strutSeat = [front.strutSeat[0] - by, front.strutSeat[1]];
  rear.strutSeat = [rear.strutSeat[0] + by, rear.strutSeat[1]];
}

/** Its return spring of that name: scenes list them in any order, and may have others. */
const springOf = <S extends { readonly name: string }>(
  springs: readonly S[],
  which: 'upper' | 'lower',
): S | undefined => springs.find(({ name }) => name.toLowerCase().split(/\W+/).includes(which));

/** From the rear seat to the lever's pivot. */
const leverFrom = ({ shoes: { rear }, parkingLever: { pivot } }: Draft): P => [
  pivot[0] - rear.strutSeat[0],
  pivot[1] - rear.strutSeat[1],
];

/** What the teaching brake has at a place that can be measured, in the unit of its field. */
export function sizeAt(scene: Scene, key: OwnKey): number {
  const { drum, shoes, cylinder, adjuster, springs, parkingLever: lever, hydraulics } = scene;
  const { lining, anchor, strutSeat } = shoes.rear;
  const all: Readonly<Record<OwnKey, () => number>> = {
    drumNew: () => drum.diameterNew,
    drumMax: () => drum.diameterMax,
    liningWidth: () => lining.width,
    liningNew: () => lining.thicknessNew,
    liningMin: () => lining.thicknessMin,
    friction: () => frictionOf(lining.friction),
    liningArc: () => ((lining.to - lining.from) * DEG * drum.diameterNew) / 2,
    pinsApart: () => anchor.at[0] - shoes.front.anchor.at[0],
    pinBelow: () => -anchor.at[1],
    toeHeight: () => shoes.rear.toe[1],
    bore: () => cylinder.bore,
    stroke: () => cylinder.stroke,
    strutHeight: () => strutSeat[1],
    strutLength: () => adjuster.lengthAtZero,
    lostMotion: () => adjuster.lostMotion,
    teeth: () => adjuster.teeth,
    upperForce: () => springOf(springs, 'upper')?.fitted ?? Number.NaN,
    upperRate: () => springOf(springs, 'upper')?.rate ?? Number.NaN,
    lowerForce: () => springOf(springs, 'lower')?.fitted ?? Number.NaN,
    lowerRate: () => springOf(springs, 'lower')?.rate ?? Number.NaN,
    leverNotch: () => lever.pivot[1] - strutSeat[1],
    leverHook: () => apart(lever.pivot, lever.hook),
    perNotch: () => lever.perNotch,
    masterBore: () => hydraulics.masterBore,
    pedalRatio: () => hydraulics.pedalRatio,
    freePlay: () => hydraulics.freePlay,
    tyre: () => scene.vehicle.tyreRadius,
    mass: () => scene.vehicle.mass,
  };
  return all[key]();
}

/**
 * The scene of one's own brake. Data only: `readScene` judges it, and its findings name the paths.
 *
 * @param base a scene that was read (defaults filled in)
 * @param sizes measured, mm, N, N/mm, kg; what is left out is assumed
 * @param seen places read off a picture; sizes that were measured count before them
 */
export function ownScene(
  base: Scene,
  sizes: OwnSizes,
  words: Pick<Scene, 'name' | 'title' | 'about' | 'source'>,
  seen: OwnSeen | null = null,
): Scene {
  const s = structuredCloneOf(base) as Draft;
  // A file that is saved elsewhere has no schema beside it.
  delete s.$schema;
  s.name = words.name;
  s.title = words.title;
  s.about = words.about;
  s.source = words.source;
  s.start = {
    tooth: 0,
    wear: { front: 0, rear: 0 },
    temperature: 20,
    leverOffStop: 0,
  };
  delete s.otherWheel;
  s.states = [{ name: 'New', until: 'distance', distance: 0 }];
  let slack =
    apart(base.shoes.front.strutSeat, base.shoes.rear.strutSeat) - base.adjuster.lengthAtZero;
  const allowance = base.drum.diameterMax - base.drum.diameterNew;
  const pivotOver = sizeAt(base, 'leverNotch');
  const seatBefore = base.shoes.front.strutSeat;
  if (sizes.drumNew !== undefined) {
    resized(s, sizes.drumNew / base.drum.diameterNew);
    s.drum.diameterNew = sizes.drumNew;
    s.drum.lipDiameter = sizes.drumNew;
  }
  s.drum.diameterMax = sizes.drumMax ?? s.drum.diameterNew + allowance;
  if (seen) layPlaces(s, seen);
  const leverSeen = seen !== null && leverFrom(s);
  // The wheel goes over the drum: no smaller tyre than that is assumed.
  const outside = s.drum.diameterNew / 2 + s.drum.rim;
  s.vehicle.tyreRadius = Math.max(s.vehicle.tyreRadius, TYRE_OVER_DRUM * outside);
  const { front, rear } = s.shoes;
  for (const side of ['front', 'rear'] as const) {
    const shoe = s.shoes[side];
    const sign = side === 'front' ? -1 : 1;
    const l = shoe.lining;
    l.width = sizes.liningWidth ?? l.width;
    l.thicknessNew = sizes.liningNew ?? l.thicknessNew;
    l.thicknessMin = sizes.liningMin ?? l.thicknessMin;
    l.friction = sizes.friction ?? l.friction;
    if (sizes.liningArc !== undefined) {
      const half = ((sizes.liningArc / s.drum.diameterNew) * 180) / PI;
      const middle = (l.from + l.to) / 2;
      const margin = (shoe.steel.tableArc[1] - shoe.steel.tableArc[0] - (l.to - l.from)) / 2;
      l.from = middle - half;
      l.to = middle + half;
      shoe.steel.tableArc = [l.from - margin, l.to + margin];
    }
    const { anchor } = shoe;
    anchor.at = [
      sizes.pinsApart === undefined ? anchor.at[0] : (sign * sizes.pinsApart) / 2,
      sizes.pinBelow === undefined ? anchor.at[1] : -sizes.pinBelow,
    ];
    shoe.toe = [shoe.toe[0], sizes.toeHeight ?? shoe.toe[1]];
    shoe.strutSeat = [shoe.strutSeat[0], sizes.strutHeight ?? shoe.strutSeat[1]];
  }
  s.cylinder.at = [s.cylinder.at[0], sizes.toeHeight ?? s.cylinder.at[1]];
  if (sizes.bore !== undefined) {
    s.cylinder.outerDiameter += sizes.bore - s.cylinder.bore;
    s.cylinder.bore = sizes.bore;
  }
  if (sizes.stroke !== undefined) {
    s.cylinder.stroke = sizes.stroke;
    // Half of the cylinder has to hold the stroke.
    s.cylinder.length = Math.max(s.cylinder.length, 2 * sizes.stroke);
  }
  const { adjuster } = s;
  if (seen && seen.clearance !== null) slack = slackFor(s, seen.clearance);
  const strut = sizes.strutLength ?? apart(front.strutSeat, rear.strutSeat) - slack;
  adjuster.lengthAtZero = strut;
  seatsFor(s, strut, slack);
  adjuster.lostMotion = sizes.lostMotion ?? adjuster.lostMotion;
  adjuster.teeth = sizes.teeth ?? adjuster.teeth;
  if (adjuster.perApplication !== undefined) {
    adjuster.perApplication = Math.min(adjuster.perApplication, Math.max(1, adjuster.teeth));
  }
  if ('lever' in adjuster && adjuster.lever) {
    // The toothed lever goes with its seat.
    adjuster.lever.pin = [
      adjuster.lever.pin[0] + front.strutSeat[0] - seatBefore[0],
      adjuster.lever.pin[1] + front.strutSeat[1] - seatBefore[1],
    ];
  }
  const upper = springOf(s.springs, 'upper');
  const lower = springOf(s.springs, 'lower');
  if (upper) {
    upper.fitted = sizes.upperForce ?? upper.fitted;
    upper.rate = sizes.upperRate ?? upper.rate;
  }
  if (lower) {
    lower.fitted = sizes.lowerForce ?? lower.fitted;
    lower.rate = sizes.lowerRate ?? lower.rate;
  }
  const { parkingLever: lever } = s;
  const grown = s.drum.diameterNew / base.drum.diameterNew;
  const [aside, over] = leverSeen || [
    base.parkingLever.pivot[0] - base.shoes.rear.strutSeat[0],
    pivotOver * grown,
  ];
  // The pivot stands over the notch that the strut bears on; the hook at its distance along the lever.
  const pivot: P = [rear.strutSeat[0] + aside, rear.strutSeat[1] + (sizes.leverNotch ?? over)];
  const length = apart(lever.pivot, lever.hook);
  const share = (sizes.leverHook ?? length) / length;
  lever.hook = [
    pivot[0] + (lever.hook[0] - lever.pivot[0]) * share,
    pivot[1] + (lever.hook[1] - lever.pivot[1]) * share,
  ];
  lever.pivot = pivot;
  lever.perNotch = sizes.perNotch ?? lever.perNotch;
  s.hydraulics.masterBore = sizes.masterBore ?? s.hydraulics.masterBore;
  s.hydraulics.pedalRatio = sizes.pedalRatio ?? s.hydraulics.pedalRatio;
  s.hydraulics.freePlay = sizes.freePlay ?? s.hydraulics.freePlay;
  s.vehicle.tyreRadius = sizes.tyre ?? s.vehicle.tyreRadius;
  s.vehicle.mass = sizes.mass ?? s.vehicle.mass;
  return s as Scene;
}

/** Scenes are JSON: a copy by text is a whole one. */
const structuredCloneOf = (scene: Scene): Scene => JSON.parse(JSON.stringify(scene)) as Scene;

/** By path, the sizes that can have made a finding there, the likeliest first. */
const keysOfPaths: readonly (readonly [RegExp, readonly OwnKey[]])[] = [
  [/^drum\.diameterMax/, ['drumMax', 'drumNew']],
  [/^drum\.heatCapacity/, ['liningWidth', 'drumNew']],
  [/^drum\.|^look\./, ['drumNew']],
  [/lining\.width|webThickness/, ['liningWidth', 'drumNew']],
  [/lining\.thicknessMin/, ['liningMin', 'liningNew']],
  [/lining\.(thicknessNew|chamfer|rivet)|webDepth|webHoles|holdDown/, ['liningNew', 'drumNew']],
  [/lining\.(from|to|cutEdgeArc)/, ['liningArc', 'pinBelow', 'pinsApart', 'drumNew']],
  [/tableArc/, ['liningArc', 'toeHeight', 'drumNew']],
  [/lining\.friction/, ['friction']],
  [/lining\.groundRadius/, ['drumNew', 'liningArc', 'liningMin']],
  [/anchor/, ['pinBelow', 'pinsApart', 'drumNew']],
  [/\.toe|^cylinder\.at/, ['toeHeight', 'bore', 'pinBelow', 'stroke', 'drumNew']],
  [/^cylinder\.(bore|outer)/, ['bore', 'drumNew']],
  [/^cylinder\.stroke/, ['stroke', 'drumNew']],
  [/strutSeat/, ['strutHeight', 'strutLength', 'toeHeight', 'bore', 'liningNew', 'drumNew']],
  [/adjuster\.lengthAtZero/, ['strutLength', 'stroke', 'pinBelow']],
  [/adjuster\.lostMotion/, ['lostMotion', 'stroke', 'pinBelow']],
  [/adjuster\.(teeth|lever|perApplication)/, ['teeth', 'liningNew', 'strutHeight', 'drumNew']],
  [/springs\.[^.]+\.ends/, ['liningNew', 'pinBelow', 'drumNew']],
  [/springs\.upper\.rate/, ['upperRate']],
  [/springs\.upper/, ['upperForce']],
  [/springs\.lower\.rate/, ['lowerRate']],
  [/springs\.lower/, ['lowerForce']],
  [/parkingLever\.pivot/, ['leverNotch', 'strutHeight', 'strutLength', 'liningNew', 'drumNew']],
  [/parkingLever\.(hook|cable)/, ['leverHook', 'leverNotch', 'strutLength', 'strutHeight']],
  [/parkingLever\.(perNotch|slack)/, ['perNotch']],
  [/hydraulics\.masterBore/, ['masterBore']],
  [/hydraulics\.pedalRatio/, ['pedalRatio']],
  [/hydraulics\.freePlay/, ['freePlay']],
  [/vehicle\.tyre/, ['tyre', 'drumNew']],
  [/vehicle\.mass/, ['mass']],
];

/**
 * Where a finding's path belongs among the fields; null when none of them can have made it.
 *
 * @param typed whether a size was typed: what is assumed is not at fault where a typed size can be
 */
export function keyOfPath(
  scene: Scene,
  path: string,
  typed: (key: OwnKey) => boolean = () => true,
): OwnKey | null {
  const [, at] = /^springs\.(\d+)/.exec(path) ?? [];
  const spring = scene.springs[Number(at)];
  const which = (['upper', 'lower'] as const).find(
    (w) => spring !== undefined && springOf(scene.springs, w) === spring,
  );
  const named = which ? path.replace(/^springs\.\d+/, `springs.${which}`) : path;
  const keys = keysOfPaths.find(([rule]) => rule.test(named))?.[1] ?? [];
  return keys.find(typed) ?? keys[0] ?? null;
}

/** Of several scenes the one whose drum is nearest in diameter, mm: where to start from. Index in the list. */
export function nearestScene(
  scenes: readonly { readonly drum: { readonly diameterNew: number } }[],
  drum: number,
): number {
  const off = (at: number): number => Math.abs((scenes[at]?.drum.diameterNew ?? 0) - drum);
  let best = 0;
  for (let i = 1; i < scenes.length; i++) if (off(i) < off(best)) best = i;
  return best;
}
