import { describe, expect, it } from 'vitest';
import quayVan from '../../../scenes/quay-van.json';
import { readLessonText } from '../../../ui/lessons/read.ts';
import { lessonStart, runStep } from '../../../ui/lessons/run.ts';
import {
  actionsBetween,
  begunFrom,
  fileOf,
  stepFrom,
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
function taken(session: Session) {
  const start = van().moment;
  const begun = begunFrom(start, null);
  const step = {
    ...stepFrom(start, session.moment),
    ask: 'What happens to the gap?',
    choices: [
      { says: 'It stays', holds: false },
      { says: 'It is gone', holds: true },
    ],
  };
  return { ...begun, title: 'My first', steps: [step] };
}

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
    expect(actionsBetween(van().moment, session.moment)).toEqual([]);
  });

  it('says what is still to do, each with its place', () => {
    const w = taken(van());
    const empty = { ...w, title: '', steps: w.steps.map((s) => ({ ...s, ask: '' })) };
    const read = readLessonText(fileOf(empty));
    expect(!read.ok && read.findings.map((f) => f.path)).toEqual(
      expect.arrayContaining(['title', 'steps.0.ask']),
    );
    const none = {
      ...w,
      steps: w.steps.map((s) => ({
        ...s,
        choices: s.choices.map((c) => ({ ...c, holds: false })),
      })),
    };
    const judged = readLessonText(fileOf(none));
    expect(!judged.ok && judged.findings[0]?.path).toBe('steps.0.choices');
  });

  it('a draft goes through its file unchanged, and a stranger’s is never trusted', () => {
    const w = taken(van());
    expect(writtenOf(fileOf(w))).toEqual({ ...w, scene: undefined });
    expect(writtenOf('no file')).toBe(null);
    expect(writtenOf('[1, 2]')).toBe(null);
    expect(writtenOf('{"steps": {"a": 1}, "title": 7}')?.steps).toEqual([]);
    const bad = JSON.parse(fileOf(w)) as { steps: { hand: unknown[] }[] };
    bad.steps[0]?.hand.push({ do: 'explode' });
    const judged = readLessonText(fileOf(writtenOf(JSON.stringify(bad)) ?? w));
    expect(!judged.ok && judged.findings[0]?.path).toMatch(/^steps\.0\.hand/);
  });
});
