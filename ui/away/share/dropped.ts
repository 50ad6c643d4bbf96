import { tellFinding } from '../../../sim/index.ts';
import { awayShareDropped as words } from '../../../sim/words/en.ts';
import { fileKind } from '../../record/file-kind.ts';
import { show } from '../../record/guest.ts';
import type { Home } from '../../record/home.ts';
import type { Session } from '../../session.ts';
import { deskOf } from '../../stations/station.ts';
import { loadReader } from '../../typed-size.ts';
import { openOrigin, readOrigin } from '../origin.ts';
import { MOST_FILE, openMoment } from './moment.ts';

/** A file dropped on the page goes where its kind is read; each says by itself what is wrong with one. */

/** Largest picture that is looked at, bytes. */
const MOST_PICTURE = 64 * 1024 * 1024;

/** What can be dropped, for the hint. */
export const TAKEN = words.taken;

/** Puts on what a figure or a table was made of; false: it says nothing of it. */
async function openMade(
  session: Session,
  home: Home,
  name: string,
  text: string,
): Promise<boolean> {
  const origin = readOrigin(text);
  if (!origin) return false;
  const read = await openOrigin(origin);
  if (read.ok) session.put({ ...read.moment, shelf: session.moment.shelf }, words.opened(name));
  else {
    const [w] = read.wrong;
    home.tell(words.wasNotOpenedNothingElse(name, w?.path, w?.found, w?.allowed));
  }
  return true;
}

async function takePicture(session: Session, home: Home, file: File): Promise<void> {
  await loadReader();
  const [{ OwnDesk }, { PhotoDesk }] = await Promise.all([
    import('../../stations/own/desk.ts'),
    import('../../stations/own/photo/desk.ts'),
  ]);
  session.do(show, 'own');
  const { own } = deskOf(OwnDesk, session);
  if (own) await deskOf(PhotoDesk, session).take(own, file);
  else home.tell(words.isAPictureStartA(file.name));
}

async function takeText(session: Session, home: Home, file: File, text: string): Promise<void> {
  if (await openMade(session, home, file.name, text)) return;
  const kind = fileKind(text);
  if (kind === 'brake') {
    await loadReader();
    const { OwnDesk } = await import('../../stations/own/desk.ts');
    session.do(show, 'own');
    deskOf(OwnDesk, session).take(file.name, text);
  } else if (kind === 'sheets') {
    await loadReader();
    const { PastDesk } = await import('../../stations/inspect/past.ts');
    session.do(show, 'inspect');
    deskOf(PastDesk, session).takeSheets(file.name, text);
  } else if (kind === 'JSON' && /"format"\s*:\s*"takeup-lesson"/.test(text)) {
    const { takeLesson } = await import('../../stations/lessons/take.ts');
    session.do(show, 'lessons');
    const [first] = takeLesson(session, text) ?? [];
    if (first) home.tell(words.wasNotOpenedNothingElse2(file.name, tellFinding(first)));
    else session.say(words.isAmongTheLessons(file.name));
  } else await openMoment(session, home, file);
}

/** @param more so many files were dropped beside it */
export async function takeFile(
  session: Session,
  home: Home,
  file: File,
  more: number,
): Promise<void> {
  if (more > 0) home.tell(words.oneFileAtATime(file.name, more));
  const picture = /^image\/(?!svg)/.test(file.type);
  const most = picture ? MOST_PICTURE : MOST_FILE;
  if (file.size > most) {
    home.tell(words.wasNotOpenedFoundBytes(file.name, file.size, most));
    return;
  }
  const text = await file.text();
  if (!picture) await takeText(session, home, file, text);
  else if (!(await openMade(session, home, file.name, text)))
    await takePicture(session, home, file);
}
