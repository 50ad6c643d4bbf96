/**
 * Text packed for an address: deflate (RFC 1951) by the browser's own streams, in the alphabet of
 * RFC 4648 section 5 (base64url). What comes back is a stranger's: no more is unpacked than allowed.
 */

const toUrl = (bytes: Uint8Array): string => {
  let raw = '';
  for (const b of bytes) raw += String.fromCharCode(b);
  return btoa(raw).replaceAll('+', '-').replaceAll('/', '_').replace(/=+$/, '');
};

const fromUrl = (text: string): Uint8Array<ArrayBuffer> => {
  const raw = atob(text.replaceAll('-', '+').replaceAll('_', '/'));
  return Uint8Array.from(raw, (c) => c.charCodeAt(0));
};

/** All of a stream, at most so many bytes; null when it is more. */
async function all(stream: ReadableStream<Uint8Array>, most: number): Promise<Uint8Array | null> {
  const reader = stream.getReader();
  const chunks: Uint8Array[] = [];
  let size = 0;
  for (;;) {
    const { done, value } = await reader.read();
    if (done) break;
    size += value.length;
    if (size > most) {
      await reader.cancel();
      return null;
    }
    chunks.push(value);
  }
  const out = new Uint8Array(size);
  let at = 0;
  for (const chunk of chunks) {
    out.set(chunk, at);
    at += chunk.length;
  }
  return out;
}

const through = (
  bytes: Uint8Array<ArrayBuffer>,
  way: CompressionStream | DecompressionStream,
): ReadableStream<Uint8Array> => new Blob([bytes]).stream().pipeThrough(way);

export async function pack(text: string): Promise<string> {
  const bytes = new TextEncoder().encode(text);
  const packed = await all(
    through(bytes, new CompressionStream('deflate-raw')),
    Number.POSITIVE_INFINITY,
  );
  return toUrl(packed as Uint8Array);
}

/** Unpacks at most so many bytes; throws with what is wrong. */
export async function unpack(packed: string, most: number): Promise<string> {
  if (!/^[A-Za-z0-9_-]*$/.test(packed)) throw new Error('letters that no link has');
  const bytes = await all(through(fromUrl(packed), new DecompressionStream('deflate-raw')), most);
  if (!bytes) throw new Error(`more than ${most} bytes`);
  return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
}
