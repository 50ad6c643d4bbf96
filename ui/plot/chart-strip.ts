import { css, html, LitElement, unsafeCSS } from 'lit';
import uPlot from 'uplot';
import uplotCss from 'uplot/dist/uPlot.min.css?inline';
import { KM } from '../../sim/index.ts';
import { type Token, themes } from '../theme.ts';

type Colours = Readonly<Record<Token, string>>;

import { number } from '../format.ts';
import type { Session } from '../session.ts';

/** The chart strip: clearance sawtooth with click marks, linings against their limit, brake factor. */

interface Lane {
  readonly title: string;
  readonly unit: string;
  readonly share: number;
  readonly low: number;
  readonly high: number;
  readonly series: {
    readonly name: string;
    readonly colour: (t: Colours) => string;
    readonly dash?: number[];
  }[];
  /** Dashed lines with their words. */
  readonly limits: {
    readonly at: number;
    readonly text: string;
    readonly colour: (t: Colours) => string;
  }[];
  readonly digits: number;
  readonly marks: boolean;
}

const LEFT = 128;
const font = (size: number, weight: number): string =>
  `${weight} ${size}px "Encode Sans Variable", sans-serif`;

export class ChartStrip extends LitElement {
  static override properties = {
    session: { attribute: false },
    rows: { type: Number },
    theme: { type: String },
  };
  declare session: Session;
  /** Length of the trace: a new value redraws. */
  declare rows: number;
  declare theme: string;
  #plots: uPlot[] = [];
  #made = '';
  #observer: ResizeObserver | null = null;
  #width = 0;
  #height = 0;

  static override styles = [
    unsafeCSS(uplotCss),
    css`
      :host { display: block; position: absolute; inset: 0; background: var(--panel); overflow: hidden; }
      .u-legend { display: none; }
      .words { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
    `,
  ];

  override connectedCallback(): void {
    super.connectedCallback();
    this.#observer = new ResizeObserver(([entry]) => {
      if (!entry) return;
      this.#width = Math.floor(entry.contentRect.width);
      this.#height = Math.floor(entry.contentRect.height);
      this.#draw();
    });
    this.#observer.observe(this);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#observer?.disconnect();
    for (const p of this.#plots) p.destroy();
    this.#plots = [];
    this.#made = '';
  }

  #lanes(): Lane[] {
    const { shoes } = this.session.brake;
    const thin = Math.min(shoes.front.lining.thicknessMin, shoes.rear.lining.thicknessMin);
    const thick = Math.max(shoes.front.lining.thicknessNew, shoes.rear.lining.thicknessNew);
    // Clearance at which the next tooth drops in: read off the run itself, before its clicks.
    const { trace, events } = this.session;
    const before = events
      .filter((e) => e.kind === 'click')
      .map((e) => trace.findLast((p) => p.distance < e.distance)?.clearance ?? 0);
    const next = before.length > 0 ? Math.max(...before) : Number.NaN;
    const gaps = trace.map((p) => p.clearance);
    const top = Math.max(0.45, ...gaps) * 1.06;
    const foot = Math.min(0.25, ...gaps) * 0.75;
    const lanes: Lane[] = [
      {
        title: 'Clearance',
        unit: 'mm a shoe',
        share: 0.46,
        low: foot,
        high: top,
        digits: 2,
        marks: true,
        series: [{ name: 'clearance', colour: (t) => t.ink }],
        limits: Number.isFinite(next)
          ? [{ at: next, text: `next tooth ${number(next, 2)}`, colour: (t) => t.adj }]
          : [],
      },
      {
        title: 'Lining',
        unit: 'mm',
        share: 0.34,
        low: Math.max(0, thin - 0.6),
        high: thick + 0.2,
        digits: 1,
        marks: false,
        series: [
          { name: 'front', colour: (t) => t.lead },
          { name: 'rear', colour: (t) => t.trail, dash: [9, 4] },
        ],
        limits: [{ at: thin, text: `limit ${number(thin, 1)}`, colour: (t) => t.bad }],
      },
    ];
    if (this.#height > 240) {
      lanes.push({
        title: 'Brake factor',
        unit: 'after springs',
        share: 0.2,
        low: 1.5,
        high: 3,
        digits: 2,
        marks: false,
        series: [{ name: 'factor', colour: (t) => t.ink }],
        limits: [],
      });
    }
    return lanes;
  }

  #data(): number[][][] {
    const { trace } = this.session;
    const x = trace.map((p) => p.distance / KM);
    return [
      [x, trace.map((p) => p.clearance)],
      [x, trace.map((p) => p.liningFront), trace.map((p) => p.liningRear)],
      [x, trace.map((p) => p.brakeFactor)],
    ];
  }

  /** End of the axis: what was driven, with room ahead, in round steps. */
  #end(): number {
    const km = this.session.state.distance / KM;
    const steps = [5000, 10000, 20000, 45000, 65000, 100000];
    return steps.find((s) => km <= s * 0.93) ?? Math.ceil(km / 50000 + 0.2) * 50000;
  }

  override updated(): void {
    this.#draw();
  }

  #draw(): void {
    if (this.#width < 50 || this.#height < 50) return;
    const lanes = this.#lanes();
    const key = `${this.#width}x${this.#height}/${this.theme}/${lanes.length}`;
    const data = this.#data();
    if (key !== this.#made) {
      this.#made = key;
      for (const p of this.#plots) p.destroy();
      const host = this.renderRoot.querySelector<HTMLElement>('#plots');
      if (!host) return;
      const total = lanes.reduce((sum, l) => sum + l.share, 0);
      const free = this.#height - 30;
      this.#plots = lanes.map((lane, i) => {
        const last = i === lanes.length - 1;
        return new uPlot(
          this.#options(lane, i, Math.round((free * lane.share) / total) + (last ? 26 : 0), last),
          data[i] as uPlot.AlignedData,
          host,
        );
      });
    }
    this.#plots.forEach((p, i) => {
      p.setData(data[i] as uPlot.AlignedData, true);
    });
  }

  #options(lane: Lane, index: number, height: number, last: boolean): uPlot.Options {
    const theme = themes[this.session.theme].colours;
    const narrow = this.#width < 600;
    const right = narrow ? 14 : 172;
    const left = narrow ? 40 : LEFT;
    return {
      width: this.#width,
      height,
      padding: [lane.marks ? 24 : 8, right, 2, left],
      legend: { show: false },
      cursor: { show: false },
      scales: {
        x: { time: false, range: () => [0, this.#end()] },
        y: {
          range: () => {
            const l = this.#lanes()[index] ?? lane;
            return [l.low, l.high];
          },
        },
      },
      axes: [
        {
          show: last,
          stroke: theme.ink2,
          font: font(13, 540),
          size: 24,
          gap: 4,
          grid: { show: true, stroke: theme.rule, width: 1 },
          ticks: { show: false },
          values: (_u, values) => values.map((v) => (v === 0 ? '0 km' : number(v, 0))),
          space: narrow ? 90 : 130,
        },
        { show: false },
      ],
      series: [
        {},
        ...lane.series.map((s) => ({
          stroke: s.colour(theme),
          width: 2.4,
          ...(s.dash ? { dash: s.dash } : {}),
          points: { show: false },
        })),
      ],
      hooks: { draw: [(u) => this.#words(u, index, narrow)] },
    };
  }

  /** Titles, limits, click marks and end labels of a lane, drawn on the plot's own canvas. */
  #words(u: uPlot, index: number, narrow: boolean): void {
    const lane = this.#lanes()[index];
    if (!lane) return;
    const theme = themes[this.session.theme].colours;
    const { ctx } = u;
    const r = devicePixelRatio;
    const { left, top, width, height } = u.bbox;
    ctx.save();
    ctx.textBaseline = 'middle';
    const text = (
      t: string,
      x: number,
      y: number,
      colour: string,
      size: number,
      weight: number,
      align: CanvasTextAlign = 'left',
    ) => {
      ctx.font = font(size * r, weight);
      ctx.textAlign = align;
      ctx.lineWidth = 4 * r;
      ctx.lineJoin = 'round';
      ctx.strokeStyle = theme.panel;
      ctx.strokeText(t, x, y);
      ctx.fillStyle = colour;
      ctx.fillText(t, x, y);
    };
    if (!narrow) {
      text(lane.title, 16 * r, top + 10 * r, theme.ink, 16, 660);
      text(lane.unit, 16 * r, top + 29 * r, theme.ink2, 13.5, 540);
    } else {
      text(lane.title, left + 4 * r, top + 8 * r, theme.ink, 14, 660);
    }
    const y = (v: number): number => u.valToPos(v, 'y', true);
    for (const l of lane.limits) {
      ctx.strokeStyle = l.colour(theme);
      ctx.lineWidth = 1.6 * r;
      ctx.setLineDash([16 * r, 4 * r]);
      ctx.beginPath();
      ctx.moveTo(left, y(l.at));
      ctx.lineTo(left + width, y(l.at));
      ctx.stroke();
      ctx.setLineDash([]);
      if (narrow)
        text(l.text, left + width - 2 * r, y(l.at) - 9 * r, l.colour(theme), 13, 660, 'right');
      else text(l.text, left + width + 10 * r, y(l.at), l.colour(theme), 16, 660);
    }
    const { session } = this;
    const at = u.valToPos(session.state.distance / KM, 'x', true);
    ctx.strokeStyle = theme.ink;
    ctx.lineWidth = 2 * r;
    ctx.beginPath();
    ctx.moveTo(at, top);
    ctx.lineTo(at, top + height);
    ctx.stroke();
    if (lane.marks) {
      const clicks = session.events.filter((e) => e.kind === 'click');
      const every = Math.max(1, Math.ceil((clicks.length * 20 * r) / width));
      clicks.forEach((e, i) => {
        const x = u.valToPos(e.distance / KM, 'x', true);
        ctx.fillStyle = theme.adj;
        ctx.beginPath();
        ctx.moveTo(x - 6 * r, top - 6 * r);
        ctx.lineTo(x + 6 * r, top - 6 * r);
        ctx.lineTo(x, top + 5 * r);
        ctx.fill();
        if (i % every === 0) text(String(e.tooth), x, top - 14 * r, theme.adj, 13.5, 700, 'center');
      });
    }
    if (!narrow) {
      const end = session.trace.at(-1);
      if (end && index === 1) {
        text(
          `front ${number(end.liningFront, 1)}`,
          at + 12 * r,
          y(end.liningFront) + 8 * r,
          theme.lead,
          15,
          660,
        );
        text(
          `rear ${number(end.liningRear, 1)}`,
          at + 12 * r,
          y(end.liningRear) - 6 * r,
          theme.trail,
          15,
          660,
        );
      }
      if (end && index === 2)
        text(number(end.brakeFactor, 2), at + 12 * r, y(end.brakeFactor), theme.ink, 15, 660);
    }
    ctx.restore();
  }

  override render() {
    const clicks = this.session.events.filter((e) => e.kind === 'click');
    return html`<div id="plots" aria-hidden="true"></div>
      <div class="words" data-clicks=${clicks.length}>
        <h2>Clearance and linings over the distance</h2>
        <ul>${clicks.map((e) => html`<li data-mark>${e.text}</li>`)}</ul>
      </div>`;
  }
}
customElements.define('takeup-chart', ChartStrip);
