import { html, type TemplateResult } from 'lit';
import { wearEvents as texts } from '../../sim/words/en.ts';
import type { ToldEvent } from '../../sim/workshop/index.ts';
import { wordsOf } from '../adjusters.ts';
import { markOf } from '../plot/words.ts';
import type { PageView } from './station.ts';
import type { WearDesk } from './wear-desk.ts';

/** The run's events in plain words, the latest first; each goes to its moment. */

/** Most that are listed: a star wheel clicks hundreds of times. */
const MOST = 400;

const sign: Readonly<Record<ReturnType<typeof markOf>, TemplateResult>> = {
  tooth: html`<svg class="sign16" viewBox="0 0 16 16" aria-hidden="true"><path d="M1 3h14L8 14z" fill="var(--adj)"/></svg>`,
  reject: html`<svg class="sign16" viewBox="0 0 16 16" aria-hidden="true"><path d="M1 1h14v14H1z" fill="var(--bad)"/><path d="M5 5l6 6M5 11l6-6" stroke="var(--sheet)" stroke-width="2"/></svg>`,
  watch: html`<svg class="sign16" viewBox="0 0 16 16" aria-hidden="true"><path d="M8 1l7.5 13.5H.5z" fill="var(--warn)"/><path d="M8 6v4M8 11.6v1.6" stroke="var(--warn-ink)" stroke-width="1.8"/></svg>`,
};

export function eventLog({ session }: PageView, d: WearDesk): TemplateResult {
  const all = d.told;
  const { unlisted } = wordsOf(session.brake);
  const again = wordsOf(session.brake).timbre !== null && !session.reducedMotion;
  const list = all.slice(-MOST).reverse();
  const here = session.state;
  const now = (e: ToldEvent): boolean => e.distance === here.distance && e.tooth === here.tooth;
  if (list.length === 0) {
    return html`<section class="blk wearlog wearpanel" aria-label=${texts.events}><p>${texts.nothingHasHappenedYetWear}</p></section>`;
  }
  return html`<section class="blk wearlog wearpanel" aria-label=${texts.events} tabindex="0">
    ${unlisted ? html`<p>${unlisted}</p>` : ''}
    ${all.length > MOST ? html`<p>${texts.theLastOf(MOST, all.length)}</p>` : ''}
    <ul>${list.map(
      (e) =>
        html`<li><button data-event=${e.kind} aria-current=${now(e) ? 'true' : 'false'} class=${now(e) ? 'on' : ''} @click=${() => d.goTo(e)}>${sign[markOf(e.kind)]}<span>${e.text}</span></button>${e.kind === 'click' && again ? html`<button class="again" data-show-click aria-label=${texts.showTheClickAgain(e.text)} @click=${() => d.showClick(e)}>${texts.showIt}</button>` : ''}</li>`,
    )}</ul></section>`;
}
