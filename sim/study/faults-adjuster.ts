import { application } from '../wear/application.ts';
import { FIRM } from './checks.ts';
import { ailing, type FaultChange, newShoes } from './fault-types.ts';

/** A long descent's heat over the air, K: 16 % for 4 km at 40 km/h, brakes alone, on the first teaching brake. */
export const DESCENT = 287;

/** Faults of the adjuster and its strut. */
export const adjusterFaults = {
  'seized short': {
    wheels: 'both',
    apply: (_rig, state) => ({ state: ailing({ ...state, tooth: 0 }, { adjusterSeized: true }) }),
  },
  'worn teeth': {
    wheels: 'both',
    apply: (_rig, state) => ({
      state: ailing({ ...state, tooth: Math.max(0, state.tooth - 2) }, { teethHold: 1000 }),
    }),
  },
  'broken lever spring': {
    wheels: 'both',
    apply: (_rig, state) => ({ state: ailing({ ...state, tooth: 0 }, { leverSpring: 0 }) }),
  },
  'stepped hot': {
    wheels: 'both',
    apply: (rig, state) => {
      const hot = { ...state, temperature: state.temperature + DESCENT };
      const pressed = application(rig, hot, { pressure: FIRM, turning: 1 });
      return { state: { ...pressed.state, temperature: state.temperature } };
    },
  },
  'shoes swapped': {
    wheels: 'one',
    // Mirrored places: the front arc runs from toe to heel, the rear from heel to toe.
    apply: (_rig, state) => ({
      state: {
        ...state,
        wear: {
          front: state.wear.rear.slice().reverse(),
          rear: state.wear.front.slice().reverse(),
        },
      },
    }),
  },
  'wrong side': {
    wheels: 'both',
    apply: (_rig, state) => ({ state: ailing({ ...state, tooth: 0 }, { adjusterStep: -1 }) }),
  },
  'strut mis-seated': {
    wheels: 'one',
    apply: (rig, state) => ({
      brake: {
        ...rig.brake,
        adjuster: { ...rig.brake.adjuster, lengthAtZero: rig.brake.adjuster.lengthAtZero + 1.5 },
      },
      state,
    }),
  },
  'dead adjuster to the end': {
    wheels: 'one',
    apply: (rig, state) => {
      const gone = newShoes(rig, state, rig.brake.drum.radiusNew + 1);
      return {
        state: {
          ...gone,
          wear: {
            front: Float64Array.from(rig.front.bed.thickness),
            rear: Float64Array.from(rig.rear.bed.thickness),
          },
          condition: { ...gone.condition, adjusterSeized: true },
        },
      };
    },
  },
} as const satisfies Readonly<Record<string, FaultChange>>;

export type AdjusterFault = keyof typeof adjusterFaults;
