import type { Instant } from '../../balance/instant.ts';
import type { PedalStack } from '../../brake/pedal.ts';
import type { Brake } from '../../brake/types.ts';
import { working as atWork, lostStroke, masterArea, masterFor } from '../../brake/upstream.ts';
import { pedalStack } from '../../readings/pedal.ts';
import { type PedalCurve, type PedalPoint, pedalParts } from '../pedal-curve.ts';
import { given, greatest, less, over, product, sum, type Term } from './term.ts';
import type { Derivations, Derived } from './working.ts';

/** Workings of the pedal: its travel as a stack, and the foot's force (brake/pedal.ts, brake/upstream.ts). */

const ratio = ({ hydraulics }: Brake) =>
  given('i', hydraulics.pedalRatio, '', 'Ratio of the pedal', 'scene');
const master = ({ hydraulics }: Brake) =>
  given('A_m', masterArea(hydraulics), 'mm²', 'Area of the master cylinder, π·d²/4', 'worked');

/** Travel at the pedal that a volume of the master cylinder takes. */
const atPedal = (brake: Brake, volume: Term): Term =>
  over(product(ratio(brake), volume), master(brake));

const freePlay = (brake: Brake): Term =>
  product(
    ratio(brake),
    given('s_0', brake.hydraulics.freePlay, 'mm', 'Free play at the push rod', 'scene'),
  );

const brakesPressed = (brake: Brake): Term =>
  given(
    'n',
    brake.vehicle.brakes * atWork(brake.hydraulics).own,
    '',
    'Brakes of this axle that are pressed',
    'scene',
  );

/** Travel that moves the pistons of all brakes of the axle that are pressed. @param volume of one, mm³ */
function pistons(brake: Brake, volume: number): Term {
  const n = brakesPressed(brake);
  const v = given('V', volume, 'mm³', 'Fluid that one brake takes', 'reading', 'fluid');
  return atPedal(brake, product(n, v));
}

/** Travel that goes into hoses and fluid. @param line in this axle's line, @param from of the master, MPa */
function circuit(brake: Brake, line: number, from: number): Term {
  const { hydraulics: h } = brake;
  const { own, other } = atWork(h);
  const give = h.circuits?.give ?? 0;
  const rest = given(
    'C',
    (h.circuit - give) * other,
    'mm³/MPa',
    'Give of the circuit without this axle’s lines',
    'scene',
  );
  const all = product(rest, given('p_m', from, 'MPa', 'Pressure of the master cylinder', 'worked'));
  if (give === 0) return atPedal(brake, all);
  return atPedal(brake, sum(all, linesVolume(give * own, line, h.residual)));
}

const linesVolume = (give: number, line: number, kept: number): Term =>
  product(
    given('C_own', give, 'mm³/MPa', 'Give of this axle’s lines', 'scene'),
    greatest(
      0,
      less(
        given('p', line, 'MPa', 'Pressure in this axle’s line', 'reading', 'linePressure'),
        given('p_0', kept, 'MPa', 'Pressure that stays in it', 'scene'),
      ),
    ),
  );

/** Foot for a pressure of the master cylinder, MPa: over the lever, less a booster's help. */
export function footTerm(brake: Brake, pressure: number): Derived {
  const { hydraulics: h } = brake;
  const p = given('p_m', pressure, 'MPa', 'Pressure of the master cylinder', 'worked');
  const rod = over(product(p, master(brake)), ratio(brake));
  const { booster } = h;
  if (!booster) return [rod, 'lever'];
  const gain = given('B', booster.gain, '', 'Gain of the booster', 'scene');
  const knee = given('F_B', booster.knee, 'N', 'Foot at which its help is spent', 'scene');
  const force = (pressure * masterArea(h)) / h.pedalRatio;
  return force <= booster.gain * booster.knee
    ? [over(rod, gain), 'booster']
    : [less(rod, product(less(gain, 1), knee)), 'booster'];
}

/** Parts of a travel, those that are there, each told as a number. */
function stack(p: PedalStack): Term {
  const one = (symbol: string, value: number, name: string) =>
    given(symbol, value, 'mm', name, 'worked');
  const own = [
    given('x_free', p.freePlay, 'mm', 'Free play at the pedal', 'reading', 'pedalFree'),
    given('x_gaps', p.gaps, 'mm', 'Moves the pistons', 'reading', 'pedalGaps'),
    given('x_circuit', p.circuit, 'mm', 'Give in the circuit', 'reading', 'pedalCircuit'),
  ];
  const more = [
    one('x_air', p.air, 'Air in the circuit'),
    one('x_booster', p.booster, 'Play of the booster'),
    one('x_back', p.rollBack, 'Pistons that seals drew back'),
    one('x_lost', p.lost, 'Stroke of the failed circuit'),
  ].filter((g) => g.value !== 0);
  return sum(...own, ...more);
}

/** Workings of the pedal at an instant. */
export function pedalWorkings(brake: Brake, i: Instant): Derivations {
  const { hydraulics: h } = brake;
  const from = i.pressure > h.residual ? masterFor(brake, i.pressure) : 0;
  const p = pedalStack(brake, i);
  const alone = i.cableForce > 0 && !(i.pressure > 0);
  const travel = (side: 'front' | 'rear') => {
    const x = alone ? 0 : i.shoes[side].pistonTravel;
    const key = side === 'front' ? 'pistonTravelFront' : 'pistonTravelRear';
    return given(`x_${side}`, x, 'mm', `Piston travel, ${side}`, 'reading', key);
  };
  const area = given(
    'A',
    brake.cylinder.area,
    'mm²',
    'Area of the wheel cylinder, π·d²/4',
    'worked',
  );
  const out = (side: 'front' | 'rear') =>
    given(`x_${side}`, i.shoes[side].pistonTravel, 'mm', `Piston travel, ${side}`, 'reading');
  return {
    pedalTravel: [stack(p), 'stack'],
    pedalFree: [freePlay(brake), 'lever'],
    pedalGaps: [pistons(brake, p.fluid), 'pascal'],
    pedalCircuit: [circuit(brake, i.pressure, from), 'pascal'],
    pedalForce: footTerm(brake, from),
    fluid: [
      product(area, sum(greatest(0, travel('front')), greatest(0, travel('rear')))),
      'pascal',
    ],
    runOut: [
      less(
        given('s', brake.cylinder.stroke, 'mm', 'Stroke of each piston', 'scene'),
        greatest(out('front'), out('rear')),
      ),
      'geometry',
    ],
  };
}

/** Workings of the pedal's way down. */
export function curveWorkings(brake: Brake, c: PedalCurve): Derivations {
  const { hydraulics: h } = brake;
  const at = (p: PedalPoint | null): Derived => (p ? [stack(p), 'stack'] : NONE);
  const foot = (p: PedalPoint | null): Derived => (p ? footTerm(brake, p.pressure) : NONE);
  const total = c.points.at(-1)?.total ?? Number.NaN;
  const floor = given(
    'x_floor',
    c.floor,
    'mm',
    'Master cylinder at its end',
    'reading',
    'pedalFloor',
  );
  const end = given('x_pedal', total, 'mm', 'Pedal at that push', 'worked');
  const play = given(
    's_B',
    h.booster?.play ?? 0,
    'mm',
    'Play of the booster at the push rod',
    'scene',
  );
  const before = given('s_0', h.freePlay, 'mm', 'Free play at the push rod', 'scene');
  const stroke = given('s_m', h.masterStroke, 'mm', 'Stroke of the master cylinder', 'scene');
  return {
    pedalTouch: at(c.touch),
    pedalTouchForce: foot(c.touch),
    pedalSeated: at(c.seated),
    pedalSeatedForce: foot(c.seated),
    pedalFloor: [
      product(ratio(brake), h.booster ? sum(before, play, stroke) : sum(before, stroke)),
      'lever',
    ],
    pedalReserve: [less(floor, end), 'geometry'],
  };
}

/** Of what there is nothing to read. */
const NONE: Derived = [given('x', Number.NaN, '', '', 'worked'), 'given'];

/** Workings of where that travel goes. */
export function partWorkings(brake: Brake, c: PedalCurve): Derivations {
  const { hydraulics: h } = brake;
  const { own, other } = atWork(h);
  const p = pedalParts(c);
  const last = c.points.at(-1) as PedalPoint;
  const whole = given(
    'V_end',
    last.fluid,
    'mm³',
    'Fluid that one brake takes at the end',
    'balance',
  );
  const seated = c.seated
    ? given('V_seated', c.seated.fluid, 'mm³', 'Of it until both linings lie', 'balance')
    : whole;
  const n = brakesPressed(brake);
  const give = h.circuits?.give ?? 0;
  const one = (symbol: string, value: number, name: string) =>
    given(symbol, value, 'mm', name, 'worked');
  const rest = atPedal(
    brake,
    product(
      given('C', (h.circuit - give) * other, 'mm³/MPa', 'Give of the rest of the circuit', 'scene'),
      given('p_m', last.pressure, 'MPa', 'Pressure of the master cylinder', 'asked'),
    ),
  );
  const back = given('x_seal', h.rollBack, 'mm', 'How far a seal draws its piston back', 'scene');
  const area = given(
    'A',
    brake.cylinder.area,
    'mm²',
    'Area of the wheel cylinder, π·d²/4',
    'worked',
  );
  return {
    partFree: [freePlay(brake), 'lever'],
    partBooster: [
      product(
        ratio(brake),
        given('s_B', h.booster?.play ?? 0, 'mm', 'Play of the booster', 'scene'),
      ),
      'lever',
    ],
    partLost: [
      product(ratio(brake), given('s_l', lostStroke(h), 'mm', 'Stroke that is lost', 'scene')),
      'lever',
    ],
    partRollBack: [atPedal(brake, product(2, n, area, back)), 'pascal'],
    partToDrum: [atPedal(brake, product(n, seated)), 'pascal'],
    partElastic: [atPedal(brake, product(n, less(whole, seated))), 'pascal'],
    partLines: [atPedal(brake, linesVolume(give * own, last.line, h.residual)), 'pascal'],
    partRest: [
      last.air > 0 ? sum(rest, one('x_air', last.air, 'Air in the circuit')) : rest,
      'pascal',
    ],
    partOwn: [
      over(
        product(
          100,
          sum(
            one('x_back', p.rollBack, 'Pistons drawn back'),
            one('x_gaps', last.gaps, 'Shoes to the drum and their give'),
            one('x_lines', p.ownLines, 'Give of its lines'),
          ),
        ),
        one('x_pedal', p.total, 'The whole travel'),
      ),
      'definition',
    ],
  };
}
