import { html, nothing, type TemplateResult } from 'lit';
import type { OnHill } from '../../../sim/index.ts';
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
  ) => html`<div class="park-bar"><span class=${desk.nose === nose ? 'on' : ''}>Nose ${nose}</span>
      <i><s class=${nose} .style=${`width:${share(way[nose].can)}`}></s></i>
      <b data-torque=${nose}>${Number.isFinite(way[nose].can) ? number(down(way[nose].can / 1000, 0), 0) : 'locks'}</b></div>`;
  return html`<div class="park-bars"><div class="lab">Torque a wheel can hold at a constant pull, N·m</div>
    <div class="park-both">${row('down')}${row('up')}<div class="park-need"><em .style=${`left:${share(way.down.need)}`}></em></div></div>
    <div class="park-needs">asked for <b data-need>${number(Math.ceil(way.down.need / 1000 - 1e-9), 0)}</b></div></div>`;
}

function rules(desk: ParkDesk): TemplateResult {
  const { rule } = desk;
  return html`<label class="park-rule"><span>Judged by</span>
    <select class="pick" aria-label="Judged by" @change=${(e: Event) => desk.judgeBy((e.target as HTMLSelectElement).value)}>
      ${parkingRules.map((r) => html`<option value=${r.id} ?selected=${rule.id === r.id}>${asked(r)} · ${sureWord[r.sure]}</option>`)}
      <option value="own" ?selected=${rule.id === 'own'}>${rule.id === 'own' ? asked(rule) : 'a slope'} · your own</option>
    </select></label>
    <p class="park-what" data-rule>${rule.what}. <b>${sureWord[rule.sure]}</b>.${rule.hand ? html` Hand at most ${rule.hand.newton} N (${rule.hand.sure}).` : nothing}</p>`;
}

function verdictBlock(page: PageView, desk: ParkDesk): TemplateResult {
  const way = { down: desk.hill('down'), up: desk.hill('up') };
  const v = verdict(way[desk.nose], desk.rule, desk.nose, desk.jam);
  return html`<section class="blk park-verdict" aria-label="Verdict">
    <div class="park-says" role="status" data-verdict>${markOf(v.mark)}<div><strong>${v.text}</strong><span>${v.margin}</span></div></div>
    <button class="btn park-chocks" aria-pressed=${desk.loose} @click=${() => desk.letRoll(!desk.loose)}>${desk.loose ? 'Chock it' : 'Chocks away'}</button>
    ${bars(desk, way)}${why(page.full, rules(desk))}</section>`;
}

/** Notches as what they are spent on. */
function notches(desk: ParkDesk): TemplateResult {
  const s = desk.spent;
  const part = (mm: number, cls: string) =>
    html`<s class=${cls} .style=${`flex:${Math.max(0.01, mm).toFixed(2)}`}></s>`;
  return html`<div class="c w park-notch" data-key="notches"><b>Hand lever: where its notches go, mm of cable</b>
    <div class="park-row"><div class="v">${number(s.notches, 1)}<small>notches</small></div>
      <div><div class="park-spent" aria-hidden="true">${part(s.slack, 'slack')}${part(s.stretch, 'stretch')}${part(s.turning, 'turning')}</div>
      <div class="park-parts"><span data-spent="slack">slack ${number(s.slack, 1)}</span><span data-spent="stretch">stretch ${number(s.stretch, 1)}</span><span data-spent="turning">turning the lever ${number(s.turning, 1)}</span></div></div></div></div>`;
}

function readings({ full }: PageView, desk: ParkDesk): TemplateResult {
  const slope = (nose: Nose) => {
    const { slope: held } = desk.hill(nose);
    return html`<div class="c" data-key="slope-${nose}"><b>Steepest held, nose ${nose}</b><div class="v">${Number.isFinite(held) ? number(down(100 * held, 1), 1) : 'any'}<small>%</small></div></div>`;
  };
  const { wheel } = desk;
  const over = desk.rule.hand && wheel.handForce > desk.rule.hand.newton;
  return html`<section class="blk rd" aria-label="Readings">
    ${slope('down')}${slope('up')}
    ${full ? html`<div class="c" data-key="cable"><b>Cable pull, each wheel</b><div class="v">${number(desk.cable, 0)}<small>N</small></div></div>` : nothing}
    <div class="c ${full ? '' : 'w'}" data-key="hand" title="All cables together over ratio and efficiency of the hand lever"><b>Hand on the lever</b><div class="v">${number(wheel.handForce, 0)}<small>N</small>${over ? html`<em class="park-over">over ${desk.rule.hand?.newton}</em>` : nothing}</div></div>
    ${full ? notches(desk) : nothing}
  </section>`;
}

export function parkSide(page: PageView, desk: ParkDesk): TemplateResult {
  const narrow = page.size === 'narrow';
  const short = page.size === 'middle';
  return html`<section class="blk h"><h1>Park</h1>${short ? nothing : html`<p>One cable works both shoes: the lever pushes the strut, and its pivot pushes back the other way.</p>`}</section>
    ${verdictBlock(page, desk)}
    ${readings(page, desk)}
    ${narrow ? html`<section class="blk park-panel">${hillFigure(desk)}${slopeStep(desk)}</section>${panels(desk)}` : nothing}
    <section class="note">${caution}<div>${cautions.park}${page.session.state.leverOffStop > 0 ? html` <b>${notFirst}</b>` : nothing}</div></section>`;
}
