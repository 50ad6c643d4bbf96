import type { Reading, Side } from '../../sim/index.ts';
import { piecesReadingName as words } from '../../sim/words/en.ts';

/** A side of the brake, as it stands after a name. */
export const sideName = (side: Side): string => words.side(side);

/** The name of a reading; that of a shoe with its side. */
export const readingName = ({ name, side }: Pick<Reading, 'name' | 'side'>): string =>
  side ? words.ofSide(name, sideName(side)) : name;
