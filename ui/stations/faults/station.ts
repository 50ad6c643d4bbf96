import { html, nothing, type TemplateResult } from 'lit';
import { cautions } from '../../cautions.ts';
import { caution } from '../../pieces/icons.ts';
import { deskOf, type PageView, type Station } from '../station.ts';
import { chooser } from './browse.ts';
import { FaultsDesk } from './desk.ts';
import { faultLog } from './on-paper.ts';
import type { Mode } from './part.ts';
import './find-board.ts';
import './find-side.ts';
import { labelWords, faultsStation as words } from '../../../sim/words/en.ts';

/** Faults: what each does to the readings, and vans whose fault is to be found. */

const modes: readonly [Mode, string][] = [
  ['browse', labelWords.browse],
  ['find', words.findTheFault],
];

function side({ session, size }: PageView): TemplateResult {
  const desk = deskOf(FaultsDesk, session);
  const narrow = size === 'narrow';
  if (desk.mode === 'find') {
    return html`<section class="blk h"><h1>${words.findTheFault}</h1><p>${words.whichReadingPartsTheNames}</p></section>
      ${narrow ? html`<takeup-find-board narrow .style=${'order:3'} .session=${session} .rev=${session.revision}></takeup-find-board>` : nothing}
      <takeup-find-side .style=${narrow ? 'order:4' : ''} .session=${session} .rev=${session.revision}></takeup-find-side>
      <section class="note">${caution}<div>${cautions.fault}</div></section>`;
  }
  return html`<section class="blk h"><h1>${words.faults}</h1><p>${desk.fault ? words.eachIsAChangeOf : words.eachIsAChangeOf2}</p></section>
    ${narrow ? html`<takeup-fault-readings .style=${'order:4;border-bottom:2px solid var(--ink)'} .session=${session} .rev=${session.revision}></takeup-fault-readings>` : nothing}
    <takeup-fault-card .style=${narrow ? 'order:4' : ''} .session=${session} .rev=${session.revision}></takeup-fault-card>
    <section class="note">${caution}<div>${cautions[desk.fault?.caution ?? 'fault']}</div></section>`;
}

function controls({ session, size }: PageView): TemplateResult {
  const desk = deskOf(FaultsDesk, session);
  const narrow = size === 'narrow';
  const hint = html`<button class="btn" @click=${() => desk.giveHint()}>${narrow ? words.hint : words.giveMeAHint}</button>`;
  const other = html`<button class="btn" @click=${() => desk.another()}>${words.anotherVan}</button>`;
  const name = html`<button class="btn p ${narrow ? '' : 'tall'}" ?disabled=${!desk.chosen} @click=${() => desk.name()}>${narrow ? words.nameIt : words.nameTheFault}</button>`;
  return html`<section class="blk ctl" aria-label=${words.controls} .style=${'position:sticky;bottom:0;z-index:3'}>
    <div class="seg" role="group" aria-label=${words.mode}>${modes.map(([m, text]) => html`<button aria-pressed=${desk.mode === m} class=${desk.mode === m ? 'on' : ''} @click=${() => desk.show(m)}>${text}</button>`)}</div>
    ${
      desk.mode === 'browse'
        ? chooser(desk, narrow)
        : narrow
          ? html`<div class="row three">${hint}${other}${name}</div>`
          : html`<div class="row two">${hint}${other}</div>${name}`
    }
  </section>`;
}

/** The stage's part of the page: left under the complaint, or above the readings. */
function inset({ session, size }: PageView): string {
  if (size === 'narrow') return '';
  const find = deskOf(FaultsDesk, session).mode === 'find';
  const wide = size === 'wide';
  if (find) return wide ? 'inset:150px 58% 170px 0' : 'inset:86px 64% 110px 0';
  return wide ? 'inset:0 0 300px 0' : 'inset:0 0 190px 0';
}

function over({ session, size }: PageView): TemplateResult {
  if (size === 'narrow') return html``;
  const desk = deskOf(FaultsDesk, session);
  const wide = size === 'wide';
  if (desk.mode === 'find') {
    return html`<takeup-find-board .session=${session} .rev=${session.revision}></takeup-find-board>`;
  }
  return html`<takeup-fault-readings .style=${`position:absolute;left:0;right:0;bottom:${wide ? 60 : 48}px;height:${wide ? 240 : 142}px;border-top:2px solid var(--ink);z-index:1`} .session=${session} .rev=${session.revision}></takeup-fault-readings>`;
}

export const faultsStation: Station = {
  id: 'faults',
  paper: ({ session }) =>
    deskOf(FaultsDesk, session).mode === 'find' ? [faultLog(session, true)] : [],
  side,
  controls,
  over,
  inset,
};
