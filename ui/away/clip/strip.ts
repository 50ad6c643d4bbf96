import { escapeXml, labelText, shapesText } from '../../stage/svg.ts';
import { printTheme } from '../../theme.ts';
import { type Picture, SMALL_SHEET as SHEET } from './picture.ts';

/** Eight moments of a film on a sheet of paper, two by four. */

/** A sheet of A4 or Letter within its margins, in tenths of a millimetre, and a picture's width on it. */
export const STRIP = { width: 1880, height: 2650, cell: 930, gap: 20, head: 58 } as const;
const STRIP_PICTURES = 8;
const ACROSS = 2;
const PER_MM = 10;
/** A line of more letters, such as a long link, has no room. */
const LONG = 100;

/** Where the picture of a number stands, units of the strip. */
export function cellAt(index: number): {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
} {
  const height = (STRIP.cell * SHEET.height) / SHEET.width;
  return {
    x: (index % ACROSS) * (STRIP.cell + STRIP.gap),
    y: STRIP.head + Math.floor(index / ACROSS) * (height + STRIP.gap),
    width: STRIP.cell,
    height,
  };
}

export interface Strip {
  readonly pictures: readonly Picture[];
  /**
   * All of it as one drawing.
   *
   * @param face address of its letters' face; empty: what the reader has stands in
   */
  svg(title: string, head: readonly string[], face: string): string;
}

/** A picture with its number. */
const numbered = (picture: Picture, n: number): Picture => ({
  ...picture,
  words: [
    ...picture.words,
    {
      text: String(n),
      x: SHEET.width - 24,
      y: 34,
      size: 42,
      weight: 760,
      anchor: 'end',
      colour: 'ink',
    },
  ],
});

function cellText(picture: Picture, index: number): string {
  const { height, width, x, y } = cellAt(index);
  const { colours } = printTheme;
  const drawings = picture.drawings
    .map((d, i) => {
      const labels = d.labels.map((l) => labelText(l, d.view, printTheme)).join('');
      return shapesText(d, printTheme, `c${index}d${i}`) + labels;
    })
    .join('');
  const blocks = picture.blocks
    .map(
      (b) =>
        `<rect x="${b.x}" y="${b.y}" width="${b.width}" height="${b.height}" fill="${colours[b.colour]}"/>`,
    )
    .join('');
  const words = picture.words
    .map(
      (w) =>
        `<text x="${w.x}" y="${w.y}" dy="0.35em" font-size="${w.size}" font-weight="${w.weight}" text-anchor="${w.anchor}" fill="${colours[w.colour]}">${escapeXml(w.text)}</text>`,
    )
    .join('');
  return `<svg x="${x}" y="${y}" width="${width}" height="${height}" viewBox="0 0 ${SHEET.width} ${SHEET.height}">${drawings}${blocks}${words}<rect x="1" y="1" width="${SHEET.width - 2}" height="${SHEET.height - 2}" fill="none" stroke="${colours.ink}" stroke-width="2"/></svg>`;
}

/**
 * Eight of a film's pictures, as far apart as may be, the first and the last among them. Where a picture stands,
 * nothing happens: it counts once.
 *
 * @param all null: the one before stands on
 */
export function stripOf(all: readonly (Picture | null)[]): Strip {
  const moving = all.filter((p) => p !== null);
  const pictures = Array.from({ length: STRIP_PICTURES }, (_, i) => {
    const at = Math.round(((moving.length - 1) * i) / (STRIP_PICTURES - 1));
    return numbered(moving[at] as Picture, i + 1);
  });
  return {
    pictures,
    svg(title, head, face) {
      const { height, width } = STRIP;
      const text = (said: string, y: number, size: number, weight: number): string =>
        `<text x="2" y="${y}" font-size="${size}" font-weight="${weight}">${escapeXml(said)}</text>`;
      return [
        `<svg xmlns="http://www.w3.org/2000/svg" width="${width / PER_MM}mm" height="${height / PER_MM}mm" viewBox="0 0 ${width} ${height}" font-family="'Encode Sans Variable','Encode Sans',sans-serif">`,
        `<title>${escapeXml(title)}</title>`,
        face === ''
          ? ''
          : `<style>@font-face{font-family:'Encode Sans Variable';font-weight:100 900;font-stretch:75% 125%;src:url(${face})}</style>`,
        `<rect width="100%" height="100%" fill="${printTheme.colours.sheet}"/>`,
        text(title, 36, 40, 720),
        ...pictures.map(cellText),
        text(head.filter((line) => line.length < LONG).join(' · '), height - 10, 25, 520),
        '</svg>',
      ].join('\n');
    },
  };
}
