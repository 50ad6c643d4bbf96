import { labelWords, appWallKeys as words } from '../../sim/words/en.ts';
import { blank } from '../lessons/wants.ts';
import type { LayerName, Session } from '../session.ts';
import type { KeyRows, WallAction } from '../stations/station.ts';
import { ghostKey } from './wall-ghost.ts';

/** Keys of the wall, for a keyboard and for a presenter's remote, which has four. Those of one letter can be switched off. */

/** Layers by a letter each, none that means something else at the desk, with the names that stand on the wall. */
export const wallLayers: readonly (readonly [key: string, layer: LayerName, name: string])[] = [
  ['U', 'fan', words.gapFan],
  ['P', 'comb', labelWords.comb],
  ['J', 'forces', labelWords.forces],
  ['N', 'names', labelWords.names],
  ['Y', 'ghost', labelWords.ghost],
  ['Z', 'loupe', labelWords.loupe],
];

/** What each key does, as it stands in the list of keys. */
export const keysOfWall: KeyRows = [
  [words.space, words.theFilledButton],
  [words.pageDown, words.theSameByARemote],
  [words.bPageUp, words.theOtherButton],
  ['U P J N Y Z', words.layersAndLoupe],
  ['G, M', words.keepAGhostChooseMore],
  ['X', words.compareWithAChoiceOf],
  ['C', words.theLastClickSlowly],
  [words.brackets, words.slowerFaster],
  ['R', words.lookBackAndNow],
  [words.of1To9, words.stations],
  ['L', words.lessons],
  ['.', words.blankAndShownAgain],
  ['Q', words.thisMomentAsACode],
  ['F', words.fullScreen],
  [words.wEsc, words.desk],
  ['?', words.theseKeys],
];

/** Presses a button of the wall by its key: where it is held, a remote's press is a short one. */
function press(session: Session, a: WallAction | undefined): boolean {
  if (!a || a.off) return a !== undefined;
  // A pedal that is down goes up at the next press.
  if (a.letGo && session.pedal > 0) a.letGo();
  else a.does();
  return true;
}

/**
 * A key on the wall of a station that is no lesson.
 *
 * @param choice of ghost and compare: is it open, and what opens or closes it
 * @returns it was taken
 */
export function wallKey(
  session: Session,
  e: KeyboardEvent,
  target: Element,
  actions: readonly WallAction[],
  turnKeys: () => void,
  choice: { readonly open: boolean; turn(): void },
): boolean {
  if (target.closest('input:not([type="checkbox"]), textarea, select')) return false;
  const onStage = target.closest('[role="application"]') !== null;
  const [main, other] = actions;
  if (e.key === 'PageDown' || (e.key === 'ArrowRight' && !onStage)) return press(session, main);
  if (e.key === 'PageUp' || (e.key === 'ArrowLeft' && !onStage)) return press(session, other);
  // A pedal is held by the space bar itself.
  if (e.key === ' ' && !main?.letGo && !e.repeat && !target.closest('button, input'))
    return press(session, main);
  if (e.key === '?') {
    turnKeys();
    return true;
  }
  if (choice.open && ghostKey(session, e.key, choice.turn)) return true;
  // Switched off, a letter does nothing: not what it would do on the desk either.
  if (!session.moment.parts.lessons.keys) return e.key.length === 1 && e.key !== ' ';
  const key = e.key.toUpperCase();
  if (key === 'B') return press(session, other);
  if (key === 'M') {
    choice.turn();
    return true;
  }
  const layer = wallLayers.find(([letter]) => letter === key)?.[1];
  if (layer) session.toggle(layer);
  else if (e.key === '.') session.do(blank, !session.moment.parts.lessons.blank);
  else return false;
  return true;
}
