import { dress } from '../../balance/dress.ts';
import type { Instant } from '../../balance/instant.ts';
import { playNow } from '../../balance/ratchet.ts';
import { effusivity } from '../../brake/heat-of.ts';
import { strutLength } from '../../brake/state.ts';
import { decelerationBy } from '../../brake/stopping.ts';
import { dragOf } from '../../readings/factors.ts';
import { gapsOf, restGapOf } from '../../readings/roles.ts';
import { KM, PI } from '../../units/units.ts';
import { drumShareOf, stopped } from '../../wear/interface.ts';
import { studyWorkingNow as words } from '../../words/en.ts';
import { anchorAt, type BodyKind, freeBody, momentAbout } from '../free-body.ts';
import type { Now } from './now-shoe.ts';
import {
  type Given,
  given,
  greatest,
  least,
  less,
  over,
  product,
  root,
  sum,
  type Term,
} from './term.ts';
import { type Derivations, type Derived, derived } from './working.ts';

const mean = (of: Instant, now: Now, symbol: string, rest: boolean): Term => {
  const { shoes } = now.rig.brake;
  const gap = (side: 'front' | 'rear'): Given => {
    const { centre } = gapsOf(shoes[side], of.shoes[side]);
    const key =
      `${rest ? 'restClearance' : 'clearance'}${side === 'front' ? 'Front' : 'Rear'}` as const;
    return given(`${symbol}_${side}`, centre, 'mm', words.clearance(side), 'reading', key);
  };
  if (rest && of.restGap < 0) {
    return given('g_0', restGapOf(of, Number.NaN), 'mm', words.insideDrumBy, 'balance');
  }
  return over(sum(gap('front'), gap('rear')), 2);
};

const CLOSING: Readonly<Record<Exclude<BodyKind, 'strut'>, readonly [string, string]>> = {
  piston: ['M_p', words.piston],
  spring: ['M_s', words.returnSprings],
  climbing: ['M_c', words.climbingLever],
  'hold-down': ['M_h', words.holdDown],
  other: ['M_o', words.otherParts],
  normal: ['M_N', words.pressureOfDrum],
  friction: ['M_F', words.frictionOfDrum],
  anchor: ['M_a', words.frictionOfHeel],
};

/** Clamp of the strut: what closes the front shoe about its anchor, over the strut's arm (moments of a free body). */
function strut({ rig, state, instant: i }: Now): Derived {
  if (!(i.strutForce > 0)) {
    return [given('S', 0, 'N', words.shoesOffStrut, 'balance'), 'moments'];
  }
  const at = anchorAt(rig, i, 'front');
  const body = freeBody(rig, state, i, 'front');
  const clamp = body.find((f) => f.kind === 'strut');
  const arm = clamp ? momentAbout(clamp, at) / i.strutForce : Number.NaN;
  const kinds = [...new Set(body.map((f) => f.kind))];
  const moments = kinds.flatMap((kind) => {
    if (kind === 'strut') return [];
    const all = body.filter((f) => f.kind === kind);
    const [symbol, name] = CLOSING[kind];
    const moment = -all.reduce((m, f) => m + momentAbout(f, at), 0);
    return moment === 0
      ? []
      : [given(symbol, moment, 'N·mm', words.closingMoment(name), 'balance')];
  });
  return [over(sum(...moments), given('a_S', arm, 'mm', words.armOfStrut, 'balance')), 'moments'];
}

/** Parts of the face's temperature in a stop with the torque of this moment (wear/interface.ts). */
function face({ rig, state, instant: i }: Now, speed: number): Derived {
  const { brake } = rig;
  const torque = dragOf(i, 'front') + dragOf(i, 'rear');
  const { energy, time } = stopped(brake, speed, decelerationBy(brake.vehicle, torque));
  const width = Math.max(brake.shoes.front.lining.width, brake.shoes.rear.lining.width);
  const start = given('ϑ', state.temperature, '°C', words.drumBeforeStop, 'state');
  return [
    sum(
      start,
      flashTerm(
        energy,
        time,
        state.drumRadius,
        width,
        drumShareOf(brake),
        effusivity(brake.heat.drum),
      ),
    ),
    'flash',
  ];
}

/** (4/3)/√(2π)·γ·q_0·√t/e with q_0 = 2E/(t·2πRb): the same sum as `flashRise` (wear/interface.ts), K. */
export function flashTerm(
  energy: number,
  time: number,
  radius: number,
  width: number,
  share: number,
  takes: number,
): Term {
  const t = given('t_s', time, 's', words.timeOfStop, 'worked');
  const heat = given('E', energy, 'N·mm', words.energyOfStop, 'worked');
  const pi = given('π', PI, '', words.halfTurn, 'constant');
  const track = product(
    2,
    pi,
    given('R', radius, 'mm', words.radiusOfColdDrum, 'state'),
    given('b', width, 'mm', words.widthOfWiderLining, 'scene'),
  );
  const flux = over(product(2, heat), product(t, track));
  const rise = product(
    over(4, product(3, root(product(2, pi)))),
    given('γ', share, '', words.heatShareOfDrum, 'worked'),
    flux,
    root(t),
  );
  return over(rise, given('e', takes, 'N/(mm·K·√s)', words.effusivityOfDrum, 'scene'));
}

/** Workings of both shoes together, adjuster, drum and springs. @param speed that a stop is told from, mm/s */
export function adjusterWorkings(now: Now, speed: number): Derivations {
  const { rig, state, instant: i, rest } = now;
  const { brake } = rig;
  const { adjuster } = brake;
  const next = state.tooth < adjuster.teeth;
  const here = given('L_n', strutLength(brake, state.tooth), 'mm', words.strutAtStep, 'scene');
  const long = next ? strutLength(brake, state.tooth + 1) : Number.NaN;
  const longer = given('L_n+1', long, 'mm', words.strutAtNextStep, 'scene');
  const play = playNow(brake, state.condition);
  const lost =
    play === adjuster.lostMotion
      ? given('ℓ', play, 'mm', words.lostMotion, 'scene')
      : given('ℓ', play, 'mm', words.lostMotionSpringOff, 'state');
  const seats = given('s', i.separation, 'mm', words.seatsApart, 'balance');
  const length = given('L', i.strutLength, 'mm', words.lengthOfStrut, 'state');
  const lively = given('c', state.condition.leverSpring, '', words.strengthOfLeverSpring, 'state');
  const tooth = less(longer, here);
  const springs = i.springs.map((spring, n) => springWorking(now, spring, n));
  const climbed = over(less(less(seats, length), lost), tooth);
  return {
    clearanceMean: [mean(i, now, 'g', false), 'definition'],
    restClearanceMean: [mean(rest, now, 'g', true), 'definition'],
    tooth: [given('n', state.tooth, '', words.stepsTaken, 'state'), 'given'],
    strutForce: strut(now),
    separation: [less(seats, length), 'geometry'],
    toNextTooth: [sum(lost, product(less(2, lively), tooth)), 'ratchet'],
    climb: [
      next && dress(rig, state).nextTooth > 0 && Number.isFinite(play)
        ? product(100, least(1, greatest(0, climbed)))
        : given('n', 0, '', next ? words.nothingClimbed : words.noToothFollows, 'state'),
      'ratchet',
    ],
    drumDiameter: [
      product(2, given('R', state.drumRadius, 'mm', words.radiusOfColdDrum, 'state')),
      'geometry',
    ],
    temperature: [given('ϑ', state.temperature, '°C', words.drumAsWarm, 'state'), 'given'],
    stopFace: face(now, speed),
    distance: [given('s', state.distance / KM, 'km', words.driven, 'state'), 'given'],
    leverOffStop: [given('x_h', state.leverOffStop, 'mm', words.heldOffByCable, 'state'), 'given'],
    ...Object.assign({}, ...springs),
  };
}

/** Pull of a return spring: F = c·(F_0 + k·(l − l_0)), none below nothing (extension spring, forces/spring.ts). */
function springWorking(
  { rig, state }: Now,
  { from, to }: Now['instant']['springs'][number],
  n: number,
): Derivations {
  const spring = rig.brake.springs[n];
  if (!spring) return {};
  const { condition } = state;
  const strength = condition.unhooked?.includes(n) ? 0 : condition.springFactor;
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const long = given('l', Math.sqrt(dx * dx + dy * dy), 'mm', words.eyeToEyeNow, 'balance');
  const stretch = less(
    long,
    given('l_0', spring.fittedLength, 'mm', words.eyeToEyeFitted, 'scene'),
  );
  const pull = sum(
    given('F_0', spring.fitted, 'N', words.pullAsFitted, 'scene'),
    product(given('k', spring.rate, 'N/mm', words.rate, 'scene'), stretch),
  );
  const as = given('c', strength, '', words.strengthAsIs, 'state');
  return { [`spring${n}`]: derived(greatest(0, product(as, pull)), 'hooke') };
}
