import { balance } from '../../balance/balance.ts';
import type { Rig } from '../../balance/rig.ts';
import type { BrakeState } from '../../brake/state.ts';
import type { Side } from '../../brake/types.ts';
import { GRAVITY } from '../../units/units.ts';
import { studyWorkingRoad as words } from '../../words/en.ts';
import { spend } from '../hand-lever.ts';
import { cableFor, parked, slopeTorque } from '../parking.ts';
import { between } from './road.ts';
import { given, less, over, product, root, square, sum, type Term } from './term.ts';
import { type Derivations, derived } from './working.ts';

/** N·mm to N·m, mm to m; tonne to kg. */
const MILLI = 1e-3;
const KILO = 1e3;

const parts = ({ brake }: Rig) => {
  const { vehicle: v, parkingLever: l } = brake;
  return {
    n: given('n', v.brakes, '', words.brakesOfThisAxle, 'scene'),
    m: given('m', v.mass * KILO, 'kg', words.massOfTheVehicle, 'scene'),
    g: given('g', GRAVITY * MILLI, 'm/s²', words.standardGravity, 'constant'),
    r: given('r', v.tyreRadius * MILLI, 'm', words.rollingRadiusOfTheTyre, 'scene'),
    ratio: given('i', l.handRatio, '', words.ratioOfTheHandLever, 'scene'),
    good: given('η', l.handEfficiency, '', words.efficiencyOfCableAndLever, 'scene'),
  };
};

/** Pull at the grip for a pull of each cable, N. */
const grip = (rig: Rig, pull: number): Term => {
  const { n, ratio, good } = parts(rig);
  const cable = given('F_cable', pull, 'N', words.pullOfEachCable, 'asked');
  return over(product(n, cable), product(ratio, good));
};

/** Workings of the parked brake. */
export function parkedWorkings(rig: Rig, state: BrakeState, cable: number): Derivations {
  const p = parked(rig, state, cable);
  const { n, m, g, r } = parts(rig);
  const slip = (turning: 1 | -1): Term => {
    const i = balance(rig, state, { pressure: 0, turning, cable });
    const sense = -turning * MILLI;
    const of = (side: Side) =>
      given(
        `T_${side}`,
        sense * i.shoes[side].torqueOnDrum,
        'N·m',
        words.torqueOfTheShoe(side),
        'balance',
      );
    return sum(of('front'), of('rear'));
  };
  const slope = (key: 'slipForward' | 'slipBackward', torque: number): Term => {
    const t = given('T', torque * MILLI, 'N·m', words.slipTorqueOfEachWheel, 'reading', key);
    const sine = over(product(n, t), product(m, g, r));
    return over(product(100, sine), root(less(1, square(sine))));
  };
  const spent = spend(rig, state, cable, p.hookTravel);
  const lever = rig.brake.parkingLever;
  const mm = (symbol: string, value: number, name: string) =>
    given(symbol, value, 'mm', name, symbol === 'x_h' ? 'balance' : 'scene');
  const pull = given('F_cable', cable, 'N', words.pullOfEachCable, 'asked');
  return {
    slipForward: [slip(1), 'coulomb'],
    slipBackward: [slip(-1), 'coulomb'],
    slopeDown: [slope('slipForward', p.forward), 'slope'],
    slopeUp: [slope('slipBackward', p.backward), 'slope'],
    pivotForce: [
      less(given('S', p.strutForce, 'N', words.pushOfTheStrutMean, 'balance'), pull),
      'lever',
    ],
    notches: [
      over(
        sum(
          mm('s_0', spent.slack, words.slack),
          over(pull, given('k', lever.stiffness, 'N/mm', words.stiffnessOfTheCable, 'scene')),
          mm('x_h', spent.turning, words.travelOfTheHook),
        ),
        mm('z_1', lever.perNotch, words.cableThatANotchTakes),
      ),
      'cable',
    ],
    handForce: [grip(rig, cable), 'lever'],
  };
}

/** Pulls beside the one that was found, N. */
const BESIDE = 0.5;

/** Workings of the vehicle parked on a slope, rise over level distance. */
export function slopeWorkings(
  rig: Rig,
  state: BrakeState,
  slope: number,
  cable: number,
): Derivations {
  const need = slopeTorque(rig, slope);
  const p = parked(rig, state, cable);
  const { n, m, g, r } = parts(rig);
  const rise = given('s', slope, '', words.riseOverLevelDistance, 'asked');
  const sine = over(rise, root(sum(1, square(rise))));
  const of = (nose: 'down' | 'up'): Derivations => {
    const Nose = nose === 'down' ? 'Down' : 'Up';
    const turning = nose === 'down' ? 1 : -1;
    const pull = cableFor(rig, state, slope, nose);
    const torque = (at: number): number =>
      Math.abs(balance(rig, state, { pressure: 0, turning, cable: at }).torqueOnDrum);
    const can = given(
      'T_slip',
      (nose === 'down' ? p.forward : p.backward) * MILLI,
      'N·m',
      words.torqueAtWhichTheWheel,
      'reading',
    );
    const asks = given(
      'T_slope',
      need * MILLI,
      'N·m',
      words.torqueThatTheSlopeAsks,
      'reading',
      'slopeTorque',
    );
    const found = Number.isFinite(pull)
      ? between(
          torque,
          pull,
          BESIDE,
          ['F', 'N', words.pullOfTheCable],
          ['T', 'N·m', words.torque],
          need,
          [1, MILLI],
        )
      : given('F', Number.NaN, 'N', '', 'balance');
    return {
      [`cableNose${Nose}`]: derived(found, 'search'),
      [`handNose${Nose}`]: derived(grip(rig, pull), 'lever'),
      [`marginNose${Nose}`]: derived(product(100, less(over(can, asks), 1)), 'definition'),
    };
  };
  return {
    slopeTorque: [over(product(m, g, sine, r), n), 'slope'],
    ...of('down'),
    ...of('up'),
  };
}
