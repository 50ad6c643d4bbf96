import {
  answerKeys,
  type Brake,
  type OwnAnswers,
  type OwnSeen,
  ownAnswers,
  ownScene,
  type PlaceKey,
  sizeAt,
  varianceOf,
} from '../../../../sim/index.ts';
import { language, ownPhotoDesk as words } from '../../../../sim/words/en.ts';
import { ownWords } from '../../../../sim/workshop/index.ts';
import { PRESS_BAR } from '../../../record/bench.ts';
import { ownOf, restOf, rigOfBrake, sceneOfOwn } from '../../../record/derive.ts';
import { Kept, KeptFor } from '../../../record/kept.ts';
import {
  LONGEST_SIDE,
  type OwnPhoto,
  type PhotoPoint,
  type PhotoSize,
  type Tap,
} from '../../../record/own-photo.ts';
import { decode, PictureTrouble, pictures } from '../../../record/pictures.ts';
import { Piecewise } from '../../../record/piecewise.ts';
import type { OwnBrake } from '../../../record/shelf.ts';
import type { Session } from '../../../session.ts';
import { forgetPhoto, goToPoint, photograph, tell } from '../part.ts';
import { type Outline, outlinesOf } from './outlines.ts';
import { type PointInfo, pointOf, pointsFor } from './points.ts';
import { type PhotoRead, proposed, readPhoto } from './read-photo.ts';

/** How well friction is known where it was not measured (common practice). */
const FRICTION_BAND = 0.1;

/** An answer with its band: what the picture leaves open, and what is assumed. */
export interface Banded {
  readonly value: number;
  /** Two deviations of what comes from the picture. */
  readonly picture: number;
  /** Least and most when friction is less or more than assumed as well. */
  readonly least: number;
  readonly most: number;
}
export type Answers = Readonly<Record<keyof OwnAnswers, Banded>>;

/** A picture of one's own brake: what its taps come to, and what the buttons ask for. */
export class PhotoDesk {
  readonly session: Session;
  readonly #reads = new KeptFor<OwnPhoto, { readonly own: OwnBrake; readonly read: PhotoRead }>();
  readonly #outlines = new KeptFor<Brake, readonly Outline[]>();
  readonly #bands: Readonly<Record<'rigid' | 'bending', Piecewise<OwnSeen, OwnAnswers>>>;
  readonly #plain = new Kept<readonly (OwnAnswers | null)[]>();

  constructor(session: Session) {
    this.session = session;
    const bands = () => new Piecewise<OwnSeen, OwnAnswers>(() => session.changed());
    this.#bands = { rigid: bands(), bending: bands() };
    pictures.addEventListener('change', () => session.changed());
  }

  get own(): OwnBrake | undefined {
    return ownOf(this.session.moment.bench.brake, this.session.moment.shelf);
  }
  get photo(): OwnPhoto | undefined {
    return this.own?.photo;
  }
  /** Point that is tapped now; null while the picture is not looked at. */
  get point(): PointInfo | null {
    const { point } = this.session.moment.parts.own;
    return point && this.photo ? pointOf(point) : null;
  }
  get picture(): HTMLCanvasElement | undefined {
    return this.own && pictures.of(this.own.name);
  }
  get isKept(): boolean {
    return this.own !== undefined && pictures.isKept(this.own.name);
  }
  /** All points of this brake, in their order. */
  get points(): readonly PointInfo[] {
    return pointsFor(this.own?.base.shoes.front.anchor.kind === 'abutment');
  }

  /** What the taps come to. Sizes typed elsewhere count too, so a brake changed since is read anew. */
  get read(): PhotoRead | null {
    const { own, photo } = this;
    if (!own || !photo) return null;
    const known = this.#reads.of(photo, () => ({ own, read: readPhoto(own, photo) }));
    return known.own === own || known.own.sizes === own.sizes ? known.read : readPhoto(own, photo);
  }

  /** Where a point lies or is proposed, px of the picture. */
  at(id: PhotoPoint): { readonly tap: Tap; readonly set: boolean } | null {
    const { photo, read } = this;
    const tap = photo?.taps[id];
    if (tap) return { tap, set: true };
    const there = photo && read ? proposed(photo, read, id) : null;
    return there && { tap: there, set: false };
  }

  get outlines(): readonly Outline[] {
    const { brake, state } = this.session;
    return this.#outlines.of(brake, () =>
      outlinesOf(brake, state, restOf(rigOfBrake(brake), state)),
    );
  }

  /** Keeps taps, sizes and the rest; what makes a sound brake goes onto the bench. */
  #put(change: Partial<OwnPhoto>, word: string): void {
    const { own, photo } = this;
    if (!own || !photo) return;
    const next = { ...photo, ...change };
    const read = readPhoto(own, next);
    const sound = read.seen !== null && read.findings.length === 0;
    const made = { ...next, seen: sound ? read.seen : photo.seen };
    this.session.do(photograph, own.name, made, word);
  }

  /** A point at a pixel of the picture. */
  tap(id: PhotoPoint, [x, y]: Tap): void {
    const { photo } = this;
    if (!photo) return;
    const within = (v: number, most: number): number =>
      Math.round(10 * Math.min(most, Math.max(0, v))) / 10;
    const tap: Tap = [within(x, photo.width), within(y, photo.height)];
    this.#put(
      { taps: { ...photo.taps, [id]: tap }, unseen: photo.unseen.filter((u) => u !== id) },
      language.inside(pointOf(id).name),
    );
  }

  /** Takes the place that is proposed, if there is no tap, and goes on. */
  set(id: PhotoPoint): void {
    const at = this.at(id);
    if (at && !at.set) this.tap(id, at.tap);
    this.go(1);
  }

  /** It cannot be seen: it stays assumed. */
  cannotSee(id: PhotoPoint): void {
    const { photo } = this;
    if (!photo) return;
    const { [id]: _, ...taps } = photo.taps;
    const unseen = [...photo.unseen.filter((u) => u !== id), id];
    this.#put({ taps, unseen }, words.notSeen(language.inside(pointOf(id).name)));
    this.go(1);
  }

  go(by: number): void {
    const { point, points } = this;
    if (!point) return;
    const at = points.indexOf(point) + by;
    const next = points[Math.min(points.length - 1, Math.max(0, at))];
    if (next) this.goTo(next.id);
  }
  goTo(id: PhotoPoint | null): void {
    this.session.do(goToPoint, id);
  }
  /** To the first point that has no answer yet. */
  goOn(): void {
    const { photo, points } = this;
    const open = points.find(({ id }) => !photo?.taps[id] && !photo?.unseen.includes(id));
    this.goTo((open ?? points[0])?.id ?? null);
  }

  size(key: PhotoSize, text: string): void {
    const { photo } = this;
    if (photo) this.#put({ texts: { ...photo.texts, [key]: text } }, key);
  }

  mirror(): void {
    const { photo } = this;
    if (photo) this.#put({ wheel: photo.wheel === 'left' ? 'right' : 'left' }, 'wheel');
  }

  /** Takes a picture; taps stay where it is as large as the one they were made in. */
  async take(own: OwnBrake, file: File): Promise<void> {
    try {
      const picture = await decode(file, LONGEST_SIDE);
      const { width, height } = picture;
      await pictures.put(own.name, picture);
      const { photo } = own;
      if (!photo || photo.width !== width || photo.height !== height) {
        const texts = photo?.texts ?? {};
        const wheel = photo?.wheel ?? this.session.wheel;
        const seen = photo?.seen ?? null;
        const made: OwnPhoto = { width, height, wheel, texts, taps: {}, unseen: [], seen };
        this.session.do(photograph, own.name, made, 'picture');
      }
      this.goOn();
    } catch (e) {
      if (!(e instanceof PictureTrouble)) throw e;
      this.session.amend(tell, words.wasNotTakenNothingElse(file.name), [e.message]);
    }
  }

  async keep(yes: boolean): Promise<void> {
    const { own } = this;
    if (!own) return;
    try {
      await (yes ? pictures.keep(own.name) : pictures.unkeep(own.name));
    } catch {
      this.session.amend(tell, words.thePictureCouldNotBe, []);
    }
  }

  /** Takes taps and picture away; the way back brings the taps again. */
  forget(own: OwnBrake): void {
    this.session.do(forgetPhoto, own.name);
    pictures.forget(own.name).catch(() => undefined);
  }

  /** Scenes of this brake with other places and, if told, another friction. */
  #make(own: OwnBrake, friction?: number): (seen: OwnSeen) => ReturnType<typeof ownScene> {
    const sizes = friction === undefined ? own.sizes : { ...own.sizes, friction };
    return (seen) => ownScene(own.base, sizes, ownWords(own.base, sizes, own), seen);
  }

  /**
   * The answers with their bands so far, and those of rigid shoes where the bench's bend; null while nothing lies.
   */
  get answers(): {
    readonly told: Answers;
    readonly working: boolean;
    readonly rigid: OwnAnswers | null;
  } | null {
    const { own, read } = this;
    const { bending } = this.session;
    const seen = own?.photo?.seen;
    if (!own || !seen || !read?.seen) return null;
    const [plain, low, high, rigid = null] = this.#plain.of([own, seen, bending], () => {
      const mu = sizeAt(sceneOfOwn(own), 'friction');
      const at = (by: number, bends = bending): OwnAnswers | null =>
        ownAnswers(this.#make(own, mu * by)(seen), PRESS_BAR, bends);
      const plain = bending ? at(1, false) : null;
      return [at(1), at(1 - FRICTION_BAND), at(1 + FRICTION_BAND), plain];
    });
    if (!plain) return null;
    const { results, working } = this.#bands[bending ? 'bending' : 'rigid'].of(seen, () =>
      [...read.spreads].map(
        ([key, spread]: readonly [PlaceKey, readonly [number, number, number]]) =>
          () =>
            varianceOf(this.#make(own), seen, key, spread, PRESS_BAR, bending),
      ),
    );
    const told = {} as Record<keyof OwnAnswers, Banded>;
    for (const key of answerKeys) {
      const picture = 2 * Math.sqrt(results.reduce((sum, r) => sum + Math.max(0, r[key]), 0));
      const value = plain[key];
      // Both may be off at once and are of one another independent: squares add.
      const down = Math.hypot(picture, value - (low?.[key] ?? value));
      const up = Math.hypot(picture, (high?.[key] ?? value) - value);
      told[key] = { value, picture, least: value - down, most: value + up };
    }
    return { told, working, rigid };
  }
}
