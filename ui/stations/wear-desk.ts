import {
  type Brake,
  type BrakeState,
  driveLife,
  type Forecast,
  forecast,
  freshState,
  type Hill,
  type HotPress,
  hotPress,
  isDriven,
  KM,
  KMH,
  type LifeEnd,
  type LifeEvent,
  type LifeOptions,
  type LifeRow,
} from '../../sim/index.ts';
import { type ToldEvent, toldEvent } from '../../sim/workshop/index.ts';
import { isCountable, wordsOf } from '../adjusters.ts';
import type { LifeNews } from '../life-messages.ts';
import { LifeRun } from '../life-run.ts';
import { type LaneId, rowAt } from '../plot/lanes.ts';
import type { Session } from '../session.ts';
import { AdjusterChoice } from './wear-adjuster.ts';
import { RoadChoice } from './wear-road.ts';

export type WearStep = 100 | 1000 | 'click' | 'limit';
export type WearPage = 'readings' | 'events' | 'hot' | 'setup';
/** Moments of a hot press that the stage can show. */
export type HotMoment = 'before' | 'hot' | 'cold';

/** Hills of the hot press, driven down at 40 km/h with the brake holding the speed. */
export const hills: readonly (Hill & { readonly name: string })[] = [
  { name: '8 %, 3 km', slope: 0.08, length: 3 * KM, speed: 40 * KMH },
  { name: '12 %, 4 km', slope: 0.12, length: 4 * KM, speed: 40 * KMH },
  { name: '16 %, 4 km', slope: 0.16, length: 4 * KM, speed: 40 * KMH },
];

/** How fast a run is shown, km/s of the page's clock. */
const PACE: Readonly<Record<WearStep, number>> = { 100: 833, 1000: 833, click: 3000, limit: 9000 };
/** With more clicks than this in one run each is only flashed, not stepped through. */
const MANY = 30;
/** Distance of two rows of the chart, mm. */
const ROWS: Readonly<Record<WearStep, number>> = {
  100: 5 * KM,
  1000: 20 * KM,
  click: 50 * KM,
  limit: 100 * KM,
};

/**
 * What the Wear station knows: the run driven so far with its events, the moment of it that the
 * stage shows, the road, and how the next stretch is driven. The bench's brake is that moment's.
 */
export class WearDesk {
  readonly session: Session;
  rows: readonly LifeRow[] = [];
  events: readonly ToldEvent[] = [];
  /** Row that the stage shows. */
  at = 0;
  /** What the chart's last lane shows. */
  lane: LaneId = 'lining';
  page: WearPage = 'readings';
  step: WearStep = 1000;
  /** Share driven, 0..1, while the worker drives. */
  progress = 0;
  /** Why the last stretch ended. */
  end: LifeEnd | null = null;
  /** Number of the hill chosen for the hot press, and the last one driven down. */
  hill = 1;
  hot: { readonly result: HotPress; readonly moment: HotMoment } | null = null;
  readonly road: RoadChoice;
  readonly adjuster: AdjusterChoice;
  readonly #life = new LifeRun();
  #known: BrakeState | null = null;
  #knownBrake: Brake | null = null;
  /** Shown so far of a stretch, mm, and its pace, mm/s. */
  #play: { shown: number; readonly pace: number; before: number } | null = null;
  #frame = 0;
  #changes = 0;

  constructor(session: Session) {
    this.session = session;
    this.road = new RoadChoice(session, () => this.#changed());
    this.adjuster = new AdjusterChoice(session, (refit) => {
      this.#halt();
      refit();
      this.sync();
      this.#changed();
    });
    this.sync();
  }

  /** Grows with every change of the run or of the moment shown. */
  get changes(): number {
    return this.#changes;
  }
  get busy(): boolean {
    return this.#life.busy || this.#play !== null;
  }
  /** Where the run begins, with whatever was on the bench then. */
  get firstRow(): LifeRow | undefined {
    this.sync();
    return this.rows[0];
  }
  /** Is the last moment of the run shown? */
  get atEnd(): boolean {
    return this.at >= this.rows.length - 1;
  }

  #changed(): void {
    this.#changes += 1;
    this.session.changed();
  }

  /** Begins the run anew where the bench was changed by something else; a click of the pedal goes in. */
  sync(): void {
    const { brake, state } = this.session;
    if (this.#known === state && this.#knownBrake === brake) return;
    const known = this.#known;
    const same =
      known !== null &&
      this.#knownBrake === brake &&
      known.distance === state.distance &&
      known.drumRadius === state.drumRadius &&
      known.wear.front === state.wear.front;
    this.#known = state;
    this.#knownBrake = brake;
    if (same && known.tooth === state.tooth) return;
    if (this.busy) this.#halt();
    const { distance } = state;
    const row = driveLife(this.session.rig, state, this.road.duty, { distance, askLocks: false })
      .rows[0] as LifeRow;
    this.hot = null;
    if (!same) {
      this.rows = [row];
      this.events = [];
      this.end = null;
    } else {
      this.#cut();
      this.rows = [...this.rows, { ...row, at: 'after click' }];
      const text = `Click: tooth ${state.tooth} on the pedal`;
      this.events = [
        ...this.events,
        {
          kind: 'click',
          distance,
          tooth: state.tooth,
          side: null,
          temperature: 0,
          value: 1,
          text,
          state,
        },
      ];
    }
    this.at = this.rows.length - 1;
    this.#changes += 1;
  }

  #put(state: BrakeState): void {
    this.session.load(state);
    this.#known = this.session.state;
    this.#knownBrake = this.session.brake;
  }

  /** Forgets what came after the moment that is shown. */
  #cut(): void {
    const row = this.rows[this.at];
    if (!row) return;
    this.rows = this.rows.slice(0, this.at + 1);
    this.events = this.events.filter(
      (e) =>
        e.distance < row.distance || (e.distance === row.distance && row.at !== 'before click'),
    );
  }

  chooseStep(step: WearStep): void {
    this.step = step;
    this.#changed();
  }
  choosePage(page: WearPage): void {
    this.page = page;
    this.#changed();
  }
  chooseLane(lane: LaneId): void {
    this.lane = lane;
    this.#changed();
  }
  /** Drives on from the moment shown by the chosen step; the worker drives, the page shows. */
  drive(): void {
    this.session.acted();
    this.sync();
    if (this.busy) return;
    this.hot = null;
    this.#cut();
    const { state, brake } = this.session;
    const { step } = this;
    const options: LifeOptions = {
      rowEvery: ROWS[step],
      ...(typeof step === 'number' ? { distance: state.distance + step * KM } : {}),
      ...(step === 'click' ? { toNextClick: true } : {}),
      stopAtLimit: typeof step !== 'number',
    };
    this.#start(state, brake, options, PACE[step]);
  }

  #start(
    state: BrakeState,
    brake: Brake,
    options: LifeOptions,
    kmPerSecond: number,
    standing?: string,
  ): void {
    this.progress = 0;
    this.end = null;
    const to = standing === undefined ? {} : { standing };
    this.#life.start({ brake, state, duty: this.road.duty, options, ...to }, (news) =>
      this.#hear(news),
    );
    if (!this.session.reducedMotion) {
      this.#play = { shown: state.distance, pace: kmPerSecond * KM, before: 0 };
      this.#frame = requestAnimationFrame(this.#tick);
    }
    this.#changed();
  }

  #hear(news: LifeNews): void {
    const last = this.rows.at(-1);
    const [first] = news.rows;
    // The first row of a stretch is the last of the one before.
    const twice = first && last && first.at === 'run' && first.distance === last.distance;
    this.rows = [...this.rows, ...(twice ? news.rows.slice(1) : news.rows)];
    const events = news.events.map((e) => toldEvent(this.session.brake, e));
    this.events = [...this.events, ...events];
    this.progress = news.progress;
    if (news.end) this.end = news.end;
    if (!this.#play) {
      for (const e of events) this.session.tell(e);
      this.at = this.rows.length - 1;
      this.#put(news.state ?? (this.rows[this.at] as LifeRow).state);
    }
    this.#changed();
  }

  #tick = (now: number): void => {
    const play = this.#play;
    if (!play) return;
    const seconds = play.before > 0 ? Math.min(0.1, (now - play.before) / 1000) : 0;
    play.before = now;
    // A tooth that is being shown dropping in holds the run up.
    if (this.session.stepShown === 0) this.#forward(play, seconds);
    if (this.#play) this.#frame = requestAnimationFrame(this.#tick);
  };

  #forward(play: { shown: number; readonly pace: number }, seconds: number): void {
    const { rows } = this;
    const most = rows.at(-1)?.distance ?? 0;
    play.shown = Math.min(most, play.shown + play.pace * seconds);
    const many = !isCountable(this.session.brake) || this.events.length > MANY;
    let at = this.at;
    let clicks = 0;
    while (at + 1 < rows.length && (rows[at + 1] as LifeRow).distance <= play.shown) {
      at += 1;
      if ((rows[at] as LifeRow).at !== 'after click') continue;
      clicks += 1;
      if (!many) break;
    }
    if (at !== this.at) {
      const from = (rows[this.at] as LifeRow).distance;
      this.at = at;
      const row = rows[at] as LifeRow;
      this.#put(row.state);
      for (const e of this.told) {
        if (e.distance > from && e.distance <= row.distance) this.session.tell(e);
      }
      if (clicks > 0 && wordsOf(this.session.brake).heard) this.session.tellClick(!many);
      this.#changed();
    }
    if (!this.#life.busy && this.at >= rows.length - 1) {
      this.#play = null;
      this.#changed();
    }
  }

  #halt(): void {
    this.#life.stop();
    this.#play = null;
    cancelAnimationFrame(this.#frame);
  }

  /** Ends a stretch where it is shown; what was driven beyond is forgotten. */
  stop(): void {
    this.#halt();
    this.#cut();
    this.end = null;
    this.#changed();
  }

  chooseHill(hill: number): void {
    this.hill = hill;
    this.#changed();
  }

  /** Down the hill from the moment shown, one press at its foot, and a cold morning: that is put on. */
  pressHot(): void {
    this.session.acted();
    this.#halt();
    this.sync();
    this.#cut();
    const { rig, state } = this.session;
    const result = hotPress(rig, state, hills[this.hill] as Hill);
    if (result.stepped > 0) {
      const { distance } = state;
      const { tooth } = result.cold;
      const text = `Hot press at ${Math.round(result.temperature)} °C: ${result.stepped === 1 ? 'one step' : `${result.stepped} steps`} to tooth ${tooth}`;
      const { temperature, gapCold: value } = result;
      const event = {
        kind: 'stepped hot',
        distance,
        tooth,
        side: null,
        temperature,
        value,
        text,
      } as const;
      this.events = [...this.events, { ...event, state: result.cold }];
      this.session.tell(event);
      const options = { distance, askLocks: false };
      const row = driveLife(rig, result.cold, this.road.duty, options).rows[0] as LifeRow;
      this.rows = [...this.rows, { ...row, at: 'after click' }];
      this.at = this.rows.length - 1;
      if (wordsOf(this.session.brake).heard) this.session.tellClick(false);
    }
    this.hot = { result, moment: 'cold' };
    this.#put(result.cold);
    this.#changed();
  }

  /** The stage shows one moment of the last hot press. */
  showHot(moment: HotMoment): void {
    if (!this.hot) return;
    this.hot = { ...this.hot, moment };
    this.#put(this.hot.result[moment]);
    const { layers } = this.session;
    if ((moment === 'hot') !== layers.heat) this.session.toggle('heat');
    this.#changed();
  }

  /** The stage goes to a row of the run. */
  show(at: number): void {
    const row = this.rows[at];
    if (!row) return;
    this.hot = null;
    this.#play = null;
    this.at = at;
    this.#put(row.state);
    this.#changed();
  }

  /** The stage goes to the moment right after an event. */
  goTo(event: LifeEvent): void {
    this.hot = null;
    this.#play = null;
    this.at = rowAt(this.rows, event.distance);
    this.#put(event.state);
    this.#changed();
  }

  /** To the next event along the run, or back to the one before. */
  nextEvent(way: 1 | -1): void {
    const here = this.rows[this.at]?.distance ?? 0;
    const found =
      way > 0
        ? this.told.find((e) => e.distance > here)
        : this.told.findLast((e) => e.distance < here);
    if (found) this.goTo(found);
  }

  /** A new brake, nothing driven. */
  backToNew(): void {
    this.session.acted();
    this.#halt();
    this.#put(freshState(this.session.brake));
    this.#known = null;
    this.sync();
    this.#changed();
  }

  /** A standing state of the scene, with the run that leads to it. */
  startFrom(name: string): void {
    const { brake } = this.session;
    const recipe = brake.states.find((s) => s.name === name);
    if (!recipe) throw new Error(`No state "${name}"`);
    this.backToNew();
    this.#put(freshState(brake, recipe.drumRadius ?? brake.drum.radiusNew));
    this.#known = null;
    this.sync();
    if (!isDriven(recipe)) return;
    this.road.plain();
    const options = { rowEvery: ROWS.limit, stopAtLimit: false };
    this.#start(this.session.state, brake, options, PACE.limit * 4, name);
  }

  /** Events as told: the steps of some adjusters are too small to be told one by one. */
  get told(): readonly ToldEvent[] {
    return isCountable(this.session.brake)
      ? this.events
      : this.events.filter((e) => e.kind !== 'click');
  }

  /**
   * What is left by what was measured at this moment: against the first moment of the run when that
   * was the brake as fitted, else against new parts.
   */
  forecast(): Forecast {
    const { brake, state } = this.session;
    const row = this.rows[this.at];
    const [first] = this.rows;
    const fitted = first && first.distance === 0 ? first : null;
    return forecast(brake, {
      distance: state.distance,
      ...(row ? { lining: { front: row.liningFront, rear: row.liningRear } } : {}),
      drum: 2 * state.drumRadius,
      ...(fitted ? { drumFitted: 2 * fitted.drumRadius } : {}),
      teeth: state.tooth,
    });
  }
}
