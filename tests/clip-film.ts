import { drawStage } from '../ui/app/stage-drawing.ts';
import type { FilmAsk, FilmKind } from '../ui/away/clip/kinds.ts';
import { type Ready, readyFilm } from '../ui/away/clip/kinds.ts';
import { type Picture, SHEET } from '../ui/away/clip/picture.ts';
import { LifeJob } from '../ui/life-job.ts';
import type { LifeDriver } from '../ui/life-messages.ts';
import { withState } from '../ui/record/bench.ts';
import { plainMoment } from '../ui/record/start.ts';
import { WHOLE } from '../ui/record/view.ts';
import { settle } from '../ui/stage/settle.ts';

/** Films as the page makes them, without its workers: the same pictures as plain data. */

/** The life worker's work at once. */
const atOnce: LifeDriver = {
  start(order, ear) {
    const job = new LifeJob({ run: 1, ...order });
    while (!job.done) ear.news(job.slice(() => false));
  },
  stop() {},
};

const drawer: FilmAsk['draw'] = {
  stage: (session, station, sheet) =>
    drawStage({ session, station, ...sheet, size: 'middle', zoom: WHOLE, bare: true }).drawings,
  settle,
};

export interface Told {
  readonly moment?: FilmAsk['moment'];
  readonly rate?: number;
  readonly inPicture?: boolean;
  /** The brake itself is not drawn: what is asked is told by words, clicks and times. */
  readonly undrawn?: boolean;
}

/** The quay van with a gap of two teeth, whose next press clicks. */
export function aboutToClick(): FilmAsk['moment'] {
  const m = plainMoment('apply', { kind: 'scene', name: 'quay-van' }, 'Just clicked');
  const { state } = m.bench;
  return withState(m, { ...state, tooth: state.tooth - 2 });
}

/** Of `aboutToClick`, unless told otherwise. */
export const filmOf = (kind: FilmKind, told: Told = {}): Promise<Ready> => {
  const { inPicture = false, moment = aboutToClick(), rate = 30, undrawn } = told;
  const draw = undrawn ? { ...drawer, stage: () => [] } : drawer;
  const ask = { kind, moment, rate, inPicture, draw, on: SHEET };
  return readyFilm(ask, new AbortController().signal, atOnce);
};

export const allOf = ({ film, script }: Ready): readonly (Picture | null)[] => [
  ...film.pictures(script),
];
