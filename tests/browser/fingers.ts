import type { Page } from 'playwright-core';
import { act, FIREFOX } from './firefox.ts';

type Place = readonly [x: number, y: number];

/** Tells where each finger now lies, the first one first; undefined, or left out: it is off the screen. */
type Fingers = (...at: readonly (Place | undefined)[]) => Promise<void>;

/** Fingers on a page's screen, by what the browser has for it: DevTools protocol or WebDriver BiDi. */
export async function fingersOn(page: Page): Promise<Fingers> {
  return FIREFOX ? byActions(page) : byProtocol(page);
}

async function byProtocol(page: Page): Promise<Fingers> {
  const client = await page.context().newCDPSession(page);
  let down = new Set<number>();
  return async (...at) => {
    const touchPoints = at.flatMap((place, id) =>
      place ? [{ x: place[0], y: place[1], id }] : [],
    );
    const now = new Set(touchPoints.map(({ id }) => id));
    const lifted = [...down].some((id) => !now.has(id));
    const laid = [...now].some((id) => !down.has(id));
    down = now;
    await client.send('Input.dispatchTouchEvent', {
      type: lifted ? 'touchEnd' : laid ? 'touchStart' : 'touchMove',
      touchPoints,
    });
  };
}

/** Every finger is a source of its own; all of them act in the same two ticks. */
function byActions(page: Page): Fingers {
  const down = new Set<number>();
  return async (...at) => {
    const ids = [...new Set([...down, ...at.keys()])];
    const sources = ids.flatMap((id) => {
      const place = at[id];
      const was = down.has(id);
      if (!place && !was) return [];
      if (place) down.add(id);
      else down.delete(id);
      const [x = 0, y = 0] = place?.map(Math.round) ?? [];
      const move = { type: 'pointerMove', x, y };
      const rest = { type: 'pause' };
      return {
        type: 'pointer',
        id: `finger ${id}`,
        parameters: { pointerType: 'touch' },
        actions: place
          ? [move, was ? rest : { type: 'pointerDown', button: 0 }]
          : [{ type: 'pointerUp', button: 0 }, rest],
      };
    });
    await act(page, sources);
  };
}
