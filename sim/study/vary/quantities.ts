import { ELEMENTS } from '../../brake/state.ts';
import type { Brake } from '../../brake/types.ts';
import { type Size, sizesOf } from '../../scene/sizes.ts';
import { BAR } from '../../units/units.ts';
import { studyNames as names } from '../../words/en.ts';
import type { Base, Press } from './base.ts';

/** What can be varied: a press, the state that the brake is in, or any size of it. */
export interface Quantity {
  /** `pressure`, `tooth`, or where a size stands: `shoes.lining.friction`. */
  readonly id: string;
  readonly name: string;
  /** Whose it is, of a size; empty of a press and a state. */
  readonly of: string;
  readonly unit: string;
  /** As it is now. */
  readonly value: number;
  /** Allowed at all. */
  readonly range: readonly [number, number];
  /** What is gone over when nothing else is told: near enough to be a brake, wide enough to see something. */
  readonly usual: readonly [number, number];
  readonly whole: boolean;
  readonly kind: 'press' | 'state' | 'size';
}

/** How a quantity of a press or a state is set: what it gives in place of what was there. */
interface Setter {
  readonly name: string;
  readonly unit: string;
  readonly kind: 'press' | 'state';
  readonly whole?: true;
  readonly of: (base: Base, brake: Brake) => number;
  readonly range: (brake: Brake) => readonly [number, number];
  readonly usual: (brake: Brake) => readonly [number, number];
  readonly set: (base: Base, value: number, brake: Brake) => Base;
}

const pressed = (base: Base, change: Partial<Press>): Base => ({
  ...base,
  press: { ...base.press, ...change },
});
const stateOf = (base: Base, change: Partial<Base['state']>): Base => ({
  ...base,
  state: { ...base.state, ...change },
});
const condition = (base: Base, change: Partial<Base['state']['condition']>): Base =>
  stateOf(base, { condition: { ...base.state.condition, ...change } });

/** Mean depth worn off a lining, mm. */
const meanWear = (depths: Float64Array): number =>
  depths.reduce((sum, w) => sum + w, 0) / depths.length;

/** Both linings worn by as much, evenly: as when their depths were measured. */
function worn(base: Base, depth: number): Base {
  const even = () => new Float64Array(base.state.wear.front.length || ELEMENTS).fill(depth);
  return stateOf(base, { wear: { front: even(), rear: even() }, wornBy: 'neither' });
}

const setters: Readonly<Record<string, Setter>> = {
  pressure: {
    name: names.linePressure,
    unit: 'bar',
    kind: 'press',
    of: (b) => b.press.pressure / BAR,
    range: () => [0, 200],
    usual: () => [0, 80],
    set: (b, x) => pressed(b, { pressure: x * BAR }),
  },
  cable: {
    name: names.pullOfCable,
    unit: 'N',
    kind: 'press',
    of: (b) => b.press.cable,
    range: () => [0, 5000],
    usual: () => [0, 600],
    set: (b, x) => pressed(b, { cable: x }),
  },
  tooth: {
    name: names.toothOfAdjuster,
    unit: '',
    kind: 'state',
    whole: true,
    of: (b) => b.state.tooth,
    range: (brake) => [0, brake.adjuster.teeth],
    usual: (brake) => [0, Math.min(brake.adjuster.teeth, 20)],
    set: (b, x) => stateOf(b, { tooth: x }),
  },
  wear: {
    name: names.wornEvenly,
    unit: 'mm',
    kind: 'state',
    of: (b) => (meanWear(b.state.wear.front) + meanWear(b.state.wear.rear)) / 2,
    range: ({ shoes }) => [
      0,
      Math.min(shoes.front.lining.thicknessNew, shoes.rear.lining.thicknessNew),
    ],
    usual: ({ shoes }) => [
      0,
      Math.min(
        shoes.front.lining.thicknessNew - shoes.front.lining.thicknessMin,
        shoes.rear.lining.thicknessNew - shoes.rear.lining.thicknessMin,
      ),
    ],
    set: worn,
  },
  drumDiameter: {
    name: names.drumAsIs,
    unit: 'mm',
    kind: 'state',
    of: (b) => 2 * b.state.drumRadius,
    range: ({ drum }) => [2 * drum.radiusNew, 2 * drum.radiusMax + 4],
    usual: ({ drum }) => [2 * drum.radiusNew, 2 * drum.radiusMax],
    set: (b, x) => stateOf(b, { drumRadius: x / 2 }),
  },
  temperature: {
    name: names.temperatureOfDrum,
    unit: '°C',
    kind: 'state',
    of: (b) => b.state.temperature,
    range: () => [-40, 900],
    usual: () => [20, 420],
    set: (b, x) => stateOf(b, { temperature: x }),
  },
  leverOffStop: {
    name: names.leverHeldOff,
    unit: 'mm',
    kind: 'state',
    of: (b) => b.state.leverOffStop,
    range: () => [0, 50],
    usual: () => [0, 6],
    set: (b, x) => stateOf(b, { leverOffStop: x }),
  },
  springs: {
    name: names.strengthOfSprings,
    unit: '%',
    kind: 'state',
    of: (b) => 100 * b.state.condition.springFactor,
    range: () => [0, 200],
    usual: () => [30, 130],
    set: (b, x) => condition(b, { springFactor: x / 100 }),
  },
  cupFriction: {
    name: names.frictionOfCups,
    unit: 'N',
    kind: 'state',
    of: (b) => b.state.condition.cupExtra,
    range: () => [0, 2000],
    usual: () => [0, 300],
    set: (b, x) => condition(b, { cupExtra: x }),
  },
  oval: {
    name: names.drumOval,
    unit: 'mm',
    kind: 'state',
    of: (b) => b.state.condition.oval,
    range: () => [0, 1],
    usual: () => [0, 0.2],
    set: (b, x) => condition(b, { oval: x }),
  },
  offCentre: {
    name: names.drumOffCentre,
    unit: 'mm',
    kind: 'state',
    of: (b) => b.state.condition.offCentre,
    range: () => [0, 1],
    usual: () => [0, 0.2],
    set: (b, x) => condition(b, { offCentre: x }),
  },
  keptPressure: {
    name: names.pressureKept,
    unit: 'bar',
    kind: 'state',
    of: (b) => b.state.condition.keptPressure / BAR,
    range: () => [0, 200],
    usual: () => [0, 10],
    set: (b, x) => condition(b, { keptPressure: x * BAR }),
  },
};

/** Half and one and a half of a size, within its bounds; of nought what its bounds leave near it. */
function about(size: Size): [number, number] {
  const [low, high] = size.range;
  if (size.id === 'shoes.lining.friction') return [0.15, 0.85];
  if (size.unit === 'degrees')
    return [Math.max(low, size.value - 15), Math.min(high, size.value + 15)];
  // A place on the plate, mm: a tenth to either side of where it is.
  if (low === -1000 && size.unit === 'mm') return [size.value - 10, size.value + 10];
  const most = size.value === 0 ? Math.min(high, 1) : size.value * 1.5;
  const span: [number, number] = [Math.max(low, size.value * 0.5), Math.min(high, most)];
  return size.whole ? [Math.ceil(span[0]), Math.floor(span[1])] : span;
}

/** Sizes of both shoes, and of one: what is asked for most comes first. */
const FIRST = [
  'shoes.lining.friction',
  'pressure',
  'tooth',
  'cylinder.bore',
  'temperature',
  'wear',
];
const rank = ({ id }: { readonly id: string }): number => {
  const at = FIRST.indexOf(id);
  return at < 0 ? FIRST.length : at;
};

/** All that can be varied of a brake as it stands. */
export function quantitiesOf(base: Base, brake: Brake): readonly Quantity[] {
  const own = Object.entries(setters).map(
    ([id, s]): Quantity => ({
      id,
      name: s.name,
      of: '',
      unit: s.unit,
      value: s.of(base, brake),
      range: s.range(brake),
      usual: s.usual(brake),
      whole: s.whole ?? false,
      kind: s.kind,
    }),
  );
  const sizes = sizesOf(base.scene).map((size): Quantity => {
    const { at: _, ...told } = size;
    return { ...told, usual: about(size), kind: 'size' };
  });
  return [...own, ...sizes].sort((a, b) => rank(a) - rank(b));
}

/** How a press or a state is set; undefined for a size. */
export const setterOf = (id: string): Setter['set'] | undefined =>
  Object.hasOwn(setters, id) ? setters[id]?.set : undefined;

/** What a press or a state has; undefined for a size. */
export const setNow = (id: string, base: Base, brake: Brake): number | undefined =>
  Object.hasOwn(setters, id) ? setters[id]?.of(base, brake) : undefined;
