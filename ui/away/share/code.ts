import { encode } from 'uqr';

/**
 * A link as a code for a phone's camera (QR code, ISO/IEC 18004), as path data in its own modules.
 *
 * A code is offered up to version 25 with low correction: 117 modules across, 1 273 bytes (table 7 of the
 * standard). Beyond it a phone held in the hand no longer tells the modules apart on a screen: common practice,
 * not measured. The correction is raised for nothing where the version has room.
 */
export const MOST_VERSION = 25;
export const MOST_CODED = 1273;
/** The quiet zone that the standard asks for, modules. */
const QUIET = 4;

export interface Code {
  /** Modules across, with the quiet zone. */
  readonly size: number;
  /** Dark modules, one subpath a run in its row. */
  readonly path: string;
}

/** Null where it is too much for a code that is easily read. */
export function codeOf(text: string): Code | null {
  if (new TextEncoder().encode(text).length > MOST_CODED) return null;
  const { size, data } = encode(text, {
    ecc: 'L',
    boostEcc: true,
    border: QUIET,
    maxVersion: MOST_VERSION,
  });
  let path = '';
  data.forEach((row, y) => {
    for (let x = 0; x < row.length; x++) {
      if (!row[x]) continue;
      const from = x;
      while (row[x + 1]) x++;
      path += `M${from} ${y}h${x + 1 - from}v1H${from}z`;
    }
  });
  return { size, path };
}
