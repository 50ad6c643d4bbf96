import { html, nothing, type TemplateResult } from 'lit';
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
  return html`${other('faults', 'Set another fault')}${other('mine', 'Which is mine?')}${other('fastening', 'How it is fastened')}`;
}

/** Try the drum, slacken the cable; where there is room, the station's other pages. */
export function drumControls({ size, session }: PageView, desk: DrumDesk): TemplateResult {
  const tried = desk.found;
  const pull =
    desk.off && !desk.pulling
      ? html`<button class="btn tall" @click=${() => desk.putOn()}>Put it back on</button>`
      : html`<button class="btn p tall" ?disabled=${desk.off} @click=${() => desk.attempt('pull')}>Pull the drum</button>`;
  const apart = html`<button class="btn" data-to="order" @click=${() => desk.stepByStep('apart')}>Take it apart, in order</button>`;
  const tries = html`<button class="btn" ?disabled=${desk.off} @click=${() => desk.attempt('turn')}>Turn it</button>
    <button class="btn" ?disabled=${desk.off} @click=${() => desk.attempt('rock')}>Rock it</button>`;
  const slack = html`<button class="btn" ?disabled=${session.state.leverOffStop === 0} @click=${() => desk.slacken()}>Slacken the cable</button>`;
  return html`<section class="blk ctl drumctl" aria-label="Controls">
    <div class="hidden" role="status">${tried}</div>
    <div class="row withhands">${pull}${handsButton(session)}</div>
    ${desk.off && !desk.pulling ? html`<div class="row">${apart}</div>` : html`<div class="row three">${tries}${slack}</div>`}
    ${size === 'narrow' ? nothing : html`<div class="row three">${pageButtons(desk)}</div>`}
  </section>`;
}
