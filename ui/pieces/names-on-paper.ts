import { html, nothing, type TemplateResult } from 'lit';
import { unsafeSVG } from 'lit/directives/unsafe-svg.js';
import { roleOf } from '../../sim/index.ts';
import { labelWords, piecesNamesOnPaper as words } from '../../sim/words/en.ts';
import type { Session } from '../session.ts';
import type { NumberedName } from '../stage/layers/names.ts';
import { mirrorDrawing } from '../stage/mirror.ts';
import { type PartId, partNames } from '../stage/part-names.ts';
import { circlePath } from '../stage/path.ts';
import { drawBrake } from '../stage/scene.ts';
import type { Drawing, Shape } from '../stage/shapes.ts';
import { shapesText } from '../stage/svg.ts';
import { fitView, toPx } from '../stage/view.ts';
import { printTheme } from '../theme.ts';
import { sheetPage } from './paper-sheet.ts';

/** Name the parts: the brake as it stands with numbered leaders, and lines to write on, or the answers. */

/** Parts that are asked for, where the brake has them: sixteen or so, as many as a page has lines for. */
const ASKED: ReadonlySet<PartId> = new Set<PartId>([
  ...(['drum', 'lining', 'table', 'web', 'anchor pin', 'abutment', 'cylinder', 'piston'] as const),
  ...(['upper spring', 'lower spring', 'return spring', 'hold-down', 'strut', 'cable'] as const),
  ...(['toothed lever', 'lever window', 'star wheel', 'wheel lever', 'sleeve'] as const),
  ...(['wedge', 'wedge seat', 'parking lever', 'access hole'] as const),
]);

/** px of the drawing, and of a number's ring. */
const WIDE = 720;
const HIGH = 470;
const RING = 13;

/** The brake as the sheet shows it: its wheel's side, numbered, turning forward. */
export function namesDrawing(
  session: Session,
): Drawing & { readonly names: readonly NumberedName[] } {
  const { brake } = session;
  const fitted = fitView(brake, { width: WIDE, height: HIGH, band: 6, narrow: true, k: 0.8 });
  // Rows of numbers have the whole height: nothing else stands on paper.
  const view = { ...fitted, upper: true };
  // Roles and the way of turning are asked for: the arrow tells that it turns forward.
  const instant = { ...session.rest, turning: 1 } as const;
  const left = drawBrake({
    ...{ brake, state: session.state, instant, rest: session.rest },
    ...{ layers: { names: true }, view, theme: printTheme, roles: 'none', only: ASKED },
  });
  return session.wheel === 'right' ? mirrorDrawing(left) : left;
}

function picture(session: Session): { svg: TemplateResult; names: readonly NumberedName[] } {
  const drawn = namesDrawing(session);
  const numbers = drawn.labels.filter((l) => l.style === 'number');
  const rings = numbers.map(
    (l): Shape => ({
      key: `ring ${l.key}`,
      path: circlePath(l.at, RING / drawn.view.scale),
      style: { fill: 'sheet', stroke: 'ink', width: 2 },
      group: 'names',
    }),
  );
  const shapes = [...drawn.shapes, ...rings];
  const texts = numbers.map((l) => {
    const [x, y] = toPx(drawn.view, l.at);
    return `<text x="${x.toFixed(1)}" y="${(y + 5).toFixed(1)}" text-anchor="middle" font-size="14" font-weight="700">${l.text}</text>`;
  });
  return {
    svg: html`<svg viewBox="0 0 ${WIDE} ${HIGH}" role="img" aria-label=${words.theBrakeWithNumberedParts}>${unsafeSVG(
      shapesText({ shapes, labels: [], view: drawn.view }, printTheme, 'names') + texts.join(''),
    )}</svg>`,
    names: drawn.names,
  };
}

const box = (asks: string, answer: string | null): TemplateResult =>
  html`<div>${asks}${answer === null ? html`<span class="blank"></span>` : html` <b>${answer}</b>`}</div>`;

/** @param answers with the names and what each part does */
export function namesSheet(session: Session, answers: boolean): TemplateResult {
  const { svg, names } = picture(session);
  const told = (text: string): string | null => (answers ? text : null);
  const wheel = session.wheel === 'right' ? 'Right' : 'Left';
  const front = session.wheel === 'right' ? 'right' : 'left';
  const under = words.under(wheel, front);
  return sheetPage(
    session,
    {
      title: answers ? words.nameThePartsAnswers : words.nameTheParts,
      ...{ under, kind: answers ? words.namesAnswers : 'names' },
      asks: answers ? [] : [labelWords.name, labelWords.date],
    },
    html`${svg}
      <div class="boxes">${box(words.theFrontShoeIsThe, told(words.shoe(roleOf('front', 1))))}${box(words.theDrumTurns, told(front === 'left' ? words.againstTheClockForward : words.withTheClockForward))}${box(words.theRearShoeIsThe, told(words.shoe(roleOf('rear', 1))))}</div>
      <ol class="columns ${answers ? 'small' : 'lines'}">${names.map(({ part }) => html`<li>${answers ? html`<b>${partNames[part][0]}</b>: ${partNames[part][1]}` : html`<span class="blank"></span>`}</li>`)}</ol>
      ${
        answers
          ? nothing
          : html`<h2>${words.chooseThreePartsWhatWould}</h2>
      ${[1, 2, 3].map(() => html`<p class="without">${words.withoutPart(html`<span class="blank"></span>`)}</p>`)}`
      }`,
  );
}
