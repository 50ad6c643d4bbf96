import { jsPDF } from 'jspdf';
import { awayCutPdf as texts } from '../../../sim/words/en.ts';
import type { PaperSize } from '../../pieces/papers.ts';
import { PAPERS } from '../../pieces/papers.ts';
import type { Layout, Piece } from './layout.ts';
import { boxOf } from './polygons.ts';

/**
 * The sheet of cuts on pages to be laid edge over edge: each page shows its part of the sheet at true size, with a
 * strip of the next page's beside it, marks to lay them by, and a bar of 100 mm to measure the print by.
 */

/** mm: border of a page that no printer reaches, room under the picture for its words, and the strip shown twice. */
const BORDER = 12;
const FOOT = 12;
const OVERLAP = 10;
/** The bar that tells whether a page was printed at true size, mm. */
export const CHECK_BAR = 100;
/** mm: a mark's arm. */
const MARK = 4;

export interface Tile {
  readonly column: number;
  readonly row: number;
  /** Lower left corner on the sheet, mm. */
  readonly left: number;
  readonly low: number;
}

interface Grid {
  readonly tiles: readonly Tile[];
  readonly columns: number;
  readonly rows: number;
  /** What a page shows of the sheet, mm. */
  readonly wide: number;
  readonly high: number;
}

const meets = (p: Piece, left: number, low: number, wide: number, high: number): boolean => {
  const box = boxOf(p.lines);
  return box.left < left + wide && box.right > left && box.low < low + high && box.high > low;
};

/** The pages that the sheet needs; those with nothing on them are left out. */
export function tilesOf({ width, height, pieces }: Layout, paper: PaperSize): Grid {
  const page = PAPERS[paper];
  const wide = page.width - 2 * BORDER;
  const high = page.height - 2 * BORDER - FOOT;
  const [stepX, stepY] = [wide - OVERLAP, high - OVERLAP];
  const columns = Math.max(1, Math.ceil((width - OVERLAP) / stepX));
  const rows = Math.max(1, Math.ceil((height - OVERLAP) / stepY));
  const tiles = Array.from({ length: rows * columns }, (_, i): Tile => {
    const [column, row] = [i % columns, Math.floor(i / columns)];
    return { column, row, left: column * stepX, low: height - high - row * stepY };
  }).filter(({ left, low }) => pieces.some((p) => meets(p, left, low, wide, high)));
  return { tiles, columns, rows, wide, high };
}

/** Rows by letters, columns by numbers. */
export const tileName = ({ column, row }: Tile): string =>
  `${String.fromCharCode(65 + row)}${column + 1}`;

function pieceOn(
  doc: jsPDF,
  { lines, circles, name, part }: Piece,
  at: (p: readonly [number, number]) => [number, number],
): void {
  for (const p of lines) {
    p.forEach((q, i) => {
      const [x, y] = at(q);
      if (i === 0) doc.moveTo(x, y);
      else doc.lineTo(x, y);
    });
    doc.close();
    doc.stroke();
  }
  for (const c of circles) {
    const [x, y] = at(c.at);
    doc.circle(x, y, c.radius, 'S');
    doc.line(x - 1, y, x + 1, y);
    doc.line(x, y - 1, x, y + 1);
  }
  const [x, y] = at(name.at);
  doc.setFontSize(8.5);
  doc.text(plain(part.name), x, y);
}

/** The library's own fonts know the Western letters alone. */
const plain = (text: string): string =>
  text.replaceAll('’', "'").replaceAll('\u2013', '-').replaceAll('\u2212', '-');

/**
 * The pages as a PDF's bytes.
 *
 * @param said one line of what it is of, at every page's foot
 */
export function cutPdf(layout: Layout, paper: PaperSize, said: string): ArrayBuffer {
  const { width, height } = PAPERS[paper];
  const grid = tilesOf(layout, paper);
  const doc = new jsPDF({ unit: 'mm', format: [width, height], compress: true });
  doc.setProperties({ title: texts.cutOutModel, subject: said });
  grid.tiles.forEach((tile, i) => {
    if (i > 0) doc.addPage([width, height]);
    const at = ([x, y]: readonly [number, number]): [number, number] => [
      BORDER + x - tile.left,
      BORDER + grid.high - (y - tile.low),
    ];
    doc.setLineWidth(0.18);
    doc.saveGraphicsState();
    doc.rect(BORDER, BORDER, grid.wide, grid.high, null);
    doc.clip();
    doc.discardPath();
    for (const p of layout.pieces) {
      if (meets(p, tile.left, tile.low - 8, grid.wide, grid.high + 16)) pieceOn(doc, p, at);
    }
    doc.restoreGraphicsState();
    marks(doc, grid);
    foot(doc, grid, tile, said);
  });
  return doc.output('arraybuffer');
}

/** Crosses where the strips that are shown twice begin: those of two pages lie on each other. */
function marks(doc: jsPDF, { wide, high }: Grid): void {
  doc.setLineWidth(0.12);
  for (const x of [BORDER, BORDER + OVERLAP, BORDER + wide - OVERLAP, BORDER + wide]) {
    for (const y of [BORDER, BORDER + OVERLAP, BORDER + high - OVERLAP, BORDER + high]) {
      doc.line(x - MARK / 2, y, x + MARK / 2, y);
      doc.line(x, y - MARK / 2, x, y + MARK / 2);
    }
  }
}

function foot(doc: jsPDF, { columns, high, rows }: Grid, tile: Tile, said: string): void {
  const y = BORDER + high + 6;
  doc.setLineWidth(0.3);
  doc.line(BORDER, y, BORDER + CHECK_BAR, y);
  for (const x of [0, 50, CHECK_BAR]) doc.line(BORDER + x, y - 1.5, BORDER + x, y + 1.5);
  doc.setFontSize(9);
  doc.text(texts.of100MmMeasureItPrint, BORDER, y + 4.6);
  doc.setFontSize(14);
  doc.text(tileName(tile), BORDER + CHECK_BAR + 8, y + 2);
  doc.setFontSize(8.5);
  doc.text(texts.ofRowsColumnsCrossesLie(rows, columns), BORDER + CHECK_BAR + 20, y + 1.6);
  doc.text(plain(said), BORDER, y + 9);
}
