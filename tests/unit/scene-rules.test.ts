import { describe, expect, it } from 'vitest';
import runabout from '../../scenes/ferry-runabout.json';
import { readScene } from '../../sim/index.ts';
import { rules } from '../../sim/scene/findings.ts';
import { mustRead, quayScene } from '../brakes.ts';
import type { Json } from '../mutate.ts';

/** A path into the scene with another value. */
type Change = readonly [path: string, value: Json];

function changed(scene: unknown, changes: readonly Change[]): unknown {
  const copy = structuredClone(scene) as Record<string, unknown>;
  for (const [path, value] of changes) {
    const keys = path.split('.');
    let at = copy;
    for (const key of keys.slice(0, -1)) at = at[key] as Record<string, unknown>;
    at[keys.at(-1) as string] = value;
  }
  return copy;
}

const findings = (scene: unknown) => {
  const read = readScene(scene);
  return read.ok ? [] : read.findings;
};

const lever = quayScene().adjuster.lever;
const adjuster = (change: object): Json =>
  ({ ...quayScene().adjuster, lever: undefined, ...change }) as unknown as Json;
const duty = { name: 'A', stops: [{ speed: 40, pressure: 20, perKm: 1 }] };

/**
 * One change of the first teaching brake (drum 200, hub 30, lining 4.5, cylinder 25.4 × 36 at 78, toes at
 * ±27.5, pins at ±16, −78) for every rule, and the place where it is told.
 */
const broken: Readonly<Record<string, readonly [path: string, ...Change[]]>> = {
  'drum limit over new': ['drum.diameterMax', ['drum.diameterMax', 199]],
  'drum limit within rim': ['drum.diameterMax', ['drum.diameterMax', 211]],
  'rim on drum': ['drum.rim', ['drum.rim', 60]],
  'lip under limit': ['drum.lipDiameter', ['drum.lipDiameter', 201.5]],
  'lip as wide as new': ['drum.lipDiameter', ['drum.lipDiameter', 180]],
  'out of round in limit': ['drum.outOfRoundMax', ['drum.outOfRoundMax', 5]],
  'climb told once': ['adjuster.climbForce', ['adjuster.climbForce', 30]],
  'hub inside drum': ['look.hubRadius', ['look.hubRadius', 120]],
  'web clear of hub': ['shoes.rear.steel.webDepth', ['shoes.rear.steel.webDepth', 70]],
  'studs on hub': ['look.studCircle', ['look.studCircle', 28]],
  'plate behind drum': ['look.plateRadius', ['look.plateRadius', 300]],
  'access hole in drum': ['look.accessHole.at', ['look.accessHole.at', [-80, 60]]],
  'anchor pin in eye': ['look.pinRadius', ['look.pinRadius', 9]],
  'pins beside each other': [
    'shoes.rear.anchor.at',
    ['shoes.rear.anchor.at', [0, -78]],
    ['shoes.front.anchor.at', [0, -78]],
  ],
  'wheel over drum': ['vehicle.tyreRadius', ['vehicle.tyreRadius', 105]],
  'iron of the drum': ['drum.heatCapacity', ['drum.heatCapacity', 5]],
  'lining arc': ['shoes.front.lining.to', ['shoes.front.lining.to', 100]],
  'lining on its side': [
    'shoes.front.lining.from',
    ['shoes.front.lining.from', -55],
    ['shoes.front.lining.to', 55],
    ['shoes.front.steel.tableArc', [-58, 58]],
  ],
  'table under lining': ['shoes.rear.steel.tableArc', ['shoes.rear.steel.tableArc', [-58.5, 50]]],
  'table on its side': ['shoes.rear.steel.tableArc', ['shoes.rear.steel.tableArc', [-58.5, 95]]],
  'lining width': ['shoes.rear.lining.width', ['shoes.rear.lining.width', 160]],
  'webs under lining': ['shoes.rear.steel.webThickness', ['shoes.rear.steel.webThickness', 40]],
  'lining limit': ['shoes.rear.lining.thicknessMin', ['shoes.rear.lining.thicknessMin', 5]],
  'lining in drum': ['shoes.rear.lining.thicknessNew', ['shoes.rear.lining.thicknessNew', 34]],
  'rivets in lining': ['shoes.rear.lining.rivetHeight', ['shoes.rear.lining.rivetHeight', 4.6]],
  'slope in lining': ['shoes.rear.lining.chamferDepth', ['shoes.rear.lining.chamferDepth', 4.6]],
  'ground radius': ['shoes.rear.lining.groundRadius', ['shoes.rear.lining.groundRadius', 120]],
  'lining ends over limit': [
    'shoes.rear.lining.groundRadius',
    ['shoes.rear.lining.groundRadius', 92],
  ],
  'drum goes on': ['shoes.rear.lining.groundRadius', ['shoes.rear.lining.groundRadius', 103]],
  'lining goes outward': [
    'shoes.rear.lining.from',
    ['shoes.rear.lining.from', -85],
    ['shoes.rear.steel.tableArc', [-88, 58.5]],
  ],
  'shoe on its side': ['shoes.front.toe', ['shoes.front.toe', [27.5, 78]]],
  'shoe in drum': ['shoes.rear.toe', ['shoes.rear.toe', [90, 78]]],
  'shoe clear of hub': ['shoes.rear.holdDown.at', ['shoes.rear.holdDown.at', [20, 0]]],
  'anchor below axle': ['shoes.rear.anchor.at', ['shoes.rear.anchor.at', [35, -12]]],
  'toe over anchor': ['shoes.rear.toe', ['shoes.rear.toe', [60, -60]]],
  'seat over anchor': ['shoes.rear.strutSeat', ['shoes.rear.strutSeat', [45, -70]]],
  'heel on its flat': ['shoes.rear.anchor.normal', ['shoes.rear.anchor.normal', 180]],
  'web holes in web': ['shoes.rear.webHoles.0.at', ['shoes.rear.webHoles.0.at', [95, 20]]],
  'steel of the table': [
    'shoes.rear.steel.tableThickness',
    ['shoes.rear.steel.tableThickness', 0.1],
  ],
  'weight of the shoe': ['shoes.rear.inertia', ['shoes.rear.inertia', 1e6]],
  'strut between shoes': ['shoes.rear.strutSeat', ['shoes.rear.strutSeat', [45, -40]]],
  'wall of the cylinder': ['cylinder.bore', ['cylinder.bore', 25.4]],
  'cylinder in drum': ['cylinder.at', ['cylinder.at', [0, 95]]],
  'cylinder between tables': [
    'shoes.rear.steel.tableArc',
    ['shoes.rear.steel.tableArc', [-58.5, 85]],
    ['cylinder.outerDiameter', 36],
  ],
  'strut under cylinder': ['shoes.rear.strutSeat', ['shoes.rear.strutSeat', [45, 70]]],
  'pistons in cylinder': ['cylinder.stroke', ['cylinder.stroke', 19]],
  'toe on the cylinder’s axis': ['shoes.rear.toe', ['shoes.rear.toe', [27.5, 74]]],
  'toe outside the cylinder': ['shoes.rear.toe', ['shoes.rear.toe', [12, 78]]],
  'travel within stroke': ['adjuster.lostMotion', ['adjuster.lostMotion', 14]],
  'spring of some length': [
    'springs.0.ends',
    ['springs.0.ends.0.at', [-1, 61]],
    ['springs.0.ends.1.at', [1, 61]],
  ],
  'spring between two parts': ['springs.1.ends', ['springs.1.ends.1.on', 'front']],
  'spring ends in drum': ['springs.0.ends.1.at', ['springs.0.ends.1.at', [90, 61]]],
  'spring clear of hub': [
    'springs.1.ends',
    ['springs.1.ends.0.at', [-44, 0]],
    ['springs.1.ends.1.at', [44, 0]],
  ],
  'springs pull back': [
    'springs.0.ends',
    [
      'springs',
      [
        {
          name: 'outward',
          ends: [
            { on: 'rear', at: [58, 61] },
            { on: 'plate', at: [78, 61] },
          ],
          rate: 8,
          fitted: 155,
        },
      ],
    ],
  ],
  'strut between seats': ['adjuster.lengthAtZero', ['adjuster.lengthAtZero', 130]],
  'pitch or lever': ['adjuster.pitch', ['adjuster.pitch', 0.5]],
  'teeth run forward': ['adjuster.lever.toothAngle', ['adjuster.lever.toothAngle', -2.39]],
  'growth in reach': ['adjuster.teeth', ['adjuster', adjuster({ pitch: 50, teeth: 2000 })]],
  'steps in one press': ['adjuster.perApplication', ['adjuster.perApplication', 21]],
  'slot play': ['adjuster.lostMotion', ['adjuster.lostMotion', 16]],
  'lever in drum': ['adjuster.lever.pin', ['adjuster.lever.toothRadius', 190]],
  'nose at the strut': ['adjuster.lever.pin', ['adjuster.lever.pin', [-60.1, 20]]],
  'teeth to hold': ['adjuster.lever.toothHeight', ['adjuster.lever.toothHeight', 3]],
  'parking lever in drum': ['parkingLever.hook', ['parkingLever.hook', [51, -98]]],
  'pivot on rear shoe': ['parkingLever.pivot', ['parkingLever.pivot', [-46, 68]]],
  'guide off the hook': ['parkingLever.cableGuide', ['parkingLever.cableGuide', [51, -41]]],
  'pull pushes the strut': ['parkingLever.hook', ['parkingLever.pullDirection', 0]],
  'slack to take up': ['parkingLever.slack', ['parkingLever.slack', 150]],
  'lines of the whole circuit': [
    'hydraulics.circuits.give',
    ['hydraulics.circuits', { split: 'axles', give: 130, stroke: 14 }],
  ],
  'stroke for both circuits': [
    'hydraulics.circuits.stroke',
    ['hydraulics.circuits', { split: 'axles', give: 30, stroke: 32 }],
  ],
  'knee that rises with the load': [
    'hydraulics.rearValve.kneeLaden',
    ['hydraulics.rearValve', { kind: 'load', kneeEmpty: 30, kneeLaden: 20, slope: 0.4 }],
  ],
  'residual pressure under the springs': [
    'hydraulics.residualPressure',
    ['hydraulics.residualPressure', 5],
  ],
  'films of water and rust': [
    'duties.1.weather.0.film',
    ['duties.1.weather.0', { surface: 'greasy', share: 0.1, film: 20 }],
  ],
  'tables rise': ['frictionAgainstTemperature.1.0', ['frictionAgainstTemperature.1.0', 100]],
  'letters as the tables have it': [
    'shoes.front.lining.friction',
    ['shoes.front.lining.friction', 'FD'],
  ],
  'friction of a lining': ['shoes.rear.lining.friction', ['shoes.rear.lining.friction', 1.2]],
  'tooth that is there': ['start.tooth', ['start.tooth', 21]],
  'drum at the start': ['start.drumDiameter', ['start.drumDiameter', 199]],
  'lining at the start': ['start.wear.rear', ['start.wear', { front: 0, rear: 4.5 }]],
  'wear that takes off': [
    'start.wear.rear',
    ['start.wear', { front: 0, rear: { toe: 0, middle: 0, heel: 1 } }],
  ],
  'strut at the start': ['start.tooth', ['start.tooth', 15]],
  'state of its own name': ['states.1.name', ['states.1.name', 'New']],
  'drums of the states': ['states.0.drumDiameter', ['states.0.drumDiameter', 205]],
  'less or more': ['states.0.more', ['states.0.less', 10], ['states.0.more', 10]],
  'click that comes': ['states.0.click', ['states', [{ name: 'Last', until: 'click', click: 21 }]]],
  'duty of its own name': ['duties.1.name', ['duties', [duty, duty]]],
  'pressure to lock at': [
    'duties.0.stops.0.deceleration',
    ['duties', [{ ...duty, stops: [{ speed: 40, deceleration: 3, perKm: 1 }] }]],
  ],
  'pressure or deceleration': [
    'duties.0.stops.0.pressure',
    ['duties', [{ ...duty, stops: [{ speed: 40, perKm: 1 }] }]],
  ],
  'shares of the weather': [
    'duties.0.weather',
    [
      'duties',
      [
        {
          ...duty,
          weather: [
            { surface: 'wet', share: 0.7 },
            { surface: 'damp', share: 0.4 },
          ],
        },
      ],
    ],
  ],
  'descents on the road': [
    'duties.0.descents',
    ['duties', [{ ...duty, descents: [{ slope: 8, length: 10, speed: 40, perKm: 0.2 }] }]],
  ],
};

describe('every rule of a brake that can be built', () => {
  it('has a name of its own, and a brake that breaks it', () => {
    const names = rules.map((rule) => rule.name);
    expect(new Set(names).size).toBe(names.length);
    expect(Object.keys(broken).sort()).toEqual([...names].sort());
  });
  it.each(rules.map((rule) => [rule.name, rule] as const))('%s', (name, rule) => {
    const [path, ...changes] = broken[name] ?? ['no example'];
    const base = name === 'heel on its flat' ? runabout : quayScene();
    mustRead(base);
    const told = findings(changed(base, changes)).find(
      (f) => f.path === path && f.reason === rule.reason,
    );
    expect(told, JSON.stringify(findings(changed(base, changes)))).toBeDefined();
    expect(told?.found).not.toBe('');
    expect(told?.allowed).not.toBe('');
    expect(`${told?.found}${told?.allowed}`).not.toMatch(/NaN|undefined|Infinity/);
  });
});

describe('what the allowed of a finding says', () => {
  /** A size at the limit that its finding tells, and a hair past it. */
  it.each([
    // Hand sums on the first teaching brake. Wall of 1 mm round the bore: 25.4 − 2.
    ['cylinder.bore', 23.4, 23.41, 'cylinder.bore', /at most 23.4 mm/],
    // Half of the cylinder's 36 mm.
    ['cylinder.stroke', 18, 18.01, 'cylinder.stroke', /at most 18 mm/],
    // Half of the rim's 10 mm all round: 200 + 10.
    ['drum.diameterMax', 210, 210.1, 'drum.diameterMax', /at most 210 mm/],
    // Seats at (−59.2, 52) and (45, 52): 104.2 mm, and nine tenths of it.
    ['adjuster.lengthAtZero', 104.2, 104.21, 'adjuster.lengthAtZero', /93.78 mm to 104.2 mm/],
    // Web inside the table: 100 − 4.5 − 2 = 93.5; less the hub, 30.
    ['shoes.rear.steel.webDepth', 63.4, 63.5, 'shoes.rear.steel.webDepth', /under 63.5 mm/],
    // Drum 100 and rim 10.
    ['vehicle.tyreRadius', 110.1, 110, 'vehicle.tyreRadius', /more than .* 110 mm/],
    // 0.4 of the radius.
    ['shoes.rear.anchor.at', [40, -40.1], [40, -39.9], 'shoes.rear.anchor.at', /at least 40 mm/],
  ] as const)('%s: %s is taken and %s is not', (path, good, bad, at, allowed) => {
    const told = (value: unknown) =>
      findings(changed(quayScene(), [[path, value as Json]])).filter((f) => f.path === at);
    expect(told(good)).toEqual([]);
    expect(
      told(bad)
        .map((f) => f.allowed)
        .join(),
    ).toMatch(allowed);
  });
});

describe('every list has a bound', () => {
  const many = (n: number, value: Json): Json => Array.from({ length: n }, () => value);
  const hole = { at: [76.5, 30.9], radius: 5.2 };
  it.each([
    ['shoes.rear.webHoles', many(20000, hole), '20000', 'at most 20'],
    ['springs', many(500, quayScene().springs[0] as unknown as Json), '500', 'at most 12'],
    ['duties', many(500, duty), '500', 'at most 30'],
    ['duties.0.stops', many(500, duty.stops[0] as Json), '500', 'at most 20'],
    ['states', many(500, { name: 'x', until: 'distance', distance: 0 }), '500', 'at most 40'],
    ['frictionAgainstTemperature', many(500, [20, 1]), '500', 'at most 50'],
    ['wearAgainstTemperature', [], '[]', 'at least 1'],
    ['title', 'x'.repeat(5000), '5000', 'at most 120 letters'],
    ['about', 'x'.repeat(5000), '5000', 'at most 2000 letters'],
  ] as const)('%s', (path, value, found, allowed) => {
    const told = findings(changed(quayScene(), [[path, value as Json]]));
    const [first] = told.filter((f) => f.path === path);
    expect(first?.found).toBe(found);
    expect(first?.allowed).toMatch(allowed);
  });
  it('and so has the list of findings', () => {
    const told = findings(changed(quayScene(), [['shoes.rear.webHoles', many(20000, 'hole')]]));
    expect(told.length).toBe(101);
    expect(told.at(-1)?.found).toMatch(/^\d+ more findings$/);
  });
});

it('a factor of 100 on friction is no lining', () => {
  const [first] = findings(changed(quayScene(), [['frictionAgainstTemperature.0.1', 100]]));
  expect(first).toMatchObject({ path: 'frictionAgainstTemperature.0.1', allowed: 'at most 3' });
});

it('the toothed lever’s geometry stands in for a pitch, and the other way round', () => {
  const pitched = changed(quayScene(), [['adjuster', adjuster({ pitch: 0.5 })]]);
  expect(findings(JSON.parse(JSON.stringify(pitched)))).toEqual([]);
  const both = changed(quayScene(), [['adjuster', adjuster({ lever, pitch: 0.5 })]]);
  expect(findings(both).map((f) => f.path)).toEqual(['adjuster.pitch']);
});
