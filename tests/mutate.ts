import fc from 'fast-check';

/** Any JSON. */
export type Json = null | boolean | number | string | Json[] | { [key: string]: Json };
type Path = readonly (string | number)[];

/** Every place in it, containers too, root left out. */
export function placesIn(value: Json, path: Path = []): Path[] {
  if (value === null || typeof value !== 'object') return path.length > 0 ? [path] : [];
  const inner = Array.isArray(value)
    ? value.flatMap((v, i) => placesIn(v, [...path, i]))
    : Object.entries(value).flatMap(([k, v]) => placesIn(v, [...path, k]));
  return path.length > 0 ? [path, ...inner] : inner;
}

function at(root: Json, path: Path): Json | undefined {
  let value: Json | undefined = root;
  for (const key of path) {
    if (value === null || typeof value !== 'object') return undefined;
    value = Array.isArray(value) ? value[key as number] : value[key];
  }
  return value;
}

function put(root: Json, path: Path, value: Json): void {
  const parent = at(root, path.slice(0, -1));
  const key = path.at(-1);
  if (Array.isArray(parent)) parent[key as number] = value;
  else if (parent !== null && typeof parent === 'object') parent[key as string] = value;
}

function drop(root: Json, path: Path): void {
  const parent = at(root, path.slice(0, -1));
  const key = path.at(-1);
  if (Array.isArray(parent)) parent.splice(key as number, 1);
  else if (parent !== null && typeof parent === 'object') delete parent[key as string];
}

/** One change of a file: where (as a share of all its places), what kind, and by how much (0 to 1, twice). */
export interface Edit {
  readonly where: number;
  readonly kind: number;
  readonly much: number;
  readonly other: number;
}

// Even over its range: the library's own doubles are mostly tiny.
const share = fc.nat(999999).map((n) => n / 1e6);
/** One to four edits: most changes that make a brake unsound are of one or two sizes. */
export const edits: fc.Arbitrary<readonly Edit[]> = fc.array(
  fc.record({ where: share, kind: share, much: share, other: share }),
  { minLength: 1, maxLength: 4 },
);

const pick = <T>(list: readonly T[], part: number): T => list[Math.floor(part * list.length)] as T;
const EXTREMES = [0, 1e-9, 1e-3, 0.5, 1, 45, 90, 180, 360, 999, 1e5, 1e9] as const;

/** A number by another: mostly near it, at times far off. */
function another(v: number, kind: number, much: number): number {
  const signed = 2 * much - 1;
  if (kind < 0.25) return v * (1 + 0.05 * signed);
  if (kind < 0.5) return v * 2 ** (4 * signed);
  if (kind < 0.75) return v + 40 * signed;
  if (kind < 0.82) return -v;
  if (kind < 0.94) return Math.round(v + 8 * signed);
  return pick(EXTREMES, much);
}

const kept = new WeakMap<object, Path[]>();
function placesOf(file: Json): Path[] {
  if (file === null || typeof file !== 'object') return [];
  const places = kept.get(file) ?? placesIn(file);
  kept.set(file, places);
  return places;
}

/** Share of the edits that change a number and nothing else. */
const NUMBERS = 0.72;

/**
 * A copy of a file with edits: numbers changed, sizes taken from elsewhere in it or from another file at
 * the same place, things left out, doubled, repeated many times, or of another type.
 */
export function mutated(file: Json, others: readonly Json[], changes: readonly Edit[]): Json {
  const copy = JSON.parse(JSON.stringify(file)) as Json;
  let places = placesOf(file);
  let grown = false;
  for (const { where, kind, much, other } of changes) {
    // Other numbers stand in the same places; whatever else is changed, they are looked for anew.
    if (grown) places = placesIn(copy);
    if (places.length === 0) return copy;
    grown ||= kind >= NUMBERS;
    const path = pick(places, where);
    const value = at(copy, path) as Json;
    if (kind < NUMBERS) {
      // Of a container the first number in it: so points are hit as often as single sizes.
      const inside = placesIn(value, path).filter((p) => typeof at(copy, p) === 'number');
      const target = inside.length > 0 ? pick(inside, other) : path;
      const old = at(copy, target);
      if (typeof old === 'number') put(copy, target, another(old, kind / NUMBERS, much));
      else put(copy, path, pick(['', 'x', 'y'.repeat(5000), 'pin', 'abutment', 'wedge'], much));
    } else if (kind < 0.8) {
      const donor = at(pick(others, much), path);
      if (donor !== undefined) put(copy, path, structuredClone(donor));
    } else if (kind < 0.88) {
      // From elsewhere in the same file, of the same shape: a shoe's size to the other shoe, point to point.
      const like = places.filter((p) => {
        const v = at(copy, p) as Json;
        return typeof v === typeof value && Array.isArray(v) === Array.isArray(value);
      });
      const from = pick(like, much);
      if (path.some((key, i) => from[i] !== key)) {
        put(copy, path, structuredClone(at(copy, from) as Json));
      }
    } else if (kind < 0.93) {
      drop(copy, path);
    } else if (kind < 0.98) {
      const parent = at(copy, path.slice(0, -1));
      if (Array.isArray(parent)) {
        const times = pick([1, 1, 5, 60, 3000], much);
        for (let i = 0; i < times; i++) parent.push(structuredClone(value));
      }
    } else {
      put(copy, path, pick<Json>([null, true, 'text', [], {}, 1e308, -1], much));
    }
  }
  return copy;
}
