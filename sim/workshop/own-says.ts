import {
  type Brake,
  CHECKED,
  type Expected,
  type OwnFound,
  type OwnSizes,
  RULE,
  type Spread,
} from '../index.ts';
import { workshopOwnSays as texts } from '../words/en.ts';
import { fixed } from './figure.ts';
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
const mm = (value: number, digits = 2): string => fixed(value, digits);

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
      say('watch', texts.theDrumIsSmallerThan(mm(fresh - drumNow)), texts.itCannotBeMeasureIn),
    );
  } else if (drumNow !== undefined) {
    const mark = sizes.drumMax;
    if (mark === undefined) {
      out.push(say('none', texts.drumNoMarkTyped(mm(drumNow)), texts.noVerdictTypeTheLargest));
    } else if (drumNow > mark) {
      out.push(
        say(
          'bad',
          texts.theDrumIsOverIts(mm(drumNow - mark)),
          texts.foundCastOnItRenew(mm(drumNow), mm(mark)),
        ),
      );
    } else {
      out.push(
        say(
          'good',
          texts.drumLeftToTheMark(mm(Math.floor((mark - drumNow) * 100 + 1e-6) / 100)),
          texts.foundCastOnIt(mm(drumNow), mm(mark)),
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
          texts.theLiningIsThickerThan(name, mm(t - thicknessNew)),
          texts.foundNewMeasureTheLining(
            mm(t),
            mm(thicknessNew),
            sizes.liningNew === undefined ? texts.asAssumed : '',
          ),
        ),
      );
    } else if (sizes.liningMin !== undefined && t < sizes.liningMin) {
      out.push(
        say(
          'bad',
          texts.theLiningIsUnderIts(name, mm(sizes.liningMin - t)),
          texts.foundLeastAsYouTyped(mm(t), mm(sizes.liningMin)),
        ),
      );
    }
  }
  return out;
}

/** Where the adjuster stands against where presses should have brought it. */
function toothSays(brake: Brake, found: OwnFound, e: Expected): Say {
  const bore = found.drumNow === undefined ? texts.aDrumAsNew : texts.aBoreOf(mm(found.drumNow));
  const worn = texts.worn(mm(found.leading ?? 0), mm(found.trailing ?? 0), bore);
  const { tooth } = found;
  const should = texts.should(e.tooth.as, mm(e.clearance));
  if (tooth === undefined || e.clearanceFound === null) {
    return say(
      'none',
      texts.toothIsWhereItShould(e.tooth.as),
      texts.leaveThereCountTheTeeth(worn, mm(e.clearance)),
    );
  }
  const here = texts.here(tooth, mm(e.clearanceFound));
  if (tooth > brake.adjuster.teeth) {
    return say(
      'watch',
      texts.thereIsNoTooth(tooth),
      texts.thisAdjusterHasCountAgain(brake.adjuster.teeth),
    );
  }
  if (tooth < e.tooth.least) {
    return say('watch', here, texts.shouldStandAtItHas(worn, should));
  }
  if (tooth > e.tooth.most) {
    return say('watch', here, texts.shouldStandAtSetOn(worn, should));
  }
  return say('good', here, texts.shouldStandAtTheAdjuster(worn, should));
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
    const computed = texts.computed(
      mm(e.notches.as, 1),
      CHECKED.hand,
      lever ? texts.withTheLeverAsAssumed : '',
    );
    out.push(
      n === 0
        ? say('good', texts.notchesFitThatGap(notches), texts.theCableIsNotThe(computed))
        : n > 0
          ? say(
              'watch',
              texts.notchesAreMoreThanThat(notches),
              p === 1
                ? texts.thePedalIsLongToo(computed)
                : texts.cableStretchedOrSetWith(
                    computed,
                    p === 0 ? texts.thePedalFits : texts.whereThePedalIsGood,
                  ),
            )
          : say(
              'watch',
              texts.notchesAreFewerThanThat(notches),
              texts.lookWhetherTheParkingLever(computed),
            ),
    );
  }
  if (pedal !== undefined && p !== null) {
    const computed = texts.computed2(
      mm(e.pedal.as, 1),
      CHECKED.firm,
      master ? texts.withMasterCylinderAndPedal : '',
    );
    out.push(
      p === 0
        ? say('good', texts.mmOfPedalFitThat(mm(pedal, 0)), `${computed}.`)
        : p > 0
          ? say(
              'watch',
              texts.mmOfPedalAreMore(mm(pedal, 0)),
              n === 0
                ? texts.theNotchesFitAirIn(computed)
                : texts.countTheNotchesWithThem(computed),
            )
          : say(
              'watch',
              texts.mmOfPedalAreLess(mm(pedal, 0)),
              texts.liningsStandNearerThanMeasured(computed),
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
  const head = texts.head(mm(Math.max(0, a)), mm(Math.max(0, b)));
  const model = texts.model(mm(ratio, 1));
  const fresh = sizes.liningNew === undefined ? texts.theNewThicknessIsAssumed : '';
  if (b > a + 2 * RULE) {
    return say(
      'watch',
      texts.theTrailingLiningIsThe(head),
      texts.theLeadingOneMoreShoes(model, fresh),
    );
  }
  const most = (a + RULE) / Math.max(1e-9, b - RULE);
  const least = (a - RULE) / (b + RULE);
  const found1 = b > RULE ? texts.to1(mm(a / b, 1)) : texts.theTrailingOneHardly;
  if (least > ratio * SHARE_BAND) {
    return say('watch', `${head}: ${found1}.`, texts.theTrailingShoeDoesLess(model, fresh));
  }
  if (b > RULE && most < ratio / SHARE_BAND) {
    return say(
      'watch',
      texts.nearlyAlike(head, found1),
      texts.theTrailingShoeDoesMore(model, fresh),
    );
  }
  return say('good', `${head}: ${found1}.`, texts.theLeadingShoeDoesThe(model, fresh));
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
