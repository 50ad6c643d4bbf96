import type uPlot from 'uplot';

/** The plotting library: loaded with the first chart, since most pages show none. */
export type Plots = typeof uPlot;

/** The browser tells its language by a valid tag. */
function languageIsTag(): boolean {
  try {
    return Intl.getCanonicalLocales(navigator.language).length > 0;
  } catch {
    return false;
  }
}

/**
 * Some browsers take their language from the system as it stands there ("en-US@posix"), and the library
 * throws on it while it loads: meanwhile such a browser says English. The chart's numbers are our own.
 */
export async function loadPlots(): Promise<Plots> {
  if (languageIsTag()) return (await import('uplot')).default;
  Object.defineProperty(navigator, 'language', { configurable: true, value: 'en' });
  try {
    return (await import('uplot')).default;
  } finally {
    Reflect.deleteProperty(navigator, 'language');
  }
}
