import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { type Origin, originOf } from '../origin.ts';
import { type Kind, plainName, saveFile } from '../save.ts';
import type { Stand, WayElement } from '../stand.ts';
import { wayStyles } from '../way-styles.ts';
import { type Offered, tablesOf } from './collect.ts';
import { csvOf, htmlOf, jsonOf, type Table, tsvOf } from './table.ts';

const CSV: Kind = { tells: 'Table', type: 'text/csv', endings: ['.csv'] };
const JSON_TABLE: Kind = { tells: 'Table', type: 'application/json', endings: ['.json'] };

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
      this.said = 'Table copied: paste it into a spreadsheet or a text.';
    } catch {
      this.said = 'The browser does not let the page copy: save the table.';
    }
  }

  #peep(table: Table): TemplateResult {
    const told = (cell: Table['rows'][number][number]): string =>
      typeof cell === 'number' ? String(Number(cell.toPrecision(6))) : (cell ?? '');
    return html`<div class="peep" tabindex="0" role="region" aria-label=${`First rows: ${table.title}`}><table><thead><tr>${table.columns.map((c) => html`<th scope="col">${c.name}${c.unit ? ` [${c.unit}]` : ''}</th>`)}</tr></thead>
      <tbody>${table.rows.slice(0, SEEN).map((row) => html`<tr>${row.map((cell) => html`<td>${told(cell)}</td>`)}</tr>`)}</tbody></table></div>
      <p class="dim">${table.rows.length} rows${table.rows.length > SEEN ? `, the first ${SEEN} shown, rounded` : ', shown rounded'}; the file has all digits.</p>`;
  }

  override render() {
    const { offered } = this;
    return html`${
      offered === null
        ? html`<div class="part"><p role="status">The tables are being made.</p></div>`
        : offered.map(
            ({ name, table, else: why }) =>
              html`<div class="part"><h3>${name}</h3>${
                table
                  ? html`${this.#peep(table)}<div class="acts"><button class="main" aria-label=${`Save CSV: ${name}`} @click=${() => this.#save(table, CSV)}>Save CSV</button><button aria-label=${`Save JSON: ${name}`} @click=${() => this.#save(table, JSON_TABLE)}>Save JSON</button><button aria-label=${`Copy table: ${name}`} @click=${() => this.#copy(table)}>Copy table</button></div>`
                  : html`<p class="dim">${why}</p>`
              }</div>`,
          )
    }
      <div class="part"><p class="said" role="status">${this.said || nothing}</p><p class="dim">Units stand in the header or beside each value. Scene, version and this moment’s link stand in every file: dropped on this page, it opens the bench as it was. A teaching brake: its figures are not your vehicle’s.</p></div>`;
  }
}
customElements.define('takeup-away-data', DataWay);
