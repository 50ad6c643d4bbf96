import fc from 'fast-check';
import { EigenvalueDecomposition, Matrix } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import benchBrake from '../../scenes/bench-brake.json';
import farmTrailer from '../../scenes/farm-trailer.json';
import ferryRunabout from '../../scenes/ferry-runabout.json';
import quayVan from '../../scenes/quay-van.json';
import { makePlaced, place, turnsOf } from '../../sim/balance/place.ts';
import type { ShoeRig, Spot, Turns } from '../../sim/balance/types.ts';
import { parkingLeverMass, pistonMass, strutMass } from '../../sim/brake/part-masses.ts';
import { pistonOutline } from '../../sim/brake/part-outlines.ts';
import { createMotion, createRig, freshState, type Point, type Rig } from '../../sim/index.ts';
import { Masses } from '../../sim/motion/carried.ts';
import { flatten } from '../../ui/stage/flatten.ts';
import { leverBody } from '../../ui/stage/parts/parking.ts';
import { built, onAbutments, onPins } from '../any-brake.ts';
import { mustRead } from '../brakes.ts';
import { near } from '../near.ts';

/** What rides along with the shoes has the mass of its drawn outline in steel, and moves as a body does. */
const scenes = [quayVan, benchBrake, farmTrailer, ferryRunabout].map(mustRead);
/** Steel, tonne/mm³ (common practice). */
const STEEL = 7.85e-9;

/** Middles of the squares of a grid that lie within a closed outline: by crossings to the right of each. */
function within(outline: readonly Point[], step: number): Point[] {
  const out: Point[] = [];
  const [xs, ys] = [outline.map((p) => p[0]), outline.map((p) => p[1])];
  for (let y = Math.min(...ys) + step / 2; y < Math.max(...ys); y += step) {
    for (let x = Math.min(...xs) + step / 2; x < Math.max(...xs); x += step) {
      let inside = false;
      outline.forEach(([ax, ay], i) => {
        const [bx, by] = outline[(i + 1) % outline.length] as Point;
        if (ay > y !== by > y && x < ax + ((y - ay) * (bx - ax)) / (by - ay)) inside = !inside;
      });
      if (inside) out.push([x, y]);
    }
  }
  return out;
}

const GRID = 0.25;
/** The parking lever's plate in small squares, from the outline that is drawn. */
function squares(rig: Rig): readonly Point[] {
  const { points } = flatten(leverBody(rig.brake), 0.02)[0] ?? { points: [] };
  const outline = Array.from(
    { length: points.length / 2 },
    (_, i): Point => [points[2 * i] as number, points[2 * i + 1] as number],
  );
  return within(outline, GRID);
}

/**
 * Middle of a shoe's mass from its heel: a uniform arc's lies at sin β/β of its radius, its radius of gyration about
 * that is √(1 − (sin β/β)²) of it; both scaled until inertia over mass about the heel is the scene's (Steiner).
 */
function arcMiddle({ brake }: Rig, { shoe, bed }: ShoeRig): Point {
  const radius = brake.drum.radiusNew;
  const at = (d: number, i: 0 | 1): number => 0.85 * radius * d - (shoe.anchor.at[i] as number);
  const middle = bed.count / 2;
  const [x, y] = [at(bed.dirX[middle] as number, 0), at(bed.dirY[middle] as number, 1)];
  const gyration = radius * Math.sqrt(1 - 0.85 ** 2);
  const scale = Math.sqrt(shoe.inertia / shoe.mass) / Math.hypot(x, y, gyration);
  return [scale * x, scale * y];
}

describe.each(scenes)('$name', (brake) => {
  const rig = createRig(brake);
  const plate = squares(rig);
  const thick = brake.strutPath?.parkingLever.thickness ?? 5;
  const each = STEEL * thick * GRID * GRID;

  it('weighs its parking lever as its drawn outline, counted in squares', () => {
    const { mass, middle, inertia } = parkingLeverMass(brake);
    near(mass, each * plate.length, { rel: 0.01 }, 'mass');
    const mean = (k: 0 | 1): number => plate.reduce((sum, p) => sum + p[k], 0) / plate.length;
    near(middle[0], mean(0), { abs: 0.3 }, 'middle, x');
    near(middle[1], mean(1), { abs: 0.3 }, 'middle, y');
    const polar = plate.reduce(
      (sum, [x, y]) => sum + each * ((x - middle[0]) ** 2 + (y - middle[1]) ** 2),
      0,
    );
    near(inertia, polar, { rel: 0.02 }, 'inertia');
  });

  it('weighs its pistons as their drawn section turned about the axis, ring by ring', () => {
    const upper = pistonOutline(brake.cylinder.bore);
    const first = upper[0] as Point;
    const last = upper.at(-1) as Point;
    const step = 0.05;
    const rings = within([[first[0], 0], ...upper, [last[0], 0]], step);
    const volume = rings.reduce((sum, [, y]) => sum + 2 * Math.PI * y * step * step, 0);
    near(pistonMass(brake), STEEL * volume, { rel: 0.01 }, 'piston');
  });

  it('has the kinetic energy of its bodies, point by point', () => {
    const { n } = rig;
    const masses = new Masses(rig).matrix;
    const half = strutMass(brake) / 2;
    const placed = makePlaced(n);
    const turns: Turns = {
      ...{ frontCos: 1, frontSin: 0, rearCos: 1, rearSin: 0, leverCos: 1, leverSin: 0 },
    };
    const small = 1e-6;
    for (let k = 0; k < 5; k++) {
      // Any speeds: by the golden angle's multiples.
      const v = Float64Array.from({ length: n }, (_, j) => Math.sin(2.4 * (5 * k + j + 1)));
      const speed = (spot: Spot): Point => {
        const at = (f: number): Point => {
          const y = v.map((s) => f * s);
          const p = place(rig, y, turnsOf(rig, y, turns), spot, placed);
          return [p.x, p.y];
        };
        const [a, b] = [at(-small), at(small)];
        return [(b[0] - a[0]) / (2 * small), (b[1] - a[1]) / (2 * small)];
      };
      const of = (mass: number, [x, y]: Point): number => (mass * (x * x + y * y)) / 2;
      let energy = of(half, speed(rig.front.webSeat)) + of(half, speed(rig.rear.seat));
      for (const at of plate) energy += of(each, speed(rig.spotOn('lever', at)));
      for (const shoe of [rig.front, rig.rear]) {
        energy += of(pistonMass(brake), [speed(shoe.toe)[0], 0]);
        // The shoe by itself: inertia about its pin; or mass, inertia and the middle of its mass.
        const turn = v[shoe.at + shoe.freedoms - 1] as number;
        energy += (shoe.shoe.inertia * turn * turn) / 2;
        if (shoe.freedoms === 1) continue;
        const [cx, cy] = arcMiddle(rig, shoe);
        const [ux, uy] = [v[shoe.at] as number, v[shoe.at + 1] as number];
        energy += (shoe.shoe.mass * (ux * ux + uy * uy)) / 2;
        energy += shoe.shoe.mass * turn * (uy * cx - ux * cy);
      }
      let told = 0;
      for (let j = 0; j < n; j++) {
        for (let l = 0; l < n; l++) {
          told += ((masses[j * n + l] as number) * (v[j] as number) * (v[l] as number)) / 2;
        }
      }
      near(told, energy, { rel: 0.002 }, `speeds ${k}`);
    }
  });
});

it('a toe that meets a piston left behind gives it its share of momentum, and no more', () => {
  const van = mustRead(quayVan);
  const rig = createRig(van);
  const masses = new Masses(rig);
  const both = masses.matrix.slice();
  masses.count([true, false]);
  const without = masses.matrix.slice();
  const speeds = new Float64Array(rig.n).fill(0);
  speeds[0] = 3;
  const after = masses.meet([false, false], () => speeds);
  // On a pin: I·ω = (I + m·a²)·ω', a the height of the bore's axis over the pin.
  const arm = van.shoes.front.toe[1] - van.shoes.front.anchor.at[1];
  const alone = without[0] as number;
  near((both[0] as number) - alone, pistonMass(van) * arm * arm, { rel: 1e-9 }, 'm·a²');
  near(after?.[0] ?? 0, (3 * alone) / (alone + pistonMass(van) * arm * arm), { rel: 1e-9 }, 'ω');
  expect(masses.matrix).toEqual(both);
  // Nothing met, nothing given.
  expect(masses.meet([false, false], () => speeds)).toBeNull();
});

it('no accepted brake has masses that are negative in any direction', () => {
  for (const brake of fc.sample(fc.oneof(onPins, onAbutments), { seed: 797, numRuns: 200 })) {
    const rig = createRig(built(brake).brake);
    const m = new Matrix(
      Array.from({ length: rig.n }, (_, j) => [
        ...new Masses(rig).matrix.subarray(j * rig.n, (j + 1) * rig.n),
      ]),
    );
    // Brought to one size first: shifts are tonnes, turns tonne·mm².
    const size = m.diagonal().map(Math.sqrt);
    const scaled = Matrix.zeros(rig.n, rig.n);
    for (let j = 0; j < rig.n; j++)
      for (let l = 0; l < rig.n; l++)
        scaled.set(j, l, m.get(j, l) / ((size[j] as number) * (size[l] as number)));
    const { realEigenvalues } = new EigenvalueDecomposition(scaled, { assumeSymmetric: true });
    expect(Math.min(...realEigenvalues), JSON.stringify(brake)).toBeGreaterThan(1e-3);
  }
});

it('a lever on its stop is carried along by a shoe that leaps: it is freed only by what is left over of that', () => {
  // Nothing holds the shoes but a light hand at the hook; they leap, and the lever goes with its shoe. Its inertia left
  // out, it was freed and stopped again without end.
  const brake = mustRead(benchBrake);
  const rig = createRig(brake);
  const sound = freshState(brake);
  const { hook } = brake.parkingLever;
  const condition = {
    ...sound.condition,
    unhooked: [0, 1],
    unheld: ['front', 'rear'] as const,
  };
  const motion = createMotion(rig, { ...sound, condition });
  const hands = [{ on: 'lever', at: hook, to: hook, rate: 5, limit: 200 }] as const;
  for (let n = 0; n < 40; n++) {
    motion.step({ pressure: 2, turning: 0, hands });
    const { settled, residual } = motion.snapshot().solution;
    expect(settled, `step ${n}`).toBe(true);
    expect(residual).toBeLessThan(1e-3);
  }
});
