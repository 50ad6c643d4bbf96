import {
  BAR,
  type Base,
  nearest,
  type Quantity,
  quantitiesOf,
  type Rig,
  type Scene,
  type Setting,
  type Turning,
  Vary,
} from '../../sim/index.ts';
import { type Arguments, choiceOf, quoted, sizeOf, UsageError } from './args.ts';
import type { Part } from './gather.ts';
import { work } from './jobs.ts';
import { asJson } from './json.ts';
import { keysOf } from './keys.ts';
import type { Say } from './print.ts';
import { progress } from './progress.ts';
import { stateOf } from './state.ts';
import { type Head, type Plan, unitsOf } from './vary-plan.ts';
import { tellCurves } from './vary-told.ts';

const TURNING: Readonly<Record<'forward' | 'stopped' | 'backward', Turning>> = {
  forward: 1,
  stopped: 0,
  backward: -1,
};
/** Curves of a family, and points of a curve. */
const MOST_CURVES = 12;
const MOST_POINTS = 20000;
/** Workers of one machine, and parts of a question. */
const MOST_JOBS = 64;
const MOST_PARTS = 10000;

/** What was set of a quantity: plain numbers, in its unit. */
function plain(text: string, place: string, { unit, range, whole }: Quantity): number {
  const value = /^[-+]?(\d+\.?\d*|\.\d+)(e[-+]?\d+)?$/i.test(text.trim())
    ? Number(text)
    : Number.NaN;
  const kind = whole ? 'a whole number' : 'a number';
  const allowed = `${kind} from ${range[0]} to ${range[1]}${unit ? ` ${unit}` : ''}`;
  if (!(value >= range[0] && value <= range[1])) throw new UsageError(place, quoted(text), allowed);
  if (whole && !Number.isInteger(value)) throw new UsageError(place, quoted(text), allowed);
  return value;
}

/** A quantity by its id; the nearest is told where there is none. */
function quantity(all: readonly Quantity[], id: string, place: string): Quantity {
  const found = all.find((q) => q.id === id);
  if (found) return found;
  const near = nearest(
    id,
    all.map((q) => q.id),
  );
  throw new UsageError(place, quoted(id), `${near ? `${near}, or another` : 'one'} of --list`);
}

/** The values of the second quantity; one curve without. */
function others(args: Arguments, all: readonly Quantity[]): readonly (Setting | null)[] {
  const id = args.options.get('and');
  const values = args.options.get('values');
  if (id === undefined && values === undefined) return [null];
  if (id === undefined) throw new UsageError('--values', 'no --and', 'both or neither');
  if (values === undefined) throw new UsageError('--and', 'no --values', 'both or neither');
  const second = quantity(all, id, '--and');
  const found = values.split(',').map((text) => plain(text, '--values', second));
  if (found.length > MOST_CURVES)
    throw new UsageError('--values', `${found.length} of them`, `at most ${MOST_CURVES}`);
  return found.map((value): Setting => [second.id, value]);
}

/** Ends of the range, and how many points were asked for; null: as many as the curve needs. */
function rangeOf(args: Arguments, of: Quantity): Pick<Plan, 'from' | 'to' | 'count'> {
  const end = (name: 'from' | 'to', usual: number): number => {
    const text = args.options.get(name);
    return text === undefined ? usual : plain(text, `--${name}`, of);
  };
  const [from, to] = [end('from', of.usual[0]), end('to', of.usual[1])];
  return { from, to, count: wholeOf(args, 'points', null, MOST_POINTS) };
}

/** A whole number from 1 to the most. */
function wholeOf<T>(args: Arguments, name: string, fallback: T, most: number): number | T {
  const text = args.options.get(name);
  if (text === undefined) return fallback;
  const count = Number(text);
  if (!Number.isInteger(count) || count < 1 || count > most)
    throw new UsageError(`--${name}`, quoted(text), `1 to ${most}`);
  return count;
}

/** `3/16`: the third of sixteen; null: all of it. */
function partOf(args: Arguments): readonly [part: number, parts: number] | null {
  const text = args.options.get('part');
  if (text === undefined) return null;
  const [, part, parts] = /^(\d{1,5})\/(\d{1,5})$/.exec(text)?.map(Number) ?? [];
  if (!part || !parts || part > parts || parts > MOST_PARTS)
    throw new UsageError('--part', quoted(text), `K/N, K from 1 to N, N up to ${MOST_PARTS}`);
  return [part, parts];
}

/** All that can be varied and read, one a line. */
function list(vary: Vary, all: readonly Quantity[], json: boolean, say: Say): void {
  if (json) {
    say(
      asJson({ scene: vary.brake.name, command: 'vary', quantities: all, readings: vary.answers }),
    );
    return;
  }
  say('What can be varied:');
  for (const q of all) {
    const name = q.of ? `${q.name} (${q.of})` : q.name;
    say(
      `  ${q.id}  ${name}: ${q.value}${q.unit ? ` ${q.unit}` : ''}, ${q.range[0]} to ${q.range[1]}`,
    );
  }
  say('What can be read:');
  for (const a of vary.answers) say(`  ${a.key}  ${a.name}${a.unit ? `, ${a.unit}` : ''}`);
}

/** `vary`: one quantity over a range, with a second one a family of curves; readings at each point. */
export async function vary(
  args: Arguments,
  rig: Rig,
  scene: Scene,
  say: Say,
  complain: Say,
): Promise<void> {
  const pressure = await sizeOf(args, 'pressure', 4, 'MPa', [0, 20]);
  const cable = await sizeOf(args, 'cable', 0, 'N', [0, 5000]);
  const drum = choiceOf(args, 'drum', ['forward', 'stopped', 'backward'], 'forward');
  const state = await stateOf(args, rig);
  const base: Base = {
    scene,
    state,
    press: { pressure, turning: TURNING[drum], cable },
    bending: args.flags.has('flexible'),
    steps: args.flags.has('steps'),
  };
  const varied = new Vary(base);
  const all = quantitiesOf(base, varied.brake);
  const json = args.flags.has('json');
  if (args.flags.has('list')) {
    list(varied, all, json, say);
    return;
  }
  const id = args.options.get('of');
  if (id === undefined) throw new UsageError('--of', 'nothing', 'what to vary: an id of --list');
  const of = quantity(all, id, '--of');
  const keys = keysOf(
    args,
    varied.answers.map((a) => a.key),
    ['brakeFactor', 'torque'],
  );
  const also = others(args, all);
  const jobs = wholeOf(args, 'jobs', 1, MOST_JOBS);
  const part = partOf(args);
  const plan: Plan = { base, of, ...rangeOf(args, of), also, keys };
  const second = also[0] ? all.find((q) => q.id === also[0]?.[0]) : undefined;
  const shortly = ({ id: named, name, unit }: Quantity) => ({ id: named, name, unit });
  const head: Head = {
    scene: varied.brake.name,
    title: varied.brake.title,
    pressure: { value: pressure / BAR, unit: 'bar' },
    drum,
    of: shortly(of),
    second: second ? shortly(second) : null,
    readings: keys
      .map((key) => varied.answers.find((a) => a.key === key))
      .filter((a) => a !== undefined),
    values: also.map((set) => set?.[1] ?? null),
  };
  const units = unitsOf(plan);
  // Every so many: parts of a range differ in what they cost, and so each has a bit of all.
  const mine = units
    .map((unit, at) => ({ unit, at }))
    .filter(({ at }) => part === null || at % part[1] === part[0] - 1);
  const tick = progress(complain, 'pieces', mine.length);
  const found = await work(
    plan,
    mine.map(({ unit }) => unit),
    jobs,
    tick,
  );
  if (part) {
    const told: Part = {
      command: 'vary part',
      part: part[0],
      parts: part[1],
      asked: JSON.stringify(plan),
      head,
      units: units.length,
      done: mine.map(({ unit, at }, k) => ({
        unit: at,
        curve: unit.curve,
        points: found[k] ?? [],
      })),
    };
    say(JSON.stringify(told));
    return;
  }
  const curves = also.map((_, curve) =>
    mine.flatMap(({ unit }, k) => (unit.curve === curve ? (found[k] ?? []) : [])),
  );
  tellCurves(head, curves, json ? 'json' : args.flags.has('csv') ? 'csv' : 'text', say);
}
