import { describe, expect, it } from 'vitest';
import quayVan from '../../scenes/quay-van.json';
import { quantitiesOf, type Scene, startState, Vary } from '../../sim/index.ts';
import { FUNCTIONS, type Known, libraryUnit, readFormula } from '../../ui/formula-reader.ts';
import { mustRead } from '../brakes.ts';
import { near } from '../near.ts';

const known: readonly Known[] = [
  { name: 'torque', key: 'torque', unit: 'N·m' },
  { name: 'linePressure', key: 'linePressure', unit: 'bar' },
  { name: 'brakeFactor', key: 'brakeFactor', unit: '' },
  { name: 'pistonForce', key: 'pistonForce', unit: 'N' },
  { name: 'cylinder.bore', key: 'set cylinder.bore', unit: 'mm' },
  { name: 'drum.diameterNew', key: 'set drum.diameterNew', unit: 'mm' },
  { name: 'temperature', key: 'temperature', unit: '°C' },
  { name: 'liningShareFront', key: 'liningShareFront', unit: '%' },
];

const values: Readonly<Record<string, number>> = {
  torque: 220,
  linePressure: 40,
  brakeFactor: 2.29,
  pistonForce: 1140,
  'cylinder.bore': 19.05,
  'drum.diameterNew': 200,
  temperature: 120,
  liningShareFront: 80,
};

function worked(text: string): { value: number; unit: string } {
  const f = readFormula(text, known);
  if (!f.ok) throw new Error(`${text}: at ${f.at} found ${f.found}; allowed: ${f.why}`);
  return { value: f.worth(f.uses.map((k) => values[k.name] as number)), unit: f.unit };
}

// By hand: 220/40 = 5.5; 220 N·m over 0.1 m = 2200 N; pi/4·19.05² = 285.02 mm²; 40 bar on it 1140.1 N.
it.each([
  ['torque / linePressure', 5.5, 'N·m/bar'],
  ['torque / (drum.diameterNew / 2)', 2200, 'N'],
  ['pi / 4 · cylinder.bore²', 285.02, 'mm²'],
  ['linePressure × pi ÷ 4 · cylinder.bore^2', 1140.09, 'N'],
  ['2·brakeFactor − 1', 3.58, ''],
  ['cylinder.bore + 1/2 inch', 31.75, 'mm'],
  ['sqrt(drum.diameterNew^2)', 200, 'mm'],
  ['max(torque, 250 N m)', 250, 'N·m'],
  ['abs(cylinder.bore − drum.diameterNew)', 180.95, 'mm'],
  ['exp(log(brakeFactor))', 2.29, ''],
  ['cos(60 deg)', 0.5, ''],
  ['temperature / (2 s)', 60, 'K/s'],
  ['liningShareFront / 100', 0.8, ''],
  ['(-torque)', -220, 'N·m'],
])('works out %s', (text, value, unit) => {
  const came = worked(text);
  near(came.value, value, { rel: 1e-4 }, text);
  expect(came.unit).toBe(unit);
});

it('a number that cannot be told is none, whatever the others are', () => {
  const f = readFormula('torque / linePressure', known);
  if (!f.ok) throw new Error(f.why);
  expect(f.worth([Number.NaN, 40])).toBeNaN();
  expect(f.worth([220, 0])).toBeNaN();
});

describe('says where and why', () => {
  it.each([
    ['', 0, 'nothing', /sum of readings/],
    ['torqe / 2', 0, 'torqe', /a reading, a size, or a unit/],
    ['torque / (linePressure', 22, 'the end', /missing/],
    ['torque + pistonForce', 0, 'torque + pistonForce', /units that go together/],
    ['sin(torque)', 0, 'sin(torque)', /units that go together/],
    ['2 torque ++ / 3', 12, '/ 3', /missing or too much/],
    ['brakeFactor + foo', 14, 'foo', /a reading/],
    ['brakeFactor > 2', 12, '>', /\+ − · \/ \^/],
    ['torque + torqu', 9, 'torqu', /a reading/],
    ['sqrt', 0, 'sqrt', /brackets after sqrt/],
  ] as const)('%s', (text, at, found, why) => {
    const f = readFormula(text, known);
    if (f.ok) throw new Error(`${text} was read`);
    expect([f.at, f.found]).toEqual([at, found]);
    expect(f.why).toMatch(why);
  });
});

// What strangers' text tries with such a library: to reach the language, to change the library, to never end, to
// take all memory. Escapes as they are told of expression parsers (from memory).
const hostile = [
  'constructor',
  'constructor("return 1")()',
  '__proto__',
  'torque.constructor',
  'torque["constructor"]',
  'cos.constructor("return process")()',
  '(1).toString()',
  'import({ pi: 3 })',
  'import("fs")',
  'config({ number: "BigNumber" })',
  'createUnit("mm", "5 m")',
  'evaluate("1 + 1")',
  'parse("x")',
  'simplify("x")',
  'derivative("x^2", "x")',
  'f(x) = f(x + 1); f(1)',
  'f(x) = x',
  'a = 5',
  'torque = 3',
  '1; 2',
  '1\n2',
  'zeros(1000000000)',
  'ones(20000, 20000)',
  'range(0, 1e9)',
  '1:1000000000',
  '[1, 2; 3, 4]',
  '{ a: 1 }',
  '"text"',
  'true ? 1 : 2',
  '1000000!',
  '9^9^9^9^9',
  'i',
  'Infinity',
  'null',
  'unit("5 mm")',
  'random()',
  'torque to bar',
  'map([1], f)',
  'typed("a")',
  'help(sin)',
  `${'('.repeat(90)}1${')'.repeat(90)}${' + 1'.repeat(10)}`,
  `1${'+1'.repeat(150)}`,
  'sum(1, 2)',
  'chain(3)',
  'x ^ x',
  '1e999',
];

it.each(hostile)('refuses %s', (text) => {
  const f = readFormula(text, known);
  // 9^9^9^9^9 is a sum of allowed parts: it is read, and its result is no number.
  if (f.ok) expect(f.worth([])).toBeNaN();
  else expect(f.why.length).toBeGreaterThan(5);
});

it('refuses at least thirty of them before anything is worked out, and stays as it was', () => {
  const refused = hostile.filter((text) => !readFormula(text, known).ok);
  expect(refused.length).toBeGreaterThanOrEqual(30);
  expect(worked('1 inch + 0 mm').value).toBeCloseTo(25.4 / worked('1 mm + 0 mm').value, 9);
  expect(worked('cylinder.bore').value).toBe(19.05);
});

it('knows every unit that a reading or a size of the quay van has', () => {
  const brake = mustRead(quayVan);
  const base = {
    scene: quayVan as unknown as Scene,
    state: startState(brake),
    press: { pressure: 4, turning: 1, cable: 0 },
    bending: false,
    steps: false,
  } as const;
  const vary = new Vary(base);
  const units = new Set([
    ...vary.answers.map((a) => a.unit),
    ...quantitiesOf(base, brake).map((q) => q.unit),
  ]);
  for (const unit of units) {
    const f = readFormula('x', [{ name: 'x', key: 'x', unit }]);
    if (!f.ok) throw new Error(`${unit}: ${f.why}`);
    expect(libraryUnit(f.unit), unit).toBe(libraryUnit(unit));
    near(f.worth([3]), 3, { rel: 1e-12 }, unit);
  }
  expect(units.size).toBeGreaterThan(15);
  expect(FUNCTIONS).toHaveLength(9);
});
