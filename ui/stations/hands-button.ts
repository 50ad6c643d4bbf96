import { html, type TemplateResult } from 'lit';
import { handsButton as words } from '../../sim/words/en.ts';
import { openHands } from '../record/hands.ts';
import type { Session } from '../session.ts';

/** Puts hands into the brake: its parts can be taken hold of. */
export const handsButton = (session: Session): TemplateResult =>
  html`<button class="btn" aria-pressed="false" title=${words.takeHoldOfTheParts} @click=${() => session.do(openHands, true)}>${words.hands}</button>`;
