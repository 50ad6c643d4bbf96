import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import type { Scene } from '../../../sim/index.ts';
import { lessonsEditor as words } from '../../../sim/words/en.ts';
import { number } from '../../format.ts';
import { actionText } from '../../lessons/action-text.ts';
import { lessonNamed, readKept, shipped } from '../../lessons/library.ts';
import { type Ran, valuesOf } from '../../lessons/run.ts';
import { figuresOf, filled } from '../../lessons/text.ts';
import { keepLesson, takeStep } from '../../lessons/wants.ts';
import {
  asKind,
  begunFrom,
  fileOf,
  isTalk,
  isWorkedOut,
  listAt,
  MOST_CHOICES,
  MOST_PIECES,
  MOST_READINGS,
  MOST_STEPS,
  momentsOf,
  movedIn,
  type Path,
  ranOf,
  startOf,
  stepsOf,
  textAt,
  textsAt,
  untoldOf,
  valueAt,
  type Written,
  withAt,
  withTitle,
} from '../../lessons/written.ts';
import { type Choice, Picker } from '../../pieces/picker.ts';
import { sceneOf } from '../../record/derive.ts';
import { show } from '../../record/guest.ts';
import { Kept } from '../../record/kept.ts';
import { layerNames } from '../../record/view.ts';
import type { Session } from '../../session.ts';
import { partNames } from '../../stage/part-names.ts';
import { deskOf } from '../station.ts';
import { LessonDesk } from './desk.ts';
import { editorStyles } from './editor-styles.ts';
import { letterOf, toDo } from './places.ts';
import { putDraft, writtenNow } from './write.ts';

/** So much can be typed into a field; the reader judges the file. */
const LONG = 700;
const SHORT = 160;
/** Findings told at once. */
const MOST_FOUND = 8;

/** Fields of a lesson and a step that are seldom needed: long texts, and numbers, are told apart. */
const LONG_KEYS = ['caution', 'starter', 'exit', 'shortly', 'whatIf', 'next', 'tryIt'];
const NUMBERS = ['minutes', 'number', 'seconds', 'notes.minutes'];
const OF_LESSON = ['who', 'minutes', 'number', 'caution', 'starter', 'exit', 'shortly', 'whatIf'];
const OF_STEP = ['next', 'button', 'caution'];
const OF_TALK = ['caution'];
const NOTES = ['notes.behind', 'notes.point', 'notes.ask', 'notes.minutes'];
/** Fields whose texts name no values. */
const NO_FIGURES = /\.(button|caution|seconds|minutes)$/;

const pathOf = (text: string): Path =>
  text.split('.').map((k) => (/^\d+$/.test(k) ? Number(k) : k));

const partChoices: readonly Choice[] = Object.entries(partNames).map(([id, [name]]) => ({
  id,
  name,
  more: '',
}));

const layerChoices: readonly Choice[] = layerNames.map((id) => ({
  id,
  name: words.layers[id],
  more: '',
}));

/** A lesson written without code: its fields, its steps, what is still to do. */
export class LessonEditor extends LitElement {
  static override properties = {
    session: { attribute: false },
    rev: { type: Number },
    near: { state: true },
  };
  declare session: Session;
  declare rev: number;
  /** The step that the focus was in last: only there figures are worked out unasked, since a drive takes its time. */
  declare near: number;
  readonly #values = new Kept<readonly Choice[]>();

  static override styles = editorStyles;

  constructor() {
    super();
    this.near = 0;
  }

  /** From one field to the next, the focus is told inside alone. */
  override firstUpdated(): void {
    this.renderRoot.addEventListener('focusin', ({ target }) => {
      const texts = target instanceof Element && target.matches('[data-figures], takeup-picker');
      // A figure goes into the text that was typed in last, where its cursor is.
      if (target instanceof HTMLElement && target.dataset['figures'] !== undefined) {
        for (const e of this.renderRoot.querySelectorAll('[data-last]'))
          e.removeAttribute('data-last');
        target.dataset['last'] = '';
      }
      const step = texts ? target.closest<HTMLElement>('fieldset') : null;
      // The focus is seen first.
      if (step) setTimeout(() => this.#workOut(Number(step.dataset['step'])));
    });
  }

  #workOut(step: number): void {
    this.near = step;
  }

  get #written(): Written | null {
    return writtenNow(this.session);
  }

  #begin = (): void => {
    const { moment } = this.session;
    const scene = sceneOf(moment.bench.brake, moment.shelf);
    putDraft(this.session, begunFrom(moment, scene as Scene | null), false);
  };

  /** Changes the lesson as it is by now: what was drawn may be older. */
  #change(change: (w: Written) => Written, typed = false): void {
    const w = this.#written;
    if (w) putDraft(this.session, change(w), typed);
  }

  #set(path: Path, value: unknown, typed = false): void {
    this.#change((w) => withAt(w, path, value), typed);
  }

  /**
   * A field of a text at a place.
   *
   * @param needed its key stays when it is emptied: what is missing is told
   */
  #text(
    w: Written,
    at: string,
    name: string,
    { long = false, needed = false, ran = null as Ran | null, step = 0, type = 'text' } = {},
  ): TemplateResult {
    const path = pathOf(at);
    const value = textAt(w, path);
    const on = (e: Event): void => {
      const { value: text } = e.target as HTMLInputElement;
      const is = type === 'number' && Number.isFinite(Number(text)) ? Number(text) : text;
      if (at === 'title') this.#change((now) => withTitle(now, text), true);
      else this.#set(path, text === '' && !needed ? undefined : is, true);
    };
    const done = (): void => this.session.close();
    const takes = at.startsWith('steps.') && !NO_FIGURES.test(at);
    const label = step > 0 ? words.stepPlace(step, name) : name;
    const field = long
      ? html`<textarea maxlength=${LONG} aria-label=${label} data-path=${at} ?data-figures=${takes} .value=${value} @input=${on} @change=${done}></textarea>`
      : html`<input type=${type} maxlength=${SHORT} aria-label=${label} data-path=${at} ?data-figures=${takes} .value=${value} @input=${on} @change=${done} />`;
    const reads =
      ran && figuresOf(value).length > 0
        ? html`<span class="told" data-reads>${words.readsNow} ${filled(value, ran)}</span>`
        : nothing;
    return html`<label>${name}${field}</label>${reads}`;
  }

  /** Fields that are seldom needed, by the keys of the format. */
  #fields(w: Written, keys: readonly string[], step: number, ran: Ran | null): TemplateResult[] {
    const names = step > 0 ? words.step : words.lesson;
    return keys.map((key) =>
      this.#text(w, step > 0 ? `steps.${step - 1}.${key}` : key, names[key] ?? key, {
        long: LONG_KEYS.includes(key),
        type: NUMBERS.includes(key) ? 'number' : 'text',
        step,
        ran,
      }),
    );
  }

  /** Of the choices one holds: where it comes to hold, a plain one that did no longer does. */
  #hold(i: number, k: number, p: number, holds: boolean): void {
    this.#change((w) => {
      const at: Path = ['steps', i, 'choices'];
      const marked = withAt(w, [...at, k, 'says', p, 'holds'], holds);
      const whole = listAt(marked, [...at, k, 'says']).every((x) => valueAt(x, ['holds']) === true);
      if (!whole) return marked;
      return listAt(marked, at).reduce<Written>((now, c, n) => {
        const plain = n !== k && listAt(c, ['says']).length === 1;
        return plain ? withAt(now, [...at, n, 'says', 0, 'holds'], false) : now;
      }, marked);
    });
  }

  #choice(w: Written, i: number, k: number, of: number, ran: Ran | null): TemplateResult {
    const letter = letterOf(k);
    const at: Path = ['steps', i, 'choices'];
    const says: Path = [...at, k, 'says'];
    const pieces = listAt(w, says);
    const without = (path: Path, n: number) => (): void =>
      this.#change((now) =>
        withAt(
          now,
          path,
          listAt(now, path).filter((_, x) => x !== n),
        ),
      );
    const more = (): void =>
      this.#change((now) => withAt(now, says, [...listAt(now, says), { words: '', holds: true }]));
    return html`<div class="choice"><b>${letter}</b><div>
      ${pieces.map((piece, p) => {
        const name = words.stepChoice(i + 1, letter, p + 1);
        const path = [...says, p, 'words'];
        const value = textAt(piece, ['words']);
        return html`<div class="piece"><input type="text" maxlength=${SHORT} aria-label=${name} data-path=${path.join('.')} data-figures .value=${value} @input=${(
          e: Event,
        ) =>
          this.#set(
            path,
            (e.target as HTMLInputElement).value,
            true,
          )} @change=${() => this.session.close()} />
          <label><input type="checkbox" aria-label=${words.holdsNamed(name)} .checked=${valueAt(piece, ['holds']) === true} @change=${(
            e: Event,
          ) => this.#hold(i, k, p, (e.target as HTMLInputElement).checked)} />${words.holds}</label>
          ${pieces.length > 1 ? html`<button aria-label=${words.awayWith(name)} @click=${without(says, p)}>${words.away}</button>` : nothing}</div>
          ${ran && figuresOf(value).length > 0 ? html`<span class="told" data-reads>${words.readsNow} ${filled(value, ran)}</span>` : nothing}`;
      })}
      <div class="row small"><button ?disabled=${pieces.length >= MOST_PIECES} aria-label=${words.stepDoes(i + 1, words.pieceMoreOf(letter))} @click=${more}>${words.onePieceMore}</button>
      ${of > 2 ? html`<button @click=${without(at, k)}>${words.choiceAway(letter)}</button>` : nothing}</div></div></div>`;
  }

  /** What is done, action by action, each to be taken away. */
  #done(w: Written, i: number, key: 'start' | 'hand'): TemplateResult {
    const path: Path = ['steps', i, key];
    const all = listAt(w, path);
    if (all.length === 0 && key === 'start') return html``;
    return html`<p data-path=${path.join('.')} tabindex="-1">${words.step[key]}: ${all.length === 0 ? words.nothingWord : nothing}</p>
      <ul class="done" data-done=${key}>${all.map((a, n) => {
        const text = actionText(a);
        const away = (): void => this.#set(path, without(n));
        const without = (x: number) => all.filter((_, k) => k !== x);
        return html`<li><span>${text}</span><button aria-label=${words.stepDoes(i + 1, words.awayWith(text))} @click=${away}>${words.away}</button></li>`;
      })}</ul>`;
  }

  /** Every value that can be told of the lesson's brake. */
  #choices(w: Written): readonly Choice[] {
    return this.#values.of([JSON.stringify([w['brake'], w['scene'], w['state']])], () => {
      const start = startOf(w);
      if (!start) return [];
      return valuesOf(start).named.map(({ key, name, unit }) => ({ id: key, name, more: unit }));
    });
  }

  #toggle(path: Path, id: string, most: number): void {
    const w = this.#written;
    const now = w ? textsAt(w, path) : [];
    if (now.includes(id))
      this.#set(
        path,
        now.filter((k) => k !== id),
      );
    else if (now.length >= most) this.session.say(words.mostReadings(most));
    else this.#set(path, [...now, id]);
  }

  /** Puts a figure where the cursor was last in a text of the step, else at the end of what it shows. */
  #insert(i: number, figure: string): void {
    const root = this.renderRoot.querySelector<HTMLElement>(`fieldset[data-step="${i + 1}"]`);
    const last = root?.querySelector<HTMLInputElement | HTMLTextAreaElement>('[data-last]') ?? null;
    const field =
      last ??
      root?.querySelector<HTMLTextAreaElement>(
        `[data-path="steps.${i}.shows"], [data-path="steps.${i}.say"]`,
      );
    if (!field) return;
    const end = field.value.length;
    const [from, to] = last ? [field.selectionStart ?? end, field.selectionEnd ?? end] : [end, end];
    field.setRangeText(figure, from, to, 'end');
    field.dispatchEvent(new Event('input'));
    this.session.close();
    field.focus();
  }

  /** The values that are told, each with its figures to be put into a text. */
  #figures(w: Written, i: number, ran: Ran | null): TemplateResult {
    const step = valueAt(w, ['steps', i]);
    const told = textsAt(step, ['look', 'readings']).slice(0, MOST_READINGS);
    if (!ran && !isWorkedOut(w, step))
      return html`<div class="row small"><button aria-label=${words.stepDoes(i + 1, words.workOut)} @click=${() => this.#workOut(i + 1)}>${words.workOut}</button></div>`;
    if (!ran) return html`<p>${words.noFigures}</p>`;
    if (told.length === 0) return html``;
    return html`<p>${words.figures}</p><ul class="figures">${told.map((key) => {
      const name = ran.notes.get('now')?.of(key)?.name ?? key;
      const buttons = momentsOf(step).flatMap((moment) => {
        const value = ran.notes.get(moment)?.of(key);
        if (!value || !Number.isFinite(value.value)) return [];
        const figure = number(value.value, value.digits);
        const of = moment === 'now' ? '' : `${moment}.`;
        const says = `${figure}${value.unit ? ` ${value.unit}` : ''}`;
        return [
          html`<button aria-label=${words.stepDoes(i + 1, words.putIn(name, words.moment(moment), says))} @click=${() => this.#insert(i, `{${of}${key}=${figure}}`)}>${words.moment(moment)}: ${says}</button>`,
        ];
      });
      return html`<li class="small"><span>${name}</span>${buttons}</li>`;
    })}</ul>`;
  }

  /** Moves, doubles or takes away a step; the focus goes along. */
  async #steps(i: number, what: 'up' | 'down' | 'double' | 'away'): Promise<void> {
    const w = this.#written;
    if (!w) return;
    const steps = stepsOf(w);
    const to = what === 'up' ? i - 1 : i + 1;
    const next =
      what === 'away'
        ? steps.filter((_, n) => n !== i)
        : what === 'double'
          ? [...steps.slice(0, to), ...steps.slice(i)]
          : movedIn(steps, i, to);
    if (next === steps || next.length > MOST_STEPS) return;
    this.#set(['steps'], next);
    this.session.say(
      what === 'away'
        ? words.stepGone(i + 1)
        : what === 'double'
          ? words.doubled(i + 1)
          : words.stepIsNow(i + 1, to + 1),
    );
    this.requestUpdate();
    await this.updateComplete;
    const at = what === 'away' ? Math.min(i, next.length - 1) : to;
    const place = this.renderRoot.querySelector(`fieldset[data-step="${at + 1}"]`);
    const button = place?.querySelector<HTMLButtonElement>(`[data-does="${what}"]:enabled`);
    // At the list's end the way back: whoever presses on would double it otherwise.
    const other = place?.querySelector<HTMLButtonElement>(
      '[data-does="up"]:enabled, [data-does="down"]:enabled, [data-does="double"]',
    );
    (button ?? other)?.focus();
  }

  #one(w: Written, i: number): TemplateResult {
    const { length } = stepsOf(w);
    const step = valueAt(w, ['steps', i]);
    const at = `steps.${i}`;
    const ran = this.near === i + 1 || isWorkedOut(w, step) ? ranOf(w, step) : null;
    const talk = isTalk(w);
    const choices = listAt(step, ['choices']);
    const checks = listAt(step, ['checks']).length;
    const untold = untoldOf(w, i);
    const text = (key: string, needed = false): TemplateResult =>
      this.#text(w, `${at}.${key}`, words.step[key] ?? key, {
        long: true,
        needed,
        step: i + 1,
        ran,
      });
    const does = (what: 'up' | 'down' | 'double' | 'away', name: string, off = false) =>
      html`<button data-does=${what} ?disabled=${off} aria-label=${words.stepDoes(i + 1, name)} @click=${() => this.#steps(i, what)}>${name}</button>`;
    const more = { says: [{ words: '', holds: false }] };
    const picked =
      (key: 'readings' | 'names' | 'layers', most: number) => (e: CustomEvent<string>) =>
        this.#toggle(['steps', i, 'look', key], e.detail, most);
    const stage = textAt(step, ['stage']) || 'brake';
    return html`<fieldset data-step=${i + 1}><legend>${words.step2(i + 1)}${textAt(step, ['title']) ? `: ${textAt(step, ['title'])}` : ''}</legend>
      <div class="row small">${does('up', words.up, i === 0)}${does('down', words.down, i === length - 1)}${does('double', words.double, length >= MOST_STEPS)}${does('away', words.away)}</div>
      ${this.#done(w, i, 'start')}${this.#done(w, i, 'hand')}
      ${untold.length > 0 ? html`<div class="untold" data-untold><b>${words.cannotSay}</b> ${untold.join('; ')}.</div>` : nothing}
      ${
        talk
          ? html`${text('say', true)}${this.#fields(w, ['seconds'], i + 1, ran)}${text('tryIt')}`
          : html`${text('ask', true)}<div data-path=${`${at}.choices`} tabindex="-1">${choices.map((_, k) => this.#choice(w, i, k, choices.length, ran))}</div>
        <div class="row small"><button ?disabled=${choices.length >= MOST_CHOICES} aria-label=${words.stepDoes(i + 1, words.oneMoreChoice)} @click=${() => this.#set(['steps', i, 'choices'], [...choices, more])}>${words.oneMoreChoice}</button></div>
        ${text('shows')}${text('why')}`
      }
      <takeup-picker data-path=${`${at}.look.layers`} label=${words.layersShown(i + 1)} .chosen=${textsAt(step, ['look', 'layers'])} .choices=${layerChoices} @choose=${picked('layers', layerChoices.length)}></takeup-picker>
      <takeup-picker data-path=${`${at}.look.readings`} label=${words.readingsTold(i + 1, MOST_READINGS)} .chosen=${textsAt(step, ['look', 'readings'])} .choices=${this.#choices(w)} @choose=${picked('readings', MOST_READINGS)}></takeup-picker>
      ${this.#figures(w, i, ran)}
      <details><summary>${words.more}</summary>
        ${this.#fields(w, ['title', ...(talk ? OF_TALK : OF_STEP)], i + 1, ran)}
        <label>${words.drawing}<select aria-label=${words.stepPlace(i + 1, words.drawing)} @change=${(e: Event) => this.#set(['steps', i, 'stage'], (e.target as HTMLSelectElement).value)}>${Object.entries(words.drawings).map(([id, name]) => html`<option value=${id} .selected=${stage === id}>${name}</option>`)}</select></label>
        <takeup-picker data-path=${`${at}.look.names`} label=${words.partsNamed(i + 1)} .chosen=${textsAt(step, ['look', 'names'])} .choices=${partChoices} @choose=${picked('names', partChoices.length)}></takeup-picker>
        ${talk ? nothing : this.#fields(w, NOTES, i + 1, ran)}
        ${talk ? nothing : choices.map((_, k) => Object.entries(words.choice).map(([key, name]) => this.#text(w, `${at}.choices.${k}.${key}`, words.choicePlace(letterOf(k), name), { step: i + 1, ran })))}
        ${checks > 0 ? html`<p>${words.checksKept(checks)}</p>` : nothing}
      </details></fieldset>`;
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
    this.session.do(keepLesson, file, read.lesson.name, before ?? null);
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
    this.session.say(words.savedAsWhoeverGetsIt(a.download));
  }

  /** A lesson was taken to be written on: it is in sight, its title ready for typing. */
  async begun(): Promise<void> {
    this.requestUpdate();
    await this.updateComplete;
    this.scrollIntoView({ block: 'start' });
    this.renderRoot
      .querySelector<HTMLElement>('[data-path="title"]')
      ?.focus({ preventScroll: true });
  }

  /** Puts the focus on the field that a finding speaks of. */
  #goTo(path: string): void {
    const places = path.split('.');
    for (let n = places.length; n > 0; n--) {
      const at = this.renderRoot.querySelector<HTMLElement>(
        `[data-path="${CSS.escape(places.slice(0, n).join('.'))}"]`,
      );
      if (!at) continue;
      const details = at.closest('details');
      if (details) details.open = true;
      if (at instanceof Picker) at.show();
      else at.focus();
      at.scrollIntoView({ block: 'center' });
      return;
    }
  }

  override render() {
    const { session } = this;
    const w = this.#written;
    if (!w)
      return html`<h2>${words.writeALesson}</h2><p>${words.itBeginsWithTheBrake}</p>
        <div class="row"><button @click=${this.#begin}>${words.writeALesson}</button></div>`;
    const file = fileOf(w);
    const read = readKept(file);
    const kind = isTalk(w) ? 'talk' : 'lesson';
    return html`<h2>${words.yourLesson}</h2>
      ${this.#text(w, 'title', words.lesson['title'] ?? '', { needed: true })}
      ${this.#text(w, 'idea', words.lesson['idea'] ?? '', { long: true })}
      <details><summary>${words.moreOfLesson}</summary>
        <label>${words.kind}<select aria-label=${words.kind} @change=${(e: Event) => this.#change((now) => asKind(now, (e.target as HTMLSelectElement).value))}>${Object.entries(words.kinds).map(([id, name]) => html`<option value=${id} .selected=${kind === id}>${name}</option>`)}</select></label>
        ${this.#fields(w, OF_LESSON, 0, null)}</details>
      ${repeat(
        stepsOf(w),
        (_, i) => i,
        (_, i) => this.#one(w, i),
      )}
      <div class="row"><button class="p" @click=${() => session.do(show, 'apply')}>${words.toTheStageTheNext}</button></div>
      ${read.ok ? nothing : html`<div class="found"><b>${words.stillToDo}</b><ul>${read.findings.slice(0, MOST_FOUND).map((f) => html`<li><button @click=${() => this.#goTo(f.path)}>${toDo(f)}</button></li>`)}</ul></div>`}
      <div class="row"><button ?disabled=${!read.ok} @click=${() => this.#try(file)}>${words.tryIt}</button>
        <button ?disabled=${!read.ok} @click=${() => read.ok && this.#save(file, read.lesson.name)}>${words.saveTheFile}</button>
        <button @click=${() => session.do(takeStep, null)}>${words.putTheDraftAway}</button></div>`;
  }
}
customElements.define('takeup-lesson-editor', LessonEditor);
