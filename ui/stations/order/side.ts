import { html, nothing, type TemplateResult } from 'lit';
import { labelWords, language, orderSide as texts } from '../../../sim/words/en.ts';
import { stepsOf } from '../../adjusters.ts';
import { cautions } from '../../cautions.ts';
import { number } from '../../format.ts';
import { caution } from '../../pieces/icons.ts';
import { show } from '../../record/guest.ts';
import { stationNames } from '../../record/moment.ts';
import type { PageView } from '../station.ts';
import { bedCharts } from './charts.ts';
import type { OrderDesk } from './desk.ts';
import { ordersSaid, ordersTable } from './orders.ts';
import { type OrderPage, orderPages } from './plan.ts';
import { textOf } from './step.ts';
import { toolPicture } from './tools.ts';
import { waysOut } from './words-back.ts';

export const pageNames: Readonly<Record<OrderPage, string>> = texts.pageNames;

const tick = html`<svg class="or-tick" viewBox="0 0 20 20" role="img" aria-label=${texts.lookedAt}><path d="M3 11L8 16L17 4" fill="none" stroke="currentColor" stroke-width="3.4" /></svg>`;

function pages(desk: OrderDesk): TemplateResult {
  return html`<div class="seg or-pages" role="group" aria-label=${texts.partOfTheWork}>${orderPages.map(
    (p) =>
      html`<button data-page=${p} class=${desk.page === p ? 'on' : ''} aria-current=${desk.page === p ? 'true' : 'false'} @click=${() => desk.open(p)}>${pageNames[p]}</button>`,
  )}</div>`;
}

/** Have all checks of a step been ticked? */
function isDone(desk: OrderDesk, id: string): boolean {
  const { checks } = desk.words[id] ?? { checks: [] };
  return checks.length > 0 && checks.every((_, i) => desk.part.ticked.includes(`${id} ${i}`));
}

/** All steps of the page in their order; the open one with what to do and its caution. */
function list(desk: OrderDesk, narrow: boolean): TemplateResult {
  const key = (e: KeyboardEvent): void => {
    const by = { ArrowDown: 1, ArrowUp: -1 }[e.key];
    if (!by) return;
    desk.go(desk.at + by);
    e.preventDefault();
    const root = (e.currentTarget as HTMLElement).getRootNode() as ShadowRoot;
    requestAnimationFrame(() => root.querySelector<HTMLElement>('.or-list .on button')?.focus());
  };
  return html`<section class="blk or-list" aria-label=${texts.steps}><ol @keydown=${key}>${desk.ids.map(
    (id, i) => {
      const step = desk.words[id];
      if (!step) return nothing;
      const on = i === desk.at;
      const say =
        on && !narrow
          ? html`<p>${textOf(step.does, desk)}</p><p class="care">${caution}<span>${step.care}</span></p>`
          : nothing;
      return html`<li class=${on ? 'on' : ''} data-step=${id}><button aria-current=${on ? 'step' : 'false'} @click=${() => desk.go(i)}><i>${i + 1}</i><b>${step.name}</b>${isDone(desk, id) ? tick : nothing}</button>${say}</li>`;
    },
  )}</ol></section>`;
}

/** What the model knows of the step. */
function holds(desk: OrderDesk): TemplateResult | typeof nothing {
  const all = desk.step.holds?.(desk) ?? [];
  if (all.length === 0) return nothing;
  return html`<dl class="or-holds">${all.map(
    ({ name, value, unit }) =>
      html`<div><dt>${name}</dt><dd>${value}${unit ? html`<small>${unit}</small>` : nothing}</dd></div>`,
  )}</dl>`;
}

const fact = (name: string, text: string | undefined): TemplateResult | typeof nothing =>
  text ? html`<p class="or-fact"><b>${name}</b> ${text}</p>` : nothing;

function checks(desk: OrderDesk): TemplateResult | typeof nothing {
  const { step } = desk;
  if (step.checks.length === 0) return nothing;
  return html`<fieldset class="or-checks"><legend>${texts.check}</legend>${step.checks.map(
    (text, i) =>
      html`<label><input type="checkbox" data-check=${i} .checked=${desk.isTicked(i)} @change=${() => desk.tick(i)} /><span>${text}</span></label>`,
  )}</fieldset>`;
}

/** The adjuster backed off here, a press at a time. */
function backOff(desk: OrderDesk): TemplateResult {
  const { brake, shown, moment } = desk.session;
  const steps = stepsOf(brake);
  const { need, back } = desk;
  if (moment.bench.state.tooth === 0)
    return html`<div class="or-back"><p class="or-fact">${texts.thisOneStandsAtIts}</p>${
      desk.canTryWorn
        ? html`<button class="btn or-to" data-try-worn @click=${() => desk.tryWorn()}>${texts.tryAWornBrake}</button>`
        : nothing
    }</div>`;
  return html`<div class="or-back"><div class="lab" id="or-back">${steps.head}</div><div class="or-step" role="group" aria-labelledby="or-back">
    <button class="btn" aria-label=${steps.on} ?disabled=${back === 0} @click=${() => desk.backOff(-steps.press)}>−</button>
    <div><strong data-back>${steps.amount(moment.bench.state.tooth, back)}</strong> ${need === null ? texts.allOfItIsNot : need <= 0 ? texts.comesFree : html`${texts.still(desk.needText)}`}</div>
    <button class="btn" aria-label=${steps.back} ?disabled=${shown.tooth === 0} @click=${() => desk.backOff(steps.press)}>+</button></div></div>`;
}

function ways(desk: OrderDesk): TemplateResult {
  return html`<ol class="or-ways" type="a">${waysOut(desk).map(
    ([way, price]) => html`<li>${way}<small>${price}</small></li>`,
  )}</ol>`;
}

/** Steps whose place in the order matters: what another order gives stands there. */
const ORDERS_AT: readonly string[] = ['silent', 'home', 'cable-last'];
const ordersAt = ({ page, id }: OrderDesk): boolean => page === 'set' && ORDERS_AT.includes(id);

/** Everything of the open step but what to do: part, tool, forces, what may fly, which way round, checks. */
export function card(desk: OrderDesk, narrow: boolean): TemplateResult {
  const { step, id, page } = desk;
  const [tool, says] = step.tool;
  if (page === 'bed') return html`${bedCharts(desk.bedding)}${checks(desk)}`;
  return html`<h2>${step.name}</h2>
    <div class="or-part">${toolPicture(tool, says)}<p>${says}</p></div>
    ${holds(desk)}${page === 'back' && (id === 'push' || id === 'try') ? backOff(desk) : nothing}
    ${id === 'way-out' ? ways(desk) : nothing}${ordersAt(desk) ? (narrow ? ordersTable(desk.set, true) : ordersSaid(desk.set)) : nothing}
    ${fact(texts.mayFly, step.flies)}${fact(texts.goesBack, step.back ? textOf(step.back, desk) : undefined)}
    ${checks(desk)}
    ${
      page === 'back' || id === 'drum'
        ? html`<button class="btn or-to" data-to="drum-off" @click=${() => desk.session.do(show, 'drum-off')}>${texts.whatHoldsIt(stationNames['drum-off'])}</button>`
        : page === 'set'
          ? html`<button class="btn or-to" data-to="new-shoes" @click=${() => desk.session.do(show, 'new-shoes')}>${texts.yourSizes(stationNames['new-shoes'])}</button>`
          : nothing
    }`;
}

/** On the phone the open step stands first, whole; the list of all under it. */
export function orderSide({ size }: PageView, desk: OrderDesk): TemplateResult {
  const narrow = size === 'narrow';
  const { step } = desk;
  return html`<section class="blk h or-h"><h1>${texts.inOrder}</h1>${pages(desk)}</section>
    ${
      narrow
        ? html`<section class="blk or-now" aria-label=${texts.thisStep}><h2><i>${desk.at + 1}</i> ${step.name}</h2><p>${textOf(step.does, desk)}</p><p class="care">${caution}<span>${step.care}</span></p></section>
          <section class="blk or-card">${card(desk, true)}</section>`
        : nothing
    }${list(desk, narrow)}${!narrow && ordersAt(desk) ? html`<section class="blk or-beside">${ordersTable(desk.set, false)}</section>` : nothing}
    <p class="foot or-foot">${cautions.standing}</p>`;
}

/** Back and on; after a page's last step, where the work goes on. */
export function orderControls(desk: OrderDesk): TemplateResult {
  const { at, ids, isLast, session } = desk;
  const { after, step } = desk;
  const next = isLast ? null : desk.words[ids[at + 1] as string];
  const word = step.done ?? (desk.page === 'apart' && at > 2 ? labelWords.off : labelWords.done);
  const on = (): void => {
    if (!isLast) desk.go(at + 1);
    else if ('page' in after) desk.open(after.page);
    else session.do(show, after.station);
  };
  return html`<section class="blk ctl or-ctl" aria-label=${texts.controls}>
    <div class="row"><button class="btn" ?disabled=${at === 0} @click=${() => desk.go(at - 1)}>${texts.back}</button>
    <button class="btn p" data-next @click=${on}><span>${next ? texts.next(word, language.inside(next.name)) : word}</span></button></div>
    <div class="hidden" role="status">${texts.stepOf(number(at + 1, 0), ids.length, step.name)}</div></section>`;
}
