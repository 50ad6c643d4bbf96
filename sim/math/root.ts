/** A place and what the function gives there. */
export type Found = readonly [at: number, value: number];

export interface Until {
  /** The value counts as nothing. */
  readonly near: number;
  /** The ends of the bracket count as one. */
  readonly apart: (a: number, b: number) => boolean;
  readonly trials: number;
  /** Halve the bracket every third time: for a function that runs flat and then steeply. */
  readonly halving?: boolean;
}

/**
 * Root of a function between two places where it has different signs: secants, with the value of an end
 * that stays halved (regula falsi, Illinois variant; M. Dowell & P. Jarratt 1971). The function was last
 * asked at what is given back.
 */
export function rootBetween(f: (x: number) => number, a: Found, b: Found, until: Until): Found {
  let [p, fp] = a;
  let [q, fq] = b;
  let last = 0;
  for (let n = 0; n < until.trials && Math.abs(fq) >= until.near && fp * fq <= 0; n++) {
    const c = until.halving && n % 3 === 2 ? (p + q) / 2 : q - (fq * (q - p)) / (fq - fp);
    const fc = f(c);
    if (fq * fc < 0) {
      p = q;
      fp = fq;
      last = 0;
    } else if (last++ > 0) fp /= 2;
    q = c;
    fq = fc;
    if (until.apart(p, q)) break;
  }
  return [q, fq];
}
