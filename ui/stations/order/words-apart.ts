import { cautions } from '../../cautions.ts';
import { number } from '../../format.ts';
import type { Facts, Holds, Step } from './step.ts';

/**
 * Taking apart, part by part. What is done in which order, by which tool and what it may do to the hand is
 * common practice of the trade; forces are the model's, of the brake on the bench.
 */

const NO_PEDAL = `${cautions.piston} Hang a card on the wheel.`;
const FLIES = 'A spring stores force. Eye protection, face aside, no pliers on the wire.';

const newton = (name: string, value: number): Holds => ({
  ...{ name, value: number(value, 0), unit: 'N' },
});

/** What a return spring holds, takes to be unhooked, and would give back. */
const spring =
  (end: 'upper' | 'lower') =>
  (desk: Facts): readonly Holds[] => {
    const u = desk.spring(end);
    if (!u) return [];
    if (desk.off.has('shoes')) return [newton('It held, together', desk.fitted(end) ?? 0)];
    return u.now > 1
      ? [
          newton('It holds', u.now),
          newton('Takes to unhook', u.takes),
          { name: 'Stores', value: number(u.stored / 1000, 1), unit: 'J' },
        ]
      : [newton('It holds now', u.now)];
  };

const strutNow = (desk: Facts): readonly Holds[] => [newton('Strut is held by', desk.strutForce)];

const shorten: Readonly<
  Record<'lift' | 'wheel' | 'wedge', Pick<Step, 'does' | 'tool' | 'flies' | 'back'>>
> = {
  lift: {
    does: 'Ease the toes apart a little, one after the other, lift the toothed lever off its teeth and push it right back to tooth 0. Does the strut stay clamped, do it after the upper spring.',
    tool: ['hook', 'thin hook; a flat blade at the toe'],
    flies: 'The lever snaps into a tooth when it is let go: no finger in its window.',
    back: 'The lever’s spring: which way its ends lie.',
  },
  wheel: {
    does: 'Unhook the lever’s small spring first. Then turn the star wheel until the strut is at its shortest; note the hand of its thread, and chalk L or R on it.',
    tool: ['hook', 'thin hook for the spring; fingers for the wheel'],
    flies: 'The small spring, along its own line.',
    back: 'Thread and lever are of this side of the vehicle: left and right are not alike.',
  },
  wedge: {
    does: 'Note how far the wedge hangs down: it tells the wear. Unhook its spring, press the shoes together, push the wedge up and hold it.',
    tool: ['hook', 'thin hook for the spring; fingers for the wedge'],
    flies: 'The wedge’s spring, along its own line.',
    back: 'Tapered end down, the stepless face towards the strut, as in the picture.',
  },
};

const hold = (side: 'front' | 'rear'): Step => ({
  name: `Hold-down, ${side}`,
  does: 'A finger on the pin’s head behind the plate. Press the cup in, a quarter turn, let it come.',
  tool: ['cup', 'cup turner, or pliers on the cup’s rim'],
  flies: 'Cup and spring, straight out towards you.',
  checks: ['Pin not necked, its T whole', 'Hole in the plate not worn long'],
  care: FLIES,
  holds: (desk) => [newton('Press it in with', desk.pressing(side))],
});

export function apartWords(desk: Facts): Readonly<Record<string, Step>> {
  const flats = desk.onFlats;
  return {
    before: {
      name: 'Before anything',
      does: 'Write down how it is now: pedal at a light and a firm press, notches, each wheel turned both ways, heat after a drive. Level ground, the other axle’s wheels chocked before and behind, wheel nuts cracked loose, jack, both stands under the maker’s points; only then let the lever down.',
      tool: ['stands', 'chocks, jack, two stands, wheel wrench'],
      checks: [
        'Readings written down',
        'It stands firm when pushed',
        'Are you allowed to do this where you live?',
      ],
      care: `${cautions.stands} ${cautions.doubt}`,
    },
    drum: {
      name: 'Drum off',
      does: 'Wet the dust before the drum moves, and again as it comes. Take its screw, clip or nut out, then draw it straight. Does it stay, name what holds it: Drum off has the order of releases.',
      tool: ['wash', 'low-pressure wash and tray; bit for the screw'],
      checks: ['Marked against its stud', 'What was wet was seen before the wash: boots, hub'],
      care: `${cautions.wear} Never strike the rim.`,
      holds: (d) => [{ name: 'Room at the lip', value: number(d.lipRoom, 2), unit: 'mm' }],
    },
    picture: {
      name: 'Five pictures, then wash',
      does: 'A rule in the first: the whole brake square on; cylinder and upper spring; strut and adjuster at a slant; the lower end with spring, hook and cable; behind the plate. Chalk F and R and an arrow up on the webs. Then the wet wash of all.',
      tool: ['camera', 'camera, chalk, sheet to lay the parts on'],
      back: 'The other wheel stays whole as the pattern. It is the mirror image, not a copy.',
      checks: [
        'Which hole each spring hooks into',
        'Which way up and round the strut lies',
        'Clean tracks seen where parts rub',
      ],
      care: NO_PEDAL,
    },
    cable: {
      name: 'Cable slack',
      does: 'Slacken it at its adjuster. Take its end off the parking lever’s hook if it comes easily; else it goes with the rear shoe.',
      tool: ['pliers', 'pliers on the cable’s end, never on the wire'],
      flies: 'The cable’s end, back into its tube.',
      checks: [
        'Strands whole',
        'It runs back by itself when drawn and let go',
        'Lever lies on its stop',
      ],
      care: cautions.park,
      holds: (d) => [{ name: 'Lever off its stop', value: number(d.leverOff, 1), unit: 'mm' }],
    },
    shorten: {
      name: 'Adjuster to its shortest',
      ...shorten[desk.byHand],
      checks: ['Teeth and edges not rounded', 'Moves freely, comes back by its spring'],
      care: cautions.strut,
      holds: (d) => [
        newton('Strut is held by', d.strutForce),
        newton('Parts a toe from it', d.toeForce),
        ...(d.lift ? [newton('Lifts the lever', d.lift.total)] : []),
      ],
    },
    upper: flats
      ? {
          name: 'Upper spring, on the bench',
          does: 'The pair lies on the bench: fold it together, unhook the upper spring and lift the strut out of its notches.',
          tool: ['hands', 'hands; a hooked puller where it is still tight'],
          flies: 'Little: the shoes fold together and the spring goes slack.',
          back: 'Hook side and coil as in picture 2; strut as in picture 3.',
          checks: [
            'No gap between coils when off',
            'Hooks not thinned, no rust pits',
            'Both wheels the same colour and length',
          ],
          care: FLIES,
          holds: spring('upper'),
        }
      : {
          name: 'Upper return spring',
          does: 'Hook the tool on the end at the rear web, draw it out of its hole and let it come in slowly. Then the front end by hand.',
          tool: ['puller', 'hooked spring puller'],
          flies:
            'The freed hook, along the spring’s own line, towards the end that is still hooked.',
          back: 'Ends in the holes of picture 2, coil clear of the lever.',
          checks: [
            'No gap between coils when off',
            'Hooks not thinned, no rust pits',
            'Both wheels the same colour and length',
          ],
          care: FLIES,
          holds: spring('upper'),
        },
    clamp: {
      name: 'Clamp on both pistons',
      does: flats
        ? 'Hold both pistons with a band before the toes leave them, and keep it on.'
        : 'At once, before anything else: nothing but the clamp holds the pistons now.',
      tool: ['clamp', 'clamp or band over both pistons'],
      flies: 'A piston, pushed out by the spring between the cups.',
      checks: ['Boots whole', 'Edge of the boot lifted: no drops behind it'],
      care: NO_PEDAL,
      holds: (d) => [
        { name: 'Left to a piston’s run-out', value: number(d.runOut, 1), unit: 'mm' },
      ],
    },
    'hold-front': hold('front'),
    'hold-rear': hold('rear'),
    strut: {
      name: 'Strut and adjuster',
      does: 'The strut’s own spring first, then strut and adjuster together out of both notches.',
      tool: ['hands', 'hand; thin hook for the small spring'],
      flies: 'The strut drops when the front shoe moves.',
      back: 'Which way up and which way round: picture 3. It is of this side of the vehicle.',
      checks: [
        'Ends and notches square, not worn hollow',
        'Adjuster slides and holds',
        'Play in its slot as on the other wheel',
      ],
      care: cautions.springs,
      holds: strutNow,
    },
    shoes: {
      name: flats ? 'Both shoes off, as one' : 'Shoes off their pins',
      does: flats
        ? 'Draw the toes out of the pistons and lift both shoes over the hub as one, strut and upper spring between them. The cable comes off its hook now.'
        : 'Swing the toes towards each other and lift the heels off their pins; fold them, do not lever. The cable comes off its hook now.',
      tool: ['hands', 'hands'],
      flies: 'Toes swing together: fingers out of the gap.',
      back: 'Front shoe to the front: chalk says which.',
      checks: flats
        ? ['Heels’ rounds and the flats without a step', 'Linings: thinnest place, wet, loose']
        : ['Eyes not oval, pins not stepped', 'Linings: thinnest place, wet, loose'],
      care: 'Clean hands for linings, or tape over them. No grease, no oil.',
    },
    lower: flats
      ? {
          name: 'Lower ends out, lower spring',
          does: 'Swing one heel out of its flat, then the other: the spring goes slack as they come together. Unhook it.',
          tool: ['hands', 'flat lever against the anchor block, hands'],
          flies: 'A heel that slips back: fingers clear of the flats.',
          back: 'Hooks as in picture 4.',
          checks: ['No gap between coils when off', 'Hooks not thinned'],
          care: FLIES,
          holds: spring('lower'),
        }
      : {
          name: 'Lower spring, on the bench',
          does: 'With the shoes folded together it hangs slack: unhook it by hand.',
          tool: ['hands', 'hands; else the puller'],
          flies: 'Little is left in it.',
          back: 'Hooks as in picture 4.',
          checks: ['No gap between coils when off', 'Hooks not thinned'],
          care: FLIES,
          holds: spring('lower'),
        },
    lever: {
      name: 'Parking lever off its shoe',
      does: 'On the bench: clip off its pin; lay lever, clip and washer in order.',
      tool: ['pliers', 'clip tool; a new clip'],
      flies: 'The clip.',
      back: 'Washer on the side where it lay; the lever’s stop towards the web.',
      checks: [
        'Swings by its own weight',
        'Stop and notch not dented: the stop sets where the shoes rest',
      ],
      care: cautions.springs,
    },
    plate: {
      name: 'Plate',
      does: 'Wipe it wet. A straightedge over the six pads; a nail across each.',
      tool: ['gauge', 'straightedge'],
      checks: [
        'No groove in a pad: a groove is renewed, not greased',
        'Pin holes round',
        'No rust through',
      ],
      care: cautions.wearShort,
    },
    cylinder: {
      name: 'Cylinder, and the parts side by side',
      does: 'Lift the boots at their edge only. Then lay old and new parts beside each other: holes, handed webs, where the arc sits, spring lengths.',
      tool: ['gauge', 'blunt tool; rule, lining gauge'],
      checks: [
        'No drops behind the boots',
        'Pistons go in and come back alike',
        'What is unlike is wrong, or of the other side',
      ],
      care: cautions.fluid,
      done: 'All apart: to Inspect',
    },
  };
}
