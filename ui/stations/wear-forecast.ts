import { html, type TemplateResult } from 'lit';
import { type Forecast, type ForecastLine, KM } from '../../sim/index.ts';
import { restsOn } from '../../sim/workshop/index.ts';
import { down, number } from '../format.ts';

/** The forecast: what ends first, when, within which band, and what that rests on. */

const names: Readonly<Record<ForecastLine['what'], string>> = {
  'front lining': 'Front lining to its limit',
  'rear lining': 'Rear lining to its limit',
  drum: 'Drum to its largest diameter',
  teeth: 'Adjuster to its end',
};

/** Thousands apart, as everywhere on the page. */
const apart = (text: string): string =>
  text.replace(/\d{4,}/g, (digits) => number(Number(digits), 0));

/** Distances are told down to the hundred km: never towards good. */
const km = (distance: number): string => number(down(distance / KM / 100, 0) * 100, 0);

export function forecastCell({ first }: Forecast): TemplateResult {
  if (!first) {
    return html`<div class="c w fc" data-key="forecast"><b>Forecast</b><p>None yet: too little has worn to tell a rate.</p></div>`;
  }
  if (first.left <= 0) {
    return html`<div class="c w fc" data-key="forecast"><b>${names[first.what]}</b><p><strong>Reached.</strong> ${apart(restsOn(first))}</p></div>`;
  }
  return html`<div class="c w fc" data-key="forecast"><b>${names[first.what]}</b>
    <div class="v">about ${km(first.left)}<small>km</small><em>band ${km(first.low)} to ${km(first.high)} km</em></div>
    <p>${apart(restsOn(first))}</p></div>`;
}
