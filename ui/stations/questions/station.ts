import { html, nothing, type TemplateResult } from 'lit';
import { questions } from '../../questions/index.ts';
import { deskOf, type PageView, type Station } from '../station.ts';
import { QuestionsDesk } from './desk.ts';
import './list.ts';
import { questionsStation as texts } from '../../../sim/words/en.ts';
import { questionsStyles } from './styles.ts';

/** Questions: what people ask, in plain words, each with the way to the station that answers it. */

function side({ session, size }: PageView): TemplateResult {
  const covered = questions.filter((q) => q.station).length;
  return html`<section class="blk h"><h1>${texts.questions}</h1><p>${texts.thatPeopleReallyAskAre(questions.length, covered)}</p></section>
    ${size === 'narrow' ? html`<takeup-questions .session=${session} .rev=${session.revision}></takeup-questions>` : nothing}`;
}

function controls({ session }: PageView): TemplateResult {
  const desk = deskOf(QuestionsDesk, session);
  return html`<section class="blk ctl asksearch" aria-label=${texts.search}>
    <label class="lab" for="ask">${texts.wordsOfYourQuestion}</label>
    <input id="ask" class="pick" type="search" placeholder=${texts.drumPedalLeverRust} autocomplete="off" .value=${desk.search} @input=${(e: Event) => desk.look((e.target as HTMLInputElement).value)} />
    <div role="status">${texts.of(desk.found.length, questions.length)}</div>
  </section>`;
}

const over = ({ session, size }: PageView): TemplateResult =>
  size === 'narrow'
    ? html``
    : html`<takeup-questions .session=${session} .rev=${session.revision}></takeup-questions>`;

export const questionsStation: Station = {
  id: 'questions',
  styles: questionsStyles,
  phoneStage: false,
  side,
  controls,
  over,
};
