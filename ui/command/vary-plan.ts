import {
  type Answer,
  type Base,
  curveOf,
  type Quantity,
  type Setting,
  tellFinding,
  type Vary,
  type VaryPoint,
} from '../../sim/index.ts';

/**
 * What `vary` works out, cut into units that know nothing of each other: a point each where so many
 * were asked for, else a curve each. So they may be done in any order, by any worker or machine, and
 * come to the same to the bit: every point begins cold (sim/decisions, any number varied).
 */
export interface Plan {
  readonly base: Base;
  readonly of: Quantity;
  readonly from: number;
  readonly to: number;
  /** So many points evenly; null: as many as the curve needs. */
  readonly count: number | null;
  /** The curve of each of these; the only one without. */
  readonly also: readonly (Setting | null)[];
  readonly keys: readonly string[];
}

/** A point as it is told: by JSON's own words, so that a file of it reads back equal. */
export interface ToldPoint {
  readonly at: number;
  readonly values: readonly (number | null)[];
  /** Why there are no values. */
  readonly told: string | null;
  readonly clicked: number;
}

/** What stands above the points. */
export interface Head {
  readonly scene: string;
  readonly title: string;
  readonly pressure: { readonly value: number; readonly unit: string };
  readonly drum: string;
  readonly of: { readonly id: string; readonly name: string; readonly unit: string };
  readonly second: { readonly id: string; readonly name: string; readonly unit: string } | null;
  readonly readings: readonly Answer[];
  /** Values of the second quantity, curve by curve. */
  readonly values: readonly (number | null)[];
}

export interface Unit {
  readonly curve: number;
  /** Null: the whole curve. */
  readonly at: number | null;
}

/** Places of one curve: evenly, whole numbers once each. */
function places({ of, from, to, count }: Plan): readonly (number | null)[] {
  if (count === null) return [null];
  const at = (i: number): number => (count > 1 ? from + ((to - from) * i) / (count - 1) : from);
  const all = Array.from({ length: count }, (_, i) => (of.whole ? Math.round(at(i)) : at(i)));
  return [...new Set(all)];
}

export const unitsOf = (plan: Plan): readonly Unit[] => {
  const each = places(plan);
  return plan.also.flatMap((_, curve) => each.map((at): Unit => ({ curve, at })));
};

/** Why nothing is told at a point, in a word or two; null where it is. */
const whyText = ({ why, locked, finding }: VaryPoint): string | null =>
  why === 'locks'
    ? `${locked} shoe locks`
    : finding
      ? `cannot be: ${tellFinding(finding)}`
      : why === 'sound'
        ? null
        : why;

const told = (p: VaryPoint): ToldPoint => ({
  at: p.at[0] as number,
  values: p.values.map((x) => (Number.isFinite(x) ? x : null)),
  told: whyText(p),
  clicked: p.clicked,
});

/** Works one unit out. @param vary of the plan's own base */
export function workOut(vary: Vary, plan: Plan, { curve, at }: Unit): readonly ToldPoint[] {
  const { of, from, to, keys } = plan;
  const set = plan.also[curve];
  const also = set ? [set] : [];
  if (at !== null) return [told(vary.point([[of.id, at], ...also], keys))];
  return curveOf(vary, { id: of.id, from, to, whole: of.whole, keys, also }).map(told);
}
