import { chunk } from '../png-chunk.ts';

/**
 * A short loop as an animated PNG (W3C, PNG, third edition, 11.3.4: acTL, fcTL, fdAT): pictures that the browser
 * itself has encoded as PNG, put together. Of each only the rectangle that changed is kept.
 */

export interface Cel {
  /** The rectangle as a PNG of its own. */
  readonly png: Uint8Array;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  /** So many pictures long it stands. */
  lasts: number;
}

const SIGNATURE = 8;

/** The data of all of a PNG's chunks of a kind, in their order. */
function dataOf(png: Uint8Array, kind: string): Uint8Array[] {
  const view = new DataView(png.buffer, png.byteOffset, png.byteLength);
  const out: Uint8Array[] = [];
  for (let at = SIGNATURE; at + 12 <= png.length; ) {
    const long = view.getUint32(at);
    if (String.fromCharCode(...png.subarray(at + 4, at + 8)) === kind) {
      out.push(png.subarray(at + 8, at + 8 + long));
    }
    at += 12 + long;
  }
  return out;
}

const numbers = (length: number, put: (view: DataView) => void): Uint8Array => {
  const out = new Uint8Array(length);
  put(new DataView(out.buffer));
  return out;
};

/**
 * @param cels the first as large as the whole
 * @param rate pictures a second
 */
export function apng(cels: readonly Cel[], rate: number): Uint8Array {
  const [first] = cels;
  const head = first && dataOf(first.png, 'IHDR')[0];
  if (!first || !head) throw new Error('A loop has one picture at least.');
  const kind = (of: Uint8Array): string => of.subarray(8).join(' ');
  let turn = 0;
  const parts: Uint8Array[] = [
    first.png.subarray(0, SIGNATURE),
    chunk('IHDR', head),
    chunk(
      'acTL',
      // Over and over.
      numbers(8, (v) => v.setUint32(0, cels.length)),
    ),
  ];
  cels.forEach((cel, i) => {
    const own = dataOf(cel.png, 'IHDR')[0];
    if (!own || kind(own) !== kind(head)) throw new Error('Its pictures are of different kinds.');
    const control = numbers(26, (v) => {
      v.setUint32(0, turn++);
      v.setUint32(4, cel.width);
      v.setUint32(8, cel.height);
      v.setUint32(12, cel.x);
      v.setUint32(16, cel.y);
      v.setUint16(20, cel.lasts);
      v.setUint16(22, rate);
      // Left as it stands after, and put over what is there as it is.
    });
    parts.push(chunk('fcTL', control));
    for (const data of dataOf(cel.png, 'IDAT')) {
      if (i === 0) parts.push(chunk('IDAT', data));
      else {
        const numbered = new Uint8Array(4 + data.length);
        new DataView(numbered.buffer).setUint32(0, turn++);
        numbered.set(data, 4);
        parts.push(chunk('fdAT', numbered));
      }
    }
  });
  parts.push(chunk('IEND', new Uint8Array()));
  const out = new Uint8Array(parts.reduce((sum, p) => sum + p.length, 0));
  let at = 0;
  for (const p of parts) {
    out.set(p, at);
    at += p.length;
  }
  return out;
}
