import { html, type TemplateResult } from 'lit';
import type { Turning } from '../../../sim/index.ts';
import type { PageView } from '../station.ts';
import { short, type VaryDesk } from './desk.ts';
import { varyPress, varyRange, varySteps } from './part.ts';

/** The range, and how the brake is pressed. */

export const turns: readonly [Turning, string][] = [
  [1, 'Forward'],
  [0, 'Stopped'],
  [-1, 'Backward'],
];

const typed = (text: string): number => Number(text.trim().replace(',', '.').replace('−', '-'));

/** A field of a plain number: what cannot be is told, and the field keeps what was there. */
export function field(
  desk: VaryDesk,
  name: string,
  unit: string,
  value: number,
  allowed: readonly [number, number],
  put: (x: number) => void,
): TemplateResult {
  const change = (e: Event): void => {
    const input = e.target as HTMLInputElement;
    const x = input.value.trim() === '' ? Number.NaN : typed(input.value);
    if (x >= allowed[0] && x <= allowed[1]) {
      put(x);
      return;
    }
    desk.session.say(
      `${name}: found “${input.value.slice(0, 30)}”; allowed: a number from ${short(allowed[0])} to ${short(allowed[1])}${unit ? ` ${unit}` : ''}.`,
    );
    input.value = short(value);
  };
  return html`<label class="vary-field"><span>${name}${unit ? html` <small>${unit}</small>` : ''}</span> <input inputmode="decimal" .value=${short(value)} @change=${change}></label>`;
}

export function varyControls({ session }: PageView, desk: VaryDesk): TemplateResult {
  const { of, part, range } = desk;
  const ends = (from: number, to: number): void => {
    if (from < to) session.do(varyRange, from, to);
    else session.say(`Range: found ${short(from)} to ${short(to)}; allowed: two ends apart.`);
  };
  return html`<section class="blk ctl vary-ctl" aria-label="How it is asked">
    <div class="row vary-four">${field(desk, 'From', of.unit, range[0], of.range, (x) => ends(x, desk.range[1]))}${field(desk, 'To', of.unit, range[1], of.range, (x) => ends(desk.range[0], x))}${field(desk, 'Pressure', 'bar', part.bar, [0, 200], (x) => session.do(varyPress, x, desk.part.cable))}${field(desk, 'Cable', 'N', part.cable, [0, 5000], (x) => session.do(varyPress, desk.part.bar, x))}</div>
    <div class="seg" role="group" aria-label="Drum">${turns.map(([t, name]) => html`<button aria-pressed=${session.turning === t} class=${session.turning === t ? 'on' : ''} @click=${() => session.turn(t)}>${name}</button>`)}</div>
    <label class="vary-check"><input type="checkbox" .checked=${part.steps} @change=${(e: Event) => session.do(varySteps, (e.target as HTMLInputElement).checked)}> The adjuster works in that press; else it keeps its tooth</label>
  </section>`;
}
