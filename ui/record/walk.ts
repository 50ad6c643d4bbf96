import { recordWalk as words } from '../../sim/words/en.ts';
import { tryWorn } from '../stations/drum-off/part.ts';
import { bringVan, chooseFault } from '../stations/faults/part.ts';
import { showQuestion } from '../stations/questions/part.ts';
import { type GuestCall, leave, opened } from './guest.ts';
import { guestTitle } from './guest-title.ts';
import type { History } from './history.ts';
import { intention } from './intention.ts';
import { type Moment, type StationId, stationNames } from './moment.ts';

/** Where one stands in the page: what Back and Forward of the browser walk through. */
export interface Place {
  readonly station: StationId;
  readonly guest: GuestCall | null;
}

export const placeOf = (m: Moment): Place => ({
  station: m.station,
  // A brake at whose dials was turned is one's own, a little otherwise: no place to go to.
  guest: m.guest && m.guest.call.kind !== 'dialled' ? m.guest.call : null,
});

const sameCall = (a: GuestCall | null, b: GuestCall | null): boolean =>
  JSON.stringify(a) === JSON.stringify(b);

export const samePlace = (a: Place, b: Place): boolean =>
  a.station === b.station && sameCall(a.guest, b.guest);

/** Calls a guest onto the bench again. */
function called(m: Moment, call: GuestCall): Moment {
  if (call.kind === 'question') return showQuestion.does(m, call.id);
  if (call.kind === 'state') return tryWorn.does(m);
  // A point is worked out where its curve is.
  if (call.kind === 'varied') return opened(m, 'vary');
  if (call.kind === 'dialled') return m;
  // Its file is loaded on demand: the list of lessons says how far it was taken.
  if (call.kind === 'lesson') return opened(m, 'lessons');
  const there = opened(m, 'faults');
  return call.kind === 'fault'
    ? chooseFault.does(there, call.id)
    : bringVan.does(there, call.number);
}

/** Goes to a place that one was at before: the brake is the one that is there now. */
export const walk = intention(
  'place.walk',
  (m: Moment, to: Place) => {
    if (samePlace(placeOf(m), to)) return m;
    const kept = sameCall(placeOf(m).guest, to.guest);
    const here = kept ? m : to.guest ? called(leave(m), to.guest) : leave(m);
    return opened(here, to.station);
  },
  (before, after) =>
    after.guest && !sameCall(before.guest?.call ?? null, after.guest.call)
      ? words.to(guestTitle(after))
      : words.to2(stationNames[after.station]),
);

/**
 * Is going to a place the way that was just come? Then Back takes that step back, and Forward does it
 * again; it is no step of its own. Null: it is another way, or something else would be undone by it.
 */
export function wayBack(h: History, to: Place): 'undo' | 'redo' | null {
  const here = placeOf(h.present);
  const leads = (m: Moment | undefined): boolean => {
    if (!m || samePlace(here, to)) return false;
    const there = placeOf(m);
    const sameBrake = !sameCall(there.guest, here.guest) || m.bench === h.present.bench;
    return samePlace(there, to) && sameBrake;
  };
  if (leads(h.past.at(-1)?.moment)) return 'undo';
  return leads(h.future.at(-1)?.moment) ? 'redo' : null;
}
