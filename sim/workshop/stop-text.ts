import type { Brake, PedalCurve, RoadDrag, Stop } from '../index.ts';

/** Friction of tyre on road that wheels are told to slide beyond: dry tarmac (common practice). */
export const DRY_ROAD = 0.8;

const percent = (share: number): string => `${Math.round(100 * share)} %`;

/** What a stop is reckoned on, and what it asks of the tyres: plain sentences. */
export function stopNotes(brake: Brake, s: Stop): string[] {
  const { share } = brake.vehicle;
  const { circuits, rearValve } = brake.hydraulics;
  const notes = [
    `Only this axle’s brakes are known: they are told to do ${percent(share)} of the braking, and the other axle is taken to do the rest in proportion.`,
    'The torque is that of the drum as warm as it is now. The time that foot and fluid take, air and rolling resistance are not in it.',
  ];
  if (rearValve)
    notes.push('A valve holds this axle’s pressure back; the other axle gets all of the pedal’s.');
  if (circuits && circuits.failed !== 'none')
    notes.push('One of the two circuits has failed: only the brakes of the other one stop.');
  if (s.grip > DRY_ROAD) {
    notes.push(
      `No tyre is likely to give that: it asks for a grip of ${s.grip.toFixed(2)}, and a dry road gives about ${DRY_ROAD}. The wheels slide before.`,
    );
  }
  return notes;
}

/** What stands behind a pedal’s curve, and where it ends. */
export function pedalNotes(c: PedalCurve): string[] {
  const notes: string[] = [];
  if (!c.touch) notes.push('No lining touches the drum up to this pressure.');
  if (c.reserve < 0) notes.push('The pedal stands on its floor before this pressure is there.');
  if (c.points.some((p) => p.runOut < 0))
    notes.push('A piston’s cup leaves its bore before this pressure is there.');
  return notes;
}

/** Why a released brake cannot be driven; nothing where it can. */
export const dragNotes = ({ seized, torque }: RoadDrag): string[] =>
  seized
    ? [
        'It is seized: the wheel would slide on the road rather than turn. Nothing is told of driving it.',
      ]
    : Number.isFinite(torque)
      ? []
      : ['No force can be told of this brake, so nothing is told of driving it.'];
