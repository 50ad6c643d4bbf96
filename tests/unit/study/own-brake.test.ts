import { describe, expect, it } from 'vitest';
import bench from '../../../scenes/bench-brake.json';
import trailer from '../../../scenes/farm-trailer.json';
import runabout from '../../../scenes/ferry-runabout.json';
import {
  balance,
  createRig,
  freshState,
  keyOfPath,
  type OwnSizes,
  ownKeys,
  ownScene,
  readScene,
  rest,
  type Scene,
  shoeFactor,
  sizeAt,
} from '../../../sim/index.ts';
import { ownWords } from '../../../sim/workshop/index.ts';
import { quayScene } from '../../brakes.ts';
import { near } from '../../near.ts';

const names = { name: 'own-1', title: 'Mine', about: 'One.', source: 'Measured.' };
function sceneOf(data: unknown): Scene {
  const read = readScene(data);
  if (!read.ok) throw new Error(JSON.stringify(read.findings));
  return read.scene;
}
function built(base: Scene, sizes: OwnSizes) {
  const read = readScene(JSON.parse(JSON.stringify(ownScene(base, sizes, names))));
  if (!read.ok) throw new Error(JSON.stringify(read.findings));
  const rig = createRig(read.brake);
  const state = freshState(read.brake);
  const pressed = balance(rig, state, { pressure: 4, turning: 1 });
  return {
    brake: read.brake,
    gap: rest(rig, state).shoes.front.gap[24] ?? Number.NaN,
    factor: shoeFactor(pressed, 'front') + shoeFactor(pressed, 'rear'),
  };
}
const quay = sceneOf(quayScene());
const bases = [quay, sceneOf(bench), sceneOf(trailer), sceneOf(runabout)];

describe('a brake of one’s own', () => {
  it('with nothing measured is the teaching brake again, by every size and in its behaviour', () => {
    for (const base of bases) {
      const own = ownScene(base, {}, names);
      for (const key of ownKeys)
        near(sizeAt(own, key), sizeAt(base, key), { abs: 1e-9 }, `${base.name} ${key}`);
      expect(own.shoes).toEqual(base.shoes);
      expect(own.parkingLever).toEqual(base.parkingLever);
      expect(own).not.toHaveProperty('$schema');
    }
    // Teaching tables: factor 2.29, clearance 0.30 at the centre.
    const same = built(quay, {});
    near(same.factor, 2.29, { rel: 0.01 });
    near(same.gap, 0.3, { abs: 0.01 });
  });
  it('every size that is typed stands in the scene', () => {
    for (const base of bases) {
      for (const key of ownKeys) {
        const typed = key === 'teeth' ? sizeAt(base, key) - 1 : sizeAt(base, key) * 1.03;
        const own = ownScene(base, { [key]: typed }, names);
        near(sizeAt(own, key), typed, { rel: 1e-9 }, `${base.name} ${key}`);
      }
    }
  });
  it('all sizes at once stand in it too', () => {
    const typed = Object.fromEntries(
      ownKeys.map((k) => [k, k === 'teeth' ? 19 : sizeAt(quay, k) * 1.04]),
    ) as OwnSizes;
    const own = ownScene(quay, typed, names);
    for (const key of ownKeys) near(sizeAt(own, key), typed[key] ?? 0, { rel: 1e-9 }, key);
  });
  it('a larger drum alone: similar figure, the same factor, the same clearance to a hundredth', () => {
    // A shoe factor is a pure number of angles and ratios: similar figures have the same one.
    const large = built(quay, { drumNew: 230 });
    near(large.factor, 2.29, { rel: 0.015 });
    near(large.gap, 0.3, { abs: 0.01 });
    expect(large.brake.drum.radiusMax).toBe(115.5);
    expect(large.brake.drum.lipRadius).toBe(115);
  });
  it('a larger bore pushes by its area', () => {
    near(
      built(quay, { bore: 20.64 }).brake.cylinder.area / built(quay, {}).brake.cylinder.area,
      (20.64 / 19.05) ** 2,
      { rel: 1e-9 },
    );
  });
  it('says what was measured and what is assumed', () => {
    const sizes = { bore: 20.64, drumMax: 201.5 };
    const own = ownScene(quay, sizes, ownWords(quay, sizes, names));
    expect(own.source).toMatch(/drumMax, bore.*All else assumed/);
  });
});

describe('springs listed in another order, with one more', () => {
  const [upper, lower] = quay.springs;
  if (!upper || !lower) throw new Error('the van has two springs');
  const cable = { ...upper, name: 'cable coil', rate: 1, fitted: 5 };
  const other: Scene = { ...quay, springs: [cable, lower, upper] };
  it('are found by their names', () => {
    near(sizeAt(other, 'upperForce'), upper.fitted, { abs: 0 });
    near(sizeAt(other, 'lowerRate'), lower.rate, { abs: 0 });
    const own = ownScene(other, { upperForce: 99, lowerRate: 7 }, names);
    expect(own.springs.map((s) => [s.name, s.fitted, s.rate])).toEqual([
      ['cable coil', 5, 1],
      [lower.name, lower.fitted, 7],
      [upper.name, 99, upper.rate],
    ]);
  });
  it('and so are the fields of what is wrong with them', () => {
    const own = ownScene(other, { upperForce: -5, lowerRate: -1 }, names);
    const read = readScene(own);
    if (read.ok) throw new Error('was read');
    expect(read.findings.map((f) => keyOfPath(own, f.path)).sort()).toEqual([
      'lowerRate',
      'upperForce',
    ]);
    expect(keyOfPath(own, 'springs.0.rate')).toBeNull();
  });
});

describe('what is assumed fits into the drum that was measured', () => {
  it('any drum of 80 to 500 mm, from any teaching brake', () => {
    for (const base of bases) {
      for (let drumNew = 80; drumNew <= 500; drumNew += 12) {
        const read = readScene(ownScene(base, { drumNew }, names));
        expect(read.ok ? [] : read.findings, `${base.name} ${drumNew}`).toEqual([]);
      }
    }
  });
  it('a much smaller drum has a smaller cylinder and thinner linings; down to 0.85 they stay', () => {
    // 80 mm of 200: two fifths, over 0.85: 8/17 of 19.05 and 4.5.
    const small = built(quay, { drumNew: 80 }).brake;
    near(small.cylinder.bore, (8 / 17) * 19.05, { rel: 1e-9 });
    near(small.shoes.front.lining.thicknessNew, (8 / 17) * 4.5, { rel: 1e-9 });
    const near200 = built(quay, { drumNew: 170 }).brake;
    expect(near200.cylinder.bore).toBe(19.05);
    expect(near200.shoes.front.lining.thicknessNew).toBe(4.5);
  });
  it('the wheel goes over the drum, and the cylinder holds its stroke', () => {
    // Drum of 500 and rim of 8: a tyre of 1.2 times 258 mm.
    near(ownScene(bases[1] as Scene, { drumNew: 500 }, names).vehicle.tyreRadius, 1.2 * 258, {
      rel: 1e-9,
    });
    const read = readScene(ownScene(quay, { stroke: 20 }, names));
    expect(read.ok && read.brake.cylinder.halfLength).toBe(20);
  });
});

describe('what cannot be is found at its field', () => {
  const found = (sizes: OwnSizes) => {
    const own = ownScene(quay, sizes, names);
    const read = readScene(own);
    const typed = (key: keyof OwnSizes) => sizes[key] !== undefined;
    return read.ok ? [] : read.findings.map((f) => keyOfPath(own, f.path, typed));
  };
  it.each([
    [{ drumMax: 199 }, 'drumMax'],
    [{ liningMin: 5 }, 'liningMin'],
    [{ liningArc: 400 }, 'liningArc'],
    [{ pinBelow: 120 }, 'pinBelow'],
    [{ toeHeight: -75 }, 'toeHeight'],
    [{ strutHeight: -77 }, 'strutHeight'],
    [{ bore: -1 }, 'bore'],
    [{ teeth: 60 }, 'teeth'],
    [{ upperForce: -5 }, 'upperForce'],
    [{ masterBore: 0 }, 'masterBore'],
    // What was typed is at fault, not what was assumed beside it.
    [{ bore: 50 }, 'bore'],
    [{ stroke: 35 }, 'stroke'],
    [{ strutLength: 200 }, 'strutLength'],
    [{ leverHook: 250 }, 'leverHook'],
    [{ leverNotch: 60 }, 'leverNotch'],
    [{ liningNew: 20 }, 'liningNew'],
    [{ liningWidth: 190 }, 'liningWidth'],
    [{ pinsApart: 180 }, 'pinsApart'],
    [{ tyre: 100 }, 'tyre'],
  ] as const)('%o', (sizes, key) => {
    expect(found(sizes)).toContain(key);
  });
  it('a sound set has none', () => expect(found({ bore: 22.2, drumNew: 203 })).toEqual([]));
});
