import type { Brake, PedalCurve, RoadDrag, Stop } from '../index.ts';
import { workshopStopText as words } from '../words/en.ts';
import { fixed } from './figure.ts';

/** Friction of tyre on road that wheels are told to slide beyond: dry tarmac (common practice). */
export const DRY_ROAD = 0.8;

const percent = (share: number): string => `${Math.round(100 * share)} %`;

/** What a stop is reckoned on, and what it asks of the tyres: plain sentences. */
export function stopNotes(brake: Brake, s: Stop): string[] {
  const { share } = brake.vehicle;
  const { circuits, rearValve } = brake.hydraulics;
  const notes = [words.onlyThisAxlesBrakesAre(percent(share)), words.theTorqueIsThatOf];
  if (rearValve) notes.push(words.aValveHoldsThisAxles);
  if (circuits && circuits.failed !== 'none') notes.push(words.oneOfTheTwoCircuits);
  if (s.grip > DRY_ROAD) {
    notes.push(words.noTyreIsLikelyTo(fixed(s.grip, 2), DRY_ROAD));
  }
  return notes;
}

/** What stands behind a pedal’s curve, and where it ends. */
export function pedalNotes(c: PedalCurve): string[] {
  const notes: string[] = [];
  if (!c.touch) notes.push(words.noLiningTouchesTheDrum);
  if (c.reserve < 0) notes.push(words.thePedalStandsOnIts);
  if (c.points.some((p) => p.runOut < 0)) notes.push(words.aPistonsCupLeavesIts);
  return notes;
}

/** Why a released brake cannot be driven; nothing where it can. */
export const dragNotes = ({ seized, torque }: RoadDrag): string[] =>
  seized ? [words.itIsSeizedTheWheel] : Number.isFinite(torque) ? [] : [words.noForceCanBeTold];
