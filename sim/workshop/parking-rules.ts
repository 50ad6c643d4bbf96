import type { Asked } from '../index.ts';
import { workshopParkingRules as words } from '../words/en.ts';

/**
 * Figures that parking brakes are judged by, each with what it asks and how sure it is: "read" where
 * the text was seen, "memory" where it was not. No figure here is a vehicle's own.
 */
export interface ParkingRule extends Asked {
  readonly id: string;
  readonly what: string;
  readonly sure: 'read' | 'memory' | 'read in part' | 'own choice';
  /** Hand force allowed with it, N, and how sure; null without one. */
  readonly hand: { readonly newton: number; readonly sure: 'memory' } | null;
}

export const parkingRules: readonly ParkingRule[] = [
  {
    id: '20',
    kind: 'slope',
    percent: 20,
    what: words.of20What,
    sure: 'read in part',
    hand: { newton: 400, sure: 'memory' },
  },
  {
    id: '30',
    kind: 'slope',
    percent: 30,
    what: words.of30What,
    sure: 'read',
    hand: { newton: 400, sure: 'memory' },
  },
  {
    id: '18w',
    kind: 'force over weight',
    percent: 18,
    what: words.of18wWhat,
    sure: 'read',
    hand: null,
  },
  {
    id: '16w',
    kind: 'force over weight',
    percent: 16,
    what: words.of16wWhat,
    sure: 'memory',
    hand: null,
  },
  {
    id: '12',
    kind: 'slope',
    percent: 12,
    what: words.of12What,
    sure: 'read',
    hand: null,
  },
];
