import { type Brake, KM, type LifeRow } from '../../sim/index.ts';
import { labelWords, plotLanes as texts } from '../../sim/words/en.ts';
import { wordsOf } from '../adjusters.ts';
import { down, number } from '../format.ts';
import type { Token } from '../theme.ts';

/** The lanes of the chart strip: what each shows of a run, free of any painter. */

interface Series {
  readonly name: string;
  readonly value: (row: LifeRow) => number;
  readonly colour: Token;
  readonly dash?: readonly number[];
  /** Words at the curve's end: a lining is rounded down, never towards good. */
  readonly end: (value: number) => string;
}

export interface Lane {
  readonly id: LaneId;
  readonly title: string;
  readonly unit: string;
  readonly low: number;
  readonly high: number;
  readonly series: readonly Series[];
  /** Dashed lines with their words. */
  readonly limits: readonly {
    readonly at: number;
    readonly text: string;
    readonly colour: Token;
  }[];
}

/** A kept moment as far as a row of a life tells it: where it was kept has no life of its own. */
export type KeptRow = Pick<
  LifeRow,
  'distance' | 'clearance' | 'liningFront' | 'liningRear' | 'tooth' | 'temperature'
>;

/** What a lane shows of a kept moment: the values of its curves; none where one moment alone does not tell them. */
export function keptOf(id: LaneId, kept: KeptRow | null): readonly number[] {
  if (!kept) return [];
  const all = {
    clearance: [kept.clearance],
    lining: [kept.liningFront, kept.liningRear],
    tooth: [kept.tooth],
    heat: [kept.temperature],
    // These hang on the press of the road.
    factor: [],
    pedal: [],
    drag: [],
  } as const satisfies Readonly<Record<LaneId, readonly number[]>>;
  return all[id].filter(Number.isFinite);
}

/** The lane, high enough for a kept moment too. */
export function reaching(lane: Lane, kept: readonly number[]): Lane {
  if (kept.length === 0) return lane;
  const room = 0.06 * (lane.high - lane.low);
  return {
    ...lane,
    low: Math.min(lane.low, ...kept.map((x) => x - room)),
    high: Math.max(lane.high, ...kept.map((x) => x + room)),
  };
}

/** The kept moment beside the one that is shown, in words. */
export const keptText = (kept: KeptRow | null): string =>
  kept
    ? texts.keptAsAGhostKm(
        number(kept.distance / KM, 0),
        number(kept.clearance, 2),
        number(down(kept.liningFront, 1), 1),
        number(down(kept.liningRear, 1), 1),
        kept.tooth,
      )
    : '';

export type LaneId = 'clearance' | 'lining' | 'factor' | 'tooth' | 'heat' | 'pedal' | 'drag';

/** Lanes that can be chosen for the last place, with their names. */
export const choices: readonly (readonly [LaneId, string])[] = [
  ['lining', labelWords.lining],
  ['factor', texts.brakeFactor],
  ['tooth', labelWords.tooth],
  ['heat', texts.drumTemperature],
  ['pedal', texts.pedalTravel],
  ['drag', texts.dragReleased],
];

const span = (rows: readonly LifeRow[], of: (row: LifeRow) => number): [number, number] => {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const row of rows) {
    const value = of(row);
    if (!Number.isFinite(value)) continue;
    low = Math.min(low, value);
    high = Math.max(high, value);
  }
  return low <= high ? [low, high] : [0, 1];
};

function clearance(brake: Brake, rows: readonly LifeRow[]): Lane {
  const step = wordsOf(brake).next;
  const [least, most] = span(rows, (r) => r.clearance);
  // Clearance at which the next tooth drops in: read off the run itself, before its clicks.
  const [, next] = span(
    rows.filter((r) => r.at === 'before click'),
    (r) => r.clearance,
  );
  const clicked = rows.some((r) => r.at === 'before click');
  return {
    id: 'clearance',
    title: texts.clearance,
    unit: texts.mmAShoe,
    low: Math.min(0.25, least) * (least < 0 ? 1.4 : 0.72),
    high: Math.max(0.45, most) * 1.08,
    series: [
      {
        name: 'clearance',
        value: (r) => r.clearance,
        colour: 'ink',
        end: (v) => number(v, 2),
      },
    ],
    limits: [
      ...(clicked
        ? [{ at: next, text: `${step} ${number(next, 2)}`, colour: 'adj' } as const]
        : []),
      ...(least < 0 ? [{ at: 0, text: texts.dragsBelow0, colour: 'bad' } as const] : []),
    ],
  };
}

function lining({ shoes }: Brake): Lane {
  const thin = Math.min(shoes.front.lining.thicknessMin, shoes.rear.lining.thicknessMin);
  const thick = Math.max(shoes.front.lining.thicknessNew, shoes.rear.lining.thicknessNew);
  return {
    id: 'lining',
    title: texts.lining,
    unit: 'mm',
    low: Math.max(0, thin - 0.6),
    high: thick + 0.2,
    series: [
      {
        name: 'front',
        value: (r) => r.liningFront,
        colour: 'lead',
        end: (v) => texts.front(number(down(v, 1), 1)),
      },
      {
        name: 'rear',
        value: (r) => r.liningRear,
        colour: 'trail',
        dash: [9, 4],
        end: (v) => texts.rear(number(down(v, 1), 1)),
      },
    ],
    limits: [{ at: thin, text: texts.limit(number(thin, 1)), colour: 'bad' }],
  };
}

function single(
  rows: readonly LifeRow[],
  of: (row: LifeRow) => number,
  lane: Pick<Lane, 'id' | 'title' | 'unit'>,
  least: number,
  end: (value: number) => string,
): Lane {
  const [low, high] = span(rows, of);
  const middle = (low + high) / 2;
  const half = Math.max((high - low) * 0.6, least / 2);
  return {
    ...lane,
    low: middle - half,
    high: middle + half,
    series: [{ name: lane.id, value: of, colour: 'ink', end }],
    limits: [],
  };
}

/** A lane over the rows of a run. */
export function laneOf(id: LaneId, brake: Brake, rows: readonly LifeRow[]): Lane {
  switch (id) {
    case 'clearance':
      return clearance(brake, rows);
    case 'lining':
      return lining(brake);
    case 'factor':
      return single(
        rows,
        // Where the strut pushes the linings onto the drum, drag over the pistons' push tells nothing.
        (r) => (r.clearance > 0 ? r.brakeFactor : Number.NaN),
        { id, title: texts.brakeFactor, unit: texts.afterSprings },
        1,
        (v) => number(v, 2),
      );
    case 'tooth':
      return single(
        rows,
        (r) => r.tooth,
        { id, title: labelWords.tooth, unit: texts.of(brake.adjuster.teeth) },
        2,
        (v) => number(v, 0),
      );
    case 'heat':
      return single(
        rows,
        (r) => r.temperature,
        { id, title: labelWords.drum, unit: texts.cAtThePress },
        20,
        (v) => `${number(v, 0)} °C`,
      );
    case 'pedal':
      return single(
        rows,
        (r) => r.pedalTravel,
        { id, title: labelWords.pedal, unit: texts.mmOfTravel },
        4,
        (v) => number(v, 1),
      );
    case 'drag':
      return single(
        rows,
        (r) => r.drag.torque / 1000,
        { id, title: texts.drag, unit: texts.nMTurnTheCold },
        10,
        (v) => `${number(v, 0)} N·m`,
      );
  }
}

/** End of the axis, km: what was driven, with room ahead, in round steps. */
export function axisEnd(km: number): number {
  const steps = [1000, 2000, 5000, 10000, 20000, 45000, 65000, 100000];
  return steps.find((s) => km <= s * 0.93) ?? Math.ceil(km / 50000 + 0.2) * 50000;
}

/** Start of the axis, km: new, or, for a run that begins late, a round step before it. */
export const axisStart = (km: number): number => (km < 2000 ? 0 : Math.floor(km / 5000) * 5000);

/** The row that stands at a distance (mm): the last one not beyond it. */
export function rowAt(rows: readonly LifeRow[], distance: number): number {
  let low = 0;
  let high = rows.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((rows[middle] as LifeRow).distance <= distance) low = middle;
    else high = middle - 1;
  }
  return low;
}

/** The row that a place on the chart means: the nearest one to a distance (mm). */
export function nearestRow(rows: readonly LifeRow[], distance: number): number {
  const at = rowAt(rows, distance);
  const here = rows[at];
  const next = rows[at + 1];
  if (!here || !next) return at;
  return next.distance - distance < distance - here.distance ? at + 1 : at;
}
