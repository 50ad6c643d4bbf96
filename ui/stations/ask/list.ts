import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { askList as texts } from '../../../sim/words/en.ts';
import { alsoMeant } from '../../ask/also.ts';
import { kindNames } from '../../ask/entries.ts';
import { type Answer, ask } from '../../ask/rank.ts';
import type { Entry, Kind } from '../../ask/types.ts';
import { cautions } from '../../cautions.ts';
import { caution } from '../../pieces/icons.ts';
import { NARROW } from '../../pieces/page-sizes.ts';
import { Kept } from '../../record/kept.ts';
import type { Session } from '../../session.ts';
import { look } from '../faults/look.ts';
import { doesNotCarry } from '../kind/carry.ts';
import { openTopic } from '../see/part.ts';
import { follow } from './lead.ts';
import { askFor } from './part.ts';

/** Signs of the kinds of entry; their names stand beside them. */
const shapes: Readonly<Record<Kind, string>> = {
  question: texts.m33h21v17h12l722v17h3zm99q0,
  fault: 'M12 3L22 21H2ZM9 12l6 6m0-6l-6 6',
  station: 'M3 3H21V21H3ZM12 7V17M10 8l2-1',
  check: 'M2 12q10-13 20 0q-10 13-20 0M12 9a3 3 0 1 0 .1 0',
  reading: 'M3 18a9 9 0 0 1 18 0M12 18l5-8',
  part: 'M4 20L12 6H22M4 17a3 3 0 1 0 .1 0',
  word: 'M3 16L8 4L13 16M5 12H11M16 16q6 1 5-4q-5-3-6 2q2 4 6 0M3 21H21',
  lesson: 'M2 5Q8 3 12 6Q16 3 22 5V19Q16 17 12 20Q8 17 2 19ZM12 6V20',
  caution: 'M12 3L22 21H2ZM12 9V15M12 17V18.5',
  'take away': 'M3 14V21H21V14M12 2V15M7 10L12 15L17 10',
  'not here': 'M12 3a9 9 0 1 0 .1 0M6 18L18 6',
};
const sign = (kind: Kind): TemplateResult =>
  html`<svg viewBox="0 0 24 24" class="sg" aria-hidden="true"><path d=${shapes[kind]} fill="none" stroke="currentColor" stroke-width="2.2" stroke-linejoin="round" /></svg>`;

/** What was asked and what is found, best first. */
export class AskList extends LitElement {
  static override properties = { session: { attribute: false }, rev: { type: Number } };
  declare session: Session;
  declare rev: number;
  readonly #answer = new Kept<Answer>();

  static override styles = [
    look,
    css`
      :host { background: var(--sheet); display: block; }
      .read { background: var(--panel); padding: 12px 22px; border-bottom: 2px solid var(--ink); font-size: 17px; display: flex; flex-wrap: wrap; gap: 8px 14px; align-items: center; }
      .read p { margin: 0; flex: 1 1 auto; }
      .also { border: 2px solid var(--ink); background: var(--sheet); min-height: 44px; padding: 0 14px; font-weight: 600; font-size: 16px; }
      .kindnote, .danger { display: flex; gap: 10px; align-items: flex-start; margin: 0; padding: 10px 22px; border-bottom: 1px solid var(--rule); font-size: 16px; font-weight: 600; }
      .kindnote svg, .danger svg { width: 28px; height: 26px; flex: none; }
      ul { list-style: none; margin: 0; padding: 0; }
      li { border-bottom: 1px solid var(--rule); }
      .hit { display: grid; grid-template-columns: 44px minmax(0, 1fr) 22px; gap: 0 10px; width: 100%; text-align: left; padding: 9px 18px 11px 22px; align-items: center; font: inherit; color: inherit; background: none; border: 0; }
      button.hit { cursor: pointer; }
      button.hit:hover { background: var(--panel); }
      li:first-child .hit { box-shadow: inset 8px 0 0 var(--ink); }
      .sg { width: 34px; height: 34px; align-self: start; margin-top: 4px; }
      .hit i { font-style: normal; font-size: 15px; font-weight: 560; color: var(--ink2); display: block; }
      .hit b { display: block; font-size: 19px; line-height: 1.2; font-weight: 720; }
      .hit span { display: block; font-size: 16.5px; line-height: 1.3; }
      .go { width: 14px; height: 24px; }
      .none { padding: 14px 22px 24px; }
      .none button { width: 100%; min-height: 58px; border: 2px solid var(--ink); background: var(--sheet); font: inherit; font-weight: 680; font-size: 18px; color: inherit; cursor: pointer; }
      button:focus-visible { outline: 4px solid var(--trail); outline-offset: -4px; }
      @media ${NARROW} {
        .read, .kindnote, .danger { padding-left: 14px; padding-right: 14px; }
        .hit { padding: 9px 12px 11px 14px; grid-template-columns: 34px minmax(0, 1fr) 16px; }
        .sg { width: 30px; height: 30px; }
        .none { padding: 14px; }
      }
    `,
  ];

  #go(e: Entry): void {
    if (follow(this.session, e.leads))
      this.dispatchEvent(
        new CustomEvent(e.leads.to, {
          detail: e.leads.to === 'away' ? e.leads.way : undefined,
          bubbles: true,
          composed: true,
        }),
      );
  }

  /** Opens the first that leads anywhere; whether there was one. */
  openFirst(): boolean {
    const { text } = this.session.moment.parts.ask;
    if (text.trim() === '') return false;
    const { found } = this.#answer.of([text], () => ask(text));
    const first = found.find((f) => f.entry.leads.to !== 'nothing');
    if (first) this.#go(first.entry);
    return first !== undefined;
  }

  #hit(e: Entry) {
    const inside = html`${sign(e.kind)}<div><i>${kindNames[e.kind]}</i><b>${e.title}</b><span>${e.text}</span></div>`;
    return e.leads.to === 'nothing'
      ? html`<li data-entry=${e.key}><div class="hit">${inside}</div></li>`
      : html`<li data-entry=${e.key}><button class="hit" @click=${() => this.#go(e)}>${inside}<svg class="go" viewBox="0 0 12 20" aria-hidden="true"><path d="M2 2L10 10L2 18" fill="none" stroke="currentColor" stroke-width="3" /></svg></button></li>`;
  }

  override render() {
    const { session } = this;
    const { text } = session.moment.parts.ask;
    const { read, found } = this.#answer.of([text], () => ask(text));
    const note = doesNotCarry(session.moment.parts.kind);
    const also = alsoMeant(text);
    // What a "not" turns stands there turned alone.
    const turned = new Set(read.filter((t) => t.term.startsWith('not_')).map((t) => t.typed));
    const words = [...new Set(read.map((t) => t.typed))].filter((w) => !turned.has(`not ${w}`));
    const danger = found.slice(0, 3).some((f) => f.entry.danger);
    return html`
      <div class="read"><p role="status">${
        text.trim() === ''
          ? texts.sayItAsYouWould
          : words.length === 0 || found[0]?.score === 0
            ? texts.noneOfTheseWordsIs
            : html`${texts.readAs(words.map((w, i) => html`${i > 0 ? ', ' : ''}<b>${w}</b>`))}`
      }</p>${also.map((a) => html`<button class="also" @click=${() => session.do(askFor, a.text)}>${texts.or(a.label)}</button>`)}</div>
      ${danger ? html`<p class="danger">${caution}<span>${cautions.fault}</span></p>` : nothing}
      ${note ? html`<p class="kindnote">${caution}<span>${note}</span></p>` : nothing}
      <ul aria-label=${texts.whatHelpsBestFirst}>${found.map((f) => this.#hit(f.entry))}</ul>
      <div class="none"><button @click=${() => session.do(openTopic, 'all')}>${texts.noneOfTheseSayWhat}</button></div>`;
  }
}
customElements.define('takeup-ask', AskList);
