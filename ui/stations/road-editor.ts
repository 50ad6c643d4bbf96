import { html, nothing, type TemplateResult } from 'lit';
import { BAR, KMH, type Stops } from '../../sim/index.ts';
import type { RoadChoice } from './wear-road.ts';

/** The road's stops, each with its figures to be changed: how often, from what speed, how hard. */

interface Field {
  readonly key: string;
  readonly name: string;
  readonly unit: string;
  /** Inside units for one of the field's. */
  readonly by: number;
  readonly least: number;
  readonly most: number;
  /** Inside units; null where these stops are not asked for by it. */
  readonly of: (stops: Stops) => number | null;
  readonly to: (value: number) => Partial<Stops>;
}

/** Bounds of what a scene file may ask of a stop, in the field's unit. */
const fields: readonly Field[] = [
  {
    ...{ key: 'perKm', name: 'Stops', unit: 'per km', by: 1, least: 0.01, most: 50 },
    of: (s) => s.perKm,
    to: (perKm) => ({ perKm }),
  },
  {
    ...{ key: 'speed', name: 'From', unit: 'km/h', by: KMH, least: 1, most: 250 },
    of: (s) => s.speed,
    to: (speed) => ({ speed }),
  },
  {
    ...{ key: 'pressure', name: 'At', unit: 'bar', by: BAR, least: 0.5, most: 150 },
    of: ({ asked }) => (asked.by === 'pressure' ? asked.pressure : null),
    to: (pressure) => ({ asked: { by: 'pressure', pressure } }),
  },
  {
    ...{ key: 'deceleration', name: 'By', unit: 'm/s²', by: 1000, least: 0.1, most: 12 },
    of: ({ asked }) => (asked.by === 'deceleration' ? asked.deceleration : null),
    to: (deceleration) => ({ asked: { by: 'deceleration', deceleration } }),
  },
];

const rounded = (value: number): string => String(Number(value.toFixed(2)));

function input(
  road: RoadChoice,
  i: number,
  stops: Stops,
  f: Field,
): TemplateResult | typeof nothing {
  const value = f.of(stops);
  if (value === null) return nothing;
  const id = `road-${i}-${f.key}`;
  const wrong = road.refused?.id === id ? road.refused : null;
  return html`<label class="lab" for=${id}>${f.name}, ${f.unit}</label>
    <input class="pick" id=${id} inputmode="decimal" .value=${wrong?.text ?? rounded(value / f.by)} aria-invalid=${wrong !== null} @change=${(
      e: Event,
    ) => {
      const text = (e.target as HTMLInputElement).value;
      const typed = Number(text.trim().replace(',', '.'));
      const fits = text.trim() !== '' && typed >= f.least && typed <= f.most;
      if (fits) road.edit(i, f.to(typed * f.by));
      else road.refuse({ id, text });
    }} />
    ${wrong ? html`<p class="wearabout" role="alert">${stops.name}, ${f.name.toLowerCase()}: found “${wrong.text}”; allowed: ${f.least} to ${f.most} ${f.unit}.</p>` : nothing}`;
}

export function roadEditor(road: RoadChoice): TemplateResult {
  return html`<details class="wearroad"><summary>Change the road’s stops</summary>
      ${road.duty.stops.map((s, i) => html`<p class="wearabout"><b>${s.name}</b></p>${fields.map((f) => input(road, i, s, f))}`)}
      <button class="btn" ?disabled=${!road.edited} @click=${() => road.choose(road.number)}>As the road has it</button>
    </details>`;
}
