import { css, html, LitElement, nothing } from 'lit';
import { awayDialog as words } from '../../sim/words/en.ts';
import { notLoaded, wanted } from '../part.ts';
import { dialogStyles } from '../pieces/dialog-styles.ts';
import { openModal, stillOpen } from '../pieces/modal.ts';
import { NARROW } from '../pieces/page-sizes.ts';
import { forAll, keep, recall } from '../record/store.ts';
import type { Stand, Way, WayElement } from './stand.ts';
import { wayOf, ways } from './ways.ts';

/** What was last taken, by its id: offered first the next time. */
const LAST = 'away-last';

/** Everything that can be taken from the bench: a list at the side, and beside it the one that is open. */
export class TakeAway extends LitElement {
  static override properties = {
    stand: { attribute: false },
    way: { state: true },
    trouble: { state: true },
  };
  /** Null while nothing is open: what was handed over is let go. */
  declare stand: Stand | null;
  declare way: Way;
  declare trouble: string;
  #shown: WayElement | null = null;

  constructor() {
    super();
    this.stand = null;
    this.way = wayOf(recall(forAll, LAST).text ?? '');
    this.trouble = '';
  }

  static override styles = [
    dialogStyles,
    css`
      :host { --wide: 1320px; }
      dialog { height: min(940px, calc(100vh - 24px)); }
      .both { display: grid; grid-template-columns: 268px minmax(0, 1fr); min-height: calc(100% - 62px); }
      nav { border-right: 1px solid var(--rule); display: flex; flex-direction: column; }
      nav button { display: block; width: 100%; text-align: left; border: 0; border-bottom: 1px solid var(--rule); padding: 9px 14px 10px 18px; font-weight: 500; font-size: 14.5px; line-height: 1.3; color: var(--ink2); }
      nav b { display: flex; justify-content: space-between; font-size: 18px; font-weight: 680; color: var(--ink); }
      nav i { font-style: normal; font-size: 14px; font-weight: 600; border: 1px solid currentcolor; padding: 0 6px; align-self: center; }
      nav .on { box-shadow: inset 6px 0 0 var(--ink); background: var(--panel); }
      nav button:focus-visible { outline-offset: -4px; }
      section { min-width: 0; }
      .where { padding: 12px 18px; border-bottom: 1px solid var(--rule); }
      .where select { width: 100%; }
      .note { margin: 0; padding: 16px 18px; }
      @media ${NARROW} { .both { display: block; } dialog { height: auto; min-height: 60vh; } }
    `,
  ];

  /** Shows it, with what stands on the bench now, on the way of that id or the one that was last taken. */
  async open(stand: Stand, way: string = this.way.id): Promise<void> {
    this.stand = stand;
    await this.updateComplete;
    openModal(this.renderRoot.querySelector('dialog'));
    await this.#choose(wayOf(way));
  }

  #close(): void {
    this.renderRoot.querySelector('dialog')?.close();
  }

  async #choose(way: Way): Promise<void> {
    this.way = way;
    this.trouble = '';
    keep(forAll, LAST, way.id);
    this.#shown = null;
    this.requestUpdate();
    try {
      await way.load();
    } catch {
      this.trouble = notLoaded();
      return;
    }
    // Another may have been chosen, or the dialog closed, meanwhile.
    if (this.way !== way || !this.stand) return;
    const shown = document.createElement(way.element) as WayElement;
    shown.stand = this.stand;
    this.#shown = shown;
    this.requestUpdate();
  }

  /** Keys of the dialog stay in it: the page behind has others. The key that opened it closes it. */
  #key = (e: KeyboardEvent): void => {
    if (!stillOpen(e)) return;
    e.stopPropagation();
    const target = e.composedPath()[0] as HTMLElement;
    if (
      e.ctrlKey ||
      e.metaKey ||
      e.altKey ||
      target.closest('input:not([type="checkbox"], [type="radio"]), textarea, select')
    )
      return;
    if (e.key === 'e') this.#close();
    else if (e.key === 'E') this.#saveNow();
    else {
      const way = ways.find((w) => w.key === e.key.toUpperCase());
      if (!way || way === this.way) return;
      this.#choose(way);
    }
    e.preventDefault();
  };

  /** A figure with the last choices, whatever is open here. */
  async #saveNow(): Promise<void> {
    const { stand } = this;
    if (!stand) return;
    const part = await wanted(stand.home, import('./figure/make.ts'));
    const said = await part?.saveFigure(stand);
    if (said) stand.session.say(said);
  }

  #list() {
    const { way } = this;
    if (this.stand?.size === 'narrow')
      return html`<div class="where"><select aria-label=${words.whatToTake} @change=${(e: Event) => this.#choose(wayOf((e.target as HTMLSelectElement).value))}>${ways.map((w) => html`<option value=${w.id} ?selected=${w === way}>${w.name}</option>`)}</select></div>`;
    return html`<nav aria-label=${words.whatToTake}>${ways.map((w) => html`<button class=${w === way ? 'on' : ''} aria-current=${w === way ? 'true' : nothing} @click=${() => this.#choose(w)}><b>${w.name}<i>${w.key}</i></b>${w.tells}</button>`)}</nav>`;
  }

  override render() {
    const narrow = this.stand?.size === 'narrow';
    return html`<dialog aria-label=${words.takeAway} @keydown=${this.#key} @leave=${() => this.#close()} @close=${() => {
      this.stand = null;
      this.#shown = null;
    }} @click=${(e: Event) => {
      if (e.target === e.currentTarget) this.#close();
    }}>
      <header><h2>${words.takeAway}</h2><button @click=${() => this.#close()}>${words.done}</button></header>
      ${this.stand ? html`<div class="both">${this.#list()}<section aria-label=${this.way.name}>${narrow ? html`<p class="note">${this.way.tells}</p>` : nothing}${this.trouble ? html`<p class="note" role="status">${this.trouble}</p>` : (this.#shown ?? nothing)}</section></div>` : nothing}
    </dialog>`;
  }
}
customElements.define('takeup-away', TakeAway);
