import { BAR, KM, type LifeRow } from '../../../sim/index.ts';
import { awayClipScripts as texts } from '../../../sim/words/en.ts';
import { wordsOf } from '../../adjusters.ts';
import type { Phase } from '../../click-show.ts';
import { down, number } from '../../format.ts';
import { pressSays } from '../../pieces/press-panel.ts';
import { clicked } from '../../record/bench.ts';
import type { Climb } from '../../shown-press.ts';
import { DrumDesk } from '../../stations/drum-off/desk.ts';
import { attempt } from '../../stations/drum-off/part.ts';
import { deskOf } from '../../stations/station.ts';
import { readable } from './cues.ts';
import type { Film, Script } from './film.ts';

/** What the films of the bench show: a press, ten clicks, a life, a pull. */

/** Before something begins, and after it has ended, s. */
export const LEAD = 0.6;
const TAIL = 0.4;
/** A press of a brake whose steps are too small to be shown: held so long, s, at so many bar. */
const PRESS = { held: 1.2, bar: 40, up: 1.5 };
/** The way from one click to the next is shown in this, s. */
const WAY = 0.9;
/** A life is shown in this, s. */
export const LIFE = 12;

/** What a stage of a press is called where there is time for few words. */
function saysShort(film: Film, climb: Climb, phase: Phase): string {
  const short: Partial<Record<Phase, string>> = {
    rest: texts.thePedalGoesDown,
    out: texts.theShoesGoOut,
    climb: texts.theLeverClimbsItsTooth,
    drop: texts.overTheCrestItDrops,
    ...(climb.clicks ? { release: texts.letGoTheStrutIs } : {}),
  };
  return short[phase] ?? pressSays(film.session, climb);
}

/** A press that is shown as the page shows one, at the paces of the page. */
function* shown(film: Film, lead: number, before = film.session.state): Script {
  film.session.show.begin(before, false);
  yield;
  yield* film.hold(lead);
  for (;;) {
    film.advance();
    if (!film.session.showing) return;
    yield;
  }
}

/** The same with each stage told, and so much slower, by whole numbers, that what is said can be read. */
function* told(film: Film): Script {
  const { session } = film;
  session.show.begin(session.state, false);
  // A stage is told once, as it begins; how far a tooth is climbed is told as it falls back.
  let last = '';
  const tell = (): void => {
    const { climb } = session;
    const { pace, phase } = climb;
    if (phase === null || phase === last || phase === 'held') return;
    last = phase;
    const text = saysShort(film, climb, phase);
    film.say(text);
    // What it begins with is read before the pedal moves.
    if (phase === 'rest') return;
    const times = Math.ceil(readable(text) / Math.max(1e-3, session.show.stageLasts));
    // The pedal's way up is shown twice as fast as it is: two times slower is its own pace.
    film.slow = pace < 1 ? 2 * Math.ceil(times / 2) : times;
  };
  tell();
  yield;
  yield* film.hold(readable(''));
  for (;;) {
    film.advance();
    if (!session.showing) break;
    tell();
    yield;
  }
  film.slow = 1;
}

/** One press of the brake as it stands. */
export function* press(film: Film): Script {
  const { session } = film;
  film.figures = () => pressFigures(film);
  if (wordsOf(session.brake).timbre) {
    yield* told(film);
    yield* film.hold(TAIL);
    return;
  }
  yield* film.go(LEAD);
  film.say(texts.thePedalGoesDownTo(PRESS.bar));
  session.pressTo(PRESS.bar);
  // Where shoes move fast time is slowed, and the press takes longer.
  while (Math.abs(session.pressure - PRESS.bar * BAR) > 1e-6 && film.now < 20) yield* film.go(0.1);
  yield* film.go(PRESS.held);
  film.say(texts.thePedalIsLetGo);
  session.release();
  while (session.pressure > 1e-6 && film.now < 40) yield* film.go(0.1);
  yield* film.go(PRESS.up);
}

/**
 * The next clicks of its life, each pressed once more and shown; on the way the linings wear.
 *
 * @param rows of the life from the state that the film begins with
 */
export function* clicks(film: Film, rows: readonly LifeRow[], most: number): Script {
  const { session } = film;
  const ends = rows.flatMap((row, i) => (row.at === 'after click' ? [i] : [])).slice(0, most);
  film.figures = () => (session.showing ? pressFigures(film) : lifeFigures(film));
  yield* film.hold(LEAD);
  let from = 0;
  for (const [n, end] of ends.entries()) {
    film.speed = null;
    const last = rows[end] as LifeRow;
    film.say(texts.clickOfWornOnThen(n + 1, ends.length));
    const pictures = Math.round(WAY * film.rate);
    for (let k = 1; k <= pictures; k++) {
      const at = from + Math.floor(((end - 1 - from) * k) / pictures);
      const row = rows[Math.max(from, at)] as LifeRow;
      film.speed = texts.of1SIsKm(
        number((last.distance - (rows[from] as LifeRow).distance) / WAY / KM, 0),
      );
      session.amend(clicked, row.state);
      film.advance();
      yield;
    }
    film.speed = null;
    yield* shown(film, 0, { ...last.state, tooth: last.state.tooth - 1 });
    session.amend(clicked, last.state);
    from = end;
  }
  film.advance();
  yield;
  yield* film.hold(TAIL);
}

/** What a driven brake is told by: way, tooth, linings. */
function lifeFigures({ session }: Film): readonly string[] {
  const { state } = session;
  const all = session.readings(session.instant());
  const told = (['front', 'rear'] as const).flatMap((side) => {
    const r = all.find((x) => x.key === (side === 'front' ? 'liningFront' : 'liningRear'));
    return r ? [texts.lining(side, number(down(r.value, r.digits), r.digits), r.unit)] : [];
  });
  return [texts.kmTooth(number(state.distance / KM, 0), number(state.tooth, 0)), ...told];
}

/** What a press is told by: pressure, how far the shoes part of what the next tooth takes, tooth. */
function pressFigures({ session }: Film): readonly string[] {
  const { needed, there, tooth } = session.climb;
  const bar = session.instant().pressure / BAR;
  const next = Number.isFinite(needed) ? texts.ofMm(number(needed, 2)) : ' mm';
  return [
    texts.pressureBar(number(bar, 1)),
    texts.shoesApart(number(there, 2), next),
    ...(wordsOf(session.brake).timbre ? [texts.tooth(number(tooth, 0))] : []),
  ];
}

/**
 * A whole life in twelve seconds, as far a second from beginning to end.
 *
 * @param rows of the life from new to its end
 */
export function* life(film: Film, rows: readonly LifeRow[]): Script {
  const { session } = film;
  const [first, last] = [rows[0] as LifeRow, rows.at(-1) as LifeRow];
  const far = last.distance - first.distance;
  film.speed = texts.of1SIsKm2(number(far / LIFE / KM, 0));
  film.figures = () => lifeFigures(film);
  film.say(texts.fromNewTheLiningsWear);
  yield* film.hold(LEAD);
  const start = film.now;
  let at = 0;
  for (let n = Math.round(LIFE * film.rate); n > 0; n--) {
    const end = first.distance + (far * (film.now - start)) / LIFE;
    const before = at;
    while (at + 1 < rows.length && (rows[at + 1] as LifeRow).distance <= end + 1e-6) at += 1;
    if (at !== before) session.amend(clicked, (rows[at] as LifeRow).state);
    film.advance();
    for (const row of rows.slice(before + 1, at + 1)) {
      if (row.at !== 'after click') continue;
      const hit = start + ((row.distance - first.distance) / far) * LIFE;
      session.tellClick(undefined, film.now - hit);
    }
    yield;
  }
  if (at < rows.length - 1) session.amend(clicked, last.state);
  const end = texts.end;
  film.say(end);
  yield* film.go(2 / film.rate);
  yield* film.hold(readable(end));
}

/** The drum is pulled straight: what holds it, or that it comes. */
export function* pull(film: Film): Script {
  const { session } = film;
  const desk = deskOf(DrumDesk, session);
  const pulled = texts.pulled;
  const from = film.now;
  film.say(pulled);
  yield* film.go(LEAD);
  session.do(attempt, 'pull');
  while (desk.pulling) yield* film.go(1 / film.rate);
  yield* film.go(Math.max(0, from + readable(pulled) - film.now));
  film.say(desk.found);
  yield* film.go(1.2);
  yield* film.hold(Math.max(0, readable(desk.found) - 1.2));
}
