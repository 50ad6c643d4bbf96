import { html, nothing, type TemplateResult } from 'lit';
import { drumOffMine as texts } from '../../../sim/words/en.ts';
import { cautions } from '../../cautions.ts';
import { caution } from '../../pieces/icons.ts';
import type { DrumDesk } from './desk.ts';
import { type Mine, ORDER, type Question } from './part.ts';
import { fastenings, lastResort, noHole, questions, releases } from './words.ts';

/** Where one is among the questions. */
const placeOf = (question: Question): string =>
  question === 'hole' ? texts.oneMore : texts.of(ORDER.indexOf(question) + 1, ORDER.length - 1);

function ask(desk: DrumDesk, question: Question): TemplateResult {
  const { ask: text, hint, answers } = questions[question];
  /** The next question takes this one's place, and is told; who came here by keys goes on from its top. */
  const answer = (e: Event, value: string): void => {
    (e.currentTarget as Element).closest<HTMLElement>('section')?.focus();
    desk.answer({ [question]: value } as Partial<Mine>);
  };
  return html`<section class="blk quiz" aria-label=${texts.question} tabindex="-1">
      <div role="status"><h2 data-question=${question}>${text}</h2><p>${hint}</p></div>
      ${answers.map(([value, name]) => html`<button class="btn wide" data-answer=${value} @click=${(e: Event) => answer(e, value)}>${name}</button>`)}
      ${question === 'fastening' ? html`<p>${texts.aServoBrakeOrA}</p><button class="btn wide" data-which-kind @click=${() => desk.whichKind()}>${texts.seeWhichKindYoursIs}</button>` : nothing}
      <button class="btn back" data-one-back @click=${() => desk.backOne()}>${texts.oneBack}</button>
    </section>
    <section class="note">${caution}<div>${cautions.drumOff}</div></section>`;
}

/** What comes before any lock: the fastening of the drum itself. */
function undoFirst(desk: DrumDesk): TemplateResult | typeof nothing {
  const { fastening } = desk.mine;
  if (fastening === null || fastening === 'studs') return nothing;
  const text = fastening === 'screw' ? texts.isTheScrewOrClip : texts.isTheHubNutOff;
  return html`<li><b>${fastenings[fastening].name}</b><p>${text}</p><p class="care">${caution}<span>${fastenings[fastening].caution}</span></p></li>`;
}

function verdict(desk: DrumDesk): TemplateResult {
  const likely = desk.likely;
  return html`<section class="blk order" aria-label=${texts.orderOfRelease}>
      <ol>${undoFirst(desk)}${likely.map((lock) => {
        const r = releases[lock];
        return html`<li data-likely=${lock}><b>${r.name}</b><p>${desk.mine.hole === 'none' && (lock === 'lip' || lock === 'adjuster too far out') ? noHole : r.how}</p><p class="care">${caution}<span>${r.caution}</span></p></li>`;
      })}</ol>
      <p class="last">${lastResort}</p>
      ${
        desk.mine.hole === 'there'
          ? html`<button class="btn wide" data-to="order" @click=${() => desk.stepByStep('back')}>${texts.backItOffStepBy}</button>`
          : nothing
      }<div class="row two"><button class="btn" data-one-back @click=${() => desk.backOne()}>${texts.oneBack}</button><button class="btn" @click=${() => desk.open('brake')}>${texts.toTheBrake}</button></div>
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
      ? texts.likelyInTheOrderOf
      : texts.noLockFitsAllYour;
  return html`<section class="blk h"><h1>${texts.whichIsMine}</h1><p role="status">${told}</p></section>
    ${question ? ask(desk, question) : verdict(desk)}`;
}
