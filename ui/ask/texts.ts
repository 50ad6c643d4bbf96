import type { StationId } from '../record/moment.ts';
import type { OrderPage } from '../stations/order/plan.ts';

interface Text {
  readonly title: string;
  readonly text: string;
}

/** What a station is good for, in a line. */
export const stationTexts: Readonly<Partial<Record<StationId, Text>>> = {
  start: { title: 'Start', text: 'Seven ways in, by what is wrong.' },
  apply: { title: 'Apply: how it works', text: 'Press the pedal and see every force, both ways.' },
  wear: {
    title: 'Wear: let it wear and click',
    text: 'Drive it on, press by press, to its limits.',
  },
  'drum-off': {
    title: 'Drum off: what holds it',
    text: 'A few plain questions, then the order of release.',
  },
  park: {
    title: 'Park: notches and slope',
    text: 'Where the notches go, and which slope it holds.',
  },
  inspect: {
    title: 'Inspect: are these parts still good?',
    text: 'Type what you measure, read the verdict.',
  },
  'new-shoes': { title: 'New shoes: fit and set them', text: 'In order, with the sizes to set.' },
  faults: { title: 'Faults: what each one does', text: 'Readings sound and with the fault.' },
  own: { title: 'My brake', text: 'Type in the sizes of your own.' },
  questions: { title: 'Questions', text: 'All of them, with their answers.' },
  lessons: {
    title: 'Lessons',
    text: 'A question, a guess, then the brake itself; and a talk that plays by itself.',
  },
  see: {
    title: 'What I see',
    text: 'Tap what you notice: likely causes, and the cheapest next check.',
  },
  vary: {
    title: 'What if: change one thing',
    text: 'Any size over a range, what follows as a curve, and the brake of any point.',
  },
  apart: {
    title: 'The adjuster, taken apart',
    text: 'Its parts from both sides, put together in order, and what each spring does.',
  },
  compare: {
    title: 'Compare: two brakes, one pedal',
    text: 'Forward against backward, hot against cold, new against worn, tooth by tooth, side by side.',
  },
  kind: {
    title: 'Which kind is yours?',
    text: 'Pictures of kinds and adjusters, and what carries over.',
  },
};

/** Pages of the work in its order. */
export const orderTexts: Readonly<Record<OrderPage, Text>> = {
  back: {
    title: 'Back off through the hole, step by step',
    text: 'Lift first, then back: what is seen and felt, what a tooth gives, and ways without a hole.',
  },
  apart: {
    title: 'Take it apart, in order',
    text: 'Part by part: which tool, which way round, what may fly, what to look at.',
  },
  together: {
    title: 'Put it together, in order',
    text: 'Part by part, each with its check before the next.',
  },
  set: {
    title: 'Set new shoes, in order',
    text: 'Gauge, presses until silent, lever home, cable last, notches; how stiff a wheel may turn.',
  },
  bed: {
    title: 'Bed them in',
    text: 'What ten stops do and what they do not; the first drive, and when it does not leave.',
  },
};

/** Ways into What I see. */
export const topicTexts: Readonly<Record<string, Text>> = {
  drag: {
    title: 'It drags or gets hot',
    text: 'One wheel or all, when and how: tap what you see.',
  },
  pedal: {
    title: 'Long or soft pedal',
    text: 'Far, springy, sinking, pulsing: tap what you feel.',
  },
  lever: {
    title: 'Lever goes too far, will not hold',
    text: 'Notches, hold, one way or both: tap what you see.',
  },
  braking: {
    title: 'It brakes badly: weak, grabs, pulls',
    text: 'With or without figures of a roller test.',
  },
  noise: {
    title: 'It makes a noise',
    text: 'Which noise, and when; noise itself is not computed.',
  },
  free: {
    title: 'Will it wear free, how far, how hot?',
    text: 'Worked out for the brake on the bench.',
  },
};
