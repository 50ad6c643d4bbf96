import { type Finding, tellFinding } from '../../sim/index.ts';
import { untrue } from '../lessons/holds.ts';
import { isLesson, readLessonText } from '../lessons/read.ts';
import type { Arguments } from './args.ts';
import { asJson } from './json.ts';
import type { Say } from './print.ts';

/** Is a file a lesson? One that is no JSON is not known to be. */
export function isLessonText(text: string): boolean {
  try {
    return isLesson(JSON.parse(text));
  } catch {
    return false;
  }
}

/** Tells what is wrong with a lesson: how it is written, and where it and the model disagree. Gives the exit code. */
export function checkLesson({ scene, command, flags }: Arguments, text: string, say: Say): number {
  const read = readLessonText(text);
  const findings: readonly Finding[] = read.ok ? untrue(read.lesson) : read.findings;
  if (flags.has('json')) say(asJson({ scene, command, findings }));
  else if (findings.length > 0) say(findings.map(tellFinding).join('\n'));
  else if (read.ok) {
    const { kind, steps, title } = read.lesson;
    say(`${scene}: no findings\n${kind} "${title}", ${steps.length} steps, as the model has it`);
  }
  return findings.length > 0 ? 1 : 0;
}
