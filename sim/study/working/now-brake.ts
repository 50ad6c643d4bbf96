import { isTold } from '../../balance/instant.ts';
import type { Side } from '../../brake/types.ts';
import { dragOf } from '../../readings/factors.ts';
import { type Role, roleOf } from '../../readings/roles.ts';
import { BAR, PI } from '../../units/units.ts';
import { studyWorkingNow as words } from '../../words/en.ts';
import type { Now } from './now-shoe.ts';
import { suffixOf } from './now-shoe.ts';
import { type Given, given, over, product, square, sum, type Term } from './term.ts';
import type { Derivations } from './working.ts';

/** mm to m. */
const MILLI = 1e-3;

const sideOf = (role: Role, turning: Now['instant']['turning']): Side =>
  roleOf('front', turning) === role ? 'front' : 'rear';

/** Workings of factors, torque and push: the brake as a whole. */
export function brakeWorkings({ rig, instant: i }: Now): Derivations {
  const { cylinder } = rig.brake;
  const short = { leading: 'lead', trailing: 'trail' } as const;
  const drag = (role: Role): Given => {
    const side = sideOf(role, i.turning);
    const force = dragOf(i, side) / i.drumRadius;
    const key = `drag${suffixOf(side)}` as const;
    return given(`F_d,${short[role]}`, force, 'N', words.dragOfShoe(role), 'reading', key);
  };
  const toe = (role: Role): Given => {
    const side = sideOf(role, i.turning);
    const force = Math.max(0, i.shoes[side].toeForce);
    const key = `toeForce${suffixOf(side)}` as const;
    return given(`F_${short[role]}`, force, 'N', words.leftOnItsToe(role), 'reading', key);
  };
  const push = (role: Role): Given => {
    const force = i.shoes[sideOf(role, i.turning)].pistonForce;
    return given(`F_p,${short[role]}`, force, 'N', words.pushOfPiston(role), 'balance');
  };
  const factor = (role: Role, by: (role: Role) => Given): Term => over(drag(role), by(role));
  const both = (by: (role: Role) => Given): Term =>
    sum(factor('leading', by), factor('trailing', by));
  const of = (side: Side): Given => {
    const force = isTold(i) ? dragOf(i, side) / i.drumRadius : Number.NaN;
    return given(`F_${side}`, force, 'N', words.drag(side), 'reading', `drag${suffixOf(side)}`);
  };
  const radius = given('R', i.drumRadius * MILLI, 'm', words.radiusOfDrum, 'state');
  const pressure = given('p', i.pressure, 'MPa', words.linePressure, 'reading', 'linePressure');
  const bore = given('d', cylinder.bore, 'mm', words.boreOfWheelCylinder, 'scene');
  const pi = given('π', PI, '', words.halfTurn, 'constant');
  return {
    brakeFactor: [both(toe), 'definition'],
    brakeFactorFull: [both(push), 'definition'],
    shoeFactorLeading: [factor('leading', toe), 'definition'],
    shoeFactorTrailing: [factor('trailing', toe), 'definition'],
    torque: [product(radius, sum(of('front'), of('rear'))), 'coulomb'],
    linePressure: [given('p', i.pressure / BAR, 'bar', words.inLineAsPressed, 'asked'), 'given'],
    pistonForce: [over(product(pressure, pi, square(bore)), 4), 'pascal'],
  };
}
