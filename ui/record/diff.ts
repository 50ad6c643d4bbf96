/**
 * What is other in a tree of plain JSON data: for each key a nested difference, `[value]` where it is
 * put, 0 where it is gone. Lists are put whole. So that a value can itself be null or an object, a
 * put one stands in a list of its own.
 */
export type Diff = { readonly [key: string]: Diff | readonly [unknown] | 0 };

type Tree = Readonly<Record<string, unknown>>;
const isTree = (x: unknown): x is Tree => typeof x === 'object' && x !== null && !Array.isArray(x);

/** The same, whatever the order of keys? */
function same(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (Array.isArray(a) && Array.isArray(b)) {
    return a.length === b.length && a.every((x, i) => same(x, b[i]));
  }
  if (!isTree(a) || !isTree(b)) return false;
  const keys = Object.keys(a);
  return (
    keys.length === Object.keys(b).length &&
    keys.every((k) => Object.hasOwn(b, k) && same(a[k], b[k]))
  );
}

/** What makes `to` of `from`. */
export function diff(from: Tree, to: Tree): Diff {
  const out: Record<string, Diff | readonly [unknown] | 0> = {};
  for (const key of Object.keys(from)) if (!Object.hasOwn(to, key)) out[key] = 0;
  for (const [key, value] of Object.entries(to)) {
    const before = from[key];
    if (Object.hasOwn(from, key) && same(before, value)) continue;
    out[key] = isTree(before) && isTree(value) ? diff(before, value) : [value];
  }
  return out;
}

/** Names that would reach into the language. */
const REFUSED = new Set(['__proto__', 'constructor', 'prototype']);

/** Applies a difference; throws where it is none. A stranger's data: nothing but own keys is touched. */
export function patch(from: Tree, change: unknown): Tree {
  if (!isTree(change)) throw new Error('no difference');
  const out: Record<string, unknown> = { ...from };
  for (const [key, c] of Object.entries(change)) {
    if (REFUSED.has(key)) throw new Error(`key "${key}"`);
    if (c === 0) delete out[key];
    else if (Array.isArray(c) && c.length === 1) out[key] = c[0];
    else {
      const before = from[key];
      out[key] = patch(isTree(before) ? before : {}, c);
    }
  }
  return out;
}
