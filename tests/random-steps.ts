import benchBrake from '../scenes/bench-brake.json';
import farmTrailer from '../scenes/farm-trailer.json';
import ferryRunabout from '../scenes/ferry-runabout.json';
import quayVan from '../scenes/quay-van.json';
import {
  type Brake,
  type BrakeState,
  type Condition,
  createMotion,
  createRig,
  freshState,
  type Hand,
  type Motion,
  type MotionPress,
  startState,
} from '../sim/index.ts';
import { mustRead } from './brakes.ts';
import { EnergyBook } from './energy-book.ts';

/**
 * Motion driven at random: pedal, drum, cable, hands, rim, heat, faults and teeth, on every scene and any brake handed
 * in. The same seed takes the same steps everywhere: in Node and in every browser.
 */

const scenes = [quayVan, benchBrake, farmTrailer, ferryRunabout].map(mustRead);

/** Unbalanced force that a step may leave, N: 1e-6 of a piston's force at an ordinary press, some 1 000 N. */
const BALANCED = 1e-3;

/** What energy books may be open by, as a share of what was turned over. */
const BOOKS = 1e-3;

/** How a walk went: a hash of every pose on its way, and what was wrong. */
export interface Walked {
  readonly hash: string;
  readonly clicks: number;
  readonly steps: number;
  readonly wrong: readonly string[];
  /** What its energy books are open by, as a share of all work that was done in it. */
  readonly open: number;
}

/** A random number from 0 to 1, by Marsaglia's xorshift of 32 bits (2003). */
function chance(seed: number): () => number {
  let x = (Math.imul(seed + 1, 2654435761) >>> 0) | 1;
  return () => {
    x ^= x << 13;
    x ^= x >>> 17;
    x ^= x << 5;
    return (x >>> 0) / 2 ** 32;
  };
}

const one = <T>(list: readonly T[], next: () => number): T =>
  list[Math.floor(next() * list.length)] as T;

/** FNV-1a over the bytes of doubles, 32 bits (Fowler, Noll, Vo). */
function fnv(values: Float64Array, from: number): number {
  let h = from;
  for (const b of new Uint8Array(values.buffer, values.byteOffset, values.byteLength)) {
    h = Math.imul(h ^ b, 16777619) >>> 0;
  }
  return h;
}

/** One or two faults, or none. */
function faulty(sound: Condition, next: () => number): Condition {
  const faults: readonly (() => Partial<Condition>)[] = [
    () => ({ springFactor: 0.3 + 1.2 * next() }),
    () => ({ cupExtra: 80 * next() }),
    () => ({ pistonStuck: { front: next() < 0.5, rear: next() < 0.5 } }),
    () => ({ offCentre: 0.1 * next() }),
    () => ({ oval: 0.1 * next() }),
    () => ({ groove: 60 * next() }),
    () => ({ adjusterSeized: true }),
    () => ({ leverSpring: next() }),
    () => ({ adjusterStep: one([0, -1] as const, next) }),
    () => ({ teethHold: 200 + 600 * next() }),
    () => ({ keptPressure: 0.5 * next() }),
    () => ({ keptCable: 150 * next() }),
    () => ({ leverLoss: next() }),
    () => ({ drumRise: 0.2 * next() }),
    () => ({ lean: { front: 60 * next(), rear: 60 * next() } }),
    () => ({ unhooked: [0] }),
    () => ({ unheld: [one(['front', 'rear'] as const, next)] }),
    () => ({
      surface: { front: one(['greasy', 'wet', 'glazed', 'damp'] as const, next), rear: 'dry' },
    }),
  ];
  let condition = sound;
  for (let n = Math.floor(3 * next()); n > 0; n--) {
    condition = { ...condition, ...one(faults, next)() };
  }
  return condition;
}

/** A state somewhere on a brake's life. */
function anywhere(brake: Brake, next: () => number): BrakeState {
  const from = next() < 0.5 ? freshState(brake) : startState(brake);
  const { thicknessNew, thicknessMin } = brake.shoes.front.lining;
  const most = next() ** 2 * (thicknessNew - thicknessMin);
  const worn = (old: Float64Array): Float64Array => {
    const [toe, heel] = [most * next(), most * next()];
    return old.map((v, i) => Math.max(v, toe + ((heel - toe) * i) / Math.max(1, old.length - 1)));
  };
  return {
    ...from,
    tooth: Math.floor(next() ** 2 * (brake.adjuster.teeth + 1)),
    wear: { front: worn(from.wear.front), rear: worn(from.wear.rear) },
    temperature: 20 + 250 * next() ** 3,
    condition: faulty(from.condition, next),
  };
}

function handOn(brake: Brake, next: () => number): Hand {
  const { shoes, parkingLever: lever } = brake;
  const on = one(['front', 'rear', 'lever', 'strut', 'front piston', 'rear piston'] as const, next);
  const at =
    on === 'lever'
      ? lever.hook
      : on === 'strut'
        ? shoes.front.strutSeat
        : on === 'front piston'
          ? shoes.front.toe
          : on === 'rear piston'
            ? shoes.rear.toe
            : shoes[on].toe;
  const by = (): number => 80 * (2 * next() - 1);
  return { on, at, to: [at[0] + by(), at[1] + by()], rate: 5 + 100 * next(), limit: 200 };
}

/** What is done for a while, and for how many steps. */
function doing(
  brake: Brake,
  next: () => number,
): { readonly press: MotionPress; readonly steps: number } {
  const kind = next();
  const turning = one([1, 1, -1, 0, 0] as const, next);
  const press: MotionPress = {
    pressure: next() < 0.35 ? 0 : 8 * next() ** 2,
    turning,
    ...(next() < 0.25 ? { cable: 500 * next() } : {}),
    ...(kind < 0.15 ? { hands: [handOn(brake, next)] } : {}),
    ...(kind > 0.85 ? { torque: 3e5 * (2 * next() - 1) } : {}),
    ...(kind > 0.78 && kind < 0.85 ? { coasts: true, rolling: next() < 0.5 } : {}),
  };
  return { press, steps: 20 + Math.floor(60 * next()) };
}

/** Every bit of a moment that moves. */
function bitsOf(motion: Motion): Float64Array {
  const { pose, speeds, drumAngle, drumSpeed, state } = motion.snapshot();
  return Float64Array.from([...pose, ...speeds, drumAngle, drumSpeed, state.tooth]);
}

/**
 * Goes on at random.
 *
 * @param seed of everything that is drawn
 * @param steps at least so many
 * @param brake one to walk with; a scene's by chance when left out
 */
export function walk(seed: number, steps: number, brake?: Brake): Walked {
  const next = chance(seed);
  const of = brake ?? one(scenes, next);
  const motion = createMotion(createRig(of), anywhere(of, next));
  const other = createMotion(createRig(of), motion.state);
  const wrong: string[] = [];
  let hash = 2166136261;
  let clicks = 0;
  let taken = 0;
  const book = new EnergyBook(motion);
  const say = (why: string): void => {
    if (wrong.length < 5) wrong.push(`step ${taken}: ${why}`);
  };
  const go = (m: Motion, press: MotionPress, count: number): number => {
    let h = hash;
    for (let n = 0; n < count; n++) {
      // The foot comes down and goes up in a tenth of a second at least.
      const part = Math.min(1, (n + 1) / 24);
      const before = m.tooth;
      const { clicked } = m.step({ ...press, pressure: press.pressure * part });
      if (m === motion) {
        taken++;
        clicks += clicked;
        book.enter({ ...press, pressure: press.pressure * part }, clicked);
        const { solution } = m.snapshot();
        if (!(solution.residual < BALANCED)) say(`${solution.residual} N unbalanced`);
        if (!solution.settled) say('supports not settled');
        if (m.tooth - before !== clicked) say(`tooth ${before} to ${m.tooth}, ${clicked} told`);
        if (m.tooth < 0 || m.tooth > of.adjuster.teeth) say(`tooth ${m.tooth}`);
      }
      const bits = bitsOf(m);
      if (bits.some((v) => !Number.isFinite(v))) say('no number');
      h = fnv(bits, h);
    }
    return h;
  };
  while (taken < steps && wrong.length === 0) {
    const chosen = next();
    if (chosen < 0.08) {
      motion.load(anywhere(of, next));
      book.skip();
    } else if (chosen < 0.16) motion.setStep(one([1 / 240, 1 / 480, 1 / 2400], next));
    const { press, steps: count } = doing(of, next);
    const again = next() < 0.1 ? motion.snapshot() : null;
    const from = hash;
    hash = go(motion, press, count);
    if (again) {
      const after = hash;
      hash = from;
      other.restore(again);
      const there = go(other, press, count);
      hash = after;
      if (there !== after) say('other bits from its snapshot');
    }
  }
  const open = Math.max(book.shoes.open, book.drum.open);
  if (!(open < BOOKS)) say(`energy books open by ${open}`);
  return { hash: hash.toString(16), clicks, steps: taken, wrong, open };
}
