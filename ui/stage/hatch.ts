import type { Ink, Token } from '../theme.ts';
import type { Hatch } from './shapes.ts';

/**
 * Hatches as small tiles that repeat without a seam, told once for every painter: a ground and
 * lines or dots on it, in px from the tile's top left, y down. Tiles have whole sizes, so they stay
 * sharp on the screen.
 */
export interface Tile {
  readonly width: number;
  readonly height: number;
  readonly ground: Ink | null;
  readonly groundAlpha?: number;
  readonly lines: readonly {
    readonly from: readonly [number, number];
    readonly to: readonly [number, number];
    readonly ink: Ink;
    readonly width: number;
  }[];
  readonly dots: readonly { readonly at: readonly [number, number]; readonly radius: number }[];
  readonly dotInk: Ink;
}

export interface TileView {
  /** px per mm. */
  readonly scale: number;
  readonly k: number;
}

type Slope = 'rising' | 'falling';

/** Distance of hatch lines at full size, px, and the scale (px per mm) it holds for. */
const SPACING = 6.2;
const FULL = 3.4;
const GRAINS = 46;

/** Fixed-seed sequence in 0..1 (Lehmer's generator with multiplier 16807 and modulus 2³¹ − 1). */
function sequence(seed: number): () => number {
  let s = seed;
  return () => {
    s = (s * 16807) % 2147483647;
    return s / 2147483647;
  };
}

/** Lines at 45°: the tile's diagonal, with its neighbours so that corners are whole. */
function diagonals(size: number, slope: Slope, ink: Ink, width: number): Tile['lines'] {
  const far = 2 * size;
  return [-size, 0, size].map((shift) =>
    slope === 'rising'
      ? { from: [shift - size, far], to: [shift + far, -size], ink, width }
      : { from: [shift - size, -size], to: [shift + far, far], ink, width },
  );
}

const plain = (width: number, height: number, ground: Ink | null, lines: Tile['lines']): Tile => ({
  width,
  height,
  ground,
  lines,
  dots: [],
  dotInk: 'ink',
});

function lined(
  spacing: number,
  ground: Token | null,
  ink: Token,
  width: number,
  slopes: readonly Slope[],
): Tile {
  const size = Math.max(4, Math.round(spacing * Math.SQRT2));
  return plain(
    size,
    size,
    ground,
    slopes.flatMap((slope) => diagonals(size, slope, ink, width)),
  );
}

export function tileOf(hatch: Hatch, { scale, k }: TileView): Tile {
  const g = Math.max(0.55, scale / FULL);
  const spacing = Math.max(5.5, SPACING * g ** 0.6);
  if (typeof hatch === 'object') return dotScreen(8 * g, hatch);
  switch (hatch) {
    case 'drum':
      return lined(spacing, 'drum', 'hatch', 1.15 * k, ['rising']);
    case 'cylinder':
      return lined(spacing * 0.72, 'cylinder', 'hatch', 1.1 * k, ['falling']);
    case 'piston':
      return lined(spacing * 1.25, 'piston', 'hatch', k, ['rising']);
    case 'rubber':
      return lined(5 * g, 'rubberSeen', 'hatch', 0.9 * k, ['rising', 'falling']);
    case 'overlap':
      return lined(6 * Math.sqrt(g), null, 'bad', 2.4 * k, ['falling']);
    case 'fluid':
      return fluidTile(g);
    case 'lining':
      return grainTile(g ** 0.7);
  }
}

/** Two rows of short dashes, shifted by half. */
function fluidTile(g: number): Tile {
  const width = Math.max(6, Math.round(11 * g));
  const height = Math.max(4, Math.round(7 * g));
  const line = (from: number, to: number, y: number) =>
    ({
      from: [from * width, y * height],
      to: [to * width, y * height],
      ink: 'fluid' as const,
      width: 1.3 * g,
    }) as const;
  return plain(width, height, 'fluidFill', [
    line(0.09, 0.64, 0.26),
    line(0.55, 1, 0.74),
    line(0, 0.09, 0.74),
  ]);
}

function grainTile(g: number): Tile {
  const size = Math.max(12, Math.round(34 * g));
  const next = sequence(7);
  const dots = Array.from({ length: GRAINS }, () => {
    const at: [number, number] = [next() * size, next() * size];
    return { at, radius: (0.45 + next() * 0.75) * g };
  });
  // A grain over the tile's edge comes in again on the other side.
  const all = dots.flatMap(({ at, radius }) =>
    [-size, 0, size].flatMap((dx) =>
      [-size, 0, size]
        .map((dy) => ({ at: [at[0] + dx, at[1] + dy] as [number, number], radius }))
        .filter(({ at: [x, y] }) => Math.max(-x, -y, x - size, y - size) < radius),
    ),
  );
  return { width: size, height: size, ground: 'lining', lines: [], dots: all, dotInk: 'grain' };
}

/** Dots in the corners and the middle of the tile; `share` of the pitch wide. */
function dotScreen(pitch: number, { dots, colour, veil }: Exclude<Hatch, string>): Tile {
  const size = Math.max(4, Math.round(pitch * Math.SQRT2));
  const radius = ((size / Math.SQRT2) * dots) / 2;
  const at = [
    [0, 0],
    [size, 0],
    [0, size],
    [size, size],
    [size / 2, size / 2],
  ] as const;
  return {
    width: size,
    height: size,
    ground: colour,
    groundAlpha: veil,
    lines: [],
    dots: at.map((p) => ({ at: p, radius })),
    dotInk: colour,
  };
}

/** Name of a hatch, the same for equal ones. */
export const hatchKey = (hatch: Hatch): string =>
  typeof hatch === 'object' ? `dots-${hatch.dots.toFixed(3)}-${hatch.veil}-${hatch.colour}` : hatch;
