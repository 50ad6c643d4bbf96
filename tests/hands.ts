import {
  type Brake,
  type Hand,
  type Holdable,
  type Instant,
  type Point,
  stopStiffness,
} from '../sim/index.ts';

/** A hand whose spring is soft and whose far end is so far off that it pulls its limit, level. */
export const pulling = (
  on: Holdable,
  at: Point,
  newton: number,
  sense: -1 | 1,
  share = 1,
): Hand => ({ on, at, to: [at[0] + sense * 500 * share, at[1]], rate: 5, limit: newton });

/** Both toes by as much: apart, or together. */
export const toes = (brake: Brake, newton: number, sense: 'apart' | 'together'): Hand[] => {
  const way = sense === 'apart' ? 1 : -1;
  const { front, rear } = brake.shoes;
  return [
    pulling('front', front.toe, newton, way === 1 ? -1 : 1),
    pulling('rear', rear.toe, newton, way),
  ];
};

/** A hand that goes out over a time and then stays. @param part of its way, 0..1 */
export const drawn = (hands: readonly Hand[], part: number): Hand[] =>
  hands.map((h) => ({
    ...h,
    to: [h.at[0] + part * (h.to[0] - h.at[0]), h.at[1] + part * (h.to[1] - h.at[1])],
  }));

/** How deep every stop that bears is pressed in, mm. */
export const stopsDeep = (brake: Brake, i: Instant): { name: string; deep: number }[] =>
  i.forces.flatMap(({ name, on, force }) => {
    const kind = (['cylinder', 'hub', 'pads', 'lever'] as const).find((k) => name === `stop: ${k}`);
    const side = on === 'front' ? 'front' : 'rear';
    return kind ? [{ name, deep: Math.hypot(...force) / stopStiffness(brake, side, kind) }] : [];
  });
