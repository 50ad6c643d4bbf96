import { html, nothing, type TemplateResult } from 'lit';
import type { Brake, Reading, Side } from '../../sim/index.ts';
import { piecesCells as words } from '../../sim/words/en.ts';
import { meaningOf } from '../../sim/workshop/index.ts';
import { down, number } from '../format.ts';

/** Looks a reading up by its key. */
export type Find = (key: string) => Reading;

interface CellOptions {
  readonly label?: string;
  readonly square?: 'lead' | 'trail';
  /** A second figure beside it, quieter. */
  readonly beside?: string;
}

const square = (role: 'lead' | 'trail'): TemplateResult => html`<i class="sq ${role}"></i>`;

/** One ruled cell: label over value and unit; its meaning and formula as a tooltip and for assistive software. */
export function cell(r: Reading, o: CellOptions = {}): TemplateResult {
  return html`<div class="c" data-key=${r.key} title=${`${meaningOf(r)}\n${r.formula}`}>
    <b>${o.square ? square(o.square) : nothing}${o.label ?? r.name}</b>
    <div class="v">${number(r.value, r.digits)}${r.unit ? html`<small>${r.unit}</small>` : nothing}${o.beside ? html`<em>${o.beside}</em>` : nothing}</div>
  </div>`;
}

/** Least difference that two decimals can tell, mm. */
const TOLD = 0.005;

/** A lining that has worn to its limit, as near as two decimals can tell. */
export const atLimit = (left: number, limit: number): boolean => Math.abs(left - limit) < TOLD;

/** A lining's figure, never thicker than it is, and what stands beside it: its share, or where it is. */
export function liningTold(left: number, limit: number, share: number) {
  if (atLimit(left, limit)) return { value: limit, beside: words.atItsLimit };
  const told = Math.floor(share);
  return { value: down(left, 1), beside: told < 0 ? words.pastItsLimit : `${number(told, 0)} %` };
}

export function liningCell(
  find: Find,
  brake: Brake,
  side: Side,
  role: 'lead' | 'trail',
): TemplateResult {
  const key = side === 'front' ? 'Front' : 'Rear';
  const left = find(`lining${key}`);
  const limit = brake.shoes[side].lining.thicknessMin;
  const { value, beside } = liningTold(left.value, limit, find(`liningShare${key}`).value);
  return cell({ ...left, value }, { label: words.liningLeft(side), square: role, beside });
}

/** Brake factor as bar: filled share leading, hatched share trailing. */
export function factorCell(find: Find, locked: boolean): TemplateResult {
  const lead = find('shoeFactorLeading');
  const trail = find('shoeFactorTrailing');
  const both = find('brakeFactor');
  const full = find('brakeFactorFull');
  const known = Number.isFinite(both.value);
  const share = known ? (100 * lead.value) / both.value : 50;
  return html`<div class="c w bf" title=${`${meaningOf(both)}\n${both.formula}`}>
    <div><b>${words.brakeFactorAfterSprings}</b><div class="v" data-key="brakeFactor">${locked ? words.locks : number(both.value, 2)}</div></div>
    <div><div class="bar2" aria-hidden="true">${known ? html`<s .style=${`width:${share.toFixed(1)}%`}></s><u></u>` : nothing}</div>
      <div class="bl"><span class="lead" data-key="shoeFactorLeading">${words.leading(number(lead.value, 2))}</span><span class="trail" data-key="shoeFactorTrailing">${words.trailing(number(trail.value, 2))}</span></div>
      <div class="bq">${words.onFullPistonForce(html`<strong data-key="brakeFactorFull">${number(full.value, 2)}</strong>`)}</div></div>
  </div>`;
}
