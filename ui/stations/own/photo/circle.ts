import { EVD, inverse, Matrix } from 'ml-matrix';
import { cross, dot, type Turn, unit, type V2, type V3 } from './camera.ts';

/** Ellipse a x² + b xy + c y² + d x + e y + f = 0, px. */
export type Ellipse = readonly [number, number, number, number, number, number];

/** Fewest taps that an ellipse takes. */
export const LEAST_TAPS = 5;

/**
 * The ellipse nearest to taps by algebraic distance, with 4ac − b² = 1 [Fitzgibbon, Pilu, Fisher, IEEE
 * PAMI 21(5), 1999 (from memory)] in the stable split form [Halíř, Flusser, WSCG 1998]: the quadratic
 * part is the eigenvector of C1⁻¹(S1 + S2 T) with 4ac − b² > 0, the rest is T times it, T = −S3⁻¹S2ᵀ.
 * Null where the taps make none.
 */
export function ellipseOf(taps: readonly V2[]): Ellipse | null {
  if (taps.length < LEAST_TAPS) return null;
  const mx = taps.reduce((s, t) => s + t[0], 0) / taps.length;
  const my = taps.reduce((s, t) => s + t[1], 0) / taps.length;
  const far = taps.reduce((s, t) => s + Math.hypot(t[0] - mx, t[1] - my), 0) / taps.length;
  if (!(far > 0)) return null;
  // Centred and scaled, or the sums lose their digits.
  const at = taps.map(([x, y]): V2 => [(x - mx) / far, (y - my) / far]);
  const d1 = new Matrix(at.map(([x, y]) => [x * x, x * y, y * y]));
  const d2 = new Matrix(at.map(([x, y]) => [x, y, 1]));
  const s1 = d1.transpose().mmul(d1);
  const s2 = d1.transpose().mmul(d2);
  const s3 = d2.transpose().mmul(d2);
  try {
    const t = inverse(s3).mmul(s2.transpose()).mul(-1);
    const m = s1.add(s2.mmul(t));
    // C1⁻¹ of the constraint [[0 0 2] [0 −1 0] [2 0 0]].
    const c = new Matrix([
      m.getRow(2).map((x) => x / 2),
      m.getRow(1).map((x) => -x),
      m.getRow(0).map((x) => x / 2),
    ]);
    const vectors = new EVD(c).eigenvectorMatrix;
    for (let i = 0; i < 3; i++) {
      const q = vectors.getColumn(i) as [number, number, number];
      if (!(4 * q[0] * q[2] - q[1] * q[1] > 0)) continue;
      const rest = t.mmul(Matrix.columnVector(q)).to1DArray() as [number, number, number];
      return unscaled(q, rest, mx, my, far);
    }
  } catch {
    // Taps on a line, or twice the same: no ellipse goes through them.
  }
  return null;
}

/** The same ellipse in pixels: x = (X − mx)/far put in. */
function unscaled(q: V3, [d, e, f]: V3, mx: number, my: number, far: number): Ellipse {
  const [a, b, c] = [q[0] / far / far, q[1] / far / far, q[2] / far / far];
  return [
    a,
    b,
    c,
    d / far - 2 * a * mx - b * my,
    e / far - 2 * c * my - b * mx,
    a * mx * mx + b * mx * my + c * my * my - (d / far) * mx - (e / far) * my + f,
  ];
}

export interface CirclePose {
  /** In the camera's axes, mm. */
  readonly centre: V3;
  /** Towards the camera. */
  readonly normal: V3;
}

/**
 * The two places at which a circle of a known radius is seen as an ellipse. Q = KᵀCK with eigenvalues
 * λ1 ≥ λ2 > 0 > λ3; the cone it is has two circular sections of that radius before the camera.
 * Chen, Wu, Wada, ECCV 2004; Kanatani, Liu, CVGIP: Image Understanding 58(3), 1993 (both from memory).
 *
 * @param middle of the picture, px
 * @param radius of the circle, mm
 */
export function circlePoses(
  ellipse: Ellipse,
  focal: number,
  middle: V2,
  radius: number,
): readonly CirclePose[] {
  const [a, b, c, d, e, f] = ellipse;
  const conic = new Matrix([
    [a, b / 2, d / 2],
    [b / 2, c, e / 2],
    [d / 2, e / 2, f],
  ]);
  const k = new Matrix([
    [focal, 0, middle[0]],
    [0, focal, middle[1]],
    [0, 0, 1],
  ]);
  const q = k.transpose().mmul(conic).mmul(k);
  const size = Math.max(...q.to1DArray().map(Math.abs));
  const evd = new EVD(q.div(size), { assumeSymmetric: true });
  let values = evd.realEigenvalues.slice();
  // One is of the other sign than the two others: that one is to be the negative one.
  if (values.filter((x) => x > 0).length === 1) values = values.map((x) => -x);
  const order = [0, 1, 2].sort((i, j) => (values[j] as number) - (values[i] as number));
  const [l1, l2, l3] = order.map((i) => values[i] as number) as [number, number, number];
  if (!(l2 > 0 && l3 < 0)) return [];
  const [v1, , v3] = order.map((i) => evd.eigenvectorMatrix.getColumn(i)) as unknown as [
    V3,
    V3,
    V3,
  ];
  const g = Math.sqrt(Math.max(0, (l2 - l3) / (l1 - l3)));
  const h = Math.sqrt(Math.max(0, (l1 - l2) / (l1 - l3)));
  const z0 = (l2 * radius) / Math.sqrt(-l1 * l3);
  const of = (x: number, z: number): V3 => [
    v1[0] * x + v3[0] * z,
    v1[1] * x + v3[1] * z,
    v1[2] * x + v3[2] * z,
  ];
  const poses: CirclePose[] = [];
  for (const s1 of [1, -1]) {
    for (const s2 of [1, -1]) {
      for (const s3 of [1, -1]) {
        const centre = of((s3 * z0 * s2 * h * l3) / l2, (-s3 * z0 * s1 * g * l1) / l2);
        const normal = of(s2 * h, -s1 * g);
        if (!(centre[2] > 0 && dot(normal, centre) < 0)) continue;
        const known = poses.some((p) => dot(p.normal, normal) > 1 - 1e-12);
        if (!known) poses.push({ centre, normal });
      }
    }
  }
  return poses;
}

/** The brake's axes where its own is along a normal and its x lies level in the picture. */
export function levelTurn(normal: V3): Turn {
  const z = unit(normal);
  const x = unit([1 - z[0] * z[0], -z[0] * z[1], -z[0] * z[2]]);
  const y = cross(z, x);
  return [
    [x[0], y[0], z[0]],
    [x[1], y[1], z[1]],
    [x[2], y[2], z[2]],
  ];
}
