import { html, nothing, type TemplateResult } from 'lit';
import { cautions } from '../../cautions.ts';
import { caution } from '../../pieces/icons.ts';
import type { DrumDesk } from './desk.ts';
import { nutDrawing } from './nut.ts';
import type { Fastening } from './part.ts';
import { fastenings } from './words.ts';

const kinds: readonly [Fastening, string][] = [
  ['studs', 'Studs'],
  ['screw', 'Screw or clip'],
  ['nut', 'Hub nut'],
];

/** How the drum itself is fastened, as steps with their cautions. */
export function fasteningSide(desk: DrumDesk): TemplateResult {
  const { fastening } = desk;
  const f = fastenings[fastening];
  return html`<section class="blk h"><h1>How it is fastened</h1><p>${f.name}. The lip and the shoes are the same behind each.</p></section>
    <section class="blk fast" aria-label="How it is fastened">
      <div class="seg" role="group" aria-label="Kind">${kinds.map(
        ([kind, name]) =>
          html`<button class=${fastening === kind ? 'on' : ''} aria-pressed=${fastening === kind} @click=${() => desk.fasten(kind)}>${name}</button>`,
      )}</div>
      <ol>${f.steps.map((s) => html`<li>${s}</li>`)}</ol>
      ${f.why ? html`${nutDrawing}<dl>${f.why.map(({ ask, answer }) => html`<dt>${ask}</dt><dd>${answer}</dd>`)}</dl>` : nothing}
      <button class="btn" data-done @click=${() => desk.open('brake')}>Back to the brake</button>
    </section>
    <section class="note">${caution}<div>${f.caution}</div></section>
    <p class="foot">${cautions.standing}</p>`;
}
