/**
 * How many letters must be put in, left out, changed or swapped with their neighbour to make one word
 * of the other, capitals alike (optimal string alignment: "The string-to-string correction problem",
 * J. ACM 21 (1974), 168, with the swap of Comm. ACM 7 (1964), 171).
 */
function apart(one: string, other: string): number {
  const [a, b] = [one.toLowerCase(), other.toLowerCase()];
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1];
      let least = Math.min(
        (last[j] as number) + 1,
        (row[j - 1] as number) + 1,
        (last[j - 1] as number) + (same ? 0 : 1),
      );
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      if (swapped) least = Math.min(least, (before[j - 2] as number) + 1);
      row.push(least);
    }
    before = last;
    last = row;
  }
  return last[b.length] as number;
}

/** The known word that was most likely meant: at most a third of its letters apart, or the longer form of it. */
export function nearest(word: string, known: readonly string[]): string | null {
  let best: string | null = null;
  let least = Number.POSITIVE_INFINITY;
  for (const k of known) {
    const d = apart(word, k);
    const near = d <= Math.max(1, Math.floor(Math.max(k.length, word.length) / 3));
    const [short, long] = word.length < k.length ? [word, k] : [k, word];
    const within = short.length >= 3 && long.toLowerCase().includes(short.toLowerCase());
    if ((near || within) && d < least) {
      least = d;
      best = k;
    }
  }
  return best;
}
