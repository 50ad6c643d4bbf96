import { PI } from '../../units/units.ts';
import { over } from './pose.ts';
import { eachShoe, mm, must, type Rule } from './rule.ts';
import { inwardMoment } from './springs.ts';

/** What a line may keep, of what the springs hold: the rest is for cups and slack springs. */
const HELD = 0.9;

/** What stands between the foot and the wheel cylinders. */
export const hydraulicsRules: readonly Rule[] = [
  {
    name: 'lines of the whole circuit',
    reason: 'The lines of this axle are a part of the whole circuit.',
    broken: ({ hydraulics: { circuits, circuit } }) =>
      must(
        !circuits || circuits.give <= circuit,
        'hydraulics.circuits.give',
        `${circuits?.give} mm³/MPa`,
        `at most the whole circuit's ${circuit} mm³/MPa`,
      ),
  },
  {
    name: 'stroke for both circuits',
    reason: 'Each circuit has its part of the master cylinder’s stroke.',
    broken: ({ hydraulics: { circuits, masterStroke } }) =>
      must(
        !circuits || circuits.stroke < masterStroke,
        'hydraulics.circuits.stroke',
        mm(circuits?.stroke ?? 0),
        `less than the whole stroke, ${mm(masterStroke)}`,
      ),
  },
  {
    name: 'knee that rises with the load',
    reason: 'A laden axle may be braked harder than an empty one.',
    broken: ({ hydraulics: { rearValve: valve } }) =>
      must(
        valve?.kind !== 'load' || valve.kneeLaden >= valve.kneeEmpty,
        'hydraulics.rearValve.kneeLaden',
        `${valve?.kind === 'load' ? valve.kneeLaden : 0} bar`,
        `at least the empty vehicle's ${valve?.kind === 'load' ? valve.kneeEmpty : 0} bar`,
      ),
  },
  {
    name: 'residual pressure under the springs',
    reason: 'The springs bring the shoes home against the pressure that stays in the line.',
    broken: (s) => {
      const { residualPressure: kept } = s.hydraulics;
      if (kept === 0) return [];
      const area = (PI / 4) * s.cylinder.bore * s.cylinder.bore;
      return eachShoe(s, (shoe, _, __, side) => {
        // N·mm about the anchor over mm² and mm: MPa, ten bar each.
        const most = (10 * HELD * inwardMoment(s, side)) / (area * over(shoe, shoe.toe));
        return must(
          kept <= most,
          'hydraulics.residualPressure',
          `${kept} bar`,
          `at most ${Math.max(0, most).toFixed(2)} bar with the ${side} shoe's springs`,
        );
      });
    },
  },
];
