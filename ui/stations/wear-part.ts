import * as v from 'valibot';
import { type BrakeState, freshState, isDriven, KM } from '../../sim/index.ts';
import { wearPart as words } from '../../sim/words/en.ts';
import { number } from '../format.ts';
import type { LaneId } from '../plot/lanes.ts';
import { released, withBegun, withMoment } from '../record/bench.ts';
import { brakeOf, standingOf } from '../record/derive.ts';
import { hills, hotOf } from '../record/hot.ts';
import { intention } from '../record/intention.ts';
import {
  cut,
  type HotLeg,
  type LifeRecord,
  lastStretch,
  type Stretch,
  withHot,
  withStretch,
} from '../record/life.ts';
import { type Moment, withPart } from '../record/moment.ts';
import type { Part } from '../record/part.ts';
import { layersOf, withLayers } from '../record/parts.ts';
import { PLAIN_ROAD, type Road, roadSchema, type StopKey, withEdit } from '../record/road.ts';
import { sceneName } from '../record/scene-names.ts';

export type WearStep = 100 | 1000 | 'click' | 'limit';
export type WearPage = 'readings' | 'events' | 'hot' | 'setup';
/** Moments of a hot press that the stage can show. */
export type HotMoment = 'before' | 'hot' | 'cold';

/** What the Wear station remembers; the life itself is the bench's. */
export interface WearPart {
  readonly page: WearPage;
  /** How far the next stretch goes: km, or to what. */
  readonly step: WearStep;
  /** What the chart's last lane shows. */
  readonly lane: LaneId;
  readonly road: Road;
  /** The road's stops are open to be changed. */
  readonly roadOpen: boolean;
  /** What was typed into a field of the road and cannot be. */
  readonly refused: { readonly id: string; readonly text: string } | null;
  /** Number of the hill chosen for the hot press. */
  readonly hill: number;
  /** Moment of the last hot press that the stage shows; null: the life has gone on since. */
  readonly moment: HotMoment | null;
}

/** Longest text that is kept of what was typed into a field. */
const LONGEST = 80;
const text = v.pipe(v.string(), v.maxLength(LONGEST));

export const wearPart: Part<WearPart> = {
  anew: true,
  layers: { fan: true, loupe: true },
  initial: () => ({
    page: 'readings',
    step: 1000,
    lane: 'lining',
    road: PLAIN_ROAD,
    roadOpen: false,
    refused: null,
    hill: 1,
    moment: null,
  }),
  schema: v.strictObject({
    page: v.picklist(['readings', 'events', 'hot', 'setup']),
    step: v.picklist([100, 1000, 'click', 'limit']),
    lane: v.picklist(['clearance', 'lining', 'factor', 'tooth', 'heat', 'pedal', 'drag']),
    road: roadSchema,
    roadOpen: v.boolean(),
    refused: v.nullable(v.strictObject({ id: text, text })),
    hill: v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(hills.length - 1)),
    moment: v.nullable(v.picklist(['before', 'hot', 'cold'])),
  }),
};

/** Distance of two rows of the chart, mm. */
const ROWS: Readonly<Record<WearStep, number>> = {
  100: 5 * KM,
  1000: 20 * KM,
  click: 50 * KM,
  limit: 100 * KM,
};

const put = (m: Moment, change: Partial<WearPart>): Moment => {
  const now = m.parts.wear;
  const same = Object.entries(change).every(([k, x]) => now[k as keyof WearPart] === x);
  return same ? m : withPart(m, 'wear', change);
};

const withLife = (m: Moment, life: LifeRecord): Moment => ({ ...m, bench: { ...m.bench, life } });

const km = (distance: number): string => `${number(distance / KM, 0)} km`;

export const choosePage = intention(
  'wear.page',
  (m: Moment, page: WearPage) =>
    page === m.parts.wear.page ? m : put(m, { page, roadOpen: false }),
  words.pageOfWear,
);

export const chooseStep = intention(
  'wear.step',
  (m: Moment, step: WearStep) => put(m, { step }),
  words.howFarToWearOn,
);

export const chooseLane = intention(
  'wear.lane',
  (m: Moment, lane: LaneId) => put(m, { lane }),
  words.curveOfTheChart,
);

export const chooseHill = intention(
  'wear.hill',
  (m: Moment, hill: number) => (hills[hill] ? put(m, { hill }) : m),
  (_before, after) => words.hillOf(hills[after.parts.wear.hill]?.name),
);

/** Takes another of the brake's roads, or the same again without what was changed by hand. */
export const chooseRoad = intention(
  'wear.road',
  (m: Moment, number: number) => {
    const { road } = m.parts.wear;
    if (!brakeOf(m).duties[number]) return m;
    const same = road.number === number && road.edits.length === 0;
    return put(m, { road: same ? road : { ...road, number, edits: [] }, refused: null });
  },
  (_before, after) =>
    words.road(sceneName(brakeOf(after).duties[after.parts.wear.road.number]?.name ?? '')),
);

/** Changes a figure of one kind of the road's stops, inside units. */
export const editRoad = intention(
  'wear.stops',
  (m: Moment, index: number, key: StopKey, value: number) =>
    put(m, { road: withEdit(m.parts.wear.road, { index, key, value }), refused: null }),
  words.stopsOfTheRoad,
);

/** Keeps what was typed and cannot be, to be shown with what is allowed. */
export const refuseRoad = intention(
  'wear.refused',
  (m: Moment, id: string, typed: string) => {
    const now = m.parts.wear.refused;
    const kept = typed.slice(0, LONGEST);
    return now?.id === id && now.text === kept ? m : put(m, { refused: { id, text: kept } });
  },
  words.whatWasTyped,
);

export const openRoad = intention(
  'wear.open',
  (m: Moment, roadOpen: boolean) => put(m, { roadOpen }),
  words.stopsOfTheRoadShown,
);

export const chooseReverse = intention(
  'wear.reverse',
  (m: Moment, reverse: number | null) => {
    const { road } = m.parts.wear;
    return reverse === road.reverse ? m : put(m, { road: { ...road, reverse } });
  },
  words.stopsInReverse,
);

const wornBy: Readonly<Record<WearStep, string>> = words.wornBy;

/** Drives on from the moment shown by the chosen step, and forgets what came after: it is driven next. */
export const wearOn = intention(
  'wear.on',
  (m: Moment) => {
    const { road, step } = m.parts.wear;
    const { life, state } = m.bench;
    const far = typeof step === 'number';
    const stretch = {
      road,
      rowEvery: ROWS[step],
      distance: far ? state.distance + step * KM : null,
      toNextClick: step === 'click',
      stopAtLimit: !far,
    };
    return put(released(withLife(m, withStretch(life, state, stretch))), { moment: null });
  },
  (before) => wornBy[before.parts.wear.step],
);

/**
 * The record follows the stretch that is driven: its rows so far, and the row shown. It holds wherever
 * the life ends with that stretch, so before and after each step that was done meanwhile.
 */
export const follow = intention(
  'wear.follow',
  (
    m: Moment,
    stretch: Stretch,
    rows: number,
    shown: { readonly at: number; readonly state: BrakeState } | null,
  ) => {
    const { life } = m.bench;
    const last = life.legs.at(-1);
    if (last?.kind !== 'drive' || last.stretch !== stretch) return m;
    const legs = [...life.legs.slice(0, -1), { ...last, rows }];
    const next = rows === last.rows ? m : withLife(m, { ...life, legs });
    return shown ? withMoment(next, shown.at, shown.state) : next;
  },
  words.wornOn,
  { along: true },
);

/** Ends a stretch where it is shown; what was driven beyond is forgotten. */
export const stopHere = intention(
  'wear.stop',
  (m: Moment, stretch: Stretch) =>
    lastStretch(m.bench.life) === stretch ? withLife(m, cut(m.bench.life)) : m,
  words.wornOn,
  { along: true },
);

/**
 * The stage goes to a moment of the life.
 *
 * @param at number of its row
 * @param onRow the state is that row's, bit for bit; false: it is as right after an event there
 */
export const showMoment = intention(
  'wear.show',
  (m: Moment, at: number, state: BrakeState, onRow: boolean) =>
    put(released(withMoment(m, at, state, onRow)), { moment: null }),
  (_before, after) => words.to(km(after.bench.state.distance)),
  { joins: 'wear.show' },
);

/** The hot press that the life ends with, while it is looked at. */
export function hotLeg(m: Moment): HotLeg | null {
  const last = m.bench.life.legs.at(-1);
  return last?.kind === 'hot' && m.parts.wear.moment !== null ? last : null;
}

/** Down the hill from the moment shown, one press at its foot, and a cold morning: that is put on. */
export const pressHot = intention(
  'wear.hot',
  (m: Moment) => {
    const { life, state } = m.bench;
    const { hill } = m.parts.wear;
    const { cold, stepped } = hotOf(brakeOf(m), state, hill);
    const next = withHot(life, state, hill, stepped > 0);
    const there = released(withMoment(withLife(m, next), next.at, cold, next.onRow));
    return put(there, { moment: 'cold' });
  },
  words.hotPress,
);

/** The stage shows one moment of the last hot press. */
export const showHot = intention(
  'wear.hotMoment',
  (m: Moment, moment: HotMoment) => {
    const leg = hotLeg(m);
    if (!leg) return m;
    const { at } = m.bench.life;
    const onRow = moment === 'cold' && leg.rows > 0;
    const result = hotOf(brakeOf(m), leg.from, leg.hill);
    const next = put(released(withMoment(m, at, result[moment], onRow)), { moment });
    const heat = moment === 'hot';
    return layersOf(next).heat === heat ? next : withLayers(next, { heat });
  },
  (_before, _after, moment) =>
    ({ before: words.beforeTheHill, hot: words.atTheFoot, cold: words.nextMorning })[moment],
);

/** A standing state of the scene, with the life that leads to it: it is driven next. Throws on an unknown name. */
export const startFrom = intention(
  'wear.from',
  (m: Moment, name: string) => {
    const brake = brakeOf(m);
    const recipe = brake.states.find((s) => s.name === name);
    if (!recipe) throw new Error(`No state "${name}"`);
    const state = freshState(brake, recipe.drumRadius ?? brake.drum.radiusNew);
    const fresh = put(withBegun(m, state, null), {
      road: PLAIN_ROAD,
      refused: null,
      moment: null,
    });
    if (!isDriven(recipe)) return fresh;
    const stretch = {
      road: PLAIN_ROAD,
      rowEvery: ROWS.limit,
      distance: standingOf(brake, name).distance,
      toNextClick: false,
      stopAtLimit: false,
    };
    return withLife(fresh, withStretch(fresh.bench.life, state, stretch));
  },
  (_before, _after, name) => words.startFrom(name),
);
