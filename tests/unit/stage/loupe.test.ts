import { expect, it } from 'vitest';
import { leverForm } from '../../../sim/index.ts';
import { distance } from '../../../ui/stage/geometry.ts';
import { loupe } from '../../../ui/stage/loupe.ts';
import { toPx } from '../../../ui/stage/view.ts';
import { inputFor, quayVan } from './bench.ts';

// Radii of the loupe on a laptop of 1366 px, 0.19 of a stage of 908, and on a phone of 390, 0.354 of it.
it.each([
  ['laptop', 172],
  ['phone', 138],
])('a tooth in the loupe of a %s is 14 px wide, and the one that counts is in it', (_, radius) => {
  const van = quayVan();
  const form = leverForm(van.brake);
  if (!form) throw new Error('a toothed lever is needed');
  const pitch = form.toothRadius * form.toothAngle;
  for (let tooth = 0; tooth <= van.brake.adjuster.teeth; tooth++) {
    const [, inside] = loupe(inputFor(van, { tooth }), { at: [200, 300], radius });
    if (!inside) throw new Error('no glass');
    expect(inside.view.scale * pitch).toBeGreaterThan(13.99);
    // Pointer under the tooth, and the numbers left whole, within the circle.
    const pointer = inside.shapes.find((s) => s.key === 'pointer');
    const [x, y] = [pointer?.place?.x ?? 0, pointer?.place?.y ?? 0];
    const at = toPx(inside.view, [form.pin[0] + x, form.pin[1] - form.toothRadius + y]);
    expect(distance(at, [200, 300]) / radius).toBeLessThan(0.55);
    for (const { at: number } of inside.labels) {
      expect(distance(toPx(inside.view, number), [200, 300])).toBeLessThan(radius - 14);
    }
    expect(inside.labels.length).toBeGreaterThan(0);
  }
});
