import { css, html, LitElement, svg } from 'lit';
import { unsafeSVG } from 'lit/directives/unsafe-svg.js';
import { type Instant, peak } from '../../sim/index.ts';
import { number } from '../format.ts';
import { CLIMB, DROP, type Session } from '../session.ts';
import { type DrawingInput, drawBrake, drawLoupe } from './drawing.ts';
import { layout, roleWords, type StageLayout, tangents } from './layout.ts';
import type { Picture, PixiStage } from './pixi-stage.ts';
import type { Label } from './shapes.ts';
import { svgLabel } from './svg.ts';
import { themes } from './theme.ts';

/** The stage: the brake painted by Pixi, texts and frame over it as SVG. */
export class StageView extends LitElement {
  static override properties = { session: { attribute: false }, foot: { type: Number } };
  declare session: Session;
  declare foot: number;
  #painter: PixiStage | null = null;
  #size = { width: 0, height: 0 };
  #resized = false;
  #texts = '';
  #textsAt = 0;
  #zoom = { factor: 1, x: 0, y: 0 };
  #pointers = new Map<number, { x: number; y: number }>();
  #theme = '';
  #observer: ResizeObserver | null = null;

  constructor() {
    super();
    this.foot = 60;
  }

  static override styles = css`
    :host { position: absolute; inset: 0; display: block; overflow: hidden; touch-action: pan-y; }
    #host { position: absolute; inset: 0; }
    canvas { position: absolute; left: 0; top: 0; }
    svg { position: absolute; inset: 0; width: 100%; height: 100%; pointer-events: none; }
    text { font-family: inherit; fill: var(--ink); font-feature-settings: 'tnum'; }
    .fan, .peak, .force, .role, .turn, .tooth { paint-order: stroke; stroke: var(--sheet); stroke-width: 5px; stroke-linejoin: round; }
    .fan { font-size: 18px; font-weight: 650; }
    .peak { font-size: 22px; font-weight: 740; }
    .force { font-size: 19px; font-weight: 650; }
    .tooth { font-size: 20px; font-weight: 700; stroke: none; }
    .lead { fill: var(--lead); }
    .trail { fill: var(--trail); }
    .fluid { fill: var(--fluid); }
    .ink { fill: var(--ink); }
    .role { font-size: 30px; font-weight: 790; font-stretch: 104%; }
    .say { font-size: 17px; font-weight: 540; }
    .turn { font-size: 17px; font-weight: 640; }
    .cap { font-size: 15px; font-weight: 520; fill: var(--ink2); }
    .zone { font-size: 13px; font-weight: 600; fill: var(--ink2); }
    .line { fill: none; stroke: var(--rule); stroke-width: 1; }
    .mark { font-size: 26px; font-weight: 760; paint-order: stroke; stroke: var(--sheet); stroke-width: 6px; }
    .rim { fill: none; stroke: var(--ink); stroke-width: 2.6; }
    .ring { fill: none; stroke: var(--ink); stroke-width: 2; }
    .flash { fill: none; stroke: var(--adj); stroke-width: 7; }
    .mid .role { font-size: 22px; }
    .mid .say, .mid .turn { font-size: 14.5px; }
    .mid .peak { font-size: 17px; }
    .mid .force, .mid .fan { font-size: 16px; }
    .mid .tooth { font-size: 15px; }
    .small .role { font-size: 20px; }
    .small .peak { font-size: 18px; }
    .small .fan, .small .force { font-size: 14px; }
    .small .tooth { font-size: 14px; }
    .small .turn { font-size: 14px; }
    .zoomed { position: absolute; right: 36px; top: 34px; font: inherit; font-size: 15px; font-weight: 600; padding: 6px 12px; border: 2px solid var(--ink); background: var(--sheet); color: var(--ink); cursor: pointer; }
  `;

  override connectedCallback(): void {
    super.connectedCallback();
    this.#observer = new ResizeObserver(([entry]) => {
      if (!entry) return;
      this.#size = { width: entry.contentRect.width, height: entry.contentRect.height };
      this.#resized = true;
      this.#textsAt = 0;
    });
    this.#observer.observe(this);
    this.addEventListener('wheel', this.#wheel, { passive: false });
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#observer?.disconnect();
    this.removeEventListener('wheel', this.#wheel);
    this.#painter?.destroy();
    this.#painter = null;
  }

  protected override async firstUpdated(): Promise<void> {
    const { PixiStage } = await import('./pixi-stage.ts');
    const host = this.renderRoot.querySelector<HTMLElement>('#host');
    if (!host || !this.isConnected) return;
    this.#painter = await PixiStage.create(host, themes[this.session.theme]);
    this.#theme = this.session.theme;
    this.#resized = true;
  }

  /** Which renderer paints; empty before it is there. */
  get painter(): string {
    return this.#painter?.kind ?? '';
  }

  /** Paints the present moment; called once a frame. */
  draw(now: number): void {
    const painter = this.#painter;
    const { session } = this;
    if (!painter || this.#size.width === 0) return;
    if (this.#resized) {
      painter.resize(this.#size.width, this.#size.height, Math.min(3, window.devicePixelRatio));
      this.#resized = false;
    }
    if (this.#theme !== session.theme) {
      this.#theme = session.theme;
      painter.setTheme(themes[session.theme]);
      this.#textsAt = 0;
    }
    const instant = this.#shown(session.instant());
    const base = {
      rig: session.rig,
      state: session.state,
      instant,
      rest: session.rest,
      layers: session.layers,
      magnification: session.magnification,
    };
    const loupe = drawLoupe({ ...base, scale: 1 });
    const place = layout({
      rig: session.rig,
      station: session.station,
      ...this.#size,
      foot: this.foot,
      loupe: session.layers.loupe && session.brake.adjuster.lever !== null,
      look: loupe.look,
      zoom: this.#zoom,
    });
    const input: DrawingInput = { ...base, scale: place.brake.scale };
    const small = place.loupe !== null && place.narrow;
    const drawing = drawBrake(
      small
        ? { ...input, layers: { fan: false, comb: false, forces: false, ghost: false } }
        : input,
    );
    const pictures: Picture[] = [{ name: 'brake', groups: drawing.groups, view: place.brake }];
    if (place.loupe) pictures.push({ name: 'loupe', groups: loupe.groups, view: place.loupe });
    painter.draw(pictures);
    if (now - this.#textsAt >= 100 || session.clock - session.clickedAt < 0.3) {
      this.#textsAt = now;
      const texts = this.#overlay(place, drawing.labels, loupe.labels, loupe.look, instant);
      if (texts !== this.#texts) {
        this.#texts = texts;
        this.requestUpdate();
      }
    }
  }

  /** After a fast-forward's click the tooth step is shown once more, slowly enough to see. */
  #shown(i: Instant): Instant {
    const left = this.session.stepShown;
    if (left <= 0 || i.tooth === 0) return i;
    const climb = left > DROP ? 1 - (left - DROP) / CLIMB : 1;
    return { ...i, tooth: i.tooth - 1, climb };
  }

  #overlay(
    place: StageLayout,
    labels: readonly Label[],
    teeth: readonly Label[],
    look: readonly [number, number],
    instant: Instant,
  ): string {
    const { width, height } = this.#size;
    const { session } = this;
    const view = { ...place.brake, width, height };
    const out: string[] = [];
    const text = (x: number, y: number, t: string, kind: string, anchor = 'start') =>
      out.push(
        `<text class="${kind}" x="${x.toFixed(1)}" y="${y.toFixed(1)}" text-anchor="${anchor}">${t}</text>`,
      );
    if (place.frame) out.push(zones(width, height, this.foot));
    const words = roleWords(instant.turning);
    const rim = session.brake.drum.radiusNew + session.brake.drum.rim;
    const top = view.y - (rim + 7) * view.scale;
    const lens = place.loupe?.clip ?? null;
    if (!(lens && place.narrow)) {
      const arrowTop = Math.max(place.frame ? 46 : 18, top - 15);
      if (!place.narrow) text(view.x, arrowTop, words.turn, 'turn', 'middle');
      this.#roles(place, words, text, lens !== null, instant);
    }
    if (!place.narrow) {
      const cap = session.layers.fan
        ? `Gap fan ×${session.magnification}, mm`
        : 'View from outside the wheel, drum cut away';
      text(place.frame ? 40 : 16, place.frame ? 50 : 26, cap, 'cap');
    }
    for (const l of labels) {
      // On a phone the peaks stand under the role names, and force values would cover the brake.
      if (place.narrow && (lens || /peak|force/.test(l.kind))) continue;
      out.push(svgLabel(l, view));
    }
    if (place.loupe && lens) {
      const c = {
        x: view.x + look[0] * view.scale,
        y: view.y - look[1] * view.scale,
        r: (lens.r / place.loupe.scale) * view.scale,
      };
      out.push(`<circle class="ring" cx="${c.x}" cy="${c.y}" r="${c.r}"/>`);
      for (const d of tangents(c, lens)) out.push(`<path class="line" d="${d}"/>`);
      out.push(`<circle class="rim" cx="${lens.x}" cy="${lens.y}" r="${lens.r}"/>`);
      const age = session.clock - session.clickedAt;
      if (age < 0.24)
        out.push(
          `<circle class="flash" cx="${lens.x}" cy="${lens.y}" r="${lens.r - 5}" opacity="${(1 - age / 0.24).toFixed(2)}"/>`,
        );
      for (const l of teeth) out.push(svgLabel(l, { ...place.loupe, width, height }));
      if (!place.narrow) text(c.x + c.r + 6, c.y + c.r + 12, 'A', 'mark');
      text(lens.x - lens.r * 0.93, lens.y + lens.r - 2, 'A', 'mark', 'middle');
      text(
        lens.x - lens.r * 0.93 + 16,
        lens.y + lens.r - 3,
        `×${(place.loupe.scale / view.scale).toFixed(1)}`,
        'cap',
      );
    }
    const kind = place.narrow ? 'small' : width > 1150 ? '' : 'mid';
    return `<g class="${kind}">${out.join('')}</g>`;
  }

  #roles(
    place: StageLayout,
    words: ReturnType<typeof roleWords>,
    text: (x: number, y: number, t: string, kind: string, anchor?: string) => void,
    short: boolean,
    instant: Instant,
  ): void {
    const { width } = this.#size;
    const { x, scale } = place.brake;
    const colour = (role: string) => (role === 'leading' ? 'role lead' : 'role trail');
    const name = (role: string) => (role === 'leading' ? 'Leading' : 'Trailing');
    if (place.narrow) {
      const y = this.#size.height - 14;
      const most = (side: 'front' | 'rear') =>
        `${number(peak(instant.shoes[side].pressure), 2)} MPa`;
      const pressed = this.session.layers.comb && instant.shoes.front.normalSum > 1;
      text(14, y - (pressed ? 22 : 0), name(words.left), colour(words.left));
      text(width - 14, y - (pressed ? 22 : 0), name(words.right), colour(words.right), 'end');
      if (!pressed) return;
      text(14, y, most('front'), colour(words.left).replace('role', 'peak'));
      text(width - 14, y, most('rear'), colour(words.right).replace('role', 'peak'), 'end');
      return;
    }
    if (short) {
      const reach = 132 * (this.session.brake.drum.radiusNew / 100) * scale * 0.67;
      const y = place.frame ? 84 : 66;
      text(x - reach, y, name(words.left), colour(words.left), 'end');
      text(x + reach, y, name(words.right), colour(words.right));
      return;
    }
    const say = {
      leading: ['The drum drags it', 'tighter onto itself'],
      trailing: ['The drum pushes it', 'away from the rim'],
    };
    const still = instant.turning === 0;
    const inset = place.frame ? 58 : 18;
    const y = place.frame ? 168 : 66;
    const step = place.frame ? 22 : 18;
    text(
      inset,
      y,
      still ? 'Front shoe' : `${name(words.left)} shoe`,
      still ? 'role ink' : colour(words.left),
    );
    text(
      width - inset,
      y,
      still ? 'Rear shoe' : `${name(words.right)} shoe`,
      still ? 'role ink' : colour(words.right),
      'end',
    );
    if (still) return;
    say[words.left].forEach((t, i) => {
      text(inset, y + 4 + step * (i + 1), t, 'say');
    });
    say[words.right].forEach((t, i) => {
      text(width - inset, y + 4 + step * (i + 1), t, 'say', 'end');
    });
  }

  #zoomBy(factor: number, x: number, y: number): void {
    const next = Math.max(1, Math.min(12, this.#zoom.factor * factor));
    const f = next / this.#zoom.factor;
    const cx = this.#size.width / 2;
    const cy = (this.#size.height - this.foot) / 2;
    // The point under the pointer stays where it is.
    this.#zoom =
      next === 1
        ? { factor: 1, x: 0, y: 0 }
        : {
            factor: next,
            x: x - cx - (x - cx - this.#zoom.x) * f,
            y: y - cy - (y - cy - this.#zoom.y) * f,
          };
    this.#textsAt = 0;
    this.requestUpdate();
  }

  /** Zoom about the middle of the stage by keys or buttons; 0 resets. */
  zoom(factor: number): void {
    if (factor === 0) {
      this.#zoom = { factor: 1, x: 0, y: 0 };
      this.#textsAt = 0;
      this.requestUpdate();
    } else this.#zoomBy(factor, this.#size.width / 2, (this.#size.height - this.foot) / 2);
  }

  #wheel = (e: WheelEvent): void => {
    e.preventDefault();
    const box = this.getBoundingClientRect();
    this.#zoomBy(1.0015 ** -e.deltaY, e.clientX - box.left, e.clientY - box.top);
  };

  #down = (e: PointerEvent): void => {
    this.#pointers.set(e.pointerId, { x: e.clientX, y: e.clientY });
    (e.currentTarget as HTMLElement).setPointerCapture(e.pointerId);
  };

  #move = (e: PointerEvent): void => {
    const before = this.#pointers.get(e.pointerId);
    if (!before) return;
    const other = [...this.#pointers].find(([id]) => id !== e.pointerId)?.[1];
    if (other) {
      const was = Math.hypot(before.x - other.x, before.y - other.y);
      const is = Math.hypot(e.clientX - other.x, e.clientY - other.y);
      const box = this.getBoundingClientRect();
      if (was > 0)
        this.#zoomBy(
          is / was,
          (e.clientX + other.x) / 2 - box.left,
          (e.clientY + other.y) / 2 - box.top,
        );
    } else if (this.#zoom.factor > 1) {
      this.#zoom = {
        ...this.#zoom,
        x: this.#zoom.x + e.clientX - before.x,
        y: this.#zoom.y + e.clientY - before.y,
      };
      this.#textsAt = 0;
    }
    this.#pointers.set(e.pointerId, { x: e.clientX, y: e.clientY });
  };

  #up = (e: PointerEvent): void => {
    this.#pointers.delete(e.pointerId);
  };

  override render() {
    const zoomed = this.#zoom.factor > 1;
    return html`<div id="host" @pointerdown=${this.#down} @pointermove=${this.#move} @pointerup=${this.#up} @pointercancel=${this.#up}></div>
      <svg aria-hidden="true">${svg`${unsafeSVG(this.#texts)}`}</svg>
      ${zoomed ? html`<button class="zoomed" @click=${() => this.zoom(0)}>Whole brake (0)</button>` : ''}`;
  }
}
customElements.define('takeup-stage', StageView);

/** Zone frame: columns 1–8, rows A–F, so that one can say "look at C3". */
function zones(width: number, height: number, foot: number): string {
  const m = 24;
  const low = foot > 100 ? height - foot : height - m;
  const out = [
    `<rect class="line" x="${m}" y="${m}" width="${width - 2 * m}" height="${low - m}"/>`,
  ];
  for (let i = 0; i < 8; i++) {
    const x = m + ((width - 2 * m) * (i + 0.5)) / 8;
    out.push(
      `<text class="zone" x="${x.toFixed(1)}" y="${m - 8}" text-anchor="middle">${i + 1}</text>`,
    );
    const q = m + ((width - 2 * m) * i) / 8;
    if (i) out.push(`<path class="line" d="M${q} 2V${m}"/>`);
  }
  for (let j = 0; j < 6; j++) {
    const y = m + ((low - m) * (j + 0.5)) / 6;
    out.push(
      `<text class="zone" x="${m / 2}" y="${(y + 5).toFixed(1)}" text-anchor="middle">${'ABCDEF'[j]}</text>`,
    );
    const q = m + ((low - m) * j) / 6;
    if (j) out.push(`<path class="line" d="M2 ${q}H${m}M${width - m} ${q}H${width - 2}"/>`);
  }
  return out.join('');
}
