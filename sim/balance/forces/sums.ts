import { makePlaced } from '../place.ts';
import type { Link, Placed, Rig, ShoeRig, Work } from '../types.ts';

/**
 * How forces add up. A force F at a point with motion J_j does Q_j = F·J_j (virtual work). A link of
 * length s under tension T does Q_j = −T ds/dy_j.
 */

/** Adds a force that does not depend on the pose, with its geometric tangent. */
export function addForce(rig: Rig, w: Work, p: Placed, fx: number, fy: number): void {
  const from = p.shoe ? p.shoe.at : 0;
  const to = p.shoe && !p.onLever ? p.shoe.at + p.shoe.n : rig.n;
  for (let j = from; j < to; j++) {
    w.q[j] = (w.q[j] as number) + fx * (p.dx[j] as number) + fy * (p.dy[j] as number);
  }
  addBend(rig, w, p, fx, fy);
}

/**
 * Second derivatives of a turned place times a force: d²x/dphi² = −r; a bent place turns with its
 * shoe, d²x/dphi dz = ẑ×dx/dz; a lever, with the section that carries it.
 */
export function addBend(rig: Rig, w: Work, p: Placed, fx: number, fy: number): void {
  const { shoe } = p;
  if (!shoe || !w.slopes) return;
  const n = rig.n;
  const t = shoe.at + shoe.freedoms - 1;
  w.k[t * n + t] = (w.k[t * n + t] as number) - (p.rx * fx + p.ry * fy);
  const l = rig.leverAt;
  const b = -(p.lx * fx + p.ly * fy);
  if (p.onLever) {
    w.k[l * n + l] = (w.k[l * n + l] as number) + b;
    w.k[l * n + t] = (w.k[l * n + t] as number) + rig.leverSense * b;
    w.k[t * n + l] = (w.k[t * n + l] as number) + rig.leverSense * b;
  }
  for (let m = 0; m < shoe.modes; m++) {
    const z = shoe.at + shoe.freedoms + m;
    const c = (p.dx[z] as number) * fy - (p.dy[z] as number) * fx;
    w.k[t * n + z] = (w.k[t * n + z] as number) + c;
    w.k[z * n + t] = (w.k[z * n + t] as number) + c;
    if (p.turning) {
      const carried = rig.leverSense * b * (p.turning[m] as number);
      w.k[l * n + z] = (w.k[l * n + z] as number) + carried;
      w.k[z * n + l] = (w.k[z * n + l] as number) + carried;
    }
  }
}

/** How each freedom moves b against a: along (ex, ey) and across it. */
export function motions(n: number, w: Work, a: Placed, b: Placed, ex: number, ey: number): void {
  for (let j = 0; j < n; j++) {
    const x = (b.dx[j] as number) - (a.dx[j] as number);
    const y = (b.dy[j] as number) - (a.dy[j] as number);
    w.along[j] = ex * x + ey * y;
    w.across[j] = -ey * x + ex * y;
  }
}

export const makeLink = (n: number): Link => ({
  a: makePlaced(n),
  b: makePlaced(n),
  length: 1,
  ex: 1,
  ey: 0,
});

/** Length and direction as the ends stand. */
export function measure(link: Link): Link {
  const dx = link.b.x - link.a.x;
  const dy = link.b.y - link.a.y;
  const s = Math.sqrt(dx * dx + dy * dy);
  link.length = s;
  link.ex = dx / s;
  link.ey = dy / s;
  return link;
}

/** Adds a link with tension T(s) and slope dT/ds. */
export function addLink(rig: Rig, w: Work, link: Link, tension: number, slope: number): void {
  const { a, b, length, ex, ey } = link;
  const n = rig.n;
  const { along, across, k } = w;
  motions(n, w, a, b, ex, ey);
  const round = tension / length;
  for (let j = 0; j < n; j++) {
    const stretch = along[j] as number;
    const swing = across[j] as number;
    if (stretch === 0 && swing === 0) continue;
    w.q[j] = (w.q[j] as number) - tension * stretch;
    if (!w.slopes) continue;
    // The compiler does not take what is the same all along out of the loop.
    const onward = slope * stretch;
    const aside = round * swing;
    for (let l = 0; l < n; l++) {
      k[j * n + l] =
        (k[j * n + l] as number) - onward * (along[l] as number) - aside * (across[l] as number);
    }
  }
  addBend(rig, w, b, -tension * ex, -tension * ey);
  addBend(rig, w, a, tension * ex, tension * ey);
}

/** Adds a spring between a place and the plate: K −= kx·J_x J_x, with slopes alike both ways. */
export function addSlope(rig: Rig, w: Work, p: Placed, shoe: ShoeRig, slope: number): void {
  if (slope === 0 || !w.slopes) return;
  const n = rig.n;
  const from = shoe.at;
  const to = shoe.at + shoe.n;
  for (let j = from; j < to; j++) {
    const jx = slope * (p.dx[j] as number);
    const jy = slope * (p.dy[j] as number);
    if (jx === 0 && jy === 0) continue;
    for (let l = from; l < to; l++) {
      w.k[j * n + l] =
        (w.k[j * n + l] as number) + jx * (p.dx[l] as number) + jy * (p.dy[l] as number);
    }
  }
}

/** Books a force on a shoe for its outer balance: all that is not lining, strut or anchor. */
export function book(w: Work, index: 0 | 1, fx: number, fy: number): void {
  w.outer[2 * index] = (w.outer[2 * index] as number) + fx;
  w.outer[2 * index + 1] = (w.outer[2 * index + 1] as number) + fy;
}

export const indexOf = (shoe: ShoeRig): 0 | 1 => (shoe.side === 'front' ? 0 : 1);
