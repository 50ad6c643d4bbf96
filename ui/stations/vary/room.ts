import type { Answer } from '../../../sim/index.ts';
import { varyRoom as words } from '../../../sim/words/en.ts';
import type { Session } from '../../session.ts';
import { MOST_READ } from './part.ts';

/**
 * Says what made room for something else that is read: no curve goes without a word.
 *
 * @param before what was read
 */
export function sayRoom(session: Session, before: readonly Answer[]): void {
  const { read } = session.moment.parts.vary;
  const gone = before.filter((a) => !read.includes(a.key)).map((a) => a.name);
  if (gone.length > 0 && read.length === MOST_READ)
    session.say(words.madeRoomThingsAreRead(gone.join(', '), MOST_READ));
}
