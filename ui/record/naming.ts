import { language, recordNaming as words } from '../../sim/words/en.ts';
import { type PartId, partNames } from '../stage/part-names.ts';
import { intention } from './intention.ts';
import type { Moment } from './moment.ts';
import { withLayers } from './parts.ts';
import type { Asked, View } from './view.ts';

/** Asking for parts by their names: one is asked for, what is tapped answers, and the score is kept. */

const seen = (m: Moment, change: Partial<View>): Moment => ({
  ...m,
  view: { ...m.view, ...change },
});

const lower = (part: PartId): string => language.inside(partNames[part][0]);

/** Names go, and parts are asked for in this order. */
export const askNames = intention(
  'names.ask',
  (m: Moment, parts: readonly PartId[]) => {
    const left = [...new Set(parts)];
    return left.length === 0
      ? m
      : withLayers(seen(m, { revealed: [], asked: { left, found: 0, hits: 0, wrong: null } }), {
          names: true,
        });
  },
  words.partsAskedFor,
);

const told = (m: Moment, part: PartId): readonly PartId[] => {
  const { revealed } = m.view;
  return revealed ? [...new Set([...revealed, part])] : [part];
};

/** What is tapped answers: the right one is named and the next is asked for; another one is told by its name. */
export const answerName = intention(
  'names.answer',
  (m: Moment, part: PartId) => {
    const { asked } = m.view;
    const sought = asked?.left[0];
    if (!asked || sought === undefined || asked.wrong === part) return m;
    if (part !== sought) return seen(m, { asked: { ...asked, wrong: part } });
    const next: Asked = {
      left: asked.left.slice(1),
      found: asked.found + 1,
      hits: asked.hits + (asked.wrong === null ? 1 : 0),
      wrong: null,
    };
    return seen(m, { asked: next, revealed: told(m, part) });
  },
  (_before, _after, part) => words.tapped(lower(part)),
);

/** The one that is asked for is shown, and the next is asked for. */
export const passName = intention(
  'names.pass',
  (m: Moment) => {
    const { asked } = m.view;
    const sought = asked?.left[0];
    if (!asked || sought === undefined) return m;
    const next: Asked = {
      ...asked,
      left: asked.left.slice(1),
      found: asked.found + 1,
      wrong: null,
    };
    return seen(m, { asked: next, revealed: told(m, sought) });
  },
  words.partShown,
);

/** Asked for no more: all names stand again. */
export const stopNames = intention(
  'names.stop',
  (m: Moment) => (m.view.asked ? seen(m, { asked: null, revealed: null }) : m),
  words.namesTold,
);
