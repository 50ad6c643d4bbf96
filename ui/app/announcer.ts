import { appAnnouncer as words } from '../../sim/words/en.ts';
import type { Happening } from '../session.ts';

/** A pedal that has stood still so long is where it was meant to be, s. */
const SETTLED = 0.6;
/** A line stands so long before the next takes its place, s: it can be spoken meanwhile. */
const SPOKEN = 1.6;

/** The focus goes to a station that was opened, if it goes there, within so long, s. */
const ARRIVES = 0.4;

/** What may be told of: the pedal as it is set, bar, and what happened at the brake so far. */
interface Heard {
  readonly pedal: number;
  readonly events: readonly Happening[];
  /** Which station is open, by its name. */
  readonly place?: string;
  /** How much slower than the clock the brake's time runs: what it does by the press is still to come. */
  readonly paceNow?: number;
}

/**
 * Words for those who hear the page: that the pedal was pressed, that it was let go, and what the brake
 * did, and which station was opened. Each is told once. A drag is told where it stops, and what comes faster than it can be spoken is
 * told by its last.
 */
export class Announcer {
  /** What waits to be told, by its kind: a later one of the kind takes its place. */
  readonly #waiting = new Map<string, string>();
  #place: string | undefined;
  /** When a station was opened that is not told yet, s. */
  #cameAt = Number.POSITIVE_INFINITY;
  #said = { text: '', at: Number.NEGATIVE_INFINITY };
  #last: Happening | undefined;
  #pedal: number;
  /** When the pedal last moved, s. */
  #moved = Number.NEGATIVE_INFINITY;
  /** The most that it was pressed since it was last up, and the pressure that was told, bar. */
  #most: number;
  #told: number;

  /** It is heard by the focus that goes there: it need not be told too. */
  arrived(place: string): void {
    this.#place = place;
    this.#cameAt = Number.POSITIVE_INFINITY;
    this.#waiting.delete('place');
  }

  /** @param first what stands when the page opens: it is not told */
  constructor({ pedal, events, place }: Heard) {
    this.#place = place;
    this.#pedal = this.#most = this.#told = pedal;
    this.#last = events.at(-1);
  }

  /**
   * What is to stand in the page's live region; empty when nothing is to be told.
   *
   * @param now s
   */
  hear(now: number, { pedal, events, place, paceNow = 1 }: Heard): string {
    if (place !== this.#place) this.#cameAt = now;
    this.#place = place;
    if (place !== undefined && now - this.#cameAt >= ARRIVES) {
      this.#waiting.set('place', place);
      this.#cameAt = Number.POSITIVE_INFINITY;
    }
    if (paceNow > 1) this.#moved = now;
    this.#hearPedal(now, Math.round(pedal));
    const last = events.at(-1);
    if (last && last !== this.#last) this.#waiting.set(last.kind, last.text);
    this.#last = last;
    if (now - this.#said.at < SPOKEN) return this.#said.text;
    // Nothing stands there between two lines, or the second of two that are alike would not be heard.
    const [next] = this.#said.text === '' ? this.#waiting : [];
    if (next) this.#waiting.delete(next[0]);
    this.#said = { text: next?.[1] ?? '', at: next ? now : Number.NEGATIVE_INFINITY };
    return this.#said.text;
  }

  #hearPedal(now: number, bar: number): void {
    if (bar !== this.#pedal) this.#moved = now;
    this.#pedal = bar;
    this.#most = Math.max(this.#most, bar);
    if (bar === this.#told && bar === this.#most) return;
    if (bar === 0) {
      const known = this.#told > 0;
      const text = known ? words.pedalReleased : words.pedalPressedToBarAnd(this.#most);
      this.#waiting.set('pedal', text);
      this.#most = 0;
    } else if (bar === this.#told || now - this.#moved < SETTLED) return;
    else this.#waiting.set('pedal', words.pedalPressedBar(bar));
    this.#told = bar;
  }
}
