import { html, type TemplateResult } from 'lit';
import { cautions } from '../../cautions.ts';
import { caution } from '../../pieces/icons.ts';
import { show } from '../../record/guest.ts';
import { startStyles } from '../start/page-styles.ts';
import type { PageView, Station } from '../station.ts';
import './card.ts';
import { kind as words } from '../../../sim/words/en.ts';

/** Which kind is yours: much that is true of one kind of drum brake is false of another. */

const card = ({ session }: PageView): TemplateResult =>
  html`<takeup-kind .style=${'order:2'} .session=${session} .rev=${session.revision}></takeup-kind>`;

const side = (page: PageView): TemplateResult =>
  html`<section class="blk h"><h1>${words.whichKindIsYours}</h1><p>${words.lookWithTheDrumOff}</p></section>
    ${page.size === 'narrow' ? card(page) : html``}
    <section class="note">${caution}<div>${cautions.doubt}</div></section>`;

export const kind: Station = {
  id: 'kind',
  phoneStage: false,
  styles: startStyles,
  side,
  controls: ({ session }) =>
    html`<section class="blk ctl" aria-label=${words.goOn}><div class="row two"><button class="btn" @click=${() => session.do(show, 'start')}>${words.start}</button><button class="btn p" @click=${() => session.do(show, 'see')}>${words.whatISee}</button></div></section>`,
  over: (page) => (page.size === 'narrow' ? html`` : card(page)),
};
