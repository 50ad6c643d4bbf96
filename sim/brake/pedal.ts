import type { Brake } from './types.ts';
import {
  footFor,
  lineAt,
  lostStroke,
  masterArea,
  masterAt,
  masterFor,
  working,
} from './upstream.ts';

/**
 * Pedal travel told as a stack, mm at the pedal.
 *
 * Volumes: each piston displaces bore area × travel; the rest of the circuit gives by its stiffness;
 * air shrinks by Boyle's law, V = V0·p0/(p0 + p). Their sum over the master's area is its stroke,
 * times the pedal ratio its travel (Pascal's principle and the lever). What a seal draws its piston back
 * by, a booster's play and the stroke lost to a failed circuit stand before them.
 */
export interface PedalStack {
  readonly freePlay: number;
  readonly gaps: number;
  readonly circuit: number;
  readonly air: number;
  /** Of the circuit: the lines of this axle's brakes; 0 where a scene does not part them. */
  readonly ownLines: number;
  /** The booster's, before it helps. */
  readonly booster: number;
  /** To bring pistons back that their seals drew off the shoes. */
  readonly rollBack: number;
  /** Of a circuit that has failed: its piston runs to its end. */
  readonly lost: number;
  readonly total: number;
  /** Force of the foot, N: by pressure × master area / ratio, and what a booster helps. */
  readonly force: number;
  /** Fluid taken by one brake, mm³. */
  readonly fluid: number;
}

/** Pressure in this axle's line that the foot makes, MPa. @param force N */
export const pressureAt = (brake: Brake, force: number): number =>
  lineAt(brake, masterAt(brake, force));

/** Force of the foot for a pressure in this axle's line, N. */
export const pedalForceAt = (brake: Brake, pressure: number): number =>
  footFor(brake, masterFor(brake, pressure));

/** Travel of the pedal with the master's piston at the end of its stroke, mm. */
export const pedalFloor = ({ hydraulics: h }: Brake): number =>
  h.pedalRatio * (h.freePlay + (h.booster?.play ?? 0) + h.masterStroke);

/** Pressure of the master cylinder behind one in the line, MPa; a line that only keeps its own needs none. */
const masterBehind = (brake: Brake, pressure: number): number =>
  pressure > brake.hydraulics.residual ? masterFor(brake, pressure) : 0;

/** Atmospheric pressure, MPa (standard atmosphere). */
const ATMOSPHERE = 0.101325;

/**
 * The stack by how far both pistons of each brake stand out, mm. Where half of the brakes of this axle are
 * pressed, half of their fluid is. A line that keeps a pressure has given for it before.
 *
 * @param pressure in this axle's line, MPa
 * @param airVolume air in the circuit at atmospheric pressure, mm³
 * @param master pressure of the master cylinder, MPa
 */
export function pedalFrom(
  brake: Brake,
  front: number,
  rear: number,
  pressure: number,
  airVolume = 0,
  master = masterBehind(brake, pressure),
): PedalStack {
  const h = brake.hydraulics;
  const area = masterArea(h);
  const { own, other } = working(h);
  const fluid = brake.cylinder.area * (Math.max(0, front) + Math.max(0, rear));
  const at = (volume: number): number => (h.pedalRatio * volume) / area;
  const give = h.circuits?.give ?? 0;
  const freePlay = h.pedalRatio * h.freePlay;
  const gaps = at(fluid * brake.vehicle.brakes * own);
  const ownLines = at(give * own * Math.max(0, pressure - h.residual));
  const circuit = at((h.circuit - give) * other * master) + ownLines;
  const air = at((airVolume * pressure) / (ATMOSPHERE + pressure));
  const booster = h.pedalRatio * (h.booster?.play ?? 0);
  // Where pressure stays in the line, the cups stay spread and the pistons where they are.
  const back = master > 0 && h.residual === 0 ? h.rollBack : 0;
  const rollBack = at(2 * back * brake.cylinder.area * brake.vehicle.brakes * own);
  const lost = h.pedalRatio * lostStroke(h);
  return {
    freePlay,
    gaps,
    circuit,
    air,
    ownLines,
    booster,
    rollBack,
    lost,
    total: freePlay + gaps + circuit + air + booster + rollBack + lost,
    force: footFor(brake, master),
    fluid,
  };
}
