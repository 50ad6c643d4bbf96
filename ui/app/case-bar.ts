import { html, nothing, type TemplateResult } from 'lit';
import { appCaseBar as texts } from '../../sim/words/en.ts';
import type { Session } from '../session.ts';
import { backToCase } from '../stations/see/part.ts';

/** The words of what was seen: loaded when a case is first carried along. */
let text: ((said: Readonly<Record<string, string>>) => string) | null = null;
let coming = false;

/** The case that was carried along from What I see: over the station that it was carried to. */
export function caseBar(session: Session): TemplateResult | typeof nothing {
  const { along, said } = session.moment.parts.see;
  if (!along || ['see', 'start', 'ask', 'kind'].includes(session.station)) return nothing;
  if (!text && !coming) {
    coming = true;
    // Where it cannot be had the way back stands there without them.
    import('../stations/see/sentences.ts')
      .then((words) => {
        text = words.caseText;
        session.changed();
      })
      .catch(() => undefined);
  }
  return html`<section class="asked case" aria-label=${texts.yourCase}><div tabindex="0"><b>${texts.yourCase}</b> ${text?.(said) ?? ''}</div>
    <button class="btn" @click=${() => session.do(backToCase)}>${texts.whatISee}</button></section>`;
}
