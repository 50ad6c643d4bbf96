import { html, LitElement, nothing } from 'lit';
import { type Instant, readingOf } from '../../sim/index.ts';
import { number } from '../format.ts';
import { brakes } from '../scenes.ts';
import { type LayerName, PRESS_BAR, Session, type Station } from '../session.ts';
import './stage-view.ts';
import { applyControls, applySide, stepRow } from '../stations/apply.ts';
import { wearControls, wearSide } from '../stations/wear.ts';
import { type ThemeName, themeCss, themes } from '../theme.ts';
import { stations } from '../words.ts';
import type { Find } from './cells.ts';
import { icons, mark } from './icons.ts';
import type { StageView } from './stage-view.ts';
import './pedal.ts';
import '../plot/chart-strip.ts';
import { styles } from './styles.ts';

/** Readings are put on the page at most this often, ms. */
const READ_EVERY = 90;

/** Only wires: stations, stage, keys and the frame loop around one session. */
export class TakeupApp extends LitElement {
  static override styles = styles;
  session: Session;
  #scene = 0;
  #instant: Instant;
  #readAt = 0;
  #before = 0;
  #frame = 0;
  #agreement = 0;
  #spaceHeld = false;
  #dressed: ThemeName | '' = '';
  readonly #colours = new CSSStyleSheet();

  constructor() {
    super();
    this.session = this.#open(0);
    this.#instant = this.session.instant();
  }

  #open(scene: number): Session {
    const session = Session.of(
      brakes[scene],
      matchMedia('(prefers-reduced-motion: reduce)').matches,
    );
    session.addEventListener('change', () => {
      this.#readAt = 0;
    });
    return session;
  }

  /** Puts another brake on the bench, new, with the looks and the station kept. */
  #choose(scene: number): void {
    const before = this.session;
    this.#scene = scene;
    this.session = this.#open(scene);
    this.session.look(before.theme);
    this.session.sound.on = before.sound.on;
    this.session.show(before.station);
    this.#instant = this.session.instant();
    this.requestUpdate();
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.shadowRoot?.adoptedStyleSheets.push(this.#colours);
    window.addEventListener('keydown', this.#key);
    window.addEventListener('keyup', this.#keyUp);
    window.addEventListener('blur', this.#blur);
    this.#frame = requestAnimationFrame(this.#tick);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    window.removeEventListener('keydown', this.#key);
    window.removeEventListener('keyup', this.#keyUp);
    window.removeEventListener('blur', this.#blur);
    cancelAnimationFrame(this.#frame);
  }

  #tick = (now: number): void => {
    const seconds = this.#before ? Math.min(0.1, (now - this.#before) / 1000) : 0;
    this.#before = now;
    this.session.frame(seconds);
    this.renderRoot.querySelector<StageView>('takeup-stage')?.draw(now);
    if (now - this.#readAt >= READ_EVERY) {
      this.#readAt = now;
      this.#instant = this.session.instant();
      this.#agreement = this.session.agreement(this.#instant);
      this.requestUpdate();
    }
    this.#frame = requestAnimationFrame(this.#tick);
  };

  /** Keys of the whole page; a focused control keeps its own. */
  #key = (e: KeyboardEvent): void => {
    if (e.ctrlKey || e.metaKey || e.altKey) return;
    const target = e.composedPath()[0] as HTMLElement;
    const inField = target.closest('select, input, textarea') !== null;
    if (inField) return;
    const { session } = this;
    if (e.key === ' ') {
      // Space is the pedal, save on a button, where it presses the button.
      if (target.closest('button')) return;
      if (!this.#spaceHeld && session.station === 'apply') session.pressTo(PRESS_BAR);
      this.#spaceHeld = true;
    } else if (e.key === '1') session.show('apply');
    else if (e.key === '2') session.show('wear');
    else if (e.key === '.') session.oneStep();
    else if (e.key === ',') session.stepBack();
    else if (e.key === '+' || e.key === '=') this.#stage()?.zoom(1.25);
    else if (e.key === '-') this.#stage()?.zoom(0.8);
    else if (e.key === '0') this.#stage()?.zoom(0);
    else return;
    e.preventDefault();
  };

  #keyUp = (e: KeyboardEvent): void => {
    if (e.key !== ' ' || !this.#spaceHeld) return;
    this.#spaceHeld = false;
    this.session.release();
  };

  /** A key let go in another window must not leave the pedal down. */
  #blur = (): void => {
    if (!this.#spaceHeld) return;
    this.#spaceHeld = false;
    this.session.release();
  };

  #stage(): StageView | null {
    return this.renderRoot.querySelector<StageView>('takeup-stage');
  }

  protected override updated(): void {
    const { theme } = this.session;
    if (theme === this.#dressed) return;
    this.#dressed = theme;
    this.#colours.replaceSync(themeCss(themes[theme], ':host'));
  }

  #top() {
    const { session } = this;
    const tab = (s: Station, i: number) =>
      html`<button class=${session.station === s ? 'on' : ''} aria-current=${session.station === s ? 'page' : nothing} @click=${() => session.show(s)}><i>${i}</i>${stations[s].name}</button>`;
    return html`<header class="top"><div class="brand">${mark}Takeup</div>
      <nav class="tabs" aria-label="Stations">${tab('apply', 1)}${tab('wear', 2)}</nav>
      <div class="util">
        <label class="brake">Brake <select aria-label="Brake" @change=${(e: Event) => this.#choose(Number((e.target as HTMLSelectElement).value))}>${brakes.map((b, i) => html`<option value=${i} ?selected=${i === this.#scene}>${b.title}</option>`)}</select></label>
        <button class="view" aria-pressed=${session.bending} title="What shoes of steel that bend would do, beside the rigid ones; new linings only" @click=${() => session.toggleBending()}>Shoes: ${session.bending ? 'rigid, bending beside' : 'rigid'}</button>
        <button class="view" @click=${() => session.look(session.theme === 'sheet' ? 'board' : 'sheet')}>View: ${session.theme === 'sheet' ? 'Sheet' : 'Board'}</button>
        <button aria-pressed=${session.sound.on} @click=${() => session.toggleSound()}>Sound ${session.sound.on ? 'on' : 'off'}</button>
      </div></header>`;
  }

  #layers() {
    const { session } = this;
    const all: readonly [LayerName, string][] = [
      ['fan', `Gap fan ×${session.magnification}`],
      ['comb', 'Pressure comb'],
      ['forces', 'Forces'],
      ['names', 'Names'],
      ['ghost', 'Rest ghost ×8'],
      ['heat', 'Heat'],
      ['loupe', 'Loupe'],
    ];
    const on = all.filter(([name]) => session.layers[name]).map(([, text]) => text);
    return html`<div class="show" role="group" aria-label="Show">${all.map(([name, text]) => html`<button class=${session.layers[name] ? 'on' : ''} aria-pressed=${session.layers[name]} aria-label=${text} @click=${() => session.toggle(name)}>${icons[name]}<span>${text}</span></button>`)}
      <div class="says">On: ${on.join(', ') || 'nothing'}</div></div>`;
  }

  #card() {
    const { session } = this;
    if (!session.layers.loupe) return nothing;
    const flash = session.clock - session.clickedAt < 0.24;
    const tooth = this.#instant.tooth - (session.stepShown > 0 ? 1 : 0);
    return html`<div class="card ${flash ? 'flash' : ''}" .style=${this.#cardPlace()}><b>Tooth</b><strong data-tooth>${tooth}</strong>of ${session.brake.adjuster.teeth}</div>`;
  }

  /** The counter sits at the loupe's rim, clear of the teeth. */
  #cardPlace(): string {
    const stage = this.#stage();
    const at = stage?.cardAt;
    if (!stage || !at) return '';
    const box = stage.getBoundingClientRect();
    if (box.width < 600) return `right:10px;top:${(box.height - this.#foot() - 96).toFixed(0)}px`;
    return `left:${(at[0] + 14).toFixed(0)}px;top:${(at[1] + 8).toFixed(0)}px`;
  }

  #foot(): number {
    const narrow = matchMedia('(max-width: 700px)').matches;
    const middle = matchMedia('(max-width: 1500px)').matches;
    if (this.session.station === 'wear') return narrow ? 210 : middle ? 250 : 300;
    return narrow ? 0 : middle ? 50 : 60;
  }

  override render() {
    const { session } = this;
    const instant = this.#instant;
    const list = session.readings(instant);
    const find: Find = (key) => readingOf(list, key);
    const apply = session.station === 'apply';
    const wide = matchMedia('(min-width: 1501px)').matches;
    const narrow = matchMedia('(max-width: 700px)').matches;
    return html`${this.#top()}
      <main class="work">
        <section class="stage ${apply ? '' : 'long'}" aria-label="Brake drawing">
          <takeup-stage .session=${session} .foot=${this.#foot()}></takeup-stage>
          ${this.#card()}
          ${!narrow && (apply || !wide) ? this.#layers() : nothing}
          ${apply ? nothing : html`<div class="strip"><takeup-chart .session=${session} .rows=${session.trace.length + session.events.length} .theme=${session.theme}></takeup-chart></div>`}
        </section>
        <aside class="side">
          ${apply ? applySide(session, find, instant) : wearSide(session, find, instant)}
          ${narrow ? this.#layers() : nothing}
          ${narrow && apply ? html`<section class="blk steps">${stepRow(session)}</section>` : nothing}
          ${apply ? applyControls(session, session.pressure * 10) : wearControls(session)}
        </aside>
      </main>
      <div class="hidden" role="status">${session.events.at(-1)?.text ?? ''}</div>
      <div class="hidden" data-check=${this.#agreement.toExponential(1)}>Two ways to the same balance differ by ${number(100 * this.#agreement, 2)} %</div>`;
  }
}
customElements.define('takeup-app', TakeupApp);
