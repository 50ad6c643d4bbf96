import type { CDPSession } from 'playwright-core';

/**
 * What a page would do on a slower processor, reckoned from the browser's own trace. Browsers can be told to slow a
 * page down, but do so by interrupting it five thousand times a second, and where an interruption is dear, as in a
 * virtual machine, a picture that should take six times as long took a hundred times. Processor time of each task is
 * the same however busy the machine is; so that is taken, and each task is reckoned to last so many times as long.
 */

/** One task of the page's main thread, ms. */
interface Task {
  /** When it began, by the trace's clock. */
  readonly at: number;
  /** Processor time that it took. */
  readonly took: number;
  /** It drew a picture: the page's frames were called. */
  readonly picture: boolean;
  /** It handled a stroke of a key. */
  readonly key: boolean;
  /** It gave what had changed to those who paint. */
  readonly gave: boolean;
}

/** Of a trace's event what is read here. Times are µs, `tdur` what the processor gave to it. */
export interface Event {
  readonly name: string;
  readonly ph: string;
  readonly pid: number;
  readonly tid: number;
  readonly ts: number;
  readonly dur?: number;
  readonly tdur?: number;
  readonly args?: { readonly name?: string; readonly data?: { readonly type?: string } };
}

/** What a trace says: the main thread's tasks, and what all other threads of painting took, ms. */
export interface Traced {
  readonly tasks: readonly Task[];
  readonly painting: number;
}

/** The mark that a page paced by `paced` leaves in the trace with each picture. */
const PICTURE = 'takeup-picture';

/**
 * Runs in the page before all else: its frames come no oftener than a slow machine's would, so that it steps as far in
 * each, and does what it does only where pictures are far apart.
 *
 * @param apart ms
 */
export function paced({ apart, mark }: { apart: number; mark: string }): void {
  const screen = requestAnimationFrame.bind(window);
  let last = Number.NEGATIVE_INFINITY;
  let asked = false;
  let id = 0;
  let due = new Map<number, FrameRequestCallback>();
  const flush = (now: number): void => {
    asked = false;
    last = performance.now();
    performance.mark(mark);
    const called = due;
    due = new Map();
    for (const call of called.values()) call(now);
  };
  window.requestAnimationFrame = (call) => {
    due.set(++id, call);
    if (!asked) {
      asked = true;
      const wait = last + apart - performance.now();
      if (wait > 0) setTimeout(() => screen(flush), wait);
      else screen(flush);
    }
    return id;
  };
  window.cancelAnimationFrame = (one) => {
    due.delete(one);
  };
}
/** What `paced` is asked for: thirty pictures a second. */
export const HALF_PACE = { apart: 33, mark: PICTURE };

/** What was painted is made into layers, for the threads that paint: the end of what the page itself does of a picture. */
const LAYERS = 'Layerize';
/** A thread's task, as the browser calls it. */
const RUN = 'ThreadControllerImpl::RunTask';
/** Painting is done by these, beside the main thread. */
const PAINTING = /^(Compositor|VizCompositorThread|ThreadPool)/;

/** Traces the browser while something is done. */
export async function trace(client: CDPSession, act: () => Promise<void>): Promise<Traced> {
  const events: Event[] = [];
  const collect = ({ value }: { value: unknown[] }): void => {
    events.push(...(value as Event[]));
  };
  client.on('Tracing.dataCollected', collect);
  await client.send('Tracing.start', {
    transferMode: 'ReportEvents',
    traceConfig: {
      includedCategories: ['devtools.timeline', 'toplevel', 'blink.user_timing'],
    },
  });
  await act();
  const whole = new Promise((done) => {
    client.once('Tracing.tracingComplete', done);
  });
  await client.send('Tracing.end');
  await whole;
  client.off('Tracing.dataCollected', collect);
  return read(events);
}

/** What a trace says of the page whose pictures are marked in it. */
export function read(events: readonly Event[]): Traced {
  const threads = new Map<string, string>();
  const of = (e: Event): string => `${e.pid}:${e.tid}`;
  for (const e of events)
    if (e.ph === 'M' && e.name === 'thread_name') threads.set(of(e), e.args?.name ?? '');
  const runs = events.filter((e) => e.ph === 'X' && e.name === RUN);
  const pictures = events.filter((e) => e.name === PICTURE);
  const main = pictures[0] && of(pictures[0]);
  const keys = events.filter((e) => e.name === 'EventDispatch' && e.args?.data?.type === 'keydown');
  const given = events.filter((e) => e.name === LAYERS);
  const within = (all: readonly Event[], { ts, dur = 0 }: Event): boolean =>
    all.some((e) => of(e) === main && e.ts >= ts && e.ts <= ts + dur);
  const tasks = runs
    .filter((e) => of(e) === main)
    .map((e) => ({
      at: e.ts / 1000,
      took: (e.tdur ?? 0) / 1000,
      picture: within(pictures, e),
      key: within(keys, e),
      gave: within(given, e),
    }))
    .sort((a, b) => a.at - b.at);
  const painting = runs
    .filter((e) => PAINTING.test(threads.get(of(e)) ?? ''))
    .reduce((sum, e) => sum + (e.tdur ?? 0) / 1000, 0);
  return { tasks, painting };
}

/** A screen shows sixty pictures a second, ms. */
const SCREEN = 1000 / 60;

/** Tasks from each picture on until the next. */
function rounds(tasks: readonly Task[]): Task[][] {
  const all: Task[][] = [];
  for (const task of tasks) {
    if (task.picture) all.push([]);
    all.at(-1)?.push(task);
  }
  // Before the last picture's end the trace may have ended.
  return all.slice(0, -1);
}

const sum = (tasks: readonly Task[]): number => tasks.reduce((all, { took }) => all + took, 0);

/**
 * How far apart pictures are on a processor that is so many times slower, ms: all that the main thread does from one to
 * the next, up to the screen's next picture.
 */
export const apart = ({ tasks }: Traced, slower: number): number[] =>
  rounds(tasks).map((round) => Math.ceil((slower * sum(round)) / SCREEN) * SCREEN);

/** What one picture takes of the threads that paint it, ms. */
const paintingOf = ({ tasks, painting }: Traced): number => painting / rounds(tasks).length;

/**
 * How long each key takes there from its stroke until its answer is painted, ms. It waits for the task that is being
 * done when it comes (those of the three pictures before, one after the other as they came), not for others: browsers
 * hear keys first. Then comes its own task, and those before what it changed is given to those who paint, which is with
 * the screen's next picture; where that came without the page's frame, which is paced here, that is reckoned with it.
 */
export function answers(traced: Traced, slower: number): number[] {
  const { tasks } = traced;
  const painted = slower * paintingOf(traced);
  const took: number[] = [];
  tasks.forEach((key, k) => {
    if (!key.key) return;
    let first = k;
    for (let seen = 0; first > 0 && seen < 3; ) if (tasks[--first]?.picture) seen++;
    let free = Number.NEGATIVE_INFINITY;
    for (const { at, took: its } of tasks.slice(first, k)) {
      const begins = Math.max(free, at);
      if (begins >= key.at) break;
      free = begins + slower * its;
    }
    const gives = tasks.findIndex(({ gave }, i) => i >= k && gave);
    const frame = tasks.findIndex(({ picture }, i) => i >= k && picture);
    if (gives < 0 || frame < 0) return;
    const given = tasks[gives] as Task;
    const all = given.took + (frame > gives ? (tasks[frame] as Task).took : 0);
    const handled = Math.max(free, key.at) + slower * sum(tasks.slice(k, gives));
    // The screen's pictures, by that which was drawn.
    const begins = given.at + Math.ceil((handled - given.at) / SCREEN) * SCREEN;
    took.push(begins + slower * all + painted - key.at);
  });
  return took;
}

/** Processor time of the main thread in all, on such a processor, s. */
export const busy = ({ tasks }: Traced, slower: number): number => (slower * sum(tasks)) / 1000;
