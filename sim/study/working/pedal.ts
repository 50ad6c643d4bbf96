import type { Instant } from '../../balance/instant.ts';
import type { PedalStack } from '../../brake/pedal.ts';
import type { Brake } from '../../brake/types.ts';
import { working as atWork, lostStroke, masterArea, masterFor } from '../../brake/upstream.ts';
import { pedalStack } from '../../readings/pedal.ts';
import { studyWorkingPedal as words } from '../../words/en.ts';
import { type PedalCurve, type PedalPoint, pedalParts } from '../pedal-curve.ts';
import { given, greatest, less, over, product, sum, type Term } from './term.ts';
import type { Derivations, Derived } from './working.ts';

/** Workings of the pedal: its travel as a stack, and the foot's force (brake/pedal.ts, brake/upstream.ts). */

const ratio = ({ hydraulics }: Brake) =>
  given('i', hydraulics.pedalRatio, '', words.ratioOfThePedal, 'scene');
const master = ({ hydraulics }: Brake) =>
  given('A_m', masterArea(hydraulics), 'mm²', words.areaOfTheMasterCylinder, 'worked');

/** Travel at the pedal that a volume of the master cylinder takes. */
const atPedal = (brake: Brake, volume: Term): Term =>
  over(product(ratio(brake), volume), master(brake));

const freePlay = (brake: Brake): Term =>
  product(
    ratio(brake),
    given('s_0', brake.hydraulics.freePlay, 'mm', words.freePlayAtThePush, 'scene'),
  );

const brakesPressed = (brake: Brake): Term =>
  given(
    'n',
    brake.vehicle.brakes * atWork(brake.hydraulics).own,
    '',
    words.brakesThatArePressed,
    'scene',
  );

/** Travel that moves the pistons of all brakes of the axle that are pressed. @param volume of one, mm³ */
function pistons(brake: Brake, volume: number): Term {
  const n = brakesPressed(brake);
  const v = given('V', volume, 'mm³', words.fluidThatOneBrakeTakes, 'reading', 'fluid');
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
    words.giveWithoutThisAxlesLines,
    'scene',
  );
  const all = product(rest, given('p_m', from, 'MPa', words.pressureOfTheMasterCylinder, 'worked'));
  if (give === 0) return atPedal(brake, all);
  return atPedal(brake, sum(all, linesVolume(give * own, line, h.residual)));
}

const linesVolume = (give: number, line: number, kept: number): Term =>
  product(
    given('C_own', give, 'mm³/MPa', words.giveOfThisAxlesLines, 'scene'),
    greatest(
      0,
      less(
        given('p', line, 'MPa', words.pressureInThisAxlesLine, 'reading', 'linePressure'),
        given('p_0', kept, 'MPa', words.pressureThatStaysInIt, 'scene'),
      ),
    ),
  );

/** Foot for a pressure of the master cylinder, MPa: over the lever, less a booster's help. */
export function footTerm(brake: Brake, pressure: number): Derived {
  const { hydraulics: h } = brake;
  const p = given('p_m', pressure, 'MPa', words.pressureOfTheMasterCylinder, 'worked');
  const rod = over(product(p, master(brake)), ratio(brake));
  const { booster } = h;
  if (!booster) return [rod, 'lever'];
  const gain = given('B', booster.gain, '', words.gainOfTheBooster, 'scene');
  const knee = given('F_B', booster.knee, 'N', words.footAtWhichItsHelp, 'scene');
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
    given('x_free', p.freePlay, 'mm', words.freePlayAtThePedal, 'reading', 'pedalFree'),
    given('x_gaps', p.gaps, 'mm', words.movesThePistons, 'reading', 'pedalGaps'),
    given('x_circuit', p.circuit, 'mm', words.giveInTheCircuit, 'reading', 'pedalCircuit'),
  ];
  const more = [
    one('x_air', p.air, words.airInTheCircuit),
    one('x_booster', p.booster, words.playOfTheBooster),
    one('x_back', p.rollBack, words.pistonsThatSealsDrewBack),
    one('x_lost', p.lost, words.strokeOfTheFailedCircuit),
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
    return given(`x_${side}`, x, 'mm', words.pistonTravel(side), 'reading', key);
  };
  const area = given('A', brake.cylinder.area, 'mm²', words.areaOfTheWheelCylinder, 'worked');
  const out = (side: 'front' | 'rear') =>
    given(`x_${side}`, i.shoes[side].pistonTravel, 'mm', words.pistonTravel(side), 'reading');
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
        given('s', brake.cylinder.stroke, 'mm', words.strokeOfEachPiston, 'scene'),
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
    words.masterCylinderAtItsEnd,
    'reading',
    'pedalFloor',
  );
  const end = given('x_pedal', total, 'mm', words.pedalAtThatPush, 'worked');
  const play = given('s_B', h.booster?.play ?? 0, 'mm', words.playOfTheBoosterAt, 'scene');
  const before = given('s_0', h.freePlay, 'mm', words.freePlayAtThePush, 'scene');
  const stroke = given('s_m', h.masterStroke, 'mm', words.strokeOfTheMasterCylinder, 'scene');
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
  const whole = given('V_end', last.fluid, 'mm³', words.fluidThatOneBrakeTakesAtTheEnd, 'balance');
  const seated = c.seated
    ? given('V_seated', c.seated.fluid, 'mm³', words.ofItUntilBothLinings, 'balance')
    : whole;
  const n = brakesPressed(brake);
  const give = h.circuits?.give ?? 0;
  const one = (symbol: string, value: number, name: string) =>
    given(symbol, value, 'mm', name, 'worked');
  const rest = atPedal(
    brake,
    product(
      given('C', (h.circuit - give) * other, 'mm³/MPa', words.giveOfTheRestOf, 'scene'),
      given('p_m', last.pressure, 'MPa', words.pressureOfTheMasterCylinder, 'asked'),
    ),
  );
  const back = given('x_seal', h.rollBack, 'mm', words.howFarASealDraws, 'scene');
  const area = given('A', brake.cylinder.area, 'mm²', words.areaOfTheWheelCylinder, 'worked');
  return {
    partFree: [freePlay(brake), 'lever'],
    partBooster: [
      product(
        ratio(brake),
        given('s_B', h.booster?.play ?? 0, 'mm', words.playOfTheBooster, 'scene'),
      ),
      'lever',
    ],
    partLost: [
      product(ratio(brake), given('s_l', lostStroke(h), 'mm', words.strokeThatIsLost, 'scene')),
      'lever',
    ],
    partRollBack: [atPedal(brake, product(2, n, area, back)), 'pascal'],
    partToDrum: [atPedal(brake, product(n, seated)), 'pascal'],
    partElastic: [atPedal(brake, product(n, less(whole, seated))), 'pascal'],
    partLines: [atPedal(brake, linesVolume(give * own, last.line, h.residual)), 'pascal'],
    partRest: [
      last.air > 0 ? sum(rest, one('x_air', last.air, words.airInTheCircuit)) : rest,
      'pascal',
    ],
    partOwn: [
      over(
        product(
          100,
          sum(
            one('x_back', p.rollBack, words.pistonsDrawnBack),
            one('x_gaps', last.gaps, words.shoesToTheDrumAnd),
            one('x_lines', p.ownLines, words.giveOfItsLines),
          ),
        ),
        one('x_pedal', p.total, words.theWholeTravel),
      ),
      'definition',
    ],
  };
}
