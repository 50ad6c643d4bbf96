import { expect, it } from 'vitest';
import quayVan from '../../../scenes/quay-van.json';
import { namesDrawing } from '../../../ui/pieces/names-on-paper.ts';
import { Session } from '../../../ui/session.ts';
import { flatten } from '../../../ui/stage/flatten.ts';
import { shapeOf } from './bench.ts';

/** What is asked on the sheet of names must be told by its picture: roles and the way of turning need an arrow. */
it.each(['left', 'right'] as const)(
  'a %s wheel’s sheet of names shows which way its drum turns',
  (wheel) => {
    const session = Session.of(quayVan, true);
    session.lookAt(wheel);
    const drawing = namesDrawing(session);
    const points = flatten(shapeOf(drawing, 'turn arrow').path, 0.1).flatMap((l) => [...l.points]);
    const xs = points.filter((_, i) => i % 2 === 0);
    const ys = points.filter((_, i) => i % 2 === 1);
    // The arrow stands over the drum's top; its head is where its outline is thickest: at the end that is wider.
    const wide = (from: number, to: number): number => {
      const there = points.flatMap((_, i) =>
        i % 2 === 0 && (xs[i / 2] as number) >= from && (xs[i / 2] as number) <= to
          ? [Math.hypot(xs[i / 2] as number, ys[i / 2] as number)]
          : [],
      );
      return Math.max(...there) - Math.min(...there);
    };
    const [low, high] = [Math.min(...xs), Math.max(...xs)];
    const third = (high - low) / 3;
    const headLeft = wide(low, low + third) > wide(high - third, high);
    // Seen from outside a left-hand wheel turns against the clock going forward, so over its top to the left.
    expect(headLeft).toBe(wheel === 'left');
    expect(drawing.labels.filter((l) => l.style === 'number').length).toBeGreaterThan(10);
  },
);
