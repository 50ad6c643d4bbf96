import type { Lock } from './removal.ts';

/** Plain answers of someone with a stuck drum. */
export interface DrumAnswers {
  readonly turns: 'freely' | 'lightly' | 'one way' | 'not at all';
  readonly slides: 'not at all' | 'a little';
  /** What the parking cable does when it is slackened until the lever is home. */
  readonly slack: 'helps' | 'no change' | 'cannot tell';
}

/** What each lock lets the drum do. */
const SIGNS: readonly {
  readonly lock: Lock;
  readonly turns: readonly DrumAnswers['turns'][];
  readonly slides: readonly DrumAnswers['slides'][];
  readonly slack: 'helps' | 'no change';
}[] = [
  // In the order of what a release costs: a cable, a bleed point, a push, teeth, penetrant, a jerk.
  {
    lock: 'lever off its stop',
    turns: ['lightly', 'not at all'],
    slides: ['a little', 'not at all'],
    slack: 'helps',
  },
  {
    lock: 'pressure in the line',
    turns: ['lightly', 'not at all'],
    slides: ['a little', 'not at all'],
    slack: 'no change',
  },
  {
    lock: 'cable keeps its pull',
    turns: ['lightly', 'not at all'],
    slides: ['a little', 'not at all'],
    slack: 'no change',
  },
  {
    // One shoe alone bears: it leads one way and trails the other.
    lock: 'part leans on a shoe',
    turns: ['one way'],
    slides: ['a little', 'not at all'],
    slack: 'no change',
  },
  {
    lock: 'shoes not centred',
    turns: ['freely', 'lightly'],
    slides: ['a little'],
    slack: 'no change',
  },
  { lock: 'lip', turns: ['freely'], slides: ['a little'], slack: 'no change' },
  {
    lock: 'adjuster too far out',
    turns: ['lightly', 'not at all'],
    slides: ['a little', 'not at all'],
    slack: 'no change',
  },
  { lock: 'rust at the hub', turns: ['freely'], slides: ['not at all'], slack: 'no change' },
  { lock: 'linings rusted on', turns: ['not at all'], slides: ['not at all'], slack: 'no change' },
];

/** How firmly each answer speaks: turning and sliding are felt; the cable is seen by what follows. */
const WEIGHT = { turns: 2, slides: 2, slack: 3 } as const;

/**
 * Locks in the order in which to release them: those that no answer speaks against first, the
 * cheapest release in front; then those that one answer speaks against. What two speak against is
 * left out.
 */
export function likelyLocks(answers: DrumAnswers): Lock[] {
  const against = (s: (typeof SIGNS)[number]): number =>
    (s.turns.includes(answers.turns) ? 0 : WEIGHT.turns) +
    (s.slides.includes(answers.slides) ? 0 : WEIGHT.slides) +
    (answers.slack === 'cannot tell' || answers.slack === s.slack ? 0 : WEIGHT.slack);
  return SIGNS.map((s) => ({ lock: s.lock, against: against(s) }))
    .filter((s) => s.against <= WEIGHT.slack)
    .sort((a, b) => a.against - b.against)
    .map((s) => s.lock);
}
