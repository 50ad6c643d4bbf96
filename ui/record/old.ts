import { type OwnSizes, ownKeys, readScene } from '../../sim/index.ts';
import { recordOld as words } from '../../sim/words/en.ts';
import {
  axleKeys,
  BLANK,
  headKeys,
  LONGEST,
  limitKeys,
  limitSetIds,
  type Paper,
  type Texts,
  wheelKeys,
} from '../stations/inspect/paper.ts';
import { type InspectPart, UNMEASURED } from '../stations/inspect/part.ts';
import { nameFrom } from './own-name.ts';
import {
  LONGEST_TEXT,
  LONGEST_TITLE,
  MOST_BRAKES,
  type OwnBrake,
  type OwnTexts,
  type Shelf,
} from './shelf.ts';

/**
 * What the page kept before there was a record: brakes of one's own and the sheet, each under a key of
 * its own. What can be read is taken; all else is told, key by key, and none of it is changed.
 */

/** A key of which something could not be read. */
export interface Unread {
  readonly key: string;
  /** All that is kept under it. */
  readonly text: string;
  /** What is wrong, place by place. */
  readonly why: string;
}

export interface OldFound {
  /** Null where no brake was kept. */
  readonly shelf: Shelf | null;
  /** Null where no sheet was kept. */
  readonly inspect: InspectPart | null;
  readonly unread: readonly Unread[];
}

/** Reads texts to the sizes of a sound brake; null where they make none. */
export type SizesOf = (
  own: Pick<OwnBrake, 'name' | 'title' | 'base'>,
  texts: OwnTexts,
) => OwnSizes | null | Promise<OwnSizes | null>;

const BRAKES = 'own-brakes-1';
const REMOVED = 'own-removed-1';
const SHEET = 'sheet-1';
const BEFORE = 'sheet-before-1';

type Wrong = (place: string, why: string) => void;
type Data = Readonly<Record<string, unknown>>;

const dataOf = (value: unknown): Data | null =>
  typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Data) : null;

/** What a value is, in a word or two. */
const what = (value: unknown): string =>
  value === null
    ? 'nothing'
    : Array.isArray(value)
      ? words.aList
      : typeof value === 'object'
        ? words.anObject
        : `a ${typeof value}`;

/** The texts under the keys that are known; the others are told. */
function textsOf<K extends string>(
  value: unknown,
  keys: readonly K[],
  most: number,
  place: string,
  wrong: Wrong,
): Texts<K> {
  const out: Partial<Record<K, string>> = {};
  const data = value === undefined ? {} : dataOf(value);
  if (!data) {
    wrong(place, words.foundAllowedTextsByTheir(what(value)));
    return out;
  }
  for (const [key, text] of Object.entries(data)) {
    const known = keys.find((k) => k === key);
    if (!known) wrong(`${place}.${key}`, words.noSuchPlace);
    else if (typeof text !== 'string')
      wrong(`${place}.${key}`, words.foundAllowedAText(what(text)));
    else if (text.length > most)
      wrong(`${place}.${key}`, words.foundCharactersAllowed(text.length, most));
    else out[known] = text;
  }
  return out;
}

async function ownOf(
  value: unknown,
  place: string,
  sizesOf: SizesOf,
  wrong: Wrong,
): Promise<OwnBrake | null> {
  const data = dataOf(value);
  if (!data) {
    wrong(place, words.foundAllowedABrake(what(value)));
    return null;
  }
  const base = readScene(data['base']);
  if (!base.ok) {
    const [f] = base.findings;
    wrong(`${place}.base.${f?.path ?? ''}`, words.foundAllowed(f?.found ?? '', f?.allowed ?? ''));
    return null;
  }
  const said = data['title'];
  const title =
    (typeof said === 'string' ? said.trim() : '').slice(0, LONGEST_TITLE) || words.myBrake;
  const texts = textsOf(data['texts'], ownKeys, LONGEST_TEXT, `${place}.texts`, wrong);
  const sound = textsOf(data['sound'], ownKeys, LONGEST_TEXT, `${place}.sound`, wrong);
  // Names were numbers, and each browser counted from one: this one is of what the brake is made of.
  const name = nameFrom(JSON.stringify([data['name'], title, texts, sound, base.scene]));
  const sizes = await sizesOf({ name, title, base: base.scene }, sound);
  if (!sizes) wrong(`${place}.sound`, words.theseSizesMakeNoSound);
  return { name, title, base: base.scene, texts, sizes: sizes ?? {} };
}

function paperOf(value: unknown, wrong: Wrong): Paper | null {
  const data = dataOf(value);
  const wheels = data && (data['wheels'] === undefined ? {} : dataOf(data['wheels']));
  if (!data || !wheels) {
    wrong(data ? 'wheels' : '', words.foundAllowedASheet(what(data ? data['wheels'] : value)));
    return null;
  }
  const { limitsFrom = BLANK.limitsFrom, plain = BLANK.plain } = data;
  const from = limitSetIds.find((s) => s === limitsFrom);
  if (!from) wrong('limitsFrom', words.foundAllowed2(what(limitsFrom), limitSetIds.join(', ')));
  if (plain !== 'mm' && plain !== 'in') wrong('plain', words.foundAllowedMmIn(what(plain)));
  return {
    id: '',
    wheels: {
      left: textsOf(wheels['left'], wheelKeys, LONGEST, 'wheels.left', wrong),
      right: textsOf(wheels['right'], wheelKeys, LONGEST, 'wheels.right', wrong),
    },
    parts: BLANK.parts,
    axle: textsOf(data['axle'], axleKeys, LONGEST, 'axle', wrong),
    head: textsOf(data['head'], headKeys, LONGEST, 'head', wrong),
    limitsFrom: from ?? BLANK.limitsFrom,
    limits: textsOf(data['limits'], limitKeys, LONGEST, 'limits', wrong),
    plain: plain === 'in' ? 'in' : 'mm',
  };
}

/**
 * Reads what was kept in the first format.
 *
 * @param recall the text kept under a key, such as "own-brakes-1"; null where none is
 * @param sizesOf reads a brake's texts to its sizes
 */
export async function readOld(
  recall: (key: string) => string | null,
  sizesOf: SizesOf,
): Promise<OldFound> {
  const unread: Unread[] = [];

  /** What is kept under a key; whatever is wrong with it is told once, with all its places. */
  async function read<T>(
    key: string,
    take: (data: unknown, wrong: Wrong) => T | null | Promise<T | null>,
  ): Promise<T | null> {
    const text = recall(key);
    if (text === null) return null;
    const whys: string[] = [];
    let value: T | null = null;
    let data: unknown;
    try {
      data = JSON.parse(text);
    } catch {
      whys.push(words.itIsNoJson);
    }
    if (whys.length === 0) {
      value = await take(data, (place, why) => whys.push(place === '' ? why : `${place}: ${why}`));
    }
    if (whys.length > 0) unread.push({ key, text, why: whys.join('; ') });
    return value;
  }

  const brakes = await read(BRAKES, async (data, wrong) => {
    if (!Array.isArray(data)) {
      wrong('', words.foundAllowedAListOf(what(data)));
      return null;
    }
    const out: OwnBrake[] = [];
    for (const [i, entry] of data.entries()) {
      const place = words.place(i + 1);
      const own = await ownOf(entry, place, sizesOf, wrong);
      if (!own || out.some((b) => b.name === own.name)) continue;
      if (out.length < MOST_BRAKES) out.push(own);
      else wrong(place, words.brakesAreKept(MOST_BRAKES));
    }
    return out;
  });
  // Nothing is kept there once a brake was brought back.
  const removed = await read(REMOVED, (data, wrong) =>
    data === null ? null : ownOf(data, words.theDeletedBrake, sizesOf, wrong),
  );
  const paper = await read(SHEET, paperOf);
  const before = await read(BEFORE, (data, wrong) => (data === null ? null : paperOf(data, wrong)));
  const there = removed && brakes?.some((b) => b.name === removed.name);
  return {
    shelf: brakes || removed ? { brakes: brakes ?? [], removed: there ? null : removed } : null,
    inspect: paper || before ? { ...UNMEASURED, paper: paper ?? BLANK, before } : null,
    unread,
  };
}
