import { css, html, LitElement } from 'lit';
import { handsPad as words } from '../../../sim/words/en.ts';
import { number } from '../../format.ts';
import { COMPACT, NARROW } from '../../pieces/page-sizes.ts';
import type { HandsDesk } from './desk.ts';

/** One press of an arrow key pulls so much more, N; with Page keys five times as much. */
const STEP = 10;

/** Pull by keys or by drawing along the pad: level, to either side. A slider in newtons for assistive software. */
export class HandPad extends LitElement {
  static override properties = {
    desk: { attribute: false },
    force: { type: Number },
    level: { type: Number },
  };
  declare desk: HandsDesk;
  /** What the hand feels, and its pull to the right as set, N. */
  declare force: number;
  declare level: number;
  #held = false;

  constructor() {
    super();
    this.force = 0;
    this.level = 0;
  }

  static override styles = css`
    :host { display: block; min-width: 0; }
    .pad { position: relative; border: 2px solid var(--ink); height: 62px; overflow: hidden; display: flex; align-items: center; justify-content: space-between; padding: 0 12px; cursor: pointer; touch-action: none; user-select: none; -webkit-user-select: none;
      background: repeating-linear-gradient(90deg, transparent 0 15px, color-mix(in srgb, var(--ink) 16%, transparent) 15px 20px); }
    .pad:focus-visible { outline: 4px solid var(--trail); outline-offset: 2px; }
    i { position: absolute; top: 0; bottom: 0; background: color-mix(in srgb, var(--warn) 70%, transparent); }
    b, span { position: relative; background: var(--sheet); white-space: nowrap; }
    b { font-size: 28px; font-weight: 780; padding: 1px 12px; border: 2px solid var(--ink); }
    span { padding: 4px 10px; font-weight: 620; font-size: 16px; border: 1px solid var(--rule); }
    @media ${COMPACT} { .pad { height: 56px; } b { font-size: 24px; } span { font-size: 14.5px; } }
    @media ${NARROW} { .pad { height: 84px; } b { font-size: 28px; } span { font-size: 16px; } }
  `;

  /** Sense of the screen: a right-hand wheel is drawn mirrored. */
  get #sense(): 1 | -1 {
    return this.desk.session.wheel === 'right' ? -1 : 1;
  }

  #at(e: PointerEvent): number {
    const box = (e.currentTarget as HTMLElement).getBoundingClientRect();
    const share = (2 * (e.clientX - box.left)) / box.width - 1;
    return this.#sense * Math.max(-1, Math.min(1, share)) * this.desk.limit;
  }

  #pullTo(newton: number): void {
    if (!this.desk.record.hold) this.desk.take();
    const { level } = this.desk;
    this.desk.pull(newton - level, 0);
  }

  #down = (e: PointerEvent): void => {
    const pad = e.currentTarget as HTMLElement;
    // The finger may slide off the pad without letting go.
    pad.setPointerCapture(e.pointerId);
    pad.focus();
    this.#held = true;
    this.#pullTo(this.#at(e));
    e.preventDefault();
  };

  #move = (e: PointerEvent): void => {
    if (this.#held) this.#pullTo(this.#at(e));
  };

  #up = (): void => {
    if (!this.#held) return;
    this.#held = false;
    this.desk.letGo();
  };

  #key = (e: KeyboardEvent): void => {
    const { desk } = this;
    const ways: Record<string, readonly [number, number]> = {
      ArrowRight: [this.#sense, 0],
      ArrowLeft: [-this.#sense, 0],
      ArrowUp: [0, 1],
      ArrowDown: [0, -1],
      PageUp: [5 * this.#sense, 0],
      PageDown: [-5 * this.#sense, 0],
    };
    const way = ways[e.key];
    if (way) desk.pull(STEP * way[0], STEP * way[1]);
    else if (e.key === 'Enter' && !desk.record.hold) desk.take();
    else if (e.key === 'Escape' || e.key === 'Home' || e.key === 'Enter') desk.letGo();
    else return;
    e.preventDefault();
    e.stopPropagation();
  };

  override render() {
    const { desk, force } = this;
    const level = Math.round(this.#sense * this.level);
    const share = (50 * Math.abs(level)) / desk.limit;
    const from = level < 0 ? 50 - share : 50;
    const held = desk.record.hold !== null;
    const text = held ? words.newtons(number(force, 0)) : words.nothingHeld;
    return html`<div class="pad" role="slider" tabindex="0" aria-label=${words.pullOfTheHand} aria-valuemin=${-desk.limit} aria-valuemax=${desk.limit} aria-valuenow=${level} aria-valuetext=${text}
      @pointerdown=${this.#down} @pointermove=${this.#move} @pointerup=${this.#up} @pointercancel=${this.#up} @keydown=${this.#key}>
      <i .style=${`left:${from}%;width:${share}%`}></i>
      <b data-force>${number(force, 0)}&nbsp;N</b><span>${held ? words.arrowsPull : words.drawOrArrows}</span></div>`;
  }
}
customElements.define('takeup-hand-pad', HandPad);
