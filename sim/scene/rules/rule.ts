import type { Side } from '../../brake/types.ts';
import { sceneRulesRule as words } from '../../words/en.ts';
import type { Scene } from '../schema.ts';

/** What of a scene breaks a rule: where, what was found, what is allowed. */
export interface Breach {
  readonly path: string;
  readonly found: string;
  readonly allowed: string;
}

/** One rule of a brake that can be built. */
export interface Rule {
  /** Its short name, unlike any other's. */
  readonly name: string;
  /** Why a brake that breaks it cannot be built or cannot work: one plain sentence. */
  readonly reason: string;
  /** Called on a scene that passed the schema. */
  readonly broken: (scene: Scene) => readonly Breach[];
}

export type P = readonly [number, number];
type SceneShoe = Scene['shoes']['front'];

/** Sides with the sign of their outward x. */
const SIDES = [
  ['front', -1],
  ['rear', 1],
] as const;

/** Nothing where it holds (a number that is none never does), else the breach. */
export const must = (ok: boolean, path: string, found: string, allowed: string): Breach[] =>
  ok ? [] : [{ path, found, allowed }];

/** Told where a name comes a second time in a list. */
export const ownNames = (path: string, list: readonly { readonly name: string }[]): Breach[] =>
  list.flatMap(({ name }, i) =>
    must(
      list.findIndex((other) => other.name === name) === i,
      `${path}.${i}.name`,
      words.again(name),
      words.aNameOfItsOwn,
    ),
  );

/** Asks the same of both shoes; `outward` is −1 for the front shoe, on the left, and +1 for the rear one. */
export const eachShoe = (
  scene: Scene,
  ask: (shoe: SceneShoe, at: string, outward: -1 | 1, side: Side) => readonly Breach[],
): Breach[] =>
  SIDES.flatMap(([side, outward]) => [...ask(scene.shoes[side], `shoes.${side}`, outward, side)]);

export const bore = (scene: Scene): number => scene.drum.diameterNew / 2;
export const fromAxis = ([x, y]: P): number => Math.sqrt(x * x + y * y);
export const apart = (a: P, b: P): number => fromAxis([a[0] - b[0], a[1] - b[1]]);

/** Least distance of the axis from the straight line between two points, mm. */
export function lineFromAxis(a: P, b: P): number {
  const x = b[0] - a[0];
  const y = b[1] - a[1];
  const square = x * x + y * y;
  const share = square > 0 ? -(a[0] * x + a[1] * y) / square : 0;
  const t = Math.max(0, Math.min(1, share));
  return fromAxis([a[0] + t * x, a[1] + t * y]);
}

/** Radius of the table's inner side, where the web ends, mm. */
export const webRadius = ({ lining, steel }: SceneShoe): number =>
  lining.groundRadius - lining.thicknessNew - steel.tableThickness;

/** Sizes in messages: three decimals where they are needed. */
export const mm = (value: number): string => `${Number(value.toFixed(3))} mm`;
export const place = ([x, y]: P): string => `(${x}, ${y})`;
