import { html, nothing, render, type TemplateResult } from 'lit';
import { KM, SCENE_VERSION } from '../../sim/index.ts';
import { piecesPaperSheet as words } from '../../sim/words/en.ts';
import { cautions } from '../cautions.ts';
import { number } from '../format.ts';
import type { Session } from '../session.ts';
import type { PaperSize } from './papers.ts';

/** Sheets for paper: A4 and Letter, black on white. What they look like stands in page.css, with what is printed alone. */

export interface SheetHead {
  readonly title: string;
  readonly under: string | TemplateResult;
  /** Lines to be filled in by hand at the upper right. */
  readonly asks?: readonly string[];
  /** What it is among the sheets, at its foot. */
  readonly kind: string;
  /** The caution of the hazard that arises; none where there is none. */
  readonly caution?: string;
}

/** What stands on the bench, in a line: brake, scene, tooth, distance. */
export function standLine({ brake, guest, state }: Session): string {
  const km = number(Math.round(state.distance / KM), 0);
  return words.sceneVersionStepKm(guest ?? brake.title, brake.name, SCENE_VERSION, state.tooth, km);
}

/** One page: a head with lines to fill in, what it is about, and the foot that every sheet carries. */
export const sheetPage = (
  session: Session,
  { asks = [], caution, kind, title, under }: SheetHead,
  body: TemplateResult,
): TemplateResult =>
  html`<article class="paper sheet" data-sheet=${kind}>
    <header><div><h1>${title}</h1><p>${under}</p></div>${asks.length > 0 ? html`<dl>${asks.map((a) => html`<dt>${a}</dt><dd></dd>`)}</dl>` : nothing}</header>
    <div class="body">${body}</div>
    <footer><p><b>${words.teachingBrakeItsLimitsAre(standLine(session))}</b> <span>${words.takeup(kind)}</span></p>
      ${caution ? html`<p>${caution}</p>` : nothing}<p>${cautions.standing}</p></footer>
  </article>`;

/** Size of paper of the print that is being prepared; none: as the style sheet has it. Made when first printed: Node, where lessons are read too, has no style sheets. */
let size: CSSStyleSheet | undefined;

/**
 * Puts pages on paper: prepares what only the printer sees, and opens the browser's dialog. It is taken away
 * again when that is over (`ui/app/print-page.ts`).
 */
export async function printPages(pages: TemplateResult, paper: PaperSize): Promise<void> {
  const at = document.querySelector<HTMLElement>('#print') ?? document.createElement('div');
  at.id = 'print';
  at.className = paper;
  document.body.append(at);
  render(pages, at);
  size ??= new CSSStyleSheet();
  await size.replace(`@page { size: ${paper}; margin: 8mm 10mm; }`);
  document.adoptedStyleSheets = [...document.adoptedStyleSheets.filter((s) => s !== size), size];
  const done = (): void => {
    document.adoptedStyleSheets = document.adoptedStyleSheets.filter((s) => s !== size);
  };
  window.addEventListener('afterprint', done, { once: true });
  window.print();
}
