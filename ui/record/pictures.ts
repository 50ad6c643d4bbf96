import { recordPictures as texts } from '../../sim/words/en.ts';
import { forAll, keep, recall } from './store.ts';

/**
 * Pictures of one's own brakes. They stay on this device: in memory while the page is open and, only if
 * asked, in this browser's own store, drawn anew, so that no place or camera data of the file goes along.
 */
const STORE = 'pictures';
/** Under this, names of pictures whose taking away the store has not carried out yet. */
const GOING = 'pictures-going';
/** Of the picture that is kept. */
const QUALITY = 0.85;

/** Why a picture cannot be taken, in words. */
export class PictureTrouble extends Error {}

const asked = <T>(request: IDBRequest<T>): Promise<T> =>
  new Promise((done, failed) => {
    request.onsuccess = () => done(request.result);
    request.onerror = () => failed(request.error);
  });

async function store(mode: IDBTransactionMode): Promise<IDBObjectStore> {
  const opening = indexedDB.open('takeup-pictures', 1);
  opening.onupgradeneeded = () => opening.result.createObjectStore(STORE);
  return (await asked(opening)).transaction(STORE, mode).objectStore(STORE);
}

/** HEIC and its kin begin with a box named so. */
const HEIC = /^ftyp(heic|heix|hevc|hevx|mif1|msf1)/;

/**
 * Decodes a picture as its file says it stands upright.
 *
 * @param longest most pixels of a side; a larger one is drawn smaller
 */
export async function decode(file: Blob, longest: number): Promise<HTMLCanvasElement> {
  const head = new TextDecoder('latin1').decode(await file.slice(4, 12).arrayBuffer());
  let bitmap: ImageBitmap;
  try {
    bitmap = await createImageBitmap(file);
  } catch {
    throw new PictureTrouble(
      HEIC.test(head) ? texts.thisBrowserCannotReadThis : texts.thisFileIsNoPicture,
    );
  }
  const { width, height } = bitmap;
  const by = Math.min(1, longest / Math.max(width, height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(width * by));
  canvas.height = Math.max(1, Math.round(height * by));
  canvas.getContext('2d')?.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
  bitmap.close();
  return canvas;
}

/**
 * Names of pictures that were taken away. The store may do it after the page has gone: a reload right after must not
 * show again what somebody took away, so the name is written down at once, until it is done.
 */
class Going {
  #names(): string[] {
    const { text } = recall(forAll, GOING);
    return text ? text.split('\n') : [];
  }
  #write(names: readonly string[]): void {
    keep(forAll, GOING, names.join('\n'));
  }
  has(name: string): boolean {
    return this.#names().includes(name);
  }
  add(name: string): void {
    if (!this.has(name)) this.#write([...this.#names(), name]);
  }
  done(name: string): void {
    if (this.has(name)) this.#write(this.#names().filter((n) => n !== name));
  }
}

/** Tells `change` when a picture came or went. */
class Pictures extends EventTarget {
  readonly #open = new Map<string, HTMLCanvasElement>();
  readonly #kept = new Set<string>();
  readonly #looked = new Set<string>();
  readonly #going = new Going();

  #tell(): void {
    this.dispatchEvent(new Event('change'));
  }

  /** The picture of a brake by its name; looked for in the browser's store once. */
  of(name: string): HTMLCanvasElement | undefined {
    if (!this.#looked.has(name)) {
      this.#looked.add(name);
      this.#look(name).catch(() => undefined);
    }
    return this.#open.get(name);
  }

  async #look(name: string): Promise<void> {
    if (this.#going.has(name)) {
      await this.forget(name);
      return;
    }
    const blob: unknown = await asked((await store('readonly')).get(name));
    if (!(blob instanceof Blob)) return;
    this.#kept.add(name);
    if (!this.#open.has(name)) this.#open.set(name, await decode(blob, Number.POSITIVE_INFINITY));
    this.#tell();
  }

  isKept(name: string): boolean {
    return this.#kept.has(name);
  }

  async put(name: string, picture: HTMLCanvasElement): Promise<void> {
    this.#looked.add(name);
    this.#going.done(name);
    this.#open.set(name, picture);
    this.#tell();
    if (this.#kept.has(name)) await this.keep(name);
  }

  /** Keeps the picture in this browser; throws where there is no room. */
  async keep(name: string): Promise<void> {
    const picture = this.#open.get(name);
    if (!picture) return;
    const blob = await new Promise<Blob | null>((done) =>
      picture.toBlob(done, 'image/jpeg', QUALITY),
    );
    // Meanwhile it may have been taken away, or another put in its place.
    if (this.#open.get(name) !== picture) return;
    await asked((await store('readwrite')).put(blob, name));
    this.#going.done(name);
    if (!this.#open.has(name)) return this.unkeep(name);
    this.#kept.add(name);
    this.#tell();
  }

  async unkeep(name: string): Promise<void> {
    this.#kept.delete(name);
    this.#going.add(name);
    this.#tell();
    await asked((await store('readwrite')).delete(name));
    this.#going.done(name);
  }

  /** Takes all whose names begin so out of memory and store. */
  async forgetAll(start: string): Promise<void> {
    const kept = await asked((await store('readonly')).getAllKeys());
    const names = new Set([...kept.map(String), ...this.#open.keys()]);
    for (const name of names) if (name.startsWith(start)) await this.forget(name);
  }

  /** Takes it out of memory and store. */
  async forget(name: string): Promise<void> {
    this.#open.delete(name);
    await this.unkeep(name);
  }
}

export const pictures = new Pictures();
