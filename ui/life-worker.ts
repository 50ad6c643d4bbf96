import { LifeJob } from './life-job.ts';
import type { LifeAlive, LifeAsk, LifeFailure, LifeNews, LifeStop } from './life-messages.ts';

/**
 * Drives a life beside the page, so that the page stays alive: a slice of time, then what is new is
 * told, then messages are read (a stop among them), and on.
 */

/** Time between two news, ms. */
const SLICE = 60;

let job: LifeJob | null = null;

const tell = (said: LifeNews | LifeFailure | LifeAlive): void => self.postMessage(said);

/** Runs one step of a job; an error of the program is told, not swallowed. */
function guarded(run: number, step: () => void): void {
  try {
    step();
  } catch (error) {
    job = null;
    tell({ run, failure: error instanceof Error ? error.message : String(error) });
  }
}

function drive(run: number, now: LifeJob): void {
  if (job !== now) return;
  const until = performance.now() + SLICE;
  tell(now.slice(() => performance.now() >= until));
  if (now.done) job = null;
  else setTimeout(() => guarded(run, () => drive(run, now)));
}

self.onmessage = ({ data }: MessageEvent<LifeAsk | LifeStop>): void => {
  if ('stop' in data) {
    job = null;
    return;
  }
  const { run } = data;
  tell({ alive: true });
  guarded(run, () => {
    const now = new LifeJob(data);
    job = now;
    drive(run, now);
  });
};

tell({ alive: true });
