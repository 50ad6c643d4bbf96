import type { BodyForce, BodyKind } from '../../sim/index.ts';
import { workingBodyWords as texts } from '../../sim/words/en.ts';
import { sceneName } from '../record/scene-names.ts';

const kinds: Readonly<Record<Exclude<BodyKind, 'spring' | 'other'>, string>> = {
  piston: texts.piston,
  climbing: texts.climbingLever,
  'hold-down': texts.holdDown,
  strut: texts.strut,
  normal: texts.drumsPressure,
  friction: texts.drumsFriction,
  anchor: texts.anchor,
};

/** What has no kind of its own, by what the balance calls it (sim/balance/forces). */
const others: Readonly<Record<string, string>> = {
  'parking cable': texts.parkingCable,
  hand: texts.hand,
  'stop: cylinder': texts.stopCylinder,
  'stop: hub': texts.stopHub,
  'stop: lever': texts.stopLever,
  'stop: pads': texts.stopPads,
};

/** What a force on a shoe comes from, in a word or two; a spring by its name in the scene. */
export const words = ({ kind, name }: BodyForce): string => {
  if (kind === 'spring') return sceneName(name);
  return kind === 'other' ? (others[name] ?? name) : kinds[kind];
};
