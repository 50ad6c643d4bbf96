import { expect, it } from 'vitest';
import trailer from '../../scenes/farm-trailer.json';
import runabout from '../../scenes/ferry-runabout.json';
import quayVan from '../../scenes/quay-van.json';
import { ownKeys, quantitiesOf, readScene, sizeAt, startState } from '../../sim/index.ts';
import { varyId } from '../../ui/stations/own/vary-size.ts';

// Of these no single number stands in a scene.
const NONE = ['liningArc', 'teeth', 'leverNotch', 'leverHook'];
// Told from the other side of the axle, or between both.
const TWICE: Readonly<Record<string, number>> = { pinsApart: 2 };

it.each([
  ['quay van', quayVan],
  ['runabout', runabout],
  ['trailer', trailer],
])('every size of My brake that is a number of the scene can be varied: %s', (_, given) => {
  const read = readScene(given);
  if (!read.ok) throw new Error('a teaching brake is read');
  const { scene, brake } = read;
  const press = { pressure: 4, turning: 1, cable: 0 } as const;
  const base = { scene, state: startState(brake), press, bending: false, steps: false };
  const all = new Map(quantitiesOf(base, brake).map((q) => [q.id, q]));
  let seen = 0;
  for (const key of ownKeys) {
    const id = varyId(key, scene);
    if (id === null) {
      expect(NONE, key).toContain(key);
      continue;
    }
    const quantity = all.get(id);
    if (!quantity) throw new Error(`${key}: ${id} is no quantity`);
    const size = sizeAt(scene, key);
    expect(Math.abs(quantity.value) * (TWICE[key] ?? 1), key).toBeCloseTo(Math.abs(size), 9);
    seen++;
  }
  expect(seen).toBe(ownKeys.length - NONE.length);
});
