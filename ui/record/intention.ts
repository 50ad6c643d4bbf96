import type { Moment } from './moment.ts';

/**
 * What the user can want of the bench: a name, a pure function from record to record, and how it is
 * told when it is undone. Nothing else changes the record.
 */
export interface Intention<A extends readonly unknown[]> {
  /** Its part and its name: "park.pull". */
  readonly id: string;
  /** Gives the very same record where nothing changes. */
  readonly does: (moment: Moment, ...asked: A) => Moment;
  /** What was done, for "Undone: …": "tooth 5 to 6". */
  readonly says: (before: Moment, after: Moment, ...asked: A) => string;
  /** Those of one group that follow each other are one step, such as a drag, a held pedal, a typed number. */
  readonly joins: (...asked: A) => string;
  /** The group's step ends with it. */
  readonly ends: boolean;
  /**
   * What the brake did by itself holds in every record of the way back and forth, such as the rows of
   * a stretch that is driven while something else is done. It leaves alone a record that it is not of.
   */
  readonly along: boolean;
}

interface How<A extends readonly unknown[]> {
  readonly joins?: string | ((...asked: A) => string);
  readonly ends?: boolean;
  readonly along?: boolean;
}

/**
 * Declares an intention.
 *
 * @param says a fixed text, or one made of the records before and after
 */
export function intention<A extends readonly unknown[]>(
  id: string,
  does: (moment: Moment, ...asked: A) => Moment,
  says: string | ((before: Moment, after: Moment, ...asked: A) => string),
  how: How<A> = {},
): Intention<A> {
  const { along = false, ends = false, joins = '' } = how;
  return {
    id,
    does,
    says: typeof says === 'string' ? () => says : says,
    joins: typeof joins === 'string' ? () => joins : joins,
    ends,
    along,
  };
}

/** An intention of whatever arguments, as a list of all of them holds it. */
export type AnyIntention = Intention<readonly never[]>;
