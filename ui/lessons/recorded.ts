import { lessonsRecorded as words } from '../../sim/words/en.ts';
import { brakeOf, read, sceneOf, teaching } from '../record/derive.ts';
import { type Moment, type StationId, stationNames } from '../record/moment.ts';
import { layersOf } from '../record/parts.ts';
import { layerNames } from '../record/view.ts';
import { settle } from '../stations/new-shoes/part.ts';
import { act } from './act.ts';
import type { Action } from './actions.ts';

/**
 * What was done on the stage as actions of a lesson: not move by move, but what leads from one moment to another.
 * Each action is done to the first moment as soon as it is found, so that the next ones say only what is left; what
 * is left in the end is what a lesson cannot say, and that is told.
 */
export interface Recorded {
  readonly actions: readonly Action[];
  /** What was done and no action says, a sentence each. */
  readonly untold: readonly string[];
}

type Of<K extends Action['do']> = Extract<Action, { do: K }>;
/** Actions of one kind that may lead on from a moment towards another, the likeliest first. */
type Way<K extends Action['do']> = (here: Moment, now: Moment) => readonly Of<K>[];
type Tree = Readonly<Record<string, unknown>>;

/** mm in a kilometre. */
const KM = 1e6;
/** bar in a MPa: the record has MPa, a lesson bar. */
const BAR = 10;
const near = (a: number, b: number): boolean => Math.abs(a - b) < 1e-6;
const to = (x: number, digits: number): number => Number(x.toFixed(digits));

/** Layers on the stage now. */
export const layersNow = (m: Moment): string[] => layerNames.filter((l) => layersOf(m)[l]);

const isTree = (x: unknown): x is Tree => typeof x === 'object' && x !== null;
/** Key of a scene or a condition by its path, with what stands there in either. */
type Difference = readonly [path: string, was: unknown, is: unknown];

function differences(was: unknown, is: unknown, path = ''): Difference[] {
  if (!isTree(was) || !isTree(is)) {
    const same =
      typeof was === 'number' && typeof is === 'number' ? near(was, is) : Object.is(was, is);
    return same ? [] : [[path, was, is]];
  }
  return [...new Set([...Object.keys(was), ...Object.keys(is)])].flatMap((key) =>
    differences(was[key], is[key], path ? `${path}.${key}` : key),
  );
}

/** Of a scene that is no size of the brake: its words, the states that it names, how it is looked at. */
const NO_SIZES = new Set([
  '$schema',
  'name',
  'title',
  'about',
  'source',
  'states',
  'start',
  'look',
  'across',
]);

function sizes({ bench, shelf }: Moment): Tree {
  const scene = sceneOf(bench.brake, shelf);
  const all = scene ? (read(scene).scene as unknown as Tree) : {};
  return Object.fromEntries(Object.entries(all).filter(([key]) => !NO_SIZES.has(key)));
}

const FRICTION = /^shoes\.(front|rear)\.lining\.friction$/;
const CIRCUIT = 'hydraulics.circuit';
const LIP = 'drum.lipDiameter';
/** Sizes that an action changes. */
const sayable = ([path, , is]: Difference): boolean =>
  typeof is === 'number' && (FRICTION.test(path) || path === CIRCUIT || path === LIP);

const otherSizes = (here: Moment, now: Moment): Difference[] =>
  differences(sizes(here), sizes(now));

const sizeNow = (here: Moment, now: Moment, key: string): number | undefined => {
  const found = otherSizes(here, now).find(([path]) => path === key);
  return found && sayable(found) ? (found[2] as number) : undefined;
};

/** How far linings, drum and way driven of two moments are apart, mm of lining and some for each kilometre. */
function apart(here: Moment, now: Moment): number {
  const [a, b] = [here.bench.state, now.bench.state];
  const worn = (['front', 'rear'] as const).flatMap((side) =>
    a.wear[side].length === b.wear[side].length
      ? [...a.wear[side]].map((x, i) => Math.abs(x - (b.wear[side][i] as number)))
      : [1],
  );
  const driven = Math.abs(a.distance - b.distance) / KM;
  return Math.max(...worn, Math.abs(a.drumRadius - b.drumRadius)) + driven * 1e-3;
}
/** Nearer than this no figure is another. */
const SAME = 2e-4;

const doneTo = (m: Moment, actions: readonly Action[]): Moment =>
  actions.reduce((here, a) => act(here, a).moments.at(-1) ?? here, m);

/** What lies on a cable is a matter of Park; in a lesson it pulls wherever it was pulled. */
const parked = ({ parts, station }: Moment) =>
  station === 'park' || station === 'lessons' ? parts.park : { cable: 0, moreSlack: 0 };

function condition(here: Moment, now: Moment): readonly Of<'condition'>[] {
  const [was, is] = [here.bench.state.condition, now.bench.state.condition];
  const change = {
    ...(near(was.springFactor, is.springFactor) ? {} : { springFactor: is.springFactor }),
    ...(was.adjusterSeized === is.adjusterSeized ? {} : { adjusterSeized: is.adjusterSeized }),
    ...(is.teethHold === null || was.teethHold === is.teethHold ? {} : { teethHold: is.teethHold }),
    ...(near(was.keptPressure, is.keptPressure)
      ? {}
      : { keptPressure: to(BAR * is.keptPressure, 6) }),
    ...(near(was.lean.front, is.lean.front) ? {} : { leanFront: is.lean.front }),
    ...(near(was.lean.rear, is.lean.rear) ? {} : { leanRear: is.lean.rear }),
    ...(near(was.offCentre, is.offCentre) ? {} : { offCentre: is.offCentre }),
    ...(near(was.oval, is.oval) ? {} : { oval: is.oval }),
  };
  return Object.keys(change).length > 0 ? [{ do: 'condition', ...change }] : [];
}

function wear(here: Moment, now: Moment): readonly Of<'wear'>[] {
  const km = (now.bench.state.distance - here.bench.state.distance) / KM;
  if (km < 0.05) return [];
  const { legs } = now.bench.life;
  const last = legs.at(-1);
  const stretch = last?.kind === 'drive' ? last.stretch : null;
  const back = stretch?.road.reverse ?? null;
  const how = { do: 'wear', ...(back === null ? {} : { reverse: to(100 * back, 3) }) } as const;
  const aim: readonly Of<'wear'>[] =
    legs.length !== 1 || !stretch || stretch.distance !== null
      ? []
      : [{ ...how, to: stretch.toNextClick ? 'click' : 'limit' }];
  const far = { ...how, km: to(km, near(km, to(km, 1)) ? 1 : 6) };
  return [...aim, far, { ...far, past: true }];
}

function tooth(here: Moment, now: Moment): readonly Of<'tooth'>[] {
  const aim = now.bench.state.tooth;
  const reaches = (actions: readonly Action[]): boolean =>
    doneTo(here, actions).bench.state.tooth === aim;
  // A pedal that is down may have taken the tooth up by itself, or take another one up when it is pressed again.
  const pressed: readonly Action[] = now.pedal > 0 ? [{ do: 'pedal', bar: now.pedal }] : [];
  if (reaches(pressed)) return [];
  const before = { do: 'tooth', to: aim - 1 } as const;
  return aim > 0 &&
    !reaches([{ do: 'tooth', to: aim }, ...pressed]) &&
    reaches([before, ...pressed])
    ? [before]
    : [{ do: 'tooth', to: aim }];
}

function show(here: Moment, now: Moment): readonly Of<'show'>[] {
  const [was, is] = [layersNow(here), layersNow(now)];
  const { magnification, revealed, tilt } = now.view;
  const told = layersOf(now).names ? revealed : null;
  const names = differences(here.view.revealed, told).length > 0 && told !== null;
  const off = was.filter((l) => !is.includes(l));
  // A show of layers says all that are on.
  const layers = names || off.length > 0 || is.some((l) => !was.includes(l));
  const change = {
    ...(layers ? { on: is } : {}),
    ...(layers && off.length > 0 ? { off } : {}),
    ...(here.view.magnification === magnification ? {} : { fan: magnification }),
    ...(names ? { names: [...told] } : {}),
    ...(here.view.tilt.holdDown === tilt.holdDown ? {} : { holdDown: tilt.holdDown }),
  };
  return Object.keys(change).length > 0 ? [{ do: 'show', ...change }] : [];
}

const WAYS = { 1: 'forward', 0: 'stands', '-1': 'backward' } as const;

/** One for each kind of action: a kind left out does not compile. */
const ways: { readonly [K in Action['do']]: Way<K> } = {
  brake: (here, now) => {
    const { brake } = now.bench;
    const names = brake.kind === 'scene' ? [brake.name] : [...teaching.keys()];
    const others = otherSizes(here, now).filter((d) => !sayable(d)).length;
    if (others === 0) return [];
    const ways = names.map((name): Of<'brake'> => ({ do: 'brake', name }));
    // One's own brake may be a teaching brake but for what a lesson changes on it.
    return ways.filter((a) => otherSizes(doneTo(here, [a]), now).every(sayable));
  },
  friction: (here, now) => {
    const front = sizeNow(here, now, 'shoes.front.lining.friction');
    const rear = sizeNow(here, now, 'shoes.rear.lining.friction');
    if (front === undefined && rear === undefined) return [];
    return [
      {
        do: 'friction',
        ...(front === undefined ? {} : { front }),
        ...(rear === undefined ? {} : { rear }),
      },
    ];
  },
  circuit: (here, now) => {
    const mm3PerMPa = sizeNow(here, now, CIRCUIT);
    return mm3PerMPa === undefined ? [] : [{ do: 'circuit', mm3PerMPa }];
  },
  state: (here, now) => {
    const { standing } = now.bench;
    const names = brakeOf(here).states.map((s) => s.name);
    const first = standing === null ? [] : [standing];
    return [...new Set([...first, ...names])]
      .filter((name) => names.includes(name))
      .map((name) => ({ do: 'state', name }));
  },
  shoes: (here, now) => {
    const { drumRadius, tooth } = now.bench.state;
    const lip = sizeNow(here, now, LIP);
    return [
      {
        do: 'shoes',
        bore: to(2 * drumRadius, 6),
        ...(lip === undefined ? {} : { lip }),
        tooth,
      },
    ];
  },
  swap: () => [{ do: 'swap' }],
  wear,
  condition,
  lever: (here, now) => {
    const [was, is] = [here.bench.state.leverOffStop, now.bench.state.leverOffStop];
    return near(was, is) ? [] : [{ do: 'lever', mm: to(is, 3) }];
  },
  drum: (here, now) =>
    here.turning === now.turning ? [] : [{ do: 'drum', way: WAYS[now.turning] }],
  hold: (here, now) => {
    const [was, is] = [here.bench.held, now.bench.held];
    const change = {
      ...(was.hubRust === is.hubRust ? {} : { hubRust: is.hubRust }),
      ...(was.liningsRusted === is.liningsRusted ? {} : { liningsRusted: is.liningsRusted }),
    };
    return Object.keys(change).length > 0 ? [{ do: 'hold', ...change }] : [];
  },
  cable: (here, now) => {
    const [was, is] = [parked(here), parked(now)];
    const slack = near(was.moreSlack, is.moreSlack) ? {} : { slack: to(is.moreSlack, 3) };
    return near(was.cable, is.cable) && !('slack' in slack)
      ? []
      : [{ do: 'cable', newton: to(is.cable, 1), ...slack }];
  },
  cool: (here, now) =>
    now.bench.state.temperature < here.bench.state.temperature - 0.05 ? [{ do: 'cool' }] : [],
  // A hill leaves nothing but a warm drum behind: that is said as it is.
  descend: () => [],
  grow: (here, now) => {
    const kelvin = now.bench.state.temperature - here.bench.state.temperature;
    return kelvin > 0.05 ? [{ do: 'grow', kelvin: to(Math.min(400, kelvin), 3) }] : [];
  },
  tooth,
  try: (here, now) => {
    const { tried } = now.parts['drum-off'];
    const same = differences(here.parts['drum-off'].tried, tried).length === 0;
    return tried === null || tried.what === 'break' || same
      ? []
      : [{ do: 'try', what: tried.what }];
  },
  release: (here, now) => (here.pedal > 0 && now.pedal === 0 ? [{ do: 'release' }] : []),
  pedal: (here, now) =>
    now.pedal > 0 && !near(here.pedal, now.pedal) ? [{ do: 'pedal', bar: to(now.pedal, 2) }] : [],
  show,
  // These two leave nothing on the stage; they are put between two things done in one step.
  wait: () => [],
  note: () => [],
};

/** Before the linings are, and after: in this order they are done. */
const BEFORE = ['brake', 'friction', 'circuit'] as const;
const AFTER = Object.keys(ways).slice(
  Object.keys(ways).indexOf('condition'),
) as readonly Action['do'][];
const NO_WAY: readonly Action[] = [];

const waysOf = (kind: Action['do'], here: Moment, now: Moment): readonly Action[] =>
  (ways[kind] as (here: Moment, now: Moment) => readonly Action[])(here, now);

/** What leads to linings, drum and distance as they are: the plainest that does, else what comes nearest. */
function toLinings(here: Moment, now: Moment): readonly Action[] {
  let best = NO_WAY;
  let least = apart(here, now);
  const reached = (actions: readonly Action[]): Moment | null => {
    try {
      return doneTo(here, actions);
    } catch {
      // A brake that cannot be brought there by this is brought there by another way, or not at all.
      return null;
    }
  };
  const tried = (actions: readonly Action[]): boolean => {
    const there = reached(actions);
    const off = there ? apart(there, now) : Number.POSITIVE_INFINITY;
    if (off < least - SAME / 10) {
      least = off;
      best = actions;
    }
    return off < SAME;
  };
  if (least < SAME) return NO_WAY;
  const bases = (['swap', 'state', 'shoes'] as const).flatMap((kind) =>
    waysOf(kind, here, now).map((a) => [a]),
  );
  const driven = (base: readonly Action[]): boolean => {
    const from = reached(base);
    if (!from) return false;
    return ways.wear(from, now).some((drive) => {
      // What is out of order may have been so on the way, or only since.
      const ill = ways.condition(from, now);
      return (
        tried([...base, ...ill, drive]) ||
        (ill.length > 0 && tried([...base, drive])) ||
        (base.length === 0 && tried([drive, { do: 'swap' }]))
      );
    });
  };
  // A state that was not put on since is not tried first: to make it takes longer than to drive on.
  const same = now.bench.standing === null || now.bench.standing === here.bench.standing;
  if (same && driven(NO_WAY)) return best;
  if (bases.some(tried) || (!same && driven(NO_WAY))) return best;
  bases.some(driven);
  return best;
}

/** Stations whose drawing a lesson does not have. */
const OWN_DRAWING: readonly StationId[] = ['order', 'compare', 'apart'];
const MOST_TOLD = 12;
const plainly = (x: unknown): string => (typeof x === 'number' ? String(to(x, 6)) : `${x ?? '–'}`);

/** What is still another than on the stage when all was said that can be. */
function leftOver(here: Moment, now: Moment): string[] {
  const [a, b] = [here.bench, now.bench];
  const [was, is] = [a.state, b.state];
  const out: string[] = otherSizes(here, now).map(([path, x, y]) =>
    words.size(path, plainly(x), plainly(y)),
  );
  const tell = (differs: boolean, text: string): void => {
    if (differs) out.push(text);
  };
  tell(b.fault !== a.fault, words.fault);
  tell(differences(a.adjuster, b.adjuster).length > 0, words.adjuster);
  tell(differences(a.across, b.across).length > 0, words.otherWheel);
  tell(apart(here, now) >= SAME, words.linings);
  tell(was.tooth !== is.tooth, words.tooth(is.tooth));
  tell(Math.abs(was.temperature - is.temperature) > 0.05, words.temperature(to(is.temperature, 0)));
  tell(differences(was.film, is.film).length > 0, words.film);
  const told = new Set(
    differences(was.condition, is.condition).map(([path]) => path.split('.')[0]),
  );
  for (const key of told) out.push(words.condition(words.conditions[key ?? ''] ?? key ?? ''));
  tell(a.held.aside !== b.held.aside, words.aside);
  tell(now.parts['drum-off'].tried?.what === 'break', words.brokenLoose);
  tell(now.station === 'park' && now.parts.park.fault !== 'none', words.rightWheel);
  tell(now.station === 'park' && now.parts.park.loose !== null, words.rolls);
  tell(now.view.tilt.groove !== here.view.tilt.groove, words.groove);
  tell(now.view.bending !== here.view.bending, words.bending);
  tell(now.hands.open, words.hands);
  tell(now.station === 'new-shoes' && now.parts['new-shoes'].touched, words.notOn);
  tell(OWN_DRAWING.includes(now.station), words.drawing(stationNames[now.station]));
  return out.slice(0, MOST_TOLD);
}

/** What has to be done from one moment to come to another, and what of it a lesson cannot say. */
export function recordedBetween(start: Moment, on: Moment): Recorded {
  const fitted = on.station === 'new-shoes' ? settle(on) : on;
  // Whose drum is not on yet is told so; else the fitted shoes are on the brake.
  const now = fitted.bench === on.bench ? on : fitted;
  const actions: Action[] = [];
  let here = start;
  const put = (more: readonly Action[]): void => {
    actions.push(...more);
    here = doneTo(here, more);
  };
  for (const kind of BEFORE) put(waysOf(kind, here, now).slice(0, 1));
  put(toLinings(here, now));
  for (const kind of AFTER) put(waysOf(kind, here, now).slice(0, 1));
  return { actions, untold: leftOver(here, now) };
}

/** The record with layers on in the lesson, as its step looks at it. */
export function withLayersOn(m: Moment, on: readonly string[]): Moment {
  const layers = Object.fromEntries(layerNames.map((l) => [l, on.includes(l)])) as ReturnType<
    typeof layersOf
  >;
  return { ...m, view: { ...m.view, layers: { ...m.view.layers, [m.station]: layers } } };
}
