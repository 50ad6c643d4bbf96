import * as v from 'valibot';
import {
  BAR,
  type Brake,
  type Duty,
  KMH,
  type Stops,
  withReverse,
  withStops,
} from '../../sim/index.ts';
import { recordRoad as words } from '../../sim/words/en.ts';
import { KeptFor } from './kept.ts';

/** Figures of a kind of stop that can be changed by hand, and what a scene file may ask of each, inside units. */
export const stopBounds = {
  perKm: [0.01, 50],
  speed: [1 * KMH, 250 * KMH],
  pressure: [0.5 * BAR, 150 * BAR],
  deceleration: [100, 12000],
} as const;
export type StopKey = keyof typeof stopBounds;
const stopKeys = Object.keys(stopBounds) as StopKey[];

/** A changed figure of one kind of a road's stops. */
export interface RoadEdit {
  /** Place in the road's list of stops. */
  readonly index: number;
  readonly key: StopKey;
  /** Inside units. */
  readonly value: number;
}

/** The road as chosen: one of the brake's, with what was changed by hand. */
export interface Road {
  /** Number in the brake's list. */
  readonly number: number;
  /** Share of the stops in reverse; null: as the road has it. */
  readonly reverse: number | null;
  /** One of a figure at most. */
  readonly edits: readonly RoadEdit[];
}

/** The brake's plain duty, by which its standing states were made. */
export const PLAIN_ROAD: Road = { number: 0, reverse: null, edits: [] };

/** Most stops of a road that can be changed. */
const MOST_STOPS = 100;

const place = v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(MOST_STOPS));

const edit: v.GenericSchema<unknown, RoadEdit> = v.pipe(
  v.strictObject({ index: place, key: v.picklist(stopKeys), value: v.number() }),
  v.check(({ key, value }) => {
    const [least, most] = stopBounds[key];
    return value >= least && value <= most;
  }, words.aStopThatAScene),
);

export const roadSchema: v.GenericSchema<unknown, Road> = v.strictObject({
  number: place,
  reverse: v.nullable(v.pipe(v.number(), v.minValue(0), v.maxValue(1))),
  edits: v.pipe(v.array(edit), v.maxLength(MOST_STOPS * stopKeys.length)),
});

/** The road with one figure changed; the same road when it cannot be. */
export function withEdit(road: Road, edit: RoadEdit): Road {
  const [least, most] = stopBounds[edit.key];
  const fits = edit.index >= 0 && edit.index < MOST_STOPS;
  if (!fits || !(edit.value >= least && edit.value <= most)) return road;
  const others = road.edits.filter((e) => e.index !== edit.index || e.key !== edit.key);
  return { ...road, edits: [...others, edit] };
}

/** A figure of a kind of stop, inside units; null where these stops are not asked for by it. */
export function figureOf(stops: Stops, key: StopKey): number | null {
  const { asked } = stops;
  if (key === 'pressure') return asked.by === 'pressure' ? asked.pressure : null;
  if (key === 'deceleration') return asked.by === 'deceleration' ? asked.deceleration : null;
  return stops[key];
}

/** What sets a figure. */
function figureTo(key: StopKey, value: number): Partial<Stops> {
  if (key === 'pressure') return { asked: { by: 'pressure', pressure: value } };
  if (key === 'deceleration') return { asked: { by: 'deceleration', deceleration: value } };
  return { [key]: value };
}

const duties = new KeptFor<Brake, KeptFor<Road, Duty>>();

/** What a road asks of a brake; a road that the brake does not have is its plain one. */
export function dutyOn(brake: Brake, road: Road): Duty {
  return duties
    .of(brake, () => new KeptFor())
    .of(road, () => {
      const own = brake.duties[road.number] ?? (brake.duties[0] as Duty);
      const edited = road.edits.reduce((duty, { index, key, value }) => {
        // A stop gives its pressure or its deceleration: the other figure is not there to be changed.
        const stops = duty.stops[index];
        const told = stops !== undefined && figureOf(stops, key) !== null;
        return told ? withStops(duty, index, figureTo(key, value)) : duty;
      }, own);
      return road.reverse === null ? edited : withReverse(edited, road.reverse);
    });
}
