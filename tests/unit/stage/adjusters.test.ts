import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  adjusterKinds,
  type Brake,
  createRig,
  freshState,
  leverForm,
  type Point,
  readSceneText,
  rest,
  withAdjuster,
} from '../../../sim/index.ts';
import { apply, distance } from '../../../ui/stage/geometry.ts';
import { partAt } from '../../../ui/stage/hit.ts';
import { loupe } from '../../../ui/stage/loupe.ts';
import { drawingOf } from '../../../ui/stage/parts/adjuster.ts';
import { tipTravel } from '../../../ui/stage/parts/hot-lock.ts';
import { screwStep } from '../../../ui/stage/parts/screw-strut.ts';
import { liftLimit } from '../../../ui/stage/parts/strut.ts';
import { webRadius } from '../../../ui/stage/parts/web.ts';
import { wedgeFlank } from '../../../ui/stage/parts/wedge.ts';
import { placesOf } from '../../../ui/stage/place.ts';
import { drawBrake } from '../../../ui/stage/scene.ts';
import { near } from '../../near.ts';
import { inputFor, pointsOf, quayVan, type Setting, shapeOf } from './bench.ts';

const names = ['quay-van', 'bench-brake', 'farm-trailer', 'ferry-runabout'] as const;

function brakeOf(name: string): Brake {
  const file = new URL(`../../../scenes/${name}.json`, import.meta.url);
  const read = readSceneText(readFileSync(file, 'utf8'));
  if (!read.ok) throw new Error(JSON.stringify(read.findings));
  return read.brake;
}

const bench = (brake: Brake) => ({ brake, rig: createRig(brake) });

function drawn(brake: Brake, tooth: number, more: Setting = {}, temperature = 20) {
  const state = { ...freshState(brake), tooth, temperature };
  const input = inputFor(bench(brake), { state, ...more });
  return { input, drawing: drawBrake(input) };
}

/** Linings worn evenly by what gives the strut room for a tooth. */
function wornFor(brake: Brake, tooth: number) {
  const depth = ((brake.adjuster.growth[tooth] ?? 0) * 1.3) / 2;
  const fresh = freshState(brake);
  const front = new Float64Array(fresh.wear.front.length).fill(depth);
  return { ...fresh, tooth, wear: { front, rear: front.slice() } };
}

const xs = (points: readonly Point[]): number[] => points.map(([x]) => x);

describe('every kind on every teaching brake', () => {
  const cases = names.flatMap((name) => adjusterKinds.map((kind) => [name, kind] as const));
  it.each(cases)('%s, %s: sound shapes, and every name on its part', (name, kind) => {
    const own = brakeOf(name);
    for (const hotLock of [120, Number.POSITIVE_INFINITY]) {
      const brake = withAdjuster(own, kind, { hotLock });
      for (const share of [0, 0.5, 1]) {
        const tooth = Math.floor(brake.adjuster.teeth * share);
        for (const temperature of [20, 250]) {
          const state = { ...wornFor(brake, tooth), temperature };
          const input = inputFor(bench(brake), { state, layers: { names: true } });
          const drawing = drawBrake(input);
          const keys = drawing.shapes.map((s) => s.key);
          expect(new Set(keys).size).toBe(keys.length);
          const glass = loupe(input, { at: [200, 200], radius: 180 });
          for (const { path } of [...drawing.shapes, ...glass.flatMap((d) => d.shapes)]) {
            expect(path.flat().every((v) => typeof v === 'string' || Number.isFinite(v))).toBe(
              true,
            );
          }
          const bare = drawBrake({ ...input, layers: {} });
          const places = placesOf(brake, input.instant, liftLimit(brake, temperature));
          const spots = drawingOf(brake).spots(brake, input.instant, places);
          const locks = spots.filter((s) => s.part === 'hot lock');
          expect(locks).toHaveLength(hotLock === 120 ? 1 : 0);
          for (const { part } of spots) expect(bare.shapes.some((s) => s.part === part)).toBe(true);
          const missed = spots.filter((s) => partAt(bare, s.at)?.part !== s.part);
          // A hair-thin strip bends away from under its own dot, springs lie over what they cross.
          const wrong = missed.filter((s) => !s.part.endsWith('spring') && s.part !== 'hot lock');
          expect(wrong.map((s) => s.part)).toEqual([]);
        }
      }
    }
  });
});

describe('star wheel', () => {
  const brake = brakeOf('farm-trailer');

  it('its edges stand at R·sin of 18° steps about the strut, the tip on one of them', () => {
    const { drawing } = drawn(brake, 37);
    const edges = pointsOf(shapeOf(drawing, 'strut star wheel 1'));
    const body = pointsOf(shapeOf(drawing, 'strut star wheel 0')).map(([, y]) => y);
    const [low, high] = [Math.min(...body), Math.max(...body)];
    const middle = (low + high) / 2;
    const radius = (high - low) / 2;
    near(radius, 11, { abs: 1e-9 });
    const step = Math.PI / 10;
    for (const [, y] of edges) {
      const teeth = (Math.asin((y - middle) / radius) + step / 2) / step;
      near(teeth, Math.round(teeth), { abs: 1e-6 });
    }
    // On the visible half: nine edges, each a line of two points.
    expect(edges.length).toBeGreaterThanOrEqual(18);
  });

  it('the sleeve moves off the wheel by what the strut grows', () => {
    const gap = (tooth: number) => {
      const { drawing } = drawn(brake, tooth, { state: wornFor(brake, tooth) });
      const wheel = Math.max(...xs(pointsOf(shapeOf(drawing, 'strut star wheel 0'))));
      const sleeve = Math.min(...xs(pointsOf(shapeOf(drawing, 'strut sleeve 0'))));
      return sleeve - wheel;
    };
    // Thread 1.0 mm, 20 teeth a turn: 200 teeth are ten turns.
    near(gap(200) - gap(0), 10, { abs: 1e-9 });
    near(gap(7) - gap(6), 0.05, { abs: 1e-9 });
  });

  it('the lever turns by the way over the fork, arms 29 to 8, and is back at rest', () => {
    const state = wornFor(brake, 40);
    const looser = { ...state, tooth: 30 };
    const { input, drawing } = drawn(brake, 30, { state: looser, pressure: 4 });
    const over = input.instant.separation - input.instant.strutLength;
    expect(over).toBeGreaterThan(0.3);
    const turn = (d: typeof drawing) => shapeOf(d, 'strut wheel lever 0').place?.angle ?? 0;
    const web = placesOf(brake, input.instant).shoes.front.angle;
    near(turn(drawing) - web, -Math.asin(over / 8), { abs: 1e-9 });
    const released = drawBrake({ ...input, instant: input.rest });
    near(turn(released), placesOf(brake, input.rest).shoes.front.angle, { abs: 1e-9 });
  });

  it('a step shown by itself brings the lever back and takes one tooth along', () => {
    const { input } = drawn(brake, 10);
    const at = (climb: number) => screwStep(brake, { ...input.rest, climb });
    expect(at(0)).toEqual({ over: 0, turned: 10 });
    near(at(1e-9).over, 0.95, { abs: 1e-6 });
    near(at(0.5).turned, 10.5, { abs: 1e-12 });
    near(at(1).over, 0, { abs: 1e-9 });
  });
});

describe('wedge', () => {
  const brake = brakeOf('ferry-runabout');
  const { flank, way } = wedgeFlank(brake);

  /** Right side of the wedge at a height, in the world. */
  function flankAt(points: readonly Point[], y: number): number {
    const right = points.slice(2, 4) as [Point, Point];
    const [a, b] = right;
    return a[0] + ((b[0] - a[0]) * (y - a[1])) / (b[1] - a[1]);
  }

  it.each([0, 120, 320, 425])('fills the room between seat and strut at step %i', (tooth) => {
    const { drawing } = drawn(brake, tooth, { state: wornFor(brake, tooth) });
    const wedge = pointsOf(shapeOf(drawing, 'strut wedge 0'));
    const strut = pointsOf(shapeOf(drawing, 'strut strut 0'));
    // The strut's sloped end: its two leftmost corners.
    const ends = [...strut].sort((a, b) => a[0] - b[0]).slice(0, 2);
    for (const end of ends) near(flankAt(wedge, end[1]) - end[0], 0, { abs: 1e-9 });
  });

  it('drops by what the strut grows over the flank', () => {
    const top = (tooth: number) => {
      const { input, drawing } = drawn(brake, tooth, { state: wornFor(brake, tooth) });
      const { place } = shapeOf(drawing, 'strut wedge 0');
      const web = placesOf(brake, input.instant).shoes.front;
      const seat = apply(web, brake.shoes.front.strutSeat);
      return distance(place ? [place.x, place.y] : [0, 0], seat);
    };
    near(top(300) - top(0), 6 / flank, { abs: 1e-9 });
    near(way * flank, 8.5, { rel: 1e-9 });
  });

  it('stays under the table of the shoe and is 1 in 8 where there is room for it', () => {
    for (const name of names) {
      const own = withAdjuster(brakeOf(name), 'wedge');
      const { drawing } = drawn(own, 0);
      const inside = webRadius(own.shoes.front);
      for (const p of pointsOf(shapeOf(drawing, 'strut wedge 0'))) {
        expect(distance(p, [0, 0])).toBeLessThan(inside);
      }
    }
    const little = { ...brake.adjuster, growth: [0, 1], teeth: 1 };
    near(wedgeFlank({ ...brake, adjuster: little }).flank, 1 / 8, { abs: 1e-12 });
  });

  it('the hook has the lost motion behind the parking lever, and the strut goes with the web', () => {
    const state = wornFor(brake, 40);
    const { input, drawing } = drawn(brake, 0, { state: { ...state, tooth: 0 }, pressure: 4 });
    const { separation, strutLength } = input.instant;
    expect(separation - strutLength).toBeGreaterThan(brake.adjuster.lostMotion);
    const place = shapeOf(drawing, 'strut strut 0').place;
    const seat = apply(placesOf(brake, input.instant).strut, brake.shoes.rear.strutSeat);
    near(seat[0] - (place?.x ?? 0), brake.adjuster.lostMotion, { abs: 1e-9 });
  });
});

describe('hot lock', () => {
  it('the strip bends by a·ΔT·L²/t: 0.76 mm from 20 to 140 °C', () => {
    near(tipTravel(140), (14e-6 * 120 * 19 * 19) / 0.8, { abs: 1e-12 });
    near(tipTravel(140), 0.758, { abs: 5e-4 });
    near(tipTravel(20), 0, { abs: 1e-12 });
  });

  it('leaves the lever a whole tooth up to its temperature and less above', () => {
    const van = withAdjuster(quayVan().brake, 'toothed lever', { hotLock: 120 });
    expect(liftLimit(van, 20)).toBe(1);
    expect(liftLimit(van, 120)).toBe(1);
    near(liftLimit(van, 120.01), 1, { abs: 0.001 });
    let before = 1;
    for (let t = 121; t < 200; t += 10) {
      expect(liftLimit(van, t)).toBeLessThan(before);
      before = liftLimit(van, t);
    }
    expect(liftLimit(quayVan().brake, 400)).toBe(1);
  });

  it('a held lever carries the strut along instead of climbing on', () => {
    const van = withAdjuster(quayVan().brake, 'toothed lever', { hotLock: 120 });
    const instant = { ...rest(createRig(van), freshState(van)), climb: 0.9 };
    const free = placesOf(van, instant);
    const held = placesOf(van, instant, 0.4);
    near(free.strut.x - held.strut.x, 0.5 * ((van.adjuster.growth[1] ?? 0) - 0), { abs: 1e-9 });
    expect(held.lever?.angle).toBeLessThan(free.lever?.angle ?? 0);
  });
});

it('a lever whose form no scene tells grows as its teeth say', () => {
  const { adjuster } = brakeOf('bench-brake');
  const lever = leverForm(brakeOf('bench-brake'));
  if (!lever) throw new Error('no lever');
  const { angles, noseRadius, startAngle } = lever;
  adjuster.growth.forEach((growth, n) => {
    const swung = noseRadius * (Math.cos(startAngle) - Math.cos(angles[n] as number));
    near(swung, growth, { abs: 1e-9 });
  });
  near(noseRadius * 2 * Math.cos(startAngle), 8, { rel: 1e-9 });
});
