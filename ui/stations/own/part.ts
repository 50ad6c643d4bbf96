import * as v from 'valibot';
import {
  type FoundKey,
  freshState,
  type OwnKey,
  type OwnSizes,
  ownKeys,
  type Scene,
} from '../../../sim/index.ts';
import { language, ownPart as words } from '../../../sim/words/en.ts';
import { type BrakeRef, chooseBrake, freshBench, released } from '../../record/bench.ts';
import { brakeOf } from '../../record/derive.ts';
import { leave } from '../../record/guest.ts';
import { intention } from '../../record/intention.ts';
import { type Moment, withPart } from '../../record/moment.ts';
import { type OwnPhoto, type PhotoPoint, photoPoints } from '../../record/own-photo.ts';
import type { Part } from '../../record/part.ts';
import { partsAnew } from '../../record/parts.ts';
import {
  LONGEST_TEXT,
  LONGEST_TITLE,
  MOST_BRAKES,
  type OwnBrake,
  type OwnTexts,
  type Shelf,
  sizesSchema,
} from '../../record/shelf.ts';
import { brakes } from '../../scenes.ts';
import { foundNames, ownNames } from './fields.ts';

/** What is typed before a brake is made, and what the buttons asked and answered. */
export interface OwnPart {
  /** Drum as typed before a brake is made. */
  readonly drumText: string;
  /** Name of the teaching brake chosen to start from; null: the nearest. */
  readonly chosen: string | null;
  /** Name of the brake whose deletion is asked about; null: none is. */
  readonly asking: string | null;
  readonly said: string;
  readonly findings: readonly string[];
  /** Point of the picture that is tapped now; null: the picture is not looked at. */
  readonly point: PhotoPoint | null;
  /** Size typed last, of which brake, and the sizes that stood before: what it changed is told. */
  readonly changed: {
    readonly name: string;
    readonly key: OwnKey;
    readonly before: OwnSizes;
  } | null;
}

/** Longest answer told, and the most findings. */
const LONGEST_SAID = 500;
const MOST_FINDINGS = 60;

const text = (most: number) => v.pipe(v.string(), v.maxLength(most));

const BLANK: OwnPart = {
  drumText: '',
  chosen: null,
  asking: null,
  said: '',
  findings: [],
  point: null,
  changed: null,
};

export const ownPart: Part<OwnPart> = {
  anew: false,
  layers: {},
  initial: () => BLANK,
  schema: v.strictObject({
    drumText: text(LONGEST_TEXT),
    chosen: v.nullable(v.picklist(brakes.map((b) => b.name))),
    asking: v.nullable(text(60)),
    said: text(LONGEST_SAID),
    findings: v.pipe(v.array(text(LONGEST_SAID)), v.maxLength(MOST_FINDINGS)),
    point: v.optional(v.nullable(v.picklist(photoPoints)), null),
    changed: v.optional(
      v.nullable(
        v.strictObject({
          name: text(60),
          key: v.picklist(ownKeys),
          before: sizesSchema,
        }),
      ),
      null,
    ),
  }),
};

const partOf = (m: Moment): OwnPart => m.parts.own;
const put = (m: Moment, change: Partial<OwnPart>): Moment => withPart(m, 'own', change);
const answered = (m: Moment, said: string, findings: readonly string[] = []): Moment =>
  put(m, {
    said: said.slice(0, LONGEST_SAID),
    findings: findings.slice(0, MOST_FINDINGS).map((f) => f.slice(0, LONGEST_SAID)),
    asking: null,
  });

const find = (shelf: Shelf, name: string): OwnBrake | undefined =>
  shelf.brakes.find((b) => b.name === name);
/** A brake's title, also of one that was just deleted. */
const titleIn = (name: string, ...moments: readonly Moment[]): string =>
  moments.map((m) => find(m.shelf, name)?.title).find((t) => t !== undefined) ?? name;

const ref = (name: string): BrakeRef => ({ kind: 'own', name });

/** Puts one's own brake on the bench, with nothing left of what was typed to make it. */
const onBench = (m: Moment, name: string): Moment => put(chooseBrake.does(m, ref(name)), BLANK);

/** The record with one brake of the shelf changed. */
const withOwn = (m: Moment, own: OwnBrake, change: Partial<OwnBrake>): Moment => ({
  ...m,
  shelf: {
    ...m.shelf,
    brakes: m.shelf.brakes.map((b) => (b === own ? { ...own, ...change } : b)),
  },
});

/** Drum of one's own as it is typed; the nearest teaching brake is started from. */
export const typeDrum = intention(
  'own.drum',
  (m: Moment, typed: string) => {
    const drumText = typed.slice(0, LONGEST_TEXT);
    const { drumText: now, chosen } = partOf(m);
    return drumText === now && chosen === null ? m : put(m, { drumText, chosen: null });
  },
  words.drumOfOnesOwn,
  { joins: 'own.drum' },
);

/** A teaching brake to start from, by its name. */
export const startFrom = intention(
  'own.from',
  (m: Moment, chosen: string) =>
    chosen === partOf(m).chosen || !brakes.some((b) => b.name === chosen) ? m : put(m, { chosen }),
  words.brakeToStartFrom,
);

/**
 * A new brake of one's own goes onto the shelf and the bench.
 *
 * @param name that no other brake has, in any browser
 * @param sizes of its texts, where they make a sound brake
 */
export const make = intention(
  'own.make',
  (m: Moment, name: string, base: Scene, title: string, texts: OwnTexts, sizes: OwnSizes) => {
    const { brakes: there } = m.shelf;
    if (find(m.shelf, name)) return m;
    if (there.length >= MOST_BRAKES) {
      return answered(m, words.notMadeBrakesAreKept(MOST_BRAKES));
    }
    const own = { name, title: title.slice(0, LONGEST_TITLE) || words.myBrake, base, texts, sizes };
    return onBench({ ...m, shelf: { ...m.shelf, brakes: [...there, own] } }, name);
  },
  (_before, after, name) => words.made(titleIn(name, after)),
);

/**
 * A size as it is typed. A sound brake goes onto the bench at once, new, where it stands there.
 *
 * @param sizes of all its texts; null while they make no sound brake
 */
export const write = intention(
  'own.write',
  (m: Moment, name: string, key: OwnKey, typed: string, sizes: OwnSizes | null) => {
    const own = find(m.shelf, name);
    const next = typed.slice(0, LONGEST_TEXT);
    if (!own || next === (own.texts[key] ?? '')) return m;
    const texts = { ...own.texts, [key]: next };
    const { changed } = partOf(m);
    // Letter by letter it is one size that is typed: what stood before the first counts.
    const goesOn = changed?.name === name && changed.key === key;
    const told = goesOn ? m : put(m, { changed: { name, key, before: own.sizes } });
    return sizes ? rebuilt(told, own, { texts, sizes }) : withOwn(told, own, { texts });
  },
  (_before, _after, _name, key) => language.inside(ownNames[key]),
  { joins: (name, key) => `own.${name}.${key}` },
);

/** A measurement of the brake as it is now; the brake on the bench stays as it is. */
export const measure = intention(
  'own.found',
  (m: Moment, name: string, key: FoundKey, typed: string) => {
    const own = find(m.shelf, name);
    const next = typed.slice(0, LONGEST_TEXT);
    if (!own || next === (own.found?.[key] ?? '')) return m;
    return withOwn(m, own, { found: { ...own.found, [key]: next } });
  },
  (_before, _after, _name, key) => language.inside(foundNames[key]),
  { joins: (name, key) => `own.found.${name}.${key}` },
);

/** The record with a brake of other sizes or places; where it stands on the bench it is there anew. */
function rebuilt(m: Moment, own: OwnBrake, change: Partial<OwnBrake>): Moment {
  const home = withOwn(leaveFor(m, own.name), own, change);
  const { brake } = home.bench;
  if (brake.kind !== 'own' || brake.name !== own.name) return home;
  const built = brakeOf(home);
  return released({
    ...home,
    bench: freshBench(brake, freshState(built)),
    parts: { ...partsAnew(home.parts, built), own: home.parts.own },
  });
}

/**
 * What was tapped or typed beside a picture of a brake. Places that make a sound brake go onto the bench.
 *
 * @param photo with the places it comes to; those of before where they make none
 * @param word what is done, for the way back: what goes on with the same word is one step
 */
export const photograph = intention(
  'own.photo',
  (m: Moment, name: string, photo: OwnPhoto, _word: string) => {
    const own = find(m.shelf, name);
    if (!own || own.photo === photo) return m;
    const cut = Object.entries(photo.texts).map(([k, t]) => [k, t.slice(0, LONGEST_TEXT)]);
    const kept: OwnPhoto = { ...photo, texts: Object.fromEntries(cut) };
    const same = JSON.stringify(own.photo?.seen ?? null) === JSON.stringify(photo.seen);
    return same ? withOwn(m, own, { photo: kept }) : rebuilt(m, own, { photo: kept });
  },
  (_before, _after, _name, _photo, word) => words.picture(word),
  { joins: (name, _photo, word) => `own.photo.${name}.${word}` },
);

/** Takes the picture's taps, and what was read from them, off a brake again. */
export const forgetPhoto = intention(
  'own.photo-off',
  (m: Moment, name: string) => {
    const own = find(m.shelf, name);
    if (!own?.photo) return m;
    const { photo: _, ...rest } = own;
    const without = put(m, { point: null });
    const shelf = {
      ...m.shelf,
      brakes: m.shelf.brakes.map((b) => (b === own ? rest : b)),
    };
    const bare = shelf.brakes.find((b) => b.name === name) as OwnBrake;
    return rebuilt({ ...without, shelf }, bare, {});
  },
  words.picturesPointsTakenAway,
);

/** Which point of the picture is tapped now; null closes it. */
export const goToPoint = intention(
  'own.point',
  (m: Moment, point: PhotoPoint | null) => (point === partOf(m).point ? m : put(m, { point })),
  words.pointOfThePicture,
  { joins: 'own.point' },
);

/** A guest that stands in the place of a brake that changes leaves before it does. */
function leaveFor(m: Moment, name: string): Moment {
  const mine = m.guest?.mine.bench.brake;
  const standing = m.bench.brake;
  const concerned = [mine, standing].some((b) => b?.kind === 'own' && b.name === name);
  return concerned ? leave(m) : m;
}

/** Another name; one that is blank is none. */
export const rename = intention(
  'own.rename',
  (m: Moment, name: string, title: string) => {
    const own = find(m.shelf, name);
    const next = title.trim().slice(0, LONGEST_TITLE);
    return !own || next === '' || next === own.title ? m : withOwn(m, own, { title: next });
  },
  (_before, after, name) => words.name(titleIn(name, after)),
);

/** A question before a brake is deleted, and what comes of it, are one step. */
const DELETING = 'own.delete';

/** Asks whether a brake is to be deleted; null takes the question back. */
export const ask = intention(
  'own.ask',
  (m: Moment, name: string | null) => (name === partOf(m).asking ? m : put(m, { asking: name })),
  words.questionAboutABrake,
  { joins: DELETING },
);

/** Deletes a brake; on the bench the first teaching brake takes its place. */
export const remove = intention(
  'own.remove',
  (m: Moment, name: string) => {
    const own = find(m.shelf, name);
    if (!own) return put(m, { asking: null });
    const home = leaveFor(m, name);
    const rest = home.shelf.brakes.filter((b) => b !== own);
    const { brake } = home.bench;
    // The brake is chosen while the old one can still be built.
    const clear =
      brake.kind === 'own' && brake.name === name
        ? chooseBrake.does(home, { kind: 'scene', name: brakes[0].name })
        : home;
    return put({ ...clear, shelf: { brakes: rest, removed: own } }, { asking: null });
  },
  (before, after, name) => words.deleted(titleIn(name, after, before)),
  { joins: DELETING, ends: true },
);

/** The brake that was deleted last is there again, and on the bench. */
export const restore = intention(
  'own.restore',
  (m: Moment) => {
    const { brakes: there, removed } = m.shelf;
    if (!removed) return m;
    if (there.length >= MOST_BRAKES) {
      return answered(m, words.notBroughtBackBrakesAre(MOST_BRAKES));
    }
    const known = find(m.shelf, removed.name);
    const shelf = { brakes: known ? there : [...there, removed], removed: null };
    return onBench({ ...m, shelf }, removed.name);
  },
  (before) => words.broughtBack(before.shelf.removed?.title ?? words.brake),
);

/** What a button answers when nothing came of it, or nothing of the brake. */
export const tell = intention(
  'own.tell',
  (m: Moment, said: string, findings: readonly string[]) => answered(m, said, findings),
  words.answerOfMyBrake,
);
