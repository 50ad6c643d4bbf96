import { must, ownNames, type Rule } from './rule.ts';

/** States that have the right types and cannot be made. */
export const stateRules: readonly Rule[] = [
  {
    name: 'state of its own name',
    reason: 'A state is chosen by its name.',
    broken: ({ states }) => ownNames('states', states),
  },
  {
    name: 'drums of the states',
    reason: 'A standing state has a drum within its limit.',
    broken: ({ states, drum }) =>
      states.flatMap(({ drumDiameter: bore }, i) =>
        must(
          bore === undefined || (bore >= drum.diameterNew && bore <= drum.diameterMax),
          `states.${i}.drumDiameter`,
          `${bore} mm`,
          `${drum.diameterNew} to ${drum.diameterMax} mm`,
        ),
      ),
  },
  {
    name: 'less or more',
    reason: 'A state stands before its goal or beyond it.',
    broken: ({ states }) =>
      states.flatMap(({ less, more }, i) =>
        must(
          less === undefined || more === undefined,
          `states.${i}.more`,
          'less and more',
          'one of the two',
        ),
      ),
  },
  {
    name: 'click that comes',
    reason: 'The adjuster clicks once a tooth.',
    broken: ({ states, adjuster: { teeth } }) =>
      states.flatMap((s, i) =>
        must(
          s.until !== 'click' || s.click <= teeth,
          `states.${i}.click`,
          s.until === 'click' ? `${s.click}` : '',
          `1 to ${teeth}, the teeth there are`,
        ),
      ),
  },
];
