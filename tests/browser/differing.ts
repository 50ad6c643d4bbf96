import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import pixelmatch from 'pixelmatch';
import { PNG } from 'pngjs';

/** Where pictures of what differs are left to be looked at. */
export const shots = fileURLToPath(new URL('shots', import.meta.url));

/** Difference of two colours that counts, as pixelmatch takes it: its own default. */
const COLOUR = 0.1;

/**
 * The share of two pictures of the same size that differs. Where it is more than `most`, both and their difference
 * stay as `NAME-actual.png`, `-expected.png` and `-difference.png`; else older ones of that name go.
 */
export function differing(name: string, actual: PNG, expected: PNG, most: number): number {
  const { width, height } = actual;
  const difference = new PNG({ width, height });
  const off = pixelmatch(actual.data, expected.data, difference.data, width, height, {
    threshold: COLOUR,
  });
  const share = off / (width * height);
  for (const [what, png] of Object.entries({ actual, expected, difference })) {
    const file = join(shots, `${name}-${what}.png`);
    if (share <= most) rmSync(file, { force: true });
    else {
      mkdirSync(shots, { recursive: true });
      writeFileSync(file, PNG.sync.write(png));
    }
  }
  return share;
}
