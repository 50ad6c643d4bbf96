import { html, type TemplateResult } from 'lit';
import { seeSignRow as texts } from '../../../sim/words/en.ts';
import { isFigure } from '../../../sim/workshop/index.ts';
import { unlessTyped } from '../../pieces/unless-typed.ts';
import type { SeeDesk } from './desk.ts';
import { type Asked, typedText, UNSURE } from './words.ts';

/** The field beside a button. */
const fieldOf = (e: Event): HTMLInputElement | null | undefined =>
  (e.currentTarget as HTMLElement).closest('.opts')?.querySelector('input');

/**
 * The answers of one sign: words to tap, or a figure to step and to type.
 *
 * @param unsure it is asked for by itself, and gone once it is answered: then a figure is stepped in its field, and
 * counts when that is said; in the list of all that can be said each step counts
 */
export function answers(desk: SeeDesk, a: Asked, unsure = true): TemplateResult {
  const said = desk.part.said[a.key];
  if (!isFigure(a.values)) {
    return html`<div class="opts" role="group" aria-label=${a.ask}>${a.values.map(
      ([value, label]) =>
        html`<button data-say=${`${a.key}=${value}`} class=${said === value ? 'on' : ''} aria-pressed=${said === value} @click=${() => desk.say(a.key, said === value ? null : value)}>${label}</button>`,
    )}${unsure ? html`<button class="unsure ${said === UNSURE ? 'on' : ''}" data-say=${`${a.key}=${UNSURE}`} aria-pressed=${said === UNSURE} @click=${() => desk.say(a.key, UNSURE)}>${texts.notSure}</button>` : ''}</div>`;
  }
  const { least, most, step, unit, digits } = a.values;
  const sound = desk.table.sound[a.key as keyof typeof desk.table.sound];
  const begin = typeof sound === 'number' ? Math.round(sound / step) * step : least;
  const now = said === undefined || said === UNSURE ? Number.NaN : Number(said.replace(',', '.'));
  const within = (value: number): string =>
    String(Number(Math.max(least, Math.min(most, value)).toFixed(digits)));
  const by = (e: Event, d: number): void => {
    const field = unsure ? fieldOf(e) : null;
    const from = field
      ? field.value === ''
        ? Number.NaN
        : Number(field.value.replace(',', '.'))
      : now;
    const to = within(Number.isNaN(from) ? begin : from + d);
    if (field) field.value = typedText(to);
    else desk.say(a.key, to);
  };
  const done = (e: Event): void => {
    const field = fieldOf(e);
    if (field && field.value !== '') desk.say(a.key, field.value);
    else field?.focus();
  };
  return html`<div class="opts"><span class="step" role="group" aria-label=${a.ask}>
      <button aria-label=${texts.less} @click=${(e: Event) => by(e, -step)}>−</button>
      <input inputmode="decimal" aria-label=${unit ? `${a.name}, ${unit}` : a.name} .value=${unlessTyped(said === undefined || said === UNSURE ? '' : typedText(said))} placeholder=${unit || '–'} @change=${(e: Event) => desk.say(a.key, (e.target as HTMLInputElement).value)} />
      <button aria-label=${texts.more} @click=${(e: Event) => by(e, step)}>+</button></span>${unsure ? html`<button data-done @click=${done}>${texts.thatIsIt}</button>` : ''}
    ${unsure ? html`<button class="unsure ${said === UNSURE ? 'on' : ''}" data-say=${`${a.key}=${UNSURE}`} @click=${() => desk.say(a.key, UNSURE)}>${texts.notSure}</button>` : ''}</div>`;
}
