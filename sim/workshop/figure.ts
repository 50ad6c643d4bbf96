import { format } from '../words/en.ts';

/** A figure with so many decimals, after the language's mark. Files and codes have the point: `toFixed`. */
export const fixed = (value: number, digits: number): string =>
  value.toFixed(digits).replace('.', format.decimalMark);
