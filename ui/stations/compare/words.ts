import type { Brake, BrakeState, Condition } from '../../../sim/index.ts';
import { faultNames, isFault } from '../../../sim/workshop/index.ts';
import { wordsOf } from '../../adjusters.ts';
import { number } from '../../format.ts';
import type { One } from './one.ts';

/** What differs between two moments, and what is alike: in words, with the figure of each. */

export interface Difference {
  /** What it is of: "Adjuster". */
  readonly name: string;
  readonly a: string;
  readonly b: string;
  /** It follows from another that differs too. */
  readonly follows?: true;
}

/** mm of lining left, the thickness new less the mean of what its elements lost. */
const left = (brake: Brake, state: BrakeState, side: 'front' | 'rear'): number => {
  const worn = state.wear[side];
  return brake.shoes[side].lining.thicknessNew - worn.reduce((sum, w) => sum + w, 0) / worn.length;
};

const WAYS = { 1: 'forward', 0: 'stands', '-1': 'backward' } as const;

/** What can be out of order, as it stands in the list; null: as it should be. */
const conditions: {
  readonly [K in keyof Condition]-?: readonly [string, (c: Condition) => string];
} = {
  surface: ['Rubbing faces', (c) => `${c.surface.front} front, ${c.surface.rear} rear`],
  pistonStuck: [
    'Pistons',
    ({ pistonStuck: p }) =>
      p.front && p.rear
        ? 'both stuck'
        : p.front
          ? 'front stuck'
          : p.rear
            ? 'rear stuck'
            : 'both free',
  ],
  cupExtra: ['Extra friction of a cup, N', (c) => number(c.cupExtra, 0)],
  springFactor: ['Return springs', (c) => `${number(100 * c.springFactor, 0)} %`],
  offCentre: ['Drum off centre, mm', (c) => number(c.offCentre, 2)],
  oval: ['Drum oval, mm', (c) => number(c.oval, 2)],
  groove: ['Groove in the plate holds, N', (c) => number(c.groove, 0)],
  adjusterSeized: ['Adjuster', (c) => (c.adjusterSeized ? 'seized' : 'free')],
  teethHold: ['Teeth hold', (c) => (c.teethHold === null ? 'all' : `${number(c.teethHold, 0)} N`)],
  leverSpring: ['Spring of the adjuster', (c) => `${number(100 * c.leverSpring, 0)} %`],
  adjusterStep: [
    'A tooth passed',
    (c) =>
      c.adjusterStep === 1 ? 'steps out' : c.adjusterStep === 0 ? 'does nothing' : 'winds back',
  ],
  keptPressure: ['Pressure kept in the line, bar', (c) => number(10 * c.keptPressure, 1)],
  keptCable: ['Pull kept by the cable, N', (c) => number(c.keptCable, 0)],
  leverLoss: ['Pull lost in the lever’s pivot', (c) => `${number(100 * c.leverLoss, 0)} %`],
  drumRise: ['Play of the bearing, mm', (c) => number(c.drumRise, 2)],
  lean: ['Leaning on the shoes, N', (c) => `${number(c.lean.front, 0)}, ${number(c.lean.rear, 0)}`],
  unhooked: ['Return springs unhooked', (c) => number(c.unhooked?.length ?? 0, 0)],
  unheld: ['Hold-downs off', (c) => c.unheld?.join(' and ') ?? 'none'],
};

const called = (fault: string | null): string =>
  fault === null ? 'none' : isFault(fault) ? faultNames[fault].toLowerCase() : fault;

const filmOf = ({ film }: BrakeState): string =>
  film
    ? `water ${number(film.water, 2)}, rust ${number(film.rust, 2)}, glaze ${number(film.glaze.front, 2)} and ${number(film.glaze.rear, 2)}`
    : 'none';

/** Every thing that two moments can differ in, with its figure for one of them. */
const things: readonly (readonly [name: string, told: (one: One) => string])[] = [
  ['Brake', ({ brake }) => brake.title],
  ['Fault built in', ({ kept }) => called(kept.bench.fault)],
  [
    'Kind of adjuster',
    ({ brake }) =>
      `${wordsOf(brake).name}${Number.isFinite(brake.adjuster.hotLock) ? ', hot lock' : ''}`,
  ],
  ['Shoes', ({ bends }) => (bends ? 'bend' : 'rigid')],
  ['Drum turns', ({ kept }) => WAYS[kept.turning]],
  [
    'Linings, mm',
    ({ brake, state }) =>
      `${number(left(brake, state, 'front'), 1)} and ${number(left(brake, state, 'rear'), 1)}`,
  ],
  ['Drum Ø, mm', ({ state }) => number(2 * state.drumRadius, 2)],
  [
    'Friction',
    ({ brake: { shoes } }) =>
      shoes.front.lining.friction === shoes.rear.lining.friction
        ? number(shoes.front.lining.friction, 2)
        : `${number(shoes.front.lining.friction, 2)} and ${number(shoes.rear.lining.friction, 2)}`,
  ],
  ['Warmth, °C', ({ state }) => number(state.temperature, 0)],
  ['On the faces', ({ state }) => filmOf(state)],
  ['Cable holds the lever off its stop, mm', ({ state }) => number(state.leverOffStop, 2)],
  ...Object.values(conditions).map(
    ([name, told]) => [name, ({ state }: One) => told(state.condition)] as const,
  ),
  ['Tooth', ({ brake, state }) => `${wordsOf(brake).counter(brake.adjuster, state.tooth).value}`],
];

/** What an adjuster that does not work leaves behind: its tooth follows. */
const MAKES_TOOTH: readonly string[] = [
  'Fault built in',
  'Adjuster',
  'Spring of the adjuster',
  'A tooth passed',
  'Kind of adjuster',
];
/** Of another brake all of this is its own. */
const OF_BRAKE: readonly string[] = [
  'Linings, mm',
  'Drum Ø, mm',
  'Friction',
  'Kind of adjuster',
  'Tooth',
];

/** What differs, causes first. */
export function differences(a: One, b: One): Difference[] {
  const all = things
    .map(([name, told]): Difference => ({ name, a: told(a), b: told(b) }))
    .filter((d) => d.a !== d.b);
  const has = (names: readonly string[]): boolean => all.some((d) => names.includes(d.name));
  const other = has(['Brake']);
  // What a fault does to the brake is the fault's.
  const fault = has(['Fault built in']);
  const faulty = Object.values(conditions).map(([name]) => name);
  return all.map((d) =>
    (other && OF_BRAKE.includes(d.name)) ||
    (fault && faulty.includes(d.name)) ||
    (d.name === 'Tooth' && has(MAKES_TOOTH))
      ? { ...d, follows: true }
      : d,
  );
}

/** Always told of those that are alike. */
const ALIKE = [
  'Brake',
  'Linings, mm',
  'Drum Ø, mm',
  'Friction',
  'Warmth, °C',
  'Tooth',
  'Drum turns',
];

/** What is alike, in one line. */
export const alike = (a: One, b: One): string =>
  things
    .filter(([name, told]) => ALIKE.includes(name) && told(a) === told(b))
    .map(([name, told]) =>
      name === 'Brake' ? told(a) : `${name.charAt(0).toLowerCase()}${name.slice(1)} ${told(a)}`,
    )
    .map((text) => text.replace(/^(.*), (mm|°C) (.*)$/, (_, n, u, x) => `${n} ${x} ${u}`))
    .join('; ');

/** How one of the two is called: by its standing state and way. */
export function titleOf({ kept, state, brake }: One): string {
  const km = state.distance / 1e6;
  const { standing, fault } = kept.bench;
  const what = fault !== null ? called(fault) : (standing ?? brake.title);
  return `${what.charAt(0).toUpperCase()}${what.slice(1)}, ${number(km, 0)} km`;
}

/** The other one: the same but for what differs. */
export function otherTitle(one: One, all: readonly Difference[]): string {
  const causes = all.filter((d) => !d.follows);
  const only = causes[0];
  if (!only) return 'the same';
  if (causes.length > 1) return titleOf(one);
  const [name, unit] = only.name.split(', ');
  const said = `${(name ?? '').toLowerCase()} ${only.b}${unit ? ` ${unit}` : ''}`;
  return only.name === 'Brake' || only.name === 'Fault built in'
    ? only.b
    : `the same, ${said.replace(/^drum turns/, 'drum turning')}`;
}
