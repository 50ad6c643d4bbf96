import { html, nothing, type TemplateResult } from 'lit';
import { cautions } from '../../cautions.ts';
import { caution } from '../../pieces/icons.ts';
import type { DrumDesk } from './desk.ts';
import { type Mine, ORDER, type Question } from './part.ts';
import { fastenings, lastResort, noHole, questions, releases } from './words.ts';

/** Where one is among the questions. */
const placeOf = (question: Question): string =>
  question === 'hole' ? 'One more' : `${ORDER.indexOf(question) + 1} of ${ORDER.length - 1}`;

function ask(desk: DrumDesk, question: Question): TemplateResult {
  const { ask: text, hint, answers } = questions[question];
  /** The next question takes this one's place, and is told; who came here by keys goes on from its top. */
  const answer = (e: Event, value: string): void => {
    (e.currentTarget as Element).closest<HTMLElement>('section')?.focus();
    desk.answer({ [question]: value } as Partial<Mine>);
  };
  return html`<section class="blk quiz" aria-label="Question" tabindex="-1">
      <div role="status"><h2 data-question=${question}>${text}</h2><p>${hint}</p></div>
      ${answers.map(([value, name]) => html`<button class="btn wide" data-answer=${value} @click=${(e: Event) => answer(e, value)}>${name}</button>`)}
      ${question === 'fastening' ? html`<p>A servo brake, or a drum inside a disc?</p><button class="btn wide" data-which-kind @click=${() => desk.whichKind()}>See which kind yours is</button>` : nothing}
      <button class="btn back" data-one-back @click=${() => desk.backOne()}>One back</button>
    </section>
    <section class="note">${caution}<div>${cautions.drumOff}</div></section>`;
}

/** What comes before any lock: the fastening of the drum itself. */
function undoFirst(desk: DrumDesk): TemplateResult | typeof nothing {
  const { fastening } = desk.mine;
  if (fastening === null || fastening === 'studs') return nothing;
  const text =
    fastening === 'screw'
      ? 'Is the screw or clip out? It is easily overlooked, and no pull beats it.'
      : 'Is the hub nut off? Drum, hub and bearing come off together. Undo it by hand and slowly; keep magnets and grit off the wheel-speed ring.';
  return html`<li><b>${fastenings[fastening].name}</b><p>${text}</p><p class="care">${caution}<span>${fastenings[fastening].caution}</span></p></li>`;
}

function verdict(desk: DrumDesk): TemplateResult {
  const likely = desk.likely;
  return html`<section class="blk order" aria-label="Order of release">
      <ol>${undoFirst(desk)}${likely.map((lock) => {
        const r = releases[lock];
        return html`<li data-likely=${lock}><b>${r.name}</b><p>${desk.mine.hole === 'none' && (lock === 'lip' || lock === 'adjuster too far out') ? noHole : r.how}</p><p class="care">${caution}<span>${r.caution}</span></p></li>`;
      })}</ol>
      <p class="last">${lastResort}</p>
      ${
        desk.mine.hole === 'there'
          ? html`<button class="btn wide" data-to="order" @click=${() => desk.stepByStep('back')}>Back it off, step by step</button>`
          : nothing
      }<div class="row two"><button class="btn" data-one-back @click=${() => desk.backOne()}>One back</button><button class="btn" @click=${() => desk.open('brake')}>To the brake</button></div>
    </section>
    <section class="note">${caution}<div>${cautions.drumOff}</div></section>
    <p class="foot">${cautions.standing}</p>`;
}

/** Three or four plain questions for someone with a stuck drum, then the likely order of release. */
export function mineSide(desk: DrumDesk): TemplateResult {
  const { question } = desk;
  const told = question
    ? placeOf(question)
    : desk.likely.length > 0
      ? 'Likely, in the order of release. Try the drum after each; force is none of them.'
      : 'No lock fits all your answers. Check the parking brake and the wheel bearing, then go one back.';
  return html`<section class="blk h"><h1>Which is mine?</h1><p role="status">${told}</p></section>
    ${question ? ask(desk, question) : verdict(desk)}`;
}
