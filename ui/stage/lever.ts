import { type Brake, growthAt, leverForm, noseAngle, type Point } from '../../sim/index.ts';
import { add, after, type Frame } from './geometry.ts';

/**
 * Where the toothed lever stands on a strut: turned by where the window's edge has its finger, and up in the
 * strut's slot by its lift. Its own frame has the pin at 0 and stands as at tooth 0.
 *
 * @param phase tooth and share of the next one
 * @param lift mm up the slot, which stands square to the strut
 */
export function leverFrame(brake: Brake, strut: Frame, phase: number, lift: number): Frame | null {
  const form = leverForm(brake);
  if (!form) return null;
  const angle = noseAngle(form, growthAt(brake.adjuster.growth, phase)) - form.startAngle;
  const [x, y] = add(form.pin, [0, 1], lift);
  return after(strut, { angle, x, y });
}

/** The strut's tooth under the pin, and the block it stands on, from the pin at rest, mm. */
export interface Block {
  /** From its sloped side's foot over the tip to that of its steep face. */
  readonly tooth: readonly Point[];
  /** Top of the block, below the crests that pass over it. */
  readonly top: number;
  readonly half: number;
  readonly foot: number;
}

/** Clear of the crests that pass over the block, mm. */
const CLEAR = 0.35;

/**
 * One tooth: its tip in the root of the lever's row, its steep face against the lever's, its sloped side
 * a little steeper than the lever's flank, so that the tip alone bears while the lever rides over it.
 */
export function blockOf(brake: Brake): Block | null {
  const form = leverForm(brake);
  if (!form) return null;
  const { toothAngle, toothHeight: h, toothRadius } = form;
  const u = toothRadius / 27;
  const top = -(toothRadius + h + CLEAR);
  const pitch = toothRadius * toothAngle;
  const wide = (pitch * (h + CLEAR)) / (h * 1.2);
  return {
    tooth: [
      [-Math.min(wide, 0.98 * pitch), top],
      [0, -toothRadius],
      [0, top],
    ],
    top,
    half: 6.4 * u,
    foot: top - 6.2 * u,
  };
}
