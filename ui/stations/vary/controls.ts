import { html, type TemplateResult } from 'lit';
import type { Turning } from '../../../sim/index.ts';
import { labelWords, varyControls as words } from '../../../sim/words/en.ts';
import { takeNumber } from '../../pieces/number-field.ts';
import { unlessTyped } from '../../pieces/unless-typed.ts';
import type { PageView } from '../station.ts';
import { short, type VaryDesk } from './desk.ts';
import { varyPress, varyRange, varySteps } from './part.ts';

/** The range, and how the brake is pressed. */

export const turns: readonly [Turning, string][] = [
  [1, labelWords.forward],
  [0, labelWords.stopped],
  [-1, labelWords.backward],
];

/** A field of a plain number: what cannot be is told, and the field keeps what was there. */
export function field(
  desk: VaryDesk,
  name: string,
  unit: string,
  value: number,
  allowed: readonly [number, number],
  put: (x: number) => void,
): TemplateResult {
  const say = (text: string): void => desk.session.say(text);
  const change = takeNumber({ name, unit, allowed, told: short, put, say }, value);
  return html`<label class="vary-field"><span>${name}${unit ? html` <small>${unit}</small>` : ''}</span> <input inputmode="decimal" .value=${unlessTyped(short(value))} @change=${change}></label>`;
}

export function varyControls({ session }: PageView, desk: VaryDesk): TemplateResult {
  const { of, part, range } = desk;
  const ends = (from: number, to: number): void => {
    if (from < to) session.do(varyRange, from, to);
    else session.say(words.rangeFoundToAllowedTwo(short(from), short(to)));
  };
  return html`<section class="blk ctl vary-ctl" aria-label=${words.howItIsAsked}>
    <div class="row vary-four">${field(desk, labelWords.from, of.unit, range[0], of.range, (x) => ends(x, desk.range[1]))}${field(desk, words.to, of.unit, range[1], of.range, (x) => ends(desk.range[0], x))}${field(desk, labelWords.pressure, 'bar', part.bar, [0, 200], (x) => session.do(varyPress, x, desk.part.cable))}${field(desk, labelWords.cable, 'N', part.cable, [0, 5000], (x) => session.do(varyPress, desk.part.bar, x))}</div>
    <div class="seg" role="group" aria-label=${words.drum}>${turns.map(([t, name]) => html`<button aria-pressed=${session.turning === t} class=${session.turning === t ? 'on' : ''} @click=${() => session.turn(t)}>${name}</button>`)}</div>
    <label class="vary-check"><input type="checkbox" .checked=${part.steps} @change=${(e: Event) => session.do(varySteps, (e.target as HTMLInputElement).checked)}> ${words.theAdjusterWorksInThat}</label>
  </section>`;
}
