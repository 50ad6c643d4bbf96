import { afterEach, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import quayVan from '../../../scenes/quay-van.json';
import { driveLife, KM, type LifeEvent, type LifeRow } from '../../../sim/index.ts';
import { toldEvent } from '../../../sim/workshop/index.ts';
import { bringSlow } from '../../../ui/brought.ts';
import { LifeJob } from '../../../ui/life-job.ts';
import type { LifeAsk, LifeDriver, LifeEar, LifeOrder } from '../../../ui/life-messages.ts';
import { LifePlay } from '../../../ui/life-play.ts';
import { LifeRun } from '../../../ui/life-run.ts';
import { backToNew, putState } from '../../../ui/record/bench.ts';
import { brakeOf } from '../../../ui/record/derive.ts';
import { show } from '../../../ui/record/guest.ts';
import { fromText, toText } from '../../../ui/record/json.ts';
import { countRows, lastStretch } from '../../../ui/record/life.ts';
import { LifeBook } from '../../../ui/record/life-book.ts';
import type { Moment } from '../../../ui/record/moment.ts';
import { readMoment } from '../../../ui/record/record.ts';
import { dutyOn, PLAIN_ROAD } from '../../../ui/record/road.ts';
import { Session } from '../../../ui/session.ts';
import {
  chooseHill,
  chooseLane,
  chooseReverse,
  chooseStep,
  editRoad,
  follow,
  hotLeg,
  pressHot,
  showMoment,
  startFrom,
  type WearStep,
  wearOn,
} from '../../../ui/stations/wear-part.ts';
import { near } from '../../near.ts';

/** Drives at once by what the worker does, so many pieces a slice. */
class AtOnce implements LifeDriver {
  starts = 0;
  #run = 0;

  start(order: LifeOrder, ear: LifeEar): void {
    this.starts += 1;
    const run = ++this.#run;
    const job = new LifeJob({ run, ...order });
    while (!job.done && run === this.#run) {
      let pieces = 7;
      ear.news(job.slice(() => pieces-- <= 0));
    }
  }
  stop(): void {
    this.#run += 1;
  }
}

/** Drives a slice when told to, or has trouble. */
class ByHand implements LifeDriver {
  starts = 0;
  ear: LifeEar | null = null;
  #job: LifeJob | null = null;

  start(order: LifeOrder, ear: LifeEar): void {
    this.starts += 1;
    this.ear = ear;
    this.#job = new LifeJob({ run: this.starts, ...order });
  }
  stop(): void {
    this.ear = null;
    this.#job = null;
  }
  /** Drives so many pieces of at least 10 km. */
  slice(pieces: number): void {
    let left = pieces;
    const { ear } = this;
    const job = this.#job;
    if (!job || !ear) return;
    const news = job.slice(() => left-- <= 0);
    if (job.done) this.stop();
    ear.news(news);
  }
}

interface Bench {
  readonly session: Session;
  readonly play: LifePlay;
}

function wear(driver: LifeDriver, reducedMotion = true): Bench {
  const session = Session.of(quayVan, reducedMotion);
  session.do(show, 'wear');
  return { session, play: new LifePlay(session, driver) };
}

function drive({ play, session }: Bench, step: WearStep): void {
  session.do(chooseStep, step);
  session.do(wearOn);
  play.begin(1e6 * KM);
}

const rowsOf = (play: LifePlay): readonly LifeRow[] => play.soFar.rows;
const km = (session: Session): number => session.state.distance / KM;

/** A life again, from its text, by another driver. */
function again(m: Moment): { readonly moment: Moment; readonly book: LifeBook } {
  const read = fromText(toText(m));
  if (!read.ok) throw new Error(JSON.stringify(read.wrong));
  const { moment } = read;
  const book = new LifeBook(new AtOnce());
  book.drive(moment.bench.life, brakeOf(moment), null);
  return { moment, book };
}

const soFar = (book: LifeBook, m: Moment) =>
  book.soFar(m.bench.life, brakeOf(m), m.parts.wear.road);

describe('a life in the record', () => {
  it('is what the simulator drives in one piece', () => {
    const b = wear(new AtOnce());
    b.session.do(backToNew);
    const { brake, rig, state } = b.session;
    drive(b, 'limit');
    const whole = driveLife(rig, state, dutyOn(brake, PLAIN_ROAD), { rowEvery: 100 * KM });
    expect(rowsOf(b.play)).toStrictEqual(whole.rows);
    expect(b.play.soFar.events).toStrictEqual(whole.events.map((e) => toldEvent(brake, e)));
    expect(b.play.soFar.end).toBe('lining limit');
    expect(b.session.state).toStrictEqual(whole.rows.at(-1)?.state);
    // Teaching tables, table 0: lining at its limit at 59 500 km, tooth 15.
    near(km(b.session), 59500, { rel: 0.005 }, 'km');
    expect(b.session.state.tooth).toBe(15);
  });

  it('comes out of its text to the same bits, whatever was done in it', () => {
    const b = wear(new AtOnce());
    const { play, session } = b;
    drive(b, 1000);
    drive(b, 'click');
    // Back to a row in the middle, and on from there by another road.
    const middle = Math.floor(rowsOf(play).length / 2);
    expect(middle).toBeGreaterThan(8);
    session.do(showMoment, middle, (rowsOf(play)[middle] as LifeRow).state, true);
    session.do(editRoad, 0, 'perKm', 1.7);
    session.do(chooseReverse, 0.25);
    drive(b, 'click');
    // From right after an event, whose state goes into the record whole.
    const event = play.soFar.events.findLast((e) => e.kind === 'click') as LifeEvent;
    session.do(showMoment, session.moment.bench.life.at, event.state, false);
    drive(b, 1000);
    // The cable is set tighter: the bench is not quite as the row any more.
    session.do(putState, { ...session.state, leverOffStop: 0.4 });
    drive(b, 100);
    session.do(putState, { ...session.state, tooth: session.state.tooth + 1 });
    drive(b, 100);
    session.do(chooseHill, 2);
    session.do(pressHot);
    expect(hotLeg(session.moment)?.rows).toBe(1);
    drive(b, 'click');
    const { moment, book } = again(session.moment);
    expect(moment).toStrictEqual(session.moment);
    expect(soFar(book, moment)).toStrictEqual(play.soFar);
    expect(play.soFar.whole).toBe(true);
    expect(rowsOf(play)).toHaveLength(countRows(session.moment.bench.life));
    // Nothing is lost on the way: rows go on by distance, and the last one stands on the bench.
    const far = rowsOf(play).map((r) => r.distance);
    expect(far).toEqual(far.toSorted((x, y) => x - y));
    expect(rowsOf(play)[moment.bench.life.at]?.state).toStrictEqual(moment.bench.state);
  });

  it('keeps of a stretch what it was cut to', () => {
    const b = wear(new AtOnce());
    const { play, session } = b;
    drive(b, 'limit');
    const all = play.soFar;
    const at = all.rows.findIndex((r) => r.distance > 20000 * KM);
    const here = all.rows[at] as LifeRow;
    session.do(showMoment, at, here.state, true);
    drive(b, 100);
    const { moment, book } = again(session.moment);
    const told = soFar(book, moment);
    expect(told).toStrictEqual(play.soFar);
    expect(told.rows.slice(0, at + 1)).toStrictEqual(all.rows.slice(0, at + 1));
    near(km(session), here.distance / KM + 100, { abs: 1e-9 });
    // Teaching tables, table 0: a click each 3 900 km; those beyond are forgotten, with the limit.
    expect(told.events.every((e) => e.distance <= here.distance + 100 * KM)).toBe(true);
    expect(told.events.filter((e) => e.kind === 'click')).toHaveLength(session.state.tooth);
  });

  it('leads to a standing state visibly, from new', () => {
    const b = wear(new AtOnce());
    b.session.do(startFrom, 'Near the limit');
    b.play.begin(1e6 * KM);
    expect(km(b.session)).toBe(50000);
    expect(rowsOf(b.play)[0]?.distance).toBe(0);
    const { moment, book } = again(b.session.moment);
    expect(soFar(book, moment)).toStrictEqual(b.play.soFar);
  });

  it('refuses a stranger’s life that cannot be', () => {
    const b = wear(new AtOnce());
    drive(b, 100);
    const m = b.session.moment;
    const { life } = m.bench;
    const wrong = (change: object): string => {
      const read = readMoment({ ...m, bench: { ...m.bench, life: { ...life, ...change } } });
      return read.ok ? '' : read.wrong.map((w) => w.path).join();
    };
    expect(wrong({})).toBe('');
    expect(wrong({ at: countRows(life) })).toBe('bench.life');
    const stops = { index: 0, key: 'perKm', value: 1e9 };
    const [leg] = life.legs;
    const stretch = lastStretch(life);
    const asked = (change: object): object => ({
      legs: [{ ...leg, stretch: { ...stretch, ...change } }],
      at: 0,
    });
    expect(wrong(asked({ road: { number: 0, reverse: null, edits: [stops] } }))).toMatch(/edits/);
    expect(wrong(asked({ rowEvery: 1 }))).toMatch(/rowEvery/);
    expect(wrong({ legs: Array.from({ length: 1001 }, () => leg) })).toMatch(/legs/);
  });
});

describe('the way back', () => {
  it('has the rows of what is undone and done again at once: nothing is driven again', () => {
    const driver = new AtOnce();
    const b = wear(driver);
    const { play, session } = b;
    drive(b, 1000);
    const first = play.soFar;
    drive(b, 1000);
    const second = play.soFar;
    const { starts } = driver;
    session.undo();
    expect(play.soFar.rows).toStrictEqual(first.rows);
    expect(km(session)).toBe(1000);
    session.redo();
    expect(play.soFar.rows).toStrictEqual(second.rows);
    expect(km(session)).toBe(2000);
    expect(driver.starts).toBe(starts);
  });

  it('takes a whole stretch back, also one that is still being driven', () => {
    const driver = new ByHand();
    const b = wear(driver);
    drive(b, 'limit');
    driver.slice(40);
    expect(km(b.session)).toBeGreaterThan(100);
    b.session.undo();
    expect(km(b.session)).toBe(0);
    expect(b.play.busy).toBe(false);
    expect(driver.ear).toBeNull();
    // Done again, it is there as far as it came, and can be driven on.
    b.session.redo();
    const far = km(b.session);
    expect(far).toBeGreaterThan(100);
    drive(b, 100);
    driver.slice(40);
    near(km(b.session), far + 100, { abs: 1e-6 });
  });

  it('does not cut a life where something else that was done meanwhile is undone', () => {
    const driver = new ByHand();
    const b = wear(driver);
    drive(b, 1000);
    driver.slice(20);
    b.session.do(chooseLane, 'heat');
    driver.slice(1000);
    expect(km(b.session)).toBe(1000);
    b.session.undo();
    expect(b.session.moment.parts.wear.lane).toBe('lining');
    expect(km(b.session)).toBe(1000);
    expect(b.play.soFar.rows.at(-1)?.distance).toBe(1000 * KM);
  });

  it('leaves a record alone that is not of the stretch that is driven', () => {
    const b = wear(new AtOnce());
    drive(b, 100);
    const m = b.session.moment;
    const other = { ...PLAIN_ROAD };
    const stretch = { from: null, road: other, rowEvery: KM, distance: null };
    const asked = { ...stretch, toNextClick: false, stopAtLimit: true };
    expect(follow.does(m, asked, 3, null)).toBe(m);
  });
});

describe('a stretch as it is shown', () => {
  let frame: ((now: number) => void) | null = null;
  beforeAll(bringSlow);
  beforeEach(() => {
    vi.stubGlobal('requestAnimationFrame', (f: (now: number) => void) => {
      frame = f;
      return 1;
    });
    vi.stubGlobal('cancelAnimationFrame', () => {
      frame = null;
    });
  });
  afterEach(() => {
    vi.unstubAllGlobals();
    frame = null;
  });
  /** Frames of the page, 60 a second, until something holds. */
  function frames(session: Session, until: () => boolean): void {
    for (let n = 1; !until(); n++) {
      if (n > 5000) throw new Error('never');
      session.frame(1 / 60);
      frame?.(n * (1000 / 60));
    }
  }
  function playing(step: WearStep) {
    const driver = new ByHand();
    const session = Session.of(quayVan, false);
    session.do(show, 'wear');
    const play = new LifePlay(session, driver);
    let clicks = 0;
    session.addEventListener('click', () => {
      clicks += 1;
    });
    session.do(chooseStep, step);
    session.do(wearOn);
    play.begin(3000 * KM);
    return { driver, play, session, clicks: () => clicks };
  }

  it('is cut where it is shown when it is stopped', () => {
    const { driver, play, session } = playing('limit');
    driver.slice(120);
    frames(session, () => km(session) > 4000);
    const all = rowsOf(play);
    expect(play.busy).toBe(true);
    expect(all.at(-1)?.distance).toBeGreaterThan(20000 * KM);
    play.stop();
    expect(play.busy).toBe(false);
    expect(driver.ear).toBeNull();
    expect(rowsOf(play)).toStrictEqual(all.filter((r) => r.distance <= session.state.distance));
    const { moment, book } = again(session.moment);
    expect(soFar(book, moment)).toStrictEqual(play.soFar);
    session.undo();
    expect(km(session)).toBe(0);
  });

  it('ends with its station, at what was driven; nothing clicks in the next one', () => {
    const { clicks, driver, play, session } = playing('limit');
    driver.slice(120);
    frames(session, () => clicks() === 1);
    expect(session.showing).toBe(true);
    const last = rowsOf(play).at(-1) as LifeRow;
    expect(last.tooth).toBeGreaterThan(4);
    session.do(show, 'park');
    expect(session.state).toBe(last.state);
    expect(session.showing).toBe(false);
    expect(play.busy).toBe(false);
    frames(session, () => session.clock > 10);
    expect(clicks()).toBe(1);
    expect(session.state).toBe(last.state);
    // Back in Wear it stands there, and is not driven on by itself.
    const { starts } = driver;
    session.do(show, 'wear');
    expect(driver.starts).toBe(starts);
    expect(rowsOf(play).at(-1)).toBe(last);
  });

  it('is kept as far as it was driven when the worker fails, and is driven on by a new start', () => {
    const { driver, play, session } = playing('limit');
    driver.slice(40);
    frames(session, () => km(session) > 1000);
    const last = rowsOf(play).at(-1) as LifeRow;
    driver.ear?.trouble({ kind: 'error', message: 'gone' });
    expect(play.trouble).toEqual({ kind: 'error', message: 'gone' });
    expect(play.busy).toBe(false);
    expect(session.state).toBe(last.state);
    const { starts } = driver;
    session.do(chooseStep, 100);
    session.do(wearOn);
    play.begin(3000 * KM);
    expect(play.trouble).toBeNull();
    expect(driver.starts).toBe(starts + 1);
    driver.slice(500);
    frames(session, () => !play.busy);
    near(km(session), last.distance / KM + 100, { abs: 1e-6 });
  });

  it('goes on when a worker that was only slow speaks after all', () => {
    const { driver, play, session } = playing(1000);
    driver.slice(2);
    driver.ear?.trouble({ kind: 'silent', message: '' });
    expect(play.busy).toBe(false);
    driver.slice(500);
    expect(play.trouble).toBeNull();
    expect(km(session)).toBe(1000);
    expect(play.busy).toBe(false);
  });
});

describe('the worker', () => {
  interface Fake {
    onmessage: ((e: { data: unknown }) => void) | null;
    onerror: ((e: { message?: string; preventDefault(): void }) => void) | null;
    onmessageerror: (() => void) | null;
    readonly asked: LifeAsk[];
    ended: boolean;
  }
  let workers: Fake[] = [];
  let refuses = false;
  const heard: string[] = [];
  const ear: LifeEar = {
    news: ({ rows }) => heard.push(`${rows.length} rows`),
    trouble: ({ kind, message }) => heard.push(`${kind}${message && `: ${message}`}`),
  };

  beforeEach(() => {
    workers = [];
    refuses = false;
    heard.length = 0;
    vi.useFakeTimers();
    vi.stubGlobal(
      'Worker',
      class implements Fake {
        onmessage: Fake['onmessage'] = null;
        onerror: Fake['onerror'] = null;
        onmessageerror: Fake['onmessageerror'] = null;
        readonly asked: LifeAsk[] = [];
        ended = false;
        constructor() {
          if (refuses) throw new Error('no workers here');
          workers.push(this);
        }
        postMessage(ask: LifeAsk): void {
          this.asked.push(ask);
        }
        terminate(): void {
          this.ended = true;
        }
      },
    );
  });
  afterEach(() => {
    vi.useRealTimers();
    vi.unstubAllGlobals();
  });

  const s = Session.of(quayVan, true);
  const order: LifeOrder = {
    bending: false,
    brake: s.brake,
    state: s.state,
    duty: dutyOn(s.brake, PLAIN_ROAD),
    options: {},
  };
  const news = (run: number, end: string | null = null): { data: unknown } => ({
    data: { run, rows: [], events: [], progress: 0.5, end },
  });
  const quiet = { preventDefault: () => {} };

  it('that does not load is said at once, and the next run gets a new one', () => {
    const run = new LifeRun();
    run.start(order, ear);
    workers[0]?.onerror?.(quiet);
    expect(heard).toEqual(['no start']);
    run.start(order, ear);
    expect(workers).toHaveLength(2);
    expect(workers[0]?.ended).toBe(true);
    const second = workers[1]?.asked[0]?.run ?? 0;
    workers[1]?.onmessage?.(news(second));
    expect(heard).toEqual(['no start', '0 rows']);
  });

  it('that cannot even be made throws nothing', async () => {
    refuses = true;
    new LifeRun().start(order, ear);
    await Promise.resolve();
    expect(heard).toEqual(['no start: no workers here']);
  });

  it('that falls silent is said within 2 s; it may still speak, until another run is asked for', () => {
    const run = new LifeRun();
    run.start(order, ear);
    const [first] = workers;
    first?.onmessage?.({ data: { alive: true } });
    for (let t = 0; t < 10; t++) {
      vi.advanceTimersByTime(1000);
      first?.onmessage?.(news(1));
    }
    expect(heard).toEqual(Array.from({ length: 10 }, () => '0 rows'));
    heard.length = 0;
    vi.advanceTimersByTime(2000);
    expect(heard).toEqual(['silent']);
    vi.advanceTimersByTime(60000);
    expect(heard).toEqual(['silent']);
    first?.onmessage?.(news(1));
    expect(heard).toEqual(['silent', '0 rows']);
    vi.advanceTimersByTime(2000);
    expect(heard).toEqual(['silent', '0 rows', 'silent']);
    run.start(order, ear);
    expect(first?.ended).toBe(true);
    expect(workers).toHaveLength(2);
    first?.onmessage?.(news(1));
    expect(heard).toHaveLength(3);
  });

  it('that has ended its run may be silent for ever', () => {
    const run = new LifeRun();
    run.start(order, ear);
    workers[0]?.onmessage?.(news(1, 'distance'));
    vi.advanceTimersByTime(60000);
    expect(heard).toEqual(['0 rows']);
    run.start(order, ear);
    expect(workers).toHaveLength(1);
  });

  it('that breaks off says why, and is not thrown', () => {
    const run = new LifeRun();
    run.start(order, ear);
    workers[0]?.onmessage?.({ data: { alive: true } });
    workers[0]?.onmessage?.({ data: { run: 1, failure: 'no such tooth' } });
    run.start(order, ear);
    workers[1]?.onmessage?.({ data: { alive: true } });
    workers[1]?.onerror?.({ ...quiet, message: 'out of memory' });
    run.start(order, ear);
    workers[2]?.onmessageerror?.();
    expect(heard).toEqual([
      'error: no such tooth',
      'error: out of memory',
      'error: its news could not be read',
    ]);
  });
});
