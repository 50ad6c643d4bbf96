import type * as Print from './print-page.ts';

/** Takes away what was prepared, a sheet's too: the next print shows what stands then. */
export function printDone(): void {
  for (const at of document.querySelectorAll('#print-moment, #print')) at.remove();
}

let prints: typeof Print | null = null;

/** Loads what writes the page for a printer: a print cannot be waited for, and few print at once. */
export async function bringPrint(): Promise<void> {
  prints = await import('./print-page.ts');
}

/** Prepares what only the printer sees, once that can be written. */
export const printMoment: typeof Print.printMoment = (...args) => prints?.printMoment(...args);
