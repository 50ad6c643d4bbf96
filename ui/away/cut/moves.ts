import { type Brake, growthAt } from '../../../sim/index.ts';
import { awayCutMoves as texts } from '../../../sim/words/en.ts';
import { type Frame, IDENTITY } from '../../stage/geometry.ts';
import { circlePath } from '../../stage/path.ts';
import type { CutSettings } from './part.ts';
import {
  type Area,
  areaOf,
  common,
  minus,
  offset,
  outside,
  placed,
  rectangle,
  scaled,
  sizeOf,
  unplaced,
} from './polygons.ts';
import { leverPose, slotArea, type ToothedParts, toothedParts } from './strut-toothed.ts';

/**
 * Do the flat parts move as the mechanism does? Asked of their outlines as they are once they are cut, where the
 * beam has rounded the inner corners: through one click at every tooth the lever is turned to where its finger
 * stands by the law of the adjuster, and lifted along its slot until it and the block's tooth no longer overlap.
 */
export interface ToothMove {
  readonly tooth: number;
  /** Lift that the lever needs to stand in this tooth, as a share of the tooth's height; 0: it sits at its root. */
  readonly seat: number;
  /** Highest lift on the way to the next tooth, as a share of the tooth's height. */
  readonly most: number;
  /** Growth of the strut at which the lever drops, beyond the engine's, mm of the model. */
  readonly off: number;
  /** Turned back by half a tooth without being lifted, it meets the tooth's steep face. */
  readonly holds: boolean;
}

export interface Moves {
  readonly teeth: readonly ToothMove[];
  /** Lift that the slot leaves, as a share of the tooth's height, and whether the pin is free in it all the way. */
  readonly lift: number;
  readonly slotFree: boolean;
  /** The finger's disc is free in the window from the first tooth to the last. */
  readonly windowFree: boolean;
  /** All of it: every tooth is passed, taken and held. */
  readonly sound: boolean;
  /** What is wrong, in words; empty where it is sound. */
  readonly faults: readonly string[];
}

/** Overlap that counts as touching, mm²: a hair's breadth along a tooth. */
const TOUCH = 1e-4;
/** Poses between two teeth at which the lift is looked for. */
const POSES = 8;
/** The lever may stand this share of its tooth's height off the root, and drop so late, and still take its tooth. */
const LOOSE = 0.25;
/** Growth by which a drop may be off the engine's, as a share of the step. */
const LATE = 0.2;

/** As the beam leaves it: its path is half a kerf outside, and inner corners take its round. */
export const asCut = (area: Area, kerf: number): Area =>
  kerf === 0 ? area : offset(offset(area, kerf / 2), -kerf / 2, 'round');

/** Teeth of the row on either side of the one looked at that are asked with it. */
const BESIDE = 4;

/** Lever and block at one tooth: what of them can meet there. */
class AtTooth {
  readonly brake: Brake;
  readonly tooth: number;
  readonly factor: number;
  readonly height: number;
  /** In the lever's own frame. */
  readonly lever: Area;
  readonly block: Area;

  constructor(brake: Brake, { form }: ToothedParts, cut: Cut, tooth: number, factor: number) {
    this.brake = brake;
    this.tooth = tooth;
    this.factor = factor;
    this.height = form.toothHeight;
    const { toothAngle, toothHeight, toothRadius } = form;
    const [x, y] = [form.pin[0], form.pin[1] - toothRadius];
    const wide = BESIDE * toothRadius * toothAngle;
    const here = scaled(
      rectangle({ left: x - wide, right: x + wide, low: y - 3 * toothHeight, high: y + wide }),
      factor,
    );
    const pose = this.frame(tooth + 0.5, 0);
    this.lever = unplaced(common(placed(cut.lever, pose), here), pose);
    this.block = common(cut.block, here);
  }

  /** Where the lever stands in the model; the lift in mm of the brake. */
  frame(phase: number, lift: number): Frame {
    const { angle, x, y } = leverPose(this.brake, phase, lift);
    return { angle, x: x * this.factor, y: y * this.factor };
  }

  /** Do they overlap? The lift as a share of the tooth's height. */
  meets(phase: number, share: number): boolean {
    const lever = placed(this.lever, this.frame(phase, share * this.height));
    return sizeOf(common(lever, this.block)) > TOUCH;
  }

  /** Least lift at which they are apart, as a share of the tooth's height. */
  liftAt(phase: number): number {
    return this.meets(phase, 0) ? edge(0, 2, (share) => !this.meets(phase, share)) : 0;
  }

  move(): ToothMove {
    const { brake, factor, tooth } = this;
    const { growth } = brake.adjuster;
    const lifts = Array.from({ length: POSES }, (_, i) => this.liftAt(tooth + (i + 0.5) / POSES));
    // Half lifted, it meets the tooth until its crest is past.
    const drop = edge(tooth + 0.7, tooth + 1.41, (phase) => !this.meets(phase, 0.5));
    return {
      tooth,
      seat: this.liftAt(tooth + 0.02),
      most: Math.max(...lifts),
      off: (growthAt(growth, drop) - growthAt(growth, tooth + 1)) * factor,
      holds: this.meets(tooth - 0.5, 0),
    };
  }
}

/** Where something begins to be so, between two places, by halving. */
function edge(from: number, to: number, so: (at: number) => boolean): number {
  let [low, high] = [from, to];
  for (let i = 0; i < 11; i++) {
    const middle = (low + high) / 2;
    if (so(middle)) high = middle;
    else low = middle;
  }
  return high;
}

interface Cut {
  readonly lever: Area;
  readonly block: Area;
}

/** Is the pin inside the slot at every lift of a click? */
function slotIsFree(parts: ToothedParts, set: CutSettings): boolean {
  const slot = slotArea(parts, set);
  const { pin, toothHeight } = parts.form;
  return [0, 0.25, 0.5, 0.75, 1].every((share) => {
    const [x, y] = [pin[0], pin[1] + share * toothHeight].map((v) => v * set.factor) as [
      number,
      number,
    ];
    return sizeOf(minus(areaOf(circlePath([x, y], set.pin / 2)), slot)) < TOUCH;
  });
}

/**
 * Is the disc inside the window at every tooth, with the shoes at rest on the strut and out as far as its lost
 * motion? The window goes with the front web: as far left as the strut has grown, and the play.
 */
function windowIsFree(brake: Brake, parts: ToothedParts, set: CutSettings): boolean {
  const { growth, lostMotion, lengthAtZero } = brake.adjuster;
  const window = areaOf(parts.paths.window);
  const [front, rear] = [brake.shoes.front.strutSeat[0], brake.shoes.rear.strutSeat[0]];
  const shift = rear - lengthAtZero - front;
  return growth.every((grown, tooth) => {
    const disc = scaled(placed(parts.disc, leverPose(brake, tooth, 0)), set.factor);
    return [0, lostMotion].every((play) => {
      const there = scaled(placed(window, { ...IDENTITY, x: shift - grown - play }), set.factor);
      // Chords of the disc and rounding: a hundredth of a millimetre over its width.
      return sizeOf(minus(offset(disc, -0.01), there)) < TOUCH;
    });
  });
}

/** The check of a brake with a toothed lever; null for other kinds. */
export function movesOf(brake: Brake, set: CutSettings): Moves | null {
  const parts = toothedParts(brake);
  if (!parts) return null;
  const cut: Cut = {
    lever: asCut(scaled(outside(parts.lever), set.factor), set.kerf),
    block: asCut(scaled(parts.block, set.factor), set.kerf),
  };
  const { teeth: count, growth } = brake.adjuster;
  const teeth = Array.from({ length: count }, (_, n) =>
    new AtTooth(brake, parts, cut, n, set.factor).move(),
  );
  const [, top] = parts.paths.ways.pin;
  const lift = (top[1] - parts.form.pin[1] + set.play / 2 / set.factor) / parts.form.toothHeight;
  const slotFree = slotIsFree(parts, set);
  const windowFree = windowIsFree(brake, parts, set);
  const step = (n: number): number =>
    ((growth[n + 1] as number) - (growth[n] as number)) * set.factor;
  const list = (those: readonly ToothMove[]): string => those.map((t) => t.tooth).join(', ');
  const bad = (what: string, those: readonly ToothMove[]): string[] =>
    those.length === 0
      ? []
      : [`${what}: ${those.length === count ? texts.everyTooth : texts.tooth(list(those))}`];
  const faults = [
    ...(slotFree ? [] : [texts.theLeversPinBindsIn]),
    ...(windowFree ? [] : [texts.theFingersDiscDoesNot]),
    ...bad(
      texts.theSlotIsTooShort,
      teeth.filter((t) => t.most > lift),
    ),
    ...bad(
      texts.theLeverStandsOffIts,
      teeth.filter((t) => t.seat > LOOSE),
    ),
    ...bad(
      texts.theLeverDropsTooLate,
      teeth.filter((t) => Math.abs(t.off) > LATE * step(t.tooth)),
    ),
    ...bad(
      texts.theToothDoesNotHold,
      teeth.filter((t) => !t.holds),
    ),
  ];
  return { teeth, lift, slotFree, windowFree, sound: faults.length === 0, faults };
}
