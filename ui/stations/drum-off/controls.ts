import { html, nothing, type TemplateResult } from 'lit';
import { drumOffControls as words } from '../../../sim/words/en.ts';
import { handsButton } from '../hands-button.ts';
import type { PageView } from '../station.ts';
import type { DrumDesk } from './desk.ts';

/** Buttons of the station's other pages; pressed again, they lead back to the brake. */
export function pageButtons(desk: DrumDesk): TemplateResult {
  const other = (page: 'faults' | 'mine' | 'fastening', name: string) =>
    html`<button class="btn" aria-pressed=${desk.page === page} @click=${() => {
      desk.open(desk.page === page ? 'brake' : page);
      scrollTo({ top: 0 });
    }}>${name}</button>`;
  return html`${other('faults', words.setAnotherFault)}${other('mine', words.whichIsMine)}${other('fastening', words.howItIsFastened)}`;
}

/** Try the drum, slacken the cable; where there is room, the station's other pages. */
export function drumControls({ size, session }: PageView, desk: DrumDesk): TemplateResult {
  const tried = desk.found;
  const pull =
    desk.off && !desk.pulling
      ? html`<button class="btn tall" @click=${() => desk.putOn()}>${words.putItBackOn}</button>`
      : html`<button class="btn p tall" ?disabled=${desk.off} @click=${() => desk.attempt('pull')}>${words.pullTheDrum}</button>`;
  const apart = html`<button class="btn" data-to="order" @click=${() => desk.stepByStep('apart')}>${words.takeItApartInOrder}</button>`;
  const tries = html`<button class="btn" ?disabled=${desk.off} @click=${() => desk.attempt('turn')}>${words.turnIt}</button>
    <button class="btn" ?disabled=${desk.off} @click=${() => desk.attempt('rock')}>${words.rockIt}</button>`;
  const slack = html`<button class="btn" ?disabled=${session.state.leverOffStop === 0} @click=${() => desk.slacken()}>${words.slackenTheCable}</button>`;
  return html`<section class="blk ctl drumctl" aria-label=${words.controls}>
    <div class="hidden" role="status">${tried}</div>
    <div class="row withhands">${pull}${handsButton(session)}</div>
    ${desk.off && !desk.pulling ? html`<div class="row">${apart}</div>` : html`<div class="row three">${tries}${slack}</div>`}
    ${size === 'narrow' ? nothing : html`<div class="row three">${pageButtons(desk)}</div>`}
  </section>`;
}
