import { html, type TemplateResult } from 'lit';
import { askField } from '../../pieces/ask-field.ts';
import { startStyles } from '../start/page-styles.ts';
import type { PageView, Station } from '../station.ts';
import './list.ts';
import { ask as texts } from '../../../sim/words/en.ts';

/** Ask: one field over everything that the bench knows. */

const list = ({ session }: PageView): TemplateResult =>
  html`<takeup-ask .style=${'order:2'} .session=${session} .rev=${session.revision}></takeup-ask>`;

const side = (page: PageView): TemplateResult =>
  html`<section class="blk h"><h1>${texts.ask}</h1>${page.size === 'narrow' ? html`` : html`<p>${texts.inYourOwnWordsWhat}</p>`}</section>
    ${page.size === 'narrow' ? list(page) : html``}`;

export const askStation: Station = {
  id: 'ask',
  phoneStage: false,
  styles: startStyles,
  side,
  controls: ({ session }) => askField(session),
  over: (page) => (page.size === 'narrow' ? html`` : list(page)),
};
