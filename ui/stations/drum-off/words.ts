import { isForceLock, type Lock, type Removal } from '../../../sim/index.ts';
import { drumOffWords as texts } from '../../../sim/words/en.ts';
import { cautions } from '../../cautions.ts';
import { number } from '../../format.ts';
import type { Fastening, Try } from './part.ts';

/** Texts of the station: what holds, what was found, how to release it, how the drum is fastened. */

/** "The drum is held by …" */
export const heldBy: Readonly<Record<Lock, string>> = texts.heldBy;

const mm = (value: number): string => `${number(value, 2)}\u00a0mm`;

/** One or two sentences on how the drum stands, under the title. */
export function howItStands(r: Removal): string {
  if (r.heldBy === null) {
    return r.fit.height > 0
      ? texts.nothingHoldsItTheLinings(mm(-r.fit.greatest))
      : texts.nothingHoldsItThisDrum;
  }
  if (r.heldBy === 'rust at the hub')
    return texts.rustHoldsItAtThe(
      r.fit.greatest > 0
        ? texts.wouldBeCaughtByBesides(mm(r.fit.greatest))
        : texts.passTheLipWithIn(mm(-r.fit.greatest)),
    );
  if (r.heldBy === 'linings rusted on') return texts.theLiningsAreRustedOn;
  if (isForceLock(r.heldBy)) return texts.noToothFreesItWhile(heldBy[r.heldBy]);
  if (r.signs.slides === 'not at all') return texts.theShoesPressOnThe;
  return texts.theLiningsRestOutsideThe;
}

const turned: Readonly<Record<Removal['signs']['turns'], string>> = texts.turned;

/** What came of a try: the result's phrase first. */
export function foundBy(what: Try, r: Removal): string {
  const { signs } = r;
  if (what === 'break') return texts.itFreesWithOneJerk(number(signs.forward / 1000, 0));
  if (what === 'turn') {
    if (r.heldBy === 'linings rusted on')
      return texts.itDoesNotTurnThe(number(signs.forward / 1000, 0));
    return turned[signs.turns];
  }
  if (what === 'rock') return signs.rocks ? texts.itRocksALittleOn : texts.itDoesNotRockNot;
  if (r.heldBy === null)
    return r.fit.height > 0 ? texts.theDrumIsOffIt(mm(-r.fit.greatest)) : texts.theDrumIsOff;
  if (signs.slides === 'not at all') return texts.itDoesNotSlideAt(heldBy[r.heldBy]);
  return texts.itSlidesMmSpringsAnd(heldBy[r.heldBy], number(signs.slide, 0));
}

export interface Release {
  readonly name: string;
  /** What to do, in plain words. */
  readonly how: string;
  readonly caution: string;
  /** On the button that does it here. */
  readonly button: string;
}

/** Each lock answers only to its own release. */
export const releases: Readonly<Record<Lock, Release>> = {
  'lever off its stop': {
    name: texts.leverOffItsStopName,
    how: texts.leverOffItsStopHow,
    caution: cautions.park,
    button: texts.leverOffItsStopButton,
  },
  'pressure in the line': {
    name: texts.pressureInTheLineName,
    how: texts.pressureInTheLineHow,
    caution: cautions.fluid,
    button: texts.pressureInTheLineButton,
  },
  'cable keeps its pull': {
    name: texts.cableKeepsItsPullName,
    how: texts.cableKeepsItsPullHow,
    caution: cautions.park,
    button: texts.cableKeepsItsPullButton,
  },
  'part leans on a shoe': {
    name: texts.partLeansOnAShoeName,
    how: texts.partLeansOnAShoeHow,
    caution: cautions.springs,
    button: texts.partLeansOnAShoeButton,
  },
  'shoes not centred': texts.shoesNotCentred,
  lip: {
    name: texts.lipName,
    how: texts.lipHow,
    caution: cautions.strut,
    button: texts.lipButton,
  },
  'adjuster too far out': {
    name: texts.adjusterTooFarOutName,
    how: texts.adjusterTooFarOutHow,
    caution: cautions.hot,
    button: texts.lipButton,
  },
  'rust at the hub': texts.rustAtTheHub,
  'linings rusted on': texts.liningsRustedOn,
};

export interface FasteningText {
  readonly name: string;
  readonly steps: readonly string[];
  readonly why?: readonly { readonly ask: string; readonly answer: string }[];
  readonly caution: string;
}

/** How the drum itself is fastened. */
export const fastenings: Readonly<Record<Fastening, FasteningText>> = {
  studs: texts.studs,
  screw: texts.screw,
  nut: {
    name: texts.nutName,
    steps: texts.nutSteps,
    why: [
      {
        ask: texts.whyDoesItTurnHard,
        answer: texts.itsOuterThreadsArePressed,
      },
      {
        ask: texts.whyByHandAndSlowly,
        answer: texts.theGrippingThreadsRubUnder,
      },
      {
        ask: texts.whyDoesTheMakerSay,
        answer: texts.eachTimeOnAndOff,
      },
    ],
    caution: texts.nutCaution,
  },
};

/** Questions of "Which is mine?" and their answers. */
export const questions = {
  fastening: {
    ask: texts.fasteningAsk,
    hint: texts.fasteningHint,
    answers: [
      ['studs', texts.itSitsOverTheWheel],
      ['screw', texts.aSmallScrewOrA],
      ['nut', texts.aBigNutInThe],
    ],
  },
  turns: {
    ask: texts.turnsAsk,
    hint: texts.turnsHint,
    answers: [
      ['freely', texts.yesFreely],
      ['lightly', texts.itTurnsButDragsBoth],
      ['one way', texts.itDragsMuchStifferOne],
      ['not at all', texts.noOrOnlyWithGreat],
    ],
  },
  slides: {
    ask: texts.slidesAsk,
    hint: texts.slidesHint,
    answers: [
      ['a little', texts.aFewMillimetresThenIt],
      ['not at all', texts.notAHairAndIt],
    ],
  },
  slack: {
    ask: texts.slackAsk,
    hint: texts.slackHint,
    answers: [
      ['helps', texts.thatChangedItFreerOr],
      ['no change', texts.noChange],
      ['cannot tell', texts.iCannotGetAtIt],
    ],
  },
  hole: {
    ask: texts.holeAsk,
    hint: texts.holeHint,
    answers: [
      ['there', texts.yesThereIsOne],
      ['none', texts.noAccessHole],
    ],
  },
} as const;

/** Where the adjuster cannot be reached from outside (common practice). */
export const noHole = texts.noHole;

export const lastResort = texts.lastResort;
