import * as v from 'valibot';
import benchScene from '../scenes/bench-brake.json';
import quayVan from '../scenes/quay-van.json';
import {
  type Brake,
  type BrakeState,
  createRig,
  freshState,
  KM,
  type Rig,
  readScene,
  wearOn,
} from '../sim/index.ts';
import { toBrake } from '../sim/scene/read.ts';
import { sceneSchema } from '../sim/scene/schema.ts';

/** Units of the handbooks. */
export const IN = 25.4;
export const LBF = 4.4482216152605;
export const PSI = LBF / (IN * IN);
const RAD = Math.PI / 180;

/** A pair of shoes on pins as handbooks give it; mm, degrees from the line centre to pin. */
export interface PinnedPair {
  readonly mu: number;
  readonly width: number;
  readonly radius: number;
  /** Pin from the drum's centre. */
  readonly pin: number;
  /** Arm of the actuating force about the pin. */
  readonly arm: number;
  readonly from: number;
  readonly to: number;
  /** Direction of the actuating force from y (y: square to the pin line, towards the shoe), degrees. */
  readonly forceAngle?: number;
  readonly elements?: number;
}

export interface Built {
  readonly rig: Rig;
  readonly state: BrakeState;
  readonly brake: Brake;
  readonly area: number;
}

type Json = Record<string, unknown>;

/** Reads a scene that must be sound; the findings are the error's text. */
export function mustRead(scene: unknown): Brake {
  const result = readScene(scene);
  if (!result.ok) throw new Error(JSON.stringify(result.findings, null, 1));
  return result.brake;
}

/**
 * A handbook's pair as a brake: forces and shoes alone, no hub, springs or cylinder that would have room.
 * It is not asked whether anybody could build it.
 */
export const onPaper = (scene: unknown): Brake => toBrake(v.parse(sceneSchema, scene));

/** The first teaching brake's scene as a plain object, to be changed. */
export const quayScene = (): typeof quayVan => structuredClone(quayVan);

export function quay(change: (scene: ReturnType<typeof quayScene>) => void = () => {}): Built {
  const scene = quayScene();
  change(scene);
  const brake = mustRead(scene);
  return { brake, rig: createRig(brake), state: freshState(brake), area: brake.cylinder.area };
}

/** The second teaching brake, the bench brake. */
export function benchBrake(): Built {
  const brake = mustRead(benchScene);
  return { brake, rig: createRig(brake), state: freshState(brake), area: brake.cylinder.area };
}

/** As the teaching tables have it, which reckon no spring of the toothed lever: it climbs for nothing. */
export function tablesQuay(change: Parameters<typeof quay>[0] = () => {}): Built {
  return quay((scene) => {
    Reflect.deleteProperty(scene.adjuster, 'spring');
    change(scene);
  });
}

/**
 * What the climbing lever takes from the first teaching brake's torque, N·m, by a hand sum: 15 N and
 * 1.5 N/mm over a tooth of 1 mm are 15.75 mJ, on 0.49 mm of growth 32 N at the seats, 130 mm above the pins;
 * the toes stand 156 above them, the factor is 2.29 on a radius of 0.1 m.
 */
export const CLIMB_TAKES = 2.29 * (15.75 / 0.49) * (130 / 156) * 0.1;

/** The first teaching brake with nothing that gives between its shoes, as the teaching tables have it. */
export const rigidQuay = (): Built =>
  tablesQuay((scene) => Reflect.deleteProperty(scene, 'strutPath'));

/** Wear alone: driven by the plain duty with the adjuster held. */
export function wornBy(rig: Rig, state: BrakeState, km: number): BrakeState {
  const held = { ...state, condition: { ...state.condition, adjusterSeized: true } };
  return { ...wearOn(rig, held, { distance: km * KM }).state, condition: state.condition };
}

/**
 * Builds a handbook's pair: no springs, no hold-down friction, the strut out of the way, linings so
 * stiff (1 GPa per tenth of a millimetre) that the shoes hardly turn, as the handbooks assume.
 */
export function pinnedPair(p: PinnedPair): Built {
  const phi = p.forceAngle ?? 0;
  const pinAngle = phi - 90;
  const px = p.pin * Math.cos(pinAngle * RAD);
  const py = p.pin * Math.sin(pinAngle * RAD);
  const toeY = py + p.arm;
  const toeX = Math.min(0.2 * p.radius, 0.9 * Math.sqrt(Math.max(1, p.radius ** 2 - toeY ** 2)));
  const shoe = (side: 1 | -1): Json => ({
    anchor: { kind: 'pin', at: [side * px, py] },
    toe: [side * toeX, toeY],
    strutSeat: [side * 20, py + 0.6 * p.arm],
    holdDown: { at: [side * 0.6 * p.radius, 0], friction: 0, shakenOff: 0 },
    lining: {
      from: side > 0 ? pinAngle + p.from : 180 - pinAngle - p.to,
      to: side > 0 ? pinAngle + p.to : 180 - pinAngle - p.from,
      width: p.width,
      thicknessNew: 5,
      thicknessMin: 1,
      groundRadius: p.radius,
      modulus: 5e4,
      friction: p.mu,
      wearRate: 0,
    },
    steel: { tableThickness: 2, tableArc: [-60, 60], webThickness: 4, webDepth: 20 },
    mass: 1,
    inertia: 1e4,
  });
  const scene = {
    ...quayScene(),
    name: 'handbook-pair',
    drum: {
      ...quayScene().drum,
      diameterNew: 2 * p.radius,
      diameterMax: 2 * p.radius + 1,
      lipDiameter: 2 * p.radius,
    },
    shoes: { front: shoe(-1), rear: shoe(1) },
    cylinder: { ...quayScene().cylinder, at: [0, toeY], bore: 40 },
    springs: [],
    adjuster: { kind: 'incremental', lengthAtZero: 38, lostMotion: 30, teeth: 1, pitch: 1 },
    parkingLever: {
      ...quayScene().parkingLever,
      pivot: [10, py + 0.7 * p.arm],
      hook: [10, py + 0.2 * p.arm],
      cableGuide: [-10, py + 0.2 * p.arm],
    },
    states: [],
  };
  const brake = onPaper(scene);
  const elements = p.elements ?? 48;
  return {
    brake,
    rig: createRig(brake, { elements }),
    state: freshState(brake, brake.drum.radiusNew, elements),
    area: brake.cylinder.area,
  };
}

/** Frame of a shoe at its pin: x from drum centre to pin, y square to it towards the shoe. */
export function inPinFrame(
  built: Built,
  side: 'front' | 'rear',
  force: readonly [number, number],
): readonly [number, number] {
  const [px, py] = built.brake.shoes[side].anchor.at;
  const length = Math.hypot(px, py);
  const x = [px / length, py / length] as const;
  // Towards the shoe: counter-clockwise from the pin for the rear shoe, clockwise for the front.
  const y = side === 'rear' ? ([-x[1], x[0]] as const) : ([x[1], -x[0]] as const);
  return [force[0] * x[0] + force[1] * x[1], force[0] * y[0] + force[1] * y[1]];
}
