import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { type Derivations, type Instant, type Reading, readingOf } from '../../sim/index.ts';
import { labelWords, appReadingsTable as words } from '../../sim/words/en.ts';
import { meaningOf } from '../../sim/workshop/index.ts';
import { down, number } from '../format.ts';
import { notLoaded } from '../part.ts';
import { atLimit } from '../pieces/cells.ts';
import { dialogStyles } from '../pieces/dialog-styles.ts';
import { openModal } from '../pieces/modal.ts';
import { NARROW } from '../pieces/page-sizes.ts';
import { readingName } from '../pieces/reading-name.ts';
import { Kept } from '../record/kept.ts';
import type { Session } from '../session.ts';
import { varyAsk } from '../stations/vary/part.ts';
import { withIndices } from './symbols.ts';

type More = typeof import('./more-readings.ts');
type Panel = typeof import('../working/panel.ts');

/** What tells the readings that take many instants: loaded when the sheet is first opened, or soon after the brake moves. */
export const loadMore = (): Promise<More> => import('./more-readings.ts');

/**
 * Every reading of the moment on one sheet: name, symbol, value, what it means, the formula it comes
 * from; then a stop, the pedal’s way down, the brake parked, and once around its drum.
 */
export class ReadingsTable extends LitElement {
  static override properties = {
    session: { attribute: false },
    instant: { attribute: false },
    rigid: { attribute: false },
    kept: { attribute: false },
    opened: { state: true },
    told: { state: true },
    panel: { state: true },
    trouble: { state: true },
    working: { state: true },
  };
  declare session: Session;
  /** The moment on the stage. */
  declare instant: Instant;
  /** The same with rigid shoes, where those on the stage bend. */
  declare rigid: readonly Reading[] | null;
  /** The same of the moment that is kept, where one is. */
  declare kept: readonly Reading[] | null;
  declare opened: boolean;
  /** Null until it is loaded. */
  declare told: More | null;
  /** What shows workings: loaded when the first is asked for. */
  declare panel: Panel | null;
  /** Why there is no working. */
  declare trouble: string;
  /** Readings whose working is open. */
  declare working: ReadonlySet<string>;
  readonly #more = new Kept<TemplateResult>();

  constructor() {
    super();
    this.opened = false;
    this.told = null;
    this.panel = null;
    this.trouble = '';
    this.working = new Set();
    this.rigid = null;
    this.kept = null;
  }

  static override styles = [
    dialogStyles,
    css`
      :host { --wide: 1180px; }
      h3 { margin: 0; padding: 14px 18px 6px; font-size: 19px; font-weight: 760; }
      table { width: 100%; border-collapse: collapse; font-size: 16px; }
      th { text-align: left; font-size: 14px; font-weight: 560; color: var(--ink2); padding: 4px 18px; }
      td { border-top: 1px solid var(--rule); padding: 7px 18px; vertical-align: top; }
      td:first-child { font-weight: 640; }
      td em { font-style: italic; font-weight: 500; color: var(--ink2); margin-left: 8px; white-space: nowrap; }
      .v { text-align: right; white-space: nowrap; font-weight: 700; font-size: 18px; }
      .v small { font-size: 14px; font-weight: 540; margin-left: 4px; }
      .f { color: var(--ink2); min-width: 19em; }
      .if { display: inline; font: inherit; font-size: 15px; font-weight: 620; color: inherit; background: none; border: 0; padding: 4px 8px; margin-left: 4px; text-decoration: underline; text-underline-offset: 3px; cursor: pointer; white-space: nowrap; }
      tr.work > td { padding: 0; border-top: 0; font-weight: 500; }
      .hidden { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
      .note { margin: 0; padding: 6px 18px; font-size: 16px; max-width: 70em; }
      svg { display: block; width: 100%; max-width: 720px; padding: 4px 18px; font-size: 15px; }
      svg text { fill: var(--ink2); }
      sub { font-size: 0.75em; line-height: 0; }
      @media ${NARROW} {
        thead { display: none; }
        tr { display: grid; grid-template-columns: 1fr auto; padding: 8px 16px; border-top: 1px solid var(--rule); }
        td { border: 0; padding: 0; }
        td.m, td.f { grid-column: 1 / -1; font-size: 15px; }
        .if { display: block; min-height: 44px; padding: 10px 0; margin: 0; }
        tr.work { padding: 0 16px; }
        tr.work > td { grid-column: 1 / -1; min-width: 0; }
        td.r { grid-column: 2; }
        td.k { grid-column: 2; font-size: 16px; color: var(--ink2); }
        td.k::before { content: 'kept '; font-size: 14px; font-weight: 540; }
        td.r::before { content: 'rigid '; font-size: 14px; font-weight: 540; }
        .f { min-width: 0; }
        svg { font-size: 24px; }
      }
    `,
  ];

  open(): void {
    this.opened = true;
    if (!this.told) {
      // Without them the sheet still tells what is now; it asks again when it is opened anew.
      loadMore().then(
        (told) => {
          this.told = told;
        },
        () => undefined,
      );
    }
    openModal(this.renderRoot.querySelector('dialog'));
  }

  close(): void {
    this.renderRoot.querySelector('dialog')?.close();
  }

  /** A lining is never shown thicker than it is, nor one at its limit as past it. */
  #told(r: Reading, list: readonly Reading[]): number {
    if (!r.key.startsWith('lining') || !r.side) return r.value;
    const limit = this.session.brake.shoes[r.side].lining.thicknessMin;
    const left = list.find((x) => x.side === r.side && /^lining(Front|Rear)$/.test(x.key));
    if (left && atLimit(left.value, limit)) return r === left ? limit : 0;
    return down(r.value, r.digits);
  }

  /** The reading over a range of something: the sheet makes room for the curve. */
  #whatIf(key: string): void {
    this.close();
    this.session.do(varyAsk, { read: [key] });
  }

  /** Opens the working of a reading, or closes it. */
  async #toggle(key: string): Promise<void> {
    const open = new Set(this.working);
    if (!open.delete(key)) open.add(key);
    this.working = open;
    try {
      this.panel ??= await import('../working/panel.ts');
    } catch {
      this.trouble = notLoaded();
    }
  }

  /** Opens another reading's working and goes there. */
  async #goTo(key: string): Promise<void> {
    if (!this.working.has(key)) await this.#toggle(key);
    await this.updateComplete;
    const row = this.renderRoot.querySelector(`tr[data-reading="${key}"]`);
    row?.querySelector<HTMLElement>('.wk')?.focus();
    row?.scrollIntoView({ block: 'nearest' });
  }

  #work(r: Reading, columns: number, work: () => Derivations): TemplateResult | typeof nothing {
    const { panel } = this;
    if (!this.working.has(r.key)) return nothing;
    if (!panel)
      return html`<tr class="work"><td colspan=${columns} role="alert">${this.trouble}</td></tr>`;
    return html`<tr class="work" data-working=${r.key}><td colspan=${columns} @reading=${(e: CustomEvent<string>) => this.#goTo(e.detail)}>${panel.workingPanel(this.session, this.instant, r, work)}</td></tr>`;
  }

  /** @param rigid the same with rigid shoes, in a column of their own; @param kept the same of a kept moment, in theirs */
  #rows(
    title: string,
    list: readonly Reading[],
    work: () => Derivations,
    rigid: readonly Reading[] | null = null,
    kept: readonly Reading[] | null = null,
  ): TemplateResult {
    const was = (r: Reading): TemplateResult => {
      const found = kept?.find((k) => k.key === r.key);
      return html`<td class="v k">${found && kept ? number(this.#told(found, kept), r.digits) : '–'}</td>`;
    };
    const head = (text: string) => html`<th scope="col">${text}</th>`;
    return html`<h3>${title}</h3><table aria-label=${title}><thead><tr>${[labelWords.reading, ...(kept ? [labelWords.kept] : []), ...(rigid ? [words.shoesBend, labelWords.rigid] : [labelWords.value]), words.whatItMeans, labelWords.from].map(head)}</tr></thead>
      <tbody>${list.map((r) => {
        const value = this.#told(r, list);
        return html`<tr data-reading=${r.key}><td>${readingName(r)}${r.symbol ? html`<em>${withIndices(r.symbol)}</em>` : nothing}</td>${kept ? was(r) : nothing}
          <td class="v">${number(value, r.digits)}${r.unit ? html`<small>${r.unit}</small>` : nothing}</td>${rigid ? html`<td class="v r">${number(this.#told(readingOf(rigid, r.key), rigid), r.digits)}</td>` : nothing}<td class="m"><span>${meaningOf(r)}</span><button class="if" @click=${() => this.#whatIf(r.key)}>${words.whatIf(html`<span class="hidden"> ${words.oneThingChanged(r.name)}</span>`)}</button><button class="if wk" aria-expanded=${this.working.has(r.key)} @click=${() => this.#toggle(r.key)}>${words.working(html`<span class="hidden"> ${words.of(readingName(r))}</span>`)}</button></td><td class="f">${withIndices(r.formula)}</td></tr>${this.#work(r, 4 + (rigid ? 1 : 0) + (kept ? 1 : 0), work)}`;
      })}</tbody></table>`;
  }

  /** What takes many instants: worked out anew only when the brake, its state or the press is another. */
  #worked(more: More): TemplateResult {
    const { session, instant } = this;
    const { across } = session.moment.bench;
    const key = [
      session.rig,
      session.shown,
      across?.state,
      instant.pressure,
      instant.turning,
      this.working,
      this.panel,
    ];
    return this.#more.of(
      key,
      () =>
        html`${more.moreReadings(session, instant).map(({ title, list, work, below }) => html`${this.#rows(title, list, work)}${below}`)}`,
    );
  }

  override render() {
    const { session, instant } = this;
    return html`<dialog aria-label=${words.allReadings} @close=${() => {
      this.opened = false;
    }} @click=${(e: Event) => {
      if (e.target === e.currentTarget) this.close();
    }}>
      <header><h2>${words.allReadings}</h2><button @click=${() => this.close()}>${words.done}</button></header>
      ${
        this.opened
          ? html`${this.#rows(labelWords.now, session.told(instant), () => this.panel?.nowWork(session, instant) ?? {}, this.rigid, this.kept)}${this.told ? html`${this.told.ownRows(session, instant)}${this.#worked(this.told)}` : nothing}`
          : nothing
      }
    </dialog>`;
  }
}
customElements.define('takeup-readings', ReadingsTable);
