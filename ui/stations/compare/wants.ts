import { compareWants as words } from '../../../sim/words/en.ts';
import { fixed } from '../../format.ts';
import { type Bench, MOST_BAR } from '../../record/bench.ts';
import { brakeOf, read, sceneOf } from '../../record/derive.ts';
import { opened } from '../../record/guest.ts';
import { intention } from '../../record/intention.ts';
import { begun } from '../../record/life.ts';
import { type Moment, withPart } from '../../record/moment.ts';
import { partsAnew, shownState } from '../../record/parts.ts';
import type { Shelf } from '../../record/shelf.ts';
import { type ComparePart, type KeptMoment, MOST_TRAVEL } from './part.ts';

/** A brake of one's own is kept whole, as it is read, its keys in the order of any that comes back: the shelf goes its own way. */
function whole(bench: Bench, shelf: Shelf): Bench {
  if (bench.brake.kind !== 'own') return bench;
  const scene = sceneOf(bench.brake, shelf);
  return scene ? { ...bench, brake: { kind: 'whole', scene: read(scene).scene } } : bench;
}

/** The moment on the bench, to be kept: its brake, its state, how it is pressed; without the life that led there. */
export function keptNow(m: Moment): KeptMoment {
  const state = shownState(m);
  const bench = whole({ ...m.bench, state, life: begun(state), across: null }, m.shelf);
  const cable = m.station === 'park' ? m.parts.park.cable : 0;
  return {
    bench,
    turning: m.turning,
    bending: m.view.bending,
    pedal: m.pedal,
    cable,
  };
}

const put = (m: Moment, change: Partial<ComparePart>): Moment => withPart(m, 'compare', change);

/** Keeps the moment on the bench as a ghost. */
export const keep = intention(
  'compare.keep',
  (m: Moment) => put(m, { kept: keptNow(m), other: null, ghost: true }),
  words.keptAsAGhost,
);

/** Nothing is kept any more. */
export const forget = intention(
  'compare.forget',
  (m: Moment) => {
    const { kept, other } = m.parts.compare;
    return kept || other ? put(m, { kept: null, other: null, at: 0 }) : m;
  },
  words.keptMomentForgotten,
);

/** The ghost in the other stations, or none; the moment stays kept. */
export const haunt = intention(
  'compare.ghost',
  (m: Moment, ghost: boolean) => (m.parts.compare.ghost === ghost ? m : put(m, { ghost })),
  (_before, after) => words.keptMoment(after.parts.compare.ghost ? words.drawn : words.notDrawn),
);

/** Opens the two side by side; what is not kept yet is kept now. */
export const beside = intention(
  'compare.open',
  (m: Moment) => {
    const here = m.parts.compare.kept ? m : put(m, { kept: keptNow(m), other: null });
    return opened(here, 'compare');
  },
  words.sideBySide,
);

/**
 * Two at once: a choice ready made.
 *
 * @param other null: the bench as it is
 */
export const pair = intention(
  'compare.pair',
  (m: Moment, _name: string, kept: KeptMoment, other: KeptMoment | null) => put(m, { kept, other }),
  (_before, _after, name) => name,
);

/** The one for the other. */
export const swap = intention(
  'compare.swap',
  (m: Moment) => {
    const { kept, other } = m.parts.compare;
    return kept ? put(m, { kept: other ?? keptNow(m), other: kept }) : m;
  },
  words.aForB,
);

/** The brake beside the kept one goes onto the bench, as it stands there. */
export const take = intention(
  'compare.take',
  (m: Moment) => {
    const { other } = m.parts.compare;
    if (!other) return m;
    const next: Moment = {
      ...m,
      bench: other.bench,
      turning: other.turning,
      view: { ...m.view, bending: other.bending },
    };
    const parts = partsAnew(m.parts, brakeOf(next));
    return put({ ...next, parts }, { other: null });
  },
  words.bOntoTheBench,
);

const limit = (by: ComparePart['by']): number => (by === 'travel' ? MOST_TRAVEL : MOST_BAR);

/** The one pedal, mm or bar. */
export const pushTo = intention(
  'compare.push',
  (m: Moment, at: number) => {
    const most = Math.min(MOST_TRAVEL, limit(m.parts.compare.by));
    const to = Number.isFinite(at) ? Math.max(0, Math.min(most, at)) : 0;
    return to === m.parts.compare.at ? m : put(m, { at: to });
  },
  (_before, { parts: { compare } }) =>
    words.onePedalAt(fixed(compare.at, 1), compare.by === 'travel' ? 'mm' : 'bar'),
  { joins: 'compare.push' },
);

/** Same travel, or same pressure: the pedal begins anew. */
export const pushBy = intention(
  'compare.by',
  (m: Moment, by: ComparePart['by']) => (m.parts.compare.by === by ? m : put(m, { by, at: 0 })),
  (_before, after) => words.same(after.parts.compare.by),
);
