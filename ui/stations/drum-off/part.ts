import * as v from 'valibot';
import {
  type Brake,
  type DrumAnswers,
  type ForceLock,
  type Held,
  type Lock,
  letGo,
  likelyLocks,
  UNHELD,
} from '../../../sim/index.ts';
import { drumOffPart as texts } from '../../../sim/words/en.ts';
import { released, withBegun, withState } from '../../record/bench.ts';
import { brakeOf, standingOf } from '../../record/derive.ts';
import { arrive, opened } from '../../record/guest.ts';
import { intention } from '../../record/intention.ts';
import { type Moment, withPart } from '../../record/moment.ts';
import type { Part } from '../../record/part.ts';
import type { Complaint } from './complaints.ts';

/** What the side shows: the brake, its faults to set, the questions, how the drum is fastened. */
export type DrumPage = 'brake' | 'faults' | 'mine' | 'fastening';
export type Fastening = 'studs' | 'screw' | 'nut';
export type Try = 'pull' | 'turn' | 'rock' | 'break';

/** The questions of "Which is mine?" in their order; each is answered by one press. */
export const ORDER = ['fastening', 'turns', 'slides', 'slack', 'hole'] as const;
export type Question = (typeof ORDER)[number];
export interface Mine {
  readonly fastening: Fastening | null;
  readonly turns: DrumAnswers['turns'] | null;
  readonly slides: DrumAnswers['slides'] | null;
  readonly slack: DrumAnswers['slack'] | null;
  /** Is there a hole to reach the adjuster through? Asked only where the adjuster is to be backed off. */
  readonly hole: 'there' | 'none' | null;
}
const UNASKED: Mine = { fastening: null, turns: null, slides: null, slack: null, hole: null };

export interface DrumPart {
  readonly page: DrumPage;
  readonly fastening: Fastening;
  readonly mine: Mine;
  /** The questions were left to try something on the drum: they go on where they stood. */
  readonly asking: boolean;
  /** The last thing tried, and what held the drum besides when it was. */
  readonly tried: { readonly what: Try; readonly held: Held } | null;
  /** Teeth backed off since the state was put on. */
  readonly back: number;
}

/** Farthest that a cable is set too tight here, mm at the hook. */
const MOST_OFF_STOP = 8;

/** Every answer of a question: one left out does not compile. */
const all = <K extends string>(answers: Readonly<Record<K, true>>) =>
  v.picklist(Object.keys(answers) as [K, ...K[]]);
const TURNS = all<DrumAnswers['turns']>({
  freely: true,
  lightly: true,
  'one way': true,
  'not at all': true,
});
const SLIDES = all<DrumAnswers['slides']>({ 'not at all': true, 'a little': true });
const SLACK = all<DrumAnswers['slack']>({ helps: true, 'no change': true, 'cannot tell': true });

const held = v.strictObject({
  hubRust: v.boolean(),
  liningsRusted: v.boolean(),
  aside: v.pipe(v.number(), v.minValue(-10), v.maxValue(10)),
});

export const drumPart: Part<DrumPart> = {
  anew: true,
  layers: {},
  initial: () => ({
    page: 'brake',
    fastening: 'studs',
    mine: UNASKED,
    asking: false,
    tried: null,
    back: 0,
  }),
  // The next time one looks at the brake first.
  left: (m) => withPart(m, 'drum-off', { tried: null, page: 'brake' }),
  schema: v.strictObject({
    page: v.picklist(['brake', 'faults', 'mine', 'fastening']),
    fastening: v.picklist(['studs', 'screw', 'nut']),
    mine: v.strictObject({
      fastening: v.nullable(v.picklist(['studs', 'screw', 'nut'])),
      turns: v.nullable(TURNS),
      slides: v.nullable(SLIDES),
      slack: v.nullable(SLACK),
      // Records from before it was asked have none.
      hole: v.optional(v.nullable(v.picklist(['there', 'none'])), null),
    }),
    asking: v.boolean(),
    tried: v.nullable(
      v.strictObject({ what: v.picklist(['pull', 'turn', 'rock', 'break']), held }),
    ),
    back: v.pipe(v.number(), v.integer(), v.minValue(-1e5), v.maxValue(1e5)),
  }),
};

const put = (m: Moment, change: Partial<DrumPart>): Moment => withPart(m, 'drum-off', change);

/** The question that is asked next; null when all are answered. */
export const nextQuestion = (mine: Mine): Question | null =>
  ORDER.find((q) => mine[q] === null && (q !== 'hole' || throughHole(mine))) ?? null;

/** What the answers so far point to, in the order of release; nothing before all of them are given. */
export const likelyOf = ({ turns, slides, slack }: Mine): readonly Lock[] =>
  turns && slides && slack ? likelyLocks({ turns, slides, slack }) : [];

/** Is a lock likely that is let go by backing the adjuster off? */
const throughHole = (mine: Mine): boolean =>
  likelyOf(mine).some((lock) => lock === 'lip' || lock === 'adjuster too far out');

/** What is done to the drum is answered beside the brake: a sheet that hides it closes. */
function toBrake(m: Moment): Moment {
  const { page, mine, asking } = m.parts['drum-off'];
  return put(m, {
    page: 'brake',
    asking: page === 'mine' ? nextQuestion(mine) !== null : asking,
  });
}

const withHeld = (m: Moment, change: Partial<Held>): Moment =>
  put({ ...m, bench: { ...m.bench, held: { ...m.bench.held, ...change } } }, { tried: null });

const heldSays = (_before: Moment, after: Moment): string => {
  const { hubRust, liningsRusted, aside } = after.bench.held;
  const all = [
    hubRust ? 'rust at the hub' : '',
    liningsRusted ? 'linings rusted on' : '',
    aside !== 0 ? texts.pairAside : '',
  ].filter((t) => t !== '');
  return all.join(', ') || texts.nothingHoldsTheDrumBesides;
};

export const hold = intention(
  'drum.hold',
  (m: Moment, change: Partial<Held>) => withHeld(m, change),
  heldSays,
);

const withLever = (m: Moment, mm: number): Moment => {
  const leverOffStop = Math.max(0, Math.min(MOST_OFF_STOP, mm));
  const { back } = m.parts['drum-off'];
  return put(released(withState(m, { ...m.bench.state, leverOffStop })), { back, tried: null });
};

/** Cable that holds the lever off its stop by so much, mm at the hook; 0: slack. */
export const leverOff = intention('drum.lever', withLever, (_before, after) =>
  texts.leverMmOffItsStop(after.bench.state.leverOffStop),
);

/** Slackens the cable until the lever is back on its stop. */
export const slackenCable = intention(
  'drum.slacken',
  (m: Moment) => withLever(toBrake(m), 0),
  texts.cableSlackened,
);

/** What pushes or holds the shoes is let go: pressure in the line, a cable's pull, a leaning part. */
export const letGoOf = intention(
  'drum.let-go',
  (m: Moment, lock: ForceLock) => {
    const { back } = m.parts['drum-off'];
    return put(released(withState(m, letGo(m.bench.state, lock))), { back, tried: null });
  },
  (_before, _after, lock) => texts.letGo(lock),
);

/** A complaint that a driver comes with, as far as the scene has the state for it. */
export const complain = intention(
  'drum.complain',
  (m: Moment, c: Complaint) => {
    const brake = brakeOf(m);
    if (!brake.states.some((s) => s.name === c.state)) return m;
    const begun = withBegun(m, standingOf(brake, c.state), c.state);
    const lever = c.leverOff > 0 ? withLever(begun, c.leverOff) : begun;
    return put(withHeld(lever, { ...UNHELD, ...c.held }), { page: 'brake' });
  },
  texts.aDriversWords,
);

/** The standing state in which a brake's drum has a lip that holds it; null where it has none but new. */
export const wornStateOf = ({ states }: Brake): string | null =>
  (states.find((s) => s.name === 'Near the limit') ?? states.findLast((s) => s.name !== 'New'))
    ?.name ?? null;

/** A worn brake as a guest: a new drum has nothing that holds it, and nothing to be tried on it. */
export const tryWorn = intention(
  'drum.worn',
  (m: Moment) => {
    // A guest that does not stand here leaves first: it is one's own brake that is shown worn.
    const here = opened(m, 'drum-off');
    const brake = brakeOf(here);
    const name = wornStateOf(brake);
    if (name === null || here.bench.standing === name) return m;
    const guest = arrive(here, { kind: 'state', name }, ['drum-off', 'order']);
    return put(withBegun(guest, standingOf(brake, name), name), { page: 'brake', tried: null });
  },
  texts.aWornDrumToTry,
);

/** Teeth the adjuster is backed off; negative: stepped on again. */
export const backOff = intention(
  'drum.back-off',
  (m: Moment, teeth: number) => {
    const { state } = m.bench;
    const tooth = Math.max(0, Math.min(brakeOf(m).adjuster.teeth, state.tooth - teeth));
    if (tooth === state.tooth) return m;
    const back = m.parts['drum-off'].back + state.tooth - tooth;
    return put(released(withState(m, { ...state, tooth })), { back });
  },
  (before, after) => texts.toothTo(before.bench.state.tooth, after.bench.state.tooth),
);

/** Pull, turn or rock the drum as it stands, or break linings loose that are rusted on. */
export const attempt = intention(
  'drum.try',
  (m: Moment, what: Try) => {
    const next = put(toBrake(m), { tried: { what, held: m.bench.held } });
    if (what !== 'break') return next;
    return { ...next, bench: { ...next.bench, held: { ...m.bench.held, liningsRusted: false } } };
  },
  (_before, after) => {
    const what = after.parts['drum-off'].tried?.what;
    return what === 'break' ? texts.liningsBrokenLoose : texts.atTheDrum(what);
  },
);

/** Puts the drum back on. */
export const putOn = intention(
  'drum.on',
  (m: Moment) => put(toBrake(m), { tried: null }),
  texts.drumPutOn,
);

export const openPage = intention(
  'drum.page',
  (m: Moment, page: DrumPage) => {
    const { asking, mine } = m.parts['drum-off'];
    return put(m, {
      page,
      mine: page === 'mine' && !asking ? UNASKED : mine,
      asking: false,
    });
  },
  texts.pageOfDrumOff,
);

export const fasten = intention(
  'drum.fastening',
  (m: Moment, fastening: Fastening) => put(m, { fastening }),
  texts.howTheDrumIsFastened,
);

export const answer = intention(
  'drum.answer',
  (m: Moment, given: Partial<Mine>) => put(m, { mine: { ...m.parts['drum-off'].mine, ...given } }),
  texts.anAnswer,
);

/** One press back: the last answer is taken away, or the questions are left. */
export const backOne = intention(
  'drum.back-one',
  (m: Moment) => {
    const { mine, page } = m.parts['drum-off'];
    const last = ORDER.findLast((q) => mine[q] !== null);
    return page !== 'mine' || last === undefined
      ? put(m, { page: 'brake' })
      : put(m, { mine: { ...mine, [last]: null } });
  },
  texts.anAnswerTakenBack,
);
