import type { Finding } from '../../../sim/index.ts';
import { lessonsTake as words } from '../../../sim/words/en.ts';
import { lessonNamed, readKept, shipped } from '../../lessons/library.ts';
import { keepLesson } from '../../lessons/wants.ts';
import type { Session } from '../../session.ts';

/** Keeps a lesson's file on the shelf, in place of an older one of its name; or tells what is wrong with it. */
export function takeLesson(session: Session, text: string): readonly Finding[] | null {
  const read = readKept(text);
  if (!read.ok) return read.findings;
  const { moment } = session;
  const same = lessonNamed(moment, read.lesson.name);
  if (same && shipped.includes(same)) {
    const allowed = words.allowed;
    return [{ path: 'name', found: read.lesson.name, allowed }];
  }
  const before = moment.parts.lessons.shelf.find((t) => {
    const known = readKept(t);
    return known.ok && known.lesson.name === read.lesson.name;
  });
  session.do(keepLesson, text, read.lesson.name, before ?? null);
  return null;
}
