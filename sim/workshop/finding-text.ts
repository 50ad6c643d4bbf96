import type { Lock } from '../index.ts';
import { workshopFindings as texts } from '../words/en.ts';

/**
 * What examinations find is told apart by codes: readings of two axles are compared, and signs read, by them. Here each
 * code has the text that is shown.
 */

/** What a finding is of. */
export type FindingName =
  | 'trouble'
  | 'pedal'
  | 'in a stop'
  | 'at 10 bar'
  | 'at 40 bar'
  | 'next press'
  | 'clicks'
  | 'pumped quickly up by'
  | 'notches'
  | 'hotter by'
  | 'front wheels'
  | 'turns'
  | 'forward'
  | 'backward'
  | 'rubs'
  | 'drum'
  | 'wheel rocks'
  | 'wheel'
  | 'drags'
  | 'drags from'
  | 'comes on'
  | 'goes back in'
  | 'goes back'
  | 'off its stop'
  | 'lever'
  | 'flexed'
  | 'pedal forward'
  | 'pedal backward'
  | 'parked forward'
  | 'parked backward'
  | 'held by'
  | 'overlap at the lip'
  | 'teeth back'
  | 'pads'
  | 'shoes'
  | 'least bore'
  | 'greatest'
  | 'front lining'
  | 'rear lining'
  | 'swing'
  | 'tooth';

/** What is found where nothing is measured. */
export type FindingWords =
  | Lock
  | 'hand does not turn it'
  | 'stands still'
  | 'at the left rear only'
  | 'at the right rear only'
  | 'not at one wheel alone'
  | 'as it should be'
  | 'far and springy'
  | 'far and firm'
  | 'throbs'
  | 'steady'
  | 'heard'
  | 'none'
  | 'too hot to touch'
  | 'cool'
  | 'warm too'
  | 'as ever'
  | 'slides off'
  | 'slides, then stops'
  | 'does not slide'
  | 'not at all, then frees with one jerk'
  | 'freely'
  | 'once a turn'
  | 'twice a turn'
  | 'here and there'
  | 'does not rock'
  | 'dull'
  | 'rings'
  | 'already'
  | 'not up to 40 bar'
  | 'late, all at once'
  | 'smoothly'
  | 'not by itself'
  | 'nothing changes'
  | 'frees at once'
  | 'eases'
  | 'home'
  | 'comes slowly'
  | 'comes and goes'
  | 'nothing'
  | 'all are not enough'
  | 'grooved'
  | 'smooth'
  | 'one will not rock'
  | 'rock alike'
  | 'stiff'
  | 'swings free'
  | 'of the other side'
  | 'drops in'
  | 'dry'
  | 'boot wet'
  | 'oil from the hub';

/** One thing found. A number is told apart from another only beyond what the check resolves. */
export type Observed =
  | {
      readonly kind: 'number';
      /** Codes: the wheel, what is found of it, or both with a comma between. */
      readonly name: string;
      readonly value: number;
      readonly unit: string;
      readonly digits: number;
      readonly resolves: number;
    }
  | { readonly kind: 'words'; readonly name: string; readonly says: FindingWords };

const names: Readonly<Record<FindingName, string>> = texts.names;
const says: Readonly<Record<FindingWords, string>> = texts.says;
/** Whose finding it is: of both wheels where they are alike, empty where it is of none. */
export type FindingOf = 'both' | 'left' | 'right' | '';
const wheels: Readonly<Record<FindingOf, string>> = { ...texts.wheels, both: '', '': '' };

/** Of what a finding is: whose it is, how that is shown, and what. */
export function findingText({ name }: Observed): {
  readonly of: FindingOf;
  readonly where: string;
  readonly what: string;
} {
  const [, wheel = '', what = name] = /^(both|left|right)(?:, )?(.*)$/.exec(name) ?? [];
  const of = wheel as FindingOf;
  return { of, where: wheels[of], what: what === '' ? '' : names[what as FindingName] };
}

/** What was found, where it is words, as it is shown. */
export const foundText = (code: FindingWords): string => says[code];
