import type { AxleLine, Line } from './lines.ts';

/** Where each line of the sheet is measured, and with what. */
const drumHow =
  'Inside gauge or drum micrometer, a third of the width in from the edge. Mark the drum, turn the gauge by 60° each time.';
const liningHow =
  'Lining only, without the steel table; on a riveted one down to the rivet head. Steel rule, depth gauge or caliper.';

export const hows: Readonly<Record<Line['key'] | AxleLine['key'], string>> = {
  drumNew:
    'First of all: which drum is it? From the parts list, or at the unworn edge outside the lip with an inside caliper.',
  drumMax:
    'Cast or stamped on the drum itself, “max dia” or “discard”: the largest Ø allowed. No drum is judged without it.',
  drumCut:
    'The maker’s figure for a cut, from the service data: under the mark, so that something is left to wear. Leave it out if nobody tells it.',
  drumA: drumHow,
  drumB: drumHow,
  drumC: drumHow,
  drumDeep:
    'The same gauge, near the closed end of the swept face. Tells a bore that widens inwards.',
  largest: 'The largest of those above. The limit is the maximum cast on the drum itself.',
  round: 'Greatest less least of the angles. Two readings should be the greatest and the least.',
  lip: 'Step from the swept face to the unworn edge: depth gauge, or half of swept Ø less edge Ø.',
  score:
    'Rule across the bore and a feeler in the groove, or a depth gauge. A fingernail only sorts. 0 where there is none.',
  leadToe: `Leading is the shoe towards the front of the vehicle. At the cylinder’s end. ${liningHow}`,
  leadThin: `Look along the whole arc for it. ${liningHow}`,
  leadHeel: `At the end where the shoe is held. ${liningHow}`,
  trailToe: `At the cylinder’s end. ${liningHow}`,
  trailThin: `Look along the whole arc for it. ${liningHow}`,
  trailHeel: `At the end where the shoe is held. ${liningHow}`,
  faces:
    'By eye and lamp: cracks, deep scores, loose rivets, edges lifting, any trace of fluid or grease.',
  boots: 'Lift the edge of each dust boot with a blunt pick. Any wet behind it is a leak.',
  springs:
    'Coils closed, hooks whole, no rust pits. Dropped on the bench a sound spring thuds, a tired one rings.',
  tooth: 'Count the teeth that the lever has passed, from the shortest setting.',
  adjuster: 'Lift the lever, move it by hand, let go: it must slide freely and hold each tooth.',
  leverOff:
    'Gap at the cable’s hook until the parking lever rests on its stop: 0 when home. Steel rule or feeler.',
  notchesBefore: 'Count the clicks to a firm hold before anything is touched.',
  notchesAfter: 'The same pull, when all is back together.',
  odometer: 'What it shows today. With two kept sheets of a vehicle it tells how fast it wears.',
  distance: 'From the service book. Without it no distance left can be told.',
  drumFitted: 'New diameter when left out.',
  liningFitted: 'New thickness when left out, where the limits’ owner tells it.',
};
