import type { BAR, readingOf } from '../../sim/index.ts';
import type { Announcer } from '../app/announcer.ts';
import type { number } from '../format.ts';
import type { benchTitle } from '../record/guest-title.ts';
import type { begin } from '../record/history.ts';
import type { readLink } from '../record/link.ts';
import type { Session } from '../session.ts';
import type { stationOf } from '../stations/index.ts';
import type { themeCss, themes } from '../theme.ts';
import type { loadReader } from '../typed-size.ts';

/**
 * What the embedded view takes of the page that brings it, handed over by it (`ui/main.ts`). Were it imported from here,
 * the build would cut the page's first load into a file for each set of what both use, and 2 kB more.
 */
export interface Kit {
  readonly BAR: typeof BAR;
  readonly readingOf: typeof readingOf;
  readonly Announcer: typeof Announcer;
  readonly number: typeof number;
  readonly benchTitle: typeof benchTitle;
  readonly begin: typeof begin;
  readonly readLink: typeof readLink;
  readonly Session: typeof Session;
  readonly stationOf: typeof stationOf;
  readonly themeCss: typeof themeCss;
  readonly themes: typeof themes;
  readonly loadReader: typeof loadReader;
}
