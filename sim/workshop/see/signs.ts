import { seeSigns as texts } from '../../words/en.ts';
import type { ExaminationId } from '../examinations.ts';
import type { FindingName, FindingWords, Observed } from '../finding-text.ts';

/**
 * What people notice of their own car, as taps: each sign is read from what an examination of an axle
 * finds, so that the same readings that a fault gives on the bench tell which fault fits what is seen.
 */

/** What the examinations of one axle find. */
export type Findings = Readonly<Record<ExaminationId, readonly Observed[]>> & {
  /** How much the torque on the roller swings in a turn of the worse drum, % of its greatest. */
  readonly swing: number;
};

/** A value that was chosen, or a figure. A sign may show one of several values on two wheels. */
export type SignValue = readonly string[] | number;

export interface Sign {
  readonly key: SignKey;
  /** Examination that shows it. */
  readonly by: ExaminationId;
  /** The question, as one asks somebody beside a car. */
  readonly ask: string;
  /** Under it: how to find out. */
  readonly how: string;
  /** Short, on what was said. */
  readonly name: string;
  readonly values: readonly (readonly [value: string, label: string])[] | Figure;
  /** How sure people are of it: what a wrong one costs, in the logarithm of odds. */
  readonly sure: number;
  /** What this axle shows, the sound one beside it. */
  of(found: Findings, sound: Findings): SignValue;
}

export interface Figure {
  readonly unit: string;
  readonly least: number;
  readonly most: number;
  readonly step: number;
  readonly digits: number;
  /** What a reading is good to; and the share of it, where that is more. */
  readonly good: number;
  readonly share: number;
}

export const isFigure = (v: Sign['values']): v is Figure => !Array.isArray(v);

export type SignKey =
  | 'hot'
  | 'heat'
  | 'travel'
  | 'feel'
  | 'pumped'
  | 'first'
  | 'clicks'
  | 'notches'
  | 'turns'
  | 'ways'
  | 'force'
  | 'rubs'
  | 'slides'
  | 'rocks'
  | 'tap'
  | 'comes'
  | 'touch'
  | 'release'
  | 'bleed'
  | 'lever'
  | 'flexed'
  | 'bite'
  | 'pull'
  | 'back'
  | 'parked'
  | 'oneway'
  | 'holder'
  | 'shoes'
  | 'pads'
  | 'round'
  | 'unlike'
  | 'share'
  | 'backshare'
  | 'swing'
  | 'swings'
  | 'thin'
  | 'drumsize'
  | 'tooth'
  | 'pawl'
  | 'wet'
  | 'mark';

const wheels = ['left', 'right'] as const;

/** A finding of one wheel by its name. */
function of(
  list: readonly Observed[],
  wheel: 'left' | 'right',
  what: FindingName | '',
): Observed | undefined {
  const named = (side: string) => (what === '' ? side : `${side}, ${what}`);
  return list.find((o) => o.name === named(wheel) || o.name === named('both'));
}
const number = (o: Observed | undefined): number => (o?.kind === 'number' ? o.value : Number.NaN);
const words = (o: Observed | undefined): FindingWords | '' => (o?.kind === 'words' ? o.says : '');
const plain = (list: readonly Observed[], what: FindingName): number =>
  number(list.find((o) => o.name === what));

/** Values of both wheels, those that are not as on a sound one first; each once. */
function both(of: (wheel: 'left' | 'right') => string, sound: string): string[] {
  const all = [...new Set(wheels.map(of))];
  const odd = all.filter((v) => v !== sound);
  return odd.length > 0 ? odd : [sound];
}

/** The wheel's figure that is farthest from the sound one's. */
function farthest(of: (wheel: 'left' | 'right') => number, sound: number): number {
  const [a, b] = [of('left'), of('right')];
  return Math.abs(a - sound) > Math.abs(b - sound) ? a : b;
}

/** Rise of a drum from which a hand takes it for too hot, K: skin is burnt within seconds by metal of some 60 °C (common practice). */
const TOO_HOT = 45;
/** A driver does not notice less, K. */
const WARM = 15;
/** More travel than usual that a foot notices, mm; half way; nearly to the floor. */
const NOTICED = 3;
const FAR = 15;
const FLOOR = 45;
/** Share of the sound torque by which a foot, or rollers, take a brake for weak or strong. */
const WEAK = 0.88;
const STRONG = 1.15;
/** Unlike by so much of the stronger one, a vehicle pulls (imbalance on rollers that is told; from memory). */
const PULLS = 0.12;

const torque = (f: Findings, wheel: 'left' | 'right', what: FindingName): number => {
  const o = of(f.roller, wheel, what);
  return o?.kind === 'words' ? 4000 : number(o);
};
const forward = (f: Findings, w: 'left' | 'right') => torque(f, w, 'pedal forward');

const rise = (f: Findings, w: 'left' | 'right'): number => {
  const hotter = of(f.heat, w, 'hotter by');
  if (hotter) return number(hotter);
  return words(of(f.heat, w, '')) === 'too hot to touch' ? 300 : 0;
};
const hands = (f: Findings, w: 'left' | 'right', way: 'forward' | 'backward'): number => {
  const o = of(f.turn, w, way);
  if (!o) return 0;
  return o.kind === 'words' ? 100 : o.value;
};
const stiffest = (f: Findings, w: 'left' | 'right'): number =>
  Math.max(hands(f, w, 'forward'), hands(f, w, 'backward'));

/** A light rub up to here, N·m, and stiff from there on (own choice; some 20 and 45 N at a tyre). */
const RUBS = 5.5;
const STIFF = 12;

const turnsOf = (f: Findings, w: 'left' | 'right'): string => {
  if (words(of(f.turn, w, 'turns')).startsWith('not at all')) return 'jerk';
  const most = stiffest(f, w);
  // Between a rub and stiff hands differ: what is near is told either way.
  if (most >= RUBS && most < STIFF) return 'stiff|rubs';
  return most === 0 ? 'freely' : most < RUBS ? 'rubs' : most < 60 ? 'stiff' : 'not';
};

const biteOf = (share: number): string =>
  share < WEAK ? 'weak' : share > STRONG ? 'strong' : 'right';

/** What a sign is called and asked by. */
interface SignText {
  readonly name: string;
  readonly ask: string;
  readonly how: string;
}

const sign = <V extends string>(
  key: SignKey,
  by: ExaminationId,
  text: SignText & { readonly values: Readonly<Record<V, string>> },
  values: readonly V[],
  reads: Sign['of'],
  sure = 2.4,
): Sign => {
  const { name, ask, how } = text;
  const labelled = values.map((value) => [value, text.values[value]] as const);
  return { key, by, name, ask, how, values: labelled, of: reads, sure };
};

const measured = (
  key: SignKey,
  by: ExaminationId,
  { name, ask, how }: SignText,
  values: Figure,
  reads: Sign['of'],
): Sign => ({ key, by, name, ask, how, values, of: reads, sure: 2.4 });

const figure = (
  unit: string,
  least: number,
  most: number,
  step: number,
  digits: number,
  good: number,
  share = 0,
): Figure => ({ unit, least, most, step, digits, good, share });

export const signs: readonly Sign[] = [
  sign('hot', 'heat', texts.hot, ['none', 'one', 'both', 'all'], (f) => {
    const warm = wheels.filter((w) => rise(f, w) > WARM).length;
    const all = f.heat.some((o) => o.name === 'front wheels' && words(o) === 'warm too');
    return [all ? 'all' : warm === 2 ? 'both' : warm === 1 ? 'one' : 'none'];
  }),
  sign(
    'heat',
    'heat',
    texts.heat,
    ['cool', 'warm', 'too hot'],
    (f) => {
      const most = Math.max(rise(f, 'left'), rise(f, 'right'));
      return [most < WARM ? 'cool' : most < TOO_HOT ? 'warm' : 'too hot'];
    },
    1.6,
  ),
  sign('travel', 'pump', texts.travel, ['short', 'ever', 'long', 'half', 'floor'], (f, s) => {
    const more = plain(f.pump, 'at 40 bar') - plain(s.pump, 'at 40 bar');
    return [
      more < -NOTICED
        ? 'short'
        : more < NOTICED
          ? 'ever'
          : more < FAR
            ? 'long'
            : more < FLOOR
              ? 'half'
              : 'floor',
    ];
  }),
  sign('feel', 'story', texts.feel, ['firm', 'springy', 'throbs', 'wooden', 'sinks'], (f, s) => {
    if (f.story.some((o) => words(o) === 'far and springy')) return ['springy'];
    if (f.story.some((o) => words(o) === 'throbs')) return ['throbs'];
    const weak = wheels.every((w) => forward(f, w) < 0.75 * forward(s, w));
    return [
      weak && Math.abs(plain(f.pump, 'at 40 bar') - plain(s.pump, 'at 40 bar')) < NOTICED
        ? 'wooden'
        : 'firm',
    ];
  }),
  sign('pumped', 'pump', texts.pumped, ['up', 'same'], (f, s) => {
    const up = (x: Findings) => plain(x.pump, 'pumped quickly up by');
    return [up(f) > up(s) + NOTICED ? 'up' : 'same'];
  }),
  sign('first', 'pump', texts.first, ['like', 'long'], (f) => [
    plain(f.pump, 'at 40 bar') - plain(f.pump, 'next press') > NOTICED ? 'long' : 'like',
  ]),
  sign(
    'clicks',
    'pump',
    texts.clicks,
    ['none', 'heard'],
    (f) => [words(f.pump.find((o) => o.name === 'clicks')) === 'heard' ? 'heard' : 'none'],
    1.4,
  ),
  measured('notches', 'notches', texts.notches, figure('', 0, 30, 1, 1, 0.9), (f) =>
    plain(f.notches, 'notches'),
  ),
  sign('turns', 'turn', texts.turns, ['freely', 'rubs', 'stiff', 'not', 'jerk'], (f) =>
    both((w) => turnsOf(f, w), 'freely').flatMap((v) => v.split('|')),
  ),
  sign('ways', 'turn', texts.ways, ['alike', 'unlike'], (f) =>
    both((w) => {
      const [a, b] = [hands(f, w, 'forward'), hands(f, w, 'backward')];
      return Math.max(a, b) > 1.6 * Math.min(a, b) && Math.max(a, b) > 1 ? 'unlike' : 'alike';
    }, 'alike'),
  ),
  measured('force', 'turn', texts.force, figure('N', 0, 800, 10, 0, 15, 0.35), (f) =>
    Math.max(stiffest(f, 'left'), stiffest(f, 'right')),
  ),
  sign('rubs', 'turn', texts.rubs, ['no', 'once', 'twice'], (f) =>
    both((w) => {
      const r = words(of(f.turn, w, 'rubs'));
      return r === 'once a turn' ? 'once' : r === 'twice a turn' ? 'twice' : 'no';
    }, 'no'),
  ),
  sign('slides', 'turn', texts.slides, ['off', 'some', 'not'], (f) =>
    both((w) => {
      const d = words(of(f.turn, w, 'drum'));
      return d === 'slides off' ? 'off' : d === 'slides, then stops' ? 'some' : 'not';
    }, 'off'),
  ),
  sign('rocks', 'rock', texts.rocks, ['no', 'yes'], (f) =>
    both((w) => (of(f.rock, w, 'wheel rocks') ? 'yes' : 'no'), 'no'),
  ),
  sign(
    'tap',
    'rock',
    texts.tap,
    ['rings', 'dull'],
    (f) => both((w) => (words(of(f.rock, w, 'drum')) === 'dull' ? 'dull' : 'rings'), 'rings'),
    1.6,
  ),
  sign('comes', 'press', texts.comes, ['smooth', 'jump'], (f) =>
    both(
      (w) => (words(of(f.press, w, 'comes on')).startsWith('late') ? 'jump' : 'smooth'),
      'smooth',
    ),
  ),
  measured('touch', 'press', texts.touch, figure('bar', 0, 40, 0.5, 1, 0.5), (f, s) => {
    const at = (x: Findings, w: 'left' | 'right'): number => {
      const o = of(x.press, w, 'drags from');
      if (o) return number(o);
      return words(of(x.press, w, 'drags')) === 'already' ? 0 : 40;
    };
    return farthest((w) => at(f, w), at(s, 'right'));
  }),
  sign('release', 'press', texts.release, ['once', 'seconds', 'not'], (f) =>
    both((w) => {
      if (of(f.press, w, 'goes back')) return 'not';
      return number(of(f.press, w, 'goes back in')) > 0.9 ? 'seconds' : 'once';
    }, 'once'),
  ),
  sign('bleed', 'bleed', texts.bleed, ['nothing', 'frees'], (f) =>
    both((w) => (words(of(f.bleed, w, '')) === 'nothing changes' ? 'nothing' : 'frees'), 'nothing'),
  ),
  sign('lever', 'lever', texts.lever, ['home', 'off'], (f) =>
    both((w) => (of(f.lever, w, 'off its stop') ? 'off' : 'home'), 'home'),
  ),
  sign('flexed', 'lever', texts.flexed, ['comes', 'slow'], (f) =>
    both((w) => (words(of(f.lever, w, 'flexed')) === 'comes slowly' ? 'slow' : 'comes'), 'comes'),
  ),
  sign(
    'bite',
    'roller',
    texts.bite,
    ['right', 'weak', 'strong'],
    (f, s) => both((w) => biteOf(forward(f, w) / forward(s, w)), 'right'),
    1.8,
  ),
  sign(
    'pull',
    'roller',
    texts.pull,
    ['no', 'yes'],
    (f) => {
      const [a, b] = [forward(f, 'left'), forward(f, 'right')];
      return [1 - Math.min(a, b) / Math.max(a, b) > PULLS ? 'yes' : 'no'];
    },
    1.6,
  ),
  sign('back', 'roller', texts.back, ['alike', 'less', 'more'], (f) =>
    both((w) => {
      const r = torque(f, w, 'pedal backward') / forward(f, w);
      return r < 0.75 ? 'less' : r > 1.33 ? 'more' : 'alike';
    }, 'alike'),
  ),
  sign(
    'parked',
    'roller',
    texts.parked,
    ['right', 'weak', 'strong'],
    (f, s) =>
      both((w) => biteOf(torque(f, w, 'parked forward') / torque(s, w, 'parked forward')), 'right'),
    1.8,
  ),
  sign('oneway', 'roller', texts.oneway, ['alike', 'one'], (f) =>
    both((w) => {
      const [a, b] = [torque(f, w, 'parked forward'), torque(f, w, 'parked backward')];
      return Math.min(a, b) < 0.75 * Math.max(a, b) && Math.max(a, b) > 20 ? 'one' : 'alike';
    }, 'alike'),
  ),
  measured('unlike', 'roller', texts.unlike, figure('%', 0, 100, 5, 0, 8), (f) => {
    const [a, b] = [forward(f, 'left'), forward(f, 'right')];
    return 100 * (1 - Math.min(a, b) / Math.max(a, b));
  }),
  measured(
    'share',
    'roller',
    texts.share,
    figure('%', 0, 400, 10, 0, 8, 0.12),
    (f, s) => 100 * farthest((w) => forward(f, w) / forward(s, w), 1),
  ),
  measured(
    'backshare',
    'roller',
    texts.backshare,
    figure('%', 0, 400, 10, 0, 12, 0.15),
    (f) => 100 * farthest((w) => torque(f, w, 'pedal backward') / forward(f, w), 1),
  ),
  measured('swing', 'roller', texts.swing, figure('%', 0, 100, 5, 0, 10), (f) => f.swing),
  measured('holder', 'off', texts.holder, figure('', 0, 20, 1, 0, 0.7), (f) => {
    const at = (w: 'left' | 'right'): number => {
      const o = of(f.off, w, 'teeth back');
      return o?.kind === 'words' ? 20 : number(o);
    };
    return farthest(at, 0);
  }),
  sign('shoes', 'off', texts.shoes, ['both', 'one'], (f) =>
    both((w) => (words(of(f.off, w, 'shoes')) === 'rock alike' ? 'both' : 'one'), 'both'),
  ),
  sign('pads', 'off', texts.pads, ['smooth', 'grooved'], (f) =>
    both((w) => (words(of(f.off, w, 'pads')) === 'grooved' ? 'grooved' : 'smooth'), 'smooth'),
  ),
  sign('round', 'measure', texts.round, ['same', 'differs'], (f) =>
    both(
      (w) =>
        number(of(f.measure, w, 'greatest')) - number(of(f.measure, w, 'least bore')) > 0.05
          ? 'differs'
          : 'same',
      'same',
    ),
  ),
  sign('swings', 'dial', texts.swings, ['still', 'swings'], (f) =>
    both((w) => (number(of(f.dial, w, 'swing')) > 0.08 ? 'swings' : 'still'), 'still'),
  ),
  sign(
    'thin',
    'measure',
    texts.thin,
    ['lead', 'trail', 'alike', 'gone'],
    (f) =>
      both((w) => {
        const [a, b] = [
          number(of(f.measure, w, 'front lining')),
          number(of(f.measure, w, 'rear lining')),
        ];
        return Math.max(a, b) < 0.3
          ? 'gone'
          : a < b - 0.2
            ? 'lead'
            : b < a - 0.2
              ? 'trail'
              : 'alike';
      }, 'lead'),
    1.6,
  ),
  sign(
    'drumsize',
    'measure',
    texts.drumsize,
    ['within', 'large'],
    (f, s) => {
      const at = (x: Findings, w: 'left' | 'right') => number(of(x.measure, w, 'greatest'));
      return both((w) => (at(f, w) > at(s, w) + 0.3 ? 'large' : 'within'), 'within');
    },
    1.6,
  ),
  measured('tooth', 'tooth', texts.tooth, figure('', 0, 40, 1, 0, 0.7), (f, s) =>
    farthest((w) => number(of(f.tooth, w, 'tooth')), number(of(s.tooth, 'right', 'tooth'))),
  ),
  sign('pawl', 'tooth', texts.pawl, ['drops', 'stiff', 'free', 'other'], (f) =>
    both((w) => {
      const l = words(of(f.tooth, w, 'lever'));
      return l === 'stiff'
        ? 'stiff'
        : l === 'swings free'
          ? 'free'
          : l === 'of the other side'
            ? 'other'
            : 'drops';
    }, 'drops'),
  ),
  sign('wet', 'boots', texts.wet, ['dry', 'fluid', 'oil'], (f) =>
    both((w) => {
      const b = words(of(f.boots, w, ''));
      return b === 'boot wet' ? 'fluid' : b === 'dry' ? 'dry' : 'oil';
    }, 'dry'),
  ),
  sign('mark', 'bore', texts.mark, ['same', 'other'], (f) => [
    Math.abs(number(of(f.bore, 'left', '')) - number(of(f.bore, 'right', ''))) > 0.1
      ? 'other'
      : 'same',
  ]),
];

export const signOf = (key: string): Sign | undefined => signs.find((s) => s.key === key);

/** What a sound axle shows of a sign, for the one that is read. */
export type Shown = Readonly<Record<SignKey, SignValue>>;

/**
 * All that an axle shows.
 *
 * @param tyre its radius, mm: what is felt by hand is told as a pull at the tyre, N
 */
export function shownBy(found: Findings, sound: Findings, tyre: number): Shown {
  const all = Object.fromEntries(signs.map((s) => [s.key, s.of(found, sound)]));
  return { ...all, force: (1000 * (all['force'] as number)) / tyre } as Record<SignKey, SignValue>;
}
