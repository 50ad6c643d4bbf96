import { html, nothing, type TemplateResult } from 'lit';
import { PRESS_BAR } from '../../session.ts';
import { deskOf, type PageView } from '../station.ts';
import type { LessonDesk } from './desk.ts';
import './keys-card.ts';
import { lessonsControls as words } from '../../../sim/words/en.ts';
import { TeacherLink } from './teacher-link.ts';

/** What can be done with the open lesson: the next thing as one large button, and what is beside it. */

/** The brake in the learner's own hand, once it was shown. */
function byHand({ session }: LessonDesk): TemplateResult {
  const hold = (): void => session.pressTo(PRESS_BAR);
  const letGo = (): void => session.release();
  return html`<div class="row two">
    <button class="btn" @pointerdown=${hold} @pointerup=${letGo} @pointerleave=${letGo} @keydown=${(
      e: KeyboardEvent,
    ) => {
      if ((e.key === 'Enter' || e.key === ' ') && !e.repeat) hold();
    }} @keyup=${letGo} @blur=${letGo}>${words.holdToPress}</button>
    <button class="btn" @click=${() => session.turn(session.turning > 0 ? -1 : 1)}>${session.turning > 0 ? words.turnBackward : words.turnForward}</button></div>`;
}

export function lessonControls({ size }: PageView, desk: LessonDesk): TemplateResult {
  const { phase } = desk;
  if (phase === 'list') return html``;
  const told = phase === 'told';
  return html`<section class="blk ctl" aria-label=${words.lesson}>
    ${told && size !== 'narrow' && desk.step?.stage === 'brake' ? byHand(desk) : nothing}
    <button class="btn p tall" data-next ?data-wait=${phase === 'ask' && !desk.mayTell} @click=${() => desk.next()}>${desk.nextSays}</button>
    <div class="row three">
      <button class="btn" ?disabled=${desk.at === 0} @click=${() => desk.back()}>${words.stepBack}</button>
      ${
        told
          ? html`<button class="btn" @click=${() => desk.show()}>${words.again}</button>`
          : html`<button class="btn" @click=${() => desk.close()}>${words.allLessons}</button>`
      }
      ${
        told
          ? html`<button class="btn" @click=${() => desk.close()}>${words.allLessons}</button>`
          : desk.talk
            ? html`<button class="btn" @click=${() => desk.go(desk.at + 1)}>${words.stepOn}</button>`
            : html`<button class="btn" ?disabled=${phase !== 'ask'} @click=${() => desk.show()}>${words.noGuess}</button>`
      }
    </div>
    ${size === 'narrow' ? nothing : html`<div class="row two"><button class="btn" @click=${() => desk.session.showOnWall(true)}>${words.onTheWallW}</button><button class="btn" @click=${() => deskOf(TeacherLink, desk.session).open()}>${words.forTheTeacherI}</button></div><takeup-lesson-keys .session=${desk.session} .rev=${desk.session.revision}></takeup-lesson-keys>`}
  </section>`;
}
