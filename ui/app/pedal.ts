import { css, html, LitElement, nothing } from 'lit';
import { appPedal as words } from '../../sim/words/en.ts';
import { COMPACT, NARROW } from '../pieces/page-sizes.ts';
import { MOST_BAR, PRESS_BAR, type Session } from '../session.ts';

/** The pedal: press and hold, drag along it, or keys. A slider in bar for assistive software. */
export class Pedal extends LitElement {
  static override properties = { session: { attribute: false }, bar: { type: Number } };
  declare session: Session;
  declare bar: number;
  #held = false;

  constructor() {
    super();
    this.bar = 0;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.session.addEventListener('change', this.#changed);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.session.removeEventListener('change', this.#changed);
  }

  /** Whoever pressed sees at once where the pedal goes, before the brake is worked out and drawn. */
  #changed = (): void => this.requestUpdate();

  static override styles = css`
    :host { display: block; }
    .pad { position: relative; border: 2px solid var(--ink); height: var(--pad, 72px); overflow: hidden; display: flex; align-items: center; justify-content: space-between; padding: 0 20px; cursor: pointer; touch-action: none; user-select: none; -webkit-user-select: none;
      background: repeating-linear-gradient(90deg, transparent 0 15px, color-mix(in srgb, var(--ink) 16%, transparent) 15px 20px); }
    .pad:focus-visible { outline: 4px solid var(--trail); outline-offset: 2px; }
    .fill { position: absolute; inset: 0 auto 0 0; background: color-mix(in srgb, var(--fluid) 32%, transparent); border-right: 5px solid var(--fluid); }
    .fill.none { border: 0; }
    .to { position: absolute; inset: 0 auto 0 0; border-right: 5px solid color-mix(in srgb, var(--fluid) 55%, transparent); }
    b { position: relative; font-size: 29px; font-weight: 780; background: var(--sheet); padding: 2px 12px; border: 2px solid var(--ink); }
    span { position: relative; background: var(--sheet); padding: 4px 12px; font-weight: 620; font-size: 18px; border: 1px solid var(--rule); }
    @media ${COMPACT} { b { font-size: 24px; } span { font-size: 15.5px; } .pad { height: var(--pad, 74px); } }
    @media ${NARROW} { .pad { height: 112px; } b { font-size: 32px; } span { font-size: 17px; } }
  `;

  #at(e: PointerEvent): number {
    const box = (e.currentTarget as HTMLElement).getBoundingClientRect();
    return ((e.clientX - box.left) / box.width) * MOST_BAR;
  }

  #down = (e: PointerEvent): void => {
    const pad = e.currentTarget as HTMLElement;
    // The finger may slide off the pad without letting go.
    pad.setPointerCapture(e.pointerId);
    pad.focus();
    this.#held = true;
    this.session.press(Math.round(this.#at(e)));
    e.preventDefault();
  };

  #move = (e: PointerEvent): void => {
    if (this.#held) this.session.press(Math.round(this.#at(e)));
  };

  #up = (): void => {
    if (!this.#held) return;
    this.#held = false;
    this.session.release();
  };

  #key = (e: KeyboardEvent): void => {
    const { session } = this;
    const steps: Record<string, number> = {
      ArrowRight: 1,
      ArrowUp: 1,
      ArrowLeft: -1,
      ArrowDown: -1,
      PageUp: 10,
      PageDown: -10,
    };
    const step = steps[e.key];
    if (step !== undefined) session.pressTo(Math.round(session.pedal) + step);
    else if (e.key === 'Home' || e.key === 'Escape') session.release();
    else if (e.key === 'End') session.pressTo(MOST_BAR);
    else if (e.key === 'Enter') session.pressTo(session.pedal > 0 ? 0 : PRESS_BAR);
    else return;
    e.preventDefault();
    e.stopPropagation();
  };

  override render() {
    const bar = Math.round(this.bar);
    const { pedal } = this.session;
    const at = (value: number): string => `width:${(100 * value) / MOST_BAR}%`;
    return html`<div class="pad" part="pad" role="slider" tabindex="0" aria-label=${words.pedal} aria-valuemin="0" aria-valuemax=${MOST_BAR} aria-valuenow=${bar} aria-valuetext=${`${bar} bar`}
      @pointerdown=${this.#down} @pointermove=${this.#move} @pointerup=${this.#up} @pointercancel=${this.#up} @keydown=${this.#key}>
      <i class=${bar > 0 ? 'fill' : 'fill none'} .style=${at(this.bar)}></i>
      ${Math.abs(pedal - this.bar) > 0.5 ? html`<i class="to" .style=${at(pedal)}></i>` : nothing}
      <b>${words.pedal}</b><span>${bar > 0 ? words.ofBar(bar, MOST_BAR) : words.holdOrDrag}</span></div>`;
  }
}
customElements.define('takeup-pedal', Pedal);
