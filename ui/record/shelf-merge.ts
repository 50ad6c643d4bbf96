import {
  type FoundKey,
  foundKeys,
  type OwnKey,
  ownKeys,
  ownScene,
  readScene,
  startState,
} from '../../sim/index.ts';
import { labelWords, recordShelfMerge as said } from '../../sim/words/en.ts';
import { ownWords } from '../../sim/workshop/index.ts';
import { foundNames, ownNames } from '../stations/own/fields.ts';
import { type Bench, freshBench } from './bench.ts';
import { brakeOfRef, sceneOfOwn } from './derive.ts';
import type { Moment } from './moment.ts';
import { nameFrom } from './own-name.ts';
import { stateWrong } from './record.ts';
import { LONGEST_TITLE, MOST_BRAKES, type OwnBrake, type Shelf } from './shelf.ts';

/**
 * Brakes of one's own that were changed in two windows at once. Nothing typed is lost: what was
 * changed in one window is taken, and where both changed the same size both versions are kept.
 */
export interface Merged {
  readonly shelf: Shelf;
  /** What the user has to be told, in sentences. */
  readonly told: readonly string[];
}

const OTHER = said.other;

const find = (list: readonly OwnBrake[], name: string): OwnBrake | undefined =>
  list.find((b) => b.name === name);

/** Of three values the one that was changed; mine where both were. */
const changed = <T>(base: T, mine: T, theirs: T): T => (mine === base ? theirs : mine);
/** Were both changed, and not alike? */
const apart = <T>(base: T, mine: T, theirs: T): boolean =>
  mine !== base && theirs !== base && mine !== theirs;

const photoText = (b: OwnBrake | undefined): string => JSON.stringify(b?.photo ?? null);
const samePhoto = (a: OwnBrake, b: OwnBrake): boolean =>
  a.photo === b.photo || photoText(a) === photoText(b);

/** Are both the same word for word? The scene they are made from never changes. */
const alike = (a: OwnBrake, b: OwnBrake): boolean =>
  a === b ||
  (a.title === b.title &&
    samePhoto(a, b) &&
    foundKeys.every((k) => (a.found?.[k] ?? '') === (b.found?.[k] ?? '')) &&
    ownKeys.every((k) => (a.texts[k] ?? '') === (b.texts[k] ?? '') && a.sizes[k] === b.sizes[k]));

/** Fields that both windows changed, and not alike. */
function conflicts(base: OwnBrake | undefined, mine: OwnBrake, theirs: OwnBrake): string[] {
  const text = (b: OwnBrake | undefined, key: OwnKey): string => b?.texts[key] ?? '';
  const fields = ownKeys.filter((k) => apart(text(base, k), text(mine, k), text(theirs, k)));
  const title = apart(base?.title, mine.title, theirs.title) ? [labelWords.name] : [];
  const photo = apart(photoText(base), photoText(mine), photoText(theirs))
    ? [labelWords.picture]
    : [];
  const measured = (b: OwnBrake | undefined, key: FoundKey): string => b?.found?.[key] ?? '';
  const found = foundKeys.filter((k) =>
    apart(measured(base, k), measured(mine, k), measured(theirs, k)),
  );
  return [
    ...title,
    ...fields.map((k) => ownNames[k]),
    ...found.map((k) => foundNames[k]),
    ...photo,
  ];
}

/** Field by field what was changed; where its sizes together make no sound brake, mine stand. */
function together(base: OwnBrake | undefined, mine: OwnBrake, theirs: OwnBrake): OwnBrake {
  const texts: Partial<Record<OwnKey, string>> = {};
  const sizes: Partial<Record<OwnKey, number>> = {};
  for (const key of ownKeys) {
    const text = changed(base?.texts[key], mine.texts[key], theirs.texts[key]);
    if (text !== undefined) texts[key] = text;
    const size = changed(base?.sizes[key], mine.sizes[key], theirs.sizes[key]);
    if (size !== undefined) sizes[key] = size;
  }
  const found: Partial<Record<FoundKey, string>> = {};
  for (const key of foundKeys) {
    const text = changed(base?.found?.[key], mine.found?.[key], theirs.found?.[key]);
    if (text !== undefined) found[key] = text;
  }
  const title = changed(base?.title, mine.title, theirs.title) ?? mine.title;
  const words = ownWords(mine.base, sizes, { name: mine.name, title });
  const { photo: _, found: __, ...rest } = mine;
  const photo = photoText(mine) === photoText(base) ? theirs.photo : mine.photo;
  const sound = readScene(ownScene(mine.base, sizes, words, photo?.seen)).ok;
  const made: OwnBrake = {
    ...rest,
    title,
    texts,
    sizes: sound ? sizes : mine.sizes,
    ...(photo ? { photo } : {}),
    ...(Object.keys(found).length > 0 ? { found } : {}),
  };
  return alike(made, mine) ? mine : alike(made, theirs) ? theirs : made;
}

/** The other window's version of a brake as one of its own; every window gives it the same name. */
function another(theirs: OwnBrake): OwnBrake {
  const { base: _, ...typed } = theirs;
  return {
    ...theirs,
    name: nameFrom(JSON.stringify(typed)),
    title: `${theirs.title.slice(0, LONGEST_TITLE - OTHER.length)}${OTHER}`,
  };
}

/**
 * Brings two windows' shelves together.
 *
 * @param base the shelf that both began with
 * @param mine this window's; its order is kept
 * @param theirs the other's
 */
export function mergeShelf(base: Shelf, mine: Shelf, theirs: Shelf): Merged {
  if (mine === base || mine === theirs) return { shelf: theirs, told: [] };
  if (theirs === base) return { shelf: mine, told: [] };
  const told: string[] = [];
  const brakes: OwnBrake[] = [];
  const put = (b: OwnBrake): void => {
    if (!find(brakes, b.name)) brakes.push(b);
  };
  for (const m of mine.brakes) {
    const b = find(base.brakes, m.name);
    const t = find(theirs.brakes, m.name);
    if (!t) {
      // Deleted there: it goes, unless it was changed or made here.
      if (!b || !alike(b, m)) put(m);
      continue;
    }
    const fields = alike(m, t) ? [] : conflicts(b, m, t);
    if (fields.length === 0) {
      put(together(b, m, t));
      continue;
    }
    put(m);
    const both = another(t);
    put(both);
    told.push(said.wasChangedInTwoWindows(m.title, fields.join(', '), both.title));
  }
  for (const t of theirs.brakes) {
    if (find(mine.brakes, t.name)) continue;
    const b = find(base.brakes, t.name);
    if (!b || !alike(b, t)) put(t);
  }
  const removed = changed(base.removed, mine.removed, theirs.removed);
  if (brakes.length > MOST_BRAKES) {
    told.push(said.ofBrakesInTwoWindows(brakes.length, MOST_BRAKES));
  }
  return {
    shelf: {
      brakes: brakes.slice(0, MOST_BRAKES),
      // Deleted in one window and changed in the other: it is there still.
      removed: removed && find(brakes, removed.name) ? null : removed,
    },
    told,
  };
}

/** A bench whose brake another window changed or deleted. */
function benchAfter(bench: Bench, before: Shelf, after: Shelf): Bench {
  const ref = bench.brake;
  if (ref.kind !== 'own') return bench;
  const was = find(before.brakes, ref.name);
  const is = find(after.brakes, ref.name);
  if (!was || was === is) return bench;
  // What stands on the bench stays there, though nobody keeps it any more.
  if (!is) return { ...bench, brake: { kind: 'whole', scene: sceneOfOwn(was) } };
  if (ownKeys.every((k) => was.sizes[k] === is.sizes[k]) && samePhoto(was, is)) return bench;
  // What was driven here stays as worn as it is, where the brake of other sizes can be so worn.
  const built = brakeOfRef(ref, after);
  const fits = stateWrong('', built, bench.state).length === 0;
  return freshBench(ref, fits ? bench.state : startState(built));
}

/**
 * The record with another window's shelf: a brake of other sizes stands on the bench as worn as before
 * (new, where those sizes cannot be so worn), and one that was deleted stays there as a whole scene.
 */
export function withShelf(m: Moment, shelf: Shelf): Moment {
  if (shelf === m.shelf) return m;
  const bench = benchAfter(m.bench, m.shelf, shelf);
  const mine = m.guest && benchAfter(m.guest.mine.bench, m.shelf, shelf);
  const guest = m.guest && mine ? { ...m.guest, mine: { ...m.guest.mine, bench: mine } } : m.guest;
  const anew = bench !== m.bench && bench.brake.kind === 'own';
  return { ...m, bench, guest, shelf, ...(anew ? { pedal: 0, follows: false } : {}) };
}
