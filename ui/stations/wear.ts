import { html, nothing, type TemplateResult } from 'lit';
import { KM, roleOf } from '../../sim/index.ts';
import { wordsOf } from '../adjusters.ts';
import { number } from '../format.ts';
import { cell, liningCell } from '../pieces/cells.ts';
import { fewReadings } from '../pieces/few.ts';
import { caution } from '../pieces/icons.ts';
import '../pieces/chart-strip.ts';
import { labelWords, wear as texts } from '../../sim/words/en.ts';
import { cautions } from '../cautions.ts';
import { ends, lifeTrouble } from '../words.ts';
import { deskOf, type PageView, type Station } from './station.ts';
import { WearDesk } from './wear-desk.ts';
import { eventLog } from './wear-events.ts';
import { forecastCell } from './wear-forecast.ts';
import { hotPage } from './wear-hot.ts';
import { wearReport } from './wear-on-paper.ts';
import type { WearPage, WearStep } from './wear-part.ts';
import { roadPick, setUp } from './wear-set-up.ts';

/** Wear: drive the brake on, watch the adjuster take up, go back to any moment of its life. */

const story = (d: WearDesk): TemplateResult =>
  d.row && d.row.drag.torque > 0 ? drags(d.row.drag.torque) : idea(d);

const drags = (torque: number): TemplateResult =>
  html`${texts.releasedItDragsALining(html`<b class="lead">${number(torque / 1000, 0)} N·m</b>`)}`;

const idea = (d: WearDesk): TemplateResult =>
  html`${wordsOf(d.session.brake).idea}${wordsOf(d.session.brake).timbre ? html`: <b class="adj">${texts.click}</b>.` : '.'}`;

const desk = (page: PageView): WearDesk => deskOf(WearDesk, page.session);

function readings(page: PageView, d: WearDesk): TemplateResult {
  if (!page.full) return fewReadings(page.find, ['distance', 'restClearanceMean', 'tooth']);
  const { find, instant: i, session } = page;
  const { row } = d;
  const last = d.events.findLast((e) => e.kind === 'click' && e.distance <= session.state.distance);
  const since = session.state.distance - (last?.distance ?? 0);
  const role = (side: 'front' | 'rear') =>
    roleOf(side, i.turning) === 'leading' ? 'lead' : 'trail';
  const distance = find('distance');
  const factor = row && row.clearance > 0 ? row.brakeFactor : Number.NaN;
  const { step } = wordsOf(session.brake);
  return html`<section class="blk rd wearpanel thirds" aria-label=${texts.readings} tabindex="0">
      <div class="c w bf two"><div><b>${texts.distance}</b><div class="v big" data-key="distance">${number(distance.value, 0)}<small>km</small></div></div>
        <div><b>${last ? texts.sinceTheLast(step) : texts.noYet(step)}</b><div class="v mid">${number(since / KM, 0)}<small>km</small></div></div></div>
      ${cell(find('restClearanceFront'), { label: texts.clearanceFront, square: role('front') })}${cell(find('restClearanceRear'), { label: texts.clearanceRear, square: role('rear') })}
      ${liningCell(find, session.brake, 'front', role('front'))}
      ${liningCell(find, session.brake, 'rear', role('rear'))}
      ${cell(find('drumDiameter'))}${cell(find('temperature'), { label: texts.temperature })}
      <div class="c" data-key="dutyFactor" title=${texts.afterSpringsAtTheRoads}><b>${texts.factorAfterSprings}</b><div class="v">${number(factor, 2)}</div></div>
      ${forecastCell(d.forecast())}
    </section>`;
}

const pages: readonly [WearPage, string][] = [
  ['readings', labelWords.readings],
  ['events', labelWords.events],
  ['hot', texts.hotPress],
  ['setup', texts.setUp],
];

function side(page: PageView): TemplateResult {
  const d = desk(page);
  const count = d.told.length;
  const body = { readings, events: eventLog, hot: hotPage, setup: setUp }[d.page];
  return html`<section class="blk h"><h1>${texts.wear}</h1><p>${story(d)}</p></section>
    <div class="seg wearpages" role="group" aria-label=${texts.shownBelow}>${pages.map(
      ([id, name]) =>
        html`<button aria-pressed=${d.page === id} class=${d.page === id ? 'on' : ''} @click=${() => d.choosePage(id)}>${name}${id === 'events' && count > 0 ? html`<i>${count}</i>` : nothing}</button>`,
    )}</div>
    ${body(page, d)}${page.size === 'narrow' ? html`<section class="blk seeblk">${seeIt(d)}</section>` : nothing}
    <section class="note">${caution}<div>${page.size === 'wide' ? cautions.wear : cautions.wearShort}</div></section>`;
}

const steps: readonly [WearStep, string][] = [
  [100, '100 km'],
  [1000, '1\u202f000 km'],
  ['click', ''],
  ['limit', texts.toTheLimit],
];

function drive(d: WearDesk): TemplateResult {
  if (!d.busy) {
    return html`<button class="btn p tall" @click=${() => d.drive()}>${d.atEnd ? texts.wearOn : texts.wearOnFromHere}</button>`;
  }
  return html`<button class="btn p tall" @click=${() => d.stop()}>${texts.stopHere}${d.progress < 1 ? html`<span data-progress>${number(Math.floor(100 * d.progress), 0)} %</span>` : nothing}</button>`;
}

/** Why it is not driven on; that it is being driven again; why it ended. */
function news(d: WearDesk): TemplateResult | typeof nothing {
  const { trouble } = d;
  if (trouble) return html`<p class="wearends" role="alert">${lifeTrouble(trouble)}</p>`;
  if (d.again) {
    return html`<p class="wearends" role="status">${texts.theLifeSoFarIs(number(Math.floor(100 * d.progress), 0))}</p>`;
  }
  const ended = d.end && !d.busy ? ends[d.end] : '';
  return ended ? html`<p class="wearends" role="status">${ended}</p>` : nothing;
}

/** A press that is played: the last click once more, or how far the brake as it stands climbs. */
function seeIt(d: WearDesk): TemplateResult | typeof nothing {
  const { session } = d;
  if (session.reducedMotion || !wordsOf(session.brake).timbre) return nothing;
  return html`<div class="row two seeit">
    <button class="btn" data-again ?disabled=${d.busy || !d.lastClick} @click=${() => d.showClick()}>${texts.showTheClickAgain}</button>
    <button class="btn" data-press-here ?disabled=${d.busy} @click=${() => d.pressHere()}>${texts.pressItHere}</button></div>`;
}

function controls(page: PageView): TemplateResult {
  const d = desk(page);
  const { session } = page;
  return html`<section class="blk ctl wearctl" aria-label=${texts.controls}>
    <div class="row two">
      <div><label class="lab" for="road">${texts.road}</label>
        ${roadPick(d, 'road')}</div>
      <div><div class="lab" id="drawn">${texts.gapDrawn}</div>
        <div class="seg" role="group" aria-labelledby="drawn">${([1, 20, 40] as const).map((m) => html`<button aria-pressed=${session.magnification === m} class=${session.magnification === m ? 'on' : ''} @click=${() => session.magnify(m)}>×${m}</button>`)}</div></div>
    </div>
    <div><div class="lab" id="by">${texts.wearOnBy}</div>
      <div class="seg by" role="group" aria-labelledby="by">${steps.map(([s, name]) => html`<button aria-pressed=${d.step === s} class=${d.step === s ? 'on' : ''} @click=${() => d.chooseStep(s)}>${s === 'click' ? texts.toNext(wordsOf(session.brake).step) : name}</button>`)}</div></div>
    <div class="row two">
      ${drive(d)}
      <button class="btn tall" @click=${() => d.backToNew()}>${texts.backToNew}</button>
    </div>
    ${page.size === 'narrow' ? nothing : seeIt(d)}
    ${news(d)}
  </section>`;
}

export const wear: Station = {
  id: 'wear',
  few: texts.allReadingsLayers,
  paper: ({ session }) => [wearReport(session)],
  key: (session, e, target) => {
    if (e.key !== 'c' || target.closest('input, textarea, select, dialog[open]')) return false;
    deskOf(WearDesk, session).showClick();
    return true;
  },
  wall: {
    readings: ['distance', 'restClearanceMean', 'tooth'],
    says: (page) => html`<p>${story(desk(page))}</p>`,
    actions: (page) => {
      const d = desk(page);
      const { step } = wordsOf(page.session.brake);
      return [
        d.busy
          ? { name: texts.stopHere, does: () => d.stop() }
          : { name: texts.toTheNext(step), does: () => d.driveBy('click') },
        { name: texts.wearOn1Name, does: () => d.driveBy(1000), off: d.busy },
      ];
    },
  },
  side,
  controls,
  foot: {
    height: { wide: 300, middle: 200, narrow: 168 },
    strip: (page) => {
      const d = desk(page);
      return html`<takeup-chart class="drawn" .desk=${d} .life=${d.soFar} .at=${d.at} .look=${`${page.session.theme} ${d.lane}`} .ghost=${d.kept}></takeup-chart>`;
    },
  },
};
