/**
 * A pinhole camera over the brake. Pixels of the upright picture: x right, y down. Brake: x right, y up,
 * z out from the plate's face, mm. The camera's own axes: x right, y down, z ahead.
 *
 * Tap to place and place to tap: Hartley, Zisserman, Multiple View Geometry in Computer Vision, 2nd ed.,
 * Cambridge 2004, chapter 6 (from memory).
 */
export type V2 = readonly [number, number];
export type V3 = readonly [number, number, number];
/** Rows of a turn: brake's axes to the camera's. */
export type Turn = readonly [V3, V3, V3];

export interface Camera {
  /** px */
  readonly focal: number;
  /** Middle of the picture, px. */
  readonly middle: V2;
  readonly turn: Turn;
  /** Place in the camera's axes = turn · place + shift, mm. */
  readonly shift: V3;
}

export const dot = (a: V3, b: V3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const cross = (a: V3, b: V3): V3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
export const unit = (a: V3): V3 => {
  const n = Math.sqrt(dot(a, a));
  return [a[0] / n, a[1] / n, a[2] / n];
};
export const times = (m: Turn, a: V3): V3 => [dot(m[0], a), dot(m[1], a), dot(m[2], a)];
/** The turn back: its columns as rows. */
export const back = (m: Turn): Turn => [
  [m[0][0], m[1][0], m[2][0]],
  [m[0][1], m[1][1], m[2][1]],
  [m[0][2], m[1][2], m[2][2]],
];
export const after = (a: Turn, b: Turn): Turn => {
  const c = back(b);
  const row = (r: V3): V3 => [dot(r, c[0]), dot(r, c[1]), dot(r, c[2])];
  return [row(a[0]), row(a[1]), row(a[2])];
};

/** Turn by a vector, rad, about itself: Rodrigues' formula, 1840 (from memory). */
export function turnBy(w: V3): Turn {
  const angle = Math.sqrt(dot(w, w));
  if (angle < 1e-12) {
    return [
      [1, -w[2], w[1]],
      [w[2], 1, -w[0]],
      [-w[1], w[0], 1],
    ];
  }
  const [x, y, z] = unit(w);
  const c = Math.cos(angle);
  const s = Math.sin(angle);
  const k = 1 - c;
  return [
    [c + x * x * k, x * y * k - z * s, x * z * k + y * s],
    [y * x * k + z * s, c + y * y * k, y * z * k - x * s],
    [z * x * k - y * s, z * y * k + x * s, c + z * z * k],
  ];
}

/** Focal length in px of a lens told as its 35 mm equivalent: equal diagonals, 43.27 mm (CIPA DCG-001). */
export const focalOf35 = (f35: number, width: number, height: number): number =>
  (f35 * Math.sqrt(width * width + height * height)) / 43.27;

/** Where a place of the brake lies in the picture, px. */
export function toPicture(camera: Camera, [x, y, z]: V3): V2 {
  const t = times(camera.turn, [x, y, z]);
  const ahead = t[2] + camera.shift[2];
  return [
    camera.middle[0] + (camera.focal * (t[0] + camera.shift[0])) / ahead,
    camera.middle[1] + (camera.focal * (t[1] + camera.shift[1])) / ahead,
  ];
}

/** The place at a depth z, mm, that a tap points at: where its ray meets that plane. */
export function toPlace(camera: Camera, tap: V2, z: number): V2 {
  const rows = back(camera.turn);
  const ray: V3 = [
    (tap[0] - camera.middle[0]) / camera.focal,
    (tap[1] - camera.middle[1]) / camera.focal,
    1,
  ];
  const d = times(rows, ray);
  const o = times(rows, camera.shift);
  const far = (z + o[2]) / d[2];
  return [d[0] * far - o[0], d[1] * far - o[1]];
}

/** Angle between the camera's axis and the brake's, rad: how far from the side it was taken. */
export const tiltOf = (camera: Camera): number => Math.acos(Math.min(1, -camera.turn[2][2]));

/** Pixels of a millimetre at the brake. */
export const pixelsPerMm = (camera: Camera): number => camera.focal / camera.shift[2];
