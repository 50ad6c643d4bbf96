import { html, nothing, type TemplateResult } from 'lit';
import { HOT_DRUM, type OrderOutcome, type SettingOrder } from '../../../sim/index.ts';
import { orderOrders as words } from '../../../sim/words/en.ts';
import { number } from '../../format.ts';
import type { Setting } from './setting.ts';

/** Wrong orders of setting beside the right one, each worked through by the model. */

const names: Readonly<Record<SettingOrder, string>> = words.names;

/** What is to be seen of an order in the figures of its row. */
export function tellOrder(o: OrderOutcome, right: OrderOutcome): string {
  switch (o.order) {
    case 'right':
      return words.theShoesSetTheGap;
    case 'cable first':
      return words.theCableMmDrawnUp(
        number(o.off, 1),
        o.teeth === 0 ? words.pressingNeverClicks : words.ofTheTeethDropIn(o.teeth),
      );
    case 'let off':
      return words.whatWasHiddenAndThe(gapAgainst(o, right), number(o.notches - right.notches, 1));
    case 'no presses':
      return words.theStrutStillRightBack(gapAgainst(o, right));
    case 'hot':
      return words.atCTheDrumIs(
        HOT_DRUM,
        o.teeth - right.teeth > 0
          ? words.tooMany(
              o.teeth - right.teeth,
              o.teeth - right.teeth === 1 ? words.tooth : words.teeth,
            )
          : words.noToothMoreHere,
        o.gap < 0 ? words.itDrags : words.onlyIsLeft(number(o.gap, 2)),
      );
  }
}

function gapAgainst(o: OrderOutcome, right: OrderOutcome): string {
  const more = o.gap - right.gap;
  return Math.abs(more) < 5e-3
    ? words.theGapIsTheSame
    : words.aGapOfWhereIs(number(o.gap, 2), number(right.gap, 2));
}

/** What each order gives, its figures alone; with what they mean under each row, where there is no other place. */
export function ordersTable(set: Setting, told: boolean): TemplateResult {
  const all = set.orders;
  const right = all[0] as OrderOutcome;
  const row = (o: OrderOutcome) =>
    html`<tr data-order=${o.order} class=${o.order === 'right' ? 'on' : ''}><th scope="row">${names[o.order]}</th><td>${number(o.gap, 2)}</td><td>${number(o.pedal, 0)}</td><td>${number(o.notches, 1)}</td><td>${number(o.turns, 0)}</td></tr>${told ? html`<tr class="says"><td colspan="5">${tellOrder(o, right)}</td></tr>` : nothing}`;
  return html`<table class="or-orders"><caption>${words.otherOrdersWorkedThrough}</caption><thead><tr><th scope="col">${words.order}</th><th scope="col">${words.gapMm}</th><th scope="col">${words.pedalMm}</th><th scope="col">${words.notches}</th><th scope="col">${words.toTurnN}</th></tr></thead><tbody>${all.map(row)}</tbody></table>`;
}

/** What the figures of each order mean. */
export function ordersSaid(set: Setting): TemplateResult {
  const all = set.orders;
  const right = all[0] as OrderOutcome;
  return html`<dl class="or-said">${all.map((o) => html`<div><dt>${names[o.order]}</dt><dd>${tellOrder(o, right)}</dd></div>`)}</dl>`;
}
