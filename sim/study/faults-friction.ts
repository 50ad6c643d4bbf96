import { createRig } from '../balance/rig.ts';
import type { Side } from '../brake/types.ts';
import { application } from '../wear/application.ts';
import { FIRM } from './checks.ts';
import { ailing, type FaultChange, newShoes } from './fault-types.ts';

/** Faults of the linings' friction and fit. */
export const frictionFaults = {
  'fluid on linings': {
    wheels: 'one',
    apply: (_rig, state) => ({
      state: ailing(state, { surface: { front: 'greasy', rear: 'greasy' } }),
      wet: 'boot wet',
    }),
  },
  'oil on one lining': {
    wheels: 'one',
    apply: (_rig, state) => ({
      state: ailing(state, { surface: { front: 'dry', rear: 'greasy' } }),
      wet: 'oil from the hub',
    }),
  },
  glazed: {
    wheels: 'both',
    apply: (_rig, state) => ({
      state: ailing(state, { surface: { front: 'glazed', rear: 'glazed' } }),
    }),
  },
  damp: {
    wheels: 'both',
    apply: (_rig, state) => ({
      state: ailing(state, { surface: { front: 'damp', rear: 'damp' } }),
    }),
  },
  'water inside': {
    wheels: 'both',
    apply: (_rig, state) => ({ state: ailing(state, { surface: { front: 'wet', rear: 'wet' } }) }),
  },
  'hot fade': {
    wheels: 'both',
    apply: (_rig, state) => ({ state: { ...state, temperature: state.temperature + 287 } }),
  },
  'oversize bore': {
    wheels: 'both',
    apply: (rig, state) => {
      const fitted = newShoes(rig, state, rig.brake.drum.radiusNew + 0.3);
      return { state: application(rig, fitted, { pressure: FIRM, turning: 1 }).state };
    },
  },
  'lining ends': {
    wheels: 'both',
    apply: (rig, state) => {
      const larger = (side: Side) => {
        const shoe = rig.brake.shoes[side];
        const groundRadius = rig.brake.drum.radiusNew + 0.2;
        return { ...shoe, lining: { ...shoe.lining, groundRadius } };
      };
      const brake = { ...rig.brake, shoes: { front: larger('front'), rear: larger('rear') } };
      const ground = createRig(brake, rig.options);
      return { brake, state: newShoes(ground, state, rig.brake.drum.radiusNew) };
    },
  },
} as const satisfies Readonly<Record<string, FaultChange>>;

export type FrictionFault = keyof typeof frictionFaults;
