import * as v from 'valibot';
import {
  type Brake,
  freshState,
  PRESS,
  presetRow,
  presetTooth,
  pressUntilSilent,
} from '../../../sim/index.ts';
import { newShoesPart as words } from '../../../sim/words/en.ts';
import { stepsOf, wordsOf } from '../../adjusters.ts';
import { number } from '../../format.ts';
import { released, withState } from '../../record/bench.ts';
import { brakeOf, rigOf, rigOfBrake } from '../../record/derive.ts';
import { intention } from '../../record/intention.ts';
import { type Moment, withPart } from '../../record/moment.ts';
import type { Part } from '../../record/part.ts';
import {
  BED_AT,
  fittingOf,
  type Hands,
  HELD_OFF,
  handsOf,
  sizeWithin,
  toothWithin,
} from './fitting.ts';

export type ShoeStep = 1 | 2 | 3 | 4 | 5 | 6;

/** One thing done, with what came of it. */
export interface Done {
  readonly text: string;
  readonly good: boolean;
}

/** What is in the hands, how the brake is set, what was done; the six steps go in any order. */
export interface ShoesPart extends Hands {
  readonly step: ShoeStep;
  /** Wanted bore less across, mm. */
  readonly wanted: number;
  /** Teeth that dropped in at each press since the drum went on. */
  readonly clicks: readonly number[];
  readonly silent: boolean;
  readonly done: Readonly<Record<ShoeStep, Done | null>>;
  /** The last step shows the contact picture, not the cable's table. */
  readonly contact: boolean;
  /** Something was done since the station was opened. */
  readonly touched: boolean;
}

/** Share of the way from new to its largest bore that the drum is worn, where the scene tells no set but the first. */
const WORN = 2 / 3;
/** How far the pair stands aside before it is centred, mm at the front lining's middle. */
const ASIDE = 0.25;
const MOST_ASIDE = 5;
/** What may be wanted by the gauge, mm. */
export const WANTED = [0.05, 3] as const;
/** Presses that are kept; an adjuster is silent long before. */
const MOST_PRESSES = 1000;

const NOTHING: ShoesPart['done'] = { 1: null, 2: null, 3: null, 4: null, 5: null, 6: null };

const hundredths = (mm: number): number => Math.round(mm * 100) / 100;
const wantedWithin = (mm: number): number =>
  mm >= WANTED[0] ? Math.min(WANTED[1], hundredths(mm)) : WANTED[0];

/** Everything as the worn shoes left it: strut three quarters out, pair aside, cable slack. */
function begin(brake: Brake): ShoesPart {
  const { drum, adjuster } = brake;
  const { lining } = brake.shoes.front;
  const told = brake.states.find((s) => s.drumRadius !== null)?.drumRadius;
  const wider = 2 * (told ?? drum.radiusNew + WORN * (drum.radiusMax - drum.radiusNew));
  const asNew = presetRow(rigOfBrake(brake), freshState(brake)).difference;
  return {
    step: 1,
    thickness: lining.thicknessNew,
    ground: 2 * lining.groundRadius,
    bore: Math.round(wider * 10) / 10,
    tooth: Math.round(0.75 * adjuster.teeth),
    aside: ASIDE,
    drumOn: false,
    cable: 'slack',
    wanted: wantedWithin(asNew),
    clicks: [],
    silent: false,
    bedded: 0,
    done: NOTHING,
    contact: false,
    touched: false,
  };
}

const within = (low: number, high: number) => v.pipe(v.number(), v.minValue(low), v.maxValue(high));
const count = (high: number) => v.pipe(within(0, high), v.integer());
const done = v.nullable(
  v.strictObject({ text: v.pipe(v.string(), v.maxLength(200)), good: v.boolean() }),
);

export const shoesPart: Part<ShoesPart> = {
  anew: true,
  layers: {},
  initial: begin,
  shown: (m) => fittingIn(m).shown(handsIn(m)),
  left: settle,
  schema: v.strictObject({
    step: v.picklist([1, 2, 3, 4, 5, 6]),
    thickness: within(0, 100),
    ground: within(20, 2000),
    bore: within(20, 2000),
    tooth: count(100000),
    aside: within(0, MOST_ASIDE),
    drumOn: v.boolean(),
    cable: v.picklist(['slack', 'home', 'tight']),
    wanted: within(...WANTED),
    clicks: v.pipe(v.array(count(100000)), v.maxLength(MOST_PRESSES)),
    silent: v.boolean(),
    bedded: count(BED_AT.length - 1),
    done: v.strictObject({ 1: done, 2: done, 3: done, 4: done, 5: done, 6: done }),
    contact: v.boolean(),
    touched: v.boolean(),
  }),
};

const partOf = (m: Moment): ShoesPart => m.parts['new-shoes'];
const put = (m: Moment, change: Partial<ShoesPart>): Moment => withPart(m, 'new-shoes', change);
const handsIn = (m: Moment): Hands => handsOf(brakeOf(m), partOf(m));
const fittingIn = (m: Moment) => fittingOf(rigOf(m));

/** What no longer holds once something before it is changed. */
const drumOff = (done: ShoesPart['done']) =>
  ({
    drumOn: false,
    clicks: [],
    silent: false,
    bedded: 0,
    cable: 'slack',
    done: { ...done, 5: null, 6: null },
  }) as const satisfies Partial<ShoesPart>;

/** The record with one thing done, and what came of it. */
function acted(
  m: Moment,
  step: ShoeStep,
  text: string,
  good: boolean,
  change: Partial<ShoesPart> = {},
): Moment {
  const before = change.done ?? partOf(m).done;
  return put(m, { ...change, touched: true, done: { ...before, [step]: { text, good } } });
}

/** "tooth 2", "strut 98.99 mm". */
export function namedTooth(brake: Brake, tooth: number): string {
  const at = stepsOf(brake).at(tooth);
  return wordsOf(brake).named(at);
}

const toothSays = (_before: Moment, after: Moment): string =>
  namedTooth(brakeOf(after), partOf(after).tooth);
/** What a step's card says of it. */
const cardSays =
  (step: ShoeStep) =>
  (_before: Moment, after: Moment): string =>
    partOf(after).done[step]?.text ?? words.stepOfNewShoes;

export const goTo = intention(
  'new-shoes.go',
  (m: Moment, step: ShoeStep) => {
    const { step: now, contact } = partOf(m);
    return step === now && !contact ? m : put(m, { step, contact: false });
  },
  (_before, after) => words.step(partOf(after).step),
);

/** The six steps from the first again. */
export const startAgain = intention(
  'new-shoes.restart',
  (m: Moment) => put(m, { ...begin(brakeOf(m)), touched: partOf(m).touched }),
  words.newShoesFromTheFirst,
);

/** Sizes of the parts in the hands, mm. */
export const measureParts = intention(
  'new-shoes.parts',
  (m: Moment, sizes: Partial<Pick<ShoesPart, 'thickness' | 'ground' | 'bore'>>) => {
    const brake = brakeOf(m);
    const now = partOf(m);
    const size = (key: 'thickness' | 'ground' | 'bore'): number =>
      sizes[key] === undefined ? now[key] : sizeWithin(brake, key, hundredths(sizes[key]));
    const next = { thickness: size('thickness'), ground: size('ground'), bore: size('bore') };
    if (next.thickness === now.thickness && next.ground === now.ground && next.bore === now.bore)
      return m;
    return put(m, {
      ...next,
      ...drumOff({ ...now.done, 1: null }),
      touched: true,
    });
  },
  (_before, after, sizes) => {
    const { thickness, ground, bore } = partOf(after);
    if (sizes.bore !== undefined) return words.drumBore(number(bore, 2));
    return sizes.ground === undefined
      ? words.liningThick(number(thickness, 2))
      : words.groundForDiameter(number(ground, 2));
  },
);

/** The parts are taken as they are. */
export const takeParts = intention(
  'new-shoes.take',
  (m: Moment) => {
    const fitting = fittingIn(m);
    const hands = handsIn(m);
    const { where } = fitting.fit(hands);
    const zero = fitting.rows(hands)[0];
    const tight = zero !== undefined && !zero.slidesOn;
    const says = {
      'all along': words.liesAllAlong,
      crown: words.crownFirst,
      ends: words.endsFirst,
      toe: words.bearsAtTheToe,
      heel: words.bearsAtTheHeel,
    }[where];
    const good = where === 'all along' || where === 'crown';
    return acted(m, 1, tight ? words.butTooThick(says) : says, good && !tight);
  },
  cardSays(1),
);

/** The adjuster set by hand. */
export const setTooth = intention(
  'new-shoes.tooth',
  (m: Moment, tooth: number) => {
    const brake = brakeOf(m);
    const now = partOf(m);
    const from = toothWithin(brake, now.tooth);
    const next = toothWithin(brake, Math.round(tooth));
    if (next === from) return m;
    const { done, ...off } = drumOff(now.done);
    if (now.step !== 2)
      return put(m, { ...off, done: { ...done, 4: null }, tooth: next, touched: true });
    const { at } = stepsOf(brake);
    const text = words.text(at(from), at(next));
    return acted(m, 2, text, next < from, { ...off, done, tooth: next });
  },
  toothSays,
);

export const centre = intention(
  'new-shoes.centre',
  (m: Moment) => acted(m, 3, words.bothSidesEven, true, { aside: 0 }),
  cardSays(3),
);

/** The pair pushed aside, mm at the front lining's middle. */
export const pushAside = intention(
  'new-shoes.aside',
  (m: Moment, mm: number) =>
    acted(m, 3, words.pairLeftAside, false, {
      ...drumOff(partOf(m).done),
      aside: Math.max(0, Math.min(MOST_ASIDE, mm)),
    }),
  cardSays(3),
);

/** The difference wanted by the gauge, mm. */
export const want = intention(
  'new-shoes.want',
  (m: Moment, mm: number) => {
    const wanted = wantedWithin(mm);
    return wanted === partOf(m).wanted ? m : put(m, { wanted });
  },
  (_before, after) => words.wantedSmallerBy(number(partOf(after).wanted, 2)),
);

/** The adjuster set to the tooth that the gauge asks for. */
export const presetByGauge = intention(
  'new-shoes.preset',
  (m: Moment) => {
    const row = presetTooth(fittingIn(m).rows(handsIn(m)), partOf(m).wanted);
    if (!row) return acted(m, 4, words.noToothIsShortEnough, false);
    const text = words.text2(namedTooth(brakeOf(m), row.tooth), number(row.difference, 2));
    return acted(m, 4, text, true, { ...drumOff(partOf(m).done), tooth: row.tooth });
  },
  cardSays(4),
);

/** The tooth is left where it stands. */
export const leaveTooth = intention(
  'new-shoes.leave',
  (m: Moment) => {
    const row = fittingIn(m).row(handsIn(m));
    const text = words.text2(namedTooth(brakeOf(m), row.tooth), number(row.difference, 2));
    return acted(m, 4, text, row.slidesOn);
  },
  cardSays(4),
);

export const slideOn = intention(
  'new-shoes.drum',
  (m: Moment) => {
    const row = fittingIn(m).row(handsIn(m));
    if (row.slidesOn) {
      const change = { drumOn: true, clicks: [], silent: false };
      return acted(m, 5, words.drumOnNotPressedYet, true, change);
    }
    const over = -Math.min(row.lip, row.bore);
    const where = row.lip < row.bore ? words.theLip : words.theBore;
    return acted(m, 5, words.overByASide(where, number(Math.ceil(over * 100) / 100, 2)), false);
  },
  cardSays(5),
);

export const takeOff = intention(
  'new-shoes.off',
  (m: Moment) => put(m, { ...drumOff(partOf(m).done), touched: true }),
  words.drumOffAgain,
);

/** Presses once, or until nothing clicks. */
export const pressShoes = intention(
  'new-shoes.press',
  (m: Moment, until: 'once' | 'silent') => {
    const now = partOf(m);
    if (!now.drumOn) return acted(m, 5, words.notPressedTheDrumIs, false);
    const brake = brakeOf(m);
    const start = fittingIn(m).state(handsIn(m));
    const run = pressUntilSilent(rigOf(m), start, PRESS, until === 'once' ? 1 : 400);
    const clicks = [...now.clicks, ...run.clicks].slice(-MOST_PRESSES);
    const { tooth } = run.state;
    const teeth = clicks.reduce((a, b) => a + b, 0);
    const presses = clicks.filter((n) => n > 0).length;
    const count = wordsOf(brake).pressed(teeth, presses, stepsOf(brake).amount(tooth, teeth));
    const { silent } = run;
    const text = silent ? words.thenSilent(count) : words.pressOn(count);
    return acted(m, 5, text, silent, { clicks, tooth, silent, bedded: 0 });
  },
  cardSays(5),
);

export const setCable = intention(
  'new-shoes.cable',
  (m: Moment, cable: 'home' | 'tight') => {
    const change = { cable, contact: false, bedded: 0 };
    if (cable === 'tight') return acted(m, 6, words.leverMmOffItsStop(HELD_OFF), false, change);
    const { silent } = partOf(m);
    const text = silent ? words.leverOnItsStop : words.leverOnItsStopBut;
    return acted(m, 6, text, silent, change);
  },
  cardSays(6),
);

/** Drives on to one of the distances at which the linings are looked at; only with the drum on. */
export const beddedAt = intention(
  'new-shoes.drive',
  (m: Moment, row: number) => {
    const bedded = Math.max(0, Math.min(BED_AT.length - 1, Math.round(row)));
    const now = partOf(m);
    if (!now.drumOn || (now.bedded === bedded && now.contact)) return m;
    return put(m, { bedded, contact: true, touched: true });
  },
  (_before, after) => words.beddedInOverKm(BED_AT[partOf(after).bedded] ?? 0),
);

/** The steps before the wanted one, done: with the adjuster set back to a tooth, the pair centred, pressed. */
export function fitUpTo(m: Moment, step: ShoeStep, tooth: number): Moment {
  let next = startAgain.does(m);
  if (step > 2) next = setTooth.does(goTo.does(next, 2), tooth);
  if (step > 3) next = centre.does(goTo.does(next, 3));
  if (step > 5) next = pressShoes.does(slideOn.does(goTo.does(next, 5)), 'silent');
  return goTo.does(next, step);
}

/**
 * The station is left: a brake that was fitted, with its drum on, stays on the bench. Otherwise the
 * bench is as it was.
 */
export function settle(m: Moment): Moment {
  const { touched, drumOn } = partOf(m);
  if (!touched) return m;
  const left = put(m, { touched: false });
  return drumOn ? released(withState(left, fittingIn(m).shown(handsIn(m)))) : left;
}
