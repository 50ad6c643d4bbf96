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
  readonly name: string;
}
/** Not in every browser, and so not in the language's own list of them. */
interface WithHandles {
  showSaveFilePicker?(options: object): Promise<Handle>;
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
 * @returns what to say; empty where the reader chose not to save
 * @throws what could not be made of the promise, and what the system would not write
 */
export async function saveFile(
  name: string,
  kind: Kind,
  content: Blob | Promise<Blob>,
): Promise<string> {
  const { showSaveFilePicker } = window as unknown as WithHandles;
  if (!showSaveFilePicker) {
    download(name, await content);
    return `${name} is with your downloads.`;
  }
  let handle: Handle;
  try {
    handle = await showSaveFilePicker.call(window, {
      suggestedName: name,
      types: [{ description: kind.tells, accept: { [kind.type]: kind.endings } }],
    });
  } catch (error: unknown) {
    // What was left by Cancel wants no answer.
    if (error instanceof DOMException && error.name === 'AbortError') return '';
    // A frame of another site, or too long after the click: the old way still goes.
    download(name, await content);
    return `${name} is with your downloads.`;
  }
  const file = await handle.createWritable();
  await file.write(await content);
  await file.close();
  return `${handle.name} is saved.`;
}
