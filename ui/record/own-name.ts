/** Start and factor of the 32-bit hash FNV-1a of Fowler, Noll and Vo (their figures, from memory). */
const START = 0x811c9dc5;
const PRIME = 0x01000193;

function hash(text: string, start: number): number {
  let h = start;
  for (let i = 0; i < text.length; i++) h = Math.imul(h ^ text.charCodeAt(i), PRIME);
  return h >>> 0;
}

/**
 * Name of one's own brake that follows from what it is made of: every window finds the same, and
 * another brake another.
 */
export const nameFrom = (text: string): string =>
  `own-${hash(text, START).toString(36)}${hash(text, START ^ text.length).toString(36)}`;
