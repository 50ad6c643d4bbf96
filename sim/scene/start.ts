import * as v from 'valibot';
import type { StartState, WornAlong } from '../brake/types.ts';
import { sceneStart as words } from '../words/en.ts';
import { count, num, part, size } from './parts.ts';

const deep = (where: string) => num(words.depthWornOffAt(where), 'mm', 0, 50);

/** Wear of a lining at the start: a number where it is even. */
const depth = (side: string) =>
  v.pipe(
    v.union(
      [
        num(words.depthWornEvenlyOffThe(side), 'mm', 0, 50),
        part(words.depthsAlongTheArcA, {
          toe: deep(words.theToeEnd),
          middle: v.optional(deep(words.theMiddleHalfwayBetweenThe)),
          heel: deep(words.theHeelEnd),
        }),
      ],
      words.aDepthOrDepthsBy,
    ),
    v.description(words.wearOfTheLining(side)),
  );

/** How one wheel's brake stands when the scene is opened. */
export const startPart = (about: string) =>
  part(about, {
    tooth: v.optional(count(words.toothTheAdjusterStandsOn, 0, 2000), 0),
    drumDiameter: v.optional(size(words.innerDiameterOfTheCold, 'mm')),
    wear: v.optional(part(words.wearOfTheLinings, { front: depth('front'), rear: depth('rear') }), {
      front: 0,
      rear: 0,
    }),
    temperature: v.optional(num(words.temperatureOfTheDrum, '°C', -60, 1000), 20),
    leverOffStop: v.optional(num(words.parkingLeverHeldOffIts, 'mm', 0, 50), 0),
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
