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

/** What may be told of an adjuster that is put in; as it was when left out. */
export interface AdjusterOptions {
  /** Temperature above which a bimetal holds the lever, °C; Infinity for none; as it was when left out. */
  readonly hotLock?: number;
  readonly drivenBy?: Adjuster['drivenBy'];
}

type Steps = Pick<Adjuster, 'teeth' | 'growth'>;

/** Faults that need a part which not every kind has: their ids in the list of faults. */
export type KindFault = 'worn teeth' | 'broken lever spring' | 'wrong side';

/**
 * What the strut's spring does. Along the strut act its seat on the parking lever, which can only push, what the front
 * web does to it, and its spring; its weight of a newton, rubbing on its seats, is left out (free body of the strut).
 *
 * - 'holds it back': a climbing lever draws the strut to the front by its climb force, and the spring, hooked into the
 *   rear web, is all that draws it back. Without it no lever can climb: the web takes lever and strut along.
 * - 'takes it along': hooked into the front web, it keeps the strut on the wedge while the play behind its hook lasts,
 *   so that no room opens there. Without it the strut stays behind: the room opens at once, and the wedge drops into
 *   it without the play.
 *
 * On a sound brake it is taken to be stronger than what it works against.
 */
export type StrutSpring = 'holds it back' | 'takes it along';

/** What the mechanics know of a kind. */
export interface KindLaw {
  /** Steps that can be told one by one; a stepless kind is reckoned in steps too small for that. */
  readonly countable: boolean;
  /** Stepped by a toothed lever in the strut, whose geometry a scene may give in place of a pitch. */
  readonly toothedLever: boolean;
  /** Null: its strut has none. */
  readonly strutSpring: StrutSpring | null;
  /** Most steps in one application, of so many that there are. */
  readonly atOnce: (teeth: number) => number;
  /** Steps of a new one in place of another kind: as far as that one reaches. */
  readonly steps: (own: Adjuster) => Steps;
  readonly faults: readonly KindFault[];
}

function even(pitch: number, range: number): Steps {
  // Half a thousandth of a step lets a range that divides evenly keep its last step.
  const teeth = Math.max(1, Math.floor(range / pitch + 5e-4));
  return { teeth, growth: evenGrowth(pitch, teeth) };
}

const reach = ({ growth, teeth }: Adjuster): number => growth[teeth] as number;
const all = (teeth: number): number => teeth;
const one = (): number => 1;

/** A toothed lever has the same teeth whether it takes all or one a press. */
const toothed = (own: Adjuster): Steps =>
  kindLaws[own.kind].toothedLever
    ? { teeth: own.teeth, growth: own.growth }
    : even(EVEN_TOOTH, reach(own));

/** The one place where the mechanics tell kinds apart: what differs between them is a row here. */
export const kindLaws: Readonly<Record<AdjusterKind, KindLaw>> = {
  'toothed lever': {
    countable: true,
    toothedLever: true,
    strutSpring: 'holds it back',
    atOnce: all,
    steps: toothed,
    faults: ['worn teeth', 'broken lever spring', 'wrong side'],
  },
  incremental: {
    countable: true,
    toothedLever: true,
    strutSpring: 'holds it back',
    atOnce: one,
    steps: toothed,
    faults: ['worn teeth', 'broken lever spring', 'wrong side'],
  },
  'screw strut': {
    countable: true,
    toothedLever: false,
    // Its two parts are held together by the thread, its ends by forks.
    strutSpring: null,
    atOnce: one,
    steps: (own) => even(STAR_WHEEL.thread / STAR_WHEEL.teeth, reach(own)),
    // A thread carries any push, so no tooth lets go; fitted on the wrong side it winds back.
    faults: ['wrong side'],
  },
  wedge: {
    countable: false,
    toothedLever: false,
    strutSpring: 'takes it along',
    atOnce: all,
    steps: (own) => even(WEDGE_STEP, reach(own)),
    faults: [],
  },
};

/** Every kind, as scenes and commands name it. */
export const adjusterKinds = Object.keys(kindLaws) as readonly AdjusterKind[];

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
  const adjuster = kind === own.kind ? own : renewed(own, kind);
  return {
    ...brake,
    adjuster: {
      ...adjuster,
      hotLock: options.hotLock ?? own.hotLock,
      drivenBy: options.drivenBy ?? own.drivenBy,
    },
  };
}

function renewed(own: Adjuster, kind: AdjusterKind): Adjuster {
  const law = kindLaws[kind];
  const steps = law.steps(own);
  const [lever, spring] = law.toothedLever ? [own.lever, own.spring] : [null, null];
  return { ...own, ...steps, kind, perApplication: law.atOnce(steps.teeth), lever, spring };
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
