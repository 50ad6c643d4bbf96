import * as v from 'valibot';
import type { Surface } from '../brake/surface.ts';
import { adjuster } from './adjuster.ts';
import { dutyPart } from './duty.ts';
import { count, num, point, size, words } from './parts.ts';

/**
 * The scene file: JSON, own format, version 1. One fixed unit for each key, told here in its
 * description; the JSON Schema for editors is written out from this same source. Every object is
 * strict: an unknown key is a finding.
 */
const table = (about: string) =>
  v.pipe(
    v.array(v.strictTuple([num('°C', -60, 1500), num('factor', 0, 100)]), 'a list of [°C, factor]'),
    v.minLength(1, 'at least one row'),
    v.description(about),
  );

/** One surface of the linings: its factors and where they come from; common practice when left out. */
const surface = (name: Surface) =>
  v.optional(
    v.strictObject({
      factorAgainstTemperature: table(`Factor on the friction of a dry lining when ${name}`),
      source: words('Where the factors come from'),
    }),
  );

const anchor = v.variant('kind', [
  v.strictObject({ kind: v.literal('pin'), at: point('Pin centre, mm') }),
  v.strictObject({
    kind: v.literal('abutment'),
    at: point('Centre of the round heel, mm'),
    heelRadius: size('Radius of the heel, mm', 100),
    normal: num('Direction from the flat towards the heel, degrees from +x', -360, 360),
    friction: num('Friction of heel on flat', 0, 1),
  }),
]);

const lining = v.strictObject({
  from: num('First end of the arc, degrees from +x', -360, 360),
  to: num('Other end of the arc, degrees, more than from', -360, 720),
  width: size('mm', 500),
  thicknessNew: size('mm', 50),
  thicknessMin: num('Limit of the lining, mm', 0, 50),
  groundRadius: size('Radius the rubbing face is ground to, mm', 500),
  chamferArc: v.optional(num('Arc of the sloped ends, degrees', 0, 45), 0),
  chamferDepth: v.optional(num('Depth of the slope at the very end, mm', 0, 20), 0),
  cutEdgeArc: v.optional(
    num('Arc at each end where the edge beside the lip is cut back, degrees', 0, 45),
    0,
  ),
  modulus: size('Compressive modulus, MPa', 1e5),
  friction: num('Friction on the drum, cold', 0, 1.5),
  wearRate: num('Archard coefficient, mm²/N', 0, 1e-3),
  rivetHeight: v.optional(num('Rivet heads over the table, mm; 0 when bonded', 0, 20), 0),
});

const shoe = v.strictObject({
  anchor,
  toe: point('Where the piston pushes, mm'),
  strutSeat: point('Where the strut pushes, mm (on the lever notch for the shoe that bears it)'),
  holdDown: v.strictObject({
    at: point('Hold-down, mm'),
    friction: num('Friction of hold-down and plate pads, N', 0, 1000),
    shakenOff: num('Share of it a turning drum shakes off once the strut is unloaded', 0, 1),
  }),
  lining,
  steel: v.strictObject({
    tableThickness: size('mm', 20),
    tableArc: v.strictTuple([num('degrees', -360, 720), num('degrees', -360, 720)]),
    webThickness: size('mm', 50),
    webDepth: size('mm', 200),
    webCount: v.optional(count('Number of webs', 1, 4), 1),
    modulus: v.optional(size('MPa', 1e7), 210000),
    poisson: v.optional(num('Poisson ratio', 0, 0.5), 0.3),
  }),
  mass: size('kg', 100),
  inertia: size('About pin or heel centre, kg·mm²', 1e7),
  webHoles: v.optional(v.array(v.strictObject({ at: point('mm'), radius: size('mm', 50) })), []),
});

const springEnd = v.strictObject({
  on: v.picklist(['front', 'rear', 'plate'], 'front, rear or plate'),
  at: point('Spring hole, mm'),
});

export const sceneSchema = v.strictObject({
  format: v.literal('takeup-scene', 'the text "takeup-scene"'),
  version: v.literal(1, 'the number 1'),
  name: v.pipe(words('Short name'), v.regex(/^[a-z0-9-]{1,40}$/, 'small letters, digits and -')),
  title: words('Name shown'),
  about: words('What this brake is'),
  source: words('Where its values come from'),
  wheel: v.picklist(['left', 'right'], 'left or right'),
  drum: v.strictObject({
    diameterNew: size('mm', 1000),
    diameterMax: size('Discard diameter, mm', 1000),
    lipDiameter: size('Unworn edge, mm', 1000),
    outOfRoundMax: num('Limit on diameter, mm', 0, 10),
    rim: size('Radial thickness of the rim, mm', 100),
    inertia: size('Drum and what turns with it, kg·mm²', 1e9),
    heatCapacity: size('J/K', 1e6),
    cooling: v.strictTuple([num('W/K at rest', 0, 1e4), num('W/K for each km/h', 0, 1e3)]),
    expansion: num('1/K', 0, 1e-4),
    wearRate: num('Archard coefficient, mm²/N', 0, 1e-3),
  }),
  shoes: v.strictObject({ front: shoe, rear: shoe }),
  cylinder: v.strictObject({
    at: point('Middle of the wheel cylinder, mm'),
    bore: size('mm', 100),
    stroke: size('Each piston to run-out, mm', 100),
    cupFriction: num('Each cup, N', 0, 2000),
    centreSpring: num('Push of the spring between the cups, N', 0, 500),
    outerDiameter: size('mm', 200),
    length: size('mm', 300),
  }),
  springs: v.array(
    v.strictObject({
      name: words('Name'),
      ends: v.strictTuple([springEnd, springEnd]),
      rate: num('N/mm', 0, 1000),
      fitted: num('Force as fitted (reference pose), N', 0, 5000),
    }),
    'a list of springs',
  ),
  adjuster,
  parkingLever: v.strictObject({
    pivot: point('On the rear web, mm'),
    hook: point('Cable hook, mm'),
    cableGuide: point('Where the cable leaves, mm'),
    pullDirection: v.optional(
      num('Direction of the pull, degrees; else towards the guide', -360, 360),
    ),
    handRatio: size('Hand lever ratio', 100),
    handEfficiency: num('0..1', 0.01, 1),
    perNotch: size('Cable for one notch, mm', 50),
    slack: num('mm', 0, 200),
    stiffness: size('Each cable, N/mm', 1e6),
  }),
  hydraulics: v.strictObject({
    masterBore: size('mm', 100),
    pedalRatio: size('Pedal ratio', 50),
    freePlay: num('At the push rod, mm', 0, 50),
    circuit: num('Give of the rest of the circuit, mm³/MPa', 0, 1e5),
  }),
  vehicle: v.strictObject({
    mass: size('kg', 1e5),
    tyreRadius: size('mm', 2000),
    brakes: count('Number of such brakes', 1, 12),
    share: num('Share of the braking on these wheels', 0, 1),
    rolling: v.optional(num('Rolling resistance over weight', 0, 0.2), 0.015),
    air: v.optional(num('Drag of the air over speed squared, N/(m/s)²', 0, 10), 0.54),
  }),
  duty: v.strictObject({
    name: words('Name'),
    pressure: size('bar', 300),
    stopsPerKm: size('1/km', 100),
    speed: size('km/h', 300),
  }),
  duties: v.optional(v.array(dutyPart, 'a list of duties'), []),
  frictionAgainstTemperature: table('Factor on friction'),
  wearAgainstTemperature: table('Factor on wear'),
  frictionOfSurfaces: v.optional(
    v.strictObject({
      damp: surface('damp'),
      wet: surface('wet'),
      glazed: surface('glazed'),
      greasy: surface('greasy'),
    }),
    {},
  ),
  across: v.optional(
    v.strictObject({
      plate: v.optional(size('Thickness of the backing plate, mm', 50), 3),
      liningOff: v.optional(size('From the plate to the edge of the linings, mm', 200), 7.5),
      lipWidth: v.optional(size('Unworn edge of the drum along the axle, mm', 100), 4.1),
      lipGap: v.optional(num('Play between that edge and the linings, mm', 0, 50), 0.8),
      discOff: v.optional(size('From the linings to the disc of the drum, mm', 100), 3.2),
      disc: v.optional(size('Thickness of the disc, mm', 100), 6.3),
      holdDown: v.optional(
        v.strictObject({
          rate: size('Spring of the hold-down, N/mm', 1000),
          travel: num('Of that spring until its coils stand on each other, mm', 0, 50),
          pin: size('Diameter of the hold-down pin, mm', 20),
        }),
        { rate: 10, travel: 5.2, pin: 4 },
      ),
    }),
    {},
  ),
  look: v.strictObject({
    plateRadius: size('mm'),
    hubRadius: size('mm'),
    studCircle: size('mm'),
    studRadius: size('mm', 50),
    studs: count('Number', 1, 12),
    pinRadius: size('mm', 50),
    eyeRadius: size('mm', 100),
    accessHole: v.strictObject({
      at: point('mm'),
      along: num('degrees', -360, 360),
      length: size('mm', 100),
      radius: size('mm', 50),
    }),
  }),
  start: v.optional(
    v.strictObject({
      tooth: v.optional(count('Tooth the adjuster stands on', 0, 2000), 0),
      drumDiameter: v.optional(size('Inner diameter of the cold drum, mm; new when left out')),
      wear: v.optional(
        v.strictObject({
          front: num('Depth worn evenly off the front lining, mm', 0, 50),
          rear: num('Depth worn evenly off the rear lining, mm', 0, 50),
        }),
        { front: 0, rear: 0 },
      ),
      temperature: v.optional(num('Of the drum, °C', -60, 1000), 20),
      leverOffStop: v.optional(num('Parking lever held off its stop, mm at the hook', 0, 50), 0),
    }),
    {},
  ),
  states: v.array(
    v.strictObject({
      name: words('Name'),
      drumDiameter: v.optional(size('Diameter of the drum that new shoes are put into, mm')),
      distance: num('Worn on by, km', 0, 1e6),
    }),
    'a list of states',
  ),
});

export type Scene = v.InferOutput<typeof sceneSchema>;
