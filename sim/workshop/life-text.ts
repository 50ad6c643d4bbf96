import { type Brake, KM, type LifeEvent } from '../index.ts';
import { workshopLifeText as words } from '../words/en.ts';
import { fixed } from './figure.ts';

/** A space each three digits, as the page writes numbers. */
const grouped = (n: number): string => String(Math.round(n)).replace(/\B(?=(\d{3})+$)/g, ' ');
const cap = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** An event in one plain sentence. */
export function eventText(brake: Brake, t: Omit<LifeEvent, 'state'>): string {
  const at = words.at(grouped(t.distance / KM));
  const side = t.side ?? 'front';
  const lining = brake.shoes[side].lining;
  const stop = brake.adjuster.teeth;
  switch (t.kind) {
    case 'click':
      return t.value < 0 ? words.woundBackToTooth(t.tooth, at) : words.clickTooth(t.tooth, at);
    case 'stepped hot':
      return words.steppedOnADrumOf(
        Math.round(t.temperature),
        at,
        t.value < 0 ? words.noneItDrags : `${fixed(t.value, 2)} mm`,
      );
    case 'tooth lost':
      return words.aWornToothLetGo(at, t.tooth);
    case 'teeth used up':
      return words.lastToothUsedFromHere(stop, at);
    case 'lining limit':
      return words.liningAtItsLimitOf(cap(side), lining.thicknessMin, at);
    case 'rivet contact':
      return words.liningWornToItsRivets(cap(side), at);
    case 'table contact':
      return words.liningWornThroughTheTable(cap(side), at);
    case 'drum limit':
      return words.drumPastItsLargestDiameter(2 * brake.drum.radiusMax, at);
    case 'piston run-out':
      return words.pistonOutOfItsBore(cap(side), at, brake.cylinder.stroke);
    case 'no balance':
      return words.noBalanceFoundTheDrum(at);
    case 'drag at rest':
      return words.dragsAtRestWithA(at, fixed(Math.abs(t.value), 2), Math.round(t.torque / 1000));
    case 'drag ends':
      return words.freeAgainAtRestWith(at);
    case 'seized':
      return words.seizedTheWheelWouldSlide(at, Math.round(t.value / 1000));
    case 'gave way':
      return words.clampedMoreThanTheStrut(at, fixed(t.value / 1000, 1));
    case 'lever off its stop':
      return words.parkingLeverHeldMmOff(fixed(t.value, 1), at);
    case 'locks':
      return words.theShoeWouldLockBy(side, at);
  }
}

/** An event with its sentence. */
export interface ToldEvent extends LifeEvent {
  readonly text: string;
}

export const toldEvent = (brake: Brake, event: LifeEvent): ToldEvent => ({
  ...event,
  text: eventText(brake, event),
});
