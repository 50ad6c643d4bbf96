import { all, create } from 'mathjs';
import { expect, it } from 'vitest';
import bench from '../../../scenes/bench-brake.json';
import trailer from '../../../scenes/farm-trailer.json';
import runabout from '../../../scenes/ferry-runabout.json';
import quayVan from '../../../scenes/quay-van.json';
import {
  type BrakeState,
  balance,
  createRig,
  curveReadings,
  curveWorkings,
  type Derivations,
  dragReadings,
  dragWorkings,
  type Given,
  givens,
  nowWorkings,
  parkedReadings,
  parkedWorkings,
  partReadings,
  partWorkings,
  pedalCurve,
  type Reading,
  type Rig,
  readings,
  rest,
  SOUND,
  slopeReadings,
  slopeWorkings,
  slowingReadings,
  slowingWorkings,
  startState,
  stopReadings,
  stopWorkings,
  type Turning,
  turnReadings,
  turnWorkings,
  type Working,
  wheelReadings,
  wheelWorkings,
  withAdjuster,
  workingsOf,
} from '../../../sim/index.ts';
import { fromText, lawText } from '../../../sim/workshop/index.ts';
import { isPlain, numbersText, resultText, workingText } from '../../../ui/working/write.ts';
import { mustRead } from '../../brakes.ts';

/** The whole unit and expression library: it works the shown text out apart from this program. */
if (!all) throw new Error('the library has its functions');
const math = create(all);

/** As the page shows it, in the library's own signs. */
const asTyped = (shown: string): string =>
  shown
    .replace(/−/g, '-')
    .replace(/·/g, '*')
    .replace(/²/g, '^2')
    .replace(/√\(/g, 'sqrt(')
    .replace(/;/g, ',');

const asNumber = (told: string): number => Number(told.replace('−', '-').replace(/ .*$/, '')) + 0;

/** Every list of readings there is, with how each came about. */
function lists(rig: Rig, state: BrakeState, pressure: number, turning: Turning, cable = 0) {
  const instant = balance(rig, state, { pressure, turning, cable });
  const released = rest(rig, state);
  const speed = 14000;
  const curve = pedalCurve(rig, state, 4);
  const press = { pressure, turning };
  const both = { left: state, right: { ...state, temperature: state.temperature + 90 } };
  return [
    [
      readings(rig.brake, state, instant, released),
      nowWorkings({ rig, state, instant, rest: released }),
    ],
    [stopReadings(rig, state, speed, 4), stopWorkings(rig, state, speed, 4)],
    [slowingReadings(rig, state, 3000, speed), slowingWorkings(rig, state, 3000, speed)],
    [dragReadings(rig, state, speed), dragWorkings(rig, state, speed)],
    [curveReadings(curve), curveWorkings(rig.brake, curve)],
    [partReadings(curve), partWorkings(rig.brake, curve)],
    [parkedReadings(rig, state, 300), parkedWorkings(rig, state, 300)],
    [slopeReadings(rig, state, 0.12, 300), slopeWorkings(rig, state, 0.12, 300)],
    [turnReadings(rig, state, press), turnWorkings(rig, state, press)],
    [wheelReadings(rig, both, 4, 1, speed), wheelWorkings(rig, both, 4, 1, speed)],
  ] as const satisfies readonly (readonly [readonly Reading[], Derivations])[];
}

const worn = (state: BrakeState): BrakeState => ({
  ...state,
  tooth: 3,
  temperature: 180,
  condition: { ...SOUND, oval: 0.05, offCentre: 0.03, springFactor: 0.8 },
  film: { water: 0.01, rust: 0.002, glaze: { front: 0.3, rear: 0 } },
});

function check(r: Reading, w: Working): void {
  const shown = numbersText(w.formula, w.figures);
  const told = resultText(w);
  const came = Number(math.evaluate(asTyped(shown)));
  // The text shown gives the reading again, to the digits shown.
  expect((came + 0).toFixed(r.digits), `${r.key}: ${shown}`).toBe((r.value + 0).toFixed(r.digits));
  expect(asNumber(told), `${r.key}: ${told}`).toBe(Number((r.value + 0).toFixed(r.digits)) + 0);
  expect(workingText(w)).toContain(told);
  expect(lawText(w.law)).toMatch(/[.]$/);
  for (const g of givens(w.formula)) {
    expect(g.name.length, `${r.key} ${g.symbol}`).toBeGreaterThan(3);
    expect(fromText(g.from).length).toBeGreaterThan(3);
    // Each symbol is one number.
    const all = sameSymbol(w, g.symbol);
    expect(new Set(all.map((x) => x.value)).size, `${r.key} ${g.symbol}`).toBe(1);
  }
}

function sameSymbol(w: Working, symbol: string): readonly Given[] {
  const walk = (t: Working['formula']): readonly Given[] =>
    t.is === 'given' ? [t] : t.is === 'number' ? [] : t.of.flatMap(walk);
  return walk(w.formula).filter((g) => g.symbol === symbol);
}

const cases = [
  ['quay van, pressed', quayVan, false, 4, 1],
  ['quay van, let go', quayVan, false, 0, 0],
  ['quay van, backward, shoes bend', quayVan, true, 4, -1],
  ['runabout, pressed', runabout, false, 4, 1],
  ['trailer, standing', trailer, false, 2.5, 0],
  ['bench brake, shoes bend, let go', bench, true, 0, 0],
] as const;

it.each(cases)(
  'every reading has a working whose shown numbers give it again: %s',
  (_, scene, flexible, pressure, turning) => {
    const brake = mustRead(scene);
    const rig = createRig(brake, { flexible });
    let seen = 0;
    const fresh = startState(brake);
    for (const state of flexible || scene === runabout ? [fresh] : [fresh, worn(fresh)]) {
      for (const [list, by] of lists(rig, state, pressure, turning)) {
        const made = workingsOf(list, by);
        for (const r of list) {
          const w = made.get(r.key);
          if (!Number.isFinite(r.value)) {
            expect(w, r.key).toBeUndefined();
            continue;
          }
          if (!w) throw new Error(`no working of ${r.key}`);
          seen++;
          check(r, w);
        }
      }
    }
    expect(seen).toBeGreaterThan(60);
  },
);

it('a pull of the parking lever, a booster, a valve and a failed circuit too', () => {
  const scene = structuredClone(quayVan) as typeof quayVan & { hydraulics: object };
  Object.assign(scene.hydraulics, {
    booster: { gain: 4, knee: 120, play: 0.4 },
    rearValve: { kind: 'fixed', knee: 25, slope: 0.4 },
    circuits: { split: 'diagonal', give: 20, stroke: 12, failed: 'other' },
    residualPressure: 0.6,
  });
  const brake = mustRead(scene);
  const rig = createRig(brake);
  const state = startState(brake);
  for (const [list, by] of lists(rig, state, 0, 1, 400)) {
    for (const r of list) {
      const w = workingsOf([r], by).get(r.key);
      if (w) check(r, w);
    }
  }
  for (const [list, by] of lists(rig, state, 4, 1)) {
    for (const r of list) {
      const w = workingsOf([r], by).get(r.key);
      if (w) check(r, w);
    }
  }
});

it.each(['toothed lever', 'wedge'] as const)(
  'the spring of the strut off: what the next step of a %s needs, and its climb',
  (kind) => {
    const brake = withAdjuster(mustRead(quayVan), kind);
    const rig = createRig(brake);
    const fresh = startState(brake);
    const state = { ...fresh, condition: { ...fresh.condition, strutLoose: true } };
    const [[list, by]] = lists(rig, state, 4, 1);
    const made = workingsOf(list, by);
    const told = list.filter((r) => r.key === 'climb' || r.key === 'toNextTooth');
    expect(told.length).toBe(2);
    for (const r of told) {
      const w = made.get(r.key);
      expect(w === undefined, r.key).toBe(!Number.isFinite(r.value));
      if (w) check(r, w);
    }
  },
);

it('a reading without a working is an error, not a gap', () => {
  const brake = mustRead(quayVan);
  const rig = createRig(brake);
  const state = startState(brake);
  const [[list]] = lists(rig, state, 4, 1);
  expect(() => workingsOf(list, {})).toThrow(/No working of "brakeFactor"/);
});

/** Units of the givens as the library has them; pure numbers have none. */
const UNITS: Readonly<Record<string, string>> = {
  N·mm: 'N mm',
  'mm²': 'mm^2',
  'mm³': 'mm^3',
  'mm³/MPa': 'mm^3/MPa',
  'm/s²': 'm/s^2',
  N·m: 'N m',
  'N/(m/s)²': 'N/(m/s)^2',
  '°C': 'K',
  'N/(mm·K·√s)': 'N/(mm K s^0.5)',
};
const unitOf = (unit: string): string => UNITS[unit] ?? unit;

/** The formula with every number in its unit, as the library works with units. */
function withUnits(w: Working): string {
  const write = (t: Working['formula']): string => {
    if (t.is === 'given') return t.unit ? `(${t.value} ${unitOf(t.unit)})` : `(${t.value})`;
    if (t.is === 'number') return String(t.value);
    const of = t.of.map(write);
    switch (t.is) {
      case 'sum':
        return `(${of.join(' + ')})`;
      case 'less':
        return `(${of[0]} - ${of[1]})`;
      case 'product':
        return `(${of.join(' * ')})`;
      case 'over':
        return `(${of[0]} / ${of[1]})`;
      case 'square':
        return `(${of[0]})^2`;
      case 'root':
        return `sqrt(${of[0]})`;
      default:
        throw new Error(t.is);
    }
  };
  return write(w.formula);
}

// Told in per cent or thousandths: their formulas have a pure factor of 100, 1000 or 2000 that no unit has.
const FACTORED = /%|kJ/;

it('units come out by themselves: the library reckons with them and gets the reading’s', () => {
  const brake = mustRead(quayVan);
  const rig = createRig(brake);
  const state = startState(brake);
  let seen = 0;
  for (const [list, by] of lists(rig, state, 4, 1)) {
    for (const [key, w] of workingsOf(list, by)) {
      if (!w.unit || FACTORED.test(w.unit) || isPlain(w.formula)) continue;
      if (/max|min/.test(numbersText(w.formula, 4))) continue;
      const out = math.evaluate(withUnits(w));
      expect(out.toNumber(unitOf(w.unit)), key).toBeCloseTo(w.value, 6);
      seen++;
    }
  }
  expect(seen).toBeGreaterThan(25);
});
