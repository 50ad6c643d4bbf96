import type { Stand, ValueRows } from './lesson-stand.ts';
import { lipFit, lipHeight, teethToBackOff } from './lip.ts';
import { liningReading } from './measured.ts';
import { presetRow, presetRows } from './preset.ts';
import { removal } from './removal.ts';

/** Values of the drum: what is left of it, its lip, what its removal asks, what a sheet would have. */

const preset = ({ rig, state }: Stand) => presetRow(rig, state);
const lining = ({ rig, state }: Stand) => liningReading(rig.brake, state, 'front');

export const drumValues: ValueRows = {
  liningMin: [
    'Limit of the lining',
    'mm',
    1,
    ({ rig }) => rig.brake.shoes.front.lining.thicknessMin,
  ],
  liningMargin: [
    'Lining above its limit',
    'mm',
    2,
    (s) => lining(s).thinnest - s.rig.brake.shoes.front.lining.thicknessMin,
  ],
  liningToe: ['Front lining at its toe', 'mm', 1, (s) => lining(s).toe],
  liningThinnest: ['Front lining at its thinnest', 'mm', 2, (s) => lining(s).thinnest],
  liningHeel: ['Front lining at its heel', 'mm', 1, (s) => lining(s).heel],
  liningWorn: [
    'Worn off the front lining',
    'mm',
    2,
    (s) => s.rig.brake.shoes.front.lining.thicknessNew - lining(s).thinnest,
  ],
  liningWornRear: [
    'Worn off the rear lining',
    'mm',
    2,
    ({ rig, state }) =>
      rig.brake.shoes.rear.lining.thicknessNew - liningReading(rig.brake, state, 'rear').thinnest,
  ],
  drumMax: ['Limit of the drum', 'mm', 0, ({ rig }) => 2 * rig.brake.drum.radiusMax],
  drumMargin: [
    'Drum under its limit',
    'mm',
    2,
    ({ rig, state }) => 2 * (rig.brake.drum.radiusMax - state.drumRadius),
  ],
  drumWorn: [
    'Worn off the drum’s radius',
    'mm',
    2,
    ({ rig, state }) => state.drumRadius - rig.brake.drum.radiusNew,
  ],
  lipHeight: ['Height of the lip', 'mm', 2, ({ rig, state }) => lipHeight(rig, state)],
  lipOverlap: ['Linings over the lip', 'mm', 2, ({ rig, state }) => lipFit(rig, state).greatest],
  lipToe: ['Over the lip at the toe', 'mm', 2, ({ rig, state }) => lipFit(rig, state).toe],
  lipCentre: ['Over the lip in the middle', 'mm', 2, ({ rig, state }) => lipFit(rig, state).centre],
  lipHeel: ['Over the lip at the heel', 'mm', 2, ({ rig, state }) => lipFit(rig, state).heel],
  lipTeeth: [
    'Teeth back that free it',
    '',
    0,
    ({ rig, state }) => teethToBackOff(rig, state).teeth ?? Number.NaN,
  ],
  slide: [
    'The drum slides',
    'mm',
    0,
    ({ rig, state, held }) => removal(rig, state, held).signs.slide,
  ],
  presetDifference: ['Bore less size across the linings', 'mm', 2, (s) => preset(s).difference],
  presetAcross: ['Size across the linings', 'mm', 2, (s) => preset(s).across],
  presetOverLip: ['Over the lip, a side', 'mm', 1, (s) => -preset(s).lip],
  presetRoom: ['Room at the lip, a side', 'mm', 2, (s) => preset(s).lip],
  presetTooth: [
    'Longest strut on which the drum goes on, tooth',
    '',
    0,
    ({ rig, state }) =>
      presetRows(rig, state).reduce((most, r) => (r.slidesOn ? Math.max(most, r.tooth) : most), -1),
  ],
};
