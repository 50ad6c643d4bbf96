import {
  type Brake,
  type NewFit,
  newFit,
  type OwnKey,
  type OwnSizes,
  type Rig,
  type Wheel,
} from '../index.ts';
import { workshopNewParts as texts } from '../words/en.ts';
import { fixed } from './figure.ts';
import type { Level } from './inspection.ts';

/**
 * New parts before anything goes together: held against the brake that stands on the bench, which is one's
 * own where it was made in My brake. What is only assumed of that gives no verdict.
 */
export interface NewPart {
  /** Of one lining, mm; radius to which its face is ground. */
  readonly lining?: number;
  readonly ground?: number;
  readonly width?: number;
  /** As cast on the wheel cylinder, mm. */
  readonly bore?: number;
  /** For which side it is made: either, this one, the other. */
  readonly hand?: 'alike' | 'this' | 'other';
}
export interface PartVerdict {
  readonly line: 'fit' | 'width' | 'bore' | 'hand';
  readonly level: Level;
  readonly words: string;
}

/** Readings of one size that do not mean another part, mm (common practice). */
const ALIKE = { lining: 0.2, ground: 0.1, width: 1, bore: 0.1 } as const;
/** First torque this share over or under the right one grabs, or is weak (own choice). */
const GRABS = 1.15;
const WEAK = 0.93;
const NMM = 1000;

const mm = (value: number, digits = 2): string => fixed(value, digits);
const percent = (share: number): string =>
  `${share > 1 ? '+' : '−'}${Math.abs(100 * (share - 1)).toFixed(0)} %`;

function fitSays({ fit, torque, right, slidesOn }: NewFit): Omit<PartVerdict, 'line'> {
  if (!slidesOn) {
    return {
      level: 'bad',
      words: texts.theDrumDoesNotGo,
    };
  }
  const bears =
    fit.where === 'all along'
      ? texts.bearsAllAlong
      : texts.bearsAtTheFirstOff(fit.where, mm(fit.gap));
  if (!Number.isFinite(torque)) return { level: 'bad', words: texts.locksDoNotFit(bears) };
  const first = texts.first((torque / NMM).toFixed(0), (right / NMM).toFixed(0));
  if (torque > GRABS * right) return { level: 'bad', words: texts.itGrabsDoNotFit(bears, first) };
  if (torque < WEAK * right) {
    return { level: 'watch', words: texts.weakUntilBeddedInSome(bears, first) };
  }
  return { level: 'good', words: `${bears}: ${first}.` };
}

/** Is a size of the bench's brake known: the teaching brake's own, or typed of one's own? */
const known = (own: OwnSizes | null, ...keys: readonly OwnKey[]): boolean =>
  own === null || keys.every((k) => own[k] !== undefined);

const assumed = (line: PartVerdict['line'], what: string): PartVerdict => ({
  line,
  level: 'none',
  words: texts.noVerdictOfYourBrake(what),
});

/**
 * @param bore inner diameter that was found, mm; the new one where none was
 * @param own sizes typed of the brake, where it is one's own
 */
export function judgePart(
  rig: Rig,
  part: NewPart,
  bore: number,
  own: OwnSizes | null,
): readonly PartVerdict[] {
  const { brake } = rig;
  const out: PartVerdict[] = [];
  const { lining, width } = {
    lining: brake.shoes.front.lining,
    width: brake.shoes.front.lining.width,
  };
  if (part.lining !== undefined || part.ground !== undefined) {
    if (!known(own, 'drumNew', 'liningNew')) {
      out.push(assumed('fit', texts.drumOrNewLining));
    } else {
      const thickness = part.lining ?? lining.thicknessNew;
      const groundRadius = part.ground ?? lining.groundRadius;
      out.push({ line: 'fit', ...fitSays(newFit(rig, { thickness, groundRadius }, bore / 2)) });
    }
  }
  if (part.width !== undefined) out.push(widthSays(part.width, width, own));
  if (part.bore !== undefined) out.push(boreSays(part.bore, brake, own));
  if (part.hand !== undefined) {
    out.push(
      part.hand === 'other'
        ? {
            line: 'hand',
            level: 'bad',
            words: texts.madeForTheOtherSide,
          }
        : {
            line: 'hand',
            level: 'good',
            words: part.hand === 'this' ? texts.forThisSide : texts.forEitherSide,
          },
    );
  }
  return out;
}

function widthSays(found: number, right: number, own: OwnSizes | null): PartVerdict {
  if (!known(own, 'liningWidth')) return assumed('width', texts.liningsWidth);
  const by = found - right;
  if (Math.abs(by) <= ALIKE.width)
    return { line: 'width', level: 'good', words: texts.asWideAsTheOld(mm(right, 1)) };
  return {
    line: 'width',
    level: 'watch',
    words:
      by > 0
        ? texts.widerThanLookWhetherIt(mm(by, 1), mm(right, 1))
        : texts.narrowerThanPressedHarder(
            mm(-by, 1),
            mm(right, 1),
            (100 * (right / found - 1)).toFixed(0),
          ),
  };
}

/** Force of a piston goes with its area, the square of the bore. */
function boreSays(found: number, brake: Brake, own: OwnSizes | null): PartVerdict {
  if (!known(own, 'bore')) return assumed('bore', texts.cylindersBore);
  const right = brake.cylinder.bore;
  if (Math.abs(found - right) <= ALIKE.bore) {
    return { line: 'bore', level: 'good', words: texts.theBoreOfTheOld(mm(right)) };
  }
  const share = (found * found) / (right * right);
  return {
    line: 'bore',
    level: 'bad',
    words: texts.anotherCylinderForceOnBoth(percent(share), mm(right)),
  };
}

const names: Readonly<Record<keyof typeof ALIKE, string>> = texts.names;

/** What left and right have unlike: both wheels of an axle get the same. One sentence each. */
export function unlikeSides(parts: Readonly<Record<Wheel, NewPart>>): readonly string[] {
  const out: string[] = [];
  for (const key of Object.keys(ALIKE) as (keyof typeof ALIKE)[]) {
    const [left, right] = [parts.left[key], parts.right[key]];
    if (left === undefined || right === undefined || Math.abs(left - right) <= ALIKE[key]) continue;
    out.push(texts.unlikeLeftAndRightOne(names[key], mm(left), mm(right)));
  }
  const hands = [parts.left.hand, parts.right.hand];
  if (hands.includes('alike') && hands.some((h) => h === 'this' || h === 'other')) {
    out.push(texts.oneIsMadeForOne);
  }
  return out;
}
