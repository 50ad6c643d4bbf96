import { expect, it } from 'vitest';
import { press, release } from '../../../ui/record/bench.ts';
import { begin, step, undo } from '../../../ui/record/history.ts';
import { plainMoment } from '../../../ui/record/start.ts';
import { turn } from '../../../ui/record/view.ts';

it('a joined wish that changes nothing leaves the step its words', () => {
  const start = plainMoment();
  const down = press.does(start, 40);
  const once = step(begin(start), down, 'pedal at 40 bar', 'pedal');
  // The finger stays where it is: nothing changes, and nothing is said of it.
  const still = step(once, press.does(down, 40), '', 'pedal');
  expect(undo(still)?.said).toBe('pedal at 40 bar');
});

it('a held pedal is one step, and none when nothing came of it', () => {
  const start = turn.does(plainMoment(), -1);
  const h = step(begin(plainMoment()), start, 'drum backward');
  const pressed = [10, 20, 40].reduce(
    (held, bar) => step(held, press.does(held.present, bar), `pedal at ${bar} bar`, 'pedal'),
    h,
  );
  expect(pressed.past).toHaveLength(2);
  const after = step(pressed, release.does(pressed.present), 'pedal let go', 'pedal', true);
  expect(after.past).toHaveLength(1);
  expect(after.present).toBe(start);
});
