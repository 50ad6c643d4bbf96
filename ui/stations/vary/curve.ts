import { css, html, LitElement, nothing, svg, type TemplateResult } from 'lit';
import type { VaryPoint } from '../../../sim/index.ts';
import { varyCurve as texts } from '../../../sim/words/en.ts';
import { number } from '../../format.ts';
import type { Session } from '../../session.ts';
import { deskOf } from '../station.ts';
import { short, VaryDesk } from './desk.ts';
import { apartDown, digitsOf, type Line, type Panel, type Region, ticks } from './scale.ts';

/** The picture of curves: panels by unit over one axis, the point that is looked at, and where nothing is told. */

/** Room for the axes' figures and words, px. */
const LEFT = 62;
const RIGHT = 14;
const TOP = 34;
const FOOT = 68;
const BETWEEN = 40;
/** An arrow key goes this share of the range. */
const KEY_STEP = 0.02;

/** The least words, at the desk and on the wall of 1920 × 1080, px. */
const DESK_TEXT = 14;
const WALL_TEXT = 34;

const COLOURS = { lead: 'var(--lead)', trail: 'var(--trail)', plain: 'var(--ink)' } as const;
/** Curves of a family are told apart by their line, not by colour. */
const DASHES = ['', '12 5', '3 5', '14 4 3 4', '7 3', '2 3'];

/** No letter of a line's name is wider on the average, px: a name that ends at its line begins inside the picture. */
const LETTER = 8;

/** From one line of names to the next, and of the bolder figures where one looks, px. */
const NAME_LINE = 18;
const FIGURE_LINE = 21;
/** A figure of the axis has to be so far from where one looks: the arrow there, and its own figure below, cover it. */
const CLEAR = 24;

interface Box {
  readonly top: number;
  readonly bottom: number;
  readonly y: (value: number) => number;
}

export class VaryCurve extends LitElement {
  static override properties = {
    session: { attribute: false },
    rev: { type: Number },
  };
  declare session: Session;
  declare rev: number;
  /** px of the screen. */
  #size = { width: 0, height: 0 };
  #hover: number | null = null;
  #dragging = false;
  readonly #watch = new ResizeObserver(([entry]) => {
    if (!entry) return;
    this.#size = { width: entry.contentRect.width, height: entry.contentRect.height };
    this.requestUpdate();
  });

  static override styles = css`
    :host { position: relative; display: block; overflow: hidden; background: var(--sheet); touch-action: pan-y; }
    svg { position: absolute; inset: 0; width: 100%; height: 100%; display: block; cursor: crosshair; }
    svg:focus-visible { outline: 4px solid var(--adj); outline-offset: -4px; }
    text { fill: var(--ink); font-size: 14px; font-weight: 560; paint-order: stroke; stroke: var(--sheet); stroke-width: 4px; stroke-linejoin: round; }
    text.bad { fill: var(--bad); }
    text.lead { fill: var(--lead); }
    text.trail { fill: var(--trail); }
    text.quiet { fill: var(--ink2); }
    text.title { font-size: 17px; font-weight: 720; }
    text.now { font-size: 17px; font-weight: 740; }
  `;

  override connectedCallback(): void {
    super.connectedCallback();
    this.#watch.observe(this);
  }
  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#watch.disconnect();
  }

  /** Times larger than at the desk: on the wall the least words have its 34 px of 1080. */
  get #times(): number {
    return this.session.wall
      ? (WALL_TEXT / DESK_TEXT) * Math.min(innerWidth / 1920, innerHeight / 1080)
      : 1;
  }
  /** What there is to draw on, in px of the desk. */
  get #onDesk(): { readonly width: number; readonly height: number } {
    const { width, height } = this.#size;
    return { width: width / this.#times, height: height / this.#times };
  }

  get #desk(): VaryDesk {
    return deskOf(VaryDesk, this.session);
  }

  #x = (value: number): number => {
    const [from, to] = this.#desk.range;
    const wide = this.#onDesk.width - LEFT - RIGHT;
    return LEFT + (to > from ? (wide * (value - from)) / (to - from) : wide / 2);
  };
  #valueAt(px: number): number {
    const [from, to] = this.#desk.range;
    const share = (px - LEFT) / (this.#onDesk.width - LEFT - RIGHT);
    const value = from + Math.max(0, Math.min(1, share)) * (to - from);
    return this.#desk.of.whole ? Math.round(value) : value;
  }

  #boxes(panels: readonly Panel[]): Box[] {
    const { height } = this.#onDesk;
    const room = height - TOP - FOOT - BETWEEN * (panels.length - 1);
    const each = room / Math.max(1, panels.length);
    return panels.map(({ low, high }, i) => {
      const top = TOP + i * (each + BETWEEN);
      const bottom = top + each;
      return { top, bottom, y: (value) => bottom - (each * (value - low)) / (high - low) };
    });
  }

  #panel(panel: Panel, box: Box, at: number): TemplateResult {
    const { width } = this.#onDesk;
    const steps = ticks(
      panel.low,
      panel.high,
      Math.max(2, Math.round((box.bottom - box.top) / 70)),
    );
    const digits = digitsOf(steps);
    const clip = `c${Math.round(box.top)}`;
    return svg`<g>
      ${steps.map((s) => svg`<path d=${`M${LEFT} ${box.y(s).toFixed(1)}H${width - RIGHT}`} stroke="var(--faint)" /><text class="quiet" x=${LEFT - 8} y=${box.y(s) + 5} text-anchor="end">${number(s, digits)}</text>`)}
      <clipPath id=${clip}><rect x=${LEFT} y=${box.top} width=${Math.max(0, width - LEFT - RIGHT)} height=${Math.max(0, box.bottom - box.top)} /></clipPath>
      <g clip-path=${`url(#${clip})`}>${panel.lines.map((l) => this.#band(l, box))}${panel.lines.map((l) => this.#line(l, box))}</g>
      <path d=${`M${LEFT} ${box.top}V${box.bottom}H${width - RIGHT}`} fill="none" stroke="var(--ink)" stroke-width="2" />
      <text class="title" x=${8} y=${box.top - 12}>${[panel.title, panel.unit].filter(Boolean).join(', ')}</text>
      ${this.#ends(panel, box)}
      ${this.#marks(panel, box, at)}
    </g>` as TemplateResult;
  }

  /** Where a curve may lie with what is not known exactly: 95 of 100 brakes. */
  #band(line: Line, box: Box): TemplateResult | typeof nothing {
    const { spread, read } = this.#desk;
    const k = read.findIndex((a) => a.key === line.key);
    const told = spread?.curve.filter(({ bands }) => bands[k]?.told === 1) ?? [];
    if (line.curve > 0 || told.length < 2) return nothing;
    const at = (x: number, y: number): string => `${this.#x(x).toFixed(1)} ${box.y(y).toFixed(1)}`;
    const up = told.map(({ x, bands }) => at(x, bands[k]?.high ?? 0));
    const down = told.map(({ x, bands }) => at(x, bands[k]?.low ?? 0)).reverse();
    return svg`<path class="band" d=${`M${[...up, ...down].join('L')}Z`} fill=${COLOURS[line.role]} fill-opacity="0.26" stroke=${COLOURS[line.role]} stroke-opacity="0.75" stroke-width="1.2" />` as TemplateResult;
  }

  #line(line: Line, box: Box): TemplateResult[] {
    const family = this.#desk.curves.length > 1;
    const dash = family ? (DASHES[line.curve] ?? '') : line.role === 'trail' ? '9 5' : '';
    return line.pieces.map((piece) => {
      if (piece.length === 1) {
        const [x, y] = piece[0] as readonly [number, number];
        return svg`<circle cx=${this.#x(x)} cy=${box.y(y)} r="4" fill=${COLOURS[line.role]} />` as TemplateResult;
      }
      const d = piece.map(([x, y]) => `${this.#x(x).toFixed(1)} ${box.y(y).toFixed(1)}`).join('L');
      return svg`<path d=${`M${d}`} fill="none" stroke=${COLOURS[line.role]} stroke-width=${line.role === 'plain' ? 3.5 : 2.5} stroke-dasharray=${dash} />` as TemplateResult;
    });
  }

  /** Names of the lines where they end or leave the panel, moved apart. */
  #ends(panel: Panel, box: Box): TemplateResult[] {
    const several = panel.lines.length > 1;
    if (!several) return [];
    const many = new Set(panel.lines.map((l) => l.key)).size > 1;
    const places = panel.lines.flatMap((line) => {
      const inside = line.pieces.flat().filter(([, y]) => y <= panel.high && y >= panel.low);
      // Where there is room to write: before the last of it.
      const p = inside[Math.floor(inside.length * 0.86)];
      if (!p) return [];
      // Which reading it is stands at the first curve; whose curve it is, in the row above.
      const text = many && line.curve === 0 ? line.name : '';
      if (text === '') return [];
      return [{ x: this.#x(p[0]), y: box.y(p[1]) - 9, text, role: line.role }];
    });
    places.sort((a, b) => a.y - b.y);
    const ys = apartDown(
      places.map((p) => p.y),
      NAME_LINE,
      box.bottom - 6,
    );
    return places.map(
      (p, i) =>
        svg`<text x=${Math.max(p.x, LETTER * p.text.length)} y=${ys[i]} text-anchor="end" class=${p.role}>${p.text}</text>` as TemplateResult,
    );
  }

  /** Where one looks, and what is read there: of a point that was worked out, never between two. */
  #marks(panel: Panel, box: Box, at: number): TemplateResult[] {
    const { read } = this.#desk;
    const point = this.#looked(at);
    const told = panel.lines.flatMap((line) => {
      const value = point?.values[read.findIndex((a) => a.key === line.key)] ?? Number.NaN;
      if (line.curve > 0 || !(value <= panel.high && value >= panel.low)) return [];
      return [{ role: line.role, value, y: box.y(value) }];
    });
    told.sort((a, b) => a.y - b.y);
    // Under its ring, but neither on another figure nor on the axis.
    const ys = apartDown(
      told.map(({ y }) => y + 22),
      FIGURE_LINE,
      box.bottom - 6,
    );
    return told.map(
      ({ role, value, y }, i) =>
        svg`<circle cx=${this.#x(at)} cy=${y} r="6" fill="var(--sheet)" stroke=${COLOURS[role]} stroke-width="3" /><text class=${`now ${role}`} x=${this.#x(at) + 11} y=${ys[i]}>${number(value, panel.digits)}</text>` as TemplateResult,
    );
  }

  /** The point there: that on the stage, or the one that the pointer is nearest to. */
  #looked(at: number): VaryPoint | null {
    return this.#hover === null ? this.#desk.point : this.#desk.nearest(at);
  }

  #region(region: Region, i: number, top: number, bottom: number): TemplateResult {
    const [from, to] = this.#desk.range;
    const left = this.#x(Math.max(from, region.from));
    const right = this.#x(Math.min(to, region.to));
    const wide = Math.max(3, right - left);
    const first = region.from > from ? texts.from(short(region.from)) : '';
    const label = this.#desk.curves.length > 1 && this.#desk.curves[region.curve]?.label;
    const family = label && !region.soft;
    const text = `${family ? `${label}: ` : ''}${region.text}${first}`;
    // Along its edge, where no curve can be.
    const inside = wide > 26;
    const x = inside ? left + 19 + 20 * i : left - 8;
    const y = inside ? bottom - 12 : top + 22 + 22 * i;
    if (region.soft)
      return svg`<g data-region="soft"><rect x=${left} y=${top} width=${wide} height=${bottom - top} fill="url(#soft)" /><path d=${`M${left} ${top}V${bottom}M${right} ${top}V${bottom}`} stroke="var(--ink2)" stroke-dasharray="2 4" />
      <text x=${x} y=${y} transform=${inside ? `rotate(-90 ${x} ${y})` : ''} text-anchor=${inside ? 'start' : 'end'} class="quiet">${text}</text></g>` as TemplateResult;
    return svg`<g><rect x=${left} y=${top} width=${wide} height=${bottom - top} fill="url(#none)" /><path d=${`M${left} ${top}V${bottom}`} stroke="var(--bad)" stroke-width="2" />
      <text x=${x} y=${y} transform=${inside ? `rotate(-90 ${x} ${y})` : ''} text-anchor=${inside ? 'start' : 'end'} class="bad">${text}</text></g>` as TemplateResult;
  }

  /** Whose curve has which line, over the picture: only where there is more than one. */
  #legend(): TemplateResult[] {
    const { curves } = this.#desk;
    if (curves.length < 2) return [];
    const each = (this.#onDesk.width - 16) / curves.length;
    return curves.map(
      (c, i) =>
        svg`<g><path d=${`M${12 + i * each} 12h30`} stroke="var(--ink)" stroke-width="3" stroke-dasharray=${DASHES[i] ?? ''} /><text x=${48 + i * each} y="17">${c.label}</text></g>` as TemplateResult,
    );
  }

  /** @param look where one looks; null: outside */
  #axis(bottom: number, look: number | null): TemplateResult {
    const { of, range } = this.#desk;
    const [from, to] = range;
    const { width, height } = this.#onDesk;
    const steps = ticks(from, to, Math.max(3, Math.round((width - LEFT - RIGHT) / 60))).filter(
      (s) => !of.whole || Number.isInteger(s),
    );
    const digits = digitsOf(steps);
    const whose = of.of && width > 520 ? ` (${of.of})` : '';
    const told = `${of.name}${whose}${of.unit ? `, ${of.unit}` : ''}`;
    return svg`<g>${steps.map((s) => svg`<path d=${`M${this.#x(s).toFixed(1)} ${TOP}V${bottom}`} stroke="var(--faint)" />${look !== null && Math.abs(this.#x(s) - this.#x(look)) < CLEAR ? nothing : svg`<text class="quiet" x=${this.#x(s)} y=${bottom + 19} text-anchor="middle">${number(s, digits)}</text>`}`)}
      <text x=${width - RIGHT} y=${height - 10} text-anchor="end">${told}</text></g>` as TemplateResult;
  }

  /** The slider's name stands before it. */
  #told(at: number): string {
    const { of, read, point } = this.#desk;
    const values = point
      ? read.map((a, k) =>
          `${a.name} ${number(point.values[k] as number, a.digits)} ${a.unit}`.trim(),
        )
      : [];
    return `${`${short(at)} ${of.unit}`.trim()}: ${values.join(', ')}`;
  }

  #point = (e: PointerEvent): void => {
    const box = this.getBoundingClientRect();
    this.#hover = this.#valueAt((e.clientX - box.left) / this.#times);
    if (this.#dragging) {
      this.#desk.pick(this.#hover);
      this.#hover = null;
    }
    this.requestUpdate();
  };
  #down = (e: PointerEvent): void => {
    (e.currentTarget as Element).setPointerCapture(e.pointerId);
    this.#dragging = true;
    this.#point(e);
  };
  #up = (): void => {
    this.#dragging = false;
    // What was picked is looked at, until the pointer goes on.
    this.#hover = null;
    this.requestUpdate();
  };
  #leave = (): void => {
    this.#hover = null;
    this.requestUpdate();
  };

  #key = (e: KeyboardEvent): void => {
    const desk = this.#desk;
    const [from, to] = desk.range;
    const step = desk.of.whole ? 1 : KEY_STEP * (to - from);
    const ways: Readonly<Record<string, number>> = {
      ArrowLeft: desk.at - step,
      ArrowDown: desk.at - step,
      ArrowRight: desk.at + step,
      ArrowUp: desk.at + step,
      PageDown: desk.at - 5 * step,
      PageUp: desk.at + 5 * step,
      Home: from,
      End: to,
    };
    const next = ways[e.key];
    if (e.key === 'Escape' && desk.picked !== null) desk.home();
    else if (next !== undefined) desk.pick(Math.max(from, Math.min(to, next)));
    else return;
    e.preventDefault();
    e.stopPropagation();
  };

  override render() {
    const { width, height } = this.#onDesk;
    if (width < 80 || height < 80) return nothing;
    const desk = this.#desk;
    const { at, of, panels, range, regions } = desk;
    const boxes = this.#boxes(panels);
    const bottom = boxes.at(-1)?.bottom ?? height - FOOT;
    const look = this.#hover === null ? at : (desk.nearest(this.#hover)?.at[0] ?? at);
    const inRange = look >= range[0] && look <= range[1];
    return html`${svg`<svg viewBox=${`0 0 ${width} ${height}`} tabindex="0" role="slider" aria-busy=${desk.busy} aria-label=${of.name} aria-valuemin=${range[0]} aria-valuemax=${range[1]} aria-valuenow=${at} aria-valuetext=${this.#told(at)}
      @pointerdown=${this.#down} @pointermove=${this.#point} @pointerup=${this.#up} @pointercancel=${this.#up} @pointerleave=${this.#leave} @keydown=${this.#key}>
      <defs><pattern id="none" width="9" height="9" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path d="M0 0V9" stroke="var(--bad)" stroke-width="1.5" opacity="0.5" /></pattern><pattern id="soft" width="7" height="7" patternUnits="userSpaceOnUse"><circle cx="2" cy="2" r="1.2" fill="var(--ink2)" opacity="0.55" /></pattern></defs>
      ${this.#axis(bottom, inRange ? look : null)}
      ${this.#legend()}
      ${regions.map((r, i) => this.#region(r, i, TOP, bottom))}
      ${inRange ? svg`<path d=${`M${this.#x(look)} ${TOP}V${bottom}`} stroke="var(--ink)" stroke-width="1.5" stroke-dasharray=${desk.picked === null || this.#hover !== null ? '4 4' : ''} />` : nothing}
      ${panels.map((p, i) => this.#panel(p, boxes[i] as Box, look))}
      ${inRange ? svg`<path d=${`M${this.#x(look)} ${bottom + 2}l-8 13h16z`} fill="var(--ink)" /><text class="now" x=${Math.max(LEFT, Math.min(width - 60, this.#x(look)))} y=${bottom + 36} text-anchor="middle">${short(look)}</text>` : nothing}
    </svg>`}`;
  }
}
if (!customElements.get('takeup-curve')) customElements.define('takeup-curve', VaryCurve);
