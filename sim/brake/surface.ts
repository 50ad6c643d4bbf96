import { type Table, tableAt } from '../math/table.ts';

/** Surface of a lining. */
export const SURFACES = ['dry', 'damp', 'wet', 'glazed', 'greasy'] as const;
/** States of a lining’s rubbing face. */
export type Surface = (typeof SURFACES)[number];

/** What a surface makes of a dry lining's friction, and how sure that is: said wherever it is used. */
export interface SurfaceFriction {
  /** Factor on friction against the drum's temperature, °C. */
  readonly table: Table;
  readonly source: string;
}

export type SurfaceFrictions = Readonly<Record<Surface, SurfaceFriction>>;

const usual = (table: Table): SurfaceFriction => ({ table, source: 'common practice' });

/**
 * Tables of a scene that has none of its own. Common practice without a published table: damp rust
 * bloom lifts friction for a few stops, by 40 to 60 % in shop experience; a film of water takes about
 * half to two thirds of it; a glazed face about a quarter; fluid or grease about half to six tenths.
 * The middle of each range is taken. Water boils at 100 °C: a drum warmer than that dries its linings,
 * and by 130 °C nothing of it is left.
 */
export const usualSurfaces: SurfaceFrictions = {
  dry: usual([[20, 1]]),
  damp: usual([
    [100, 1.45],
    [130, 1],
  ]),
  wet: usual([
    [100, 0.4],
    [130, 1],
  ]),
  glazed: usual([[20, 0.75]]),
  greasy: usual([[20, 0.5]]),
};

/** Factor on the friction of a dry lining at a temperature, °C. */
export const surfaceFactor = (
  surfaces: SurfaceFrictions,
  surface: Surface,
  temperature: number,
): number => tableAt(surfaces[surface].table, temperature);
