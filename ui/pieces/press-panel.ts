import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { piecesPressPanel as texts } from '../../sim/words/en.ts';
import { wordsOf } from '../adjusters.ts';
import type { Phase } from '../click-show.ts';
import { number } from '../format.ts';
import { paceName } from '../pace.ts';
import type { Session } from '../session.ts';
import type { Climb } from '../shown-press.ts';
import { NARROW } from './page-sizes.ts';

/** Least and usual length of the bar, mm between the strut's seats. */
const LONG = 1.5;

/** The stages of a press, each in a word. */
const STAGES: Readonly<Record<Phase, string>> = texts.stages;

/** What happens now, in the words of the one who shows it. */
export function pressSays(session: Session, c: Climb): string {
  const { step } = wordsOf(session.brake);
  const part = Math.min(99, Math.floor((100 * (c.most - c.slot)) / (c.needed - c.slot)));
  const share = part > 0 ? texts.ofItsTooth(number(part, 0)) : texts.nothingOfItsTooth;
  const back = c.slot >= c.most ? texts.itsPlayWasNotUsed : texts.itClimbed(share);
  const told: Readonly<Record<Phase, string>> = {
    rest: texts.thePedalGoesDownThe,
    out: texts.theShoesGoOutThe,
    climb: texts.pastThePlayTheLever,
    drop: texts.overTheCrestItDrops,
    ring: texts.clickTheStrutIsLonger(step === 'click' ? texts.tooth : step, number(c.tooth, 0)),
    held: texts.andMoreIsNeeded(back),
    release: c.clicks ? texts.thePedalIsLetGo : texts.andFallsBackNo(back, step),
  };
  if (c.phase) return told[c.phase];
  if (!Number.isFinite(c.needed)) return texts.theLastToothIsIn;
  if (c.most >= c.needed - 1e-6) return texts.aPressThatS(step);
  if (session.pedal > 0 && c.most > c.slot) return texts.itClimbs(share);
  if (session.pedal > 0) return texts.theShoesGoOutThe;
  if (c.most > c.slot) return texts.theLastPressClimbedAnd(share);
  return texts.pressTheBarShowsHow;
}

/** How far the shoes part at the strut, of what the next tooth takes: it follows the moving brake, or a press that is shown. */
export class PressPanel extends LitElement {
  static override properties = { session: { attribute: false } };
  declare session: Session;
  #frame = 0;

  static override styles = css`
    :host { display: block; position: absolute; left: 0; right: 0; background: var(--sheet); border-top: 2px solid var(--ink); z-index: 2; padding: 8px 34px 10px; box-sizing: border-box; overflow: hidden; --low: 24px; }
    .head { display: flex; align-items: baseline; gap: 18px; font-size: 18px; font-weight: 640; line-height: 1.2; min-height: 34px; }
    .head p { margin: 0; flex: 1; min-width: 0; }
    .head span { font-weight: 560; color: var(--ink2); white-space: nowrap; font-size: 16px; }
    .head b { color: var(--adj); font-weight: 760; }
    button { font: inherit; font-size: 16px; font-weight: 640; min-height: 34px; padding: 0 14px; border: 2px solid var(--ink); background: var(--sheet); color: var(--ink); cursor: pointer; align-self: center; white-space: nowrap; }
    button:focus-visible { outline: 4px solid var(--trail); outline-offset: 2px; }
    .words { position: relative; height: 1.35em; font-size: 16px; font-weight: 680; line-height: 1.3; }
    .words span { position: absolute; white-space: nowrap; }
    .there { transform: translateX(-100%); padding-right: 6px; }
    .there.start { transform: none; padding-left: 6px; }
    .needed { color: var(--adj); padding-left: 6px; }
    .bar { position: relative; height: var(--low); border: 2px solid var(--ink); box-sizing: border-box; background: var(--sheet); }
    .bar i { position: absolute; top: 0; bottom: 0; }
    .slot { left: 0; background: repeating-linear-gradient(135deg, var(--ink2) 0 1.5px, transparent 1.5px 8px); border-right: 2px solid var(--ink2); box-sizing: border-box; }
    .climb { background: var(--adj); }
    .most { width: 2px; background: var(--ink); }
    .mark { width: 4px; margin-left: -2px; top: -9px !important; bottom: -5px !important; background: var(--adj); }
    :host([size='middle']) { padding: 5px 14px 7px; --low: 18px; }
    :host([size='middle']) .head { font-size: 16px; min-height: 30px; }
    :host([size='middle']) .head span, :host([size='middle']) .words, :host([size='middle']) button { font-size: 14.5px; }
    :host([size='middle']) button { min-height: 30px; }
    :host([wall]) { position: static; border: 0; padding: 0; --low: 48px; }
    :host([wall]) .head { flex-direction: column; gap: 6px; font-size: 40px; min-height: 3.7em; }
    :host([wall]) .head span, :host([wall]) .words { font-size: 34px; }
    :host([wall]) button { display: none; }
    /* In the place of a strip there is room for what happens one after the other. */
    ol { display: none; list-style: none; margin: 14px 0 0; padding: 0; gap: 10px; grid-auto-flow: column; grid-auto-columns: minmax(0, 1fr); }
    li { border: 2px solid var(--rule); padding: 6px 12px; font-size: 20px; font-weight: 640; line-height: 1.2; color: var(--ink2); }
    li small { display: block; font-size: 15px; font-weight: 540; }
    li.on { border-color: var(--ink); box-shadow: inset 0 0 0 3px var(--ink); color: var(--ink); }
    :host([roomy]) ol { display: grid; }
    :host([roomy]) { padding-top: 16px; }
    :host([roomy][size='wide']) { --low: 52px; }
    :host([roomy][size='wide']) .head { font-size: 26px; min-height: 48px; }
    :host([roomy][size='wide']) .head span, :host([roomy][size='wide']) .words { font-size: 21px; }
    :host([roomy][size='middle']) { padding-top: 8px; --low: 26px; }
    :host([roomy][size='middle']) ol { margin-top: 10px; }
    :host([roomy][size='middle']) li { font-size: 16px; padding: 4px 8px; }
    :host([roomy][size='middle']) li small { font-size: 13.5px; }
    @media ${NARROW} {
      :host([roomy]) { padding-top: 5px; }
      li { padding: 2px 5px; font-size: 14px; }
      li small { display: none; }
      ol { margin-top: 8px; gap: 4px; }
      :host { padding: 5px 12px 8px; --low: 20px; }
      .head { font-size: 15px; gap: 8px; align-items: center; min-height: 48px; }
      .head span, .words { font-size: 14px; }
      button { min-height: 48px; font-size: 15px; }
    }
  `;

  override connectedCallback(): void {
    super.connectedCallback();
    const tick = (): void => {
      this.requestUpdate();
      this.#frame = requestAnimationFrame(tick);
    };
    this.#frame = requestAnimationFrame(tick);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    cancelAnimationFrame(this.#frame);
  }

  #bar(c: Climb): TemplateResult {
    const long = Math.max(LONG, 1.3 * c.needed || 0, 1.02 * c.most);
    const at = (mm: number): string => `${((100 * mm) / long).toFixed(2)}%`;
    const low = c.there < 0.22 * long;
    return html`<div class="words"><span class="there ${low ? 'start' : ''}" .style=${`left:${at(c.there)}`}>${texts.there(html`<b data-there>${number(c.there, 2)}</b>`)}</span>
      ${Number.isFinite(c.needed) ? html`<span class="needed" .style=${`left:${at(c.needed)}`}>${texts.needed(html`<b data-needed>${number(c.needed, 2)}</b>`)}</span>` : nothing}</div>
      <div class="bar"><i class="slot" .style=${`width:${at(Math.min(c.there, c.slot))}`}></i>
      <i class="climb" .style=${`left:${at(c.slot)};width:${at(Math.max(0, c.there - c.slot))}`}></i>
      ${c.most > c.there + 0.005 ? html`<i class="most" .style=${`left:${at(c.most)}`}></i>` : nothing}
      ${Number.isFinite(c.needed) ? html`<i class="mark" .style=${`left:${at(c.needed)}`}></i>` : nothing}</div>`;
  }

  /** Its stages, one after the other, with how long each lasts in the brake's own time. */
  #stages(): TemplateResult | typeof nothing {
    const { stages } = this.session.show;
    if (stages.length === 0) return nothing;
    return html`<ol>${stages.map(
      ({ phase, from, to, on }) =>
        html`<li class=${on ? 'on' : ''} aria-current=${on ? 'step' : nothing}>${STAGES[phase]}<small>${number(1000 * (to - from), to - from > 0.02 ? 0 : 1)} ms</small></li>`,
    )}</ol>`;
  }

  override render() {
    const { session } = this;
    const c = session.climb;
    return html`<div role="group" aria-label=${texts.shoesApartAtTheStrut}>
      <div class="head"><p data-phase=${c.phase ?? 'now'}>${pressSays(session, c)}</p><span>${texts.time(paceName(c.pace))}</span>
      ${session.showing ? html`<button data-skip @click=${() => session.skipShow()}>${texts.skipAnyKey}</button>` : nothing}</div>
      ${this.#bar(c)}${this.#stages()}</div>`;
  }
}
customElements.define('takeup-press', PressPanel);
