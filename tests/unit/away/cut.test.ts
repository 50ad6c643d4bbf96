import DxfParser, { type ICircleEntity, type ILwpolylineEntity } from 'dxf-parser';
import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { describe, expect, it } from 'vitest';
import benchBrake from '../../../scenes/bench-brake.json';
import farmTrailer from '../../../scenes/farm-trailer.json';
import ferryRunabout from '../../../scenes/ferry-runabout.json';
import { type Brake, balance, createRig, freshState, withAdjuster } from '../../../sim/index.ts';
import { cutDxf, DXF_LAYERS } from '../../../ui/away/cut/dxf.ts';
import { layOut } from '../../../ui/away/cut/layout.ts';
import { movesOf } from '../../../ui/away/cut/moves.ts';
import type { CutPart, CutSettings } from '../../../ui/away/cut/part.ts';
import { cutParts } from '../../../ui/away/cut/parts.ts';
import { CHECK_BAR, cutPdf, tilesOf } from '../../../ui/away/cut/pdf.ts';
import { CHORD, common, offset, sizeOf } from '../../../ui/away/cut/polygons.ts';
import { cutSvg } from '../../../ui/away/cut/svg.ts';
import { PAPERS, paperSizes } from '../../../ui/pieces/papers.ts';
import { mustRead, quay } from '../../brakes.ts';

const SET: CutSettings = { factor: 2, kerf: 0.2, play: 0.2, pin: 4 };
const van = quay().brake;
const bench = mustRead(benchBrake);
const trailer = mustRead(farmTrailer);
const runabout = mustRead(ferryRunabout);

const partsOf = (brake: Brake, set = SET): readonly CutPart[] => {
  const state = freshState(brake);
  return cutParts(brake, state, balance(createRig(brake), state, { pressure: 0, turning: 0 }), set);
};
const named = (parts: readonly CutPart[], id: string): CutPart =>
  parts.find((p) => p.id === id) as CutPart;

/** Area of a run of points by the shoelace formula, mm². */
const shoelace = (p: readonly { x: number; y: number }[]): number =>
  Math.abs(
    p.reduce((sum, a, i) => {
      const b = p[(i + 1) % p.length] as { x: number; y: number };
      return sum + a.x * b.y - b.x * a.y;
    }, 0) / 2,
  );

describe('the flat parts move as the mechanism', () => {
  it.each([
    ['quay van', van],
    ['bench brake', bench],
  ])('%s: every tooth is passed, taken and held, and drops where the engine has it', (_, brake) => {
    const moves = movesOf(brake, SET);
    expect(moves?.faults).toEqual([]);
    expect(moves?.teeth).toHaveLength(brake.adjuster.teeth);
    expect(moves?.slotFree).toBe(true);
    expect(moves?.windowFree).toBe(true);
    for (const { holds, most, off, seat } of moves?.teeth ?? []) {
      expect(holds).toBe(true);
      // Seven and a half eighths of the way up a straight flank it is lifted by that share of the tooth.
      expect(most).toBeGreaterThan(0.9);
      expect(most).toBeLessThan(1);
      expect(Math.abs(off)).toBeLessThan(0.01);
      // Both corners of a saw of 60° that a beam of 0.2 rounds: r (1/sin 30° − 1) at most, over 2 mm of tooth.
      expect(seat).toBeLessThan(0.1);
    }
  });

  it('the van’s last tooth drops where its crank has it: 12 (cos 70° − cos(70° + 20 · 2.39°)), twice as large', () => {
    const d = Math.PI / 180;
    const grown = 2 * 12 * (Math.cos(70 * d) - Math.cos((70 + 20 * 2.39) * d));
    const last = movesOf(van, SET)?.teeth.at(-1);
    expect(2 * (van.adjuster.growth[20] as number) + (last?.off ?? 1)).toBeCloseTo(grown, 2);
  });

  it('a beam as wide as a tooth is told, and so are a pin too thick for its slot and a lever that cannot rise', () => {
    expect(movesOf(van, { ...SET, factor: 1, kerf: 1.5 })?.faults.join()).toContain('stands off');
    expect(movesOf(van, { ...SET, play: -0.1 })?.slotFree).toBe(false);
    expect(movesOf(van, { ...SET, play: -0.1 })?.sound).toBe(false);
  });

  it('kinds without a toothed lever have no such check', () => {
    expect(movesOf(trailer, SET)).toBeNull();
    expect(movesOf(runabout, SET)).toBeNull();
  });
});

describe('the parts', () => {
  // In the reference pose the shoes stand on the drum, farther out than the lost motion lets the lever sit in
  // tooth 0: its disc and the window are asked at every tooth above.
  const glued = new Set(['block spacer', 'spacer block', 'front shoe disc']);
  it.each([
    ['quay van', van],
    ['bench brake', bench],
    ['farm trailer', trailer],
    ['ferry runabout', runabout],
    ['trailer with a toothed lever', withAdjuster(trailer, 'toothed lever')],
    ['runabout with a toothed lever', withAdjuster(runabout, 'toothed lever')],
  ])('%s: what lies in one height is side by side', (_, brake) => {
    const parts = partsOf(brake);
    // The second of two discs stands as high as the plate.
    const disc = parts.filter((p) => p.id === 'disc').map((p) => ({ ...p, layer: 2 }) as const);
    const all = [...parts, ...disc];
    const pairs = all.flatMap((a, i) => all.slice(i + 1).map((b) => [a, b] as const));
    const over = pairs
      .filter(([a, b]) => a.layer === b.layer && a.id !== b.id && !glued.has(`${a.id} ${b.id}`))
      .map(
        ([a, b]) =>
          [a.id, b.id, sizeOf(common(offset(a.area, -2 * CHORD * SET.factor), b.area))] as const,
      )
      // Faces that touch, each drawn by chords, share a sliver no thicker than two of them leave their arcs.
      .filter(([, , size]) => size > 0.05);
    expect(over).toEqual([]);
    expect(new Set(parts.map((p) => p.id)).size).toBe(parts.length);
  });

  it('areas and holes are those of the scene: ring, board, pins', () => {
    const parts = partsOf(van);
    // π (110² − 100²) · 2²: the rim is 10 mm thick on a bore of 200.
    expect(sizeOf(named(parts, 'drum').area) / (Math.PI * (110 ** 2 - 100 ** 2) * 4)).toBeCloseTo(
      1,
      3,
    );
    expect(sizeOf(named(parts, 'board').area)).toBeCloseTo((2 * 2 * 117) ** 2, 0);
    const rear = named(parts, 'rear shoe').holes;
    // Anchor (16, −78) and pivot (46, 68) of the scene, at twice its size; 4 mm pins with 0.2 of play.
    expect(rear).toContainEqual({ at: [32, -156], radius: 2.1, for: 'pin' });
    expect(rear).toContainEqual({ at: [92, 136], radius: 2.1, for: 'pin' });
    expect(named(parts, 'front shoe').holes).toContainEqual({
      at: [-32, -156],
      radius: 2.1,
      for: 'pin',
    });
    // No slit between table and lining: a shoe is one piece, and the van's window breaks through the web's edge.
    expect(named(parts, 'front shoe').area).toHaveLength(1);
    expect(named(parts, 'rear shoe').area).toHaveLength(1);
  });
});

describe('what is written', () => {
  const layout = layOut(partsOf(van), SET);

  it('the cut runs half a kerf outside: a ring’s two circles', () => {
    const ring = layout.pieces.find((p) => p.part.id === 'drum');
    const sizes = ring?.lines.map((p) => shoelace(p.map(([x, y]) => ({ x, y })))) ?? [];
    expect((sizes[0] as number) / (Math.PI * 220.1 ** 2)).toBeCloseTo(1, 3);
    expect((sizes[1] as number) / (Math.PI * 199.9 ** 2)).toBeCloseTo(1, 3);
  });

  it('DXF read back by another hand has the same outlines and holes, in millimetres', () => {
    const read = new DxfParser().parseSync(cutDxf(layout));
    expect(read?.header['$INSUNITS']).toBe(4);
    const lines = (read?.entities.filter((e) => e.layer === DXF_LAYERS.outlines) ??
      []) as ILwpolylineEntity[];
    const circles = (read?.entities.filter((e) => e.layer === DXF_LAYERS.holes) ??
      []) as ICircleEntity[];
    expect(lines.every((e) => e.type === 'LWPOLYLINE' && e.shape)).toBe(true);
    expect(circles.every((e) => e.type === 'CIRCLE')).toBe(true);
    const wanted = layout.pieces.flatMap((p) => p.lines);
    expect(lines).toHaveLength(wanted.length);
    lines.forEach((e, i) => {
      const own = shoelace((wanted[i] ?? []).map(([x, y]) => ({ x, y })));
      expect(Math.abs(shoelace(e.vertices) / own - 1)).toBeLessThan(1e-4);
    });
    const holes = layout.pieces.flatMap((p) => p.circles);
    expect(circles).toHaveLength(holes.length);
    circles.forEach((e, i) => {
      expect(e.radius).toBeCloseTo(holes[i]?.radius ?? 0, 3);
      expect(e.center.x).toBeCloseTo(holes[i]?.at[0] ?? 0, 3);
      expect(e.center.y).toBeCloseTo(holes[i]?.at[1] ?? 0, 3);
    });
  });

  it('SVG is as large in millimetres as its sheet, and has every cut', () => {
    const svg = cutSvg(layout, ['Quay van']);
    expect(svg).toContain(`width="${Number(layout.width.toFixed(4))}mm"`);
    const paths = [...svg.matchAll(/<path d="([^"]*)"/g)].map(([, d]) => d ?? '');
    expect(paths.join('').match(/M/g)).toHaveLength(layout.pieces.flatMap((p) => p.lines).length);
    expect(svg.match(/<circle/g)).toHaveLength(layout.pieces.flatMap((p) => p.circles).length);
  });

  it.each(paperSizes)(
    'pages of %s: as many as said, letters of 8 pt and more, a bar of 100 mm',
    async (paper) => {
      const grid = tilesOf(layout, paper);
      const data = new Uint8Array(cutPdf(layout, paper, 'Quay van, twice its size'));
      const read = await getDocument({ data, verbosity: 0 }).promise;
      expect(read.numPages).toBe(grid.tiles.length);
      const page = await read.getPage(1);
      const [, , wide, high] = page.view as [number, number, number, number];
      expect((wide / 72) * 25.4).toBeCloseTo(PAPERS[paper].width, 1);
      expect((high / 72) * 25.4).toBeCloseTo(PAPERS[paper].height, 1);
      const { items } = await page.getTextContent();
      const sizes = items.flatMap((t) =>
        'transform' in t && t.str.trim() ? [Math.abs(t.transform[3])] : [],
      );
      expect(sizes.length).toBeGreaterThan(2);
      expect(Math.min(...sizes)).toBeGreaterThanOrEqual(8);
      const ops = await page.getOperatorList();
      const widths = ops.fnArray.flatMap((fn, i) => {
        if (fn !== OPS.constructPath) return [];
        const [, , box] = ops.argsArray[i] as [unknown, unknown, ArrayLike<number> | null];
        return box ? [(((box[2] as number) - (box[0] as number)) / 72) * 25.4] : [];
      });
      expect(widths.filter((w) => Math.abs(w - CHECK_BAR) < 0.01)).toHaveLength(1);
    },
  );
});
