import * as v from 'valibot';
import { recordLink as texts } from '../../sim/words/en.ts';
import type { Bench, BrakeRef } from './bench.ts';
import { brakeOfRef, sceneOf, teaching } from './derive.ts';
import { diff, patch } from './diff.ts';
import { fromPlain, toPlain } from './json.ts';
import { type Moment, type StationId, stationIds } from './moment.ts';
import { pack, unpack } from './pack.ts';
import { type Read, readMoment, type Wrong } from './record.ts';
import { EMPTY_SHELF, type Shelf, sceneValue } from './shelf.ts';
import { FIRST, plainMoment } from './start.ts';

/**
 * The address of a moment: station, brake and standing state readable, everything else packed behind
 * the hash, where it differs from what those say: `?station=wear&brake=quay-van&state=Worn-in#…`.
 */

/** Longest link that is offered; a longer one is a file. */
export const MOST_LINK = 8000;
/** Longest packed text that is looked at, and the most that it may unpack to, bytes. */
const MOST_PACKED = 64 * 1024;
const MOST_TEXT = 1024 * 1024;

/** A brake of one's own is nobody else's: in a link it goes as a whole scene. */
function whole(bench: Bench, shelf: Shelf): Bench {
  if (bench.brake.kind !== 'own') return bench;
  const scene = sceneOf(bench.brake, shelf);
  return scene
    ? { ...bench, brake: { kind: 'whole', scene: v.parse(sceneValue, scene) } }
    : { ...bench, brake: FIRST };
}

/** The record as it can be sent: without the shelf, the brakes on the bench whole. */
export function sendable(m: Moment): Moment {
  const { guest, shelf } = m;
  const mine = guest && { ...guest.mine, bench: whole(guest.mine.bench, shelf) };
  return {
    ...m,
    bench: whole(m.bench, shelf),
    guest: guest && mine ? { ...guest, mine } : null,
    shelf: EMPTY_SHELF,
  };
}

type Tree = Readonly<Record<string, unknown>>;
const treeOf = (m: Moment): Tree => {
  const { shelf: _own, ...rest } = m;
  return toPlain(rest) as Tree;
};

const baseOf = (m: Moment): Moment => {
  const { brake, standing } = m.bench;
  return brake.kind === 'scene'
    ? plainMoment(m.station, brake, standing)
    : plainMoment(m.station, FIRST, null);
};

/**
 * What a link's rest is the difference from: the plain record of its readable part. Where a guest
 * stands, its host is told as a difference from the plain page's own.
 */
const fromTree = (base: Moment, guest: boolean): Tree => {
  const tree = treeOf(base);
  if (!guest) return tree;
  const { bench, turning, station, view, parts } = plainMoment();
  const mine = { bench, turning, station, layers: view.layers, parts };
  return { ...tree, guest: toPlain({ call: null, stands: [], mine }) };
};

/** The part of an address that is read by eye; empty for the plain page. */
export function readable(m: Moment): string {
  const { brake, standing } = m.bench;
  const query = new URLSearchParams();
  if (m.station !== stationIds[0]) query.set('station', m.station);
  if (brake.kind === 'scene') {
    if (brake.name !== (FIRST as { name: string }).name) query.set('brake', brake.name);
    if (standing !== null) query.set('state', standing);
  }
  const text = query.toString();
  return text === '' ? '' : `?${text}`;
}

/** What stands behind the hash, with it; empty where the readable part says all. */
async function packed(m: Moment): Promise<string> {
  const change = diff(fromTree(baseOf(m), m.guest !== null), treeOf(m));
  return Object.keys(change).length === 0 ? '' : `#${await pack(JSON.stringify(change))}`;
}

/** Query and hash of a moment's address. One that has a rest says so: a link that was cut at its hash is known. */
export async function linkOf(m: Moment): Promise<string> {
  const sent = sendable(m);
  const [query, rest] = [readable(sent), await packed(sent)];
  return rest === '' ? query : `${query === '' ? '?' : `${query}&`}${MORE}${rest}`;
}

/** Says in the readable part that there is a rest. */
const MORE = 'more=';

const wrong = (path: string, found: string, allowed: string): Read => ({
  ok: false,
  wrong: [{ path, found: found.length > 60 ? `${found.slice(0, 57)}…` : found, allowed }],
});

function plainOf(search: string): Moment | Wrong {
  const query = new URLSearchParams(search);
  const station = query.get('station') ?? stationIds[0];
  if (!stationIds.some((s) => s === station)) {
    return { path: 'station', found: station, allowed: stationIds.join(', ') };
  }
  const name = query.get('brake') ?? (FIRST as { name: string }).name;
  if (!teaching.has(name)) {
    return { path: 'brake', found: name, allowed: [...teaching.keys()].join(', ') };
  }
  const brake: BrakeRef = { kind: 'scene', name };
  const standing = query.get('state');
  const states = brakeOfRef(brake, EMPTY_SHELF).states.map((s) => s.name);
  if (standing !== null && !states.includes(standing)) {
    return { path: 'state', found: standing, allowed: states.join(', ') };
  }
  return plainMoment(station as StationId, brake, standing);
}

/** Does an address say anything at all? */
export const says = (search: string, hash: string): boolean =>
  hash.length > 1 ||
  ['station', 'brake', 'state', 'more'].some((k) => new URLSearchParams(search).has(k));

/**
 * Reads query and hash of an address to a moment, or tells which part is wrong.
 *
 * @param search with its question mark, or empty
 * @param hash with its hash, or empty
 */
export async function readLink(search: string, hash: string): Promise<Read> {
  const base = plainOf(search);
  if (!('version' in base)) return { ok: false, wrong: [base] };
  const text = hash.replace(/^#/, '');
  if (text === '' && new URLSearchParams(search).has('more')) {
    return wrong(texts.behind, 'nothing', texts.theRestOfTheLink);
  }
  if (text === '') return { ok: true, moment: base };
  if (text.length > MOST_PACKED) {
    return wrong(texts.behind, texts.letters(text.length), texts.atMost(MOST_PACKED));
  }
  try {
    const change: unknown = JSON.parse(await unpack(text, MOST_TEXT));
    const guest = typeof change === 'object' && change !== null && 'guest' in change;
    const tree = fromPlain(patch(fromTree(base, guest), change)) as Tree;
    return readMoment({ ...tree, shelf: EMPTY_SHELF });
  } catch {
    // Browsers name what is wrong in words of their own, of no use to who sent the link.
    return wrong(texts.behind, texts.lettersThatAreNoWhole(text.length), texts.allOfTheLinkAs);
  }
}
