import { expect, it } from 'vitest';
import type { Brake } from '../../../sim/index.ts';
import { loupe, loupeData } from '../../../ui/stage/loupe.ts';
import { arcParts } from '../../../ui/stage/path.ts';
import { drawBrake } from '../../../ui/stage/scene.ts';
import { pathData, toSvg } from '../../../ui/stage/svg.ts';
import { fitView, toMm, toPx, zoomView } from '../../../ui/stage/view.ts';
import { themes } from '../../../ui/theme.ts';
import { inputFor, quayVan } from './bench.ts';

const van = quayVan();
const everything = inputFor(van, {
  pressure: 3,
  layers: { fan: 20, comb: true, forces: true, names: true, ghost: true, heat: true },
});

/** Throws unless tags are closed in order and attributes are quoted; returns how often each tag comes. */
function parse(xml: string): Map<string, number> {
  const open: string[] = [];
  const count = new Map<string, number>();
  const rest = xml.replace(
    /<(\/?)([a-zA-Z]+)((?:\s+[\w:-]+="[^"<]*")*)\s*(\/?)>/g,
    (_, end, name, __, empty) => {
      if (end) {
        if (open.pop() !== name) throw new Error(`</${name}> closes something else`);
      } else {
        count.set(name, (count.get(name) ?? 0) + 1);
        if (!empty) open.push(name);
      }
      return '';
    },
  );
  if (open.length > 0) throw new Error(`left open: ${open}`);
  if (/[<>]/.test(rest)) throw new Error(`not a tag: ${rest.match(/.{0,40}[<>].{0,40}/)?.[0]}`);
  return count;
}

it('is well-formed, names each hatch it uses, and holds no picture', () => {
  const lens = { at: [200, 200] as const, radius: 180 };
  const svg = toSvg([drawBrake(everything), ...loupe(everything, lens)], themes.board, {
    title: 'Quay van <pressed> & "shown"',
  });
  const tags = parse(svg);
  expect(tags.get('path') ?? 0).toBeGreaterThan(200);
  expect(tags.get('clipPath')).toBe(1);
  expect(tags.has('image')).toBe(false);
  const used = new Set([...svg.matchAll(/url\(#([^)]+)\)/g)].map((m) => m[1]));
  const made = new Set([...svg.matchAll(/id="([^"]+)"/g)].map((m) => m[1]));
  expect([...used].filter((id) => !made.has(id))).toEqual([]);
  expect(svg).not.toMatch(/NaN|undefined|Infinity/);
  expect(svg).toContain('&#60;pressed&#62;');
});

it('finds a planted fault', () => {
  expect(() => parse('<svg><g></svg>')).toThrow();
  expect(() => parse('<svg a=1></svg>')).toThrow();
});

it('writes arcs as arcs, long ones in pieces', () => {
  const view = { ...everything.view, scale: 2, origin: [100, 100] as const };
  const turn = 0.1;
  const [x, y] = [100 + 20 * Math.cos(turn), 100 - 20 * Math.sin(turn)].map((v) =>
    Number(v.toFixed(3)),
  );
  expect(pathData([['A', 0, 0, 10, 0, turn]], view)).toBe(`M120 100A20 20 0 0 0 ${x} ${y}`);
  expect(pathData([['A', 0, 0, 10, turn, 0]], view)).toBe(`M${x} ${y}A20 20 0 0 1 120 100`);
  const circle = pathData([['M', 10, 0], ['A', 0, 0, 10, 0, 2 * Math.PI], ['Z']], view);
  expect(circle.match(/A/g)?.length).toBe(arcParts(20, 2 * Math.PI));
  expect(circle).toMatch(/ 120 100Z$/);
});

it('draws other sound brakes: abutments, a screw strut, a wedge', () => {
  const { brake } = van;
  const heel = (side: 'front' | 'rear', normal: number) => ({
    ...brake.shoes[side],
    anchor: {
      kind: 'abutment' as const,
      at: brake.shoes[side].anchor.at,
      heelRadius: 9,
      normal,
      friction: 0.2,
      stiffness: 1e5,
    },
  });
  for (const kind of ['screw strut', 'wedge', 'incremental'] as const) {
    const other: Brake = {
      ...brake,
      shoes: { front: heel('front', 1.8), rear: heel('rear', 1.3) },
      adjuster: { ...brake.adjuster, kind, lever: null },
    };
    const drawing = drawBrake({ ...everything, brake: other });
    const svg = toSvg([drawing], themes.sheet);
    parse(svg);
    expect(svg).not.toMatch(/NaN|Infinity/);
    const parts = new Set(drawing.shapes.map((s) => s.part));
    expect(parts.has('abutment')).toBe(true);
    const setter = { 'screw strut': 'star wheel', wedge: 'wedge', incremental: 'toothed lever' };
    expect([...parts]).toContain(setter[kind]);
    expect(parts.has('keeper')).toBe(false);
    expect(loupe({ ...everything, brake: other }, { at: [200, 200], radius: 150 })).toHaveLength(3);
  }
});

it('the loupe says its magnification and the tooth', () => {
  const lens = { at: [322, 330] as const, radius: 268 };
  const view = { ...everything.view, scale: 2.62, origin: [968, 352] as const };
  const data = loupeData({ ...everything, view }, lens);
  expect(data.tooth).toBe(everything.state.tooth);
  expect(data.magnification).toBeCloseTo(268 / 21.2 / 2.62, 6);
  const texts = loupe({ ...everything, view }, lens).flatMap((d) => d.labels.map((l) => l.text));
  expect(texts).toContain('×4.8');
  expect(texts).toEqual(expect.arrayContaining(['0', '5', '10', '15', '20']));
});

it('views turn millimetres to pixels and back, and zoom about a point', () => {
  const view = fitView(van.brake, { width: 900, height: 700 });
  const [x, y] = toMm(view, toPx(view, [12, -34]));
  expect(x).toBeCloseTo(12, 9);
  expect(y).toBeCloseTo(-34, 9);
  const closer = zoomView(view, 2, [300, 200]);
  const held = toMm(view, [300, 200]);
  expect(toPx(closer, held)[0]).toBeCloseTo(300, 9);
  expect(closer.scale).toBeCloseTo(2 * view.scale, 9);
});
