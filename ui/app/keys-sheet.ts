import { css, html, LitElement } from 'lit';
import type { SingleKeys } from '../full.ts';
import { dialogStyles } from '../pieces/dialog-styles.ts';
import { openModal } from '../pieces/modal.ts';
import { NARROW } from '../pieces/page-sizes.ts';
import { stationNames } from '../record/moment.ts';
import { stations } from '../stations/index.ts';

type Row = readonly [keys: string, does: string];

/** What each key does at the desk; the wall and a lesson have lists of their own. */
const desk: readonly (readonly [title: string, rows: readonly Row[]])[] = [
  [
    'The brake',
    [
      ['Space', 'hold the pedal down, where there is one'],
      ['. and ,', 'one step on, one step back'],
      ['[ and ]', 'slower, faster'],
      ['R', 'look back over the last ten seconds, and now again'],
      ['C', 'the last click, slowly'],
      ['B', 'shoes that bend, or rigid ones'],
    ],
  ],
  [
    'The drawing',
    [
      ['arrow keys', 'once it has the focus: from part to part'],
      ['Shift and arrows', 'move it while it is zoomed'],
      ['+, −, 0', 'nearer, farther, whole'],
      ['P', 'all forces on each shoe, head to tail, and away'],
      ['U', 'dials: handles on the brake, and away'],
      ['G', 'keep this moment as a ghost'],
      ['H and N', 'hide the names; show the next one'],
    ],
  ],
  [
    'The page',
    [
      ['T', 'the table of all readings'],
      ['D', 'words of the trade that stand here'],
      ['E', 'take away what stands here: figure, link, code, file'],
      ['Shift E', 'a figure at once, with the last choices'],
      ['M', 'what tells most, or all of it'],
      ['W', 'the wall, and back'],
      ['F', 'full screen'],
      ['Ctrl Z, Ctrl Y', 'undo, redo'],
      ['Esc', 'let go, back to now, back to mine'],
      ['?', 'these keys'],
    ],
  ],
];

/** The keys of the desk on one sheet. */
export class KeysSheet extends LitElement {
  static override properties = { single: { attribute: false } };
  declare single: SingleKeys;

  static override styles = [
    dialogStyles,
    css`
      :host { --wide: 900px; }
      .all { display: grid; grid-template-columns: 2fr 3fr; gap: 4px 34px; padding: 0 18px 14px; }
      h3 { margin: 8px 0 1px; font-size: 17px; font-weight: 760; }
      dl { margin: 0; font-size: 15.5px; }
      dl div { display: grid; grid-template-columns: 8.4em 1fr; gap: 10px; border-top: 1px solid var(--rule); padding: 1.5px 0; }
      dt { font-weight: 700; }
      dd { margin: 0; }
      .single { grid-column: 1 / -1; display: flex; align-items: center; gap: 12px; font-size: 15.5px; }
      .single button { background: none; }
      .single button[aria-pressed='true'] { background: var(--ink); color: var(--sheet); }
      .note { grid-column: 1 / -1; margin: 10px 0 0; color: var(--ink2); font-size: 15.5px; }
      @media ${NARROW} { .all { grid-template-columns: 1fr; } }
    `,
  ];

  open(): void {
    openModal(this.renderRoot.querySelector('dialog'));
  }

  /** The same key that opened it closes it. */
  #key = (e: KeyboardEvent): void => {
    if (e.key !== '?' || this.single.mutes(e)) return;
    this.renderRoot.querySelector('dialog')?.close();
    e.preventDefault();
    e.stopPropagation();
  };

  override render() {
    const list = (title: string, rows: readonly Row[]) =>
      html`<section><h3>${title}</h3><dl>${rows.map(([keys, does]) => html`<div><dt>${keys}</dt><dd>${does}</dd></div>`)}</dl></section>`;
    const places = stations
      .filter((s) => s.key !== '')
      .map((s): Row => [s.key === '/' ? '/' : s.key.toUpperCase(), stationNames[s.id]]);
    const { single } = this;
    const turn = () => {
      single.turn();
      this.requestUpdate();
    };
    return html`<dialog aria-label="Keys" @keydown=${this.#key}><header><h2>Keys</h2><button @click=${() => this.renderRoot.querySelector('dialog')?.close()}>Close</button></header>
      <div class="all">${list('Stations', places)}<div>${desk.map(([title, rows]) => list(title, rows))}</div>
      <div class="single"><button aria-pressed=${single?.on ?? true} @click=${turn}>Keys of one sign</button><span>${(single?.on ?? true) ? 'On. Off, only Tab, Enter, arrows, Esc, the space bar and keys with Ctrl do something.' : 'Off, kept on this device. All is still to be reached by Tab, Enter and arrows.'}</span></div>
      <p class="note">A field keeps its keys. The wall and a lesson have keys of their own, and ? lists them there.</p></div></dialog>`;
  }
}
customElements.define('takeup-keys', KeysSheet);
