import type { Finding } from '../../../sim/index.ts';
import { lessonsEditor as words } from '../../../sim/words/en.ts';

/** Where something of a lesson stands, in the words of the editor's fields. */

export const letterOf = (choice: number): string => 'ABCD'[choice] ?? String(choice + 1);

function inChoice(rest: readonly string[]): string {
  const [key = '', piece] = rest;
  if (key === 'says') return Number(piece) > 0 ? words.piece(Number(piece) + 1) : '';
  return words.choice[key] ?? key;
}

function inStep(rest: readonly string[]): string {
  const [key = '', place, ...more] = rest;
  if (key === 'choices' && place !== undefined) {
    return words.choicePlace(letterOf(Number(place)), inChoice(more));
  }
  const list = words.step[key];
  if (list !== undefined && place !== undefined) return words.actionPlace(list, Number(place) + 1);
  const field = place === undefined ? key : `${key}.${place}`;
  const name = words.step[field];
  if (name === undefined) return rest.join('.');
  return more[0] === undefined ? name : words.actionPlace(name, Number(more[0]) + 1);
}

/** "Step 2, choice B" for `steps.1.choices.1.says.0.words`; a path that has no field stays as it is. */
export function placeOf(path: string): string {
  const [first = '', step, ...rest] = path.split('.');
  if (first === 'steps' && step !== undefined && /^\d+$/.test(step)) {
    return words.stepPlace(Number(step) + 1, rest.length > 0 ? inStep(rest) : '');
  }
  return words.lesson[path] ?? path;
}

/** What is still to do, as a sentence with its place. */
export const toDo = ({ allowed, found, path, reason }: Finding): string =>
  words.foundAllowed(placeOf(path), found, reason ? `${allowed}. ${reason}` : allowed);
