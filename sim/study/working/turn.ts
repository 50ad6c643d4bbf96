import { drumRadiusNow } from '../../balance/dress.ts';
import type { Press } from '../../balance/press.ts';
import type { Rig } from '../../balance/rig.ts';
import type { BrakeState } from '../../brake/state.ts';
import { cos } from '../../math/trig.ts';
import { PI } from '../../units/units.ts';
import { studyWorkingTurn as words } from '../../words/en.ts';
import { aroundTurn, boreDiameter, PLACES } from '../turn.ts';
import { given, product, sum } from './term.ts';
import type { Derivations, Derived } from './working.ts';

/** N·mm to N·m. */
const MILLI = 1e-3;

/** Workings of what one turn of the drum shows: the place where it is least or greatest. */
export function turnWorkings(rig: Rig, state: BrakeState, press: Press): Derivations {
  const points = aroundTurn(rig, state, press, PLACES);
  const degrees = (angle: number): string => `${Math.round((180 * angle) / PI)}°`;
  const ends = (
    key: string,
    of: readonly number[],
    derive: (place: number, value: number) => Derived,
  ): Derivations => {
    const least = of.indexOf(Math.min(...of));
    const greatest = of.indexOf(Math.max(...of));
    return {
      [`${key}Least`]: derive(least, of[least] as number),
      [`${key}Greatest`]: derive(greatest, of[greatest] as number),
    };
  };
  const gap = (place: number, value: number): Derived => [
    given('g', value, 'mm', words.gapWithTheDrumAt(degrees(points[place]?.angle ?? 0)), 'balance'),
    'turn',
  ];
  const bores = Array.from({ length: PLACES }, (_, k) =>
    boreDiameter(rig, state, (PI * k) / PLACES),
  );
  const oval = state.condition.oval;
  return {
    ...ends(
      'turnFront',
      points.map((p) => p.frontGap),
      gap,
    ),
    ...ends(
      'turnRear',
      points.map((p) => p.rearGap),
      gap,
    ),
    ...ends(
      'turnTorque',
      points.map((p) => p.torque),
      (place, value) => [
        given(
          'T',
          value * MILLI,
          'N·m',
          words.torqueWithTheDrumAt(degrees(points[place]?.angle ?? 0)),
          'balance',
        ),
        'turn',
      ],
    ),
    ...ends('turnBore', bores, (place) => {
      const twice = cos((2 * PI * place) / PLACES);
      const radius = given(
        'R',
        drumRadiusNow(rig, state),
        'mm',
        words.meanRadiusOfTheDrum,
        'state',
      );
      const wave = given('e_2', oval, 'mm', words.radiusVariesByThisTwice, 'state');
      const turned = given(
        'c',
        twice,
        '',
        words.cosineOfTwice(degrees((PI * place) / PLACES)),
        'worked',
      );
      return [product(2, sum(radius, product(wave, turned))), 'turn'];
    }),
  };
}
