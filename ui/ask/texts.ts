import { askTexts as words } from '../../sim/words/en.ts';
import type { StationId } from '../record/moment.ts';
import type { OrderPage } from '../stations/order/plan.ts';

interface Text {
  readonly title: string;
  readonly text: string;
}

/** What a station is good for, in a line. */
export const stationTexts: Readonly<Partial<Record<StationId, Text>>> = {
  start: words.start,
  apply: words.apply,
  wear: words.wear,
  'drum-off': words.drumOff,
  park: words.park,
  inspect: words.inspect,
  'new-shoes': words.newShoes,
  faults: words.faults,
  own: words.own,
  questions: words.questions,
  lessons: words.lessons,
  see: words.see,
  vary: words.vary,
  apart: words.apart,
  compare: words.compare,
  kind: words.kind,
};

/** Pages of the work in its order. */
export const orderTexts: Readonly<Record<OrderPage, Text>> = {
  back: words.back,
  apart: words.apart2,
  together: words.together,
  set: words.set,
  bed: words.bed,
};

/** Ways into What I see. */
export const topicTexts: Readonly<Record<string, Text>> = {
  drag: words.drag,
  pedal: words.pedal,
  lever: words.lever,
  braking: words.braking,
  noise: words.noise,
  free: words.free,
};
