import { css } from 'lit';

/** Which of the three layouts the page has: a wall or desk, a laptop, a phone. */
export type PageSize = 'wide' | 'middle' | 'narrow';

/**
 * The three layouts of the page, as conditions for its styles: one column under the thumb for phones,
 * also on their sides, and upright tablets; a compact one for laptops and projectors; a roomy one for
 * a whole screen. What is compact is also what every narrower page begins with.
 */
export const NARROW = css`(max-width: 900px), (max-height: 520px)`;
export const COMPACT = css`(max-width: 1799px), (max-height: 900px)`;
/** A roomy page less high than a whole screen: a browser's own bars take the rest. */
export const BARRED = css`(min-width: 1800px) and (min-height: 901px) and (max-height: 1030px)`;
/** A compact page that is low besides. */
export const LOW = css`(min-width: 901px) and (min-height: 521px) and (max-height: 800px)`;

/** A compact page too narrow for much beside its stage, as a projector of 1024 px. */
export const SLIM = css`(max-width: 1199px) and (min-width: 901px)`;

/**
 * On the wall, one pixel of 1920 × 1080. The division comes last: Firefox rounds each length of the window's down to a
 * sixtieth of a pixel, and of `100vw / 1920` that takes up to one part in thirty.
 */
export const WALL_PX = css`calc(min(100vw, 177.7778vh) / 1920)`;

/** On a stage under this width, px, there is no room for words beside the brake. */
export const NARROW_STAGE = 680;

/** The compact page has room for its stations' names from here on, and for the list of brakes. */
const TABS = '(min-width: 1260px)';
const BRAKES = '(min-width: 1470px)';

/** What was asked of the window; each goes on telling the truth, and asking anew each frame is dear. */
const asked = new Map<string, MediaQueryList>();

function is(condition: string): boolean {
  let query = asked.get(condition);
  if (!query) {
    query = matchMedia(condition);
    asked.set(condition, query);
  }
  return query.matches;
}

export const pageSize = (): PageSize =>
  is(NARROW.cssText) ? 'narrow' : is(COMPACT.cssText) ? 'middle' : 'wide';
export const roomForTabs = (): boolean => is(TABS);
export const roomForBrakes = (): boolean => is(BRAKES);
