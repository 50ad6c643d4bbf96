import { askPatterns, askAlso as words } from '../../sim/words/en.ts';

/** Words of several meanings: the other one is a button beside the list. */
const meanings: readonly (readonly [label: string, instead: string])[] = [
  [words.theHandLeversNotches, words.handbrakeNotchesTooMany],
  [words.theAdjustersClick, words.adjusterClickWhenIPress],
  [words.theAdjusterClicksTooOften, words.adjusterClicksEveryPress],
  [words.theDrumWillNotCome, words.drumWillNotComeOff],
  [words.theWheelWillNotTurn, words.wheelWillNotTurn],
  [words.thePedalGoesFar, words.lowPedal],
  [words.weakOnTheRollers, words.lowEffortOnTheRoller],
  [words.thePedalSinks, words.pedalSinksSlowly],
  [words.setTheCable, words.adjustTheHandbrakeCable],
  [words.aHardPedal, words.hardPedalWeakBrakes],
  [words.theWheelIsHardTo, words.wheelHardToTurnBy],
  [words.aServoKindOfBrake, words.duoServoBrake],
];

export interface Also {
  readonly label: string;
  readonly text: string;
}

/** What else may be meant, two at the most. */
export const alsoMeant = (text: string): Also[] =>
  meanings
    .filter((_, i) => {
      const [word, unless] = askPatterns.twofold[i] as (typeof askPatterns.twofold)[number];
      return word.test(text) && !unless.test(text);
    })
    .slice(0, 2)
    .map(([label, instead]) => ({ label, text: instead }));
