import { type Golden, goldenRuns } from './golden.ts';

declare global {
  interface Window {
    goldenRuns?: () => Golden[];
  }
}

window.goldenRuns = goldenRuns;
