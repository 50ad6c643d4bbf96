import { askSaidParts as texts } from '../../../sim/words/en.ts';
import type { cautions } from '../../cautions.ts';
import type { PartId } from '../../stage/part-names.ts';

/** What people call the parts, beside what the file of words knows. */
export const partsSaid: Readonly<Partial<Record<PartId, readonly string[]>>> = texts.partsSaid;

/** When a caution is asked for. */
export const cautionsSaid: Readonly<Partial<Record<keyof typeof cautions, readonly string[]>>> =
  texts.cautionsSaid;
