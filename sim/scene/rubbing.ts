import * as v from 'valibot';
import { bandOf, type Letter, type Letters } from '../brake/letters.ts';
import type { Rubbing } from '../brake/rubbing.ts';
import { KMH } from '../units/units.ts';
import { LONG, num, part, size, words } from './parts.ts';

/** Friction of a lining: a number, or the two letters of its edge code. */
export const liningFriction = v.pipe(
  v.union(
    [
      num('Friction on the drum, cold', 'plain number', 0, 1.5),
      v.pipe(
        v.string('two letters'),
        v.regex(/^[C-H]{2}$/, 'two letters from C to H, such as FF'),
        v.description(
          'Letters of the lining’s edge code, cold and hot (SAE J866): the middle of the cold band is taken; the tables must lead to the hot one',
        ),
      ),
    ],
    'a number, or two letters such as FF',
  ),
  v.description('Friction on the drum, cold: a number, or two letters'),
);

/** Cold friction of a lining. */
export const frictionOf = (given: number | string): number =>
  typeof given === 'number' ? given : bandOf((given as Letters)[0] as Letter).middle;

/** Friction against pressure and speed; its exponents within what is published (S. K. Rhee, SAE 740415). */
export const rubbingPart = part(
  'Friction that hangs on pressure and speed: F = K·P^a·V^b; constant when left out',
  {
    pressureExponent: num('a: 1 when friction goes with pressure', 'plain number', 0.8, 1.25),
    speedExponent: num('b: 0 when it does not hang on speed', 'plain number', -0.25, 0.25),
    atPressure: size('Mean pressure of a lining at which its friction is told', 'MPa', 100),
    atSpeed: size('Speed of the vehicle at which its friction is told', 'km/h', 300),
    source: words('Where the exponents come from', LONG),
  },
);

export const toRubbing = (given: v.InferOutput<typeof rubbingPart> | undefined): Rubbing | null =>
  given ? { ...given, atSpeed: given.atSpeed * KMH } : null;
