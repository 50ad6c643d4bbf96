import { createRig } from '../balance/rig.ts';
import type { Side } from '../brake/types.ts';
import { application } from '../wear/application.ts';
import { FIRM } from './checks.ts';
import { ailing, type Fault, newShoes } from './fault-types.ts';

const COMMON = 'Factor on friction: common practice, without a published table.';

/** Faults of the linings' friction and fit. */
export const frictionFaults: readonly Fault[] = [
  {
    id: 'fluid on linings',
    row: 16,
    name: 'Fluid on both linings of one wheel',
    short: 'half the friction, both shoes',
    group: 'Friction',
    change: 'friction × 0.5 on both linings',
    mechanism: `A film halves the friction; the torque falls by more, since the drum’s own help goes with it. ${COMMON}`,
    tells: 'Weak both ways alike, and a wet boot.',
    lookAlikes: ['stuck piston', 'oil on one lining', 'glazed', 'water inside'],
    remedy: 'Cylinder, and shoes on both sides.',
    caution: 'fluid',
    wheels: 'one',
    apply: (_rig, state) => ({
      state: ailing(state, { surface: { front: 'greasy', rear: 'greasy' } }),
      wet: 'boot wet',
    }),
  },
  {
    id: 'oil on one lining',
    row: 17,
    name: 'Oil on one lining',
    short: 'the rear shoe has lost its grip',
    group: 'Friction',
    change: 'friction × 0.5 on the rear lining of one wheel',
    mechanism: `Oil past the hub seal wets one lining. That shoe is missed where it would lead. ${COMMON}`,
    tells: 'Parked it holds one way and lets go the other; weak backwards means the rear shoe.',
    lookAlikes: ['stuck piston', 'stiff pivot', 'glazed', 'fluid on linings'],
    remedy: 'Find the leak, shoes on both sides.',
    caution: 'park',
    wheels: 'one',
    apply: (_rig, state) => ({
      state: ailing(state, { surface: { front: 'dry', rear: 'greasy' } }),
      wet: 'oil from the hub',
    }),
  },
  {
    id: 'glazed',
    row: 18,
    name: 'Glazed linings',
    short: 'polished, a quarter of the friction lost',
    group: 'Friction',
    change: 'friction × 0.75 on all linings',
    mechanism: `Many gentle stops polish the face. Gap and travel stay as they were, force does not. ${COMMON}`,
    tells: 'Pedal hard and short as ever, torque low on both wheels and both ways.',
    lookAlikes: ['fluid on linings', 'stiff pivot', 'hot fade', 'strong springs'],
    remedy: 'Find why, bed them again or renew.',
    caution: 'wear',
    wheels: 'both',
    apply: (_rig, state) => ({
      state: ailing(state, { surface: { front: 'glazed', rear: 'glazed' } }),
    }),
  },
  {
    id: 'damp',
    row: 19,
    name: 'Damp rust on the drum, first stops',
    short: 'more friction for a few stops',
    group: 'Friction',
    change: 'friction × 1.45 on all linings',
    mechanism: `A bloom of rust lifts friction, and the leading shoe’s help makes more than double of it. It is gone after a few stops. ${COMMON}`,
    tells: 'Only cold and damp, only the first stops; all clearances normal.',
    lookAlikes: ['other bore', 'lining ends', 'leaning part'],
    remedy: 'Dry it by light braking. If it locks, see to lining grade and springs.',
    caution: 'fault',
    wheels: 'both',
    apply: (_rig, state) => ({
      state: ailing(state, { surface: { front: 'damp', rear: 'damp' } }),
    }),
  },
  {
    id: 'water inside',
    row: 20,
    name: 'Water in the drum',
    short: 'a film for some stops',
    group: 'Friction',
    change: 'friction × 0.4 on all linings',
    mechanism: `The drum holds water, and a film carries the lining. ${COMMON}`,
    tells: 'Right after deep water or rain, gone when dried by light braking.',
    lookAlikes: ['fluid on linings', 'glazed'],
    remedy: 'Dry it with the brake lightly on.',
    caution: 'fault',
    wheels: 'both',
    apply: (_rig, state) => ({ state: ailing(state, { surface: { front: 'wet', rear: 'wet' } }) }),
  },
  {
    id: 'hot fade',
    row: 21,
    name: 'Fade after a long descent',
    short: 'less friction in a wider drum',
    group: 'Friction',
    change: 'drum 287 K hotter',
    mechanism:
      'Friction falls with heat, and the drum has grown: the lining bears on its crown. So the pedal is harder and longer at once.',
    tells: 'Temperature; all of it comes back on cooling.',
    lookAlikes: ['air', 'glazed', 'oversize bore'],
    remedy: 'Let it cool. Use the engine on the next descent.',
    caution: 'hot',
    wheels: 'both',
    apply: (_rig, state) => ({ state: { ...state, temperature: state.temperature + 287 } }),
  },
  {
    id: 'oversize bore',
    row: 22,
    name: 'Standard shoes in a worn drum',
    short: 'bears in the middle until bedded',
    group: 'Friction',
    change: 'new shoes in a drum 0.30 mm larger on radius, pressed until silent',
    mechanism:
      'Linings ground for a new drum are too sharply curved for a larger one: only their middle bears.',
    tells: 'New linings, contact in the middle only; blue the lining and it shows.',
    lookAlikes: ['glazed', 'hot fade', 'lining ends'],
    remedy: 'Bed them in, or shoes and drum that fit each other.',
    caution: 'fitting',
    wheels: 'both',
    apply: (rig, state) => {
      const fitted = newShoes(rig, state, rig.brake.drum.radiusNew + 0.3);
      return { state: application(rig, fitted, { pressure: FIRM, turning: 1 }).state };
    },
  },
  {
    id: 'lining ends',
    row: 23,
    name: 'Linings ground too large',
    short: 'bears at toe and heel only',
    group: 'Friction',
    change: 'linings ground 0.20 mm larger on radius than a new drum',
    mechanism: 'The ends touch first. Pressure at the toe counts most, so it grabs.',
    tells: 'Hard to fit, and contact at the ends only.',
    lookAlikes: ['damp', 'stepped hot', 'oversize bore'],
    remedy: 'The right shoes.',
    caution: 'fitting',
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
];
