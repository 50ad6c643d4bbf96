import { dress } from '../../balance/dress.ts';
import type { Instant } from '../../balance/instant.ts';
import { effusivity } from '../../brake/heat-of.ts';
import { strutLength } from '../../brake/state.ts';
import { decelerationBy } from '../../brake/stopping.ts';
import { dragOf } from '../../readings/factors.ts';
import { gapsOf, restGapOf } from '../../readings/roles.ts';
import { KM, PI } from '../../units/units.ts';
import { drumShareOf, stopped } from '../../wear/interface.ts';
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
    return given(`${symbol}_${side}`, centre, 'mm', `Clearance, ${side}`, 'reading', key);
  };
  if (rest && of.restGap < 0) {
    return given(
      'g_0',
      restGapOf(of, Number.NaN),
      'mm',
      'Both linings inside the drum by',
      'balance',
    );
  }
  return over(sum(gap('front'), gap('rear')), 2);
};

const CLOSING: Readonly<Record<Exclude<BodyKind, 'strut'>, readonly [string, string]>> = {
  piston: ['M_p', 'Piston'],
  spring: ['M_s', 'Return springs'],
  climbing: ['M_c', 'Climbing lever'],
  'hold-down': ['M_h', 'Hold-down'],
  other: ['M_o', 'Other parts'],
  normal: ['M_N', 'Pressure of the drum'],
  friction: ['M_F', 'Friction of the drum'],
  anchor: ['M_a', 'Friction of the heel'],
};

/** Clamp of the strut: what closes the front shoe about its anchor, over the strut's arm (moments of a free body). */
function strut({ rig, state, instant: i }: Now): Derived {
  if (!(i.strutForce > 0)) {
    return [given('S', 0, 'N', 'The shoes stand off the strut', 'balance'), 'moments'];
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
      : [
          given(
            symbol,
            moment,
            'N·mm',
            `${name}: moment about the front anchor, closing`,
            'balance',
          ),
        ];
  });
  return [
    over(
      sum(...moments),
      given('a_S', arm, 'mm', 'Arm of the strut about the front anchor', 'balance'),
    ),
    'moments',
  ];
}

/** Parts of the face's temperature in a stop with the torque of this moment (wear/interface.ts). */
function face({ rig, state, instant: i }: Now, speed: number): Derived {
  const { brake } = rig;
  const torque = dragOf(i, 'front') + dragOf(i, 'rear');
  const { energy, time } = stopped(brake, speed, decelerationBy(brake.vehicle, torque));
  const width = Math.max(brake.shoes.front.lining.width, brake.shoes.rear.lining.width);
  const start = given('ϑ', state.temperature, '°C', 'Drum before the stop', 'state');
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
  const t = given('t_s', time, 's', 'Time of the stop', 'worked');
  const heat = given('E', energy, 'N·mm', 'Energy of the stop in this brake', 'worked');
  const pi = given('π', PI, '', 'Half a turn in radians', 'constant');
  const track = product(
    2,
    pi,
    given('R', radius, 'mm', 'Radius of the cold drum', 'state'),
    given('b', width, 'mm', 'Width of the wider lining', 'scene'),
  );
  const flux = over(product(2, heat), product(t, track));
  const rise = product(
    over(4, product(3, root(product(2, pi)))),
    given('γ', share, '', 'Share of the heat that the drum takes', 'worked'),
    flux,
    root(t),
  );
  return over(rise, given('e', takes, 'N/(mm·K·√s)', 'Effusivity of the drum, √(k·ρ·c)', 'scene'));
}

/** Workings of both shoes together, adjuster, drum and springs. @param speed that a stop is told from, mm/s */
export function adjusterWorkings(now: Now, speed: number): Derivations {
  const { rig, state, instant: i, rest } = now;
  const { brake } = rig;
  const { adjuster } = brake;
  const next = state.tooth < adjuster.teeth;
  const here = given('L_n', strutLength(brake, state.tooth), 'mm', 'Strut at this step', 'scene');
  const long = next ? strutLength(brake, state.tooth + 1) : Number.NaN;
  const longer = given('L_n+1', long, 'mm', 'Strut at the next step', 'scene');
  const lost = given('ℓ', adjuster.lostMotion, 'mm', 'Lost motion', 'scene');
  const seats = given('s', i.separation, 'mm', 'Seats of the strut apart', 'balance');
  const length = given('L', i.strutLength, 'mm', 'Length of the strut', 'state');
  const lively = given(
    'c',
    state.condition.leverSpring,
    '',
    'Strength of the lever’s spring',
    'state',
  );
  const tooth = less(longer, here);
  const springs = i.springs.map((spring, n) => springWorking(now, spring, n));
  const climbed = over(less(less(seats, length), lost), tooth);
  return {
    clearanceMean: [mean(i, now, 'g', false), 'definition'],
    restClearanceMean: [mean(rest, now, 'g', true), 'definition'],
    tooth: [given('n', state.tooth, '', 'Steps taken, counted', 'state'), 'given'],
    strutForce: strut(now),
    separation: [less(seats, length), 'geometry'],
    toNextTooth: [sum(lost, product(less(2, lively), tooth)), 'ratchet'],
    climb: [
      next && dress(rig, state).nextTooth > 0
        ? product(100, least(1, greatest(0, climbed)))
        : given('n', 0, '', 'No tooth follows', 'state'),
      'ratchet',
    ],
    drumDiameter: [
      product(2, given('R', state.drumRadius, 'mm', 'Radius of the cold drum', 'state')),
      'geometry',
    ],
    temperature: [given('ϑ', state.temperature, '°C', 'Drum as warm as it is', 'state'), 'given'],
    stopFace: face(now, speed),
    distance: [given('s', state.distance / KM, 'km', 'Driven, counted', 'state'), 'given'],
    leverOffStop: [
      given('x_h', state.leverOffStop, 'mm', 'Held off by the cable', 'state'),
      'given',
    ],
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
  const long = given('l', Math.sqrt(dx * dx + dy * dy), 'mm', 'Eye to eye now', 'balance');
  const stretch = less(
    long,
    given('l_0', spring.fittedLength, 'mm', 'Eye to eye as fitted', 'scene'),
  );
  const pull = sum(
    given('F_0', spring.fitted, 'N', 'Pull as fitted', 'scene'),
    product(given('k', spring.rate, 'N/mm', 'Rate', 'scene'), stretch),
  );
  const as = given('c', strength, '', 'Strength as it is, new 1', 'state');
  return { [`spring${n}`]: derived(greatest(0, product(as, pull)), 'hooke') };
}
