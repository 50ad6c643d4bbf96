import * as v from 'valibot';
import type { Turning } from '../../sim/index.ts';
import { recordGuest as texts } from '../../sim/words/en.ts';
import type { Bench } from './bench.ts';
import { NO_HANDS } from './hands.ts';
import { intention } from './intention.ts';
import { type Moment, type Parts, type StationId, stationIds, stationNames } from './moment.ts';
import { parts as registry } from './parts.ts';
import type { View } from './view.ts';

/**
 * A guest stands on the bench over one's own: a fault, a van to be found out, what a question shows.
 * It says whose place it takes, so that all of that comes back bit for bit.
 */
export interface Guest {
  readonly call: GuestCall;
  /** Stations in which it stands; it leaves with the last of them. */
  readonly stands: readonly StationId[];
  readonly mine: Mine;
}

/** A quantity at a value. */
interface Put {
  readonly id: string;
  readonly value: number;
}

/** What the guest was called for. */
export type GuestCall =
  | { readonly kind: 'fault'; readonly id: string }
  | { readonly kind: 'question'; readonly id: string }
  | { readonly kind: 'lesson'; readonly id: string }
  | { readonly kind: 'van'; readonly number: number }
  /** The same brake with one thing of it, or up to three, at another value. */
  | {
      readonly kind: 'varied';
      readonly of: string;
      readonly value: number;
      readonly and?: Put | undefined;
      readonly third?: Put | undefined;
    }
  /** The same brake with what was turned at its dials. */
  | { readonly kind: 'dialled'; readonly set: readonly Dialled[] }
  /** The same brake in another standing state. */
  | { readonly kind: 'state'; readonly name: string };

/** A dial's quantity, by its id, at another value than the brake's own. */
export interface Dialled {
  readonly id: string;
  readonly value: number;
}
/** Most quantities that are turned at once. */
export const MOST_DIALLED = 24;

/** What was there before. */
export interface Mine {
  readonly bench: Bench;
  readonly turning: Turning;
  readonly station: StationId;
  readonly layers: View['layers'];
  readonly parts: Parts;
  /** How the brake was looked at, where the guest changes that too. */
  readonly look?: Look | undefined;
}

export type Look = Pick<View, 'magnification' | 'revealed' | 'tilt'>;

const id = v.pipe(v.string(), v.minLength(1), v.maxLength(80));
const put = v.optional(v.strictObject({ id, value: v.pipe(v.number(), v.finite()) }));
export const callSchema: v.GenericSchema<unknown, GuestCall> = v.variant('kind', [
  v.strictObject({ kind: v.literal('fault'), id }),
  v.strictObject({ kind: v.literal('question'), id }),
  v.strictObject({ kind: v.literal('lesson'), id }),
  v.strictObject({
    kind: v.literal('varied'),
    of: id,
    value: v.pipe(v.number(), v.finite()),
    and: put,
    third: put,
  }),
  v.strictObject({
    kind: v.literal('dialled'),
    set: v.pipe(
      v.array(v.strictObject({ id, value: v.pipe(v.number(), v.finite()) })),
      v.minLength(1),
      v.maxLength(MOST_DIALLED),
    ),
  }),
  v.strictObject({ kind: v.literal('state'), name: id }),
  v.strictObject({
    kind: v.literal('van'),
    number: v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(1000)),
  }),
]);

/** Takes what is there now to be brought back, unless a guest is there already. */
export function arrive(m: Moment, call: GuestCall, stands: readonly StationId[]): Moment {
  const mine = m.guest?.mine ?? {
    bench: m.bench,
    turning: m.turning,
    station: m.station,
    layers: m.view.layers,
    parts: m.parts,
  };
  return { ...m, guest: { call, stands, mine } };
}

/** The guest leaves: one's own brake and the stations' settings as they were; the open station stays. */
export function leave(m: Moment): Moment {
  if (!m.guest) return m;
  const { bench, turning, layers, parts, look } = m.guest.mine;
  // What speaks of no brake, such as a sheet that is filled in, is not the guest's: it stays.
  const stays = stationIds.filter((s) => !registry[s].anew);
  const kept = Object.fromEntries(stays.map((s) => [s, m.parts[s]]));
  const back: Parts = { ...parts, ...kept } as Parts;
  return {
    ...m,
    guest: null,
    pedal: 0,
    follows: false,
    bench,
    turning,
    view: { ...m.view, ...look, layers },
    parts: {
      ...back,
      faults: { ...back.faults, mode: 'browse', fault: null },
      questions: { ...back.questions, asked: null },
    },
  };
}

/** Back to mine: everything as it was when the guest came, and where. */
export const backToMine = intention(
  'guest.leave',
  (m: Moment) => (m.guest ? { ...leave(m), station: m.guest.mine.station } : m),
  texts.backToMine,
);

/** The guest stays for good: it is one's own from now on. */
export const makeMine = intention(
  'guest.keep',
  (m: Moment) => (m.guest ? { ...m, guest: null } : m),
  texts.madeMine,
);

/**
 * Opens a station: the pedal comes up; a guest that does not stand there leaves. Ask leaves the pedal as it is:
 * a reading's working, which it leads to, is of the brake as it is pressed.
 */
export function opened(m: Moment, station: StationId): Moment {
  if (station === m.station) return m;
  const left = registry[m.station].left?.(m) ?? m;
  const here = left.guest && !left.guest.stands.includes(station) ? leave(left) : left;
  const asked = here.parts.questions.asked;
  // A question's words stand in the station that answers it.
  const parts =
    asked !== null && station !== 'questions'
      ? { ...here.parts, questions: { ...here.parts.questions, asked: null } }
      : here.parts;
  // Hands go no farther than the station that they were put into, and the drum goes on again.
  const pedal = station === 'ask' ? here.pedal : 0;
  return { ...here, parts, station, pedal, follows: false, hands: NO_HANDS };
}

export const show = intention('station.show', opened, (_before, after) =>
  texts.to(stationNames[after.station]),
);
