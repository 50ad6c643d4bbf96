import { it } from 'vitest';
import { lookRound } from './look-round.ts';

/** A laptop's drawing lies over the most parts. */
it.each(['Sheet', 'Board'] as const)(
  'at 1366 in %s no fault of access, one h1, and every text on a drawing and control that is off stands out',
  (theme) => lookRound({ width: 1366, height: 768, theme }),
);
