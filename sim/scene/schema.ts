import * as v from 'valibot';
import type { Surface } from '../brake/surface.ts';
import { adjuster } from './adjuster.ts';
import { dutyPart } from './duty.ts';
import { filmsPart } from './films.ts';
import { heatPart } from './heat.ts';
import { hydraulicsPart } from './hydraulics.ts';
import { VERSION } from './migrations/migrate.ts';
import { choice, count, LONG, list, num, part, point, size, words } from './parts.ts';
import { liningFriction, rubbingPart } from './rubbing.ts';
import { startPart } from './start.ts';
import { statePart } from './states.ts';
import { strutPath } from './strut-path.ts';

/**
 * The scene file: JSON, own format. One fixed unit for each key, told here in its description; the
 * JSON Schema for editors is written out from this same source. Every object is strict: an unknown
 * key is a finding. Files of older versions are brought to this one first, by `migrations/`.
 */
const table = (about: string, most: number) =>
  list(
    `${about}: rows [°C, factor], straight between them`,
    v.strictTuple([num('Temperature', '°C', -60, 1500), num('Factor', 'plain number', 0, most)]),
    50,
    1,
  );
/** Most that heat or a surface makes of a lining's friction, and heat of its wear: two orders of magnitude. */
const FRICTION = 3;
const WEAR = 100;

/** One surface of the linings: its factors and where they come from; common practice when left out. */
const surface = (name: Surface) =>
  v.optional(
    part(`Linings that are ${name}; common practice when left out`, {
      factorAgainstTemperature: table(
        `Factor on the friction of a dry lining when ${name}`,
        FRICTION,
      ),
      source: words('Where the factors come from', LONG),
    }),
  );

const anchor = v.pipe(
  v.variant(
    'kind',
    [
      part('Heel on a pin', {
        kind: v.pipe(v.literal('pin'), v.description('Hinged on a pin')),
        at: point('Pin centre'),
      }),
      part('Heel on an abutment', {
        kind: v.pipe(v.literal('abutment'), v.description('Sliding on an abutment')),
        at: point('Centre of the round heel'),
        heelRadius: size('Radius of the heel', 'mm', 100),
        normal: num('Direction from the flat towards the heel, from +x', 'degrees', -360, 360),
        friction: num('Friction of heel on flat', 'plain number', 0, 1),
        // A 2.5 mm edge on a 4 mm web is 1.7e5 to 2.2e5 N/mm by line contact (K. L. Johnson, Contact
        // Mechanics); with its bracket half of that.
        stiffness: v.optional(
          num('Stiffness of heel and bracket, square to the flat', 'N/mm', 2e4, 3e5),
          1e5,
        ),
      }),
    ],
    'a kind: pin or abutment',
  ),
  v.description('What holds the heel'),
);

const lining = part('Lining', {
  from: num('First end of the arc, from +x', 'degrees', -360, 360),
  to: num('Other end of the arc, more than from', 'degrees', -360, 720),
  width: size('Width along the axle', 'mm', 500),
  thicknessNew: size('Thickness when new', 'mm', 50),
  thicknessMin: num('Limit of the lining', 'mm', 0, 50),
  groundRadius: size('Radius the rubbing face is ground to', 'mm', 500),
  chamferArc: v.optional(num('Arc of the sloped ends', 'degrees', 0, 45), 0),
  chamferDepth: v.optional(num('Depth of the slope at the very end', 'mm', 0, 20), 0),
  cutEdgeArc: v.optional(
    num('Arc at each end where the edge beside the lip is cut back', 'degrees', 0, 45),
    0,
  ),
  modulus: size('Compressive modulus, as pressed on its shoe', 'MPa', 1e5),
  friction: liningFriction,
  wearRate: num('Archard coefficient', 'mm²/N', 0, 1e-3),
  rivetHeight: v.optional(num('Rivet heads over the table; 0 when bonded', 'mm', 0, 20), 0),
});

const shoe = (side: string) =>
  part(`The ${side} shoe`, {
    anchor,
    toe: point('Where the piston pushes'),
    strutSeat: point('Where the strut pushes (on the lever notch for the shoe that bears it)'),
    holdDown: part('Hold-down', {
      at: point('Where it presses'),
      friction: num('Friction of hold-down and plate pads', 'N', 0, 1000),
      // From memory of metal on metal: 0.002 mm before it slips; only the slip is felt.
      stiffness: v.optional(num('Its grip before it slips', 'N/mm', 500, 2e4), 5000),
      shakenOff: num(
        'Share of it a turning drum shakes off once the strut is unloaded, 0 to 1',
        'plain number',
        0,
        1,
      ),
    }),
    lining,
    steel: part('Web and table', {
      tableThickness: size('Thickness of the table', 'mm', 20),
      tableArc: v.pipe(
        v.strictTuple([
          num('First end', 'degrees', -360, 720),
          num('Other end', 'degrees', -360, 720),
        ]),
        v.description('Ends of the table from +x: [from, to], degrees'),
      ),
      webThickness: size('Thickness of a web', 'mm', 50),
      webDepth: size('Depth of the web under the table', 'mm', 200),
      webCount: v.optional(count('Number of webs', 1, 4), 1),
      modulus: v.optional(size('Elastic modulus', 'MPa', 1e7), 210000),
      poisson: v.optional(num('Poisson ratio', 'plain number', 0, 0.5), 0.3),
    }),
    mass: size('Mass with its lining', 'kg', 100),
    inertia: size('Moment of inertia about pin or heel centre', 'kg·mm²', 1e7),
    webHoles: v.optional(
      list(
        'Holes in the web, drawn only',
        part('A hole', { at: point('Its centre'), radius: size('Its radius', 'mm', 50) }),
        20,
      ),
      [],
    ),
  });

const springEnd = part('One end', {
  on: choice('What it is hooked to', ['front', 'rear', 'plate']),
  at: point('Spring hole'),
});

export const sceneSchema = part('A brake, how it is driven, and the states it is shown in', {
  $schema: v.optional(
    words('Where an editor finds the schema of this file; says nothing of the brake'),
  ),
  format: v.pipe(
    v.literal('takeup-scene', 'the text "takeup-scene"'),
    v.description('What kind of file this is'),
  ),
  version: v.pipe(
    v.literal(VERSION, `the number ${VERSION}`),
    v.description('Version of the format; older files are still read'),
  ),
  name: v.pipe(words('Short name'), v.regex(/^[a-z0-9-]{1,40}$/, 'small letters, digits and -')),
  title: words('Name shown'),
  about: words('What this brake is', LONG),
  source: words('Where its values come from', LONG),
  wheel: choice('On which side of the vehicle it is', ['left', 'right']),
  drum: part('Drum', {
    diameterNew: size('Inner diameter when new', 'mm', 1000),
    diameterMax: size('Discard diameter', 'mm', 1000),
    lipDiameter: size('Inner diameter of the unworn edge', 'mm', 1000),
    outOfRoundMax: num('Largest out-of-round allowed, on diameter', 'mm', 0, 10),
    rim: size('Radial thickness of the rim', 'mm', 100),
    inertia: size('Moment of inertia of the drum and what turns with it', 'kg·mm²', 1e9),
    heatCapacity: size('Heat capacity', 'J/K', 1e6),
    cooling: part('Heat given to the air', {
      still: num('At rest', 'W/K', 0, 1e4),
      perKmh: num('Growth with speed', 'W/K for each km/h', 0, 1e3),
    }),
    expansion: num('Thermal expansion', '1/K', 0, 1e-4),
    wearRate: num('Archard coefficient', 'mm²/N', 0, 1e-3),
  }),
  shoes: part('Both shoes', { front: shoe('front'), rear: shoe('rear') }),
  cylinder: part('Wheel cylinder', {
    at: point('Middle of the wheel cylinder'),
    bore: size('Bore', 'mm', 100),
    stroke: size('Stroke of each piston to run-out', 'mm', 100),
    cupFriction: num('Friction of each cup', 'N', 0, 2000),
    // From memory of rubber lips; only the slip is felt.
    cupStiffness: v.optional(num('Grip of a cup before it slips', 'N/mm', 200, 2e4), 2000),
    centreSpring: num('Push of the spring between the cups', 'N', 0, 500),
    outerDiameter: size('Outer diameter, drawn only', 'mm', 200),
    length: size('Length, drawn only', 'mm', 300),
  }),
  springs: list(
    'Return springs',
    part('A return spring', {
      name: words('Name'),
      ends: v.pipe(v.strictTuple([springEnd, springEnd]), v.description('Its two ends')),
      rate: num('Rate', 'N/mm', 0, 1000),
      fitted: num('Force as fitted (reference pose)', 'N', 0, 5000),
    }),
    12,
  ),
  adjuster,
  parkingLever: part('Parking lever and its cable', {
    pivot: point('Pivot on the rear web'),
    hook: point('Cable hook'),
    cableGuide: point('Where the cable leaves'),
    pullDirection: v.optional(
      num('Direction of the pull, from +x; towards the guide when left out', 'degrees', -360, 360),
    ),
    handRatio: size('Ratio of the hand lever', 'plain number', 100),
    handEfficiency: num('Efficiency of lever and cable, up to 1', 'plain number', 0.01, 1),
    perNotch: size('Cable for one notch', 'mm', 50),
    slack: num('Slack of the cable', 'mm', 0, 200),
    stiffness: size('Stiffness of each cable', 'N/mm', 1e6),
  }),
  strutPath: v.optional(strutPath),
  hydraulics: hydraulicsPart,
  vehicle: part('Vehicle', {
    mass: size('Mass', 'kg', 1e5),
    tyreRadius: size('Rolling radius of the tyre', 'mm', 2000),
    brakes: count('Number of such brakes', 1, 12),
    share: num('Share of the braking on these wheels, 0 to 1', 'plain number', 0, 1),
    rolling: v.optional(num('Rolling resistance over weight', 'plain number', 0, 0.2), 0.015),
    air: v.optional(num('Drag of the air over speed squared', 'N/(m/s)²', 0, 10), 0.54),
  }),
  duties: list('What it is driven by; the standing states are made by the first', dutyPart, 30, 1),
  frictionAgainstTemperature: table('Factor on friction', FRICTION),
  wearAgainstTemperature: table('Factor on wear', WEAR),
  frictionAgainstPressureAndSpeed: v.optional(rubbingPart),
  frictionOfSurfaces: v.optional(
    part('Friction of linings that are not dry', {
      damp: surface('damp'),
      wet: surface('wet'),
      glazed: surface('glazed'),
      greasy: surface('greasy'),
    }),
    {},
  ),
  films: v.optional(filmsPart, {}),
  heat: v.optional(heatPart, {}),
  across: v.optional(
    part(
      'Sizes along the axle, outward from the backing plate; only taking the drum off asks for them',
      {
        plate: v.optional(size('Thickness of the backing plate', 'mm', 50), 3),
        liningOff: v.optional(size('From the plate to the edge of the linings', 'mm', 200), 7.5),
        lipWidth: v.optional(size('Width of the drum’s unworn edge', 'mm', 100), 4.1),
        lipGap: v.optional(num('Play between that edge and the linings', 'mm', 0, 50), 0.8),
        discOff: v.optional(size('From the linings to the disc of the drum', 'mm', 100), 3.2),
        disc: v.optional(size('Thickness of the disc', 'mm', 100), 6.3),
        holdDown: v.optional(
          part('Spring and pin of a hold-down', {
            rate: size('Rate of its spring', 'N/mm', 1000),
            travel: num('Travel of that spring until its coils stand on each other', 'mm', 0, 50),
            pin: size('Diameter of its pin', 'mm', 20),
          }),
          { rate: 10, travel: 5.2, pin: 4 },
        ),
      },
    ),
    {},
  ),
  look: part('Sizes that carry no force and are only drawn', {
    plateRadius: size('Radius of the backing plate', 'mm'),
    hubRadius: size('Radius of the hub', 'mm'),
    studCircle: size('Radius of the circle of studs', 'mm'),
    studRadius: size('Radius of a stud', 'mm', 50),
    studs: count('Number of studs', 1, 12),
    pinRadius: size('Radius of an anchor pin', 'mm', 50),
    eyeRadius: size('Radius of the eye around it', 'mm', 100),
    accessHole: part('Hole that a tool reaches the adjuster through', {
      at: point('Its middle'),
      along: num('Direction of its length, from +x', 'degrees', -360, 360),
      length: size('Its length', 'mm', 100),
      radius: size('Radius of its ends', 'mm', 50),
    }),
  }),
  start: v.optional(startPart('How the brake stands when the scene is opened'), {}),
  otherWheel: v.optional(
    startPart('How the brake of the axle’s other wheel stands then; like this one when left out'),
  ),
  states: list('Standing states, each made from new by the first duty', statePart, 40),
});

/** A scene as it was read: trade units, one for each key, with what was left out filled in. */
export type Scene = v.InferOutput<typeof sceneSchema>;
