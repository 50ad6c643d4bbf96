import * as v from 'valibot';
import { seePart as words } from '../../../sim/words/en.ts';
import { opened } from '../../record/guest.ts';
import { intention } from '../../record/intention.ts';
import { type Moment, withPart } from '../../record/moment.ts';
import type { Part } from '../../record/part.ts';
import { answer, type Mine, openPage } from '../drum-off/part.ts';
import { chooseFault } from '../faults/part.ts';

/** What it begins with, or `free`: will it wear free. */
export const topics = ['drag', 'pedal', 'lever', 'braking', 'noise', 'free', 'all'] as const;
export type Topic = (typeof topics)[number];

export interface SeePart {
  readonly topic: Topic;
  /** What was said, by the key of its sign: a value, or a figure as it was typed. */
  readonly said: Readonly<Record<string, string>>;
  /** The case goes along to other stations, where its band leads back. */
  readonly along: boolean;
  /** How tight, for the sum of what wears free: as far as the linings stand inside the drum, mm. */
  readonly tight: number;
}

const word = (most: number) => v.pipe(v.string(), v.minLength(1), v.maxLength(most));
/** More is not asked. */
const MOST_SAID = 60;

export const MOST_TIGHT = 0.2;

export const seePart: Part<SeePart> = {
  anew: false,
  layers: {},
  initial: () => ({ topic: 'all', said: {}, along: false, tight: 0.05 }),
  schema: v.strictObject({
    topic: v.picklist(topics),
    said: v.pipe(
      v.record(word(20), word(20)),
      v.check((r) => Object.keys(r).length <= MOST_SAID, words.atMost(MOST_SAID)),
    ),
    along: v.boolean(),
    tight: v.pipe(v.number(), v.minValue(0), v.maxValue(MOST_TIGHT)),
  }),
};

const put = (m: Moment, change: Partial<SeePart>): Moment => withPart(m, 'see', change);

/** Opens with a topic: what was said of another car or another trouble goes. */
export const openTopic = intention(
  'see.topic',
  (m: Moment, topic: Topic) => {
    const here = opened(m, 'see');
    const same = here.parts.see.topic === topic;
    return put(here, { topic, said: same ? here.parts.see.said : {}, along: false });
  },
  words.whatIsWrong,
);

/** Something seen, a figure, or null where it is not known after all. */
export const saySign = intention(
  'see.say',
  (m: Moment, key: string, value: string | null) => {
    const { [key]: _gone, ...said } = m.parts.see.said;
    const text = value?.trim().slice(0, 20) ?? '';
    if (text !== '' && Object.keys(said).length >= MOST_SAID) return m;
    return put(m, { said: text === '' ? said : { ...said, [key.slice(0, 20)]: text } });
  },
  words.whatISee,
  { joins: (key) => words.seeSay(key) },
);

/** Several at once, such as a row of a roller test. */
export const sayAll = intention(
  'see.say-all',
  (m: Moment, more: Readonly<Record<string, string>>) => {
    const said = { ...m.parts.see.said, ...more };
    return Object.keys(said).length > MOST_SAID ? m : put(m, { said });
  },
  words.figuresOfARollerTest,
);

export const newCase = intention(
  'see.new',
  (m: Moment) => put(m, { said: {}, along: false }),
  words.aNewCase,
);

/** What of the case Which is mine? asks for. */
function mineOf(said: SeePart['said']): Partial<Mine> {
  const turns =
    said['ways'] === 'unlike'
      ? 'one way'
      : (
          {
            freely: 'freely',
            rubs: 'lightly',
            stiff: 'lightly',
            not: 'not at all',
            jerk: 'not at all',
          } as const
        )[said['turns'] ?? ''];
  const slides = ({ some: 'a little', not: 'not at all' } as const)[said['slides'] ?? ''];
  return { ...(turns ? { turns } : {}), ...(slides ? { slides } : {}) };
}

/** To another station with the case carried along. */
export const carry = intention(
  'see.carry',
  (m: Moment, to: 'drum-off' | 'new-shoes' | 'inspect') => {
    const there = opened(m, to);
    const here =
      to === 'drum-off'
        ? answer.does(openPage.does(there, 'mine'), mineOf(m.parts.see.said))
        : there;
    return put(here, { along: true });
  },
  words.theCaseCarriedAlong,
);

/** A cause put on the bench, the case carried along. */
export const lookAtCause = intention(
  'see.cause',
  (m: Moment, fault: string) => put(chooseFault.does(opened(m, 'faults'), fault), { along: true }),
  words.aLikelyCause,
);

/** Back to what was seen. */
export const backToCase = intention(
  'see.back',
  (m: Moment) => put(opened(m, 'see'), { along: false }),
  words.backToWhatISee,
);

export const tighten = intention(
  'see.tight',
  (m: Moment, mm: number) => put(m, { tight: Math.max(0, Math.min(MOST_TIGHT, mm)) }),
  (_before, after) => words.mmTight(after.parts.see.tight),
  { joins: 'see.tight' },
);
