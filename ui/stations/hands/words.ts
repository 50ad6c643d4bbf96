import { labelWords, handsWords as words } from '../../../sim/words/en.ts';
import type { HandPart } from '../../record/hands.ts';

/** What each part is called in the list, and what a hand can do with it. */
export const rows: Readonly<Record<HandPart, readonly [name: string, does: string]>> = {
  'front shoe': [words.frontShoe, words.pullPushAnywhereOnIt],
  'rear shoe': [words.rearShoe, words.pullPushAnywhereOnIt],
  'both toes': [words.bothToes, words.spreadPressTogether],
  strut: [labelWords.strut, words.itsPlay],
  'adjuster lever': [words.toothedLever, words.liftItTurnItBack],
  'parking lever': [words.parkingLever, words.pullAtTheHook],
  cable: [labelWords.cable, words.pull],
  'front piston': [words.frontPiston, words.pushBackFluidGoes],
  'rear piston': [words.rearPiston, words.pushBackFluidGoes],
  drum: [labelWords.drum, words.turnToAndFroFeel],
  'drum pulled': [words.drumStraight, words.pullItOffItsStuds],
  'drum rocked': [words.drumOneSide, words.rockItAgainstItsLip],
};

/** What happens, in two sentences at most. */
export const tells: Readonly<Record<HandPart, string>> = words.tells;
