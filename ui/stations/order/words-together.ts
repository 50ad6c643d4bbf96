import { cautions } from '../../cautions.ts';
import { number } from '../../format.ts';
import type { Facts, Step } from './step.ts';

/** Putting together: the other way round, each with the check before the next part (common practice). */

const FLIES = 'A spring stores force. Eye protection, face aside, no pliers on the wire.';

const strutHow: Readonly<Record<'lift' | 'wheel' | 'wedge', string>> = {
  lift: 'Adjuster at its shortest, the toothed lever under its spring: lift it, let go, it ticks.',
  wheel:
    'Screw turned right in, a film of grease on its thread; the lever’s spring hooked on last. Parts of this side, L or R.',
  wedge: 'Wedge pushed right up and held; its spring hooked on last.',
};

export function togetherWords(desk: Facts): Readonly<Record<string, Step>> {
  const { byHand, onFlats: flats } = desk;
  const spring = (end: 'upper' | 'lower') => (d: Facts) => {
    const fitted = d.fitted(end);
    return fitted === null ? [] : [{ name: 'Will hold', value: number(fitted, 0), unit: 'N' }];
  };
  return {
    clean: {
      name: 'Plate clean, thin grease',
      does: `Dry and clean. A thin film of high-temperature brake grease on the six pads, ${flats ? 'the flats' : 'the pins'}, the lever’s pivot. Never on lining, drum or cups; on teeth no more than a film.`,
      tool: ['hands', 'clean rag, high-temperature brake grease'],
      checks: ['Springs new or alike on both wheels', 'New parts laid beside the old: right ones'],
      care: cautions.fitting.split('. ')[0] as string,
    },
    'lever-on': {
      name: 'Parking lever on its shoe',
      does: 'Pin, washer on its side, a new clip.',
      tool: ['pliers', 'clip tool'],
      back: 'The lever’s stop towards the web.',
      checks: ['It swings by its own weight', 'It lies on its stop'],
      care: cautions.springs,
    },
    'lower-on': {
      name: 'Lower spring, shoes on their pins',
      does: 'Hook the lower spring into both shoes while they are folded together, cable on its hook, then the heels over their pins and the toes apart.',
      tool: ['hands', 'hands'],
      flies: 'The shoes spring together: fingers out of the gap.',
      back: 'Front shoe to the front, hooks as in picture 4.',
      checks: ['Both heels home', 'Cable end home on its hook'],
      care: FLIES,
      holds: spring('lower'),
    },
    'strut-on': {
      name: 'Strut and adjuster',
      does: `Both ends home in their notches. ${strutHow[byHand]}`,
      tool: ['hands', 'hand; thin hook for the small spring'],
      back: 'Which way round and up: picture 3.',
      checks: [
        'Both ends home: one that rides on the web leaves the drum stuck',
        'Adjuster at its shortest',
      ],
      care: cautions.springs,
    },
    'bench-on': {
      name: 'On the bench: strut, upper spring',
      does: `Lay both shoes on the bench, strut in its notches, upper spring hooked into both webs. ${strutHow[byHand]}`,
      tool: ['puller', 'hooked spring puller'],
      back: 'Pictures 2 and 3; cable on its hook before the pair goes over the hub.',
      checks: ['Both ends of the strut home', 'Adjuster at its shortest'],
      care: FLIES,
      holds: spring('upper'),
    },
    'hold-on': {
      name: 'Hold-downs, both',
      does: 'Pin from behind, spring and cup, press and a quarter turn until its T lies across. Pull at it.',
      tool: ['cup', 'cup turner, a finger on the pin’s head'],
      flies: 'Cup and spring, straight out.',
      checks: ['T lies across in both cups', 'Both shoes lie on all their pads'],
      care: FLIES,
      holds: (d) => [
        { name: 'Press it in with', value: number(d.pressing('front'), 0), unit: 'N' },
      ],
    },
    'toes-in': {
      name: flats ? 'Pair over the hub, toes in' : 'Clamp off, toes in',
      does: flats
        ? 'Both shoes over the hub as one, toes into the pistons’ slots, and only then the clamp off.'
        : 'Toes into the pistons’ slots, then the clamp off.',
      tool: ['clamp', 'hands; the clamp stays until both toes are in'],
      flies: 'A piston, while nothing holds it.',
      checks: ['Boots not pinched', 'Toes right in their slots'],
      care: cautions.piston,
    },
    'upper-on': {
      name: 'Upper spring, last',
      does: 'Front end by hand, then draw the rear end over its hole with the tool and let it in.',
      tool: ['puller', 'spring seater, or the hooked puller'],
      flies: 'The drawn hook, along the spring’s own line.',
      back: 'Two ends as in picture 2, seated right down in both holes.',
      checks: ['Seated in both holes', 'Coil clear of the toothed parts'],
      care: FLIES,
      holds: spring('upper'),
    },
    centre: {
      name: 'Centre the pair',
      does: 'Push the pair to and fro on the plate until both linings stand alike from the plate’s rim.',
      tool: ['gauge', 'hands, rule'],
      checks: ['Edges alike all round', 'Other wheel brought to here as well'],
      care: `${cautions.piston} Not before both drums are on.`,
      holds: (d) => [{ name: 'Strut is held by', value: number(d.strutForce, 0), unit: 'N' }],
      done: 'Together: to setting',
    },
  };
}
