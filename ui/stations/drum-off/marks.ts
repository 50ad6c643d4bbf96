import { html } from 'lit';
import { drumOffMarks as words } from '../../../sim/words/en.ts';

/** Signs of a verdict: never colour alone. */
export const tick = html`<svg class="mk" viewBox="0 0 24 24" role="img" aria-label=${words.clear}><path d="M3 13L9.5 19.5L21 5" fill="none" stroke="var(--good)" stroke-width="4" /></svg>`;
export const cross = html`<svg class="mk" viewBox="0 0 24 24" role="img" aria-label=${words.holds}><rect width="24" height="24" fill="var(--bad)" /><path d="M7 7L17 17M17 7L7 17" stroke="var(--sheet)" stroke-width="3.4" /></svg>`;
