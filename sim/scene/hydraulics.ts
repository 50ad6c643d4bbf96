import * as v from 'valibot';
import type { Hydraulics } from '../brake/types.ts';
import { BAR } from '../units/units.ts';
import { choice, num, part, size } from './parts.ts';

const kind = <const K extends string>(name: K, about: string) =>
  v.pipe(v.literal(name), v.description(about));
const slope = num(
  'Growth of this axle’s pressure over the master cylinder’s above the knee',
  'plain number',
  0.05,
  1,
);
const knee = (about: string) => num(about, 'bar', 0, 200);

/** Pedal, master cylinder, and what may stand between them and this axle's wheel cylinders. */
export const hydraulicsPart = part('Pedal and circuit', {
  masterBore: size('Bore of the master cylinder', 'mm', 100),
  pedalRatio: size('Pedal ratio', 'plain number', 50),
  freePlay: num('Free play at the push rod', 'mm', 0, 50),
  circuit: num('Give of the rest of the circuit', 'mm³/MPa', 0, 1e5),
  // Common practice: tandem cylinders of small vehicles have 30 to 36 mm, both pistons together.
  masterStroke: v.optional(size('Stroke of the master cylinder to its end', 'mm', 200), 32),
  booster: v.optional(
    part('Booster; none when left out', {
      gain: num('Push on the master’s piston over the foot’s', 'plain number', 1, 20),
      knee: size('Force of the foot at which its help is spent', 'N', 2000),
      play: v.optional(num('Travel at the push rod before it helps', 'mm', 0, 10), 0),
    }),
  ),
  rearValve: v.optional(
    v.pipe(
      v.variant(
        'kind',
        [
          part('A knee that stays', {
            kind: kind('fixed', 'The knee is always the same'),
            knee: knee('Pressure from which it holds back'),
            slope,
          }),
          part('A knee that goes with the load', {
            kind: kind('load', 'A rod or spring to the axle shifts the knee'),
            kneeEmpty: knee('Pressure from which it holds back, the vehicle empty'),
            kneeLaden: knee('The same with the vehicle laden'),
            load: v.optional(num('Load, 0 empty to 1 laden', 'plain number', 0, 1), 0),
            slope,
          }),
        ],
        'a kind: fixed or load',
      ),
      v.description('Valve that holds this axle’s pressure back; none when left out'),
    ),
  ),
  circuits: v.optional(
    part('Two circuits from a tandem master cylinder; one for all when left out', {
      split: choice('One circuit an axle, or each with one brake of either', ['axles', 'diagonal']),
      give: num('Give of the lines of this axle’s brakes, of the whole give', 'mm³/MPa', 0, 1e5),
      stroke: size('Stroke of the piston of this axle’s circuit to its end', 'mm', 200),
      failed: v.optional(
        choice('Circuit that holds no pressure', ['none', 'this', 'other']),
        'none',
      ),
    }),
  ),
  residualPressure: v.optional(
    num('Pressure that a valve keeps in this axle’s line after release', 'bar', 0, 5),
    0,
  ),
  cupRollBack: v.optional(
    num('How far its seal draws each piston back off its shoe at release', 'mm', 0, 2),
    0,
  ),
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
