import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { labelWords, awayDataDataWay as words } from '../../../sim/words/en.ts';
import { type Origin, originOf } from '../origin.ts';
import { type Kind, plainName, saveFile } from '../save.ts';
import type { Stand, WayElement } from '../stand.ts';
import { wayStyles } from '../way-styles.ts';
import { type Offered, tablesOf } from './collect.ts';
import { csvOf, htmlOf, jsonOf, type Table, tsvOf } from './table.ts';

const CSV: Kind = { tells: labelWords.table, type: 'text/csv', endings: ['.csv'] };
const JSON_TABLE: Kind = { tells: labelWords.table, type: 'application/json', endings: ['.json'] };

/** So many rows are shown of a table. */
const SEEN = 6;

/** The bench's figures as tables. */
export class DataWay extends LitElement implements WayElement {
  static override properties = {
    stand: { attribute: false },
    offered: { state: true },
    said: { state: true },
  };
  declare stand: Stand;
  declare offered: readonly Offered[] | null;
  declare said: string;
  #origin: Origin | null = null;

  constructor() {
    super();
    this.offered = null;
    this.said = '';
  }

  static override styles = [
    wayStyles,
    css`
      .peep { overflow-x: auto; border: 1px solid var(--rule); margin-top: 8px; }
      .peep:focus-visible { outline: 4px solid var(--trail); outline-offset: 2px; }
      table { border-collapse: collapse; font-size: 14px; width: 100%; }
      th, td { text-align: left; padding: 3px 10px; border-top: 1px solid var(--rule); white-space: nowrap; }
      th { border-top: 0; font-weight: 620; color: var(--ink2); }
    `,
  ];

  override async firstUpdated(): Promise<void> {
    this.#origin = await originOf(this.stand.session);
    this.offered = await tablesOf(this.stand);
  }

  async #save(table: Table, kind: Kind): Promise<void> {
    const origin = this.#origin;
    if (!origin) return;
    const name = `takeup-${plainName(this.stand.session.brake.name)}-${table.id}${kind.endings[0]}`;
    const text = kind === CSV ? csvOf(table, origin) : jsonOf(table, origin);
    try {
      this.said = await saveFile(name, kind, new Blob([text], { type: kind.type }));
    } catch (error: unknown) {
      this.said = error instanceof Error ? error.message : String(error);
    }
  }

  async #copy(table: Table): Promise<void> {
    const as = (type: string, text: string) => new Blob([text], { type });
    try {
      await navigator.clipboard.write([
        new ClipboardItem({
          'text/plain': as('text/plain', tsvOf(table)),
          'text/html': as('text/html', htmlOf(table)),
        }),
      ]);
      this.said = words.tableCopiedPasteItInto;
    } catch {
      this.said = words.theBrowserDoesNotLet;
    }
  }

  #peep(table: Table): TemplateResult {
    const told = (cell: Table['rows'][number][number]): string =>
      typeof cell === 'number' ? String(Number(cell.toPrecision(6))) : (cell ?? '');
    return html`<div class="peep" tabindex="0" role="region" aria-label=${words.firstRows(table.title)}><table><thead><tr>${table.columns.map((c) => html`<th scope="col">${c.name}${c.unit ? ` [${c.unit}]` : ''}</th>`)}</tr></thead>
      <tbody>${table.rows.slice(0, SEEN).map((row) => html`<tr>${row.map((cell) => html`<td>${told(cell)}</td>`)}</tr>`)}</tbody></table></div>
      <p class="dim">${words.rowsTheFileHasAll(table.rows.length, table.rows.length > SEEN ? words.theFirstShownRounded(SEEN) : words.shownRounded)}</p>`;
  }

  override render() {
    const { offered } = this;
    return html`${
      offered === null
        ? html`<div class="part"><p role="status">${words.theTablesAreBeingMade}</p></div>`
        : offered.map(
            ({ name, table, else: why }) =>
              html`<div class="part"><h3>${name}</h3>${
                table
                  ? html`${this.#peep(table)}<div class="acts"><button class="main" aria-label=${words.saveCsv(name)} @click=${() => this.#save(table, CSV)}>${words.saveCsv2}</button><button aria-label=${words.saveJson(name)} @click=${() => this.#save(table, JSON_TABLE)}>${words.saveJson2}</button><button aria-label=${words.copyTable(name)} @click=${() => this.#copy(table)}>${words.copyTable2}</button></div>`
                  : html`<p class="dim">${why}</p>`
              }</div>`,
          )
    }
      <div class="part"><p class="said" role="status">${this.said || nothing}</p><p class="dim">${words.unitsStandInTheHeader}</p></div>`;
  }
}
customElements.define('takeup-away-data', DataWay);
