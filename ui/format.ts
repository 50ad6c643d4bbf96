/** Numbers as they stand on the page: fixed decimals, narrow no-break space for thousands, true minus. */
export function number(value: number, digits: number): string {
  if (!Number.isFinite(value)) return '–';
  const fixed = Math.abs(value).toFixed(digits);
  const [whole = '', part] = fixed.split('.');
  const grouped =
    whole.length > 4 || Math.abs(value) >= 1000
      ? whole.replace(/\B(?=(\d{3})+(?!\d))/g, '\u202f')
      : whole;
  const zero = Number(fixed) === 0;
  return `${value < 0 && !zero ? '\u2212' : ''}${grouped}${part ? `.${part}` : ''}`;
}

/** Rounded away from the limit's good side: a lining is never shown thicker than it is. */
export const down = (value: number, digits: number): number => {
  const f = 10 ** digits;
  return Math.floor(value * f + 1e-9) / f;
};
