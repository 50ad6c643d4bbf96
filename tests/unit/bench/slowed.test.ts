import { describe, expect, it } from 'vitest';
import { answers, apart, busy, type Event, read } from '../../bench/slowed.ts';

/** Traces written by hand, ms; what is expected of them is reckoned beside each. */

const [PAGE, PAINTS] = [10, 20];
const SIX = 6;
/** A screen's picture, ms. */
const SCREEN = 1000 / 60;

const µs = (ms: number): number => Math.round(1000 * ms);

const thread = (pid: number, tid: number, name: string): Event => ({
  name: 'thread_name',
  ph: 'M',
  pid,
  tid,
  ts: 0,
  args: { name },
});

const threads = [
  thread(PAGE, 1, 'CrRendererMain'),
  thread(PAGE, 2, 'Compositor'),
  thread(PAGE, 3, 'ThreadPoolForegroundWorker'),
  thread(PAINTS, 1, 'VizCompositorThread'),
  thread(PAINTS, 2, 'CrBrowserMain'),
];

interface Done {
  readonly picture?: boolean;
  readonly key?: string;
  readonly gave?: boolean;
  /** How long it lasted, ms, where others had the processor too. */
  readonly lasted?: number;
}

/** A task of the page's main thread and what is in it. */
function task(at: number, took: number, done: Done = {}): Event[] {
  const lasted = done.lasted ?? took;
  const on = { pid: PAGE, tid: 1 };
  const inside = { ...on, ts: µs(at + lasted / 2), ph: 'X', dur: 1, tdur: 1 };
  return [
    {
      ...on,
      name: 'ThreadControllerImpl::RunTask',
      ph: 'X',
      ts: µs(at),
      dur: µs(lasted),
      tdur: µs(took),
    },
    ...(done.picture ? [{ ...inside, name: 'takeup-picture', ph: 'R' }] : []),
    ...(done.key ? [{ ...inside, name: 'EventDispatch', args: { data: { type: done.key } } }] : []),
    ...(done.gave ? [{ ...inside, name: 'Layerize' }] : []),
  ];
}

const elsewhere = (pid: number, tid: number, at: number, took: number): Event => ({
  name: 'ThreadControllerImpl::RunTask',
  ph: 'X',
  pid,
  tid,
  ts: µs(at),
  dur: µs(5 * took),
  tdur: µs(took),
});

const PICTURE = { picture: true, gave: true } as const;
const KEY = { key: 'keydown' } as const;

/** Processor times come in µs. */
const close = (found: readonly number[], expected: readonly number[]): void => {
  expect(found).toHaveLength(expected.length);
  for (const [i, value] of expected.entries()) expect(found[i]).toBeCloseTo(value, 3);
};

describe('a trace read', () => {
  it('has the tasks of the thread on which pictures are drawn, in their order, by the time the processor gave', () => {
    const { tasks, painting } = read([
      ...task(40, 1, KEY),
      ...task(10, 2, { ...PICTURE, lasted: 25 }),
      ...task(50, 0.5, { key: 'keyup' }),
      ...threads,
      elsewhere(PAGE, 2, 12, 0.4),
      elsewhere(PAGE, 3, 12, 0.2),
      elsewhere(PAINTS, 1, 13, 0.3),
      // The browser's own window is not the page's.
      elsewhere(PAINTS, 2, 14, 90),
    ]);
    expect(tasks).toEqual([
      { at: 10, took: 2, picture: true, key: false, gave: true },
      { at: 40, took: 1, picture: false, key: true, gave: false },
      { at: 50, took: 0.5, picture: false, key: false, gave: false },
    ]);
    expect(painting).toBeCloseTo(0.9, 9);
  });

  it('says of a task what happened in it, not just after it', () => {
    const [first, second] = read([
      ...task(10, 1, { lasted: 2 }),
      ...task(12.1, 0.1, PICTURE),
    ]).tasks;
    expect(first).toMatchObject({ picture: false, gave: false });
    expect(second).toMatchObject({ picture: true, gave: true });
  });
});

describe('pictures on a slower processor', () => {
  const traced = read([
    ...threads,
    // Before the first picture: of none.
    ...task(0, 9),
    // 2.5 + 0.4 = 2.9 ms, six times as long 17.4: it misses one of the screen's pictures.
    ...task(10, 2.5, PICTURE),
    ...task(20, 0.4),
    // 2.7 ms, 16.2: it does not.
    ...task(43, 2.7, PICTURE),
    // 2 + 3.6 = 5.6, 33.6: the third.
    ...task(76, 2, PICTURE),
    ...task(90, 3.6),
    // The trace ended in it.
    ...task(110, 30, PICTURE),
  ]);

  it('come with the screen’s, as soon as all is done that comes before the next', () => {
    close(apart(traced, SIX), [2 * SCREEN, SCREEN, 3 * SCREEN]);
    close(apart(traced, 1), [SCREEN, SCREEN, SCREEN]);
  });

  it('and all that was done is so many times as long', () => {
    expect(busy(traced, SIX)).toBeCloseTo((6 * (9 + 2.5 + 0.4 + 2.7 + 2 + 3.6 + 30)) / 1000, 9);
  });
});

describe('a key on a slower processor', () => {
  /** Two rounds, 1.5 ms of painting: 0.75 a picture, 4.5 when it is six times as long. */
  const painted = 4.5;
  const around = [...threads, elsewhere(PAINTS, 1, 5, 1), elsewhere(PAGE, 2, 6, 0.5)];
  const keyOf = (events: readonly Event[]): number[] => answers(read([...around, ...events]), SIX);

  it('is handled at once where nothing runs, and painted with the screen’s next picture', () => {
    // Handled 6 ms after the stroke; given at 108, which is later: 2 ms of it are 12.
    const took = keyOf([
      ...task(0, 1, PICTURE),
      ...task(100, 1, KEY),
      ...task(108, 2, PICTURE),
      ...task(140, 1, PICTURE),
    ]);
    close(took, [108 - 100 + 12 + painted]);
  });

  it('waits for the task that it finds running, and misses a picture of the screen by it', () => {
    // 4 ms from 90 on are done at 114, the key at 120: the picture of 108 has gone by, the next comes at 124.7.
    const took = keyOf([
      ...task(0, 1, PICTURE),
      ...task(90, 4, { lasted: 5 }),
      ...task(100, 1, KEY),
      ...task(108, 2, PICTURE),
      ...task(140, 1, PICTURE),
    ]);
    close(took, [108 + SCREEN - 100 + 12 + painted]);
  });

  it('does not wait for what would begin only after it', () => {
    // 2 ms from 80 on end at 92, 2 from 90 on at 104; what came at 99 would begin then: the key is heard first.
    const took = keyOf([
      ...task(0, 1, PICTURE),
      ...task(80, 2, { lasted: 2 }),
      ...task(90, 2, { lasted: 2 }),
      ...task(99, 50, { lasted: 0.5 }),
      ...task(100, 1, KEY),
      ...task(111, 2, PICTURE),
      ...task(140, 1, PICTURE),
    ]);
    // Handled at 110, before 111.
    close(took, [111 - 100 + 12 + painted]);
  });

  it('waits for what comes between its task and what is given', () => {
    // 1 + 2 ms: handled at 118, so with the picture at 122.7 in place of 106.
    const took = keyOf([
      ...task(0, 1, PICTURE),
      ...task(100, 1, KEY),
      ...task(103, 2),
      ...task(106, 2, PICTURE),
      ...task(140, 1, PICTURE),
    ]);
    close(took, [106 + SCREEN - 100 + 12 + painted]);
  });

  it('has the page’s frame reckoned in where it was given before that', () => {
    // 1 ms without the page's frame and 3 with it: 24 in all.
    const took = keyOf([
      ...task(0, 1, PICTURE),
      ...task(100, 1, KEY),
      ...task(107, 1, { gave: true }),
      ...task(130, 3, PICTURE),
      ...task(160, 1, PICTURE),
    ]);
    close(took, [107 - 100 + 24 + painted]);
  });

  it('is not told of where the trace ends before its answer', () => {
    expect(
      keyOf([
        ...task(0, 1, PICTURE),
        ...task(20, 1, PICTURE),
        ...task(60, 1, PICTURE),
        ...task(100, 1, KEY),
      ]),
    ).toEqual([]);
  });
});
