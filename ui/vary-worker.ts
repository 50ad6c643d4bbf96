import { VaryJob } from './vary-job.ts';
import type { VaryFailure, VaryNews, VaryOrder, VaryStop } from './vary-messages.ts';

/** Works out curves beside the page, so that the page stays alive: a slice, its news, then messages. */

/** Time between two news, ms; also how long a run that was given up may still go on. */
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

self.onmessage = ({ data }: MessageEvent<VaryOrder | VaryStop>): void => {
  if ('stop' in data) {
    run = 0;
    return;
  }
  run = data.run;
  try {
    drive(new VaryJob(data), data.run);
  } catch (error) {
    tell({ run: data.run, failure: error instanceof Error ? error.message : String(error) });
  }
};
