import * as v from 'valibot';
import { type AdjusterKind, adjusterKinds } from '../../../sim/index.ts';
import type { Part } from '../../record/part.ts';

/** A spring that is taken away: the adjuster's own, the strut's, or a return spring by its place in the brake's list. */
export type Without = 'nothing' | 'adjuster' | 'strut' | number;

export interface ApartPart {
  /** Kind on the bench; null: the brake's own. */
  readonly kind: AdjusterKind | null;
  /** So many parts are together, in their order. */
  readonly fitted: number;
  readonly without: Without;
}

/** More parts than any kind has. */
export const MOST_PARTS = 20;

export const NOT_APART: ApartPart = { kind: null, fitted: MOST_PARTS, without: 'nothing' };

export const apartPart: Part<ApartPart> = {
  anew: true,
  layers: {},
  initial: () => NOT_APART,
  schema: v.strictObject({
    kind: v.nullable(v.picklist(adjusterKinds)),
    fitted: v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(MOST_PARTS)),
    without: v.union([
      v.picklist(['nothing', 'adjuster', 'strut']),
      v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(MOST_PARTS)),
    ]),
  }),
};
