import type { Point } from '../../../sim/index.ts';
import type { Area } from './polygons.ts';

/** How the model is to be cut. */
export interface CutSettings {
  /** Size of the model over that of the brake. */
  readonly factor: number;
  /** Width that the cut takes away, mm: a laser's beam; 0 for scissors and knife. */
  readonly kerf: number;
  /** Wider than their pins are holes and slots by this, mm. */
  readonly play: number;
  /** Diameter of all pins that parts turn on, mm. */
  readonly pin: number;
}

/** A round hole, mm of the model. */
export interface Hole {
  readonly at: Point;
  readonly radius: number;
  /** For a joint's pin, for a spring's or band's end, or as the part has it. */
  readonly for: 'pin' | 'spring' | 'look';
}

/** One flat part as it shall be once it is cut, mm of the model, where it stands in the reference pose. */
export interface CutPart {
  readonly id: string;
  readonly name: string;
  /** How high over the board it lies, in thicknesses of the sheet. */
  readonly layer: 0 | 1 | 2 | 3 | 4;
  /** How many of it. */
  readonly count: number;
  /** With its holes that are not round. */
  readonly area: Area;
  readonly holes: readonly Hole[];
  /** What is done with it, for the assembly sheet. */
  readonly does: string;
}

/** Diameter of the holes for springs' and bands' ends, mm of the model. */
export const SPRING_END = 2;
