import { describe, expect, it } from 'vitest';
import { loupe } from '../../../ui/stage/loupe.ts';
import { mirrorDrawing } from '../../../ui/stage/mirror.ts';
import { drawBrake } from '../../../ui/stage/scene.ts';
import { toPx } from '../../../ui/stage/view.ts';
import { near } from '../../near.ts';
import { inputFor, pointsOf, quayVan } from './bench.ts';

const van = quayVan();
const input = {
  ...inputFor(van, { pressure: 4, layers: { comb: true, forces: true } }),
  caption: 'Caption',
};

describe('a right-hand wheel', () => {
  const left = drawBrake(input);
  const right = mirrorDrawing(left);

  it('has every point as far from the other edge of the stage', () => {
    const { width } = left.view;
    left.shapes.forEach((shape, i) => {
      const before = pointsOf(shape).map((p) => toPx(left.view, p));
      const after = pointsOf(right.shapes[i] as (typeof right.shapes)[0]).map((p) =>
        toPx(right.view, p),
      );
      expect(after.length).toBe(before.length);
      before.forEach(([x, y], n) => {
        near(after[n]?.[0] as number, width - x, { abs: 1e-9 }, `${shape.key} across`);
        near(after[n]?.[1] as number, y, { abs: 1e-9 }, `${shape.key} up`);
      });
    });
  });

  it('turns forward clockwise, as a wheel on the right does seen from outside', () => {
    const tip = (d: typeof left): number => {
      const arrow = d.shapes.find((s) => s.key === 'turn arrow');
      if (!arrow) throw new Error('no arrow');
      // The arrow's head is the only pair of corners beyond its arc.
      const xs = pointsOf(arrow).map(([x]) => x);
      return xs.reduce((a, b) => a + b, 0) / xs.length;
    };
    // Above the rim: counter-clockwise points left, clockwise right.
    expect(tip(left)).toBeLessThan(0);
    expect(tip(right)).toBeGreaterThan(0);
  });

  it('keeps the caption where it stood and puts the leading shoe on the right', () => {
    const at = (d: typeof left, key: string): number => {
      const label = d.labels.find((l) => l.key === key);
      if (!label) throw new Error(key);
      return toPx(d.view, label.at)[0] + label.dx;
    };
    near(at(right, 'caption'), at(left, 'caption'), { abs: 1e-9 }, 'caption');
    expect(at(left, 'role front 0')).toBeLessThan(left.view.width / 2);
    expect(at(right, 'role front 0')).toBeGreaterThan(left.view.width / 2);
  });

  it('keeps the loupe’s letter and its scale together', () => {
    const glass = loupe(input, { at: [200, 200], radius: 150 }).map(mirrorDrawing);
    const [letter, scale] = ['loupe name', 'loupe scale'].map((key) => {
      const drawing = glass.find((d) => d.labels.some((l) => l.key === key));
      const found = drawing?.labels.find((l) => l.key === key);
      if (!drawing || !found) throw new Error(key);
      expect(found.anchor).toBe('end');
      return toPx(drawing.view, found.at)[0] + found.dx;
    }) as [number, number];
    // On the other side of the middle than before, the scale within a letter of the letter.
    expect(scale).toBeGreaterThan(left.view.width / 2);
    expect(Math.abs(letter - scale)).toBeLessThan(40);
  });

  it('mirrored twice is what it was', () => {
    const twice = mirrorDrawing(right);
    expect(twice.labels).toEqual(left.labels.map((l) => ({ ...l, at: expect.anything() })));
    left.shapes.forEach((s, i) => {
      const before = pointsOf(s);
      pointsOf(twice.shapes[i] as typeof s).forEach(([x, y], n) => {
        near(x, before[n]?.[0] as number, { abs: 1e-9 }, s.key);
        near(y, before[n]?.[1] as number, { abs: 1e-9 }, s.key);
      });
    });
  });
});

it('a drum that stands gives the shoes their places, not roles', () => {
  const still = drawBrake(inputFor(van, { pressure: 4, turning: 0 }));
  const words = still.labels.map((l) => l.text);
  expect(words).toContain('Front shoe');
  expect(words).toContain('Rear shoe');
  expect(words.some((w) => /leading|trailing|drags|pushes/i.test(w))).toBe(false);
});
