import { dress } from '../balance/dress.ts';
import { freshState } from '../brake/state.ts';
import type { Side } from '../brake/types.ts';
import { KM } from '../units/units.ts';
import type { LifeRow } from '../wear/life-types.ts';
import { studyLessonValuesLife as words } from '../words/en.ts';
import { cableFirst } from './bedding.ts';
import { type ForecastLine, forecast } from './forecast.ts';
import type { Stand, ValueRows } from './lesson-stand.ts';
import { liningReading } from './measured.ts';

/** Values of what was driven, and of what is to come at the same pace. */

const last = ({ rows }: Stand): LifeRow | undefined => rows.at(-1);
const kmOf = (mm: number | undefined): number => (mm === undefined ? Number.NaN : mm / KM);

/** Clearances of the rows at one side of their clicks. */
const atClicks = ({ rows }: Stand, at: LifeRow['at']): readonly number[] =>
  rows.filter((r) => r.at === at).map((r) => r.clearance);

/** What measuring this wheel would forecast for its front lining or its drum, driven from new. */
function line({ rig, state }: Stand, what: ForecastLine['what']): ForecastLine | undefined {
  const thinnest = (side: Side): number => liningReading(rig.brake, state, side).thinnest;
  const { lines } = forecast(rig.brake, {
    distance: state.distance,
    lining: { front: thinnest('front'), rear: thinnest('rear') },
    drum: 2 * state.drumRadius,
  });
  return lines.find((l) => l.what === what);
}

export const lifeValues: ValueRows = {
  newClearance: [
    words.clearanceWhenNew,
    'mm',
    2,
    ({ rig }) =>
      dress(rig, freshState(rig.brake, rig.brake.drum.radiusNew, rig.front.bed.count)).restGap,
  ],
  standGap: [words.clearanceOnStrut, 'mm', 2, ({ rig, state }) => dress(rig, state).restGap],
  drivenDistance: [
    words.driven,
    'km',
    0,
    (s) => kmOf((last(s)?.distance ?? 0) - (s.rows[0]?.distance ?? 0)),
  ],
  lifeDistance: [words.drivenFromNew, 'km', 0, (s) => kmOf(last(s)?.distance)],
  clicks: [
    words.clicks,
    '',
    0,
    ({ events }) => events.filter((e) => e.kind === 'click' && e.value > 0).length,
  ],
  clickDistance: [
    words.lastClickAt,
    'km',
    0,
    ({ events }) => kmOf(events.filter((e) => e.kind === 'click').at(-1)?.distance),
  ],
  clickEvery: [
    words.clickToClick,
    'km',
    0,
    ({ events }) => {
      const at = events.filter((e) => e.kind === 'click').map((e) => e.distance);
      return kmOf((at.at(-1) ?? Number.NaN) - (at.at(-2) ?? Number.NaN));
    },
  ],
  teethGone: [
    words.lastToothAt,
    'km',
    0,
    ({ events }) => kmOf(events.find((e) => e.kind === 'teeth used up')?.distance),
  ],
  clickGapBefore: [
    words.clearanceBeforeClick,
    'mm',
    2,
    (s) => atClicks(s, 'before click').at(-1) ?? Number.NaN,
  ],
  clearanceLeast: [words.leastClearance, 'mm', 2, (s) => Math.min(...atClicks(s, 'after click'))],
  clearanceMost: [
    words.greatestClearance,
    'mm',
    2,
    (s) => Math.max(...atClicks(s, 'before click')),
  ],
  forecastLeft: [words.liningLasts, 'km', 0, (s) => kmOf(line(s, 'front lining')?.left)],
  forecastLow: [words.atTheLeast, 'km', 0, (s) => kmOf(line(s, 'front lining')?.low)],
  forecastHigh: [words.atTheMost, 'km', 0, (s) => kmOf(line(s, 'front lining')?.high)],
  clickLate: [words.clickLateBy, 'km', 0, ({ rig, state }) => kmOf(cableFirst(rig, state, 3).late)],
};
