import * as v from 'valibot';
import { type Finding, parseBy } from '../../../sim/index.ts';
import { inspectBook as texts } from '../../../sim/words/en.ts';
import { otherFile, SHEETS } from '../../record/file-kind.ts';
import { Kept } from '../../record/kept.ts';
import { type Keeper, keep, recall } from '../../record/store.ts';
import { PAPER_ID, type Paper, paperSchema } from './paper.ts';

/**
 * Kept sheets, by vehicle. They stay on this device: in this browser for all its windows, and in files
 * that the user saves; never in a link or in the file of a moment. Each window reads them anew before it
 * writes, so that none is lost between two; what cannot be read stays where it is and is told.
 */
export interface KeptSheet {
  readonly id: string;
  readonly vehicle: string;
  /** As 2026-11-28. */
  readonly date: string;
  /** Odometer. */
  readonly km: number;
  /** Word for word as it was typed. */
  readonly paper: Paper;
}

const VERSION = 1;
/** Most sheets kept: a fleet's for years. */
const MOST = 500;
const KEY = 'sheets';

const sheetSchema: v.GenericSchema<unknown, KeptSheet> = v.strictObject({
  id: v.pipe(v.string(), v.minLength(1), v.regex(PAPER_ID)),
  vehicle: v.pipe(v.string(), v.minLength(1), v.maxLength(200)),
  date: v.pipe(v.string(), v.isoDate()),
  km: v.pipe(v.number(), v.minValue(0), v.maxValue(3000000)),
  paper: paperSchema,
});

export interface Book {
  readonly sheets: readonly KeptSheet[];
  /** The one that was taken out last. */
  readonly removed: KeptSheet | null;
  /** What could not be read, as it stands. */
  readonly unread: readonly unknown[];
}
const NONE: Book = { sheets: [], removed: null, unread: [] };

const dataOf = (text: string | null): unknown => {
  try {
    return text === null ? null : JSON.parse(text);
  } catch {
    return text;
  }
};

/** A book's text read: whatever in it is no sheet is kept as unread. */
function readBook(text: string | null): Book {
  const data = dataOf(text);
  if (data === null) return NONE;
  const of = data as { readonly sheets?: unknown; readonly removed?: unknown } | string;
  if (typeof of !== 'object' || !Array.isArray(of.sheets)) return { ...NONE, unread: [data] };
  const sheets: KeptSheet[] = [];
  const unread: unknown[] = [];
  for (const one of of.sheets as readonly unknown[]) {
    const read = v.safeParse(sheetSchema, one);
    if (read.success) sheets.push(read.output);
    else unread.push(one);
  }
  const removed = v.safeParse(sheetSchema, of.removed);
  return { sheets, removed: removed.success ? removed.output : null, unread };
}

const textOf = ({ sheets, removed, unread }: Book): string =>
  JSON.stringify({ format: SHEETS, version: VERSION, sheets: [...sheets, ...unread], removed });

const same = (a: KeptSheet, b: KeptSheet): boolean => JSON.stringify(a) === JSON.stringify(b);

/** What came of reading a file. */
export interface Taken {
  readonly said: string;
  readonly findings: readonly string[];
}

const plural = (n: number): string => `${n} ${n === 1 ? 'sheet' : 'sheets'}`;
const told = (f: Finding): string => texts.foundAllowed(f.path, f.found, f.allowed);

export class SheetBook {
  readonly #keeper: Keeper;
  readonly #read = new Kept<Book>();

  constructor(keeper: Keeper) {
    this.#keeper = keeper;
  }

  get book(): Book {
    const { text } = recall(this.#keeper, KEY);
    return this.#read.of([text], () => readBook(text));
  }

  /** @returns what is wrong, in words; empty when it is kept */
  #write(book: Book): string {
    return keep(this.#keeper, KEY, textOf(book));
  }

  /** Puts a sheet in, over an earlier version of the same one. */
  put(sheet: KeptSheet): string {
    const { book } = this;
    const known = book.sheets.some((s) => s.id === sheet.id);
    if (!known && book.sheets.length >= MOST) {
      return texts.sheetsAreKeptSaveThem(MOST);
    }
    const sheets = known
      ? book.sheets.map((s) => (s.id === sheet.id ? sheet : s))
      : [...book.sheets, sheet];
    return this.#write({ ...book, sheets });
  }

  takeOut(id: string): string {
    const { book } = this;
    const removed = book.sheets.find((s) => s.id === id);
    if (!removed) return '';
    return this.#write({ ...book, sheets: book.sheets.filter((s) => s !== removed), removed });
  }

  putBack(): string {
    const { book } = this;
    const { removed } = book;
    if (!removed) return '';
    const there = book.sheets.filter((s) => s.id !== removed.id);
    return this.#write({ ...book, sheets: [...there, removed], removed: null });
  }

  /** All of them as a file's text; what could not be read goes along as it is. */
  get file(): string {
    return `${JSON.stringify(JSON.parse(textOf(this.book)), null, 2)}\n`;
  }

  /**
   * Takes the sheets of a file in, beside those that are kept: one that is here already stays, one that was
   * changed since comes beside it, one that cannot be read is told place by place and the others come.
   */
  take(name: string, text: string): Taken {
    const other = otherFile(text, 'sheets');
    if (other) return { said: texts.wasNotReadNothingHas(name, other), findings: [] };
    const data = dataOf(text) as { readonly version?: unknown; readonly sheets?: unknown };
    if (data.version !== VERSION || !Array.isArray(data.sheets)) {
      const found =
        data.version === VERSION
          ? texts.sheetsFoundAllowedAList(typeof data.sheets)
          : texts.versionFoundAllowed(JSON.stringify(data.version) ?? texts.nothingWord, VERSION);
      return { said: texts.wasNotReadNothingHas2(name), findings: [found] };
    }
    const { book } = this;
    const sheets = [...book.sheets];
    const findings: string[] = [];
    let [came, there] = [0, 0];
    (data.sheets as readonly unknown[]).forEach((one, i) => {
      const read = parseBy(sheetSchema, one);
      if (!read.ok) {
        findings.push(...read.findings.map((f) => told({ ...f, path: `sheets.${i}.${f.path}` })));
        return;
      }
      const sheet = read.output;
      if (
        sheets.some((s) => same(s, { ...sheet, id: s.id, paper: { ...sheet.paper, id: s.id } }))
      ) {
        there += 1;
        return;
      }
      if (sheets.length >= MOST) {
        findings.push(texts.sheetsFoundMoreThanAre(i, MOST));
        return;
      }
      let { id } = sheet;
      for (let n = 2; sheets.some((s) => s.id === id); n++) id = `${sheet.id.slice(0, 36)}-${n}`;
      sheets.push({ ...sheet, id, paper: { ...sheet.paper, id } });
      came += 1;
    });
    const trouble = came > 0 ? this.#write({ ...book, sheets }) : '';
    if (trouble) return { said: texts.wasNotReadNothingHas2(name), findings: [trouble] };
    const bad = findings.length > 0 ? texts.whatCouldNotBeRead : '';
    return {
      said: texts.takenIn(name, plural(came), there > 0 ? texts.hereAlready(there) : '', bad),
      findings,
    };
  }
}

/** Names of one vehicle as people write it twice: spaces and case aside. */
export const sameVehicle = (a: string, b: string): boolean =>
  a.replace(/\s+/g, '').toLowerCase() === b.replace(/\s+/g, '').toLowerCase();

const ISO = /^(\d{4})-(\d{1,2})-(\d{1,2})$/;
const POINTS = /^(\d{1,2})\.\s*(\d{1,2})\.\s*(\d{4})$/;

/** A day as people write it, as 2026-11-28; null where that can be read in two ways, or not at all. */
export function readDay(text: string): string | null {
  const iso = ISO.exec(text.trim());
  const points = POINTS.exec(text.trim());
  const [y, m, d] = iso
    ? [iso[1], iso[2], iso[3]]
    : points
      ? [points[3], points[2], points[1]]
      : [undefined, undefined, undefined];
  if (y === undefined || m === undefined || d === undefined) return null;
  const day = `${y}-${m.padStart(2, '0')}-${d.padStart(2, '0')}`;
  const at = Date.parse(`${day}T00:00:00Z`);
  // 30 February would be one in March.
  return Number.isNaN(at) || new Date(at).toISOString().slice(0, 10) !== day ? null : day;
}

const DAY = 86_400_000;
/** Days since 1970, and back. */
export const dayOf = (date: string): number => Math.round(Date.parse(`${date}T00:00:00Z`) / DAY);
export const dateOf = (day: number): string => new Date(day * DAY).toISOString().slice(0, 10);
