import { inverse, Matrix, solve } from 'ml-matrix';
import {
  after,
  type Camera,
  focalOf35,
  pixelsPerMm,
  type Turn,
  times,
  toPlace,
  turnBy,
  type V2,
  type V3,
} from './camera.ts';
import { circlePoses, ellipseOf, levelTurn } from './circle.ts';

/**
 * The camera that a picture was taken by, from taps on circles whose sizes and depths are known. Parts
 * lie 10 to 45 mm over one another, so no flat picture can be read with one scale: each tap is read at
 * its own depth.
 */
export interface Circle {
  readonly taps: readonly V2[];
  /** mm */
  readonly radius: number;
  readonly depth: number;
  /** How far the part itself may be off, mm. */
  readonly off: number;
}
export interface Middle {
  readonly tap: V2;
  readonly depth: number;
}
/** Two places of the brake that are each other's mirror image about its upright. */
export interface Pair {
  readonly name: string;
  readonly left: V2;
  readonly right: V2;
  readonly depth: number;
}
export interface Sighting {
  readonly width: number;
  readonly height: number;
  /** 35 mm equivalent of the lens, mm; null where nobody knows. */
  readonly focal35: number | null;
  /** Both linings' outer edges; and the plate's rim, where it can be seen. */
  readonly edge: Circle;
  readonly rim: Circle | null;
  readonly hub: Middle | null;
  readonly pairs: readonly Pair[];
}

export interface Fit {
  readonly camera: Camera;
  /** 7 × 7, of turn (3, rad), shift (3, mm), ln focal. */
  readonly covariance: Matrix;
  /** Sum of squared residuals over freedoms: about 1 when all is as it should be. */
  readonly alarm: number;
  /** Root mean square of the circles' and the hub's residuals, mm. */
  readonly within: number;
  /** Residual of each circle's taps and of the hub's, mm, by whose they are. */
  readonly off: {
    readonly edge: readonly number[];
    readonly rim: readonly number[];
    readonly hub: number;
  };
  /** Pairs of places that are no mirror images of each other, with how far they are off, mm. */
  readonly suspects: readonly { readonly name: string; readonly off: number }[];
}

/** A tap's own error, px, and one of two taps'. */
export const TAP = 2;
const TAP_OF_PAIR = 3;
/** How far the parts' own mirror images are off, and the hub's middle, mm. */
const OFF_PAIR = 0.6;
const OFF_HUB = 0.2;
/** Priors: ln of a focal length that is known and of one that is not; turn about the axis, rad. */
const FOCAL_KNOWN = 0.03;
const FOCAL_GUESSED = 0.7;
const UPRIGHT = 0.5;
/** How many times as firm a turn is that is taken as given. */
const GIVEN = 1000;
/** Usual main lens of a phone, mm, 35 mm equivalent (common practice). */
const USUAL_LENS = 26;
/** Mirror partners further apart than this are no partners, mm (sound ones: 2.0 in 95 of 100). */
export const SUSPECT = 3;

type Params = readonly [number, number, number, number, number, number, number];

const cameraOf = (base: Camera, p: Params): Camera => ({
  focal: base.focal * Math.exp(p[6]),
  middle: base.middle,
  turn: after(turnBy([p[0], p[1], p[2]]), base.turn),
  shift: [base.shift[0] + p[3], base.shift[1] + p[4], base.shift[2] + p[5]],
});

const known35 = (s: Sighting): number => focalOf35(s.focal35 ?? USUAL_LENS, s.width, s.height);

const ofCircle = (camera: Camera, c: Circle): number[] =>
  c.taps.map((tap) => {
    const [x, y] = toPlace(camera, tap, c.depth);
    return Math.hypot(x, y) - c.radius;
  });

const ofPair = (camera: Camera, p: Pair): V2 => {
  const a = toPlace(camera, p.left, p.depth);
  const b = toPlace(camera, p.right, p.depth);
  return [a[0] + b[0], a[1] - b[1]];
};

/** Residuals over their own deviations; the last two are what was known before. */
function residuals(s: Sighting, pairs: readonly Pair[], camera: Camera): number[] {
  const scale = pixelsPerMm(camera);
  const over = (px: number, mm: number): number => scale / Math.hypot(px, mm * scale);
  const out: number[] = [];
  for (const c of s.rim ? [s.edge, s.rim] : [s.edge]) {
    const by = over(TAP, c.off);
    for (const r of ofCircle(camera, c)) out.push(r * by);
  }
  if (s.hub) {
    const by = over(TAP, OFF_HUB);
    const [x, y] = toPlace(camera, s.hub.tap, s.hub.depth);
    out.push(x * by, y * by);
  }
  const by = over(TAP_OF_PAIR, OFF_PAIR);
  for (const p of pairs) {
    const [x, y] = ofPair(camera, p);
    out.push(x * by, y * by);
  }
  const focal = Math.log(camera.focal / known35(s));
  out.push(focal / (s.focal35 === null ? FOCAL_GUESSED : FOCAL_KNOWN));
  out.push(Math.atan2(camera.turn[1][0], camera.turn[0][0]) / UPRIGHT);
  return out;
}

const sumOf = (r: readonly number[]): number => r.reduce((s, x) => s + x * x, 0);
const STEPS: Params = [1e-6, 1e-6, 1e-6, 1e-4, 1e-4, 1e-4, 1e-6];
const STILL: Params = [0, 0, 0, 0, 0, 0, 0];
const ROUNDS = 60;

function jacobian(of: (c: Camera) => readonly number[], camera: Camera): Matrix {
  const r = of(camera);
  const j = Matrix.zeros(r.length, 7);
  for (let k = 0; k < 7; k++) {
    const step = STEPS[k] as number;
    const p = STILL.map((_, i) => (i === k ? step : 0)) as unknown as Params;
    of(cameraOf(camera, p)).forEach((x, i) => {
      j.set(i, k, (x - (r[i] as number)) / step);
    });
  }
  return j;
}

/**
 * Levenberg–Marquardt with forward differences: Hartley, Zisserman, as in camera.ts, appendix 6; Triggs
 * et al., Bundle Adjustment: A Modern Synthesis, 2000 (both from memory).
 */
function settle(of: (c: Camera) => readonly number[], start: Camera): Camera {
  let camera = start;
  let now = sumOf(of(camera));
  let damp = 1e-3;
  for (let round = 0; round < ROUNDS; round++) {
    const r = Matrix.columnVector(of(camera) as number[]);
    const j = jacobian(of, camera);
    const a = j.transpose().mmul(j);
    const g = j.transpose().mmul(r).mul(-1);
    const b = a.clone();
    for (let i = 0; i < 7; i++) b.set(i, i, a.get(i, i) * (1 + damp) + 1e-12);
    const p = solve(b, g).to1DArray() as unknown as Params;
    const next = cameraOf(camera, p);
    const then = next.shift[2] > 0 ? sumOf(of(next)) : Number.POSITIVE_INFINITY;
    if (then < now) {
      const done = now - then < 1e-10 * (1 + now);
      camera = next;
      now = then;
      damp = Math.max(1e-9, damp / 5);
      if (done) break;
    } else {
      damp *= 8;
      if (damp > 1e9) break;
    }
  }
  return camera;
}

/** Cameras to start from: the poses that the linings' edges alone leave. */
function starts(s: Sighting): Camera[] {
  const ellipse = ellipseOf(s.edge.taps);
  if (!ellipse) return [];
  const focal = known35(s);
  const middle: V2 = [s.width / 2, s.height / 2];
  return circlePoses(ellipse, focal, middle, s.edge.radius).map(({ centre, normal }) => {
    const turn: Turn = levelTurn(normal);
    const out: V3 = times(turn, [0, 0, s.edge.depth]);
    const shift: V3 = [centre[0] - out[0], centre[1] - out[1], centre[2] - out[2]];
    return { focal, middle, turn, shift };
  });
}

/**
 * The camera that fits best. Adjusted without mirror partners first; those that are none are named and
 * left out, then all is adjusted with the rest. From both poses that one circle leaves: the better stays.
 *
 * @returns null while there are too few taps on the linings' edges, or they lie on no ellipse
 */
export function fitOf(s: Sighting): Fit | null {
  let best: Camera | null = null;
  let least = Number.POSITIVE_INFINITY;
  const alone = (c: Camera): number[] => residuals(s, [], c);
  for (const start of starts(s)) {
    const camera = settle(alone, start);
    const left = sumOf(alone(camera));
    if (left < least) {
      least = left;
      best = camera;
    }
  }
  if (!best) return null;
  const first = upright(best, s.pairs);
  const far = s.pairs.map((p) => ({ name: p.name, off: Math.hypot(...ofPair(first, p)) }));
  const suspects = far.filter(({ off }) => off > SUSPECT);
  const sound = s.pairs.filter((p) => !suspects.some(({ name }) => name === p.name));
  const all = (c: Camera): number[] => residuals(s, sound, c);
  const camera = settle(all, first);
  const r = all(camera);
  const j = jacobian(all, camera);
  // Without partners nothing tells the turn about the axis, on which no answer hangs: it is taken as given.
  if (sound.length === 0) {
    for (let i = 0; i < 7; i++) j.set(r.length - 1, i, j.get(r.length - 1, i) * GIVEN);
  }
  const edge = ofCircle(camera, s.edge);
  const rim = s.rim ? ofCircle(camera, s.rim) : [];
  const hub = s.hub ? Math.hypot(...toPlace(camera, s.hub.tap, s.hub.depth)) : 0;
  const told = [...edge, ...rim, ...(s.hub ? [hub] : [])];
  return {
    camera,
    covariance: inverse(j.transpose().mmul(j)),
    alarm: sumOf(r) / Math.max(1, r.length - 7),
    within: Math.sqrt(sumOf(told) / told.length),
    off: { edge, rim, hub },
    suspects,
  };
}

/**
 * Turned about the brake's axis until mirror partners lie level: the least sum of squares of
 * |R(2φ)·left − mirror of right|, the angle of a plane Procrustes fit. By the pair in the middle of the
 * list of angles, so that one that is none does not turn the rest.
 */
function upright(camera: Camera, pairs: readonly Pair[]): Camera {
  const angles = pairs
    .map((p) => {
      const [ax, ay] = toPlace(camera, p.left, p.depth);
      const [bx, by] = toPlace(camera, p.right, p.depth);
      // Angle from the left one to the right one's image (−bx, by), half of it.
      return Math.atan2(ax * by + ay * bx, -ax * bx + ay * by) / 2;
    })
    .sort((a, b) => a - b);
  if (angles.length === 0) return camera;
  const angle = angles[Math.floor((angles.length - 1) / 2)] as number;
  const c = Math.cos(angle);
  const s = Math.sin(angle);
  // New place = R(φ)·old place, so the turn is the old one after R(−φ).
  const by: Turn = [
    [c, s, 0],
    [-s, c, 0],
    [0, 0, 1],
  ];
  return { ...camera, turn: after(camera.turn, by) };
}

/** How far a part's depth may be off from what is said, mm (measured on four brakes: 1.5). */
export const DEPTH = 1.5;

/**
 * Deviation of a place read from a tap, mm, as its 2 × 2 covariance: of the camera, the tap, the depth.
 */
export function placeSpread(fit: Fit, tap: V2, depth: number): readonly [number, number, number] {
  const { camera, covariance } = fit;
  const j = jacobian((c) => toPlace(c, tap, depth), camera);
  const c = j.mmul(covariance).mmul(j.transpose());
  const mm = TAP / pixelsPerMm(camera);
  const [x, y] = toPlace(camera, tap, depth);
  const [x2, y2] = toPlace(camera, tap, depth + DEPTH);
  const [dx, dy] = [x2 - x, y2 - y];
  return [c.get(0, 0) + mm * mm + dx * dx, c.get(0, 1) + dx * dy, c.get(1, 1) + mm * mm + dy * dy];
}

/** Two deviations along the longer axis of a place's ellipse, mm. */
export function bandOf([a, b, c]: readonly [number, number, number]): number {
  const half = (a + c) / 2;
  return 2 * Math.sqrt(half + Math.hypot((a - c) / 2, b));
}
