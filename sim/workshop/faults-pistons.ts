import type { PistonFault } from '../index.ts';
import type { FaultWords } from './fault-types.ts';

/** What the workshop says of them. */
export const pistonFaults: Readonly<Record<PistonFault, FaultWords>> = {
  'weak springs': {
    short: 'the shoes come off the strut too early',
    change: 'half the rate and force of all return springs',
    mechanism:
      'Springs clamp the shoes on the strut. Weaker ones leave the rest gap as it is, but the shoes part at half the pressure, and less is left to bring pistons and lever home.',
    tells: 'First touch at half the pressure, the gap unchanged.',
    lookAlikes: ['port shut', 'sluggish pistons', 'kept pull'],
    remedy: 'A new set of springs on both sides.',
    caution: 'springs',
  },
  'strong springs': {
    short: 'wrong springs, or fitted in the wrong holes',
    change: 'rate and force of all return springs half as much again',
    mechanism:
      'Each piston must carry the spring before its lining presses. More spring leaves less for the drum.',
    tells: 'The wheel brakes later and less at light pedal, with all else in order.',
    lookAlikes: ['sluggish pistons', 'glazed'],
    remedy: 'Refit by the picture or the other side.',
    caution: 'springs',
  },
  'stuck piston': {
    short: 'the front shoe is not pushed',
    change: 'front piston does not move',
    mechanism:
      'Only the rear shoe is pushed: forwards it trails and does little, backwards it leads.',
    tells: 'Weak forwards, much less weak backwards; one shoe will not rock.',
    lookAlikes: ['fluid on linings', 'oil on one lining', 'other bore'],
    remedy: 'Renew the cylinder, look at the other side.',
    caution: 'fluid',
  },
  'sluggish pistons': {
    short: 'dry cups hold back both ways',
    change: 'each cup rubs with 100 N more',
    mechanism:
      'Cup friction takes its part of the push, and holds the piston out against the springs after release.',
    tells: 'Less torque at the same pressure; after release the drag goes slowly.',
    lookAlikes: ['strong springs', 'hose', 'glazed'],
    remedy: 'Renew the cylinder.',
    caution: 'fluid',
  },
  'leaning part': {
    short: 'a stuck part pushes the front toe',
    change: '100 N on the front toe',
    mechanism:
      'The springs hang between the shoes, so the pair goes over and one lining bears on the drum. It leads one way and trails the other.',
    tells: 'Three times as stiff by hand one way as the other.',
    lookAlikes: ['kept pull', 'hose', 'port shut'],
    remedy: 'Find the part: piston, lever, edge on its pad.',
    caution: 'springs',
  },
  hose: {
    short: 'the line stays under pressure',
    change: '8 bar stay in one line after release, for minutes',
    mechanism:
      'A swollen hose lets pressure in and hardly out. Above the springs’ threshold the drum’s own help makes drag rise fast.',
    tells: 'One wheel; the lever is home, and it is free the moment the bleed point opens.',
    lookAlikes: ['kept pull', 'port shut', 'leaning part', 'sluggish pistons'],
    remedy: 'Renew hoses in pairs.',
    caution: 'fluid',
  },
  'port shut': {
    short: 'the port stays covered, all wheels hold pressure',
    change: 'no free play; 8 bar stay in the line once the fluid is warm (6 cold)',
    mechanism:
      'The master piston covers its return port. Fluid that warms has nowhere to go, and the pressure rises as one drives.',
    tells: 'All wheels alike; no free play at the pedal; any bleed point frees them all.',
    lookAlikes: ['hose', 'kept pull', 'stepped hot'],
    remedy: 'Set the free play. Road test last.',
    caution: 'fault',
  },
  'other bore': {
    short: 'the same pressure pushes harder',
    change: 'bore 20.64 mm on one wheel',
    mechanism:
      'Force is pressure times area. The springs take the same from both, so the difference is largest at light pedal.',
    tells: 'One wheel too strong, both ways alike, and dry; parked it is as the other.',
    lookAlikes: ['fluid on linings', 'damp', 'stuck piston'],
    remedy: 'Match by the bore mark, by the maker’s list.',
    caution: 'fitting',
  },
  air: {
    short: 'the pedal squeezes gas first',
    change: 'rest of the circuit gives 600 mm³ for each MPa',
    mechanism:
      'Gas shrinks as the pressure rises, so travel grows with the pressure instead of coming before it.',
    tells: 'A springy pedal: short at 10 bar, long at 40, with normal notches and gaps.',
    lookAlikes: ['seized short', 'worn teeth', 'hot fade'],
    remedy: 'Bleed, and find why.',
    caution: 'fluid',
  },
};
