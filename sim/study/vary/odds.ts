import type { VaryPoint } from './vary.ts';

/** What can be judged of a brake that is worked out: why no force is told, what is out of the way, and a click. */
export type Judgement = Exclude<VaryPoint['why'], 'sound'> | VaryPoint['marks'][number] | 'clicks';

/** Of so many brakes drawn, in how many it is so. */
export interface Odds {
  readonly judgement: Judgement;
  readonly count: number;
  /** Of how many it could be judged. */
  readonly of: number;
}

const WHYS = ['cannot be', 'lost', 'locks', 'yields'] as const;
const MARKS = ['drags', 'front off', 'rear off', 'lining limit', 'drum limit'] as const;

/**
 * How likely each judgement is of a brake that is not known exactly: the share of a sampling in which it is so, which
 * is what a sampling knows of a probability (JCGM 101:2008, 5). A share p of n draws is itself known to some
 * √(p(1 − p)/n). Marks and clicks are judged where the brake can be pressed.
 *
 * @param points of one sampling, at one place
 */
export function oddsOf(points: readonly VaryPoint[]): readonly Odds[] {
  const pressed = points.filter((p) => p.why === 'sound');
  const count = (of: readonly VaryPoint[], is: (p: VaryPoint) => boolean): number =>
    of.reduce((n, p) => (is(p) ? n + 1 : n), 0);
  return [
    ...WHYS.map((judgement) => ({
      judgement,
      count: count(points, (p) => p.why === judgement),
      of: points.length,
    })),
    ...MARKS.map((judgement) => ({
      judgement,
      count: count(pressed, (p) => p.marks.includes(judgement)),
      of: pressed.length,
    })),
    { judgement: 'clicks', count: count(pressed, (p) => p.clicked > 0), of: pressed.length },
  ];
}

/** The same of a reading: in how many it is at least so much. @param k which of the keys that were asked for */
export function atLeast(
  points: readonly VaryPoint[],
  k: number,
  least: number,
): { readonly count: number; readonly of: number } {
  const told = points.map((p) => p.values[k] as number).filter(Number.isFinite);
  return { count: told.filter((v) => v >= least).length, of: told.length };
}
