import { newShoesWords as texts } from '../../../sim/words/en.ts';
import { wordsOf } from '../../adjusters.ts';
import { number } from '../../format.ts';
import type { ShoeDesk } from './desk.ts';
import { HELD_OFF } from './fitting.ts';
import type { ShoeStep } from './part.ts';

/** Texts of the station. */
export const stepNames: Readonly<Record<ShoeStep, string>> = texts.stepNames;

/** The thought of a step, beside its title. */
export const thought: Readonly<Record<ShoeStep, string>> = texts.thought;

/**
 * What stands there before anything is set: a drum that is worn, a strut that the old linings left
 * long. Empty once the strut is set back, and for a drum and strut that are as new.
 */
export function wornAtFirst(desk: ShoeDesk): string {
  const { bore, tooth } = desk;
  const born = 2 * desk.session.brake.drum.radiusNew;
  const worn = bore - born > 5e-3;
  if (tooth === 0 || desk.drumOn) return '';
  return worn
    ? texts.aWornBrakeItsDrum(number(bore - born, 2), number(born, 2), desk.named(tooth))
    : texts.itsOldLiningsLeftThe(desk.named(tooth));
}

/** Why a card that is not open is crossed, in two or three words. */
export const shortHindrance = (desk: ShoeDesk, step: ShoeStep): string => {
  const hindered = desk.hindered(step);
  return hindered ? (hindered.first === 2 ? texts.setBackFirst : texts.notWithTheseParts) : '';
};

/** Why a step cannot be done yet; empty where it can. */
export function hindrance(desk: ShoeDesk, step: ShoeStep): string {
  const hindered = desk.hindered(step);
  if (!hindered) return '';
  // Rounded up: never towards good.
  const by = number(Math.ceil(hindered.by * 100 - 1e-6) / 100, 2);
  return hindered.first === 2 ? texts.notYetTheStrutIs(by) : texts.notWithThesePartsEven(by);
}

/** What to do in a step, with its numbers. */
export function task(desk: ShoeDesk, step: ShoeStep): string {
  const why = hindrance(desk, step);
  if (why) return why;
  const { row } = desk;
  const back = wordsOf(desk.session.brake).setBack;
  switch (step) {
    case 1:
      return texts.boreLiningsThickAndGround(
        number(desk.bore, 2),
        number(desk.thickness, 2),
        number(desk.ground, 2),
      );
    case 2:
      return texts.itStandsAtAsFar(desk.named(desk.tooth), back);
    case 3:
      return desk.aside > 0
        ? texts.thePairStandsTowardsThe(number(desk.aside, 2))
        : texts.bothSidesAreEven;
    case 4:
      return texts.measureTheBoreSetThe(number(desk.bore, 2), number(row.difference, 2));
    case 5:
      return desk.drumOn
        ? desk.silent
          ? texts.silentNothingIsLeftOver
          : texts.pressAndReleaseAndCount
        : texts.slideTheDrumOnWithout;
    case 6:
      return desk.cable === 'tight' ? texts.theLeverHangsMmOff(HELD_OFF) : texts.leverHomeOnItsStop;
  }
}

/** "passes, 0.16 a side", never rounded towards good. */
export function lipSays(room: number): string {
  if (room < 0) return texts.overBy(number(Math.ceil(-room * 100 - 1e-6) / 100, 2));
  const left = Math.floor(room * 100 + 1e-6) / 100;
  return left === 0 ? texts.under001ASide : texts.aSide(number(left, 2));
}

export const mm2 = (value: number): string => number(value, 2);
