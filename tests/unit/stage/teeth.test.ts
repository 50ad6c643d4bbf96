import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  adjusterKinds,
  type Brake,
  createRig,
  freshState,
  type LeverForm,
  leverForm,
  leverMass,
  leverOutline,
  type Point,
  readSceneText,
  rest,
  withAdjuster,
} from '../../../sim/index.ts';
import { add, angleOf, apply, distance, IDENTITY } from '../../../ui/stage/geometry.ts';
import { blockOf, leverFrame } from '../../../ui/stage/lever.ts';
import { windowBox } from '../../../ui/stage/parts/shoe.ts';
import { windowFrame } from '../../../ui/stage/parts/strut.ts';
import { placesOf } from '../../../ui/stage/place.ts';
import { near } from '../../near.ts';

const names = ['quay-van', 'bench-brake', 'farm-trailer'] as const;
function brakeOf(name: string): Brake {
  const file = new URL(`../../../scenes/${name}.json`, import.meta.url);
  const read = readSceneText(readFileSync(file, 'utf8'));
  if (!read.ok) throw new Error(JSON.stringify(read.findings));
  return withAdjuster(
    read.brake,
    name === 'farm-trailer' ? 'toothed lever' : read.brake.adjuster.kind,
  );
}
const must = <T>(value: T | null): T => {
  if (value === null) throw new Error('a toothed lever is needed');
  return value;
};

/** How far the saw of the row stands off the pin in a direction, mm: where its outline is cut, by hand. */
function sawAt(row: readonly Point[], direction: number): number {
  let most = 0;
  row.forEach((p, i) => {
    const q = row[i + 1];
    if (!q) return;
    const [a, b] = [angleOf(p), angleOf(q)];
    const [from, to] = [Math.max(a, b), Math.min(a, b)];
    if (direction > from + 1e-12 || direction < to - 1e-12 || from - to > 1) return;
    const share = from === to ? 0 : (a - direction) / (a - b);
    const at: Point = [p[0] + share * (q[0] - p[0]), p[1] + share * (q[1] - p[1])];
    most = Math.max(most, distance(at, [0, 0]));
  });
  return most;
}

/** How deep the block's tip and its sloped side lie in the lever at a phase and lift, mm; negative: clear. */
function depth(brake: Brake, phase: number, lift: number): number {
  const form = must(leverForm(brake));
  const frame = must(leverFrame(brake, IDENTITY, phase, lift));
  const { tooth } = must(blockOf(brake));
  const { row } = leverOutline(form);
  const [foot, tip] = tooth as [Point, Point];
  let deepest = Number.NEGATIVE_INFINITY;
  for (let n = 0; n <= 40; n++) {
    const share = n / 40;
    const on: Point = [tip[0] + share * (foot[0] - tip[0]), tip[1] + share * (foot[1] - tip[1])];
    const from = add(add(form.pin, on), [frame.x, frame.y], -1);
    let direction = angleOf(from) - frame.angle;
    while (direction > Math.PI) direction -= 2 * Math.PI;
    while (direction < -Math.PI) direction += 2 * Math.PI;
    const saw = sawAt(row, direction);
    if (saw > 0) deepest = Math.max(deepest, saw - distance(from, [0, 0]));
  }
  return deepest;
}

describe.each(names)('lever and block of the %s', (name) => {
  const brake = brakeOf(name);
  const form: LeverForm = must(leverForm(brake));
  const h = form.toothHeight;

  it('the tip of the one tooth lies in the root of every tooth in turn', () => {
    for (let tooth = 0; tooth < brake.adjuster.teeth; tooth++) {
      // A hair on, so that the direction does not lie in the steep face.
      near(depth(brake, tooth + 1e-6, 0), 0, { abs: 1e-5 }, `tooth ${tooth}`);
    }
  });

  it('rides up the flank on its tip alone, and passes it at its own crest', () => {
    for (let tooth = 0; tooth < brake.adjuster.teeth; tooth++) {
      for (const f of [0.05, 0.3, 0.6, 0.9, 0.999]) {
        // The flank is a straight line, the lift a straight share: two hundredths of a millimetre apart at most.
        near(depth(brake, tooth + f, f * h), 0, { abs: 0.02 }, `tooth ${tooth} and ${f}`);
      }
      // A hair past the crest the next root is there: the lever has lost its flank by its whole height.
      if (tooth + 1 < brake.adjuster.teeth)
        expect(depth(brake, tooth + 1 + 1e-6, h)).toBeLessThan(-0.99 * h);
    }
  });

  it('slides square to the strut: the finger stays where the edge has it', () => {
    const nose = leverOutline(form).nose;
    const at = (lift: number) => apply(must(leverFrame(brake, IDENTITY, 2.4, lift)), nose)[0];
    expect(at(h)).toBe(at(0));
  });
});

it('the lever’s finger lies on the window’s edges: clamped on one, a tooth and the play further on the other', () => {
  for (const name of names) {
    const brake = brakeOf(name);
    const rig = createRig(brake);
    const form = must(leverForm(brake));
    const box = must(windowBox(brake));
    const { nose } = leverOutline(form);
    for (let tooth = 0; tooth < brake.adjuster.teeth; tooth++) {
      // Worn just so far that the shoes come back onto the strut.
      const grown = brake.adjuster.growth[tooth] ?? 0;
      const state = {
        ...freshState(brake, brake.drum.radiusNew + 0.3 * grown + 0.1),
        tooth,
      };
      const instant = rest(rig, state);
      expect(instant.strutForce).toBeGreaterThan(0);
      const places = placesOf(brake, instant);
      const [x] = apply(must(places.lever), nose);
      const edge = (at: number) => apply(windowFrame(brake, places), [at, 0])[0];
      near(x - form.window.x / 2, edge(box.left), { abs: 0.02 }, `${name}, tooth ${tooth}`);
      near(edge(box.right) - x - form.window.x / 2, brake.adjuster.lostMotion, {
        abs: 0.02,
      });
    }
  }
});

it('weighs what its outline holds: area by counting squares, steel of 7.85 g/cm³', () => {
  const form = must(leverForm(brakeOf('quay-van')));
  const { hole, outer } = leverOutline(form);
  const inside = (points: readonly Point[], [x, y]: Point): boolean => {
    let odd = false;
    points.forEach(([x1, y1], i) => {
      const [x2, y2] = points[(i + 1) % points.length] as Point;
      if (y1 > y !== y2 > y && x < x1 + ((y - y1) / (y2 - y1)) * (x2 - x1)) odd = !odd;
    });
    return odd;
  };
  const side = 0.1;
  let [area, polar] = [0, 0];
  for (let x = -35; x < 35; x += side) {
    for (let y = -35; y < 35; y += side) {
      if (!inside(outer, [x, y]) || inside(hole, [x, y])) continue;
      area += side * side;
      polar += side * side * (x * x + y * y);
    }
  }
  const found = leverMass(form);
  near(found.area, area, { rel: 0.002 });
  // Five millimetres thick, as the strut's path has it; 1 mm³ of steel is 7.85e-9 tonne.
  near(found.mass, area * 5 * 7.85e-9, { rel: 0.002 });
  near(found.inertia, polar * 5 * 7.85e-9, { rel: 0.002 });
});

it('every kind with such a lever has its form, the others have none', () => {
  for (const kind of adjusterKinds) {
    const form = leverForm(withAdjuster(brakeOf('quay-van'), kind));
    expect(form === null).toBe(kind === 'screw strut' || kind === 'wedge');
  }
});
