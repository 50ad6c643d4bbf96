import { type Brake, bandOfLetters, lettersOf } from '../index.ts';

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
      ? ` You typed ${own}: its first letter is taken. How far friction falls in the heat is the table’s, which leads to ${letters[1]} where yours has ${own[1]}; so what is told hot is not your lining’s.`
      : '';
  return `Its linings grip as ${letters} would: ${cold.toFixed(2)} cold, ${hot.toFixed(2)} hot.${other} The two letters are printed on a lining’s edge, each for a band a tenth wide: yours may differ by a quarter and bear the same.`;
}
