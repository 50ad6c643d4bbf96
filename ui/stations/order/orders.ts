import { html, nothing, type TemplateResult } from 'lit';
import { HOT_DRUM, type OrderOutcome, type SettingOrder } from '../../../sim/index.ts';
import { number } from '../../format.ts';
import type { Setting } from './setting.ts';

/** Wrong orders of setting beside the right one, each worked through by the model. */

const names: Readonly<Record<SettingOrder, string>> = {
  right: 'Gauge, presses, cable last',
  'cable first': 'Cable first',
  'let off': 'Cable first, then let off',
  'no presses': 'No gauge, no presses',
  hot: 'Pressed on a hot drum',
};

/** What is to be seen of an order in the figures of its row. */
export function tellOrder(o: OrderOutcome, right: OrderOutcome): string {
  switch (o.order) {
    case 'right':
      return 'The shoes set the gap; the cable only takes up its own slack.';
    case 'cable first':
      return `The cable, ${number(o.off, 1)} mm drawn up, holds the shoes out: ${o.teeth === 0 ? 'pressing never clicks' : `${o.teeth} of the teeth drop in`}. It feels right.`;
    case 'let off':
      return `What was hidden: ${gapAgainst(o, right)}, and the lever has ${number(o.notches - right.notches, 1)} notches more.`;
    case 'no presses':
      return `The strut still right back: ${gapAgainst(o, right)}.`;
    case 'hot':
      return `At ${HOT_DRUM} °C the drum is larger: ${o.teeth - right.teeth > 0 ? `${o.teeth - right.teeth} ${o.teeth - right.teeth === 1 ? 'tooth' : 'teeth'} too many, ` : 'no tooth more here, '}${o.gap < 0 ? 'it drags' : `only ${number(o.gap, 2)} is left`} once it is cold.`;
  }
}

function gapAgainst(o: OrderOutcome, right: OrderOutcome): string {
  const more = o.gap - right.gap;
  return Math.abs(more) < 5e-3
    ? 'the gap is the same'
    : `a gap of ${number(o.gap, 2)} where ${number(right.gap, 2)} is right`;
}

/** What each order gives, its figures alone; with what they mean under each row, where there is no other place. */
export function ordersTable(set: Setting, told: boolean): TemplateResult {
  const all = set.orders;
  const right = all[0] as OrderOutcome;
  const row = (o: OrderOutcome) =>
    html`<tr data-order=${o.order} class=${o.order === 'right' ? 'on' : ''}><th scope="row">${names[o.order]}</th><td>${number(o.gap, 2)}</td><td>${number(o.pedal, 0)}</td><td>${number(o.notches, 1)}</td><td>${number(o.turns, 0)}</td></tr>${told ? html`<tr class="says"><td colspan="5">${tellOrder(o, right)}</td></tr>` : nothing}`;
  return html`<table class="or-orders"><caption>Other orders, worked through</caption><thead><tr><th scope="col">Order</th><th scope="col">gap mm</th><th scope="col">pedal mm</th><th scope="col">notches</th><th scope="col">to turn N</th></tr></thead><tbody>${all.map(row)}</tbody></table>`;
}

/** What the figures of each order mean. */
export function ordersSaid(set: Setting): TemplateResult {
  const all = set.orders;
  const right = all[0] as OrderOutcome;
  return html`<dl class="or-said">${all.map((o) => html`<div><dt>${names[o.order]}</dt><dd>${tellOrder(o, right)}</dd></div>`)}</dl>`;
}
