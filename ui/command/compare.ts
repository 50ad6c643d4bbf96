import { BAR, createRig, type Reading, tellFinding } from '../../sim/index.ts';
import { number } from '../format.ts';
import type { Arguments } from './args.ts';
import { asJson, jsonValues } from './json.ts';
import { keysOf } from './keys.ts';
import { sceneIn, textBy } from './load.ts';
import { pressOf } from './press.ts';
import { locks, nameOf, type Say } from './print.ts';

type Pressed = Awaited<ReturnType<typeof pressOf>>;

interface Column {
  readonly scene: string;
  readonly title: string;
  readonly pressed: Pressed;
}

const readingOf = ({ pressed }: Column, key: string): Reading | undefined =>
  pressed.list.find((r) => r.key === key);

/** A value, and how far it is from the first brake's, %. */
function cell(r: Reading | undefined, first: Reading | undefined, own: boolean): string {
  if (!r) return '–';
  const told = `${number(r.value, r.digits)} ${r.unit}`.trimEnd();
  const by =
    first && first.value !== 0 ? (100 * (r.value - first.value)) / first.value : Number.NaN;
  return own || !Number.isFinite(by) ? told : `${told} (${by > 0 ? '+' : ''}${number(by, 1)} %)`;
}

const csvText = (text: string): string =>
  /[",\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;

/** `compare`: brakes pressed alike, reading beside reading; the first is what others are measured by. */
export async function compare(args: Arguments, say: Say, complain: Say): Promise<number> {
  const { files, flags } = args;
  const read = files.map((scene) => ({ scene, result: sceneIn(textBy(scene)) }));
  const bad = read.flatMap(({ scene, result }) =>
    result.ok ? [] : result.findings.map((finding) => ({ scene, finding })),
  );
  if (bad.length > 0) {
    if (flags.has('json'))
      say(
        asJson({
          command: 'compare',
          findings: bad.map(({ scene, finding }) => ({ scene, ...finding })),
        }),
      );
    else complain(bad.map(({ scene, finding }) => `${scene}: ${tellFinding(finding)}`).join('\n'));
    return 1;
  }
  const columns: Column[] = [];
  for (const { scene, result } of read) {
    if (!result.ok) continue;
    const rig = createRig(result.brake, { flexible: flags.has('flexible') });
    columns.push({ scene, title: result.brake.title, pressed: await pressOf(args, rig) });
  }
  const all = [...new Set(columns.flatMap((c) => c.pressed.list.map((r) => r.key)))];
  const keys = keysOf(args, all, all);
  const [first] = columns as [Column];
  if (flags.has('json')) {
    const { pressure, drum } = first.pressed;
    say(
      asJson({
        command: 'compare',
        pressure: { value: pressure, unit: 'MPa' },
        drum,
        brakes: columns.map(({ scene, title, pressed }) => ({
          scene,
          title,
          locked: pressed.instant.locked,
          readings: jsonValues(pressed.list.filter((r) => keys.includes(r.key))),
        })),
      }),
    );
    return 0;
  }
  if (flags.has('csv')) {
    say(['reading', 'unit', ...columns.map((c) => c.scene)].map(csvText).join(','));
    for (const key of keys) {
      const row = columns.map((c) => readingOf(c, key)?.value ?? Number.NaN);
      const unit = columns.map((c) => readingOf(c, key)?.unit).find((u) => u !== undefined) ?? '';
      say([key, unit, ...row.map((x) => (Number.isFinite(x) ? String(x) : ''))].join(','));
    }
    return 0;
  }
  const { pressure, drum } = first.pressed;
  say(`${number(pressure / BAR, 1)} bar, drum ${drum}: ${columns.map((c) => c.title).join(' / ')}`);
  for (const c of columns) {
    const { locked } = c.pressed.instant;
    if (locked) say(`${c.title}: ${locks(locked)}`);
  }
  for (const key of keys) {
    const named = columns.map((c) => readingOf(c, key)).find((r) => r !== undefined);
    if (!named) continue;
    const cells = columns.map((c, k) => cell(readingOf(c, key), readingOf(first, key), k === 0));
    say(`${nameOf(named)}: ${cells.join(' / ')}`);
  }
  return 0;
}
