import type { OnHill, WheelFault } from '../../../sim/index.ts';
import { parkWords as texts } from '../../../sim/words/en.ts';
import type { ParkingRule } from '../../../sim/workshop/index.ts';
import { down, number } from '../../format.ts';

/** Texts of the station. */
export const notFirst = texts.notFirst;

/** "20 %", "18 % of its weight". */
export const asked = (rule: Pick<ParkingRule, 'kind' | 'percent'>): string =>
  `${number(rule.percent, 0)}\u00a0%${rule.kind === 'slope' ? '' : texts.ofItsWeight}`;

export const sureWord: Readonly<Record<ParkingRule['sure'], string>> = {
  read: texts.read,
  'read in part': texts.readInPart,
  memory: texts.fromMemoryNotRead,
  'own choice': texts.yourOwn,
};

/** Of a brake that is jammed with its lever let go: torque that would turn it, N·mm, and whether a part gives way. */
export interface Jam {
  readonly torque: number;
  readonly yields: boolean;
}

/**
 * The verdict: words and the margin that go with them. Never rounded towards good. A van that stands because its
 * brake is jammed is not parked.
 */
export function verdict(h: OnHill, rule: ParkingRule, nose: 'down' | 'up', jam: Jam | null = null) {
  const way = texts.way(nose);
  const on = rule.kind === 'slope' ? texts.on(asked(rule)) : `${asked(rule)}`;
  if (jam) {
    const margin = jam.yields
      ? texts.letGoMoreThanIts
      : texts.letGoNMTurn(number(jam.torque / 1000, 0));
    return { mark: 'cross', text: texts.jammedNotParked, margin } as const;
  }
  if (h.can === Number.POSITIVE_INFINITY) {
    return { mark: 'tick', text: texts.holds(on), margin: texts.aShoeLocksByItself(way) } as const;
  }
  if (h.holds) {
    const left = number(down(h.margin / 1000, 0), 0);
    return {
      mark: 'tick',
      text: texts.holds(on),
      margin: texts.nMAWheelLeft(left, way),
    } as const;
  }
  const short = number(Math.ceil(-h.margin / 1000), 0);
  return {
    mark: 'cross',
    text: rule.kind === 'slope' ? texts.rolls(on) : texts.shortOf(on),
    margin: texts.nMAWheelShort(short, way),
  } as const;
}

export const faultNames: readonly (readonly [WheelFault, string])[] = [
  ['none', texts.bothSound],
  ['stiff lever', texts.rightLeverPivotStiffHalf],
  ['oil on rear', texts.rightOilOnTheRear],
  ['oil on front', texts.rightOilOnTheFront],
  ['glazed', texts.bothLiningsGlazed],
];

/** What the two ways of two wheels point to. */
export const faultSays: Readonly<Record<WheelFault, string>> = texts.faultSays;
