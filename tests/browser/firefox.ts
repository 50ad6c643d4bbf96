import { type Browser, type BrowserContextOptions, firefox, type Page } from 'playwright-core';
import { it } from 'vitest';

/** Set by `npm run test:firefox`: the executable; the tests then run in it, over WebDriver BiDi. */
export const FIREFOX = process.env['TAKEUP_FIREFOX'];

/** A test of what Firefox cannot be asked for over BiDi: tests/browser-kinds.md names it, with why. Never left out in Chromium. */
export const inChromiumAlone = it.runIf(FIREFOX === undefined);

/** What a page may ask of its reader's settings: BiDi of this Firefox cannot say it of one page, its profile can. */
type Media = Pick<
  BrowserContextOptions,
  'reducedMotion' | 'colorScheme' | 'forcedColors' | 'hasTouch'
>;

/** What points at the page, as bits of Firefox's own: 1 coarse, 2 fine, 4 hovers. */
const FINGER = 1;
const MOUSE = 2 + 4;

/**
 * Colours that the system says, where it says them. Firefox then takes dark or light from the ground among them,
 * whatever else says it.
 */
const forcedPrefs = (dark: boolean) => ({
  // 1 only where the system has much contrast, 2 always.
  'browser.display.document_color_use': 2,
  'browser.display.background_color': dark ? '#000000' : '#ffffff',
  'browser.display.foreground_color': dark ? '#ffffff' : '#000000',
  'browser.anchor_color': dark ? '#ffff00' : '#0000ee',
  'browser.visited_color': dark ? '#ffff00' : '#551a8b',
});

const prefsOf = (
  { reducedMotion, colorScheme, forcedColors, hasTouch }: Media,
  phone: boolean,
) => ({
  'ui.prefersReducedMotion': reducedMotion === 'reduce' ? 1 : 0,
  // 0 dark, 1 light.
  'layout.css.prefers-color-scheme.content-override': colorScheme === 'dark' ? 0 : 1,
  // 1: the page's own.
  'browser.display.document_color_use': 1,
  ...(forcedColors === 'active' && forcedPrefs(colorScheme === 'dark')),
  // What the page's style asks of a device (`pointer`, `hover`, and their `any-`): a finger or a mouse.
  'ui.primaryPointerCapabilities': hasTouch ? FINGER : MOUSE,
  'ui.allPointerCapabilities': hasTouch ? FINGER : MOUSE,
  'dom.w3c_touch_events.enabled': hasTouch ? 1 : 0,
  // A phone's bars lie over the page; at a desk they take its room, as they do in Chromium outside of tests.
  'ui.useOverlayScrollbars': phone ? 1 : 0,
  // One process for a page and another site's frame in it: keys of the test tool go to the page's process alone.
  'fission.webContentIsolationStrategy': 0,
  // What is saved leaves the page in front and its keys with it: the browser's list of downloads would take them, and
  // a saved PDF would be opened in a tab of its own.
  'browser.download.alwaysOpenPanel': false,
  'pdfjs.disabled': true,
  // What is printed keeps its letters: of a typeface with many weights Firefox else draws their outlines alone, in
  // which no other hand can read a word.
  'print.font-variations-as-paths': false,
  // Nothing of its own on the network.
  'app.update.enabled': false,
  'datareporting.policy.dataSubmissionEnabled': false,
});

interface Session {
  send(method: string, params: unknown): Promise<unknown>;
  dispatchMessage(message: { method?: string; params?: Record<string, unknown> }): void;
}

/**
 * What the tool lays into a page to find labels by, without the one word of it that ends Firefox's process of the page:
 * once the elements that label another were asked for from the tool's world beside the page's
 * (`ariaLabelledByElements`), axe in the page, or a later look of the tool, brings it down (signal 11). The tool then
 * reads the attribute, which is all that the page has.
 */
const withoutReflected = (params: unknown): unknown => {
  const { expression } = params as { readonly expression?: unknown };
  if (typeof expression !== 'string') return params;
  const mended = expression.replaceAll('.ariaLabelledByElements', '.ariaLabelledByNone');
  return { ...(params as object), expression: mended };
};

/** Classes of the tool that are mended already: once a process. */
const mended = new WeakSet<object>();

/**
 * Three things in which the test tool and the stable Firefox do not meet. The tool asks for media features of each
 * context, which the browser does not know yet: that one command is taken as done, and what it would have said is in
 * the profile; all else that is unknown stays an error. And the tool passes over a download without a number, which
 * the browser does not give to what a page makes itself: its address, a blob's, stands for it. And what the tool reads
 * of labels ends the page (`withoutReflected`).
 */
function mendSession(browser: Browser): void {
  const { _connection } = browser as unknown as {
    _connection: { toImpl(of: object): { _browserSession: Session } };
  };
  const sessions = Object.getPrototypeOf(_connection.toImpl(browser)._browserSession) as Session;
  if (mended.has(sessions)) return;
  mended.add(sessions);
  const { send, dispatchMessage } = sessions;
  sessions.send = async function (this: Session, method, params) {
    if (method === 'emulation.setMediaFeaturesOverride') return {};
    return send.call(this, method, withoutReflected(params));
  };
  sessions.dispatchMessage = function (this: Session, message) {
    const { method, params } = message;
    if (method?.startsWith('browsingContext.download') && params)
      params['download'] ??= params['navigation'] ?? params['url'];
    dispatchMessage.call(this, message);
  };
}

/** More than a person types into a field of the page; each key takes some milliseconds. */
const TYPED = 200;

interface Keys {
  sendText(progress: unknown, text: string): Promise<void>;
  _performActions(
    progress: unknown,
    actions: readonly { type: 'keyDown' | 'keyUp'; value: string }[],
  ): Promise<void>;
}

interface Mouse {
  readonly _raw: {
    _performActions(
      progress: unknown,
      actions: readonly { type: 'pointerDown' | 'pointerUp'; button: number }[],
    ): Promise<void>;
  };
  move(progress: unknown, x: number, y: number): Promise<void>;
  click(
    progress: unknown,
    x: number,
    y: number,
    options?: { readonly clickCount?: number },
  ): Promise<void>;
}

interface Delegate {
  readonly rawKeyboard: Keys;
  readonly _page: {
    /** What a test has asked for since the page was opened. */
    readonly _emulatedMedia: {
      readonly media?: 'screen' | 'print' | 'no-override';
      readonly colorScheme?: 'light' | 'dark' | 'no-preference' | 'no-override';
    };
  };
  readonly _session: Pick<Session, 'send'> & { readonly sessionId: string };
  updateEmulateMedia(): Promise<void>;
}

/**
 * What BiDi has no word for is asked of the browser's own window, as its developer tools ask for it: that one page is
 * shown as printed, or in other colours than its profile says.
 */
async function changeMedia({ _page, _session }: Delegate): Promise<void> {
  const { media = 'no-override', colorScheme = 'no-override' } = _page._emulatedMedia;
  const { contexts } = (await _session.send('browsingContext.getTree', {
    'moz:scope': 'chrome',
  })) as { contexts: readonly { readonly context: string }[] };
  const [window] = contexts;
  if (!window) throw new Error('Firefox has no window');
  const medium = media === 'no-override' ? '' : media;
  const scheme = colorScheme === 'light' || colorScheme === 'dark' ? colorScheme : 'none';
  const answer = (await _session.send('script.evaluate', {
    expression: `{
      const { NavigableManager } = ChromeUtils.importESModule('chrome://remote/content/shared/NavigableManager.sys.mjs');
      const page = NavigableManager.getBrowsingContextById(${JSON.stringify(_session.sessionId)});
      page.mediumOverride = ${JSON.stringify(medium)};
      page.prefersColorSchemeOverride = ${JSON.stringify(scheme)};
    }`,
    target: { context: window.context },
    awaitPromise: false,
  })) as { type: string; exceptionDetails?: { text: string } };
  if (answer.type !== 'success') throw new Error(answer.exceptionDetails?.text);
}

/** WebDriver's name for Enter, which a line's end is when it is typed. */
const ENTER = '\uE007';

/**
 * Three more things, of pages. The tool fills a field over BiDi by writing its value from a
 * script, which Firefox takes for no change: its field then tells of none on Enter or when it is left. So a text is
 * typed, key by key, as whoever fills it does. And it presses twice by commands of their own, which Firefox counts
 * as two single clicks: both are asked for in one. And what the page is to take its reader's settings for can be
 * changed while it is open.
 */
async function mendPages(browser: Browser): Promise<void> {
  const { _connection } = browser as unknown as {
    _connection: { toImpl(of: object): { delegate: Delegate; mouse: Mouse } };
  };
  // Any page leads to the classes of the tool.
  const page = await browser.newPage();
  const impl = _connection.toImpl(page);
  await page.close();
  const delegates = Object.getPrototypeOf(impl.delegate) as Delegate;
  delegates.updateEmulateMedia = async function (this: Delegate) {
    if (Object.keys(this._page._emulatedMedia).length > 0) await changeMedia(this);
  };
  const keys = Object.getPrototypeOf(impl.delegate.rawKeyboard) as Keys;
  const { sendText } = keys;
  keys.sendText = async function (this: Keys, progress, text) {
    if (text.length > TYPED) return sendText.call(this, progress, text);
    const pressed = [...text].map((letter) => (letter === '\n' ? ENTER : letter));
    await this._performActions(
      progress,
      pressed.flatMap((value) => [
        { type: 'keyDown', value },
        { type: 'keyUp', value },
      ]),
    );
  };
  const mouse = Object.getPrototypeOf(impl.mouse) as Mouse;
  const { click } = mouse;
  mouse.click = async function (this: Mouse, progress, x, y, options = {}) {
    const { clickCount = 1 } = options;
    if (clickCount === 1) return click.call(this, progress, x, y, options);
    await this.move(progress, x, y);
    await this._raw._performActions(
      progress,
      Array.from({ length: clickCount }, () => [
        { type: 'pointerDown' as const, button: 0 },
        { type: 'pointerUp' as const, button: 0 },
      ]).flat(),
    );
  };
}

/** Once a process: the classes are the same for all browsers. */
let pagesMended: Promise<void> | undefined;

export async function startFirefox(media: Media = {}, phone = false): Promise<Browser> {
  const browser = await firefox.launch({
    channel: 'moz-firefox',
    ...(FIREFOX ? { executablePath: FIREFOX } : {}),
    // For changeMedia: the browser's own window may be asked.
    args: ['--remote-allow-system-access'],
    firefoxUserPrefs: prefsOf(media, phone),
  });
  mendSession(browser);
  pagesMended ??= mendPages(browser);
  await pagesMended;
  return browser;
}

/** What BiDi calls actions, on a page: for what the tool has no word for. */
export async function act(page: Page, actions: readonly object[]): Promise<void> {
  const { _connection } = page as unknown as {
    _connection: { toImpl(of: object): { delegate: Delegate } };
  };
  const { _session } = _connection.toImpl(page).delegate;
  await _session.send('input.performActions', { context: _session.sessionId, actions });
}

/** Firefoxes on one page's server, one for each of the reader's settings that a test asks for, at a desk and on a phone. */
export class Firefoxes {
  readonly #all = new Map<string, Promise<Browser>>();

  for(
    { reducedMotion = null, colorScheme = null, forcedColors = null, hasTouch = false }: Media,
    phone: boolean,
  ): Promise<Browser> {
    const media = { reducedMotion, colorScheme, forcedColors, hasTouch };
    const key = JSON.stringify([media, phone]);
    const known = this.#all.get(key) ?? startFirefox(media, phone);
    this.#all.set(key, known);
    return known;
  }

  async close(): Promise<void> {
    for (const browser of this.#all.values()) await (await browser).close();
  }
}

/** Options of a context without what Firefox has no word for: a phone is its window's size, and touch its profile's. */
export function forFirefox({
  isMobile: _,
  permissions: __,
  ...options
}: BrowserContextOptions): BrowserContextOptions {
  return options;
}

/** The rule that the test tool lays into a page while it takes a picture of it, known by its digest: the page refuses it. */
const PICTURE_RULE = 'sha256-YjaKGiklmzC6wjXA513HAMmzus8VE61XCOT+SmwNZWA=';

/** What Firefox says that is not the page's: the test tool's own rule refused, and what a reload breaks off. */
export const notThePage = (said: string): boolean =>
  said.includes(PICTURE_RULE) || said.includes('NS_BINDING_ABORTED');
