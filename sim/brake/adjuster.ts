import { cos } from '../math/trig.ts';

/**
 * Growth of the strut at each tooth of a toothed lever.
 *
 * The lever turns about its pin by one tooth angle a tooth; its nose, a distance `nose` from the
 * pin, bears on the front web. The web stands off the pin by the nose's reach along the strut,
 * nose·cos(angle). Turning from the start angle, the reach shortens and the seats part by
 * nose·[cos(start) − cos(start + n·tooth)] (plane geometry of a crank).
 *
 * @returns growth in mm, index 0..teeth
 */
export function leverGrowth(nose: number, start: number, tooth: number, teeth: number): number[] {
  return Array.from({ length: teeth + 1 }, (_, n) => nose * (cos(start) - cos(start + n * tooth)));
}

/** Growth of the strut at each tooth for an even pitch (mm a tooth), index 0..teeth. */
export function evenGrowth(pitch: number, teeth: number): number[] {
  return Array.from({ length: teeth + 1 }, (_, n) => n * pitch);
}
