import {
  BAR,
  type Free,
  type Quantity,
  quantitiesOf,
  type Rig,
  type Scene,
  Vary,
  type Wish,
} from '../../sim/index.ts';
import { number } from '../format.ts';
import { type DesignFound, leansOn, searchDesign } from '../vary-seek.ts';
import { type Arguments, choiceOf, quoted, sizeOf, UsageError } from './args.ts';
import { asJson } from './json.ts';
import type { Say } from './print.ts';
import { progress } from './progress.ts';
import { stateOf } from './state.ts';

const TURNING = { forward: 1, stopped: 0, backward: -1 } as const;
/** Sizes that may be free at once. */
const MOST_FREE = 3;
const NUMBER = '[-+]?(?:\\d+\\.?\\d*|\\.\\d+)';

/** `cylinder.bore=15..23`: each with both ends, within what is allowed. */
function freeOf(args: Arguments, all: readonly Quantity[]): readonly Free[] {
  const text = args.options.get('free');
  if (text === undefined)
    throw new UsageError('--free', 'nothing', 'ID=FROM..TO, an id of vary --list');
  const free = text.split(',').map((part): Free => {
    const at = new RegExp(`^\\s*([\\w.]+)=(${NUMBER})\\.\\.(${NUMBER})\\s*$`).exec(part);
    const q = all.find((x) => x.id === at?.[1]);
    if (!at || !q)
      throw new UsageError('--free', quoted(part), 'ID=FROM..TO, an id of vary --list');
    const [from, to] = [Number(at[2]), Number(at[3])];
    if (!(from < to && from >= q.range[0] && to <= q.range[1]))
      throw new UsageError('--free', quoted(part), `${q.range[0]} to ${q.range[1]} ${q.unit}`);
    return { id: q.id, from, to, whole: q.whole };
  });
  if (free.length > MOST_FREE)
    throw new UsageError('--free', `${free.length} sizes`, `at most ${MOST_FREE}`);
  return free;
}

/** `torque=180..260`, `restClearanceMean=..0.4`, `teethTaken@300=..0` of a drum of 300 °C. */
function wishesOf(args: Arguments, vary: Vary): readonly Wish[] {
  const text = args.options.get('wish');
  const allowed = 'KEY=LEAST..MOST, or KEY@°C=…, a key of vary --list';
  if (text === undefined) throw new UsageError('--wish', 'nothing', allowed);
  const known = new Set(vary.answers.map((a) => a.key));
  const form = new RegExp(`^\\s*(\\w+)(?:@(\\d+))?=(${NUMBER})?\\.\\.(${NUMBER})?\\s*$`);
  return text.split(',').map((part): Wish => {
    const [, key, hot, least, most] = form.exec(part) ?? [];
    const none = least === undefined && most === undefined;
    if (!key || none || !known.has(key)) throw new UsageError('--wish', quoted(part), allowed);
    const end = (x: string | undefined): number | null => (x === undefined ? null : Number(x));
    return { key, least: end(least), most: end(most), hot: end(hot) };
  });
}

/** `seek`: sizes that give what is wished, as a region; or how near one comes, and the bound in the way. Exit code 1 where none does. */
export async function seek(
  args: Arguments,
  rig: Rig,
  scene: Scene,
  say: Say,
  complain: Say,
): Promise<number> {
  const pressure = await sizeOf(args, 'pressure', 4, 'MPa', [0, 20]);
  const cable = await sizeOf(args, 'cable', 0, 'N', [0, 5000]);
  const drum = choiceOf(args, 'drum', ['forward', 'stopped', 'backward'], 'forward');
  const base = {
    scene,
    state: await stateOf(args, rig),
    press: { pressure, turning: TURNING[drum], cable },
    bending: args.flags.has('flexible'),
    steps: false,
  };
  const vary = new Vary(base);
  const all = quantitiesOf(base, vary.brake);
  const free = freeOf(args, all);
  const wishes = wishesOf(args, vary);
  const tick = progress(complain, 'brakes', null);
  let found: DesignFound | null = null;
  for (const news of searchDesign({ base, free, wishes })) {
    found = news;
    tick(news.points.length);
  }
  if (!found) throw new Error('a search ends with what it found');
  const { best, points, reach } = found;
  const leaning = reach ? [] : leansOn(free, best);
  if (args.flags.has('json')) {
    say(
      asJson({
        scene: vary.brake.name,
        command: 'seek',
        pressure: { value: pressure / BAR, unit: 'bar' },
        drum,
        free,
        wishes,
        brakes: points.length,
        reach:
          reach && free.map(({ id }, k) => ({ id, least: reach[k]?.[0], most: reach[k]?.[1] })),
        best: {
          at: best.at,
          values: best.miss.values.map((x) => (Number.isFinite(x) ? x : null)),
          missed: best.miss.each,
        },
        bounds: leaning,
      }),
    );
    return reach ? 0 : 1;
  }
  const told = (id: string, x: number): string => {
    const q = all.find((a) => a.id === id);
    return `${Number(x.toPrecision(5))}${q?.unit ? ` ${q.unit}` : ''}`;
  };
  say(`${vary.brake.title}: ${points.length} brakes pressed with ${number(pressure / BAR, 1)} bar`);
  if (reach) {
    for (const [k, { id }] of free.entries())
      say(
        `${id}: from ${told(id, reach[k]?.[0] as number)} to ${told(id, reach[k]?.[1] as number)}`,
      );
    if (free.length > 1) say('Not every pair of these: one goes with some of the other.');
  } else say('None between these bounds does. Nearest:');
  const place = free.map(({ id }, k) => `${id} ${told(id, best.at[k] as number)}`).join(', ');
  say(`${reach ? 'One of them' : '  at'}: ${place}`);
  for (const [k, w] of wishes.entries()) {
    const a = vary.answers.find((x) => x.key === w.key);
    const value = best.miss.values[k] as number;
    const off = (best.miss.each[k] as number) > 0 ? ', not as wished' : '';
    say(`  ${a?.name ?? w.key}: ${number(value, a?.digits ?? 2)} ${a?.unit ?? ''}${off}`);
  }
  for (const { id, end, value } of leaning)
    say(`In the way: ${id} at its ${end}, ${told(id, value)}.`);
  return reach ? 0 : 1;
}
