/**
 * Solves A x = b in place by Gaussian elimination with partial pivoting.
 *
 * @param a row-major n×n matrix, overwritten
 * @param b right-hand side, length n, overwritten with x
 * @returns false when a pivot is zero or not finite (b is then meaningless)
 */
export function solveInPlace(a: Float64Array, b: Float64Array, n: number): boolean {
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
    if (best !== k) {
      for (let c = k; c < n; c++) {
        const t = a[k * n + c] as number;
        a[k * n + c] = a[best * n + c] as number;
        a[best * n + c] = t;
      }
      const t = b[k] as number;
      b[k] = b[best] as number;
      b[best] = t;
    }
    const pivot = a[k * n + k] as number;
    for (let r = k + 1; r < n; r++) {
      const f = (a[r * n + k] as number) / pivot;
      if (f === 0) continue;
      for (let c = k + 1; c < n; c++) {
        a[r * n + c] = (a[r * n + c] as number) - f * (a[k * n + c] as number);
      }
      b[r] = (b[r] as number) - f * (b[k] as number);
    }
  }
  for (let k = n - 1; k >= 0; k--) {
    let s = b[k] as number;
    for (let c = k + 1; c < n; c++) s -= (a[k * n + c] as number) * (b[c] as number);
    b[k] = s / (a[k * n + k] as number);
  }
  return true;
}
