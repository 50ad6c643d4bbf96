import { askWants as words } from '../../../sim/words/en.ts';
import type { Figures } from '../../ask/types.ts';
import { opened } from '../../record/guest.ts';
import { intention } from '../../record/intention.ts';
import type { Moment } from '../../record/moment.ts';
import { lines } from '../inspect/lines.ts';
import { select, write, writeAxle, writeLimit } from '../inspect/part.ts';
import { slopeTo } from '../park/part.ts';
import { openTopic, saySign } from '../see/part.ts';

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
          (now, [key, text, wheel]) => {
            if (key === 'drumMax') return writeLimit.does(now, key, text);
            return key === 'drumNew'
              ? writeAxle.does(now, key, text)
              : write.does(now, wheel, key, text);
          },
          opened(m, 'inspect'),
        );
        const at = lines.findIndex((l) => l.key === f.write[0]?.[0]);
        return select.does(there, f.write[0]?.[2] ?? 'left', at);
      }
    }
  },
  words.figuresCarriedAlong,
);
