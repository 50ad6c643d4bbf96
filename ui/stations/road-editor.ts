import { html, nothing, type TemplateResult } from 'lit';
import { BAR, KMH, type Stops } from '../../sim/index.ts';
import { language, roadEditor as words } from '../../sim/words/en.ts';
import { unlessTyped } from '../pieces/unless-typed.ts';
import { figureOf, type StopKey, stopBounds } from '../record/road.ts';
import type { RoadChoice } from './wear-road.ts';

/** The road's stops, each with its figures to be changed: how often, from what speed, how hard. */

interface Field {
  readonly key: StopKey;
  readonly name: string;
  readonly unit: string;
  /** Inside units for one of the field's. */
  readonly by: number;
}

const fields: readonly Field[] = [
  { key: 'perKm', name: words.perKmName, unit: words.perKmUnit, by: 1 },
  { key: 'speed', name: words.speedName, unit: 'km/h', by: KMH },
  { key: 'pressure', name: words.pressureName, unit: 'bar', by: BAR },
  { key: 'deceleration', name: words.decelerationName, unit: 'm/s²', by: 1000 },
];

const rounded = (value: number): string => String(Number(value.toFixed(2)));

function input(
  road: RoadChoice,
  i: number,
  stops: Stops,
  f: Field,
): TemplateResult | typeof nothing {
  const figure = figureOf(stops, f.key);
  if (figure === null) return nothing;
  const id = `road-${i}-${f.key}`;
  const wrong = road.refused?.id === id ? road.refused : null;
  const [least, most] = stopBounds[f.key];
  return html`<label class="lab" for=${id}>${f.name}, ${f.unit}</label>
    <input class="pick" id=${id} inputmode="decimal" .value=${unlessTyped(wrong?.text ?? rounded(figure / f.by))} aria-invalid=${wrong !== null} @change=${(
      e: Event,
    ) => {
      const text = (e.target as HTMLInputElement).value;
      const value = Number(text.trim().replace(',', '.'));
      const inside = value * f.by;
      const fits = text.trim() !== '' && inside >= least && inside <= most;
      if (fits) road.edit(i, f.key, inside);
      else road.refuse(id, text);
    }} />
    ${wrong ? html`<p class="wearabout" role="alert">${words.foundAllowedTo(stops.name, language.inside(f.name), wrong.text, rounded(least / f.by), rounded(most / f.by), f.unit)}</p>` : nothing}`;
}

export function roadEditor(road: RoadChoice): TemplateResult {
  return html`<details class="wearroad" .open=${road.open} @toggle=${(e: Event) => road.show((e.target as HTMLDetailsElement).open)}><summary>${words.changeTheRoadsStops}</summary>
      ${road.duty.stops.map((s, i) => html`<p class="wearabout"><b>${s.name}</b></p>${fields.map((f) => input(road, i, s, f))}`)}
      <button class="btn" ?disabled=${!road.edited} @click=${() => road.choose(road.number)}>${words.asTheRoadHasIt}</button>
    </details>`;
}
