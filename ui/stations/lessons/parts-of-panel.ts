import { html, nothing, type TemplateResult } from 'lit';
import { ref } from 'lit/directives/ref.js';
import { labelWords, lessonsPartsOfPanel as texts } from '../../../sim/words/en.ts';
import { number } from '../../format.ts';
import type { Choice } from '../../lessons/format.ts';
import { markOf } from '../park/marks.ts';
import type { LessonDesk, Told } from './desk.ts';

/** Parts of a lesson's panel: where one is, the question with its choices, what is told of the outcome. */

const LETTERS = ['A', 'B', 'C', 'D'];

const stages = [
  ['ask', labelWords.predict],
  ['showing', labelWords.observe],
  ['told', labelWords.explain],
] as const;

/** Predict, observe, explain: which of them it is. */
export const whereOf = (desk: LessonDesk): TemplateResult =>
  html`<ol class="where" aria-label=${texts.whereTheStepIs}>${stages.map(
    ([phase, name]) =>
      html`<li class=${desk.phase === phase ? 'on' : ''} aria-current=${desk.phase === phase ? 'step' : nothing}>${name}</li>`,
  )}</ol>`;

/** What a choice says: once it is told, which of its words held. */
function wordsOf(desk: LessonDesk, choice: Choice): TemplateResult {
  if (desk.covered || desk.phase === 'showing') return html`<span>${desk.says(choice)}</span>`;
  return html`<span>${choice.says.map(({ holds, words }) => {
    const text = desk.text(words);
    return holds
      ? html`<span class="held">${markOf('tick')}<span>${text}</span></span>`
      : html`<s><span class="hidden">${texts.doesNotHold} </span>${text}</s>`;
  })}</span>`;
}

/** The choices with the class's hands beside them; they can be chosen while the question is open. */
export function choicesOf(desk: LessonDesk): TemplateResult {
  const { choice: mine, votes } = desk.answer;
  const open = desk.phase === 'ask';
  const one = (choice: Choice, i: number): TemplateResult => {
    const hands = votes[i] ?? 0;
    const letter = LETTERS[i] ?? '';
    const words = wordsOf(desk, choice);
    return html`<li class=${mine === i ? 'mine' : ''} data-choice=${letter}>
      ${
        open
          ? html`<button class="pickone" aria-pressed=${mine === i} @click=${() => desk.choose(i)}><b>${letter}</b>${words}</button>`
          : html`<div class="pickone"><b>${letter}</b>${words}${mine === i ? html`<span class="hidden">${texts.chosen}</span>` : nothing}</div>`
      }
      ${
        open
          ? html`<button class="hands" aria-label=${texts.countAHandForSo(letter, hands)} @click=${() => desk.count(i, 1)}>${hands > 0 ? hands : '+'}</button>`
          : hands > 0
            ? html`<div class="hands"><span class="hidden">${texts.hands} </span>${hands}</div>`
            : nothing
      }</li>`;
  };
  return html`<ol class="choices" aria-label=${texts.answers}>${(desk.step?.choices ?? []).map(one)}</ol>`;
}

const told = (value: Told['value'] | null): string =>
  value === null ? '' : number(value.value, value.digits);

/** The values that tell the outcome, before and now: covered while the question is open. */
export function valuesOf(desk: LessonDesk, most: number): TemplateResult | typeof nothing {
  const all = desk.told.slice(0, most);
  if (all.length === 0) return nothing;
  if (desk.covered || (desk.phase === 'showing' && !desk.talk)) {
    return html`<div class="covered" data-covered><b>${[...new Set(all.map((t) => t.value.name))].join(', ')}</b><span class="hidden">${texts.coveredUntilItIsShown}</span><i aria-hidden="true"></i></div>`;
  }
  // A talk tells what is, not what was.
  const before = !desk.talk && all.some(({ before: was, value }) => told(was) !== told(value));
  return html`<table class="values"><thead><tr><th scope="col"><span class="hidden">${texts.value}</span></th>${before ? html`<th scope="col">${texts.before}</th>` : nothing}<th scope="col">${texts.now}</th></tr></thead>
    <tbody>${all.map(
      ({ before: was, value }) =>
        html`<tr data-value=${value.key}><th scope="row">${value.name}${value.unit ? html`<small>, ${value.unit}</small>` : nothing}</th>${before ? html`<td>${told(was)}</td>` : nothing}<td><strong>${told(value)}</strong></td></tr>`,
    )}</tbody></table>`;
}

/** Once a step is told, what explains it, which stands under the choices, is brought into sight; a wall has room for all. */
const inSight = (end: Element | undefined): void => {
  const root = end?.getRootNode();
  if (root instanceof ShadowRoot && !root.host.hasAttribute('wall'))
    end?.parentElement?.scrollIntoView({ block: 'nearest' });
};

/** What it shows, why, and what follows. It stands there empty before: what comes with its words is not always heard. */
export function explained(desk: LessonDesk): TemplateResult {
  const { phase } = desk;
  const step = phase === 'told' && !desk.talk ? desk.step : null;
  return html`<div class=${step ? 'explained' : 'hidden'} role="status">
    ${step?.shows ? html`<p class="shows">${desk.text(step.shows)}</p>` : nothing}
    ${step?.why ? html`<p>${desk.text(step.why)}</p>` : nothing}
    ${step?.next ? html`<p class="next">${desk.text(step.next)}</p>` : nothing}${step ? html`<i ${ref(inSight)}></i>` : nothing}</div>`;
}
