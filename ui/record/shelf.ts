import * as v from 'valibot';
import {
  type FoundKey,
  foundKeys,
  type OwnKey,
  type OwnSizes,
  ownKeys,
  readScene,
  type Scene,
  tellFinding,
} from '../../sim/index.ts';
import { recordShelf as words } from '../../sim/words/en.ts';
import { type OwnPhoto, photoSchema } from './own-photo.ts';

/** Brakes of one's own: what was typed, and the scenes that they are made from. */
export type OwnTexts = Readonly<Partial<Record<OwnKey, string>>>;
/** What was measured on it as it is now, as typed. */
export type FoundTexts = Readonly<Partial<Record<FoundKey, string>>>;

export interface OwnBrake {
  /** Of its own, in every browser and window; also the name of its scene. */
  readonly name: string;
  readonly title: string;
  /** Scene it is made from: a teaching brake's, or the one of a file. */
  readonly base: Scene;
  readonly texts: OwnTexts;
  /** The last sizes that made a sound brake, mm and the like: those stand on the bench. */
  readonly sizes: OwnSizes;
  /** What was tapped in a picture of it; the picture itself is never in the record. */
  readonly photo?: OwnPhoto;
  /** Missing where nothing was typed. */
  readonly found?: FoundTexts;
}

export interface Shelf {
  readonly brakes: readonly OwnBrake[];
  /** The last one that was deleted, to be brought back. */
  readonly removed: OwnBrake | null;
}

export const EMPTY_SHELF: Shelf = { brakes: [], removed: null };

/** Most brakes kept, and the longest text of a size and of a title. */
export const MOST_BRAKES = 200;
export const LONGEST_TEXT = 200;
export const LONGEST_TITLE = 80;

/** A scene that can be built; what is wrong with another is told by its first finding. */
export const sceneValue: v.GenericSchema<unknown, Scene> = v.pipe(
  v.unknown(),
  v.rawTransform(({ dataset, addIssue, NEVER }) => {
    const read = readScene(dataset.value);
    if (read.ok) return read.scene;
    const [f] = read.findings;
    addIssue({ message: f ? tellFinding(f) : words.noScene });
    return NEVER;
  }),
);

export const NAME = /^own-[a-z0-9-]{1,40}$/;

/** Of some of the sizes each its value. */
const ofSizes = <T>(value: v.GenericSchema<unknown, T>) =>
  v.pipe(
    v.record(v.picklist(ownKeys), value),
    v.transform((r): Readonly<Partial<Record<OwnKey, T>>> => r),
  );

const foundSchema: v.GenericSchema<unknown, FoundTexts> = v.pipe(
  v.record(v.picklist(foundKeys), v.pipe(v.string(), v.maxLength(LONGEST_TEXT))),
  v.transform((r): FoundTexts => r),
);

/** Sizes that stood before one was typed. */
export const sizesSchema: v.GenericSchema<unknown, OwnSizes> = ofSizes(
  v.pipe(v.number(), v.finite()),
);

const ownSchema: v.GenericSchema<unknown, OwnBrake> = v.strictObject({
  name: v.pipe(v.string(), v.regex(NAME)),
  title: v.pipe(v.string(), v.minLength(1), v.maxLength(LONGEST_TITLE)),
  base: sceneValue,
  texts: ofSizes(v.pipe(v.string(), v.maxLength(LONGEST_TEXT))),
  sizes: sizesSchema,
  photo: v.exactOptional(photoSchema),
  found: v.exactOptional(foundSchema),
});

export const shelfSchema: v.GenericSchema<unknown, Shelf> = v.strictObject({
  brakes: v.pipe(v.array(ownSchema), v.maxLength(MOST_BRAKES)),
  removed: v.nullable(ownSchema),
});

/** One brake read apart from the others, so that one that cannot be does not take them with it. */
export const readOwn = (data: unknown): OwnBrake | null => {
  const result = v.safeParse(ownSchema, data);
  return result.success ? result.output : null;
};
