import { sceneRulesStates as words } from '../../words/en.ts';
import { must, ownNames, type Rule } from './rule.ts';

/** States that have the right types and cannot be made. */
export const stateRules: readonly Rule[] = [
  {
    name: words.stateOfItsName,
    reason: words.stateOfItsReason,
    broken: ({ states }) => ownNames('states', states),
  },
  {
    name: words.drumsOfTheName,
    reason: words.drumsOfTheReason,
    broken: ({ states, drum }) =>
      states.flatMap(({ drumDiameter: bore }, i) =>
        must(
          bore === undefined || (bore >= drum.diameterNew && bore <= drum.diameterMax),
          `states.${i}.drumDiameter`,
          `${bore} mm`,
          words.toMm(drum.diameterNew, drum.diameterMax),
        ),
      ),
  },
  {
    name: words.lessOrMoreName,
    reason: words.lessOrMoreReason,
    broken: ({ states }) =>
      states.flatMap(({ less, more }, i) =>
        must(
          less === undefined || more === undefined,
          `states.${i}.more`,
          words.lessAndMore,
          words.oneOfTheTwo,
        ),
      ),
  },
  {
    name: words.clickThatComesName,
    reason: words.clickThatComesReason,
    broken: ({ states, adjuster: { teeth } }) =>
      states.flatMap((s, i) =>
        must(
          s.until !== 'click' || s.click <= teeth,
          `states.${i}.click`,
          s.until === 'click' ? `${s.click}` : '',
          words.of1ToTheTeethThere(teeth),
        ),
      ),
  },
];
