import type { LimitKey, LimitSet, LookKey, SizeKey, Wheel } from '../../../sim/workshop/index.ts';
import { keep, recall, textsOf } from '../../keep.ts';
import type { AxleKey, HeadKey } from './lines.ts';

/**
 * The sheet as typed: texts, word for word. One sheet for the whole page, whatever brake stands on the
 * bench; kept in the browser at every stroke.
 */
export type WheelKey = SizeKey | LookKey;
type Texts<K extends string> = Readonly<Partial<Record<K, string>>>;

export interface Paper {
  readonly wheels: Readonly<Record<Wheel, Texts<WheelKey>>>;
  readonly axle: Texts<AxleKey>;
  readonly head: Texts<HeadKey>;
  readonly limitsFrom: LimitSet['id'];
  /** Limits typed over the set's. */
  readonly limits: Texts<LimitKey>;
  /** Unit of a number typed without one. */
  readonly plain: 'mm' | 'in';
}

const BLANK: Paper = {
  wheels: { left: {}, right: {} },
  axle: {},
  head: {},
  limitsFrom: 'teaching',
  limits: {},
  plain: 'mm',
};

const KEY = 'sheet-1';
const BEFORE = 'sheet-before-1';
const sets: readonly LimitSet['id'][] = ['teaching', 'regulation', 'test', 'maker'];

/** Whatever was kept: what is no text is left out, nothing throws. */
function readPaper(data: unknown): Paper | null {
  if (typeof data !== 'object' || data === null) return null;
  const d = data as Record<string, unknown>;
  const wheels = (d['wheels'] ?? {}) as Record<string, unknown>;
  const from = sets.find((s) => s === d['limitsFrom']);
  return {
    wheels: { left: textsOf(wheels['left']), right: textsOf(wheels['right']) },
    axle: textsOf(d['axle']),
    head: textsOf(d['head']),
    limitsFrom: from ?? 'teaching',
    limits: textsOf(d['limits']),
    plain: d['plain'] === 'in' ? 'in' : 'mm',
  };
}

const typedIn = (p: Paper): boolean =>
  [p.wheels.left, p.wheels.right, p.axle, p.head, p.limits].some((t) =>
    Object.values(t).some((text) => text !== ''),
  );

/** The sheet on the bench. Fires `change`. */
class SheetOnBench extends EventTarget {
  #paper: Paper = BLANK;
  /** What stood there before the sheet was cleared or filled from the brake; null when nothing did. */
  #before: Paper | null = null;
  /** Why nothing is kept, or why what was kept is not shown; empty when all is well. */
  trouble = '';

  constructor() {
    super();
    const kept = recall(KEY, readPaper);
    this.#paper = kept.value ?? BLANK;
    this.trouble = kept.trouble;
    this.#before = recall(BEFORE, readPaper).value;
    // The same sheet in another window: the last stroke counts.
    globalThis.addEventListener?.('storage', (e: StorageEvent) => {
      if (e.key !== `takeup-${KEY}`) return;
      this.#paper = recall(KEY, readPaper).value ?? this.#paper;
      this.dispatchEvent(new Event('change'));
    });
  }

  get paper(): Paper {
    return this.#paper;
  }
  get canUndo(): boolean {
    return this.#before !== null;
  }
  get blank(): boolean {
    return !typedIn(this.#paper);
  }

  #put(paper: Paper): void {
    this.#paper = paper;
    this.trouble = keep(KEY, paper);
    this.dispatchEvent(new Event('change'));
  }

  #remember(): void {
    if (!typedIn(this.#paper)) return;
    this.#before = this.#paper;
    keep(BEFORE, this.#before);
  }

  write(wheel: Wheel, key: WheelKey, text: string): void {
    const p = this.#paper;
    this.#put({ ...p, wheels: { ...p.wheels, [wheel]: { ...p.wheels[wheel], [key]: text } } });
  }

  writeAxle(key: AxleKey, text: string): void {
    this.#put({ ...this.#paper, axle: { ...this.#paper.axle, [key]: text } });
  }

  writeHead(key: HeadKey, text: string): void {
    this.#put({ ...this.#paper, head: { ...this.#paper.head, [key]: text } });
  }

  /** A limit typed over; an empty text is no limit, the set's own comes back with `chooseLimits`. */
  writeLimit(key: LimitKey, text: string): void {
    this.#put({ ...this.#paper, limits: { ...this.#paper.limits, [key]: text } });
  }

  /** Takes another set of limits; what was typed over goes with the old one and can be undone. */
  chooseLimits(id: LimitSet['id']): void {
    if (Object.keys(this.#paper.limits).length > 0) this.#remember();
    this.#put({ ...this.#paper, limitsFrom: id, limits: {} });
  }

  choosePlain(plain: 'mm' | 'in'): void {
    this.#put({ ...this.#paper, plain });
  }

  /** Fills one wheel and the axle, over what stood there; can be undone. */
  fill(wheel: Wheel, texts: Texts<WheelKey>, axle: Texts<AxleKey>): void {
    this.#remember();
    const p = this.#paper;
    this.#put({
      ...p,
      wheels: { ...p.wheels, [wheel]: texts },
      axle: { ...p.axle, ...axle },
    });
  }

  /** A blank sheet; limits and unit stay. Can be undone. */
  clear(): void {
    this.#remember();
    this.#put({ ...BLANK, limitsFrom: this.#paper.limitsFrom, plain: this.#paper.plain });
  }

  /** Brings back what stood there before; doing it twice goes to and fro. */
  undo(): void {
    const back = this.#before;
    if (!back) return;
    this.#before = typedIn(this.#paper) ? this.#paper : null;
    keep(BEFORE, this.#before);
    this.#put(back);
  }
}

export const sheetOnBench = new SheetOnBench();
