import { version } from '../../package.json';
import { linkOf, readLink } from '../record/link.ts';
import type { Read } from '../record/record.ts';
import type { Session } from '../session.ts';

/**
 * Where something that left the bench comes from: version, scene and the link of its moment. It goes with every
 * figure and table, so that anyone can make them again; a file that is dropped on the page is opened by it.
 */
export interface Origin {
  readonly version: string;
  /** Name of the brake's scene. */
  readonly scene: string;
  /** Whole address of the moment. */
  readonly link: string;
}

/** Longest text of a file in which an origin is looked for, characters. */
const MOST_SEARCHED = 32 * 1024 * 1024;

/** The page's own address without what follows; of a page opened as a file too, which has no origin. */
export const pageAddress = (): string => location.href.split(/[?#]/)[0] ?? '';

export async function originOf({ moment, brake }: Session): Promise<Origin> {
  return { version, scene: brake.name, link: pageAddress() + (await linkOf(moment)) };
}

/** One line that stands in a file of any kind: a mark, the same in every language since files are found by it, and plain JSON. */
type Mark = 'Takeup origin: ';
const MARK: Mark = 'Takeup origin: ';

export const originText = ({ version: v, scene, link }: Origin): string =>
  MARK + JSON.stringify({ version: v, scene, link });

/** The origin that a file's text holds; null where there is none. Escapes of SVG and CSV are undone. */
export function readOrigin(text: string): Origin | null {
  const at = text.slice(0, MOST_SEARCHED).indexOf(MARK);
  if (at < 0) return null;
  const line = text
    .slice(at + MARK.length, at + MARK.length + 200_000)
    .replace(/&#(\d+);/g, (_, code: string) => String.fromCharCode(Number(code)));
  const json = /^\{(?:\\"|"{1,2})version(?:\\"|"{1,2}):[^{}]*\}/.exec(line)?.[0];
  if (json === undefined) return null;
  try {
    // Inside JSON it is a text once more.
    const plain = json.startsWith('{\\"') ? JSON.parse(`"${json}"`) : json.replaceAll('""', '"');
    const data: Record<string, unknown> = JSON.parse(plain);
    const { version: v, scene, link } = data;
    return typeof v === 'string' && typeof scene === 'string' && typeof link === 'string'
      ? { version: v, scene, link }
      : null;
  } catch {
    return null;
  }
}

/** The moment of an origin, wherever the page that made it stood. */
export function openOrigin({ link }: Origin): Promise<Read> {
  const hash = link.includes('#') ? link.slice(link.indexOf('#')) : '';
  const before = hash === '' ? link : link.slice(0, link.indexOf('#'));
  const search = before.includes('?') ? before.slice(before.indexOf('?')) : '';
  return readLink(search, hash);
}
