import { type Brake, lettersOf } from '../index.ts';

/** What letters a brake's linings would bear by the friction that is taken for them. */
export function lettersText(brake: Brake): string {
  const { letters, cold, hot } = lettersOf(brake, 'front');
  return `Its linings grip as ${letters} would: ${cold.toFixed(2)} cold, ${hot.toFixed(2)} hot. The two letters are printed on a lining’s edge, each for a band a tenth wide: yours may differ by a quarter and bear the same.`;
}
