import * as v from 'valibot';
import type { BrakeState, Wheel } from '../../../sim/index.ts';
import { language, inspectPart as words } from '../../../sim/words/en.ts';
import type { LimitKey, LimitSet } from '../../../sim/workshop/index.ts';
import { released, withState } from '../../record/bench.ts';
import { intention } from '../../record/intention.ts';
import { type Moment, withPart } from '../../record/moment.ts';
import type { Part } from '../../record/part.ts';
import {
  type AxleKey,
  axleLines,
  type HeadKey,
  heads,
  limitWords,
  lines,
  newPartNames,
  type PartKey,
} from './lines.ts';
import {
  BLANK,
  LONGEST,
  PAPER_ID,
  type Paper,
  paperSchema,
  type Texts,
  typedIn,
  type WheelKey,
} from './paper.ts';

/** The sheet, the open place, and what the buttons answered. */
export interface InspectPart {
  readonly paper: Paper;
  /** What stood there before the sheet was cleared or filled from the brake; null when nothing did. */
  readonly before: Paper | null;
  /** Wheel that is measured: the stage shows it while the station is open. */
  readonly wheel: Wheel;
  /** Place in the list of lines. */
  readonly line: number;
  /** In-place question before the sheet is cleared. */
  readonly asking: boolean;
  /** Kept sheet that is to be taken out, once that is said again; empty: none is. */
  readonly dropping: string;
  /** Answer of the last button, told in the page; and what was found wrong. */
  readonly said: string;
  readonly findings: readonly string[];
}

/** Longest answer told, and the most findings. */
const LONGEST_SAID = 500;
const MOST_FINDINGS = 60;

const told = v.pipe(v.string(), v.maxLength(LONGEST_SAID));

/** Nothing measured yet. */
export const UNMEASURED: InspectPart = {
  paper: BLANK,
  before: null,
  wheel: 'left',
  line: 0,
  asking: false,
  dropping: '',
  said: '',
  findings: [],
};

export const inspectPart: Part<InspectPart> = {
  anew: false,
  layers: {},
  initial: () => UNMEASURED,
  schema: v.strictObject({
    paper: paperSchema,
    before: v.nullable(paperSchema),
    wheel: v.picklist(['left', 'right']),
    line: v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(lines.length - 1)),
    asking: v.boolean(),
    dropping: v.optional(v.pipe(v.string(), v.regex(PAPER_ID)), ''),
    said: told,
    findings: v.pipe(v.array(told), v.maxLength(MOST_FINDINGS)),
  }),
};

const partOf = (m: Moment): InspectPart => m.parts.inspect;
const put = (m: Moment, change: Partial<InspectPart>): Moment => withPart(m, 'inspect', change);
const written = (m: Moment, change: Partial<Paper>): Moment =>
  put(m, { paper: { ...partOf(m).paper, ...change } });

/** What a button answers. */
const answer = (said: string, findings: readonly string[] = []) => ({
  said: said.slice(0, LONGEST_SAID),
  findings: findings.slice(0, MOST_FINDINGS).map((f) => f.slice(0, LONGEST_SAID)),
});

/** The sheet as it stands, to be brought back; what stood before it when it is blank. */
const kept = ({ paper, before }: InspectPart): Paper | null => (typedIn(paper) ? paper : before);

const nameOf = (key: WheelKey | AxleKey): string =>
  language.inside([...lines, ...axleLines].find((l) => l.key === key)?.name ?? key);

/** A text of one wheel, word for word as it is typed. */
export const write = intention(
  'inspect.write',
  (m: Moment, wheel: Wheel, key: WheelKey, text: string) => {
    const { wheels } = partOf(m).paper;
    const next = text.slice(0, LONGEST);
    if (next === (wheels[wheel][key] ?? '')) return m;
    return written(m, { wheels: { ...wheels, [wheel]: { ...wheels[wheel], [key]: next } } });
  },
  (_before, _after, wheel, key) => words.wheel(nameOf(key), wheel),
  { joins: (wheel, key) => `inspect.${wheel}.${key}` },
);

export const writeAxle = intention(
  'inspect.axle',
  (m: Moment, key: AxleKey, text: string) => {
    const { axle } = partOf(m).paper;
    const next = text.slice(0, LONGEST);
    return next === (axle[key] ?? '') ? m : written(m, { axle: { ...axle, [key]: next } });
  },
  (_before, _after, key) => nameOf(key),
  { joins: (key) => `inspect.axle.${key}` },
);

/** A figure of a new part, word for word. */
export const writePart = intention(
  'inspect.part',
  (m: Moment, wheel: Wheel, key: PartKey, text: string) => {
    const { parts } = partOf(m).paper;
    const next = text.slice(0, LONGEST);
    if (next === (parts[wheel][key] ?? '')) return m;
    return written(m, { parts: { ...parts, [wheel]: { ...parts[wheel], [key]: next } } });
  },
  (_before, _after, wheel, key) => words.newPartWheel(language.inside(newPartNames[key]), wheel),
  { joins: (wheel, key) => `inspect.part.${wheel}.${key}` },
);

export const writeHead = intention(
  'inspect.head',
  (m: Moment, key: HeadKey, text: string) => {
    const { head } = partOf(m).paper;
    const next = text.slice(0, LONGEST);
    return next === (head[key] ?? '') ? m : written(m, { head: { ...head, [key]: next } });
  },
  (_before, _after, key) => language.inside(heads.find(([k]) => k === key)?.[1] ?? key),
  { joins: (key) => `inspect.head.${key}` },
);

/** A limit typed over; an empty text is no limit, the set's own comes back with `chooseLimits`. */
export const writeLimit = intention(
  'inspect.limit',
  (m: Moment, key: LimitKey, text: string) => {
    const { limits } = partOf(m).paper;
    const next = text.slice(0, LONGEST);
    return next === limits[key] ? m : written(m, { limits: { ...limits, [key]: next } });
  },
  (_before, _after, key) => words.limit(language.inside(limitWords[key][1])),
  { joins: (key) => `inspect.limit.${key}` },
);

/** Takes another set of limits; what was typed over goes with the old one and can be brought back. */
export const chooseLimits = intention(
  'inspect.limits',
  (m: Moment, id: LimitSet['id']) => {
    const now = partOf(m);
    const { limits, limitsFrom } = now.paper;
    const typed = Object.keys(limits).length > 0;
    if (id === limitsFrom && !typed) return m;
    const before = typed ? kept(now) : now.before;
    return put(m, { before, paper: { ...now.paper, limitsFrom: id, limits: {} } });
  },
  words.setOfLimits,
);

export const choosePlain = intention(
  'inspect.plain',
  (m: Moment, plain: 'mm' | 'in') => (plain === partOf(m).paper.plain ? m : written(m, { plain })),
  (_before, after) =>
    words.aPlainNumberIsIn(partOf(after).paper.plain === 'in' ? words.inches : 'mm'),
);

/** Limits that were neither chosen nor typed give way to those of the brake that was measured. */
const limitsOfBench = ({ limitsFrom, limits }: Paper): Paper['limitsFrom'] =>
  limitsFrom === 'maker' && Object.keys(limits).length === 0 ? 'teaching' : limitsFrom;

/** Fills one wheel and the axle, over what stood there. */
export const fill = intention(
  'inspect.fill',
  (m: Moment, wheel: Wheel, texts: Texts<WheelKey>, axle: Texts<AxleKey>) => {
    const now = partOf(m);
    const { paper } = now;
    return put(m, {
      before: kept(now),
      paper: {
        ...paper,
        wheels: { ...paper.wheels, [wheel]: texts },
        axle: { ...paper.axle, ...axle },
        limitsFrom: limitsOfBench(paper),
      },
      ...answer(words.takenFromTheBrakeOn(wheel)),
    });
  },
  (_before, _after, wheel) => words.valuesFromTheBrakeWheel(wheel),
);

/** A question before the sheet is cleared, and what comes of it, are one step. */
const CLEARING = 'inspect.clear';

export const ask = intention(
  'inspect.ask',
  (m: Moment, asking: boolean) => (asking === partOf(m).asking ? m : put(m, { asking })),
  words.questionAboutTheSheet,
  { joins: CLEARING },
);

/** Asks whether a kept sheet is to be taken out; an empty name takes the question back. */
export const askDrop = intention(
  'inspect.drop',
  (m: Moment, dropping: string) =>
    dropping === partOf(m).dropping || !PAPER_ID.test(dropping) ? m : put(m, { dropping }),
  words.questionAboutAKeptSheet,
  { joins: 'inspect.drop' },
);

/** A blank sheet; limits and unit stay. */
export const clear = intention(
  'inspect.clear',
  (m: Moment) => {
    const now = partOf(m);
    const { limitsFrom, plain } = now.paper;
    return put(m, {
      before: kept(now),
      paper: { ...BLANK, limitsFrom, plain },
      asking: false,
      ...answer(words.theSheetIsClear),
    });
  },
  words.sheetCleared,
  { joins: CLEARING, ends: true },
);

/** Brings back what stood there before; doing it twice goes to and fro. */
export const bringBack = intention(
  'inspect.back',
  (m: Moment) => {
    const { before, paper } = partOf(m);
    if (!before) return m;
    return put(m, {
      paper: before,
      before: typedIn(paper) ? paper : null,
      ...answer(words.theSheetIsBackAs),
    });
  },
  words.sheetBroughtBack,
);

/** Gives the sheet the name by which its photo notes are known. */
export const nameSheet = intention(
  'inspect.name',
  (m: Moment, id: string) =>
    partOf(m).paper.id !== '' || id === '' || !PAPER_ID.test(id) ? m : written(m, { id }),
  words.photoNote,
);

/** A kept sheet, or one that was just kept, lies on the bench; what lay there can be brought back. */
export const layOut = intention(
  'inspect.lay',
  (m: Moment, paper: Paper, said: string) => {
    const now = partOf(m);
    const same = paper.id !== '' && paper.id === now.paper.id;
    return put(m, { paper, before: same ? now.before : kept(now), ...answer(said) });
  },
  (_before, after) => words.sheetOf(partOf(after).paper.head.date ?? words.before),
);

/** Opens a place of the sheet. */
export const select = intention(
  'inspect.select',
  (m: Moment, wheel: Wheel, line: number) => {
    const now = partOf(m);
    const at = Math.max(0, Math.min(lines.length - 1, Math.round(line)));
    return wheel === now.wheel && at === now.line ? m : put(m, { wheel, line: at });
  },
  (_before, after) => {
    const { wheel, line } = partOf(after);
    return words.toWheel(language.inside(lines[line]?.name ?? ''), wheel);
  },
  { joins: 'inspect.select' },
);

/** What a button answers when nothing came of it. */
export const tell = intention(
  'inspect.tell',
  (m: Moment, said: string, findings: readonly string[]) => put(m, answer(said, findings)),
  words.answerOfInspect,
);

/** The brake of a wheel as it was measured goes onto the bench. */
export const load = intention(
  'inspect.load',
  (m: Moment, wheel: Wheel, state: BrakeState, said: string) => {
    const next = released(withState(m, state));
    return put({ ...next, view: { ...next.view, wheel } }, { wheel, ...answer(said) });
  },
  (_before, _after, wheel) => words.wheelAsMeasured(wheel),
);

/** Wheel that the stage shows while the station is open. */
export const measuredWheel = (m: Moment): Wheel => partOf(m).wheel;
