import { addBend, measure, motions } from './forces/sums.ts';
import { place, turnsOf } from './place.ts';
import type { Acting, Rig, Work } from './types.ts';

/** Where the strut's seats stand, how far apart, and the gradient of that over all freedoms. */
function strut(rig: Rig, w: Work, y: Float64Array): void {
  const { a, b } = w.strut;
  place(rig, y, w.turns, rig.front.seat, a);
  place(rig, y, w.turns, rig.rear.seat, b);
  const { ex, ey } = measure(w.strut);
  for (let j = 0; j < rig.n; j++) {
    w.seatGradient[j] =
      ex * ((b.dx[j] as number) - (a.dx[j] as number)) +
      ey * ((b.dy[j] as number) - (a.dy[j] as number));
  }
}

/** Adds the geometric tangent of the strut's clamp force (compression S: Q = S·gradient). */
export function addClampTangent(rig: Rig, w: Work, clamp: number): void {
  const n = rig.n;
  const { a, b, length, ex, ey } = w.strut;
  const round = clamp / length;
  const { across, k } = w;
  motions(n, w, a, b, ex, ey);
  for (let j = 0; j < n; j++) {
    const swing = across[j] as number;
    if (swing === 0) continue;
    const aside = round * swing;
    for (let l = 0; l < n; l++) {
      k[j * n + l] = (k[j * n + l] as number) + aside * (across[l] as number);
    }
  }
  addBend(rig, w, b, clamp * ex, clamp * ey);
  addBend(rig, w, a, -clamp * ex, -clamp * ey);
}

/**
 * Generalised forces Q and tangent K = dQ/dy over all freedoms (front shoe, rear shoe, parking lever) at
 * pose y, into w.q and w.k: every force of the list adds its own. The strut's clamp is not in Q: it is a
 * multiplier on the distance of the seats, which is left in the work with its gradient. Both solvers use
 * this one function.
 */
export function assemble(rig: Rig, w: Work, y: Float64Array, act: Acting): void {
  const { q, k, forces } = w;
  for (let j = 0; j < q.length; j++) q[j] = 0;
  if (w.slopes) {
    k.fill(0);
    w.byShaken.fill(0);
  }
  for (let j = 0; j < 4; j++) w.outer[j] = 0;
  w.springMoment[0] = 0;
  w.springMoment[1] = 0;
  turnsOf(rig, y, w.turns);
  strut(rig, w, y);
  for (let i = 0; i < forces.length; i++) forces[i]?.add(w, y, act);
}
