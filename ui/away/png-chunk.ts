/** CRC-32 of the format's annex D: reversed polynomial 0xEDB88320, all bits inverted before and after. */
function checkSum(bytes: Uint8Array): number {
  let c = 0xffffffff;
  for (const byte of bytes) {
    c ^= byte;
    for (let bit = 0; bit < 8; bit++) c = c & 1 ? (c >>> 1) ^ 0xedb88320 : c >>> 1;
  }
  return (c ^ 0xffffffff) >>> 0;
}

/** A chunk of a picture in Portable Network Graphics (third edition, W3C 2025): length, name, data, check sum. */
export function chunk(name: string, data: Uint8Array): Uint8Array {
  const out = new Uint8Array(12 + data.length);
  const view = new DataView(out.buffer);
  view.setUint32(0, data.length);
  for (let i = 0; i < 4; i++) out[4 + i] = name.charCodeAt(i);
  out.set(data, 8);
  view.setUint32(8 + data.length, checkSum(out.subarray(4, 8 + data.length)));
  return out;
}
