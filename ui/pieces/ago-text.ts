import { piecesAgoText as words } from '../../sim/words/en.ts';
import { number } from '../format.ts';
import type { LookBack } from '../look-back.ts';

/** So much of the moving brake's past as a text: "0.350 s ago". */
export const agoText = (back: LookBack): string => {
  const ago = Math.max(0, back.end - back.time);
  return ago < 5e-5 ? 'now' : words.sAgo(number(ago, 4));
};
