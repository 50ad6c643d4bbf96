import {
  BAR,
  type Base,
  curveOf,
  nearest,
  type Quantity,
  quantitiesOf,
  type Rig,
  type Scene,
  type Setting,
  type Turning,
  tellFinding,
  Vary,
  type VaryPoint,
} from '../../sim/index.ts';
import { number } from '../format.ts';
import { type Arguments, choiceOf, quoted, sizeOf, UsageError } from './args.ts';
import { asJson } from './json.ts';
import type { Say } from './print.ts';
import { stateOf } from './state.ts';

const TURNING: Readonly<Record<'forward' | 'stopped' | 'backward', Turning>> = {
  forward: 1,
  stopped: 0,
  backward: -1,
};
/** Curves of a family, and points of a curve. */
const MOST_CURVES = 12;
const MOST_POINTS = 20000;

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

/** The keys that are read at each point. */
function keysOf(args: Arguments, vary: Vary): readonly string[] {
  const known = vary.answers.map((a) => a.key);
  const asked = (args.options.get('read') ?? 'brakeFactor,torque').split(',').map((k) => k.trim());
  for (const key of asked) {
    if (known.includes(key)) continue;
    const near = nearest(key, known);
    throw new UsageError(
      '--read',
      quoted(key),
      `${near ? `${near}, or another` : 'one'} of --list`,
    );
  }
  return asked;
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

function pointsOf(
  vary: Vary,
  args: Arguments,
  of: Quantity,
  also: Setting | null,
  keys: readonly string[],
) {
  const end = (name: 'from' | 'to', usual: number): number => {
    const text = args.options.get(name);
    return text === undefined ? usual : plain(text, `--${name}`, of);
  };
  const [from, to] = [end('from', of.usual[0]), end('to', of.usual[1])];
  const points = args.options.get('points');
  const ask = { id: of.id, from, to, whole: of.whole, keys, ...(also ? { also: [also] } : {}) };
  if (points === undefined) return curveOf(vary, ask);
  const count = Number(points);
  if (!Number.isInteger(count) || count < 1 || count > MOST_POINTS)
    throw new UsageError('--points', quoted(points), `1 to ${MOST_POINTS}`);
  // As many as were asked for, evenly: no more where it bends.
  const at = (i: number): number => (count > 1 ? from + ((to - from) * i) / (count - 1) : from);
  const set = Array.from({ length: count }, (_, i) => (of.whole ? Math.round(at(i)) : at(i)));
  return [...new Set(set)].map((x) => vary.point([[of.id, x], ...(also ? [also] : [])], keys));
}

/** Why nothing is told at a point, in a word or two; empty where it is. */
const whyText = ({ why, locked, finding }: VaryPoint): string =>
  why === 'locks'
    ? `${locked} shoe locks`
    : finding
      ? `cannot be: ${tellFinding(finding)}`
      : why === 'sound'
        ? ''
        : why;

const csvText = (text: string): string =>
  /[",\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;

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
export async function vary(args: Arguments, rig: Rig, scene: Scene, say: Say): Promise<void> {
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
  const keys = keysOf(args, varied);
  const curves = others(args, all).map((also) => ({
    also,
    points: pointsOf(varied, args, of, also, keys),
  }));
  const told = keys
    .map((key) => varied.answers.find((a) => a.key === key))
    .filter((a) => a != null);
  if (json) {
    const value = (x: number): number | null => (Number.isFinite(x) ? x : null);
    say(
      asJson({
        scene: varied.brake.name,
        command: 'vary',
        pressure: { value: pressure / BAR, unit: 'bar' },
        drum,
        of: { id: of.id, name: of.name, unit: of.unit },
        readings: told,
        curves: curves.map(({ also, points }) => ({
          also: also && { id: also[0], value: also[1] },
          points: points.map((p) => ({
            at: p.at[0],
            values: p.values.map(value),
            told: whyText(p) || null,
            clicked: p.clicked,
          })),
        })),
      }),
    );
    return;
  }
  const unit = (name: string, u: string): string => (u ? `${name} [${u}]` : name);
  const second = curves[0]?.also ? all.find((q) => q.id === curves[0]?.also?.[0]) : undefined;
  const head = [
    ...(second ? [unit(second.id, second.unit)] : []),
    unit(of.id, of.unit),
    ...told.map((a) => unit(a.key, a.unit)),
    'told',
  ];
  if (args.flags.has('csv')) {
    say(head.map(csvText).join(','));
    for (const { also, points } of curves)
      for (const p of points) {
        const row = [...(also ? [also[1]] : []), p.at[0] as number, ...p.values];
        say(
          [...row.map((x) => (Number.isFinite(x) ? String(x) : '')), csvText(whyText(p))].join(','),
        );
      }
    return;
  }
  say(`${varied.brake.title}: ${number(pressure / BAR, 1)} bar, drum ${drum}`);
  for (const { also, points } of curves) {
    if (also && second) say(`${second.name} ${also[1]}${second.unit ? ` ${second.unit}` : ''}`);
    say(head.slice(second ? 1 : 0, -1).join('  '));
    for (const p of points) {
      const row = p.values.map((x, k) => number(x, told[k]?.digits ?? 2));
      say(
        [String(Number((p.at[0] as number).toPrecision(6))), ...row, whyText(p)]
          .join('  ')
          .trimEnd(),
      );
    }
  }
}
