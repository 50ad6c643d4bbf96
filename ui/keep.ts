/**
 * Keeps what was typed in the browser, at once. A key carries its version; what cannot be read is
 * left where it is and told, never overwritten by a blank. A browser that keeps nothing is told too.
 */
export interface Kept<T> {
  readonly value: T | null;
  /** What is wrong with what was kept, in words for the page; empty when nothing is. */
  readonly trouble: string;
}

const prefix = 'takeup';

/**
 * @param name of what is kept, with its version: "sheet-1"
 * @param read turns parsed JSON into the value, or null when it is none
 */
export function recall<T>(name: string, read: (data: unknown) => T | null): Kept<T> {
  let text: string | null;
  try {
    text = localStorage.getItem(`${prefix}-${name}`);
  } catch {
    return {
      value: null,
      trouble: 'This browser keeps nothing: what you type is gone on closing.',
    };
  }
  if (text === null) return { value: null, trouble: '' };
  let value: T | null = null;
  try {
    value = read(JSON.parse(text));
  } catch {
    value = null;
  }
  if (value !== null) return { value, trouble: '' };
  try {
    localStorage.setItem(`${prefix}-${name}-unread`, text);
  } catch {
    // Full or forbidden: the message below is all that can be done.
  }
  return {
    value: null,
    trouble: `What was kept before could not be read; it is still in this browser under "${prefix}-${name}-unread".`,
  };
}

/** Keeps a value at once. Gives what is wrong, in words for the page; empty when it is kept. */
export function keep(name: string, value: unknown): string {
  try {
    localStorage.setItem(`${prefix}-${name}`, JSON.stringify(value));
    return '';
  } catch {
    return 'This browser does not keep what you type: print or copy it before you close the page.';
  }
}

/** A record of texts; keys that are none are left out. */
export function textsOf(data: unknown): Record<string, string> {
  if (typeof data !== 'object' || data === null || Array.isArray(data)) return {};
  return Object.fromEntries(
    Object.entries(data).filter((e): e is [string, string] => typeof e[1] === 'string'),
  );
}
