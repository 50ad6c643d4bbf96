import { chunk } from '../png-chunk.ts';

/**
 * Pictures made of points: an SVG painted by the browser, and what is written beside the points. The format
 * is that of Portable Network Graphics (third edition, W3C 2025): chunks of length, name, data, and a check sum.
 */

/** The header: signature (8 bytes), then the chunk IHDR (25 bytes); others may follow at once. */
const AFTER_HEADER = 33;

/**
 * A picture with a text beside its points, and its size on paper.
 *
 * @param png a whole file
 * @param text any, kept as international text under the keyword Comment
 * @param perMetre points a metre of paper
 */
export function withText(png: Uint8Array, text: string, perMetre: number): Uint8Array {
  const size = new Uint8Array(9);
  const view = new DataView(size.buffer);
  view.setUint32(0, Math.round(perMetre));
  view.setUint32(4, Math.round(perMetre));
  size[8] = 1;
  // Keyword, no compression, no language, no translated keyword: their ends and marks are zeros.
  const written = new TextEncoder().encode(`Comment\0\0\0\0\0${text}`);
  const parts = [
    png.subarray(0, AFTER_HEADER),
    chunk('pHYs', size),
    chunk('iTXt', written),
    png.subarray(AFTER_HEADER),
  ];
  const out = new Uint8Array(parts.reduce((sum, p) => sum + p.length, 0));
  let at = 0;
  for (const part of parts) {
    out.set(part, at);
    at += part.length;
  }
  return out;
}

/** An SVG painted in a size, px. Null where the browser has no room for so large a picture. */
export async function paint(svg: string, width: number, height: number): Promise<Blob | null> {
  const url = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }));
  try {
    const image = new Image(width, height);
    image.src = url;
    await image.decode();
    const canvas = document.createElement('canvas');
    canvas.width = width;
    canvas.height = height;
    const pen = canvas.getContext('2d');
    if (!pen) return null;
    pen.drawImage(image, 0, 0, width, height);
    return await new Promise((done) => {
      canvas.toBlob(done, 'image/png');
    });
  } finally {
    URL.revokeObjectURL(url);
  }
}
