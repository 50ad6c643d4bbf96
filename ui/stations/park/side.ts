import { html, nothing, type TemplateResult } from 'lit';
import type { OnHill } from '../../../sim/index.ts';
import { parkSide as texts } from '../../../sim/words/en.ts';
import { parkingRules } from '../../../sim/workshop/index.ts';
import { cautions } from '../../cautions.ts';
import { down, number } from '../../format.ts';
import { why } from '../../pieces/few.ts';
import { caution } from '../../pieces/icons.ts';
import type { PageView } from '../station.ts';
import { slopeStep } from './controls.ts';
import type { ParkDesk } from './desk.ts';
import { hillFigure } from './hill.ts';
import { markOf } from './marks.ts';
import { panels } from './panels.ts';
import type { Nose } from './part.ts';
import { asked, notFirst, sureWord, verdict } from './words.ts';

/** Both ways on one scale, the hill's need as one mark through both. */
function bars(desk: ParkDesk, way: Record<Nose, OnHill>): TemplateResult {
  const cans = [way.down.can, way.up.can].filter(Number.isFinite);
  const most = 1.18 * Math.max(way.down.need, ...cans, 1);
  const share = (torque: number): string => `${(100 * Math.min(1, torque / most)).toFixed(1)}%`;
  const row = (
    nose: Nose,
  ) => html`<div class="park-bar"><span class=${desk.nose === nose ? 'on' : ''}>${texts.nose(nose)}</span>
      <i><s class=${nose} .style=${`width:${share(way[nose].can)}`}></s></i>
      <b data-torque=${nose}>${Number.isFinite(way[nose].can) ? number(down(way[nose].can / 1000, 0), 0) : texts.locks}</b></div>`;
  return html`<div class="park-bars"><div class="lab">${texts.torqueAWheelCanHold}</div>
    <div class="park-both">${row('down')}${row('up')}<div class="park-need"><em .style=${`left:${share(way.down.need)}`}></em></div></div>
    <div class="park-needs">${texts.askedFor(html`<b data-need>${number(Math.ceil(way.down.need / 1000 - 1e-9), 0)}</b>`)}</div></div>`;
}

function rules(desk: ParkDesk): TemplateResult {
  const { rule } = desk;
  return html`<label class="park-rule"><span>${texts.judgedBy}</span>
    <select class="pick" aria-label=${texts.judgedBy} @change=${(e: Event) => desk.judgeBy((e.target as HTMLSelectElement).value)}>
      ${parkingRules.map((r) => html`<option value=${r.id} ?selected=${rule.id === r.id}>${asked(r)} · ${sureWord[r.sure]}</option>`)}
      <option value="own" ?selected=${rule.id === 'own'}>${texts.yourOwn(rule.id === 'own' ? asked(rule) : texts.aSlope)}</option>
    </select></label>
    <p class="park-what" data-rule>${rule.what}. <b>${sureWord[rule.sure]}</b>.${rule.hand ? html` ${texts.handAtMostN(rule.hand.newton, rule.hand.sure)}` : nothing}</p>`;
}

function verdictBlock(page: PageView, desk: ParkDesk): TemplateResult {
  const way = { down: desk.hill('down'), up: desk.hill('up') };
  const v = verdict(way[desk.nose], desk.rule, desk.nose, desk.jam);
  return html`<section class="blk park-verdict" aria-label=${texts.verdict}>
    <div class="park-says" role="status" data-verdict>${markOf(v.mark)}<div><strong>${v.text}</strong><span>${v.margin}</span></div></div>
    <button class="btn park-chocks" aria-pressed=${desk.loose} @click=${() => desk.letRoll(!desk.loose)}>${desk.loose ? texts.chockIt : texts.chocksAway}</button>
    ${bars(desk, way)}${why(page.full, rules(desk))}</section>`;
}

/** Notches as what they are spent on. */
function notches(desk: ParkDesk): TemplateResult {
  const s = desk.spent;
  const part = (mm: number, cls: string) =>
    html`<s class=${cls} .style=${`flex:${Math.max(0.01, mm).toFixed(2)}`}></s>`;
  return html`<div class="c w park-notch" data-key="notches"><b>${texts.handLeverWhereItsNotches}</b>
    <div class="park-row"><div class="v">${number(s.notches, 1)}<small>${texts.notches}</small></div>
      <div><div class="park-spent" aria-hidden="true">${part(s.slack, 'slack')}${part(s.stretch, 'stretch')}${part(s.turning, 'turning')}</div>
      <div class="park-parts"><span data-spent="slack">${texts.slack(number(s.slack, 1))}</span><span data-spent="stretch">${texts.stretch(number(s.stretch, 1))}</span><span data-spent="turning">${texts.turningTheLever(number(s.turning, 1))}</span></div></div></div></div>`;
}

function readings({ full }: PageView, desk: ParkDesk): TemplateResult {
  const slope = (nose: Nose) => {
    const { slope: held } = desk.hill(nose);
    return html`<div class="c" data-key="slope-${nose}"><b>${texts.steepestHeldNose(nose)}</b><div class="v">${Number.isFinite(held) ? number(down(100 * held, 1), 1) : texts.any}<small>%</small></div></div>`;
  };
  const { wheel } = desk;
  const over = desk.rule.hand && wheel.handForce > desk.rule.hand.newton;
  return html`<section class="blk rd" aria-label=${texts.readings}>
    ${slope('down')}${slope('up')}
    ${full ? html`<div class="c" data-key="cable"><b>${texts.cablePullEachWheel}</b><div class="v">${number(desk.cable, 0)}<small>N</small></div></div>` : nothing}
    <div class="c ${full ? '' : 'w'}" data-key="hand" title=${texts.allCablesTogetherOverRatio}><b>${texts.handOnTheLever}</b><div class="v">${number(wheel.handForce, 0)}<small>N</small>${over ? html`<em class="park-over">${texts.over(desk.rule.hand?.newton)}</em>` : nothing}</div></div>
    ${full ? notches(desk) : nothing}
  </section>`;
}

export function parkSide(page: PageView, desk: ParkDesk): TemplateResult {
  const narrow = page.size === 'narrow';
  const short = page.size === 'middle';
  return html`<section class="blk h"><h1>${texts.park}</h1>${short ? nothing : html`<p>${texts.oneCableWorksBothShoes}</p>`}</section>
    ${verdictBlock(page, desk)}
    ${readings(page, desk)}
    ${narrow ? html`<section class="blk park-panel">${hillFigure(desk)}${slopeStep(desk)}</section>${panels(desk)}` : nothing}
    <section class="note">${caution}<div>${cautions.park}${page.session.state.leverOffStop > 0 ? html` <b>${notFirst}</b>` : nothing}</div></section>`;
}
