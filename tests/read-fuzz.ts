import { ownKeys, readSceneText, type Scene } from '../sim/index.ts';
import { readFigures } from '../ui/ask/figures.ts';
import { ask } from '../ui/ask/rank.ts';
import { type Known, readFormula } from '../ui/formula-reader.ts';
import { shipped } from '../ui/lessons/library.ts';
import { readLessonText } from '../ui/lessons/read.ts';
import { begin, step } from '../ui/record/history.ts';
import { fromText, toText } from '../ui/record/json.ts';
import { historyOf, keptPart, keptSteps, readKept } from '../ui/record/kept-steps.ts';
import { linkOf, readLink } from '../ui/record/link.ts';
import type { Moment } from '../ui/record/moment.ts';
import { readOld } from '../ui/record/old.ts';
import { pack, unpack } from '../ui/record/pack.ts';
import type { Read } from '../ui/record/record.ts';
import { EMPTY_SHELF, readOwn } from '../ui/record/shelf.ts';
import { plainMoment } from '../ui/record/start.ts';
import type { Keeper } from '../ui/record/store.ts';
import { SheetBook } from '../ui/stations/inspect/book.ts';
import { BLANK } from '../ui/stations/inspect/paper.ts';
import { readQuantity } from '../ui/units.ts';
import { scenes } from './changed-scenes.ts';
import { type Edit, type Json, mutated } from './mutate.ts';
import { offered } from './record-moments.ts';
import { unsound } from './soundness.ts';

/**
 * Everything that is read, with letters, structure and values changed: no reader may throw, go on for long, give a
 * number that is none or take what is unsound; what it refuses it says where.
 */

/** What a reader made of a text: taken, or refused with the places that it names. */
export type Came =
  | { readonly taken: true; readonly value: unknown; readonly unsound?: readonly string[] }
  | { readonly taken: false; readonly places: readonly string[] };

export interface Reader {
  readonly name: string;
  /** Texts as the page writes them or people send them. */
  readonly seeds: readonly string[];
  /** They are JSON, so that structure and values can be changed. */
  readonly json: boolean;
  readonly read: (text: string) => Came | Promise<Came>;
}

/** Longest that a reader may take, ms of a processor. */
export const LONGEST = 1000;

/** A random number from 0 to 1, by Marsaglia's xorshift of 32 bits (2003). */
function chance(seed: number): () => number {
  let x = (Math.imul(seed + 1, 2654435761) >>> 0) | 1;
  return () => {
    x ^= x << 13;
    x ^= x >>> 17;
    x ^= x << 5;
    return (x >>> 0) / 2 ** 32;
  };
}

const found = (all: readonly { readonly path: string; readonly found: string }[]): Came => ({
  taken: false,
  places: all.map((f) => `${f.path} ${f.found}`),
});

/** Whole brakes in a record, each worked out again. */
function scenesIn(value: unknown, depth = 0): readonly Scene[] {
  if (typeof value !== 'object' || value === null || depth > 12) return [];
  if ('format' in value && value.format === 'takeup-scene') return [value as Scene];
  return Object.values(value).flatMap((v) => scenesIn(v, depth + 1));
}

function ofMoment(read: Read): Came {
  if (!read.ok) return found(read.wrong);
  return { taken: true, value: read.moment, unsound: scenesIn(read.moment).flatMap(unsound) };
}

function ofScene(text: string): Came {
  const read = readSceneText(text);
  return read.ok
    ? { taken: true, value: read.scene, unsound: unsound(read.scene) }
    : found(read.findings);
}

/** Query and hash of a link's text. */
function parted(link: string): [string, string] {
  const at = link.indexOf('#');
  return at < 0 ? [link, ''] : [link.slice(0, at), link.slice(at)];
}

/** A browser that keeps one text. */
function keeping(text: string | null): Keeper {
  let kept = text;
  return {
    get: () => kept,
    set: (_, value) => {
      kept = value;
    },
  };
}

const KNOWN: readonly Known[] = [
  { name: 'torque', key: 'torque', unit: 'N m' },
  { name: 'restGap', key: 'restGap', unit: 'mm' },
  { name: 'brakeFactor', key: 'brakeFactor', unit: '' },
  { name: 'drum.diameter', key: 'drum.diameter', unit: 'mm' },
  { name: 'temperature', key: 'temperature', unit: '°C' },
];

const parse = (text: string): unknown => {
  try {
    return JSON.parse(text);
  } catch {
    return text;
  }
};

/** What was typed is shown as it was: a refusal has its place in the field itself. */
const IN_FIELD = ['the field'];

/** Every reader with what it is given. */
export async function makeReaders(): Promise<readonly Reader[]> {
  const moments = offered().map(([, m]) => m);
  const some = moments.filter((_, i) => i % 9 === 0);
  const links = await Promise.all(some.map(linkOf));
  const packedParts = await Promise.all(
    links.flatMap((l) => {
      const [search, hash] = parted(l);
      return hash ? [unpack(hash.slice(1), 2 ** 20).then((t) => [search, t] as const)] : [];
    }),
  );
  const lessons = shipped.map((l) => JSON.stringify(l));
  const history = some.reduce((h, m) => step(h, m, 'gone on', '', false), begin(some[0] as Moment));
  const own = {
    ...{ name: 'own-a', title: 'Mine', base: scenes.quay },
    texts: Object.fromEntries(ownKeys.slice(0, 8).map((k, i) => [k, `${20 + i}.5 mm`])),
    sizes: Object.fromEntries(ownKeys.slice(0, 8).map((k, i) => [k, 20.5 + i])),
    photo: {
      ...{ width: 1600, height: 1200, wheel: 'left', unseen: ['rim5'], seen: null },
      ...{ texts: { across: '196' }, taps: { edgeF1: [200, 310.5], hub: [800, 600] } },
    },
  };
  const first = { name: 'own-a', title: 'Mine', base: 'quay-van', texts: { liningWidth: '32' } };
  const sheet = { ...BLANK, texts: { 'drum.left': '203.1', 'lining.left': '3 mm' } };
  const sheets = {
    ...{ format: 'takeup-sheets', version: 1 },
    sheets: [{ id: 'a', date: '2026-11-28', vehicle: 'van', paper: { ...BLANK, id: 'a' } }],
  };
  return [
    {
      name: 'scene',
      seeds: Object.values(scenes).map((s) => JSON.stringify(s)),
      json: true,
      read: ofScene,
    },
    {
      name: 'link',
      seeds: links,
      json: false,
      read: async (text) => ofMoment(await readLink(...parted(text))),
    },
    {
      name: "link's content",
      seeds: packedParts.map(([search, text]) => JSON.stringify({ search, change: parse(text) })),
      json: true,
      read: async (text) => {
        const data = parse(text) as { readonly search?: unknown; readonly change?: unknown } | null;
        const search = typeof data?.search === 'string' ? data.search : '';
        const change = JSON.stringify(data?.change ?? text);
        return ofMoment(await readLink(search, `#${await pack(change)}`));
      },
    },
    {
      name: 'moment file',
      seeds: some.map(toText),
      json: true,
      read: (t) => ofMoment(fromText(t)),
    },
    {
      name: 'kept record',
      seeds: some.map((m) => JSON.stringify(keptPart(m))),
      json: true,
      read: (t) => ofMoment(readKept(parse(t), EMPTY_SHELF)),
    },
    {
      name: 'kept steps',
      seeds: [JSON.stringify(keptSteps(history))],
      json: true,
      // What cannot be read of the way is left out: never refused.
      read: (t) => ({ taken: true, value: historyOf(plainMoment(), parse(t), EMPTY_SHELF) }),
    },
    {
      name: 'first format',
      seeds: [JSON.stringify({ brakes: [first], removed: first, paper: sheet })],
      json: true,
      read: async (t) => {
        const data = parse(t) as Readonly<Record<string, unknown>> | null;
        const of = (key: string): string | null => {
          const value = key.startsWith('own-brakes')
            ? data?.['brakes']
            : key.startsWith('own-removed')
              ? data?.['removed']
              : data?.['paper'];
          return value === undefined
            ? null
            : typeof value === 'string'
              ? value
              : JSON.stringify(value);
        };
        const old = await readOld(of, () => null);
        return { taken: true, value: old };
      },
    },
    {
      name: 'brake of one’s own',
      seeds: [JSON.stringify(own)],
      json: true,
      read: (t) => {
        const read = readOwn(parse(t));
        return read ? { taken: true, value: read } : { taken: false, places: ['the brake'] };
      },
    },
    {
      name: 'sheets',
      seeds: [JSON.stringify(sheets)],
      json: true,
      read: (t) => {
        const { said, findings } = new SheetBook(keeping(null)).take('a file', t);
        const { book } = new SheetBook(keeping(t));
        return said.includes('not read')
          ? { taken: false, places: [said, ...findings] }
          : { taken: true, value: book };
      },
    },
    {
      name: 'lesson',
      seeds: lessons,
      json: true,
      read: (t) => {
        const read = readLessonText(t);
        return read.ok ? { taken: true, value: read.lesson } : found(read.findings);
      },
    },
    {
      name: 'formula',
      seeds: [
        'torque / brakeFactor',
        '2*restGap + 0.3 mm',
        'sqrt(torque*restGap)/drum.diameter',
        'min(1, exp(-temperature/(100 degC)))',
        '(restGap − 0.3 mm)·2 / (1.5 µm)',
      ],
      json: false,
      read: (t) => {
        const read = readFormula(t, KNOWN);
        if (!read.ok) return { taken: false, places: [`${read.at} ${read.found} ${read.why}`] };
        // A value that is none is told as none: only that it can be asked matters.
        read.worth(read.uses.map((_, i) => i + 1));
        return { taken: true, value: read.unit };
      },
    },
    {
      name: 'ask field',
      seeds: ['drum wont come off', '183.4, 184, 0.3', 'wie dick', 'brake squeals 1 1/2 in shoes'],
      json: false,
      read: (t) => ({ taken: true, value: [ask(t, 5), readFigures(t)] }),
    },
    {
      name: 'size field',
      seeds: ['203.2 mm', '8 in', '5/32"', '1 1/2 in', '0,4 m', '3,8 mm', '8.000', '  20 cm '],
      json: false,
      read: (t) => {
        const read = readQuantity(t, 'mm', [1, 600]);
        return read.ok ? { taken: true, value: read } : { taken: false, places: IN_FIELD };
      },
    },
  ];
}

const pick = <T>(list: readonly T[], part: number): T =>
  list[Math.min(list.length - 1, Math.floor(part * list.length))] as T;

const STRANGE = [
  '\0',
  '\ufeff',
  '\u202e',
  '\ud800',
  '"',
  '\\',
  '{',
  ']',
  '#',
  '%00',
  'NaN',
  '1e999',
  '-0',
  '__proto__',
  'constructor',
  '<img src=x onerror=alert(1)>',
  '="1+1"',
  '٣',
  '１２',
  '🛞'.repeat(40),
  ' '.repeat(3000),
  '('.repeat(400),
  '['.repeat(20000),
  '9'.repeat(400),
] as const;

/** Letters changed: some taken out, put in, doubled, turned over, or the rest of another text. */
export function byLetters(text: string, other: string, next: () => number): string {
  let out = text;
  for (let n = 1 + Math.floor(4 * next()); n > 0; n--) {
    const at = Math.floor(next() * (out.length + 1));
    const long = Math.floor(next() ** 3 * Math.min(2000, out.length));
    const kind = next();
    if (kind < 0.2) out = out.slice(0, at) + out.slice(at + 1 + long);
    else if (kind < 0.5) out = out.slice(0, at) + pick(STRANGE, next()) + out.slice(at);
    else if (kind < 0.65)
      out = out.slice(0, at) + String.fromCharCode(Math.floor(next() * 128)) + out.slice(at + 1);
    else if (kind < 0.75)
      out = out.slice(0, at) + out.slice(at, at + long).repeat(3) + out.slice(at);
    else if (kind < 0.85) out = out.slice(0, at);
    else if (kind < 0.93) out = out.slice(0, at) + other.slice(Math.floor(next() * other.length));
    else {
      // As a file that was saved in another code, or broke on its way.
      const bytes = new TextEncoder().encode(out);
      for (let k = 0; k < 5; k++)
        bytes[Math.floor(next() * bytes.length)] = Math.floor(next() * 256);
      out = new TextDecoder().decode(bytes);
    }
  }
  return out;
}

const parsedSeeds = new WeakMap<Reader, readonly Json[]>();

/** Structure and values changed. */
function byStructure(reader: Reader, at: number, next: () => number): string {
  const all = parsedSeeds.get(reader) ?? reader.seeds.map((s) => JSON.parse(s) as Json);
  parsedSeeds.set(reader, all);
  const edit = (): Edit => ({ where: next(), kind: next(), much: next(), other: next() });
  const edits = Array.from({ length: 1 + Math.floor(4 * next()) }, edit);
  return JSON.stringify(mutated(all[at] as Json, all, edits));
}

/** The text of a case. */
export function textOf(reader: Reader, seed: number): string {
  const next = chance(seed);
  const at = Math.floor(next() * reader.seeds.length);
  if (reader.json && next() < 0.6) return byStructure(reader, at, next);
  return byLetters(pick(reader.seeds, at / reader.seeds.length), pick(reader.seeds, next()), next);
}

/** Places of numbers that are none. A list of doubles may say with one that nothing is there. */
function notFinite(value: unknown, path = '', depth = 0): readonly string[] {
  if (typeof value === 'number') return Number.isNaN(value) ? [path] : [];
  if (typeof value !== 'object' || value === null || depth > 14) return [];
  return Object.entries(value).flatMap(([k, v]) => notFinite(v, `${path}.${k}`, depth + 1));
}

/** What is wrong with how a case came out; empty where nothing is. */
export async function judged(reader: Reader, seed: number): Promise<readonly string[]> {
  const text = textOf(reader, seed);
  const start = process.cpuUsage();
  let came: Came;
  try {
    came = await reader.read(text);
  } catch (error) {
    return [`threw ${error instanceof Error ? error.message : String(error)}`];
  }
  const { user, system } = process.cpuUsage(start);
  const took = (user + system) / 1000;
  const slow = took > LONGEST ? [`took ${took.toFixed(0)} ms`] : [];
  if (came.taken) {
    const none = notFinite(came.value).map((p) => `no number at ${p}`);
    return [...slow, ...none, ...(came.unsound ?? []).map((u) => `taken though ${u}`)];
  }
  return came.places.some((p) => p.trim() !== '') ? slow : [...slow, 'refused without a place'];
}
