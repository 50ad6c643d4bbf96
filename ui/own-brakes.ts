import {
  type Finding,
  keyOfPath,
  type OwnKey,
  ownScene,
  readScene,
  type Scene,
} from '../sim/index.ts';
import { ownWords } from '../sim/workshop/index.ts';
import { keep, recall, textsOf } from './keep.ts';
import { brakes } from './scenes.ts';
import { ownFields } from './stations/own/fields.ts';
import { type QuantityResult, readQuantity } from './units.ts';

/** Brakes of one's own: what was typed, kept in the browser at once, and the scenes made of it. */
export type OwnTexts = Readonly<Partial<Record<OwnKey, string>>>;

export interface OwnBrake {
  /** Name of its scene: "own-3". */
  readonly name: string;
  readonly title: string;
  /** Scene it is made from: a teaching brake's, or the one of a file. */
  readonly base: Scene;
  readonly texts: OwnTexts;
  /** The last texts that made a sound brake: those stand on the bench. */
  readonly sound: OwnTexts;
}

export interface OwnJudged {
  readonly reads: Readonly<Partial<Record<OwnKey, QuantityResult | null>>>;
  /** What is wrong, by field; the rest of the findings, which belong to none. */
  readonly wrong: Readonly<Partial<Record<OwnKey, string>>>;
  readonly other: readonly string[];
  /** Null while something is wrong. */
  readonly scene: Scene | null;
  /** Made of what could be read, sound or not: what the other fields then have. */
  readonly draft: Scene;
}

const told = (f: Finding): string => `${f.path}: found ${f.found}; allowed: ${f.allowed}`;

/** Keys of the scene file in the fields' own words. */
const plain = (text: string): string =>
  text
    .replace(/\bdiameterNew\b/g, 'the new diameter')
    .replace(/\bdiameterMax\b/g, 'the largest diameter')
    .replace(/\bthicknessNew\b/g, 'the new thickness');

/** A teaching brake's scene with its defaults filled in. */
export function teachingScenes(): readonly Scene[] {
  return brakes.map((b) => {
    const read = readScene(b);
    if (!read.ok) throw new Error(read.findings.map(told).join('\n'));
    return read.scene;
  });
}

/** Reads one's texts to a scene, or to findings at their fields. */
export function judgeOwn(own: OwnBrake, texts: OwnTexts = own.texts): OwnJudged {
  const reads: Partial<Record<OwnKey, QuantityResult | null>> = {};
  const wrong: Partial<Record<OwnKey, string>> = {};
  const sizes: Partial<Record<OwnKey, number>> = {};
  for (const { key, unit, range, digits } of ownFields) {
    const text = texts[key] ?? '';
    if (text.trim() === '') continue;
    const r =
      unit === '' ? plainNumber(text, range, digits === 0) : readQuantity(text, unit, range);
    reads[key] = r;
    if (r.ok) sizes[key] = r.value;
    else wrong[key] = `found ${r.found}; allowed: ${r.allowed}`;
  }
  const draft = ownScene(own.base, sizes, ownWords(own.base, sizes, own));
  const none = { reads, wrong, draft, scene: null };
  if (Object.keys(wrong).length > 0) return { ...none, other: [] };
  const read = readScene(draft);
  if (read.ok) return { ...none, other: [], scene: read.scene };
  const other: string[] = [];
  // A mark under the new diameter is one mistake, though lip and start cannot be right then either.
  const mark = read.findings.some((f) => f.path === 'drum.diameterMax');
  for (const finding of read.findings) {
    if (mark && /^(start\.|states\.|drum\.lipDiameter)/.test(finding.path)) continue;
    const key = keyOfPath(draft, finding.path);
    if (key) wrong[key] ??= `found ${plain(finding.found)}; allowed: ${plain(finding.allowed)}`;
    else other.push(told(finding));
  }
  return { ...none, other };
}

function plainNumber(
  text: string,
  range: readonly [number, number],
  whole: boolean,
): QuantityResult {
  const value = Number(text.trim().replace(',', '.'));
  const fits = Number.isFinite(value) && value >= range[0] && value <= range[1];
  return fits && (!whole || Number.isInteger(value))
    ? { ok: true, value, echo: `read as ${value}` }
    : {
        ok: false,
        found: `"${text}"`,
        allowed: `a ${whole ? 'whole ' : ''}number, ${range[0]} to ${range[1]}`,
      };
}

const KEY = 'own-brakes-1';
const REMOVED = 'own-removed-1';

function readOwn(data: unknown): OwnBrake | null {
  if (typeof data !== 'object' || data === null) return null;
  const d = data as Record<string, unknown>;
  const base = readScene(d['base']);
  const { name, title } = d;
  if (!base.ok || typeof name !== 'string' || !/^own-\d+$/.test(name)) return null;
  return {
    name,
    title: typeof title === 'string' && title !== '' ? title : name,
    base: base.scene,
    texts: textsOf(d['texts']),
    sound: textsOf(d['sound']),
  };
}

/** All that can be read; one that cannot does not take the others with it. */
function readAll(data: unknown): readonly OwnBrake[] | null {
  if (!Array.isArray(data)) return null;
  const all = data.map(readOwn);
  const good = all.filter((b) => b !== null);
  return good.length === 0 && all.length > 0 ? null : good;
}

class OwnBrakes extends EventTarget {
  #list: readonly OwnBrake[];
  #removed: OwnBrake | null;
  trouble: string;

  constructor() {
    super();
    const kept = recall(KEY, readAll);
    this.#list = kept.value ?? [];
    this.trouble = kept.trouble;
    this.#removed = recall(REMOVED, readOwn).value;
  }

  get list(): readonly OwnBrake[] {
    return this.#list;
  }
  get removed(): OwnBrake | null {
    return this.#removed;
  }
  of(name: string): OwnBrake | undefined {
    return this.#list.find((b) => b.name === name);
  }

  #put(list: readonly OwnBrake[]): void {
    this.#list = list;
    this.trouble = keep(KEY, list);
    this.dispatchEvent(new Event('change'));
  }

  /** A new brake from a scene. Gives its name. */
  make(base: Scene, title: string, texts: OwnTexts = {}): string {
    const used = this.#list.map((b) => Number(b.name.slice(4)));
    if (this.#removed) used.push(Number(this.#removed.name.slice(4)));
    const name = `own-${Math.max(0, ...used) + 1}`;
    const own: OwnBrake = { name, title, base, texts, sound: {} };
    const sound = judgeOwn(own).scene ? texts : {};
    this.#put([...this.#list, { ...own, sound }]);
    return name;
  }

  /** Keeps a text as typed, and its brake as the sound one when it is sound. */
  write(name: string, key: OwnKey, text: string): OwnJudged | null {
    const own = this.of(name);
    if (!own) return null;
    const texts = { ...own.texts, [key]: text };
    const judged = judgeOwn(own, texts);
    const next = { ...own, texts, sound: judged.scene ? texts : own.sound };
    this.#put(this.#list.map((b) => (b === own ? next : b)));
    return judged;
  }

  rename(name: string, title: string): void {
    this.#put(this.#list.map((b) => (b.name === name ? { ...b, title: title || b.name } : b)));
  }

  remove(name: string): void {
    this.#removed = this.of(name) ?? null;
    keep(REMOVED, this.#removed);
    this.#put(this.#list.filter((b) => b.name !== name));
  }

  restore(): string | null {
    const back = this.#removed;
    if (!back) return null;
    this.#removed = null;
    keep(REMOVED, null);
    this.#put([...this.#list, back]);
    return back.name;
  }
}

export const ownBrakes = new OwnBrakes();

/** The scene that stands on the bench for one's own brake: its last sound one. */
export const soundScene = (own: OwnBrake): Scene => judgeOwn(own, own.sound).scene ?? own.base;

/** Everything that can be put on the bench: the teaching brakes, then one's own. */
export const benchScenes = (): readonly {
  readonly title: string;
  readonly name: string;
  readonly scene: unknown;
}[] => [
  ...brakes.map((b) => ({ title: b.title, name: b.name, scene: b as unknown })),
  ...ownBrakes.list.map((b) => ({ title: b.title, name: b.name, scene: soundScene(b) as unknown })),
];
