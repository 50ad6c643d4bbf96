import type { Instant } from '../../balance/instant.ts';
import { lockedShoe } from '../../balance/lock.ts';
import { createRig, type Rig } from '../../balance/rig.ts';
import type { BrakeState } from '../../brake/state.ts';
import type { Brake, Side } from '../../brake/types.ts';
import type { Finding } from '../../scene/finding.ts';
import { readScene } from '../../scene/read.ts';
import type { Scene } from '../../scene/schema.ts';
import { type Size, sizeIn, sizesOf, withSize } from '../../scene/sizes.ts';
import { application } from '../../wear/application.ts';
import { LessonValues } from '../lesson-values.ts';
import { UNHELD } from '../removal.ts';
import { type Answer, ownAnswers } from './answers.ts';
import type { Base, Press } from './base.ts';
import { type Mark, marksOf } from './marks.ts';
import { setNow, setterOf } from './quantities.ts';

/**
 * One thing of a brake varied, or two: each point is a brake of its own, read by the scene's rules and
 * balanced anew. No curve is put through points: what lies between is asked for.
 */

/** A quantity's id and the value that it is given, in its unit. */
export type Setting = readonly [id: string, value: number];

/** What came of one point. */
export interface VaryPoint {
  /** What was set, in the order asked. */
  readonly at: readonly number[];
  /** By the order of the keys asked for; NaN where there is nothing to tell. */
  readonly values: readonly number[];
  /** What no force is told for: a brake that cannot be, a shoe that locks, a drum that leaves no pose. */
  readonly why: 'sound' | 'cannot be' | 'locks' | 'lost' | 'yields';
  /** The shoe that locks. */
  readonly locked: Side | null;
  /** Why there is no such brake. */
  readonly finding: Finding | null;
  /** Teeth that dropped in by the press. */
  readonly clicked: number;
  /** What is out of the way there, though forces can be told. */
  readonly marks: readonly Mark[];
}

/** What a point looks like. */
export interface Shown {
  readonly scene: Scene;
  readonly state: BrakeState;
  readonly instant: Instant;
}

/** The state carried over to the brake with another size: as worn, on the same tooth if it has it. */
function carried(state: BrakeState, from: Brake, to: Brake): BrakeState {
  if (from === to) return state;
  return {
    ...state,
    tooth: Math.min(state.tooth, to.adjuster.teeth),
    drumRadius: state.drumRadius + (to.drum.radiusNew - from.drum.radiusNew),
  };
}

/** A brake as it stands with something set otherwise, or why it cannot be. */
export type Stood =
  | { readonly ok: true; readonly base: Base; readonly brake: Brake }
  | { readonly ok: false; readonly finding: Finding };

/** What the ratchet does in such a press: a drum that is held by a shoe cannot drag the shoes on. */
function judge(rig: Rig, state: BrakeState, { pressure, turning, cable }: Press) {
  const held = lockedShoe(rig, state, turning, cable > 0 ? undefined : pressure) !== null;
  return application(rig, state, { pressure, turning: held ? 0 : turning });
}

/** What can be read of a brake pressed so. */
const valuesOf = (rig: Rig, { press }: Base, state: BrakeState): LessonValues =>
  new LessonValues({ rig, state, ...press, moreSlack: 0, held: UNHELD, rows: [], events: [] });

/** Key of a quantity as it is at a point, for formulas that name it: `set cylinder.bore`. */
export const SET = 'set ';

/** Varies what is asked of one brake; a brake of a size is built once while only its press or state changes. */
export class Vary {
  readonly base: Base;
  readonly brake: Brake;
  readonly #rig: Rig;
  readonly #sizes: ReadonlyMap<string, Size>;
  #built: { readonly key: string; readonly stood: Stood; readonly rig: Rig | null } | null = null;

  /** @throws Error with its findings where the base's own scene is no brake */
  constructor(base: Base) {
    const read = readScene(base.scene);
    if (!read.ok) throw new Error(read.findings.map((f) => `${f.path}: ${f.found}`).join('\n'));
    this.base = base;
    this.brake = read.brake;
    this.#rig = createRig(this.brake, { flexible: base.bending });
    this.#sizes = new Map(sizesOf(base.scene).map((size) => [size.id, size]));
  }

  /** The sizes among what is set, put into the scene and read. */
  #build(sizes: readonly Setting[]): { readonly stood: Stood; readonly rig: Rig | null } {
    const { base, brake } = this;
    if (sizes.length === 0) return { stood: { ok: true, base, brake }, rig: this.#rig };
    const key = sizes.map(([id, x]) => `${id}=${x}`).join(' ');
    if (this.#built?.key === key) return this.#built;
    const data = sizes.reduce<object>(
      (scene, [id, value]) => {
        const size = this.#sizes.get(id);
        if (!size) throw new Error(`No quantity "${id}"`);
        return withSize(scene, size, value);
        // Standing states are of the brake as it was: none is asked for here.
      },
      { ...base.scene, states: [] },
    );
    const read = readScene(data);
    if (!read.ok) {
      const [finding] = read.findings as [Finding];
      this.#built = { key, stood: { ok: false, finding }, rig: null };
    } else {
      const state = carried(base.state, brake, read.brake);
      const stood: Stood = {
        ok: true,
        base: { ...base, scene: read.scene, state },
        brake: read.brake,
      };
      this.#built = { key, stood, rig: createRig(read.brake, { flexible: base.bending }) };
    }
    return this.#built;
  }

  /** The brake with something set otherwise: its sizes, then its state and press. */
  #stand(settings: readonly Setting[]): { readonly stood: Stood; readonly rig: Rig | null } {
    const built = this.#build(settings.filter(([id]) => !setterOf(id)));
    if (!built.stood.ok) return built;
    const { brake } = built.stood;
    const base = settings.reduce(
      (now, [id, value]) => setterOf(id)?.(now, value, brake) ?? now,
      built.stood.base,
    );
    return { stood: { ok: true, base, brake }, rig: built.rig };
  }

  /** All that can be read of this brake: its keys, names, units and digits. */
  get answers(): readonly Answer[] {
    const values = valuesOf(this.#rig, this.base, this.base.state);
    const read = values.keys.flatMap((key) => {
      const value = values.of(key);
      return value ? [{ key, name: value.name, unit: value.unit, digits: value.digits }] : [];
    });
    return [...read, ...ownAnswers.map(({ of: _, ...told }) => told)];
  }

  /** The brake of a point, built but not pressed; or why there is none. */
  stood(settings: readonly Setting[]): Stood {
    return this.#stand(settings).stood;
  }

  /** The brake on the stage at a point: built, as the press leaves its adjuster, and pressed. */
  shown(settings: readonly Setting[]): Shown | null {
    const { stood, rig } = this.#stand(settings);
    if (!stood.ok || !rig) return null;
    const { press, steps, scene } = stood.base;
    const { state } = steps ? judge(rig, stood.base.state, press) : { state: stood.base.state };
    return { scene, state, instant: valuesOf(rig, stood.base, state).instant };
  }

  /** What a quantity is on a brake that stands. */
  #set(id: string, base: Base, brake: Brake): number {
    const size = this.#sizes.get(id);
    return setNow(id, base, brake) ?? (size ? sizeIn(base.scene, size) : Number.NaN);
  }

  /** One point: what the keys read there. */
  point(settings: readonly Setting[], keys: readonly string[]): VaryPoint {
    const at = settings.map(([, value]) => value);
    const { stood, rig } = this.#stand(settings);
    const nothing = keys.map(() => Number.NaN);
    const none = {
      at,
      values: nothing,
      locked: null,
      finding: null,
      clicked: 0,
      marks: [],
    } as const;
    if (!stood.ok || !rig) {
      return { ...none, why: 'cannot be', finding: stood.ok ? null : stood.finding };
    }
    const { press, steps, state: before } = stood.base;
    const asks = steps || keys.includes('teethTaken');
    const pressed = asks ? judge(rig, before, press) : { state: before, clicked: 0 };
    const judged = steps ? pressed : { ...pressed, state: before };
    const values = valuesOf(rig, stood.base, judged.state);
    const { instant } = values;
    const { locked } = instant;
    const told = keys.map((key) => {
      if (key.startsWith(SET)) return this.#set(key.slice(SET.length), stood.base, stood.brake);
      const own = ownAnswers.find((a) => a.key === key);
      if (own) return own.of(rig, stood.base.state, judged.clicked);
      return values.of(key)?.value ?? Number.NaN;
    });
    return {
      at,
      values: told,
      why: locked ? 'locks' : instant.lost ? 'lost' : instant.yields ? 'yields' : 'sound',
      locked,
      finding: null,
      clicked: judged.clicked,
      marks: marksOf(rig, judged.state, instant, values.rest),
    };
  }
}
