import { html, type TemplateResult } from 'lit';

/** Signs of a verdict: never colour alone. */
const tick = html`<svg class="park-mk" viewBox="0 0 24 24" aria-hidden="true"><path d="M3 13L9.5 19.5L21 5" fill="none" stroke="var(--good)" stroke-width="4" /></svg>`;
const cross = html`<svg class="park-mk" viewBox="0 0 24 24" aria-hidden="true"><rect width="24" height="24" fill="var(--bad)" /><path d="M7 7L17 17M17 7L7 17" stroke="var(--sheet)" stroke-width="3.4" /></svg>`;

export const markOf = (kind: 'tick' | 'cross'): TemplateResult => (kind === 'tick' ? tick : cross);
