import type { FrictionFault } from '../index.ts';
import type { FaultWords } from './fault-types.ts';

const COMMON = 'Factor on friction: common practice, without a published table.';

/** What the workshop says of them. */
export const frictionFaults: Readonly<Record<FrictionFault, FaultWords>> = {
  'fluid on linings': {
    short: 'half the friction, both shoes',
    change: 'friction × 0.5 on both linings',
    mechanism: `A film halves the friction; the torque falls by more, since the drum’s own help goes with it. ${COMMON}`,
    tells: 'Weak both ways alike, and a wet boot.',
    lookAlikes: ['stuck piston', 'oil on one lining', 'glazed', 'water inside'],
    remedy: 'Cylinder, and shoes on both sides.',
    caution: 'fluid',
  },
  'oil on one lining': {
    short: 'the rear shoe has lost its grip',
    change: 'friction × 0.5 on the rear lining of one wheel',
    mechanism: `Oil past the hub seal wets one lining. That shoe is missed where it would lead. ${COMMON}`,
    tells: 'Parked it holds one way and lets go the other; weak backwards means the rear shoe.',
    lookAlikes: ['stuck piston', 'stiff pivot', 'glazed', 'fluid on linings'],
    remedy: 'Find the leak, shoes on both sides.',
    caution: 'park',
  },
  glazed: {
    short: 'polished, a quarter of the friction lost',
    change: 'friction × 0.75 on all linings',
    mechanism: `Many gentle stops polish the face. Gap and travel stay as they were, force does not. ${COMMON}`,
    tells: 'Pedal hard and short as ever, torque low on both wheels and both ways.',
    lookAlikes: ['fluid on linings', 'stiff pivot', 'hot fade', 'strong springs'],
    remedy: 'Find why, bed them again or renew.',
    caution: 'wear',
  },
  damp: {
    short: 'more friction for a few stops',
    change: 'friction × 1.45 on all linings',
    mechanism: `A bloom of rust lifts friction, and the leading shoe’s help makes more than double of it. It is gone after a few stops. ${COMMON}`,
    tells: 'Only cold and damp, only the first stops; all clearances normal.',
    lookAlikes: ['other bore', 'lining ends', 'leaning part'],
    remedy: 'Dry it by light braking. If it locks, see to lining grade and springs.',
    caution: 'fault',
  },
  'water inside': {
    short: 'a film for some stops',
    change: 'friction × 0.4 on all linings',
    mechanism: `The drum holds water, and a film carries the lining. ${COMMON}`,
    tells: 'Right after deep water or rain, gone when dried by light braking.',
    lookAlikes: ['fluid on linings', 'glazed'],
    remedy: 'Dry it with the brake lightly on.',
    caution: 'fault',
  },
  'hot fade': {
    short: 'less friction in a wider drum',
    change: 'drum 287 K hotter',
    mechanism:
      'Friction falls with heat, and the drum has grown: the lining bears on its crown. So the pedal is harder and longer at once.',
    tells: 'Temperature; all of it comes back on cooling.',
    lookAlikes: ['air', 'glazed', 'oversize bore'],
    remedy: 'Let it cool. Use the engine on the next descent.',
    caution: 'hot',
  },
  'oversize bore': {
    short: 'bears in the middle until bedded',
    change: 'new shoes in a drum 0.30 mm larger on radius, pressed until silent',
    mechanism:
      'Linings ground for a new drum are too sharply curved for a larger one: only their middle bears.',
    tells: 'New linings, contact in the middle only; blue the lining and it shows.',
    lookAlikes: ['glazed', 'hot fade', 'lining ends'],
    remedy: 'Bed them in, or shoes and drum that fit each other.',
    caution: 'fitting',
  },
  'lining ends': {
    short: 'bears at toe and heel only',
    change: 'linings ground 0.20 mm larger on radius than a new drum',
    mechanism: 'The ends touch first. Pressure at the toe counts most, so it grabs.',
    tells: 'Hard to fit, and contact at the ends only.',
    lookAlikes: ['damp', 'stepped hot', 'oversize bore'],
    remedy: 'The right shoes.',
    caution: 'fitting',
  },
};
