import {
  type AdjusterKind,
  adjusterKinds,
  BAR,
  type Brake,
  type BrakeState,
  balance,
  freshState,
  type Instant,
  kindLaws,
  type Point,
  pressedTo,
  pressUntilSilent,
  type Rig,
  readingOf,
  readings,
  strutLength,
} from '../../../sim/index.ts';
import { capital } from '../../format.ts';
import type { AdjusterFit } from '../../record/bench.ts';
import { brakeOf, refitted, restOf, rigid, rigOfBrake } from '../../record/derive.ts';
import { Kept, KeptFor } from '../../record/kept.ts';
import { sceneName } from '../../record/scene-names.ts';
import type { Session } from '../../session.ts';
import { type PartId, partNames } from '../../stage/part-names.ts';
import { drawingOf } from '../../stage/parts/adjuster.ts';
import { springPart } from '../../stage/parts/return-springs.ts';
import { liftLimit } from '../../stage/parts/strut.ts';
import { placesOf } from '../../stage/place.ts';
import type { Shape } from '../../stage/shapes.ts';
import type { ApartPart, Without } from './part.ts';

/** Linings worn evenly by this much, the adjuster not yet pressed, mm (own choice: several teeth of every kind). */
const WORN = 0.6;
/** The press that is tried, bar. */
const PRESS = 40;

/** What presses give with all springs, or without one. */
export interface Tried {
  readonly clicks: number;
  /** How much longer the strut has become, mm. */
  readonly longer: number;
  readonly state: BrakeState;
  readonly clearance: number;
  readonly travel: number;
  readonly torque: number;
  readonly strut: number;
  /** What both shoes drag with, the pedal up and the drum turning, N·m. */
  readonly drag: number;
}

/** On the shoes, not on the adjuster's bench. */
const OF_SHOE: readonly PartId[] = ['lever window', 'wedge seat'];

/** The adjuster on the bench: its parts in the order in which they go together, and what it does without a spring. */
export class ApartDesk {
  readonly session: Session;
  readonly #brake = new Kept<Brake>();
  readonly #whole = new Kept<readonly Shape[]>();
  readonly #tried = new KeptFor<Brake, Map<Without, Tried>>();

  constructor(session: Session) {
    this.session = session;
  }

  get part(): ApartPart {
    return this.session.moment.parts.apart;
  }

  /** Of a kind: the bench's brake with it, with rigid shoes. */
  #of(kind: AdjusterKind | null): Brake {
    const own = rigid(brakeOf(this.session.moment));
    return kind === null || kind === own.adjuster.kind ? own : refitted(own, fits[kind]);
  }
  get brake(): Brake {
    const { kind } = this.part;
    return this.#brake.of([kind, brakeOf(this.session.moment)], () => this.#of(kind));
  }
  get rig(): Rig {
    return rigOfBrake(this.brake);
  }

  /** Kinds that this brake has room for and the page can draw. */
  get kinds(): readonly AdjusterKind[] {
    return adjusterKinds.filter((kind) => shapesOf(this.#of(kind)).length > 0);
  }

  get #new(): BrakeState {
    return newOf(this.brake);
  }
  get rest(): Instant {
    return restOf(this.rig, this.#new);
  }

  /** All shapes of the adjuster as it stands in the brake. */
  get shapes(): readonly Shape[] {
    return this.#whole.of([this.brake], () => shapesOf(this.brake));
  }

  /** Its parts in the order in which they go together: as they lie over each other, springs last. */
  get order(): readonly PartId[] {
    const { springs } = drawingOf(this.brake);
    const all = [...new Set(this.shapes.flatMap((s) => (s.part ? [s.part] : [])))];
    const isSpring = (p: PartId): boolean => springs.includes(p);
    return [...all.filter((p) => !isSpring(p)), ...all.filter(isSpring)];
  }
  /** A point on each part as it stands in the brake, mm. */
  get spots(): ReadonlyMap<PartId, Point> {
    const { brake, rest } = this;
    const places = placesOf(brake, rest, liftLimit(brake, this.#new.temperature));
    return new Map(
      drawingOf(brake)
        .spots(brake, rest, places)
        .map(({ part, at }) => [part, at]),
    );
  }
  /** How many of them are together. */
  get fitted(): number {
    return Math.min(this.order.length, this.part.fitted);
  }
  /** The spring that makes it step. */
  get spring(): PartId | null {
    return drawingOf(this.brake).springs[0] ?? null;
  }

  /** The spring that holds the strut. */
  get strutSpring(): PartId | null {
    return kindLaws[this.brake.adjuster.kind].strutSpring === null ? null : 'strut spring';
  }
  /** The part that is taken away, where it is one of the adjuster's. */
  get away(): PartId | null {
    const { without } = this.part;
    return without === 'adjuster' ? this.spring : without === 'strut' ? this.strutSpring : null;
  }

  /** Springs that can be taken away, by what they are called. */
  get springs(): readonly { readonly of: Without; readonly name: string; readonly job: string }[] {
    const { spring, strutSpring, brake } = this;
    const own = (of: Without, part: PartId | null) =>
      part ? [{ of, name: partNames[part][0], job: partNames[part][1] }] : [];
    return [
      ...own('adjuster', spring),
      ...own('strut', strutSpring),
      ...brake.springs.map((s, i) => ({
        of: i,
        name: capital(sceneName(s.name)),
        job: partNames[springPart(brake, i)][1],
      })),
    ];
  }

  /** Presses on linings worn a little, until no more is taken up: with all springs, or without one. */
  tried(without: Without): Tried {
    const known = this.#tried.of(this.brake, () => new Map());
    const found = known.get(without);
    if (found) return found;
    const made = this.#try(without);
    known.set(without, made);
    return made;
  }

  #try(without: Without): Tried {
    const { brake, rig } = this;
    const fresh = this.#new;
    const { condition } = fresh;
    const worn: BrakeState = {
      ...fresh,
      wear: { front: fresh.wear.front.map(() => WORN), rear: fresh.wear.rear.map(() => WORN) },
      condition:
        without === 'nothing'
          ? condition
          : without === 'adjuster'
            ? { ...condition, leverSpring: 0 }
            : without === 'strut'
              ? { ...condition, strutLoose: true }
              : { ...condition, unhooked: [without] },
    };
    const { clicks, state } = pressUntilSilent(rig, worn, { pressure: PRESS * BAR, turning: 1 });
    const rest = restOf(rig, state);
    const pressed = pressedTo(rig, state, PRESS * BAR, 1);
    const told = readings(brake, state, rest, rest);
    return {
      clicks: clicks.reduce((sum, n) => sum + n, 0),
      longer: strutLength(brake, state.tooth) - strutLength(brake, worn.tooth),
      state,
      clearance: readingOf(told, 'restClearanceMean').value,
      strut: readingOf(told, 'strutForce').value,
      travel: pressed.travel,
      torque: Math.abs(pressed.instant.torqueOnDrum) / 1000,
      drag: Math.abs(balance(rig, state, { pressure: 0, turning: 1 }).torqueOnDrum) / 1000,
    };
  }
}

/** One fit for each kind, so that its brake is made once. */
const fits = Object.fromEntries(
  adjusterKinds.map((kind): [string, AdjusterFit] => [
    kind,
    { kind, hotLock: false, drivenBy: 'application' },
  ]),
) as Readonly<Record<AdjusterKind, AdjusterFit>>;

const fresh = new KeptFor<Brake, BrakeState>();
const newOf = (brake: Brake): BrakeState => fresh.of(brake, () => freshState(brake));

function shapesOf(brake: Brake): readonly Shape[] {
  const state = newOf(brake);
  const rest = restOf(rigOfBrake(brake), state);
  const places = placesOf(brake, rest, liftLimit(brake, state.temperature));
  return drawingOf(brake)
    .shapes(brake, rest, places, state.temperature, 0)
    .filter((s) => s.part !== undefined && !OF_SHOE.includes(s.part));
}
