/**
 * The language of the page. It is English until somebody chooses another one: what the browser is set to is no choice.
 * The choice stands in the browser's storage, for this window and for those that come, since it is no part of the brake
 * on the bench.
 */
export const languages = ['en', 'de'] as const;
export type Language = (typeof languages)[number];

/** What each calls itself. */
export const namesOfLanguages: Readonly<Record<Language, string>> = {
  en: 'English',
  de: 'Deutsch',
};

const KEY = 'takeup-language';
const ENGLISH: Language = languages[0];

/** A store that keeps nothing stands for one that the browser forbids. */
type Store = Pick<Storage, 'getItem' | 'setItem'>;
const NOTHING: Store = { getItem: () => null, setItem: () => undefined };

const isLanguage = (text: string | null): text is Language =>
  languages.some((language) => language === text);

/** A store of the browser; a file on a disk, or a frame, may have none. */
export function storeOr(find: () => Store): Store {
  try {
    return find();
  } catch {
    return NOTHING;
  }
}

/**
 * Which language is asked for: by the address before what this window spoke last, by that before what was chosen on
 * this device. An address that asks for one does so for its window alone.
 *
 * @param search of the address, with its question mark, or empty
 * @param here what this window keeps
 * @param everywhere what the device keeps
 */
export function languageAsked(search: string, here: Store, everywhere: Store): Language {
  const linked = new URLSearchParams(search).get('lang');
  if (isLanguage(linked)) {
    keepIn(here, linked);
    return linked;
  }
  for (const store of [here, everywhere]) {
    const kept = store.getItem(KEY);
    if (isLanguage(kept)) return kept;
  }
  return ENGLISH;
}

/**
 * The language that this page is to speak. A brake in a page of somebody else speaks as that page asks, whatever its
 * reader chose on the bench.
 */
export function languageHere(): Language {
  const embedded = 'embed' in document.documentElement.dataset;
  const store = (find: () => Store): Store => (embedded ? NOTHING : storeOr(find));
  return languageAsked(
    location.search,
    store(() => sessionStorage),
    store(() => localStorage),
  );
}

function keepIn(store: Store, language: Language): boolean {
  try {
    store.setItem(KEY, language);
    return store.getItem(KEY) === language;
  } catch {
    return false;
  }
}

/** The language that the page speaks: its first tag says so. */
export const spoken = (): Language => {
  const lang = globalThis.document?.documentElement.lang ?? null;
  return isLanguage(lang) ? lang : ENGLISH;
};

/**
 * The language that the browser asks for, where the page has it, does not speak it, and nobody has chosen yet: it may be
 * offered, and is never put on by itself.
 */
export function offered(): Language | null {
  const asked = navigator.language.slice(0, 2).toLowerCase();
  if (!isLanguage(asked) || asked === spoken()) return null;
  const kept = [storeOr(() => sessionStorage), storeOr(() => localStorage)];
  return kept.some((store) => store.getItem(KEY) !== null) ? null : asked;
}

/**
 * From now on the page speaks this language: it is loaded anew, and what stands on the bench is kept as by any reload.
 * Where the browser keeps nothing, the address says it.
 */
export function choose(language: Language): void {
  if (language === spoken()) return;
  const here = keepIn(
    storeOr(() => sessionStorage),
    language,
  );
  keepIn(
    storeOr(() => localStorage),
    language,
  );
  const address = new URL(location.href);
  if (here) address.searchParams.delete('lang');
  else address.searchParams.set('lang', language);
  if (address.href === location.href) location.reload();
  else if (here) {
    history.replaceState(history.state, '', address.href);
    location.reload();
  } else location.replace(address.href);
}
