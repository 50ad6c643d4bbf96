import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { createRig, KM, readScene, SCENE_VERSION, standingDistance } from '../../sim/index.ts';
import { mustRead, quayScene } from '../brakes.ts';
import { near } from '../near.ts';

const kept = fileURLToPath(new URL('../kept/', import.meta.url));
const scenes = fileURLToPath(new URL('../../scenes/', import.meta.url));
const names = ['quay-van', 'bench-brake', 'farm-trailer', 'ferry-runabout'];
const json = (path: string): unknown => JSON.parse(readFileSync(path, 'utf8'));

type Loose = { [key: string]: Loose } & { [key: number]: Loose };
const put = (value: unknown): Loose => value as Loose;

/** The quay van as version 1 had it. */
const oldVan = (): Loose => json(`${kept}version-1/quay-van.json`) as Loose;
function findings(change: (scene: Loose) => void): readonly (readonly [string, string])[] {
  const scene = oldVan();
  change(scene);
  const read = readScene(scene);
  return read.ok ? [] : read.findings.map((f) => [f.path, f.found] as const);
}

describe('files of older versions', () => {
  it('are kept, some of each version', () => {
    const now = quayScene().version;
    expect(now).toBe(SCENE_VERSION);
    expect(readdirSync(kept).sort()).toEqual(
      Array.from({ length: now - 1 }, (_, i) => `version-${i + 1}`),
    );
  });

  it.each(names)('version 1 of %s is the brake of today, size for size', (name) => {
    const old = mustRead(json(`${kept}version-1/${name}.json`));
    const now = mustRead(json(`${scenes}${name}.json`));
    // What bears the strut's force had no sizes then, and was rigid.
    expect(old.strutPath).toBeNull();
    // The toothed lever's spring was not told, and its climb cost nothing.
    expect([old.adjuster.spring, old.adjuster.climbForce]).toEqual([null, 0]);
    const adjuster = { ...now.adjuster, spring: null };
    expect({ ...old, states: [] }).toEqual({ ...now, adjuster, states: [], strutPath: null });
    expect(old.states.map((s) => s.name)).toEqual(now.states.map((s) => s.name));
  });

  it.each(names)('the recipes of %s end where version 1 had the kilometres', (name) => {
    const file = json(`${kept}version-1/${name}.json`) as {
      states: { name: string; distance: number; drumDiameter?: number }[];
    };
    const brake = mustRead(json(`${scenes}${name}.json`));
    const rig = createRig(brake);
    for (const { name: state, distance, drumDiameter } of file.states) {
      // The worn face's true area came after version 1: clicks and limits come 1 % sooner by it.
      near(standingDistance(rig, state) / KM, distance, { rel: 0.01 }, state);
      const radius = brake.states.find((s) => s.name === state)?.drumRadius;
      expect(radius).toBe(drumDiameter === undefined ? null : drumDiameter / 2);
    }
  });

  it('are not changed by being read', () => {
    const file = oldVan();
    const before = structuredClone(file);
    expect(readScene(file).ok).toBe(true);
    expect(file).toEqual(before);
  });

  it('keep one step an application where version 1 took one for want of a word', () => {
    const file = oldVan();
    delete (file['adjuster'] as Partial<Loose>)['perApplication'];
    expect(mustRead(file).adjuster.perApplication).toBe(1);
    const now = quayScene();
    expect('perApplication' in now.adjuster).toBe(false);
    expect(mustRead(now).adjuster.perApplication).toBe(20);
  });

  it('are told what is wrong where the file has it', () => {
    const found = findings((s) => {
      (s['duty'] as Loose)['pressure'] = put('hard');
      delete (s['duty'] as Partial<Loose>)['stopsPerKm'];
      (s['duty'] as Loose)['weight'] = put(3);
      (s['drum'] as Loose)['cooling'] = put([2.5, 'cold']);
      (s['duties']?.[1] as Loose)['stops'] = put([]);
      (s['states']?.[3] as Loose)['distance'] = put(-1);
    });
    expect(Object.fromEntries(found)).toEqual({
      'duty.pressure': '"hard"',
      'duty.stopsPerKm': 'nothing',
      'duty.weight': 'an unknown key',
      'drum.cooling.1': '"cold"',
      'duties.1.stops': '[]',
      'states.3.distance': '-1',
    });
  });

  it('are told what cannot be built where the file has it', () => {
    const found = findings((s) => {
      (s['duties']?.[0] as Loose)['name'] = put('Mixed town');
    });
    expect(found).toEqual([['duties.0.name', '"Mixed town" again']]);
  });

  it.each([
    [3, 'version', '3: the file was made by a later program'],
    [0, 'version', '0'],
    [1.5, 'version', '1.5'],
    ['2', 'version', '"2"'],
    [undefined, 'version', 'nothing'],
  ])('a file of version %j is refused', (version, path, what) => {
    const read = readScene({ ...quayScene(), version });
    if (read.ok) throw new Error('was read');
    expect(read.findings.map((f) => [f.path, f.found])).toContainEqual([path, what]);
  });

  it.each([{ version: 1 }, { version: 1, drum: 3, duty: 'x', duties: {}, states: 'none' }])(
    'what is hardly a scene is refused, not thrown: %j',
    (data) => {
      const read = readScene(data);
      expect(read.ok).toBe(false);
    },
  );
});
