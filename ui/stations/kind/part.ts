import * as v from 'valibot';
import { kindPart as words } from '../../../sim/words/en.ts';
import { intention } from '../../record/intention.ts';
import { type Moment, withPart } from '../../record/moment.ts';
import type { Part } from '../../record/part.ts';

export const kindIds = ['pins', 'flats', 'servo', 'in disc'] as const;
export type KindId = (typeof kindIds)[number];
export const setByIds = ['toothed', 'shoe', 'lever', 'reverse', 'taper', 'hand'] as const;
export type SetBy = (typeof setByIds)[number];

/** Which kind one's own brake is; null: not told. */
export interface KindPart {
  readonly kind: KindId | null;
  /** What sets its length. */
  readonly setBy: SetBy | null;
}

export const kindPart: Part<KindPart> = {
  anew: false,
  layers: {},
  initial: () => ({ kind: null, setBy: null }),
  schema: v.strictObject({
    kind: v.nullable(v.picklist(kindIds)),
    setBy: v.nullable(v.picklist(setByIds)),
  }),
};

export const tellKind = intention(
  'kind.kind',
  (m: Moment, kind: KindId | null) => withPart(m, 'kind', { kind }),
  words.whichKindItIs,
);

export const tellSetBy = intention(
  'kind.set-by',
  (m: Moment, setBy: SetBy | null) => withPart(m, 'kind', { setBy }),
  words.whatSetsItsLength,
);
