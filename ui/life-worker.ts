import { createLife, createRig, KM, type Life, standingDistance } from '../sim/index.ts';
import type { LifeAsk, LifeFailure, LifeNews, LifeStop } from './life-messages.ts';

/**
 * Drives a life beside the page, so that the page stays alive: a slice of time, then what is new is
 * told, then messages are read (a stop among them), and on.
 */

/** Time between two news, ms. */
const SLICE = 60;
/** Driven at one go within a slice, mm. */
const PIECE = 50 * KM;

interface Job {
  readonly run: number;
  readonly life: Life;
  rows: number;
  events: number;
}
let job: Job | null = null;

const tell = (news: LifeNews | LifeFailure): void => self.postMessage(news);

/** Runs one step of a job; an error of the program is told, not swallowed. */
function guarded(run: number, step: () => void): void {
  try {
    step();
  } catch (error) {
    job = null;
    tell({ run, failure: error instanceof Error ? (error.stack ?? error.message) : String(error) });
  }
}

function drive(now: Job): void {
  if (job !== now) return;
  const { life } = now;
  const until = performance.now() + SLICE;
  while (!life.done && performance.now() < until) life.advance(PIECE);
  tell({
    run: now.run,
    rows: life.rows.slice(now.rows),
    events: life.events.slice(now.events),
    progress: life.progress,
    end: life.end,
    state: life.done ? life.state() : null,
  });
  now.rows = life.rows.length;
  now.events = life.events.length;
  if (life.done) job = null;
  else setTimeout(() => guarded(now.run, () => drive(now)));
}

self.onmessage = ({ data }: MessageEvent<LifeAsk | LifeStop>): void => {
  if ('stop' in data) {
    job = null;
    return;
  }
  const { brake, duty, options, run, standing, state } = data;
  guarded(run, () => {
    const rig = createRig(brake);
    const way = standing === undefined ? {} : { distance: standingDistance(rig, standing) };
    job = { run, life: createLife(rig, state, duty, { ...options, ...way }), rows: 0, events: 0 };
    drive(job);
  });
};
