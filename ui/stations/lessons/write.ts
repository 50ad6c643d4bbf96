import { html, nothing, type TemplateResult } from 'lit';
import { lessonsWrite as words } from '../../../sim/words/en.ts';
import { takeStep, writeDraft } from '../../lessons/wants.ts';
import {
  draftOf,
  MOST_STEPS,
  onlyBegun,
  startFrom,
  stepFrom,
  stepsOf,
  textAt,
  untoldOf,
  type Written,
  withAt,
  withMore,
  writtenOf,
} from '../../lessons/written.ts';
import { show } from '../../record/guest.ts';
import type { Session } from '../../session.ts';
import { MOST_LETTERS } from './part.ts';

/** A lesson written without code: what is done on the stage becomes a step, the question is typed. */

/** The lesson being written, as its draft has it; null: none is. */
export const writtenNow = ({ moment }: Session): Written | null =>
  moment.parts.lessons.draft === null ? null : writtenOf(moment.parts.lessons.draft);

/**
 * Puts the lesson being written into the record.
 *
 * @param typed letters of one text are one step of undo
 */
export function putDraft(session: Session, w: Written, typed: boolean): void {
  const draft = draftOf(w);
  if (draft.length > MOST_LETTERS) session.say(words.tooLong);
  else session.do(typed ? writeDraft : takeStep, draft);
}

/** Writes on what a lesson's file has. */
export function writeOn(session: Session, w: Written): void {
  const before = session.moment.parts.lessons.draft;
  putDraft(session, w, false);
  if (before !== null) session.say(words.draftTakenAnew(textAt(w, ['title'])));
}

/** What was recorded is put into the draft; what a lesson cannot say of it is said. */
function taken(session: Session, next: Written | null, step: number, says: string): void {
  if (!next) {
    session.say(words.cannotBeRead);
    return;
  }
  putDraft(session, next, false);
  const untold = untoldOf(next, step);
  session.say(untold.length > 0 ? `${says} ${words.cannotSayIt(untold.join('; '))}` : says);
}

type From = (w: Written, now: Session['moment']) => Written | null;

function addStep(session: Session, from: From, says: (length: number) => string): void {
  const w = writtenNow(session);
  const steps = w ? stepsOf(w) : [];
  if (!w || steps.length >= MOST_STEPS) return;
  const step = from(w, session.moment);
  const next = step && withAt(w, ['steps'], [...steps, step]);
  taken(session, next, steps.length, says(steps.length + 1));
}

/** Takes what stands on the stage as what happens: in the step that has its beginning, else in the next one. */
function recordStep(session: Session): void {
  const w = writtenNow(session);
  const steps = w ? stepsOf(w) : [];
  if (onlyBegun(steps.at(-1))) goOn(session, words.stepWhatTheStageShows);
  else addStep(session, stepFrom, words.stepWhatTheStageShows);
}

/** The last step goes on to what stands on the stage. */
function goOn(session: Session, says: (length: number) => string): void {
  const w = writtenNow(session);
  const last = w ? stepsOf(w).length - 1 : -1;
  if (!w || last < 0) return;
  const next = withMore(w, last, session.moment);
  if (next === w) session.say(words.nothingHasChanged(last + 1));
  else taken(session, next, last, says(last + 1));
}

/** Beside the stage of any station, while a lesson is being written. */
export function writingBeside(session: Session): TemplateResult | typeof nothing {
  const w = writtenNow(session);
  if (!w || session.station === 'lessons') return nothing;
  const steps = stepsOf(w);
  const { length } = steps;
  const begun = onlyBegun(steps.at(-1));
  const next = begun ? length : length + 1;
  const untold = untoldOf(w, length - 1);
  const title = textAt(w, ['title']) || words.yourLesson;
  return html`<section class="blk writing" aria-label=${words.lessonBeingWritten}>
    <p>${begun ? words.stepHasItsBeginning(html`<b>${title}</b>`, length) : words.doOnTheStageWhat(html`<b>${title}</b>`, length, length === 1 ? words.step : words.steps)}</p>
    ${untold.length > 0 ? html`<p data-untold>${words.cannotSay} ${untold.join('; ')}.</p>` : nothing}
    <div><button class="btn p" @click=${() => recordStep(session)}>${words.takeThisAsStep(next)}</button>
      <button class="btn" @click=${() => session.do(show, 'lessons')}>${words.writeOn}</button>
      <button class="btn" ?disabled=${begun} @click=${() => addStep(session, startFrom, words.stepBeginsSo)}>${words.beginsSo(length + 1)}</button>
      ${length > 0 && !begun ? html`<button class="btn" @click=${() => goOn(session, words.stepGoesOn)}>${words.thenThis(length)}</button>` : nothing}</div></section>`;
}
