import { html, nothing, type TemplateResult } from 'lit';
import { labelWords, orderOnPaper as said } from '../../../sim/words/en.ts';
import { cautions } from '../../cautions.ts';
import { sheetPage } from '../../pieces/paper-sheet.ts';
import type { PaperSize } from '../../pieces/papers.ts';
import type { Session } from '../../session.ts';
import { deskOf } from '../station.ts';
import { OrderDesk } from './desk.ts';
import { stepsOn } from './plan.ts';
import { type Step, textOf } from './step.ts';
import { apartWords } from './words-apart.ts';
import { bedWords, setWords } from './words-set.ts';
import { togetherWords } from './words-together.ts';

/** The work in its order for the wall of a workshop: what is done, what may fly, what to look at, its caution. */

interface Numbered {
  readonly number: number;
  readonly step: Step;
}

/** Lines of 9.5 pt in a column of a page's body, and letters in a line: measured on the printed sheet, a little less. */
const LINES: Readonly<Record<PaperSize, number>> = { A4: 56, Letter: 51 };
const LETTERS = 54;
/** What a step's heading with its rule takes, a paragraph's space, and a line to be ticked with its box, in lines. */
const HEADING = 2.6;
const SPACE = 0.2;
const TICK = 1.35;

const linesIn = (text: string | undefined): number =>
  text ? Math.ceil((text.length + 9) / LETTERS) : 0;

/** How high a step stands in its column, in lines. */
function linesOf(desk: OrderDesk, { step }: Numbered): number {
  const texts = [textOf(step.does, desk), step.tool[1], step.flies, step.care];
  if (step.back) texts.push(textOf(step.back, desk));
  const paragraphs = texts.map((t) => linesIn(t) + (t ? SPACE : 0));
  const ticks = step.checks.map((c) => linesIn(c) - 1 + TICK);
  return HEADING + [...paragraphs, ...ticks].reduce((a, b) => a + b, 0);
}

function told(desk: OrderDesk, { number, step }: Numbered): TemplateResult {
  return html`<section class="step"><h2>${number}. ${step.name}</h2><p>${textOf(step.does, desk)}</p>
    <p><b>${said.withWord}</b> ${step.tool[1]}</p>${step.flies ? html`<p><b>${said.mayFly}</b> ${step.flies}</p>` : nothing}${step.back ? html`<p><b>${said.wayRound}</b> ${textOf(step.back, desk)}</p>` : nothing}
    ${step.checks.map((c) => html`<p class="tick">${c}</p>`)}<p class="care"><b>!</b> ${step.care}</p></section>`;
}

/** Steps in as many pages as they need, each of two columns. */
function paged(
  desk: OrderDesk,
  steps: readonly Numbered[],
  paper: PaperSize,
): readonly (readonly Numbered[])[] {
  const pages: Numbered[][] = [[]];
  let [column, left] = [0, LINES[paper]];
  for (const s of steps) {
    const lines = linesOf(desk, s);
    if (lines > left) {
      column += 1;
      left = LINES[paper];
      if (column % 2 === 0) pages.push([]);
    }
    left -= lines;
    pages.at(-1)?.push(s);
  }
  return pages;
}

/** @param way taking apart, or putting together and setting */
export function orderPagesOf(
  session: Session,
  way: 'apart' | 'together',
  paper: PaperSize,
): readonly TemplateResult[] {
  const desk = deskOf(OrderDesk, session);
  const lists =
    way === 'apart'
      ? ([['apart', apartWords]] as const)
      : ([
          ['together', togetherWords],
          ['set', setWords],
          ['bed', bedWords],
        ] as const);
  const steps = lists
    .flatMap(([page, words]) => {
      const all = words(desk);
      return stepsOn(session.brake, page).flatMap((id) => all[id] ?? []);
    })
    .map((step, i): Numbered => ({ number: i + 1, step }));
  const pages = paged(desk, steps, paper);
  return pages.map((list, i) =>
    sheetPage(
      session,
      {
        title: way === 'apart' ? said.takingApartInOrder : said.puttingTogetherInOrder,
        under: said.tickWhatWasLookedAt(
          session.brake.title,
          pages.length > 1 ? said.pageOf(i + 1, pages.length) : '',
        ),
        kind: way === 'apart' ? 'removal' : 'fitting',
        asks: i === 0 ? [labelWords.vehicle, labelWords.date] : [],
        caution: way === 'apart' ? `${cautions.drumOff} ${cautions.springs}` : cautions.fitting,
      },
      html`<div class="columns small">${list.map((s) => told(desk, s))}</div>`,
    ),
  );
}
