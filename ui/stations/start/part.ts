import * as v from 'valibot';
import { startPart as words } from '../../../sim/words/en.ts';
import { opened } from '../../record/guest.ts';
import { intention } from '../../record/intention.ts';
import type { Moment } from '../../record/moment.ts';
import type { Part } from '../../record/part.ts';
import { openPage } from '../drum-off/part.ts';
import { openTopic } from '../see/part.ts';

/** Start has nothing of its own to remember. */
export type StartPart = Readonly<Record<never, never>>;

export const startPart: Part<StartPart> = {
  anew: false,
  layers: {},
  initial: () => ({}),
  schema: v.strictObject({}),
};

/** The ways in. */
export const ways = ['stuck', 'drag', 'pedal', 'lever', 'shoes', 'parts', 'works'] as const;
export type Way = (typeof ways)[number];

/** One step from Start to where it is seen to. */
export const goIn = intention(
  'start.go',
  (m: Moment, way: Way) => {
    switch (way) {
      case 'stuck':
        return openPage.does(opened(m, 'drum-off'), 'mine');
      case 'shoes':
        return opened(m, 'new-shoes');
      case 'parts':
        return opened(m, 'inspect');
      case 'works':
        return opened(m, 'apply');
      default:
        return openTopic.does(m, way);
    }
  },
  words.aWayIn,
);
