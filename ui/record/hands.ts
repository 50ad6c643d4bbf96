import * as v from 'valibot';
import type { Point, Side } from '../../sim/index.ts';
import { recordHands as words } from '../../sim/words/en.ts';
import { released, withState } from './bench.ts';
import { intention } from './intention.ts';
import type { Moment } from './moment.ts';

/** Hands in the brake: what is taken hold of, from where, and where the hand is. */

/** What can be taken hold of, in the order of the list. */
export const handParts = [
  'front shoe',
  'rear shoe',
  'both toes',
  'strut',
  'adjuster lever',
  'parking lever',
  'cable',
  'front piston',
  'rear piston',
  'drum',
  'drum pulled',
  'drum rocked',
] as const;
export type HandPart = (typeof handParts)[number];

/** A hand that holds. */
export interface Hold {
  /** The place of the part that it holds, as that stands in the reference pose, mm; of two toes the front one's. */
  readonly at: Point;
  /** Where the hand is, mm. */
  readonly to: Point;
  /**
   * Turn of the drum at which the hand on it pulls nothing, rad: as far as it has gone round. Of the toothed lever: the
   * tooth at which it was taken. Of a drum that is pulled off its studs or rocked: how far the hand has gone, mm.
   */
  readonly turn: number;
}

/** What a second hand can hold beside the first: parts that move with the shoes. */
export const secondParts = [
  'front shoe',
  'rear shoe',
  'strut',
  'parking lever',
  'cable',
  'front piston',
  'rear piston',
] as const;
export type SecondPart = (typeof secondParts)[number];

/** A second hand, or a second finger on the drawing. */
export interface Second {
  readonly part: SecondPart;
  readonly at: Point;
  readonly to: Point;
}

export interface HandsRecord {
  readonly open: boolean;
  readonly part: HandPart;
  readonly hold: Hold | null;
  /** Only beside a first one. */
  readonly second: Second | null;
  /** With a bar that makes the hand stronger. */
  readonly tool: boolean;
  /** Shoes' movements and gaps are drawn ten times as large. */
  readonly large: boolean;
  readonly drumOff: boolean;
}

export const NO_HANDS: HandsRecord = {
  open: false,
  part: 'front shoe',
  hold: null,
  second: null,
  tool: false,
  large: false,
  drumOff: false,
};

const far = v.pipe(v.number(), v.minValue(-2000), v.maxValue(2000));
const point = v.strictTuple([far, far]);

export const handsSchema: v.GenericSchema<unknown, HandsRecord> = v.strictObject({
  open: v.boolean(),
  part: v.picklist(handParts),
  hold: v.nullable(v.strictObject({ at: point, to: point, turn: far })),
  // Links of before know one hand alone.
  second: v.optional(
    v.nullable(v.strictObject({ part: v.picklist(secondParts), at: point, to: point })),
    null,
  ),
  tool: v.boolean(),
  large: v.boolean(),
  drumOff: v.boolean(),
});

/** The stations in which hands can be put into the brake. */
export const withHands = ({ station }: Pick<Moment, 'station'>): boolean =>
  station === 'apply' || station === 'drum-off' || station === 'park';

/** Are there hands in the brake now? */
export const handsIn = (m: Moment): boolean => m.hands.open && withHands(m);

const put = (m: Moment, change: Partial<HandsRecord>): Moment => {
  const same = Object.entries(change).every(([k, x]) => m.hands[k as keyof HandsRecord] === x);
  return same ? m : { ...m, hands: { ...m.hands, ...change } };
};

const within = ([x, y]: Point): Point => [
  Math.max(-2000, Math.min(2000, x)),
  Math.max(-2000, Math.min(2000, y)),
];

/** Hands into the brake, or out of it: what they hold is let go, and the drum goes on again. */
export const openHands = intention(
  'hands.open',
  (m: Moment, open: boolean) =>
    put(open ? released(m) : m, {
      open,
      ...{ hold: null, second: null },
      ...(open ? {} : { drumOff: false }),
    }),
  (_before, after) => (after.hands.open ? words.handsInTheBrake : words.handsOutOfTheBrake),
);

export const chooseHand = intention(
  'hands.part',
  (m: Moment, part: HandPart) =>
    m.hands.part === part ? m : put(m, { part, hold: null, second: null }),
  (_before, after) => words.hand(after.hands.part),
);

/** Takes hold of a place of a part; the hand is where the place stands, on the drum at its turn now. */
export const grab = intention(
  'hands.grab',
  (m: Moment, part: HandPart, at: Point, to: Point, turn: number) =>
    put(m, { part, hold: { at: within(at), to: within(to), turn }, second: null }),
  (_before, after) => words.holdOf(after.hands.part),
  { joins: 'hands' },
);

/** The hand goes to a place; on the drum it has gone round by so much, rad. */
export const pullTo = intention(
  'hands.pull',
  (m: Moment, to: Point, turn: number) => {
    const { hold } = m.hands;
    if (!hold) return m;
    const [x, y] = within(to);
    if (hold.to[0] === x && hold.to[1] === y && hold.turn === turn) return m;
    return put(m, { hold: { ...hold, to: [x, y], turn: Math.max(-2000, Math.min(2000, turn)) } });
  },
  (_before, after) => words.pullAt(after.hands.part),
  { joins: 'hands' },
);

/** Parts that take both hands, or the whole of one's mind. */
const alone: readonly HandPart[] = ['both toes', 'adjuster lever', 'drum pulled', 'drum rocked'];

/** A second hand takes hold beside the first, which must not be two already, nor on the toothed lever. */
export const grabSecond = intention(
  'hands.grab-second',
  (m: Moment, part: SecondPart, at: Point, to: Point) => {
    const { hold, part: first } = m.hands;
    if (!hold || first === part || alone.includes(first)) return m;
    return put(m, { second: { part, at: within(at), to: within(to) } });
  },
  (_before, after) => words.secondHand(after.hands.second?.part ?? ''),
  { joins: 'hands' },
);

export const pullSecond = intention(
  'hands.pull-second',
  (m: Moment, to: Point) => {
    const { second } = m.hands;
    if (!second) return m;
    const [x, y] = within(to);
    return second.to[0] === x && second.to[1] === y
      ? m
      : put(m, { second: { ...second, to: [x, y] } });
  },
  (_before, after) => words.pullAt2(after.hands.second?.part ?? ''),
  { joins: 'hands' },
);

/** One of two fingers is lifted: the other holds on, and is the first from then on. */
export const liftFinger = intention(
  'hands.lift',
  (m: Moment, which: 0 | 1) => {
    const { second } = m.hands;
    if (!second) return m;
    if (which === 1) return put(m, { second: null });
    const { part, at, to } = second;
    return put(m, { part, hold: { at, to, turn: 0 }, second: null });
  },
  (before, _after, which) =>
    words.letGo(which === 1 ? (before.hands.second?.part ?? '') : before.hands.part),
  { joins: 'hands' },
);

export const letGoHand = intention(
  'hands.let-go',
  (m: Moment) => put(m, { hold: null, second: null }),
  (before) => words.letGo2(before.hands.part),
  { joins: 'hands', ends: true },
);

export const takeTool = intention(
  'hands.tool',
  (m: Moment, tool: boolean) => put(m, { tool }),
  (_before, after) => (after.hands.tool ? words.aBarInTheHand : words.bareHand),
);

export const largen = intention(
  'hands.large',
  (m: Moment, large: boolean) => put(m, { large }),
  (_before, after) => (after.hands.large ? words.shoesMovements10 : words.movements1),
);

/** The drum taken off for the hands, or put on again. */
export const takeDrum = intention(
  'hands.drum',
  (m: Moment, drumOff: boolean) =>
    put(m, {
      drumOff,
      ...{ hold: null, second: null },
      ...(drumOff && m.hands.part.startsWith('drum') ? { part: 'front shoe' } : {}),
    }),
  (_before, after) => (after.hands.drumOff ? words.drumOff : words.drumOnAgain),
);

/** A return spring unhooked, or hooked on, by its place in the brake's list. */
export const hookSpring = intention(
  'hands.spring',
  (m: Moment, index: number, off: boolean) => {
    const { state } = m.bench;
    const now = state.condition.unhooked ?? [];
    if (now.includes(index) === off) return m;
    const unhooked = off ? [...now, index].sort() : now.filter((i) => i !== index);
    return withCondition(m, { unhooked: unhooked.length > 0 ? unhooked : undefined });
  },
  (_before, _after, _index, off) => (off ? words.returnSpringUnhooked : words.returnSpringHookedOn),
);

/** A hold-down pressed, turned and taken off, or put on again. */
export const turnHoldDown = intention(
  'hands.hold-down',
  (m: Moment, side: Side, off: boolean) => {
    const now = m.bench.state.condition.unheld ?? [];
    if (now.includes(side) === off) return m;
    const unheld = off ? [...now, side] : now.filter((s) => s !== side);
    return withCondition(m, { unheld: unheld.length > 0 ? unheld : undefined });
  },
  (_before, _after, side, off) => words.holdDownOfTheShoe(side, off ? words.off : words.on),
);

function withCondition(m: Moment, change: Partial<Moment['bench']['state']['condition']>): Moment {
  const { state } = m.bench;
  const { unhooked, unheld, ...rest } = { ...state.condition, ...change };
  // What is not there is left out: a sound brake is a sound brake again. The order is the file's.
  const condition = {
    ...rest,
    ...(unhooked === undefined ? {} : { unhooked }),
    ...(unheld === undefined ? {} : { unheld }),
  };
  return released(withState(m, { ...state, condition }));
}
