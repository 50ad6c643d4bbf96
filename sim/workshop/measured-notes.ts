import type { Filled } from '../index.ts';

/** What stands in place of a size that was not measured, one sentence. */
export function filledText(note: Filled): string {
  switch (note.what) {
    case 'drum as new':
      return 'No drum diameter: loaded as new.';
    case 'lining as new':
      return `No thickness of the ${note.side} lining: loaded as new.`;
    case 'lining even':
      return `Not all of the ${note.side} lining measured: even from ${Number(note.thinnest.toFixed(3))} mm on.`;
    case 'tooth where silent':
      return `Tooth not counted: ${note.tooth}, where presses fall silent.`;
  }
}
