import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import runabout from '../../scenes/ferry-runabout.json';
import { rules } from '../../sim/scene/findings.ts';
import { sceneSchema } from '../../sim/scene/schema.ts';
import { quayScene } from '../brakes.ts';

/**
 * Where each rule of a brake that can be built has its limit: a size that is just taken, one just past it, and
 * the two figures that are told. By hand on the first teaching brake: drum of 100 mm radius with a rim of 10,
 * hub 30; linings 4.5 on a table of 2, so that the web ends at 93.5; pins at (±16, −78), toes at (±27.5, 78),
 * seats at (−59.2, 52) and (45, 52), both linings 110° long with their middles level with the axle; cylinder at
 * (0, 78), 36 long and 25.4 across; strut of 103.2. A shoe that opens by 1 rad moves its middle by 78, its seat by
 * 130 and its toe by 156.
 */
type Changes = Readonly<Record<string, unknown>>;

function scene(changes: Changes, base: object = quayScene()) {
  const copy = structuredClone(base) as Record<string, unknown>;
  for (const [path, value] of Object.entries(changes)) {
    const keys = path.split('.');
    let at = copy;
    for (const key of keys.slice(0, -1)) at = at[key] as Record<string, unknown>;
    at[keys.at(-1) as string] = value;
  }
  return v.parse(sceneSchema, copy);
}

/** What one rule says; the others are not asked. */
function told(name: string, changes: Changes, base?: object) {
  const rule = rules.find((one) => one.name === name);
  if (!rule) throw new Error(`no rule ${name}`);
  return rule.broken(scene(changes, base));
}

type Row = readonly [
  rule: string,
  good: Changes,
  bad: Changes,
  path: string,
  found: string,
  allowed: string,
];

const spring = (a: unknown, b: unknown) => ({
  springs: [{ name: 'one', ends: [a, b], rate: 8, fitted: 155 }],
});
const on = (part: string, x: number, y: number) => ({ on: part, at: [x, y] });
const pins = (x: number) => ({
  'shoes.front.anchor.at': [-x, -78],
  'shoes.rear.anchor.at': [x, -78],
});
const rear = (key: string, value: unknown): Changes => ({ [`shoes.rear.${key}`]: value });
const front = (key: string, value: unknown): Changes => ({ [`shoes.front.${key}`]: value });
const plain = (change: object) => {
  const { lever: _, spring: __, ...own } = quayScene().adjuster;
  return { adjuster: { ...own, pitch: 0.5, ...change } };
};
const lever = (change: object) => ({
  'adjuster.lever': { ...quayScene().adjuster.lever, ...change },
});
const duty = (change: object) => ({
  duties: [{ name: 'A', stops: [{ speed: 40, pressure: 20, perKm: 1 }], ...change }],
});

const DRUM: readonly Row[] = [
  [
    'drum limit over new',
    { 'drum.diameterMax': 200 },
    { 'drum.diameterMax': 199.9 },
    'drum.diameterMax',
    '199.9 mm',
    '200 mm',
  ],
  [
    'drum limit within rim',
    { 'drum.diameterMax': 210 },
    { 'drum.diameterMax': 210.1 },
    'drum.diameterMax',
    '210.1 mm',
    "at most 210 mm, half of the rim's 10 mm",
  ],
  ['rim on drum', { 'drum.rim': 50 }, { 'drum.rim': 50.1 }, 'drum.rim', '50.1 mm', 'at most 50 mm'],
  [
    'lip under limit',
    { 'drum.lipDiameter': 201 },
    { 'drum.lipDiameter': 201.1 },
    'drum.lipDiameter',
    '201.1 mm',
    '201 mm',
  ],
  // 98 % of 200.
  [
    'lip as wide as new',
    { 'drum.lipDiameter': 196 },
    { 'drum.lipDiameter': 195.9 },
    'drum.lipDiameter',
    '195.9 mm',
    'at least 196 mm',
  ],
  // 2 % of 200.
  [
    'out of round in limit',
    { 'drum.outOfRoundMax': 4 },
    { 'drum.outOfRoundMax': 4.1 },
    'drum.outOfRoundMax',
    '4.1 mm',
    'at most 4 mm',
  ],
  [
    'hub inside drum',
    { 'look.hubRadius': 60 },
    { 'look.hubRadius': 60.1 },
    'look.hubRadius',
    '60.1 mm',
    'at most 60 mm',
  ],
  // 93.5 − 63.5 is the hub.
  [
    'web clear of hub',
    rear('steel.webDepth', 63.4),
    rear('steel.webDepth', 63.5),
    'shoes.rear.steel.webDepth',
    '63.5 mm, in to 30 mm',
    'under 63.5 mm',
  ],
  [
    'studs on hub',
    { 'look.studCircle': 26.4 },
    { 'look.studCircle': 26.5 },
    'look.studCircle',
    'out to 30.1 mm',
    'the hub, 30 mm',
  ],
  // Twelve of 7.2 are 86.4 long; 2π·13.74 = 86.331, 2π·13.76 = 86.457.
  [
    'studs on hub',
    { 'look.studs': 12, 'look.studCircle': 13.76 },
    { 'look.studs': 12, 'look.studCircle': 13.74 },
    'look.studs',
    '12 of 7.2 mm on a circle of 86.331 mm',
    'room',
  ],
  [
    'plate behind drum',
    { 'look.plateRadius': 80 },
    { 'look.plateRadius': 79.9 },
    'look.plateRadius',
    '79.9 mm',
    '80 mm to 150 mm',
  ],
  [
    'plate behind drum',
    { 'look.plateRadius': 150 },
    { 'look.plateRadius': 150.1 },
    'look.plateRadius',
    '150.1 mm',
    '80 mm to 150 mm',
  ],
  // 80 and half of 20 and 10.
  [
    'access hole in drum',
    { 'look.accessHole': { at: [80, 0], along: 0, length: 20, radius: 9.9 } },
    { 'look.accessHole': { at: [80, 0], along: 0, length: 20, radius: 10 } },
    'look.accessHole.at',
    'out to 100 mm',
    'under 100 mm',
  ],
  [
    'anchor pin in eye',
    { 'look.pinRadius': 8.5 },
    { 'look.pinRadius': 8.6 },
    'look.pinRadius',
    '8.6 mm',
    '8.6 mm',
  ],
  [
    'pins beside each other',
    pins(1.5),
    pins(1.45),
    'shoes.rear.anchor.at',
    '2.9 mm',
    'at least 3 mm',
  ],
  [
    'wheel over drum',
    { 'vehicle.tyreRadius': 110.1 },
    { 'vehicle.tyreRadius': 110 },
    'vehicle.tyreRadius',
    '110 mm',
    '110 mm',
  ],
  // 2π·100·10·32 mm³ of 7.2e-6 kg, 500 J/(kg·K) each: 723.8 J/K.
  [
    'iron of the drum',
    { 'drum.heatCapacity': 72.4 },
    { 'drum.heatCapacity': 72.3 },
    'drum.heatCapacity',
    '72.3 J/K',
    'at least 73 J/K',
  ],
];

const LINING: readonly Row[] = [
  [
    'lining arc',
    front('lining.to', 127),
    front('lining.to', 126.9),
    'shoes.front.lining.to',
    '126.9° after from 125°',
    '2° to 175°',
  ],
  [
    'lining arc',
    { 'shoes.front.lining.from': 92, 'shoes.front.lining.to': 267 },
    { 'shoes.front.lining.from': 92, 'shoes.front.lining.to': 267.1 },
    'shoes.front.lining.to',
    '267.1° after from 92°',
    '175°',
  ],
  [
    'lining on its side',
    front('lining.from', 90),
    front('lining.from', 89.9),
    'shoes.front.lining.from',
    '89.9°',
    '90° to 270°',
  ],
  [
    'lining on its side',
    front('lining.to', 270),
    front('lining.to', 270.1),
    'shoes.front.lining.to',
    '270.1°',
    '90° to 270°',
  ],
  [
    'lining on its side',
    rear('lining.from', -90),
    rear('lining.from', -90.1),
    'shoes.rear.lining.from',
    '-90.1°',
    '-90° to 90°',
  ],
  [
    'lining on its side',
    rear('lining.to', 90),
    rear('lining.to', 90.1),
    'shoes.rear.lining.to',
    '90.1°',
    '-90° to 90°',
  ],
  [
    'table under lining',
    rear('steel.tableArc', [-55, 55]),
    rear('steel.tableArc', [-54.9, 55]),
    'shoes.rear.steel.tableArc',
    '-54.9° to 55° under a lining from -55° to 55°',
    'lining’s arc',
  ],
  [
    'table under lining',
    rear('steel.tableArc', [-55, 55]),
    rear('steel.tableArc', [-55, 54.9]),
    'shoes.rear.steel.tableArc',
    '-55° to 54.9°',
    'lining’s arc',
  ],
  [
    'table on its side',
    rear('steel.tableArc', [-90, 90]),
    rear('steel.tableArc', [-90.1, 90]),
    'shoes.rear.steel.tableArc',
    '-90.1° to 90°',
    '-90° to 90°',
  ],
  [
    'table on its side',
    front('steel.tableArc', [90, 270]),
    front('steel.tableArc', [90, 270.1]),
    'shoes.front.steel.tableArc',
    '270.1°',
    '90° to 270°',
  ],
  [
    'table on its side',
    rear('steel.tableArc', [10, 10.1]),
    rear('steel.tableArc', [10, 10]),
    'shoes.rear.steel.tableArc',
    '10° to 10°',
    'from less than to',
  ],
  [
    'lining width',
    rear('lining.width', 150),
    rear('lining.width', 150.1),
    'shoes.rear.lining.width',
    '150.1 mm',
    'at most 150 mm',
  ],
  // Two webs of 16 are as wide as the lining.
  [
    'webs under lining',
    { 'shoes.rear.steel.webCount': 2, 'shoes.rear.steel.webThickness': 16 },
    { 'shoes.rear.steel.webCount': 2, 'shoes.rear.steel.webThickness': 16.1 },
    'shoes.rear.steel.webThickness',
    '32.2 mm of web',
    'width, 32 mm',
  ],
  [
    'lining limit',
    rear('lining.thicknessMin', 4.4),
    rear('lining.thicknessMin', 4.5),
    'shoes.rear.lining.thicknessMin',
    '4.5 mm',
    '4.5 mm',
  ],
  [
    'lining in drum',
    rear('lining.thicknessNew', 33),
    rear('lining.thicknessNew', 33.1),
    'shoes.rear.lining.thicknessNew',
    '33.1 mm on a table of 2 mm',
    'at most 35 mm',
  ],
  [
    'rivets in lining',
    rear('lining.rivetHeight', 4.4),
    rear('lining.rivetHeight', 4.5),
    'shoes.rear.lining.rivetHeight',
    '4.5 mm',
    '4.5 mm',
  ],
  [
    'slope in lining',
    rear('lining.chamferDepth', 4.4),
    rear('lining.chamferDepth', 4.5),
    'shoes.rear.lining.chamferDepth',
    '4.5 mm',
    '4.5 mm',
  ],
  // Half of an arc of 80°.
  [
    'slope in lining',
    { 'shoes.rear.lining.to': 25, 'shoes.rear.lining.chamferArc': 39.9 },
    { 'shoes.rear.lining.to': 25, 'shoes.rear.lining.chamferArc': 40 },
    'shoes.rear.lining.chamferArc',
    '40° at each end',
    'less than half',
  ],
  [
    'slope in lining',
    { 'shoes.rear.lining.to': 25, 'shoes.rear.lining.cutEdgeArc': 39.9 },
    { 'shoes.rear.lining.to': 25, 'shoes.rear.lining.cutEdgeArc': 40 },
    'shoes.rear.lining.cutEdgeArc',
    '40° at each end',
    'less than half',
  ],
  [
    'ground radius',
    rear('lining.groundRadius', 90),
    rear('lining.groundRadius', 89.9),
    'shoes.rear.lining.groundRadius',
    '89.9 mm',
    '90 mm to 105 mm',
  ],
  [
    'ground radius',
    rear('lining.groundRadius', 105),
    rear('lining.groundRadius', 105.1),
    'shoes.rear.lining.groundRadius',
    '105.1 mm',
    '90 mm to 105 mm',
  ],
  // Ground to 95: the circle's middle is 5 off, and at 55° it stands 5·cos 55° + √(95² − (5·sin 55°)²) = 97.780.
  [
    'lining ends over limit',
    { 'shoes.rear.lining.groundRadius': 95, 'shoes.rear.lining.thicknessMin': 2.27 },
    { 'shoes.rear.lining.groundRadius': 95, 'shoes.rear.lining.thicknessMin': 2.28 },
    'shoes.rear.lining.groundRadius',
    '95 mm, which leaves 2.28 mm',
    '2.28 mm',
  ],
  // A strut 1 shorter than its seats lets both middles stand 1/(2·130/78) = 0.3 off, a turn of 0.3/78, which is
  // 0.12166 at the end at −55°. Ground to 100.52 that end stands proud by 0.22084, to 100.53 by 0.22507.
  [
    'drum goes on',
    rear('lining.groundRadius', 100.52),
    rear('lining.groundRadius', 100.53),
    'shoes.rear.lining.groundRadius',
    '100.53 mm: at rest an end stands 0.103 mm',
    'at most 0.1 mm',
  ],
  [
    'drum goes on',
    front('lining.groundRadius', 100.52),
    front('lining.groundRadius', 103),
    'shoes.front.lining.groundRadius',
    '103 mm: at rest an end stands 1.128 mm',
    'at most 0.1 mm',
  ],
  // A lining from −45° to 55°, ground to 103: its middle, at 5°, opens by 16·sin 5° + 78·cos 5° = 79.0977.
  // Gap 1/(130/78 + 130/79.0977) = 0.302096, turn 0.0038193; at −45° 0.16746 of 1.04601 proud.
  [
    'drum goes on',
    rear('lining.from', -45),
    { 'shoes.rear.lining.from': -45, 'shoes.rear.lining.groundRadius': 103 },
    'shoes.rear.lining.groundRadius',
    'stands 0.879 mm',
    'at most 0.1 mm',
  ],
  // The line from the axis to the anchor: atan(78/16) = 78.41°.
  [
    'lining goes outward',
    rear('lining.from', -78.4),
    rear('lining.from', -78.5),
    'shoes.rear.lining.from',
    '-78.5°, past the anchor at (16, -78)',
    'before the line',
  ],
  [
    'lining goes outward',
    front('lining.to', 258.4),
    front('lining.to', 258.5),
    'shoes.front.lining.to',
    '258.5°, past the anchor at (-16, -78)',
    'before the line',
  ],
];

const SHOE: readonly Row[] = [
  [
    'shoe on its side',
    front('toe', [0, 78]),
    front('toe', [0.1, 78]),
    'shoes.front.toe',
    '(0.1, 78)',
    'left',
  ],
  [
    'shoe on its side',
    rear('strutSeat', [0, 52]),
    rear('strutSeat', [-0.1, 52]),
    'shoes.rear.strutSeat',
    '(-0.1, 52)',
    'right',
  ],
  [
    'shoe on its side',
    rear('holdDown.at', [0, 52]),
    rear('holdDown.at', [-0.1, 52]),
    'shoes.rear.holdDown.at',
    '(-0.1, 52)',
    'right',
  ],
  [
    'shoe on its side',
    front('anchor.at', [0, -78]),
    front('anchor.at', [0.1, -78]),
    'shoes.front.anchor.at',
    '(0.1, -78)',
    'left',
  ],
  // A pin of 4.6 at 95.4.
  [
    'shoe in drum',
    rear('anchor.at', [0, -95.3]),
    rear('anchor.at', [0, -95.4]),
    'shoes.rear.anchor.at',
    'out to 100 mm',
    'under 100 mm, inside the drum',
  ],
  [
    'shoe in drum',
    rear('toe', [0, 99.9]),
    rear('toe', [0, 100]),
    'shoes.rear.toe',
    'out to 100 mm',
    'under 100 mm, inside the drum',
  ],
  [
    'shoe in drum',
    rear('strutSeat', [0, 93.4]),
    rear('strutSeat', [0, 93.5]),
    'shoes.rear.strutSeat',
    'out to 93.5 mm',
    'under 93.5 mm, inside the table',
  ],
  [
    'shoe in drum',
    rear('holdDown.at', [0, 93.4]),
    rear('holdDown.at', [0, 93.5]),
    'shoes.rear.holdDown.at',
    'out to 93.5 mm',
    'under 93.5 mm, inside the table',
  ],
  [
    'shoe clear of hub',
    rear('holdDown.at', [30.1, 0]),
    rear('holdDown.at', [30, 0]),
    'shoes.rear.holdDown.at',
    '30 mm from the axis',
    'more than 30 mm',
  ],
  [
    'anchor below axle',
    rear('anchor.at', [16, -40]),
    { 'shoes.rear.anchor.at': [16, -39.9] },
    'shoes.rear.anchor.at',
    '39.9 mm below',
    'at least 40 mm',
  ],
  // An anchor right under the axle, 70 deep: 70·cos 60.1° = 34.894, 70·cos 59.9° = 35.106.
  [
    'anchor below axle',
    {
      'shoes.rear.anchor.at': [0, -70],
      'shoes.rear.lining.from': 4.8,
      'shoes.rear.lining.to': 115,
    },
    {
      'shoes.rear.anchor.at': [0, -70],
      'shoes.rear.lining.from': 5.2,
      'shoes.rear.lining.to': 115,
    },
    'shoes.rear.lining.from',
    'a middle at 60.1°, which goes out by 34.894 mm',
    'at least 35 mm',
  ],
  [
    'toe over anchor',
    rear('toe', [27.5, -28]),
    rear('toe', [27.5, -28.1]),
    'shoes.rear.toe',
    '49.9 mm above',
    'at least 50 mm',
  ],
  [
    'seat over anchor',
    rear('strutSeat', [45, -48]),
    rear('strutSeat', [45, -48.1]),
    'shoes.rear.strutSeat',
    '29.9 mm above',
    'at least 30 mm',
  ],
  [
    'web holes in web',
    rear('webHoles', [{ at: [80, 0], radius: 13.5 }]),
    rear('webHoles', [{ at: [80, 0], radius: 13.6 }]),
    'shoes.rear.webHoles.0.at',
    '66.4 mm to 93.6 mm',
    '30 mm to 93.5 mm',
  ],
  [
    'web holes in web',
    rear('webHoles', [{ at: [40, 0], radius: 10 }]),
    rear('webHoles', [{ at: [40, 0], radius: 10.1 }]),
    'shoes.rear.webHoles.0.at',
    '29.9 mm to 50.1 mm',
    '30 mm to 93.5 mm',
  ],
  [
    'web holes in web',
    rear('webHoles', [{ at: [0.1, 50], radius: 5 }]),
    rear('webHoles', [{ at: [0, 50], radius: 5 }]),
    'shoes.rear.webHoles.0.at',
    '45 mm to 55 mm',
    'on the shoe',
  ],
  [
    'web holes in web',
    front('webHoles', [{ at: [-0.1, 50], radius: 5 }]),
    front('webHoles', [{ at: [0.1, 50], radius: 5 }]),
    'shoes.front.webHoles.0.at',
    '45 mm to 55 mm',
    'on the shoe',
  ],
  [
    'steel of the table',
    rear('steel.tableThickness', 0.3),
    rear('steel.tableThickness', 0.29),
    'shoes.rear.steel.tableThickness',
    '0.29 mm',
    '0.3 mm',
  ],
  [
    'steel of the table',
    rear('steel.webThickness', 0.3),
    rear('steel.webThickness', 0.29),
    'shoes.rear.steel.webThickness',
    '0.29 mm',
    '0.3 mm',
  ],
  [
    'steel of the table',
    rear('steel.webDepth', 5),
    rear('steel.webDepth', 4.9),
    'shoes.rear.steel.webDepth',
    '4.9 mm',
    '5 mm',
  ],
  // √400 = 20, √399 = 19.975; √40000 = 200, √40100 = 200.25.
  [
    'weight of the shoe',
    { 'shoes.rear.mass': 1, 'shoes.rear.inertia': 400 },
    { 'shoes.rear.mass': 1, 'shoes.rear.inertia': 399 },
    'shoes.rear.inertia',
    '399 kg·mm² with 1 kg: as if 19.975 mm',
    '20 mm to 200 mm',
  ],
  [
    'weight of the shoe',
    { 'shoes.rear.mass': 1, 'shoes.rear.inertia': 40000 },
    { 'shoes.rear.mass': 1, 'shoes.rear.inertia': 40100 },
    'shoes.rear.inertia',
    'as if 200.25 mm',
    '20 mm to 200 mm',
  ],
  [
    'weight of the shoe',
    { 'shoes.rear.mass': 2, 'shoes.rear.inertia': 800 },
    { 'shoes.rear.mass': 4, 'shoes.rear.inertia': 1444 },
    'shoes.rear.inertia',
    'as if 19 mm',
    '20 mm to 200 mm',
  ],
  [
    'strut between shoes',
    { 'shoes.front.strutSeat': [-10, 52], 'shoes.rear.strutSeat': [10, 52] },
    { 'shoes.front.strutSeat': [-10, 52], 'shoes.rear.strutSeat': [9.9, 52] },
    'shoes.front.strutSeat',
    '(-10, 52) with the rear one at (9.9, 52)',
    'by 20 mm',
  ],
  // 0.3 of the length: a rise d over 100 with d² = 0.09·(100² + d²), 31.45.
  [
    'strut between shoes',
    { 'shoes.front.strutSeat': [-50, 40], 'shoes.rear.strutSeat': [50, 71.4] },
    { 'shoes.front.strutSeat': [-50, 40], 'shoes.rear.strutSeat': [50, 71.5] },
    'shoes.front.strutSeat',
    '(50, 71.5)',
    'about as high',
  ],
  [
    'strut between shoes',
    { 'shoes.front.strutSeat': [-50, 71.4], 'shoes.rear.strutSeat': [50, 40] },
    { 'shoes.front.strutSeat': [-50, 71.5], 'shoes.rear.strutSeat': [50, 40] },
    'shoes.front.strutSeat',
    '(50, 40)',
    'about as high',
  ],
  [
    'strut between shoes',
    { 'shoes.front.strutSeat': [-50, 30.1], 'shoes.rear.strutSeat': [50, 30.1] },
    { 'shoes.front.strutSeat': [-50, 30], 'shoes.rear.strutSeat': [50, 30] },
    'shoes.rear.strutSeat',
    'a strut 30 mm',
    'more than 30 mm',
  ],
  [
    'strut between shoes',
    {},
    { 'shoes.front.strutSeat': [-50, -40], 'shoes.rear.strutSeat': [50, -40] },
    'shoes.rear.strutSeat',
    'a strut 40 mm',
    'over the hub',
  ],
];

const CYLINDER: readonly Row[] = [
  [
    'wall of the cylinder',
    { 'cylinder.bore': 23.4 },
    { 'cylinder.bore': 23.5 },
    'cylinder.bore',
    '23.5 mm',
    'at most 23.4 mm in a cylinder of 25.4 mm',
  ],
  // Corner at (10 + 18, 83.3 + 12.7): 28² + 96² = 100².
  [
    'cylinder in drum',
    { 'cylinder.at': [10, 83.2] },
    { 'cylinder.at': [10, 83.4] },
    'cylinder.at',
    '(10, 83.4), a corner 100.096 mm',
    'under 100 mm',
  ],
  [
    'cylinder in drum',
    { 'cylinder.at': [-10, 83.2] },
    { 'cylinder.at': [-10, 83.4] },
    'cylinder.at',
    'a corner 100.096 mm',
    'under 100 mm',
  ],
  [
    'cylinder in drum',
    { 'cylinder.at': [0, 42.71] },
    { 'cylinder.at': [0, 42.69] },
    'cylinder.at',
    'down to 29.99 mm',
    'more than 30 mm',
  ],
  // 36 across it reaches √(18² + 96²) = 97.673 out, under no table; 93.5·cos 79° = 17.841.
  [
    'cylinder between tables',
    { 'cylinder.outerDiameter': 36, 'shoes.rear.steel.tableArc': [-58.5, 78.9] },
    { 'cylinder.outerDiameter': 36, 'shoes.rear.steel.tableArc': [-58.5, 79] },
    'shoes.rear.steel.tableArc',
    'x 17.841 mm, over a cylinder that reaches 97.673 mm',
    'past x 18 mm',
  ],
  [
    'cylinder between tables',
    { 'cylinder.outerDiameter': 36, 'shoes.front.steel.tableArc': [101.1, 238.5] },
    { 'cylinder.outerDiameter': 36, 'shoes.front.steel.tableArc': [101, 238.5] },
    'shoes.front.steel.tableArc',
    'x -17.841 mm',
    'past x -18 mm',
  ],
  // 2 to the right of the axle: acos(20/93.5) = 77.65°, and √(20² + 96²) = 98.061.
  [
    'cylinder between tables',
    {
      'cylinder.at': [2, 78],
      'cylinder.outerDiameter': 36,
      'shoes.rear.steel.tableArc': [-58.5, 77.6],
    },
    {
      'cylinder.at': [2, 78],
      'cylinder.outerDiameter': 36,
      'shoes.rear.steel.tableArc': [-58.5, 77.7],
    },
    'shoes.rear.steel.tableArc',
    'reaches 98.061 mm',
    'past x 20 mm',
  ],
  // Under a table it has room to √(93.5² − 18²) = 91.751, 27.502 across.
  [
    'cylinder between tables',
    { 'cylinder.outerDiameter': 27.5, 'shoes.rear.steel.tableArc': [-58.5, 85] },
    { 'cylinder.outerDiameter': 27.51, 'shoes.rear.steel.tableArc': [-58.5, 85] },
    'shoes.rear.steel.tableArc',
    'over a cylinder',
    'past x 18 mm',
  ],
  [
    'strut under cylinder',
    rear('strutSeat', [45, 65.2]),
    rear('strutSeat', [45, 65.31]),
    'shoes.rear.strutSeat',
    '65.31 mm',
    'under the cylinder, 65.3 mm',
  ],
  [
    'pistons in cylinder',
    { 'cylinder.stroke': 18 },
    { 'cylinder.stroke': 18.1 },
    'cylinder.stroke',
    '18.1 mm',
    'at most 18 mm',
  ],
  // A twentieth of 19.05.
  [
    'toe on the cylinder’s axis',
    rear('toe', [27.5, 78.95]),
    rear('toe', [27.5, 78.96]),
    'shoes.rear.toe',
    '78.96 mm',
    '78 mm, to within 0.95',
  ],
  [
    'toe on the cylinder’s axis',
    rear('toe', [27.5, 77.05]),
    rear('toe', [27.5, 77.04]),
    'shoes.rear.toe',
    '77.04 mm',
    '78 mm, to within 0.95',
  ],
  [
    'toe outside the cylinder',
    rear('toe', [18, 78]),
    rear('toe', [17.9, 78]),
    'shoes.rear.toe',
    'x 17.9 mm',
    'x 18 mm',
  ],
  [
    'toe outside the cylinder',
    front('toe', [-18, 78]),
    front('toe', [-17.9, 78]),
    'shoes.front.toe',
    'x -17.9 mm',
    'x -18 mm',
  ],
  [
    'toe outside the cylinder',
    { 'cylinder.at': [2, 78], 'shoes.rear.toe': [20, 78] },
    { 'cylinder.at': [2, 78], 'shoes.rear.toe': [19.9, 78] },
    'shoes.rear.toe',
    'x 19.9 mm',
    'x 20 mm',
  ],
  // A clearance of 0.3 is 0.3·156/78 at a toe; a slot play of 1.1 lets 0.33 be, 0.66 at a toe.
  [
    'travel within stroke',
    { 'cylinder.stroke': 0.61 },
    { 'cylinder.stroke': 0.59 },
    'adjuster.lengthAtZero',
    '103.2 mm: the front piston travels 0.6 mm',
    'stroke of 0.59 mm',
  ],
  [
    'travel within stroke',
    { 'cylinder.stroke': 0.67, 'adjuster.lostMotion': 1.1 },
    { 'cylinder.stroke': 0.65, 'adjuster.lostMotion': 1.1 },
    'adjuster.lostMotion',
    '1.1 mm: the front piston travels 0.66 mm',
    'stroke of 0.65 mm',
  ],
];

const SPRINGS: readonly Row[] = [
  [
    'spring of some length',
    spring(on('front', -2.5, 61), on('rear', 2.5, 61)),
    spring(on('front', -2.4, 61), on('rear', 2.5, 61)),
    'springs.0.ends',
    '4.9 mm apart',
    '5 mm',
  ],
  [
    'spring ends in drum',
    spring(on('plate', 0, 99.9), on('rear', 45, 61)),
    spring(on('plate', 0, 100), on('rear', 45, 61)),
    'springs.0.ends.0.at',
    '(0, 100), 100 mm',
    'under 100 mm, inside the drum',
  ],
  [
    'spring ends in drum',
    spring(on('plate', 10, 61), on('rear', 0, 93.4)),
    spring(on('plate', -10, 61), on('rear', 0, 93.5)),
    'springs.0.ends.1.at',
    '93.5 mm from',
    'under 93.5 mm, inside the table',
  ],
  [
    'spring ends in drum',
    spring(on('front', 0, 61), on('rear', 45, 61)),
    spring(on('front', 0.1, 61), on('rear', 45, 61)),
    'springs.0.ends.0.at',
    '(0.1, 61)',
    'on the front shoe, left',
  ],
  [
    'spring ends in drum',
    spring(on('front', -45, 61), on('rear', 0, 61)),
    spring(on('front', -45, 61), on('rear', -0.1, 61)),
    'springs.0.ends.1.at',
    '(-0.1, 61)',
    'on the rear shoe, right',
  ],
  [
    'spring clear of hub',
    spring(on('front', -44, 30.1), on('rear', 44, 30.1)),
    spring(on('front', -44, 30), on('rear', 44, 30)),
    'springs.0.ends',
    'a spring 30 mm',
    'more than 30 mm',
  ],
  // 155 N outward, 61 + 78 over the pin: 21545 N·mm.
  [
    'springs pull back',
    spring(on('rear', 58, 61), on('plate', 38, 61)),
    spring(on('rear', 58, 61), on('plate', 78, 61)),
    'springs.0.ends',
    "the rear shoe's springs together press it onto the drum with 21545 N",
    'back',
  ],
  [
    'springs pull back',
    spring(on('plate', -38, 61), on('front', -58, 61)),
    spring(on('plate', -78, 61), on('front', -58, 61)),
    'springs.0.ends',
    "the front shoe's springs together press it onto the drum with 21545 N",
    'back',
  ],
];

const ADJUSTER: readonly Row[] = [
  // Nine tenths of 104.2.
  [
    'strut between seats',
    { 'adjuster.lengthAtZero': 104.2 },
    { 'adjuster.lengthAtZero': 104.21 },
    'adjuster.lengthAtZero',
    '104.21 mm between seats 104.2 mm',
    '93.78 mm to 104.2 mm',
  ],
  [
    'strut between seats',
    { 'adjuster.lengthAtZero': 93.79 },
    { 'adjuster.lengthAtZero': 93.77 },
    'adjuster.lengthAtZero',
    '93.77 mm',
    '93.78 mm to 104.2 mm',
  ],
  ['pitch or lever', plain({}), plain({ pitch: undefined }), 'adjuster', 'neither', 'a pitch'],
  ['pitch or lever', lever({}), { 'adjuster.pitch': 0.5 }, 'adjuster.pitch', 'both', 'not both'],
  [
    'climb told once',
    { 'adjuster.climbForce': 0 },
    { 'adjuster.climbForce': 0.1 },
    'adjuster.climbForce',
    '0.1 N',
    'not both',
  ],
  [
    'teeth run forward',
    plain({ pitch: 0.005 }),
    plain({ pitch: 0.004 }),
    'adjuster.pitch',
    '0.004 mm',
    '0.005 mm',
  ],
  [
    'teeth run forward',
    lever({ toothAngle: 0.1 }),
    lever({ toothAngle: 0 }),
    'adjuster.lever.toothAngle',
    '0°',
    'more than 0°',
  ],
  // 70 + 20·5.25 = 175.
  [
    'teeth run forward',
    lever({ toothAngle: 5.25 }),
    lever({ toothAngle: 5.3 }),
    'adjuster.lever.toothAngle',
    '176.0°',
    'at most 175°',
  ],
  // One and a half of two linings of 4.5 and a drum 0.5 larger all round, by 130/78: 25.
  [
    'growth in reach',
    plain({ pitch: 1.24 }),
    plain({ pitch: 1.26 }),
    'adjuster.teeth',
    '20 that make the strut 25.2 mm longer',
    'at most 25 mm',
  ],
  [
    'steps in one press',
    { 'adjuster.perApplication': 20 },
    { 'adjuster.perApplication': 21 },
    'adjuster.perApplication',
    '21',
    'at most 20',
  ],
  // Two linings of 4.5 by 130/78.
  [
    'slot play',
    { 'adjuster.lostMotion': 14.99 },
    { 'adjuster.lostMotion': 15.01 },
    'adjuster.lostMotion',
    '15.01 mm',
    'at most 15 mm',
  ],
  // Pin at (−60, 0), last tooth 20·2.39 = 47.8° before straight down: (60 + r·sin 47.8°)² + (r·cos 47.8°)² is 100² at r = 47.07.
  [
    'lever in drum',
    lever({ pin: [-60, 0], toothRadius: 47 }),
    lever({ pin: [-60, 0], toothRadius: 47.1 }),
    'adjuster.lever.pin',
    '(-60, 0), with teeth out to 100.027 mm',
    'under 100 mm',
  ],
  [
    'lever in drum',
    lever({ pin: [60, 0], toothRadius: 47 }),
    lever({ pin: [60, 0], toothRadius: 47.1 }),
    'adjuster.lever.pin',
    '(60, 0), with teeth out to 100.027 mm',
    'under 100 mm',
  ],
  [
    'lever in drum',
    lever({ pin: [-60, -60], toothRadius: 1 }),
    lever({ pin: [-60, -79.5], toothRadius: 0.5 }),
    'adjuster.lever.pin',
    'teeth out to 100',
    'under 100 mm',
  ],
  [
    'lever in drum',
    lever({ pin: [-60, 79.9], toothRadius: 1 }),
    lever({ pin: [-60, 80], toothRadius: 1 }),
    'adjuster.lever.pin',
    'teeth out to 100 mm',
    'under 100 mm',
  ],
  // 12·sin 70° = 11.2763 over the pin, the seat at 52, the window half of 11.
  [
    'nose at the strut',
    lever({ pin: [-60.1, 46.2] }),
    lever({ pin: [-60.1, 46.23] }),
    'adjuster.lever.pin',
    'a nose 57.506 mm',
    "52 mm, to within half of the window's height, 5.5 mm",
  ],
  [
    'nose at the strut',
    lever({ pin: [-60.1, 35.23] }),
    lever({ pin: [-60.1, 35.22] }),
    'adjuster.lever.pin',
    'a nose 46.496 mm',
    '5.5 mm',
  ],
  // 27·0.43·π/180 = 0.2026, with 0.42 0.1979.
  [
    'teeth to hold',
    lever({ toothAngle: 0.43, toothHeight: 0.1 }),
    lever({ toothAngle: 0.42, toothHeight: 0.1 }),
    'adjuster.lever.toothAngle',
    '0.198 mm apart',
    '0.2 mm',
  ],
  // 27·2.39·π/180 = 1.12626, half as much again 1.68939.
  [
    'teeth to hold',
    lever({ toothHeight: 1.68 }),
    lever({ toothHeight: 1.7 }),
    'adjuster.lever.toothHeight',
    '1.7 mm',
    'at most 1.689 mm on teeth 1.126 mm apart',
  ],
  // Half of a radius of 2, on teeth 2·π/4 apart.
  [
    'teeth to hold',
    lever({ toothRadius: 2, toothAngle: 45, toothHeight: 1 }),
    lever({ toothRadius: 2, toothAngle: 45, toothHeight: 1.1 }),
    'adjuster.lever.toothHeight',
    '1.1 mm',
    'at most 1 mm on teeth 1.571 mm apart',
  ],
];

const PARKING: readonly Row[] = [
  [
    'parking lever in drum',
    { 'parkingLever.pivot': [30.1, 0] },
    { 'parkingLever.pivot': [30, 0] },
    'parkingLever.pivot',
    '30 mm',
    '30 mm to 93.5 mm',
  ],
  [
    'parking lever in drum',
    { 'parkingLever.hook': [93.4, 0] },
    { 'parkingLever.hook': [93.5, 0] },
    'parkingLever.hook',
    '93.5 mm',
    '30 mm to 93.5 mm',
  ],
  [
    'parking lever in drum',
    { 'parkingLever.cableGuide': [0, -30.1] },
    { 'parkingLever.cableGuide': [0, -30] },
    'parkingLever.cableGuide',
    '30 mm',
    '30 mm to 93.5 mm',
  ],
  [
    'pivot on rear shoe',
    { 'parkingLever.pivot': [0.1, 68] },
    { 'parkingLever.pivot': [0, 68] },
    'parkingLever.pivot',
    '(0, 68)',
    'right',
  ],
  [
    'guide off the hook',
    { 'parkingLever.hook': [50, -30], 'parkingLever.cableGuide': [-40, -30] },
    { 'parkingLever.hook': [50, -29.9], 'parkingLever.cableGuide': [-40, -29.9] },
    'parkingLever.cableGuide',
    'a cable 29.9 mm',
    'the hub, 30 mm',
  ],
  // A guide inside the hub is told by another rule, one as far out as the hub is here.
  [
    'guide off the hook',
    { 'parkingLever.hook': [50, -29], 'parkingLever.cableGuide': [0, -29] },
    { 'parkingLever.hook': [50, -18], 'parkingLever.cableGuide': [-24, -18] },
    'parkingLever.cableGuide',
    'a cable 18 mm',
    'the hub, 30 mm',
  ],
  [
    'guide off the hook',
    { 'parkingLever.hook': [50, -41], 'parkingLever.cableGuide': [60, -41] },
    { 'parkingLever.hook': [50, -41], 'parkingLever.cableGuide': [59.9, -41] },
    'parkingLever.cableGuide',
    '9.9 mm from the hook',
    '10 mm',
  ],
  // The rear seat is at (45, 52), and the strut level: its arm is the pivot's height over it.
  [
    'pull pushes the strut',
    { 'parkingLever.pivot': [46, 53] },
    { 'parkingLever.pivot': [46, 52.9] },
    'parkingLever.pivot',
    '0.9 mm',
    'at least 1 mm',
  ],
  [
    'pull pushes the strut',
    { 'parkingLever.pivot': [46, 51] },
    { 'parkingLever.pivot': [46, 51.1], 'parkingLever.pullDirection': 0 },
    'parkingLever.pivot',
    '0.9 mm',
    'at least 1 mm',
  ],
  // A pull straight down has the hook's x over the pivot's as its arm; the strut's is 16.
  [
    'pull pushes the strut',
    { 'parkingLever.hook': [62.1, -41], 'parkingLever.pullDirection': 270 },
    { 'parkingLever.hook': [61.9, -41], 'parkingLever.pullDirection': 270 },
    'parkingLever.hook',
    '(61.9, -41), where the pull has an arm of 15.9 mm',
    "the strut's, 16 mm",
  ],
  [
    'pull pushes the strut',
    { 'parkingLever.pullDirection': 180 },
    { 'parkingLever.pullDirection': 0 },
    'parkingLever.hook',
    'an arm of -109 mm',
    '16 mm',
  ],
  // A pivot 16 under the seat is pushed the other way; the hook is 77 under it.
  [
    'pull pushes the strut',
    { 'parkingLever.pivot': [46, 36], 'parkingLever.pullDirection': 0 },
    { 'parkingLever.pivot': [46, 36], 'parkingLever.pullDirection': 180 },
    'parkingLever.hook',
    'an arm of -77 mm',
    '16 mm',
  ],
  // A strut of 80 to the left and 60 down: 10 beside its end the pivot is 10·0.6 off its line.
  [
    'pull pushes the strut',
    {
      'shoes.rear.strutSeat': [20.8, 112],
      'parkingLever.pivot': [30.8, 112],
      'parkingLever.hook': [36.9, -41],
      'parkingLever.pullDirection': 90,
    },
    {
      'shoes.rear.strutSeat': [20.8, 112],
      'parkingLever.pivot': [30.8, 112],
      'parkingLever.hook': [36.7, -41],
      'parkingLever.pullDirection': 90,
    },
    'parkingLever.hook',
    'an arm of 5.9 mm',
    "the strut's, 6 mm",
  ],
  // A cable from the hook straight down to its guide, without a direction of its own.
  [
    'pull pushes the strut',
    { 'parkingLever.hook': [62.1, -41], 'parkingLever.cableGuide': [62.1, -61] },
    { 'parkingLever.hook': [61.9, -41], 'parkingLever.cableGuide': [61.9, -61] },
    'parkingLever.hook',
    'an arm of 15.9 mm',
    '16 mm',
  ],
  [
    'pull pushes the strut',
    {
      // A cable 3 to the left and 4 down: the hook, 15 beside and 100 under the pivot, has an arm of
      // 15·0.8 + 100·0.6 = 72 about it.
      'parkingLever.pivot': [46, 68],
      'parkingLever.hook': [61, -32],
      'parkingLever.cableGuide': [31, -72],
    },
    {
      'parkingLever.pivot': [46, 130],
      'parkingLever.hook': [61, 30],
      'parkingLever.cableGuide': [31, -10],
    },
    'parkingLever.hook',
    'an arm of 72 mm',
    "the strut's, 78 mm",
  ],
  [
    'slack to take up',
    { 'parkingLever.slack': 80 },
    { 'parkingLever.slack': 80.1 },
    'parkingLever.slack',
    '80.1 mm',
    'at most 80 mm',
  ],
];

const circuits = (give: number, stroke: number) => ({
  'hydraulics.circuits': { split: 'axles', give, stroke },
});
const load = (kneeLaden: number) => ({
  'hydraulics.rearValve': { kind: 'load', kneeEmpty: 30, kneeLaden, slope: 0.4 },
});
const HYDRAULICS: readonly Row[] = [
  [
    'lines of the whole circuit',
    circuits(120, 14),
    circuits(120.1, 14),
    'hydraulics.circuits.give',
    '120.1 mm³/MPa',
    '120 mm³/MPa',
  ],
  [
    'stroke for both circuits',
    { ...circuits(30, 29.9), 'hydraulics.masterStroke': 30 },
    { ...circuits(30, 30), 'hydraulics.masterStroke': 30 },
    'hydraulics.circuits.stroke',
    '30 mm',
    'less than the whole stroke, 30 mm',
  ],
  [
    'knee that rises with the load',
    load(30),
    load(29.9),
    'hydraulics.rearValve.kneeLaden',
    '29.9 bar',
    "the empty vehicle's 30 bar",
  ],
];

const START: readonly Row[] = [
  [
    'tooth that is there',
    { 'start.tooth': 20 },
    { 'start.tooth': 21 },
    'start.tooth',
    '21',
    '0 to 20',
  ],
  [
    'tooth that is there',
    { otherWheel: { tooth: 20 } },
    { otherWheel: { tooth: 21 } },
    'otherWheel.tooth',
    '21',
    '0 to 20',
  ],
  [
    'drum at the start',
    { 'start.drumDiameter': 200 },
    { 'start.drumDiameter': 199.9 },
    'start.drumDiameter',
    '199.9 mm',
    '200 mm as new to 203 mm',
  ],
  [
    'drum at the start',
    { 'start.drumDiameter': 203 },
    { 'start.drumDiameter': 203.1 },
    'start.drumDiameter',
    '203.1 mm',
    '200 mm as new to 203 mm',
  ],
  [
    'lining at the start',
    { 'start.wear': { front: 4.4, rear: 0 } },
    { 'start.wear': { front: 4.5, rear: 0 } },
    'start.wear.front',
    '4.5 mm',
    '4.5 mm',
  ],
  // The parabola through 0, 0 and 1 is 2p² − p: −1/8 at a quarter.
  [
    'wear that takes off',
    { 'start.wear': { front: 0, rear: 0 } },
    { 'start.wear': { front: 0, rear: { toe: 0, middle: 0, heel: 1 } } },
    'start.wear.rear',
    '-0.125 mm',
    '0 mm or more',
  ],
  // Seats 104.2 apart and 0.5 to spare. The hook's arm is 109 and the notch's 16: held 10 off, 1.468 longer.
  [
    'strut at the start',
    { 'parkingLever.pullDirection': 180, 'start.leverOffStop': 10 },
    { 'parkingLever.pullDirection': 180, 'start.leverOffStop': 10.3 },
    'start.leverOffStop',
    '10.3 mm, with it a strut of 104.712 mm',
    'at most 104.7 mm',
  ],
  // Two teeth of 0.5 alone go in, 104.2, and 5·16/109 more does not.
  [
    'strut at the start',
    { ...plain({}), 'parkingLever.pullDirection': 180, 'start.tooth': 2, 'start.leverOffStop': 3 },
    { ...plain({}), 'parkingLever.pullDirection': 180, 'start.tooth': 2, 'start.leverOffStop': 5 },
    'start.leverOffStop',
    '5 mm, with it a strut of 104.934 mm',
    'at most 104.7 mm',
  ],
  // Wear of both linings by w lets the seats part by 2·w·130/78, of one by w·130/78; and a drum as its radius.
  [
    'strut at the start',
    { ...plain({}), 'start.tooth': 4, 'start.wear': { front: 0.31, rear: 0 } },
    { ...plain({}), 'start.tooth': 4, 'start.wear': { front: 0.27, rear: 0 } },
    'start.tooth',
    '4, a strut of 105.2 mm',
    'at most 105.15 mm',
  ],
  [
    'strut at the start',
    { ...plain({}), 'start.tooth': 4, 'start.wear': { front: 0, rear: 0.31 } },
    { ...plain({}), 'start.tooth': 4, 'start.wear': { front: 0, rear: 0.27 } },
    'start.tooth',
    '4, a strut of 105.2 mm',
    'at most 105.15 mm',
  ],
  [
    'strut at the start',
    { ...plain({}), 'start.tooth': 4, 'start.drumDiameter': 200.31 },
    { ...plain({}), 'start.tooth': 4, 'start.drumDiameter': 200.27 },
    'start.tooth',
    'a strut of 105.2 mm',
    'at most 105.15 mm',
  ],
  // Uneven: 0.2 worn at the toe's end, which opens by 16·sin 55° + 78·cos 55° = 57.845, is as good as
  // 0.2·78/57.845 = 0.26968 even, and comes first; at the heel 0.12 at 31.633 is as good as 0.296. Room 105.1495.
  ...(['front', 'rear'] as const).map((side): Row => {
    const wear = {
      'start.tooth': 1,
      'start.wear': { front: 0, rear: 0, [side]: { toe: 0.2, middle: 0.3, heel: 0.12 } },
    };
    return [
      'strut at the start',
      { ...plain({ pitch: 1.94 }), ...wear },
      { ...plain({ pitch: 1.96 }), ...wear },
      'start.tooth',
      '1, a strut of 105.16 mm',
      'at most 105.149 mm',
    ];
  }),
  // 0.05 at the heel's end, which opens by −16·sin 55° + 78·cos 55° = 31.633: 0.12329 even, room 104.9055.
  ...(['front', 'rear'] as const).map((side): Row => {
    const wear = {
      'start.tooth': 1,
      'start.wear': { front: 0, rear: 0, [side]: { toe: 0.3, middle: 0.3, heel: 0.05 } },
    };
    return [
      'strut at the start',
      { ...plain({ pitch: 1.7 }), ...wear },
      { ...plain({ pitch: 1.71 }), ...wear },
      'start.tooth',
      '1, a strut of 104.91 mm',
      'at most 104.905 mm',
    ];
  }),
];

const OTHERS: readonly Row[] = [
  [
    'state of its own name',
    {
      states: [
        { name: 'A', until: 'distance', distance: 0 },
        { name: 'B', until: 'distance', distance: 0 },
      ],
    },
    {
      states: [
        { name: 'A', until: 'distance', distance: 0 },
        { name: 'A', until: 'distance', distance: 0 },
      ],
    },
    'states.1.name',
    '"A" again',
    'own',
  ],
  [
    'drums of the states',
    { 'states.0.drumDiameter': 200 },
    { 'states.0.drumDiameter': 199.9 },
    'states.0.drumDiameter',
    '199.9 mm',
    '200 to 201 mm',
  ],
  [
    'drums of the states',
    { 'states.0.drumDiameter': 201 },
    { 'states.0.drumDiameter': 201.1 },
    'states.0.drumDiameter',
    '201.1 mm',
    '200 to 201 mm',
  ],
  [
    'less or more',
    { 'states.0.less': 10 },
    { 'states.0.less': 10, 'states.0.more': 10 },
    'states.0.more',
    'less and more',
    'one',
  ],
  [
    'click that comes',
    { 'states.2.click': 20 },
    { 'states.2.click': 21 },
    'states.2.click',
    '21',
    '1 to 20',
  ],
  [
    'pressure or deceleration',
    {},
    duty({ stops: [{ speed: 40, perKm: 1 }] }),
    'duties.0.stops.0.pressure',
    'neither',
    'one',
  ],
  [
    'pressure or deceleration',
    {},
    duty({ stops: [{ speed: 40, perKm: 1, pressure: 20, deceleration: 2 }] }),
    'duties.0.stops.0.pressure',
    'pressure and deceleration',
    'one',
  ],
  [
    'shares of the weather',
    duty({
      weather: [
        { surface: 'wet', share: 0.6 },
        { surface: 'damp', share: 0.4 },
      ],
    }),
    duty({
      weather: [
        { surface: 'wet', share: 0.75 },
        { surface: 'damp', share: 0.5 },
      ],
    }),
    'duties.0.weather',
    'add up to 1.25',
    'at most 1',
  ],
  [
    'descents on the road',
    duty({
      descents: [
        { slope: 8, length: 5, speed: 40, perKm: 0.1 },
        { slope: 8, length: 2.5, speed: 40, perKm: 0.2 },
      ],
    }),
    duty({
      descents: [
        { slope: 8, length: 5, speed: 40, perKm: 0.1 },
        { slope: 8, length: 3, speed: 40, perKm: 0.25 },
      ],
    }),
    'duties.0.descents',
    '1.25 km',
    'at most 1',
  ],
  [
    'films of water and rust',
    duty({
      weather: [
        { surface: 'wet', share: 0.1, film: 20 },
        { surface: 'damp', share: 0.1, film: 20 },
        { surface: 'greasy', share: 0.1 },
      ],
    }),
    duty({ weather: [{ surface: 'greasy', share: 0.1, film: 20 }] }),
    'duties.0.weather.0.film',
    'a film of greasy',
    'wet or damp',
  ],
  [
    'tables rise',
    {},
    {
      frictionAgainstTemperature: [
        [100, 1],
        [100, 0.9],
      ],
    },
    'frictionAgainstTemperature.1.0',
    '100 °C after 100 °C',
    'rising',
  ],
  [
    'tables rise',
    {},
    {
      wearAgainstTemperature: [
        [20, 1],
        [100, 1],
        [99, 2],
      ],
    },
    'wearAgainstTemperature.2.0',
    '99 °C after 100 °C',
    'rising',
  ],
  // 0.38 by 1.45 of damp linings is 0.551, and twice that 1.102 with a table of 2; 0.52·2·1.45 = 1.508.
  [
    'friction of a lining',
    { 'frictionAgainstTemperature.0.1': 2, 'shoes.rear.lining.friction': 0.51 },
    { 'frictionAgainstTemperature.0.1': 2, 'shoes.rear.lining.friction': 0.52 },
    'shoes.rear.lining.friction',
    '0.52, up to 1.51',
    'at most 1.5',
  ],
  // Tables under 1 take nothing off: what is cold and dry has the friction itself.
  [
    'friction of a lining',
    {
      frictionAgainstTemperature: [[20, 0.5]],
      frictionOfSurfaces: {},
      'shoes.rear.lining.friction': 1,
    },
    {
      frictionAgainstTemperature: [[20, 3]],
      frictionOfSurfaces: { wet: { factorAgainstTemperature: [[20, 0.5]], source: 'x' } },
      'shoes.rear.lining.friction': 0.6,
    },
    'shoes.rear.lining.friction',
    '0.6, up to 1.80',
    'at most 1.5',
  ],
];

describe.each([
  ['drum', DRUM],
  ['linings', LINING],
  ['shoes', SHOE],
  ['cylinder', CYLINDER],
  ['springs', SPRINGS],
  ['adjuster', ADJUSTER],
  ['parking lever', PARKING],
  ['hydraulics', HYDRAULICS],
  ['start', START],
  ['states, duties and friction', OTHERS],
] as const)('limits of what can be built: %s', (_, rows) => {
  it.each(rows)('%s: %j is taken and %j is not', (name, good, bad, path, found, allowed) => {
    expect(told(name, good).filter((breach) => breach.path === path)).toEqual([]);
    const [breach] = told(name, bad).filter((one) => one.path === path);
    expect(breach?.found).toContain(found);
    expect(breach?.allowed).toContain(allowed);
  });
});

describe('a rule that asks nothing of what is not there', () => {
  const abutment = runabout.shoes.front.anchor;
  it.each([
    // Heels on an abutment have no pins that could be in each other's way.
    ['pins beside each other', { ...pins(0), 'shoes.front.anchor': { ...abutment, at: [0, -78] } }],
    ['pins beside each other', { ...pins(0), 'shoes.rear.anchor': { ...abutment, at: [0, -78] } }],
    // Ground as the drum, its ends are as thick as it: that its limit is above them is told at the limit.
    ['lining ends over limit', rear('lining.thicknessMin', 5)],
    // A lever whose teeth run backwards is told where it is.
    ['growth in reach', lever({ toothAngle: 0 })],
    ['growth in reach', plain({ pitch: undefined, teeth: 2000 })],
    ['teeth to hold', lever({ toothAngle: 0 })],
    ['teeth to hold', plain({})],
    ['lever in drum', plain({})],
    ['nose at the strut', plain({})],
    ['teeth run forward', plain({})],
    ['climb told once', plain({ climbForce: 30 })],
    ['springs pull back', { springs: [] }],
    ['spring ends in drum', spring(on('plate', -10, 61), on('rear', 45, 61))],
    ['residual pressure under the springs', { springs: [], 'hydraulics.residualPressure': 0 }],
    ['less or more', { 'states.0.more': 10 }],
    [
      'films of water and rust',
      duty({
        weather: [
          { surface: 'damp', share: 0.1, film: 20 },
          { surface: 'greasy', share: 0.1 },
        ],
      }),
    ],
    // Friction alone bears on a shoe without springs.
    ['springs pull back', spring(on('rear', 58, 61), on('plate', 38, 61))],
  ] as const)('%s: %j', (name, changes) => {
    expect(told(name, changes as Changes)).toEqual([]);
  });
});

describe('heels on an abutment', () => {
  // The ferry runabout: drum of 90 mm radius or as its file has it, heels with a radius of their own.
  const heel = (side: 'front' | 'rear', change: object) => ({
    [`shoes.${side}.anchor`]: { ...runabout.shoes[side].anchor, ...change },
  });
  it.each([
    ['rear', 44.9, 45.1, '-45° to 45°'],
    ['rear', -44.9, -45.1, '-45° to 45°'],
    ['front', 135.1, 134.9, '135° to 225°'],
    ['front', 224.9, 225.1, '135° to 225°'],
  ] as const)('the %s one faces outward: %f° and not %f°', (side, good, bad, allowed) => {
    const ask = (normal: number) => told('heel on its flat', heel(side, { normal }), runabout);
    expect(ask(good)).toEqual([]);
    expect(ask(bad)).toMatchObject([
      {
        path: `shoes.${side}.anchor.normal`,
        found: `${bad}°`,
        allowed: expect.stringContaining(allowed),
      },
    ]);
  });
  it('end inside the drum by their own radius', () => {
    const radius = runabout.drum.diameterNew / 2;
    const ask = (y: number) =>
      told('shoe in drum', heel('rear', { at: [0, y], heelRadius: 7.5 }), runabout);
    expect(ask(-(radius - 7.6))).toEqual([]);
    expect(ask(-(radius - 7.5)).map((b) => b.path)).toEqual(['shoes.rear.anchor.at']);
  });
});

it('letters of a lining are those that its own table leads to', () => {
  // SAE J866: friction of E is over 0.25 to 0.35, of F over 0.35 to 0.45; a table that goes by half when hot leads
  // from F to D (over 0.15 to 0.25) or E, never to F.
  const ask = (friction: string, hot: number) =>
    told('letters as the tables have it', {
      'shoes.rear.lining.friction': friction,
      frictionAgainstTemperature: [
        [90, 1],
        [120, hot],
      ],
    });
  expect(ask('FF', 1)).toEqual([]);
  expect(ask('FF', 0.5).map((b) => b.path)).toEqual(['shoes.rear.lining.friction']);
});

it('a line keeps less than nine tenths of what the springs hold off', () => {
  const ask = (residualPressure: number, springs: Changes = {}) =>
    told('residual pressure under the springs', {
      ...springs,
      'hydraulics.residualPressure': residualPressure,
    });
  // 155·(61 + 78) + 155·(−66 + 78) = 23405 N·mm about the pin; π/4·19.05² = 285.02 mm² at an arm of 156:
  // 0.9·23405/(285.02·156) = 0.47375 MPa.
  expect(ask(4.73)).toEqual([]);
  expect(ask(4.74).map((b) => [b.path, b.found, b.allowed])).toEqual([
    ['hydraulics.residualPressure', '4.74 bar', "at most 4.74 bar with the front shoe's springs"],
    ['hydraulics.residualPressure', '4.74 bar', "at most 4.74 bar with the rear shoe's springs"],
  ]);
  // 100 N along (−30, 40)/50 at (30, 30) from the pin: 30·80 + 30·60 = 4200 N·mm, on each shoe.
  const slanting = {
    springs: [-1, 1].map((side) => ({
      name: `${side}`,
      ends: [
        { on: side < 0 ? 'front' : 'rear', at: [46 * side, -48] },
        { on: 'plate', at: [16 * side, -8] },
      ],
      rate: 8,
      fitted: 100,
    })),
  };
  expect(ask(0.85, slanting)).toEqual([]);
  expect(ask(0.851, slanting).length).toBe(2);
});
