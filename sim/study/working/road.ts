import type { Rig } from '../../balance/rig.ts';
import { effusivity } from '../../brake/heat-of.ts';
import type { BrakeState } from '../../brake/state.ts';
import { working as atWork, lineAt, masterFor, sharesOtherwise } from '../../brake/upstream.ts';
import { BAR, GRAVITY } from '../../units/units.ts';
import { drumShareOf } from '../../wear/interface.ts';
import { studyWorkingRoad as words } from '../../words/en.ts';
import type { BothStates } from '../both-wheels.ts';
import { dragHeat } from '../checks.ts';
import { roadDrag } from '../road-drag.ts';
import { brakingTorque, pressureToSlow, stopAt } from '../stop.ts';
import { flashTerm } from './now-adjuster.ts';
import { footTerm } from './pedal.ts';
import { given, greatest, less, over, product, square, sum, type Term } from './term.ts';
import type { Derivations } from './working.ts';

/** Workings of what the brake does on the road, in metres, kilograms and seconds (brake/stopping.ts). */

/** mm to m, N·mm to N·m; N·mm to kJ; tonne to kg. */
const MILLI = 1e-3;
const KILO = 1e3;

type States = BrakeState | readonly BrakeState[];

const vehicleOf = ({ brake }: Rig) => {
  const { vehicle: v } = brake;
  return {
    m: given('m', v.mass * KILO, 'kg', words.massOfTheVehicle, 'scene'),
    r: given('r', v.tyreRadius * MILLI, 'm', words.rollingRadiusOfTheTyre, 'scene'),
    n: given('n', v.brakes, '', words.brakesOfThisAxle, 'scene'),
    share: given('k', v.share, '', words.shareOfTheBrakingOn, 'scene'),
    g: given('g', GRAVITY * MILLI, 'm/s²', words.standardGravity, 'constant'),
  };
};

/** Workings of a stop from a speed, mm/s, at a pressure of the master cylinder, MPa. */
export function stopWorkings(
  rig: Rig,
  state: States,
  speed: number,
  pressure: number,
  way: 1 | -1 = 1,
): Derivations {
  const { brake } = rig;
  const s = stopAt(rig, state, speed, pressure, way);
  const otherwise = sharesOtherwise(brake.hydraulics);
  const { m, r, n, share, g } = vehicleOf(rig);
  const v = given('v', speed * MILLI, 'm/s', words.speedBeforeIt, 'asked');
  const a = given(
    'a',
    s.deceleration * MILLI,
    'm/s²',
    words.meanDeceleration,
    'reading',
    'stopDeceleration',
  );
  const torque = given('T', s.torque * MILLI, 'N·m', words.torqueOfEachBrakeAt, 'balance');
  const force = given('F', s.force, 'N', words.brakingOfThisAxleAt, 'reading', 'stopForce');
  const others = given(
    'F_o',
    brake.vehicle.mass * s.deceleration - s.force,
    'N',
    words.brakingOfTheOtherAxle,
    'worked',
  );
  const pressed = given(
    'n_w',
    brake.vehicle.brakes * atWork(brake.hydraulics).own,
    '',
    words.brakesThatWork,
    'scene',
  );
  const energy = given(
    'E',
    s.energy * MILLI * MILLI,
    'kJ',
    words.energyOfTheStop,
    'reading',
    'stopEnergy',
  );
  const takes = given(
    'C',
    brake.drum.heatCapacity * MILLI * MILLI,
    'kJ/K',
    words.heatCapacityOfTheDrum,
    'scene',
  );
  const width = Math.max(brake.shoes.front.lining.width, brake.shoes.rear.lining.width);
  const far = given(
    'd',
    s.distance * MILLI,
    'm',
    words.stoppingDistance,
    'reading',
    'stopDistance',
  );
  const decel = otherwise
    ? over(sum(force, others), m)
    : over(product(n, torque), product(r, m, share));
  const heat: Term = otherwise
    ? over(product(torque, far), product(1000, r))
    : over(product(m, square(v), share), product(2000, n));
  const rubs = over(force, share);
  return {
    stopDistance: [over(square(v), product(2, a)), 'kinematics'],
    stopDeceleration: [decel, 'newton'],
    stopTime: [over(v, a), 'kinematics'],
    stopGrip: [
      otherwise ? over(greatest(rubs, over(others, less(1, share))), product(m, g)) : over(a, g),
      'newton',
    ],
    stopForce: [over(product(pressed, torque), r), 'newton'],
    stopShare: [
      otherwise ? over(product(100, force), product(m, a)) : product(100, share),
      'definition',
    ],
    stopEnergy: [heat, 'energy'],
    stopRise: [over(energy, takes), 'heat'],
    stopFaceRise: [
      flashTerm(
        s.energy,
        s.time,
        brake.drum.radiusNew,
        width,
        drumShareOf(brake),
        effusivity(brake.heat.drum),
      ),
      'flash',
    ],
  };
}

/** A search that ended so near to what was wanted has found it; else it came to the end of its range. */
const NEAR = 1e-3;

/** A search told by the two points that it ended between: x = x_1 + (y − y_1)·(x_2 − x_1)/(y_2 − y_1). */
export function between(
  of: (x: number) => number,
  at: number,
  step: number,
  [x, unitX, nameX]: readonly [string, string, string],
  [y, unitY, nameY]: readonly [string, string, string],
  wanted: number,
  scale: readonly [number, number] = [1, 1],
): Term {
  const low = Math.max(0, at - step);
  const near = Math.abs(of(at) - wanted) <= NEAR * Math.max(1, Math.abs(wanted));
  if (!near) return given(x, at * scale[0], unitX, words.theEndOfWhatIs(nameX), 'asked');
  const high = at + step;
  const one = given(`${x}_1`, low * scale[0], unitX, words.aLittleLess(nameX), 'asked');
  const two = given(`${x}_2`, high * scale[0], unitX, words.aLittleMore(nameX), 'asked');
  const less1 = given(`${y}_1`, of(low) * scale[1], unitY, words.byTheFirst(nameY), 'balance');
  const less2 = given(`${y}_2`, of(high) * scale[1], unitY, words.byTheSecond(nameY), 'balance');
  const need = given(y, wanted * scale[1], unitY, words.thatIsWanted(nameY), 'asked');
  return sum(one, over(product(less(need, less1), less(two, one)), less(less2, less1)));
}

/** Pressures beside the one that was found, MPa: so near that the line between them is the curve. */
const BESIDE = 1e-3;

/** Workings of what a wanted deceleration, mm/s², asks of the brake. */
export function slowingWorkings(
  rig: Rig,
  state: States,
  deceleration: number,
  speed: number,
  way: 1 | -1 = 1,
): Derivations {
  const { brake } = rig;
  const { m, r, n, share } = vehicleOf(rig);
  const found = pressureToSlow(rig, state, deceleration, speed, way);
  const torque = stopAt(rig, state, speed, found, way).torque;
  const a = given('a', deceleration * MILLI, 'm/s²', words.decelerationThatIsWanted, 'asked');
  const line = lineAt(brake, found);
  const slows = (p: number): number =>
    stopAt(rig, state, speed, masterFor(brake, p), way).deceleration;
  return {
    stopTorque: [
      sharesOtherwise(brake.hydraulics)
        ? given('T', torque * MILLI, 'N·m', words.torqueAtThePressureThat, 'balance')
        : over(product(m, a, share, r), n),
      'newton',
    ],
    stopPressure: [
      found === 0
        ? given('p', 0, 'bar', words.itSlowsSoWithThe, 'balance')
        : between(
            slows,
            line,
            BESIDE,
            ['p', 'bar', words.linePressure],
            ['a', 'm/s²', words.deceleration],
            deceleration,
            [1 / BAR, MILLI],
          ),
      'search',
    ],
    stopPedal: footTerm(brake, found),
  };
}

/** Workings of what the released brake costs at a road speed, mm/s. */
export function dragWorkings(rig: Rig, state: BrakeState, speed: number): Derivations {
  const { vehicle } = rig.brake;
  const d = roadDrag(rig, state, speed);
  const { m, r, n, g } = vehicleOf(rig);
  const torque = given('T_0', d.torque * MILLI, 'N·m', words.torqueOfTheBrakeLet, 'balance');
  const v = given('v', speed * MILLI, 'm/s', words.speed, 'asked');
  const rolls = given('c', vehicle.rolling, '', words.rollingResistanceOverWeight, 'scene');
  const air = given(
    'k',
    vehicle.air * KILO * KILO,
    'N/(m/s)²',
    words.airsDragOverSpeedSquared,
    'scene',
  );
  const power = over(product(torque, v), r);
  const road = product(sum(product(rolls, m, g), product(air, square(v))), v);
  const warm = Number.isFinite(d.power) ? dragHeat({ rig, state }, speed) : Number.NaN;
  return {
    dragTorque: [torque, 'coulomb'],
    dragPower: [power, 'power'],
    dragForce: [over(torque, r), 'power'],
    dragShare: [over(product(100, n, torque, v), product(r, road)), 'power'],
    dragSettles: [
      sum(
        given('ϑ_0', state.temperature, '°C', words.drumAsWarmAsIt, 'state'),
        given('Δϑ', warm, 'K', words.riseAtWhichItLoses, 'worked'),
      ),
      'settles',
    ],
  };
}

/** Workings of both wheels at a pressure in the line, MPa. */
export function wheelWorkings(
  rig: Rig,
  states: BothStates,
  line: number,
  way: 1 | -1,
  speed: number,
): Derivations {
  const torque = (wheel: 'left' | 'right'): number =>
    brakingTorque(rig, states[wheel], line, way, speed) * MILLI;
  const [left, right] = [torque('left'), torque('right')];
  const [more, fewer] = [Math.max(left, right), Math.min(left, right)];
  const one = (symbol: string, value: number, name: string) =>
    given(symbol, value, 'N·m', name, 'balance');
  const most = one('T_more', more, words.theStrongerWheel);
  const lacks = over(product(100, less(most, one('T_less', fewer, words.theWeakerWheel))), most);
  return {
    wheelLeft: [one('T_left', left, words.bothShoesOfTheLeft), 'coulomb'],
    wheelRight: [one('T_right', right, words.bothShoesOfTheRight), 'coulomb'],
    wheelDifference: [more > 0 ? lacks : one('T', 0, words.neitherBrakes), 'definition'],
  };
}
