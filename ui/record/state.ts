import * as v from 'valibot';
import { type BrakeState, type Condition, ELEMENTS, SURFACES } from '../../sim/index.ts';
import { recordState as words } from '../../sim/words/en.ts';

/** What stands for a state of the brake in the record: all its numbers, exact. */

const finite = v.pipe(v.number(), v.finite());
const within = (low: number, high: number) => v.pipe(finite, v.minValue(low), v.maxValue(high));
const bothSides = <T>(each: v.GenericSchema<unknown, T>) =>
  v.strictObject({ front: each, rear: each });

/** Wear of the elements of a lining, mm; negative where a thicker one than the brake's own was fitted. */
const wear = v.pipe(
  v.instance(Float64Array),
  v.check((w) => w.length === ELEMENTS, words.elements(ELEMENTS)),
  v.check((w) => w.every((x) => x >= -20 && x <= 50), words.of20To50MmEach),
);

const index = v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(20));

const condition: v.GenericSchema<unknown, Condition> = v.strictObject({
  surface: bothSides(v.picklist(SURFACES)),
  pistonStuck: bothSides(v.boolean()),
  cupExtra: within(0, 1e5),
  springFactor: within(0, 10),
  offCentre: within(0, 5),
  oval: within(0, 5),
  groove: within(0, 1e5),
  adjusterSeized: v.boolean(),
  teethHold: v.nullable(within(0, 1e6)),
  leverSpring: within(0, 1),
  adjusterStep: v.picklist([1, 0, -1]),
  keptPressure: within(0, 50),
  keptCable: within(0, 1e5),
  leverLoss: within(0, 1),
  drumRise: within(0, 5),
  lean: bothSides(within(-1e5, 1e5)),
  unhooked: v.optional(v.pipe(v.array(index), v.maxLength(20))),
  unheld: v.optional(v.pipe(v.array(v.picklist(['front', 'rear'])), v.maxLength(2))),
  strutLoose: v.optional(v.boolean()),
});

export const stateSchema: v.GenericSchema<unknown, BrakeState> = v.strictObject({
  tooth: v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(100000)),
  wear: bothSides(wear),
  drumRadius: within(10, 1000),
  temperature: within(-60, 2000),
  distance: within(0, 1e13),
  applications: within(0, 1e12),
  leverOffStop: within(0, 100),
  condition,
  film: v.optional(
    v.strictObject({
      water: within(0, 10),
      rust: within(0, 10),
      glaze: bothSides(within(0, 1)),
    }),
  ),
  wornBy: v.optional(v.picklist(['bending', 'neither'])),
});
