import { expect, it, vi } from 'vitest';
import quayVan from '../../../scenes/quay-van.json';
import type { Point } from '../../../sim/index.ts';
import { show } from '../../../ui/record/guest.ts';
import type { Shape } from '../../../ui/stage/shapes.ts';
import { near } from '../../near.ts';

/** All forces on each shoe as arrows on the stage: head to tail, to one scale that is told, and closing. */

vi.mock('uplot', () => ({ default: class {} }));
vi.stubGlobal('matchMedia', () => ({ matches: false, addEventListener: () => undefined }));
const { Session } = await import('../../../ui/session.ts');
const { stations } = await import('../../../ui/stations/index.ts');
const { drawStage } = await import('../../../ui/app/stage-drawing.ts');
await import('../../../ui/app/forces-beside.ts');
const { barOf } = await import('../../../ui/stage/polygons.ts');

const pointsOf = ({ path }: Shape): Point[] =>
  path.flatMap((c): Point[] => (c[0] === 'M' || c[0] === 'L' ? [[c[1], c[2]]] : []));

/** Tail and tip of an arrow by its outline: it begins with one side of its tail, its tip is the fourth corner. */
function ends(arrow: Shape): readonly [Point, Point] {
  const p = pointsOf(arrow);
  const [a, b, tip] = [p[0], p[6], p[3]] as [Point, Point, Point];
  return [[(a[0] + b[0]) / 2, (a[1] + b[1]) / 2], tip];
}

async function drawn(wheel: 'left' | 'right', bar: number, width = 885, height = 690) {
  const session = Session.of(quayVan, true);
  session.do(show, 'apply');
  session.toggle('polygons');
  session.lookAt(wheel);
  if (bar > 0) session.press(bar);
  for (let i = 0; i < 240; i++) session.frame(1 / 60);
  const station = await stations[0].load();
  const zoom = { factor: 1, dx: 0, dy: 0 };
  const size = width < 500 ? 'narrow' : 'middle';
  const at = { session, station, width, height, foot: 50, size, zoom } as const;
  const { drawings } = drawStage(at);
  const mine = drawings.find((d) => d.shapes.some((s) => s.key === 'polygon ground'));
  if (!mine) throw new Error('the polygons are drawn');
  const arrows = (side: 'front' | 'rear') =>
    mine.shapes.filter((s) => new RegExp(`^polygon ${side} \\d+$`).test(s.key)).map(ends);
  const scale = mine.shapes.find((s) => s.key === 'polygon scale');
  const xs = scale ? pointsOf(scale).map((p) => p[0]) : [];
  const newton = Number.parseFloat(mine.labels.find((l) => l.key === 'polygon scale')?.text ?? '');
  return { session, mine, arrows, perNewton: (Math.max(...xs) - Math.min(...xs)) / newton };
}
const length = ([a, b]: readonly [Point, Point]): number => Math.hypot(b[0] - a[0], b[1] - a[1]);

it.each(['left', 'right'] as const)(
  '%s-hand wheel: each arrow begins where the one before ended, and the last ends at the first',
  async (wheel) => {
    const { arrows, mine } = await drawn(wheel, 40);
    for (const side of ['front', 'rear'] as const) {
      const all = arrows(side);
      expect(all.length).toBeGreaterThan(5);
      all.forEach(([tail], i) => {
        const [, tip] = all.at(i - 1) as readonly [Point, Point];
        // Those of less than a third of a px are not drawn; of a brake at rest nothing else is left over.
        near(Math.hypot(tip[0] - tail[0], tip[1] - tail[1]), 0, { abs: 0.7 }, `${side} ${i}`);
      });
      const head = mine.labels.find((l) => l.key === `polygon head ${side}`)?.text ?? '';
      expect(head.replace('\u00a0', ' ')).toMatch(/^(Front|Rear) shoe, left over \d+\.\d N$/);
      near(Number(/over ([\d.]+)/.exec(head)?.[1]), 0, { abs: 1 }, 'N left over');
    }
  },
);

it('arrows are to the scale that is told: the piston’s is pressure times area, the drum’s drag is friction times pressure', async () => {
  const { arrows, perNewton, session } = await drawn('left', 40);
  // 4 MPa on a bore of 19.05 mm: p·π·d²/4, by hand 1 140.1 N.
  const piston = (4 * Math.PI * 19.05 ** 2) / 4;
  const [first] = arrows('front');
  near(length(first as readonly [Point, Point]) / perNewton, piston, { rel: 0.002 }, 'N');
  const { normalForce, frictionForce } = session.instant().shoes.front;
  const sizes = arrows('front').map((a) => length(a) / perNewton);
  for (const force of [normalForce, frictionForce])
    expect(Math.min(...sizes.map((n) => Math.abs(n / Math.hypot(...force) - 1)))).toBeLessThan(
      0.002,
    );
  // Coulomb's law on each element: the resultants of a lining that slides stand as 0.38 to 1.
  near(Math.hypot(...frictionForce) / Math.hypot(...normalForce), 0.38, { rel: 1e-6 });
});

it('a right-hand wheel’s polygon is the mirror image, like its brake', async () => {
  const [l, r] = [await drawn('left', 40), await drawn('right', 40)];
  const way = ({ arrows }: typeof l, i: number): number => {
    const [a, b] = arrows('front')[i] as readonly [Point, Point];
    return b[0] - a[0];
  };
  near(way(r, 0), -way(l, 0), { rel: 1e-6 });
});

it('tells a scale of 1, 2 or 5 at a power of ten that fits', () => {
  expect(barOf(0.05, 100)).toBe(2000);
  expect(barOf(0.11, 100)).toBe(500);
  expect(barOf(0.9, 100)).toBe(100);
});

it('is told of in words where no force is: a shoe that locks', async () => {
  const { shoes, ...rest } = structuredClone(quayVan);
  for (const shoe of [shoes.front, shoes.rear]) shoe.lining.friction = 0.8;
  const session = Session.of({ ...rest, shoes }, true);
  session.toggle('polygons');
  session.press(40);
  for (let i = 0; i < 60; i++) session.frame(1 / 60);
  const station = await stations[0].load();
  const zoom = { factor: 1, dx: 0, dy: 0 };
  const at = { session, station, width: 885, height: 690, foot: 50, size: 'middle', zoom } as const;
  const texts = drawStage(at).drawings.flatMap((d) => d.labels.map((x) => x.text));
  expect(texts).toContain('A shoe locks: no force is told');
});
