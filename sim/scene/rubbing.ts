import * as v from 'valibot';
import { bandOf, type Letter, type Letters } from '../brake/letters.ts';
import type { Rubbing } from '../brake/rubbing.ts';
import { KMH } from '../units/units.ts';
import { sceneRubbing as texts } from '../words/en.ts';
import { LONG, num, part, size, words } from './parts.ts';

/** Friction of a lining: a number, or the two letters of its edge code. */
export const liningFriction = v.pipe(
  v.union(
    [
      num(texts.frictionOnTheDrumCold, 'plain number', 0, 1.5),
      v.pipe(
        v.string(texts.twoLetters),
        v.regex(/^[C-H]{2}$/, texts.twoLettersFromCTo),
        v.description(texts.lettersOfTheLiningsEdge),
      ),
    ],
    texts.aNumberOrTwoLetters,
  ),
  v.description(texts.frictionOnTheDrumCold2),
);

/** Cold friction of a lining. */
export const frictionOf = (given: number | string): number =>
  typeof given === 'number' ? given : bandOf((given as Letters)[0] as Letter).middle;

/** Friction against pressure and speed; its exponents within what is published (S. K. Rhee, SAE 740415). */
export const rubbingPart = part(texts.frictionThatHangsOnPressure, {
  pressureExponent: num(texts.a1WhenFrictionGoes, 'plain number', 0.8, 1.25),
  speedExponent: num(texts.b0WhenItDoes, 'plain number', -0.25, 0.25),
  atPressure: size(texts.meanPressureOfALining, 'MPa', 100),
  atSpeed: size(texts.speedOfTheVehicleAt, 'km/h', 300),
  source: words(texts.whereTheExponentsComeFrom, LONG),
});

export const toRubbing = (given: v.InferOutput<typeof rubbingPart> | undefined): Rubbing | null =>
  given ? { ...given, atSpeed: given.atSpeed * KMH } : null;
