import { evenGrowth } from './adjuster.ts';
import type { Adjuster, AdjusterKind, Brake } from './types.ts';

/**
 * Kinds that one brake can be switched between. The ratchet law stays, its numbers change: what a
 * step is, how many one application may take, what drives it.
 */

/** One turn of a star wheel: steps, and growth of the strut, mm (a thread of 1.0 mm pitch: common practice). */
export const STAR_WHEEL = { teeth: 20, thread: 1 } as const;
/** Stepless, reckoned in steps of this growth, mm. */
export const WEDGE_STEP = 0.02;
/** Growth of the strut over the drop of the wedge: a slope of 1 in 8 (common practice: self-holding on dry steel). */
export const WEDGE_SLOPE = 1 / 8;
/** Even step of a toothed lever where a scene gives no lever, mm. */
const EVEN_TOOTH = 0.47;
/** A bimetal holds the lever above this, °C. */
export const HOT_LOCK = 120;

export interface AdjusterOptions {
  /** Temperature above which a bimetal holds the lever, °C; Infinity for none; as it was when left out. */
  readonly hotLock?: number;
  readonly drivenBy?: Adjuster['drivenBy'];
}

function steps(pitch: number, range: number): Pick<Adjuster, 'teeth' | 'growth'> {
  // Half a thousandth of a step lets a range that divides evenly keep its last step.
  const teeth = Math.max(1, Math.floor(range / pitch + 5e-4));
  return { teeth, growth: evenGrowth(pitch, teeth) };
}

function numbers(own: Adjuster, kind: AdjusterKind): Partial<Adjuster> {
  if (kind === own.kind) return {};
  const range = own.growth[own.teeth] as number;
  if (kind === 'screw strut') {
    return {
      ...steps(STAR_WHEEL.thread / STAR_WHEEL.teeth, range),
      perApplication: 1,
      lever: null,
    };
  }
  if (kind === 'wedge') {
    const even = steps(WEDGE_STEP, range);
    return { ...even, perApplication: even.teeth, lever: null };
  }
  const toothed = own.kind === 'toothed lever' || own.kind === 'incremental';
  const even = toothed ? { teeth: own.teeth, growth: own.growth } : steps(EVEN_TOOTH, range);
  return { ...even, perApplication: kind === 'incremental' ? 1 : even.teeth };
}

/**
 * The brake with another kind of adjuster, a new one: same strut length at zero, same lost motion,
 * the same range in other steps. Its own kind keeps its own numbers. Put a state's tooth across with
 * `toothAcross`.
 */
export function withAdjuster(
  brake: Brake,
  kind: AdjusterKind,
  options: AdjusterOptions = {},
): Brake {
  const own = brake.adjuster;
  return {
    ...brake,
    adjuster: {
      ...own,
      ...numbers(own, kind),
      kind,
      hotLock: options.hotLock ?? own.hotLock,
      drivenBy: options.drivenBy ?? own.drivenBy,
    },
  };
}

/** The step of another kind that makes the strut as long as it stands, or the nearest shorter one. */
export function toothAcross(from: Brake, to: Brake, tooth: number): number {
  const length = from.adjuster.lengthAtZero + (from.adjuster.growth[tooth] ?? 0);
  const { growth, lengthAtZero } = to.adjuster;
  let best = 0;
  for (let n = 0; n < growth.length; n++) {
    if (lengthAtZero + (growth[n] as number) <= length + 1e-9) best = n;
  }
  return best;
}
