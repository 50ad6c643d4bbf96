import { balance, rest } from '../balance/balance.ts';
import { createRig, type Rig } from '../balance/rig.ts';
import { freshState } from '../brake/state.ts';
import { shoeFactor } from '../readings/factors.ts';
import { gapsOf } from '../readings/roles.ts';
import { readScene } from '../scene/read.ts';
import type { Scene } from '../scene/schema.ts';
import { BAR, KM } from '../units/units.ts';
import { wearOn } from '../wear/wear-on.ts';
import { pressUntilSilent } from './bedding.ts';
import { pedalAt } from './checks.ts';

/** What a size of one's own brake changes: the brake new, cold, rolling forward. */
export interface OwnFigures {
  /** Mean gap at the linings' middles at rest, mm. */
  readonly clearance: number;
  /** Brake factor after the springs; NaN where it locks. */
  readonly factor: number;
  /** N·mm a wheel; NaN where it locks. */
  readonly torque: number;
  /** Pedal travel, mm; NaN where it locks. */
  readonly pedal: number;
}

function rigOf(scene: Scene, flexible: boolean): Rig | null {
  const read = readScene(scene);
  return read.ok ? createRig(read.brake, { flexible }) : null;
}

/** Null where the scene cannot be built. @param flexible shoes that bend */
export function ownFigures(scene: Scene, bar: number, flexible = false): OwnFigures | null {
  const rig = rigOf(scene, flexible);
  if (!rig) return null;
  const state = freshState(rig.brake);
  const still = rest(rig, state);
  const gap = (side: 'front' | 'rear'): number =>
    gapsOf(rig.brake.shoes[side], still.shoes[side]).centre;
  const pressed = balance(rig, state, { pressure: bar * BAR, turning: 1 });
  const factor = shoeFactor(pressed, 'front') + shoeFactor(pressed, 'rear');
  const holds = Number.isFinite(factor);
  const wheel = { rig, state };
  return {
    clearance: (gap('front') + gap('rear')) / 2,
    factor: holds ? factor : Number.NaN,
    torque: holds ? Math.abs(pressed.torqueOnDrum) : Number.NaN,
    pedal: holds ? pedalAt({ left: wheel, right: wheel }, bar * BAR).total : Number.NaN,
  };
}

/** Driven at most to find the next click, mm: linings of most brakes are through by then. */
const MOST = 60000 * KM;

/**
 * Distance to the first click once presses have taken up what they can, by the brake's own first duty, mm.
 * Infinity where none comes before a limit is reached; null where the scene cannot be built.
 *
 * @param flexible shoes that bend
 */
export function firstClick(scene: Scene, flexible = false): number | null {
  const rig = rigOf(scene, flexible);
  if (!rig) return null;
  const { state } = pressUntilSilent(rig, freshState(rig.brake));
  const life = wearOn(rig, state, { distance: MOST, toNextClick: true });
  return life.state.tooth > state.tooth
    ? life.state.distance - state.distance
    : Number.POSITIVE_INFINITY;
}
