import type { QuantityResult, readQuantity } from './units.ts';

/**
 * A size as typed, read; the sheet and one's own brake ask the unit library here and nowhere else. It is
 * larger than the simulator, and most who open the page type no size: it is loaded when a station that
 * reads sizes is opened, and that station is shown once it is there. So nothing is judged unread.
 */
export type TypedSize = QuantityResult;

let reader: typeof readQuantity | null = null;
let coming: Promise<void> | null = null;

/** Loads what reads sizes, once. Rejects where it cannot be had, as off the network, and may be tried again. */
export function loadReader(): Promise<void> {
  coming ??= import('./units.ts').then(
    (units) => {
      reader = units.readQuantity;
    },
    (error: unknown) => {
      coming = null;
      throw error;
    },
  );
  return coming;
}

/** `readQuantity` of `ui/units.ts`, after `loadReader`. */
export const readTyped: typeof readQuantity = (...typed) => {
  if (!reader) throw new Error('A size was to be read before its reader was loaded.');
  return reader(...typed);
};
