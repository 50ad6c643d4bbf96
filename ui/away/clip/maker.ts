import { transcriptOf, vttOf } from './cues.ts';
import { faceWithin } from './face.ts';
import type { Film } from './film.ts';
import { type FilmAsk, readyFilm } from './kinds.ts';
import type { Made, Order, Picture } from './picture.ts';
import { type Strip, stripOf } from './strip.ts';
import { FilmRun } from './worker-run.ts';

/** Makes what was asked for: takes the pictures of a film, one message at a time, and hands them to the worker. */

/** What came of it. */
export interface Clip {
  readonly title: string;
  readonly made: Made;
  readonly pictures: number;
  readonly rate: number;
  /** s */
  readonly lasts: number;
  /** WebVTT, and the same as a plain text; empty where nothing is said. */
  readonly captions: string;
  readonly transcript: string;
  /** A strip as a drawing, beside its pixels. */
  readonly svg: string | null;
}

export interface ClipAsk extends FilmAsk, Omit<Order, 'title'> {
  /** Lines of the transcript's head: what it is of, and where it can be had again. */
  readonly head: readonly string[];
}

/** Pictures that the worker may have waiting. */
const AHEAD = 2;

/**
 * @param told share of it that is done, 0 to 1
 * @param quit stops it, at once
 */
export async function makeClip(
  ask: ClipAsk,
  told: (share: number) => void,
  quit: AbortSignal,
): Promise<Clip> {
  const { film, lasts, script } = await readyFilm(ask, quit);
  quit.throwIfAborted();
  const run = new FilmRun(quit);
  try {
    const { file, height, rate, sheet, theme, width } = ask;
    await run.begin({ file, height, rate, sheet, theme, title: film.title, width });
    const strip = file === 'strip' ? stripOf([...film.pictures(script)]) : null;
    const shown: Iterable<Picture | null> = strip ? strip.pictures : film.pictures(script);
    const all = strip ? strip.pictures.length : Math.max(1, lasts * rate);
    for (const picture of shown) {
      await run.add(picture, AHEAD);
      told(Math.min(0.99, run.painted / all));
    }
    return await finished(ask, film, run, strip);
  } finally {
    run.end();
  }
}

async function finished(
  ask: ClipAsk,
  film: Film,
  run: FilmRun,
  strip: Strip | null,
): Promise<Clip> {
  const { cues, now, sounds, taken, title } = film;
  const captions = vttOf(cues, sounds, now);
  const made = await run.finish(sounds, captions);
  return {
    title,
    made,
    pictures: strip?.pictures.length ?? taken,
    rate: ask.rate,
    lasts: now,
    captions,
    transcript: transcriptOf([title, ...ask.head], cues, sounds, now),
    svg: strip ? strip.svg(title, ask.head, await faceWithin()) : null,
  };
}
