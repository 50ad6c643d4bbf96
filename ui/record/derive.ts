import {
  type Brake,
  type BrakeState,
  balance,
  createRig,
  type FaultId,
  faultChanges,
  freshState,
  HOT_LOCK,
  type Instant,
  ownScene,
  type Rig,
  readScene,
  rest,
  type Scene,
  standingState,
  startState,
  suitsShoes,
  tellFinding,
  withAdjuster,
} from '../../sim/index.ts';
import { ownWords } from '../../sim/workshop/index.ts';
import { brakes } from '../scenes.ts';
import type { AdjusterFit, Bench, BrakeRef } from './bench.ts';
import { KeptFor } from './kept.ts';
import type { Moment } from './moment.ts';
import type { OwnBrake, Shelf } from './shelf.ts';

/**
 * What follows from the record: the brake on the bench and what its solvers need. Made once for what
 * it is made of; nothing of it is ever in the record.
 */

interface ReadScene {
  readonly brake: Brake;
  readonly scene: Scene;
}

const scenes = new KeptFor<object, ReadScene>();

/** A scene's data read; throws with all findings when it cannot be. */
export const read = (scene: object): ReadScene =>
  scenes.of(scene, () => {
    const result = readScene(scene);
    if (!result.ok) throw new Error(result.findings.map(tellFinding).join('\n'));
    return result;
  });

/** The teaching brakes by their names. */
export const teaching: ReadonlyMap<string, object> = new Map(brakes.map((b) => [b.name, b]));

const ownScenes = new KeptFor<OwnBrake, Scene>();

/** The scene of one's own brake, of its last sound sizes. */
export const sceneOfOwn = (own: OwnBrake): Scene =>
  ownScenes.of(own, () => {
    const words = ownWords(own.base, own.sizes, own);
    const made = ownScene(own.base, own.sizes, words, own.photo?.seen);
    return readScene(made).ok ? made : own.base;
  });

/** One's own brake that a reference names, if it names one. */
export const ownOf = (ref: BrakeRef, shelf: Shelf): OwnBrake | undefined =>
  ref.kind === 'own' ? shelf.brakes.find((b) => b.name === ref.name) : undefined;

/** The scene that a reference names; null when it is gone. */
export function sceneOf(ref: BrakeRef, shelf: Shelf): object | null {
  if (ref.kind === 'whole') return ref.scene;
  if (ref.kind === 'scene') return teaching.get(ref.name) ?? null;
  const own = ownOf(ref, shelf);
  return own ? sceneOfOwn(own) : null;
}

const faulty = new KeptFor<Brake, Map<string, Brake>>();
const fitted = new KeptFor<Brake, KeptFor<AdjusterFit, Brake>>();

/** Temperature above which a brake's hot lock holds when it is on, °C. */
export const lockAt = (brake: Brake): number =>
  Number.isFinite(brake.adjuster.hotLock) ? brake.adjuster.hotLock : HOT_LOCK;

/** A brake with another adjuster put on it. */
export function refitted(own: Brake, fit: AdjusterFit): Brake {
  return fitted
    .of(own, () => new KeptFor())
    .of(fit, () =>
      withAdjuster(own, fit.kind, {
        hotLock: fit.hotLock ? lockAt(own) : Number.POSITIVE_INFINITY,
        drivenBy: fit.drivenBy,
      }),
    );
}

/** A brake with what a fault builds otherwise. */
function withFaultBuilt(brake: Brake, id: string): Brake {
  const known = faulty.of(brake, () => new Map());
  const found = known.get(id);
  if (found) return found;
  const built =
    faultChanges[id as FaultId].apply(rigOfBrake(brake), freshState(brake)).brake ?? brake;
  known.set(id, built);
  return built;
}

/** The brake that a reference names; the first teaching brake when it is gone. */
export const brakeOfRef = (ref: BrakeRef, shelf: Shelf): Brake =>
  read(sceneOf(ref, shelf) ?? brakes[0]).brake;

/** The brake of a bench before another adjuster is put on it. */
export function ownBrakeOf(bench: Bench, shelf: Shelf): Brake {
  const brake = brakeOfRef(bench.brake, shelf);
  return bench.fault === null ? brake : withFaultBuilt(brake, bench.fault);
}

/** The brake of a bench; the first teaching brake when its own is gone. */
export function brakeOfBench(bench: Bench, shelf: Shelf): Brake {
  const own = ownBrakeOf(bench, shelf);
  return bench.adjuster === null ? own : refitted(own, bench.adjuster);
}

/** A brake's other self, whose shoes bend; and the brake whose other self it is. */
const bent = new KeptFor<Brake, Brake>();
const plain = new WeakMap<Brake, Brake>();

/** The same brake with shoes that bend: an object of its own, so that what follows from it is kept apart. */
export const bending = (brake: Brake): Brake =>
  plain.has(brake)
    ? brake
    : bent.of(brake, () => {
        const made = { ...brake };
        plain.set(made, brake);
        return made;
      });

/** The same brake with rigid shoes. */
export const rigid = (brake: Brake): Brake => plain.get(brake) ?? brake;

/** Do a brake's shoes bend? */
export const isBending = (brake: Brake): boolean => plain.has(brake);

/**
 * Do the shoes on the bench bend? As the view asks for, once the linings lie as they wear under such shoes; till
 * then as they wore: no force is told of a lining under shoes that it does not suit.
 */
export const bends = ({ bench, view }: Moment): boolean =>
  suitsShoes(view.bending, bench.state) === view.bending;

export function brakeOf(m: Moment): Brake {
  const brake = brakeOfBench(m.bench, m.shelf);
  return bends(m) ? bending(brake) : brake;
}

const rigs = new KeptFor<Brake, Rig>();
export const rigOfBrake = (brake: Brake): Rig =>
  rigs.of(brake, () => createRig(brake, { flexible: isBending(brake) }));
/** The rig of a brake under shoes that a state's linings suit: as they are where those do. */
export function rigFor(brake: Brake, state: BrakeState): Rig {
  const bends = isBending(brake);
  return rigOfBrake(suitsShoes(bends, state) ? brake : bends ? rigid(brake) : bending(brake));
}
export const rigOf = (m: Moment): Rig => rigOfBrake(brakeOf(m));

/** Instants of a rig, kept for the states that they are of. */
function keptInstants(make: (rig: Rig, state: BrakeState) => Instant) {
  const all = new KeptFor<Rig, KeptFor<BrakeState, Instant>>();
  return (rig: Rig, state: BrakeState): Instant =>
    all.of(rig, () => new KeptFor()).of(state, () => make(rig, state));
}

/** The released brake in a state. */
/** A drum that is off stands wider than its mark by this: nothing is near the linings. */
export const AWAY = 1.1;

/** Is the drum off? What is measured against it then is no figure. */
const isAway = ({ drum }: Brake, { drumRadius }: BrakeState): boolean =>
  drumRadius >= AWAY * drum.radiusMax;

/** Readings that say something while the drum is off: all but those of the drum and of the gaps to it. */
export const withoutDrum = <T extends { readonly key: string }>(
  brake: Brake,
  state: BrakeState,
  all: readonly T[],
): readonly T[] =>
  isAway(brake, state)
    ? all.filter(({ key }) => !/^(drumDiameter|pedalGaps)|learance/.test(key))
    : all;

export const restOf = keptInstants(rest);

/** The released brake in a state with its drum turning forward: what drags, whatever the drum on the stage does. */
export const dragOf = keptInstants((rig, state) =>
  balance(rig, state, { pressure: 0, turning: 1 }),
);

const starts = new KeptFor<Brake, BrakeState>();
export const startOf = (brake: Brake): BrakeState => starts.of(brake, () => startState(brake));

const otherStarts = new KeptFor<Brake, BrakeState>();
/** The axle's other wheel as the scene starts it. */
export const otherStartOf = (brake: Brake): BrakeState =>
  otherStarts.of(brake, () =>
    startState(brake, undefined, brake.wheel === 'left' ? 'right' : 'left'),
  );

const standings = new KeptFor<Brake, Map<string, BrakeState>>();
/**
 * One of a brake's standing states, worn in under rigid shoes; throws on an unknown name. Under shoes that bend it is
 * bedded in anew on the bench, piece by piece: driven to at once it would hold the page up for seconds.
 */
export function standingOf(built: Brake, name: string): BrakeState {
  const brake = rigid(built);
  const known = standings.of(brake, () => new Map());
  const found = known.get(name);
  if (found) return found;
  const made = standingState(rigOfBrake(brake), name);
  known.set(name, made);
  return made;
}
