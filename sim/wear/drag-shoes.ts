import type { Brake } from '../brake/types.ts';
import { ROOM } from '../brake/warm.ts';
import { exp } from '../math/exp.ts';
import { faceGrowth, liningConductance, type Warmth, warmedBoth } from './shoe-heat.ts';

/** Share of their time constant, and change, K, that shoes are held still for. */
const STILL_TIME = 0.05;
const STILL_RISE = 0.3;

/**
 * Shoes that warm through linings that rub, and swell after the drum that grows away from them. How far they
 * follow it decides how hot a dragging brake runs, and how far a press at the foot of a hill parts the seats. Cold
 * where the scene says nothing of their heat.
 */
export class DragShoes {
  readonly #brake: Brake;
  /** From drum to shoes while they touch, N·mm/s/K; 0 for shoes that stay cold. */
  readonly between: number;
  /** °C */
  temperature: number;

  constructor(brake: Brake, air: number) {
    this.#brake = brake;
    this.temperature = air;
    const { front, rear } = brake.shoes;
    this.between = brake.heat.shoes
      ? liningConductance(
          [front, rear].map(({ lining: l }) => ({
            conductivity: brake.heat.lining.conductivity,
            area: l.width * brake.drum.radiusNew * (l.to - l.from),
            thickness: l.thicknessNew,
          })),
        )
      : 0;
  }

  /** How far their faces have grown, mm: less room in the bore. The lining is as warm as the mean of both. */
  growth(drum: number, at = this.temperature): number {
    const { heat, drum: d, shoes } = this.#brake;
    if (!heat.shoes) return 0;
    const shoe = at - ROOM;
    const lining = (at + drum) / 2 - ROOM;
    return faceGrowth(d.radiusNew, shoes.front.lining.thicknessNew, heat.shoes, { shoe, lining });
  }

  /**
   * Drum and shoes after a time of even heating with the linings pressed on, °C; null for shoes that stay cold.
   * Nothing is changed by it.
   *
   * @param drum °C before; @param power N·mm/s; @param drumLoss N·mm/s/K; @param time s
   */
  together(
    drum: number,
    power: number,
    drumLoss: number,
    time: number,
    air: number,
  ): Warmth | null {
    const { drum: d, heat } = this.#brake;
    if (!heat.shoes) return null;
    const lumps = {
      drumCapacity: d.heatCapacity,
      shoesCapacity: heat.shoes.capacity,
      between: this.between,
      drumLoss,
      shoesLoss: heat.shoes.loss,
    };
    return warmedBoth(lumps, { drum, shoes: this.temperature }, power, time, air);
  }

  /** Time for which they may be taken as they are, s. @param drum °C; @param air °C */
  patience(drum: number, air: number): number {
    const { shoes } = this.#brake.heat;
    if (!shoes) return Number.POSITIVE_INFINITY;
    const rate =
      (this.between * (drum - this.temperature) - shoes.loss * (this.temperature - air)) /
      shoes.capacity;
    return Math.max(
      (STILL_TIME * shoes.capacity) / (this.between + shoes.loss),
      STILL_RISE / Math.abs(rate),
    );
  }

  /**
   * A time on: T_s = T_e + (T_0 − T_e)·e^(−t·(G_in + G_out)/C_s), T_e where they lose what they get (lumped
   * capacity, the drum's mean over the time).
   *
   * @param drum °C; null where nothing touches it
   */
  after(time: number, drum: number | null, air: number): void {
    const { shoes } = this.#brake.heat;
    if (!shoes) return;
    const from = drum === null ? 0 : this.between;
    const loss = from + shoes.loss;
    const end = (from * (drum ?? 0) + shoes.loss * air) / loss;
    this.temperature = end + (this.temperature - end) * exp((-time * loss) / shoes.capacity);
  }
}
