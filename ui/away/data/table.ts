import { type Origin, originText } from '../origin.ts';

/** A table of figures, and how it is written: CSV, JSON, and for a spreadsheet's clipboard. No DOM. */
export interface Column {
  readonly name: string;
  /** Empty where there is none. */
  readonly unit: string;
}
/** Null: nothing to tell there. */
export type Cell = string | number | null;

export interface Table {
  readonly id: string;
  readonly title: string;
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly Cell[])[];
}

const headOf = ({ name, unit }: Column): string => (unit === '' ? name : `${name} [${unit}]`);

/**
 * A text that a spreadsheet would take for a formula gets an apostrophe before it: names of one's own brakes
 * are a stranger's. Known as CSV injection (OWASP). Numbers are the page's own and stay as they are.
 */
export const harmless = (text: string): string => (/^[=+\-@\t\r]/.test(text) ? `'${text}` : text);

/** Shortest decimal that reads back to the same double; nothing for what is no number. */
const written = (cell: Cell): string =>
  cell === null || (typeof cell === 'number' && !Number.isFinite(cell))
    ? ''
    : typeof cell === 'number'
      ? String(cell)
      : harmless(cell);

const quoted = (text: string): string =>
  /[",\n\r]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;

/**
 * Comma-separated values (RFC 4180), with units in the header. Where it comes from stands before it in lines that
 * begin with #, as the tabular data model of the W3C (2015) has comments; each is one cell, so that a spreadsheet
 * that knows no comments leaves it whole. The mark at the very beginning says
 * UTF-8 to spreadsheets that would take it for something older.
 */
export function csvOf(table: Table, origin: Origin): string {
  const line = (cells: readonly string[]): string => `${cells.map(quoted).join(',')}\r\n`;
  return [
    '\ufeff',
    line([`# ${harmless(table.title).replace(/[\r\n]+/g, ' ')}`]),
    line([`# ${originText(origin)}`]),
    line(table.columns.map(headOf)),
    ...table.rows.map((row) => line(row.map(written))),
  ].join('');
}

/** JSON with the units beside the names, and where it comes from. What is no number is null. */
export function jsonOf(table: Table, origin: Origin): string {
  const rows = table.rows.map((row) =>
    row.map((c) => (typeof c === 'number' && !Number.isFinite(c) ? null : c)),
  );
  const { title, columns } = table;
  return `${JSON.stringify({ format: 'takeup-table', origin: originText(origin), title, columns, rows }, null, 1)}\n`;
}

/** For the clipboard as plain text: cells parted by tabs, no line breaks in them. */
export function tsvOf({ columns, rows }: Table): string {
  const plain = (text: string): string => text.replace(/[\t\r\n]+/g, ' ');
  return [columns.map(headOf), ...rows.map((row) => row.map(written))]
    .map((cells) => `${cells.map(plain).join('\t')}\n`)
    .join('');
}

const escaped = (text: string): string => text.replace(/[&<>"]/g, (c) => `&#${c.charCodeAt(0)};`);

/** For the clipboard as a table that a text program takes over with its lines. */
export function htmlOf({ title, columns, rows }: Table): string {
  const cells = (tag: string, all: readonly string[]): string =>
    `<tr>${all.map((text) => `<${tag}>${escaped(text)}</${tag}>`).join('')}</tr>`;
  return `<table><caption>${escaped(title)}</caption><thead>${cells('th', columns.map(headOf))}</thead><tbody>${rows.map((row) => cells('td', row.map(written))).join('')}</tbody></table>`;
}
