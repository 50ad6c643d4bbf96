import type { LeverPlace } from '../balance/instant.ts';
import { climbedBy, seatsToStep } from '../balance/ratchet.ts';
import { type LeverForm, leverForm } from '../brake/lever-form.ts';
import { leverMass } from '../brake/lever-outline.ts';
import { strutLength } from '../brake/state.ts';
import type { Brake } from '../brake/types.ts';
import { cos, sin } from '../math/trig.ts';

/**
 * The toothed lever as a body, by closed forms on the ratchet law's phase: the law counts, the body shows.
 *
 * It rides up the flank of its tooth as the window's edge pulls it: lift = h·phase. At the crest, which is
 * the law's own step, it loses its flank and falls under its spring along its slot, m·s″ = −(F0 + k·s), a
 * harmonic motion (any textbook of mechanics): s(t) = (h + F0/k)·cos ωt + (v/ω)·sin ωt − F0/k, ω² = k/m.
 * It hits where the next flank is by then, and rings out: each bounce leaves with a share of the speed
 * before, and lasts 2·u·m/F0. Let go before the crest it slides down its flank, no faster than its spring
 * drives it with its own turn. As a body stepped against its teeth it would need 40 steps and more for each
 * of Motion's; so only a test does that.
 */

/** Share of the speed that steel on steel keeps in a hit (from memory: 0.3 to 0.6 for small hard parts). */
const KEPT = 0.4;
/** It lies still when it would leave slower than this, mm/s: a bounce of under 0.01 mm. */
const STILL = 5;

/** A drop over a crest: all that follows hangs on these and on the time. */
export interface Drop {
  /** When the crest was passed, s of Motion's clock. */
  readonly at: number;
  /** The tooth that it drops into. */
  readonly tooth: number;
  /** How fast it rose at the crest, mm/s. */
  readonly rise: number;
  /** The next flank under it at that moment, as a phase, and how fast that grows, 1/s. */
  readonly ahead: number;
  readonly pace: number;
  /** Strength of the spring, 1 sound. */
  readonly strength: number;
  /** From how high over the root, mm, where a hand lets it go; a tooth's height where left out: over a crest. */
  readonly from?: number;
}

/** The edge went back before the crest: when, and from which phase. */
export interface LetGo {
  readonly at: number;
  readonly phase: number;
}

/** What the lever's body remembers between two steps. */
export interface LeverRecord {
  /** Seats apart at the end of the last step, mm; NaN before the first. */
  readonly seats: number;
  readonly drop: Drop | null;
  readonly letGo: LetGo | null;
}

export const AT_REST: LeverRecord = {
  seats: Number.NaN,
  drop: null,
  letGo: null,
};

/** The hit that ends a fall. */
export interface Hit {
  /** s after the crest. */
  readonly after: number;
  /** Speed of the lever against the flank that it meets, mm/s. */
  readonly speed: number;
  /** Energy of the falling lever, mJ (N·mm). */
  readonly energy: number;
}

interface Body {
  readonly form: LeverForm;
  readonly mass: number;
  /** Mass that a slide down the flank moves, with the turn that goes with it, tonne. */
  readonly withTurn: number;
}
const bodies = new WeakMap<LeverForm, Body>();

function bodyOf(form: LeverForm): Body {
  const known = bodies.get(form);
  if (known) return known;
  const { mass, inertia } = leverMass(form);
  const turn = form.toothAngle / form.toothHeight;
  const made = { form, mass, withTurn: mass + inertia * turn * turn };
  bodies.set(form, made);
  return made;
}

/** Height and speed of a body that a preloaded spring drives to 0 from h, by a time, mm and mm/s. */
function driven(
  h: number,
  v: number,
  mass: number,
  { fitted, rate }: LeverForm['spring'],
  strength: number,
  t: number,
): { readonly s: number; readonly speed: number } {
  const [force, k] = [strength * fitted, strength * rate];
  if (k <= 0) {
    const a = force / mass;
    return { s: h + v * t - (a * t * t) / 2, speed: v - a * t };
  }
  const w = Math.sqrt(k / mass);
  const far = h + force / k;
  const [c, s] = [cos(w * t), sin(w * t)];
  return { s: far * c + (v / w) * s - force / k, speed: v * c - far * w * s };
}

/** When, how fast and with what energy a dropped lever hits. */
export function hitOf(form: LeverForm, drop: Drop): Hit {
  const { mass } = bodyOf(form);
  const { toothHeight: h, spring } = form;
  const { ahead, from = h, pace, rise, strength } = drop;
  const [force, k] = [strength * spring.fitted, strength * spring.rate];
  let t = Math.sqrt((2 * mass * from) / (force + k * from)) + (2 * mass * rise) / force;
  for (let i = 0; i < 6; i++) {
    const { s, speed } = driven(from, rise, mass, spring, strength, t);
    t -= (s - h * (ahead + pace * t)) / (speed - h * pace);
  }
  const { speed } = driven(from, rise, mass, spring, strength, t);
  return {
    after: t,
    speed: h * pace - speed,
    energy: (mass * speed * speed) / 2,
  };
}

/** How long it rings after a hit, s. */
export function ringOf(form: LeverForm, drop: Drop, hit: Hit = hitOf(form, drop)): number {
  const { mass } = bodyOf(form);
  const force = drop.strength * form.spring.fitted;
  let lasts = 0;
  for (let u = KEPT * hit.speed; u >= STILL; u *= KEPT) lasts += (2 * u * mass) / force;
  return lasts;
}

/** Height over the flank so long after a hit, mm. */
function bounce(form: LeverForm, drop: Drop, hit: Hit, since: number): number {
  const { mass } = bodyOf(form);
  const force = drop.strength * form.spring.fitted;
  let t = since;
  for (let u = KEPT * hit.speed; u >= STILL; u *= KEPT) {
    const lasts = (2 * u * mass) / force;
    if (t < lasts) return u * t - (force * t * t) / (2 * mass);
    t -= lasts;
  }
  return 0;
}

/** Phase of a lever that slides down its flank, free from where it was let go. */
function slidden(form: LeverForm, { at, phase }: LetGo, strength: number, time: number): number {
  const { withTurn } = bodyOf(form);
  const { toothHeight: h, spring } = form;
  const force = strength * spring.fitted;
  if (!(force > 0)) return 0;
  // It is home when its spring has brought it to 0; a cosine would bring it back.
  const t = time - at;
  const home = Math.sqrt((2 * withTurn * h * phase) / force);
  if (t >= home) return 0;
  return Math.max(0, driven(h * phase, 0, withTurn, spring, strength, t).s / h);
}

/**
 * Where the lever stands.
 *
 * @param tooth and climb as the law has them: the tooth counted, and the share of the next that the edge pulls
 * @param strength of its spring
 * @param time s of Motion's clock
 */
export function leverAt(
  brake: Brake,
  record: LeverRecord,
  { tooth, climb }: { readonly tooth: number; readonly climb: number },
  strength: number,
  time: number,
): LeverPlace | null {
  const form = leverForm(brake);
  if (!form) return null;
  const { drop, letGo } = record;
  const h = form.toothHeight;
  const phase = letGo ? Math.max(climb, slidden(form, letGo, strength, time)) : climb;
  const flank = h * phase;
  if (!drop || drop.tooth !== tooth) return { phase: tooth + phase, lift: flank };
  const since = time - drop.at;
  const hit = hitOf(form, drop);
  if (since < hit.after) {
    const { s } = driven(
      drop.from ?? h,
      drop.rise,
      bodyOf(form).mass,
      form.spring,
      drop.strength,
      since,
    );
    return { phase: tooth + phase, lift: Math.max(flank, s) };
  }
  return {
    phase: tooth + phase,
    lift: flank + bounce(form, drop, hit, since - hit.after),
  };
}

/** A lever that a hand lets go so far off its root, mm; null where no spring drives it back. */
export function fallFrom(
  brake: Brake,
  lift: number,
  { at, tooth, strength }: Pick<Drop, 'at' | 'tooth' | 'strength'>,
): Drop | null {
  const form = leverForm(brake);
  if (!form || !(lift > 0) || !(strength * form.spring.fitted > 0)) return null;
  return { at, tooth, rise: 0, ahead: 0, pace: 0, strength, from: lift };
}

/** One step of Motion, as the lever's body sees it. */
export interface LeverStep {
  /** Clock at its end, and its length, s. */
  readonly time: number;
  readonly dt: number;
  /** Seats apart at its end, mm. */
  readonly seats: number;
  /** Tooth before it, and how many the law counted in it. */
  readonly tooth: number;
  readonly passed: number;
  readonly strength: number;
  /** The strut's spring is off: nothing climbs. */
  readonly strutLoose?: boolean | undefined;
}

/** What the body remembers after a step, and the drops that began in it. */
export function leverStep(
  brake: Brake,
  before: LeverRecord,
  step: LeverStep,
): { readonly record: LeverRecord; readonly drops: readonly Drop[] } {
  const { dt, passed, seats, strength, strutLoose, time, tooth } = step;
  const form = leverForm(brake);
  if (!form) return { record: { ...before, seats }, drops: [] };
  const from = Number.isFinite(before.seats) ? before.seats : seats;
  const speed = (seats - from) / dt;
  const drops: Drop[] = [];
  const { growth } = brake.adjuster;
  const tall = (n: number): number => (growth[n + 1] ?? Number.NaN) - (growth[n] as number);
  for (let n = tooth; n < tooth + passed; n++) {
    const need = seatsToStep(brake, { leverSpring: strength, strutLoose }, n);
    const share = speed > 0 ? Math.max(0, Math.min(1, (need - from) / (seats - from))) : 0;
    const next = tall(n + 1);
    const over = climbedBy(brake, step, strutLength(brake, n + 1), need);
    const free = Number.isFinite(next);
    drops.push({
      at: time - dt * (1 - share),
      tooth: n + 1,
      // Late, it lay on its crest.
      rise: over > 1e-9 ? 0 : (form.toothHeight * Math.max(0, speed)) / tall(n),
      ahead: free ? Math.max(0, over) / next : 0,
      pace: free ? Math.max(0, speed) / next : 0,
      strength,
    });
  }
  const last = drops.at(-1) ?? before.drop;
  return {
    record: {
      seats,
      drop: last,
      letGo: passed === 0 ? letGoAfter(brake, before, step) : null,
    },
    drops,
  };
}

/** The edge that held the lever up its flank goes back in this step, or has gone back before. */
function letGoAfter(brake: Brake, before: LeverRecord, step: LeverStep): LetGo | null {
  const { dt, seats, time, tooth } = step;
  const { growth } = brake.adjuster;
  const tall = (growth[tooth + 1] ?? Number.NaN) - (growth[tooth] as number);
  const phase = (apart: number): number => {
    const f = climbedBy(brake, step, strutLength(brake, tooth), apart) / tall;
    return Number.isFinite(f) ? Math.max(0, Math.min(1, f)) : 0;
  };
  const [was, is] = [phase(before.seats), phase(seats)];
  if (is > was) return null;
  if (before.letGo) return is === 0 && time - before.letGo.at > 1 ? null : before.letGo;
  return is < was ? { at: time - dt, phase: was } : null;
}
