import * as v from 'valibot';
import { language, sceneParts as parts, sceneSizes as words } from '../words/en.ts';
import { type Scene, sceneSchema } from './schema.ts';

/** Every number of a scene that can be another: where it stands, what it is, and what the format allows. */

/** A key, or a place in a list. */
type Step = string | number;

/** A number of a scene, or one of both shoes at once. */
export interface Size {
  /** Where it stands, as findings tell it; of both shoes with the side left out: `shoes.lining.friction`. */
  readonly id: string;
  /** The places that it is set at, and by which factor of the size: −1 where the other shoe mirrors it. */
  readonly at: readonly { readonly path: readonly Step[]; readonly sign: 1 | -1 }[];
  readonly name: string;
  /** Whose it is: "front shoe, lining"; a spring's own name. */
  readonly of: string;
  readonly unit: string;
  readonly value: number;
  /** What the format allows: a number outside is refused by itself. */
  readonly range: readonly [number, number];
  readonly whole: boolean;
}

/** The schema's parts that are walked, as the library builds them. */
interface Node {
  readonly type: string;
  readonly entries?: Readonly<Record<string, Node>>;
  readonly items?: readonly Node[];
  readonly item?: Node;
  readonly wrapped?: Node;
  readonly options?: readonly Node[];
  readonly pipe?: readonly { readonly type: string; readonly requirement?: number }[];
}

/** What has nothing to do with the brake's own forces, or is no size: texts, roads, states, what is only drawn, tables. */
const ASIDE = new Set([
  'version',
  'duties',
  'states',
  'start',
  'otherWheel',
  'look',
  'webHoles',
  'frictionAgainstTemperature',
  'wearAgainstTemperature',
  'frictionOfSurfaces',
  'films',
]);

const textOf = (node: Node): string => v.getDescription(node as unknown as v.GenericSchema) ?? '';

/** The schema that the data goes by: of a choice the one that takes it. */
function resolved(node: Node, data: unknown): Node {
  if (node.wrapped) return resolved(node.wrapped, data);
  if (!node.options) return node;
  const fits = (o: Node): boolean => v.is(o as unknown as v.GenericSchema, data);
  const found = node.options.find((o) => typeof o === 'object' && fits(o));
  return found ? resolved(found, data) : node;
}

/** Bounds of a number by its rules. */
function rangeOf({ pipe = [] }: Node): [number, number] {
  const rule = (...types: string[]) => pipe.find((a) => types.includes(a.type))?.requirement;
  return [rule('min_value', 'gt_value') ?? -1e9, rule('max_value') ?? 1e9];
}

/** "Thickness when new, mm": what it is and its unit, which stands last. */
function told(about: string): { name: string; unit: string } {
  const at = about.lastIndexOf(', ');
  const [name, unit] = at < 0 ? [about, ''] : [about.slice(0, at), about.slice(at + 2)];
  return { name, unit: unit === parts.plain || unit === parts.whole ? '' : unit };
}

const dotted = (path: readonly Step[]): string => path.join('.');

/** A number where it stands, before it is told of one shoe or both. */
type Leaf = Omit<Size, 'id' | 'at'> & { readonly path: readonly Step[] };

const XY = words.xy;

function leaves(given: Node, data: unknown, path: readonly Step[], of: string): Leaf[] {
  const node = resolved(given, data);
  if (typeof data === 'number') {
    if (node.type !== 'number') return [];
    const whole = node.pipe?.some((a) => a.type === 'integer') ?? false;
    const { name, unit } = told(textOf(node) || textOf(given));
    return [{ path, name, of, unit, value: data, range: rangeOf(node), whole }];
  }
  if (Array.isArray(data)) {
    // A place: its two numbers are told by the place's own name.
    const place = /: \[x, y\], mm$/.exec(textOf(given)) ?? /: \[x, y\], mm$/.exec(textOf(node));
    return data.flatMap((inner, i) => {
      const item = node.items?.[i] ?? node.item;
      if (!item) return [];
      const found = leaves(item, inner, [...path, i], of);
      if (!place) return found;
      const name = (textOf(given) || textOf(node)).slice(0, -': [x, y], mm'.length);
      return found.map((leaf) => ({ ...leaf, name: `${name}, ${XY[i]}`, unit: 'mm' }));
    });
  }
  if (data === null || typeof data !== 'object' || !node.entries) return [];
  const own = 'name' in data && typeof data.name === 'string' && path.length > 0 ? data.name : null;
  return Object.entries(data).flatMap(([key, inner]) => {
    const entry = node.entries?.[key];
    if (!entry || ASIDE.has(key)) return [];
    const group = own ?? (path.length === 0 ? '' : of);
    const next = resolved(entry, inner);
    const heading = typeof inner === 'object' && !Array.isArray(inner) ? head(next, entry) : '';
    const inside =
      heading === '' ? group : group === '' ? heading : `${group}, ${language.inside(heading)}`;
    return leaves(entry, inner, [...path, key], inside);
  });
}

/** What a group of keys is, without what its description says of it besides. */
const head = (next: Node, entry: Node): string =>
  ((textOf(next) || textOf(entry)).split(/[;,]/)[0] as string).replace(/ in a scene.*$/, '');

/** "Both shoes, the front shoe, lining" says the first twice. */
const plain = (of: string): string => of.replace(/^Both shoes, the (front|rear) shoe/, '$1 shoe');

const alone = (leaf: Leaf): Size => ({
  ...leaf,
  id: dotted(leaf.path),
  of: plain(leaf.of),
  at: [{ path: leaf.path, sign: 1 }],
});

/** The same number of both shoes: alike, or one the other's mirror image. */
function together(leaf: Leaf, all: ReadonlyMap<string, Leaf>): Size | null {
  const [first, side, ...rest] = leaf.path;
  if (first !== 'shoes' || side !== 'front') return null;
  const other = all.get(dotted(['shoes', 'rear', ...rest]));
  if (!other) return null;
  const sign = other.value === leaf.value ? 1 : other.value === -leaf.value ? -1 : 0;
  if (sign === 0) return null;
  const of = plain(leaf.of).replace('front shoe', 'both shoes');
  return {
    ...alone(leaf),
    id: dotted(['shoes', ...rest]),
    name: sign < 0 ? words.frontTheRearsMirrorsIt(leaf.name) : leaf.name,
    of,
    at: [
      { path: leaf.path, sign: 1 },
      { path: other.path, sign },
    ],
  };
}

/** All sizes of a scene, both shoes' together before each one's own. */
export function sizesOf(scene: Scene): readonly Size[] {
  const found = leaves(sceneSchema as unknown as Node, scene, [], '');
  const by = new Map(found.map((leaf) => [dotted(leaf.path), leaf]));
  return found.flatMap((leaf) => {
    const both = together(leaf, by);
    return both ? [both, alone(leaf)] : [alone(leaf)];
  });
}

/** The data with another value at a path; the rest is shared with what was there. */
function put(data: unknown, [key, ...deeper]: readonly Step[], value: number): unknown {
  if (key === undefined) return value;
  if (Array.isArray(data)) return data.map((x, i) => (i === key ? put(x, deeper, value) : x));
  const given = data as Readonly<Record<string, unknown>>;
  return { ...given, [key]: put(given[key], deeper, value) };
}

/** A scene with a size at another value: data, that may no longer be a brake. */
export const withSize = (scene: object, { at }: Size, value: number): object =>
  at.reduce<object>((now, { path, sign }) => put(now, path, sign * value) as object, scene);

/** What a size is in a scene; NaN where the scene has none there. */
export function sizeIn(scene: object, { at }: Size): number {
  const [first] = at;
  const found = first?.path.reduce<unknown>(
    (data, step) => (data as Readonly<Record<Step, unknown>> | null | undefined)?.[step],
    scene,
  );
  return typeof found === 'number' ? found : Number.NaN;
}
