import type { ExaminationId } from '../examinations.ts';
import type { Observed } from '../examine.ts';

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
  what: string,
): Observed | undefined {
  const named = (side: string) => (what === '' ? side : `${side}, ${what}`);
  return list.find((o) => o.name === named(wheel) || o.name === named('both'));
}
const number = (o: Observed | undefined): number => (o?.kind === 'number' ? o.value : Number.NaN);
const words = (o: Observed | undefined): string => (o?.kind === 'words' ? o.says : '');
const plain = (list: readonly Observed[], what: string): number =>
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

const torque = (f: Findings, wheel: 'left' | 'right', what: string): number => {
  const o = of(f.roller, wheel, what);
  return o?.kind === 'words' ? 4000 : number(o);
};
const forward = (f: Findings, w: 'left' | 'right') => torque(f, w, 'pedal forward');

const rise = (f: Findings, w: 'left' | 'right'): number => {
  const hotter = of(f.heat, w, 'hotter by');
  if (hotter) return number(hotter);
  return words(of(f.heat, w, '')) === 'too hot to touch' ? 300 : 0;
};
const hands = (f: Findings, w: 'left' | 'right', way: string): number => {
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

const sign = (
  key: SignKey,
  by: ExaminationId,
  name: string,
  ask: string,
  how: string,
  values: Sign['values'],
  reads: Sign['of'],
  sure = 2.4,
): Sign => ({ key, by, name, ask, how, values, of: reads, sure });

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
  sign(
    'hot',
    'heat',
    'Hot',
    'After a drive with little braking: which drums are hot?',
    'Hold a hand near each, not on it.',
    [
      ['none', 'none'],
      ['one', 'one rear'],
      ['both', 'both rear'],
      ['all', 'all four'],
    ],
    (f) => {
      const warm = wheels.filter((w) => rise(f, w) > WARM).length;
      const all = f.heat.some((o) => o.name === 'front wheels' && words(o) === 'warm too');
      return [all ? 'all' : warm === 2 ? 'both' : warm === 1 ? 'one' : 'none'];
    },
  ),
  sign(
    'heat',
    'heat',
    'How hot',
    'How hot?',
    'By feel from near, or with a thermometer that needs no touch.',
    [
      ['cool', 'cool'],
      ['warm', 'warm'],
      ['too hot', 'too hot to touch'],
    ],
    (f) => {
      const most = Math.max(rise(f, 'left'), rise(f, 'right'));
      return [most < WARM ? 'cool' : most < TOO_HOT ? 'warm' : 'too hot'];
    },
    1.6,
  ),
  sign(
    'travel',
    'pump',
    'Pedal goes',
    'How far does the pedal go at a firm press?',
    'Against what you are used to.',
    [
      ['short', 'shorter'],
      ['ever', 'as ever'],
      ['long', 'longer'],
      ['half', 'half way'],
      ['floor', 'to the floor'],
    ],
    (f, s) => {
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
    },
  ),
  sign(
    'feel',
    'story',
    'Pedal feels',
    'How does the pedal feel?',
    'Engine running, a firm press, held.',
    [
      ['firm', 'firm'],
      ['springy', 'springy, soft'],
      ['throbs', 'pulses, throbs'],
      ['wooden', 'hard, and brakes badly'],
      ['sinks', 'sinks slowly'],
    ],
    (f, s) => {
      if (f.story.some((o) => words(o) === 'far and springy')) return ['springy'];
      if (f.story.some((o) => words(o) === 'throbs')) return ['throbs'];
      const weak = wheels.every((w) => forward(f, w) < 0.75 * forward(s, w));
      return [
        weak && Math.abs(plain(f.pump, 'at 40 bar') - plain(s.pump, 'at 40 bar')) < NOTICED
          ? 'wooden'
          : 'firm',
      ];
    },
  ),
  sign(
    'pumped',
    'pump',
    'Pumped',
    'Two or three quick presses: does the pedal come up?',
    'Standing still.',
    [
      ['up', 'comes up'],
      ['same', 'no change'],
    ],
    (f, s) => {
      const up = (x: Findings) => plain(x.pump, 'pumped quickly up by');
      return [up(f) > up(s) + NOTICED ? 'up' : 'same'];
    },
  ),
  sign(
    'first',
    'pump',
    'First press',
    'The first press after a night: like the next?',
    'Parked on the lever.',
    [
      ['like', 'like the next'],
      ['long', 'long, then good'],
    ],
    (f) => [plain(f.pump, 'at 40 bar') - plain(f.pump, 'next press') > NOTICED ? 'long' : 'like'],
  ),
  sign(
    'clicks',
    'pump',
    'Clicks',
    'Do you hear the adjuster click as you press?',
    'Quiet place, window open.',
    [
      ['none', 'none'],
      ['heard', 'yes'],
    ],
    (f) => [words(f.pump.find((o) => o.name === 'clicks')) === 'heard' ? 'heard' : 'none'],
    1.4,
  ),
  sign(
    'notches',
    'notches',
    'Notches',
    'How many notches does the hand lever take to a firm pull?',
    'Count its clicks.',
    figure('', 0, 30, 1, 1, 0.9),
    (f) => plain(f.notches, 'notches'),
  ),
  sign(
    'turns',
    'turn',
    'By hand',
    'On stands: how does the worst wheel turn by hand?',
    'Nothing pressed, lever down, out of gear.',
    [
      ['freely', 'freely'],
      ['rubs', 'light rub'],
      ['stiff', 'stiff'],
      ['not', 'not at all'],
      ['jerk', 'not, then one jerk'],
    ],
    (f) => both((w) => turnsOf(f, w), 'freely').flatMap((v) => v.split('|')),
  ),
  sign(
    'ways',
    'turn',
    'Both ways',
    'Forwards and backwards alike?',
    'The same wheel.',
    [
      ['alike', 'alike'],
      ['unlike', 'one way much stiffer'],
    ],
    (f) =>
      both((w) => {
        const [a, b] = [hands(f, w, 'forward'), hands(f, w, 'backward')];
        return Math.max(a, b) > 1.6 * Math.min(a, b) && Math.max(a, b) > 1 ? 'unlike' : 'alike';
      }, 'alike'),
  ),
  sign(
    'force',
    'turn',
    'Stiff',
    'What pull at the tyre keeps it turning?',
    'A luggage scale on a strap round the tyre; 10 N is a kilogram.',
    figure('N', 0, 800, 10, 0, 15, 0.35),
    (f) => Math.max(stiffest(f, 'left'), stiffest(f, 'right')),
  ),
  sign(
    'rubs',
    'turn',
    'Rubs',
    'Does it rub at places as it goes round?',
    'One slow turn.',
    [
      ['no', 'no'],
      ['once', 'once a turn'],
      ['twice', 'twice a turn'],
    ],
    (f) =>
      both((w) => {
        const r = words(of(f.turn, w, 'rubs'));
        return r === 'once a turn' ? 'once' : r === 'twice a turn' ? 'twice' : 'no';
      }, 'no'),
  ),
  sign(
    'slides',
    'turn',
    'Drum pulled',
    'Pull the drum straight: how far does it come?',
    'Its screw or clip is out.',
    [
      ['off', 'off'],
      ['some', 'a few mm'],
      ['not', 'not a hair'],
    ],
    (f) =>
      both((w) => {
        const d = words(of(f.turn, w, 'drum'));
        return d === 'slides off' ? 'off' : d === 'slides, then stops' ? 'some' : 'not';
      }, 'off'),
  ),
  sign(
    'rocks',
    'rock',
    'Wheel rocks',
    'Does the wheel rock at its top and bottom?',
    'Hands at twelve and six.',
    [
      ['no', 'no'],
      ['yes', 'yes'],
    ],
    (f) => both((w) => (of(f.rock, w, 'wheel rocks') ? 'yes' : 'no'), 'no'),
  ),
  sign(
    'tap',
    'rock',
    'Tapped',
    'Tap the drum: does it ring?',
    'Light hammer on its face.',
    [
      ['rings', 'rings'],
      ['dull', 'dull'],
    ],
    (f) => both((w) => (words(of(f.rock, w, 'drum')) === 'dull' ? 'dull' : 'rings'), 'rings'),
    1.6,
  ),
  sign(
    'comes',
    'press',
    'Comes on',
    'Pedal trodden slowly: how does the brake come on?',
    'Wheel turned by hand meanwhile.',
    [
      ['smooth', 'smoothly'],
      ['jump', 'late, all at once'],
    ],
    (f) =>
      both(
        (w) => (words(of(f.press, w, 'comes on')).startsWith('late') ? 'jump' : 'smooth'),
        'smooth',
      ),
  ),
  sign(
    'touch',
    'press',
    'Touch',
    'At what pressure does it begin to drag?',
    'A gauge at the bleed point.',
    figure('bar', 0, 40, 0.5, 1, 0.5),
    (f, s) => {
      const at = (x: Findings, w: 'left' | 'right'): number => {
        const o = of(x.press, w, 'drags from');
        if (o) return number(o);
        return words(of(x.press, w, 'drags')) === 'already' ? 0 : 40;
      };
      return farthest((w) => at(f, w), at(s, 'right'));
    },
  ),
  sign(
    'release',
    'press',
    'Lets go',
    'Pedal let go: when is the wheel free again?',
    'Turned by hand.',
    [
      ['once', 'at once'],
      ['seconds', 'in seconds'],
      ['not', 'minutes, or not'],
    ],
    (f) =>
      both((w) => {
        if (of(f.press, w, 'goes back')) return 'not';
        return number(of(f.press, w, 'goes back in')) > 0.9 ? 'seconds' : 'once';
      }, 'once'),
  ),
  sign(
    'bleed',
    'bleed',
    'Bleed point',
    'Open the bleed point of the stiff wheel: what changes?',
    'A hose on it into a jar; close it again.',
    [
      ['nothing', 'nothing'],
      ['frees', 'frees at once'],
    ],
    (f) =>
      both(
        (w) => (words(of(f.bleed, w, '')) === 'nothing changes' ? 'nothing' : 'frees'),
        'nothing',
      ),
  ),
  sign(
    'lever',
    'lever',
    'Lever in drum',
    'Hand lever down: is the parking lever on its stop?',
    'Through the hole, or at the cable behind the plate.',
    [
      ['home', 'home'],
      ['off', 'off its stop'],
    ],
    (f) => both((w) => (of(f.lever, w, 'off its stop') ? 'off' : 'home'), 'home'),
  ),
  sign(
    'flexed',
    'lever',
    'Cable flexed',
    'Pull the cable at the plate and let go: does the lever follow?',
    'By hand.',
    [
      ['comes', 'comes and goes'],
      ['slow', 'comes slowly'],
    ],
    (f) =>
      both((w) => (words(of(f.lever, w, 'flexed')) === 'comes slowly' ? 'slow' : 'comes'), 'comes'),
  ),
  sign(
    'bite',
    'roller',
    'Brakes',
    'How does it brake, forwards?',
    'By the foot, or by rollers: against what is usual.',
    [
      ['right', 'as ever'],
      ['weak', 'weak'],
      ['strong', 'grabs, too strong'],
    ],
    (f, s) => both((w) => biteOf(forward(f, w) / forward(s, w)), 'right'),
    1.8,
  ),
  sign(
    'pull',
    'roller',
    'Pulls',
    'Does it pull to one side, or are the rear wheels unlike on rollers?',
    'More than a tenth counts.',
    [
      ['no', 'no'],
      ['yes', 'yes'],
    ],
    (f) => {
      const [a, b] = [forward(f, 'left'), forward(f, 'right')];
      return [1 - Math.min(a, b) / Math.max(a, b) > PULLS ? 'yes' : 'no'];
    },
    1.6,
  ),
  sign(
    'back',
    'roller',
    'Backwards',
    'On rollers, backwards against forwards?',
    'The wheel that is odd.',
    [
      ['alike', 'alike'],
      ['less', 'much less backwards'],
      ['more', 'much more backwards'],
    ],
    (f) =>
      both((w) => {
        const r = torque(f, w, 'pedal backward') / forward(f, w);
        return r < 0.75 ? 'less' : r > 1.33 ? 'more' : 'alike';
      }, 'alike'),
  ),
  sign(
    'parked',
    'roller',
    'Parked',
    'How does the parking brake hold?',
    'On a slope, or by rollers.',
    [
      ['right', 'holds'],
      ['weak', 'weak'],
      ['strong', 'stronger than before'],
    ],
    (f, s) =>
      both((w) => biteOf(torque(f, w, 'parked forward') / torque(s, w, 'parked forward')), 'right'),
    1.8,
  ),
  sign(
    'oneway',
    'roller',
    'Holds',
    'Parked, facing up and facing down alike?',
    'A slope that it just holds.',
    [
      ['alike', 'alike'],
      ['one', 'one way only'],
    ],
    (f) =>
      both((w) => {
        const [a, b] = [torque(f, w, 'parked forward'), torque(f, w, 'parked backward')];
        return Math.min(a, b) < 0.75 * Math.max(a, b) && Math.max(a, b) > 20 ? 'one' : 'alike';
      }, 'alike'),
  ),
  sign(
    'unlike',
    'roller',
    'Unlike',
    'Rollers, by the pedal: how much does the weaker wheel lack?',
    'In per cent of the stronger one.',
    figure('%', 0, 100, 5, 0, 8),
    (f) => {
      const [a, b] = [forward(f, 'left'), forward(f, 'right')];
      return 100 * (1 - Math.min(a, b) / Math.max(a, b));
    },
  ),
  sign(
    'share',
    'roller',
    'Strength',
    'Rollers: how strong is the odd wheel against what it gave before?',
    'In per cent; 100 is as it was.',
    figure('%', 0, 400, 10, 0, 8, 0.12),
    (f, s) => 100 * farthest((w) => forward(f, w) / forward(s, w), 1),
  ),
  sign(
    'backshare',
    'roller',
    'Back against forward',
    'Rollers: the odd wheel backwards, against forwards?',
    'In per cent; 100 is alike.',
    figure('%', 0, 400, 10, 0, 12, 0.15),
    (f) => 100 * farthest((w) => torque(f, w, 'pedal backward') / forward(f, w), 1),
  ),
  sign(
    'swing',
    'roller',
    'Swing',
    'Rollers: how much does the force swing in a turn?',
    'Often printed as ovality, in per cent.',
    figure('%', 0, 100, 5, 0, 10),
    (f) => f.swing,
  ),
  sign(
    'holder',
    'off',
    'Teeth back',
    'Drum held: how many teeth back let it go?',
    '0 where it came by itself.',
    figure('', 0, 20, 1, 0, 0.7),
    (f) => {
      const at = (w: 'left' | 'right'): number => {
        const o = of(f.off, w, 'teeth back');
        return o?.kind === 'words' ? 20 : number(o);
      };
      return farthest(at, 0);
    },
  ),
  sign(
    'shoes',
    'off',
    'Shoes',
    'Rock both shoes by hand: do both move?',
    'Drum off. Never by the pedal.',
    [
      ['both', 'both alike'],
      ['one', 'one will not'],
    ],
    (f) => both((w) => (words(of(f.off, w, 'shoes')) === 'rock alike' ? 'both' : 'one'), 'both'),
  ),
  sign(
    'pads',
    'off',
    'Pads',
    'The raised pads on the plate?',
    'Where the shoe’s edge slides.',
    [
      ['smooth', 'smooth'],
      ['grooved', 'grooved'],
    ],
    (f) =>
      both((w) => (words(of(f.off, w, 'pads')) === 'grooved' ? 'grooved' : 'smooth'), 'smooth'),
  ),
  sign(
    'round',
    'measure',
    'Bore',
    'Two-point gauge round the drum?',
    'At three angles.',
    [
      ['same', 'the same all round'],
      ['differs', 'differs'],
    ],
    (f) =>
      both(
        (w) =>
          number(of(f.measure, w, 'greatest')) - number(of(f.measure, w, 'least bore')) > 0.05
            ? 'differs'
            : 'same',
        'same',
      ),
  ),
  sign(
    'swings',
    'dial',
    'Dial',
    'Dial gauge on the turning drum?',
    'Drum on its clean hub.',
    [
      ['still', 'still'],
      ['swings', 'swings'],
    ],
    (f) => both((w) => (number(of(f.dial, w, 'swing')) > 0.08 ? 'swings' : 'still'), 'still'),
  ),
  sign(
    'thin',
    'measure',
    'Thinner lining',
    'Which lining is the thinner one?',
    'At their thinnest.',
    [
      ['lead', 'the front one'],
      ['trail', 'the rear one'],
      ['alike', 'alike'],
      ['gone', 'both gone'],
    ],
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
    'Drum',
    'Drum Ø against the mark on it?',
    'The largest that you read.',
    [
      ['within', 'well within'],
      ['large', 'large, or past it'],
    ],
    (f, s) => {
      const at = (x: Findings, w: 'left' | 'right') => number(of(x.measure, w, 'greatest'));
      return both((w) => (at(f, w) > at(s, w) + 0.3 ? 'large' : 'within'), 'within');
    },
    1.6,
  ),
  sign(
    'tooth',
    'tooth',
    'Tooth',
    'At which tooth does the adjuster stand?',
    '0 is its shortest.',
    figure('', 0, 40, 1, 0, 0.7),
    (f, s) =>
      farthest((w) => number(of(f.tooth, w, 'tooth')), number(of(s.tooth, 'right', 'tooth'))),
  ),
  sign(
    'pawl',
    'tooth',
    'Its lever',
    'The adjuster’s lever, moved by a finger?',
    'Drum off, strut unloaded.',
    [
      ['drops', 'drops in'],
      ['stiff', 'stiff'],
      ['free', 'swings free'],
      ['other', 'of the other side'],
    ],
    (f) =>
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
  sign(
    'wet',
    'boots',
    'Wet',
    'Anything wet behind the drum?',
    'Under the cylinder’s boots and at the hub.',
    [
      ['dry', 'dry'],
      ['fluid', 'fluid at a boot'],
      ['oil', 'oil from the hub'],
    ],
    (f) =>
      both((w) => {
        const b = words(of(f.boots, w, ''));
        return b === 'boot wet' ? 'fluid' : b === 'dry' ? 'dry' : 'oil';
      }, 'dry'),
  ),
  sign(
    'mark',
    'bore',
    'Cylinder',
    'Bore marks of both wheel cylinders?',
    'Cast or stamped behind the plate.',
    [
      ['same', 'the same'],
      ['other', 'unlike'],
    ],
    (f) => [
      Math.abs(number(of(f.bore, 'left', '')) - number(of(f.bore, 'right', ''))) > 0.1
        ? 'other'
        : 'same',
    ],
  ),
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
