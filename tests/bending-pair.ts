import { type Brake, type BrakeState, createRig, freshState, type Rig } from '../sim/index.ts';
import { onPaper, quayScene } from './brakes.ts';

/**
 * The pair whose right-hand shoe was computed with finite elements: drum radius 115, pin (18, -84), toe
 * (24, 86), lining from -52 to 62 deg, 40 wide, 4.5 thick, 450 MPa; steel table 3 × 40, web 5 × 29.5, all
 * mm; pinned at a point, pushed level at the toe. No springs, strut out of the way.
 */
export function bendingPair(friction: number, change: (brake: Brake) => Brake = (b) => b): Brake {
  const shoe = (s: 1 | -1) => ({
    anchor: { kind: 'pin', at: [s * 18, -84] },
    toe: [s * 24, 86],
    strutSeat: [s * 20, 60],
    holdDown: { at: [s * 80, 0], friction: 0, shakenOff: 0 },
    lining: {
      from: s > 0 ? -52 : 118,
      to: s > 0 ? 62 : 232,
      width: 40,
      thicknessNew: 4.5,
      thicknessMin: 1,
      groundRadius: 115,
      modulus: 450,
      friction,
      wearRate: 0,
    },
    steel: {
      tableThickness: 3,
      tableArc: s > 0 ? [-90, 90] : [90, 270],
      webThickness: 5,
      webDepth: 29.5,
    },
    mass: 0.7,
    inertia: 8000,
  });
  const scene = quayScene();
  return change(
    onPaper({
      ...scene,
      name: 'bending-pair',
      drum: { ...scene.drum, diameterNew: 230, diameterMax: 232, lipDiameter: 230 },
      shoes: { front: shoe(-1), rear: shoe(1) },
      cylinder: { ...scene.cylinder, at: [0, 86], bore: 20 },
      springs: [],
      adjuster: { kind: 'incremental', lengthAtZero: 38, lostMotion: 30, teeth: 1, pitch: 1 },
      parkingLever: {
        ...scene.parkingLever,
        pivot: [24, 70],
        hook: [24, -40],
        cableGuide: [-10, -40],
      },
      states: [],
    }),
  );
}

/** The same brake with steel so many times stiffer. */
export const stiffer =
  (times: number) =>
  (brake: Brake): Brake => {
    const { front, rear } = brake.shoes;
    const steel = (shoe: typeof front) => ({
      ...shoe,
      steel: { ...shoe.steel, modulus: shoe.steel.modulus * times },
    });
    return { ...brake, shoes: { front: steel(front), rear: steel(rear) } };
  };

/** Rigid and bending rigs of a brake beside each other, new. */
export function both(brake: Brake): { rigid: Rig; bending: Rig; state: BrakeState } {
  return {
    rigid: createRig(brake),
    bending: createRig(brake, { flexible: true }),
    state: freshState(brake),
  };
}
