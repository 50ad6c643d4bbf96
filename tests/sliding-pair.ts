import { type Brake, type BrakeState, createRig, freshState, type Rig } from '../sim/index.ts';
import { onPaper, quayScene } from './brakes.ts';

/** A pair of shoes with round heels on flats, as handbooks give it. */
export interface SlidingPair {
  readonly mu: number;
  readonly radius: number;
  /** Heel below the drum's centre; actuating force above the heel, mm. */
  readonly heel: number;
  readonly arm: number;
  /** Lining, degrees; its middle from the level of the drum's centre up, 0 when left out. */
  readonly arc: number;
  readonly middle?: number;
  readonly width: number;
  /** Slope of the flats, degrees: 0 is square to the actuating force; friction on them. */
  readonly slope?: number;
  readonly heelFriction?: number;
  readonly modulus?: number;
  readonly elements?: number;
  readonly flexible?: boolean;
}

/** No springs, no hold-down friction, strut out of the way, drum not worn, linings stiff when not told. */
export function slidingPair(p: SlidingPair): { brake: Brake; rig: Rig; state: BrakeState } {
  const { slope = 0, middle = 0, radius: r } = p;
  const shoe = (s: 1 | -1) => ({
    anchor: {
      kind: 'abutment',
      at: [s * 0.15 * r, -p.heel],
      heelRadius: 6,
      normal: s > 0 ? slope : 180 - slope,
      friction: p.heelFriction ?? 0,
    },
    toe: [s * 0.2 * r, p.arm - p.heel],
    strutSeat: [s * 20, p.arm - p.heel - 20],
    holdDown: { at: [s * 0.8 * r, 0], friction: 0, shakenOff: 0 },
    lining: {
      from: (s > 0 ? middle : 180 - middle) - p.arc / 2,
      to: (s > 0 ? middle : 180 - middle) + p.arc / 2,
      width: p.width,
      thicknessNew: 5,
      thicknessMin: 1,
      groundRadius: r,
      modulus: p.modulus ?? 5e4,
      friction: p.mu,
      wearRate: 0,
    },
    steel: {
      tableThickness: 3,
      tableArc: s > 0 ? [-70, 70] : [110, 250],
      webThickness: 5,
      webDepth: 22,
    },
    mass: 0.6,
    inertia: 7000,
  });
  const scene = quayScene();
  const y = p.arm - p.heel;
  const brake = onPaper({
    ...scene,
    name: 'sliding-pair',
    drum: { ...scene.drum, diameterNew: 2 * r, diameterMax: 2 * r + 1, lipDiameter: 2 * r },
    shoes: { front: shoe(-1), rear: shoe(1) },
    cylinder: { ...scene.cylinder, at: [0, y], bore: 40 },
    springs: [],
    adjuster: { kind: 'incremental', lengthAtZero: 40, lostMotion: 30, teeth: 1, pitch: 1 },
    parkingLever: {
      ...scene.parkingLever,
      pivot: [20, y - 10],
      hook: [20, -30],
      cableGuide: [-10, -34],
    },
    states: [],
  });
  const elements = p.elements ?? 48;
  const rig = createRig(brake, { elements, flexible: p.flexible ?? false });
  return { brake, rig, state: freshState(brake, brake.drum.radiusNew, elements) };
}
