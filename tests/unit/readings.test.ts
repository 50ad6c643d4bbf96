import { expect, it } from 'vitest';
import {
  balance,
  gapsOf,
  KM,
  parkedReadings,
  readingOf,
  readings,
  rest,
  roleOf,
  slopeReadings,
  turnReadings,
} from '../../sim/index.ts';
import { peak, shoeFactor, shoeFactorFull } from '../../sim/readings/factors.ts';
import { pedalStack } from '../../sim/readings/pedal.ts';
import { restGapOf } from '../../sim/readings/roles.ts';
import { meaningOf } from '../../sim/workshop/index.ts';
import { tablesQuay } from '../brakes.ts';
import { near } from '../near.ts';

const van = tablesQuay();
const list = (pressure: number, turning: -1 | 0 | 1, built = van) => {
  const i = balance(built.rig, built.state, { pressure, turning });
  return {
    i,
    of: (key: string) =>
      readingOf(readings(built.brake, built.state, i, rest(built.rig, built.state)), key),
  };
};

// Figures of the quay van calculated apart from this program, as they were rounded then, with what is allowed
// on them: tests/reference/teaching-tables.md, tables 0, 3, 4 and 6.
it('reads what the tables of the first teaching brake give at 40 bar', () => {
  const { of } = list(4, 1);
  for (const [key, value, rel] of [
    ['brakeFactor', 2.29, 0.01],
    ['shoeFactorLeading', 1.72, 0.01],
    ['shoeFactorTrailing', 0.57, 0.01],
    ['brakeFactorFull', 1.99, 0.01],
    ['torque', 227, 0.02],
    ['toeForceFront', 990, 0.01],
    ['toeForceRear', 990, 0.01],
    ['dragFront', 1700, 0.02],
    ['dragRear', 570, 0.02],
    ['peakFront', 0.87, 0.01],
    ['peakRear', 0.29, 0.02],
    ['pedalTravel', 18.1, 0.01],
    ['pedalGaps', 8.3, 0.01],
  ] as const)
    near(of(key).value, value, { rel }, key);
  near(list(2, 1).of('brakeFactorFull').value, 1.69, { rel: 0.01 }, '20 bar');
  near(list(8, 1).of('brakeFactorFull').value, 2.14, { rel: 0.01 }, '80 bar');
  near(list(2, 1).of('torque').value, 96, { rel: 0.02 }, 'torque at 20 bar');
  // Roles swap, readings do not: as strong backward, with the rear shoe leading.
  const back = list(4, -1).of;
  near(back('torque').value, 227, { rel: 0.02 }, 'backward');
  near(back('shoeFactorLeading').value, 1.72, { rel: 0.01 }, 'backward, leading');
  near(back('dragRear').value, 1700, { rel: 0.02 }, 'backward, rear');
});

it('reads the released brake as the tables do: gaps, strut, springs and what a tooth needs', () => {
  const { of } = list(0, 0);
  for (const key of ['clearanceFront', 'restClearanceRear', 'clearanceMean', 'restClearanceMean'])
    near(of(key).value, 0.3, { abs: 0.01 }, key);
  near(of('drumDiameter').value, 200, { abs: 1e-9 }, 'drum');
  // In the scene both springs pull 155 N with the linings on the drum. At rest each shoe has turned back about
  // its pin by 0.30 mm at the middle, 78 mm above it: by 0.30 · h/78 at a spring h above it. The upper one
  // (139 mm, 8 N/mm) gives 2 · 0.535 mm, the lower one (12 mm, 12 N/mm) 2 · 0.046 mm.
  near(of('spring0').value, 155 - 8 * 1.07, { abs: 0.5 }, 'upper spring');
  near(of('spring1').value, 155 - 12 * 0.092, { abs: 0.5 }, 'lower spring');
  expect([of('tooth').value, of('climb').value, of('torque').value]).toEqual([0, 0, 0]);
  // Table 0: seats 1.01 mm apart at the first press. Table 1: 103.67 − 103.20 mm; lost motion 0.90 in the scene.
  near(list(4, 1).of('separation').value, 1.01, { abs: 0.02 }, 'separation');
  near(of('toNextTooth').value, 0.9 + 0.47, { abs: 0.01 }, 'needed');
});

it('reads fluid and foot by hand sums', () => {
  const { of, i } = list(4, 1);
  // Bore 19.05 mm: area pi/4 · 19.05² = 285.02 mm², at 4 N/mm² 1 140.1 N.
  near(of('pistonForce').value, 1140.1, { abs: 0.05 }, 'piston force');
  expect(of('linePressure').value).toBe(40);
  // Master 20.64 mm: area 334.59 mm²; 4 N/mm² on it over a pedal of 4 : 1 are 334.6 N at the foot.
  near(of('pedalForce').value, 334.6, { abs: 0.05 }, 'pedal force');
  // 1 mm of play is 4 mm at the pedal; 120 mm³/MPa at 4 MPa are 480 mm³, over 334.59 mm² and by 4: 5.74 mm.
  near(of('pedalFree').value, 4, { abs: 1e-9 }, 'free play');
  near(of('pedalCircuit').value, 5.738, { abs: 1e-3 }, 'circuit');
  // Fluid of one brake, and the stroke of 8 mm less the travel that is told.
  const { pistonTravel: front } = i.shoes.front;
  const { pistonTravel: rear } = i.shoes.rear;
  near(of('fluid').value, 285.02 * (front + rear), { rel: 1e-4 }, 'fluid');
  near(of('runOut').value, 8 - Math.max(front, rear), { abs: 1e-9 }, 'run-out');
});

it('roles belong to the turning', () => {
  expect(roleOf('front', 1)).toBe('leading');
  expect(roleOf('front', -1)).toBe('trailing');
  expect(roleOf('rear', -1)).toBe('leading');
  expect(roleOf('rear', 1)).toBe('trailing');
  // Standing still the roles are those of forward travel.
  expect([roleOf('front', 0), roleOf('rear', 0)]).toEqual(['leading', 'trailing']);
});

it('tells nothing where there is nothing to read', () => {
  expect(list(0.3, 1).of('brakeFactor').value).toBeNaN();
  expect(list(4, 0).of('brakeFactor').value).toBeNaN();
  expect(list(4, 0).of('torque').value).toBe(0);
});

it('standing, both linings are held back as the trailing one is in turning: they stick', () => {
  const standing = list(4, 0).of;
  const trailing = list(4, 1).of('peakRear').value;
  // The table of the first teaching brake: 0.87 and 0.29 MPa at 40 bar.
  near(trailing, 0.29, { abs: 0.005 });
  near(standing('peakFront').value, trailing, { rel: 0.02 }, 'front');
  near(standing('peakRear').value, trailing, { rel: 0.02 }, 'rear');
});

it('a brake that locks has no torque and no factor', () => {
  const locking = tablesQuay((s) => {
    s.shoes.front.lining.friction = 0.9;
    s.shoes.rear.lining.friction = 0.9;
  });
  const { i, of } = list(4, 1, locking);
  expect(i.locked).toBe('front');
  for (const key of ['brakeFactor', 'brakeFactorFull', 'torque', 'peakFront', 'anchorForceFront'])
    expect(of(key).value, key).toBeNaN();
});

it('goes on to the ends of a lining, half an element beyond the outer ones', () => {
  // Along the line through the last two: 3 + (3 − 2)/2; and where it falls to the end, the highest stays.
  expect(peak(Float64Array.of(3, 2, 1))).toBe(3.5);
  expect(peak(Float64Array.of(1, 2, 3))).toBe(3.5);
  expect(peak(Float64Array.of(1, 5, 1))).toBe(5);
  expect(peak(Float64Array.of(4, 2))).toBe(5);
  expect(peak(Float64Array.of(4))).toBe(4);
  const { i } = list(0, 0);
  const gap = Float64Array.of(0.1, 0.2, 0.4, 0.5, 0.6, 0.9);
  const { toe, centre, heel } = gapsOf(van.brake.shoes.front, { ...i.shoes.front, gap });
  near(toe, 0.05, { abs: 1e-12 }, 'toe');
  near(centre, 0.45, { abs: 1e-12 }, 'centre');
  near(heel, 1.05, { abs: 1e-12 }, 'heel');
  // The rear shoe's arc ends at its toe.
  const rear = gapsOf(van.brake.shoes.rear, { ...i.shoes.rear, gap });
  near(rear.toe, 1.05, { abs: 1e-12 }, 'toe of the rear shoe');
  near(rear.heel, 0.05, { abs: 1e-12 }, 'heel of the rear shoe');
});

it('reads a share, a distance and a force with two parts', () => {
  const { i } = list(4, 1);
  const front = { ...i.shoes.front, anchorForce: [3, -4] as const };
  // 1.5 mm worn of the 3 mm between 4.5 and 1.5; 7 km; 3 and 4 make 5.
  const wear = { ...van.state.wear, front: new Float64Array(48).fill(1.5) };
  const state = { ...van.state, wear, distance: 7 * KM };
  const all = readings(van.brake, state, { ...i, shoes: { ...i.shoes, front } }, i);
  near(readingOf(all, 'liningShareFront').value, 50, { abs: 1e-9 }, 'share');
  near(readingOf(all, 'distance').value, 7, { abs: 1e-12 }, 'km');
  near(readingOf(all, 'anchorForceFront').value, 5, { abs: 1e-12 }, 'anchor');
});

it('tells no factor where no lining bears or nothing pushes', () => {
  const { i } = list(4, 1);
  const factors = (change: Partial<typeof i.shoes.front>, turning = i.turning) => {
    const shoes = { ...i.shoes, front: { ...i.shoes.front, ...change } };
    const now = { ...i, turning, shoes };
    return [shoeFactor(now, 'front'), shoeFactorFull(now, 'front')];
  };
  expect(factors({}).every((f) => f > 1)).toBe(true);
  for (const normalSum of [0, 1e-6]) expect(factors({ normalSum })).toEqual([NaN, NaN]);
  expect(factors({}, 0)).toEqual([NaN, NaN]);
  for (const push of [0, -1]) {
    expect(factors({ toeForce: push })[0]).toBeNaN();
    expect(factors({ pistonForce: push })[1]).toBeNaN();
  }
});

it('every reading has a name, a unit or none, one sentence and a formula; keys are one of a kind', () => {
  const i = balance(van.rig, van.state, { pressure: 4, turning: 1 });
  const press = { pressure: 4, turning: 1 } as const;
  const all = [
    ...readings(van.brake, van.state, i, rest(van.rig, van.state)),
    ...slopeReadings(van.rig, van.state, 0.2, 300),
    ...parkedReadings(van.rig, van.state, 300),
    ...turnReadings(van.rig, van.state, press),
  ];
  expect(new Set(all.map((r) => r.key)).size).toBe(all.length);
  for (const r of all) {
    expect(r.name.length).toBeGreaterThan(1);
    expect(meaningOf(r)).toMatch(/[.]$/);
    expect(r.formula.length).toBeGreaterThan(0);
  }
  expect(() => readingOf(all, 'no such')).toThrow(/no such/);
});

it('lining left is what a gauge finds: the ground shape counts, a sloped end does not', () => {
  const of = (
    change: (l: { groundRadius: number; chamferArc?: number; chamferDepth?: number }) => void,
  ) => {
    const built = tablesQuay((s) => change(s.shoes.front.lining));
    return list(0, 0, built).of('liningFront').value;
  };
  near(
    of(() => {}),
    4.5,
    { abs: 1e-9 },
    'as new',
  );
  // Ground to 99 mm its ends lie lower: a ray at angle d from the middle meets the smaller circle at
  // cos d + sqrt(99² − sin² d) instead of 100 (plane trigonometry); the last element stands half a step in.
  const d = ((55 - 55 / 48) * Math.PI) / 180;
  const lower = 100 - (Math.cos(d) + Math.sqrt(99 ** 2 - Math.sin(d) ** 2));
  near(
    of((l) => {
      l.groundRadius = 99;
    }),
    4.5 - lower,
    { abs: 1e-9 },
    'ground smaller',
  );
  near(
    of((l) => {
      l.chamferArc = 8;
      l.chamferDepth = 2;
    }),
    4.5,
    { abs: 1e-9 },
    'sloped ends',
  );
});

it('a pull of the parking lever moves no pedal', () => {
  const { rig, brake, state } = tablesQuay();
  const released = readingOf(
    readings(brake, state, rest(rig, state), rest(rig, state)),
    'pedalTravel',
  );
  const pulled = balance(rig, state, { pressure: 0, turning: 0, cable: 300 });
  expect(pulled.shoes.front.pistonTravel).toBeGreaterThan(0.1);
  const told = readingOf(readings(brake, state, pulled, rest(rig, state)), 'pedalTravel');
  near(told.value, released.value, { abs: 1e-3 }, 'travel');
});

it('the foot follows pistons that the line moves, not those that the lever alone moves', () => {
  const { i } = list(4, 1);
  // Pistons of 19.05 mm that have gone 1 mm together, in two brakes, before a master of 20.64 mm on a pedal of
  // 4 : 1: 2 · 4 · 19.05²/20.64² = 6.815 mm at the foot.
  const gaps = (pressure: number, cableForce: number) => {
    const shoe = (side: 'front' | 'rear') => ({ ...i.shoes[side], pistonTravel: 0.5 });
    const shoes = { front: shoe('front'), rear: shoe('rear') };
    return pedalStack(van.brake, { ...i, pressure, cableForce, shoes }).gaps;
  };
  near(gaps(1, 0), 6.815, { abs: 1e-3 }, 'line');
  near(gaps(1, 300), 6.815, { abs: 1e-3 }, 'line and lever');
  expect(gaps(0, 300)).toBe(0);
  // Nobody pulls and nothing is pressed: pistons that a hand has pushed out have taken their fluid.
  near(gaps(0, 0), 6.815, { abs: 1e-3 }, 'neither');
});

it('a clearance at rest is what was found, or by how much the linings stand inside the drum', () => {
  expect(restGapOf({ restGap: -0.2 }, 0.1)).toBe(-0.2);
  expect(restGapOf({ restGap: 0.2 }, 0.1)).toBe(0.1);
  expect(restGapOf({ restGap: 0 }, 0.1)).toBe(0.1);
});

it('reads films in thousandths of a millimetre and glaze in hundredths, and no row where all is bare', () => {
  const { i } = list(4, 1);
  const film = { water: 0.02, rust: 0.0005, glaze: { front: 0.25, rear: 0.5 } };
  const all = readings(van.brake, { ...van.state, film }, i, i);
  const told = (key: string) => {
    const { value, unit, digits } = readingOf(all, key);
    return [value, unit, digits];
  };
  expect(told('waterFilm')).toEqual([20, 'µm', 1]);
  expect(told('rustFilm')).toEqual([0.5, 'µm', 1]);
  expect(told('glazeOfFront')).toEqual([25, '%', 0]);
  expect(told('glazeOfRear')).toEqual([50, '%', 0]);
  expect(readings(van.brake, van.state, i, i).some(({ key }) => key === 'waterFilm')).toBe(false);
});
