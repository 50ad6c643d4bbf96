import type { Law, Reason, StepCode, WorkingFrom } from '../index.ts';

/** Whose law a formula is, where it is published, or that it is the bench's own sum. */
const laws: Readonly<Record<Law, string>> = {
  definition: 'By definition: a ratio that says what one thing is of another.',
  given: 'Not worked out: it is what was set, or counted while the brake was driven.',
  geometry: 'Plane geometry of where the parts stand.',
  statics: 'Parts of a force at right angles: Pythagoras.',
  moments:
    'Moments of a body at rest about one point add up to nothing (statics; any text on engineering mechanics).',
  coulomb:
    'Dry friction: drag is friction times what presses (Coulomb), summed over 48 elements of each lining.',
  winkler:
    'The lining as a bed of springs: pressure is its modulus over its thickness times how far it is pressed in (Winkler). Towards an end the line through the last two elements goes on.',
  hooke:
    'A spring pulls by its fitted force and its rate times its stretch (Hooke), and never pushes.',
  pascal: 'Fluid carries pressure alike everywhere, and volume goes where pistons go (Pascal).',
  lever: 'A lever gives force for travel: ratio of its arms.',
  booster:
    'A booster multiplies the foot until its help is spent (Limpert, Brake Design and Safety, chapter 5, from memory).',
  stack: 'Travels in one line add.',
  ratchet: 'The lever drops in once the seats have parted by lost motion and one whole tooth.',
  kinematics: 'Even deceleration from a speed to a stand.',
  newton: 'Force is mass times acceleration (Newton), all braking at the road.',
  energy: 'Energy of motion, or work of the drag over the way.',
  heat: 'Heat over heat capacity: nothing is carried away in so short a time.',
  flash:
    'Heat that enters a thick body at its face, falling evenly to nothing (Carslaw & Jaeger, Conduction of Heat in Solids, chapter 2).',
  power: 'Power is torque times turning speed.',
  slope: 'The part of the weight that pulls down the slope, shared by the braked wheels.',
  cable: 'Slack, stretch and the lever’s travel lie in one line of cable, so they add.',
  search:
    'Found by trying: the brake is worked out anew at each try. The two tries beside it give it again by the line between them.',
  turn: 'The brake worked out at 72 places of one turn; this is the one that counts.',
  settles: 'A drum settles where the air takes as much heat as the drag makes.',
};
export const lawText = (law: Law): string => laws[law];

const from: Readonly<Record<WorkingFrom, string>> = {
  scene: 'the brake’s size',
  state: 'as it stands',
  asked: 'as it is pressed or asked',
  balance: 'by the balance of both shoes',
  reading: 'a reading',
  worked: 'worked out on the way',
  constant: 'a constant',
};
export const fromText = (code: WorkingFrom): string => from[code];

const steps: Readonly<Record<StepCode, string>> = {
  'sine sum':
    'Pressure goes as the sine of the angle from the pin; summed over the lining’s arc that is',
  'pressure arm': 'Arm of the pressure about the pin, per unit of that pressure',
  'friction arm': 'Arm of the friction about the pin',
  'closed pressure': 'Moments about the pin give the pressure at 90° from it',
  'closed normal moment': 'So the drum’s pressure pushes the shoe back with',
  'closed friction moment': 'and its friction turns the shoe with',
  'closed factor': 'Drag over push, the shoe factor by the closed form',
  'closed lock': 'The shoe would lock, whatever pushes it, at a friction of',
  'element drag': 'The same without a law of the pressure: friction of all elements as they bear',
  'element balance': 'Moments about the anchor leave for hold-down, strut and heel',
  'element factor': 'Shoe factor by the elements’ own moments',
  'read factor': 'Shoe factor as it is read, drag over what is left on the toe',
};
export const stepText = (code: StepCode): string => steps[code];

const percent = (share: number): string => `${(100 * share).toFixed(share < 0.1 ? 1 : 0)} %`;

const reasons: Readonly<Record<Reason['code'], (share: number) => string>> = {
  'no pin': () =>
    'The shoe’s heel slides on a flat: it does not turn about a point, so the closed form of a pinned shoe is none for it.',
  bends: () =>
    'The shoe bends: points of its face do not go into the drum as the sine of their angle.',
  'not the sine': (share) =>
    `The pressure is not the sine of the angle: it misses it by up to ${percent(share)} of its peak, as the face is ground, worn or bent.`,
  'ends free': (share) => `${percent(share)} of the lining do not touch the drum.`,
  'other forces': (share) =>
    `Other parts push on the shoe too: hold-down, strut or the heel’s own friction, ${percent(share)} of the push’s moment.`,
};
export const reasonText = ({ code, share }: Reason): string => reasons[code](share);

/** Where nothing makes them differ. */
export const ALIKE_TEXT =
  'Closed form and element sum agree: the shoe is stiff and on a pin, its face lies on the drum all along, and nothing else pushes on it. What is left comes from the elements’ number.';
