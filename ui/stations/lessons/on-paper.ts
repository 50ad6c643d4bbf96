import { html, nothing, type TemplateResult } from 'lit';
import { driveLife, freshState, KM } from '../../../sim/index.ts';
import { labelWords, lessonsOnPaper as texts } from '../../../sim/words/en.ts';
import { number } from '../../format.ts';
import type { Choice, Lesson, Step } from '../../lessons/format.ts';
import { lessonStart } from '../../lessons/run.ts';
import { filled } from '../../lessons/text.ts';
import { type PaperChart, paperChart } from '../../pieces/paper-chart.ts';
import { sheetPage } from '../../pieces/paper-sheet.ts';
import { brakeOf, rigOf } from '../../record/derive.ts';
import { dutyOn, PLAIN_ROAD } from '../../record/road.ts';
import type { Session } from '../../session.ts';

/** Predictions: a lesson's questions with room for a guess, for what was seen and for why; and a page of answers. */

/** Questions on a page: each takes a fifth of it with its lines. */
const ON_PAGE = 4;
/** The lesson whose page has a saw to be drawn, and how far it is drawn, km (teaching content, section of worksheets). */
const SAW = { lesson: 'the-click', km: 16_000 } as const;

const asked = (lesson: Lesson): readonly Step[] =>
  lesson.steps.filter((s) => s.ask !== undefined && s.choices);
const letter = (i: number): string => String.fromCharCode(65 + i);
const wordsOf = (c: Choice): string => filled(c.says.map((s) => s.words).join(' '), null);
const rightOf = (step: Step): number =>
  (step.choices ?? []).findIndex((c) => c.says.every((s) => s.holds));

/** Has it anything to predict? A talk has not. */
export const isAsked = (lesson: Lesson): boolean => asked(lesson).length > 0;

function question(step: Step, number: number): TemplateResult {
  return html`<section class="step"><p><b>${number}. ${filled(step.ask ?? '', null)}</b></p>
    <p>${(step.choices ?? []).map((c, i) => html`<span class="choice"><b>${letter(i)}</b> ${wordsOf(c)}</span> `)}</p>
    <p class="fill">${texts.iThinkBecause(html`<span class="blank"></span>`)}</p>
    <p class="fill">${texts.iSaw(html`<span class="blank"></span>`)}</p><p class="fill">${texts.so(html`<span class="blank"></span>`)}</p></section>`;
}

const saw = (title: string, lines: PaperChart['lines']): TemplateResult =>
  paperChart({
    title,
    x: { from: 0, to: SAW.km, step: 2000 },
    y: { from: 0.2, to: 0.5, step: 0.1 },
    tell: { x: (v) => number(v, 0), y: (v) => number(v, 1) },
    lines,
  });

/** The clearance over the first kilometres from new, driven by the lesson's own brake. */
function drawnSaw(lesson: Lesson): PaperChart['lines'] {
  const start = lessonStart(lesson);
  const brake = brakeOf(start);
  const { rows } = driveLife(rigOf(start), freshState(brake), dutyOn(brake, PLAIN_ROAD), {
    distance: SAW.km * KM,
  });
  return [{ points: rows.map((r) => [r.distance / KM, r.clearance]) }];
}

const SAW_TITLE = texts.sawTitle;

export function predictions(session: Session, lesson: Lesson): readonly TemplateResult[] {
  const steps = asked(lesson);
  const saws = lesson.name === SAW.lesson;
  // A saw to draw takes the place of a question.
  const each = saws ? ON_PAGE - 1 : ON_PAGE;
  const count = Math.ceil(steps.length / each);
  return Array.from({ length: count }, (_, page) =>
    sheetPage(
      session,
      {
        title: `${lesson.number ?? ''} ${lesson.title}`.trim(),
        under: `${lesson.idea ?? ''}${count > 1 ? texts.pageOf(page + 1, count) : ''}`,
        kind: 'predictions',
        asks: page === 0 ? [labelWords.name, labelWords.date] : [],
        ...(lesson.caution ? { caution: lesson.caution } : {}),
      },
      html`<div class=${steps.length < ON_PAGE ? 'roomy' : ''}>${steps.slice(page * each, (page + 1) * each).map((s, i) => question(s, page * each + i + 1))}${saws && page === count - 1 ? saw(SAW_TITLE, []) : nothing}</div>`,
    ),
  );
}

/** The right letters and what is seen and why, with the figures that a test holds against the model. */
export function predictionAnswers(session: Session, lesson: Lesson): TemplateResult {
  return sheetPage(
    session,
    {
      title: texts.answers(lesson.number ?? '', lesson.title).trim(),
      under: lesson.idea ?? '',
      kind: texts.predictionsAnswers,
      ...(lesson.caution ? { caution: lesson.caution } : {}),
    },
    html`${asked(lesson).map((s, i) => {
      const right = rightOf(s);
      const choice = s.choices?.[right];
      return html`<section class="step"><p><b>${i + 1}. ${letter(right)}</b> ${choice ? wordsOf(choice) : ''}</p>
        ${s.shows ? html`<p><b>${texts.seen}</b> ${filled(s.shows, null)}</p>` : nothing}${s.why ? html`<p><b>${texts.why}</b> ${filled(s.why, null)}</p>` : nothing}</section>`;
    })}${lesson.name === SAW.lesson ? saw(texts.fromNewClearanceInMm, drawnSaw(lesson)) : nothing}
    ${lesson.whatIf ? html`<section class="step"><p>${filled(lesson.whatIf, null)}</p></section>` : nothing}`,
  );
}
