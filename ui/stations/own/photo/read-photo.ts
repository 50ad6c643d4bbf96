import {
  type OwnPlaces,
  type OwnSeen,
  ownScene,
  type PlaceKey,
  placeKeys,
  readScene,
  type Scene,
  tellFinding,
  toReference,
} from '../../../../sim/index.ts';
import { ownPhotoReadPhoto as said } from '../../../../sim/words/en.ts';
import { ownWords } from '../../../../sim/workshop/index.ts';
import { fixed } from '../../../format.ts';
import type { OwnPhoto, PhotoPoint, PhotoSize, Tap } from '../../../record/own-photo.ts';
import type { OwnBrake } from '../../../record/shelf.ts';
import { readTyped, type TypedSize } from '../../../typed-size.ts';
import { toPicture, toPlace, type V2 } from './camera.ts';
import { LEAST_TAPS } from './circle.ts';
import { bandOf, type Fit, fitOf, type Pair, placeSpread, type Sighting } from './fit.ts';
import { type Depth, pointOf, points } from './points.ts';

/** From taps and sizes of a picture to places of the brake, or to what is wrong or missing. */
export interface PhotoSizeField {
  readonly key: PhotoSize;
  readonly name: string;
  readonly how: string;
  readonly range: readonly [number, number];
}
export const photoFields: readonly PhotoSizeField[] = [
  {
    key: 'across',
    name: said.acrossName,
    how: said.acrossHow,
    range: [70, 500],
  },
  {
    key: 'plate',
    name: said.plateName,
    how: said.plateHow,
    range: [80, 600],
  },
  {
    key: 'liningOff',
    name: said.liningOffName,
    how: said.liningOffHow,
    range: [0, 100],
  },
  {
    key: 'drumNow',
    name: said.drumNowName,
    how: said.drumNowHow,
    range: [80, 510],
  },
];

/** Clearance that is assumed where the linings were not measured across, mm (common practice). */
const ASSUMED_CLEARANCE = 0.4;
/** Largest clearance at rest that shoes on an adjuster have, mm (common practice: under one). */
const MOST_CLEARANCE = 3;
/** From the web's face down to the parking lever's, mm: half a web, play, half a lever (usual sizes, from memory). */
const LEVER_BELOW = 5.5;
/** How far a lining's edge and a plate's rim are off their circle, mm (measured on four brakes). */
const OFF_EDGE = 0.2;
const OFF_RIM = 0.5;
/** Adjustment's sum of squares over freedoms: usual up to 1.3, over this something is wrong. */
export const ALARM = 3;
/** Taken too much from the side: over this tilt, rad, or a place's band, mm. */
export const TOO_TILTED = (25 * Math.PI) / 180;
export const TOO_WIDE = 4;

export interface SeenPlace {
  readonly at: readonly [number, number];
  /** Two deviations, mm. */
  readonly band: number;
  /** Covariance, mm². */
  readonly spread: readonly [number, number, number];
}
export interface PhotoRead {
  readonly reads: Readonly<Partial<Record<PhotoSize, TypedSize>>>;
  readonly wrong: Readonly<Partial<Record<PhotoSize, string>>>;
  readonly depth: Readonly<Record<Depth, number>>;
  readonly fit: Fit | null;
  /** At rest, in the brake's axes, by the point tapped. */
  readonly places: ReadonlyMap<PhotoPoint, SeenPlace>;
  /** In the reference pose; null while nothing lies. */
  readonly seen: OwnSeen | null;
  /** Covariances of the places in `seen`. */
  readonly spreads: ReadonlyMap<PlaceKey, SeenPlace['spread']>;
  /** Findings of the brake so made; it does not go onto the bench. */
  readonly findings: readonly string[];
}

/** A tap as of a left-hand wheel: a right-hand one is its mirror image. */
export const ofLeft = (photo: Pick<OwnPhoto, 'width' | 'wheel'>, [x, y]: Tap): V2 =>
  photo.wheel === 'right' ? [photo.width - x, y] : [x, y];

const half = (s: Scene): number => s.shoes.front.lining.width / 2;

function depths(scene: Scene, liningOff: number | undefined): PhotoRead['depth'] {
  const off = liningOff ?? scene.across.liningOff;
  const edge = off + 2 * half(scene);
  const web = off + half(scene) + scene.shoes.front.steel.webThickness / 2;
  return { rim: 0, edge, web, lever: web - LEVER_BELOW, hub: edge + scene.across.discOff };
}

/** Which point a place of the scene is read from. */
const pointFor = (key: PlaceKey): PhotoPoint =>
  key === 'endFA'
    ? 'edgeF1'
    : key === 'endFB'
      ? 'edgeF3'
      : key === 'endRA'
        ? 'edgeR1'
        : key === 'endRB'
          ? 'edgeR3'
          : (key as PhotoPoint);

function pairsOf(photo: OwnPhoto, depth: PhotoRead['depth']): Pair[] {
  return points.flatMap(({ id, partner, depth: plane }) => {
    const left = photo.taps[id];
    const right = partner && id.endsWith('F') ? photo.taps[partner] : undefined;
    if (!partner || !left || !right) return [];
    return [
      { name: id, left: ofLeft(photo, left), right: ofLeft(photo, right), depth: depth[plane] },
    ];
  });
}

/** Linings' and rim's taps as circles; null while there are too few on the linings. */
function sighting(
  photo: OwnPhoto,
  depth: PhotoRead['depth'],
  across: number,
  plate: number | undefined,
): Sighting | null {
  const taps = (prefix: string): V2[] =>
    points.flatMap(({ id }) => {
      const tap = id.startsWith(prefix) ? photo.taps[id] : undefined;
      return tap ? [ofLeft(photo, tap)] : [];
    });
  const edge = taps('edge');
  const rim = taps('rim');
  const hub = photo.taps.hub;
  if (edge.length < LEAST_TAPS) return null;
  return {
    width: photo.width,
    height: photo.height,
    focal35: null,
    edge: { taps: edge, radius: across / 2, depth: depth.edge, off: OFF_EDGE },
    rim:
      plate !== undefined && rim.length >= LEAST_TAPS
        ? { taps: rim, radius: plate / 2, depth: depth.rim, off: OFF_RIM }
        : null,
    hub: hub ? { tap: ofLeft(photo, hub), depth: depth.hub } : null,
    pairs: pairsOf(photo, depth),
  };
}

/** Names of a finding's places as a person says them. */
export const nameOf = (id: string): string => pointOf(id as PhotoPoint).name;

/** Reads a picture's taps; nothing of the picture itself is needed. */
export function readPhoto(own: OwnBrake, photo: OwnPhoto): PhotoRead {
  const reads: Partial<Record<PhotoSize, TypedSize>> = {};
  const wrong: Partial<Record<PhotoSize, string>> = {};
  const size: Partial<Record<PhotoSize, number>> = {};
  for (const { key, range } of photoFields) {
    const text = photo.texts[key] ?? '';
    if (text.trim() === '') continue;
    const r = readTyped(text, 'mm', range);
    reads[key] = r;
    if (r.ok) size[key] = r.value;
    else wrong[key] = said.foundAllowed(r.found, r.allowed);
  }
  const words = ownWords(own.base, own.sizes, own);
  const plain = ownScene(own.base, own.sizes, words);
  const depth = depths(plain, size.liningOff);
  const drum = size.drumNow ?? plain.drum.diameterNew;
  const across = size.across ?? drum - 2 * ASSUMED_CLEARANCE;
  const room = (drum - across) / 2;
  const none = { reads, depth, fit: null, places: new Map(), seen: null, spreads: new Map() };
  if (!(room > 0 && room <= MOST_CLEARANCE)) {
    wrong.across ??= said.foundMmInADrum(fixed(across, 2), fixed(drum, 2), 2 * MOST_CLEARANCE);
  }
  if (Object.keys(wrong).length > 0) return { ...none, wrong, findings: [] };
  const s = sighting(photo, depth, across, size.plate);
  // Without the rim the hub's middle says which way the brake leans.
  const fit = s && (s.rim || s.hub) ? fitOf(s) : null;
  if (!fit) return { ...none, wrong, findings: [] };
  const places = new Map<PhotoPoint, SeenPlace>();
  for (const { id, depth: plane } of points) {
    const tap = photo.taps[id];
    if (!tap) continue;
    const at = toPlace(fit.camera, ofLeft(photo, tap), depth[plane]);
    const spread = placeSpread(fit, ofLeft(photo, tap), depth[plane]);
    places.set(id, { at, band: bandOf(spread), spread });
  }
  const doubted = new Set(
    fit.suspects.flatMap(({ name }) => [name, pointOf(name as PhotoPoint).partner]),
  );
  const rest: Partial<Record<PlaceKey, readonly [number, number]>> = {};
  const spreads = new Map<PlaceKey, SeenPlace['spread']>();
  for (const key of placeKeys) {
    const place = places.get(pointFor(key));
    if (!place || doubted.has(pointFor(key))) continue;
    rest[key] = place.at;
    spreads.set(key, place.spread);
  }
  const seen: OwnSeen = {
    places: rounded(toReference(rest, room)),
    clearance: size.across === undefined ? null : room,
    plateRadius: size.plate === undefined ? null : size.plate / 2,
  };
  const judged = readScene(ownScene(own.base, own.sizes, words, seen));
  return {
    reads,
    wrong,
    depth,
    fit,
    places,
    seen,
    spreads,
    findings: judged.ok ? [] : judged.findings.map(tellFinding),
  };
}

/** To a micrometre: more says nothing, and makes links long. */
const rounded = (places: OwnPlaces): OwnPlaces =>
  Object.fromEntries(
    Object.entries(places).map(([k, [x, y]]) => [
      k,
      [Math.round(x * 1000) / 1000, Math.round(y * 1000) / 1000],
    ]),
  );

/**
 * Where a point is proposed, px: the mirror image of its partner, carried through the camera. Null where
 * nothing says.
 */
export function proposed(photo: OwnPhoto, read: PhotoRead, id: PhotoPoint): Tap | null {
  const { partner, depth } = pointOf(id);
  const there = partner ? read.places.get(partner) : undefined;
  if (!there || !read.fit) return null;
  return ofLeft(photo, toPicture(read.fit.camera, [-there.at[0], there.at[1], read.depth[depth]]));
}
