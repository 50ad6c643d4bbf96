import { apply } from './apply.ts';
import { drumOff } from './drum-off/index.ts';
import { faultsStation } from './faults/station.ts';
import { inspect } from './inspect/index.ts';
import { newShoes } from './new-shoes/index.ts';
import { own } from './own/index.ts';
import { park } from './park/index.ts';
import { questionsStation } from './questions/station.ts';
import type { Station } from './station.ts';
import { wear } from './wear.ts';

/** The stations in the order of their tabs; the first is open at first. */
export const stations: readonly [Station, ...Station[]] = [
  apply,
  wear,
  drumOff,
  park,
  inspect,
  newShoes,
  faultsStation,
  own,
  questionsStation,
];

/** The station of an id; the first for an unknown one. */
export const stationOf = (id: string): Station => stations.find((s) => s.id === id) ?? stations[0];
