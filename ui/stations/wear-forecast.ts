import { html, type TemplateResult } from 'lit';
import { type Forecast, type ForecastLine, KM } from '../../sim/index.ts';
import { wearForecast as words } from '../../sim/words/en.ts';
import { restsOn } from '../../sim/workshop/index.ts';
import { down, number } from '../format.ts';

/** The forecast: what ends first, when, within which band, and what that rests on. */

const names: Readonly<Record<ForecastLine['what'], string>> = words.names;

/** Thousands apart, as everywhere on the page. */
const apart = (text: string): string =>
  text.replace(/\d{4,}/g, (digits) => number(Number(digits), 0));

/** Distances are told down to the hundred km: never towards good. */
const km = (distance: number): string => number(down(distance / KM / 100, 0) * 100, 0);

export function forecastCell({ first }: Forecast): TemplateResult {
  if (!first) {
    return html`<div class="c w fc" data-key="forecast"><b>${words.forecast}</b><p>${words.noneYetTooLittleHas}</p></div>`;
  }
  if (first.left <= 0) {
    return html`<div class="c w fc" data-key="forecast"><b>${names[first.what]}</b><p><strong>${words.reached}</strong> ${apart(restsOn(first))}</p></div>`;
  }
  return html`<div class="c w fc" data-key="forecast"><b>${names[first.what]}</b>
    <div class="v">${words.about(km(first.left), html`<small>km</small>`, html`<em>${words.bandToKm(km(first.low), km(first.high))}</em>`)}</div>
    <p>${apart(restsOn(first))}</p></div>`;
}
