import type { AdjusterKind, Brake, Instant, Point } from '../../../sim/index.ts';
import type { PartId } from '../part-names.ts';
import type { Places } from '../place.ts';
import type { Shape } from '../shapes.ts';
import { screwSight, screwSpots, screwStrut } from './screw-strut.ts';
import type { StepMarks } from './step-marks.ts';
import { type Sight, strutSpots, toothedMarks, toothedSight, toothedStrut } from './strut.ts';
import { wedgeMarks, wedgeSight, wedgeSpots, wedgeStrut } from './wedge.ts';

/** How a kind is drawn. What is asked of it stands in millimetres, where the parts are at an instant. */
interface AdjusterDrawing {
  /**
   * Strut and adjuster.
   *
   * @param temperature °C, bends the hot lock
   * @param flash strength of the click's flash, 0 to 1
   */
  readonly shapes: (
    brake: Brake,
    instant: Instant,
    places: Places,
    temperature: number,
    flash: number,
  ) => Shape[];
  /** Points for the names layer. */
  readonly spots: (brake: Brake, instant: Instant, places: Places) => { part: PartId; at: Point }[];
  /** What a loupe on the adjuster looks at, mm, and the radius that it sees, mm. */
  readonly sight: (brake: Brake, instant: Instant, places: Places) => Sight;
  readonly marks: (brake: Brake, instant: Instant, places: Places) => StepMarks;
  /** The part that makes the strut longer. */
  readonly part: PartId;
  /** Its springs, seen through the loupe too. */
  readonly springs: readonly PartId[];
}

const toothedLever: AdjusterDrawing = {
  shapes: (brake, _, places, temperature, flash) => toothedStrut(brake, places, temperature, flash),
  spots: (brake, _, places) => strutSpots(brake, places),
  sight: (brake, _, places) => toothedSight(brake, places),
  marks: (brake, _, places) => toothedMarks(brake, places),
  part: 'toothed lever',
  springs: ['lever spring', 'strut spring'],
};

/** One row a kind; one left out does not compile. */
const drawings: Readonly<Record<AdjusterKind, AdjusterDrawing>> = {
  'toothed lever': toothedLever,
  incremental: toothedLever,
  'screw strut': {
    shapes: screwStrut,
    spots: screwSpots,
    sight: screwSight,
    // The wheel's teeth are too fine and too many to be numbered.
    marks: () => ({ shapes: [], numbers: [] }),
    part: 'star wheel',
    springs: ['lever spring'],
  },
  wedge: {
    shapes: wedgeStrut,
    spots: wedgeSpots,
    sight: wedgeSight,
    marks: wedgeMarks,
    part: 'wedge',
    springs: ['wedge spring', 'strut spring'],
  },
};

/** How the brake's own adjuster is drawn. */
export const drawingOf = ({ adjuster }: Brake): AdjusterDrawing => drawings[adjuster.kind];
