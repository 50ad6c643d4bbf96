import { ailing, type FaultChange } from './fault-types.ts';
import { UNHELD } from './removal.ts';

/** Faults of the drum and what carries it. */
export const drumFaults = {
  'oval drum': {
    wheels: 'one',
    apply: (rig, state) => ({
      state: ailing(
        { ...state, tooth: Math.min(rig.brake.adjuster.teeth, state.tooth + 1) },
        { oval: 0.12 },
      ),
    }),
  },
  'drum off centre': {
    wheels: 'one',
    apply: (_rig, state) => ({ state: ailing(state, { offCentre: 0.2 }) }),
  },
  lip: {
    wheels: 'one',
    apply: (_rig, state) => {
      const deeper = (w: Float64Array) => w.map((v) => Math.max(0, v - 0.15));
      return {
        state: {
          ...state,
          drumRadius: state.drumRadius + 0.15,
          wear: { front: deeper(state.wear.front), rear: deeper(state.wear.rear) },
        },
      };
    },
  },
  'hub rust': {
    wheels: 'one',
    apply: (_rig, state) => ({ state, held: { ...UNHELD, hubRust: true } }),
  },
  groove: {
    wheels: 'one',
    apply: (_rig, state) => ({ state: ailing(state, { groove: 150 }) }),
  },
  bearing: {
    wheels: 'one',
    apply: (_rig, state) => ({ state: ailing(state, { drumRise: 0.3 }) }),
  },
  'rusted on': {
    wheels: 'both',
    apply: (_rig, state) => ({ state, held: { ...UNHELD, liningsRusted: true } }),
  },
} as const satisfies Readonly<Record<string, FaultChange>>;

export type DrumFault = keyof typeof drumFaults;
