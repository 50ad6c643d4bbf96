import type { Moment } from '../record/moment.ts';
import type { Action } from './actions.ts';
import { LESSON_VERSION, type Lesson, type Step } from './format.ts';
import { readLesson } from './read.ts';
import { layersNow, recordedBetween, withLayersOn } from './recorded.ts';
import { lessonStart, type Ran, runStep } from './run.ts';

/**
 * A lesson being written without code: its file in the making, which may lack what a lesson needs. It is changed
 * place by place, so that whatever the editor has no field for stays as it came. It may be a stranger's: whatever is
 * read of it here is taken for what it is, and nothing of it is run before the reader of lessons has judged it.
 */
export type Written = Readonly<Record<string, unknown>>;
/** Where something stands in a lesson: keys, and places in lists. */
export type Path = readonly (string | number)[];

export const MOST_STEPS = 60;
export const MOST_CHOICES = 4;
export const MOST_PIECES = 6;
export const MOST_READINGS = 6;
/** Beside a step of the draft, never in a file: what was done on the stage and no action says. */
const UNTOLD = 'untold';

type Data = Written;
const isData = (x: unknown): x is Data => typeof x === 'object' && x !== null && !Array.isArray(x);
const data = (x: unknown): Data => (isData(x) ? x : {});
const many = (x: unknown): readonly unknown[] => (Array.isArray(x) ? x : []);

/** What stands at a place; undefined: nothing does. */
export function valueAt(w: unknown, path: Path): unknown {
  return path.reduce<unknown>((at, key) => {
    if (typeof key === 'number') return many(at)[key];
    return Object.hasOwn(data(at), key) ? data(at)[key] : undefined;
  }, w);
}

/** The text at a place; empty where there is none. */
export function textAt(w: unknown, path: Path): string {
  const found = valueAt(w, path);
  return typeof found === 'string' || typeof found === 'number' ? String(found) : '';
}

export const listAt = (w: unknown, path: Path): readonly unknown[] => many(valueAt(w, path));
export const textsAt = (w: unknown, path: Path): readonly string[] =>
  listAt(w, path).filter((x): x is string => typeof x === 'string');
export const stepsOf = (w: Written): readonly unknown[] => listAt(w, ['steps']);
export const isTalk = (w: Written): boolean => w['kind'] === 'talk';

/** Keys in the order of the format, for those that are added; all others stay where they are. */
const ORDER: readonly string[] = [
  '$schema',
  'format',
  'version',
  'name',
  'kind',
  'number',
  'title',
  'idea',
  'who',
  'minutes',
  'brake',
  'scene',
  'state',
  'caution',
  'starter',
  'exit',
  'shortly',
  'whatIf',
  'steps',
  'stage',
  'start',
  'hand',
  'look',
  'ask',
  'choices',
  'button',
  'shows',
  'why',
  'next',
  'say',
  'seconds',
  'tryIt',
  'checks',
  'notes',
  'behind',
  'point',
  'layers',
  'from',
  'at',
  'readings',
  'names',
  'chart',
  'words',
  'holds',
  'back',
  'untold',
];

function put(of: Data, key: string, value: unknown): Data {
  if (value === undefined) {
    const { [key]: _gone, ...left } = of;
    return left;
  }
  if (Object.hasOwn(of, key)) return { ...of, [key]: value };
  const all = Object.entries(of);
  const after = all.findIndex(([k]) => ORDER.indexOf(k) > ORDER.indexOf(key));
  const at = after < 0 ? all.length : after;
  return Object.fromEntries([...all.slice(0, at), [key, value], ...all.slice(at)]);
}

function changed(at: unknown, path: Path, value: unknown): unknown {
  const [key, ...rest] = path;
  if (key === undefined) return value;
  if (typeof key === 'number') {
    return many(at).map((x, i) => (i === key ? changed(x, rest, value) : x));
  }
  const of = data(at);
  const next = changed(Object.hasOwn(of, key) ? of[key] : undefined, rest, value);
  // What is emptied again leaves nothing behind.
  const empty = value === undefined && isData(next) && Object.keys(next).length === 0;
  return put(of, key, empty ? undefined : next);
}

/** A lesson with something else at a place; undefined takes away what stands there. */
export const withAt = (w: Written, path: Path, value: unknown): Written =>
  data(changed(w, path, value));

/** A list with one entry moved to another place; as it is where there is no such place. */
export function movedIn<T>(list: readonly T[], from: number, to: number): readonly T[] {
  if (from === to || to < 0 || to >= list.length || from < 0 || from >= list.length) return list;
  const rest = list.filter((_, i) => i !== from);
  return [...rest.slice(0, to), list[from] as T, ...rest.slice(to)];
}

/** "The gap grows" as a name among all lessons. */
function nameOf(title: string): string {
  const name = title
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 40);
  return `own-${name || 'my-lesson'}`;
}

/** A lesson with another title; its name goes along, but one that was given to it stays. */
export function withTitle(w: Written, title: string): Written {
  const named = withAt(w, ['title'], title);
  const before = textAt(w, ['title']);
  return w['name'] === nameOf(before) ? withAt(named, ['name'], nameOf(title)) : named;
}

/** A lesson as the beginning of one's own: under a name of its own, and at no place in a course. */
export const takenFrom = (w: Written): Written =>
  withAt(withAt(w, ['name'], nameOf(textAt(w, ['title']))), ['number'], undefined);

/** A draft as its text has it; null where that is no file at all. */
export function writtenOf(draft: string): Written | null {
  try {
    const read: unknown = JSON.parse(draft);
    return isData(read) ? read : null;
  } catch {
    return null;
  }
}

const told = (x: unknown): string => `${JSON.stringify(x, null, 2)}\n`;

/** The draft's text, with what was noted beside its steps. */
export const draftOf = (w: Written): string => told(w);

/** The lesson's file, as it is kept, tried and saved. */
export const fileOf = (w: Written): string =>
  told(
    stepsOf(w).some((s) => isData(s) && UNTOLD in s)
      ? withAt(
          w,
          ['steps'],
          stepsOf(w).map((s) => (isData(s) ? put(s, UNTOLD, undefined) : s)),
        )
      : w,
  );

/** Two choices to be written, one of them the one that holds. */
const TWO_CHOICES = [
  { says: [{ words: '', holds: true }] },
  { says: [{ words: '', holds: false }] },
];

/** A lesson as a talk, or a talk as a lesson: what was asked is said, and the other way round. */
export function asKind(w: Written, kind: string): Written {
  const steps = stepsOf(w).map((s) => {
    const { ask, choices, say, ...rest } = data(s);
    return kind === 'talk'
      ? withAt(rest, ['say'], say ?? ask ?? '')
      : withAt(withAt(rest, ['ask'], ask ?? say ?? ''), ['choices'], choices ?? TWO_CHOICES);
  });
  return withAt(withAt(w, ['kind'], kind), ['steps'], steps);
}

/** A lesson that begins with the brake on the bench. */
export function begunFrom({ bench }: Moment, scene: object | null): Written {
  const brake =
    bench.brake.kind === 'scene' ? { brake: bench.brake.name } : { scene: scene ?? undefined };
  return {
    format: 'takeup-lesson',
    version: LESSON_VERSION,
    name: nameOf(''),
    title: '',
    ...brake,
    ...(bench.standing === null ? {} : { state: bench.standing }),
    steps: [],
  };
}

/** What was done on the stage for a step, and no lesson can say. */
export const untoldOf = (w: Written, step: number): readonly string[] =>
  textsAt(w, ['steps', step, UNTOLD]).slice(0, 20);

/** What a step does to the brake as a lesson of its own: with it the reader judges what is done alone. */
const bare = (w: Written, step: unknown): Lesson | null => {
  const { brake, scene, state } = w;
  const { hand, start } = data(step);
  const read = readLesson({
    format: 'takeup-lesson',
    version: LESSON_VERSION,
    name: 'bare',
    kind: 'talk',
    title: '-',
    ...(brake === undefined ? {} : { brake }),
    ...(scene === undefined ? {} : { scene }),
    ...(state === undefined ? {} : { state }),
    steps: [
      {
        say: '-',
        ...(start === undefined ? {} : { start }),
        ...(hand === undefined ? {} : { hand }),
      },
    ],
  });
  return read.ok ? read.lesson : null;
};

/** Runs that are kept: as many as a lesson has steps, and its start. */
const runs = new Map<string, Ran | null>();

const runKey = (w: Written, step: unknown): string => {
  const { hand, start } = data(step);
  return JSON.stringify([w['brake'], w['scene'], w['state'], start, hand]);
};

/** Is it known what a step comes to? To drive a brake to its limit takes a second or two. */
export const isWorkedOut = (w: Written, step: unknown): boolean => runs.has(runKey(w, step));

/** A step as the mechanics do it; null while it cannot be done. */
export function ranOf(w: Written, step: unknown): Ran | null {
  const key = runKey(w, step);
  const known = runs.get(key);
  if (known !== undefined) return known;
  const lesson = bare(w, step);
  let ran: Ran | null = null;
  try {
    ran = lesson && runStep(lesson, lesson.steps[0] as Step);
  } catch {
    // What the brake cannot do is found where the lesson is tried.
  }
  if (runs.size > 2 * MOST_STEPS) runs.clear();
  runs.set(key, ran);
  return ran;
}

/** The record as the lesson begins; null while its brake cannot be read. */
export function startOf(w: Written): Moment | null {
  const lesson = bare(w, {});
  return lesson && lessonStart(lesson);
}

/** Which drawing a step has. */
const stageNow = ({ station }: Moment): { stage?: string } =>
  station === 'drum-off' ? { stage: 'drum' } : station === 'park' ? { stage: 'park' } : {};

const noted = (untold: readonly string[]) => (untold.length > 0 ? { [UNTOLD]: untold } : {});

/** What a step that was done on the stage begins as: two choices to be written, and what is usually read. */
export function stepFrom(w: Written, now: Moment): Written | null {
  const start = startOf(w);
  if (!start) return null;
  const layers = layersNow(now);
  const { actions, untold } = recordedBetween(withLayersOn(start, layers), now);
  return {
    ...stageNow(now),
    hand: actions,
    look: { layers, readings: ['restClearanceMean', 'torque'] },
    ...(isTalk(w)
      ? { say: '' }
      : {
          ask: '',
          choices: TWO_CHOICES,
        }),
    ...noted(untold),
  };
}

/** A step that begins with what stands on the stage: what leads there is done before its question is asked. */
export function startFrom(w: Written, now: Moment): Written | null {
  const step = stepFrom(w, now);
  if (!step) return null;
  const actions = listAt(step, ['hand']);
  return withAt({ ...step, hand: [] }, ['start'], actions.length > 0 ? actions : undefined);
}

/** Does a step only have its beginning yet? */
export const onlyBegun = (step: unknown): boolean =>
  listAt(step, ['start']).length > 0 && listAt(step, ['hand']).length === 0;

/** s that what was done first is seen, before the hand goes on. */
const SEEN = 1.5;

/**
 * A step that goes on to what stands on the stage: what it has come to so far is noted under a name. The lesson as it is
 * where nothing has changed on the stage.
 */
export function withMore(w: Written, step: number, now: Moment): Written | null {
  const of = valueAt(w, ['steps', step]);
  const ran = ranOf(w, of);
  if (!ran) return null;
  const hand = listAt(of, ['hand']);
  const begun = hand.length === 0;
  const shown = ran.beats.some((b) => b.action.do === 'show');
  // Layers of its look are on from the first; what it shows of its own counts from then on.
  const end = shown ? ran.end : withLayersOn(ran.end, textsAt(of, ['look', 'layers']));
  const { actions, untold } = recordedBetween(begun ? withLayersOn(end, layersNow(now)) : end, now);
  if (actions.length === 0 && untold.length === 0) return w;
  const names = hand.flatMap((a) => (data(a)['do'] === 'note' ? [textAt(a, ['as'])] : []));
  const free = 'abcdefghijklmnopqrstuvwxyz'.split('').find((l) => !names.includes(l)) ?? 'z';
  const between: readonly Action[] = begun
    ? []
    : [
        { do: 'note', as: free },
        { do: 'wait', seconds: SEEN },
      ];
  const next = withAt(w, ['steps', step, 'hand'], [...hand, ...between, ...actions]);
  const all = [...new Set([...untoldOf(w, step), ...untold])];
  const looked = begun ? withAt(next, ['steps', step, 'look', 'layers'], layersNow(now)) : next;
  return withAt(looked, ['steps', step, UNTOLD], all.length > 0 ? all : undefined);
}

/** Moments of a step that a figure can be of: as it begins, those noted on its way, and its end. */
export const momentsOf = (step: unknown): readonly string[] => [
  'before',
  ...[...listAt(step, ['start']), ...listAt(step, ['hand'])].flatMap((a) =>
    data(a)['do'] === 'note' ? [textAt(a, ['as'])] : [],
  ),
  'now',
];
