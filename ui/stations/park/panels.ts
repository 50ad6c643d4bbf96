import { html, nothing, type TemplateResult } from 'lit';
import { parkPanels as words } from '../../../sim/words/en.ts';
import { cableRow } from './controls.ts';
import type { ParkDesk } from './desk.ts';
import { hotPanel } from './hot.ts';
import { leverAlonePanel } from './lever.ts';
import type { ParkPanel } from './part.ts';
import { stopsPanel } from './stops.ts';
import { wheelsPanel } from './wheels.ts';

const names: readonly (readonly [ParkPanel, string])[] = [
  ['lever', words.leverAlone],
  ['wheels', words.bothWheels],
  ['hot', words.hotDrum],
];

/** One of three pictures, and the released lever below it. */
export function panels(desk: ParkDesk): TemplateResult {
  const open =
    desk.panel === 'lever'
      ? leverAlonePanel(desk)
      : desk.panel === 'wheels'
        ? wheelsPanel(desk)
        : hotPanel(desk);
  return html`<section class="blk park-panel park-main">
      <div class="seg" role="group" aria-label=${words.picture}>${names.map(([id, name]) => html`<button aria-pressed=${desk.panel === id} class=${desk.panel === id ? 'on' : ''} @click=${() => desk.open(id)}>${name}</button>`)}</div>
      <div class="park-body" data-panel=${desk.panel}>${open}</div></section>
    ${desk.panel === 'lever' ? html`<section class="blk park-panel park-stop">${stopsPanel(desk)}${cableRow(desk)}</section>` : nothing}`;
}
