import { type AtTravel, readingOf } from '../../../sim/index.ts';
import { Kept } from '../../record/kept.ts';
import type { Session } from '../../session.ts';
import { type One, oneOf } from './one.ts';
import { type ComparePart, type KeptMoment, MOST_TRAVEL } from './part.ts';
import { keptNow, pushTo } from './wants.ts';
import { alike, type Difference, differences, otherTitle, titleOf } from './words.ts';

/** The pedal is pushed by a button over this time, ms. */
const PUSH = 700;

/** The two that are compared, worked out from the record. */
export class CompareDesk {
  readonly session: Session;
  readonly #now = new Kept<KeptMoment>();
  readonly #differ = new Kept<readonly Difference[]>();

  constructor(session: Session) {
    this.session = session;
  }

  get part(): ComparePart {
    return this.session.moment.parts.compare;
  }

  /** The bench as it is, let go. */
  get #bench(): KeptMoment {
    const { moment, shown } = this.session;
    const { bench, turning, view } = moment;
    return this.#now.of(
      [bench.brake, bench.fault, bench.adjuster, bench.standing, shown, turning, view.bending],
      () => keptNow(moment),
    );
  }
  get a(): One {
    return oneOf(this.part.kept ?? this.#bench, this.session.moment);
  }
  get b(): One {
    return oneOf(this.part.other ?? this.#bench, this.session.moment);
  }
  get differs(): readonly Difference[] {
    const { a, b } = this;
    return this.#differ.of([a, b], () => differences(a, b));
  }
  get alike(): string {
    return alike(this.a, this.b);
  }
  get titles(): readonly [string, string] {
    return [titleOf(this.a), otherTitle(this.b, this.differs)];
  }
  /** Both as the one pedal has them. */
  get pushed(): readonly [AtTravel, AtTravel] {
    return [this.a.pushed(this.part), this.b.pushed(this.part)];
  }

  /** Readings of both under a key: NaN where one does not have it. */
  reading(key: string): readonly [number, number] {
    const [a, b] = this.pushed;
    const of = (one: One, { instant }: AtTravel): number => {
      const list = one.readings(instant);
      return list.some((r) => r.key === key) ? readingOf(list, key).value : Number.NaN;
    };
    return [of(this.a, a), of(this.b, b)];
  }

  /** Where the scale of the one pedal ends, and where each comes to an ordinary press, mm. */
  get scale(): {
    readonly end: number;
    readonly a: number;
    readonly b: number;
  } {
    const [a, b] = [this.a.told.travel, this.b.told.travel];
    const end = Math.min(MOST_TRAVEL, 10 * Math.ceil((1.08 * Math.max(a, b)) / 10));
    return { end, a, b };
  }

  /** Lets the pedal go, or pushes it to where the first of the two comes to an ordinary press. */
  press(): void {
    const { at, by } = this.part;
    const { a, b } = this.scale;
    this.glide(at > 0 ? 0 : by === 'pressure' ? 40 : Math.min(a, b));
  }

  /** The pedal goes there in its time; at once for those who want less motion. */
  glide(to: number): void {
    const { session } = this;
    if (session.reducedMotion) {
      session.do(pushTo, to);
      return;
    }
    const from = this.part.at;
    let here = this.part;
    let begun = 0;
    const step = (now: number): void => {
      begun ||= now;
      const s = Math.min(1, (now - begun) / PUSH);
      // Something else has been asked for meanwhile.
      if (session.station !== 'compare' || this.part !== here) return;
      session.do(pushTo, s < 1 ? from + (to - from) * s * (2 - s) : to);
      here = this.part;
      if (s < 1) requestAnimationFrame(step);
      else session.close();
    };
    requestAnimationFrame(step);
  }
}
