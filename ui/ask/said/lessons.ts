import { askSaidLessons as words } from '../../../sim/words/en.ts';

/**
 * Lessons as Ask tells them, and what people say who want one. Their files are larger than all of Ask
 * and are loaded when one is opened; a test holds titles and ideas to them.
 */
interface LessonText {
  readonly title: string;
  readonly idea: string;
  readonly says: readonly string[];
}

export const lessonTexts: Readonly<Record<string, LessonText>> = {
  'how-this-brake-works': words.howThisBrakeWorks,
  'parts-and-names': words.partsAndNames,
  'rest-position': words.restPosition,
  'the-press': words.thePress,
  'self-energising': words.selfEnergising,
  'why-it-grows': words.whyItGrows,
  'the-click': words.theClick,
  'holding-the-tooth': words.holdingTheTooth,
  'wear-and-limits': words.wearAndLimits,
  'drum-off': words.drumOff,
  'new-shoes': words.newShoes,
  'parking-both-ways': words.parkingBothWays,
  heat: words.heat,
  'cheapest-reading': words.cheapestReading,
  verdict: words.verdict,
};
