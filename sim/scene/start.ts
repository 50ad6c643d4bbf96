import * as v from 'valibot';
import type { StartState, WornAlong } from '../brake/types.ts';
import { count, num, part, size } from './parts.ts';

const deep = (where: string) => num(`Depth worn off at ${where}`, 'mm', 0, 50);

/** Wear of a lining at the start: a number where it is even. */
const depth = (side: string) =>
  v.pipe(
    v.union(
      [
        num(`Depth worn evenly off the ${side} lining`, 'mm', 0, 50),
        part('Depths along the arc, a parabola through them', {
          toe: deep('the toe end'),
          middle: v.optional(deep('the middle; halfway between the ends when left out')),
          heel: deep('the heel end'),
        }),
      ],
      'a depth, or depths by toe, middle and heel',
    ),
    v.description(`Wear of the ${side} lining`),
  );

/** How one wheel's brake stands when the scene is opened. */
export const startPart = (about: string) =>
  part(about, {
    tooth: v.optional(count('Tooth the adjuster stands on', 0, 2000), 0),
    drumDiameter: v.optional(size('Inner diameter of the cold drum; new when left out', 'mm')),
    wear: v.optional(part('Wear of the linings', { front: depth('front'), rear: depth('rear') }), {
      front: 0,
      rear: 0,
    }),
    temperature: v.optional(num('Temperature of the drum', '°C', -60, 1000), 20),
    leverOffStop: v.optional(num('Parking lever held off its stop, at the hook', 'mm', 0, 50), 0),
  });
export type StartPart = v.InferOutput<ReturnType<typeof startPart>>;

/** Wear along the arc, as it was told. */
export function wornOf(told: StartPart['wear']['front']): WornAlong {
  if (typeof told === 'number') return { toe: told, middle: told, heel: told };
  const { toe, heel } = told;
  return { toe, heel, middle: told.middle ?? (toe + heel) / 2 };
}

/** From the file to inside; @param fresh inner diameter of the new drum, mm */
export const toStart = (s: StartPart, fresh: number): StartState => ({
  tooth: s.tooth,
  drumRadius: (s.drumDiameter ?? fresh) / 2,
  wear: { front: toWear(s.wear.front), rear: toWear(s.wear.rear) },
  temperature: s.temperature,
  leverOffStop: s.leverOffStop,
});

const toWear = (told: StartPart['wear']['front']): StartState['wear']['front'] =>
  typeof told === 'number' ? told : wornOf(told);
