import {
  type Answer,
  type Base,
  type Free,
  type Instant,
  type Miss,
  missOf,
  type Quantity,
  Vary,
  type Wish,
} from '../../../sim/index.ts';
import { Kept } from '../../record/kept.ts';
import type { Session } from '../../session.ts';
import type { SeekFound } from '../../vary-seek.ts';
import { SeekBook } from '../../vary-seek-book.ts';
import { deskOf } from '../station.ts';
import { VaryDesk } from './desk.ts';
import { ownKey, type SeekPart } from './part.ts';
import { type SeekReady, seekReady } from './seek-ready.ts';

/** A size that may be chosen, with what the brake says of it. */
export interface FreeSize {
  readonly free: Free;
  readonly quantity: Quantity;
}

/** What is wished of a reading, with what the brake says of it. */
export interface Wished {
  readonly wish: Wish;
  readonly answer: Answer;
  /** Its place in the record, where some say nothing of this brake. */
  readonly place: number;
}

const OWN = ownKey('');
const hasEnd = ({ least, most }: Wish): boolean => least !== null || most !== null;

/** What the question turned round works out: in a worker where the sizes lie, here the brake that is looked at. */
export class SeekDesk {
  readonly session: Session;
  readonly #book: SeekBook;
  readonly #base = new Kept<Base>();
  readonly #vary = new Kept<Vary>();
  readonly #free = new Kept<readonly FreeSize[]>();
  readonly #wished = new Kept<readonly Wished[]>();
  readonly #plain = new Kept<Miss>();
  readonly #point = new Kept<Miss>();
  readonly #shown = new Kept<Instant | null>();
  readonly #readyMade = new Kept<readonly SeekReady[]>();

  constructor(session: Session) {
    this.session = session;
    this.#book = new SeekBook(() => session.changed());
  }

  get part(): SeekPart {
    return this.session.moment.parts.vary.seek;
  }
  get desk(): VaryDesk {
    return deskOf(VaryDesk, this.session);
  }
  /** The brake as it is; its adjuster keeps its tooth, but where teeth are asked for. */
  get base(): Base {
    const { base } = this.desk;
    return this.#base.of([base], () => ({ ...base, steps: false }));
  }
  get vary(): Vary {
    return this.#vary.of([this.base], () => new Vary(this.base));
  }

  /** Questions that this brake can be asked, ready made. */
  get readyMade(): readonly SeekReady[] {
    const { desk } = this;
    return this.#readyMade.of([desk.quantities, desk.brake, desk.bench.state], () =>
      seekReady(desk),
    );
  }

  /** Sizes that this brake has. */
  get free(): readonly FreeSize[] {
    const { quantities } = this.desk;
    const { free } = this.part;
    return this.#free.of([quantities, free], () =>
      free.flatMap(({ id, from, to }) => {
        const quantity = quantities.find((q) => q.id === id);
        return quantity ? [{ free: { id, from, to, whole: quantity.whole }, quantity }] : [];
      }),
    );
  }
  /** Readings that a wish may be of. */
  get readings(): readonly Answer[] {
    return this.desk.answers.filter((a) => !a.key.startsWith(OWN));
  }
  get wished(): readonly Wished[] {
    const { wishes } = this.part;
    const { vary } = this;
    return this.#wished.of([wishes, vary], () => {
      const { readings } = this;
      return wishes.flatMap((wish, place) => {
        const answer = readings.find((a) => a.key === wish.key);
        return answer ? [{ wish, answer, place }] : [];
      });
    });
  }
  /** Those that say something: what is looked for. */
  get asked(): readonly Wish[] {
    return this.wished.map((w) => w.wish).filter(hasEnd);
  }
  /** There is something to look for, and to look for it by. */
  get ready(): boolean {
    return this.free.length > 0 && this.asked.length > 0;
  }

  get #key(): readonly unknown[] {
    const { scene, state, press, bending } = this.base;
    const asked = JSON.stringify([this.free.map((f) => f.free), this.asked]);
    return [scene, state, press.pressure, press.turning, press.cable, bending, asked];
  }
  get found(): SeekFound | null {
    return this.#book.found(this.#key);
  }
  get trouble(): string {
    return this.#book.trouble(this.#key);
  }
  /** This very question is being worked on. */
  get busy(): boolean {
    this.#book.found(this.#key);
    return this.#book.busy;
  }
  start(): void {
    if (!this.ready) return;
    const free = this.free.map((f) => f.free);
    this.#book.start(this.#key, { base: this.base, free, wishes: this.asked });
  }
  stop(): void {
    this.#book.stop();
  }

  /** The place of the brake on the stage, one value a size; null: the brake as it is. */
  get picked(): readonly number[] | null {
    const { guest } = this.session.moment;
    if (guest?.call.kind !== 'varied') return null;
    const { of, value, and, third } = guest.call;
    const put = [{ id: of, value }, ...(and ? [and] : []), ...(third ? [third] : [])];
    const { free } = this;
    const alike = put.length === free.length && free.every((f, k) => f.free.id === put[k]?.id);
    return alike ? put.map((p) => p.value) : null;
  }
  #missAt(at: readonly number[]): Miss {
    const free = at.length > 0 ? this.free.map((f) => f.free) : [];
    const wishes = this.wished.map((w) => w.wish);
    return missOf(this.vary, free, wishes, at);
  }
  /** What is wished of the brake as it is. */
  get plain(): Miss {
    return this.#plain.of([this.vary, this.wished], () => this.#missAt([]));
  }
  /** The same of the brake on the stage. */
  get point(): Miss | null {
    const { picked } = this;
    if (!picked) return null;
    return this.#point.of([this.vary, this.wished, this.free, picked.join()], () =>
      this.#missAt(picked),
    );
  }
  /** The pressed brake on the stage. */
  get instant(): Instant | null {
    const { picked, vary } = this;
    return this.#shown.of([vary, this.free, picked?.join()], () => {
      const set = (picked ?? []).map((x, k) => [this.free[k]?.free.id ?? '', x] as const);
      return vary.shown(set)?.instant ?? null;
    });
  }

  /** Puts a brake onto the stage, pressed; where there is no such brake it says why. */
  pick(at: readonly number[]): void {
    this.desk.put(
      this.free.map(({ quantity }, k) => ({ quantity, value: at[k] as number })),
      this.vary,
    );
  }
}
