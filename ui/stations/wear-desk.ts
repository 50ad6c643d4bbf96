import {
  type BrakeState,
  type Forecast,
  forecast,
  type HotPress,
  KM,
  type LifeEnd,
  type LifeRow,
  readingOf,
  thinnest,
} from '../../sim/index.ts';
import type { ToldEvent } from '../../sim/workshop/index.ts';
import { wordsOf } from '../adjusters.ts';
import type { LifeTrouble } from '../life-messages.ts';
import { LifePlay, toldOf } from '../life-play.ts';
import { type KeptRow, type LaneId, rowAt } from '../plot/lanes.ts';
import { backToNew } from '../record/bench.ts';
import { hotOf } from '../record/hot.ts';
import { Kept } from '../record/kept.ts';
import { countRows } from '../record/life.ts';
import { hotEvent, type LifeSoFar } from '../record/life-book.ts';
import type { Session } from '../session.ts';
import { type One, oneOf } from './compare/one.ts';
import { AdjusterChoice } from './wear-adjuster.ts';
import {
  chooseHill,
  chooseLane,
  choosePage,
  chooseStep,
  type HotMoment,
  hotLeg,
  pressHot,
  showHot,
  showMoment,
  startFrom,
  type WearPage,
  type WearStep,
  wearOn,
} from './wear-part.ts';
import { RoadChoice } from './wear-road.ts';

/** How fast a run is shown, km/s of the page's clock. */
const PACE: Readonly<Record<WearStep, number>> = { 100: 833, 1000: 833, click: 3000, limit: 9000 };
/** And the one that leads to a standing state. */
const FROM_NEW = 36000;

const sameNumbers = (a: Float64Array, b: Float64Array): boolean =>
  a.length === b.length && a.every((x, i) => Object.is(x, b[i]));

/** Are two states alike, bit for bit? */
function alike(a: BrakeState, b: BrakeState): boolean {
  if (a === b) return true;
  const { condition, wear, ...numbers } = a;
  return (
    (Object.keys(numbers) as (keyof typeof numbers)[]).every((k) => Object.is(a[k], b[k])) &&
    sameNumbers(wear.front, b.wear.front) &&
    sameNumbers(wear.rear, b.wear.rear) &&
    JSON.stringify(condition) === JSON.stringify(b.condition)
  );
}

/** A kept moment as a row of a life would tell it. */
function keptRow(one: One): KeptRow {
  const { rig, state } = one;
  const list = one.readings(one.rest);
  return {
    distance: state.distance,
    clearance: readingOf(list, 'restClearanceMean').value,
    liningFront: thinnest(rig, state, 'front'),
    liningRear: thinnest(rig, state, 'rear'),
    tooth: state.tooth,
    temperature: state.temperature,
  };
}

/**
 * What the Wear station shows: the life that the record has with its events, the moment of it on the
 * stage, the road, and how the next stretch is driven. The bench's brake is that moment's.
 */
export class WearDesk {
  readonly session: Session;
  readonly road: RoadChoice;
  readonly adjuster: AdjusterChoice;
  readonly #play: LifePlay;
  readonly #kept = new Kept<KeptRow>();

  constructor(session: Session) {
    this.session = session;
    this.road = new RoadChoice(session);
    this.adjuster = new AdjusterChoice(session);
    this.#play = new LifePlay(session);
  }

  get #part() {
    return this.session.moment.parts.wear;
  }
  /** The life as far as it has been driven; another object when it is another. */
  get soFar(): LifeSoFar {
    return this.#play.soFar;
  }
  get rows(): readonly LifeRow[] {
    return this.soFar.rows;
  }
  get events(): readonly ToldEvent[] {
    return this.soFar.events;
  }
  /** Why the last stretch ended. */
  get end(): LifeEnd | null {
    return this.soFar.end;
  }
  /** Row that the stage shows, or the last one that is there while the life is driven again. */
  get at(): number {
    return Math.min(this.session.moment.bench.life.at, this.rows.length - 1);
  }
  /** That row; none while it is still to be driven again. */
  get row(): LifeRow | undefined {
    return this.rows[this.session.moment.bench.life.at];
  }
  /** The kept moment, where one is to be seen. */
  get kept(): KeptRow | null {
    const { moment } = this.session;
    const { kept, ghost } = moment.parts.compare;
    return kept && ghost ? this.#kept.of([kept], () => keptRow(oneOf(kept, moment))) : null;
  }
  /** What the chart's last lane shows. */
  get lane(): LaneId {
    return this.#part.lane;
  }
  get page(): WearPage {
    return this.#part.page;
  }
  get step(): WearStep {
    return this.#part.step;
  }
  /** Share driven, 0..1, while the worker drives. */
  get progress(): number {
    return this.#play.progress;
  }
  get busy(): boolean {
    return this.#play.busy;
  }
  /** Is what was driven before a reload being driven again? */
  get again(): boolean {
    return !this.busy && !this.soFar.whole && this.trouble === null;
  }
  /** Why it is not driven on. */
  get trouble(): LifeTrouble | null {
    return this.#play.trouble;
  }
  /** Is the last moment of the run shown? */
  get atEnd(): boolean {
    const { life } = this.session.moment.bench;
    return life.at >= countRows(life) - 1;
  }
  /** Number of the hill chosen for the hot press. */
  get hill(): number {
    return this.#part.hill;
  }
  /** The hot press that is looked at, and its moment on the stage. */
  get hot(): { readonly result: HotPress; readonly moment: HotMoment } | null {
    const leg = hotLeg(this.session.moment);
    const { moment } = this.#part;
    return leg && moment ? { result: hotOf(this.session.brake, leg.from, leg.hill), moment } : null;
  }
  /** Events as told: a wedge's steps are too small to be told one by one. */
  get told(): readonly ToldEvent[] {
    return toldOf(this.events, this.session.brake);
  }

  chooseStep(step: WearStep): void {
    this.session.do(chooseStep, step);
  }
  choosePage(page: WearPage): void {
    this.session.do(choosePage, page);
  }
  chooseLane(lane: LaneId): void {
    this.session.do(chooseLane, lane);
  }
  chooseHill(hill: number): void {
    this.session.do(chooseHill, hill);
  }

  /** Drives on from the moment shown by the chosen step; the worker drives, the page shows. */
  drive(): void {
    if (this.busy) return;
    this.session.do(wearOn);
    this.#play.begin(PACE[this.step] * KM);
  }

  /** The same by so much. */
  driveBy(step: WearStep): void {
    if (this.busy) return;
    this.chooseStep(step);
    this.drive();
  }

  /** Ends a stretch where it is shown; what was driven beyond is forgotten. */
  stop(): void {
    this.#play.stop();
  }

  /** Down the hill from the moment shown, one press at its foot, and a cold morning: that is put on. */
  pressHot(): void {
    const { session } = this;
    session.do(pressHot);
    const leg = hotLeg(session.moment);
    const event = leg && hotEvent(session.brake, leg);
    if (!event) return;
    session.tell(event);
    if (wordsOf(session.brake).timbre) session.tellClick();
  }

  /** The stage shows one moment of the last hot press. */
  showHot(moment: HotMoment): void {
    this.session.do(showHot, moment);
  }

  /** The stage goes to a row of the run. */
  show(at: number): void {
    const row = this.rows[at];
    if (!row) return;
    this.#play.halt();
    this.session.do(showMoment, at, row.state, true);
  }

  /** The stage goes to the moment right after an event. */
  goTo(event: ToldEvent): void {
    this.#play.halt();
    const at = rowAt(this.rows, event.distance);
    const row = this.rows[at] as LifeRow;
    const onRow = alike(row.state, event.state);
    this.session.do(showMoment, at, onRow ? row.state : event.state, onRow);
  }

  /** Click of the run that brought the tooth that is in at the moment shown; none: no click brought it. */
  get lastClick(): ToldEvent | undefined {
    const { distance } = this.session.state;
    return this.events.findLast((e) => e.kind === 'click' && e.distance <= distance);
  }

  /** Goes to a click and shows the press that made it. */
  showClick(event: ToldEvent | undefined = this.lastClick): void {
    if (!event) return;
    this.goTo(event);
    this.session.showClick(event.state);
  }

  /** The brake as it stands is pressed, and it is shown how far that climbs. */
  pressHere(): void {
    this.session.show.begin(this.session.state, false);
  }

  /** To the next event along the run, or back to the one before. */
  nextEvent(way: 1 | -1): void {
    const here = this.session.state.distance;
    const found =
      way > 0
        ? this.told.find((e) => e.distance > here)
        : this.told.findLast((e) => e.distance < here);
    if (found) this.goTo(found);
  }

  /** A new brake, nothing driven. */
  backToNew(): void {
    this.session.do(backToNew);
  }

  /** A standing state of the scene, with the run that leads to it. */
  startFrom(name: string): void {
    this.session.do(startFrom, name);
    this.#play.begin(FROM_NEW * KM);
  }

  /**
   * What is left by what was measured at this moment: against the start of the life when that was the
   * brake as fitted, else against new parts.
   */
  forecast(): Forecast {
    const { brake, moment, rig, state } = this.session;
    const { start } = moment.bench.life;
    return forecast(brake, {
      distance: state.distance,
      lining: { front: thinnest(rig, state, 'front'), rear: thinnest(rig, state, 'rear') },
      drum: 2 * state.drumRadius,
      ...(start.distance === 0 ? { drumFitted: 2 * start.drumRadius } : {}),
      teeth: state.tooth,
    });
  }
}
