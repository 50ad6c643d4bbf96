import type { Wheel } from '../index.ts';
import { workshopCut as words } from '../words/en.ts';
import { type Found, type Level, largestBore, less, more } from './inspection.ts';
import type { Limits } from './limits.ts';

/**
 * Machine a scored drum, or renew it. A cut that clears a score takes its depth off on both sides, so
 * the bore after it is what was found and twice the deepest score. That has to stay within two limits,
 * each with its owner: the mark cast on the drum, beyond which it is neither used nor machined, and the
 * machining limit below it, which leaves something to wear. One without an owner gives no verdict. As a
 * US rule for shops puts it: cut to new and 1.52 mm, mark at new and 2.29, so 0.76 is left for wear.
 */
export interface Cut {
  /** Largest diameter found, deepest score, bore after the cut, mm. */
  readonly found: number;
  readonly score: number;
  readonly after: number;
  /** Left to each limit after the cut (negative: past it), mm; null where none is set. */
  readonly toMark: number | null;
  readonly toMachined: number | null;
}

/** Decimal dust of typed numbers, mm. */
const DUST = 1e-8;

/** Null without a diameter and a score. */
export function cutOf(f: Found, limits: Limits): Cut | null {
  const found = largestBore(f);
  const { score } = f.sizes;
  if (Number.isNaN(found) || score === undefined || score <= 0) return null;
  const after = found + 2 * score;
  const left = (limit: number | null): number | null => (limit === null ? null : limit - after);
  return { found, score, after, toMark: left(limits.drumMax), toMachined: left(limits.drumCut) };
}

export interface CutVerdict {
  readonly level: Level;
  readonly title: string;
  readonly why: string;
}

/** One verdict for both drums of the axle, which are cut alike or renewed alike; null without a score. */
export function judgeCut(cuts: Readonly<Record<Wheel, Cut | null>>): CutVerdict | null {
  const all = (['left', 'right'] as const).flatMap((wheel) => {
    const cut = cuts[wheel];
    return cut ? [{ wheel, cut }] : [];
  });
  let worst = all[0];
  if (!worst) return null;
  for (const one of all) if (one.cut.after > worst.cut.after) worst = one;
  const { wheel, cut } = worst;
  const other = wheel === 'left' ? 'right' : 'left';
  const { toMark, toMachined, after } = cut;
  if (toMark !== null && toMark < -DUST) {
    return {
      level: 'bad',
      title: words.renewTheDrumAndThe(wheel, other),
      why: words.aCutThatClearsThe(more(-toMark)),
    };
  }
  if (toMachined !== null && toMachined < -DUST) {
    return {
      level: 'bad',
      title: words.renewTheDrumAndThe(wheel, other),
      why: words.aCutThatClearsThe2(more(-toMachined)),
    };
  }
  if (toMark === null || toMachined === null) {
    const open = [
      ...(toMark === null ? [words.theMarkOnTheDrum] : []),
      ...(toMachined === null ? [words.theMachiningLimit] : []),
    ].join(' and ');
    return {
      level: 'none',
      title: words.noVerdictOnACut,
      why: words.notSetALimitThat(open),
    };
  }
  if (toMark < 0.005) {
    return {
      level: 'watch',
      title: words.cutToBothDrumsStand(more(after)),
      why: words.nothingIsLeftToWear,
    };
  }
  return {
    level: 'good',
    title: words.bothDrumsCanBeCut(more(after)),
    why: words.isThenLeftToWear(less(toMark)),
  };
}
