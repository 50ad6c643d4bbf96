import { css, html, LitElement } from 'lit';
import { parkPad as words } from '../../../sim/words/en.ts';
import { number } from '../../format.ts';
import { COMPACT, NARROW } from '../../pieces/page-sizes.ts';
import type { ParkDesk } from './desk.ts';
import { MOST_PULL } from './part.ts';

/** The hand lever as a pad: it stays where it is drawn to. A slider in newtons for assistive software. */
export class ParkPad extends LitElement {
  static override properties = {
    desk: { attribute: false },
    cable: { type: Number },
    notches: { type: Number },
  };
  declare desk: ParkDesk;
  declare cable: number;
  declare notches: number;
  #held = false;

  constructor() {
    super();
    this.cable = 0;
    this.notches = 0;
  }

  static override styles = css`
    :host { display: block; }
    .pad { position: relative; border: 2px solid var(--ink); height: var(--pad, 84px); overflow: hidden; display: flex; align-items: center; justify-content: space-between; gap: 8px; padding: 0 14px; cursor: pointer; touch-action: pan-y; user-select: none; -webkit-user-select: none;
      background: repeating-linear-gradient(90deg, transparent 0 17px, color-mix(in srgb, var(--ink) 16%, transparent) 17px 22px); }
    .pad:focus-visible { outline: 4px solid var(--trail); outline-offset: 2px; }
    .fill { position: absolute; inset: 0 auto 0 0; background: color-mix(in srgb, var(--ink) 24%, transparent); border-right: 5px solid var(--ink); }
    b { position: relative; font-size: 24px; font-weight: 780; background: var(--sheet); padding: 2px 10px; border: 2px solid var(--ink); white-space: nowrap; }
    span { position: relative; background: var(--sheet); padding: 4px 10px; font-weight: 620; font-size: 17px; border: 1px solid var(--rule); white-space: nowrap; }
    @media ${COMPACT} { b { font-size: 19px; } span { font-size: 14.5px; } .pad { height: var(--pad, 56px); } }
    @media ${NARROW} { .pad { height: 84px; } b { font-size: 19px; padding: 2px 8px; } span { font-size: 15px; padding: 4px 8px; } }
    @media (max-width: 360px) { .pad { padding: 0 6px; gap: 4px; } b { font-size: 16px; padding: 2px 5px; } span { font-size: 14px; padding: 4px 5px; } }
  `;

  #pullTo(e: PointerEvent): void {
    const box = (e.currentTarget as HTMLElement).getBoundingClientRect();
    const newton = ((e.clientX - box.left) / box.width) * MOST_PULL;
    this.desk.pull(5 * Math.round(newton / 5));
  }

  #down = (e: PointerEvent): void => {
    const pad = e.currentTarget as HTMLElement;
    pad.setPointerCapture(e.pointerId);
    pad.focus();
    this.#held = true;
    this.#pullTo(e);
    e.preventDefault();
  };

  #move = (e: PointerEvent): void => {
    if (this.#held) this.#pullTo(e);
  };

  #up = (): void => {
    this.#held = false;
  };

  #key = (e: KeyboardEvent): void => {
    const { desk } = this;
    const steps: Record<string, number> = {
      ArrowRight: 5,
      ArrowUp: 5,
      ArrowLeft: -5,
      ArrowDown: -5,
    };
    const step = steps[e.key];
    if (step !== undefined) desk.pull(desk.cable + step);
    else if (e.key === 'PageUp') desk.notch(1);
    else if (e.key === 'PageDown') desk.notch(-1);
    else if (e.key === 'Home' || e.key === 'Escape') desk.pull(0);
    else if (e.key === 'End') desk.pull(MOST_PULL);
    else return;
    e.preventDefault();
    e.stopPropagation();
  };

  override render() {
    const cable = Math.round(this.cable);
    const says = cable > 0 ? words.notchesN(number(this.notches, 1), cable) : words.letGoDrag;
    return html`<div class="pad" role="slider" tabindex="0" aria-label=${words.parkingLever} aria-valuemin="0" aria-valuemax=${MOST_PULL} aria-valuenow=${cable} aria-valuetext=${words.nInEachCableNotches(cable, number(this.notches, 1))}
      @pointerdown=${this.#down} @pointermove=${this.#move} @pointerup=${this.#up} @pointercancel=${this.#up} @keydown=${this.#key}>
      <i class="fill" .style=${`width:${(100 * cable) / MOST_PULL}%`}></i><b>${words.parkingLever}</b><span>${says}</span></div>`;
  }
}
customElements.define('takeup-park-pad', ParkPad);
