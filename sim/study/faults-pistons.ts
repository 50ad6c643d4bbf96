import { PI } from '../units/units.ts';
import { ailing, type FaultChange } from './fault-types.ts';

/** Faults of return springs, pistons and fluid. */
export const pistonFaults = {
  'weak springs': {
    wheels: 'one',
    apply: (_rig, state) => ({ state: ailing(state, { springFactor: 0.5 }) }),
  },
  'strong springs': {
    wheels: 'one',
    apply: (_rig, state) => ({ state: ailing(state, { springFactor: 1.5 }) }),
  },
  'stuck piston': {
    wheels: 'one',
    apply: (_rig, state) => ({
      state: ailing(state, { pistonStuck: { front: true, rear: false } }),
    }),
  },
  'sluggish pistons': {
    wheels: 'one',
    apply: (_rig, state) => ({ state: ailing(state, { cupExtra: 100 }) }),
  },
  'leaning part': {
    wheels: 'one',
    apply: (_rig, state) => ({ state: ailing(state, { lean: { front: 100, rear: 0 } }) }),
  },
  hose: {
    wheels: 'one',
    apply: (_rig, state) => ({ state: ailing(state, { keptPressure: 0.8 }) }),
  },
  'port shut': {
    wheels: 'both',
    allWheels: true,
    apply: (rig, state) => ({
      brake: { ...rig.brake, hydraulics: { ...rig.brake.hydraulics, freePlay: 0 } },
      state: ailing(state, { keptPressure: 0.8 }),
    }),
  },
  'other bore': {
    wheels: 'one',
    apply: (rig, state) => {
      const bore = 20.64;
      const cylinder = { ...rig.brake.cylinder, bore, area: (PI / 4) * bore * bore };
      return { brake: { ...rig.brake, cylinder }, state };
    },
  },
  air: {
    wheels: 'both',
    apply: (rig, state) => ({
      brake: { ...rig.brake, hydraulics: { ...rig.brake.hydraulics, circuit: 600 } },
      state,
    }),
  },
} as const satisfies Readonly<Record<string, FaultChange>>;

export type PistonFault = keyof typeof pistonFaults;
