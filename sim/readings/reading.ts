import type { Side } from '../brake/types.ts';

/** Readings that each shoe has. */
export type ShoeReading = `${
  | 'toeForce'
  | 'pistonTravel'
  | 'drag'
  | 'peak'
  | 'clearance'
  | 'restClearance'
  | 'lining'
  | 'liningShare'
  | 'anchorForce'}${'Front' | 'Rear'}`;

/** Every reading there is; what each means, the workshop says. */
export type ReadingKey =
  | 'brakeFactor'
  | 'brakeFactorFull'
  | 'shoeFactorLeading'
  | 'shoeFactorTrailing'
  | 'torque'
  | 'linePressure'
  | 'pistonForce'
  | ShoeReading
  | 'clearanceMean'
  | 'restClearanceMean'
  | 'tooth'
  | 'strutForce'
  | 'separation'
  | 'toNextTooth'
  | 'climb'
  | 'drumDiameter'
  | 'temperature'
  | 'stopFace'
  | 'stopFaceRise'
  | 'distance'
  | 'leverOffStop'
  | 'waterFilm'
  | 'rustFilm'
  | 'glazeOfFront'
  | 'glazeOfRear'
  | `spring${number}`
  | 'pedalTravel'
  | 'pedalFree'
  | 'pedalGaps'
  | 'pedalCircuit'
  | 'pedalForce'
  | 'fluid'
  | 'runOut'
  | `stop${'Distance' | 'Deceleration' | 'Time' | 'Grip' | 'Energy' | 'Rise' | 'Force' | 'Share' | 'Torque' | 'Pressure' | 'Pedal'}`
  | `drag${'Torque' | 'Force' | 'Power' | 'Share' | 'Settles'}`
  | `part${'Free' | 'Booster' | 'Lost' | 'RollBack' | 'ToDrum' | 'Elastic' | 'Lines' | 'Rest' | 'Own'}`
  | `wheel${'Left' | 'Right' | 'Difference'}`
  | `pedal${'Touch' | 'TouchForce' | 'Seated' | 'SeatedForce' | 'Floor' | 'Reserve'}`
  | 'slipForward'
  | 'slipBackward'
  | 'slopeDown'
  | 'slopeUp'
  | 'pivotForce'
  | 'notches'
  | 'handForce'
  | 'slopeTorque'
  | `${'cable' | 'hand' | 'margin'}Nose${'Down' | 'Up'}`
  | `turn${'Front' | 'Rear' | 'Torque' | 'Bore'}${'Least' | 'Greatest'}`;

/** What a gauge would show: read from an instant, never fed back. */
export interface Reading {
  readonly key: ReadingKey;
  readonly name: string;
  readonly symbol: string;
  /** NaN when there is nothing to read (no touch, locked). */
  readonly value: number;
  readonly unit: string;
  /** Digits after the point. */
  readonly digits: number;
  /** The formula it comes from, in symbols. */
  readonly formula: string;
  readonly side?: Side;
}
