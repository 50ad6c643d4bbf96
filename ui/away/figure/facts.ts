import type { Reading } from '../../../sim/index.ts';
import { down, number } from '../../format.ts';
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
    const side = r.side && !r.name.includes(r.side) ? `, ${r.side}` : '';
    return [{ name: `${r.name}${side}`, value: `${number(value, r.digits)} ${r.unit}`.trim() }];
  });
}

const TURNS = {
  1: 'drum turning forward',
  0: 'drum standing still',
  '-1': 'drum turning backward',
};

export const titleOf = ({ session, station }: Stand): string =>
  `${stationNames[station.id]}: ${session.guest ?? benchTitle(session.moment)}`;

export function captionOf({ session, instant, covered }: Stand): string {
  const wheel = `${session.wheel === 'left' ? 'Left' : 'Right'}-hand wheel from outside, drum cut away`;
  const how = [
    ...(covered ? [] : [session.pressure > 0 ? 'pedal pressed' : 'pedal released']),
    TURNS[instant.turning],
  ].join(', ');
  return `${wheel}; ${how}.`;
}
