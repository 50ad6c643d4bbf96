import { css, html, nothing, type TemplateResult } from 'lit';
import { appTroubleBar as words } from '../../sim/words/en.ts';
import { caution } from '../pieces/icons.ts';
import { NARROW } from '../pieces/page-sizes.ts';
import type { Home } from '../record/home.ts';

/** What is wrong with what is kept, or with a link: each stands until it is closed. */
export function troubleBar(home: Home): TemplateResult | typeof nothing {
  if (home.troubles.length === 0) return nothing;
  return html`<div class="troubles" role="alert">${home.troubles.map(
    (t) =>
      html`<p>${caution}<span>${t}</span><button @click=${() => home.closeTrouble(t)}>${words.close}</button></p>`,
  )}</div>`;
}

export const troubleStyles = css`
  .troubles, .newer { flex: none; background: var(--sheet); border-bottom: 2px solid var(--ink); }
  /* However many there are, the bench stays in sight. */
  .troubles { max-height: 38vh; overflow-y: auto; }
  .newer { border-bottom: 1px solid var(--rule); }
  :is(.troubles, .newer) p { display: flex; gap: 12px; align-items: center; margin: 0; padding: 6px 20px; font-size: 16px; line-height: 1.3; overflow-wrap: anywhere; }
  .troubles p + p { border-top: 1px solid var(--rule); }
  .troubles svg { flex: none; width: 26px; height: 24px; }
  :is(.troubles, .newer) span { flex: 1; min-width: 0; }
  :is(.troubles, .newer) button { flex: none; border: 2px solid var(--ink); background: var(--sheet); min-height: 34px; padding: 0 14px; }
  @media ${NARROW} { :is(.troubles, .newer) p { flex-wrap: wrap; } :is(.troubles, .newer) button { min-height: 56px; flex: 1 0 100%; } }
`;
