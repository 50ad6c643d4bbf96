import { bringVan, chooseFault } from '../stations/faults/part.ts';
import { showQuestion } from '../stations/questions/part.ts';
import { type GuestCall, leave, opened } from './guest.ts';
import { intention } from './intention.ts';
import { type Moment, type StationId, stationNames } from './moment.ts';

/** Where one stands in the page: what Back and Forward of the browser walk through. */
export interface Place {
  readonly station: StationId;
  readonly guest: GuestCall | null;
}

export const placeOf = (m: Moment): Place => ({
  station: m.station,
  guest: m.guest?.call ?? null,
});

const sameCall = (a: GuestCall | null, b: GuestCall | null): boolean =>
  JSON.stringify(a) === JSON.stringify(b);

export const samePlace = (a: Place, b: Place): boolean =>
  a.station === b.station && sameCall(a.guest, b.guest);

/** Calls a guest onto the bench again. */
function called(m: Moment, call: GuestCall): Moment {
  if (call.kind === 'question') return showQuestion.does(m, call.id);
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
    const kept = sameCall(m.guest?.call ?? null, to.guest);
    const here = kept ? m : to.guest ? called(leave(m), to.guest) : leave(m);
    return opened(here, to.station);
  },
  (_before, after) => `to ${stationNames[after.station]}`,
);
