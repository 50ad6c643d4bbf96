import { html, svg, type TemplateResult } from 'lit';
import { start as texts } from '../../../sim/words/en.ts';
import { askField } from '../../pieces/ask-field.ts';
import { languageOffer } from '../../pieces/language-choice.ts';
import type { PageView, Station } from '../station.ts';
import { startStyles } from './page-styles.ts';
import { goIn, type Way } from './part.ts';

/** Start: what is wrong, in seven lines; the first thing on a phone. */

interface Line {
  readonly way: Way;
  readonly letter: string;
  readonly title: string;
  readonly text: string;
  readonly picture: TemplateResult;
}

const ring = (inside: TemplateResult): TemplateResult =>
  html`<svg viewBox="0 0 48 48" aria-hidden="true"><defs><clipPath id="start-ring"><circle cx="24" cy="24" r="22" /></clipPath></defs><g clip-path="url(#start-ring)"><rect width="48" height="48" class="pl" />${inside}</g><circle cx="24" cy="24" r="22" class="rim" /></svg>`;

/** Each picture is a look through a loupe at the place it is about. */
const lines: readonly Line[] = [
  {
    way: 'stuck',
    letter: 'A',
    title: texts.drumStuck,
    text: texts.willNotComeOffOr,
    picture: ring(
      svg`<path class="dr" d="M4 40L40 4L48 12L12 48Z" /><path class="li" d="M8 30L30 8L36 14L14 36Z" /><path class="bad" d="M36 2l10 10" />`,
    ),
  },
  {
    way: 'drag',
    letter: 'B',
    title: texts.itDragsOrGetsHot,
    text: texts.oneWheelOrAllWhen,
    picture: ring(
      svg`<path class="dr" d="M30 0h18v48H30q8-24 0-48Z" /><path class="li" d="M20 0h10q8 24 0 48H20q8-24 0-48Z" /><path class="hot" d="M14 40q-6-6 0-12t0-12M8 40q-6-6 0-12t0-12" />`,
    ),
  },
  {
    way: 'pedal',
    letter: 'C',
    title: texts.longOrSoftPedal,
    text: texts.farSpringySinkingPulsing,
    picture: ring(
      svg`<rect class="fl" x="4" y="14" width="40" height="20" /><path class="ln" d="M10 24l4-7l5 14l5-14l5 14l5-14l4 7" />`,
    ),
  },
  {
    way: 'lever',
    letter: 'D',
    title: texts.leverGoesTooFar,
    text: texts.orWillNotHoldOn,
    picture: ring(
      svg`<path class="lv" d="M20 0h12L24 34h-8Z" /><circle class="pl" cx="19" cy="36" r="5" /><path class="ln" d="M0 40h14" />`,
    ),
  },
  {
    way: 'shoes',
    letter: 'E',
    title: texts.fittingShoes,
    text: texts.inOrderWithTheSizes,
    picture: ring(
      svg`<path class="li" d="M4 0h9q-6 24 0 48H4Z" /><path class="lv" d="M13 0h8q-6 24 0 48h-8q-6-24 0-48Z" /><path class="adj" d="M22 22l8-8l4 6l4-6l4 6l6-4v18H22Z" />`,
    ),
  },
  {
    way: 'parts',
    letter: 'F',
    title: texts.areThesePartsStillGood,
    text: texts.drumLiningsSpringsCylinder,
    picture: ring(
      svg`<path class="dr" d="M0 0h14l20 48H0Z" /><path class="li" d="M16 0h10l20 48H36Z" /><path class="ln" d="M30 10h14M30 10l4-4M30 10l4 4" />`,
    ),
  },
  {
    way: 'works',
    letter: 'G',
    title: texts.justShowMeHowIt,
    text: texts.pressThePedalSeeAll,
    picture: ring(
      svg`<circle class="dr" cx="24" cy="24" r="20" /><circle class="pl" cx="24" cy="24" r="15" /><circle class="li" cx="24" cy="24" r="6" /><path class="ln" d="M8 12a20 20 0 0 1 32 0M40 12l-7-1M40 12l1-7" />`,
    ),
  },
];

function list({ session }: PageView): TemplateResult {
  return html`<div class="ways" role="list" aria-label=${texts.waysIn}>${lines.map(
    (l) =>
      html`<div role="listitem"><button data-way=${l.way} @click=${() => session.do(goIn, l.way)}>${l.picture}<i>${l.letter}</i><span><b>${l.title}</b><small>${l.text}</small></span><svg class="go" viewBox="0 0 12 20" aria-hidden="true"><path d="M2 2L10 10L2 18" fill="none" stroke="currentColor" stroke-width="3" /></svg></button></div>`,
  )}</div>`;
}

const side = (page: PageView): TemplateResult =>
  html`<section class="blk h"><h1>${texts.whatIsWrong}</h1><p>${texts.touchALineOrAsk}</p>${languageOffer()}</section>
    ${page.size === 'narrow' ? list(page) : html``}`;

export const start: Station = {
  id: 'start',
  styles: startStyles,
  phoneStage: false,
  side,
  controls: ({ session }) => askField(session),
  over: (page) =>
    page.size === 'narrow' ? html`` : html`<div class="startover">${list(page)}</div>`,
};
