import { type Brake, bandOfLetters, lettersOf } from '../index.ts';
import { workshopLettersText as words } from '../words/en.ts';
import { fixed } from './figure.ts';

/**
 * What letters a brake's linings would bear by the friction that is taken for them.
 *
 * @param typed for its friction: where that is two letters of which the tables make others, it is said why
 */
export function lettersText(brake: Brake, typed = ''): string {
  const { letters, cold, hot } = lettersOf(brake, 'front');
  const own = typed.trim().toUpperCase();
  const other =
    bandOfLetters(own) && own !== letters
      ? words.youTypedItsFirstLetter(own, letters[1], own[1])
      : '';
  return words.itsLiningsGripAsWould(letters, fixed(cold, 2), fixed(hot, 2), other);
}
