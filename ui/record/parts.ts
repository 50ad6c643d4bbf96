import * as v from 'valibot';
import type { Brake, BrakeState } from '../../sim/index.ts';
import { apartPart } from '../stations/apart/part.ts';
import { askPart } from '../stations/ask/part.ts';
import { comparePart } from '../stations/compare/part.ts';
import { drumPart } from '../stations/drum-off/part.ts';
import { faultsPart } from '../stations/faults/part.ts';
import { inspectPart } from '../stations/inspect/part.ts';
import { kindPart } from '../stations/kind/part.ts';
import { lessonsPart } from '../stations/lessons/part.ts';
import { shoesPart } from '../stations/new-shoes/part.ts';
import { orderPart } from '../stations/order/part.ts';
import { ownPart } from '../stations/own/part.ts';
import { parkPart } from '../stations/park/part.ts';
import { questionsPart } from '../stations/questions/part.ts';
import { seePart } from '../stations/see/part.ts';
import { startPart } from '../stations/start/part.ts';
import { varyPart } from '../stations/vary/part.ts';
import { wearPart } from '../stations/wear-part.ts';
import type { Moment, Parts, StationId } from './moment.ts';
import type { Part } from './part.ts';
import type { LayerName, Layers } from './view.ts';

const applyPart: Part<Parts['apply']> = {
  schema: v.strictObject({}),
  initial: () => ({}),
  anew: false,
  layers: { fan: true, comb: true, forces: true },
};

/**
 * The stations' parts of the record: a station left out does not compile. They are asked for one by
 * one: a part's intentions change the bench, which asks for the parts, so that any of these files may
 * be the first to be read.
 */
export const parts: { readonly [K in StationId]: Part<Parts[K]> } = {
  apply: applyPart,
  get wear() {
    return wearPart;
  },
  get 'drum-off'() {
    return drumPart;
  },
  get park() {
    return parkPart;
  },
  get inspect() {
    return inspectPart;
  },
  get 'new-shoes'() {
    return shoesPart;
  },
  get faults() {
    return faultsPart;
  },
  get own() {
    return ownPart;
  },
  get questions() {
    return questionsPart;
  },
  get start() {
    return startPart;
  },
  get ask() {
    return askPart;
  },
  get see() {
    return seePart;
  },
  get kind() {
    return kindPart;
  },
  get lessons() {
    return lessonsPart;
  },
  get vary() {
    return varyPart;
  },
  get order() {
    return orderPart;
  },
  get compare() {
    return comparePart;
  },
  get apart() {
    return apartPart;
  },
};

const ids = Object.keys(parts) as StationId[];

/** All parts as they begin with a brake. */
export const initialParts = (brake: Brake): Parts =>
  Object.fromEntries(ids.map((id) => [id, parts[id].initial(brake)])) as unknown as Parts;

/** With another brake on the bench: what speaks of the brake begins anew, the rest stays. */
export const partsAnew = (before: Parts, brake: Brake): Parts =>
  Object.fromEntries(
    ids.map((id) => [id, parts[id].anew ? parts[id].initial(brake) : before[id]]),
  ) as unknown as Parts;

/** What a link holds, as it is opened here: brakes and other things that are a person's own stay. */
export function openedHere(linked: Moment, here: Moment): Moment {
  const kept = <K extends StationId>(id: K): Parts[K] =>
    parts[id].keeps?.(here.parts[id], linked.parts[id]) ?? linked.parts[id];
  const all = Object.fromEntries(ids.map((id) => [id, kept(id)])) as unknown as Parts;
  return { ...linked, parts: all, shelf: here.shelf };
}

/** State of the brake on the stage: the bench's, or the open station's own. */
export const shownState = (m: Moment): BrakeState => parts[m.station].shown?.(m) ?? m.bench.state;

const NONE: Layers = {
  fan: false,
  comb: false,
  forces: false,
  names: false,
  ghost: false,
  heat: false,
  loupe: false,
  edge: false,
  dials: false,
  polygons: false,
};

const plain = new Map<StationId, Layers>();

/** Layers of a station: as they were switched there, else its own. */
export function layersOf(m: Moment, station: StationId = m.station): Layers {
  const switched = m.view.layers[station];
  if (switched) return switched;
  const known = plain.get(station) ?? { ...NONE, ...parts[station].layers };
  plain.set(station, known);
  return known;
}

/** The record with layers of the open station switched. */
export const withLayers = (m: Moment, change: Partial<Record<LayerName, boolean>>): Moment => ({
  ...m,
  view: {
    ...m.view,
    layers: { ...m.view.layers, [m.station]: { ...layersOf(m), ...change } },
  },
});
