import type { Brake, LifeRow } from '../../sim/index.ts';
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

export type LaneId = 'clearance' | 'lining' | 'factor' | 'tooth' | 'heat' | 'pedal' | 'drag';

/** Lanes that can be chosen for the last place, with their names. */
export const choices: readonly (readonly [LaneId, string])[] = [
  ['lining', 'Lining'],
  ['factor', 'Brake factor'],
  ['tooth', 'Tooth'],
  ['heat', 'Drum temperature'],
  ['pedal', 'Pedal travel'],
  ['drag', 'Drag, released'],
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
    title: 'Clearance',
    unit: 'mm a shoe',
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
      ...(least < 0 ? [{ at: 0, text: 'drags below 0', colour: 'bad' } as const] : []),
    ],
  };
}

function lining({ shoes }: Brake): Lane {
  const thin = Math.min(shoes.front.lining.thicknessMin, shoes.rear.lining.thicknessMin);
  const thick = Math.max(shoes.front.lining.thicknessNew, shoes.rear.lining.thicknessNew);
  return {
    id: 'lining',
    title: 'Lining',
    unit: 'mm',
    low: Math.max(0, thin - 0.6),
    high: thick + 0.2,
    series: [
      {
        name: 'front',
        value: (r) => r.liningFront,
        colour: 'lead',
        end: (v) => `front ${number(down(v, 1), 1)}`,
      },
      {
        name: 'rear',
        value: (r) => r.liningRear,
        colour: 'trail',
        dash: [9, 4],
        end: (v) => `rear ${number(down(v, 1), 1)}`,
      },
    ],
    limits: [{ at: thin, text: `limit ${number(thin, 1)}`, colour: 'bad' }],
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
        { id, title: 'Brake factor', unit: 'after springs' },
        1,
        (v) => number(v, 2),
      );
    case 'tooth':
      return single(
        rows,
        (r) => r.tooth,
        { id, title: 'Tooth', unit: `of ${brake.adjuster.teeth}` },
        2,
        (v) => number(v, 0),
      );
    case 'heat':
      return single(
        rows,
        (r) => r.temperature,
        { id, title: 'Drum', unit: '°C at the press' },
        20,
        (v) => `${number(v, 0)} °C`,
      );
    case 'pedal':
      return single(
        rows,
        (r) => r.pedalTravel,
        { id, title: 'Pedal', unit: 'mm of travel' },
        4,
        (v) => number(v, 1),
      );
    case 'drag':
      return single(
        rows,
        (r) => r.drag.torque / 1000,
        { id, title: 'Drag', unit: 'N·m turn the cold drum' },
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
