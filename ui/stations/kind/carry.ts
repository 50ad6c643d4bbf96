import { kindCarry as words } from '../../../sim/words/en.ts';
import type { KindPart } from './part.ts';

/** What does not carry over from this bench to a brake of another kind, as each answer says it; empty: all of it does. */
export function doesNotCarry({ kind, setBy }: KindPart): string {
  const out: string[] = [];
  if (kind === 'servo') out.push(words.yoursIsAServoBrake);
  if (kind === 'in disc') out.push(words.yoursIsADrumInside);
  if (setBy === 'reverse') out.push(words.yourAdjusterIsTurnedBy);
  if (setBy === 'lever') out.push(words.yourAdjusterIsTurnedBy2);
  if (setBy === 'hand') out.push(words.yoursIsSetByHand);
  if (setBy === 'taper') out.push(words.yoursIsAWedgeNo);
  return out.join(' ');
}
