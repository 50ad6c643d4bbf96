import { css, html, LitElement, nothing } from 'lit';
import { dialogStyles } from '../pieces/dialog-styles.ts';
import { icons } from '../pieces/icons.ts';
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
  ['sheet', 'Sheet'],
  ['board', 'Board'],
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
    rev: { type: Number },
  };
  declare session: Session;
  declare home: Home;
  declare size: PageSize;
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
    }}>Wall</button>`;
  }

  #layers() {
    const { session } = this;
    return html`<section><div class="lab" id="layers">Show on the drawing</div><div class="rows" role="group" aria-labelledby="layers">${layerNames(
      session,
    ).map(
      ([name, text]: readonly [LayerName, string]) =>
        html`<button class="layer ${session.layers[name] ? 'on' : ''}" aria-pressed=${session.layers[name]} @click=${() => session.toggle(name)}>${icons[name]}${text}<em aria-hidden="true">${session.layers[name] ? 'on' : 'off'}</em></button>`,
    )}</div></section>`;
  }

  override render() {
    const { session } = this;
    return html`<dialog aria-label="Bench" @click=${(e: Event) => {
      if (e.target === e.currentTarget) this.close();
    }}>
      <header><h2>Bench</h2><button @click=${() => this.close()}>Done</button></header>
      <section><label class="lab" for="brake">Brake on the bench</label>
        <select id="brake" @change=${(e: Event) => {
          const { value } = e.target as HTMLSelectElement;
          this.dispatchEvent(new CustomEvent('choose', { detail: value }));
        }}>${brakeOptions(session)}</select></section>
      ${this.size === 'narrow' ? this.#layers() : nothing}
      <section><div class="lab" id="view">View</div><div class="seg" role="group" aria-labelledby="view">${views.map(([theme, name]) => html`<button class=${session.theme === theme ? 'on' : ''} aria-pressed=${session.theme === theme} @click=${() => session.look(theme)}>${name}</button>`)}${this.size === 'narrow' ? nothing : this.#wall()}</div>${this.size === 'narrow' ? nothing : html`<p>Wall: half drawing, half words, for a projector. Key w.</p>`}</section>
      <section><div class="lab" id="wheel">Wheel, seen from outside</div><div class="seg" role="group" aria-labelledby="wheel">${(['left', 'right'] as const).map((w) => html`<button class=${session.wheel === w ? 'on' : ''} aria-pressed=${session.wheel === w} @click=${() => session.lookAt(w)}>${w === 'left' ? 'Left-hand' : 'Right-hand'}</button>`)}</div>
        <div class="seg" role="group" aria-label="The wheels of the axle">${[false, true].map((apart) => html`<button class=${(session.moment.bench.across !== null) === apart ? 'on' : ''} aria-pressed=${(session.moment.bench.across !== null) === apart} @click=${() => session.do(standApart, apart)}>${apart ? 'Each its own' : 'Both alike'}</button>`)}</div>${session.moment.bench.across ? html`<p>Two wheels of one axle, each with its own wear, tooth and life: the one chosen above stands on the bench, and what is done is done to it. Park and All readings tell both.</p>` : nothing}</section>
      <section><div class="lab" id="shoes">Shoes</div><div class="seg" role="group" aria-labelledby="shoes">${[
        false,
        true,
      ].map(
        (b) =>
          html`<button class=${session.bending === b ? 'on' : ''} aria-pressed=${session.bending === b} @click=${() => {
            if (session.bending !== b) session.toggleBending();
          }}>${b ? 'That bend' : 'Rigid'}</button>`,
      )}</div><p>Shoes that bend: web and table of steel give as they really do, and everything is worked out with them, rigid figures beside. Worn linings are bedded in anew, and a life driven so far begins anew. Key b.</p></section>
      <section><button aria-haspopup="dialog" @click=${() => {
        this.close();
        this.dispatchEvent(new Event('away'));
      }}>Take away…</button><p>Pictures, figures, this moment for a phone, and more. Key e.</p></section>
      <section><button @click=${() => {
        this.close();
        this.dispatchEvent(new Event('words'));
      }}>Words of the trade here</button><p>Words with a dotted line are told by a tap, British and American. Key d.</p></section>
      <section><div class="lab" id="keeping">This moment</div><div class="seg" role="group" aria-labelledby="keeping"><button @click=${() => {
        this.close();
        session.do(keep);
      }}>Keep as ghost</button><button @click=${() => {
        this.close();
        session.do(beside);
      }}>Side by side</button></div><p>A kept moment is drawn thin and grey over what comes after, with its figures beside. Keys g and x.</p></section>
      ${momentFile(session, this.home, () => this.close())}
      <section><button aria-haspopup="dialog" @click=${() => {
        this.close();
        this.dispatchEvent(new Event('table'));
      }}>All readings…</button>${
        this.size === 'narrow'
          ? nothing
          : html` <button aria-haspopup="dialog" @click=${() => {
              this.close();
              this.dispatchEvent(new Event('keys'));
            }}>Keys (?)</button>`
      }</section>
      <section><div class="lab" id="sound">Sound of the click</div><div class="seg" role="group" aria-labelledby="sound">${[
        true,
        false,
      ].map(
        (on) =>
          html`<button class=${session.sound.on === on ? 'on' : ''} aria-pressed=${session.sound.on === on} @click=${() => {
            if (session.sound.on !== on) session.toggleSound();
          }}>${on ? 'On' : 'Off'}</button>`,
      )}</div></section>
      <section class="rows">${textLink('changes.txt', 'What has changed on this bench')}
        ${textLink('licences.txt', 'Licences of Takeup and of what it is built with')}
        ${
          location.protocol === 'file:'
            ? nothing
            : html`<a href="./takeup.html" download="takeup.html">All of Takeup as one file, for a memory stick: opens by a double click, without a network</a>`
        }</section>
    </dialog>`;
  }
}
customElements.define('takeup-bench-sheet', BenchSheet);
