import { format as words } from '../sim/words/en.ts';

/**
 * Numbers as they stand on the page: fixed decimals after the language's mark, narrow no-break space for thousands, true
 * minus.
 */
export function number(value: number, digits: number): string {
  if (!Number.isFinite(value)) return '–';
  const fixed = Math.abs(value).toFixed(digits);
  const [whole = '', part] = fixed.split('.');
  const grouped =
    whole.length > 4 || Math.abs(value) >= 1000
      ? whole.replace(/\B(?=(\d{3})+(?!\d))/g, '\u202f')
      : whole;
  const zero = Number(fixed) === 0;
  return `${value < 0 && !zero ? '\u2212' : ''}${grouped}${part ? `${words.decimalMark}${part}` : ''}`;
}

/** A figure on the drawing: so many decimals after the language's mark, and nothing else. */
export const fixed = (value: number, digits: number): string =>
  value.toFixed(digits).replace('.', words.decimalMark);

/** Rounded away from the limit's good side: a lining is never shown thicker than it is. */
export const down = (value: number, digits: number): number => {
  const f = 10 ** digits;
  return Math.floor(value * f + 1e-9) / f;
};

/** A name as it begins a line. */
export const capital = (name: string): string => `${name.charAt(0).toUpperCase()}${name.slice(1)}`;
