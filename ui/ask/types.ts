import type { StationId } from '../record/moment.ts';

export type Kind =
  | 'question'
  | 'fault'
  | 'station'
  | 'check'
  | 'reading'
  | 'part'
  | 'word'
  | 'lesson'
  | 'caution'
  | 'not here';

/** Where an entry leads: one intention's worth. */
export type Leads =
  | { readonly to: 'question'; readonly id: string }
  | { readonly to: 'fault'; readonly id: string }
  | { readonly to: 'station'; readonly id: StationId }
  | { readonly to: 'see'; readonly topic: string }
  | { readonly to: 'names' }
  | { readonly to: 'table' }
  | { readonly to: 'nothing' };

/** Something that can be found. */
export interface Entry {
  /** "fault:hose". */
  readonly key: string;
  readonly kind: Kind;
  readonly title: string;
  readonly text: string;
  readonly leads: Leads;
  /** What people say who mean it. */
  readonly says: readonly string[];
  /** Stands above everything else where it is meant. */
  readonly danger?: true;
}
