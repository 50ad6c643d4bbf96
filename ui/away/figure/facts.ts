import type { Reading } from '../../../sim/index.ts';
import { awayFigureFacts as texts } from '../../../sim/words/en.ts';
import { down, number } from '../../format.ts';
import { readingName } from '../../pieces/reading-name.ts';
import { benchTitle } from '../../record/guest-title.ts';
import { stationNames } from '../../record/moment.ts';
import type { Stand } from '../stand.ts';

/** The facts that matter under a drawing, and the words that stand with it until somebody writes others. */
export interface Fact {
  readonly name: string;
  readonly value: string;
}

/** Readings that tell most of a brake in any station, by their keys; one without a value is left out. */
const TELL = [
  'linePressure',
  'brakeFactor',
  'torque',
  'restClearanceMean',
  'liningFront',
  'liningRear',
  'tooth',
  'drumDiameter',
  'distance',
] as const;

const keyOf = (r: Reading): string =>
  `${r.key}${r.side && !/(Front|Rear)$/.test(r.key) ? (r.side === 'front' ? 'Front' : 'Rear') : ''}`;

export function factsOf({ readings, covered }: Stand): Fact[] {
  if (covered) return [];
  return TELL.flatMap((key) => {
    const r = readings.find((one) => keyOf(one) === key);
    if (!r || !Number.isFinite(r.value)) return [];
    // A lining is never told thicker than it is.
    const value = key.startsWith('lining') ? down(r.value, r.digits) : r.value;
    return [{ name: readingName(r), value: `${number(value, r.digits)} ${r.unit}`.trim() }];
  });
}

const TURNS = texts.turns;

export const titleOf = ({ session, station }: Stand): string =>
  `${stationNames[station.id]}: ${session.guest ?? benchTitle(session.moment)}`;

export function captionOf({ session, instant, covered }: Stand): string {
  const wheel = texts.wheel(session.wheel === 'left' ? texts.left : texts.right);
  const how = [
    ...(covered ? [] : [session.pressure > 0 ? texts.pedalPressed : texts.pedalReleased]),
    TURNS[instant.turning],
  ].join(', ');
  return `${wheel}; ${how}.`;
}
