import { css, html, nothing, type TemplateResult } from 'lit';
import type { Reading } from '../../sim/index.ts';
import { down, number } from '../format.ts';
import { paceName } from '../pace.ts';
import { agoText } from '../pieces/ago-text.ts';
import { COMPACT, NARROW } from '../pieces/page-sizes.ts';
import { backToMine } from '../record/guest.ts';
import { stationNames } from '../record/moment.ts';
import { PRESS_BAR } from '../session.ts';
import type { NumberedName } from '../stage/layers/names.ts';
import type { PageView, Station } from '../stations/station.ts';
import { namesList } from './names-bar.ts';

/** The half of the wall beside the drawing: what is asked of the class to look at, in large type. */

const big = (r: Reading): TemplateResult => {
  // A lining is never shown thicker than it is.
  const value = r.key.startsWith('lining') ? down(r.value, r.digits) : r.value;
  return html`<div class="figure" data-key=${r.key}><b>${r.name}</b><div>${number(value, r.digits)}${r.unit ? html`<small>${r.unit}</small>` : nothing}</div></div>`;
};

/**
 * @param beside what is told of shoes that bend, in place of the keys; may be empty
 * @param names the parts' names where the drawing shows their numbers alone: they take the readings' place
 */
export function wallSide(
  page: PageView,
  station: Station,
  leave: () => void,
  names: readonly NumberedName[],
  beside: string,
): TemplateResult {
  const { session, find } = page;
  const keys = station.wall?.readings ?? ['restClearanceMean', 'strutForce', 'tooth'];
  const hold = () => session.pressTo(PRESS_BAR);
  const letGo = () => session.release();
  return html`<section class="words" aria-label="For the class">
      <h1>${stationNames[station.id]}</h1>
      ${session.guest ? html`<p class="guestline">Guest: ${session.guest}</p>` : nothing}
      <div class="says">${session.lookingBack ? html`<p>${agoText(session.lookingBack)}, time at ${paceName(session.pace)}.</p>` : (station.wall?.says?.(page) ?? nothing)}</div>
      ${names.length > 0 ? namesList(session, names) : html`<div class="figures">${keys.map((key) => big(find(key)))}</div>`}
      <div class="hands">
        ${
          station.pedal
            ? html`<button class="main" @pointerdown=${hold} @pointerup=${letGo} @pointerleave=${letGo} @keydown=${(
                e: KeyboardEvent,
              ) => {
                if (e.key === 'Enter' && !e.repeat) hold();
              }} @keyup=${letGo}>Press the pedal</button>`
            : nothing
        }
        ${
          station.pedal && !session.guest && session.reel.crests.length > 0
            ? html`<button @click=${() => (session.lookingBack ? session.lookAtNow() : session.lastClick())}>${session.lookingBack ? 'Now' : 'Last click'}</button>`
            : nothing
        }
        ${session.guest ? html`<button @click=${() => session.do(backToMine)}>Back to mine</button>` : nothing}
        <button @click=${leave}>Leave the wall</button>
      </div>
      <p class=${beside ? 'besides' : 'keys'}>${beside || 'Space: pedal · C: last click · F: full screen · Esc: back'}</p>
    </section>`;
}

export const wallStyles = css`
  .wall.blank > * { visibility: hidden; }
  .wall .stage { border: 0; }
  .wall .words { display: flex; flex-direction: column; gap: 3vh; padding: 4vh 60px 3vh 30px; min-height: 0; overflow: hidden; font-size: 44px; line-height: 1.2; }
  .wall h1 { margin: 0; font-size: 63px; line-height: 1.1; font-weight: 800; }
  .wall .guestline { margin: 0; padding-left: 40px; background: repeating-linear-gradient(135deg, var(--warn) 0 9px, var(--warn-ink) 9px 18px) 0 0 / 22px 100% no-repeat; }
  .wall .says { min-height: 3.6em; }
  .wall .says p { margin: 0; }
  .wall .figures { display: grid; gap: 2.4vh; margin-top: auto; }
  .wall .figure { border: 4px solid var(--ink); padding: 8px 24px 10px; display: flex; align-items: baseline; justify-content: space-between; gap: 24px; }
  .wall .figure b { font-size: 40px; font-weight: 600; line-height: 1.15; }
  .wall .figure div { font-size: 76px; line-height: 1.1; font-weight: 760; white-space: nowrap; }
  .wall .figure small { font-size: 40px; margin-left: 12px; font-weight: 600; }
  .wall .hands { display: flex; gap: 24px; }
  .wall button { border: 4px solid var(--ink); min-height: 84px; padding: 0 34px; font-size: 38px; font-weight: 700; }
  .wall button.main { background: var(--ink); color: var(--sheet); flex: 1; text-align: center; }
  /* Three of them in a row: in two lines at most. */
  .wall .hands:has(:nth-child(3)) button { padding: 0 14px; flex: 1 1 auto; text-align: center; line-height: 1.05; }
  .wall .keys, .wall .besides { margin: 0; font-size: 34px; color: var(--ink2); }
  @media ${COMPACT} {
    .wall .words { font-size: 34px; padding: 3vh 30px 2vh 20px; gap: 2vh; }
    .wall h1 { font-size: 48px; }
    .wall .figure { padding: 4px 16px; }
    .wall .figure b { font-size: 34px; }
    .wall .figure div { font-size: 54px; }
    .wall .figure small, .wall .keys { font-size: 34px; }
    .wall .keys { display: none; }
    .wall button { min-height: 64px; font-size: 34px; padding: 0 18px; }
    .wall .guestline ~ .says { min-height: 0; }
    .wall .hands:has(:nth-child(3)) { gap: 8px; }
    .wall .hands:has(:nth-child(3)) button { padding: 0 3px; font-size: 30px; }
  }
  @media ${NARROW} {
    .wall { display: flex; flex-direction: column; overflow: auto; }
    .wall .stage { height: 420px; }
    .wall .words { overflow: visible; }
    .wall .figure { flex-direction: column; }
    .wall .hands { flex-direction: column; }
  }
`;
