import * as v from 'valibot';
import type { Hydraulics } from '../brake/types.ts';
import { BAR } from '../units/units.ts';
import { sceneHydraulics as words } from '../words/en.ts';
import { choice, num, part, size } from './parts.ts';

const kind = <const K extends string>(name: K, about: string) =>
  v.pipe(v.literal(name), v.description(about));
const slope = num(words.growthOfThisAxlesPressure, 'plain number', 0.05, 1);
const knee = (about: string) => num(about, 'bar', 0, 200);

/** Pedal, master cylinder, and what may stand between them and this axle's wheel cylinders. */
export const hydraulicsPart = part(words.pedalAndCircuit, {
  masterBore: size(words.boreOfTheMasterCylinder, 'mm', 100),
  pedalRatio: size(words.pedalRatio, 'plain number', 50),
  freePlay: num(words.freePlayAtThePush, 'mm', 0, 50),
  circuit: num(words.giveOfTheRestOf, 'mm³/MPa', 0, 1e5),
  // Common practice: tandem cylinders of small vehicles have 30 to 36 mm, both pistons together.
  masterStroke: v.optional(size(words.strokeOfTheMasterCylinder, 'mm', 200), 32),
  booster: v.optional(
    part(words.boosterNoneWhenLeftOut, {
      gain: num(words.pushOnTheMastersPiston, 'plain number', 1, 20),
      knee: size(words.forceOfTheFootAt, 'N', 2000),
      play: v.optional(num(words.travelAtThePushRod, 'mm', 0, 10), 0),
    }),
  ),
  rearValve: v.optional(
    v.pipe(
      v.variant(
        'kind',
        [
          part(words.aKneeThatStays, {
            kind: kind('fixed', words.theKneeIsAlwaysThe),
            knee: knee(words.pressureFromWhichItHolds),
            slope,
          }),
          part(words.aKneeThatGoesWith, {
            kind: kind('load', words.aRodOrSpringTo),
            kneeEmpty: knee(words.pressureFromWhichItHolds2),
            kneeLaden: knee(words.theSameWithTheVehicle),
            load: v.optional(num(words.load0EmptyTo1, 'plain number', 0, 1), 0),
            slope,
          }),
        ],
        words.aKindFixedOrLoad,
      ),
      v.description(words.valveThatHoldsThisAxles),
    ),
  ),
  circuits: v.optional(
    part(words.twoCircuitsFromATandem, {
      split: choice(words.oneCircuitAnAxleOr, ['axles', 'diagonal']),
      give: num(words.giveOfTheLinesOf, 'mm³/MPa', 0, 1e5),
      stroke: size(words.strokeOfThePistonOf, 'mm', 200),
      failed: v.optional(
        choice(words.circuitThatHoldsNoPressure, ['none', 'this', 'other']),
        'none',
      ),
    }),
  ),
  residualPressure: v.optional(num(words.pressureThatAValveKeeps, 'bar', 0, 5), 0),
  cupRollBack: v.optional(num(words.howFarItsSealDraws, 'mm', 0, 2), 0),
});
type HydraulicsPart = v.InferOutput<typeof hydraulicsPart>;

function toValve(valve: HydraulicsPart['rearValve']): Hydraulics['rearValve'] {
  if (!valve) return null;
  const at =
    valve.kind === 'fixed'
      ? valve.knee
      : valve.kneeEmpty + valve.load * (valve.kneeLaden - valve.kneeEmpty);
  return { knee: at * BAR, slope: valve.slope };
}

/** From the file's units to inside units. */
export const toHydraulics = (h: HydraulicsPart): Hydraulics => ({
  masterBore: h.masterBore,
  pedalRatio: h.pedalRatio,
  freePlay: h.freePlay,
  circuit: h.circuit,
  masterStroke: h.masterStroke,
  booster: h.booster ?? null,
  rearValve: toValve(h.rearValve),
  circuits: h.circuits ?? null,
  residual: h.residualPressure * BAR,
  rollBack: h.cupRollBack,
});
