/**
 * Units. Inside the simulator: millimetre, tonne, second, hence newton, megapascal and
 * newton millimetre, coherent without conversion factors. Files hold trade units; the scene
 * reader multiplies by these factors once.
 */

/** kg to tonne. */
export const KG = 1e-3;
/** kg·mm² to tonne·mm². */
export const KG_MM2 = 1e-3;
/** Degree to radian. */
export const DEG = Math.PI / 180;
/** bar to MPa. */
export const BAR = 0.1;
/** km to mm. */
export const KM = 1e6;
/** km/h to mm/s. */
export const KMH = 1e6 / 3600;
/** J to N·mm. */
export const JOULE = 1e3;
/** Standard gravity, mm/s² (CGPM 1901: 9.80665 m/s²). */
export const GRAVITY = 9806.65;
export const PI = Math.PI;
