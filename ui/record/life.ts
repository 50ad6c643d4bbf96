import * as v from 'valibot';
import type { BrakeState } from '../../sim/index.ts';
import { recordLife as words } from '../../sim/words/en.ts';
import { type Road, roadSchema } from './road.ts';
import { stateSchema } from './state.ts';

/**
 * The life driven so far as what it was driven by: where it began, and leg by leg what was done. Its
 * rows and events are derived (`LifeBook`): driven again, they come out to the same bits.
 */
export interface LifeRecord {
  /** The brake as the life began: row 0. */
  readonly start: BrakeState;
  readonly legs: readonly Leg[];
  /** Number of the row that the stage shows. */
  readonly at: number;
  /**
   * The brake on the bench is that row's, bit for bit. False: it is as right after one of several
   * events there, or colder, or its cable is set otherwise.
   */
  readonly onRow: boolean;
}

export type Leg = DriveLeg | ClickLeg | HotLeg;

/** What a stretch is driven by. It stays the same object while its leg is driven or cut: rows are kept for it. */
export interface Stretch {
  /** State it begins from; null: that of the last row before it. */
  readonly from: BrakeState | null;
  readonly road: Road;
  /** Distance of two rows, mm. */
  readonly rowEvery: number;
  /** To this distance from new, mm; null: as far as a limit. */
  readonly distance: number | null;
  readonly toNextClick: boolean;
  readonly stopAtLimit: boolean;
}

/** A stretch, as far as it was driven. */
export interface DriveLeg {
  readonly kind: 'drive';
  readonly stretch: Stretch;
  /** Rows that it has given so far, or was cut to. */
  readonly rows: number;
}

/** A tooth that the pedal, or a hand, set: one row. */
export interface ClickLeg {
  readonly kind: 'click';
  readonly state: BrakeState;
}

/** Down a hill, one press at its foot, and a cold morning. */
export interface HotLeg {
  readonly kind: 'hot';
  readonly from: BrakeState;
  /** Number of the hill. */
  readonly hill: number;
  /** 1 when the adjuster stepped. */
  readonly rows: number;
}

export const begun = (start: BrakeState): LifeRecord => ({
  start,
  legs: [],
  at: 0,
  onRow: true,
});

/** Most legs of a life, and most rows of one leg. */
const MOST_LEGS = 1000;
const MOST_ROWS = 20000;
/** A life with more rows than this takes no further leg. */
const FULL = 20000;

const rowsOf = (leg: Leg): number => (leg.kind === 'click' ? 1 : leg.rows);

/** Rows of a life, the start's among them. */
export const countRows = ({ legs }: LifeRecord): number =>
  legs.reduce((sum, leg) => sum + rowsOf(leg), 1);

/** The life without what came after the row that is shown. */
export function cut(life: LifeRecord): LifeRecord {
  const legs: Leg[] = [];
  let left = life.at;
  for (const leg of life.legs) {
    if (left <= 0) break;
    legs.push(leg.kind === 'drive' && leg.rows > left ? { ...leg, rows: left } : leg);
    left -= rowsOf(leg);
  }
  return { ...life, legs };
}

/**
 * The life from the row that is shown on with one more leg. One that is full begins anew at the state.
 *
 * @param at row that is then shown
 */
function withLeg(life: LifeRecord, state: BrakeState, leg: Leg, rows: number): LifeRecord {
  const before = cut(life);
  const full = before.legs.length >= MOST_LEGS || countRows(before) > FULL;
  const { start, legs, at } = full ? begun(state) : before;
  return { start, legs: [...legs, leg], at: at + rows, onRow: true };
}

/** The life with a tooth set by hand or pedal. */
export const withClick = (life: LifeRecord, state: BrakeState): LifeRecord =>
  withLeg(life, state, { kind: 'click', state }, 1);

/** The life with a stretch to be driven from where it is shown; it has no rows yet. */
export function withStretch(
  life: LifeRecord,
  state: BrakeState,
  stretch: Omit<Stretch, 'from'>,
): LifeRecord {
  const from = life.onRow ? null : state;
  const next = withLeg(life, state, { kind: 'drive', stretch: { from, ...stretch }, rows: 0 }, 0);
  return { ...next, onRow: life.onRow };
}

/** The life with a hot press; `stepped`: it has a row of its own. */
export function withHot(
  life: LifeRecord,
  from: BrakeState,
  hill: number,
  stepped: boolean,
): LifeRecord {
  const rows = stepped ? 1 : 0;
  return { ...withLeg(life, from, { kind: 'hot', from, hill, rows }, rows), onRow: stepped };
}

/** The stretch that a life ends with; null when it ends with something else. */
export function lastStretch({ legs }: LifeRecord): Stretch | null {
  const last = legs.at(-1);
  return last?.kind === 'drive' ? last.stretch : null;
}

const index = v.pipe(v.number(), v.integer(), v.minValue(0));
const within = (low: number, high: number) => v.pipe(v.number(), v.minValue(low), v.maxValue(high));

const leg: v.GenericSchema<unknown, Leg> = v.variant('kind', [
  v.strictObject({
    kind: v.literal('drive'),
    stretch: v.strictObject({
      from: v.nullable(stateSchema),
      road: roadSchema,
      rowEvery: within(1e6, 1e10),
      distance: v.nullable(within(0, 2e13)),
      toNextClick: v.boolean(),
      stopAtLimit: v.boolean(),
    }),
    rows: v.pipe(index, v.maxValue(MOST_ROWS)),
  }),
  v.strictObject({ kind: v.literal('click'), state: stateSchema }),
  v.strictObject({
    kind: v.literal('hot'),
    from: stateSchema,
    hill: v.pipe(index, v.maxValue(20)),
    rows: v.picklist([0, 1]),
  }),
]);

export const lifeSchema: v.GenericSchema<unknown, LifeRecord> = v.pipe(
  v.strictObject({
    start: stateSchema,
    legs: v.pipe(v.array(leg), v.maxLength(MOST_LEGS)),
    at: index,
    onRow: v.boolean(),
  }),
  v.check((life) => countRows(life) <= FULL + MOST_ROWS + 1, words.atMostRows(FULL + MOST_ROWS)),
  v.check((life) => life.at < countRows(life), words.aRowThatWasDriven),
);
