import type { Duty } from '../index.ts';

/** What a duty is: its scene's own words, or those for the plain one, which has none. */
export const aboutDuty = (duty: Duty): string =>
  duty.about || 'All stops alike, forward, the drum cool at each.';
