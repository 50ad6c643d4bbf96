import { type History, step } from '../../../ui/record/history.ts';
import type { Intention } from '../../../ui/record/intention.ts';

/** The history after one more intention, as the session does it. */
export function doing<A extends readonly unknown[]>(
  h: History,
  intent: Intention<A>,
  ...asked: A
): History {
  const next = intent.does(h.present, ...asked);
  const said = next === h.present ? '' : intent.says(h.present, next, ...asked);
  return step(h, next, said, intent.joins(...asked), intent.ends);
}
