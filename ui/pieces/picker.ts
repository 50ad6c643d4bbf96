import { css, html, LitElement, nothing } from 'lit';
import { piecesPicker as words } from '../../sim/words/en.ts';
import { found } from './search.ts';

/** One thing that can be chosen. */
export interface Choice {
  readonly id: string;
  readonly name: string;
  /** Whose it is, its unit: quieter beside the name. */
  readonly more: string;
}

/** As many are shown at once; the rest is found by typing. */
const SHOWN = 60;

/** A long list that is found in by typing: a button with what is chosen, and under it a field and the list. */
export class Picker extends LitElement {
  static override properties = {
    label: { type: String },
    chosen: { attribute: false },
    choices: { attribute: false },
    open: { state: true },
    typed: { state: true },
  };
  declare label: string;
  /** Ids that are chosen. */
  declare chosen: readonly string[];
  declare choices: readonly Choice[];
  declare open: boolean;
  declare typed: string;

  constructor() {
    super();
    this.open = false;
    this.typed = '';
  }

  static override styles = css`
    :host { display: block; min-width: 0; }
    .lab { font-size: 14.5px; color: var(--ink2); font-weight: 560; }
    button { font: inherit; color: inherit; background: none; border: 0; padding: 0; cursor: pointer; text-align: left; }
    .now { width: 100%; border: 2px solid var(--ink); min-height: 46px; padding: 4px 12px; display: flex; align-items: center; gap: 8px; font-size: 17px; font-weight: 680; line-height: 1.15; }
    .now span { flex: 1; min-width: 0; }
    .now small { font-size: 14px; font-weight: 540; color: var(--ink2); }
    .now i { font-style: normal; }
    .drop { border: 2px solid var(--ink); border-top: 0; background: var(--sheet); }
    input { font: inherit; color: inherit; background: var(--sheet); width: 100%; box-sizing: border-box; border: 0; border-bottom: 1px solid var(--rule); min-height: 44px; padding: 0 12px; font-size: 17px; }
    ul { list-style: none; margin: 0; padding: 0; max-height: 252px; overflow-y: auto; }
    li button { width: 100%; min-height: 44px; padding: 4px 12px; font-size: 16px; font-weight: 600; border-top: 1px solid var(--faint); line-height: 1.2; }
    li button small { display: block; font-size: 14px; font-weight: 520; color: var(--ink2); }
    li button[aria-pressed='true'] { box-shadow: inset 6px 0 0 var(--ink); background: color-mix(in srgb, var(--ink) 8%, var(--sheet)); }
    p { margin: 0; padding: 10px 12px; font-size: 15px; }
    :is(button, input):focus-visible { outline: 4px solid var(--trail); outline-offset: -4px; }
  `;

  /** Opens the list, its field ready for typing. */
  show(): void {
    if (!this.open) this.#toggle();
  }

  #toggle = async (): Promise<void> => {
    this.open = !this.open;
    this.typed = '';
    if (!this.open) return;
    await this.updateComplete;
    // What is kept in reach below would cover the list.
    this.scrollIntoView({ block: 'start' });
    this.renderRoot.querySelector('input')?.focus({ preventScroll: true });
  };

  /** Arrows go from the field into the list and through it, Enter in the field takes the first of it, Escape closes. */
  #key = (e: KeyboardEvent): void => {
    if (e.ctrlKey || e.metaKey || e.altKey) return;
    // A key means the list of what has been typed by now, drawn or not.
    if (this.isUpdatePending) this.performUpdate();
    const field = this.renderRoot.querySelector('input');
    const all = [...this.renderRoot.querySelectorAll<HTMLElement>('li button')];
    const now = all.indexOf(e.target as HTMLElement);
    const inField = e.target === field;
    if (e.key === 'Escape' && this.open) this.#close();
    else if (e.key === 'ArrowDown' && !this.open) this.#toggle();
    else if (e.key === 'ArrowDown') all[Math.min(all.length - 1, now + 1)]?.focus();
    else if (e.key === 'ArrowUp' && now === 0) field?.focus();
    else if (e.key === 'ArrowUp' && now > 0) all[now - 1]?.focus();
    else if (e.key === 'Home' && now >= 0) all[0]?.focus();
    else if (e.key === 'End' && now >= 0) all.at(-1)?.focus();
    else if (e.key === 'Enter' && inField) all[0]?.click();
    // What is typed on the list, or before the field is drawn, goes on in the field: it is no key of the page.
    else if (this.open && !inField && e.key.length === 1 && (e.key !== ' ' || this.typed !== '')) {
      this.typed += e.key;
      field?.focus();
    } else return;
    e.preventDefault();
    e.stopPropagation();
  };

  #close(): void {
    this.open = false;
    this.updateComplete.then(() => this.renderRoot.querySelector<HTMLElement>('.now')?.focus());
  }

  #choose(id: string): void {
    this.dispatchEvent(new CustomEvent<string>('choose', { detail: id }));
    this.#close();
  }

  override render() {
    const chosen = this.choices.filter((c) => this.chosen.includes(c.id));
    const list = found(this.choices, (c) => `${c.name} ${c.more} ${c.id}`, this.typed);
    const told = chosen.map((c) => c.name).join(' · ') || words.none;
    return html`<div class="lab" id="lab">${this.label}</div>
      <button class="now" aria-expanded=${this.open} aria-labelledby="lab now" @click=${this.#toggle} @keydown=${this.#key}><span id="now">${told}${chosen.length === 1 && chosen[0]?.more ? html` <small>${chosen[0].more}</small>` : nothing}</span><i aria-hidden="true">${this.open ? '▴' : '▾'}</i></button>
      ${
        this.open
          ? html`<div class="drop" @keydown=${this.#key}><input aria-label=${words.find(this.label)} placeholder=${words.typeToFind} .value=${this.typed} @input=${(
              e: Event,
            ) => {
              this.typed = (e.target as HTMLInputElement).value;
            }}>
            ${list.length === 0 ? html`<p role="status">${words.nothingOfThatNameTry}</p>` : html`<ul>${list.slice(0, SHOWN).map((c) => html`<li><button aria-pressed=${this.chosen.includes(c.id)} @click=${() => this.#choose(c.id)}>${c.name}<small>${c.more}</small></button></li>`)}</ul>`}</div>`
          : nothing
      }`;
  }
}
if (!customElements.get('takeup-picker')) customElements.define('takeup-picker', Picker);
