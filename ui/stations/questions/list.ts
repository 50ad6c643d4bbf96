import { css, html, LitElement, nothing } from 'lit';
import { questionsList as texts } from '../../../sim/words/en.ts';
import { caution } from '../../pieces/icons.ts';
import { COMPACT, NARROW } from '../../pieces/page-sizes.ts';
import type { Question } from '../../questions/types.ts';
import { show } from '../../record/guest.ts';
import type { Session } from '../../session.ts';
import { look } from '../faults/look.ts';
import { doesNotCarry } from '../kind/carry.ts';
import { deskOf } from '../station.ts';
import { QuestionsDesk } from './desk.ts';

/** The questions that are found, by groups, each with its answer and the way to see it. */
export class QuestionList extends LitElement {
  static override properties = { session: { attribute: false }, rev: { type: Number } };
  declare session: Session;
  declare rev: number;

  static override styles = [
    look,
    css`
      :host { background: var(--sheet); }
      .in { padding: 8px 34px 30px; max-width: 1120px; }
      h2 { font-size: 23px; font-weight: 780; margin: 22px 0 2px; }
      ul { list-style: none; margin: 0; padding: 0; }
      li { display: grid; grid-template-columns: 1fr auto; gap: 3px 24px; border-top: 1px solid var(--rule); padding: 10px 0 11px; align-items: center; }
      b { font-size: 18px; font-weight: 700; line-height: 1.25; }
      p { font-size: 16.5px; line-height: 1.36; grid-column: 1; }
      .steps { color: var(--ink2); }
      .btn { grid-row: 1 / span 3; grid-column: 2; min-width: 118px; text-align: center; }
      .none { font-weight: 640; }
      .kindnote { display: flex; gap: 10px; font-weight: 600; padding-top: 8px; }
      .kindnote svg { width: 28px; height: 26px; flex: none; }
      .which .btn { margin: 8px 0 0; }
      @media ${COMPACT} {
        .in { padding: 4px 22px 24px; }
        h2 { font-size: 19px; margin-top: 16px; } b { font-size: 15.5px; } p { font-size: 14.5px; } li { padding: 7px 0 8px; }
      }
      @media ${NARROW} {
        .in { padding: 4px 14px 20px; }
        li { grid-template-columns: 1fr; } .btn { grid-row: auto; grid-column: 1; margin-top: 5px; }
        h2 { font-size: 21px; } b { font-size: 17px; } p { font-size: 16px; }
      }
    `,
  ];

  #one(desk: QuestionsDesk, q: Question) {
    return html`<li data-question=${q.id}><b>${q.ask}</b>
      ${q.answer ? html`<p>${q.answer}</p>` : nothing}
      <p class=${q.station ? 'steps' : 'none'}>${q.steps}</p>
      ${q.station ? html`<button class="btn" aria-label=${texts.showMe(q.ask)} @click=${() => desk.show(q)}>${texts.showMe2}</button>` : nothing}</li>`;
  }

  override render() {
    const desk = deskOf(QuestionsDesk, this.session);
    const { found } = desk;
    const note = doesNotCarry(this.session.moment.parts.kind);
    const groups = [...new Set(found.map((q) => q.group))];
    return html`<div class="in">${note ? html`<p class="kindnote">${caution}<span>${note}</span></p>` : nothing}<p class="which"><button class="btn" data-which-kind @click=${() => this.session.do(show, 'kind')}>${texts.whichKindOfDrumBrake}</button></p>${desk.near ? html`<p role="status">${texts.noQuestionWithAllOf}</p>` : nothing}${groups.map(
      (g) =>
        html`<h2>${g}</h2><ul>${found.filter((q) => q.group === g).map((q) => this.#one(desk, q))}</ul>`,
    )}</div>`;
  }
}
customElements.define('takeup-questions', QuestionList);
