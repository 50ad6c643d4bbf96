import { type SurfaceFriction, type SurfaceFrictions, usualSurfaces } from '../brake/surface.ts';
import type { Anchor, Brake, Point, Shoe, Side } from '../brake/types.ts';
import { cos, sin } from '../math/trig.ts';
import { DEG, JOULE, KG, KG_MM2, PI } from '../units/units.ts';
import { toAdjuster } from './adjuster.ts';
import { toDuty } from './duty.ts';
import { toFilms } from './films.ts';
import type { Finding } from './finding.ts';
import { impossible } from './findings.ts';
import { toHeat } from './heat.ts';
import { toHydraulics } from './hydraulics.ts';
import { few, parseBy } from './issues.ts';
import { migrate } from './migrations/migrate.ts';
import { frictionOf, toRubbing } from './rubbing.ts';
import { type Scene, sceneSchema } from './schema.ts';
import { toStart } from './start.ts';
import { toState } from './states.ts';
import { toStrutPath, unbearable } from './strut-path.ts';

/** A brake and the scene that it was read from, or every finding. */
export type ReadResult =
  | { readonly ok: true; readonly brake: Brake; readonly scene: Scene }
  | { readonly ok: false; readonly findings: readonly Finding[] };

/** The surfaces' tables; dry is what the others are measured by. */
function toSurfaces(given: Scene['frictionOfSurfaces']): SurfaceFrictions {
  const table = (name: keyof typeof given): SurfaceFriction => {
    const own = given[name];
    if (!own) return usualSurfaces[name];
    return { table: own.factorAgainstTemperature, source: own.source };
  };
  return {
    dry: usualSurfaces.dry,
    damp: table('damp'),
    wet: table('wet'),
    glazed: table('glazed'),
    greasy: table('greasy'),
  };
}

/**
 * Reads a scene file's text. Never throws for bad input: all findings come back at once, each
 * with its path, what was found and what is allowed.
 */
export function readSceneText(text: string): ReadResult {
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    return { ok: false, findings: [{ path: '(file)', found: why, allowed: 'JSON' }] };
  }
  return readScene(data);
}

/** Reads parsed JSON, of this or an older version, into a deeply readonly brake, or a list of findings. */
export function readScene(data: unknown): ReadResult {
  const migrated = migrate(data);
  if (!('scene' in migrated)) return { ok: false, findings: [migrated] };
  // Told where the file has it, not where the present format would.
  const inFile = (f: Finding): Finding => ({ ...f, path: migrated.was(f.path) });
  const parsed = parseBy<Scene>(sceneSchema, migrated.scene);
  if (!parsed.ok) return { ok: false, findings: few(parsed.findings.map(inFile)) };
  const findings = impossible(parsed.output);
  if (findings.length > 0) return { ok: false, findings: few(findings.map(inFile)) };
  const brake = toBrake(parsed.output);
  const weak = unbearable(brake);
  if (weak.length > 0) return { ok: false, findings: few(weak.map(inFile)) };
  return { ok: true, scene: parsed.output, brake };
}

function freeze<T>(value: T): T {
  if (value !== null && typeof value === 'object' && !Object.isFrozen(value)) {
    Object.freeze(value);
    for (const inner of Object.values(value)) freeze(inner);
  }
  return value;
}

function toAnchor(a: Scene['shoes']['front']['anchor']): Anchor {
  return a.kind === 'pin'
    ? { kind: 'pin', at: a.at }
    : {
        kind: 'abutment',
        at: a.at,
        heelRadius: a.heelRadius,
        normal: a.normal * DEG,
        friction: a.friction,
        stiffness: a.stiffness,
      };
}

function toShoe(side: Side, s: Scene['shoes']['front']): Shoe {
  return {
    side,
    anchor: toAnchor(s.anchor),
    toe: s.toe,
    strutSeat: s.strutSeat,
    holdDown: s.holdDown,
    lining: {
      ...s.lining,
      friction: frictionOf(s.lining.friction),
      from: s.lining.from * DEG,
      to: s.lining.to * DEG,
      chamferArc: s.lining.chamferArc * DEG,
      cutEdgeArc: s.lining.cutEdgeArc * DEG,
    },
    steel: {
      ...s.steel,
      tableArc: [s.steel.tableArc[0] * DEG, s.steel.tableArc[1] * DEG],
    },
    mass: s.mass * KG,
    inertia: s.inertia * KG_MM2,
    webHoles: s.webHoles,
  };
}

function direction(scene: Scene): Point {
  const { hook, cableGuide, pullDirection } = scene.parkingLever;
  if (pullDirection !== undefined) return [cos(pullDirection * DEG), sin(pullDirection * DEG)];
  const x = cableGuide[0] - hook[0];
  const y = cableGuide[1] - hook[1];
  const length = Math.sqrt(x * x + y * y);
  return [x / length, y / length];
}

/** A given direction is a point 100 m away: its line turns with the hook by less than 1e-4 rad. */
function pullFrom(scene: Scene): Point {
  const { hook, cableGuide, pullDirection } = scene.parkingLever;
  if (pullDirection === undefined) return cableGuide;
  const [x, y] = direction(scene);
  return [hook[0] + 1e5 * x, hook[1] + 1e5 * y];
}

/** The brake of a scene that passed the schema, built or not: `readScene` judges it first. */
export function toBrake(scene: Scene): Brake {
  const { drum, cylinder } = scene;
  const area = (PI / 4) * cylinder.bore * cylinder.bore;
  const [first, ...others] = scene.duties.map(toDuty);
  if (!first) throw new Error('A scene that was read has a duty');
  return freeze<Brake>({
    name: scene.name,
    title: scene.title,
    about: scene.about,
    source: scene.source,
    wheel: scene.wheel,
    drum: {
      radiusNew: drum.diameterNew / 2,
      radiusMax: drum.diameterMax / 2,
      lipRadius: drum.lipDiameter / 2,
      outOfRoundMax: drum.outOfRoundMax,
      rim: drum.rim,
      inertia: drum.inertia * KG_MM2,
      heatCapacity: drum.heatCapacity * JOULE,
      cooling: { still: drum.cooling.still * JOULE, perKmh: drum.cooling.perKmh * JOULE },
      expansion: drum.expansion,
      wearRate: drum.wearRate,
    },
    shoes: { front: toShoe('front', scene.shoes.front), rear: toShoe('rear', scene.shoes.rear) },
    cylinder: {
      at: cylinder.at,
      bore: cylinder.bore,
      area,
      stroke: cylinder.stroke,
      cupFriction: cylinder.cupFriction,
      cupStiffness: cylinder.cupStiffness,
      centreSpring: cylinder.centreSpring,
      outerRadius: cylinder.outerDiameter / 2,
      halfLength: cylinder.length / 2,
    },
    springs: scene.springs.map((s) => {
      const [a, b] = s.ends;
      const x = b.at[0] - a.at[0];
      const y = b.at[1] - a.at[1];
      return { ...s, fittedLength: Math.sqrt(x * x + y * y) };
    }),
    adjuster: toAdjuster(scene.adjuster),
    parkingLever: {
      pivot: scene.parkingLever.pivot,
      hook: scene.parkingLever.hook,
      pull: direction(scene),
      cableGuide: scene.parkingLever.cableGuide,
      pullFrom: pullFrom(scene),
      handRatio: scene.parkingLever.handRatio,
      handEfficiency: scene.parkingLever.handEfficiency,
      perNotch: scene.parkingLever.perNotch,
      slack: scene.parkingLever.slack,
      stiffness: scene.parkingLever.stiffness,
    },
    strutPath: toStrutPath(scene.strutPath, scene.across.plate),
    hydraulics: toHydraulics(scene.hydraulics),
    vehicle: {
      ...scene.vehicle,
      mass: scene.vehicle.mass * KG,
      // N/(m/s)² to N/(mm/s)²
      air: scene.vehicle.air * 1e-6,
    },
    duties: [first, ...others],
    frictionTable: scene.frictionAgainstTemperature,
    rubbing: toRubbing(scene.frictionAgainstPressureAndSpeed),
    surfaces: toSurfaces(scene.frictionOfSurfaces),
    films: toFilms(scene.films),
    wearTable: scene.wearAgainstTemperature,
    heat: toHeat(scene.heat, scene.shoes.front.mass + scene.shoes.rear.mass),
    across: scene.across,
    look: {
      ...scene.look,
      accessHole: { ...scene.look.accessHole, along: scene.look.accessHole.along * DEG },
    },
    start: toStart(scene.start, drum.diameterNew),
    otherStart: scene.otherWheel ? toStart(scene.otherWheel, drum.diameterNew) : null,
    states: scene.states.map(toState),
  });
}
