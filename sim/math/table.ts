/** A value against another: rows rising in the first; straight lines between, flat outside. */
export type Table = readonly (readonly [number, number])[];

/** Straight-line table; flat outside its ends; 1 where it has no row. */
export function tableAt(table: Table, t: number): number {
  const first = table[0];
  if (!first) return 1;
  if (t <= first[0]) return first[1];
  for (let i = 1; i < table.length; i++) {
    const a = table[i - 1];
    const b = table[i];
    if (a && b && t <= b[0]) return a[1] + ((t - a[0]) / (b[0] - a[0])) * (b[1] - a[1]);
  }
  return table[table.length - 1]?.[1] ?? 1;
}
