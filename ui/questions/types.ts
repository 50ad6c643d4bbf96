import type { StationId } from '../record/moment.ts';
import type { LayerName } from '../record/view.ts';

/** How the bench is set for an answer. */
export interface Setup {
  /** Standing state of the first teaching brake. */
  readonly state?: string;
  /** Drum off: what its side shows, and what holds the drum besides. */
  readonly drum?: {
    readonly page?: 'mine' | 'faults';
    readonly held?: { readonly liningsRusted: boolean };
  };
  /** New shoes: the open step, those before it done, and the tooth that they are set back to. */
  readonly shoes?: { readonly step: 1 | 2 | 3 | 4 | 5 | 6; readonly tooth?: number };
  readonly turning?: -1 | 0 | 1;
  /** Pedal, bar. */
  readonly bar?: number;
  readonly layers?: readonly LayerName[];
  /** Fault to browse. */
  readonly fault?: string;
  /** Van to find out. */
  readonly van?: number;
}

/** A question as people ask it, and where the page answers it. */
export interface Question {
  readonly id: string;
  readonly group: string;
  readonly ask: string;
  /** What the answer is, or why there is none here. */
  readonly answer: string;
  /** Station that shows it; null: not covered. */
  readonly station: StationId | null;
  /** What to do and look at there. */
  readonly steps: string;
  readonly setup: Setup;
}
