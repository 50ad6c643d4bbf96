import { wordsOf } from '../../adjusters.ts';
import { number } from '../../format.ts';
import type { ShoeDesk } from './desk.ts';
import { HELD_OFF } from './fitting.ts';
import type { ShoeStep } from './part.ts';

/** Texts of the station. */
export const stepNames: Readonly<Record<ShoeStep, string>> = {
  1: 'Right parts',
  2: 'Set back',
  3: 'Centre',
  4: 'Preset by gauge',
  5: 'Drum on, press',
  6: 'Cable last',
};

/** The thought of a step, beside its title. */
export const thought: Readonly<Record<ShoeStep, string>> = {
  1: 'A worn drum is larger than the linings were ground for. Measure the drum first.',
  2: 'The strut is still set for worn linings. Old length plus new lining does not go on.',
  3: 'The pair can stand aside on its pins. Move it until both sides are even.',
  4: 'A worn drum keeps its old lip. The hand feels the lip; the lining works on the face behind it. So measure, do not feel.',
  5: 'Each press takes up what is left over. Press until nothing clicks any more.',
  6: 'The shoes set the gap, the lever rests on its stop, and only then comes the cable.',
};

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
    ? `A worn brake: its drum is ${number(bore - born, 2)} over its new ${number(born, 2)}, and its old linings left it at ${desk.named(tooth)}. Measure your own first.`
    : `Its old linings left the strut long, at ${desk.named(tooth)}.`;
}

/** Why a card that is not open is crossed, in two or three words. */
export const shortHindrance = (desk: ShoeDesk, step: ShoeStep): string => {
  const hindered = desk.hindered(step);
  return hindered ? (hindered.first === 2 ? 'Set back first.' : 'Not with these parts.') : '';
};

/** Why a step cannot be done yet; empty where it can. */
export function hindrance(desk: ShoeDesk, step: ShoeStep): string {
  const hindered = desk.hindered(step);
  if (!hindered) return '';
  // Rounded up: never towards good.
  const by = number(Math.ceil(hindered.by * 100 - 1e-6) / 100, 2);
  return hindered.first === 2
    ? `Not yet: the strut is still set for worn linings, and the shoes are ${by} wider than the bore. Set it back first.`
    : `Not with these parts: even with the strut right back the shoes are ${by} wider than the bore.`;
}

/** What to do in a step, with its numbers. */
export function task(desk: ShoeDesk, step: ShoeStep): string {
  const why = hindrance(desk, step);
  if (why) return why;
  const { row } = desk;
  const back = wordsOf(desk.session.brake).setBack;
  switch (step) {
    case 1:
      return `Bore ${number(desk.bore, 2)}, linings ${number(desk.thickness, 2)} thick and ground for ${number(desk.ground, 2)}: do they lie on it?`;
    case 2:
      return `It stands at ${desk.named(desk.tooth)}. ${back} as far as it goes before the new shoes go in.`;
    case 3:
      return desk.aside > 0
        ? `The pair stands ${number(desk.aside, 2)} towards the front. Tap it over until both sides are even.`
        : 'Both sides are even.';
    case 4:
      return `Measure the bore: ${number(desk.bore, 2)}. Set the shoes ${number(row.difference, 2)} smaller, at the middle of the linings.`;
    case 5:
      return desk.drumOn
        ? desk.silent
          ? 'Silent: nothing is left over.'
          : 'Press and release, and count the clicks.'
        : 'Slide the drum on without force.';
    case 6:
      return desk.cable === 'tight'
        ? `The lever hangs ${HELD_OFF} mm off its stop: the cable sets the shoes.`
        : 'Lever home on its stop first, then take up the cable.';
  }
}

/** "passes, 0.16 a side", never rounded towards good. */
export function lipSays(room: number): string {
  if (room < 0) return `over by ${number(Math.ceil(-room * 100 - 1e-6) / 100, 2)}`;
  const left = Math.floor(room * 100 + 1e-6) / 100;
  return left === 0 ? 'under 0.01 a side' : `${number(left, 2)} a side`;
}

export const mm2 = (value: number): string => number(value, 2);
