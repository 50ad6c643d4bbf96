import { type Browser, type BrowserContextOptions, firefox } from 'playwright-core';

/** Set by `npm run test:firefox`: the executable; the tests then run in it, over WebDriver BiDi. */
export const FIREFOX = process.env['TAKEUP_FIREFOX'];

/** What a page may ask of its reader's settings: BiDi of this Firefox cannot say it of one page, its profile can. */
type Media = Pick<BrowserContextOptions, 'reducedMotion' | 'colorScheme' | 'forcedColors'>;

const prefsOf = ({ reducedMotion, colorScheme, forcedColors }: Media) => ({
  'ui.prefersReducedMotion': reducedMotion === 'reduce' ? 1 : 0,
  // 0 dark, 1 light.
  'layout.css.prefers-color-scheme.content-override': colorScheme === 'dark' ? 0 : 1,
  // 1 always, 2 never.
  'browser.display.document_color_use': forcedColors === 'active' ? 2 : 1,
  // Nothing of its own on the network.
  'app.update.enabled': false,
  'datareporting.policy.dataSubmissionEnabled': false,
});

interface Session {
  send(method: string, params: unknown): Promise<unknown>;
}

/**
 * The test tool asks for media features of each context, which the stable Firefox does not know yet: that one command
 * is taken as done, and what it would have said is in the profile. All else that is unknown stays an error.
 */
function withoutMediaCommand(browser: Browser): void {
  const { _connection } = browser as unknown as {
    _connection: { toImpl(of: object): { _browserSession: Session } };
  };
  const sessions = Object.getPrototypeOf(_connection.toImpl(browser)._browserSession) as Session;
  const { send } = sessions;
  sessions.send = async function (this: Session, method, params) {
    if (method === 'emulation.setMediaFeaturesOverride') return {};
    return send.call(this, method, params);
  };
}

export async function startFirefox(media: Media = {}): Promise<Browser> {
  const browser = await firefox.launch({
    channel: 'moz-firefox',
    ...(FIREFOX ? { executablePath: FIREFOX } : {}),
    firefoxUserPrefs: prefsOf(media),
  });
  withoutMediaCommand(browser);
  return browser;
}

/** Firefoxes on one page's server, one for each of the reader's settings that a test asks for. */
export class Firefoxes {
  readonly #all = new Map<string, Promise<Browser>>();

  for({ reducedMotion = null, colorScheme = null, forcedColors = null }: Media): Promise<Browser> {
    const media = { reducedMotion, colorScheme, forcedColors };
    const key = JSON.stringify(media);
    const known = this.#all.get(key) ?? startFirefox(media);
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
