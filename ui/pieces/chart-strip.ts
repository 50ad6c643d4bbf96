import { css, html, LitElement, unsafeCSS } from 'lit';
import type uPlot from 'uplot';
import uplotCss from 'uplot/dist/uPlot.min.css?inline';
import { KM, type LifeRow } from '../../sim/index.ts';
import { piecesChartStrip as texts } from '../../sim/words/en.ts';
import type { ToldEvent } from '../../sim/workshop/index.ts';
import { number } from '../format.ts';
import {
  axisEnd,
  axisStart,
  choices,
  type KeptRow,
  keptOf,
  keptText,
  type Lane,
  type LaneId,
  laneOf,
  nearestRow,
  reaching,
} from '../plot/lanes.ts';
import { loadPlots, type Plots } from '../plot/library.ts';
import { font, type LaneView, paintLane } from '../plot/words.ts';
import type { LifeSoFar } from '../record/life-book.ts';
import type { Session } from '../session.ts';
import { type Theme, themes } from '../theme.ts';

/**
 * The chart strip: a run over its distance in lanes, its events marked. Pointing, dragging and the
 * arrow keys move along it, and the brake on the stage follows.
 */

/** What the chart shows of a run, and what is wanted of it. */
export interface ChartDesk {
  readonly session: Session;
  readonly rows: readonly LifeRow[];
  readonly events: readonly ToldEvent[];
  /** The events that have words, in their order. */
  readonly told: readonly ToldEvent[];
  /** The row that is shown. */
  readonly at: number;
  /** A kept moment that is to be seen beside the run. */
  readonly kept: KeptRow | null;
  /** What the last lane shows. */
  readonly lane: LaneId;
  show(at: number): void;
  goTo(event: ToldEvent): void;
  nextEvent(way: 1 | -1): void;
  chooseLane(lane: LaneId): void;
}

const LEFT = 150;
/** The shares of the lanes' heights from the top. */
const SHARES: readonly number[] = [0.46, 0.34, 0.26];
/** Under this width there is no room for words beside the curves. */
const NARROW = 600;
/** From this height on there is room for a third lane. */
const THIRD = 240;
/** How near to a mark a tap means it, px. */
const NEAR = 14;

export class ChartStrip extends LitElement {
  static override properties = {
    desk: { attribute: false },
    life: { attribute: false },
    at: { attribute: false },
    look: { attribute: false },
    ghost: { attribute: false },
  };
  declare desk: ChartDesk;
  /** What is shown of the desk: another value redraws. */
  declare life: LifeSoFar;
  declare at: number;
  declare look: string;
  declare ghost: KeptRow | null;
  #library: Plots | null = null;
  /** Told in the curves' place when they cannot be drawn. */
  #trouble = '';
  #plots: uPlot[] = [];
  #made = '';
  #drawn: readonly LifeRow[] = [];
  #ghosted: KeptRow | null = null;
  #lanes: readonly Lane[] = [];
  #observer: ResizeObserver | null = null;
  #width = 0;
  #height = 0;
  #held = false;

  static override styles = [
    unsafeCSS(uplotCss),
    css`
      :host { display: block; position: absolute; inset: 0; background: var(--panel); overflow: hidden; }
      .u-legend { display: none; }
      #plots { position: absolute; inset: 0; cursor: ew-resize; touch-action: pan-y; }
      #plots:focus-visible { outline: 4px solid var(--trail); outline-offset: -4px; }
      p { position: absolute; inset: 0; margin: auto 24px; height: fit-content; }
      .words { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
      select { position: absolute; left: 8px; width: 132px; height: 28px; font: 660 15px 'Encode Sans Variable', sans-serif; color: var(--ink); background: var(--panel); border: 1px solid var(--rule); border-radius: 0; cursor: pointer; }
      select:focus-visible { outline: 4px solid var(--trail); outline-offset: 1px; }
    `,
  ];

  override connectedCallback(): void {
    super.connectedCallback();
    this.#observer = new ResizeObserver(([entry]) => {
      if (!entry) return;
      this.#width = Math.floor(entry.contentRect.width);
      this.#height = Math.floor(entry.contentRect.height);
      this.requestUpdate();
    });
    this.#observer.observe(this);
    void this.#load();
    document.addEventListener('visibilitychange', this.#anew);
  }

  async #load(): Promise<void> {
    try {
      this.#library ??= await loadPlots();
      this.#trouble = '';
    } catch (error) {
      this.#trouble = texts.theCurvesCannotBeDrawn(error);
    }
    this.requestUpdate();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    document.removeEventListener('visibilitychange', this.#anew);
    this.#observer?.disconnect();
    for (const p of this.#plots) p.destroy();
    this.#plots = [];
    this.#made = '';
  }

  get #narrow(): boolean {
    return this.#width < NARROW;
  }

  #ids(): LaneId[] {
    const { lane } = this.desk;
    if (this.#height <= THIRD) return ['clearance', lane];
    return ['clearance', 'lining', lane === 'lining' ? 'factor' : lane];
  }

  #theme(): Theme {
    return themes[this.desk.session.theme];
  }

  protected override firstUpdated(): void {
    // These events do not bubble.
    this.renderRoot.addEventListener('contextrestored', this.#anew, true);
  }

  override updated(): void {
    this.#draw();
  }

  /** What a browser did with a canvas whose graphics died, or whose page was hidden, is gone. */
  #anew = (): void => {
    for (const p of this.#plots) p.redraw(false);
  };

  #draw(): void {
    if (!this.#library || this.#width < 50 || this.#height < 50) return;
    const { kept, rows, session } = this.desk;
    const ids = this.#ids();
    this.#lanes = ids.map((id) => reaching(laneOf(id, session.brake, rows), keptOf(id, kept)));
    const key = `${this.#width}x${this.#height}/${session.theme}/${ids.join()}`;
    if (key !== this.#made) {
      this.#made = key;
      this.#make(this.#library);
    } else if (rows !== this.#drawn || kept !== this.#ghosted) {
      this.#plots.forEach((p, i) => {
        p.setData(this.#data(i), true);
      });
    } else for (const p of this.#plots) p.redraw(false);
    this.#drawn = rows;
    this.#ghosted = kept;
  }

  #data(index: number): uPlot.AlignedData {
    const { rows } = this.desk;
    const lane = this.#lanes[index] as Lane;
    return [rows.map((r) => r.distance / KM), ...lane.series.map((s) => rows.map(s.value))];
  }

  #make(Plot: Plots): void {
    for (const p of this.#plots) p.destroy();
    const host = this.renderRoot.querySelector<HTMLElement>('#plots');
    if (!host) return;
    const shares = SHARES.slice(0, this.#lanes.length);
    const total = shares.reduce((sum, s) => sum + s, 0);
    const free = this.#height - 28;
    this.#plots = this.#lanes.map((lane, i) => {
      const last = i === this.#lanes.length - 1;
      const height = Math.floor((free * (shares[i] as number)) / total) + (last ? 26 : 0);
      return new Plot(this.#options(lane, i, height, last), this.#data(i), host);
    });
  }

  #options(lane: Lane, index: number, height: number, last: boolean): uPlot.Options {
    const { colours } = this.#theme();
    const narrow = this.#narrow;
    const ends = (): [number, number] => {
      const { rows } = this.desk;
      const from = axisStart((rows[0]?.distance ?? 0) / KM);
      return [from, axisEnd((rows.at(-1)?.distance ?? 0) / KM)];
    };
    return {
      width: this.#width,
      height,
      padding: [index === 0 ? 26 : 8, narrow ? 30 : 164, 2, narrow ? 84 : LEFT],
      legend: { show: false },
      cursor: { show: false },
      scales: {
        x: { time: false, range: ends },
        y: {
          range: () => {
            const l = this.#lanes[index] ?? lane;
            return [l.low, l.high];
          },
        },
      },
      axes: [
        {
          show: last,
          stroke: colours.ink2,
          font: font(narrow ? 14 : 13, 540),
          size: 24,
          gap: 4,
          grid: { show: true, stroke: colours.rule, width: 1 },
          ticks: { show: false },
          values: (_u, values) => values.map((v) => (v === 0 ? '0 km' : number(v, 0))),
          space: narrow ? 80 : 130,
        },
        { show: false },
      ],
      series: [
        {},
        ...lane.series.map((s) => ({
          stroke: colours[s.colour],
          width: 2.4,
          ...(s.dash ? { dash: [...s.dash] } : {}),
          points: { show: false },
        })),
      ],
      hooks: {
        draw: [
          (u) => {
            const now = this.#lanes[index];
            if (now) paintLane(u, now, this.#laneView(index));
          },
        ],
      },
    };
  }

  #laneView(index: number): LaneView {
    const { at, kept, told: events, rows, session } = this.desk;
    return {
      brake: session.brake,
      rows,
      events,
      at,
      kept,
      theme: this.#theme(),
      narrow: this.#narrow,
      first: index === 0,
      titled: !this.#narrow && index === this.#lanes.length - 1,
    };
  }

  /** Distance (mm) under a pointer, and the event whose mark it touches. */
  #under(e: PointerEvent): { distance: number; event: ToldEvent | null } {
    const [first] = this.#plots;
    if (!first) return { distance: 0, event: null };
    const box = this.getBoundingClientRect();
    const x = e.clientX - box.left;
    const left = first.bbox.left / devicePixelRatio;
    const distance = first.posToVal(x - left, 'x') * KM;
    const onMarks = e.clientY - box.top < first.bbox.top / devicePixelRatio + 8;
    let best: ToldEvent | null = null;
    let off = NEAR;
    for (const event of onMarks ? this.desk.told : []) {
      const away = Math.abs(first.valToPos(event.distance / KM, 'x') + left - x);
      if (away >= off) continue;
      off = away;
      best = event;
    }
    return { distance, event: best };
  }

  #down = (e: PointerEvent): void => {
    const { distance, event } = this.#under(e);
    if (event) this.desk.goTo(event);
    else {
      this.#held = true;
      (e.currentTarget as HTMLElement).setPointerCapture(e.pointerId);
      this.desk.show(nearestRow(this.desk.rows, distance));
    }
  };

  #move = (e: PointerEvent): void => {
    if (this.#held) this.desk.show(nearestRow(this.desk.rows, this.#under(e).distance));
  };

  #up = (): void => {
    this.#held = false;
    this.desk.session.close();
  };

  #key = (e: KeyboardEvent): void => {
    const { desk } = this;
    const last = desk.rows.length - 1;
    if (e.key === 'ArrowRight' || e.key === 'ArrowUp') desk.show(Math.min(last, desk.at + 1));
    else if (e.key === 'ArrowLeft' || e.key === 'ArrowDown') desk.show(Math.max(0, desk.at - 1));
    else if (e.key === 'PageDown') desk.nextEvent(1);
    else if (e.key === 'PageUp') desk.nextEvent(-1);
    else if (e.key === 'Home') desk.show(0);
    else if (e.key === 'End') desk.show(last);
    else return;
    e.preventDefault();
    e.stopPropagation();
  };

  /** The moment in words, for those who cannot see it. */
  #says(): string {
    const row = this.desk.rows[this.desk.at];
    if (!row) return texts.nothingDriven;
    const km = number(row.distance / KM, 0);
    return texts.kmClearanceMmTooth(
      km,
      number(row.clearance, 2),
      row.tooth,
      keptText(this.desk.kept),
    );
  }

  /** The last lane's title is the choice of what it shows. */
  #choice() {
    if (this.#narrow || this.#width === 0) return '';
    const ids = this.#ids();
    const third = ids.length === 3;
    const shown = ids.at(-1);
    const shares = SHARES.slice(0, ids.length);
    const total = shares.reduce((sum, s) => sum + s, 0);
    const above = shares.slice(0, -1).reduce((sum, s) => sum + s, 0);
    const top = ((this.#height - 28) * above) / total + 2;
    return html`<select aria-label=${texts.shownInTheLastLane} .style=${`top:${top.toFixed(0)}px`} @change=${(
      e: Event,
    ) => {
      this.desk.chooseLane((e.target as HTMLSelectElement).value as LaneId);
    }}>${choices
      .filter(([id]) => !(third && id === 'lining'))
      .map(
        ([id, name]) => html`<option value=${id} ?selected=${id === shown}>${name}</option>`,
      )}</select>`;
  }

  override render() {
    const { desk } = this;
    const clicks = desk.events.filter((e) => e.kind === 'click');
    return html`<div id="plots" role="slider" tabindex="0" aria-label=${texts.momentOfTheRunArrow} aria-valuemin="0" aria-valuemax=${desk.rows.length - 1} aria-valuenow=${desk.at} aria-valuetext=${this.#says()} @keydown=${this.#key} @pointerdown=${this.#down} @pointermove=${this.#move} @pointerup=${this.#up} @pointercancel=${this.#up}></div>
      ${this.#choice()}
      ${this.#trouble ? html`<p role="status">${this.#trouble}</p>` : ''}
      <div class="words" data-clicks=${clicks.length}>
        <h2>${texts.clearanceAndLiningsOverThe}</h2>
        <ul>${clicks.map((e) => html`<li data-mark>${e.text}</li>`)}</ul>
      </div>`;
  }
}
customElements.define('takeup-chart', ChartStrip);
