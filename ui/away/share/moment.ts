import { awayShareMoment as words } from '../../../sim/words/en.ts';
import { otherFile } from '../../record/file-kind.ts';
import type { Home } from '../../record/home.ts';
import { fromText, toText } from '../../record/json.ts';
import { linkOf, MOST_LINK, sendable } from '../../record/link.ts';
import type { Moment } from '../../record/moment.ts';
import type { Session } from '../../session.ts';
import { NOT_KEPT } from '../../stations/compare/part.ts';
import { pageAddress } from '../origin.ts';
import { type Kind, plainName, saveFile } from '../save.ts';

/** What stands on the bench, to be sent: as a link, or as a file where it is too much for one. */

/** Largest file that is read, bytes. */
export const MOST_FILE = 4 * 1024 * 1024;

export const JSON_FILE: Kind = {
  tells: words.momentOfTheBench,
  type: 'application/json',
  endings: ['.json'],
};

/** The whole address that opens the moment elsewhere; null where it is too much for one. */
export async function addressOf(moment: Moment): Promise<string | null> {
  const link = await linkOf(moment);
  return link.length > MOST_LINK ? null : pageAddress() + link;
}

/** A moment for a code, which a camera must read at once: what is kept beside it to compare stays out. */
export const forCode = (m: Moment): Moment =>
  m.station === 'compare' || m.parts.compare.kept === null
    ? m
    : { ...m, parts: { ...m.parts, compare: NOT_KEPT } };

/** @returns what to say */
export async function copyLink(session: Session): Promise<string> {
  const address = await addressOf(session.moment);
  if (address === null) return words.tooMuchForALink;
  try {
    await navigator.clipboard.writeText(address);
    return words.linkCopied;
  } catch {
    return words.theBrowserDoesNotLet;
  }
}

export const momentName = ({ brake, station }: Session): string =>
  `takeup-${plainName(brake.name)}-${station}.json`;

export const momentBlob = ({ moment }: Session): Blob =>
  new Blob([`${toText(sendable(moment))}\n`], { type: JSON_FILE.type });

/** @returns what to say */
export const saveMoment = (session: Session): Promise<string> =>
  saveFile(momentName(session), JSON_FILE, momentBlob(session));

/** Puts a moment's file on the bench; what is wrong with another stands on the page. */
export async function openMoment(session: Session, home: Home, file: File): Promise<void> {
  if (file.size > MOST_FILE) {
    home.tell(words.wasNotOpenedFoundBytes(file.name, file.size, MOST_FILE));
    return;
  }
  const text = await file.text();
  const other = otherFile(text, 'moment');
  if (other) {
    home.tell(words.wasNotOpenedNothingElse(file.name, other));
    return;
  }
  const read = fromText(text);
  if (read.ok) {
    session.put({ ...read.moment, shelf: session.moment.shelf }, words.opened(file.name));
    return;
  }
  const [w] = read.wrong;
  home.tell(
    words.wasNotOpenedNothingElse2(file.name, w?.path || words.allOfIt, w?.found, w?.allowed),
  );
}
