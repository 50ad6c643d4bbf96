import type { Say } from './print.ts';

/** Nothing is told of work that is done by then, ms; and so far apart are two lines. */
const PATIENCE = 2000;

/**
 * Tells how far long work is, a line now and then; on the way of complaints, so that what is asked for
 * stays clean.
 *
 * @param what is counted: `points`, `km`
 * @param all of it; null: nobody knows
 */
export function progress(complain: Say, what: string, all: number | null): (done: number) => void {
  let last = performance.now();
  return (done) => {
    const now = performance.now();
    if (now - last < PATIENCE) return;
    last = now;
    complain(`${Math.round(done)}${all === null ? '' : ` of ${Math.round(all)}`} ${what}`);
  };
}
