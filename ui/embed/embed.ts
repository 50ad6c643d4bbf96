import { css, html, LitElement, nothing } from 'lit';
import type { Instant, Turning } from '../../sim/index.ts';
import { labelWords, embedEmbed as words } from '../../sim/words/en.ts';
import type { Announcer } from '../app/announcer.ts';
import type { StageView } from '../app/stage-view.ts';
import type { Session } from '../session.ts';
import type { Station } from '../stations/station.ts';
import type { Asked } from './address.ts';
import type { Kit } from './kit.ts';

/** Readings and texts follow so often, ms. */
const READ_EVERY = 90;

const turns: readonly [Turning, string][] = [
  [1, labelWords.forward],
  [0, labelWords.stopped],
  [-1, labelWords.backward],
];
/** What is read, by key. */
const READ = ['linePressure', 'torque', 'brakeFactor', 'clearanceMean'] as const;

/**
 * The brake of one moment in a page of somebody else: what may be done with it stands in its address, nothing of it is
 * kept, and nobody is told of it. It has no home (`record/home.ts`), and hears no messages. The stage and the
 * pedal are there already, of the page that brings it.
 */
export class TakeupEmbed extends LitElement {
  readonly session: Session;
  readonly #kit: Kit;
  readonly #asked: Asked;
  readonly #station: Station;
  readonly #announcer: Announcer;
  readonly #colours = new CSSStyleSheet();
  #instant: Instant;
  #told = '';
  #before = 0;
  #readAt = 0;
  #frame = 0;

  /** @param station that draws; what it takes of a pointer is left out */
  constructor(kit: Kit, asked: Asked, { takes: _hands, ...station }: Station) {
    super();
    this.#kit = kit;
    this.#asked = asked;
    this.#station = station;
    const still = matchMedia('(prefers-reduced-motion: reduce)').matches;
    this.session = new kit.Session(kit.begin(asked.moment), still);
    this.session.watches = () => !this.#station.shown?.(this.session);
    this.session.acts = (press) => this.#station.acts?.(this.session, press) ?? press;
    this.#instant = this.#seen();
    this.#announcer = new kit.Announcer(this.session);
  }

  static override styles = css`
    :host { display: flex; flex-direction: column; height: 100%; background: var(--sheet); color: var(--ink); font: 500 16px/1.3 'Encode Sans Variable', 'Encode Sans', sans-serif; font-feature-settings: 'tnum'; }
    .stage { position: relative; flex: 1; min-height: 0; }
    dl { display: flex; flex: none; margin: 0; border-top: 2px solid var(--ink); overflow: hidden; }
    dl div { flex: 1; min-width: 0; padding: 3px 10px 4px; border-left: 1px solid var(--rule); }
    dl div:first-child { border: 0; }
    dt { font-size: 13px; color: var(--ink2); white-space: nowrap; overflow: hidden; text-overflow: ellipsis; }
    dd { margin: 0; font-size: 20px; font-weight: 680; white-space: nowrap; }
    dd small { font-size: 13px; font-weight: 540; margin-left: 4px; }
    .row { display: flex; flex: none; gap: 8px; padding: 8px; border-top: 1px solid var(--rule); align-items: stretch; }
    takeup-pedal { flex: 2; min-width: 0; }
    takeup-pedal::part(pad) { height: 48px; }
    .seg { display: flex; flex: 1; border: 2px solid var(--ink); }
    .seg button { flex: 1; font: inherit; font-size: 14px; font-weight: 600; min-height: 44px; padding: 0 6px; border: 0; border-left: 1px solid var(--rule); background: var(--sheet); color: var(--ink); cursor: pointer; }
    .seg button:first-child { border: 0; }
    .seg .on { background: var(--ink); color: var(--sheet); }
    a { flex: none; padding: 2px 10px 3px; font-size: 13px; color: var(--ink2); text-align: right; }
    :focus-visible { outline: 4px solid var(--trail); outline-offset: 2px; }
    .hidden { position: absolute; clip-path: inset(50%); width: 1px; height: 1px; overflow: hidden; }
    @media (max-width: 420px) { .row { flex-wrap: wrap; } .seg[aria-label='Drum'] { flex: 3; } dl div:nth-child(4) { display: none; } takeup-pedal { flex: 1 0 100%; } }
    /* A low place is the brake's. */
    @media (max-height: 320px) { dl, a { display: none; } }
  `;

  override connectedCallback(): void {
    super.connectedCallback();
    const { themeCss, themes } = this.#kit;
    const { theme } = this.session;
    this.#colours.replaceSync(themeCss(themes[theme], ':host'));
    this.shadowRoot?.adoptedStyleSheets.push(this.#colours);
    if (!this.#has('zoom')) this.addEventListener('wheel', this.#leave, { capture: true });
    window.addEventListener('pointerup', this.#up);
    this.#frame = requestAnimationFrame(this.#tick);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    window.removeEventListener('pointerup', this.#up);
    cancelAnimationFrame(this.#frame);
  }

  #has(name: 'pedal' | 'drum' | 'readings' | 'names' | 'zoom' | 'link'): boolean {
    return this.#asked.controls.has(name);
  }

  /** The wheel turns the page that this stands in. */
  #leave = (e: Event): void => e.stopPropagation();
  #up = (): void => this.session.close();

  #seen(): Instant {
    return this.#station.shown?.(this.session) ?? this.session.instant();
  }

  #tick = (now: number): void => {
    const seconds = this.#before ? Math.min(0.1, (now - this.#before) / 1000) : 0;
    this.#before = now;
    this.session.frame(seconds);
    this.renderRoot.querySelector<StageView>('takeup-stage')?.draw(now);
    if (now - this.#readAt >= READ_EVERY) {
      this.#readAt = now;
      this.#instant = this.#seen();
      this.#told = this.#announcer.hear(now / 1000, this.session);
      this.requestUpdate();
    }
    this.#frame = requestAnimationFrame(this.#tick);
  };

  #readings() {
    const { number, readingOf } = this.#kit;
    const all = this.session.readings(this.#instant);
    return html`<dl aria-label=${words.readings}>${READ.map((key) => {
      const { name, value, digits, unit } = readingOf(all, key);
      return html`<div data-key=${key}><dt title=${name}>${name}</dt><dd>${number(value, digits)}${unit ? html`<small>${unit}</small>` : nothing}</dd></div>`;
    })}</dl>`;
  }

  #drum() {
    const { session } = this;
    return html`<div class="seg" role="group" aria-label=${words.drum}>${turns.map(([t, name]) => html`<button class=${session.turning === t ? 'on' : ''} aria-pressed=${session.turning === t} @click=${() => session.turn(t)}>${name}</button>`)}</div>`;
  }

  #names() {
    const { session } = this;
    return html`<div class="seg" role="group" aria-label=${words.parts}><button class=${session.layers.names ? 'on' : ''} aria-pressed=${session.layers.names} @click=${() => session.toggle('names')}>${words.names}</button></div>`;
  }

  override render() {
    const { session } = this;
    const [pedal, drum, names] = [this.#has('pedal'), this.#has('drum'), this.#has('names')];
    return html`<h1 class="hidden">${session.guest ?? this.#kit.benchTitle(session.moment)}</h1>
      <section class="stage" aria-label=${words.brakeDrawing}><takeup-stage class="drawn" ?still=${!this.#has('zoom')} .session=${session} .station=${this.#station} .foot=${0}></takeup-stage></section>
      ${this.#has('readings') ? this.#readings() : nothing}
      ${
        pedal || drum || names
          ? html`<div class="row">${drum ? this.#drum() : nothing}${names ? this.#names() : nothing}${pedal ? html`<takeup-pedal .session=${session} .bar=${session.pressure / this.#kit.BAR}></takeup-pedal>` : nothing}</div>`
          : nothing
      }
      ${this.#has('link') ? html`<a href=${this.#bench()} target="_blank" rel="noopener">${words.openItOnTheBench}</a>` : nothing}
      <div class="hidden" role="status">${this.#told}</div>`;
  }

  /** The same moment on the bench itself. */
  #bench(): string {
    const query = new URLSearchParams(location.search);
    for (const ours of ['controls', 'view']) query.delete(ours);
    const text = query.toString();
    return `./${text === '' ? '' : `?${text}`}${location.hash}`;
  }
}
customElements.define('takeup-embed', TakeupEmbed);
