import type { AdjusterKind } from '../../../sim/index.ts';
import { apartWants as words } from '../../../sim/words/en.ts';
import { intention } from '../../record/intention.ts';
import { type Moment, withPart } from '../../record/moment.ts';
import { type ApartPart, MOST_PARTS, type Without } from './part.ts';

const put = (m: Moment, change: Partial<ApartPart>): Moment => {
  const now = m.parts.apart;
  const same = Object.entries(change).every(([k, x]) => now[k as keyof ApartPart] === x);
  return same ? m : withPart(m, 'apart', change);
};

/** Another kind of adjuster on the bench, whole. */
export const layKind = intention(
  'apart.kind',
  (m: Moment, kind: AdjusterKind | null) =>
    put(m, { kind, fitted: MOST_PARTS, without: 'nothing' }),
  (_before, after) => after.parts.apart.kind ?? words.theBrakesOwnAdjuster,
);

/** So many of its parts together, in their order. */
export const fitTo = intention(
  'apart.fit',
  (m: Moment, fitted: number) =>
    put(m, { fitted: Math.max(0, Math.min(MOST_PARTS, Math.round(fitted) || 0)) }),
  (before, after) =>
    after.parts.apart.fitted < before.parts.apart.fitted ? words.aPartOff : words.aPartOn,
);

/** A spring taken away, or none. */
export const goWithout = intention(
  'apart.without',
  (m: Moment, without: Without) =>
    typeof without === 'number' &&
    !(Number.isInteger(without) && without >= 0 && without <= MOST_PARTS)
      ? m
      : put(m, { without }),
  (_before, after) =>
    after.parts.apart.without === 'nothing' ? words.springPutOn : words.springAway,
);
