import { isForceLock, type Lock, type Removal } from '../../../sim/index.ts';
import { cautions } from '../../cautions.ts';
import { number } from '../../format.ts';
import type { Fastening, Try } from './part.ts';

/** Texts of the station: what holds, what was found, how to release it, how the drum is fastened. */

/** "The drum is held by …" */
export const heldBy: Readonly<Record<Lock, string>> = {
  lip: 'The drum is held by the lip',
  'lever off its stop': 'The drum is held by the lip, because the lever is off its stop',
  'shoes not centred': 'The drum is held by the lip, because the shoes stand aside',
  'adjuster too far out': 'The drum is held by the shoes: the adjuster is too far out',
  'pressure in the line': 'The drum is held by the shoes: pressure stays in the line',
  'cable keeps its pull': 'The drum is held by the shoes: the cable keeps its pull',
  'part leans on a shoe': 'The drum is held by a shoe that a part leans on',
  'rust at the hub': 'The drum is held by rust at the hub',
  'linings rusted on': 'The drum is held by the linings: they are rusted on',
};

const mm = (value: number): string => `${number(value, 2)}\u00a0mm`;

/** One or two sentences on how the drum stands, under the title. */
export function howItStands(r: Removal): string {
  if (r.heldBy === null) {
    return r.fit.height > 0
      ? `Nothing holds it. The linings pass the lip with ${mm(-r.fit.greatest)} in hand.`
      : 'Nothing holds it. This drum is not worn: it has no lip.';
  }
  if (r.heldBy === 'rust at the hub')
    return `Rust holds it at the hub. The linings ${r.fit.greatest > 0 ? `would be caught by ${mm(r.fit.greatest)} besides` : `pass the lip with ${mm(-r.fit.greatest)} in hand`}.`;
  if (r.heldBy === 'linings rusted on')
    return 'The linings are rusted on to the drum. It neither turns nor comes.';
  if (isForceLock(r.heldBy))
    return `${heldBy[r.heldBy]}. No tooth frees it while that force is left.`;
  if (r.signs.slides === 'not at all')
    return 'The shoes press on the drum from inside. Pulled straight, it does not move.';
  return 'The linings rest outside the lip. Pulled straight, the drum cannot pass.';
}

const turned: Readonly<Record<Removal['signs']['turns'], string>> = {
  freely: 'It turns freely.',
  lightly: 'It turns, and drags lightly both ways.',
  stiffly: 'It turns hard both ways.',
  'not at all': 'It does not turn.',
};

/** What came of a try: the result's phrase first. */
export function foundBy(what: Try, r: Removal): string {
  const { signs } = r;
  if (what === 'break')
    return `It frees with one jerk, at about ${number(signs.forward / 1000, 0)}\u00a0N·m, and turns.`;
  if (what === 'turn') {
    if (r.heldBy === 'linings rusted on')
      return `It does not turn. The rust would hold about ${number(signs.forward / 1000, 0)}\u00a0N·m.`;
    return turned[signs.turns];
  }
  if (what === 'rock')
    return signs.rocks
      ? 'It rocks a little on its hub: the fit is free.'
      : 'It does not rock, not a hair.';
  if (r.heldBy === null)
    return r.fit.height > 0
      ? `The drum is off. It passed the lip with ${mm(-r.fit.greatest)} in hand.`
      : 'The drum is off.';
  if (signs.slides === 'not at all') return `${heldBy[r.heldBy]}. It does not slide at all.`;
  return `${heldBy[r.heldBy]}. It slides ${number(signs.slide, 0)}\u00a0mm, springs, and stops.`;
}

export interface Release {
  readonly name: string;
  /** What to do, in plain words. */
  readonly how: string;
  readonly caution: string;
  /** On the button that does it here. */
  readonly button: string;
}

/** Each lock answers only to its own release. */
export const releases: Readonly<Record<Lock, Release>> = {
  'lever off its stop': {
    name: 'Parking lever off its stop',
    how: 'Let the hand lever down, then slacken the cable at its adjuster until the parking lever rests on its stop. It costs nothing; set the cable again last of all.',
    caution: cautions.park,
    button: 'Slacken',
  },
  'pressure in the line': {
    name: 'Pressure in the line',
    how: 'Open the bleed point of this wheel a little, a hose on it into a jar. If the drum comes free, a hose or the master cylinder has kept the pressure: see to that, and bleed afterwards.',
    caution: cautions.fluid,
    button: 'Bleed',
  },
  'cable keeps its pull': {
    name: 'Cable keeps its pull',
    how: 'Slackening it at the hand lever changes nothing where it has seized in its sheath. Draw the inner cable back out of its sheath, or unhook it, until the parking lever is home. It needs a new cable.',
    caution: cautions.park,
    button: 'Unhook',
  },
  'part leans on a shoe': {
    name: 'A part leans on a shoe',
    how: 'One shoe stands out on the drum and the other hangs free. Push the drum sideways against the shoe that bears, or that shoe home through the access hole, while somebody draws the drum; then find the part: piston, lever, edge on its pad.',
    caution: cautions.springs,
    button: 'Push home',
  },
  'shoes not centred': {
    name: 'Shoes not centred',
    how: 'Turn the drum a little each way while you press it home, then pull it straight, not askew. The shoes settle where the drum lets them.',
    caution: 'Keep fingers out of the gap between drum and plate.',
    button: 'Centre',
  },
  lip: {
    name: 'Lip on the drum',
    how: 'Back the adjuster off through the access hole. Toothed lever: lift it off its teeth, then turn it back. Star wheel: hold its lever away and turn the wheel back. Wedge: push it up. A little at a time; try the drum after each, and judge drum and lining once it is off.',
    caution: cautions.strut,
    button: 'Back off',
  },
  'adjuster too far out': {
    name: 'Adjuster too far out',
    how: 'Lift the toothed lever off its teeth through the access hole and turn it back, or turn the star wheel back, or push the wedge up, until the drum turns free. A hot drum may have let it step too far: ask about long descents, and look at the hot lock.',
    caution: cautions.hot,
    button: 'Back off',
  },
  'rust at the hub': {
    name: 'Rust at the hub',
    how: 'Clean round the hub, let penetrant creep in, wait. If the drum has threaded holes, turn a screw into each by turns, a little at a time. It lets go with a crack.',
    caution:
      'Wear eye protection. No flame and no heat near brake fluid; keep penetrant off the linings.',
    button: 'Free it',
  },
  'linings rusted on': {
    name: 'Linings rusted on',
    how: 'Turn the drum to and fro with a bar across two wheel nuts, the parking brake off. It breaks loose once, with a jerk, and then turns.',
    caution:
      'Stand clear of the bar. Do not drag the vehicle with a locked wheel; do not park wet on the lever.',
    button: 'Break loose',
  },
};

export interface FasteningText {
  readonly name: string;
  readonly steps: readonly string[];
  readonly why?: readonly { readonly ask: string; readonly answer: string }[];
  readonly caution: string;
}

/** How the drum itself is fastened. */
export const fastenings: Readonly<Record<Fastening, FasteningText>> = {
  studs: {
    name: 'Slipped over the studs',
    steps: [
      'Take the wheel off. A thin spring nut on a stud only held the drum while the vehicle was built: take it off too.',
      'Mark stud and drum, so that it goes back as it was.',
      'Slacken cable and adjuster as far as they need, then pull the drum straight.',
      'Before it goes back: both faces of the flange clean and dry. Dirt there sets the drum off centre.',
    ],
    caution:
      'Threaded holes in the drum take screws that press it off evenly. Turn them by turns; never strike the rim.',
  },
  screw: {
    name: 'Held by a screw or a clip',
    steps: [
      'Take the wheel off, then the small countersunk screw or the clip between the studs. It is easily overlooked, and no pull beats it.',
      'Clean its slot and seat the bit squarely; a blow on the bit end-on breaks the rust. If it spins in its head, drill the head off.',
      'Slacken cable and adjuster as far as they need, then pull the drum straight.',
      'Before it goes back: a new screw, hand-tight and a little more. It only holds the drum while the wheel is off.',
    ],
    caution: 'Eye protection for blows and drilling; chips and dust stay out of the brake.',
  },
  nut: {
    name: 'One piece with hub and bearing',
    steps: [
      'Take off the dust cap and free the hub nut; its collar may be pressed into a groove of the axle.',
      'Undo the nut by hand with a long bar, slowly. It turns hard only to its last turns, then runs off by the fingers.',
      'Draw drum, hub and bearing off together, straight, and lay them on clean paper.',
      'Wheel-speed ring on the bearing: keep magnets, tools that are magnetic and iron grit away from it. Never wipe it with a dirty cloth.',
      'Back on: the nut the maker asks for, tightened by hand to the maker’s figure while the hub turns.',
    ],
    why: [
      {
        ask: 'Why does it turn hard only to its last turns?',
        answer:
          'Its outer threads are pressed out of round on purpose and grip the axle’s thread. Undoing, they grip until they have run off the axle’s end; putting on, the nut runs easily until they come on.',
      },
      {
        ask: 'Why by hand and slowly?',
        answer:
          'The gripping threads rub under load. Turned fast they grow hot, seize and tear, and then the axle’s thread goes with them.',
      },
      {
        ask: 'Why does the maker say how often it may be reused?',
        answer:
          'Each time on and off flattens the pressed threads a little, so it grips less. Many makers ask for a new one every time.',
      },
    ],
    caution:
      'This nut holds the wheel. Type, torque and how often it may be used again are the maker’s figures; a wheel bearing set wrong can run off.',
  },
};

/** Questions of "Which is mine?" and their answers. */
export const questions = {
  fastening: {
    ask: 'How is your drum fastened?',
    hint: 'Look at its face with the wheel off.',
    answers: [
      ['studs', 'It sits over the wheel studs, nothing else'],
      ['screw', 'A small screw or a clip holds it as well'],
      ['nut', 'A big nut in the middle, under a cap'],
    ],
  },
  turns: {
    ask: 'Does it turn by hand?',
    hint: 'Wheel chocked elsewhere, parking brake off, gear out.',
    answers: [
      ['freely', 'Yes, freely'],
      ['lightly', 'It turns but drags, both ways'],
      ['one way', 'It drags, much stiffer one way than the other'],
      ['not at all', 'No, or only with great force'],
    ],
  },
  slides: {
    ask: 'Pull it straight, by both edges. Does it come?',
    hint: 'A few millimetres count.',
    answers: [
      ['a little', 'A few millimetres, then it stops'],
      ['not at all', 'Not a hair, and it does not rock'],
    ],
  },
  slack: {
    ask: 'Slacken the parking cable fully and try again.',
    hint: 'The parking lever must reach its stop behind the plate.',
    answers: [
      ['helps', 'That changed it: freer, or further'],
      ['no change', 'No change'],
      ['cannot tell', 'I cannot get at it, or cannot tell'],
    ],
  },
  hole: {
    ask: 'Is there an access hole to the adjuster?',
    hint: 'A rubber plug behind the plate, a knock-out pressed into it, or a hole in the drum’s face that can be turned to the adjuster.',
    answers: [
      ['there', 'Yes, there is one'],
      ['none', 'No access hole'],
    ],
  },
} as const;

/** Where the adjuster cannot be reached from outside (common practice). */
export const noHole =
  'No access hole: the adjuster cannot be reached from outside. Let the cable quite slack, at this wheel too. Press the drum home, turn it, draw it straight, over and over, so that the shoes settle. What then still holds it is under “Last of all”. A knock-out in the plate is opened only where the maker has marked it, and closed with a plug.';

export const lastResort =
  'Last of all, where nothing lets go: the hold-down pins can be cut behind the plate and drum and shoes drawn off together. It costs pins, springs and often the linings; look for the other lock first.';
