import { css, html, LitElement, nothing } from 'lit';
import { labelWords, appBenchSheet as texts } from '../../sim/words/en.ts';
import { dialogStyles } from '../pieces/dialog-styles.ts';
import { icons } from '../pieces/icons.ts';
import { languageChoice } from '../pieces/language-choice.ts';
import { openModal } from '../pieces/modal.ts';
import { standApart } from '../record/across.ts';
import type { Home } from '../record/home.ts';
import type { LayerName, Session } from '../session.ts';
import { beside, keep } from '../stations/compare/wants.ts';
import type { PageSize } from '../stations/station.ts';
import type { ThemeName } from '../theme.ts';
import { brakeOptions } from './brake-options.ts';
import { layerNames } from './layer-names.ts';
import { momentFile, momentStyles } from './moment-file.ts';
import { textLink } from './text-link.ts';

const views: readonly [ThemeName, string][] = [
  ['sheet', labelWords.sheet],
  ['board', labelWords.board],
];

/**
 * What stands on the bench and how it is shown, on one sheet: the brake, the view, the shoes, the
 * sound; on the phone the layers too. Fires `choose` with the key of another brake, and
 * `table`, `keys` and `away` when those are asked for.
 */
export class BenchSheet extends LitElement {
  static override properties = {
    session: { attribute: false },
    home: { attribute: false },
    size: { type: String },
    shows: { attribute: false },
    rev: { type: Number },
  };
  declare session: Session;
  declare home: Home;
  declare size: PageSize;
  /** The only layers that the open station's drawing can show; undefined: all. */
  declare shows: readonly LayerName[] | undefined;
  /** Counts the session's changes: a new one redraws. */
  declare rev: number;

  static override styles = [
    dialogStyles,
    momentStyles,
    css`
      section { padding: 12px 18px 14px; border-top: 1px solid var(--rule); }
      section:first-of-type { border-top: 0; }
      .lab { font-size: 15px; font-weight: 560; color: var(--ink2); margin-bottom: 5px; }
      select { width: 100%; }
      .seg { display: grid; grid-auto-flow: column; grid-auto-columns: 1fr; border: 2px solid var(--ink); }
      .seg + .seg { margin-top: 8px; }
      .seg button { border: 0; border-left: 1px solid var(--rule); }
      .seg button:first-child { border-left: 0; }
      .seg .on { background: var(--ink); color: var(--sheet); }
      .rows { display: grid; gap: 8px; }
      .layer { display: flex; align-items: center; gap: 12px; width: 100%; text-align: left; border-width: 1px; border-color: var(--rule); }
      .layer.on { box-shadow: inset 6px 0 0 var(--ink); border-color: var(--ink); }
      .layer svg { width: 28px; height: 18px; flex: none; }
      .layer em { margin-left: auto; font-style: normal; font-weight: 500; color: var(--ink2); }
      a { font-size: 15px; color: var(--ink2); }
      a:focus-visible { outline: 4px solid var(--trail); outline-offset: 2px; }
      p { margin: 6px 0 0; font-size: 15px; color: var(--ink2); }
    `,
  ];

  open(): void {
    openModal(this.renderRoot.querySelector('dialog'));
  }

  close(): void {
    this.renderRoot.querySelector('dialog')?.close();
  }

  #wall() {
    return html`<button @click=${() => {
      this.close();
      this.session.showOnWall(true);
    }}>${texts.wall}</button>`;
  }

  #layers() {
    const { session } = this;
    return html`<section><div class="lab" id="layers">${texts.showOnTheDrawing}</div><div class="rows" role="group" aria-labelledby="layers">${layerNames(
      session,
    ).map(
      ([name, text]: readonly [LayerName, string]) =>
        html`<button class="layer ${session.layers[name] ? 'on' : ''}" aria-pressed=${session.layers[name]} @click=${() => session.toggle(name)}>${icons[name]}${text}${this.shows?.includes(name) === false ? html`<em>${texts.notHere}</em>` : html`<em aria-hidden="true">${session.layers[name] ? texts.on : texts.off}</em>`}</button>`,
    )}</div></section>`;
  }

  override render() {
    const { session } = this;
    return html`<dialog aria-label=${texts.bench} @click=${(e: Event) => {
      if (e.target === e.currentTarget) this.close();
    }}>
      <header><h2>${texts.bench}</h2><button @click=${() => this.close()}>${texts.done}</button></header>
      <section><label class="lab" for="brake">${texts.brakeOnTheBench}</label>
        <select id="brake" @change=${(e: Event) => {
          const { value } = e.target as HTMLSelectElement;
          this.dispatchEvent(new CustomEvent('choose', { detail: value }));
        }}>${brakeOptions(session)}</select></section>
      ${this.size === 'narrow' ? this.#layers() : nothing}
      <section><div class="lab" id="view">${texts.view}</div><div class="seg" role="group" aria-labelledby="view">${views.map(([theme, name]) => html`<button class=${session.theme === theme ? 'on' : ''} aria-pressed=${session.theme === theme} @click=${() => session.look(theme)}>${name}</button>`)}${this.size === 'narrow' ? nothing : this.#wall()}</div>${this.size === 'narrow' ? nothing : html`<p>${texts.wallHalfDrawingHalfWords}</p>`}</section>
      <section>${languageChoice()}</section>
      <section><div class="lab" id="wheel">${texts.wheelSeenFromOutside}</div><div class="seg" role="group" aria-labelledby="wheel">${(['left', 'right'] as const).map((w) => html`<button class=${session.wheel === w ? 'on' : ''} aria-pressed=${session.wheel === w} @click=${() => session.lookAt(w)}>${w === 'left' ? texts.leftHand : texts.rightHand}</button>`)}</div>
        <div class="seg" role="group" aria-label=${texts.theWheelsOfTheAxle}>${[false, true].map((apart) => html`<button class=${(session.moment.bench.across !== null) === apart ? 'on' : ''} aria-pressed=${(session.moment.bench.across !== null) === apart} @click=${() => session.do(standApart, apart)}>${apart ? texts.eachItsOwn : texts.bothAlike}</button>`)}</div>${session.moment.bench.across ? html`<p>${texts.twoWheelsOfOneAxle}</p>` : nothing}</section>
      <section><div class="lab" id="shoes">${texts.shoes}</div><div class="seg" role="group" aria-labelledby="shoes">${[
        false,
        true,
      ].map(
        (b) =>
          html`<button class=${session.bending === b ? 'on' : ''} aria-pressed=${session.bending === b} @click=${() => {
            if (session.bending !== b) session.toggleBending();
          }}>${b ? texts.thatBend : texts.rigid}</button>`,
      )}</div><p>${texts.shoesThatBendWebAnd}</p></section>
      <section><button aria-haspopup="dialog" @click=${() => {
        this.close();
        this.dispatchEvent(new Event('away'));
      }}>${texts.takeAway}</button><p>${texts.picturesFiguresThisMoment}</p></section>
      <section><button @click=${() => {
        this.close();
        this.dispatchEvent(new Event('words'));
      }}>${texts.wordsOfTheTradeHere}</button><p>${texts.wordsWithADottedLine}</p></section>
      <section><div class="lab" id="keeping">${texts.thisMoment}</div><div class="seg" role="group" aria-labelledby="keeping"><button @click=${() => {
        this.close();
        session.do(keep);
      }}>${texts.keepAsGhost}</button><button @click=${() => {
        this.close();
        session.do(beside);
      }}>${texts.sideBySide}</button></div><p>${texts.aKeptMomentIsDrawn}</p></section>
      ${momentFile(session, this.home, () => this.close())}
      <section><button aria-haspopup="dialog" @click=${() => {
        this.close();
        this.dispatchEvent(new Event('table'));
      }}>${texts.allReadings}</button>${
        this.size === 'narrow'
          ? nothing
          : html` <button aria-haspopup="dialog" @click=${() => {
              this.close();
              this.dispatchEvent(new Event('keys'));
            }}>${texts.keys}</button>`
      }</section>
      <section><div class="lab" id="sound">${texts.soundOfTheClick}</div><div class="seg" role="group" aria-labelledby="sound">${[
        true,
        false,
      ].map(
        (on) =>
          html`<button class=${session.sound.on === on ? 'on' : ''} aria-pressed=${session.sound.on === on} @click=${() => {
            if (session.sound.on !== on) session.toggleSound();
          }}>${on ? texts.on2 : texts.off2}</button>`,
      )}</div></section>
      <section class="rows">${textLink('changes.txt', texts.whatHasChangedOnThis)}
        ${textLink('licences.txt', texts.licencesOfTakeupAndOf)}
        ${
          location.protocol === 'file:'
            ? nothing
            : html`<a href="./takeup.html" download="takeup.html">${texts.allOfTakeupAsOne}</a>`
        }</section>
    </dialog>`;
  }
}
customElements.define('takeup-bench-sheet', BenchSheet);
