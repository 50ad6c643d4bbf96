import { canFail, type FaultId } from '../../../sim/index.ts';
import { seeDesk as pageWords } from '../../../sim/words/en.ts';
import {
  alsoShows,
  type Cause,
  type Fault,
  faultOf,
  type Judged,
  judgeSaid,
  type NextCheck,
  nextCheck,
  type RollerFigures,
  type SignTable,
  saidByRollers,
  signOf,
  unseen,
} from '../../../sim/workshop/index.ts';
import { Kept } from '../../record/kept.ts';
import type { Session } from '../../session.ts';
import { carry, lookAtCause, newCase, type SeePart, sayAll, saySign } from './part.ts';
import { alsoText, sentenceOf } from './sentences.ts';
import { type Progress, SignTables } from './tables.ts';
import { type Asked, askedOf, firstOf, UNSURE, valueText } from './words.ts';

/** So many causes are listed. */
const MOST = 5;
/** A cause further behind the first than this is not told. */
const BEHIND = 6;

/** A cause as the page tells it. */
export interface ToldCause {
  readonly fault: Fault;
  readonly cause: Cause;
  /** How many fifths of what was said it shows. */
  readonly fits: number;
  /** What it would also show, the easiest first. */
  readonly also: readonly string[];
  readonly fitsTo: readonly string[];
  readonly against: readonly string[];
  /** What rigid shoes have otherwise of it; null where the bench's are rigid. */
  readonly rigid: string | null;
}

/** What a sign shows, and of which causes. */
interface WouldShow {
  readonly shows: string;
  readonly faults: readonly Fault[];
}

/** Likely causes of what was said, and what to check next. */
export class SeeDesk {
  readonly session: Session;
  readonly #tables: SignTables;
  readonly #table = new Kept<SignTable>();
  readonly #rigidTable = new Kept<SignTable>();
  readonly #judgedRigid = new Kept<Judged>();
  readonly #judged = new Kept<Judged>();
  readonly #next = new Kept<NextCheck | null>();

  constructor(session: Session) {
    this.session = session;
    this.#tables = new SignTables(session);
  }

  get part(): SeePart {
    return this.session.moment.parts.see;
  }

  /** What was said, without what is not known. */
  get said(): Readonly<Record<string, string>> {
    return Object.fromEntries(Object.entries(this.part.said).filter(([, v]) => v !== UNSURE));
  }

  /** Other figures stand in until those of the bench's own brake are worked out: how many are, of how many. */
  get working(): Progress | null {
    return this.#tables.told.working;
  }

  /** What the faults show that this brake can have with its kind of adjuster. */
  get table(): SignTable {
    return this.#can(this.#table, this.#tables.told.table);
  }
  /** The same under rigid shoes; null where the bench's are rigid, or stand in. */
  get rigidTable(): SignTable | null {
    const { rigid } = this.#tables.told;
    return rigid && this.#can(this.#rigidTable, rigid);
  }
  #can(kept: Kept<SignTable>, table: SignTable): SignTable {
    const { kind } = this.session.brake.adjuster;
    return kept.of([table, kind], () => ({
      sound: table.sound,
      faults: Object.fromEntries(
        Object.entries(table.faults).filter(([id]) => canFail(kind, id as FaultId)),
      ) as SignTable['faults'],
    }));
  }

  get judged(): Judged {
    return this.#judged.of([this.table, this.part.said], () => judgeSaid(this.table, this.said));
  }
  /** The same held against what rigid shoes show; null where the bench's are rigid, or stand in. */
  get #rigidJudged(): Judged | null {
    const { rigidTable } = this;
    return (
      rigidTable &&
      this.#judgedRigid.of([rigidTable, this.part.said], () => judgeSaid(rigidTable, this.said))
    );
  }

  /** The likeliest causes; none before anything was said. */
  get causes(): readonly ToldCause[] {
    const { said } = this;
    const count = Object.keys(said).length;
    if (count === 0) return [];
    const { causes } = this.judged;
    const best = causes[0]?.score ?? 0;
    return causes
      .slice(0, MOST)
      .filter((c, i) => i < 2 || c.score > best - BEHIND)
      .map((cause, at) => {
        const [id] = cause.faults;
        const also = this.#also(this.table, id);
        const rigid = this.#rigidOf(id, at, cause, also);
        const named = (keys: readonly string[]) => keys.map((k) => sentenceOf(k, said[k] ?? ''));
        const of = cause.fits.length + cause.against.length;
        const fits = of === 0 ? 0 : Math.round((5 * cause.fits.length) / of);
        return {
          ...{ fault: faultOf(id), cause, fits, also: [...also.values()].slice(0, 3), rigid },
          ...{ fitsTo: named(cause.fits), against: named(cause.against) },
        };
      });
  }

  /** What a fault would also show. */
  #also(table: SignTable, id: FaultId): ReadonlyMap<string, string> {
    const shown = table.faults[id];
    if (!shown) return new Map();
    return new Map(
      alsoShows(table, id, this.part.said).map((s) => [
        s.key,
        alsoText(s.key, shown[s.key], table.sound[s.key]),
      ]),
    );
  }

  /** What rigid shoes have otherwise of a cause: its place, how much fits, what it would also show. */
  #rigidOf(id: FaultId, at: number, own: Cause, also: ReadonlyMap<string, string>): string | null {
    const { rigidTable } = this;
    const judged = this.#rigidJudged;
    if (!rigidTable || !judged) return null;
    const place = judged.causes.findIndex((c) => c.faults[0] === id);
    const other = judged.causes[place];
    if (!other) return pageWords.cannotBe;
    const texts = this.#also(rigidTable, id);
    const more = [...texts].filter(([key, t]) => also.get(key) !== t).map(([, t]) => t);
    const less = [...also].filter(([key]) => !texts.has(key)).map(([, t]) => pageWords.not(t));
    const parts = [
      place === at ? '' : pageWords.number(place + 1),
      other.fits.length === own.fits.length ? '' : pageWords.fitsOfWhatWasSaid(other.fits.length),
      ...more,
      ...less,
    ].filter(Boolean);
    return parts.length > 0 ? parts.join('; ') : pageWords.theSame;
  }

  /** Two at once that fit better than one. */
  get pair(): readonly Fault[] | null {
    return this.judged.pair?.faults.map((f) => faultOf(f)) ?? null;
  }

  /** What is asked next: first what the trouble begins with, then the cheapest check. */
  get asked(): { readonly signs: readonly Asked[]; readonly check: NextCheck | null } {
    const { topic, said } = this.part;
    const begin = firstOf[topic].find((k) => said[k] === undefined);
    const open = firstOf[topic].every((k) => said[k] === undefined);
    // After three answers the check is worth more than the rest of the list.
    if (begin !== undefined && (open || Object.keys(said).length < 3)) {
      const asked = askedOf(begin);
      if (asked) return { signs: [asked], check: null };
    }
    const check = this.next;
    if (check) return { signs: check.signs.slice(0, 2), check };
    return { signs: [], check: null };
  }

  get next(): NextCheck | null {
    const { table, judged } = this;
    return this.#next.of([table, judged], () => nextCheck(table, this.part.said, judged.open));
  }

  /** What each cause that is open would show of a sign: "4: the cable". */
  wouldShow(key: string, table = this.table): WouldShow[] {
    const sign = signOf(key);
    if (!sign) return [];
    const rows = new Map<string, Fault[]>();
    for (const { fault } of this.causes.slice(0, 4)) {
      const shown = table.faults[fault.id]?.[sign.key];
      if (shown === undefined) continue;
      const text = valueText(sign.key, shown);
      rows.set(text, [...(rows.get(text) ?? []), fault]);
    }
    return [...rows].map(([shows, faults]) => ({ shows, faults }));
  }

  /** What was said that this plane does not show, and whether it forbids driving. */
  get unseen(): readonly { readonly text: string; readonly danger?: true }[] {
    return Object.entries(this.said).flatMap(([k, v]) => unseen[`${k}=${v}`] ?? []);
  }

  say(key: string, value: string | null): void {
    this.session.do(saySign, key, value);
  }
  rollers(figures: RollerFigures): void {
    this.session.do(sayAll, saidByRollers(figures));
  }
  anew(): void {
    this.session.do(newCase);
  }
  carry(to: 'drum-off' | 'new-shoes' | 'inspect'): void {
    this.session.do(carry, to);
  }
  lookAt(fault: string): void {
    this.session.do(lookAtCause, fault);
  }
}
