import type { Brake, Side } from './types.ts';
import { frictionAt } from './warm.ts';

/**
 * The two letters of a lining's edge code: its friction cold and hot, as SAE J866 bands it. C up to 0.15,
 * D to 0.25, E to 0.35, F to 0.45, G to 0.55, H above. The standard warns that a letter tells no more than
 * its band: two FF linings may differ by more than a quarter.
 */
export const LETTERS = ['C', 'D', 'E', 'F', 'G', 'H'] as const;
export type Letter = (typeof LETTERS)[number];
export type Letters = `${Letter}${Letter}`;

/** Upper ends of the bands but H's, which are in them. */
const ENDS = [0.15, 0.25, 0.35, 0.45, 0.55] as const;
const WIDTH = 0.1;
/** What rounding may make of an end. */
const ROUNDING = 1e-12;

export function letterOf(friction: number): Letter {
  const at = ENDS.findIndex((end) => friction <= end + ROUNDING);
  return LETTERS[at < 0 ? ENDS.length : at] as Letter;
}

/** The band of a letter. The outer two, open in the standard, are taken as wide as the others (own choice). */
export function bandOf(letter: Letter): {
  readonly least: number;
  readonly most: number;
  readonly middle: number;
} {
  const at = LETTERS.indexOf(letter);
  const least = (ENDS[0] as number) + (at - 1) * WIDTH;
  return { least, most: least + WIDTH, middle: least + WIDTH / 2 };
}

/** Temperatures of the cold letter, second fade: 200 to 400 °F (SAE J866). °C */
const COLD = [93, 121, 149, 204];
/**
 * Of the hot letter: 400 and 300 °F of the first recovery, 450 to 650 of the second fade, 500 to 300 of the
 * second recovery. Which ten is from memory. °C
 */
const HOT = [204, 149, 232, 260, 288, 316, 343, 260, 204, 149];

/** The cold band of two letters as they are typed, big or small; null when they are none. */
export function bandOfLetters(text: string): ReturnType<typeof bandOf> | null {
  const typed = text.trim().toUpperCase();
  return /^[C-H]{2}$/.test(typed) ? bandOf(typed[0] as Letter) : null;
}

export interface LettersTold {
  readonly letters: Letters;
  /** Mean friction at the cold and the hot points. */
  readonly cold: number;
  readonly hot: number;
}

/** @param at friction at a temperature, °C */
export function lettersBy(at: (temperature: number) => number): LettersTold {
  const mean = (points: readonly number[]): number =>
    points.reduce((sum, t) => sum + at(t), 0) / points.length;
  const cold = mean(COLD);
  const hot = mean(HOT);
  return { letters: `${letterOf(cold)}${letterOf(hot)}`, cold, hot };
}

/** The letters that a brake's dry lining would be given by its own tables. */
export const lettersOf = (brake: Brake, side: Side): LettersTold =>
  lettersBy((temperature) => frictionAt(brake, side, 'dry', temperature));
