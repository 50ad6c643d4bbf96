import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, expect, it } from 'vitest';
import { takeup } from '../takeup.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'takeup-parts-'));
afterAll(() => rmSync(folder, { recursive: true }));

/** A family over sizes, with a shoe that locks and bores that cannot be: all that a point can be. */
const asked = [
  ...['vary', 'quay-van', '--of', 'cylinder.bore', '--from', '19', '--to', '26'],
  ...['--and', 'shoes.lining.friction', '--values', '0.38,0.79', '--read', 'torque,leadingShare'],
  ...['--points', '2'],
];

async function partsOf(n: number, question: readonly string[]): Promise<string[]> {
  const files: string[] = [];
  for (let k = 1; k <= n; k++) {
    const { out, code } = await takeup(...question, '--part', `${k}/${n}`);
    expect(code).toBe(0);
    const file = join(folder, `part-${question.length}-${k}-of-${n}.json`);
    writeFileSync(file, out);
    files.push(file);
  }
  return files;
}

it('gathered parts are the single run to the bit, as text, CSV and JSON', async () => {
  // In any order, and one of them is left without a point.
  const files = (await partsOf(5, asked)).reverse();
  for (const as of [[], ['--csv'], ['--json']]) {
    const single = await takeup(...asked, ...as);
    expect(single.out).toMatch(as.length === 0 ? /front shoe locks/ : /./);
    const gathered = await takeup('gather', ...files, ...as);
    expect(gathered).toEqual(single);
  }
});

it('curves that take as many points as they need are gathered too', async () => {
  const free = [...asked.slice(0, -2), '--steps'];
  const files = await partsOf(2, free);
  expect((await takeup('gather', ...files, '--json')).out).toBe(
    (await takeup(...free, '--json')).out,
  );
});

it('CSV and JSON read back equal', async () => {
  const { curves } = JSON.parse((await takeup(...asked, '--json')).out) as {
    curves: { also: { value: number }; points: { at: number; values: (number | null)[] }[] }[];
  };
  const rows = curves.flatMap(({ also, points }) =>
    points.map((p) => [also.value, p.at, ...p.values]),
  );
  const csv = (await takeup(...asked, '--csv')).out.trim().split('\n').slice(1);
  const back = csv.map((line) =>
    line
      .split(',')
      .slice(0, 4)
      .map((x) => (x === '' ? null : Number(x))),
  );
  expect(back).toEqual(rows);
  expect(rows.some((r) => r.includes(null))).toBe(true);
});

it('workers of one machine come to the same, in a process of their own', async () => {
  const tsx = join(root, 'node_modules/tsx/dist/cli.mjs');
  const typed = [tsx, join(root, 'ui/command/takeup.ts'), ...asked, '--json', '--jobs', '2'];
  const { status, stdout } = spawnSync(process.execPath, typed, {
    cwd: root,
    encoding: 'utf8',
  });
  expect(status).toBe(0);
  expect(stdout).toBe((await takeup(...asked, '--json')).out);
});

it.each([
  [['vary', 'quay-van', '--of', 'tooth', '--part', '4/3'], /--part: found "4\/3"; allowed: K\/N/],
  [['vary', 'quay-van', '--of', 'tooth', '--jobs', '0'], /--jobs: found "0"; allowed: 1 to 64/],
  [['gather'], /FILES: found 0 of them; allowed: 1 or more files/],
  [['gather', join(folder, 'none.json')], /FILES: found no file/],
  [['gather', 'scenes/quay-van.json'], /found "undefined"; allowed: what "vary --part/],
])('%j cannot be carried out', async (args, told) => {
  const { code, err } = await takeup(...args);
  expect(code).toBe(2);
  expect(err).toMatch(told);
});

it('parts that do not make a whole are refused: one missing, one twice, one of another question', async () => {
  const files = await partsOf(3, asked);
  const other = await partsOf(3, [...asked, '--pressure', '3']);
  const [a = '', b = '', c = ''] = files;
  for (const [given, told] of [
    [[a, c], /no part 2; allowed: all 3 parts/],
    [[a, b, b], /part 2 again; allowed: each once/],
    [[a, b, other[2] ?? ''], /a part of another question/],
  ] as const) {
    const { code, err } = await takeup('gather', ...given);
    expect(code).toBe(2);
    expect(err).toMatch(told);
  }
});
