import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import type { Lesson } from '../../lessons/format.ts';
import { keptLessons, shipped } from '../../lessons/library.ts';
import { progressOf } from '../../lessons/wants.ts';
import { COMPACT, NARROW } from '../../pieces/page-sizes.ts';
import type { Session } from '../../session.ts';
import { deskOf } from '../station.ts';
import { LessonDesk } from './desk.ts';

/** All lessons and talks, each with its idea and how far it was taken. */
export class LessonList extends LitElement {
  static override properties = { session: { attribute: false }, rev: { type: Number } };
  declare session: Session;
  declare rev: number;

  static override styles = css`
    :host { display: block; background: var(--sheet); font-size: 16.5px; line-height: 1.36; }
    :host([over]) { position: absolute; inset: 0; overflow-y: auto; z-index: 2; }
    .in { padding: 8px 34px 30px; max-width: 1120px; }
    h2 { font-size: 23px; font-weight: 780; margin: 22px 0 2px; }
    ul { list-style: none; margin: 0; padding: 0; }
    li { display: grid; grid-template-columns: 44px 1fr auto; gap: 2px 12px; border-top: 1px solid var(--rule); padding: 10px 0 11px; align-items: center; }
    i { font-style: normal; font-size: 22px; font-weight: 780; text-align: right; padding-right: 6px; grid-row: 1 / span 2; }
    b { font-size: 18px; font-weight: 700; line-height: 1.25; }
    p { margin: 0; grid-column: 2; color: var(--ink2); }
    button { font: inherit; font-weight: 620; color: inherit; background: none; border: 2px solid var(--ink); border-radius: 0; min-height: 46px; min-width: 150px; padding: 0 14px; cursor: pointer; grid-row: 1 / span 2; grid-column: 3; }
    button.on { background: var(--ink); color: var(--sheet); }
    button:focus-visible { outline: 4px solid var(--trail); outline-offset: 2px; }
    @media ${COMPACT} { .in { padding: 4px 22px 24px; } h2 { font-size: 19px; margin-top: 14px; } b { font-size: 15.5px; } p { font-size: 14.5px; } li { padding: 6px 0 7px; } }
    @media ${NARROW} { .in { padding: 4px 14px 20px; } li { grid-template-columns: 34px 1fr; } button { grid-row: auto; grid-column: 2; margin-top: 5px; } b { font-size: 17px; } p { font-size: 16px; } }
  `;

  #one(lesson: Lesson): TemplateResult {
    const { step, answers } = progressOf(this.session.moment, lesson.name);
    const begun = answers.some((a) => a !== null) || step > 0;
    const over = step >= lesson.steps.length;
    const what = lesson.kind === 'talk' ? 'moments' : 'steps';
    const far = over ? 'taken to its end' : begun ? `at ${step + 1} of ${lesson.steps.length}` : '';
    return html`<li data-lesson=${lesson.name}><i>${lesson.number ?? nothing}</i><b>${lesson.title}</b>
      <p>${lesson.idea ?? ''} ${lesson.steps.length} ${what}${far ? html`, <strong>${far}</strong>` : nothing}.</p>
      <button class=${begun && !over ? 'on' : ''} aria-label=${`${begun && !over ? 'Go on with' : 'Begin'}: ${lesson.title}`} @click=${() => deskOf(LessonDesk, this.session).open(lesson)}>${begun && !over ? 'Go on' : lesson.kind === 'talk' ? 'Play' : 'Begin'}</button></li>`;
  }

  override render() {
    const own = keptLessons(this.session.moment);
    const talks = shipped.filter((l) => l.kind === 'talk');
    const course = shipped.filter((l) => l.kind === 'lesson');
    const group = (title: string, all: readonly Lesson[]) =>
      all.length > 0 ? html`<h2>${title}</h2><ul>${all.map((l) => this.#one(l))}</ul>` : nothing;
    return html`<div class="in">${group('Talks', talks)}${group('Lessons', course)}${group('Yours', own)}</div>`;
  }
}
customElements.define('takeup-lessons', LessonList);
