/** Surface of a lining. */
export type Surface = 'dry' | 'damp' | 'wet' | 'glazed' | 'greasy';

/**
 * Factors on the friction of a dry lining. Common practice without a published table: damp rust bloom
 * lifts friction for a few stops, by 40 to 60 % in shop experience; a film of water takes about half
 * to two thirds of it; a glazed face about a quarter; fluid or grease about half to six tenths. The
 * middle of each range is taken.
 */
export const surfaceFactor: Readonly<Record<Surface, number>> = {
  dry: 1,
  damp: 1.45,
  wet: 0.4,
  glazed: 0.75,
  greasy: 0.5,
};

/** How sure the factor is: said wherever it is used. */
export const surfaceSource = 'common practice';
