import { varyWants as words } from '../../../sim/words/en.ts';
import { opened } from '../../record/guest.ts';
import { intention } from '../../record/intention.ts';
import type { Moment } from '../../record/moment.ts';
import { ask, MOST_FREE, MOST_WISHES, type SeekPart, type VaryPart, WISH_HEAT } from './part.ts';

/** What can be wanted of a question turned round: beside its part, since nobody wants it before What if is opened. */

type FreeSize = SeekPart['free'][number];
type Wished = SeekPart['wishes'][number];

const seek = (m: Moment, change: Partial<SeekPart>): Moment =>
  ask(m, { seek: { ...m.parts.vary.seek, ...change } });

const isEnd = (x: number | null): boolean =>
  x === null || (Number.isFinite(x) && Math.abs(x) <= 1e9);

const soundSize = ({ id, from, to }: FreeSize): boolean =>
  id.length > 0 && isEnd(from) && isEnd(to) && from < to;
const soundWish = ({ key, least, most, hot }: Wished): boolean =>
  key.length > 0 &&
  isEnd(least) &&
  isEnd(most) &&
  (hot === null || (hot >= WISH_HEAT[0] && hot <= WISH_HEAT[1]));

/** One of each, the first of its name. */
const sizes = (all: readonly FreeSize[]): readonly FreeSize[] =>
  all
    .filter((f, k) => soundSize(f) && all.findIndex((g) => g.id === f.id) === k)
    .slice(0, MOST_FREE)
    .map((f) => ({ ...f, id: f.id.slice(0, 80) }));
const wishes = (all: readonly Wished[]): readonly Wished[] =>
  all
    .filter(soundWish)
    .slice(0, MOST_WISHES)
    .map((w) => ({ ...w, key: w.key.slice(0, 80) }));

/** The question turned round, or one thing varied. */
export const seekMode = intention(
  'vary.seek',
  (m: Moment, on: boolean) => (on === m.parts.vary.seek.on ? m : seek(m, { on })),
  (_before, after) =>
    after.parts.vary.seek.on ? words.theQuestionTurnedRound : words.oneThingVaried,
);

export const seekFree = intention(
  'vary.free',
  (m: Moment, free: readonly FreeSize[]) => seek(m, { free: sizes(free) }),
  words.sizesToChoose,
  { joins: 'vary.free' },
);

export const seekWishes = intention(
  'vary.wishes',
  (m: Moment, wished: readonly Wished[]) => seek(m, { wishes: wishes(wished) }),
  words.whatIsWished,
  { joins: 'vary.wishes' },
);

/** A whole question at once: one that is ready made, and how it is pressed. */
export const seekAsk = intention(
  'vary.seek-ask',
  (
    m: Moment,
    asked: Pick<SeekPart, 'free' | 'wishes'> & Partial<Pick<VaryPart, 'bar' | 'cable'>>,
  ) =>
    ask(opened(m, 'vary'), {
      ...(asked.bar === undefined ? {} : { bar: Math.max(0, Math.min(200, asked.bar)) }),
      ...(asked.cable === undefined ? {} : { cable: Math.max(0, Math.min(5000, asked.cable)) }),
      seek: { on: true, free: sizes(asked.free), wishes: wishes(asked.wishes) },
    }),
  words.aQuestionTurnedRound,
);
