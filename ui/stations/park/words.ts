import type { OnHill, WheelFault } from '../../../sim/index.ts';
import type { ParkingRule } from '../../../sim/workshop/index.ts';
import { down, number } from '../../format.ts';

/** Texts of the station. */
export const notFirst =
  'Never set the shoes with the cable: shoes first, lever on its stop, cable last.';

/** "20 %", "18 % of its weight". */
export const asked = (rule: Pick<ParkingRule, 'kind' | 'percent'>): string =>
  `${number(rule.percent, 0)}\u00a0%${rule.kind === 'slope' ? '' : ' of its weight'}`;

export const sureWord: Readonly<Record<ParkingRule['sure'], string>> = {
  read: 'read',
  'read in part': 'read in part',
  memory: 'from memory, not read',
  'own choice': 'your own',
};

/** Of a brake that is jammed with its lever let go: torque that would turn it, N·mm, and whether a part gives way. */
export interface Jam {
  readonly torque: number;
  readonly yields: boolean;
}

/**
 * The verdict: words and the margin that go with them. Never rounded towards good. A van that stands because its
 * brake is jammed is not parked.
 */
export function verdict(h: OnHill, rule: ParkingRule, nose: 'down' | 'up', jam: Jam | null = null) {
  const way = `nose ${nose}`;
  const on = rule.kind === 'slope' ? `on ${asked(rule)}` : `${asked(rule)}`;
  if (jam) {
    const margin = jam.yields
      ? 'Let go, more than its strut can bear'
      : `Let go, ${number(jam.torque / 1000, 0)}\u00a0N·m turn the drum`;
    return { mark: 'cross', text: 'Jammed, not parked', margin } as const;
  }
  if (h.can === Number.POSITIVE_INFINITY) {
    return { mark: 'tick', text: `Holds ${on}`, margin: `A shoe locks by itself, ${way}` } as const;
  }
  if (h.holds) {
    const left = number(down(h.margin / 1000, 0), 0);
    return {
      mark: 'tick',
      text: `Holds ${on}`,
      margin: `${left}\u00a0N·m a wheel left, ${way}`,
    } as const;
  }
  const short = number(Math.ceil(-h.margin / 1000), 0);
  return {
    mark: 'cross',
    text: rule.kind === 'slope' ? `Rolls ${on}` : `Short of ${on}`,
    margin: `${short}\u00a0N·m a wheel short, ${way}`,
  } as const;
}

export const faultNames: readonly (readonly [WheelFault, string])[] = [
  ['none', 'both sound'],
  ['stiff lever', 'right: lever pivot stiff, half the pull lost'],
  ['oil on rear', 'right: oil on the rear lining'],
  ['oil on front', 'right: oil on the front lining'],
  ['glazed', 'both: linings glazed'],
];

/** What the two ways of two wheels point to. */
export const faultSays: Readonly<Record<WheelFault, string>> = {
  none: 'Both wheels hold alike, and nearly the same both ways.',
  'stiff lever':
    'Weak both ways at one wheel, and slow to let go: less of the pull arrives. Free or renew the lever, check both sides.',
  'oil on rear':
    'Strong nose down, weak nose up, at one wheel: the rear shoe has lost its grip. Find the leak, shoes both sides.',
  'oil on front':
    'Weak nose down, strong nose up, at one wheel: the front shoe has lost its grip. Find the leak, shoes both sides.',
  glazed: 'Weak both ways at both wheels, notches normal: the linings have lost friction.',
};
