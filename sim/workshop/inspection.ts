import { boreFrom } from '../index.ts';
import { workshopInspection as texts } from '../words/en.ts';
import { fixed } from './figure.ts';
import type { AsNew, Limits } from './limits.ts';

/**
 * The measurement sheet of one axle: each line judged by its margin, the sheet by its worst line.
 * Nothing is rounded towards good: what is left is rounded down, what is over is rounded up.
 */
export type SizeKey =
  | 'drumA'
  | 'drumB'
  | 'drumC'
  | 'drumDeep'
  | 'lip'
  | 'score'
  | 'leadToe'
  | 'leadThin'
  | 'leadHeel'
  | 'trailToe'
  | 'trailThin'
  | 'trailHeel'
  | 'leverOff'
  | 'tooth';
export type LookKey = 'faces' | 'boots' | 'springs' | 'adjuster';
export type Look = 'good' | 'bad';

/** What was found on one wheel; mm, a tooth by its number. What was not looked at is left out. */
export interface Found {
  readonly sizes: Readonly<Partial<Record<SizeKey, number>>>;
  readonly looks: Readonly<Partial<Record<LookKey, Look>>>;
}

export type Level = 'good' | 'watch' | 'bad' | 'none';

export interface Verdict {
  readonly level: Level;
  /** A few words with the number: "0.48 left". */
  readonly words: string;
  /** What to do; empty where there is nothing to do. */
  readonly action: string;
  /** Left to the limit (negative: past it), mm; NaN where no limit is set. */
  readonly margin: number;
}

/** Under this share of what is usable from new to the limit, a line is to be watched (own choice). */
const WATCH = 1 / 3;
/** Usable of a drum whose new diameter is not known: makers allow 1 to 2 mm (common practice). */
export const USUAL_ALLOWANCE = 2;
/** A new lining whose thickness is not known: 4 to 6 mm (common practice). */
export const USUAL_LINING = 5;
/** A lip this high may catch the linings: about the heel's clearance (common practice), mm. */
const LIP_CATCHES = 0.1;
/** Two depths of a bore read alike within this, mm. */
const READS_ALIKE = 0.05;
/** Decimal dust of typed numbers, in hundredths. */
const DUST = 1e-6;

export const less = (value: number): string => fixed(Math.floor(value * 100 + DUST) / 100, 2);
export const more = (value: number): string => fixed(Math.ceil(value * 100 - DUST) / 100, 2);

const verdict = (level: Level, words: string, action = '', margin = Number.NaN): Verdict => ({
  level,
  words,
  action,
  margin,
});
const unmeasured = verdict('none', '');

/** A margin as words: left when at or within the limit, over or under when past it. */
function byMargin(margin: number, usable: number, past: 'over' | 'under', action: string): Verdict {
  if (margin < -DUST / 100)
    return verdict('bad', texts.theLimit(more(-margin), past), action, margin);
  const left = Math.max(0, margin);
  if (left < usable * WATCH) {
    return verdict('watch', texts.left(less(left)), texts.refitOnlyWithADate, left);
  }
  return verdict('good', texts.left(less(left)), '', left);
}

const drums = (f: Found): number[] =>
  [f.sizes.drumA, f.sizes.drumB, f.sizes.drumC].filter((d) => d !== undefined);

/** Every diameter typed, at any angle and depth, mm. */
export const boresOf = (f: Found): number[] => [
  ...drums(f),
  ...(f.sizes.drumDeep === undefined ? [] : [f.sizes.drumDeep]),
];

/** Largest diameter typed, mm; NaN without one. */
export function largestBore(f: Found): number {
  const all = boresOf(f);
  return all.length > 0 ? Math.max(...all) : Number.NaN;
}

/** Greatest less least diameter around the bore, mm; NaN with fewer than two angles. */
export function outOfRound(f: Found): number {
  const all = drums(f);
  return all.length > 1 ? Math.max(...all) - Math.min(...all) : Number.NaN;
}

const RENEW_DRUM = texts.renewDrum;

export function judgeDrum(f: Found, limits: Limits, asNew: AsNew): Verdict {
  const d = largestBore(f);
  if (Number.isNaN(d)) return unmeasured;
  if (limits.drumMax === null) {
    return verdict('none', texts.noLimitSet, texts.typeInTheMarkCast);
  }
  const usable = asNew.drum === null ? USUAL_ALLOWANCE : limits.drumMax - asNew.drum;
  return byMargin(limits.drumMax - d, usable, 'over', RENEW_DRUM);
}

/**
 * Out of round by greatest less least. Three fixed angles see at least three quarters of an oval
 * (three cosines at thirds of a turn span 1.5 to √3 of 2), so a pass that four thirds of the reading
 * would not keep is only to be watched.
 */
export function judgeRound(f: Found, limits: Limits): Verdict {
  const r = outOfRound(f);
  if (Number.isNaN(r)) return unmeasured;
  const limit = limits.outOfRound;
  if (limit === null) return verdict('none', texts.noLimitSet2(more(r)));
  const margin = limit - r;
  if (margin < -DUST / 100)
    return verdict('bad', texts.overTheLimit(more(r), more(-margin)), RENEW_DRUM, margin);
  const whole = 4 * boreFrom(drums(f)).oval;
  if (drums(f).length > 2 && whole > limit + DUST) {
    return verdict(
      'watch',
      texts.seenLikely(more(r), more(whole)),
      texts.threeAnglesCanMissThe,
      margin,
    );
  }
  return verdict('good', texts.inLimit(more(r)), '', margin);
}

/** Two depths: a bore wider inside or outside. */
export function judgeTaper(f: Found, limits: Limits): Verdict {
  const all = drums(f);
  const deep = f.sizes.drumDeep;
  if (deep === undefined || all.length === 0) return unmeasured;
  const taper = Math.abs(deep - Math.max(...all));
  if (limits.taper === null) {
    return taper > READS_ALIKE
      ? verdict('none', texts.fromEdgeToDeepNo(more(taper)))
      : verdict('good', texts.alikeAtBothDepths);
  }
  const margin = limits.taper - taper;
  return margin < -DUST / 100
    ? verdict('bad', texts.overTheLimit(more(taper), more(-margin)), RENEW_DRUM, margin)
    : verdict('good', texts.inLimit(more(taper)), '', margin);
}

export function judgeLip(f: Found): Verdict {
  const lip = f.sizes.lip;
  if (lip === undefined) return unmeasured;
  return lip >= LIP_CATCHES
    ? verdict('watch', texts.backOffBeforePulling, texts.backTheAdjusterOffBefore)
    : verdict('good', texts.tooLowToCatch);
}

/**
 * Deepest score. By itself it rejects nothing unless somebody has set a limit: a lightly scored drum may
 * stay with the linings that ran in it. What a cut would come to, `cut.ts` says.
 */
export function judgeScore(f: Found, limits: Limits): Verdict {
  const { score } = f.sizes;
  if (score === undefined) return unmeasured;
  if (score <= 0) return verdict('good', texts.noScore);
  const limit = limits.score;
  if (limit !== null && score > limit + DUST / 100) {
    return verdict(
      'bad',
      texts.overTheLimit(more(score), more(score - limit)),
      texts.cutOrRenewBothDrums,
      limit - score,
    );
  }
  return verdict('watch', texts.deepCutBelow(more(score)), texts.lightlyScoredItMayStay);
}

/** Thinnest of all places typed on a lining, mm; NaN without one. */
export function thinnestOf(f: Found, lining: 'lead' | 'trail'): number {
  const all = [f.sizes[`${lining}Toe`], f.sizes[`${lining}Thin`], f.sizes[`${lining}Heel`]].filter(
    (t) => t !== undefined,
  );
  return all.length > 0 ? Math.min(...all) : Number.NaN;
}

export function judgeLining(
  f: Found,
  lining: 'lead' | 'trail',
  limits: Limits,
  asNew: AsNew,
): Verdict {
  const t = thinnestOf(f, lining);
  if (Number.isNaN(t)) return unmeasured;
  if (f.sizes[`${lining}Thin`] === undefined) {
    return verdict('none', texts.thinnestPointNotMeasured, texts.lookAlongTheWholeArc);
  }
  const limit = limits.liningMin;
  if (limit === null) return verdict('none', texts.noLimitSet, texts.typeInTheMakersLeast);
  const usable = (asNew.lining ?? USUAL_LINING) - limit;
  return byMargin(t - limit, usable, 'under', texts.renewTheLiningsOnBoth);
}

const looked: Readonly<Record<LookKey, readonly [good: string, bad: string, action: string]>> = {
  faces: [texts.facesSound, texts.notSound, texts.renewWhatIsCrackedLoose],
  boots: [texts.dry, texts.leaks, texts.renewTheCylinderAndAny],
  springs: [texts.springsSound, texts.stretchedOrBroken, texts.renewTheSpringsOnBoth],
  adjuster: [texts.movesFreely, texts.stuckOrWorn, texts.freeOrRenewLeverAnd],
};

export function judgeLook(f: Found, key: LookKey): Verdict {
  const look = f.looks[key];
  if (look === undefined) return unmeasured;
  const [good, bad, action] = looked[key];
  return look === 'good' ? verdict('good', good) : verdict('bad', bad, action);
}

export function judgeTooth(f: Found, asNew: AsNew): Verdict {
  const { tooth } = f.sizes;
  if (tooth === undefined) return unmeasured;
  if (asNew.teeth === null) return verdict('none', texts.numberOfAllNotSet(tooth));
  const words = texts.wordsWord(tooth, asNew.teeth);
  if (tooth >= asNew.teeth) {
    return verdict('watch', texts.noneLeft(words), texts.fromHereTheClearanceGrows, 0);
  }
  return verdict('good', words, '', asNew.teeth - tooth);
}

export function judgeLever(f: Found): Verdict {
  const { leverOff } = f.sizes;
  if (leverOff === undefined) return unmeasured;
  return leverOff > 0
    ? verdict('bad', texts.offItsStop(more(leverOff)), texts.slackenTheCableUntilThe)
    : verdict('good', texts.onItsStop);
}

/** Notches of the hand lever before and after the work; one lever serves both wheels. */
export function judgeNotches(
  before: number | undefined,
  after: number | undefined,
  limits: Limits,
): Verdict {
  const now = after ?? before;
  if (now === undefined) return unmeasured;
  const change =
    before !== undefined && after !== undefined && before !== after
      ? `, ${Math.abs(before - after)} ${after < before ? 'fewer' : 'more'}`
      : '';
  if (limits.notches === null) return verdict('none', texts.noLimitSet3(now, change));
  return now > limits.notches
    ? verdict('bad', texts.overTheLimit2(now, change), texts.shoesFirstLeverHomeCable)
    : verdict('good', texts.inLimit2(now, change));
}

/** Every verdict of a wheel, in the order of the sheet. */
export const wheelLines = [
  'drum',
  'round',
  'taper',
  'faces',
  'lip',
  'score',
  'leading',
  'trailing',
  'boots',
  'springs',
  'tooth',
  'adjuster',
  'lever',
] as const;
export type WheelLine = (typeof wheelLines)[number];

export function judgeWheel(
  f: Found,
  limits: Limits,
  asNew: AsNew,
): Readonly<Record<WheelLine, Verdict>> {
  return {
    drum: judgeDrum(f, limits, asNew),
    round: judgeRound(f, limits),
    taper: judgeTaper(f, limits),
    faces: judgeLook(f, 'faces'),
    lip: judgeLip(f),
    score: judgeScore(f, limits),
    leading: judgeLining(f, 'lead', limits, asNew),
    trailing: judgeLining(f, 'trail', limits, asNew),
    boots: judgeLook(f, 'boots'),
    springs: judgeLook(f, 'springs'),
    tooth: judgeTooth(f, asNew),
    adjuster: judgeLook(f, 'adjuster'),
    lever: judgeLever(f),
  };
}
