import type { Moment } from './moment.ts';
import { type Read, readMoment } from './record.ts';

/**
 * The record as text. All of it is JSON but the wear of the linings: lists of doubles, which are
 * written bit for bit, as one number where all are alike and else as base64 of their bytes, lowest
 * byte first.
 */

/** Marks a list of doubles in the text. */
const LIST = '\u0192';

interface List {
  readonly [LIST]: string | readonly [number, number];
}

const bytesToText = (bytes: Uint8Array): string => {
  let text = '';
  for (const b of bytes) text += String.fromCharCode(b);
  return btoa(text);
};

const textToBytes = (text: string): Uint8Array => {
  const raw = atob(text);
  const bytes = new Uint8Array(raw.length);
  for (let i = 0; i < raw.length; i++) bytes[i] = raw.charCodeAt(i);
  return bytes;
};

/** Longest list that is read: no record has one of more elements. */
const LONGEST = 1024;

function fromList(list: Float64Array): List {
  const [first] = list;
  if (first !== undefined && list.every((x) => Object.is(x, first)) && !Object.is(first, -0)) {
    return { [LIST]: [list.length, first] };
  }
  const bytes = new DataView(new ArrayBuffer(8 * list.length));
  list.forEach((x, i) => {
    bytes.setFloat64(8 * i, x, true);
  });
  return { [LIST]: bytesToText(new Uint8Array(bytes.buffer)) };
}

function toList(value: unknown): Float64Array | null {
  if (Array.isArray(value)) {
    const [count, all] = value as unknown[];
    const fits = Number.isInteger(count) && (count as number) >= 0 && (count as number) <= LONGEST;
    return fits && typeof all === 'number' && value.length === 2
      ? new Float64Array(count as number).fill(all)
      : null;
  }
  if (typeof value !== 'string' || value.length > 16 * LONGEST) return null;
  let bytes: Uint8Array;
  try {
    bytes = textToBytes(value);
  } catch {
    return null;
  }
  if (bytes.length % 8 !== 0) return null;
  const view = new DataView(bytes.buffer);
  return Float64Array.from({ length: bytes.length / 8 }, (_, i) => view.getFloat64(8 * i, true));
}

/** A value of the record as plain JSON data. */
export function toPlain(value: unknown): unknown {
  if (value instanceof Float64Array) return fromList(value);
  if (Array.isArray(value)) return value.map(toPlain);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([k, x]) => [k, toPlain(x)]));
}

/** Deepest nesting that is read. */
const DEEPEST = 64;

/** Plain JSON data with its lists of doubles in place. What is no list stays as it is, for the schema to refuse. */
export function fromPlain(value: unknown, depth = 0): unknown {
  if (typeof value !== 'object' || value === null || depth > DEEPEST) return value;
  if (Array.isArray(value)) return value.map((x) => fromPlain(x, depth + 1));
  const entries = Object.entries(value);
  const [only] = entries;
  if (entries.length === 1 && only?.[0] === LIST) return toList(only[1]) ?? value;
  return Object.fromEntries(entries.map(([k, x]) => [k, fromPlain(x, depth + 1)]));
}

export const toText = (m: Moment): string => JSON.stringify(toPlain(m));

/** Reads a record's text; what is wrong is told place by place, also when it is no JSON at all. */
export function fromText(text: string): Read {
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    const found = text.length > 40 ? `${text.slice(0, 37)}…` : text;
    return { ok: false, wrong: [{ path: '', found, allowed: 'JSON' }] };
  }
  return readMoment(fromPlain(data));
}
