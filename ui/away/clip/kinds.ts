import { freshState, type LifeRow } from '../../../sim/index.ts';
import { awayClipKinds as words } from '../../../sim/words/en.ts';
import { wordsOf } from '../../adjusters.ts';
import { bringSlow } from '../../brought.ts';
import type { Lesson } from '../../lessons/format.ts';
import { lessonNamed, shipped } from '../../lessons/library.ts';
import { progressOf } from '../../lessons/wants.ts';
import type { LifeDriver } from '../../life-messages.ts';
import { LifeRun } from '../../life-run.ts';
import { withState } from '../../record/bench.ts';
import { brakeOf, isBending } from '../../record/derive.ts';
import { NO_HANDS } from '../../record/hands.ts';
import type { Moment, StationId } from '../../record/moment.ts';
import { withLayers } from '../../record/parts.ts';
import { dutyOn } from '../../record/road.ts';
import { stationOf } from '../../stations/index.ts';
import { lessonOf } from '../../stations/lessons/part.ts';
import { Film, type FilmLook, type Script } from './film.ts';
import { lessonStep, talk } from './lesson-scripts.ts';
import { clicks, LIFE, life, press, pull } from './scripts.ts';

/** What can be filmed. */
export const filmKinds = ['press', 'clicks', 'life', 'pull', 'step', 'talk'] as const;
export type FilmKind = (typeof filmKinds)[number];

/** Clicks of a film of clicks. */
export const CLICKS = 10;
/** A row of a life is told so often, mm driven; of one that fills twelve seconds there are some hundred. */
const ROW = 50e6;

/** A film that is about to be taken, and about how long it will be, s. */
export interface Ready {
  readonly film: Film;
  readonly script: Script;
  readonly lasts: number;
}

export interface FilmAsk extends FilmLook {
  readonly kind: FilmKind;
  readonly moment: Moment;
}

/** The talk of a film: the one that is open, or the page's own. */
export function talkOf(m: Moment): Lesson | null {
  const open = lessonNamed(m, lessonOf(m) ?? '');
  return open?.kind === 'talk' ? open : (shipped.find((l) => l.kind === 'talk') ?? null);
}

/** The open step of an open lesson. */
export function stepOf(m: Moment): { readonly lesson: Lesson; readonly at: number } | null {
  const lesson = lessonNamed(m, lessonOf(m) ?? '');
  if (!lesson || lesson.kind === 'talk') return null;
  const at = progressOf(m, lesson.name).step;
  return at < lesson.steps.length ? { lesson, at } : null;
}

/** Why it cannot be filmed now, in a sentence; null: it can. */
export function whyNot(kind: FilmKind, m: Moment): string | null {
  if (kind === 'step' && !stepOf(m)) return words.openALessonFirstIts;
  if (kind === 'clicks' && !wordsOf(brakeOf(m)).timbre) {
    return words.thisAdjusterGoesInSteps;
  }
  return null;
}

/** The rows of a life from a state to its end, driven in a worker. */
function driven(m: Moment, driver: LifeDriver, quit: AbortSignal): Promise<readonly LifeRow[]> {
  const brake = brakeOf(m);
  const rows: LifeRow[] = [];
  const order = {
    brake,
    bending: isBending(brake),
    state: m.bench.state,
    duty: dutyOn(brake, m.parts.wear.road),
    options: { rowEvery: ROW, stopAtLimit: true },
  };
  return new Promise((resolve, reject) => {
    quit.addEventListener('abort', () => {
      driver.stop();
      reject(quit.reason);
    });
    driver.start(order, {
      news: (news) => {
        rows.push(...news.rows);
        if (news.end) resolve(rows);
      },
      trouble: ({ kind, message }) => {
        if (kind !== 'silent') reject(new Error(message || 'The life run broke off.'));
      },
    });
  });
}

/** The bench at a station, looked at through the loupe where its adjuster is seen best there. */
function benchAt(m: Moment, station: StationId): Moment {
  const here = { ...m, station, hands: NO_HANDS };
  return station === 'apply' ? withLayers(here, { loupe: true, edge: false, names: false }) : here;
}

/**
 * Gets a film ready.
 *
 * @param driver drives lives; the page's worker unless told
 */
export async function readyFilm(
  { kind, moment, ...look }: FilmAsk,
  quit: AbortSignal,
  driver: LifeDriver = new LifeRun(),
): Promise<Ready> {
  await bringSlow();
  const id: StationId =
    kind === 'pull' ? 'drum-off' : kind === 'talk' || kind === 'step' ? 'lessons' : 'apply';
  const station = await stationOf(id).load();
  const film = (m: Moment, what: string): Film => new Film(m, station, what, look);
  const here = benchAt(moment, id);
  switch (kind) {
    case 'press': {
      const made = film(here, words.aPress);
      return { film: made, script: press(made), lasts: 4 };
    }
    case 'clicks': {
      const fresh = withState(here, freshState(brakeOf(here)));
      const count = (of: readonly LifeRow[]): number =>
        of.filter((r) => r.at === 'after click').length;
      let [from, rows] = [here, await driven(here, driver, quit)];
      // A worn brake has not so many left: they are those of a new one then.
      const worn = count(rows) < CLICKS;
      if (worn) [from, rows] = [fresh, await driven(fresh, driver, quit)];
      const n = Math.min(CLICKS, count(rows));
      if (n === 0) throw new Error('No click comes before its limit: there is nothing to film.');
      const many = n === CLICKS ? words.tenClicks : n === 1 ? words.theOnlyClick : words.clicks(n);
      const made = film(from, `${many}${worn ? words.fromNew : ''}`);
      return { film: made, script: clicks(made, rows, n), lasts: n * 2 + 2 };
    }
    case 'life': {
      const fresh = withState(here, freshState(brakeOf(here)));
      const rows = await driven(fresh, driver, quit);
      const made = film(fresh, words.aLifeInTwelveSeconds);
      return { film: made, script: life(made, rows), lasts: LIFE + 2.7 };
    }
    case 'pull': {
      const made = film(here, words.aPullAtTheDrum);
      return { film: made, script: pull(made), lasts: 4.6 };
    }
    case 'step': {
      const open = stepOf(moment);
      if (!open) throw new Error('Open a lesson first: its open step is filmed.');
      const { at, lesson } = open;
      const made = film(here, lesson.steps[at]?.title ?? words.step(lesson.title, at + 1));
      return { film: made, script: lessonStep(made, lesson, at), lasts: 40 };
    }
    case 'talk': {
      const lesson = talkOf(moment);
      if (!lesson) throw new Error('There is no talk.');
      const made = film(here, lesson.title);
      const lasts = lesson.steps.reduce((sum, s) => sum + (s.seconds ?? 0), 1);
      return { film: made, script: talk(made, lesson), lasts };
    }
  }
}
