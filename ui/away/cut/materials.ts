import { type Brake, leverForm } from '../../../sim/index.ts';
import { awayCutMaterials as words } from '../../../sim/words/en.ts';
import type { CutSettings } from './part.ts';

/** What the model can be cut of, with usual settings (from memory): each can be set otherwise. */
export interface Material {
  readonly id: 'card' | 'plywood' | 'acrylic';
  readonly name: string;
  readonly kerf: number;
  readonly play: number;
  readonly pin: number;
  /** Smallest tooth that comes out sharp, mm along the row. */
  readonly tooth: number;
  readonly tells: string;
}

export const materials: readonly [Material, ...Material[]] = [
  {
    ...{ id: 'card', name: words.card, kerf: 0, play: 0.2, pin: 3, tooth: 3 },
    tells: words.knifeOrScissorsSplitPins,
  },
  {
    ...{ id: 'plywood', name: words.plywood, kerf: 0.2, play: 0.2, pin: 4, tooth: 2 },
    tells: words.laserOrFretsaw3Mm,
  },
  {
    ...{ id: 'acrylic', name: words.acrylic, kerf: 0.15, play: 0.2, pin: 4, tooth: 1.5 },
    tells: words.laser3MmThickM4,
  },
];

export const factors: readonly number[] = [1, 1.5, 2, 2.5, 3, 4];

/** The smallest tooth of the lever, mm of the brake; null for kinds without one. */
export function smallestTooth(
  brake: Brake,
): { readonly wide: number; readonly high: number } | null {
  const form = leverForm(brake);
  if (!form) return null;
  const steps = form.angles.slice(1).map((a, n) => a - (form.angles[n] as number));
  return { wide: form.toothRadius * Math.min(...steps), high: form.toothHeight };
}

/** The first factor at which a tooth can be cut of a material; the largest where none does. */
export function factorFor(brake: Brake, { tooth }: Material): number {
  const { wide } = smallestTooth(brake) ?? { wide: tooth };
  return factors.find((f) => f * wide >= tooth) ?? (factors.at(-1) as number);
}

export const settingsFor = (brake: Brake, material: Material): CutSettings => ({
  factor: factorFor(brake, material),
  kerf: material.kerf,
  play: material.play,
  pin: material.pin,
});
