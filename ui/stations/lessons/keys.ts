import { lessonsKeys as words } from '../../../sim/words/en.ts';
import { blank } from '../../lessons/wants.ts';
import type { Session } from '../../session.ts';
import { deskOf, type KeyRows } from '../station.ts';
import { LessonDesk } from './desk.ts';
import { TeacherLink } from './teacher-link.ts';
import { type WallLessons, wallListKey } from './wall-list.ts';

/**
 * Keys of a lesson, for a keyboard and for a presenter's remote, which has four: Page Up and Page Down,
 * a full stop, and F5. Those of one letter can be switched off.
 */

/** What each key does, as it stands in the list of keys. */
export const keysTold: KeyRows = [
  ['A, B, C', words.chooseAnAnswerWithShift],
  [words.pageDownSpace, words.theNextThingShowIt],
  [words.pageUp, words.whileAQuestionIsOpen],
  ['F5', words.oneStepBack],
  ['.', words.blankTheWallAndShow],
  [words.of1To9, words.onTheWallThatStep],
  ['K', words.showItAgain],
  ['W', words.wallAndBackToThe],
  ['Q', words.onTheWallThisMoment],
  ['F', words.fullScreen],
  ['I', words.windowForTheTeacher],
  ['L', words.allLessons],
  ['Esc', words.toTheDeskThenToAll],
  ['?', words.theseKeys],
];

/** The same in the list of lessons on the wall. */
export const listKeysTold: KeyRows = [
  [words.pageDownSpace, words.beginTheMarked],
  [words.pageUp, words.markTheNext],
  [words.of1To9, words.thatLesson],
  ['.', words.blankTheWallAndShow],
  ['Q', words.onTheWallThisMoment],
  ['F', words.fullScreen],
  ['Esc', words.desk],
  ['?', words.theseKeys],
];

const LETTERS = 'abcd';

/** Does a field or a list keep its keys? A tick keeps none but the space bar. */
const kept = (target: Element): boolean =>
  target.closest(
    'input:not([type="checkbox"]), textarea, select, dialog[open], [contenteditable]',
  ) !== null;

/** A press of a remote's keys, which work wherever the focus is. */
function remote(desk: LessonDesk, key: string): boolean {
  if (key === 'PageDown') desk.next();
  else if (key === 'PageUp') {
    if (desk.phase === 'ask' && !desk.talk) desk.chooseNext();
    else desk.back();
  } else if (key === 'F5') desk.back();
  else return false;
  return true;
}

/** A key while the wall shows the lessons that there are. */
function listKey(session: Session, e: KeyboardEvent): boolean {
  const app = document.querySelector('takeup-app')?.shadowRoot;
  const list = app?.querySelector<WallLessons>('takeup-wall-lessons');
  const { keys, blank: dark } = session.moment.parts.lessons;
  if (list && wallListKey(list, e, keys)) return true;
  if (e.key === '?') return false;
  if (!keys) return e.key.length === 1 && e.key !== ' ';
  if (e.key !== '.') return false;
  session.do(blank, !dark);
  return true;
}

/** Opens or closes the list of keys where it stands on the desk; the wall has a card of its own. */
function toggleKeys(target: Element): boolean {
  const root = target.getRootNode();
  const app = document.querySelector('takeup-app')?.shadowRoot ?? root;
  const card = (app as ParentNode).querySelector<HTMLElement & { toggle(): void }>(
    'takeup-lesson-keys',
  );
  card?.toggle();
  return card !== null;
}

function letter(desk: LessonDesk, e: KeyboardEvent): boolean {
  const { session } = desk;
  const n = LETTERS.indexOf(e.key.toLowerCase());
  if (n >= 0 && e.key.length === 1 && (desk.step?.choices?.length ?? 0) > n) {
    if (e.shiftKey) desk.count(n, 1);
    else desk.choose(n);
  } else if (e.key === '.' && session.wall) session.do(blank, !session.moment.parts.lessons.blank);
  else if (e.key === 'i') deskOf(TeacherLink, session).open();
  else if (e.key === 'k' && (desk.phase === 'told' || desk.phase === 'showing')) desk.show();
  else if (e.key === 'l') desk.close();
  else if (session.wall && /^[1-9]$/.test(e.key)) desk.go(Number(e.key) - 1);
  else return false;
  return true;
}

/**
 * A key while a lesson is open.
 *
 * @returns the lesson took it
 */
export function lessonKey(session: Session, e: KeyboardEvent, target: Element): boolean {
  const desk = deskOf(LessonDesk, session);
  if (kept(target)) return false;
  if (!desk.lesson) return session.wall && listKey(session, e);
  if (remote(desk, e.key)) return true;
  const onStage = target.closest('[role="application"]') !== null;
  if (e.key === ' ' && !target.closest('button, input, summary, [role="button"]')) desk.next();
  else if (e.key === 'ArrowRight' && !onStage) desk.next();
  else if (e.key === 'ArrowLeft' && !onStage) remote(desk, 'PageUp');
  else if (e.key === 'Escape' && !session.wall) desk.close();
  else if (e.key === '?') return toggleKeys(target);
  // Switched off, a letter does nothing: not what it would do on another page either.
  else if (!session.moment.parts.lessons.keys) return e.key.length === 1;
  else return letter(desk, e);
  return true;
}
