import * as v from 'valibot';
import { questionsPart as words } from '../../../sim/words/en.ts';
import { questionOf } from '../../questions/kept.ts';
import { freshBench, released, withBegun } from '../../record/bench.ts';
import { brakeOf, standingOf } from '../../record/derive.ts';
import { arrive, leave, opened } from '../../record/guest.ts';
import { intention } from '../../record/intention.ts';
import { type Moment, withPart } from '../../record/moment.ts';
import type { Part } from '../../record/part.ts';
import { withLayers } from '../../record/parts.ts';
import { hold, openPage } from '../drum-off/part.ts';
import { FAULT_STANDS, withFaultOn, withVanOn } from '../faults/part.ts';
import { VAN, vanState } from '../faults/van.ts';
import { fitUpTo } from '../new-shoes/part.ts';

export interface QuestionsPart {
  /** What is searched for. */
  readonly search: string;
  /** Id of the question whose answer is being shown; null: none. */
  readonly asked: string | null;
}

const LONGEST = 200;

export const questionsPart: Part<QuestionsPart> = {
  anew: false,
  layers: {},
  initial: () => ({ search: '', asked: null }),
  schema: v.strictObject({
    search: v.pipe(v.string(), v.maxLength(LONGEST)),
    // The list is loaded with the station; of one that there is not nothing is shown.
    asked: v.nullable(v.pipe(v.string(), v.regex(/^q\d{3}$/))),
  }),
};

export const searchFor = intention(
  'questions.search',
  (m: Moment, text: string) => withPart(m, 'questions', { search: text.slice(0, LONGEST) }),
  'search',
  { joins: 'questions.search' },
);

/** The brake as the answer needs it: its own in another state, or the van. */
function withStanding(m: Moment, name: string): Moment {
  const brake = brakeOf(m);
  if (brake.states.some((s) => s.name === name)) {
    return withBegun(m, standingOf(brake, name), name);
  }
  return released({ ...m, bench: { ...freshBench(VAN, vanState(name)), standing: name } });
}

/** Sets the bench as the answer needs it, as a guest where that is another brake or state, and opens its station. */
export const showQuestion = intention(
  'questions.show',
  (m: Moment, id: string) => {
    const q = questionOf(id);
    const station = q ? q.station : null;
    if (!q || !station) return m;
    const { setup } = q;
    const guest = setup.state ?? setup.fault ?? setup.van ?? setup.shoes ?? setup.drum?.held;
    let next = leave(m);
    if (guest !== undefined) {
      const stands = setup.fault ? [...new Set([station, ...FAULT_STANDS])] : [station];
      next = arrive(next, { kind: 'question', id }, stands);
    }
    if (setup.state) next = withStanding(next, setup.state);
    next = opened(next, station);
    if (setup.van) next = withVanOn(next, setup.van);
    else if (setup.fault) next = withFaultOn(next, setup.fault);
    if (setup.shoes) next = fitUpTo(next, setup.shoes.step, setup.shoes.tooth ?? 0);
    if (setup.drum) {
      next = hold.does(next, { liningsRusted: false, ...setup.drum.held });
      if (setup.drum.page) next = openPage.does(next, setup.drum.page);
    }
    next = withLayers(next, Object.fromEntries((setup.layers ?? []).map((l) => [l, true])));
    return withPart(
      { ...next, turning: setup.turning ?? 1, pedal: setup.bar ?? 0, follows: false },
      'questions',
      { asked: id },
    );
  },
  (_before, _after, id) => words.question(questionOf(id)?.ask ?? id),
);

/** Back to the list. */
export const backToList = intention(
  'questions.list',
  (m: Moment) => opened(withPart(m, 'questions', { asked: null }), 'questions'),
  words.backToTheQuestions,
);

/** The pictures by which a servo brake and a drum inside a disc are told from this kind. */
export const whichKind = intention(
  'questions.which-kind',
  (m: Moment) => opened(m, 'kind'),
  words.whichKindOfBrake,
);

export const closeQuestion = intention(
  'questions.close',
  (m: Moment) => withPart(m, 'questions', { asked: null }),
  words.questionClosed,
);
