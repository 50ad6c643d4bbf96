import { html, type TemplateResult } from 'lit';
import { askField } from '../../pieces/ask-field.ts';
import { startStyles } from '../start/page-styles.ts';
import type { PageView, Station } from '../station.ts';
import './list.ts';

/** Ask: one field over everything that the bench knows. */

const list = ({ session }: PageView): TemplateResult =>
  html`<takeup-ask .style=${'order:2'} .session=${session} .rev=${session.revision}></takeup-ask>`;

const side = (page: PageView): TemplateResult =>
  html`<section class="blk h"><h1>Ask</h1>${page.size === 'narrow' ? html`` : html`<p>In your own words: what is wrong, what you want to know, or a part’s name.</p>`}</section>
    ${page.size === 'narrow' ? list(page) : html``}`;

export const askStation: Station = {
  id: 'ask',
  phoneStage: false,
  styles: startStyles,
  side,
  controls: ({ session }) => askField(session),
  over: (page) => (page.size === 'narrow' ? html`` : list(page)),
};
