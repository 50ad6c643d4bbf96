/** Finds an entry by typed words, in any order, each the beginning of one of its words or within its name. */
export function found<T>(
  all: readonly T[],
  textOf: (entry: T) => string,
  typed: string,
): readonly T[] {
  const words = typed.toLowerCase().split(/\s+/).filter(Boolean);
  if (words.length === 0) return all;
  const scored = all.map((entry, i) => {
    const text = textOf(entry).toLowerCase();
    const hits = words.filter((w) => text.includes(w));
    const begins = words.filter((w) => text.startsWith(w) || text.includes(` ${w}`));
    return { entry, i, all: hits.length, begins: begins.length };
  });
  const most = Math.max(...scored.map((s) => s.all));
  if (most === 0) return [];
  return scored
    .filter((s) => s.all === most)
    .sort((a, b) => b.begins - a.begins || a.i - b.i)
    .map((s) => s.entry);
}
