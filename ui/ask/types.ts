import type { StationId } from '../record/moment.ts';
import type { OrderPage } from '../stations/order/plan.ts';

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
  | 'take away'
  | 'not here';

/** Figures that were typed, on the way to where they are judged: texts, word for word. */
export type Figures =
  | {
      readonly to: 'inspect';
      readonly write: readonly (readonly [key: SheetKey, text: string, wheel: 'left' | 'right'])[];
    }
  | {
      readonly to: 'see';
      readonly topic: 'lever' | 'drag' | 'braking';
      readonly said: readonly (readonly [sign: string, text: string])[];
    }
  | { readonly to: 'park'; readonly percent: number };
/** Places of the sheet that a typed figure can go to. */
export type SheetKey =
  | 'drumA'
  | 'drumB'
  | 'drumNew'
  | 'drumMax'
  | 'score'
  | 'lip'
  | 'leadThin'
  | 'trailThin';

/** Ways of Take away, by the ids of its own table (ui/away/ways.ts). */
export type AwayId = 'figure' | 'clip' | 'sheets' | 'cut' | 'data' | 'share';

/** Where an entry leads: one intention's worth. */
export type Leads =
  | { readonly to: 'question'; readonly id: string }
  | { readonly to: 'fault'; readonly id: string }
  | { readonly to: 'station'; readonly id: StationId }
  | { readonly to: 'see'; readonly topic: string }
  | { readonly to: 'lesson'; readonly name: string }
  | { readonly to: 'order'; readonly page: OrderPage }
  | { readonly to: 'figures'; readonly figures: Figures }
  | { readonly to: 'names' }
  | { readonly to: 'bending' }
  | { readonly to: 'dials' | 'polygons' }
  | { readonly to: 'table' }
  | { readonly to: 'away'; readonly way: AwayId }
  | { readonly to: 'bench' }
  | { readonly to: 'words' }
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
