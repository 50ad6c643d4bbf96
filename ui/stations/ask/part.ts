import * as v from 'valibot';
import type { Figures } from '../../ask/types.ts';
import { opened } from '../../record/guest.ts';
import { intention } from '../../record/intention.ts';
import { type Moment, withPart } from '../../record/moment.ts';
import type { Part } from '../../record/part.ts';
import { lines } from '../inspect/lines.ts';
import { select, write, writeAxle, writeLimit } from '../inspect/part.ts';
import { slopeTo } from '../park/part.ts';
import { openTopic, saySign } from '../see/part.ts';

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
  'what is asked',
  { joins: 'ask.text' },
);

/** Figures that were typed go where they are judged. */
export const carryFigures = intention(
  'ask.figures',
  (m: Moment, f: Figures) => {
    switch (f.to) {
      case 'park':
        return slopeTo.does(opened(m, 'park'), f.percent);
      case 'see':
        return f.said.reduce(
          (now, [sign, text]) => saySign.does(now, sign, text),
          openTopic.does(m, f.topic),
        );
      case 'inspect': {
        const there = f.write.reduce(
          (now, [key, text]) => {
            if (key === 'drumMax') return writeLimit.does(now, key, text);
            return key === 'drumNew'
              ? writeAxle.does(now, key, text)
              : write.does(now, f.wheel, key, text);
          },
          opened(m, 'inspect'),
        );
        const at = lines.findIndex((l) => l.key === f.write[0]?.[0]);
        return select.does(there, f.wheel, at);
      }
    }
  },
  'figures carried along',
);
