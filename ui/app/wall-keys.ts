import { blank } from '../lessons/wants.ts';
import type { LayerName, Session } from '../session.ts';
import type { WallAction } from '../stations/station.ts';

/** Keys of the wall, for a keyboard and for a presenter's remote, which has four. Those of one letter can be switched off. */

/** Layers by a letter each, none that means something else at the desk, with the names that stand on the wall. */
export const wallLayers: readonly (readonly [key: string, layer: LayerName, name: string])[] = [
  ['U', 'fan', 'Gap fan'],
  ['P', 'comb', 'Comb'],
  ['J', 'forces', 'Forces'],
  ['N', 'names', 'Names'],
  ['Y', 'ghost', 'Ghost'],
  ['Z', 'loupe', 'Loupe'],
];

/** What each key does, as it stands in the list of keys. */
export const keysOfWall: readonly (readonly [keys: string, does: string])[] = [
  ['Space, →', 'the filled button'],
  ['Page Down', 'the same, by a remote'],
  ['B, ←, Page Up', 'the other button'],
  ['U P J N Y Z', 'layers and loupe'],
  ['G', 'keep this moment as a ghost'],
  ['X', 'compare, with a choice of what'],
  ['C', 'the last click, slowly'],
  ['[ and ]', 'slower, faster'],
  ['R', 'look back, and now'],
  ['1 to 9', 'stations'],
  ['L', 'lessons'],
  ['.', 'blank, and shown again'],
  ['Q', 'this moment as a code for phones'],
  ['F', 'full screen'],
  ['W, Esc', 'desk'],
  ['?', 'these keys'],
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
 * @returns it was taken
 */
export function wallKey(
  session: Session,
  e: KeyboardEvent,
  target: Element,
  actions: readonly WallAction[],
  turnKeys: () => void,
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
  if (!session.moment.parts.lessons.keys) return false;
  const key = e.key.toUpperCase();
  if (key === 'B') return press(session, other);
  const layer = wallLayers.find(([letter]) => letter === key)?.[1];
  if (layer) session.toggle(layer);
  else if (e.key === '.') session.do(blank, !session.moment.parts.lessons.blank);
  else return false;
  return true;
}
