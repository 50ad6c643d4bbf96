import { type Brake, type ForecastLine, forecast, type Side, type Wheel } from '../index.ts';
import { labelWords, workshopAxle as texts } from '../words/en.ts';
import { fixed } from './figure.ts';
import {
  type Found,
  judgeNotches,
  judgeWheel,
  type Level,
  largestBore,
  thinnestOf,
  USUAL_ALLOWANCE,
  USUAL_LINING,
  type Verdict,
  type WheelLine,
  wheelLines,
} from './inspection.ts';
import type { AsNew, Limits } from './limits.ts';

export const wheels = ['left', 'right'] as const;

export interface AxleFound {
  readonly left: Found;
  readonly right: Found;
  readonly notchesBefore?: number;
  readonly notchesAfter?: number;
}

/** What one wheel has more than the other. */
export interface Difference {
  readonly line: 'drum' | 'leading' | 'trailing';
  /** Left less right, mm. */
  readonly by: number;
  /** So large that it has a cause to be looked for. */
  readonly uneven: boolean;
}

/** The sheet as a whole: its worst line. */
export interface AxleVerdict {
  readonly level: Level;
  readonly title: string;
  /** One sentence each, the gravest first. */
  readonly reasons: readonly string[];
  readonly wheels: Readonly<Record<Wheel, Readonly<Record<WheelLine, Verdict>>>>;
  readonly notches: Verdict;
  readonly differences: readonly Difference[];
  /** Lines that are not judged yet, both wheels. */
  readonly open: number;
}

/** Wheels that differ by more of what is usable than this are uneven (own choice). */
const UNEVEN = 1 / 4;
/** Not needed for a whole sheet: a line without which a brake may be refitted. */
const OPTIONAL: readonly WheelLine[] = ['taper', 'round', 'tooth', 'score'];

const nameOf: Readonly<Record<WheelLine, string>> = {
  drum: labelWords.drum,
  round: texts.drumOutOfRound,
  taper: texts.drumTwoDepths,
  faces: labelWords.faces,
  lip: labelWords.lip,
  score: texts.deepestScore,
  leading: texts.leadingLining,
  trailing: texts.trailingLining,
  boots: labelWords.cylinder,
  springs: labelWords.springs,
  tooth: labelWords.adjuster,
  adjuster: labelWords.adjuster,
  lever: texts.parkingLever,
};

function differencesOf(a: AxleFound, limits: Limits, asNew: AsNew): Difference[] {
  const out: Difference[] = [];
  const put = (line: Difference['line'], of: (f: Found) => number, usable: number): void => {
    const by = of(a.left) - of(a.right);
    if (Number.isNaN(by)) return;
    out.push({ line, by, uneven: Math.abs(by) > UNEVEN * usable });
  };
  const known = limits.drumMax !== null && asNew.drum !== null;
  put('drum', largestBore, known ? limits.drumMax - asNew.drum : USUAL_ALLOWANCE);
  const lining = (asNew.lining ?? USUAL_LINING) - (limits.liningMin ?? 0);
  put('leading', (f) => thinnestOf(f, 'lead'), lining);
  put('trailing', (f) => thinnestOf(f, 'trail'), lining);
  return out;
}

/**
 * Judges both wheels of an axle. One failed line fails the sheet; a line not measured, or without a
 * limit, keeps it from passing.
 */
export function judgeAxle(a: AxleFound, limits: Limits, asNew: AsNew): AxleVerdict {
  const both = {
    left: judgeWheel(a.left, limits, asNew),
    right: judgeWheel(a.right, limits, asNew),
  };
  const notches = judgeNotches(a.notchesBefore, a.notchesAfter, limits);
  const at = (level: Level): string[] =>
    wheels.flatMap((w) =>
      wheelLines
        .filter((l) => both[w][l].level === level)
        .map((l) => {
          const v = both[w][l];
          return `${nameOf[l]}, ${w}: ${v.words}.${v.action ? ` ${v.action}` : ''}`;
        }),
    );
  const differences = differencesOf(a, limits, asNew);
  const uneven = differences
    .filter((d) => d.uneven)
    .map((d) => texts.differsByBetweenTheWheels(nameOf[d.line], fixed(Math.abs(d.by), 2)));
  const bad = at('bad');
  if (notches.level === 'bad') bad.push(texts.handLever(notches.words, notches.action));
  const watch = [...at('watch'), ...uneven];
  const open = wheels.reduce(
    (sum, w) =>
      sum + wheelLines.filter((l) => both[w][l].level === 'none' && !OPTIONAL.includes(l)).length,
    0,
  );
  const rest = { wheels: both, notches, differences, open };
  if (bad.length > 0) {
    return { level: 'bad', title: texts.doNotRefitYet, reasons: [...bad, ...watch], ...rest };
  }
  if (open > 0) {
    return {
      level: 'none',
      title: texts.notCompleteToGo(open, open === 1 ? texts.line : texts.lines),
      reasons: watch,
      ...rest,
    };
  }
  const dated = wheels.some((w) =>
    (['drum', 'leading', 'trailing'] as const).some((l) => both[w][l].level === 'watch'),
  );
  if (dated) {
    return { level: 'watch', title: texts.refitOnlyWithADate, reasons: watch, ...rest };
  }
  return watch.length > 0
    ? { level: 'watch', title: texts.withinTheLimitsMindWhat, reasons: watch, ...rest }
    : { level: 'good', title: texts.withinTheLimitsOnThis, reasons: [], ...rest };
}

/** What ends first by the wear so far. */
export interface AxleForecast extends ForecastLine {
  readonly wheel: Wheel;
}

/**
 * Distance left to the first limit of either wheel, with its band. Null without a distance driven, or
 * where nothing measured has been lost yet.
 *
 * @param distance driven on these linings, mm
 * @param fitted drum and lining when they were fitted, mm; of what is not known nothing is told
 */
export function axleForecast(
  brake: Brake,
  a: AxleFound,
  limits: Limits,
  distance: number,
  fitted: Pick<AsNew, 'drum' | 'lining'>,
): AxleForecast | null {
  const shoe = (side: Side) => ({
    ...brake.shoes[side],
    lining: { ...brake.shoes[side].lining, thicknessMin: limits.liningMin ?? 0 },
  });
  const limited: Brake = {
    ...brake,
    drum: { ...brake.drum, radiusMax: (limits.drumMax ?? 0) / 2 },
    shoes: { front: shoe('front'), rear: shoe('rear') },
  };
  let first: AxleForecast | null = null;
  for (const wheel of wheels) {
    const drum = largestBore(a[wheel]);
    const front = thinnestOf(a[wheel], 'lead');
    const rear = thinnestOf(a[wheel], 'trail');
    const lining = {
      ...(Number.isNaN(front) ? {} : { front }),
      ...(Number.isNaN(rear) ? {} : { rear }),
    };
    const told = forecast(limited, {
      distance,
      ...(limits.liningMin === null || fitted.lining === null
        ? {}
        : { lining, liningFitted: fitted.lining }),
      ...(limits.drumMax === null || fitted.drum === null || Number.isNaN(drum)
        ? {}
        : { drum, drumFitted: fitted.drum }),
    });
    for (const line of told.lines) if (!first || line.left < first.left) first = { ...line, wheel };
  }
  return first;
}
