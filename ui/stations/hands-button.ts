import { html, type TemplateResult } from 'lit';
import { openHands } from '../record/hands.ts';
import type { Session } from '../session.ts';

/** Puts hands into the brake: its parts can be taken hold of. */
export const handsButton = (session: Session): TemplateResult =>
  html`<button class="btn" aria-pressed="false" title="Take hold of the parts" @click=${() => session.do(openHands, true)}>Hands</button>`;
