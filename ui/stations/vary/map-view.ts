import { css, html, LitElement, nothing, svg, type TemplateResult } from 'lit';
import { varyMapView as said } from '../../../sim/words/en.ts';
import { number } from '../../format.ts';
import { Kept } from '../../record/kept.ts';
import type { Session } from '../../session.ts';
import { deskOf } from '../station.ts';
import { type Level, type MapPicture, type MapRegion, mapPicture } from './contours.ts';
import { short, VaryDesk } from './desk.ts';
import { digitsOf, ticks } from './scale.ts';

/** A map of two quantities: lines of one height with their figures, shaded the darker the higher, and regions by their names. */

/** Room for the axes' figures and words, px. */
const LEFT = 66;
const RIGHT = 16;
const TOP = 36;
const FOOT = 62;
/** An arrow key goes this share of a side. */
const KEY_STEP = 0.02;
/** Height of a figure's letters and width of one of them, px, with what is kept free around. */
const FIGURE = { high: 20, wide: 8.6, free: 8 } as const;
/** Shades lie on each other, level upon level: so dark is the highest, its whole a little under one half. */
const DARKEST = 0.5;

type Px = readonly [number, number];

/** Where a text stands, px. */
interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}
const meets = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
/** Of a text in the middle of a place, on its base line. */
const boxOf = (text: string, [x, y]: Px, letter: number): Box => {
  const half = (text.length * letter + FIGURE.free) / 2;
  return { left: x - half, right: x + half, top: y - FIGURE.high + 5, bottom: y + 5 };
};

export class VaryMap extends LitElement {
  static override properties = {
    session: { attribute: false },
    rev: { type: Number },
  };
  declare session: Session;
  declare rev: number;
  #size = { width: 0, height: 0 };
  #dragging = false;
  readonly #picture = new Kept<MapPicture | null>();
  readonly #watch = new ResizeObserver(([entry]) => {
    if (!entry) return;
    this.#size = { width: entry.contentRect.width, height: entry.contentRect.height };
    this.requestUpdate();
  });

  static override styles = css`
    :host { position: relative; display: block; overflow: hidden; background: var(--sheet); touch-action: none; }
    svg { position: absolute; inset: 0; width: 100%; height: 100%; display: block; cursor: crosshair; }
    svg:focus-visible { outline: 4px solid var(--adj); outline-offset: -4px; }
    text { fill: var(--ink); font-size: 14px; font-weight: 600; paint-order: stroke; stroke: var(--sheet); stroke-width: 4px; stroke-linejoin: round; }
    text.quiet { fill: var(--ink2); font-weight: 560; }
    text.bad { fill: var(--bad); font-size: 15px; font-weight: 700; }
    text.title { font-size: 17px; font-weight: 720; }
    text.now { font-size: 18px; font-weight: 760; }
  `;

  override connectedCallback(): void {
    super.connectedCallback();
    this.#watch.observe(this);
  }
  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#watch.disconnect();
  }

  get #desk(): VaryDesk {
    return deskOf(VaryDesk, this.session);
  }

  #wide = (): number => Math.max(1, this.#size.width - LEFT - RIGHT);
  #high = (): number => Math.max(1, this.#size.height - TOP - FOOT);

  #shape(rings: readonly (readonly Px[])[], to: (p: Px) => Px, closed: boolean): string {
    return rings
      .map((ring) => {
        const d = ring.map((p) => {
          const [x, y] = to(p);
          return `${x.toFixed(1)} ${y.toFixed(1)}`;
        });
        return `M${d.join('L')}${closed ? 'Z' : ''}`;
      })
      .join('');
  }

  /** Figures on the lines, each where no other text is. */
  #figures(picture: MapPicture, to: (p: Px) => Px, others: readonly Box[]): TemplateResult[] {
    const taken = [...others];
    return picture.levels.flatMap(({ lines, value }) =>
      lines.flatMap((line) => {
        const px = line.map(to);
        const long = px.reduce((sum, p, i) => {
          const q = px[i + 1];
          return q ? sum + Math.hypot(q[0] - p[0], q[1] - p[1]) : sum;
        }, 0);
        const told = number(value, picture.digits);
        const wide = told.length * FIGURE.wide + FIGURE.free;
        if (long < 2 * wide) return [];
        const spots = [0.5, 0.3, 0.7, 0.15, 0.85].map(
          (share) => px[Math.floor(share * (px.length - 1))] as Px,
        );
        const free = spots.find(
          ([x, y]) =>
            x > LEFT + wide / 2 &&
            x < LEFT + this.#wide() - wide / 2 &&
            y > TOP + 16 &&
            y < TOP + this.#high() - 8 &&
            !taken.some((b) => meets(b, boxOf(told, [x, y + 5], FIGURE.wide))),
        );
        if (!free) return [];
        taken.push(boxOf(told, [free[0], free[1] + 5], FIGURE.wide));
        return [
          svg`<text x=${free[0]} y=${free[1] + 5} text-anchor="middle" class="figure">${told}</text>` as TemplateResult,
        ];
      }),
    );
  }

  #region(region: MapRegion, to: (p: Px) => Px): TemplateResult {
    const d = this.#shape(region.rings, to, true);
    return region.soft
      ? (svg`<path data-region="soft" d=${d} fill="url(#soft)" fill-rule="evenodd" stroke="var(--ink2)" stroke-dasharray="2 4" />` as TemplateResult)
      : (svg`<g data-region="hard"><path d=${d} fill="var(--sheet)" fill-rule="evenodd" /><path d=${d} fill="url(#none)" fill-rule="evenodd" stroke="var(--bad)" stroke-width="2" /></g>` as TemplateResult);
  }

  /** Names of the regions, one under the other where they would lie on each other. */
  #names(
    regions: readonly MapRegion[],
    to: (p: Px) => Px,
  ): { readonly texts: readonly TemplateResult[]; readonly taken: readonly Box[] } {
    const taken: Box[] = [];
    const bottom = TOP + this.#high();
    const texts = regions.map((region) => {
      const [x, y] = to(region.at);
      const half = region.text.length * 3.9 + 6;
      const left = Math.max(LEFT + half, Math.min(LEFT + this.#wide() - half, x));
      let top = Math.max(TOP + 20, Math.min(bottom - 8, y + 5));
      const here = (): Box => boxOf(region.text, [left, top], 7.8);
      const hit = (): boolean => taken.some((b) => meets(b, here()));
      while (hit() && top > TOP + 38) top -= 18;
      while (hit() && top < bottom - 18) top += 18;
      taken.push(here());
      return svg`<text class=${region.soft ? 'quiet' : 'bad'} x=${left} y=${top} text-anchor="middle">${region.text}</text>` as TemplateResult;
    });
    return { texts, taken };
  }

  #level({ value, fill, lines }: Level, count: number, to: (p: Px) => Px): TemplateResult {
    // Each lies on those below it: 1 − (1 − a)^count comes to the darkest.
    const alpha = 1 - (1 - DARKEST) ** (1 / count);
    return svg`<g data-level=${value}><path d=${this.#shape(fill, to, true)} fill="var(--trail)" fill-opacity=${alpha.toFixed(4)} fill-rule="evenodd" /><path class="line" d=${this.#shape(lines, to, false)} fill="none" stroke="var(--ink)" stroke-width="1.8" /></g>` as TemplateResult;
  }

  #axes(): TemplateResult {
    const { across, up } = this.#desk;
    const { width, height } = this.#size;
    if (!across || !up) return svg`` as TemplateResult;
    const bottom = TOP + this.#high();
    const xs = ticks(across.from, across.to, Math.max(3, Math.round(this.#wide() / 70)));
    const ys = ticks(up.from, up.to, Math.max(3, Math.round(this.#high() / 60)));
    const [dx, dy] = [digitsOf(xs), digitsOf(ys)];
    const x = (v: number): number =>
      LEFT + (this.#wide() * (v - across.from)) / (across.to - across.from);
    const y = (v: number): number => bottom - (this.#high() * (v - up.from)) / (up.to - up.from);
    const told = (name: string, unit: string): string => (unit ? `${name}, ${unit}` : name);
    return svg`<g>
      ${xs.map((v) => svg`<path d=${`M${x(v).toFixed(1)} ${bottom}v6`} stroke="var(--ink)" /><text class="quiet" x=${x(v)} y=${bottom + 21} text-anchor="middle">${number(v, dx)}</text>`)}
      ${ys.map((v) => svg`<path d=${`M${LEFT} ${y(v).toFixed(1)}h-6`} stroke="var(--ink)" /><text class="quiet" x=${LEFT - 10} y=${y(v) + 5} text-anchor="end">${number(v, dy)}</text>`)}
      <rect x=${LEFT} y=${TOP} width=${this.#wide()} height=${this.#high()} fill="none" stroke="var(--ink)" stroke-width="2" />
      <text x=${width - RIGHT} y=${height - 10} text-anchor="end">${told(across.name, across.unit)}</text>
      <text x=${8} y=${height - 10}>↑ ${told(up.name, up.unit)}</text></g>` as TemplateResult;
  }

  #pickAt(clientX: number, clientY: number): void {
    const { across, up } = this.#desk;
    if (!across || !up) return;
    const box = this.getBoundingClientRect();
    const share = (at: number): number => Math.max(0, Math.min(1, at));
    const sx = share((clientX - box.left - LEFT) / this.#wide());
    const sy = share(1 - (clientY - box.top - TOP) / this.#high());
    this.#desk.pick(across.from + sx * (across.to - across.from), up.from + sy * (up.to - up.from));
  }
  #down = (e: PointerEvent): void => {
    (e.currentTarget as Element).setPointerCapture(e.pointerId);
    this.#dragging = true;
    this.#pickAt(e.clientX, e.clientY);
  };
  #move = (e: PointerEvent): void => {
    if (this.#dragging) this.#pickAt(e.clientX, e.clientY);
  };
  #up = (): void => {
    this.#dragging = false;
  };

  #key = (e: KeyboardEvent): void => {
    const desk = this.#desk;
    const { across, up } = desk;
    if (!across || !up) return;
    const [x, y] = desk.place;
    const step = (s: { from: number; to: number; whole: boolean }): number =>
      s.whole ? 1 : KEY_STEP * (s.to - s.from);
    const ways: Readonly<Record<string, Px>> = {
      ArrowLeft: [x - step(across), y],
      ArrowRight: [x + step(across), y],
      ArrowDown: [x, y - step(up)],
      ArrowUp: [x, y + step(up)],
      PageDown: [x, y - 5 * step(up)],
      PageUp: [x, y + 5 * step(up)],
      Home: [across.from, y],
      End: [across.to, y],
    };
    const next = ways[e.key];
    if (e.key === 'Escape' && desk.picked !== null) desk.home();
    else if (next)
      desk.pick(
        Math.max(across.from, Math.min(across.to, next[0])),
        Math.max(up.from, Math.min(up.to, next[1])),
      );
    else return;
    e.preventDefault();
    e.stopPropagation();
  };

  override render() {
    const { width, height } = this.#size;
    const desk = this.#desk;
    const { across, up, read } = desk;
    const [first] = read;
    if (width < 80 || height < 80 || !across || !up || !first) return nothing;
    const points = desk.curves[0]?.points ?? [];
    const picture = this.#picture.of([points], () => mapPicture(points, across, up, 0));
    const bottom = TOP + this.#high();
    const to = ([x, y]: Px): Px => [
      LEFT + (this.#wide() * (x - across.from)) / (across.to - across.from),
      bottom - (this.#high() * (y - up.from)) / (up.to - up.from),
    ];
    const here = desk.place;
    const inside =
      here[0] >= across.from && here[0] <= across.to && here[1] >= up.from && here[1] <= up.to;
    const [px, py] = to(here);
    const value = desk.point.values[0] ?? Number.NaN;
    const unit = (v: number, u: string): string => `${short(v)}${u ? ` ${u}` : ''}`;
    const told = `${across.name} ${unit(here[0], across.unit)}, ${up.name} ${unit(here[1], up.unit)}: ${first.name} ${number(value, first.digits)} ${first.unit}`;
    const title = first.unit ? `${first.name}, ${first.unit}` : first.name;
    // The figure of the point stands where there is room.
    const flip = px > width - 120;
    const figure = number(value, first.digits);
    const names = picture ? this.#names(picture.regions, to) : { texts: [], taken: [] };
    const beside = (flip ? -1 : 1) * (13 + (figure.length * 10.5) / 2);
    const looked = inside ? [boxOf(figure, [px + beside, Math.max(TOP + 18, py - 11)], 10.5)] : [];
    return html`${svg`<svg viewBox=${`0 0 ${width} ${height}`} tabindex="0" role="application" aria-busy=${desk.busy} aria-label=${said.mapOfArrowKeysGo(first.name, told)}
      @pointerdown=${this.#down} @pointermove=${this.#move} @pointerup=${this.#up} @pointercancel=${this.#up} @keydown=${this.#key}>
      <defs><pattern id="none" width="9" height="9" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path d="M0 0V9" stroke="var(--bad)" stroke-width="1.5" opacity="0.5" /></pattern>
      <pattern id="soft" width="7" height="7" patternUnits="userSpaceOnUse"><circle cx="2" cy="2" r="1.2" fill="var(--ink2)" opacity="0.7" /></pattern>
      <clipPath id="in"><rect x=${LEFT} y=${TOP} width=${this.#wide()} height=${this.#high()} /></clipPath></defs>
      <g clip-path="url(#in)">${picture?.levels.map((l) => this.#level(l, picture.levels.length, to)) ?? nothing}${picture?.regions.map((r) => this.#region(r, to)) ?? nothing}</g>
      ${picture ? this.#figures(picture, to, [...names.taken, ...looked]) : nothing}
      ${names.texts}
      ${this.#axes()}
      <text class="title" x="8" y="22">${title}</text>
      ${inside ? svg`<path d=${`M${px} ${TOP}V${bottom}M${LEFT} ${py}H${width - RIGHT}`} stroke="var(--ink)" stroke-dasharray="4 4" /><circle cx=${px} cy=${py} r="7" fill="var(--sheet)" stroke="var(--ink)" stroke-width="3" /><text class="now" x=${flip ? px - 13 : px + 13} y=${Math.max(TOP + 18, py - 11)} text-anchor=${flip ? 'end' : 'start'}>${figure}</text>` : nothing}
    </svg>`}`;
  }
}
if (!customElements.get('takeup-map')) customElements.define('takeup-map', VaryMap);
