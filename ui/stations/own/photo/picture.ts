import { css, html, LitElement, nothing, svg, type TemplateResult } from 'lit';
import { ownPhotoPicture as words } from '../../../../sim/words/en.ts';
import { Hears } from '../../../pieces/hears.ts';
import { NARROW } from '../../../pieces/page-sizes.ts';
import type { Tap } from '../../../record/own-photo.ts';
import type { Session } from '../../../session.ts';
import { deskOf } from '../../station.ts';
import { PhotoDesk } from './desk.ts';
import { throughCamera } from './outlines.ts';
import { numberOf } from './points.ts';

/** The loupe shows so many times what the picture does. */
const LOUPE = 4;
/** A point that is held is moved at this share of the finger's way. */
const HELD = 0.25;
/** A finger this near to the point takes hold of it, CSS px. */
const REACH = 34;
/** A finger that goes no further than that has tapped, CSS px. */
const STILL = 4;
const KEYS = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
} as const;

/** Where the picture lies in its box, CSS px: all of it, in the middle. */
interface Fitted {
  readonly left: number;
  readonly top: number;
  /** CSS px a pixel of the picture. */
  readonly scale: number;
}

/** The picture with the drawing over it, the points and the loupe. */
export class PhotoPicture extends LitElement {
  static override properties = { session: { attribute: false } };
  static override styles = css`
    :host { position: absolute; inset: 0; z-index: 2; display: block; background: #16181a; overflow: hidden; }
    .box { position: absolute; inset: 0; touch-action: none; cursor: crosshair; }
    .box:focus-visible { outline: 4px solid var(--trail); outline-offset: -4px; }
    canvas.all, svg { position: absolute; }
    svg { overflow: visible; pointer-events: none; }
    .line { fill: none; stroke: #fff; stroke-width: 1.6; paint-order: stroke; }
    .under { fill: none; stroke: #000; stroke-opacity: 0.55; stroke-width: 3.4; }
    .guess { stroke-dasharray: 6 4; }
    .at { stroke: #fff; stroke-width: 1.8; }
    .no circle { fill: #fff; stroke: #111; stroke-width: 1.8; }
    .no text { fill: #111; font: 700 14px 'Encode Sans Variable', sans-serif; text-anchor: middle; dominant-baseline: central; }
    .no.now circle { fill: #f4c430; }
    .no.open circle { stroke-dasharray: 3 2.5; }
    .doubt circle { stroke: #ff7a5c; stroke-width: 4; }
    .lens { position: absolute; border: 3px solid #fff; border-radius: 50%; overflow: hidden; background: #16181a; box-shadow: 0 0 0 2px #111; pointer-events: none; }
    .lens canvas { position: absolute; inset: 0; width: 100%; height: 100%; }
    .lens::before, .lens::after { content: ''; z-index: 1; position: absolute; background: #f4c430; }
    .lens::before { left: 50%; top: 8%; bottom: 8%; width: 2px; margin-left: -1px; }
    .lens::after { top: 50%; left: 8%; right: 8%; height: 2px; margin-top: -1px; }
    .times { position: absolute; background: #fff; color: #111; border: 2px solid #111; font-weight: 700; font-size: 15px; padding: 0 6px; pointer-events: none; }
    .none { position: absolute; inset: 0; display: flex; flex-direction: column; gap: 12px; align-items: center; justify-content: center; text-align: center; color: #fff; font-size: 18px; padding: 24px; }
    .file { position: relative; border: 2px solid #fff; min-height: 56px; padding: 0 18px; font-weight: 640; display: inline-flex; align-items: center; background: #fff; color: #111; cursor: pointer; }
    .file:focus-within { outline: 4px solid var(--trail); outline-offset: 2px; }
    .file input { position: absolute; inset: 0; opacity: 0; cursor: pointer; }
    @media ${NARROW} { .no text { font-size: 15px; } }
  `;
  declare session: Session;
  readonly #resized = new ResizeObserver(() => this.requestUpdate());
  /** Where the finger went down (null: none is down), where the point was then, and how far it went, CSS px. */
  readonly #hold: { at: Tap | null; from: Tap; far: number } = { at: null, from: [0, 0], far: 0 };

  constructor() {
    super();
    this.addController(new Hears(this));
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.#resized.observe(this);
  }
  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#resized.disconnect();
  }

  get desk(): PhotoDesk {
    return deskOf(PhotoDesk, this.session);
  }

  #fitted(width: number, height: number): Fitted {
    const scale = Math.min(this.clientWidth / width, this.clientHeight / height) || 1;
    return {
      left: (this.clientWidth - width * scale) / 2,
      top: (this.clientHeight - height * scale) / 2,
      scale,
    };
  }

  #pixel(e: PointerEvent): { readonly px: Tap; readonly scale: number } | null {
    const { photo } = this.desk;
    if (!photo) return null;
    const box = this.getBoundingClientRect();
    const { left, top, scale } = this.#fitted(photo.width, photo.height);
    return {
      px: [(e.clientX - box.left - left) / scale, (e.clientY - box.top - top) / scale],
      scale,
    };
  }

  #down = (e: PointerEvent): void => {
    const { desk } = this;
    const { point } = desk;
    const hit = this.#pixel(e);
    if (!point || !hit) return;
    (e.currentTarget as Element).setPointerCapture(e.pointerId);
    const known = desk.at(point.id);
    const near =
      known?.set &&
      Math.hypot(known.tap[0] - hit.px[0], known.tap[1] - hit.px[1]) * hit.scale < REACH;
    // Taken hold of where it lies, or put under the finger first.
    const start = near && known ? known.tap : hit.px;
    if (!near) desk.tap(point.id, start);
    this.#hold.at = hit.px;
    this.#hold.from = start;
    this.#hold.far = near ? 0 : STILL;
  };
  #move = (e: PointerEvent): void => {
    const { at, from } = this.#hold;
    const { point } = this.desk;
    const hit = at && this.#pixel(e);
    if (!at || !hit || !point) return;
    this.#hold.far = Math.max(
      this.#hold.far,
      Math.hypot(hit.px[0] - at[0], hit.px[1] - at[1]) * hit.scale,
    );
    if (this.#hold.far < STILL) return;
    const moved: Tap = [from[0] + HELD * (hit.px[0] - at[0]), from[1] + HELD * (hit.px[1] - at[1])];
    this.desk.tap(point.id, moved);
  };
  #up = (e: PointerEvent): void => {
    const { point } = this.desk;
    const hit = this.#hold.at && this.#pixel(e);
    // A tap beside the point that does not drag it says where it belongs.
    if (hit && point && this.#hold.far < STILL && e.type === 'pointerup')
      this.desk.tap(point.id, hit.px);
    this.#hold.at = null;
  };

  #key = (e: KeyboardEvent): void => {
    const { desk } = this;
    const { point, photo } = desk;
    if (!point || !photo || e.ctrlKey || e.metaKey || e.altKey) return;
    if (e.key === 'Enter') desk.set(point.id);
    else if (e.key === 'Backspace') desk.go(-1);
    else if (e.key in KEYS) {
      const [dx, dy] = KEYS[e.key as keyof typeof KEYS];
      const by = e.shiftKey ? 10 : 1;
      const [x, y] = desk.at(point.id)?.tap ?? [photo.width / 2, photo.height / 2];
      desk.tap(point.id, [x + by * dx, y + by * dy]);
    } else return;
    e.preventDefault();
    e.stopPropagation();
  };

  #lines(f: Fitted): TemplateResult | typeof nothing {
    const { desk } = this;
    const { photo, read } = desk;
    if (!photo || !read?.fit) return nothing;
    const { fit, depth } = read;
    const mirrored = photo.wheel === 'right' ? photo.width : null;
    return svg`<g transform=${`scale(${f.scale})`}>${desk.outlines.map((o) => {
      const d = throughCamera(o, fit.camera, depth[o.depth], mirrored);
      const known = o.by?.every((id) => photo.taps[id]) ?? false;
      return svg`<path class="under" vector-effect="non-scaling-stroke" d=${d} /><path class="line ${known ? '' : 'guess'}" vector-effect="non-scaling-stroke" d=${d} />`;
    })}</g>` as unknown as TemplateResult;
  }

  #marks(f: Fitted): readonly TemplateResult[] {
    const { desk } = this;
    const { photo, read, point } = desk;
    if (!photo) return [];
    const doubted = new Set<string>(read?.fit?.suspects.map(({ name }) => name) ?? []);
    const middle: Tap = [(photo.width * f.scale) / 2, (photo.height * f.scale) / 2];
    return desk.points.flatMap((info) => {
      const at = info === point || photo.taps[info.id] ? desk.at(info.id) : null;
      if (!at) return [];
      const [x, y] = [at.tap[0] * f.scale, at.tap[1] * f.scale];
      // The rim's numbers stand outward, the linings' beside it inward, so that none covers another.
      const far = Math.hypot(x - middle[0], y - middle[1]) || 1;
      const off = (info.depth === 'edge' ? -24 : 24) / far;
      const [nx, ny] = [x + off * (x - middle[0]), y + off * (y - middle[1])];
      const doubt = doubted.has(info.id) || (info.partner && doubted.has(info.partner));
      const now = info === point ? 'now' : '';
      return [
        svg`<path class="at" d=${`M${x - 7} ${y}H${x + 7}M${x} ${y - 7}V${y + 7}`} /><g class="no ${now} ${at.set ? '' : 'open'} ${doubt ? 'doubt' : ''}" data-mark=${info.id}><circle cx=${nx} cy=${ny} r="13" /><text x=${nx} y=${ny}>${numberOf(info.id)}</text></g>` as unknown as TemplateResult,
      ];
    });
  }

  #lens(f: Fitted): TemplateResult | typeof nothing {
    const { desk } = this;
    const at = desk.point && desk.at(desk.point.id);
    if (!at) return nothing;
    const r = Math.max(60, Math.min(120, this.clientWidth * 0.22, this.clientHeight * 0.24));
    const x = f.left + at.tap[0] * f.scale;
    const y = f.top + at.tap[1] * f.scale;
    // On the finger's other side, both ways.
    const left = x > this.clientWidth / 2 ? 8 : this.clientWidth - 2 * r - 14;
    const top = y > this.clientHeight / 2 ? 8 : this.clientHeight - 2 * r - 14;
    return html`<div class="lens" .style=${`left:${left}px;top:${top}px;width:${2 * r}px;height:${2 * r}px`}><canvas data-lens width=${2 * r} height=${2 * r}></canvas></div><div class="times" .style=${`left:${left + r - 18}px;top:${top + 2 * r - 10}px`}>×${LOUPE}</div>`;
  }

  protected override updated(): void {
    const { desk } = this;
    const { picture, photo, point } = desk;
    const all = this.renderRoot.querySelector<HTMLCanvasElement>('canvas.all');
    if (!picture || !photo || !all) return;
    const f = this.#fitted(photo.width, photo.height);
    const sharp = devicePixelRatio;
    const width = Math.max(1, Math.round(photo.width * f.scale * sharp));
    const height = Math.max(1, Math.round(photo.height * f.scale * sharp));
    if (all.width !== width || all.height !== height || all.dataset['of'] !== desk.own?.name) {
      all.width = width;
      all.height = height;
      all.dataset['of'] = desk.own?.name ?? '';
      all.getContext('2d')?.drawImage(picture, 0, 0, width, height);
    }
    const lens = this.renderRoot.querySelector<HTMLCanvasElement>('canvas[data-lens]');
    const at = point && desk.at(point.id);
    const paint = lens?.getContext('2d');
    if (!lens || !at || !paint) return;
    const side = lens.width / (LOUPE * f.scale);
    paint.fillStyle = '#16181a';
    paint.fillRect(0, 0, lens.width, lens.height);
    const [x, y] = [at.tap[0] - side / 2, at.tap[1] - side / 2];
    paint.drawImage(picture, x, y, side, side, 0, 0, lens.width, lens.height);
  }

  async #again(e: Event): Promise<void> {
    const input = e.target as HTMLInputElement;
    const [file] = input.files ?? [];
    const { own } = this.desk;
    if (file && own) await this.desk.take(own, file);
    input.value = '';
  }

  override render() {
    const { desk } = this;
    const { photo, point, picture } = desk;
    if (!photo || !point) return nothing;
    const f = this.#fitted(photo.width, photo.height);
    const [w, h] = [photo.width * f.scale, photo.height * f.scale];
    const place = `left:${f.left}px;top:${f.top}px;width:${w}px;height:${h}px`;
    const name = words.name(numberOf(point.id), point.name);
    return html`<div class="box" data-point=${point.id} tabindex="0" role="application" aria-roledescription=${words.picture} aria-label=${name} @pointerdown=${this.#down} @pointermove=${this.#move} @pointerup=${this.#up} @pointercancel=${this.#up} @keydown=${this.#key}>
      <canvas class="all" .style=${place}></canvas>
      <svg aria-hidden="true" .style=${place} viewBox=${`0 0 ${w} ${h}`}>${this.#lines(f)}${this.#marks(f)}</svg>
      ${picture ? this.#lens(f) : nothing}</div>
      ${
        picture
          ? nothing
          : html`<div class="none"><p>${words.thePictureIsNotKept}</p><label class="file">${words.chooseTheSamePictureAgain}<input type="file" accept="image/*" aria-label=${words.chooseTheSamePictureAgain} @change=${(e: Event) => this.#again(e)} /></label></div>`
      }`;
  }
}
customElements.define('takeup-photo', PhotoPicture);
