import { html } from 'lit';
import type { Station } from '../stations/station.ts';
import { canRead, loadReader } from '../typed-size.ts';

let asked = false;
/** Why sizes cannot be read in this page; empty as long as they may. */
let trouble = '';

/**
 * A station that reads sizes, before its reader is there: its place on the page, and nothing in it.
 *
 * @param changed called when there is something else to be shown
 */
function waiting({ id, key, foot, phoneStage }: Station, changed: () => void): Station {
  if (!asked) {
    asked = true;
    loadReader().then(changed, (error: unknown) => {
      trouble = `Sizes cannot be read here (${String(error)}). What was typed is kept: load the page anew.`;
      changed();
    });
  }
  return {
    id,
    key,
    side: () => html`<p class="waiting" role="status">${trouble}</p>`,
    controls: () => html``,
    ...(foot && { foot: { height: foot.height, strip: () => html`` } }),
    ...(phoneStage === false && { phoneStage }),
  };
}

/** The station, or what stands in its place until it can read. */
export const ready = (station: Station, changed: () => void): Station =>
  station.readsSizes && !canRead() ? waiting(station, changed) : station;
