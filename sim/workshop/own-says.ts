import {
  type Brake,
  CHECKED,
  type Expected,
  type OwnFound,
  type OwnSizes,
  RULE,
  type Spread,
} from '../index.ts';
import type { Level } from './inspection.ts';

/** What measured figures of one's own brake say when they are held against each other and the model. */
export interface Say {
  readonly level: Level;
  /** The figures in a few words, the contradiction if there is one. */
  readonly head: string;
  /** What it rests on, and what follows. */
  readonly why: string;
}

const say = (level: Level, head: string, why: string): Say => ({
  level,
  head,
  why,
});
const mm = (value: number, digits = 2): string => value.toFixed(digits);

/** Of two shoes of one brake the model knows the shares only so well: duty and roads differ (own choice). */
const SHARE_BAND = 1.6;
/** Who counts notches counts whole ones, and pulls harder or less hard by one (common practice). */
const NOTCH = 1;
/** A rule beside the pedal reads within this, mm, and the foot's press within a tenth (common practice). */
const PEDAL = 3;
const PRESS_BAND = 0.1;

/** Sizes that contradict each other, and the drum and linings against their limits. */
function sizesSay(brake: Brake, sizes: OwnSizes, found: OwnFound): Say[] {
  const out: Say[] = [];
  const { drumNow } = found;
  const fresh = 2 * brake.drum.radiusNew;
  if (drumNow !== undefined && drumNow < fresh - 0.05) {
    out.push(
      say(
        'watch',
        `The drum is ${mm(fresh - drumNow)} smaller than new.`,
        'It cannot be. Measure in the swept track, not on the lip, and look at the new Ø again.',
      ),
    );
  } else if (drumNow !== undefined) {
    const mark = sizes.drumMax;
    if (mark === undefined) {
      out.push(
        say(
          'none',
          `Drum ${mm(drumNow)}, no mark typed.`,
          'No verdict: type the largest Ø cast on it.',
        ),
      );
    } else if (drumNow > mark) {
      out.push(
        say(
          'bad',
          `The drum is ${mm(drumNow - mark)} over its mark.`,
          `Found ${mm(drumNow)}, cast on it ${mm(mark)}: renew it, and the other wheel’s to match.`,
        ),
      );
    } else {
      out.push(
        say(
          'good',
          `Drum: ${mm(Math.floor((mark - drumNow) * 100 + 1e-6) / 100)} left to the mark.`,
          `Found ${mm(drumNow)}, cast on it ${mm(mark)}.`,
        ),
      );
    }
  }
  for (const [name, side, t] of [
    ['leading', 'front', found.leading],
    ['trailing', 'rear', found.trailing],
  ] as const) {
    if (t === undefined) continue;
    const { thicknessNew } = brake.shoes[side].lining;
    if (t > thicknessNew + RULE) {
      out.push(
        say(
          'watch',
          `The ${name} lining is ${mm(t - thicknessNew)} thicker than new.`,
          `Found ${mm(t)}, new ${mm(thicknessNew)}${sizes.liningNew === undefined ? ' as assumed' : ''}: measure the lining without the steel table, and type its new thickness.`,
        ),
      );
    } else if (sizes.liningMin !== undefined && t < sizes.liningMin) {
      out.push(
        say(
          'bad',
          `The ${name} lining is ${mm(sizes.liningMin - t)} under its least.`,
          `Found ${mm(t)}, least ${mm(sizes.liningMin)} as you typed it: renew the linings on both wheels.`,
        ),
      );
    }
  }
  return out;
}

/** Where the adjuster stands against where presses should have brought it. */
function toothSays(brake: Brake, found: OwnFound, e: Expected): Say {
  const bore = found.drumNow === undefined ? 'a drum as new' : `a bore of ${mm(found.drumNow)}`;
  const worn = `Linings of ${mm(found.leading ?? 0)} and ${mm(found.trailing ?? 0)} in ${bore}`;
  const { tooth } = found;
  const should = `tooth ${e.tooth.as} with ${mm(e.clearance)}`;
  if (tooth === undefined || e.clearanceFound === null) {
    return say(
      'none',
      `Tooth ${e.tooth.as} is where it should stand.`,
      `${worn} leave ${mm(e.clearance)} there. Count the teeth and type them.`,
    );
  }
  const here = `Tooth ${tooth} leaves ${mm(e.clearanceFound)}.`;
  if (tooth > brake.adjuster.teeth) {
    return say(
      'watch',
      `There is no tooth ${tooth}.`,
      `This adjuster has ${brake.adjuster.teeth}: count again, or type how many it has.`,
    );
  }
  if (tooth < e.tooth.least) {
    return say(
      'watch',
      here,
      `${worn} should stand at ${should}: it has stopped stepping, or lets its teeth slip.`,
    );
  }
  if (tooth > e.tooth.most) {
    return say(
      'watch',
      here,
      `${worn} should stand at ${should}: set on by hand, stepped on a hot drum, or these are not the linings it stepped for.`,
    );
  }
  return say('good', here, `${worn} should stand at ${should}: the adjuster steps.`);
}

const within = (value: number, { least, most }: Spread, by: number): number =>
  value < least - by ? -1 : value > most + by ? 1 : 0;

/** Notches and pedal, read as a pair: gap moves both, cable only the notches, air only the pedal. */
function pairSays(sizes: OwnSizes, found: OwnFound, e: Expected): Say[] {
  const out: Say[] = [];
  const { notches, pedal } = found;
  const n = notches === undefined ? null : within(notches, e.notches, NOTCH);
  const p =
    pedal === undefined ? null : within(pedal, e.pedal, Math.max(PEDAL, PRESS_BAND * e.pedal.as));
  const lever = sizes.perNotch === undefined || sizes.leverNotch === undefined;
  const master = sizes.masterBore === undefined || sizes.pedalRatio === undefined;
  if (notches !== undefined && n !== null) {
    const computed = `${mm(e.notches.as, 1)} computed at ${CHECKED.hand} N in the cable${lever ? ', with the lever as assumed' : ''}`;
    out.push(
      n === 0
        ? say(
            'good',
            `${notches} notches fit that gap.`,
            `${computed}. The cable is not the cause.`,
          )
        : n > 0
          ? say(
              'watch',
              `${notches} notches are more than that gap needs.`,
              p === 1
                ? `${computed}. The pedal is long too: the gap is larger than measured.`
                : `${computed}. ${p === 0 ? 'The pedal fits' : 'Where the pedal is good'}: cable stretched, or set with slack.`,
            )
          : say(
              'watch',
              `${notches} notches are fewer than that gap needs.`,
              `${computed}. Look whether the parking lever lies on its stop: a short cable holds it off.`,
            ),
    );
  }
  if (pedal !== undefined && p !== null) {
    const computed = `${mm(e.pedal.as, 1)} mm computed at ${CHECKED.firm} bar${master ? ', with master cylinder and pedal as assumed' : ''}`;
    out.push(
      p === 0
        ? say('good', `${mm(pedal, 0)} mm of pedal fit that gap.`, `${computed}.`)
        : p > 0
          ? say(
              'watch',
              `${mm(pedal, 0)} mm of pedal are more than that gap needs.`,
              n === 0
                ? `${computed}. The notches fit: air in the line, or another gap than at these shoes.`
                : `${computed}. Count the notches: with them too many it is the gap, with them right it is air.`,
            )
          : say(
              'watch',
              `${mm(pedal, 0)} mm of pedal are less than that gap needs.`,
              `${computed}. Linings stand nearer than measured, or it was a lighter press.`,
            ),
    );
  }
  return out;
}

/** Of both linings: which lost more, and whether that is the mechanism or a fault. */
function sharesSay(brake: Brake, sizes: OwnSizes, found: OwnFound, ratio: number): Say | null {
  const { leading, trailing } = found;
  if (leading === undefined || trailing === undefined) return null;
  const lost = (side: 'front' | 'rear', t: number): number =>
    brake.shoes[side].lining.thicknessNew - t;
  const [a, b] = [lost('front', leading), lost('rear', trailing)];
  // A rule that is off by a tenth on either would turn it round.
  if (a < 3 * RULE && b < 3 * RULE) return null;
  if (a < -RULE || b < -RULE) return null;
  const head = `Worn ${mm(Math.max(0, a))} and ${mm(Math.max(0, b))}`;
  const model = `This brake wears ${mm(ratio, 1)} to 1`;
  const fresh = sizes.liningNew === undefined ? ' The new thickness is assumed.' : '';
  if (b > a + 2 * RULE) {
    return say(
      'watch',
      `${head}: the trailing lining is the thinner.`,
      `${model}, the leading one more. Shoes in each other’s place, or the leading one was not pushed: rock both by hand.${fresh}`,
    );
  }
  const most = (a + RULE) / Math.max(1e-9, b - RULE);
  const least = (a - RULE) / (b + RULE);
  const found1 = b > RULE ? `${mm(a / b, 1)} to 1` : 'the trailing one hardly';
  if (least > ratio * SHARE_BAND) {
    return say(
      'watch',
      `${head}: ${found1}.`,
      `${model}. The trailing shoe does less than its share: look for a stuck piston or one that is held.${fresh}`,
    );
  }
  if (b > RULE && most < ratio / SHARE_BAND) {
    return say(
      'watch',
      `${head}: ${found1}, nearly alike.`,
      `${model}. The trailing shoe does more than its share: much reversing, parking while rolling, or a shoe that drags.${fresh}`,
    );
  }
  return say(
    'good',
    `${head}: ${found1}.`,
    `The leading shoe does the more. ${model}; that is the mechanism, no fault.${fresh}`,
  );
}

/**
 * All that the measured figures say, contradictions first as they are found.
 *
 * @param sizes typed of the brake: what is not among them is assumed, and that is said
 * @param e what the model expects; null while it is worked out, or where it cannot be
 * @param ratio how unlike both linings wear; null while it is worked out
 */
export function ownSays(
  brake: Brake,
  sizes: OwnSizes,
  found: OwnFound,
  e: Expected | null,
  ratio: number | null,
): readonly Say[] {
  const shares = ratio === null ? null : sharesSay(brake, sizes, found, ratio);
  return [
    ...sizesSay(brake, sizes, found),
    ...(e ? [toothSays(brake, found, e), ...pairSays(sizes, found, e)] : []),
    ...(shares ? [shares] : []),
  ];
}
