import { canFail, type FaultId } from '../../../sim/index.ts';
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
  signRows,
  signTable,
  unseen,
} from '../../../sim/workshop/index.ts';
import { ownBrakeOf, rigOfBrake, standingOf, startOf } from '../../record/derive.ts';
import { Kept } from '../../record/kept.ts';
import { Piecewise } from '../../record/piecewise.ts';
import type { Session } from '../../session.ts';
import { VAN } from '../faults/van.ts';
import { carry, lookAtCause, newCase, type SeePart, sayAll, saySign } from './part.ts';
import van from './van-signs.json' with { type: 'json' };
import { type Asked, askedOf, firstOf, showsText, UNSURE } from './words.ts';

type Row = readonly [FaultId, SignTable['sound']];

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
}

/** Likely causes of what was said, and what to check next. */
export class SeeDesk {
  readonly session: Session;
  readonly #rows: Piecewise<string, Row | ['sound', SignTable['sound']]>;
  readonly #table = new Kept<SignTable>();
  readonly #judged = new Kept<Judged>();
  readonly #next = new Kept<NextCheck | null>();

  constructor(session: Session) {
    this.session = session;
    this.#rows = new Piecewise(() => session.changed());
  }

  get part(): SeePart {
    return this.session.moment.parts.see;
  }

  /** What was said, without what is not known. */
  get said(): Readonly<Record<string, string>> {
    return Object.fromEntries(Object.entries(this.part.said).filter(([, v]) => v !== UNSURE));
  }

  /** The van's figures stand in until those of the bench's own brake are worked out: how many are, of how many. */
  get working(): { readonly done: number; readonly of: number } | null {
    const { table: _, working } = this.#worked();
    return working;
  }

  #worked(): { readonly table: SignTable; readonly working: { done: number; of: number } | null } {
    const { moment } = this.session;
    const { bench, shelf } = moment;
    const brake = ownBrakeOf(bench, shelf);
    const plain = van as unknown as SignTable;
    if (bench.brake.kind === 'scene' && bench.brake.name === VAN.name)
      return { table: plain, working: null };
    const named = (name: string) =>
      brake.states.some((s) => s.name === name) ? standingOf(brake, name) : startOf(brake);
    const key = JSON.stringify([bench.brake, brake.adjuster.kind]);
    const { results, working } = this.#rows.of(key, () => {
      const rig = rigOfBrake(brake);
      const bases = {
        worn: { rig, state: named('Worn-in') },
        clicked: { rig, state: named('Just clicked') },
      };
      const rows = signRows(bases);
      return [
        () => ['sound', signTable(bases, []).sound] as const,
        ...[...rows].map((row) => (): Row | null => {
          try {
            return row();
          } catch {
            // A fault that this brake cannot have: its state could not be built.
            return null;
          }
        }),
      ] as (() => Row | null)[];
    });
    if (working) return { table: plain, working: { done: results.length, of: 37 } };
    const all = Object.fromEntries(results as readonly (readonly [string, SignTable['sound']])[]);
    const { sound, ...faults } = all as Record<string, SignTable['sound']>;
    return {
      table: { sound: sound ?? plain.sound, faults: faults as SignTable['faults'] },
      working: null,
    };
  }

  /** What the faults show that this brake can have with its kind of adjuster. */
  get table(): SignTable {
    const { table } = this.#worked();
    const { kind } = this.session.brake.adjuster;
    return this.#table.of([table, kind], () => ({
      sound: table.sound,
      faults: Object.fromEntries(
        Object.entries(table.faults).filter(([id]) => canFail(kind, id as FaultId)),
      ) as SignTable['faults'],
    }));
  }

  get judged(): Judged {
    return this.#judged.of([this.table, this.part.said], () => judgeSaid(this.table, this.said));
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
      .map((cause) => {
        const [id] = cause.faults;
        const shown = this.table.faults[id];
        const also = shown
          ? alsoShows(this.table, id, this.part.said).map((s) =>
              showsText(s, shown[s.key], this.table.sound[s.key]),
            )
          : [];
        const named = (keys: readonly string[]) => keys.map((k) => askedOf(k)?.name ?? k);
        const of = cause.fits.length + cause.against.length;
        const fits = of === 0 ? 0 : Math.round((5 * cause.fits.length) / of);
        return {
          ...{ fault: faultOf(id), cause, fits, also: also.slice(0, 3) },
          ...{ fitsTo: named(cause.fits), against: named(cause.against) },
        };
      });
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
  wouldShow(key: string): { readonly shows: string; readonly faults: readonly Fault[] }[] {
    const sign = signOf(key);
    if (!sign) return [];
    const rows = new Map<string, Fault[]>();
    for (const { fault } of this.causes.slice(0, 4)) {
      const shown = this.table.faults[fault.id]?.[sign.key];
      if (shown === undefined) continue;
      const text = showsText({ ...sign, name: '' }, shown, shown)
        .replace(/^: |, sound.*$/g, '')
        .trim();
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
