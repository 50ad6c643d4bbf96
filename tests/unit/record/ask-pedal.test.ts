import { expect, it } from 'vitest';
import { press } from '../../../ui/record/bench.ts';
import { opened } from '../../../ui/record/guest.ts';
import { plainMoment } from '../../../ui/record/start.ts';

it('Ask leaves the pedal down, so that the working it leads to has something to tell; other stations do not', () => {
  const pressed = press.does(plainMoment('apply'), 40);
  expect(pressed.pedal).toBe(40);
  expect(opened(pressed, 'ask').pedal).toBe(40);
  expect(opened(pressed, 'wear').pedal).toBe(0);
  expect(opened(opened(pressed, 'ask'), 'park').pedal).toBe(0);
});
