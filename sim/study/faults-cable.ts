import { ailing, type FaultChange } from './fault-types.ts';

/** Faults of cable and parking lever. */
export const cableFaults = {
  'short cable': {
    wheels: 'both',
    apply: (_rig, state) => ({ state: { ...state, leverOffStop: 6 } }),
  },
  'kept pull': {
    wheels: 'one',
    apply: (_rig, state) => ({ state: ailing(state, { keptCable: 40 }) }),
  },
  'stretched cable': {
    wheels: 'both',
    apply: (rig, state) => ({
      brake: {
        ...rig.brake,
        parkingLever: { ...rig.brake.parkingLever, slack: rig.brake.parkingLever.slack + 10 },
      },
      state,
    }),
  },
  'stiff pivot': {
    wheels: 'one',
    apply: (_rig, state) => ({ state: ailing(state, { leverLoss: 0.5 }) }),
  },
} as const satisfies Readonly<Record<string, FaultChange>>;

export type CableFault = keyof typeof cableFaults;
