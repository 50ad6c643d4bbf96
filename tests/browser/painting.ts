import type { Page } from 'playwright-core';

/** Counts what is painted, by whichever way the stage is. Runs in the page, before its own scripts. */
export function countPainting(): void {
  const counted = { strokes: 0 };
  Object.assign(globalThis, { counted });
  const watch = (of: object, names: readonly string[]): void => {
    for (const name of names) {
      const real = Reflect.get(of, name) as (...args: unknown[]) => unknown;
      Reflect.set(of, name, function (this: unknown, ...args: unknown[]) {
        counted.strokes++;
        return real.apply(this, args);
      });
    }
  };
  const pen = ['fill', 'stroke', 'fillRect', 'strokeRect', 'clearRect', 'drawImage', 'fillText'];
  watch(CanvasRenderingContext2D.prototype, pen);
  watch(WebGL2RenderingContext.prototype, ['drawElements', 'drawArrays']);
}

/** Calls since the last time that it was asked. */
export const painted = (page: Page): Promise<number> =>
  page.evaluate(() => {
    const { counted } = globalThis as unknown as { counted: { strokes: number } };
    const { strokes } = counted;
    counted.strokes = 0;
    return strokes;
  });
