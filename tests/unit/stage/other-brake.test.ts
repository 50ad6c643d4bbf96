import { describe, expect, it } from 'vitest';
import { createRig, type Point } from '../../../sim/index.ts';
import { flatten } from '../../../ui/stage/flatten.ts';
import { apply, distance, IDENTITY } from '../../../ui/stage/geometry.ts';
import { placesOf } from '../../../ui/stage/place.ts';
import { type BrakeDrawing, drawBrake } from '../../../ui/stage/scene.ts';
import type { Shape } from '../../../ui/stage/shapes.ts';
import { toSvg } from '../../../ui/stage/svg.ts';
import { fitView } from '../../../ui/stage/view.ts';
import { themes } from '../../../ui/theme.ts';
import { type AnyBrake, built } from '../../any-brake.ts';
import { near } from '../../near.ts';
import { inputFor, quayVan, shapeOf } from './bench.ts';

/** Nearly twice the size of the first teaching brake, heels on abutments, another adjuster. */
const large: AnyBrake = {
  radius: 190,
  friction: 0.3,
  width: 0.3,
  modulus: 500,
  thickness: 8,
  from: -58,
  to: 44,
  pinX: 0.2,
  pinY: -0.76,
  toeX: 0.3,
  toeY: 0.74,
  table: 3,
  web: 7,
  depth: 0.2,
  spring: 350,
  holdDown: 30,
  cupFriction: 0,
  ground: 1,
  pressure: 4,
  wear: [0, 0, 0],
  abutment: { slope: 8, friction: 0.2 },
};

const { brake, state } = built(large);
const bench = { brake, rig: createRig(brake) };
const view = fitView(brake, { width: 1370, height: 992, band: 30 });
const released = inputFor(bench, { state, view });
const pressed = inputFor(bench, { state, view, pressure: 4 });
const drawing = drawBrake(pressed);

/** Corner and arc points where a shape stands. */
function outline(shape: Shape): Point[] {
  return flatten(shape.path, 0.02).flatMap(({ points }) =>
    Array.from({ length: points.length / 2 }, (_, i) =>
      apply(shape.place ?? IDENTITY, [points[2 * i] as number, points[2 * i + 1] as number]),
    ),
  );
}
const radii = (shape: Shape): number[] => outline(shape).map((p) => distance(p, [0, 0]));
/** Groups in painting order, each once, from where it is painted first. */
const order = (d: BrakeDrawing): string[] => [...new Set(d.shapes.map((s) => s.group))];
const partsIn = (d: BrakeDrawing): Set<string> => new Set(d.shapes.flatMap((s) => s.part ?? []));

describe('another sound brake: 380 mm, on abutments, incremental', () => {
  it('is painted from the plate outward, springs last', () => {
    const list = order(drawing);
    const behind = (a: string, b: string) => {
      expect([a, b].every((g) => list.includes(g))).toBe(true);
      expect(list.indexOf(a)).toBeLessThan(list.indexOf(b));
    };
    behind('plate', 'hub');
    behind('hub', 'shoe');
    behind('shoe', 'drum');
    behind('drum', 'cylinder');
    behind('cylinder', 'anchors');
    behind('anchors', 'strut');
    // The brake's own springs, not the coil around the cable.
    expect(drawing.shapes.filter((s) => s.part).at(-1)?.part).toMatch(/spring$/);
  });

  it('has every part of such a brake and none of the other kinds', () => {
    const parts = partsIn(drawing);
    for (const part of [
      'plate',
      'access hole',
      'hub',
      'drum',
      'web',
      'table',
      'lining',
      'hold-down',
      'cylinder',
      'bleed port',
      'piston',
      'cup',
      'boot',
      'cup spring',
      'fluid',
      'strut',
      'toothed lever',
      'parking lever',
      'cable',
      'abutment',
    ])
      expect([part, parts.has(part)]).toEqual([part, true]);
    for (const part of ['anchor pin', 'keeper', 'star wheel', 'wedge'])
      expect([part, parts.has(part)]).toEqual([part, false]);
  });

  it('the rim is a ring of the drum as it is and as thick as the scene tells', () => {
    const r = radii(shapeOf(drawing, 'drum drum 0'));
    near(Math.max(...r), 190 + brake.drum.rim, { abs: 0.03 });
    near(Math.min(...r), pressed.instant.drumRadius, { abs: 0.03 });
  });

  it('the new linings are rings of 8 mm on the drum’s radius, over 102 degrees', () => {
    for (const side of ['front', 'rear'] as const) {
      const own = drawing.shapes.find((s) => s.key === `shoe ${side} lining 0`);
      if (!own) throw new Error('no lining');
      const flat = radii({ ...own, place: IDENTITY });
      near(Math.max(...flat), 190, { abs: 0.05 });
      near(Math.min(...flat), 182, { abs: 0.05 });
      const turns = outline({ ...own, place: IDENTITY }).map(([x, y]) =>
        Math.atan2(y, Math.abs(x)),
      );
      near(Math.max(...turns), (44 * Math.PI) / 180, { abs: 1e-3 });
      near(Math.min(...turns), (-58 * Math.PI) / 180, { abs: 1e-3 });
    }
  });

  it('the shoes stand on their abutments, and the pressed ones have gone outward', () => {
    for (const side of ['front', 'rear'] as const) {
      const [x] = apply(placesOf(brake, pressed.instant).shoes[side], brake.shoes[side].toe);
      const [at] = apply(placesOf(brake, released.instant).shoes[side], brake.shoes[side].toe);
      expect(Math.abs(x)).toBeGreaterThan(Math.abs(at));
      // The block's flat touches the heel's round: its distance from the heel's centre is the radius.
      const { anchor } = brake.shoes[side];
      if (anchor.kind !== 'abutment') throw new Error('on a pin');
      const block = drawing.shapes.find((s) => s.part === 'abutment' && s.key.includes(side));
      const n: Point = [Math.cos(anchor.normal), Math.sin(anchor.normal)];
      const heights = outline(block as Shape).map(
        ([px, py]) => (px - anchor.at[0]) * n[0] + (py - anchor.at[1]) * n[1],
      );
      near(Math.max(...heights), -anchor.heelRadius, { abs: 1e-9 });
    }
  });

  it('nothing of the solid brake reaches over the rim or the plate', () => {
    const most = Math.max(190 + brake.drum.rim, brake.look.plateRadius) + 0.05;
    const solid = drawing.shapes.filter((s) => s.part && s.part !== 'cable');
    for (const s of solid) expect([s.key, Math.max(...radii(s)) <= most]).toEqual([s.key, true]);
  });

  it('is the same list each time, and the same text of a picture', () => {
    const again = drawBrake(inputFor(bench, { state, view, pressure: 4 }));
    expect(again.shapes).toEqual(drawing.shapes);
    expect(toSvg([again], themes.sheet)).toBe(toSvg([drawing], themes.sheet));
  });

  it('is not the first teaching brake drawn again', () => {
    const first = drawBrake(inputFor(quayVan(), { pressure: 4 }));
    expect(partsIn(first).has('anchor pin')).toBe(true);
    near(Math.max(...radii(shapeOf(first, 'drum drum 0'))), 110, { abs: 0.03 });
  });
});
