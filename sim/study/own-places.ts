import { atan2, cos, sin } from '../math/trig.ts';
import { seatsForGap } from '../scene/rules/pose.ts';
import type { Scene } from '../scene/schema.ts';
import { DEG } from '../units/units.ts';

/**
 * Places of one's own brake as they were seen, such as in a picture, and how they go into its scene.
 * What was not seen keeps the teaching brake's proportions, laid by what was.
 */
export const placeKeys = [
  'heelF',
  'heelR',
  'toeF',
  'toeR',
  'endFA',
  'endFB',
  'endRA',
  'endRB',
  'seatF',
  'seatR',
  'pivot',
  'hook',
  'upperF',
  'upperR',
  'lowerF',
  'lowerR',
  'holdF',
  'holdR',
  'flatFA',
  'flatFB',
  'flatRA',
  'flatRB',
] as const;
export type PlaceKey = (typeof placeKeys)[number];
export type OwnPlaces = Readonly<Partial<Record<PlaceKey, readonly [number, number]>>>;

/** Places of the reference pose, mm, and what was measured beside them. */
export interface OwnSeen {
  readonly places: OwnPlaces;
  /** Measured clearance at rest, mm; null: the teaching brake's slack is kept. */
  readonly clearance: number | null;
  /** Radius of the backing plate, mm; null: the teaching brake's proportions. */
  readonly plateRadius: number | null;
}

type P = [number, number];
type Shoe = 'front' | 'rear';
/** On which shoe a place lies; flats lie on the plate. */
const shoeOf = (key: PlaceKey): Shoe | null =>
  key.startsWith('flat') ? null : /F[AB]?$/.test(key) ? 'front' : 'rear';

/**
 * From where shoes stand at rest to the scene's reference pose, in which the linings touch the drum all
 * along: each shoe is turned out about its heel by the clearance over the heel's depth below the axis. A
 * shoe turned by φ about a heel that lies d below the axis moves its lining's middle, at the height of
 * the axis, by φ·d (the arm of a turn). A heel that slides on a flat is treated alike; its own slide is
 * not in it.
 *
 * @param places at rest, mm
 * @param room half of the drum's diameter less the one across the linings, mm
 */
export function toReference(places: OwnPlaces, room: number): OwnPlaces {
  const turned: Partial<Record<PlaceKey, P>> = {};
  for (const key of placeKeys) {
    const at = places[key];
    if (!at) continue;
    const side = shoeOf(key);
    const heel = side && (side === 'front' ? places.heelF : places.heelR);
    if (!heel || !(heel[1] < 0)) {
      turned[key] = [at[0], at[1]];
      continue;
    }
    const angle = ((side === 'front' ? 1 : -1) * room) / -heel[1];
    const [c, s] = [cos(angle), sin(angle)];
    const [x, y] = [at[0] - heel[0], at[1] - heel[1]];
    turned[key] = [heel[0] + c * x - s * y, heel[1] + s * x + c * y];
  }
  return turned;
}

type Deep<T> = T extends readonly (infer _)[] | number | string | boolean | undefined
  ? T
  : { -readonly [K in keyof T]: Deep<T[K]> };
type Draft = Deep<Scene>;

/** Similar figure that takes two places to two others, as a complex factor and a shift. */
function similar(
  from: readonly [P, P],
  to: readonly [readonly [number, number], readonly [number, number]],
): (p: P) => P {
  const [ax, ay] = [from[1][0] - from[0][0], from[1][1] - from[0][1]];
  const [bx, by] = [to[1][0] - to[0][0], to[1][1] - to[0][1]];
  const size = ax * ax + ay * ay;
  const re = (bx * ax + by * ay) / size;
  const im = (by * ax - bx * ay) / size;
  return ([x, y]) => {
    const [dx, dy] = [x - from[0][0], y - from[0][1]];
    return [to[0][0] + re * dx - im * dy, to[0][1] + im * dx + re * dy];
  };
}

const angleOf = ([x, y]: readonly [number, number]): number => atan2(y, x) / DEG;
/** The angle nearest to another, degrees: −170 beside 190. */
const near = (angle: number, to: number): number => {
  let a = angle;
  while (a - to > 180) a -= 360;
  while (a - to < -180) a += 360;
  return a;
};

/** A lining's ends, its table going on beyond them as far as before. */
function ends(shoe: Draft['shoes']['front'], a: number | null, b: number | null): void {
  const { lining, steel } = shoe;
  const margin = (steel.tableArc[1] - steel.tableArc[0] - (lining.to - lining.from)) / 2;
  lining.from = a === null ? lining.from : near(a, lining.from);
  lining.to = b === null ? lining.to : near(b, lining.to);
  steel.tableArc = [lining.from - margin, lining.to + margin];
}

/** What a shoe has beside heel and toe goes along with them. */
function carried(s: Draft, side: Shoe, move: (p: P) => P): void {
  const shoe = s.shoes[side];
  shoe.strutSeat = move(shoe.strutSeat);
  shoe.holdDown.at = move(shoe.holdDown.at);
  shoe.webHoles = shoe.webHoles.map((h) => ({ ...h, at: move(h.at) }));
  for (const spring of s.springs) {
    for (const end of spring.ends) if (end.on === side) end.at = move(end.at);
  }
  if (side === 'front') return;
  s.parkingLever.pivot = move(s.parkingLever.pivot);
  s.parkingLever.hook = move(s.parkingLever.hook);
}

/** Puts the places that were seen into a scene; the rest of each shoe follows its heel and toe. */
export function layPlaces(s: Draft, { places: at, plateRadius }: OwnSeen): void {
  for (const [side, heel, toe] of [
    ['front', at.heelF, at.toeF],
    ['rear', at.heelR, at.toeR],
  ] as const) {
    const shoe = s.shoes[side];
    if (heel && toe) carried(s, side, similar([shoe.anchor.at, shoe.toe], [heel, toe]));
    if (heel) shoe.anchor.at = [heel[0], heel[1]];
    if (toe) shoe.toe = [toe[0], toe[1]];
    const letter = side === 'front' ? 'F' : 'R';
    const [from, to] = [at[`end${letter}A`], at[`end${letter}B`]];
    ends(shoe, from ? angleOf(from) : null, to ? angleOf(to) : null);
    const [seat, hold] = [at[`seat${letter}`], at[`hold${letter}`]];
    // Of the front seat the height alone is wanted: the strut's length says how far out it lies.
    if (seat) shoe.strutSeat = [seat[0], seat[1]];
    if (hold) shoe.holdDown.at = [hold[0], hold[1]];
    for (const which of ['upper', 'lower'] as const) {
      const place = at[`${which}${letter}`];
      const spring = s.springs.find(({ name }) => name.toLowerCase().split(/\W+/).includes(which));
      const end = spring?.ends.find(({ on }) => on === side);
      if (place && end) end.at = [place[0], place[1]];
    }
    const [a, b] = [at[`flat${letter}A`], at[`flat${letter}B`]];
    if (a && b && shoe.anchor.kind === 'abutment') {
      // Square to the flat, on the heel's side of it.
      const [x, y] = [b[0] - a[0], b[1] - a[1]];
      const [hx, hy] = [shoe.anchor.at[0] - a[0], shoe.anchor.at[1] - a[1]];
      const over = x * hy - y * hx >= 0 ? 1 : -1;
      shoe.anchor.normal = near(angleOf([-y * over, x * over]), shoe.anchor.normal);
    }
  }
  const { front, rear } = s.shoes;
  if (at.toeF || at.toeR) {
    // The pistons push along one axis: the toes' mean height, which is truer than either.
    const y = (front.toe[1] + rear.toe[1]) / 2;
    front.toe = [front.toe[0], y];
    rear.toe = [rear.toe[0], y];
    s.cylinder.at = [(front.toe[0] + rear.toe[0]) / 2, y];
    const room = rear.toe[0] - front.toe[0];
    s.cylinder.length = Math.max(2 * s.cylinder.stroke, Math.min(s.cylinder.length, room));
  }
  if (at.pivot) s.parkingLever.pivot = [at.pivot[0], at.pivot[1]];
  if (at.hook) s.parkingLever.hook = [at.hook[0], at.hook[1]];
  if (plateRadius !== null) s.look.plateRadius = plateRadius;
}

/** Slack between strut and seats that leaves a clearance at both linings' middles, mm. */
export const slackFor = (s: Draft, clearance: number): number =>
  clearance * seatsForGap(s as Scene);
