import { recordStore as texts } from '../../sim/words/en.ts';
/** What the browser keeps: by key, as text. A browser that keeps nothing, or no more, says so. */
export interface Keeper {
  /** Null where nothing is kept; throws where the browser forbids. */
  get(key: string): string | null;
  /** Throws where the browser is full or forbids. */
  set(key: string, text: string): void;
}

const prefix = 'takeup-';

/** A keeper in one of the browser's storages; asked for each time, since asking alone may throw. */
const keeper = (storage: () => Storage): Keeper => ({
  get: (key) => storage().getItem(prefix + key),
  set: (key, text) => storage().setItem(prefix + key, text),
});

/** For all windows, and after a restart. */
export const forAll: Keeper = keeper(() => localStorage);
/** For this window alone; it outlives a reload and a crash. */
export const forThis: Keeper = keeper(() => sessionStorage);

/** Key in the browser's own storage, as its event names it. */
export const fullKey = (key: string): string => prefix + key;

export const NOTHING_KEPT = texts.nothingKept;
export const NOT_KEPT = texts.notKept;

/** What is kept under a key, and what is wrong, in words; empty when nothing is. */
export function recall(from: Keeper, key: string): { text: string | null; trouble: string } {
  try {
    return { text: from.get(key), trouble: '' };
  } catch {
    return { text: null, trouble: NOTHING_KEPT };
  }
}

/** Keeps a text. Gives what is wrong, in words; empty when it is kept. */
export function keep(at: Keeper, key: string, text: string): string {
  try {
    at.set(key, text);
    return '';
  } catch {
    return NOT_KEPT;
  }
}

/** Puts aside under a key of its own what cannot be read, and says so. */
export function putAside(at: Keeper, key: string, text: string, why: string): string {
  const kept = keep(at, `${key}-unread`, text) === '';
  const where = kept ? texts.itIsStillInThis(fullKey(key)) : texts.thereWasNoRoomTo;
  return texts.whatWasKeptUnderCould(fullKey(key), why, where);
}
