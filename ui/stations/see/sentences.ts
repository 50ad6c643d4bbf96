import { isFigure, type SignValue, signOf } from '../../../sim/workshop/index.ts';
import { number } from '../../format.ts';
import { askedOf, UNSURE } from './words.ts';

/** What a car shows, each as a plain sentence without its full stop: why a cause is likely, and what else to look for. */
const sentences: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  hot: {
    none: 'no drum gets hot',
    one: 'one rear drum gets hot',
    both: 'both rear drums get hot',
    all: 'all four wheels get hot',
  },
  heat: {
    cool: 'the drum stays cool',
    warm: 'the drum gets warm',
    'too hot': 'the drum gets too hot to touch',
  },
  travel: {
    short: 'the pedal goes less far than before',
    ever: 'the pedal goes as far as ever',
    long: 'the pedal goes farther than before',
    half: 'the pedal goes half way down',
    floor: 'the pedal goes to the floor',
  },
  feel: {
    firm: 'the pedal is firm',
    springy: 'the pedal is springy',
    throbs: 'the pedal pulses under the foot',
    wooden: 'the pedal is hard and it brakes badly',
    sinks: 'the pedal sinks slowly',
  },
  pumped: {
    up: 'pumping brings the pedal up',
    same: 'pumping changes nothing',
  },
  first: {
    like: 'the first press after a night is like the next',
    long: 'the first press after a night is long, the next ones good',
  },
  clicks: {
    none: 'the adjuster is never heard to click',
    heard: 'the adjuster is heard to click',
  },
  turns: {
    freely: 'the wheel turns freely by hand',
    rubs: 'the wheel rubs lightly as it is turned by hand',
    stiff: 'the wheel is stiff to turn by hand',
    not: 'the wheel cannot be turned by hand',
    jerk: 'the wheel does not turn, then gives with one jerk',
  },
  ways: {
    alike: 'it is as stiff forwards as backwards',
    unlike: 'it is much stiffer one way than the other',
  },
  rubs: {
    no: 'it rubs at no place in particular',
    once: 'it rubs once a turn',
    twice: 'it rubs twice a turn',
  },
  slides: {
    off: 'the drum slides off',
    some: 'the drum slides a few millimetres and stops',
    not: 'the drum does not move outwards at all',
  },
  rocks: { no: 'the wheel does not rock', yes: 'the wheel rocks at its top and bottom' },
  tap: { rings: 'the drum rings when tapped', dull: 'the drum sounds dull when tapped' },
  comes: {
    smooth: 'the brake comes on smoothly',
    jump: 'the brake comes on late and all at once',
  },
  release: {
    once: 'the wheel is free as soon as the pedal is let go',
    seconds: 'the wheel is free only seconds after the pedal is let go',
    not: 'the wheel stays stiff for minutes after the pedal is let go',
  },
  bleed: {
    nothing: 'opening the bleed point changes nothing',
    frees: 'opening the bleed point frees the wheel at once',
  },
  lever: {
    home: 'the parking lever in the drum is on its stop',
    off: 'the parking lever in the drum stands off its stop',
  },
  flexed: {
    comes: 'the parking lever follows the cable out and back',
    slow: 'the parking lever comes back slowly',
  },
  bite: {
    right: 'it brakes as ever',
    weak: 'it brakes weakly',
    strong: 'it grabs',
  },
  pull: {
    no: 'it does not pull to one side',
    yes: 'it pulls to one side',
  },
  back: {
    alike: 'it brakes as well backwards as forwards',
    less: 'it brakes much less backwards than forwards',
    more: 'it brakes much more backwards than forwards',
  },
  parked: {
    right: 'the parking brake holds',
    weak: 'the parking brake holds weakly',
    strong: 'the parking brake holds more than before',
  },
  oneway: {
    alike: 'it holds as well facing up as facing down',
    one: 'it holds facing one way only',
  },
  shoes: { both: 'both shoes move by hand', one: 'one shoe will not move by hand' },
  pads: {
    smooth: 'the pads on the plate are smooth',
    grooved: 'the pads on the plate are grooved',
  },
  round: {
    same: 'the bore measures the same all round',
    differs: 'the bore measures different from one angle to another',
  },
  swings: {
    still: 'a dial on the turning drum stands still',
    swings: 'a dial on the turning drum swings',
  },
  thin: {
    lead: 'the front lining is the thinner one',
    trail: 'the rear lining is the thinner one',
    alike: 'both linings are alike',
    gone: 'both linings are gone',
  },
  drumsize: {
    within: 'the drum is well within its mark',
    large: 'the drum is near its mark or past it',
  },
  pawl: {
    drops: 'the adjuster’s lever drops in',
    stiff: 'the adjuster’s lever is stiff',
    free: 'the adjuster’s lever swings free',
    other: 'the adjuster’s lever is of the other side',
  },
  wet: {
    dry: 'it is dry behind the drum',
    fluid: 'a cylinder’s boot is wet with fluid',
    oil: 'oil comes from the hub',
  },
  mark: {
    same: 'both wheel cylinders have the same bore',
    other: 'the wheel cylinders have unlike bores',
  },
  when: {
    always: 'it is always so',
    braked: 'it comes just after braking',
    longer: 'it gets worse the longer you drive',
    cold: 'it is so only while cold',
    parked: 'it comes after parking',
    laden: 'it comes only when laden',
    downhill: 'it comes after a long descent',
    damp: 'it comes with the first stops in the damp',
  },
  since: {
    sudden: 'it came all at once',
    weeks: 'it has been so for weeks',
    months: 'it got slowly worse over months',
    work: 'it has been so since some work',
  },
  after: {
    none: 'no work was done before',
    shoes: 'the shoes were worked on before',
    drum: 'the drum was worked on before',
    cylinder: 'a wheel cylinder was worked on before',
    pipe: 'a hose or pipe was worked on before',
    cable: 'the cable or the hand lever was worked on before',
    hub: 'the hub or its bearing was worked on before',
    master: 'the master, the booster or the pedal was worked on before',
    wash: 'it was washed, or stood in the rain',
    stood: 'it stood for months',
  },
  noise: {
    none: 'there is no noise',
    squeal: 'it squeals',
    grind: 'it grinds',
    groan: 'it groans or honks',
    clunk: 'it clunks once at a change of direction',
    rattle: 'it rattles',
    rub: 'a rub or a swish is heard',
    pop: 'it pops at the first touch',
    bang: 'there was a bang, and it locks one way',
  },
  smell: {
    none: 'there is no smell',
    burnt: 'it smells of burnt lining',
    oil: 'it smells of oil',
    fluid: 'it smells of brake fluid',
  },
};

/** What is measured, as a sentence about its figure; the unit is in it. */
const measured: Readonly<Record<string, (figure: string) => string>> = {
  notches: (n) => `the hand lever takes ${n} notches`,
  force: (n) => `it takes ${n} at the tyre to keep the wheel turning`,
  touch: (n) => `the shoes touch at ${n}`,
  unlike: (n) => `the weaker wheel lacks ${n} on the rollers`,
  share: (n) => `the odd wheel gives ${n} of what it gave before`,
  backshare: (n) => `the odd wheel gives ${n} backwards of what it gives forwards`,
  swing: (n) => `the force on the rollers swings by ${n} in a turn`,
  holder: (n) => `${n} teeth back let the drum go`,
  tooth: (n) => `the adjuster stands at tooth ${n}`,
};

/** Notches and teeth that a hand counts are whole ones, and so are newtons by tens. */
function figureOf(key: string, value: number): string {
  const values = signOf(key)?.values;
  if (!values || !isFigure(values)) return String(value);
  const figure = number(value, values.digits);
  return values.unit === '' ? figure : `${figure}\u00a0${values.unit}`;
}

/** As it was typed, with the unit it is asked in. */
function typed(key: string, text: string): string {
  const values = signOf(key)?.values;
  return values && isFigure(values) && values.unit !== '' ? `${text}\u00a0${values.unit}` : text;
}

/** One or two values of a sign: "one rear drum gets hot, or both rear drums get hot". */
export function sentenceOf(key: string, value: SignValue | string): string {
  const figure = measured[key];
  if (figure) {
    return figure(typeof value === 'number' ? figureOf(key, value) : typed(key, String(value)));
  }
  const all = typeof value === 'string' ? [value] : (value as readonly string[]);
  return all
    .map((v) => sentences[key]?.[v] ?? `${askedOf(key)?.name ?? key} ${v}`)
    .join(' on one wheel, ')
    .concat(all.length > 1 ? ' on the other' : '');
}

/** What it would also show, and beside a figure what a sound brake shows: "… 3.6 notches, not 5.3". */
export function alsoText(key: string, shown: SignValue, sound: SignValue): string {
  const text = sentenceOf(key, shown);
  return typeof sound === 'number' && typeof shown === 'number'
    ? `${text}, a sound one ${figureOf(key, sound)}`
    : text;
}

/** What was said in one line: "one rear drum gets hot · the wheel is stiff to turn by hand". */
export const caseText = (said: Readonly<Record<string, string>>): string =>
  Object.entries(said)
    .filter(([, value]) => value !== UNSURE)
    .map(([key, value]) => sentenceOf(key, value))
    .join(' · ') || 'nothing said yet';
