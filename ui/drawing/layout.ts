import { type Rig, roleOf, type Turning } from '../../sim/index.ts';
import type { Station } from '../session.ts';
import { band } from './layers.ts';
import type { View } from './pixi-stage.ts';
import type { XY } from './shapes.ts';

/** Where the brake and the loupe stand on the stage, px. */
export interface StageLayout {
  readonly brake: View;
  readonly loupe:
    | (View & { readonly clip: { readonly x: number; readonly y: number; readonly r: number } })
    | null;
  readonly narrow: boolean;
  readonly frame: boolean;
}

export interface LayoutInput {
  readonly rig: Rig;
  readonly station: Station;
  readonly width: number;
  readonly height: number;
  /** px kept free at the foot for toggles. */
  readonly foot: number;
  readonly loupe: boolean;
  /** Middle of what the loupe looks at, mm. */
  readonly look: XY;
  /** Zoom and pan by the user. */
  readonly zoom: { readonly factor: number; readonly x: number; readonly y: number };
}

export function layout(input: LayoutInput): StageLayout {
  const { rig, width, height, foot, look } = input;
  const narrow = width < 600;
  const rim = band(rig);
  const free = height - foot;
  const k = narrow ? 0.72 : width > 1150 ? 1 : 0.78;
  let scale: number;
  let x: number;
  let y: number;
  let loupe: StageLayout['loupe'] = null;
  if (input.loupe && narrow) {
    const r = Math.min(width * 0.354, free * 0.44);
    loupe = lens(look, r * 1.05, free * 0.5, r, r / 23, 1.35 * k);
    scale = 37 / rim;
    x = width - 52;
    y = 52;
  } else if (input.loupe) {
    scale = Math.min((free - 92) / (2 * (rim + 6)), (width * 0.56) / (2 * (rim + 16)));
    x = width * 0.706;
    y = free / 2 + 24;
    const r = Math.min(free * 0.42, width * 0.196);
    loupe = lens(look, width * 0.235, free * 0.5, r, r / 23.1, 1.35 * k);
  } else {
    scale = Math.min(
      (free - (narrow ? 30 : 70)) / (2 * (rim + 8)),
      width / (2 * (rim + (narrow ? 26 : 42))),
    );
    x = width / 2;
    y = free / 2 + (narrow ? -4 : 16);
  }
  const { zoom } = input;
  return {
    brake: {
      x: width / 2 + (x - width / 2) * zoom.factor + zoom.x,
      y: free / 2 + (y - free / 2) * zoom.factor + zoom.y,
      scale: scale * zoom.factor,
      k: k * Math.min(2, Math.sqrt(zoom.factor)),
    },
    loupe,
    narrow,
    frame: width > 1000,
  };
}

function lens(look: XY, cx: number, cy: number, r: number, scale: number, k: number) {
  return { x: cx - look[0] * scale, y: cy + look[1] * scale, scale, k, clip: { x: cx, y: cy, r } };
}

/** The two tangents from the circle on the brake to the loupe. */
export function tangents(
  a: { x: number; y: number; r: number },
  b: { x: number; y: number; r: number },
): string[] {
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  const d = Math.hypot(dx, dy);
  if (d <= Math.abs(b.r - a.r)) return [];
  const base = Math.atan2(dy, dx);
  return [1, -1].map((s) => {
    const t = base + s * (Math.PI / 2 + Math.asin((b.r - a.r) / d));
    const at = (c: { x: number; y: number; r: number }) =>
      `${(c.x + c.r * Math.cos(t)).toFixed(1)} ${(c.y + c.r * Math.sin(t)).toFixed(1)}`;
    return `M${at(a)}L${at(b)}`;
  });
}

/** Words for the turning and the roles of both sides. */
export function roleWords(turning: Turning): {
  left: 'leading' | 'trailing';
  right: 'leading' | 'trailing';
  turn: string;
} {
  return {
    left: roleOf('front', turning),
    right: roleOf('rear', turning),
    turn:
      turning > 0
        ? 'Drum turns forward'
        : turning < 0
          ? 'Drum turns backward'
          : 'Drum stands still',
  };
}
