import { css, html, LitElement, nothing, unsafeCSS } from 'lit';
import type { Point } from '../../sim/index.ts';
import { appStageView as said } from '../../sim/words/en.ts';
import { COMPACT, NARROW, pageSize } from '../pieces/page-sizes.ts';
import { dialsOn } from '../record/dials.ts';
import { Kept } from '../record/kept.ts';
import { MOST_ZOOM, WHOLE, type Zoom, zoomTo } from '../record/view.ts';
import type { Session } from '../session.ts';
import { LabelLayer, labelStyles } from '../stage/labels.ts';
import type { NumberedName } from '../stage/layers/names.ts';
import { loupeData } from '../stage/loupe.ts';
import { PaintedStage } from '../stage/painted-stage.ts';
import type { BrakeDrawing } from '../stage/scene.ts';
import { settle } from '../stage/settle.ts';
import type { Drawing } from '../stage/shapes.ts';
import { toMm, zoomView } from '../stage/view.ts';
import type { Station } from '../stations/station.ts';
import { type ThemeName, themes } from '../theme.ts';
import { PartPointer, pointerStyles } from './part-pointer.ts';
import {
  drawStage,
  homeAt,
  inputAt,
  isKey,
  isSmall,
  lensAt,
  type StageAt,
  takenAt,
  viewAt,
} from './stage-drawing.ts';

/** Texts are put at most this often, ms, where pictures are far apart half as often: to lay them out is dear. */
const TEXTS_EVERY = 100;
/** What may be wanted for later pictures is prepared in pieces, so far apart, ms. */
const STOCK_EVERY = 400;
/** One press of a button or key zooms by this. */
const ZOOM = 1.25;
/** One press of Shift and an arrow moves by this, px. */
const PAN = 60;
const ways = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
} as const;

/** The stage: the brake painted by Pixi with its texts over it, zoom and pan. */
export class StageView extends LitElement {
  static override properties = {
    session: { attribute: false },
    station: { attribute: false },
    foot: { type: Number },
    bow: { attribute: false },
    still: { type: Boolean },
  };
  declare session: Session;
  declare station: Station;
  /** px kept free at the foot. */
  declare foot: number;
  /** Draws the bow of shoes that bend; left out until it is loaded. */
  declare bow: StageAt['bow'];
  /** Is neither zoomed nor moved. */
  declare still: boolean;
  #painter: PaintedStage | null = null;
  #labels: LabelLayer | null = null;
  #size = { width: 0, height: 0 };
  #textsAt = 0;
  #pointers = new Map<number, Point>();
  #theme: ThemeName | '' = '';
  readonly #pointer = new PartPointer();
  #drawings: readonly Drawing[] = [];
  readonly #last = new Kept<BrakeDrawing>();
  #ready: ReturnType<typeof drawStage> | null = null;
  /** With their texts as they are shown. */
  #shown: readonly Drawing[] = [];
  /** Where the mouse is, px; null when it is not to be looked up. */
  #hover: Point | null = null;
  /** The pointers that the station has taken, in their order. */
  readonly #grips: number[] = [];
  #names: readonly NumberedName[] = [];
  #numbered = false;
  /** Dials lay over the brake when it was last drawn. */
  #dialled = false;
  /** The brake was a small key when the buttons were last drawn. */
  #wasKey = false;

  constructor() {
    super();
    this.foot = 60;
    this.still = false;
  }

  static override styles = [
    unsafeCSS(labelStyles),
    pointerStyles,
    css`
      :host { position: absolute; inset: 0; display: block; overflow: hidden; touch-action: pan-y; }
      #host { position: absolute; inset: 0; }
      canvas { position: absolute; left: 0; top: 0; width: 100%; height: 100%; }
      /* Zoomed in, a finger moves the brake, not the page. */
      :host([zoomed]) { touch-action: none; }
      .zoom { position: absolute; top: 30px; left: 30px; display: flex; align-items: center; background: var(--sheet); }
      .zoom span { font-size: 14px; font-weight: 560; color: var(--ink2); margin-right: 8px; }
      .zoom button { font: inherit; font-size: 16px; font-weight: 640; width: 36px; min-height: 32px; padding: 0; border: 2px solid var(--ink); margin-left: -2px; background: var(--sheet); color: var(--ink); cursor: pointer; }
      .zoom .sign { font-size: 22px; line-height: 1; }
      .zoom button[aria-disabled='true'] { color: var(--off); cursor: default; }
      .zoom button:focus-visible { outline: 4px solid var(--trail); outline-offset: 2px; z-index: 1; }
      @media ${COMPACT} { .zoom { top: 4px; left: 14px; } }
      :host([wall]) .zoom { top: auto; bottom: 12px; left: 34px; }
      :host([wall]) .zoom span { display: none; }
      :host([wall]) .zoom button { font-size: 34px; width: 72px; min-height: 64px; border-width: 4px; }
      @media ${NARROW} {
        .zoom { left: 0; top: auto; bottom: var(--foot); background: none; }
        .zoom span { display: none; }
        /* A thumb high, drawn lower: so it stays clear of the drum. */
        .zoom button { width: 56px; min-height: 56px; border: solid transparent; border-width: 12px 0 0; background-clip: padding-box; box-shadow: inset 0 0 0 2px var(--ink); }
        .zoom .sign { font-size: 30px; }
      }
    `,
  ];

  override connectedCallback(): void {
    super.connectedCallback();
    this.addEventListener('wheel', this.#wheel, { passive: false });
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.removeEventListener('wheel', this.#wheel);
    this.#painter?.destroy();
    this.#labels?.destroy();
    this.#painter = null;
    this.#labels = null;
  }

  protected override firstUpdated(): void {
    const host = this.renderRoot.querySelector<HTMLElement>('#host');
    if (!host) return;
    const painter = new PaintedStage(host, themes[this.session.theme]);
    painter.onResize = (width, height) => {
      this.#size = { width, height };
      this.#textsAt = 0;
      this.#ready = null;
    };
    this.#size = { width: host.clientWidth, height: host.clientHeight };
    this.#labels = new LabelLayer(host);
    this.#theme = this.session.theme;
    this.#painter = painter;
  }

  /** Which renderer paints; empty before it is there. */
  get painter(): string {
    return this.#painter?.kind ?? '';
  }

  /** A graphics card paints from here on, where there is one; where it cannot be had, the canvas goes on. */
  async bringCard(): Promise<void> {
    await this.#painter?.bringCard().catch(() => undefined);
    const stock = (): void => {
      if (this.#painter?.stock()) setTimeout(stock, STOCK_EVERY);
    };
    setTimeout(stock, STOCK_EVERY);
  }

  /** What the drawing depends on beside the session. */
  get at(): StageAt {
    const { session, station, foot, bow } = this;
    return { session, station, foot, bow, ...this.#size, size: pageSize(), zoom: this.#zoom };
  }

  /** Where the counter's card sits, px; null without a loupe. */
  get cardAt(): Point | null {
    if (this.#size.width === 0) return null;
    const at = this.at;
    const lens = lensAt(at);
    if (!lens) return null;
    const instant = this.station.shown?.(this.session) ?? this.session.instant();
    return this.#unmirrored(loupeData(inputAt(at, instant), lens).rim);
  }

  /**
   * Makes the present moment ready, all but its painting. What `draw` finds ready it does not make again, as long as it is
   * told that this is still the moment.
   */
  ready(): void {
    const painter = this.#painter;
    if (!painter || this.#size.width === 0 || this.#theme !== this.session.theme) return;
    this.#ready = drawStage({ ...this.at, last: this.#last });
    painter.ready(this.#pointer.outlined(this.#ready.drawings));
  }

  /**
   * Paints the present moment; called once a frame.
   *
   * @param slow pictures are far apart
   * @param ready what was made ready is still to be painted
   */
  draw(now: number, slow = false, ready = false): void {
    const painter = this.#painter;
    const { session } = this;
    if (!painter || this.#size.width === 0) return;
    if (this.#theme !== session.theme) {
      this.#theme = session.theme;
      painter.setTheme(themes[session.theme]);
      this.#textsAt = 0;
    }
    const made = ready ? this.#ready : null;
    this.#ready = null;
    const { drawings, names, numbered } = made ?? drawStage({ ...this.at, last: this.#last });
    this.#drawings = drawings;
    painter.draw(this.#pointer.outlined(drawings));
    if (now - this.#textsAt >= (slow ? 2 : 1) * TEXTS_EVERY) {
      this.#textsAt = now;
      if (dialsOn(session.moment) !== this.#dialled) this.requestUpdate();
      else if (this.#dialled)
        this.renderRoot.querySelector<LitElement>('takeup-dials')?.requestUpdate?.();
      this.#shown = settle(drawings, takenAt(this.at));
      this.#labels?.draw(this.#shown);
      if (this.#hover) this.#pointer.point(drawings, this.#hover);
      if (this.#hover || this.#pointer.at) this.requestUpdate();
      this.#names = names;
      this.#numbered = numbered;
      if (isKey(this.at) !== this.#wasKey) this.requestUpdate();
    }
  }

  /** Numbered names where there is no room for words. */
  get names(): readonly NumberedName[] {
    return this.#names;
  }

  /** What is shown, from the lowest to the topmost. */
  get drawings(): readonly Drawing[] {
    return this.#shown;
  }

  /** All names are numbers, and need their list beside the drawing. */
  get numbered(): boolean {
    return this.#numbered;
  }

  /** One at a time: the brake in full, or what the station lays over it. */
  get small(): boolean {
    return this.#size.width > 0 && isSmall({ size: pageSize(), width: this.#size.width });
  }

  get #zoom(): Zoom {
    return this.session.moment.view.zoom;
  }

  #zoomTo(factor: number, at: Point): void {
    if (this.still) return;
    const next = Math.max(1, Math.min(MOST_ZOOM, factor));
    if (next === 1) this.session.do(zoomTo, WHOLE);
    else {
      // The point under the pointer stays where it is.
      const before = viewAt(this.at);
      const view = zoomView(before, next / this.#zoom.factor, at);
      const home = homeAt(this.at);
      this.session.do(zoomTo, {
        factor: next,
        dx: view.origin[0] - home.origin[0],
        dy: view.origin[1] - home.origin[1],
      });
    }
    this.#textsAt = 0;
    this.requestUpdate();
  }

  /** Zoom about the middle of the stage by keys or buttons; 0 resets. */
  zoom(factor: number): void {
    const at: Point = [this.#size.width / 2, (this.#size.height - this.foot) / 2];
    this.#zoomTo(factor === 0 ? 1 : this.#zoom.factor * factor, at);
  }

  /** Moves the zoomed brake by px of the screen. */
  pan(across: number, down: number): void {
    const { factor, dx, dy } = this.#zoom;
    if (factor === 1 || this.still) return;
    const sense = this.session.wheel === 'right' ? -1 : 1;
    this.session.do(zoomTo, { factor, dx: dx + sense * across, dy: dy + down });
    this.#textsAt = 0;
  }

  #local(e: MouseEvent): Point {
    const box = this.getBoundingClientRect();
    return [e.clientX - box.left, e.clientY - box.top];
  }

  /** A place of the screen as the drawing was made, before its mirroring. */
  #unmirrored([x, y]: Point): Point {
    return this.session.wheel === 'right' ? [this.#size.width - x, y] : [x, y];
  }

  #wheel = (e: WheelEvent): void => {
    e.preventDefault();
    this.#zoomTo(this.#zoom.factor * 1.0015 ** -e.deltaY, this.#unmirrored(this.#local(e)));
  };

  #down = (e: PointerEvent): void => {
    const at = this.#local(e);
    this.#pointer.point(this.#drawings, at);
    const { takes } = this.station;
    const finger = this.#grips.length;
    if (
      takes &&
      finger < takes.fingers &&
      takes.down(this.session, this.#mm(at), this.#pointer.at, finger)
    ) {
      this.#grips.push(e.pointerId);
      this.#pointer.clear();
      this.#hover = null;
      (e.currentTarget as HTMLElement).setPointerCapture(e.pointerId);
      this.requestUpdate();
      return;
    }
    this.#pointers.set(e.pointerId, at);
    this.#say();
    (e.currentTarget as HTMLElement).setPointerCapture(e.pointerId);
  };

  #move = (e: PointerEvent): void => {
    const finger = this.#grips.indexOf(e.pointerId);
    if (finger >= 0) {
      this.station.takes?.move(this.session, this.#mm(this.#local(e)), finger);
      return;
    }
    if (e.pointerType === 'mouse') this.#hover = this.#local(e);
    const before = this.#pointers.get(e.pointerId);
    if (!before) return;
    const now = this.#local(e);
    const other = [...this.#pointers].find(([id]) => id !== e.pointerId)?.[1];
    if (other) {
      const was = Math.hypot(before[0] - other[0], before[1] - other[1]);
      const is = Math.hypot(now[0] - other[0], now[1] - other[1]);
      const middle: Point = [(now[0] + other[0]) / 2, (now[1] + other[1]) / 2];
      if (was > 0) this.#zoomTo((this.#zoom.factor * is) / was, this.#unmirrored(middle));
    } else if (this.#zoom.factor > 1) {
      this.pan(now[0] - before[0], now[1] - before[1]);
    }
    this.#pointers.set(e.pointerId, now);
  };

  #up = (e: PointerEvent): void => {
    this.#pointers.delete(e.pointerId);
    const finger = this.#grips.indexOf(e.pointerId);
    if (finger < 0) return;
    this.#grips.splice(finger, 1);
    this.station.takes?.up(this.session, finger);
  };

  /** A place of the screen in the brake, mm. */
  #mm(px: Point): Point {
    return toMm(viewAt(this.at), this.#unmirrored(px));
  }

  #leave = (): void => {
    if (!this.#hover) return;
    this.#hover = null;
    this.#pointer.clear();
    this.requestUpdate();
  };

  #say(): void {
    const { at } = this.#pointer;
    // Where a part is asked for, it is the answer.
    if (at && this.session.asked) this.dispatchEvent(new CustomEvent('part', { detail: at.part }));
    else {
      if (at) this.session.reveal(at.part);
      this.#pointer.say(this.session);
    }
    this.requestUpdate();
  }

  /** Arrow keys go from part to part, with Shift they move the zoomed brake; Escape lets go. */
  #key = (e: KeyboardEvent): void => {
    const way = ways[e.key as keyof typeof ways];
    if (e.shiftKey && way) {
      this.pan(way[0] * PAN, way[1] * PAN);
      e.preventDefault();
      return;
    }
    const by = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 } as const;
    const step = by[e.key as keyof typeof by];
    const whole = this.#drawings[0];
    if (step && whole) {
      this.#hover = null;
      this.#pointer.step(whole, step);
      if (this.session.asked) {
        this.#pointer.say(this.session);
        this.requestUpdate();
      } else this.#say();
    } else if (e.key === 'Enter' && this.session.asked) {
      this.#say();
    } else if (e.key === 'Escape') {
      this.#pointer.clear();
      this.requestUpdate();
    } else return;
    e.preventDefault();
  };

  override render() {
    return html`<div id="host" tabindex="0" role="application" aria-label=${said.brakeArrowKeysGoFrom} @keydown=${this.#key} @pointerleave=${this.#leave} @pointerdown=${this.#down} @pointermove=${this.#move} @pointerup=${this.#up} @pointercancel=${this.#up}></div>
      ${this.#dialHandles()}
      ${this.#pointer.card(this.session, this.foot)}
      ${this.#zoomButtons()}`;
  }

  #dialHandles() {
    this.#dialled = dialsOn(this.session.moment);
    return this.#dialled && !this.session.wall && !isKey(this.at)
      ? html`<takeup-dials .session=${this.session} .under=${this}></takeup-dials>`
      : nothing;
  }

  protected override updated(): void {
    this.toggleAttribute('zoomed', this.#zoom.factor > 1 || this.station.takes !== undefined);
    this.toggleAttribute('wall', this.session.wall);
  }

  /** On the wall only when somebody zoomed; none where the brake is a small key beside something else. */
  #zoomButtons() {
    const zoomed = this.#zoom.factor > 1;
    if (this.still || (this.session.wall && !zoomed)) return nothing;
    this.#wasKey = this.#size.width > 0 && isKey(this.at);
    if (this.#wasKey || this.station.draws) return nothing;
    return html`<div class="zoom" role="group" aria-label=${said.zoom} .style=${`--foot:${this.foot}px`}>
      <span aria-hidden="true">${said.zoom}</span>
      <button class="sign" aria-label=${said.zoomOut} title=${said.zoomOut2} aria-disabled=${!zoomed} @click=${() => this.zoom(1 / ZOOM)}>−</button>
      <button class="sign" aria-label=${said.zoomIn} title=${said.zoomIn2} @click=${() => this.zoom(ZOOM)}>+</button>
      <button aria-label=${said.of0WholeBrake} title=${said.wholeBrake0} aria-disabled=${!zoomed} @click=${() => this.zoom(0)}>0</button>
    </div>`;
  }
}
customElements.define('takeup-stage', StageView);
