import { VaryJob } from './vary-job.ts';
import type { VaryFailure, VaryNews, VaryOrder } from './vary-messages.ts';

/**
 * Works out curves, and looks for sizes, beside the page, so that the page stays alive: a slice, its news, then
 * messages. Another order takes the place of the one before; who gives up ends the worker itself.
 */

/** Time between two news, ms. */
const SLICE = 40;

let run = 0;

const tell = (said: VaryNews | VaryFailure): void => self.postMessage(said);

function drive(job: VaryJob, now: number): void {
  if (run !== now) return;
  try {
    const until = performance.now() + SLICE;
    tell(job.slice(() => performance.now() >= until));
  } catch (error) {
    tell({ run: now, failure: error instanceof Error ? error.message : String(error) });
    return;
  }
  if (!job.done) setTimeout(() => drive(job, now));
}

self.onmessage = ({ data }: MessageEvent<VaryOrder>): void => {
  run = data.run;
  try {
    drive(new VaryJob(data), data.run);
  } catch (error) {
    tell({ run: data.run, failure: error instanceof Error ? error.message : String(error) });
  }
};
