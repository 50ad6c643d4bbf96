import type { Yielding } from '../index.ts';
import { workshopYieldText as words } from '../words/en.ts';

const parts: Readonly<Record<Yielding['part'], string>> = words.parts;

/** What gives way when the strut has to bear more than its weakest part can. */
export const yieldText = ({ part, force }: Yielding): string =>
  words.moreThanTheStrutCan(parts[part], Math.round(force / 100) / 10);
