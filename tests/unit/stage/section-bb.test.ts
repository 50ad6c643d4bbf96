import { describe, expect, it } from 'vitest';
import { freshState, lipFit, standingState } from '../../../sim/index.ts';
import { overlapBand, overlapTimes } from '../../../ui/stage/layers/overlap.ts';
import { rimRadius } from '../../../ui/stage/parts/drum.ts';
import type { Path } from '../../../ui/stage/path.ts';
import { type SectionInput, sectionBB, sectionPlaces } from '../../../ui/stage/section-bb.ts';
import { fitView } from '../../../ui/stage/view.ts';
import { near } from '../../near.ts';
import { quayVan } from './bench.ts';

const van = quayVan();
const { brake, rig } = van;
const second = standingState(rig, 'Second set');
const fit = lipFit(rig, second);
const input: SectionInput = {
  brake,
  overlap: fit.front.heel,
  lip: fit.height,
  lining: 4,
  slide: 0,
  caught: true,
  width: 440,
  height: 500,
  narrow: false,
};
const shape = (s: SectionInput, name: string) => {
  const found = sectionBB(s).shapes.find((x) => x.key === `section ${name}`);
  if (!found) throw new Error(`no ${name}`);
  return found;
};
/** Bounds of a path of straight lines as it stands. */
function bounds(path: Path, dx = 0) {
  const points = path.flatMap((c) => (c[0] === 'M' || c[0] === 'L' ? [[c[1] + dx, c[2]]] : []));
  const xs = points.map((p) => p[0] as number);
  const ys = points.map((p) => p[1] as number);
  return { x0: Math.min(...xs), x1: Math.max(...xs), y0: Math.min(...ys), y1: Math.max(...ys) };
}

describe('section B–B', () => {
  it('is true to scale along the axle', () => {
    const lining = bounds(shape(input, 'lining').path);
    expect(lining.x1 - lining.x0).toBe(brake.shoes.front.lining.width);
    const p = sectionPlaces(input);
    near(lining.x0 - p.lipEnd, brake.across.lipGap, { abs: 1e-12 });
    near(p.lipEnd - p.edge, brake.across.lipWidth, { abs: 1e-12 });
  });

  it('draws the steps ten times: lip, overlap; the lining itself at true thickness', () => {
    const p = sectionPlaces(input);
    near(p.bore, 10 * fit.height, { abs: 1e-12 });
    const lining = bounds(shape(input, 'lining').path);
    near(lining.y1, 10 * fit.front.heel, { abs: 1e-12 });
    near(lining.y1 - lining.y0, 4, { abs: 1e-12 });
    const overlap = bounds(shape(input, 'overlap').path);
    near(overlap.y1 - overlap.y0, 10 * fit.front.heel, { abs: 1e-12 });
  });

  it('pulled, the lip runs to the lining’s edge and takes the shoe along from there', () => {
    const { lipGap } = brake.across;
    const free = { ...input, slide: lipGap };
    expect(shape(free, 'drum').place?.x).toBe(lipGap);
    expect(shape(free, 'lining').place?.x).toBe(0);
    const on = { ...input, slide: lipGap + 5 };
    near(shape(on, 'lining').place?.x ?? Number.NaN, 5, { abs: 1e-12 });
    // Off: the shoe stays where it is.
    expect(shape({ ...on, caught: false, overlap: -0.05 }, 'lining').place?.x).toBe(0);
  });

  it('shows no overlap and no figure where the lining passes', () => {
    const clear = sectionBB({ ...input, overlap: -0.05 });
    expect(clear.shapes.some((s) => s.key === 'section overlap')).toBe(false);
    expect(clear.labels.some((l) => l.key === 'section value')).toBe(false);
    const value = sectionBB(input).labels.find((l) => l.key === 'section value');
    expect(value?.text).toBe('0.29');
  });

  it('keeps every label inside its picture, pulled or not', () => {
    for (const slide of [0, 6]) {
      const d = sectionBB({ ...input, slide });
      for (const l of d.labels) {
        const x = d.view.origin[0] + d.view.scale * l.at[0];
        const half = l.text.length * l.size * 0.55;
        const left = l.anchor === 'start' ? x : l.anchor === 'end' ? x - half : x - half / 2;
        expect(left, l.key).toBeGreaterThanOrEqual(0);
        expect(left + half, l.key).toBeLessThanOrEqual(input.width);
      }
    }
  });
});

describe('overlap band', () => {
  const view = fitView(brake, { width: 1000, height: 1000 });

  it('stands as high as the overlap times its magnification, at the angle where it is', () => {
    const { shapes, labels } = overlapBand(brake, fit, view);
    expect(overlapTimes(fit.greatest)).toBe(40);
    const edge = shapes.find((s) => s.key === 'overlap front edge');
    const radii = (edge?.path ?? []).flatMap((c) =>
      c[0] === 'M' || c[0] === 'L' ? [Math.hypot(c[1], c[2])] : [],
    );
    near(Math.max(...radii) - (rimRadius(brake) + 2.6), 40 * fit.front.greatest, { abs: 1e-9 });
    expect(labels.find((l) => l.key === 'overlap front heel value')?.text).toBe('0.29');
  });

  it('has no band where all is clear, and says so', () => {
    const clear = lipFit(rig, { ...second, tooth: 5 });
    const { shapes, labels } = overlapBand(brake, clear, view);
    expect(shapes.some((s) => s.key.endsWith('area') || s.key.endsWith('edge'))).toBe(false);
    expect(labels.filter((l) => l.text.endsWith('clear'))).toHaveLength(6);
    expect(labels.some((l) => /\d/.test(l.text))).toBe(false);
  });

  it('takes a smaller magnification when shoes are far too big, so that it stays on the stage', () => {
    const big = lipFit(rig, { ...freshState(brake, 100.3), tooth: 15 });
    expect(overlapTimes(big.greatest)).toBe(1);
    expect(overlapTimes(0.6)).toBe(20);
  });
});
