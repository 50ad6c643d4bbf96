import type { readFormula } from './formula-reader.ts';

/**
 * A formula as typed, read; stations ask for it here and nowhere else. Its reader is large and few type one: it
 * is loaded when the first formula is typed or met.
 */
let reader: typeof readFormula | null = null;
let coming: Promise<void> | null = null;

/** Loads what reads formulas; rejects where it cannot be had, as off the network, and may be tried again. */
export function loadFormulas(): Promise<void> {
  coming ??= import('./formula-reader.ts').then(
    (m) => {
      reader = m.readFormula;
    },
    (error: unknown) => {
      coming = null;
      throw error;
    },
  );
  return coming;
}

export const hasFormulas = (): boolean => reader !== null;

/** `readFormula` of `ui/formula-reader.ts`; null until it is there. */
export const readTypedFormula = (
  ...typed: Parameters<typeof readFormula>
): ReturnType<typeof readFormula> | null => reader?.(...typed) ?? null;
