import { inspectPast as words } from '../../../sim/words/en.ts';
import {
  type History,
  historyOf,
  type PastSheet,
  type Trend,
} from '../../../sim/workshop/index.ts';
import { number } from '../../format.ts';
import { ownOf } from '../../record/derive.ts';
import { Kept, KeptFor } from '../../record/kept.ts';
import { decode, PictureTrouble, pictures } from '../../record/pictures.ts';
import { forAll } from '../../record/store.ts';
import type { Session } from '../../session.ts';
import { deskOf } from '../station.ts';
import {
  type Book,
  dateOf,
  dayOf,
  type KeptSheet,
  readDay,
  SheetBook,
  sameVehicle,
} from './book.ts';
import { InspectDesk } from './desk.ts';
import type { Paper } from './paper.ts';
import { askDrop, layOut, nameSheet, tell, writeHead } from './part.ts';
import { understand } from './read.ts';

/** Most pixels of a side of a photo note: a score is seen, and the store is not filled by ten. */
const LONGEST_SIDE = 1600;
/** A day in ms. */
const DAY = 86_400_000;

const newId = (): string =>
  `sheet-${Array.from(crypto.getRandomValues(new Uint32Array(2)), (n) => n.toString(36)).join('')}`;

/** Kept sheets and photo notes beside the sheet that lies on the bench. */
export class PastDesk {
  readonly session: Session;
  readonly #shelf = new SheetBook(forAll);
  readonly #found = new KeptFor<KeptSheet, PastSheet>();
  readonly #history = new Kept<History | null>();

  constructor(session: Session) {
    this.session = session;
    pictures.addEventListener('change', () => session.changed());
  }

  get #desk(): InspectDesk {
    return deskOf(InspectDesk, this.session);
  }
  get paper(): Paper {
    return this.#desk.paper;
  }
  get book(): Book {
    return this.#shelf.book;
  }
  /** Id of the kept sheet that is to be taken out, once that is said again. */
  get dropping(): string {
    return this.session.moment.parts.inspect.dropping;
  }

  get vehicles(): readonly string[] {
    const out: string[] = [];
    for (const { vehicle } of this.book.sheets) {
      if (!out.some((v) => sameVehicle(v, vehicle))) out.push(vehicle);
    }
    return out;
  }
  /** The one on the sheet; the one kept last where none is typed. */
  get vehicle(): string {
    return this.paper.head.vehicle?.trim() || (this.book.sheets.at(-1)?.vehicle ?? '');
  }
  /** Its kept sheets, by the odometer. */
  get past(): readonly KeptSheet[] {
    const { vehicle } = this;
    return this.book.sheets
      .filter((s) => sameVehicle(s.vehicle, vehicle))
      .sort((a, b) => a.km - b.km || (a.date < b.date ? -1 : 1));
  }

  /** What the last two say, by the limits of the sheet that lies here; null where there are no two. */
  get history(): History | null {
    const [before, after] = this.past.slice(-2);
    if (!before || !after) return null;
    const { limits } = this.#desk.judged.read;
    const past = (s: KeptSheet): PastSheet =>
      this.#found.of(s, () => {
        const { bench, shelf } = this.session.moment;
        const own = ownOf(bench.brake, shelf)?.sizes ?? null;
        const { found } = understand(s.paper, this.session.brake, own);
        return { day: dayOf(s.date), km: s.km, found };
      });
    return this.#history.of([before, after, limits], () =>
      historyOf(past(before), past(after), limits),
    );
  }
  /** Whose the limit of a trend is. */
  whoseOf(t: Trend | null): string {
    const { whose } = this.#desk.judged.read;
    return t ? whose[t.line === 'drum' ? 'drumMax' : 'liningMin'] : '';
  }

  #tell(said: string, findings: readonly string[] = []): void {
    this.session.amend(tell, said, findings);
  }

  /** Keeps the sheet that lies here, over what was kept of it before; tells what is missing. */
  keepSheet(): void {
    const { paper } = this;
    const { axle, found } = this.#desk.judged.read;
    const vehicle = paper.head.vehicle?.trim() ?? '';
    const dated = paper.head.date?.trim() ?? '';
    const today = dateOf(Math.floor(Date.now() / DAY));
    const date = dated === '' ? today : readDay(dated);
    const km = axle.odometer;
    const findings = [
      ...(vehicle === '' ? [words.vehicleFoundNothingAllowed] : []),
      ...(date === null ? [words.dateFoundAllowedADay(dated, today)] : []),
      ...(km?.ok ? [] : [words.odometerFoundNothingThatIs]),
      ...(Object.keys({ ...found.left.sizes, ...found.right.sizes }).length === 0
        ? [words.measurementsFoundNoneAllowed]
        : []),
    ];
    if (findings.length > 0 || date === null || !km?.ok) {
      this.#tell(words.notKeptYet, findings);
      return;
    }
    this.session.amend(nameSheet, newId());
    if (dated === '') this.session.amend(writeHead, 'date', date);
    const now = this.paper;
    const trouble = this.#shelf.put({ id: now.id, vehicle, date, km: km.value, paper: now });
    if (trouble) this.#tell(words.notKept, [trouble]);
    else this.#tell(words.keptInThisBrowserKm(vehicle, date, number(km.value, 0)));
  }

  openSheet(sheet: KeptSheet): void {
    const paper = { ...sheet.paper, id: sheet.id };
    this.session.do(layOut, paper, words.theSheetOfLiesHere(sheet.date));
  }
  askDrop(id: string): void {
    this.session.do(askDrop, id);
  }
  /** Takes a kept sheet out; the photo notes of the one taken out before go then. */
  dropSheet(sheet: KeptSheet): void {
    const { removed } = this.book;
    const trouble = this.#shelf.takeOut(sheet.id);
    if (!trouble && removed && removed.id !== sheet.id) {
      pictures.forgetAll(`note-${removed.id}-`).catch(() => undefined);
    }
    this.session.do(askDrop, '');
    this.#tell(trouble || words.theSheetOfIsTaken(sheet.date));
  }
  putBackSheet(): void {
    this.#tell(this.#shelf.putBack() || words.theSheetIsBack);
  }

  /** All kept sheets as a file. */
  saveSheets(): void {
    const url = URL.createObjectURL(new Blob([this.#shelf.file], { type: 'application/json' }));
    const a = document.createElement('a');
    a.href = url;
    a.download = 'takeup-sheets.json';
    a.click();
    setTimeout(() => URL.revokeObjectURL(url), 10_000);
    this.#tell(words.savedAs(a.download));
  }
  takeSheets(name: string, text: string): void {
    const { said, findings } = this.#shelf.take(name, text);
    this.#tell(said, findings);
  }

  get #note(): string {
    const { wheel, open, paper } = this.#desk;
    // What is asked once is photographed once.
    return paper.id === ''
      ? ''
      : `note-${paper.id}-${open.kind === 'ask' ? 'both' : wheel}-${open.key}`;
  }
  /** Photo beside the open place, if there is one. */
  get notePicture(): HTMLCanvasElement | undefined {
    const name = this.#note;
    return name === '' ? undefined : pictures.of(name);
  }
  async takeNote(file: File): Promise<void> {
    try {
      const picture = await decode(file, LONGEST_SIDE);
      this.session.amend(nameSheet, newId());
      const name = this.#note;
      await pictures.put(name, picture);
      try {
        await pictures.keep(name);
      } catch {
        this.#tell(words.thePhotoLastsUntilThe);
      }
    } catch (e) {
      if (!(e instanceof PictureTrouble)) throw e;
      this.#tell(words.wasNotTakenNothingElse(file.name), [e.message]);
    }
  }
  dropNote(): void {
    pictures.forget(this.#note).catch(() => undefined);
  }
}
