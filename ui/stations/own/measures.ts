import type { OwnKey } from '../../../sim/index.ts';
import { ownNames } from './fields.ts';

/** What can be measured at home on one's own brake, how, and within what. */
export interface OwnField {
  readonly key: OwnKey;
  readonly name: string;
  readonly how: string;
  /** In the unit library's spelling; none for a plain number. */
  readonly unit: 'mm' | 'N' | 'N/mm' | 'kg' | '';
  readonly digits: number;
  readonly range: readonly [number, number];
}
export interface OwnGroup {
  readonly name: string;
  readonly fields: readonly OwnField[];
}

const f = (
  key: OwnKey,
  unit: OwnField['unit'],
  digits: number,
  range: readonly [number, number],
  how: string,
): OwnField => ({ key, name: ownNames[key], how, unit, digits, range });

export const ownGroups: readonly OwnGroup[] = [
  {
    name: 'Drum and linings',
    fields: [
      f(
        'drumNew',
        'mm',
        2,
        [80, 500],
        'At the unworn edge outside the lip, with an inside caliper; or from the parts list.',
      ),
      f('drumMax', 'mm', 2, [80, 510], 'Cast on the drum, often “max dia”.'),
      f('liningWidth', 'mm', 1, [5, 200], 'Across the shoe with a steel rule.'),
      f('liningNew', 'mm', 2, [1, 25], 'On a new shoe, lining only, without the steel table.'),
      f(
        'liningMin',
        'mm',
        2,
        [0, 20],
        'The maker’s figure; down to the rivet heads on a riveted one.',
      ),
      f(
        'liningArc',
        'mm',
        1,
        [20, 800],
        'Paper strip along the rubbing face from end to end, then a rule.',
      ),
      f(
        'friction',
        '',
        2,
        [0.05, 1],
        'Two letters at the end of the code on the lining’s edge, such as FF: the middle of the cold one’s band is taken.',
      ),
    ],
  },
  {
    name: 'Places of the shoe',
    fields: [
      f(
        'pinsApart',
        'mm',
        1,
        [4, 200],
        'Between the middles of both pins, or of both round heels, side to side.',
      ),
      f('pinBelow', 'mm', 1, [20, 240], 'From the hub’s middle down to the line of the pins.'),
      f('toeHeight', 'mm', 1, [20, 240], 'From the hub’s middle up to the pistons’ middle line.'),
      f('strutHeight', 'mm', 1, [5, 200], 'From the hub’s middle up to the strut’s middle line.'),
    ],
  },
  {
    name: 'Cylinder and pedal',
    fields: [
      f('bore', 'mm', 2, [8, 60], 'Cast behind the plate, in mm or inches: 3/4 in is 19.05 mm.'),
      f(
        'stroke',
        'mm',
        1,
        [2, 40],
        'Cylinder off the vehicle: from rest until the cup meets the bore’s edge.',
      ),
      f('masterBore', 'mm', 2, [8, 60], 'Cast on its body.'),
      f('pedalRatio', '', 2, [1, 12], 'Pivot to foot over pivot to push rod.'),
      f('freePlay', 'mm', 1, [0, 10], 'Press by hand until it meets the piston.'),
    ],
  },
  {
    name: 'Adjuster',
    fields: [
      f(
        'strutLength',
        'mm',
        2,
        [20, 400],
        'Seat to seat with the adjuster right back, by caliper.',
      ),
      f('lostMotion', 'mm', 2, [0, 10], 'Feeler gauge between strut and lever, or in the slot.'),
      f('teeth', '', 0, [1, 2000], 'Count them from shortest to longest.'),
    ],
  },
  {
    name: 'Return springs',
    fields: [
      f(
        'upperForce',
        'N',
        0,
        [0, 2000],
        'Luggage scale at the fitted length between the holes; 10 kgf is 98 N. Wear eye protection.',
      ),
      f('upperRate', 'N/mm', 1, [0, 200], 'Pull it 5 mm further and take the difference over 5.'),
      f('lowerForce', 'N', 0, [0, 2000], 'As the upper one.'),
      f('lowerRate', 'N/mm', 1, [0, 200], 'As the upper one.'),
    ],
  },
  {
    name: 'Parking lever and vehicle',
    fields: [
      f('leverNotch', 'mm', 1, [2, 100], 'Upright, from the pivot’s middle to the strut’s.'),
      f('leverHook', 'mm', 1, [20, 300], 'Straight, middle to middle.'),
      f('perNotch', 'mm', 1, [0.2, 20], 'Mark the cable, pull ten notches, divide by ten.'),
      f('tyre', 'mm', 0, [100, 800], 'From the hub’s middle to the ground.'),
      f('mass', 'kg', 0, [50, 20000], 'From its papers.'),
    ],
  },
];

export const ownFields: readonly OwnField[] = ownGroups.flatMap((g) => g.fields);

/** What no one measures at home: it stays the teaching brake's, and that is said. */
export const assumed: readonly string[] = [
  'how the linings’ friction fades hot',
  'stiffness of the linings under pressure',
  'wear rates of linings and drum',
  'friction of hold-downs and plate pads',
  'heat taken up and cooling',
  'shape of the adjuster’s teeth',
  'give of hoses and pipes',
  'thickness of the shoes’ steel, holes, outlines',
];
