import { it } from 'vitest';
import { lookRound } from './look-round.ts';

/** A phone's letters are the smallest. */
it.each(['Sheet', 'Board'] as const)(
  'at 390 in %s no fault of access, one h1, and every text on a drawing and control that is off stands out',
  (theme) => lookRound({ width: 390, height: 844, theme }),
);
