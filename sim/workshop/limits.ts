import type { Brake, OwnSizes } from '../index.ts';
import { workshopLimits as texts } from '../words/en.ts';

/** Limits that a sheet is judged by; null where nobody has set one. */
export interface Limits {
  /** Largest diameter, mm. */
  readonly drumMax: number | null;
  /** Largest diameter to which a drum may be machined, mm: under the mark, since what is cut wears on. */
  readonly drumCut: number | null;
  /** Deepest score that may stay, mm. */
  readonly score: number | null;
  /** Largest difference of diameters around the bore, mm. */
  readonly outOfRound: number | null;
  /** Largest difference of diameters between two depths, mm. */
  readonly taper: number | null;
  /** Least lining at its thinnest point, mm. */
  readonly liningMin: number | null;
  /** Most notches of the hand lever. */
  readonly notches: number | null;
}
export type LimitKey = keyof Limits;

/** Sizes as new, for what is still usable; null where nobody has said them. */
export interface AsNew {
  readonly drum: number | null;
  readonly lining: number | null;
  readonly teeth: number | null;
}

/** Limits of one origin. Whose they are is always said beside them. */
export interface LimitSet {
  readonly id: 'teaching' | 'regulation' | 'test' | 'maker';
  readonly name: string;
  /** Whose, in two or three words, for each line. */
  readonly whose: string;
  /** What it is, where it was read, and what it does not cover. */
  readonly about: string;
  readonly limits: Limits;
  /** New sizes of the one brake whose limits they are; nulls where they are of no one brake. */
  readonly asNew: AsNew;
}

const NONE: Limits = {
  drumMax: null,
  drumCut: null,
  score: null,
  outOfRound: null,
  taper: null,
  liningMin: null,
  notches: null,
};
const UNKNOWN: AsNew = { drum: null, lining: null, teeth: null };

/** The brake on the bench: its limits are offered by its name. */
const ofTeachingBrake = (brake: Brake): LimitSet => ({
  id: 'teaching',
  name: texts.thisTeachingBrake(brake.title),
  whose: texts.thisTeachingBrake2,
  about: texts.inventedForThisBrakeThey,
  limits: {
    ...NONE,
    drumMax: 2 * brake.drum.radiusMax,
    outOfRound: brake.drum.outOfRoundMax,
    liningMin: brake.shoes.front.lining.thicknessMin,
  },
  asNew: {
    drum: 2 * brake.drum.radiusNew,
    lining: brake.shoes.front.lining.thicknessNew,
    teeth: brake.adjuster.teeth,
  },
});

/** One's own brake on the bench: what was typed of it, and nothing that was assumed. */
const ofOwnBrake = (brake: Brake, own: OwnSizes): LimitSet => ({
  id: 'teaching',
  name: texts.myBrake(brake.title),
  whose: texts.myBrakeAsTyped,
  about: texts.asYouTypedThemIn,
  limits: { ...NONE, drumMax: own.drumMax ?? null, liningMin: own.liningMin ?? null },
  asNew: { drum: own.drumNew ?? null, lining: own.liningNew ?? null, teeth: own.teeth ?? null },
});

/**
 * Sets to choose from; every figure can be typed over. First the one in which nothing is set.
 *
 * @param own sizes typed of the brake on the bench, where it is one's own
 */
export function limitSets(brake: Brake, own: OwnSizes | null = null): readonly LimitSet[] {
  return [
    {
      id: 'maker',
      name: texts.makerName,
      whose: texts.makerWhose,
      about: texts.makerAbout,
      limits: NONE,
      asNew: UNKNOWN,
    },
    own ? ofOwnBrake(brake, own) : ofTeachingBrake(brake),
    {
      id: 'regulation',
      name: texts.regulationName,
      whose: texts.regulationWhose,
      about: texts.regulationAbout,
      limits: { ...NONE, liningMin: 1.6 },
      asNew: UNKNOWN,
    },
    {
      id: 'test',
      name: texts.testName,
      whose: texts.testWhose,
      about: texts.testAbout,
      limits: { ...NONE, liningMin: 1.5 },
      asNew: UNKNOWN,
    },
  ];
}

/** New diameters of drums in use lie further apart than this (common practice), mm. */
const ANOTHER_DRUM = 0.5;
/** A drum that is this far past a mark may still be the one that the mark stands on, mm. */
const PAST_MARK = 2;

/**
 * Does a set hold for the drum on the sheet? Limits of one brake hold for that brake alone: 17 mm left
 * on a smaller drum, or 27 mm too much on a larger one, would be said of another brake.
 *
 * @param fresh new diameter of the drum on the sheet, mm; null when not typed
 * @param bores every diameter measured, mm
 */
export function holdsFor(set: LimitSet, fresh: number | null, bores: readonly number[]): boolean {
  const theirs = set.asNew.drum;
  if (theirs === null) return true;
  if (fresh !== null && Math.abs(fresh - theirs) > ANOTHER_DRUM) return false;
  const most = (set.limits.drumMax ?? theirs) + PAST_MARK;
  return bores.every((d) => d >= theirs - ANOTHER_DRUM && d <= most);
}

/** The set as it holds for another drum than its own: not at all. */
export const voided = (set: LimitSet): LimitSet => ({ ...set, limits: NONE, asNew: UNKNOWN });
