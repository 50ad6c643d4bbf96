import { isFigure, type Sign, type SignValue, signOf, told } from '../../../sim/workshop/index.ts';
import { number } from '../../format.ts';
import type { Topic } from './part.ts';

/** Texts of What I see. */

export const titles: Readonly<Record<Topic, string>> = {
  drag: 'It drags or gets hot',
  pedal: 'Long or soft pedal',
  lever: 'Lever goes too far, or will not hold',
  braking: 'Weak, grabs or pulls',
  noise: 'It makes a noise',
  free: 'Will it wear free?',
  all: 'What I see',
};

/** What is asked first of each trouble; then the cheapest check goes on. */
export const firstOf: Readonly<Record<Topic, readonly string[]>> = {
  drag: ['hot', 'turns', 'ways', 'when'],
  pedal: ['travel', 'feel', 'pumped', 'first'],
  lever: ['notches', 'travel', 'parked', 'oneway'],
  braking: ['bite', 'pull', 'when', 'back'],
  noise: ['noise', 'when', 'rubs', 'rocks'],
  free: ['hot', 'turns'],
  all: ['hot', 'travel', 'notches', 'bite'],
};

/** Groups of everything that can be said. */
export const groups: readonly (readonly [title: string, keys: readonly string[]])[] = [
  ['On the road', ['hot', 'heat', 'bite', 'pull', 'when', 'noise', 'smell', 'since', 'after']],
  ['At the pedal', ['travel', 'feel', 'pumped', 'first', 'clicks', 'release', 'comes', 'touch']],
  ['At the hand lever', ['notches', 'parked', 'oneway', 'lever', 'flexed']],
  ['Wheels up', ['turns', 'ways', 'force', 'rubs', 'slides', 'rocks', 'tap', 'bleed']],
  ['On rollers', ['back', 'unlike', 'share', 'backshare', 'swing']],
  [
    'Drum off',
    [
      'holder',
      'wet',
      'shoes',
      'pads',
      'tooth',
      'pawl',
      'thin',
      'round',
      'drumsize',
      'swings',
      'mark',
    ],
  ],
];

/** Something that can be said: a sign, or what is told. */
export interface Asked {
  readonly key: string;
  readonly name: string;
  readonly ask: string;
  readonly how: string;
  readonly values: Sign['values'];
}

export function askedOf(key: string): Asked | null {
  const sign = signOf(key);
  if (sign) return sign;
  const t = told.find((x) => x.key === key);
  return t ? { ...t, how: '' } : null;
}

/** "5.3" or "one rear". */
export function valueText(key: string, value: SignValue | string): string {
  const asked = askedOf(key);
  if (!asked) return String(value);
  if (isFigure(asked.values)) {
    const { unit, digits } = asked.values;
    const figure = typeof value === 'number' ? number(value, digits) : String(value);
    return unit ? `${figure}\u00a0${unit}` : figure;
  }
  const all = typeof value === 'string' ? [value] : (value as readonly string[]);
  const { values } = asked;
  const labels = all.map((v) => values.find(([id]) => id === v)?.[1] ?? v);
  return labels.join(' or ');
}

/** Key of an answer that is not known. */
export const UNSURE = '?';
