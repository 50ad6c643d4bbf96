import * as v from 'valibot';
import type { Wheel } from '../../../sim/index.ts';
import type { LimitKey, LimitSet, LookKey, SizeKey } from '../../../sim/workshop/index.ts';
import {
  type AxleKey,
  axleLines,
  type HeadKey,
  heads,
  limitWords,
  lines,
  newPartNames,
  type PartKey,
} from './lines.ts';

/**
 * The sheet as typed: texts, word for word. One sheet for the whole page, whatever brake stands on the
 * bench.
 */
export type WheelKey = SizeKey | LookKey;
export type Texts<K extends string> = Readonly<Partial<Record<K, string>>>;

export interface Paper {
  /** By which a kept sheet and its photo notes are known; empty until it needs one. */
  readonly id: string;
  readonly wheels: Readonly<Record<Wheel, Texts<WheelKey>>>;
  /** New parts that are to go on. */
  readonly parts: Readonly<Record<Wheel, Texts<PartKey>>>;
  readonly axle: Texts<AxleKey>;
  readonly head: Texts<HeadKey>;
  readonly limitsFrom: LimitSet['id'];
  /** Limits typed over the set's. */
  readonly limits: Texts<LimitKey>;
  /** Unit of a number typed without one. */
  readonly plain: 'mm' | 'in';
}

export const BLANK: Paper = {
  id: '',
  wheels: { left: {}, right: {} },
  parts: { left: {}, right: {} },
  axle: {},
  head: {},
  limitsFrom: 'maker',
  limits: {},
  plain: 'mm',
};

export const PAPER_ID = /^[a-z0-9-]{0,40}$/;

/** Longest text of a place; what is typed beyond is cut off. */
export const LONGEST = 200;

export const limitSetIds = ['teaching', 'regulation', 'test', 'maker'] as const;
/** Every place of the sheet that can be typed in. */
export const wheelKeys: readonly WheelKey[] = lines.flatMap((l) =>
  l.kind === 'size' || l.kind === 'look' ? [l.key] : [],
);
export const axleKeys: readonly AxleKey[] = ['drumNew', ...axleLines.map((l) => l.key)];
export const partKeys = Object.keys(newPartNames) as readonly PartKey[];
export const headKeys: readonly HeadKey[] = heads.map(([key]) => key);
export const limitKeys = Object.keys(limitWords) as readonly LimitKey[];

const texts = <K extends string>(keys: readonly K[]): v.GenericSchema<unknown, Texts<K>> =>
  v.pipe(
    v.record(v.picklist(keys), v.pipe(v.string(), v.maxLength(LONGEST))),
    v.transform((r): Texts<K> => r),
  );

export const paperSchema: v.GenericSchema<unknown, Paper> = v.strictObject({
  // Sheets from before that were kept have none.
  id: v.optional(v.pipe(v.string(), v.regex(PAPER_ID)), ''),
  wheels: v.strictObject({ left: texts(wheelKeys), right: texts(wheelKeys) }),
  // Sheets from before new parts were looked at have none.
  parts: v.optional(v.strictObject({ left: texts(partKeys), right: texts(partKeys) }), BLANK.parts),
  axle: texts(axleKeys),
  head: texts(headKeys),
  limitsFrom: v.picklist(limitSetIds),
  limits: texts(limitKeys),
  plain: v.picklist(['mm', 'in']),
});

/** Does any text stand on the sheet? */
export const typedIn = (p: Paper): boolean =>
  [p.wheels.left, p.wheels.right, p.parts.left, p.parts.right, p.axle, p.head, p.limits].some((t) =>
    Object.values(t).some((text) => text !== ''),
  );
