import { awaySave as texts } from '../../sim/words/en.ts';
/**
 * Files out of the page and into it: by the browser's own handles where it has them, so that one says
 * where a file goes and what it is called; by a download, or a field for files, elsewhere.
 */

/** A kind of file for the browser's own dialog: what it is, its type, its endings with their dots. */
export interface Kind {
  readonly tells: string;
  readonly type: string;
  readonly endings: readonly `.${string}`[];
}

interface Handle {
  createWritable(): Promise<{ write(data: Blob): Promise<void>; close(): Promise<void> }>;
  getFile(): Promise<File>;
  readonly name: string;
}
/** Not in every browser, and so not in the language's own list of them. */
interface WithHandles {
  showSaveFilePicker?(options: object): Promise<Handle>;
  showOpenFilePicker?(options: object): Promise<readonly Handle[]>;
}

/** The file of each kind that was opened last: saving begins beside it, under its name. */
const opened = new Map<Kind, Handle>();

const typesOf = (kind: Kind) => [
  { description: kind.tells, accept: { [kind.type]: kind.endings } },
];

const isLeft = (error: unknown): boolean =>
  error instanceof DOMException && error.name === 'AbortError';

/**
 * A click on a field for files: where the browser has handles, its dialog opens instead, and the file is known again
 * when it is saved.
 */
export function pickInstead(e: Event, kind: Kind, take: (file: File) => unknown): void {
  const { showOpenFilePicker } = window as unknown as WithHandles;
  if (!showOpenFilePicker) return;
  e.preventDefault();
  const field = e.target as HTMLInputElement;
  showOpenFilePicker.call(window, { types: typesOf(kind) }).then(
    async ([handle]) => {
      if (!handle) return;
      opened.set(kind, handle);
      await take(await handle.getFile());
    },
    (error: unknown) => {
      // A frame of another site may not: the field itself still goes.
      if (!isLeft(error)) field.showPicker();
    },
  );
}

/** A name that every system takes: small letters, digits and hyphens. */
export const plainName = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[^a-z0-9.]+/g, '-')
    .replace(/^[-.]+|[-.]+$/g, '')
    .slice(0, 80) || 'takeup';

function download(name: string, blob: Blob): void {
  const url = URL.createObjectURL(blob);
  const a = document.createElement('a');
  a.href = url;
  a.download = name;
  a.click();
  // Some browsers read it only after the click is over.
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
}

/**
 * Saves a file. The dialog has to follow a click or key at once, so what takes long is handed as a promise.
 *
 * @returns what to say, that the system would not write it too; empty where the reader chose not to save
 * @throws what could not be made of the promise
 */
export async function saveFile(
  name: string,
  kind: Kind,
  content: Blob | Promise<Blob>,
): Promise<string> {
  const { showSaveFilePicker } = window as unknown as WithHandles;
  if (!showSaveFilePicker) {
    download(name, await content);
    return texts.isWithYourDownloads(name);
  }
  let handle: Handle;
  try {
    const beside = opened.get(kind);
    handle = await showSaveFilePicker.call(window, {
      suggestedName: beside?.name ?? name,
      types: typesOf(kind),
      ...(beside ? { startIn: beside } : {}),
    });
  } catch (error: unknown) {
    // What was left by Cancel wants no answer.
    if (isLeft(error)) return '';
    // A frame of another site, or too long after the click: the old way still goes.
    download(name, await content);
    return texts.isWithYourDownloads(name);
  }
  return written(handle, await content);
}

/** Why the system would not write, in words. */
function whyNot(error: unknown): string {
  const name = error instanceof DOMException ? error.name : '';
  if (name === 'QuotaExceededError') return texts.thereIsNoRoomOn;
  if (name === 'NotAllowedError' || name === 'NoModificationAllowedError')
    return texts.itMayNotBeWritten;
  return error instanceof Error ? error.message : String(error);
}

/** Browsers write beside the file until all of it is there: what stood in it stays where it ends before. */
async function written(handle: Handle, content: Blob): Promise<string> {
  try {
    const file = await handle.createWritable();
    await file.write(content);
    await file.close();
    return texts.isSaved(handle.name);
  } catch (error: unknown) {
    return texts.wasNotSavedWhatStands(handle.name, whyNot(error));
  }
}
