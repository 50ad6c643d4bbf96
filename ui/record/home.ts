import { recordHome as words } from '../../sim/words/en.ts';
import type { Session } from '../session.ts';
import { begin, type History } from './history.ts';
import { historyOf, type KeptSteps, keptPart, keptSteps, readKept } from './kept-steps.ts';
import { linkOf, MOST_LINK, readable, readLink, says } from './link.ts';
import type { Moment, StationId } from './moment.ts';
import { readOld, type SizesOf } from './old.ts';
import { openedHere } from './parts.ts';
import type { Wrong } from './record.ts';
import { EMPTY_SHELF, type OwnBrake, readOwn, type Shelf } from './shelf.ts';
import { readSeen, type Seen, ShelfLog } from './shelf-log.ts';
import { mergeShelf, withShelf } from './shelf-merge.ts';
import { plainMoment } from './start.ts';
import { forAll, forThis, fullKey, keep, putAside, recall } from './store.ts';
import { type Place, placeOf, samePlace } from './walk.ts';
import { entryOf, Way } from './way.ts';

/** The record's home in the browser: what is kept of it, its address, and the way back. */

const MOMENT = 'moment-1';
const SHELF = 'own-brakes-2';
/** The record is kept at most so often, ms. Keeping takes a third of one: a busy browser that goes may skip its last word. */
const KEEP_EVERY = 50;
/** Its address is written at most so often, ms: browsers allow a hundred in half a minute. */
const ADDRESS_EVERY = 400;

const told = (w: Wrong): string => words.foundAllowed(w.path || words.allOfIt, w.found, w.allowed);

/** What this window keeps for itself. */
interface KeptHere {
  readonly window: string;
  readonly moment: unknown;
  readonly scroll: Readonly<Record<string, number>>;
  /** The way back and forth, written when the page is left. */
  readonly steps?: KeptSteps;
}

const parse = (text: string): unknown => {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
};

/**
 * Was the page loaded anew where it stood? A browser that is busy forgets the state of an entry that was
 * just pushed: then the address alone would be opened, which is not yet written for the last step.
 */
const reloaded = (): boolean =>
  performance
    .getEntriesByType('navigation')
    .some((n) => (n as PerformanceNavigationTiming).type === 'reload');

const idOf = (): string =>
  [...crypto.getRandomValues(new Uint32Array(2))].map((n) => n.toString(36)).join('');

/** The shelf as kept; brakes that cannot be read are put aside and told, the others stay. */
function readShelf(data: unknown, text: string): { shelf: Shelf; trouble: string } {
  const whole = typeof data === 'object' && data !== null ? (data as Record<string, unknown>) : {};
  const list: unknown[] = Array.isArray(whole['brakes']) ? whole['brakes'] : [];
  const brakes = list.map(readOwn);
  const removed = whole['removed'] == null ? null : readOwn(whole['removed']);
  const bad = brakes.filter((b) => b === null).length;
  const lost = bad > 0 || !Array.isArray(whole['brakes']);
  return {
    shelf: { brakes: brakes.filter((b): b is OwnBrake => b !== null), removed },
    trouble: lost
      ? putAside(
          forAll,
          SHELF,
          text,
          Array.isArray(whole['brakes'])
            ? words.ofBrakesOfYourOwn(bad, list.length)
            : words.itIsNoListOf,
        )
      : '',
  };
}

export interface Opening {
  /** The record to begin with, with the way back and forth that this window kept. */
  readonly history: History;
  /** A link's record, to be put on as a first step; null: none was opened. */
  readonly linked: Moment | null;
  readonly troubles: readonly string[];
  readonly scroll: Readonly<Record<string, number>>;
  readonly window: string;
}

/** What is told of a trouble is cut after so many letters: a name or an address in it may be of any length. */
const LONGEST_TOLD = 400;
const cut = (told: string): string =>
  told.length > LONGEST_TOLD ? `${told.slice(0, LONGEST_TOLD)}…` : told;

/**
 * What the page begins with: in this order what this window had, a link, what was kept last, the
 * plain page. What cannot be read is put aside under its own key and told.
 *
 * @param sizesOf reads the texts of a brake kept in the first format
 * @param first station where nothing was kept and no link was opened
 */
export async function opening(sizesOf: SizesOf, first: StationId): Promise<Opening> {
  const troubles: string[] = [];
  const tell = (told: string): void => {
    const trouble = cut(told);
    if (trouble !== '' && !troubles.includes(trouble)) troubles.push(trouble);
  };
  const kept = recall(forAll, SHELF);
  tell(kept.trouble);
  let shelf = EMPTY_SHELF;
  let old: Awaited<ReturnType<typeof readOld>> | null = null;
  if (kept.text !== null) {
    const read = readShelf(parse(kept.text), kept.text);
    shelf = read.shelf;
    tell(read.trouble);
  } else if (kept.trouble === '') {
    old = await readOld((key) => recall(forAll, key).text, sizesOf);
    shelf = old.shelf ?? EMPTY_SHELF;
    for (const u of old.unread) tell(putAside(forAll, u.key, u.text, u.why));
  }

  const here = recall(forThis, MOMENT);
  const mine = here.text === null ? null : (parse(here.text) as KeptHere | undefined);
  const entry = entryOf(history.state);
  const same = mine != null && (entry ? entry.takeup === mine.window : reloaded());
  const linked = !same && says(location.search, location.hash);

  /** A kept record; null when there is none, or none that can be read. */
  const take = (data: unknown, text: string, at: typeof forAll): Moment | null => {
    const read = readKept(data, shelf);
    if (read.ok) return read.moment;
    tell(putAside(at, MOMENT, text, read.wrong.slice(0, 3).map(told).join('; ')));
    return null;
  };
  let moment = same && here.text !== null ? take(mine.moment, here.text, forThis) : null;
  if (!moment) {
    const last = recall(forAll, MOMENT);
    tell(last.trouble);
    if (last.text !== null) moment = take(parse(last.text), last.text, forAll);
  }
  if (!moment) {
    const plain = plainMoment(first, undefined, null, shelf);
    moment = old?.inspect ? { ...plain, parts: { ...plain.parts, inspect: old.inspect } } : plain;
  }

  const opened = {
    history: same ? historyOf(moment, mine.steps, shelf) : begin(moment),
    troubles,
    scroll: same ? (mine.scroll ?? {}) : {},
    window: same ? mine.window : idOf(),
  };
  if (!linked) return { ...opened, linked: null };
  const read = await readLink(location.search, location.hash);
  if (read.ok) return { ...opened, linked: openedHere(read.moment, moment) };
  tell(words.thisLinkCouldNotBe(read.wrong.slice(0, 3).map(told).join('; ')));
  return { ...opened, linked: null };
}

/** Keeps a session's record in the browser and in the address, and walks where Back and Forward go. */
export class Home {
  readonly session: Session;
  readonly #window: string;
  readonly #scrolls: () => Readonly<Record<string, number>>;
  #troubles: readonly string[];
  #place: Place;
  readonly #way: Way;
  #moment: Moment | null = null;
  #addressed: Moment | null = null;
  readonly #log: ShelfLog;
  /** What another window wrote does not know of all that was written here: it is to be written again. */
  #unknown = false;
  #keeping = 0;
  #keptAt = 0;
  #addressing = 0;
  /** Said once a time that it begins. */
  #full = '';

  /** @param scrolls how far what scrolls is scrolled, by name */
  constructor(session: Session, opened: Opening, scrolls: () => Readonly<Record<string, number>>) {
    this.session = session;
    this.#window = opened.window;
    this.#troubles = opened.troubles;
    this.#scrolls = scrolls;
    const seen = readSeen(
      (parse(recall(forAll, SHELF).text ?? '') as { seen?: unknown } | null)?.seen,
    );
    this.#log = new ShelfLog(opened.window, seen, session.moment.shelf);
    this.#place = placeOf(session.moment);
    this.#way = new Way(opened.window, {
      place: () => this.#place,
      walk: (place) => this.#walked(place),
      arrived: () => {
        this.#addressed = null;
        this.#changed();
      },
    });
  }

  /** What the user has to be told about what is kept; each stands until it is closed. */
  get troubles(): readonly string[] {
    return this.#troubles;
  }
  tell(told: string): void {
    const trouble = cut(told);
    if (this.#troubles.includes(trouble)) return;
    this.#troubles = [...this.#troubles, trouble];
    this.session.changed();
  }
  closeTrouble(trouble: string): void {
    this.#troubles = this.#troubles.filter((t) => t !== trouble);
    this.session.changed();
  }

  start(): void {
    this.session.addEventListener('change', this.#changed);
    window.addEventListener('hashchange', this.#edited);
    window.addEventListener('storage', this.#heard);
    window.addEventListener('pagehide', this.#leaving);
    document.addEventListener('visibilitychange', this.#leaving);
    this.#way.start();
    this.#changed();
  }

  stop(): void {
    this.session.removeEventListener('change', this.#changed);
    this.#way.stop();
    window.removeEventListener('hashchange', this.#edited);
    window.removeEventListener('storage', this.#heard);
    window.removeEventListener('pagehide', this.#leaving);
    document.removeEventListener('visibilitychange', this.#leaving);
    clearTimeout(this.#keeping);
    clearTimeout(this.#addressing);
    this.#keeping = 0;
    this.#addressing = 0;
  }

  #changed = (): void => {
    const { moment } = this.session;
    const place = placeOf(moment);
    if (!samePlace(place, this.#place) && !this.#way.turning) {
      this.#place = place;
      this.#way.push(`${location.pathname}${readable(moment)}`);
    }
    if (this.#keeping === 0 && moment !== this.#moment) {
      const rest = this.#keptAt + KEEP_EVERY - performance.now();
      this.#keeping = window.setTimeout(this.#keep, Math.max(0, rest));
    }
    if (this.#addressing === 0 && moment !== this.#addressed) {
      this.#addressing = window.setTimeout(this.#dueAddress, ADDRESS_EVERY);
    }
  };

  #keep = (): void => {
    this.#keeping = 0;
    this.#now();
  };

  #dueAddress = (): void => {
    this.#addressing = 0;
    this.#address().catch((error: unknown) => {
      this.tell(words.theAddressCouldNotBe(String(error)));
    });
  };

  /** The page is left, or hidden: what comes next may be a reload. */
  #leaving = (): void => {
    this.#now(keptSteps(this.session.history));
  };

  /**
   * Keeps what is there, at once.
   *
   * @param steps the way back and forth, where there is time for it; where they find no room, the record alone
   */
  #now(steps?: KeptSteps): void {
    const { moment } = this.session;
    this.#keepShelf();
    const plain = keptPart(moment);
    const here: KeptHere = {
      window: this.#window,
      moment: plain,
      scroll: this.#scrolls(),
    };
    const whole = steps && keep(forThis, MOMENT, JSON.stringify({ ...here, steps })) === '';
    let full = whole ? '' : keep(forThis, MOMENT, JSON.stringify(here));
    if (moment !== this.#moment) full = keep(forAll, MOMENT, JSON.stringify(plain)) || full;
    this.#moment = moment;
    this.#keptAt = performance.now();
    if (full !== '' && full !== this.#full) this.tell(full);
    this.#full = full;
  }

  async #address(): Promise<void> {
    const { moment } = this.session;
    // What turns round on its way comes back to this.
    if (moment === this.#addressed || this.#way.turning) return;
    this.#addressed = moment;
    const link = await linkOf(moment);
    // Meanwhile it may have gone on: then another one is on its way.
    if (this.session.moment !== moment || this.#way.turning) return this.#changed();
    const short = link.length <= MOST_LINK ? link : readable(moment);
    this.#way.write(`${location.pathname}${short}`);
  }

  /** Brakes of one's own: what another window kept meanwhile is not written over. */
  #keepShelf(): void {
    const { shelf } = this.session.moment;
    if (shelf === this.#log.last && !this.#unknown) return;
    this.#unknown = false;
    const { text } = recall(forAll, SHELF);
    const theirs = text === null ? null : this.#read(text);
    const seen = theirs?.seen ?? {};
    const base = theirs ? this.#log.base(seen) : this.#log.last;
    const { shelf: merged, told: said } = mergeShelf(base, shelf, theirs?.shelf ?? base);
    this.#take(merged, said);
    const mine = this.session.moment.shelf;
    const kept = { ...mine, seen: this.#log.writes(seen, mine) };
    const trouble = keep(forAll, SHELF, JSON.stringify(kept));
    if (trouble !== '') this.tell(trouble);
  }

  /** What was written of the shelf, and what it knows of. */
  #read(text: string): { readonly shelf: Shelf; readonly seen: Seen } {
    const data = parse(text);
    const { shelf, trouble } = readShelf(data, text);
    if (trouble !== '') this.tell(trouble);
    return {
      shelf,
      seen: readSeen((data as { seen?: unknown } | null | undefined)?.seen),
    };
  }

  #take(merged: Shelf, said: readonly string[]): void {
    for (const text of said) this.tell(text);
    const before = this.session.moment.shelf;
    if (JSON.stringify(merged) === JSON.stringify(before)) return;
    // Steps to be undone keep their own brakes; what came from outside is put into each.
    this.session.fromOutside((m) =>
      withShelf(m, m.shelf === before ? merged : mergeShelf(before, m.shelf, merged).shelf),
    );
  }

  /** Another window kept brakes of one's own. */
  #heard = (e: StorageEvent): void => {
    if (e.key !== fullKey(SHELF) || e.newValue === null) return;
    const { shelf: theirs, seen } = this.#read(e.newValue);
    const { shelf, told: said } = mergeShelf(
      this.#log.base(seen),
      this.session.moment.shelf,
      theirs,
    );
    const known = this.#log.knows(seen);
    this.#take(shelf, said);
    // What is mine alone is still to be kept: only then are both alike.
    const mine = this.session.moment.shelf;
    const same = JSON.stringify(mine) === JSON.stringify(theirs);
    this.#log.heard(seen, same ? mine : theirs);
    if (known || same) return;
    this.#unknown = true;
    if (this.#keeping === 0) this.#keeping = window.setTimeout(this.#keep, KEEP_EVERY);
  };

  #walked(place: Place): void {
    this.#place = place;
    this.session.walkTo(place);
    this.#place = placeOf(this.session.moment);
  }

  /** A link typed or pasted over the address of the open page. */
  #edited = (): void => {
    if (entryOf(history.state)) return;
    readLink(location.search, location.hash).then(
      (read) => {
        if (read.ok)
          this.session.put(openedHere(read.moment, this.session.moment), words.linkOpened);
        else this.tell(words.thisLinkCouldNotBe(read.wrong.slice(0, 3).map(told).join('; ')));
        this.#place = placeOf(this.session.moment);
        this.#way.write();
      },
      (error: unknown) => this.tell(words.thisLinkCouldNotBe2(String(error))),
    );
  };
}
