/**
 * Keeps all files of the page in the browser, so that it opens without a network, under whatever path it is served.
 * A newer one waits until it is told to take over, or until no window of the older is left.
 */

/** Path from the page's folder, and the first letters of the content's SHA-256; put in by `serve/offline.mjs`. */
declare const TAKEUP_FILES: readonly (readonly [path: string, hash: string])[];
/** Files of each further language, kept once it is chosen; they are named by their content. */
declare const TAKEUP_LANGUAGES: Readonly<Record<string, readonly string[]>>;
/** Of all of them. */
declare const TAKEUP_VERSION: string;

/** What of the worker's own scope is used here: TypeScript's library of it excludes that of the page. */
interface Event {
  waitUntil(done: Promise<unknown>): void;
}
interface Fetching extends Event {
  readonly request: Request;
  respondWith(answer: Promise<Response>): void;
}
interface Scope {
  readonly registration: { readonly scope: string };
  readonly clients: { claim(): Promise<void> };
  skipWaiting(): Promise<void>;
  addEventListener(type: 'install' | 'activate', hear: (e: Event) => void): void;
  addEventListener(type: 'fetch', hear: (e: Fetching) => void): void;
  addEventListener(type: 'message', hear: (e: MessageEvent<unknown> & Event) => void): void;
}
const here = globalThis as unknown as Scope;

const home = here.registration.scope;
/** Of this copy of the page: another path of the same site may hold another one. */
const OURS = `takeup ${home} `;
const NAME = OURS + TAKEUP_VERSION;
const known = new Set(TAKEUP_FILES.map(([path]) => path));

/** On this machine itself someone builds: what the server has comes first, what is kept only when it is gone. */
const LOCAL = /^(?:localhost|127\.0\.0\.1|\[::1\])$/.test(new URL(home).hostname);

/** The page itself is asked for by its folder: some hosts send the name on to it. */
const addressOf = (path: string): string =>
  new URL(path === 'index.html' ? './' : `./${path}`, home).href;

/** A file named by its content is the same in every version. */
const byContent = (path: string): boolean => path.startsWith('assets/');

/** An answer that another address gave may not be shown as a page: here it is this address's own. */
async function own(answer: Response): Promise<Response> {
  if (!answer.redirected) return answer;
  return new Response(await answer.blob(), { status: answer.status, headers: answer.headers });
}

/** From what is kept: this version's, else an older one's that some window may still need. */
async function kept(address: string): Promise<Response | undefined> {
  const mine = await (await caches.open(NAME)).match(address);
  if (mine) return mine;
  for (const name of await caches.keys()) {
    if (!name.startsWith(OURS) || name === NAME) continue;
    const old = await (await caches.open(name)).match(address);
    if (old) return old;
  }
  return undefined;
}

async function keepFiles(paths: readonly string[]): Promise<void> {
  const cache = await caches.open(NAME);
  await Promise.all(
    paths.map(async (path) => {
      const address = addressOf(path);
      const before = byContent(path) ? await kept(address) : undefined;
      // Asked anew: what the browser kept by itself may be older than this list.
      const answer = before ?? (await fetch(address, { cache: 'no-cache' }));
      if (!answer.ok) throw new Error(`${path}: ${answer.status}`);
      await cache.put(address, await own(answer));
    }),
  );
}

/** Stands in what is kept for a language that was chosen here, so that a newer page keeps it too. */
const chosen = (language: string): string => addressOf(`chosen-language/${language}`);

async function keepLanguage(language: string): Promise<void> {
  await keepFiles(TAKEUP_LANGUAGES[language] ?? []);
  await (await caches.open(NAME)).put(chosen(language), new Response(''));
}

async function keepAll(): Promise<void> {
  await keepFiles(TAKEUP_FILES.map(([path]) => path));
  for (const language of Object.keys(TAKEUP_LANGUAGES))
    if (await kept(chosen(language))) await keepLanguage(language);
}

/** Older ones go, but the last: a window that was not opened anew goes on with its files. */
async function letGo(): Promise<void> {
  const before = (await caches.keys()).filter((n) => n.startsWith(OURS) && n !== NAME);
  await Promise.all(before.slice(0, -1).map((name) => caches.delete(name)));
}

async function answer(request: Request, path: string): Promise<Response> {
  const address = addressOf(path);
  if (LOCAL && !byContent(path)) {
    try {
      return await fetch(request);
    } catch {
      return (await kept(address)) ?? Response.error();
    }
  }
  return (await kept(address)) ?? fetch(request);
}

here.addEventListener('install', (e) => {
  e.waitUntil(LOCAL ? keepAll().then(() => here.skipWaiting()) : keepAll());
});
here.addEventListener('activate', (e) => {
  e.waitUntil(letGo().then(() => here.clients.claim()));
});
here.addEventListener('message', (e) => {
  if (e.data === 'take over') here.skipWaiting();
  const { keep } = (e.data ?? {}) as { readonly keep?: unknown };
  if (typeof keep === 'string' && keep in TAKEUP_LANGUAGES) e.waitUntil(keepLanguage(keep));
});
here.addEventListener('fetch', (e) => {
  const { method, url } = e.request;
  if (method !== 'GET' || !url.startsWith(home)) return;
  const path = url.slice(home.length).replace(/[?#].*$/s, '') || 'index.html';
  if (known.has(path) || byContent(path)) e.respondWith(answer(e.request, path));
});
