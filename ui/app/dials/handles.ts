import { css, html, LitElement, nothing, type PropertyValues } from 'lit';
import type { Point } from '../../../sim/index.ts';
import { appDialsHandles as words } from '../../../sim/words/en.ts';
import type { Session } from '../../session.ts';
import { deskOf } from '../../stations/station.ts';
import { type StageAt, viewAt } from '../stage-drawing.ts';
import { DialDesk } from './desk.ts';
import type { Dial } from './dials.ts';
import { knobsOf, perPx } from './knobs.ts';

/** What of the stage the handles lie over. */
interface Under {
  readonly at: StageAt;
}

interface Drag {
  readonly dial: Dial;
  readonly pointer: number;
  /** Where it was taken, px of the window, and its values then. */
  readonly from: Point;
  readonly was: readonly number[];
  to: Point;
}

const ways = {
  ArrowRight: [1, 0],
  ArrowLeft: [-1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
  PageUp: [0, 10],
  PageDown: [0, -10],
} as const;
const BACK = ['Backspace', 'Delete', 'Home'];
/** With Shift an arrow goes so many steps. */
const FAR = 10;

/** The handles of the dials over the stage: taken by pointer and finger, reached by Tab and turned by arrows. */
export class DialHandles extends LitElement {
  static override properties = {
    session: { attribute: false },
    under: { attribute: false },
  };
  declare session: Session;
  declare under: Under;
  #drag: Drag | null = null;
  #frame = 0;

  static override styles = css`
    :host { position: absolute; inset: 0; pointer-events: none; overflow: hidden; }
    div { position: absolute; width: 36px; height: 36px; margin: -18px 0 0 -18px; border-radius: 50%; pointer-events: auto; cursor: grab; touch-action: none; }
    div:active { cursor: grabbing; }
    div:focus-visible { outline: 4px solid var(--trail); outline-offset: 0; }
    @media (pointer: coarse) { div { width: 48px; height: 48px; margin: -24px 0 0 -24px; } }
  `;

  get #desk(): DialDesk {
    return deskOf(DialDesk, this.session);
  }
  get #sense(): 1 | -1 {
    return this.session.wheel === 'right' ? -1 : 1;
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    cancelAnimationFrame(this.#frame);
    this.#drag = null;
  }

  protected override updated(changed: PropertyValues): void {
    // Called by its key: the keyboard is there at once.
    if (!changed.has('session')) return;
    this.renderRoot.querySelector<HTMLElement>('[role=slider]')?.focus({ preventScroll: true });
  }

  #down(e: PointerEvent, dial: Dial): void {
    e.stopPropagation();
    const desk = this.#desk;
    desk.choose(dial);
    const at: Point = [e.clientX, e.clientY];
    this.#drag = {
      dial,
      pointer: e.pointerId,
      from: at,
      to: at,
      was: desk.at(dial),
    };
    (e.currentTarget as HTMLElement).setPointerCapture(e.pointerId);
  }

  /** At most one brake is built for each picture, however many times the pointer moved. */
  #move(e: PointerEvent): void {
    const drag = this.#drag;
    if (!drag || drag.pointer !== e.pointerId) return;
    drag.to = [e.clientX, e.clientY];
    if (this.#frame === 0) this.#frame = requestAnimationFrame(() => this.#turn());
  }

  #turn(): void {
    this.#frame = 0;
    const drag = this.#drag;
    if (!drag) return;
    const { dial, from, to, was } = drag;
    if (!dial.place) {
      this.#desk.turn(dial, [(was[0] as number) + (to[0] - from[0]) * perPx(dial)]);
      return;
    }
    const { scale } = viewAt(this.under.at);
    const by = [(this.#sense * (to[0] - from[0])) / scale, (from[1] - to[1]) / scale] as const;
    this.#desk.turn(
      dial,
      was.map((x, i) => x + (by[i] as number)),
    );
  }

  #up(e: PointerEvent): void {
    if (this.#drag?.pointer !== e.pointerId) return;
    if (this.#frame !== 0) {
      cancelAnimationFrame(this.#frame);
      this.#turn();
    }
    this.#drag = null;
  }

  #key(e: KeyboardEvent, dial: Dial): void {
    if (e.ctrlKey || e.metaKey || e.altKey) return;
    const way = ways[e.key as keyof typeof ways];
    if (BACK.includes(e.key)) this.#desk.back(dial);
    else if (way) {
      const by = e.shiftKey ? FAR : 1;
      // On a right-hand wheel a place goes the way that it is seen to go.
      const across = dial.place ? this.#sense * way[0] : way[0];
      this.#desk.step(dial, by * across, by * way[1]);
    } else return;
    e.preventDefault();
    e.stopPropagation();
  }

  override render() {
    const desk = this.#desk;
    const { at } = this.under;
    if (!desk.on || desk.guest || at.width === 0) return nothing;
    const sense = this.#sense;
    const knobs = knobsOf(desk, this.session.brake, viewAt(at), sense);
    return knobs.map(({ dial, at: [x, y] }) => {
      const [value = 0] = desk.at(dial);
      const [q] = dial.sets;
      return html`<div role="slider" tabindex="0" data-dial=${dial.id} aria-label=${dial.name} aria-valuenow=${value} aria-valuemin=${q?.range[0] ?? 0} aria-valuemax=${q?.range[1] ?? 0} aria-valuetext=${`${desk.told(dial)}${desk.isTurned(dial) ? words.yours(desk.told(dial, desk.home(dial))) : ''}`} title=${words.dragItOrArrowKeys(dial.name, desk.told(dial))} .style=${`left:${(sense < 0 ? at.width - x : x).toFixed(1)}px;top:${y.toFixed(1)}px`}
        @focus=${() => desk.choose(dial)} @keydown=${(e: KeyboardEvent) => this.#key(e, dial)} @dblclick=${() => desk.back(dial)}
        @pointerdown=${(e: PointerEvent) => this.#down(e, dial)} @pointermove=${(e: PointerEvent) => this.#move(e)} @pointerup=${(e: PointerEvent) => this.#up(e)} @pointercancel=${(e: PointerEvent) => this.#up(e)}></div>`;
    });
  }
}
if (!customElements.get('takeup-dials')) customElements.define('takeup-dials', DialHandles);
