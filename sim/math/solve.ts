/** Rows and columns at most of what is solved in place. */
const MOST = 64;
const PIVOTS = new Int32Array(MOST);

/**
 * Solves A x = b in place by Gaussian elimination with partial pivoting.
 *
 * @param a row-major n×n matrix, overwritten; n at most 64
 * @param b right-hand side, length n, overwritten with x
 * @returns false when a pivot is zero or not finite (b is then meaningless)
 */
export function solveInPlace(a: Float64Array, b: Float64Array, n: number): boolean {
  if (!factor(a, PIVOTS, n)) return false;
  substitute(a, PIVOTS, b, n);
  return true;
}

/**
 * The elimination alone, P A = L U (e.g. Golub & Van Loan, Matrix Computations, 3.4), to be used for several
 * right-hand sides.
 *
 * @param a row-major n×n matrix; holds L below its diagonal and U afterwards
 * @param pivots row with which each is swapped, written
 * @returns false when a pivot is zero or not finite
 */
export function factor(a: Float64Array, pivots: Int32Array, n: number): boolean {
  for (let k = 0; k < n; k++) {
    let best = k;
    let size = Math.abs(a[k * n + k] as number);
    for (let r = k + 1; r < n; r++) {
      const v = Math.abs(a[r * n + k] as number);
      if (v > size) {
        size = v;
        best = r;
      }
    }
    if (!(size > 0) || !Number.isFinite(size)) return false;
    pivots[k] = best;
    if (best !== k) {
      for (let c = 0; c < n; c++) {
        const t = a[k * n + c] as number;
        a[k * n + c] = a[best * n + c] as number;
        a[best * n + c] = t;
      }
    }
    const own = k * n;
    const pivot = a[own + k] as number;
    for (let r = k + 1; r < n; r++) {
      const row = r * n;
      const f = (a[row + k] as number) / pivot;
      a[row + k] = f;
      if (f === 0) continue;
      for (let c = k + 1; c < n; c++) {
        a[row + c] = (a[row + c] as number) - f * (a[own + c] as number);
      }
    }
  }
  return true;
}

/** Solves for one right-hand side with what factor() left. @param b overwritten with x */
export function substitute(a: Float64Array, pivots: Int32Array, b: Float64Array, n: number): void {
  for (let k = 0; k < n; k++) {
    const best = pivots[k] as number;
    if (best === k) continue;
    const t = b[k] as number;
    b[k] = b[best] as number;
    b[best] = t;
  }
  for (let k = 0; k < n; k++) {
    const t = b[k] as number;
    for (let r = k + 1; r < n; r++) {
      const f = a[r * n + k] as number;
      if (f !== 0) b[r] = (b[r] as number) - f * t;
    }
  }
  for (let k = n - 1; k >= 0; k--) {
    let s = b[k] as number;
    for (let c = k + 1; c < n; c++) s -= (a[k * n + c] as number) * (b[c] as number);
    b[k] = s / (a[k * n + k] as number);
  }
}
