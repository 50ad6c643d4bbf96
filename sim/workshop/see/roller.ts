import type { Said } from './rank.ts';

/** A row of a roller test's print-out, each a force at the tyre in any one unit; NaN where there is none. */
export interface RollerFigures {
  readonly left: number;
  readonly right: number;
  readonly leftBack: number;
  readonly rightBack: number;
}

/** Unlike by so much, they pull (as `pull` in the signs). */
const PULLS = 12;

/**
 * What figures of a roller test say: how unlike the wheels are, and the odd one backwards against
 * forwards. Only their ratios: a force in newtons is that of the vehicle, its pedal and its tyres.
 */
export function saidByRollers(r: RollerFigures): Said {
  const out: Record<string, string> = {};
  const most = Math.max(r.left, r.right);
  if (most > 0) {
    const unlike = 100 * (1 - Math.min(r.left, r.right) / most);
    out['unlike'] = unlike.toFixed(0);
    out['pull'] = unlike > PULLS ? 'yes' : 'no';
  }
  const ratios = [r.leftBack / r.left, r.rightBack / r.right].filter((x) => Number.isFinite(x));
  if (ratios.length > 0) {
    const odd = ratios.reduce((a, b) => (Math.abs(b - 1) > Math.abs(a - 1) ? b : a));
    out['backshare'] = (100 * odd).toFixed(0);
    out['back'] = odd < 0.75 ? 'less' : odd > 1.33 ? 'more' : 'alike';
  }
  return out;
}
