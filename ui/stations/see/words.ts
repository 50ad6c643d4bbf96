import { format, seeWords as words } from '../../../sim/words/en.ts';
import { isFigure, type Sign, type SignValue, signOf, told } from '../../../sim/workshop/index.ts';
import { number } from '../../format.ts';
import type { Topic } from './part.ts';

/** Texts of What I see. */

export const titles: Readonly<Record<Topic, string>> = words.titles;

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

/** What is read on a roller test, under which a print-out's figures are typed. */
export const onRollers = words.onRollers;

/** Groups of everything that can be said. */
export const groups: readonly (readonly [title: string, keys: readonly string[]])[] = [
  [words.onTheRoad, ['hot', 'heat', 'bite', 'pull', 'when', 'noise', 'smell', 'since', 'after']],
  [words.atThePedal, ['travel', 'feel', 'pumped', 'first', 'clicks', 'release', 'comes', 'touch']],
  [words.atTheHandLever, ['notches', 'parked', 'oneway', 'lever', 'flexed']],
  [words.wheelsUp, ['turns', 'ways', 'force', 'rubs', 'slides', 'rocks', 'tap', 'bleed']],
  [onRollers, ['back', 'unlike', 'share', 'backshare', 'swing']],
  [
    words.drumOff,
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

/** A figure as it was typed or stepped, with the language's decimal mark. */
export const typedText = (text: string): string => text.replace('.', format.decimalMark);

/** "5.3" or "one rear". */
export function valueText(key: string, value: SignValue | string): string {
  const asked = askedOf(key);
  if (!asked) return String(value);
  if (isFigure(asked.values)) {
    const { unit, digits } = asked.values;
    const figure = typeof value === 'number' ? number(value, digits) : typedText(String(value));
    return unit ? `${figure}\u00a0${unit}` : figure;
  }
  const all = typeof value === 'string' ? [value] : (value as readonly string[]);
  const { values } = asked;
  const labels = all.map((v) => values.find(([id]) => id === v)?.[1] ?? v);
  return labels.join(words.or);
}

/** Key of an answer that is not known. */
export const UNSURE = '?';
