import { html, type TemplateResult } from 'lit';
import { piecesAskField as texts } from '../../sim/words/en.ts';
import type { Session } from '../session.ts';
import { askFor } from '../stations/ask/part.ts';
import { lens } from './icons.ts';

/** Enter opens what helps best, where the list stands on the page. */
function openFirst(e: KeyboardEvent): void {
  if (e.key !== 'Enter') return;
  const page = (e.target as Element).getRootNode() as ParentNode;
  const list = page.querySelector<Element & { openFirst?(): boolean }>('takeup-ask');
  if (list?.openFirst?.()) e.preventDefault();
}

/**
 * The one field of Ask. Start and Ask give the very same template, so that the field keeps its focus
 * when the first letter leads from one to the other.
 */
export const askField = (
  session: Session,
): TemplateResult => html`<section class="blk ctl askfield" aria-label=${texts.ask}>
    <label class="hidden" for="ask-field">${texts.askInYourOwnWords}</label>
    <span class="lens">${lens}</span>
    <input id="ask-field" type="search" enterkeyhint="search" placeholder=${texts.askInYourOwnWords} autocomplete="off" autocapitalize="off" spellcheck="false" .value=${session.moment.parts.ask.text} @input=${(e: Event) => session.do(askFor, (e.target as HTMLInputElement).value)} @keydown=${openFirst} />
  </section>`;
