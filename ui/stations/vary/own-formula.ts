import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { varyOwnFormula as words } from '../../../sim/words/en.ts';
import { number } from '../../format.ts';
import { found } from '../../pieces/search.ts';
import type { Session } from '../../session.ts';
import { hasFormulas, loadFormulas, readTypedFormula } from '../../typed-formula.ts';
import { deskOf } from '../station.ts';
import { VaryDesk } from './desk.ts';
import { LONGEST_TEXT, MOST_FORMULAS, ownKey, varyForget, varyFormula } from './part.ts';
import { sayRoom } from './room.ts';

/** As many names are offered at once; the rest is found by typing. */
const OFFERED = 6;

/** A quantity of one's own: its name and its sum of readings and sizes, judged while it is typed. */
export class OwnFormulaField extends LitElement {
  static override properties = {
    session: { attribute: false },
    rev: { type: Number },
    name: { state: true },
    text: { state: true },
  };
  declare session: Session;
  declare rev: number;
  declare name: string;
  declare text: string;

  constructor() {
    super();
    this.name = '';
    this.text = '';
  }

  static override styles = css`
    :host { display: block; padding: 10px 16px 14px; }
    h2 { margin: 0 0 6px; font-size: 20px; font-weight: 740; }
    label { display: grid; gap: 2px; font-size: 14.5px; font-weight: 560; color: var(--ink2); margin-bottom: 8px; }
    input { font: inherit; font-size: 17px; font-weight: 620; color: var(--ink); background: var(--sheet); border: 2px solid var(--ink); border-radius: 0; min-height: 46px; padding: 0 10px; width: 100%; box-sizing: border-box; min-width: 0; }
    p { margin: 6px 0; font-size: 15px; line-height: 1.35; }
    .bad { color: var(--bad); font-weight: 620; }
    ul { list-style: none; margin: 0 0 8px; padding: 0; }
    li { display: flex; gap: 8px; align-items: center; border-top: 1px solid var(--rule); min-height: 44px; font-size: 15px; }
    li span { flex: 1; min-width: 0; overflow-wrap: anywhere; }
    button { font: inherit; font-size: 15px; font-weight: 620; color: inherit; background: var(--sheet); border: 2px solid var(--ink); border-radius: 0; min-height: 44px; padding: 0 12px; cursor: pointer; }
    button:disabled { color: var(--off); border-color: var(--rule); cursor: default; }
    .names { display: flex; flex-wrap: wrap; gap: 6px; }
    .names button { border-width: 1px; font-weight: 560; text-align: left; }
    :is(button, input):focus-visible { outline: 4px solid var(--trail); outline-offset: 1px; }
  `;

  #load = (): void => {
    if (hasFormulas()) return;
    loadFormulas().then(
      () => this.requestUpdate(),
      () => this.session.say(words.whatReadsFormulasCouldNot),
    );
  };

  /** The word at the end of what is typed: names are offered for it. */
  get #word(): string {
    return /[A-Za-z][\w.]*$/.exec(this.text)?.[0] ?? '';
  }

  /** The word that names are offered for: the one that was refused, else the last. */
  #asked(desk: VaryDesk): { readonly word: string; readonly at: number } {
    const read = readTypedFormula(this.text, desk.names);
    if (read && !read.ok && /^[A-Za-z][\w.]*$/.test(read.found))
      return { word: read.found, at: read.at };
    const word = this.#word;
    return { word, at: this.text.length - word.length };
  }

  /** Names that fit a word; where none does, those of its first letters: it may be a slip. */
  #fits(desk: VaryDesk, word: string, about: ReadonlyMap<string, string>) {
    for (let long = word.length; long >= Math.min(3, word.length); long--) {
      const some = found(
        desk.names,
        (k) => `${k.name} ${about.get(k.name) ?? ''}`,
        word.slice(0, long),
      );
      if (some.length > 0) return some;
    }
    return [];
  }

  #offer(desk: VaryDesk): TemplateResult | typeof nothing {
    const { word, at } = this.#asked(desk);
    if (word === '' || desk.names.some((k) => k.name === word)) return nothing;
    const about = new Map<string, string>([
      ...desk.answers.map((a) => [a.key, a.name] as const),
      ...desk.quantities.map((q) => [q.id, `${q.name} ${q.of}`] as const),
    ]);
    const fits = this.#fits(desk, word, about);
    if (fits.length === 0) return nothing;
    return html`<div class="names" role="group" aria-label=${words.namesThatFit}>${fits
      .slice(0, OFFERED)
      .map(
        (k) =>
          html`<button @click=${() => {
            this.text = `${this.text.slice(0, at)}${k.name}${this.text.slice(at + word.length)}`;
            this.renderRoot.querySelector<HTMLInputElement>('input.text')?.focus();
          }}>${k.name} <small>${about.get(k.name) ?? ''}</small></button>`,
      )}</div>`;
  }

  #judged(desk: VaryDesk): TemplateResult | typeof nothing {
    if (this.text.trim() === '') return nothing;
    const read = readTypedFormula(this.text, desk.names);
    if (!read) return html`<p role="status">${words.itsReaderIsComing}</p>`;
    if (!read.ok)
      return html`<p class="bad" role="status">${words.atCharacterFoundAllowed(read.at + 1, read.found, read.why)}</p>`;
    const keys = read.uses.map((k) => k.key);
    const value = read.worth(desk.vary.point([], keys).values);
    const told = Number.isFinite(value) ? `${number(value, 3)} ${read.unit}` : words.nothingToTell;
    return html`<p role="status">${words.asTheBrakeIs(told)}</p>`;
  }

  #add(desk: VaryDesk): void {
    const { name, text, session } = this;
    const read = readTypedFormula(text, desk.names);
    if (!read?.ok) return;
    const called = name.trim() || text.slice(0, 40);
    const before = deskOf(VaryDesk, session).read;
    session.do(varyFormula, called, text);
    sayRoom(session, before);
    this.name = '';
    this.text = '';
  }

  override render() {
    const { session } = this;
    const desk = deskOf(VaryDesk, session);
    const { formulas } = desk.part;
    const ready = readTypedFormula(this.text, desk.names)?.ok === true;
    const full = formulas.length >= MOST_FORMULAS;
    const put = (field: 'name' | 'text') => (e: Event) => {
      this[field] = (e.target as HTMLInputElement).value;
    };
    return html`<h2>${words.ownFormula}</h2>
      ${
        formulas.length > 0
          ? html`<ul>${formulas.map(
              (f) =>
                html`<li data-formula=${ownKey(f.name)}><span><b>${f.name}</b> = ${f.text}</span><button @click=${() => {
                  this.name = f.name;
                  this.text = f.text;
                  this.#load();
                }}>${words.edit}</button><button @click=${() => session.do(varyForget, f.name)}>${words.remove}</button></li>`,
            )}</ul>`
          : nothing
      }
      ${
        full
          ? html`<p>${words.formulasAreKeptAtMost(MOST_FORMULAS)}</p>`
          : html`<label>${words.name} <input class="name" maxlength="40" .value=${this.name} @input=${put('name')}></label>
      <label>${words.readingsSizesAndUnitsSuch} <input class="text" maxlength=${LONGEST_TEXT} spellcheck="false" autocapitalize="off" .value=${this.text} @focus=${this.#load} @input=${put('text')} @keydown=${(
        e: KeyboardEvent,
      ) => {
        if (e.key === 'Enter') this.#add(desk);
      }}></label>
      ${this.#judged(desk)}${this.#offer(desk)}
      <p><button ?disabled=${!ready} @click=${() => this.#add(desk)}>${words.readIt}</button></p>`
      }`;
  }
}
customElements.define('takeup-own-formula', OwnFormulaField);
