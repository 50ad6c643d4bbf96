import { type Finding, few, nearest, parseBy, readScene } from '../../sim/index.ts';
import { lessonsRead as pageWords } from '../../sim/words/en.ts';
import { brakeOfRef, teaching } from '../record/derive.ts';
import { EMPTY_SHELF } from '../record/shelf.ts';
import { type Lesson, lessonSchema, type Step } from './format.ts';
import { brakeRefOf, lessonStart, valuesOf } from './run.ts';
import { figuresOf } from './text.ts';
import { textsOf } from './texts.ts';

/** A lesson file read: a lesson, or what is wrong with it, each finding with its path. */
export type ReadLesson =
  | { readonly ok: true; readonly lesson: Lesson }
  | { readonly ok: false; readonly findings: readonly Finding[] };

/** Longest file that is looked at, letters. */
export const MOST_LESSON = 200_000;

const isObject = (x: unknown): x is Readonly<Record<string, unknown>> =>
  typeof x === 'object' && x !== null;

/** Does data call itself a lesson? */
export const isLesson = (data: unknown): boolean =>
  isObject(data) && data['format'] === 'takeup-lesson';

const shortly = (text: string): string => (text.length > 60 ? `${text.slice(0, 57)}…` : text);

function unknownWord(path: string, found: string, known: readonly string[], what: string): Finding {
  const meant = nearest(found, known);
  const allowed = meant ? pageWords.theNearestIs(what, meant) : what;
  return { path, found: shortly(found), allowed };
}

/** Figures that name a moment or a value that there is not. */
function figureFindings(step: Step, path: string, keys: readonly string[]): Finding[] {
  const moments = [
    'now',
    'before',
    ...[...step.start, ...step.hand].flatMap((a) => (a.do === 'note' ? [a.as] : [])),
  ];
  const judge = (where: string, moment: string, key: string): Finding[] => {
    if (!moments.includes(moment)) {
      return [unknownWord(where, moment, moments, pageWords.aMoment(moments.join(', ')))];
    }
    return keys.includes(key) ? [] : [unknownWord(where, key, keys, pageWords.theKeyOfAValue)];
  };
  const inTexts = textsOf(step, path).flatMap(([where, text]) => {
    const figures = figuresOf(text);
    const left = figures.reduce((t, f) => t.replace(f.text, ''), text);
    const bad = /[{}]/.test(left)
      ? [{ path: where, found: shortly(text), allowed: 'figures as {torque=227}' }]
      : [];
    return [...bad, ...figures.flatMap((f) => judge(where, f.moment, f.key))];
  });
  const { at = 'now', from = 'before', readings } = step.look;
  const inLook = [
    ...judge(`${path}.look.at`, at, 'tooth'),
    ...judge(`${path}.look.from`, from, 'tooth'),
    ...readings.flatMap((key, i) => judge(`${path}.look.readings.${i}`, 'now', key)),
  ];
  const named = (where: string, value: string): Finding[] => {
    const [moment, key] = value.includes('.') ? value.split('.') : ['now', value];
    return judge(where, moment ?? '', key ?? '');
  };
  const inChecks = step.checks.flatMap(({ over, value }, i) => [
    ...named(`${path}.checks.${i}.value`, value),
    ...(over === undefined ? [] : named(`${path}.checks.${i}.over`, over)),
  ]);
  return [...inTexts, ...inLook, ...inChecks];
}

/** Brakes and states that are named and are not there. */
function namesFindings(lesson: Lesson): Finding[] {
  const out: Finding[] = [];
  const brakes = [...teaching.keys()];
  const states = (ref: ReturnType<typeof brakeRefOf>): readonly string[] =>
    brakeOfRef(ref, EMPTY_SHELF).states.map((s) => s.name);
  const own = states(brakeRefOf(lesson));
  if (lesson.state !== undefined && !own.includes(lesson.state)) {
    out.push(unknownWord('state', lesson.state, own, pageWords.aStateOfTheBrake(own.join(', '))));
  }
  lesson.steps.forEach((step, i) => {
    let known = own;
    for (const list of ['start', 'hand'] as const) {
      step[list].forEach((a, k) => {
        const path = `steps.${i}.${list}.${k}.name`;
        if (a.do === 'brake') {
          if (!brakes.includes(a.name)) {
            out.push(
              unknownWord(path, a.name, brakes, pageWords.aTeachingBrake(brakes.join(', '))),
            );
          } else known = states({ kind: 'scene', name: a.name });
        }
        if (a.do === 'state' && !known.includes(a.name)) {
          out.push(unknownWord(path, a.name, known, pageWords.aStateOfTheBrake2(known.join(', '))));
        }
      });
    }
  });
  return out;
}

const keysKept = new Map<string, readonly string[]>();

/** The keys of all values of a lesson's brake. They are the same in every state, so none is driven to. */
function keysOf({ state: _, ...lesson }: Lesson): readonly string[] {
  const ofBrake = (): readonly string[] => valuesOf(lessonStart(lesson)).keys;
  if (lesson.scene !== undefined) return ofBrake();
  const name = lesson.brake ?? '';
  const keys = keysKept.get(name) ?? ofBrake();
  keysKept.set(name, keys);
  return keys;
}

/** What a lesson must have to be one. */
function soundFindings(lesson: Lesson): Finding[] {
  return lesson.steps.flatMap((step, i): Finding[] => {
    const path = `steps.${i}`;
    if (lesson.kind === 'talk') {
      if (step.ask !== undefined || step.choices) {
        return [
          { path: `${path}.ask`, found: pageWords.aQuestion, allowed: pageWords.noneInATalk },
        ];
      }
      return step.say === undefined
        ? [{ path: `${path}.say`, found: 'nothing', allowed: pageWords.whatIsSaid }]
        : [];
    }
    if (step.ask === undefined || !step.choices) {
      const missing = step.ask === undefined ? 'ask' : 'choices';
      return [{ path: `${path}.${missing}`, found: 'nothing', allowed: pageWords.thisKeyIsNeeded }];
    }
    const right = step.choices.filter((c) => c.says.every((s) => s.holds)).length;
    return right === 1
      ? []
      : [
          {
            path: `${path}.choices`,
            found: pageWords.thatHoldInAllTheir(right),
            allowed: pageWords.exactlyOne,
          },
        ];
  });
}

/** Reads parsed JSON. Never throws for bad input. */
export function readLesson(data: unknown): ReadLesson {
  const parsed = parseBy<Lesson>(lessonSchema, data);
  if (!parsed.ok) return { ok: false, findings: few(parsed.findings) };
  const lesson = parsed.output;
  if (lesson.brake !== undefined && !teaching.has(lesson.brake)) {
    const known = [...teaching.keys()];
    return {
      ok: false,
      findings: [
        unknownWord('brake', lesson.brake, known, pageWords.aTeachingBrake2(known.join(', '))),
      ],
    };
  }
  if (lesson.scene !== undefined) {
    const scene = readScene(lesson.scene);
    if (!scene.ok) {
      return {
        ok: false,
        findings: few(scene.findings.map((f) => ({ ...f, path: `scene.${f.path}` }))),
      };
    }
  }
  const named = namesFindings(lesson);
  if (named.length > 0) return { ok: false, findings: few(named) };
  const keys = keysOf(lesson);
  const findings = [
    ...soundFindings(lesson),
    ...lesson.steps.flatMap((step, i) => figureFindings(step, `steps.${i}`, keys)),
  ];
  return findings.length > 0 ? { ok: false, findings: few(findings) } : { ok: true, lesson };
}

/** Reads a lesson file's text. */
export function readLessonText(text: string): ReadLesson {
  if (text.length > MOST_LESSON) {
    const allowed = pageWords.allowed(MOST_LESSON);
    return { ok: false, findings: [{ path: '(file)', found: `${text.length}`, allowed }] };
  }
  try {
    return readLesson(JSON.parse(text));
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error;
    return { ok: false, findings: [{ path: '(file)', found: error.message, allowed: 'JSON' }] };
  }
}
