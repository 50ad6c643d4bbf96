import { brakes } from '../scenes.ts';
import { acrossAt, type BrakeRef, freshBench } from './bench.ts';
import { brakeOfRef, standingOf, startOf } from './derive.ts';
import { NO_HANDS } from './hands.ts';
import type { Moment, StationId } from './moment.ts';
import { initialParts } from './parts.ts';
import { EMPTY_SHELF, type Shelf } from './shelf.ts';
import { PLAIN_VIEW } from './view.ts';

/** The brake that stands on the bench at first. */
export const FIRST: BrakeRef = { kind: 'scene', name: brakes[0].name };

/**
 * The plain record of a station, a brake and one of its standing states: what the readable part of an
 * address says. Throws on a brake that is not there, or a state that it does not have.
 */
export function plainMoment(
  station: StationId = 'apply',
  brake: BrakeRef = FIRST,
  standing: string | null = null,
  shelf: Shelf = EMPTY_SHELF,
): Moment {
  const built = brakeOfRef(brake, shelf);
  const state = standing === null ? startOf(built) : standingOf(built, standing);
  return {
    version: 1,
    bench: { ...freshBench(brake, state, standing === null ? acrossAt(built) : null), standing },
    pedal: 0,
    follows: false,
    turning: 1,
    station,
    view: PLAIN_VIEW,
    parts: initialParts(built),
    guest: null,
    hands: NO_HANDS,
    shelf,
  };
}
