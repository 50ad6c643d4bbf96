import { type Base, readScene, startState } from '../sim/index.ts';

/** What is varied from: a scene as it starts, pressed at 40 bar forward with rigid shoes. */
export function baseOf(scene: object, change: Partial<Base> = {}): Base {
  const read = readScene(scene);
  if (!read.ok) throw new Error('a teaching brake is read');
  return {
    scene: read.scene,
    state: startState(read.brake),
    press: { pressure: 4, turning: 1, cable: 0 },
    bending: false,
    steps: false,
    ...change,
  };
}
