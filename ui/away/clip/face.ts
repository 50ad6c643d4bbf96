import face from '@fontsource-variable/encode-sans/files/encode-sans-latin-wdth-normal.woff2?url';

/** The page's face as an address that holds it all, for a drawing that leaves the page; empty where it is not to be had. */
export async function faceWithin(): Promise<string> {
  // In the page as one file it stands there so already.
  if (face.startsWith('data:')) return face;
  try {
    const bytes = new Uint8Array(await (await fetch(face)).arrayBuffer());
    const text = Array.from(bytes, (b) => String.fromCharCode(b)).join('');
    return `data:font/woff2;base64,${btoa(text)}`;
  } catch {
    return '';
  }
}
