import { type Brake, strutLength } from '../../../sim/index.ts';
import { number } from '../../format.ts';

/** How an adjuster is backed off by hand: in teeth, or a wedge by a tenth of a millimetre or so. */
export interface Steps {
  /** Steps of the adjuster that one press takes. */
  readonly press: number;
  readonly task: string;
  readonly head: string;
  readonly back: string;
  readonly on: string;
  readonly now: string;
  /** So many steps back from a tooth, as a figure. */
  amount(tooth: number, back: number): string;
  /** "of 5 teeth", "of 0.60 mm". */
  of(tooth: number, back: number): string;
  /** Where the adjuster stands, as a figure, and what stands after it. */
  readonly at: (tooth: number) => string;
  readonly after: string;
}

const WEDGE_PRESS = 5;
const minus = (n: number): string => (n < 0 ? `\u2212${-n}` : String(n));

export function stepsOf(brake: Brake): Steps {
  const { kind, teeth } = brake.adjuster;
  if (kind === 'wedge') {
    const shorter = (tooth: number, back: number): string =>
      number(strutLength(brake, tooth) - strutLength(brake, tooth - back), 2);
    return {
      press: WEDGE_PRESS,
      task: 'Push the wedge up through the access hole; it shortens the strut',
      head: 'Shorter by, mm',
      back: 'A little back',
      on: 'A little on again',
      now: 'Strut now',
      amount: shorter,
      of: (tooth, back) => `of ${shorter(tooth, back)}\u00a0mm`,
      at: (tooth) => number(strutLength(brake, tooth), 2),
      after: 'mm',
    };
  }
  return {
    press: 1,
    task:
      kind === 'screw strut'
        ? 'Turn the star wheel back through the access hole, its lever held away'
        : 'Back off the adjuster through the access hole',
    head: 'Teeth back',
    back: 'One tooth back',
    on: 'One tooth on again',
    now: 'Tooth now',
    amount: (_, back) => minus(back),
    of: (_, back) => (back === 1 ? 'of 1 tooth' : `of ${back} teeth`),
    at: (tooth) => String(tooth),
    after: `of ${teeth}`,
  };
}
