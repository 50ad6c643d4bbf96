import type { Brake } from '../brake/types.ts';
import { PI } from '../units/units.ts';
import type { LipFit } from './lip.ts';

/**
 * What a pull on the drum does while the lip holds it. The way of the force: drum, lip, edge of the
 * lining, lining, shoe, hold-down spring, its pin, backing plate. Nothing of it goes into the hub.
 */

/** Pull of both hands on a drum, N; common practice. */
export const HAND_PULL = 200;
/** Pull of a puller tightened with a spanner, N: its order, from memory. */
export const PULLER = 5000;
/** Friction of a greased pad and of the hold-down's cup, both sides of the web; common practice. */
const PAD_FRICTION = 0.15;
/** What the edge of a moulded lining stands before it crumbles, MPa: its order, from memory. */
const CRUMBLES = 100;
/** Yield of a hold-down pin of mild steel, MPa: its order, from memory. */
const PIN_YIELDS = 300;

export interface LipForce {
  /** On each shoe that is caught, N. */
  readonly onShoe: number;
  /** How far the shoe comes off its pads against its spring, mm. */
  readonly give: number;
  /** The spring's coils stand on each other: the pin alone carries. */
  readonly solid: boolean;
  /** Tension in the hold-down pin, MPa. */
  readonly pinStress: number;
  /** Pressure on the lining's edge, MPa. */
  readonly edgePressure: number;
  /** Pull on the drum at which something gives way, N, and what does. */
  readonly givesAt: number;
  readonly givesFirst: 'lining edge' | 'hold-down pin';
}

/** What holds a shoe on its pads: preload, N, rate, N/mm, and way to solid coils, mm, of its hold-down. */
export function shoeHeldDown({ across, shoes }: Brake): {
  readonly preload: number;
  readonly rate: number;
  readonly travel: number;
} {
  const { rate, travel } = across.holdDown;
  return { preload: shoes.front.holdDown.friction / (2 * PAD_FRICTION), rate, travel };
}

/**
 * A pull on the drum, spread evenly over the shoes that the lip catches.
 *
 * Spring: preload F₀ from the pads' friction, which acts on both sides of the web, F = 2·μ·F₀;
 * then rate·give up to solid coils. Pin: force over π·d²/4. Edge: force over the face of the
 * overlap. Statics; strengths are orders of magnitude.
 *
 * @param pull N; NaN comes back for pressures where nothing is caught
 */
export function lipForce(brake: Brake, fit: LipFit, pull: number): LipForce {
  const caught = (['front', 'rear'] as const).filter((side) => fit[side].greatest > 0);
  const shoes = Math.max(1, caught.length);
  const onShoe = caught.length > 0 ? pull / shoes : 0;
  const { pin } = brake.across.holdDown;
  const { preload, rate, travel } = shoeHeldDown(brake);
  const give = Math.max(0, Math.min(travel, (onShoe - preload) / rate));
  const pinArea = (PI / 4) * pin * pin;
  const edge = Math.min(...caught.map((side) => fit[side].area));
  const edgeAt = CRUMBLES * edge * shoes;
  const pinAt = PIN_YIELDS * pinArea * shoes;
  const none = caught.length === 0;
  return {
    onShoe,
    give,
    solid: give >= travel,
    pinStress: onShoe / pinArea,
    edgePressure: none ? Number.NaN : onShoe / edge,
    givesAt: none ? Number.NaN : Math.min(edgeAt, pinAt),
    givesFirst: edgeAt <= pinAt ? 'lining edge' : 'hold-down pin',
  };
}
