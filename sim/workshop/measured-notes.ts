import type { Filled } from '../index.ts';
import { workshopMeasuredNotes as words } from '../words/en.ts';

/** What stands in place of a size that was not measured, one sentence. */
export function filledText(note: Filled): string {
  switch (note.what) {
    case 'drum as new':
      return words.noDrumDiameterLoadedAs;
    case 'lining as new':
      return words.noThicknessOfTheLining(note.side);
    case 'lining even':
      return words.notAllOfTheLining(note.side, Number(note.thinnest.toFixed(3)));
    case 'tooth where silent':
      return words.toothNotCountedWherePresses(note.tooth);
  }
}
