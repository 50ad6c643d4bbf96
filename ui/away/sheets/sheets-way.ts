import { css, html, LitElement, nothing } from 'lit';
import { awaySheetsSheetsWay as words } from '../../../sim/words/en.ts';
import { printPages } from '../../pieces/paper-sheet.ts';
import { type PaperSize, paperSizes } from '../../pieces/papers.ts';
import { loadReader } from '../../typed-size.ts';
import type { Stand, WayElement } from '../stand.ts';
import { wayStyles } from '../way-styles.ts';
import { lessonsAsked, pagesOf, type SheetKind, sheets } from './sheets.ts';

/** Sheets for paper of what stands on the bench, one click each. */
export class SheetsWay extends LitElement implements WayElement {
  static override properties = {
    stand: { attribute: false },
    paper: { state: true },
    lesson: { state: true },
    said: { state: true },
  };
  declare stand: Stand;
  declare paper: PaperSize;
  /** The lesson whose predictions are printed. */
  declare lesson: string;
  declare said: string;

  constructor() {
    super();
    this.paper = 'A4';
    this.lesson = lessonsAsked[0]?.name ?? '';
    this.said = '';
  }

  static override styles = [
    wayStyles,
    css`
      .paper { max-width: 320px; }
      .sheet { display: grid; grid-template-columns: minmax(0, 1fr) auto; gap: 4px 18px; align-items: center; }
      .sheet p { margin: 0; }
      .sheet .acts { margin: 0; justify-content: end; }
      .sheet select { width: 100%; max-width: 420px; margin-top: 8px; }
      @media (max-width: 900px) { .sheet { grid-template-columns: 1fr; } .sheet .acts { justify-content: start; margin-top: 8px; } }
    `,
  ];

  override firstUpdated(): void {
    const { guest } = this.stand.session.moment;
    if (guest?.call.kind === 'lesson') this.lesson = guest.call.id;
  }

  async #print(set: SheetKind['sets'][number]): Promise<void> {
    // What was typed into the sheet of Inspect is read as sizes.
    await loadReader();
    const pages = set.pages(this.stand.session, this.lesson, this.paper);
    this.said = words.of(
      pages.length === 1 ? words.onePage : words.pages(pages.length),
      this.paper,
    );
    await printPages(pagesOf(pages), this.paper);
  }

  override render() {
    const { paper } = this;
    return html`<div class="part"><div class="lab" id="paper">${words.paper}</div><div class="seg paper" role="group" aria-labelledby="paper">${paperSizes.map(
      (p) =>
        html`<button class=${p === paper ? 'on' : ''} aria-pressed=${p === paper} @click=${() => {
          this.paper = p;
        }}>${p}</button>`,
    )}</div>
      <p class="dim">${words.blackOnWhiteOfThe}</p>
      <p class=${this.said ? 'said' : 'dim'} role="status">${this.said}</p></div>
      ${sheets.map(
        (k) =>
          html`<div class="part sheet"><div><h3>${k.name}</h3><p class="dim">${k.tells}</p>${
            k.ofLesson
              ? html`<select aria-label=${words.lesson} @change=${(e: Event) => {
                  this.lesson = (e.target as HTMLSelectElement).value;
                }}>${lessonsAsked.map((l) => html`<option value=${l.name} ?selected=${l.name === this.lesson}>${l.number ?? ''} ${l.title}</option>`)}</select>`
              : nothing
          }</div><div class="acts">${k.sets.map((set) => html`<button data-sheet=${set.id} aria-label=${words.print(k.name, set.name)} @click=${() => this.#print(set)}>${set.name}</button>`)}</div></div>`,
      )}`;
  }
}
customElements.define('takeup-away-sheets', SheetsWay);
