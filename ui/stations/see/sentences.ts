import { seeSentences as texts } from '../../../sim/words/en.ts';
import { isFigure, type SignValue, signOf } from '../../../sim/workshop/index.ts';
import { number } from '../../format.ts';
import { askedOf, typedText, UNSURE } from './words.ts';

/** What a car shows, each as a plain sentence without its full stop: why a cause is likely, and what else to look for. */
const sentences: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  hot: texts.hot,
  heat: texts.heat,
  travel: texts.travel,
  feel: texts.feel,
  pumped: texts.pumped,
  first: texts.first,
  clicks: texts.clicks,
  turns: texts.turns,
  ways: texts.ways,
  rubs: texts.rubs,
  slides: texts.slides,
  rocks: texts.rocks,
  tap: texts.tap,
  comes: texts.comes,
  release: texts.release,
  bleed: texts.bleed,
  lever: texts.lever,
  flexed: texts.flexed,
  bite: texts.bite,
  pull: texts.pull,
  back: texts.back,
  parked: texts.parked,
  oneway: texts.oneway,
  shoes: texts.shoes,
  pads: texts.pads,
  round: texts.round,
  swings: texts.swings,
  thin: texts.thin,
  drumsize: texts.drumsize,
  pawl: texts.pawl,
  wet: texts.wet,
  mark: texts.mark,
  when: texts.when,
  since: texts.since,
  after: texts.after,
  noise: texts.noise,
  smell: texts.smell,
};

/** What is measured, as a sentence about its figure; the unit is in it. */
const measured: Readonly<Record<string, (figure: string) => string>> = {
  notches: (n) => texts.theHandLeverTakesNotches(n),
  force: (n) => texts.itTakesAtTheTyre(n),
  touch: (n) => texts.theShoesTouchAt(n),
  unlike: (n) => texts.theWeakerWheelLacksOn(n),
  share: (n) => texts.theOddWheelGivesOf(n),
  backshare: (n) => texts.theOddWheelGivesBackwards(n),
  swing: (n) => texts.theForceOnTheRollers(n),
  holder: (n) => texts.teethBackLetTheDrum(n),
  tooth: (n) => texts.theAdjusterStandsAtTooth(n),
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
  const figure = typedText(text);
  return values && isFigure(values) && values.unit !== ''
    ? `${figure}\u00a0${values.unit}`
    : figure;
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
    .join(texts.onOneWheel)
    .concat(all.length > 1 ? texts.onTheOther : '');
}

/** What it would also show, and beside a figure what a sound brake shows: "… 3.6 notches, not 5.3". */
export function alsoText(key: string, shown: SignValue, sound: SignValue): string {
  const text = sentenceOf(key, shown);
  return typeof sound === 'number' && typeof shown === 'number'
    ? texts.aSoundOne(text, figureOf(key, sound))
    : text;
}

/** What was said in one line: "one rear drum gets hot · the wheel is stiff to turn by hand". */
export const caseText = (said: Readonly<Record<string, string>>): string =>
  Object.entries(said)
    .filter(([, value]) => value !== UNSURE)
    .map(([key, value]) => sentenceOf(key, value))
    .join(' · ') || texts.nothingSaidYet;
