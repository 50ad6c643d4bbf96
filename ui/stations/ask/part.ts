import * as v from 'valibot';
import { askPart as words } from '../../../sim/words/en.ts';
import { opened } from '../../record/guest.ts';
import { intention } from '../../record/intention.ts';
import { type Moment, withPart } from '../../record/moment.ts';
import type { Part } from '../../record/part.ts';

export interface AskPart {
  /** What was typed, as it stands in the field. */
  readonly text: string;
}

const LONGEST = 200;

export const askPart: Part<AskPart> = {
  anew: false,
  layers: {},
  initial: () => ({ text: '' }),
  schema: v.strictObject({ text: v.pipe(v.string(), v.maxLength(LONGEST)) }),
};

export const askFor = intention(
  'ask.text',
  (m: Moment, text: string) => {
    const here = opened(m, 'ask');
    const cut = text.slice(0, LONGEST);
    return here === m && cut === m.parts.ask.text ? m : withPart(here, 'ask', { text: cut });
  },
  words.whatIsAsked,
  { joins: 'ask.text' },
);
