import { html, type TemplateResult } from 'lit';
import { isFigure } from '../../../sim/workshop/index.ts';
import type { SeeDesk } from './desk.ts';
import { type Asked, UNSURE } from './words.ts';

/** The answers of one sign: words to tap, or a figure to step and to type. */
export function answers(desk: SeeDesk, a: Asked, unsure = true): TemplateResult {
  const said = desk.part.said[a.key];
  if (!isFigure(a.values)) {
    return html`<div class="opts" role="group" aria-label=${a.ask}>${a.values.map(
      ([value, label]) =>
        html`<button data-say=${`${a.key}=${value}`} class=${said === value ? 'on' : ''} aria-pressed=${said === value} @click=${() => desk.say(a.key, said === value ? null : value)}>${label}</button>`,
    )}${unsure ? html`<button class="unsure ${said === UNSURE ? 'on' : ''}" data-say=${`${a.key}=${UNSURE}`} aria-pressed=${said === UNSURE} @click=${() => desk.say(a.key, UNSURE)}>not sure</button>` : ''}</div>`;
  }
  const { least, most, step, unit, digits } = a.values;
  const sound = desk.table.sound[a.key as keyof typeof desk.table.sound];
  const begin = typeof sound === 'number' ? Math.round(sound / step) * step : least;
  const now = said === undefined || said === UNSURE ? Number.NaN : Number(said.replace(',', '.'));
  const put = (value: number) =>
    desk.say(a.key, String(Number(Math.max(least, Math.min(most, value)).toFixed(digits))));
  const by = (d: number) => put(Number.isNaN(now) ? begin : now + d);
  return html`<div class="opts"><span class="step" role="group" aria-label=${a.ask}>
      <button aria-label="less" @click=${() => by(-step)}>−</button>
      <input inputmode="decimal" aria-label=${unit ? `${a.name}, ${unit}` : a.name} .value=${said === undefined || said === UNSURE ? '' : said} placeholder=${unit || '–'} @change=${(e: Event) => desk.say(a.key, (e.target as HTMLInputElement).value)} />
      <button aria-label="more" @click=${() => by(step)}>+</button></span>
    ${unsure ? html`<button class="unsure ${said === UNSURE ? 'on' : ''}" data-say=${`${a.key}=${UNSURE}`} @click=${() => desk.say(a.key, UNSURE)}>not sure</button>` : ''}</div>`;
}
