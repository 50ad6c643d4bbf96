import { html, type TemplateResult } from 'lit';
import { show } from '../../record/guest.ts';
import { deskOf, type PageView, type Station } from '../station.ts';
import { SeeDesk } from './desk.ts';
import './free.ts';
import './likely.ts';
import './said.ts';
import { see as texts } from '../../../sim/words/en.ts';
import { seePageStyles } from './page-styles.ts';
import { titles } from './words.ts';

/** What I see: what one notices of one's own car, likely causes and the cheapest next check. */

function side({ session, size }: PageView): TemplateResult {
  const desk = deskOf(SeeDesk, session);
  const narrow = size === 'narrow';
  const { topic } = desk.part;
  const head = html`<section class="blk h see-h"><h1>${titles[topic]}</h1><span>${Object.keys(desk.part.said).length > 0 ? html`<button class="see-change" @click=${() => desk.anew()}>${texts.beginAnew}</button>` : ''}<button class="see-change" @click=${() => session.do(show, 'start')}>${texts.change}</button></span></section>`;
  if (topic === 'free')
    return html`${head}<takeup-free .style=${'order:4'} .session=${session} .rev=${session.revision}></takeup-free>`;
  if (!narrow)
    return html`${head}<takeup-likely .session=${session} .rev=${session.revision}></takeup-likely>`;
  return html`${head}
    <takeup-said .style=${'order:3'} .session=${session} .rev=${session.revision}></takeup-said>
    <takeup-likely .style=${'order:4'} .session=${session} .rev=${session.revision}></takeup-likely>
    <details class="see-all" .style=${'order:5'}><summary>${texts.everythingThatCanBeSaid}</summary><takeup-said all bare .session=${session} .rev=${session.revision}></takeup-said></details>`;
}

function controls({ session }: PageView): TemplateResult {
  const desk = deskOf(SeeDesk, session);
  if (desk.part.topic === 'free') return html``;
  return html`<section class="blk ctl" aria-label=${texts.withThisCase}>
    <div class="row three"><button class="btn" @click=${() => desk.carry('drum-off')}>${texts.drumOff}</button><button class="btn" @click=${() => desk.carry('new-shoes')}>${texts.newShoes}</button><button class="btn" @click=${() => desk.carry('inspect')}>${texts.inspect}</button></div>
  </section>`;
}

const over = ({ session, size }: PageView): TemplateResult =>
  size === 'narrow'
    ? html``
    : html`<takeup-said all .session=${session} .rev=${session.revision}></takeup-said>`;

export const see: Station = {
  id: 'see',
  styles: seePageStyles,
  phoneStage: false,
  side,
  controls,
  over,
};
