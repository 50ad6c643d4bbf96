import { type QuantityResult, readQuantity } from './units.ts';

/** A size as typed, read; the sheet and one's own brake ask the unit library here and nowhere else. */
export type TypedSize = QuantityResult;
export const readTyped: typeof readQuantity = readQuantity;
