import * as v from 'valibot';
import type { Brake, BrakeState } from '../../sim/index.ts';
import { recordRecord as words } from '../../sim/words/en.ts';
import { isFault } from '../../sim/workshop/index.ts';
import { NOT_APART } from '../stations/apart/part.ts';
import { NOT_KEPT } from '../stations/compare/part.ts';
import { NO_LESSONS } from '../stations/lessons/part.ts';
import { NOT_BEGUN } from '../stations/order/part.ts';
import { NO_VARY } from '../stations/vary/part.ts';
import { type Bench, benchSchema, MOST_BAR } from './bench.ts';
import { brakeOfBench, ownBrakeOf, sceneOf } from './derive.ts';
import { callSchema, type Guest, type Mine } from './guest.ts';
import { handsSchema, NO_HANDS } from './hands.ts';
import { type Moment, type Parts, stationIds } from './moment.ts';
import { parts } from './parts.ts';
import { EMPTY_SHELF, type Shelf, shelfSchema } from './shelf.ts';
import { layersSchema, lookSchema, viewSchema } from './view.ts';

/** The record read from a stranger's data: a file, a link, what a browser kept. */

const partsSchema: v.GenericSchema<unknown, Parts> = v.strictObject({
  apply: parts.apply.schema,
  wear: parts.wear.schema,
  'drum-off': parts['drum-off'].schema,
  park: parts.park.schema,
  inspect: parts.inspect.schema,
  'new-shoes': parts['new-shoes'].schema,
  faults: parts.faults.schema,
  own: parts.own.schema,
  questions: parts.questions.schema,
  // Records from before these were there have none.
  start: v.optional(parts.start.schema, {}),
  ask: v.optional(parts.ask.schema, { text: '' }),
  see: v.optional(parts.see.schema, { topic: 'all', said: {}, along: false, tight: 0.05 }),
  kind: v.optional(parts.kind.schema, { kind: null, setBy: null }),
  // Records from before there were lessons have none.
  lessons: v.optional(parts.lessons.schema, NO_LESSONS),
  vary: v.optional(parts.vary.schema, NO_VARY),
  order: v.optional(parts.order.schema, NOT_BEGUN),
  compare: v.optional(parts.compare.schema, NOT_KEPT),
  apart: v.optional(parts.apart.schema, NOT_APART),
});

const turning = v.picklist([1, 0, -1] as const);
const station = v.picklist(stationIds);

const mine: v.GenericSchema<unknown, Mine> = v.strictObject({
  bench: benchSchema,
  turning,
  station,
  layers: layersSchema,
  parts: partsSchema,
  look: v.optional(lookSchema),
});

const guest: v.GenericSchema<unknown, Guest> = v.strictObject({
  call: callSchema,
  stands: v.pipe(v.array(station), v.maxLength(stationIds.length)),
  mine,
});

const schema: v.GenericSchema<unknown, Moment> = v.strictObject({
  version: v.literal(1),
  bench: benchSchema,
  pedal: v.pipe(v.number(), v.minValue(0), v.maxValue(MOST_BAR)),
  follows: v.boolean(),
  turning,
  station,
  view: viewSchema,
  parts: partsSchema,
  guest: v.nullable(guest),
  hands: v.optional(handsSchema, NO_HANDS),
  shelf: v.optional(shelfSchema, EMPTY_SHELF),
});

/** What is wrong with a record: where, what was found, what is allowed. */
export interface Wrong {
  readonly path: string;
  readonly found: string;
  readonly allowed: string;
}

export type Read =
  | { readonly ok: true; readonly moment: Moment }
  | { readonly ok: false; readonly wrong: readonly Wrong[] };

const short = (text: string): string => (text.length > 60 ? `${text.slice(0, 57)}…` : text);

/** A life that wears a lining through ends within so much of its thickness beyond it (PLACED_LIMIT in sim/wear/life.ts is 1e-4). */
const WORN_THROUGH = 5e-4;

/** Does a state fit the brake that it is said to be of? */
export function stateWrong(path: string, brake: Brake, state: BrakeState): Wrong[] {
  const { adjuster, drum, shoes } = brake;
  const out: Wrong[] = [];
  if (state.tooth > adjuster.teeth) {
    out.push({
      path: `${path}.tooth`,
      found: String(state.tooth),
      allowed: words.of0ToTheTeethOf(adjuster.teeth),
    });
  }
  // A drum that is taken off for New shoes stands a tenth wider.
  const widest = 1.2 * drum.radiusMax;
  if (!(state.drumRadius >= 0.99 * drum.radiusNew && state.drumRadius <= widest)) {
    out.push({
      path: `${path}.drumRadius`,
      found: `${state.drumRadius} mm`,
      allowed: words.toMmThisBrakesDrum(drum.radiusNew, widest.toFixed(1)),
    });
  }
  for (const side of ['front', 'rear'] as const) {
    const { thicknessNew } = shoes[side].lining;
    const worn = Math.max(...state.wear[side]);
    if (worn > thicknessNew * (1 + WORN_THROUGH)) {
      out.push({
        path: `${path}.wear.${side}`,
        found: `${worn} mm`,
        allowed: words.atMostMmTheLining(thicknessNew),
      });
    }
  }
  return out;
}

function benchWrong(path: string, bench: Bench, shelf: Shelf): Wrong[] {
  if (!sceneOf(bench.brake, shelf)) {
    const found = bench.brake.kind === 'whole' ? words.aScene : bench.brake.name;
    return [{ path: `${path}.brake`, found, allowed: words.aBrakeThatIsKept }];
  }
  if (bench.fault !== null && !isFault(bench.fault)) {
    return [{ path: `${path}.fault`, found: bench.fault, allowed: words.aFaultOfTheList }];
  }
  const { states } = ownBrakeOf(bench, shelf);
  const built = brakeOfBench(bench, shelf);
  const out: Wrong[] = [];
  for (const [at, standing] of [
    ['standing', bench.standing],
    ['across.standing', bench.across?.standing ?? null],
  ] as const) {
    if (standing === null || states.some((s) => s.name === standing)) continue;
    const allowed = states.map((s) => s.name).join(', ');
    out.push({ path: `${path}.${at}`, found: standing, allowed });
  }
  const wheel = (at: string, { life, state: now }: Pick<Bench, 'life' | 'state'>): void => {
    out.push(...stateWrong(`${at}.state`, built, now));
    out.push(...stateWrong(`${at}.life.start`, built, life.start));
    life.legs.forEach((leg, i) => {
      const state =
        leg.kind === 'click' ? leg.state : leg.kind === 'hot' ? leg.from : leg.stretch.from;
      if (state) out.push(...stateWrong(`${at}.life.legs.${i}`, built, state));
    });
  };
  wheel(path, bench);
  if (bench.across) wheel(`${path}.across`, bench.across);
  return out;
}

/** Fits the record together? Every state its brake, the guest its place. */
function unsound(m: Moment): Wrong[] {
  const out = benchWrong('bench', m.bench, m.shelf);
  for (const one of ['kept', 'other'] as const) {
    const kept = m.parts.compare[one];
    if (kept) out.push(...benchWrong(`parts.compare.${one}.bench`, kept.bench, m.shelf));
  }
  if (!m.guest) return out;
  out.push(...benchWrong('guest.mine.bench', m.guest.mine.bench, m.shelf));
  if (!m.guest.stands.includes(m.station)) {
    const allowed = m.guest.stands.join(', ');
    out.push({ path: 'station', found: m.station, allowed: words.whereTheGuestStands(allowed) });
  }
  return out;
}

/** Reads a value, with its lists of numbers in place, to a record; or tells what is wrong, place by place. */
export function readMoment(data: unknown): Read {
  let result: v.SafeParseResult<typeof schema>;
  try {
    result = v.safeParse(schema, data, { abortPipeEarly: true });
  } catch (error) {
    // A getter or a proxy of a stranger's: a value as JSON gives it has none.
    const found = error instanceof Error ? error.message : String(error);
    return { ok: false, wrong: [{ path: '', found, allowed: words.plainData }] };
  }
  if (!result.success) {
    return {
      ok: false,
      wrong: result.issues.slice(0, 20).map((issue) => ({
        path: v.getDotPath(issue) ?? '',
        found: short(issue.received),
        allowed: issue.expected ?? issue.message,
      })),
    };
  }
  const wrong = unsound(result.output);
  return wrong.length > 0 ? { ok: false, wrong } : { ok: true, moment: result.output };
}
