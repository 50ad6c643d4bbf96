import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { type Finding, tellFinding } from '../../../sim/index.ts';
import type { Lesson } from '../../lessons/format.ts';
import { keptLessons, readKept, shipped, shippedFile } from '../../lessons/library.ts';
import { MOST_LESSON } from '../../lessons/read.ts';
import { dropLesson, progressOf } from '../../lessons/wants.ts';
import { takenFrom, writtenOf } from '../../lessons/written.ts';
import { COMPACT, NARROW } from '../../pieces/page-sizes.ts';
import type { Session } from '../../session.ts';
import { deskOf } from '../station.ts';
import { LessonDesk } from './desk.ts';
import { placeOf } from './places.ts';
import { takeLesson } from './take.ts';
import './editor.ts';
import { labelWords, lessonsList as words } from '../../../sim/words/en.ts';
import type { LessonEditor } from './editor.ts';
import { writeOn } from './write.ts';

/** All lessons and talks, each with its idea and how far it was taken. */
export class LessonList extends LitElement {
  static override properties = {
    session: { attribute: false },
    rev: { type: Number },
    refused: { state: true },
  };
  declare session: Session;
  declare rev: number;
  /** A file that could not be read as a lesson, and why. */
  declare refused: { readonly name: string; readonly findings: readonly Finding[] } | null;

  constructor() {
    super();
    this.refused = null;
  }

  static override styles = css`
    :host { display: block; background: var(--sheet); font-size: 16.5px; line-height: 1.36; }
    :host([over]) { position: absolute; inset: 0; overflow-y: auto; z-index: 2; }
    .in { padding: 8px 34px 30px; max-width: 1120px; }
    h2 { font-size: 23px; font-weight: 780; margin: 22px 0 2px; }
    ul { list-style: none; margin: 0; padding: 0; }
    li { display: grid; grid-template-columns: 44px 1fr auto auto; gap: 2px 12px; border-top: 1px solid var(--rule); padding: 10px 0 11px; align-items: center; }
    li .write { grid-column: 4; min-height: 46px; min-width: 0; font-weight: 560; border-width: 1px; }
    i { font-style: normal; font-size: 22px; font-weight: 780; text-align: right; padding-right: 6px; grid-row: 1 / span 2; }
    b { font-size: 18px; font-weight: 700; line-height: 1.25; }
    p { margin: 0; grid-column: 2; color: var(--ink2); }
    button { font: inherit; font-weight: 620; color: inherit; background: none; border: 2px solid var(--ink); border-radius: 0; min-height: 46px; min-width: 150px; padding: 0 14px; cursor: pointer; grid-row: 1 / span 2; grid-column: 3; }
    button.on { background: var(--ink); color: var(--sheet); }
    button:focus-visible { outline: 4px solid var(--trail); outline-offset: 2px; }
    .file { position: relative; display: inline-grid; place-items: center; min-height: 46px; border: 2px solid var(--ink); padding: 0 16px; font-weight: 620; margin-top: 10px; }
    .file input { position: absolute; inset: 0; opacity: 0; cursor: pointer; }
    .file:focus-within { outline: 4px solid var(--trail); outline-offset: 2px; }
    .refused { border: 2px solid var(--ink); padding: 10px 14px; margin-top: 10px; }
    .refused ul { font-size: 15px; } .refused li { display: block; padding: 4px 0; overflow-wrap: anywhere; }
    .files { display: flex; gap: 10px; align-items: center; flex-wrap: wrap; margin-top: 8px; }
    .files button { grid-row: auto; }
    @media ${COMPACT} { .in { padding: 4px 22px 24px; } h2 { font-size: 19px; margin-top: 14px; } b { font-size: 15.5px; } p { font-size: 14.5px; } li { padding: 6px 0 7px; } }
    @media ${NARROW} { .in { padding: 4px 14px 20px; } li { grid-template-columns: 34px 1fr; } button, li .write { grid-row: auto; grid-column: 2; margin-top: 5px; } b { font-size: 17px; } p { font-size: 16px; } }
  `;

  /** A lesson's file, opened as a stranger's: read before it is kept, and told what is wrong with it. */
  async #open(input: HTMLInputElement): Promise<void> {
    const file = input.files?.[0];
    if (!file) return;
    input.value = '';
    const { name } = file;
    if (file.size > 4 * MOST_LESSON) {
      const size = {
        path: '(file)',
        found: words.bytes(file.size),
        allowed: words.atMost(MOST_LESSON),
      };
      this.#refuse(name, [size]);
      return;
    }
    const findings = takeLesson(this.session, await file.text());
    if (findings) this.#refuse(name, findings);
    else {
      this.refused = null;
      this.session.say(words.openedItStandsBelow(name));
    }
  }

  /** Says what is wrong with a file where it can be seen. */
  async #refuse(name: string, findings: readonly Finding[]): Promise<void> {
    this.refused = { name, findings };
    await this.updateComplete;
    this.renderRoot.querySelector('.refused')?.scrollIntoView({ block: 'nearest' });
  }

  #files(): TemplateResult {
    const { shelf } = this.session.moment.parts.lessons;
    const opens = (e: Event): void => {
      this.#open(e.target as HTMLInputElement);
    };
    return html`<label class="file">${words.openALessonFile}<input type="file" accept=".json,application/json" aria-label=${words.openALessonFile} @change=${opens} /></label>
      ${
        this.refused
          ? html`<div class="refused" role="alert"><b>${words.wasNotOpenedNothingElse(this.refused.name)}</b><ul>${this.refused.findings.map((f) => html`<li>${f.path.startsWith('steps.') ? html`<b>${placeOf(f.path)}:</b> ` : nothing}${tellFinding(f)}</li>`)}</ul></div>`
          : nothing
      }
      ${shelf.map((text) => {
        const read = readKept(text);
        return read.ok
          ? html`<div class="files"><span>${read.lesson.title}</span><button @click=${() => this.session.do(dropLesson, text)}>${words.takeItOff}</button></div>`
          : nothing;
      })}`;
  }

  /** A lesson of one's own is written on as it is; one that comes with the page is the beginning of one's own. */
  async #write(lesson: Lesson): Promise<void> {
    if (shipped.includes(lesson)) {
      const file = writtenOf(JSON.stringify(shippedFile(lesson)));
      if (file) writeOn(this.session, takenFrom(file));
    } else {
      const text = this.session.moment.parts.lessons.shelf.find((t) => {
        const read = readKept(t);
        return read.ok && read.lesson.name === lesson.name;
      });
      const file = text === undefined ? null : writtenOf(text);
      if (file) writeOn(this.session, file);
    }
    this.requestUpdate();
    await this.updateComplete;
    // It stands above the list: who took it is there.
    this.renderRoot.querySelector<LessonEditor>('takeup-lesson-editor')?.begun();
  }

  #one(lesson: Lesson): TemplateResult {
    const { step, answers } = progressOf(this.session.moment, lesson.name);
    const begun = answers.some((a) => a !== null) || step > 0;
    const own = !shipped.includes(lesson);
    const over = step >= lesson.steps.length;
    const { length } = lesson.steps;
    const all = lesson.kind === 'talk' ? words.moments(length) : words.steps(length);
    const far = over ? words.takenToItsEnd : begun ? words.atOf(step + 1, length) : '';
    return html`<li data-lesson=${lesson.name}><i>${lesson.number ?? nothing}</i><b>${lesson.title}</b>
      <p>${lesson.idea ?? ''} ${all}${far ? html`, <strong>${far}</strong>` : nothing}.</p>
      <button class=${begun && !over ? 'on' : ''} aria-label=${`${begun && !over ? words.goOnWith : lesson.kind === 'talk' ? words.play : words.begin}: ${lesson.title}`} @click=${() => deskOf(LessonDesk, this.session).open(lesson)}>${begun && !over ? words.goOn : lesson.kind === 'talk' ? words.play : words.begin}</button>
      <button class="write" aria-label=${`${own ? words.writeOn : words.writeFromThis}: ${lesson.title}`} @click=${() => this.#write(lesson)}>${own ? words.writeOn : words.writeFromThis}</button></li>`;
  }

  /** Who writes comes first: what is being written would lie under all lessons otherwise. */
  override render() {
    const own = keptLessons(this.session.moment);
    const talks = shipped.filter((l) => l.kind === 'talk');
    const course = shipped.filter((l) => l.kind === 'lesson');
    const group = (title: string, all: readonly Lesson[]) =>
      all.length > 0 ? html`<h2>${title}</h2><ul>${all.map((l) => this.#one(l))}</ul>` : nothing;
    return html`<div class="in"><takeup-lesson-editor .session=${this.session} .rev=${this.rev}></takeup-lesson-editor>${group(labelWords.talks, talks)}${group(labelWords.lessons, course)}${group(labelWords.yours, own)}${this.#files()}</div>`;
  }
}
customElements.define('takeup-lessons', LessonList);
