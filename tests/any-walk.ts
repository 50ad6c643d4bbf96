import fc from 'fast-check';
import { built, onAbutments, onPins } from './any-brake.ts';
import { type Walked, walk } from './random-steps.ts';

/** Steps of one walk. */
export const WALK = 500;

/** A walk by its number: each third one on a brake of random sizes, the others on a scene. */
export function walkOf(seed: number): Walked {
  if (seed % 3 !== 2) return walk(seed, WALK);
  const sizes = seed % 2 === 0 ? onPins : onAbutments;
  const [any] = fc.sample(sizes, { seed, numRuns: 1 });
  return walk(seed, WALK, any && built(any).brake);
}
