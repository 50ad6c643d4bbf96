import { NARROW_STAGE } from '../pieces/page-sizes.ts';
import type { Session } from '../session.ts';
import type { Lens } from '../stage/loupe.ts';
import { type View, weightFor } from '../stage/view.ts';
import type { PageSize, Station } from '../stations/station.ts';
import { edgeBox, polygonBox } from './edge-card.ts';

/** Where the brake and the loupe stand on the stage, px: one rule for every size. */

/** There is no room for words under this width beside what a station lays over the stage. */
const NARROW_BESIDE = 520;
/** Between the shoe edge-on and what a station lays over the stage the brake has so much width, px, or is a small key. */
const LEAST_BRAKE = 300;

/** A stage that is squeezed to nothing still has a brake to draw, px/mm. */
const LEAST_SCALE = 0.05;

/** mm beside the rim for the outer band: the highest comb at an ordinary press, and its value. */
const SIDE = 42;

/** The same beside a drum that is to come off: the overlap's band and its value. */
const SIDE_OVERLAP = 30;

const within = (...scales: readonly number[]): number => Math.max(LEAST_SCALE, Math.min(...scales));

/** Height of the zoom's buttons on a phone as they are drawn, px. */
export const ZOOM_HIGH = 44;
/** Height of the layers' row in the stage's foot, px. */
const LAYER_ROW = { wide: 60, middle: 50 } as const;

/** px that the strip and the layers' row take from the stage's foot. */
export function footOf(
  { foot }: { readonly foot?: Station['foot'] | undefined },
  size: PageSize,
  wall: boolean,
): number {
  if (wall) return 0;
  const strip = foot?.height[size] ?? 0;
  if (size === 'narrow') return strip;
  return size === 'wide' ? strip || LAYER_ROW.wide : strip + LAYER_ROW.middle;
}

/** @param beside share of the width kept free at the right */
export function brakeView(
  session: Session,
  whole: number,
  height: number,
  foot: number,
  size: PageSize,
  beside = 0,
): View {
  const width = whole * (1 - beside);
  const { drum } = session.brake;
  const rim = drum.radiusNew + drum.rim;
  // The edge-on drawing takes its place on the left.
  const { edge, polygons } = session.layers;
  const left = polygons
    ? polygonBox({ width: whole, height, foot }, false, 1).width + 34
    : edge
      ? edgeBox(whole, height, foot).width + 50
      : 0;
  const crowded = left > 0 && !session.wall && width - left < LEAST_BRAKE;
  const narrow = whole < NARROW_STAGE || width < NARROW_BESIDE || crowded;
  const free = height - foot;
  const k = narrow ? 0.72 : weightFor(Math.min(width * 0.72, free + 60));
  const base = {
    width: whole,
    height,
    k,
    text: narrow ? 0.8 : Math.min(1, 0.4 + 0.6 * k),
    narrow,
    // On a phone the zoom's buttons stand over the strip; beside a loupe there is no corner left.
    foot: size === 'narrow' ? foot + ZOOM_HIGH : session.layers.loupe ? 0 : foot,
    ...(size === 'narrow' ? { upper: true } : {}),
  };
  if (session.wall) {
    // Lines twice as heavy on a full screen, less where the brake itself is smaller.
    const heavy = Math.max(1.4, Math.min(2, height / 540));
    const text = 2 * Math.min(1, height / 1080, whole / 1267);
    const wall = { ...base, k: heavy, text, narrow: false, wall: true };
    // The loupe takes the brake's place; the brake shows small beside it where the loupe looks.
    if (session.layers.loupe || polygons)
      return {
        ...wall,
        k: 0.7,
        scale: (56 * text) / rim,
        origin: [width - 64 * text, free - 64 * text],
      };
    // Words stand beside the brake and in its corners: it takes the whole height.
    const scale = within(width / (2 * (rim + 26)), (free - 18) / (2 * (rim + 4)));
    return { ...wall, tall: true, scale, origin: [width / 2, free / 2 + 5] };
  }
  if (session.layers.loupe && narrow) {
    return { ...base, scale: 37 / rim, origin: [width - 52, 52] };
  }
  if (session.layers.loupe) {
    const scale = within((free - 86) / (2 * (rim + 8)), (width * 0.56) / (2 * (rim + 18)));
    const { at, radius } = lensFor(session, whole, height, foot);
    return {
      ...base,
      scale,
      origin: [width * 0.706, free / 2 + 22],
      room: [at[0] + radius + 4, width],
    };
  }
  // The shoe edge-on and what is laid over the stage stay where they are, whichever wheel is shown.
  const mirrored = session.wheel === 'right';
  const kept = (x: number): number => (mirrored ? whole - x : x);
  if (left > 0 && narrow) return { ...base, scale: 37 / rim, origin: [kept(width - 52), 52] };
  const beyond = session.station === 'drum-off' && beside > 0 ? SIDE_OVERLAP : SIDE;
  const across = (width - left) / (2 * (rim + (narrow ? 28 : beyond)));
  const scale = within((free - (narrow ? 40 : 76)) / (2 * (rim + 10)), across);
  return {
    ...base,
    scale,
    origin: [kept((width + left) / 2), free / 2 + (narrow ? -8 : 18)],
    room: mirrored ? [whole - width, whole - left] : [left, width],
  };
}

/** A loupe has a rim, px, however little room there is. */
const lens = (...radii: readonly number[]): number => Math.max(1, Math.min(...radii));

/** The loupe stands on the adjuster's side, so that its tangents do not cross the hub. */
export function lensFor(session: Session, width: number, height: number, foot: number): Lens {
  const free = height - foot;
  if (session.wall) {
    const radius = lens(width * 0.44, (free - 90) / 2);
    return { at: [radius + 36, free / 2 - 20], radius };
  }
  if (width < NARROW_STAGE) {
    const radius = lens(width * 0.354, free * 0.42);
    return { at: [radius * 1.05, free * 0.53], radius };
  }
  const radius = lens(free * 0.4, width * 0.19);
  return { at: [width * 0.232, free * 0.52], radius };
}
