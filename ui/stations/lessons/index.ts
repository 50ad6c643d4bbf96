import { html, nothing, type TemplateResult } from 'lit';
import type { Session } from '../../session.ts';
import type { NumberedName } from '../../stage/layers/names.ts';
import { drumOff } from '../drum-off/index.ts';
import { park } from '../park/index.ts';
import { deskOf, type PageView, type Station } from '../station.ts';
import { lessonControls } from './controls.ts';
import { LessonDesk } from './desk.ts';
import { keysTold, lessonKey, listKeysTold } from './keys.ts';
import './list.ts';
import { isAsked, predictions } from './on-paper.ts';
import { TeacherLink } from './teacher-link.ts';
import './panel.ts';
import { lessons as texts } from '../../../sim/words/en.ts';

/** Lessons: a question, a guess, what happens, why. The page keeps the answer to itself until somebody guessed. */

/** The station whose drawing the step shows; null: the brake as it is. */
function drawnBy(session: Session): Station | null {
  const { step } = deskOf(LessonDesk, session);
  if (step?.stage === 'drum') return drumOff;
  return step?.stage === 'park' ? park : null;
}

/** @param wall what it has on the wall: parts that stand as numbers on the drawing, and what turns to the keys */
const panel = (
  { session }: PageView,
  wall: { readonly names: readonly NumberedName[]; turnKeys(): void } | null,
): TemplateResult =>
  html`<takeup-lesson ?wall=${wall !== null} .names=${wall?.names ?? []} .turnKeys=${wall?.turnKeys} .session=${session} .rev=${session.revision}></takeup-lesson>`;
const wallList = ({ session }: PageView, turnKeys: () => void): TemplateResult =>
  html`<takeup-wall-lessons .turnKeys=${turnKeys} .session=${session} .rev=${session.revision}></takeup-wall-lessons>`;
const list = ({ session, size }: PageView): TemplateResult =>
  html`<takeup-lessons ?over=${size !== 'narrow'} .session=${session} .rev=${session.revision}></takeup-lessons>`;

function side(page: PageView): TemplateResult {
  const desk = deskOf(LessonDesk, page.session);
  // A window of the teacher's that is open goes on after a reload.
  deskOf(TeacherLink, page.session);
  if (desk.phase !== 'list') return panel(page, null);
  return html`<section class="blk h"><h1>${texts.lessons}</h1><p>${texts.aQuestionAGuessThen}</p></section>
    ${page.size === 'narrow' ? list(page) : nothing}`;
}

export const lessonsStation: Station = {
  id: 'lessons',
  paper: ({ session }) => {
    const { lesson } = deskOf(LessonDesk, session);
    return lesson && isAsked(lesson) ? predictions(session, lesson) : [];
  },
  namesOnly: true,
  side,
  controls: (page) => lessonControls(page, deskOf(LessonDesk, page.session)),
  over: (page) => {
    const desk = deskOf(LessonDesk, page.session);
    if (desk.phase !== 'list' || page.size === 'narrow') return html``;
    return list(page);
  },
  covers: (session) => deskOf(LessonDesk, session).phase !== 'list',
  key: lessonKey,
  // The drum's own drawing has its words for the shoes.
  rolesNow: (session) => {
    const desk = deskOf(LessonDesk, session);
    return desk.covered || desk.step?.stage === 'drum' ? 'none' : undefined;
  },
  caption: (session) => {
    const desk = deskOf(LessonDesk, session);
    return desk.covered ? '' : (drawnBy(session)?.caption?.(session) ?? '');
  },
  shown: (session) => drawnBy(session)?.shown?.(session) ?? null,
  without: (session) => drawnBy(session)?.without?.(session) ?? [],
  extra: (session, input) => {
    const nothingMore = { shapes: [], labels: [] };
    if (deskOf(LessonDesk, session).covered) return nothingMore;
    return drawnBy(session)?.extra?.(session, input) ?? nothingMore;
  },
  wallPage: (page, wall) => {
    if (deskOf(LessonDesk, page.session).phase === 'list')
      return { side: wallList(page, wall.turnKeys), keys: listKeysTold };
    return { side: panel(page, wall), keys: keysTold };
  },
};
