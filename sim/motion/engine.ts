/**
 * The rigid-body engine (Planck.js), with the few inner fields that a joint of our own needs. The
 * order of the three imports matters: see trig-in.ts.
 */
// biome-ignore-start assist/source/organizeImports: order of loading
import './trig-in.ts';
import { type Body, Joint, Settings, type TimeStep, Vec2, World } from 'planck-js';
import './trig-out.ts';
// biome-ignore-end assist/source/organizeImports: order of loading

/** Velocity and place that the engine's solver works on during a step. */
export interface SolverBody {
  readonly c_velocity: { readonly v: { x: number; y: number }; w: number };
  readonly c_position: { readonly c: { x: number; y: number }; a: number };
}

/** A body as the engine's solver sees it. */
export const inSolver = (body: Body): SolverBody => body as unknown as SolverBody;

/** A body whose inertia is not the engine's but the brake joint's. */
export function handInertiaToJoint(body: Body): void {
  const inner = body as unknown as { m_invMass: number; m_invI: number };
  inner.m_invMass = 0;
  inner.m_invI = 0;
}

/** Sets place and turn to the bit. (setTransform goes through sine and arc tangent and loses some.) */
export function setPlace(body: Body, x: number, y: number, angle: number): void {
  body.setTransform(new Vec2(x, y), angle);
  const sweep = (body as unknown as { m_sweep: { a: number; a0: number } }).m_sweep;
  sweep.a = angle;
  sweep.a0 = angle;
}

/** A world in millimetres and seconds: no gravity, no sleep, wide speed limits. */
export function makeWorld(): World {
  // A drum of 100 mm turning by up to 1 rad a step must pass the engine's clamps unhindered.
  Settings.maxTranslation = 1e3;
  Settings.maxRotation = 10;
  Settings.linearSlop = 5e-4;
  Settings.angularSlop = 1e-5;
  return new World({
    gravity: new Vec2(0, 0),
    allowSleep: false,
    continuousPhysics: false,
    warmStarting: true,
  });
}

export { type Body, Joint, type TimeStep, Vec2, type World };
