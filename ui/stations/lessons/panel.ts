import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { labelWords, language, lessonsPanel as words } from '../../../sim/words/en.ts';
import type { Session } from '../../session.ts';
import type { NumberedName } from '../../stage/layers/names.ts';
import { deskOf } from '../station.ts';
import { chartOf } from './chart.ts';
import { LessonDesk } from './desk.ts';
import { panelStyles } from './panel-styles.ts';
import { choicesOf, explained, valuesOf, whereOf } from './parts-of-panel.ts';

/** Letters of an outcome beside which the wall has room for no value. */
const ROOM = 210;
/** Letters of a question that is set smaller on the wall, so that its answers stay in sight. */
const LONG = 80;

/** The lesson that is open, beside the stage: on the desk, on the phone, and large on the wall. */
export class LessonPanel extends LitElement {
  static override properties = {
    session: { attribute: false },
    wall: { type: Boolean, reflect: true },
    names: { attribute: false },
    turnKeys: { attribute: false },
    rev: { type: Number },
  };
  declare session: Session;
  declare wall: boolean;
  /** Parts that stand as numbers on the drawing. */
  declare names: readonly NumberedName[];
  /** Opens and closes the card of the wall's keys. */
  declare turnKeys: (() => void) | undefined;
  declare rev: number;

  static override styles = panelStyles;

  constructor() {
    super();
    this.wall = false;
    this.names = [];
  }

  #head(desk: LessonDesk): TemplateResult {
    const { at, lesson } = desk;
    const of = lesson?.steps.length ?? 0;
    const kind = desk.talk ? labelWords.moment : labelWords.step;
    const place = at < of ? words.of(kind, at + 1, of) : words.theEnd;
    const number = lesson?.number && !desk.talk ? words.lesson(lesson.number) : '';
    return this.wall
      ? html`<div class="place"><span>${number}${number ? language.inside(place) : place}</span><button aria-label=${words.keys} @click=${this.turnKeys}><kbd>?</kbd></button><button aria-label=${words.leaveTheWall} @click=${() => this.session.showOnWall(false)}><kbd>${words.esc}</kbd></button></div>`
      : html`<header><h1>${lesson?.title ?? ''}</h1><div class="place">${number}${number ? language.inside(place) : place}</div></header>`;
  }

  /** Most values that there is room for, and no more are named while they are covered: on the wall beside what they mean, two, and none beside much of it. */
  #most({ step, lesson, talk }: LessonDesk): number {
    if (!this.wall || talk) return 6;
    const letters = `${step?.shows ?? ''}${step?.why ?? ''}`.replace(/\{[^}]*\}/g, '0.00').length;
    const told = letters + (lesson?.caution ? 70 : 0);
    return told > ROOM ? 0 : told > ROOM / 2 ? 1 : 2;
  }

  /** On the wall the curve stands while it is driven; what it came to, the sentence says. */
  #chart(desk: LessonDesk): TemplateResult | typeof nothing {
    return this.wall && desk.phase !== 'showing' && !desk.talk ? nothing : chartOf(desk);
  }

  /** On the wall its first sentence; all of it stands on the desk. */
  #caution({ lesson, step }: LessonDesk): string {
    const all = step?.caution ?? lesson?.caution ?? '';
    return this.wall ? (/^.*?\.(?= |$)/.exec(all)?.[0] ?? all) : all;
  }

  #question(desk: LessonDesk): TemplateResult {
    const { phase, step } = desk;
    const ask = desk.text(step?.ask);
    return html`${whereOf(desk)}
      <p class="ask ${phase === 'told' ? 'small' : ''} ${ask.length > LONG ? 'long' : ''}">${ask}</p>
      ${choicesOf(desk)}${valuesOf(desk, this.#most(desk))}${this.#chart(desk)}${explained(desk)}`;
  }

  #said(desk: LessonDesk): TemplateResult {
    const { step } = desk;
    return html`<p class="ask said" aria-live="polite">${desk.text(step?.say)}</p>
      ${valuesOf(desk, this.#most(desk))}${this.#chart(desk)}
      ${step?.tryIt && desk.phase !== 'showing' ? html`<p class="try"><b>${words.tryWord}</b> ${desk.text(step.tryIt)}</p>` : nothing}`;
  }

  #end(desk: LessonDesk): TemplateResult {
    const { lesson } = desk;
    if (!lesson) return html``;
    const answers = lesson.steps.map((s, i) => ({ s, a: desk.answerAt(i) }));
    return html`<p class="ask">${desk.talk ? words.thatWasIt : words.thatWasTheLesson}</p>
      ${lesson.whatIf ? html`<p class="shows">${lesson.whatIf}</p>` : nothing}
      ${
        desk.talk
          ? nothing
          : html`<ol class="record" aria-label=${words.whatWasGuessed}>${answers.map(({ s, a }) => {
              const mine = a.choice === null ? null : s.choices?.[a.choice];
              const hands = a.votes.some((n) => n > 0) ? words.hands(a.votes.join(', ')) : '';
              return html`<li><b>${s.title ?? ''}</b> ${mine ? (mine.says.every((p) => p.holds) ? words.guessedAsItCame : words.guessedOtherwise) : words.noGuess}${hands}</li>`;
            })}</ol>`
      }
      ${lesson.exit && !desk.talk ? html`<p class="next"><b>${words.onPaper}</b> ${lesson.exit}</p>` : nothing}`;
  }

  override render() {
    const desk = deskOf(LessonDesk, this.session);
    const { lesson, phase } = desk;
    if (!lesson) return nothing;
    const body =
      phase === 'end' ? this.#end(desk) : desk.talk ? this.#said(desk) : this.#question(desk);
    const caution = this.#caution(desk);
    const full = caution !== '' || desk.text(desk.step?.ask).length > LONG;
    return html`${this.#head(desk)}<div class="body ${phase === 'told' ? phase : ''} ${full ? 'full' : ''}">${body}${this.names.length > 0 ? html`<ol class="named" aria-label=${words.names}>${this.names.map((n) => html`<li><b>${n.number}</b> ${n.name}</li>`)}</ol>` : nothing}</div>
      ${caution ? html`<p class="caution"><b aria-hidden="true">!</b><span>${caution}</span></p>` : nothing}
      ${
        this.wall
          ? html`<div class="acts"><button class="main" ?data-wait=${phase === 'ask' && !desk.mayTell} @click=${() => desk.next()}><span>${desk.nextSays}</span><kbd>${phase === 'ask' && !desk.mayTell ? words.guessedBy : words.space}</kbd></button></div>`
          : nothing
      }`;
  }
}
customElements.define('takeup-lesson', LessonPanel);
