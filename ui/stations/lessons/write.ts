import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { type Scene, tellFinding } from '../../../sim/index.ts';
import type { Lesson } from '../../lessons/format.ts';
import { lessonNamed, readKept, shipped } from '../../lessons/library.ts';
import { lessonStart } from '../../lessons/run.ts';
import { keepLesson, takeStep, writeDraft } from '../../lessons/wants.ts';
import {
  actionText,
  begunFrom,
  fileOf,
  MOST_CHOICES,
  MOST_STEPS,
  stepFrom,
  type Written,
  type WrittenChoice,
  type WrittenStep,
  writtenOf,
} from '../../lessons/written.ts';
import { NARROW } from '../../pieces/page-sizes.ts';
import { sceneOf } from '../../record/derive.ts';
import { show } from '../../record/guest.ts';
import type { Session } from '../../session.ts';
import { deskOf } from '../station.ts';
import { LessonDesk } from './desk.ts';

/** A lesson written without code: what is done on the stage becomes a step, the question is typed. */

/** The lesson being written, as its draft has it; null: none is. */
export const writtenNow = ({ moment }: Session): Written | null =>
  moment.parts.lessons.draft === null ? null : writtenOf(moment.parts.lessons.draft);

const put = (session: Session, w: Written, typed: boolean): void =>
  session.do(typed ? writeDraft : takeStep, fileOf(w));

/** The record as the lesson being written begins. */
const startOf = ({ brake, scene, state }: Written) =>
  lessonStart({
    ...(brake === null ? { scene } : { brake }),
    ...(state === null ? {} : { state }),
  } as Lesson);

/** Takes what stands on the stage as the next step. */
export function recordStep(session: Session): void {
  const w = writtenNow(session);
  if (!w || w.steps.length >= MOST_STEPS) return;
  const { moment } = session;
  put(session, { ...w, steps: [...w.steps, stepFrom(startOf(w), moment)] }, false);
  session.say(`Step ${w.steps.length + 1}: what the stage shows now.`);
}

/** Beside the stage of any station, while a lesson is being written. */
export function writingBeside(session: Session): TemplateResult | typeof nothing {
  const w = writtenNow(session);
  if (!w || session.station === 'lessons') return nothing;
  return html`<section class="blk writing" aria-label="Lesson being written">
    <p><b>${w.title || 'Your lesson'}</b>, ${w.steps.length} ${w.steps.length === 1 ? 'step' : 'steps'}. Do on the stage what the next step is to show.</p>
    <div><button class="btn p" @click=${() => recordStep(session)}>Take this as step ${w.steps.length + 1}</button>
      <button class="btn" @click=${() => session.do(show, 'lessons')}>Write on</button></div></section>`;
}

export class LessonEditor extends LitElement {
  static override properties = { session: { attribute: false }, rev: { type: Number } };
  declare session: Session;
  declare rev: number;

  static override styles = css`
    :host { display: block; font-size: 16.5px; line-height: 1.35; }
    h2 { font-size: 23px; font-weight: 780; margin: 22px 0 6px; }
    fieldset { border: 2px solid var(--ink); margin: 12px 0 0; padding: 8px 14px 12px; min-width: 0; }
    legend { font-weight: 740; padding: 0 6px; }
    label { display: block; margin-top: 8px; font-size: 14.5px; color: var(--ink2); }
    input[type='text'], textarea { font: inherit; font-size: 16.5px; color: var(--ink); background: var(--sheet); border: 2px solid var(--ink); border-radius: 0; width: 100%; padding: 6px 10px; display: block; box-sizing: border-box; }
    textarea { min-height: 58px; resize: vertical; }
    .choice { display: grid; grid-template-columns: 26px minmax(0, 1fr) auto auto; gap: 10px; align-items: center; margin-top: 8px; }
    .choice label { margin: 0; white-space: nowrap; display: flex; align-items: center; gap: 6px; min-height: 40px; }
    .choice input[type='radio'] { width: 22px; height: 22px; margin: 0; accent-color: var(--ink); }
    button { font: inherit; font-weight: 620; color: inherit; background: none; border: 2px solid var(--ink); border-radius: 0; min-height: 42px; padding: 0 14px; cursor: pointer; }
    button.p { background: var(--ink); color: var(--sheet); }
    :is(button, input, textarea):focus-visible { outline: 4px solid var(--trail); outline-offset: 2px; }
    .row { display: flex; flex-wrap: wrap; gap: 10px; margin-top: 12px; }
    .done { margin: 6px 0 0; padding: 0 0 0 20px; }
    .found { border: 2px solid var(--ink); padding: 8px 14px; margin-top: 12px; font-size: 15.5px; }
    .found ul { margin: 4px 0 0; padding: 0 0 0 18px; } .found li { overflow-wrap: anywhere; }
    p { margin: 4px 0; }
    @media ${NARROW} { .choice { grid-template-columns: 26px minmax(0, 1fr); } button { min-height: 56px; } .choice label, .choice button { grid-column: 2; } }
  `;

  #begin = (): void => {
    const { moment } = this.session;
    const scene = sceneOf(moment.bench.brake, moment.shelf);
    put(this.session, begunFrom(moment, scene as Scene | null), false);
  };

  #field(name: string, value: string, set: (text: string) => void, long = false): TemplateResult {
    const on = (e: Event): void => set((e.target as HTMLInputElement).value);
    return long
      ? html`<label>${name}<textarea maxlength="700" .value=${value} @input=${on} @change=${() => this.session.close()}></textarea></label>`
      : html`<label>${name}<input type="text" maxlength="160" .value=${value} @input=${on} @change=${() => this.session.close()} /></label>`;
  }

  #choice(w: Written, i: number, c: WrittenChoice, k: number): TemplateResult {
    const { choices } = w.steps[i] as WrittenStep;
    const set = (next: readonly WrittenChoice[], typed: boolean) =>
      this.#step(w, i, { choices: next }, typed);
    const letter = 'ABCD'[k] as string;
    return html`<div class="choice"><b>${letter}</b><input type="text" maxlength="160" aria-label=${`Step ${i + 1}, choice ${letter}`} .value=${c.says} @input=${(
      e: Event,
    ) =>
      set(
        choices.map((x, n) => (n === k ? { ...x, says: (e.target as HTMLInputElement).value } : x)),
        true,
      )} />
      <label><input type="radio" name=${`holds-${i}`} .checked=${c.holds} @change=${() =>
        set(
          choices.map((x, n) => ({ ...x, holds: n === k })),
          false,
        )} />holds</label>
      ${
        choices.length > 2
          ? html`<button aria-label=${`Choice ${letter} away`} @click=${() =>
              set(
                choices.filter((_, n) => n !== k),
                false,
              )}>Away</button>`
          : nothing
      }</div>`;
  }

  #step(w: Written, i: number, change: Partial<WrittenStep>, typed: boolean): void {
    const steps = w.steps.map((s, n) => (n === i ? { ...s, ...change } : s));
    put(this.session, { ...w, steps }, typed);
  }

  #one(w: Written, step: WrittenStep, i: number): TemplateResult {
    const more = { says: '', holds: false };
    const set = (change: Partial<WrittenStep>) => this.#step(w, i, change, true);
    return html`<fieldset data-step=${i + 1}><legend>Step ${i + 1}</legend>
      <p>What is done: ${step.hand.length === 0 ? 'nothing' : nothing}</p>
      ${step.hand.length > 0 ? html`<ul class="done">${step.hand.map((a) => html`<li>${actionText(a)}</li>`)}</ul>` : nothing}
      ${this.#field('Question', step.ask, (ask) => set({ ask }), true)}
      ${step.choices.map((c, k) => this.#choice(w, i, c, k))}
      <div class="row"><button ?hidden=${step.choices.length >= MOST_CHOICES} @click=${() => this.#step(w, i, { choices: [...step.choices, more] }, false)}>One more choice</button>
        <button @click=${() => put(this.session, { ...w, steps: w.steps.filter((_, n) => n !== i) }, false)}>Step ${i + 1} away</button></div>
      ${this.#field('What it shows', step.shows, (shows) => set({ shows }), true)}
      ${this.#field('Why', step.why, (why) => set({ why }), true)}</fieldset>`;
  }

  /** Keeps it on the shelf and opens it. */
  #try(file: string): void {
    const read = readKept(file);
    if (!read.ok) return;
    const { moment } = this.session;
    const before = moment.parts.lessons.shelf.find((t) => {
      const known = readKept(t);
      return known.ok && known.lesson.name === read.lesson.name;
    });
    this.session.do(keepLesson, file, before ?? null);
    const kept = lessonNamed(this.session.moment, read.lesson.name);
    if (kept && !shipped.includes(kept)) deskOf(LessonDesk, this.session).open(kept);
  }

  #save(file: string, name: string): void {
    const url = URL.createObjectURL(new Blob([file], { type: 'application/json' }));
    const a = document.createElement('a');
    a.href = url;
    a.download = `${name}.json`;
    a.click();
    setTimeout(() => URL.revokeObjectURL(url), 1000);
    this.session.say(`Saved as ${a.download}: whoever gets it opens it here, under Lessons.`);
  }

  override render() {
    const { session } = this;
    const w = writtenNow(session);
    if (!w)
      return html`<h2>Write a lesson</h2><p>It begins with the brake on the bench as it stands. Do on the stage what a step is to show, take it, and type the question.</p>
        <div class="row"><button @click=${this.#begin}>Write a lesson</button></div>`;
    const file = fileOf(w);
    const read = readKept(file);
    return html`<h2>Your lesson</h2>
      ${this.#field('Title', w.title, (title) => put(session, { ...w, title }, true))}
      ${this.#field('Its one idea', w.idea, (idea) => put(session, { ...w, idea }, true), true)}
      ${w.steps.map((s, i) => this.#one(w, s, i))}
      <div class="row"><button class="p" @click=${() => session.do(show, 'apply')}>To the stage: the next step</button></div>
      ${read.ok ? nothing : html`<div class="found"><b>Still to do</b><ul>${read.findings.slice(0, 8).map((f) => html`<li>${tellFinding(f)}</li>`)}</ul></div>`}
      <div class="row"><button ?disabled=${!read.ok} @click=${() => this.#try(file)}>Try it</button>
        <button ?disabled=${!read.ok} @click=${() => read.ok && this.#save(file, read.lesson.name)}>Save the file</button>
        <button @click=${() => session.do(takeStep, null)}>Put the draft away</button></div>`;
  }
}
customElements.define('takeup-lesson-editor', LessonEditor);
