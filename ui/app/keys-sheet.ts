import { css, html, LitElement } from 'lit';
import { labelWords, appKeysSheet as texts } from '../../sim/words/en.ts';
import type { SingleKeys } from '../full.ts';
import { dialogStyles } from '../pieces/dialog-styles.ts';
import { openModal, stillOpen } from '../pieces/modal.ts';
import { NARROW } from '../pieces/page-sizes.ts';
import { stationNames } from '../record/moment.ts';
import { stations } from '../stations/index.ts';

type Row = readonly [keys: string, does: string];
type Group = readonly [title: string, rows: readonly Row[]];

/** What each key does at the desk, in two columns; the wall and a lesson have lists of their own. */
const first: readonly Group[] = [
  [
    texts.theBrake,
    [
      [texts.space, texts.holdThePedalDownWhere],
      [texts.and, texts.oneStepOnOneStep],
      [texts.brackets, texts.slowerFaster],
      ['R', texts.lookBackOverTheLast],
      ['C', texts.theLastClickSlowly],
      ['B', texts.shoesThatBendOrRigid],
    ],
  ],
];
const second: readonly Group[] = [
  [
    texts.theDrawing,
    [
      [texts.arrowKeys, texts.onceItHasTheFocus],
      [texts.shiftAndArrows, texts.moveItWhileItIs],
      ['+, −, 0', texts.nearerFartherWhole],
      ['P', texts.allForcesOnEachShoe],
      ['U', texts.dialsHandlesOnTheBrake],
      ['G', texts.keepThisMomentAsA],
      [texts.hAndN, texts.hideTheNamesShowThe],
    ],
  ],
  [
    texts.thePage,
    [
      ['T', texts.theTableOfAllReadings],
      ['D', texts.wordsOfTheTradeThat],
      ['E', texts.takeAwayWhatStandsHere],
      [texts.shiftE, texts.aFigureAtOnceWith],
      ['M', texts.whatTellsMostOrAll],
      ['W', texts.theWallAndBack],
      ['F', texts.fullScreen],
      [texts.ctrlZCtrlY, texts.undoRedo],
      ['Esc', texts.letGoBackToNow],
      ['?', texts.theseKeys],
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
      .all { display: grid; grid-template-columns: 4fr 5fr; gap: 4px 34px; padding: 0 18px 14px; }
      h3 { margin: 8px 0 1px; font-size: 17px; font-weight: 760; }
      dl { margin: 0; font-size: 15.5px; }
      dl div { display: grid; grid-template-columns: 8.4em 1fr; gap: 10px; border-top: 1px solid var(--rule); padding: 1.5px 0; }
      /* Stations down one column and then the next; each has a key of one sign. */
      .places dl { display: grid; grid-template-rows: repeat(9, auto); grid-auto-flow: column; grid-auto-columns: 1fr; gap: 0 20px; }
      .places dl div { grid-template-columns: 1.3em 1fr; }
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
    if (!stillOpen(e) || e.key !== '?' || this.single.mutes(e)) return;
    this.renderRoot.querySelector('dialog')?.close();
    e.preventDefault();
    e.stopPropagation();
  };

  override render() {
    const list = (title: string, rows: readonly Row[], name = '') =>
      html`<section class=${name}><h3>${title}</h3><dl>${rows.map(([keys, does]) => html`<div><dt>${keys}</dt><dd>${does}</dd></div>`)}</dl></section>`;
    const places = stations
      .filter((s) => s.key !== '')
      .map((s): Row => [s.key === '/' ? '/' : s.key.toUpperCase(), stationNames[s.id]]);
    const { single } = this;
    const turn = () => {
      single.turn();
      this.requestUpdate();
    };
    return html`<dialog aria-label=${texts.keys} @keydown=${this.#key}><header><h2>${texts.keys}</h2><button @click=${() => this.renderRoot.querySelector('dialog')?.close()}>${texts.close}</button></header>
      <div class="all"><div>${list(labelWords.stations, places, 'places')}${first.map(([title, rows]) => list(title, rows))}</div><div>${second.map(([title, rows]) => list(title, rows))}</div>
      <div class="single"><button aria-pressed=${single?.on ?? true} @click=${turn}>${texts.keysOfOneSign}</button><span>${(single?.on ?? true) ? texts.onOffOnlyTabEnter : texts.offKeptOnThisDevice}</span></div>
      <p class="note">${texts.aFieldKeepsItsKeys}</p></div></dialog>`;
  }
}
customElements.define('takeup-keys', KeysSheet);
