import type { Brake } from '../index.ts';

/** Limits that a sheet is judged by; null where nobody has set one. */
export interface Limits {
  /** Largest diameter, mm. */
  readonly drumMax: number | null;
  /** Largest difference of diameters around the bore, mm. */
  readonly outOfRound: number | null;
  /** Largest difference of diameters between two depths, mm. */
  readonly taper: number | null;
  /** Least lining at its thinnest point, mm. */
  readonly liningMin: number | null;
  /** Most notches of the hand lever. */
  readonly notches: number | null;
}
export type LimitKey = keyof Limits;

/** Limits of one origin. Whose they are is always said beside them. */
export interface LimitSet {
  readonly id: 'teaching' | 'regulation' | 'test' | 'maker';
  readonly name: string;
  /** Whose, in two or three words, for each line. */
  readonly whose: string;
  /** What it is, where it was read, and what it does not cover. */
  readonly about: string;
  readonly limits: Limits;
}

const NONE: Limits = {
  drumMax: null,
  outOfRound: null,
  taper: null,
  liningMin: null,
  notches: null,
};

/** Sets to choose from; every figure can be typed over. The teaching brake's own come first. */
export function limitSets(brake: Brake): readonly [LimitSet, ...LimitSet[]] {
  return [
    {
      id: 'teaching',
      name: `Teaching brake: ${brake.title}`,
      whose: 'teaching brake',
      about: 'Invented for this brake. They are not your vehicle’s.',
      limits: {
        ...NONE,
        drumMax: 2 * brake.drum.radiusMax,
        outOfRound: brake.drum.outOfRoundMax,
        liningMin: brake.shoes.front.lining.thicknessMin,
      },
    },
    {
      id: 'regulation',
      name: 'US road rule, trucks and trailers',
      whose: 'US 49 CFR 393.47(d)',
      about:
        '49 CFR 393.47(d): hydraulic drum brakes at least 1.6 mm (1/16 in) at the shoe’s centre; here it is asked of the thinnest point. 570.59(b): the drum within the mark cast on it; type that in.',
      limits: { ...NONE, liningMin: 1.6 },
    },
    {
      id: 'test',
      name: 'British test text of 2012',
      whose: 'British test, 2012',
      about:
        'Fails a lining under 1.5 mm at any point, as read in a text of 2012; newer ones may differ. Type in the mark on the drum.',
      limits: { ...NONE, liningMin: 1.5 },
    },
    {
      id: 'maker',
      name: 'The maker’s, to be filled in',
      whose: 'the maker’s',
      about:
        'From the vehicle’s service data and the mark on the drum. Nothing is set until typed.',
      limits: NONE,
    },
  ];
}
