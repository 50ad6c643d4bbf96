import { css, html, LitElement, nothing, type TemplateResult, unsafeCSS } from 'lit';
import { labelWords, appTeacher as texts } from '../../sim/words/en.ts';
import type { TeacherAsk, TeacherWords } from '../stations/lessons/teacher-words.ts';
import { themeCss, themes } from '../theme.ts';

/** The teacher's own window: notes, the answer, what comes next, hands and clock, while the wall shows the class's view. */

const two = (n: number): string => String(n).padStart(2, '0');
const clock = (ms: number): string => {
  const s = Math.max(0, Math.floor(ms / 1000));
  return `${Math.floor(s / 60)}:${two(s % 60)}`;
};

export class TeacherWindow extends LitElement {
  static override properties = { words: { state: true }, now: { state: true } };
  /** Null: no lesson is open in the other window. */
  declare words: TeacherWords | null;
  /** The page's clock at its last tick, ms. */
  declare now: number;
  readonly #channel: BroadcastChannel;
  #began = Date.now();
  #step = Date.now();
  #stopped: number | null = null;
  #ticks = 0;

  constructor(name: string) {
    super();
    this.words = null;
    this.now = Date.now();
    this.#channel = new BroadcastChannel(`takeup lesson ${name}`);
  }

  static override styles = [
    unsafeCSS(themeCss(themes.sheet, ':host')),
    css`
    :host { display: grid; grid-template: auto 1fr / 330px minmax(0, 1fr) 340px; min-height: 100vh; background: var(--sheet); color: var(--ink); font: 500 17px/1.35 'Encode Sans Variable', 'Encode Sans', sans-serif; font-feature-settings: 'tnum'; }
    * { box-sizing: border-box; }
    header { grid-column: 1 / 4; display: flex; align-items: center; gap: 26px; border-bottom: 2px solid var(--ink); padding: 8px 18px; }
    h1 { margin: 0 auto 0 0; font-size: 22px; font-weight: 780; }
    header strong { font-size: 30px; font-weight: 800; margin-left: 8px; }
    section { padding: 14px 18px; border-left: 1px solid var(--rule); min-width: 0; }
    section:nth-of-type(1) { border: 0; }
    h2 { margin: 14px 0 4px; font-size: 15px; font-weight: 640; color: var(--ink2); }
    h2:first-child { margin-top: 0; }
    p { margin: 0; }
    .ask { font-size: 28px; line-height: 1.15; font-weight: 780; }
    button { font: inherit; font-weight: 640; color: inherit; background: none; border: 2px solid var(--ink); border-radius: 0; min-height: 44px; padding: 0 12px; cursor: pointer; }
    button:focus-visible { outline: 4px solid var(--trail); outline-offset: 2px; }
    button.p { background: var(--ink); color: var(--sheet); width: 100%; min-height: 60px; font-size: 21px; }
    .choice { display: grid; grid-template-columns: 48px 1fr; border: 2px solid var(--ink); margin-top: 8px; }
    .choice > b { display: grid; place-items: center; font-size: 22px; font-weight: 800; border-right: 2px solid var(--ink); }
    .choice.right > b { background: var(--ink); color: var(--sheet); }
    .choice div { padding: 6px 12px; }
    .choice.mine { box-shadow: 0 0 0 3px var(--ink); }
    .hands { display: grid; grid-template-columns: 44px 52px 1fr 52px; align-items: center; border: 2px solid var(--ink); margin-top: 6px; text-align: center; font-weight: 740; }
    .hands button { border: 0; border-left: 1px solid var(--rule); border-right: 1px solid var(--rule); font-size: 22px; }
    .row { display: grid; grid-template-columns: 1fr 1fr; gap: 8px; margin-top: 8px; }
    ol { list-style: none; margin: 0; padding: 0; }
    ol button { display: flex; gap: 10px; width: 100%; border: 0; border-bottom: 1px solid var(--rule); min-height: 38px; text-align: left; align-items: center; font-weight: 540; padding: 0; }
    ol b { min-width: 26px; text-align: center; border: 2px solid var(--ink); }
    ol .on { font-weight: 780; }
    ol .on b { background: var(--ink); color: var(--sheet); }
    table { width: 100%; border-collapse: collapse; }
    th { text-align: left; font-weight: 540; } td { text-align: right; } th, td { border-bottom: 1px solid var(--rule); padding: 2px 0; }
    .none { grid-column: 1 / 4; padding: 30px; font-size: 22px; }
    .caution { background: var(--warn); color: var(--warn-ink); padding: 6px 10px; margin-top: 10px; font-size: 15px; }
    @media (max-width: 900px) { :host { display: block; } section { border: 0; } }
  `,
  ];

  override connectedCallback(): void {
    super.connectedCallback();
    document.title = texts.takeupForTheTeacher;
    this.#channel.addEventListener('message', this.#hear);
    this.#channel.postMessage('hello');
    this.#ticks = window.setInterval(() => {
      this.now = Date.now();
    }, 500);
    window.addEventListener('keydown', this.#key);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#channel.removeEventListener('message', this.#hear);
    this.#channel.close();
    window.clearInterval(this.#ticks);
    window.removeEventListener('keydown', this.#key);
  }

  #hear = (e: MessageEvent<unknown>): void => {
    const data = e.data as { readonly words?: TeacherWords | null } | string;
    if (typeof data !== 'object' || data === null || !('words' in data)) return;
    const words = data.words ?? null;
    if (words?.title !== this.words?.title) this.#began = this.#step = Date.now();
    else if (words?.at !== this.words?.at) this.#step = Date.now();
    this.words = words;
  };

  #ask(ask: TeacherAsk['ask'], n = 0, by = 0): void {
    this.#channel.postMessage({ ask, n, by });
  }

  /** The keys of the wall work here too. */
  #key = (e: KeyboardEvent): void => {
    if (e.ctrlKey || e.metaKey || e.altKey) return;
    const n = 'abcd'.indexOf(e.key.toLowerCase());
    if (e.key === 'PageDown' || e.key === 'ArrowRight') this.#ask('next');
    else if (e.key === 'PageUp' || e.key === 'ArrowLeft') this.#ask('back');
    else if (e.key === '.') this.#ask('blank');
    else if (e.key === 'w') this.#ask('wall');
    else if (e.key === 'k') this.#ask('again');
    else if (/^[1-9]$/.test(e.key)) this.#ask('go', Number(e.key) - 1);
    else if (n >= 0 && e.key.length === 1) {
      if (e.shiftKey) this.#ask('count', n, 1);
      else this.#ask('choose', n);
    } else return;
    e.preventDefault();
  };

  #stop(): void {
    const { now } = this;
    if (this.#stopped === null) this.#stopped = now;
    else {
      const away = now - this.#stopped;
      this.#began += away;
      this.#step += away;
      this.#stopped = null;
    }
    this.requestUpdate();
  }

  #left(w: TeacherWords): TemplateResult {
    return html`<section aria-label=${texts.theWall}>
      <h2>${texts.onTheWallNow}</h2>
      <p>${w.blank ? texts.nothingTheWallIsBlank : w.wall ? { list: '', ask: texts.theQuestion, showing: texts.whatHappens, told: texts.theOutcome, end: texts.theEnd }[w.phase] : texts.theDeskView}</p>
      ${w.covered ? html`<p><b>${texts.covered}</b> ${w.covered}</p>` : nothing}
      <div class="row"><button aria-pressed=${w.blank} @click=${() => this.#ask('blank')}>${texts.blank}</button><button @click=${() => this.#ask('wall')}>${w.wall ? texts.deskView : texts.wall} (W)</button></div>
      <h2>${w.talk ? texts.moments : texts.steps}</h2>
      <ol>${w.steps.map((s, i) => html`<li><button class=${i === w.at ? 'on' : ''} aria-current=${i === w.at ? 'step' : nothing} @click=${() => this.#ask('go', i)}><b>${i + 1}</b>${s}</button></li>`)}</ol>
      ${w.around.map(([what, text]) => (text ? html`<h2>${what}</h2><p>${text}</p>` : nothing))}</section>`;
  }

  #middle(w: TeacherWords): TemplateResult {
    const note = (what: string, text: string) =>
      text ? html`<h2>${what}</h2><p>${text}</p>` : nothing;
    return html`<section aria-label=${texts.theStep}><h2>${w.place}${w.minutes ? texts.minutes(w.minutes) : ''}</h2><p class="ask">${w.ask}</p>
      ${w.choices.map(
        (
          c,
        ) => html`<div class="choice ${c.right ? 'right' : ''} ${c.mine ? 'mine' : ''}"><b>${c.letter}</b><div><strong>${c.words}</strong>${c.right ? texts.holds : ''}
          ${c.shows ? html`<p>${texts.itShows(c.shows)}</p>` : nothing}${c.back ? html`<p>${texts.giveBack(c.back)}</p>` : nothing}</div></div>`,
      )}
      ${note(texts.behindIt, w.behind)}${note(texts.itShows2, w.shows)}${note(labelWords.why, w.why)}${note(texts.pointAt, w.point)}${note(texts.askNext, w.askNext)}
      ${w.values.length > 0 ? html`<h2>${texts.valuesBeforeAndNow}</h2><table>${w.values.map(([name, before, now]) => html`<tr><th scope="row">${name}</th><td>${before}</td><td><strong>${now}</strong></td></tr>`)}</table>` : nothing}
      ${w.caution ? html`<p class="caution">${w.caution}</p>` : nothing}</section>`;
  }

  #right(w: TeacherWords): TemplateResult {
    const all = w.choices.reduce((sum, c) => sum + c.hands, 0);
    return html`<section aria-label=${texts.whatComesNext}>
      ${w.choices.length > 0 ? html`<h2>${texts.handsFor}</h2>${w.choices.map((c, i) => html`<div class="hands"><span>${c.letter}</span><button aria-label=${texts.oneHandLessFor(c.letter)} @click=${() => this.#ask('count', i, -1)}>−</button><span>${c.hands}</span><button aria-label=${texts.oneHandMoreFor(c.letter)} @click=${() => this.#ask('count', i, 1)}>+</button></div>`)}<p>${texts.theCountsStayBesideThe(all, all === 1 ? texts.hand : texts.hands)}</p>` : nothing}
      <h2>${texts.next}</h2>
      <button class="p" @click=${() => this.#ask('next')}>${w.button}</button>
      <div class="row"><button @click=${() => this.#ask('back')}>${texts.stepBack}</button><button ?disabled=${w.phase !== 'told'} @click=${() => this.#ask('again')}>${texts.showAgain}</button></div>
      ${w.next ? html`<h2>${texts.thenWord}</h2><p>${w.next}</p>` : nothing}</section>`;
  }

  override render() {
    const w = this.words;
    const now = this.#stopped ?? this.now;
    if (!w) {
      return html`<p class="none" role="status">${texts.noLessonIsOpenIn}</p>`;
    }
    return html`<header><h1>${w.title}</h1>
        <span>${texts.lesson(html`<strong data-clock>${clock(now - this.#began)}</strong>`)}</span><span>${texts.thisStep(html`<strong>${clock(now - this.#step)}</strong>`)}</span>
        <button @click=${() => this.#stop()}>${this.#stopped === null ? texts.stopTheClock : texts.goOn}</button></header>
      ${this.#left(w)}${this.#middle(w)}${this.#right(w)}`;
  }
}
customElements.define('takeup-teacher', TeacherWindow);
