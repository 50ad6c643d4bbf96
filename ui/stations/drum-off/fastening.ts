import { html, nothing, type TemplateResult } from 'lit';
import { labelWords, drumOffFastening as texts } from '../../../sim/words/en.ts';
import { cautions } from '../../cautions.ts';
import { caution } from '../../pieces/icons.ts';
import type { DrumDesk } from './desk.ts';
import { nutDrawing } from './nut.ts';
import type { Fastening } from './part.ts';
import { fastenings } from './words.ts';

const kinds: readonly [Fastening, string][] = [
  ['studs', labelWords.studs],
  ['screw', texts.screwOrClip],
  ['nut', texts.hubNut],
];

/** How the drum itself is fastened, as steps with their cautions. */
export function fasteningSide(desk: DrumDesk): TemplateResult {
  const { fastening } = desk;
  const f = fastenings[fastening];
  return html`<section class="blk h"><h1>${texts.howItIsFastened}</h1><p>${texts.theLipAndTheShoes(f.name)}</p></section>
    <section class="blk fast" aria-label=${texts.howItIsFastened}>
      <div class="seg" role="group" aria-label=${texts.kind}>${kinds.map(
        ([kind, name]) =>
          html`<button class=${fastening === kind ? 'on' : ''} aria-pressed=${fastening === kind} @click=${() => desk.fasten(kind)}>${name}</button>`,
      )}</div>
      <ol>${f.steps.map((s) => html`<li>${s}</li>`)}</ol>
      ${f.why ? html`${nutDrawing}<dl>${f.why.map(({ ask, answer }) => html`<dt>${ask}</dt><dd>${answer}</dd>`)}</dl>` : nothing}
      <button class="btn" data-done @click=${() => desk.open('brake')}>${texts.backToTheBrake}</button>
    </section>
    <section class="note">${caution}<div>${f.caution}</div></section>
    <p class="foot">${cautions.standing}</p>`;
}
