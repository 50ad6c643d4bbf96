import { sceneFinding as words } from '../words/en.ts';
/** One thing wrong with a scene: where, what was found, what is allowed, and why where a rule tells it. */
export interface Finding {
  readonly path: string;
  readonly found: string;
  readonly allowed: string;
  readonly reason?: string;
}

/** A finding in one line. */
export const tellFinding = ({ path, found, allowed, reason }: Finding): string =>
  words.foundAllowed(path, found, allowed, reason ? `. ${reason}` : '');
