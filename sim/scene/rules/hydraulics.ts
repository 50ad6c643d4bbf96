import { PI } from '../../units/units.ts';
import { sceneRulesHydraulics as words } from '../../words/en.ts';
import { over } from './pose.ts';
import { eachShoe, mm, must, type Rule } from './rule.ts';
import { inwardMoment } from './springs.ts';

/** What a line may keep, of what the springs hold: the rest is for cups and slack springs. */
const HELD = 0.9;

/** What stands between the foot and the wheel cylinders. */
export const hydraulicsRules: readonly Rule[] = [
  {
    name: words.linesOfTheName,
    reason: words.linesOfTheReason,
    broken: ({ hydraulics: { circuits, circuit } }) =>
      must(
        !circuits || circuits.give <= circuit,
        'hydraulics.circuits.give',
        `${circuits?.give} mm³/MPa`,
        words.atMostTheWholeCircuits(circuit),
      ),
  },
  {
    name: words.strokeForBothName,
    reason: words.strokeForBothReason,
    broken: ({ hydraulics: { circuits, masterStroke } }) =>
      must(
        !circuits || circuits.stroke < masterStroke,
        'hydraulics.circuits.stroke',
        mm(circuits?.stroke ?? 0),
        words.lessThanTheWholeStroke(mm(masterStroke)),
      ),
  },
  {
    name: words.kneeThatRisesName,
    reason: words.kneeThatRisesReason,
    broken: ({ hydraulics: { rearValve: valve } }) =>
      must(
        valve?.kind !== 'load' || valve.kneeLaden >= valve.kneeEmpty,
        'hydraulics.rearValve.kneeLaden',
        `${valve?.kind === 'load' ? valve.kneeLaden : 0} bar`,
        words.atLeastTheEmptyVehicles(valve?.kind === 'load' ? valve.kneeEmpty : 0),
      ),
  },
  {
    name: words.residualPressureUnderName,
    reason: words.residualPressureUnderReason,
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
          words.atMostBarWithThe(Math.max(0, most).toFixed(2), side),
        );
      });
    },
  },
];
