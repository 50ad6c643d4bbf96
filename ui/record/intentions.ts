import * as lessonWants from '../lessons/wants.ts';
import * as apart from '../stations/apart/wants.ts';
import * as ask from '../stations/ask/part.ts';
import * as askWants from '../stations/ask/wants.ts';
import * as compare from '../stations/compare/wants.ts';
import * as drum from '../stations/drum-off/part.ts';
import * as faults from '../stations/faults/part.ts';
import * as inspect from '../stations/inspect/part.ts';
import * as kind from '../stations/kind/part.ts';
import * as lessons from '../stations/lessons/part.ts';
import * as shoes from '../stations/new-shoes/part.ts';
import * as order from '../stations/order/wants.ts';
import * as own from '../stations/own/part.ts';
import * as park from '../stations/park/part.ts';
import * as questions from '../stations/questions/part.ts';
import * as see from '../stations/see/part.ts';
import * as start from '../stations/start/part.ts';
import * as vary from '../stations/vary/part.ts';
import * as varyWants from '../stations/vary/wants.ts';
import * as wear from '../stations/wear-part.ts';
import * as across from './across.ts';
import * as bench from './bench.ts';
import * as dials from './dials.ts';
import * as guest from './guest.ts';
import * as hands from './hands.ts';
import type { AnyIntention } from './intention.ts';
import * as naming from './naming.ts';
import * as view from './view.ts';
import * as walk from './walk.ts';

/** Every intention there is, by its id: what can be wanted of the bench, at one glance. */

const homes: readonly Readonly<Record<string, unknown>>[] = [
  bench,
  across,
  dials,
  view,
  naming,
  guest,
  hands,
  walk,
  wear,
  compare,
  apart,
  drum,
  park,
  inspect,
  shoes,
  faults,
  own,
  questions,
  start,
  ask,
  askWants,
  see,
  kind,
  lessons,
  order,
  lessonWants,
  vary,
  varyWants,
];

const isIntention = (x: unknown): x is AnyIntention =>
  typeof x === 'object' && x !== null && 'does' in x && 'says' in x && 'joins' in x;

export const intentions: ReadonlyMap<string, AnyIntention> = new Map(
  homes.flatMap((home) =>
    Object.values(home)
      .filter(isIntention)
      .map((i) => [i.id, i] as const),
  ),
);
