import type { Yielding } from '../index.ts';

const parts: Readonly<Record<Yielding['part'], string>> = {
  'lever arm': 'the arm of the adjuster lever bends',
  'lever nose': 'the nose of the adjuster lever bends',
  'lever teeth': 'the lever’s tooth shears off',
  strut: 'the strut is crushed',
};

/** What gives way when the strut has to bear more than its weakest part can. */
export const yieldText = ({ part, force }: Yielding): string =>
  `More than the strut can bear: ${parts[part]} at about ${Math.round(force / 100) / 10} kN. No force beyond that can be told.`;
