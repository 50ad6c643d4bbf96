import { describe, expect, it } from 'vitest';
import { freshState, gapsOf } from '../../../sim/index.ts';
import { distance } from '../../../ui/stage/geometry.ts';
import { bandRadius } from '../../../ui/stage/layers/band.ts';
import { COMB_SCALE } from '../../../ui/stage/layers/comb.ts';
import { FORCE_SCALE, forceText } from '../../../ui/stage/layers/forces.ts';
import { drawBrake } from '../../../ui/stage/scene.ts';
import { near } from '../../near.ts';
import { inputFor, pointsOf, quayVan, shapeOf } from './bench.ts';

const van = quayVan();
const { brake } = van;

describe('gap fan', () => {
  it.each([1, 20, 40] as const)('stands as high as the gap times %i', (fan) => {
    const input = inputFor(van, { layers: { fan } });
    const drawing = drawBrake(input);
    for (const side of ['front', 'rear'] as const) {
      const { gap, angle } = input.instant.shoes[side];
      const edge = pointsOf(shapeOf(drawing, `fan ${side} edge`));
      for (const p of edge) {
        const turn = Math.atan2(p[1], p[0]);
        const at = turn < (angle[0] as number) - 0.1 ? turn + 2 * Math.PI : turn;
        const nearest = angle.reduce(
          (best, a, i) => (Math.abs(a - at) < Math.abs((angle[best] as number) - at) ? i : best),
          0,
        );
        const height = distance(p, [0, 0]) - bandRadius(brake);
        // Between two elements the gap changes by less than this.
        near(height / fan, gap[nearest] as number, { abs: 0.012 });
      }
      const shown = gapsOf(brake.shoes[side], input.instant.shoes[side]);
      const label = drawing.labels.find((l) => l.key === `fan ${side} centre`);
      expect(label?.text).toBe(shown.centre.toFixed(2));
    }
  });

  it('is gone where the lining touches', () => {
    const state = { ...freshState(brake), tooth: 2 };
    const drawing = drawBrake(inputFor(van, { pressure: 4, layers: { fan: 20 }, state }));
    expect(drawing.shapes.filter((s) => s.group === 'fan')).toEqual([]);
  });
});

describe('roles', () => {
  const forward = drawBrake(inputFor(van, { pressure: 4, layers: { comb: true, forces: true } }));
  const backward = drawBrake(
    inputFor(van, { pressure: 4, turning: -1, layers: { comb: true, forces: true } }),
  );

  it('swap sides when the drum turns backward, and colour and form go with them', () => {
    for (const [drawing, lead, trail] of [
      [forward, 'front', 'rear'],
      [backward, 'rear', 'front'],
    ] as const) {
      const solid = shapeOf(drawing, `comb ${lead} bars`);
      const open = shapeOf(drawing, `comb ${trail} bars`);
      expect([solid.role, solid.style.fill]).toEqual(['leading', 'lead']);
      expect([open.role, open.style.fill, open.style.stroke]).toEqual([
        'trailing',
        'sheet',
        'trail',
      ]);
      expect(shapeOf(drawing, `comb ${trail} envelope`).style.dash).toBeDefined();
      expect(shapeOf(drawing, `comb ${lead} envelope`).style.dash).toBeUndefined();
      const words = (side: string) => drawing.labels.find((l) => l.key === `role ${side} 0`)?.text;
      expect([words(lead), words(trail)]).toEqual(['Leading shoe', 'Trailing shoe']);
    }
  });

  it('leave the shoes in their own material', () => {
    for (const side of ['front', 'rear']) {
      const web = `shoe ${side} web 0`;
      expect(shapeOf(backward, web).style).toEqual(shapeOf(forward, web).style);
      expect(shapeOf(forward, web).role).toBeUndefined();
    }
  });

  it('turn the drag and its arrow around', () => {
    const head = (d: typeof forward) => pointsOf(shapeOf(d, 'drag front'))[1]?.[1] ?? Number.NaN;
    const tail = (d: typeof forward) => pointsOf(shapeOf(d, 'drag front'))[0]?.[1] ?? Number.NaN;
    // Seen on the left of the brake, forward turning drags downward.
    expect(head(forward)).toBeLessThan(tail(forward));
    expect(head(backward)).toBeGreaterThan(tail(backward));
  });
});

it('the comb is as high as the pressure and says its peak', () => {
  const input = inputFor(van, { pressure: 4, layers: { comb: true } });
  const drawing = drawBrake(input);
  const highest = Math.max(...input.instant.shoes.front.pressure);
  const reach = Math.max(
    ...pointsOf(shapeOf(drawing, 'comb front envelope')).map((p) => distance(p, [0, 0])),
  );
  near(reach - bandRadius(brake), COMB_SCALE * highest, { rel: 0.002 });
  expect(drawing.labels.find((l) => l.key === 'peak front')?.text).toBe(
    `${highest.toFixed(2)}\u00a0MPa`,
  );
});

it('force arrows have one scale', () => {
  const input = inputFor(van, { pressure: 4, layers: { forces: true } });
  const drawing = drawBrake(input);
  const force = Math.hypot(...input.instant.shoes.front.anchorForce);
  const arrow = pointsOf(shapeOf(drawing, 'anchor front'));
  const tip = arrow[3] as readonly [number, number];
  near(distance(tip, brake.shoes.front.anchor.at), FORCE_SCALE * force, { rel: 1e-9 });
  expect(forceText(1704)).toBe('1.70\u00a0kN');
  expect(forceText(567)).toBe('570\u00a0N');
  expect(forceText(996)).toBe('1.00\u00a0kN');
});

it('a locked brake shows no force and no pressure', () => {
  const input = inputFor(van, { pressure: 4, layers: { forces: true, comb: true } });
  const locked = drawBrake({ ...input, instant: { ...input.instant, locked: 'front' } });
  expect(locked.shapes.filter((s) => s.group === 'forces' || s.group === 'comb')).toEqual([]);
});

it('heat dots grow with the temperature', () => {
  const input = inputFor(van, { layers: { heat: true } });
  const share = (temperature: number) => {
    const drawing = drawBrake({ ...input, state: { ...input.state, temperature } });
    const { hatch } = shapeOf(drawing, 'heat drum').style;
    return typeof hatch === 'object' ? hatch.dots : Number.NaN;
  };
  expect(share(100)).toBeLessThan(share(250));
  expect(share(250)).toBeLessThan(share(450));
});

it('tells finite numbers only, whatever is pressed', () => {
  for (const turning of [-1, 0, 1] as const) {
    for (let pressure = 0; pressure < 8; pressure += 0.23) {
      const layers = { comb: true, forces: true, fan: 20, names: true } as const;
      const drawing = drawBrake(inputFor(van, { pressure, turning, layers }));
      for (const { at, dx, dy } of drawing.labels) {
        expect([...at, dx, dy].every(Number.isFinite)).toBe(true);
      }
      for (const { path } of drawing.shapes) {
        expect(path.flat().every((v) => typeof v === 'string' || Number.isFinite(v))).toBe(true);
      }
    }
  }
});

it('no force’s value stands without an arrow that is longer than its head', () => {
  // The released shoes stand on their pins with 130 N: 1.6 mm at 12.5 mm a kilonewton, a stub.
  const lengths = (pressure?: number): number[] => {
    const press = pressure === undefined ? {} : { pressure };
    const { shapes, labels } = drawBrake(
      inputFor(quayVan(), { ...press, layers: { forces: true } }),
    );
    const values = labels.filter((l) => l.style === 'force').map((l) => l.key);
    const arrows = shapes.filter((s) => s.group === 'forces');
    expect(arrows.map((s) => s.key).sort()).toEqual(values.sort());
    return labels
      .filter((l) => l.style === 'force')
      .map((l) => Number.parseFloat(l.text) * (l.text.endsWith('kN') ? 12.5 : 0.0125));
  };
  expect(lengths()).toEqual([]);
  for (const pressure of [0.6, 0.8, 1, 2, 4]) {
    expect(Math.min(...lengths(pressure), Number.POSITIVE_INFINITY)).toBeGreaterThan(3);
  }
});
