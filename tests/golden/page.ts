import { type Walked, walk } from '../random-steps.ts';
import { type Golden, goldenRuns } from './golden.ts';

declare global {
  interface Window {
    goldenRuns?: () => Golden[];
    walk?: (seed: number, steps: number) => Walked;
  }
}

window.walk = walk;
window.goldenRuns = goldenRuns;
