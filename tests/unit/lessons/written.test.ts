import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import quayVan from '../../../scenes/quay-van.json';
import { readLessonText } from '../../../ui/lessons/read.ts';
import { lessonStart, runStep } from '../../../ui/lessons/run.ts';
import {
  begunFrom,
  draftOf,
  fileOf,
  listAt,
  movedIn,
  stepFrom,
  stepsOf,
  takenFrom,
  textAt,
  type Written,
  withAt,
  withTitle,
  writtenOf,
} from '../../../ui/lessons/written.ts';
import { pressTo, putStanding, putState } from '../../../ui/record/bench.ts';
import { begin } from '../../../ui/record/history.ts';
import { plainMoment } from '../../../ui/record/start.ts';
import { turn } from '../../../ui/record/view.ts';
import { Session } from '../../../ui/session.ts';

const van = () =>
  new Session(begin(plainMoment('apply', { kind: 'scene', name: quayVan.name })), true);

/** A lesson of one step, taken from what stands on the stage. */
function taken(session: Session): Written {
  const begun = begunFrom(van().moment, null);
  const step = {
    ...(stepFrom(begun, session.moment) as Written),
    ask: 'What happens to the gap?',
    choices: [
      { says: [{ words: 'It stays', holds: false }] },
      { says: [{ words: 'It is gone', holds: true }] },
    ],
  };
  return { ...withTitle(begun, 'My first'), steps: [step] };
}

const folder = new URL('../../../scenes/lessons/', import.meta.url);
const shipped = readdirSync(folder)
  .filter((f) => f.endsWith('.json'))
  .map((f) => [f, readFileSync(new URL(f, folder), 'utf8')] as const);

describe('a lesson written on the page', () => {
  it('does again what was done on the stage', () => {
    const session = van();
    session.do(putStanding, 'Worn-in');
    session.do(putState, {
      ...session.state,
      leverOffStop: 2,
      condition: { ...session.state.condition, adjusterSeized: true, springFactor: 0.5 },
    });
    session.do(turn, -1);
    session.do(pressTo, 30);
    const read = readLessonText(fileOf(taken(session)));
    if (!read.ok) throw new Error(JSON.stringify(read.findings));
    const [step] = read.lesson.steps;
    if (!step) throw new Error('no step');
    const { end } = runStep(read.lesson, step);
    expect(end.bench.state.tooth).toBe(session.state.tooth);
    expect(end.bench.state.wear.front).toEqual(session.state.wear.front);
    expect(end.bench.state.leverOffStop).toBe(2);
    expect(end.bench.state.condition.adjusterSeized).toBe(true);
    expect(end.bench.state.condition.springFactor).toBe(0.5);
    expect([end.turning, end.pedal]).toEqual([-1, 30]);
    // It begins with the bench as it stood.
    expect(lessonStart(read.lesson).bench.state.tooth).toBe(0);
  });

  it('what was tried and taken back leaves no trace', () => {
    const session = van();
    session.do(turn, -1);
    session.do(turn, 1);
    const w = begunFrom(van().moment, null);
    expect(stepFrom(w, session.moment)?.['hand']).toEqual([]);
  });

  it('says what is still to do, each with its place', () => {
    const w = taken(van());
    const empty = withAt(withAt(w, ['title'], ''), ['steps', 0, 'ask'], '');
    const read = readLessonText(fileOf(empty));
    expect(!read.ok && read.findings.map((f) => f.path)).toEqual(
      expect.arrayContaining(['title', 'steps.0.ask']),
    );
    const none = withAt(w, ['steps', 0, 'choices', 1, 'says', 0, 'holds'], false);
    const judged = readLessonText(fileOf(none));
    expect(!judged.ok && judged.findings[0]?.path).toBe('steps.0.choices');
  });

  it('a draft goes through its text unchanged, and a stranger’s is never trusted', () => {
    const w = taken(van());
    expect(writtenOf(draftOf(w))).toEqual(JSON.parse(JSON.stringify(w)));
    expect(writtenOf('no file')).toBe(null);
    expect(writtenOf('[1, 2]')).toBe(null);
    const odd = writtenOf('{"steps": {"a": 1}, "title": [7]}') as Written;
    expect([stepsOf(odd), textAt(odd, ['title'])]).toEqual([[], '']);
    const odder = writtenOf('{"steps": [null, 7, {"choices": "x", "look": 3}]}') as Written;
    expect(stepFrom(odder, van().moment)).not.toBe(undefined);
    expect(listAt(odder, ['steps', 2, 'choices'])).toEqual([]);
    expect(stepsOf(withAt(odder, ['steps', 2, 'look', 'readings'], ['torque']))[2]).toEqual({
      choices: 'x',
      look: { readings: ['torque'] },
    });
    const bad = JSON.parse(fileOf(w)) as { steps: { hand: unknown[] }[] };
    bad.steps[0]?.hand.push({ do: 'explode' });
    const judged = readLessonText(fileOf(writtenOf(JSON.stringify(bad)) ?? w));
    expect(!judged.ok && judged.findings[0]?.path).toMatch(/^steps\.0\.hand/);
  });
});

describe('a lesson opened and written on', () => {
  it('there are lessons to open', () => expect(shipped.length).toBeGreaterThanOrEqual(15));

  it.each(shipped)(
    '%s: nothing of it is lost, and only what is edited is another',
    (_name, text) => {
      const file = JSON.parse(text) as { steps: Record<string, unknown>[] } & Record<
        string,
        unknown
      >;
      const w = writtenOf(text) as Written;
      // In the same order too: texts of files are compared by people.
      const same = (a: unknown, b: unknown) => expect(JSON.stringify(a)).toBe(JSON.stringify(b));
      same(JSON.parse(fileOf(w)), file);
      same(JSON.parse(fileOf(writtenOf(draftOf(w)) as Written)), file);
      // A word typed and taken back, at a place that was there and at one that was not.
      const last = file.steps.length - 1;
      for (const path of [
        ['idea'],
        ['who'],
        ['steps', last, 'title'],
        ['steps', last, 'notes', 'point'],
        ['steps', last, 'caution'],
      ]) {
        const before = textAt(w, path);
        const typed = withAt(w, path, `${before} more`);
        expect(textAt(typed, path)).toBe(`${before} more`);
        same(withAt(typed, path, before || undefined), file);
      }
      const edited = {
        ...file,
        steps: file.steps.map((s, i) => (i === 0 ? { ...s, title: 'X' } : s)),
      };
      same(JSON.parse(fileOf(withAt(w, ['steps', 0, 'title'], 'X'))), edited);
      // Its own name stays when its title is another.
      same(withTitle(w, 'Another'), { ...file, title: 'Another' });
      const moved = movedIn(movedIn(stepsOf(w), 0, last), last, 0);
      same(withAt(w, ['steps'], moved), file);
    },
  );

  it.each(shipped)('%s: begun from, it is one’s own under another name', (_name, text) => {
    const own = takenFrom(writtenOf(text) as Written);
    const read = readLessonText(fileOf(own));
    if (!read.ok) throw new Error(JSON.stringify(read.findings));
    expect(read.lesson.name).toMatch(/^own-/);
    const { name: _n, number: _p, ...file } = JSON.parse(text) as Record<string, unknown>;
    const { name: _o, ...left } = JSON.parse(fileOf(own)) as Record<string, unknown>;
    expect(left).toEqual(file);
  });
});
