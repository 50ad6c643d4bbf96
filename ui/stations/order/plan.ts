import type { Brake, BrakeState, Side } from '../../../sim/index.ts';
import { orderPlan as words } from '../../../sim/words/en.ts';

/** The order of the work: which steps there are for a brake, and what is off when one is reached. */

export const orderPages = ['back', 'apart', 'together', 'set', 'bed'] as const;
export type OrderPage = (typeof orderPages)[number];

/** What can be off, or let go. */
export type Off =
  | 'drum'
  | 'cable'
  | 'length'
  | 'upper'
  | 'lower'
  | 'front hold-down'
  | 'rear hold-down'
  | 'strut'
  | 'shoes'
  | 'lever';

const LISTS = {
  back: words.loadFindLiftPushTry,
  apart: words.apart,
  together: words.together,
  set: words.partsGaugeDrumOnSilent,
  bed: words.stopsFarFirstDriveRefuse,
} as const;

/** Ids of the steps of a page, in their order: heels on pins and on flats come apart in unlike ways. */
export function stepsOn({ shoes }: Brake, page: OrderPage): readonly string[] {
  const list = LISTS[page];
  return (typeof list === 'string' ? list : list[shoes.front.anchor.kind]).split(' ');
}

/** What a step takes off, or puts on. */
const HANDLES: Readonly<Record<string, readonly Off[]>> = {
  drum: ['drum'],
  cable: ['cable'],
  load: ['cable'],
  shorten: ['length'],
  upper: ['upper'],
  'hold-front': ['front hold-down'],
  'hold-rear': ['rear hold-down'],
  strut: ['strut'],
  // Lower spring and parking lever go with the pair, and come off it on the bench.
  shoes: ['shoes', 'lower', 'lever'],
  'lower-on': ['lower', 'shoes', 'lever'],
  'strut-on': ['strut'],
  'hold-on': ['front hold-down', 'rear hold-down'],
  'upper-on': ['upper'],
};
/** With heels on flats the pair goes off as one, strut and upper spring in it, and comes on so. */
const AS_ONE: readonly Off[] = ['shoes', 'lever', 'upper', 'strut'];
const ON_FLATS: typeof HANDLES = {
  shoes: AS_ONE,
  upper: [],
  lower: ['lower'],
  'toes-in': AS_ONE,
  'lower-on': ['lower'],
};

const ALL: readonly Off[] = [
  ...(['drum', 'cable', 'length', 'upper', 'lower', 'front hold-down'] as const),
  ...(['rear hold-down', 'strut', 'shoes', 'lever'] as const),
];

/** What is off as a step is begun. */
export function offAt(brake: Brake, page: OrderPage, at: number): ReadonlySet<Off> {
  const own = brake.shoes.front.anchor.kind === 'abutment' ? ON_FLATS : {};
  const handled = stepsOn(brake, page)
    .slice(0, at)
    .flatMap((id) => own[id as keyof typeof own] ?? HANDLES[id] ?? []);
  if (page === 'together') return new Set(ALL.filter((o) => !handled.includes(o)));
  return new Set(page === 'apart' || page === 'back' ? handled : []);
}

/** A drum that is off stands wider than its mark by this: nothing is near the linings. */
const AWAY = 1.1;

/** Return springs of one end of the shoes, by their place in the brake's list. */
export const springsOf = ({ springs }: Brake, end: 'upper' | 'lower'): number[] =>
  springs.flatMap(({ ends: [a, b] }, i) =>
    a.at[1] + b.at[1] > 0 === (end === 'upper') ? [i] : [],
  );

/** The brake with that off: springs, hold-downs and drum in the mechanism, not only in the drawing. */
export function withOff(brake: Brake, state: BrakeState, off: ReadonlySet<Off>): BrakeState {
  const unhooked = (['upper', 'lower'] as const)
    .flatMap((end) => (off.has(end) ? springsOf(brake, end) : []))
    .sort((a, b) => a - b);
  const unheld = (['front', 'rear'] as const).filter((s: Side) => off.has(`${s} hold-down`));
  return {
    ...state,
    tooth: off.has('length') ? 0 : state.tooth,
    leverOffStop: off.has('cable') ? 0 : state.leverOffStop,
    drumRadius: off.has('drum') ? AWAY * brake.drum.radiusMax : state.drumRadius,
    condition: {
      ...state.condition,
      ...(unhooked.length > 0 ? { unhooked } : {}),
      ...(unheld.length > 0 ? { unheld } : {}),
    },
  };
}
