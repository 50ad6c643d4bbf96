import type { HandPart } from '../../record/hands.ts';

/** What each part is called in the list, and what a hand can do with it. */
export const rows: Readonly<Record<HandPart, readonly [name: string, does: string]>> = {
  'front shoe': ['Front shoe', 'pull, push, anywhere on it'],
  'rear shoe': ['Rear shoe', 'pull, push, anywhere on it'],
  'both toes': ['Both toes', 'spread, press together'],
  strut: ['Strut', 'its play'],
  'adjuster lever': ['Toothed lever', 'lift it, turn it back'],
  'parking lever': ['Parking lever', 'pull at the hook'],
  cable: ['Cable', 'pull'],
  'front piston': ['Front piston', 'push back: fluid goes'],
  'rear piston': ['Rear piston', 'push back: fluid goes'],
  drum: ['Drum', 'turn to and fro, feel the drag'],
  'drum pulled': ['Drum, straight', 'pull it off its studs'],
  'drum rocked': ['Drum, one side', 'rock it against its lip'],
};

/** What happens, in two sentences at most. */
export const tells: Readonly<Record<HandPart, string>> = {
  'front shoe':
    'Strut and springs bring the other shoe along, until a lining meets the drum. Let go, the pair stays there.',
  'rear shoe':
    'Strut and springs bring the other shoe along, until a lining meets the drum. Let go, the pair stays there.',
  'both toes':
    'Two hands part the toes from the strut only when they beat its clamp. Pressed together nothing gives: the strut takes it.',
  strut: 'It lies clamped between the shoes: pull it, and the pair goes along.',
  'adjuster lever':
    'Pulled up its slot it leaves its teeth: then nothing but the hand holds the strut’s length, and it turns back tooth by tooth. Let go, it drops in where it is.',
  'parking lever':
    'It turns once the pull beats the springs, and presses the strut with many times what the hand gives.',
  cable: 'It pulls the lever’s hook, and only pulls.',
  'front piston':
    'Pushed back it leaves its toe: cup and pressure push against it, fluid goes home.',
  'rear piston':
    'Pushed back it leaves its toe: cup and pressure push against it, fluid goes home.',
  'drum pulled':
    'Towards you it slides until its lip meets the linings: then you lift both shoes off their pads against their hold-downs.',
  'drum rocked':
    'Pulled at one side of its rim it turns about the other: the shoe of that side has your whole pull.',
  drum: 'Turn it round, or to and fro. What you feel is the drag of the linings and the weight that has to be started.',
};
