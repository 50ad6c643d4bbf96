import { awayClipFilm as texts } from '../../../sim/words/en.ts';
import { fanFactor } from '../../fan-factor.ts';
import { number } from '../../format.ts';
import { paceName } from '../../pace.ts';
import { benchTitle } from '../../record/guest-title.ts';
import { begin } from '../../record/history.ts';
import type { Moment } from '../../record/moment.ts';
import { type Heard, Session } from '../../session.ts';
import type { Station } from '../../stations/station.ts';
import { type Beside, type Drawer, Layout, wordsOf } from './frame.ts';
import type { Cue, Picture, Sheet, Sound } from './picture.ts';

/** A film's script: at each yield one picture is taken of what its session shows then. */
export type Script = Generator<void, void, void>;

/** How a film is taken. */
export interface FilmLook {
  readonly draw: Drawer;
  readonly on: Sheet;
  /** Pictures a second. */
  readonly rate: number;
  /** What is said stands in the picture too. */
  readonly inPicture: boolean;
}

/** What of a moment a film does not take along: hands, the pedal, the wall, a zoom, the page's own slow motion and sound. */
export function filmed(m: Moment): Moment {
  const { view } = m;
  return {
    ...m,
    pedal: 0,
    follows: false,
    hands: { ...m.hands, hold: null },
    view: { ...view, slow: 1, sound: false, wall: false },
  };
}

/**
 * A film of the bench, picture by picture. It has a session of its own, that is told each time how much later the
 * next picture is: picture n is of n/rate seconds, however long it took to make. So the same moment gives the
 * same pictures, clicks and words each time.
 */
export class Film {
  readonly session: Session;
  readonly station: Station;
  readonly title: string;
  readonly rate: number;
  readonly cues: Cue[] = [];
  readonly sounds: Sound[] = [];
  /** So many times slower than the session's own pace, so that what is said can be read. */
  slow = 1;
  /** How time runs, where it is not the session's pace. */
  speed: string | null = null;
  /** Figures told in the foot, where they are not the station's. */
  figures: (() => readonly string[]) | null = null;
  /** What asks for a picture's time, as a lesson's hand does; ms. */
  ask: ((now: number) => void) | null = null;
  /** Words are in the picture too. */
  readonly #inPicture: boolean;
  readonly #layout: Layout;
  readonly #sheet: Sheet;
  #last: Picture | null = null;
  #beside: Beside | null = null;
  #taken = 0;
  #held = false;
  #told: { at: number; figures: readonly string[] } = { at: Number.NEGATIVE_INFINITY, figures: [] };
  #saying: { from: number; text: string } | null = null;

  constructor(moment: Moment, station: Station, what: string, look: FilmLook) {
    // What a station lays over the stage as text of the page is not in a film: the brake has the whole stage.
    const { beside: _share, besideIs: _name, ...plain } = station;
    this.station = plain;
    const { draw, inPicture, on: sheet, rate } = look;
    this.rate = rate;
    this.#sheet = sheet;
    this.#inPicture = inPicture;
    this.#layout = new Layout(draw, sheet, rate);
    const session = new Session(begin(filmed(moment)), false);
    this.session = session;
    this.title = `${what} · ${benchTitle(session.moment)}`;
    session.watches = () => (plain.shown?.(session) ?? null) === null;
    session.acts = (press) => plain.acts?.(session, press) ?? press;
    session.addEventListener('click', (e) => this.#hear((e as CustomEvent<Heard>).detail));
  }

  /** Time of the picture that is taken next, s. */
  get now(): number {
    return this.#taken / this.rate;
  }
  /** Pictures taken so far. */
  get taken(): number {
    return this.#taken;
  }

  #hear({ ago, energy, timbre }: Heard): void {
    if (timbre) this.sounds.push({ at: Math.max(0, this.now - ago * this.slow), timbre, energy });
  }

  /** Says something from the next picture on; empty: nothing more. */
  say(text: string): void {
    const { now } = this;
    const was = this.#saying;
    if (was?.text === text) return;
    if (was && now > was.from) this.cues.push({ from: was.from, to: now, text: was.text });
    this.#saying = text === '' ? null : { from: now, text };
  }

  /** The session goes on by a picture. */
  advance(): void {
    this.session.frame(1 / (this.rate * this.slow));
    this.ask?.(((this.#taken + 1) * 1000) / this.rate);
  }

  /** The session goes on for so long, s. */
  *go(seconds: number): Script {
    for (let n = Math.round(seconds * this.rate); n > 0; n--) {
      this.advance();
      yield;
    }
  }

  /** The last picture stands for so long, s. */
  *hold(seconds: number): Script {
    this.#held = this.#taken > 0;
    for (let n = Math.round(seconds * this.rate); n > 0; n--) yield;
    this.#held = false;
  }

  /** The pictures of a script, each with its number; null: the one before stands on. */
  *pictures(script: Script): Generator<Picture | null, void, void> {
    while (!script.next().done) {
      yield this.#held ? this.#same() : this.#picture();
      this.#taken += 1;
    }
    this.say('');
  }

  get #said(): string | null {
    return this.#inPicture ? (this.#saying?.text ?? '') : null;
  }

  #picture(): Picture {
    const { now, session, station, title } = this;
    // As on the page ten times a second, so that they can be read.
    if (now - this.#told.at >= 0.099) this.#told = { at: now, figures: this.#figures() };
    const { figures } = this.#told;
    this.#beside = { title, speed: this.#speed(), figures, said: this.#said };
    this.#last = this.#layout.picture(session, station, this.#beside);
    return this.#last;
  }

  /** The last picture, with what is said now; null: nothing of it is another. */
  #same(): Picture | null {
    const [last, beside] = [this.#last, this.#beside];
    if (!last || !beside || beside.said === this.#said) return null;
    this.#beside = { ...beside, said: this.#said };
    this.#last = { ...last, words: wordsOf(this.#beside, this.#sheet) };
    return this.#last;
  }

  #speed(): string {
    const { layers, paceNow } = this.session;
    const magnification = fanFactor(this.session);
    const time = this.speed ?? texts.time(paceName(paceNow * this.slow));
    const gaps = layers.fan && magnification > 1 ? texts.gaps(magnification) : '';
    return `${time}${gaps}`;
  }

  #figures(): readonly string[] {
    if (this.figures) return this.figures();
    const { session, station } = this;
    const keys = station.wall?.readings ?? [];
    const instant = station.shown?.(session) ?? session.instant();
    const all = session.readings(instant);
    return keys.slice(0, 3).flatMap((key) => {
      const r = all.find((x) => x.key === key);
      return r ? [`${r.name} ${number(r.value, r.digits)}${r.unit ? ` ${r.unit}` : ''}`] : [];
    });
  }
}
