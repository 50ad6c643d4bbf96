import { cautions } from '../../cautions.ts';
import { number } from '../../format.ts';
import type { Facts, Holds, Step } from './step.ts';

/** Backing the adjuster off with the drum on: what is done, seen and felt. Figures are the model's. */

interface Hand {
  readonly lift: string;
  readonly push: string;
  readonly felt: string;
  readonly wrong: string;
}

const hands: Readonly<Record<'lift' | 'wheel' | 'wedge', Hand>> = {
  lift: {
    lift: 'First lift the toothed lever off its teeth, against its spring, and keep it lifted.',
    push: 'Keep it lifted and push it back towards tooth 0. Lifted it slides freely, without notches; let go, it drops in with a tick.',
    felt: 'A springy lift of about a tooth’s height, then nothing holds.',
    wrong:
      'Tighter at once and harder to lift: it went the wrong way, or the strut is loaded. Stop; more force breaks the lever’s edge.',
  },
  wheel: {
    lift: 'First hold the small lever off the wheel, a hook beside the blade.',
    push: 'Turn the star wheel back while its lever is held away. With the lever on, it clicks one way only: that way is longer. The way in which it stops dead is shorter, with the lever held off.',
    felt: 'The lever gives like a leaf spring; the wheel then turns both ways.',
    wrong: 'It clicks: it goes longer. It stops dead: the lever is still on.',
  },
  wedge: {
    lift: 'There is no lever to lift: feel for the wedge’s lower end.',
    push: 'Push the wedge up against its spring, hold it, and press the shoes in.',
    felt: 'Stepless, soft; it sinks again at the next press of the pedal.',
    wrong: 'It does not move: the shoes are not pressed in, or pressure is left.',
  },
};

function gives(desk: Facts): readonly Holds[] {
  const g = desk.gives;
  if (!g) return [];
  return [
    { name: 'Clearance, each lining', value: number(g.clearance, 2), unit: 'mm' },
    { name: 'Room at the lip', value: number(g.lip, 2), unit: 'mm' },
    { name: 'Pedal', value: number(g.pedal, 1), unit: 'mm' },
    { name: 'Notches', value: number(g.notches, 1), unit: '' },
  ];
}

export function backWords(desk: Facts): Readonly<Record<string, Step>> {
  const hand = hands[desk.byHand];
  return {
    load: {
      name: 'Let cable and pressure go',
      does: 'Hand lever down, cable slack at its adjuster. Open the bleed point a little if the wheel still drags, a hose on it into a jar. A loaded tooth lets go suddenly.',
      tool: ['pliers', 'spanner at the cable; flare-nut wrench, hose, jar'],
      checks: ['Lever on its stop', 'Wheel turns no stiffer than before'],
      care: cautions.park,
      holds: (d) => [{ name: 'Strut is held by', value: number(d.strutForce, 0), unit: 'N' }],
    },
    find: {
      name: 'Find the hole',
      does: 'A plug in the plate, or a hole in the drum’s face that is turned to stand over the adjuster. From behind the plate everything is mirrored once more; on the other wheel as well.',
      tool: ['hook', 'torch, thin hook, flat blade'],
      checks: ['You see, or feel, the part you mean to move'],
      care: 'A knock-out is opened only where the maker marked it, its slug comes out of the drum, and a plug closes it.',
    },
    lift: {
      name: 'Lift first',
      does: `${hand.lift} ${hand.felt}`,
      tool: ['hook', 'thin hook, flat blade'],
      checks: ['It lifts with that much and no more'],
      care: cautions.strut,
      holds: (d) =>
        d.lift
          ? [
              { name: 'To lift it, at the tooth', value: number(d.lift.total, 0), unit: 'N' },
              { name: 'of it its spring', value: number(d.lift.spring, 0), unit: 'N' },
              { name: 'of it the loaded tooth', value: number(d.lift.friction, 0), unit: 'N' },
            ]
          : [],
    },
    push: {
      name: 'Then back, a little at a time',
      does: `${hand.push} ${hand.wrong}`,
      tool: ['hook', 'hook holds, blade pushes'],
      checks: ['Each one counted, to set the wheel again as it was'],
      care: cautions.strut,
      holds: gives,
    },
    try: {
      name: 'Try the drum after each',
      does: (d) =>
        d.need === null
          ? 'Press it home, turn it, draw it straight. Even all of it is not enough here: something else holds it. Name it in Drum off.'
          : d.need <= 0
            ? 'Press it home, turn it, draw it straight. Here it is free as it stands.'
            : `Press it home, turn it, draw it straight. Here it comes free ${d.needText} back.`,
      tool: ['hands', 'hands, both edges of the drum'],
      checks: ['Tried three times and still held: stop, name another lock'],
      care: `Fingers out of the gap. ${cautions.drumOff.split('. ')[1] ?? ''}`,
    },
    'way-out': {
      name: 'No hole, or no luck: other ways',
      does: 'In this order, the drum tried after each. What each costs stands beside it.',
      tool: ['hands', 'see each'],
      checks: [],
      care: 'Stop when anything bends or cracks, when fluid runs, when the vehicle moves. Then a workshop, with what was tried written down.',
      done: 'It is off: take it apart',
    },
  };
}

/** Ways without a hole, each with its price; forces of the lip from the model. */
export function waysOut(desk: Facts): readonly (readonly [way: string, price: string])[] {
  const f = desk.lipForce;
  const kn = (n: number) => `${number(n / 1000, 1)} kN`;
  return [
    [
      'Look for a pressed-in plug, a rubber bung in the drum’s face, a marked knock-out.',
      'Costs nothing.',
    ],
    [
      'Two screws by turns in the drum’s own threads, a little at a time.',
      f
        ? `At the lip this pulls through lining and hold-down pins, not the hub: a puller’s ${kn(f.pull)} is ${kn(f.onShoe)} a shoe; the ${f.givesFirst} gives way at about ${kn(f.givesAt)} (strengths: their order only).`
        : 'Right for rust at the hub. Where a lip holds, it pulls through linings and hold-down pins.',
    ],
    [
      'The cylinder’s two bolts out from behind, where it can drop.',
      'The pipe may break; then it is bled.',
    ],
    [
      'Cut the heads of the hold-down pins behind the plate and draw the lot.',
      'Pins, springs, mostly linings. Springs fly inside: eye protection.',
    ],
    ['Drill a hole where this kind has one.', 'Only by the maker’s drawing: not advised here.'],
    ['Cut the drum.', 'The drum is lost. For a workshop.'],
  ];
}
