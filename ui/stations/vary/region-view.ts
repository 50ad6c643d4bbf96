import { css, html, LitElement, nothing, svg, type TemplateResult } from 'lit';
import { varyRegionView as texts } from '../../../sim/words/en.ts';
import { number } from '../../format.ts';
import { Kept } from '../../record/kept.ts';
import type { Session } from '../../session.ts';
import type { Slice } from '../../vary-seek.ts';
import { deskOf } from '../station.ts';
import { short } from './desk.ts';
import { bandsOf, type RegionPicture, regionPicture } from './region.ts';
import { digitsOf, ticks } from './scale.ts';
import { type FreeSize, SeekDesk } from './seek-desk.ts';
import { outcome, wishTold } from './seek-side.ts';

/**
 * The answer of a question turned round: of one size bands on a line, with each wished reading over it; of two a map;
 * of three slices of it, each with the third size at a value.
 */

/** Room for the axes' figures and words, px. */
const LEFT = 64;
const RIGHT = 16;
const TOP = 34;
const FOOT = 96;
/** Of slices their common name stands above them. */
const NAME = 24;
const BETWEEN = 42;
/** An arrow key goes this share of a side. */
const KEY_STEP = 0.02;

/** A third size within this share of its range is that of a slice. */
const SAME = 0.005;

type Px = readonly [number, number];

/** Where a slice is painted. */
interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

interface Painted {
  readonly slice: Slice;
  readonly box: Box;
}

export class SeekRegion extends LitElement {
  static override properties = {
    session: { attribute: false },
    rev: { type: Number },
  };
  declare session: Session;
  declare rev: number;
  #size = { width: 0, height: 0 };
  #dragging = false;
  readonly #pictures = new Kept<readonly RegionPicture[]>();
  readonly #watch = new ResizeObserver(([entry]) => {
    if (!entry) return;
    this.#size = { width: entry.contentRect.width, height: entry.contentRect.height };
    this.requestUpdate();
  });

  static override styles = css`
    :host { position: relative; display: block; overflow: hidden; background: var(--sheet); touch-action: pan-y; }
    svg { position: absolute; inset: 0; width: 100%; height: 100%; display: block; cursor: crosshair; }
    svg:focus-visible { outline: 4px solid var(--adj); outline-offset: -4px; }
    text { fill: var(--ink); font-size: 14px; font-weight: 600; paint-order: stroke; stroke: var(--sheet); stroke-width: 4px; stroke-linejoin: round; }
    text.quiet { fill: var(--ink2); font-weight: 560; }
    text.bad { fill: var(--bad); font-weight: 700; }
    text.title { font-size: 16px; font-weight: 720; }
    text.now { font-size: 16px; font-weight: 740; }
    .none { position: absolute; inset: 0; margin: 0; padding: 24px; display: grid; align-content: center; justify-items: center; text-align: center; gap: 10px; color: var(--ink2); font-size: 17px; line-height: 1.4; }
  `;

  override connectedCallback(): void {
    super.connectedCallback();
    this.#watch.observe(this);
  }
  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#watch.disconnect();
  }

  get #desk(): SeekDesk {
    return deskOf(SeekDesk, this.session);
  }

  /** Boxes of the slices: one, or two by two. */
  #painted(slices: readonly Slice[]): readonly Painted[] {
    const { width, height } = this.#size;
    const columns = slices.length > 1 ? 2 : 1;
    const rows = Math.ceil(slices.length / columns);
    const wide = width / columns;
    const name = columns > 1 ? NAME : 0;
    const high = (height - FOOT - name) / rows;
    return slices.map((slice, k) => {
      const [i, j] = [k % columns, Math.floor(k / columns)];
      return {
        slice,
        box: {
          left: i * wide + LEFT,
          right: (i + 1) * wide - RIGHT,
          top: name + j * high + TOP,
          bottom: name + (j + 1) * high - (rows > 1 ? 24 : 0),
        },
      };
    });
  }

  #x = (box: Box, { free }: FreeSize, value: number): number =>
    box.left + ((box.right - box.left) * (value - free.from)) / (free.to - free.from);
  #y = (box: Box, { free }: FreeSize, value: number): number =>
    box.bottom - ((box.bottom - box.top) * (value - free.from)) / (free.to - free.from);

  #shape(rings: readonly (readonly Px[])[], to: (p: Px) => Px): string {
    return rings
      .map((ring) => {
        const d = ring.map((p) => {
          const [x, y] = to(p);
          return `${x.toFixed(1)} ${y.toFixed(1)}`;
        });
        return `M${d.join('L')}Z`;
      })
      .join('');
  }

  #axisX(box: Box, size: FreeSize, words: boolean): TemplateResult {
    const { quantity: q, free } = size;
    const steps = ticks(free.from, free.to, Math.max(2, Math.round((box.right - box.left) / 70)));
    const digits = digitsOf(steps);
    const { width, height } = this.#size;
    return svg`<g>${steps.map((s) => svg`<path d=${`M${this.#x(box, size, s).toFixed(1)} ${box.bottom}v6`} stroke="var(--ink)" /><text class="quiet" x=${this.#x(box, size, s)} y=${box.bottom + 20} text-anchor="middle">${number(s, digits)}</text>`)}
      ${words ? svg`<text x=${width - RIGHT} y=${height - 30} text-anchor="end">${q.name}${q.unit ? `, ${q.unit}` : ''} →</text>` : nothing}</g>` as TemplateResult;
  }
  #axisY(box: Box, size: FreeSize, words: boolean): TemplateResult {
    const { quantity: q, free } = size;
    const steps = ticks(free.from, free.to, Math.max(2, Math.round((box.bottom - box.top) / 60)));
    const digits = digitsOf(steps);
    return svg`<g>${steps.map((s) => svg`<path d=${`M${box.left} ${this.#y(box, size, s).toFixed(1)}h-6`} stroke="var(--ink)" /><text class="quiet" x=${box.left - 10} y=${this.#y(box, size, s) + 5} text-anchor="end">${number(s, digits)}</text>`)}
      ${words ? svg`<text x="8" y=${this.#size.height - 50}>↑ ${q.name}${q.unit ? `, ${q.unit}` : ''}</text>` : nothing}</g>` as TemplateResult;
  }

  #frame = (box: Box): TemplateResult =>
    svg`<rect x=${box.left} y=${box.top} width=${Math.max(0, box.right - box.left)} height=${Math.max(0, box.bottom - box.top)} fill="none" stroke="var(--ink)" stroke-width="2" />` as TemplateResult;

  /** A cross where one looks, filled where it is the brake with most room. */
  #spot(x: number, y: number, text: string, stage: boolean): TemplateResult {
    const flip = x > this.#size.width - 150;
    return svg`<g data-spot=${stage ? 'stage' : 'best'}><circle cx=${x} cy=${y} r=${stage ? 8 : 6} fill=${stage ? 'var(--sheet)' : 'var(--ink)'} stroke="var(--ink)" stroke-width="3" /><text class="now" x=${flip ? x - 13 : x + 13} y=${y - 10} text-anchor=${flip ? 'end' : 'start'}>${text}</text></g>` as TemplateResult;
  }

  /** Of two sizes, or a slice of three. */
  #map({ slice, box }: Painted, k: number, picture: RegionPicture, all: number): TemplateResult {
    const desk = this.#desk;
    const [first, second, third] = desk.free;
    if (!first || !second) return svg`` as TemplateResult;
    const to = ([x, y]: Px): Px => [this.#x(box, first, x), this.#y(box, second, y)];
    const clip = `r${k}`;
    const best = desk.found?.best;
    const { picked } = desk;
    const title =
      third && slice.third !== null
        ? `${short(slice.third)}${third.quantity.unit ? ` ${third.quantity.unit}` : ''}`
        : texts.whereItDoesWhatIs;
    // A brake stands on the slice that its third size is of; between two slices on none.
    const mine = (at: readonly number[]): boolean =>
      !third ||
      slice.third === null ||
      Math.abs((at[2] as number) - slice.third) <= SAME * (third.free.to - third.free.from);
    const does = picture.does.length > 0;
    return svg`<g data-slice=${slice.third ?? ''}>
      <clipPath id=${clip}><rect x=${box.left} y=${box.top} width=${Math.max(0, box.right - box.left)} height=${Math.max(0, box.bottom - box.top)} /></clipPath>
      <g clip-path=${`url(#${clip})`}>
        ${picture.untold.length > 0 ? svg`<path data-region="untold" d=${this.#shape(picture.untold, to)} fill="url(#none)" fill-rule="evenodd" stroke="var(--bad)" stroke-width="1.5" />` : nothing}
        ${does ? svg`<path data-region="does" d=${this.#shape(picture.does, to)} fill="var(--adj)" fill-opacity="0.45" fill-rule="evenodd" stroke="var(--ink)" stroke-width="1.6" />` : nothing}
      </g>
      ${this.#axisX(box, first, k === 0)}${this.#axisY(box, second, k === 0)}${this.#frame(box)}
      <text class="title" x=${all > 1 ? box.left : 8} y=${box.top - 12}>${title}</text>
      ${does ? nothing : svg`<text class="quiet" x=${(box.left + box.right) / 2} y=${(box.top + box.bottom) / 2} text-anchor="middle">${texts.noneHere}</text>`}
      ${best && desk.found?.reach && !picked && mine(best.at) ? this.#spot(...to([best.at[0] as number, best.at[1] as number]), texts.mostRoom, false) : nothing}
      ${picked && mine(picked) ? this.#spot(...to([picked[0] as number, picked[1] as number]), texts.onTheStage, true) : nothing}
    </g>` as TemplateResult;
  }

  /** What the slices differ in. */
  #slicedBy(slices: readonly Slice[]): TemplateResult | typeof nothing {
    const third = this.#desk.free[2];
    if (!third || slices.length < 2) return nothing;
    return svg`<text class="title" x="8" y="20">${texts.sliceBySlice(third.quantity.name)}</text>` as TemplateResult;
  }

  /** Of one size: every wished reading over it, its ends, and the bands in which all of them are kept. */
  #line(slice: Slice): TemplateResult {
    const desk = this.#desk;
    const [first] = desk.free;
    if (!first) return svg`` as TemplateResult;
    const wished = desk.wished.filter(({ wish }) => wish.least !== null || wish.most !== null);
    const { width, height } = this.#size;
    const room = height - TOP - FOOT - BETWEEN * (wished.length - 1);
    const each = room / Math.max(1, wished.length);
    const boxes = wished.map((_, k) => {
      const top = TOP + k * (each + BETWEEN);
      return { left: LEFT, right: width - RIGHT, top, bottom: top + each };
    });
    const bands = bandsOf(slice);
    const { picked, found } = desk;
    const last = boxes.at(-1);
    const at = picked?.[0] ?? (found?.reach ? found.best.at[0] : undefined);
    return svg`<g data-bands=${bands.length}>${wished.map(({ answer, wish }, k) => {
      const box = boxes[k] as Box;
      const ys = slice.values.map((row) => row[k] ?? Number.NaN);
      const ends = [wish.least, wish.most].filter((e) => e !== null);
      const all = [...ys.filter(Number.isFinite), ...ends];
      const [low, high] = [Math.min(...all), Math.max(...all)];
      const pad = high > low ? 0.08 * (high - low) : Math.max(0.5, Math.abs(high) * 0.1);
      const y = (v: number): number =>
        box.bottom - ((box.bottom - box.top) * (v - low + pad)) / (high - low + 2 * pad);
      const steps = ticks(low - pad, high + pad, Math.max(2, Math.round(each / 60)));
      const digits = digitsOf(steps);
      const pieces = piecesOf(slice.xs, ys);
      return svg`<g>
        ${bands.map((b) => svg`<rect data-band x=${this.#x(box, first, b.from)} y=${box.top} width=${Math.max(2, this.#x(box, first, b.to) - this.#x(box, first, b.from))} height=${each} fill="var(--adj)" fill-opacity="0.45" />`)}
        ${steps.map((s) => svg`<path d=${`M${LEFT} ${y(s).toFixed(1)}H${width - RIGHT}`} stroke="var(--faint)" /><text class="quiet" x=${LEFT - 8} y=${y(s) + 5} text-anchor="end">${number(s, digits)}</text>`)}
        ${ends.map((e) => svg`<path d=${`M${LEFT} ${y(e).toFixed(1)}H${width - RIGHT}`} stroke="var(--bad)" stroke-width="2" stroke-dasharray="8 5" /><text class="bad" x=${width - RIGHT - 4} y=${y(e) - 6} text-anchor="end">${wish.least === e ? texts.atLeast : texts.atMost} ${short(e)}</text>`)}
        ${pieces.map((p) => svg`<path d=${`M${p.map(([a, b]) => `${this.#x(box, first, a).toFixed(1)} ${y(b).toFixed(1)}`).join('L')}`} fill="none" stroke="var(--ink)" stroke-width="3" />`)}
        ${this.#frame(box)}
        <text class="title" x="8" y=${box.top - 12}>${answer.name}${answer.unit ? `, ${answer.unit}` : ''}${wish.hot === null ? '' : texts.drumAtC(short(wish.hot))}</text>
      </g>`;
    })}
    ${last ? this.#axisX(last, first, true) : nothing}
    ${at !== undefined && last ? svg`<path d=${`M${this.#x(last, first, at)} ${TOP}V${last.bottom}`} stroke="var(--ink)" stroke-width="1.8" stroke-dasharray=${picked ? '' : '4 4'} /><text class="now" x=${Math.min(width - 90, this.#x(last, first, at) + 8)} y=${TOP + 20}>${short(at)}${picked ? '' : texts.mostRoom2}</text>` : nothing}</g>` as TemplateResult;
  }

  /** Sizes at a place of the picture; null: outside of it. */
  #placeAt(clientX: number, clientY: number): readonly number[] | null {
    const desk = this.#desk;
    const slices = desk.found?.slices ?? [];
    const box = this.getBoundingClientRect();
    const [x, y] = [clientX - box.left, clientY - box.top];
    const [first, second, third] = desk.free;
    if (!first) return null;
    const between = ({ free }: FreeSize, share: number): number =>
      free.from + Math.max(0, Math.min(1, share)) * (free.to - free.from);
    if (!second) {
      return [between(first, (x - LEFT) / (this.#size.width - LEFT - RIGHT))];
    }
    const all = this.#painted(slices);
    const hit =
      all.find(({ box: b }) => x >= b.left - LEFT && x <= b.right + RIGHT && y <= b.bottom + 24) ??
      all[0];
    if (!hit) return null;
    const { box: b, slice } = hit;
    const at = [
      between(first, (x - b.left) / (b.right - b.left)),
      between(second, (b.bottom - y) / (b.bottom - b.top)),
    ];
    return third && slice.third !== null ? [...at, slice.third] : at;
  }
  #pick(e: PointerEvent): void {
    const at = this.#placeAt(e.clientX, e.clientY);
    if (at && this.#desk.found) this.#desk.pick(at);
  }
  #down = (e: PointerEvent): void => {
    (e.currentTarget as Element).setPointerCapture(e.pointerId);
    this.#dragging = true;
    this.#pick(e);
  };
  #move = (e: PointerEvent): void => {
    if (this.#dragging) this.#pick(e);
  };
  #up = (): void => {
    this.#dragging = false;
  };

  #key = (e: KeyboardEvent): void => {
    const desk = this.#desk;
    const at = desk.picked ?? desk.found?.best.at;
    if (!at) return;
    const by = (k: number, sign: number): readonly number[] =>
      at.map((x, i) => {
        const size = desk.free[i];
        if (i !== k || !size) return x;
        const { from, to, whole } = size.free;
        return Math.max(from, Math.min(to, x + sign * (whole ? 1 : KEY_STEP * (to - from))));
      });
    const ways: Readonly<Record<string, readonly number[]>> = {
      ArrowLeft: by(0, -1),
      ArrowRight: by(0, 1),
      ArrowDown: by(1, -1),
      ArrowUp: by(1, 1),
      PageDown: by(2, -1),
      PageUp: by(2, 1),
    };
    const next = ways[e.key];
    if (e.key === 'Escape' && desk.picked !== null) desk.desk.home();
    else if (e.key === 'Enter' && desk.found) desk.pick(desk.found.best.at);
    else if (next) desk.pick(next);
    else return;
    e.preventDefault();
    e.stopPropagation();
  };

  #told(): string {
    const desk = this.#desk;
    const { free, picked, point, wished } = desk;
    if (!picked || !point) return outcome(desk);
    const place = free.map(
      ({ quantity: q }, k) => `${q.name} ${short(picked[k] as number)} ${q.unit}`,
    );
    const values = wished.map(({ answer, wish }, k) =>
      texts.asWished(
        answer.name,
        number(point.values[k] as number, answer.digits),
        answer.unit,
        (point.each[k] as number) > 0 ? texts.not : '',
        wishTold(wish, answer.unit),
      ),
    );
    return `${place.join(', ')}: ${values.join('; ')}`;
  }

  override render() {
    const { width, height } = this.#size;
    if (width < 80 || height < 80) return nothing;
    const desk = this.#desk;
    const { busy, found } = desk;
    const slices = found?.slices ?? [];
    const one = desk.free.length === 1;
    if (slices.length === 0) return html`<p class="none"><span>${outcome(desk)}</span></p>`;
    const pictures = this.#pictures.of([found?.slices, desk.part.wishes], () =>
      one ? [] : slices.map((s) => regionPicture(s, desk.asked)),
    );
    return html`${svg`<svg viewBox=${`0 0 ${width} ${height}`} tabindex="0" role="application" aria-busy=${busy} aria-label=${texts.regionOfTheAnswerArrow(this.#told())}
      @pointerdown=${this.#down} @pointermove=${this.#move} @pointerup=${this.#up} @pointercancel=${this.#up} @keydown=${this.#key}>
      <defs><pattern id="none" width="9" height="9" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path d="M0 0V9" stroke="var(--bad)" stroke-width="1.5" opacity="0.5" /></pattern></defs>
      ${this.#slicedBy(slices)}
      ${one ? this.#line(slices[0] as Slice) : this.#painted(slices).map((p, k) => this.#map(p, k, pictures[k] as RegionPicture, slices.length))}
      ${!one && pictures.some((p) => p.untold.length > 0) ? svg`<text class="bad" x="8" y=${height - 10}>${texts.hatchedItLocksGivesWay}</text>` : nothing}
    </svg>`}`;
  }
}

/** Pieces of a line without what is not told. */
function piecesOf(xs: readonly number[], ys: readonly number[]): Px[][] {
  const out: Px[][] = [];
  let now: Px[] = [];
  ys.forEach((y, k) => {
    if (Number.isFinite(y)) now.push([xs[k] as number, y]);
    else if (now.length > 0) {
      out.push(now);
      now = [];
    }
  });
  if (now.length > 0) out.push(now);
  return out.filter((p) => p.length > 1);
}

if (!customElements.get('takeup-region')) customElements.define('takeup-region', SeekRegion);
