import { html, type TemplateResult } from 'lit';
import { piecesMarks as words } from '../../sim/words/en.ts';
import type { Level } from '../../sim/workshop/index.ts';

/** Marks of a verdict: tick, triangle with bar and dot, cross in a filled square. Never colour alone. */
export const marks: Readonly<Record<Level, TemplateResult>> = {
  good: html`<svg class="mark-v" viewBox="0 0 24 24" role="img" aria-label=${words.inLimit}><path d="M3 13L9.5 19.5L21 5" fill="none" stroke="var(--good)" stroke-width="3.6" /></svg>`,
  watch: html`<svg class="mark-v" viewBox="0 0 40 36" role="img" aria-label=${words.watch}><path d="M20 2L38.5 34H1.5Z" fill="var(--warn)" stroke="var(--warn-ink)" stroke-width="3" stroke-linejoin="round" /><path d="M20 12.5V23" stroke="var(--warn-ink)" stroke-width="4" stroke-linecap="round" /><circle cx="20" cy="29" r="2.3" fill="var(--warn-ink)" /></svg>`,
  bad: html`<svg class="mark-v" viewBox="0 0 24 24" role="img" aria-label=${words.reject}><rect x="1" y="1" width="22" height="22" fill="var(--bad)" /><path d="M7 7L17 17M17 7L7 17" stroke="var(--sheet)" stroke-width="3.2" /></svg>`,
  none: html`<svg class="mark-v" viewBox="0 0 24 24" role="img" aria-label=${words.open}><circle cx="12" cy="12" r="8.5" fill="none" stroke="var(--ink2)" stroke-width="2.4" stroke-dasharray="4 3" /></svg>`,
};
