import { studyLessonValuesDrum as words } from '../words/en.ts';
import type { Stand, ValueRows } from './lesson-stand.ts';
import { lipFit, lipHeight, teethToBackOff } from './lip.ts';
import { liningReading } from './measured.ts';
import { presetRow, presetRows } from './preset.ts';
import { removal } from './removal.ts';

/** Values of the drum: what is left of it, its lip, what its removal asks, what a sheet would have. */

const preset = ({ rig, state }: Stand) => presetRow(rig, state);
const lining = ({ rig, state }: Stand) => liningReading(rig.brake, state, 'front');

export const drumValues: ValueRows = {
  liningMin: [words.liningLimit, 'mm', 1, ({ rig }) => rig.brake.shoes.front.lining.thicknessMin],
  liningMargin: [
    words.liningAboveLimit,
    'mm',
    2,
    (s) => lining(s).thinnest - s.rig.brake.shoes.front.lining.thicknessMin,
  ],
  liningToe: [words.frontAtToe, 'mm', 1, (s) => lining(s).toe],
  liningThinnest: [words.frontAtThinnest, 'mm', 2, (s) => lining(s).thinnest],
  liningHeel: [words.frontAtHeel, 'mm', 1, (s) => lining(s).heel],
  liningWorn: [
    words.wornOffFront,
    'mm',
    2,
    (s) => s.rig.brake.shoes.front.lining.thicknessNew - lining(s).thinnest,
  ],
  liningWornRear: [
    words.wornOffRear,
    'mm',
    2,
    ({ rig, state }) =>
      rig.brake.shoes.rear.lining.thicknessNew - liningReading(rig.brake, state, 'rear').thinnest,
  ],
  drumMax: [words.drumLimit, 'mm', 0, ({ rig }) => 2 * rig.brake.drum.radiusMax],
  drumMargin: [
    words.drumUnderLimit,
    'mm',
    2,
    ({ rig, state }) => 2 * (rig.brake.drum.radiusMax - state.drumRadius),
  ],
  drumWorn: [
    words.wornOffDrum,
    'mm',
    2,
    ({ rig, state }) => state.drumRadius - rig.brake.drum.radiusNew,
  ],
  lipHeight: [words.heightOfLip, 'mm', 2, ({ rig, state }) => lipHeight(rig, state)],
  lipOverlap: [words.liningsOverLip, 'mm', 2, ({ rig, state }) => lipFit(rig, state).greatest],
  lipToe: [words.overLipAtToe, 'mm', 2, ({ rig, state }) => lipFit(rig, state).toe],
  lipCentre: [words.overLipInMiddle, 'mm', 2, ({ rig, state }) => lipFit(rig, state).centre],
  lipHeel: [words.overLipAtHeel, 'mm', 2, ({ rig, state }) => lipFit(rig, state).heel],
  lipTeeth: [
    words.teethThatFree,
    '',
    0,
    ({ rig, state }) => teethToBackOff(rig, state).teeth ?? Number.NaN,
  ],
  slide: [
    words.drumSlides,
    'mm',
    0,
    ({ rig, state, held }) => removal(rig, state, held).signs.slide,
  ],
  presetDifference: [words.boreLessSize, 'mm', 2, (s) => preset(s).difference],
  presetAcross: [words.sizeAcross, 'mm', 2, (s) => preset(s).across],
  presetOverLip: [words.overLipASide, 'mm', 1, (s) => -preset(s).lip],
  presetRoom: [words.roomAtLip, 'mm', 2, (s) => preset(s).lip],
  presetTooth: [
    words.longestStrut,
    '',
    0,
    ({ rig, state }) =>
      presetRows(rig, state).reduce((most, r) => (r.slidesOn ? Math.max(most, r.tooth) : most), -1),
  ],
};
