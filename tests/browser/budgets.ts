import type { StationId } from '../../ui/record/moment.ts';

/**
 * What the page may take: sizes and counts, never times. Each bound stands a little over what was measured on
 * 2026-11-29 (`npm run budgets` prints both). Who goes over one has something to look at first: what came in
 * with what was meant?
 */

/** What a station may take at 1366 × 768 as it opens. */
export interface Budget {
  /** Packed scripts that come before it is shown, beside those of the first station, kB. */
  readonly scripts: number;
  /** Elements of the page, those within its parts too. */
  readonly elements: number;
  /** Listeners of the page, as the browser counts them. */
  readonly listeners: number;
  /** Fills, strokes and pictures by which the whole stage is painted anew. */
  readonly strokes: number;
}

const may = (scripts: number, elements: number, listeners: number, strokes: number): Budget => ({
  scripts,
  elements,
  listeners,
  strokes,
});

/** A station that is left out does not compile. */
export const ofStations: Readonly<Record<StationId, Budget>> = {
  apply: may(228, 410, 155, 260),
  wear: may(44, 440, 170, 370),
  'drum-off': may(20, 490, 150, 260),
  park: may(16, 520, 165, 270),
  inspect: may(102, 900, 310, 300),
  'new-shoes': may(14, 480, 165, 245),
  faults: may(22, 390, 145, 260),
  own: may(116, 330, 145, 250),
  questions: may(84, 950, 255, 250),
  start: may(5, 440, 145, 250),
  ask: may(94, 360, 145, 250),
  see: may(34, 710, 310, 250),
  kind: may(8, 500, 150, 250),
  lessons: may(86, 390, 160, 250),
  vary: may(44, 470, 185, 265),
  order: may(24, 410, 165, 250),
  compare: may(17, 400, 145, 440),
  apart: may(9, 340, 140, 50),
};

/** Packed scripts that a dialog asks for when it is opened first, by its name, kB; and its elements. */
export const ofDialogs: Readonly<
  Record<string, { readonly scripts: number; readonly elements: number }>
> = {
  'All readings': { scripts: 41, elements: 1350 },
  Bench: { scripts: 7, elements: 75 },
  Keys: { scripts: 4, elements: 145 },
  'Take away': { scripts: 16, elements: 85 },
};

/** All scripts that come by themselves, until the page would open every station without a network, kB packed. */
export const WHOLE = 690;
/** Calls by which a graphics card paints the whole stage of the first station anew. */
export const CARD_CALLS = 175;
/** Letters in the browser's storage after all stations, a life to its limit and the way back of both. */
export const KEPT = 10_500;
