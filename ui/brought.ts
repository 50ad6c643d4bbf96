/** What slow motion has beyond finer steps, once it has come: a look back and a shown click need it. */

let slow: typeof import('./slow.ts') | null = null;

/** Null until it has come. */
export const broughtSlow = (): typeof import('./slow.ts') | null => slow;

/** Loads it, once. */
export async function bringSlow(): Promise<void> {
  slow ??= await import('./slow.ts');
}
