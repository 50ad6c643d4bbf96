import { html, type TemplateResult } from 'lit';
import { piecesIcons as words } from '../../sim/words/en.ts';

/** Pictures of the page, drawn as shapes; they take the colour of their text. */
export const icons: Readonly<Record<string, TemplateResult>> = {
  Backward: html`<svg width="24" height="20" viewBox="0 0 24 20" aria-hidden="true"><path d="M3 17A9.5 9.5 0 0 1 20 9" fill="none" stroke="currentColor" stroke-width="2.6" /><path d="M22.6 12.6L20.9 4.4L15.4 9.9Z" fill="currentColor" /></svg>`,
  Forward: html`<svg width="24" height="20" viewBox="0 0 24 20" aria-hidden="true"><path d="M21 17A9.5 9.5 0 0 0 4 9" fill="none" stroke="currentColor" stroke-width="2.6" /><path d="M1.4 12.6L3.1 4.4L8.6 9.9Z" fill="currentColor" /></svg>`,
  Stopped: html`<svg width="14" height="14" viewBox="0 0 14 14" aria-hidden="true"><rect width="14" height="14" fill="currentColor" /></svg>`,
  fan: html`<svg viewBox="0 0 28 18" aria-hidden="true"><path d="M2 15Q14 9 26 15L26 12Q14 1 2 12Z" fill="var(--lead-fill)" stroke="var(--lead)" stroke-width="1.5" /></svg>`,
  comb: html`<svg viewBox="0 0 28 18" aria-hidden="true"><path d="M3 17V10M8 17V5M13 17V2M18 17V5M23 17V9" stroke="var(--lead)" stroke-width="3.2" /></svg>`,
  forces: html`<svg viewBox="0 0 28 18" aria-hidden="true"><path d="M1 7H16V3L27 9L16 15V11H1Z" fill="var(--fluid)" /></svg>`,
  ghost: html`<svg viewBox="0 0 28 18" aria-hidden="true"><path d="M1 14Q14 2 27 14" fill="none" stroke="var(--ink)" stroke-width="1.8" stroke-dasharray="8 2.5 2 2.5 2 2.5" /></svg>`,
  names: html`<svg viewBox="0 0 28 18" aria-hidden="true"><path d="M3 15L11 5H27" fill="none" stroke="var(--ink)" stroke-width="1.6" /><circle cx="3.4" cy="14.6" r="2.8" fill="var(--ink)" /></svg>`,
  heat: html`<svg viewBox="0 0 28 18" aria-hidden="true"><rect x="2" y="4" width="6" height="11" fill="#F3D27A" /><rect x="8" y="4" width="6" height="11" fill="#E08A3A" /><rect x="14" y="4" width="6" height="11" fill="#B03A2E" /><rect x="20" y="4" width="6" height="11" fill="#5B1A33" /></svg>`,
  dials: html`<svg viewBox="0 0 28 18" aria-hidden="true"><path d="M2 5H26M2 13H26" stroke="var(--ink)" stroke-width="1.8" /><circle cx="18" cy="5" r="3.6" fill="var(--warn)" stroke="var(--ink)" stroke-width="1.8" /><circle cx="9" cy="13" r="3.6" fill="var(--warn)" stroke="var(--ink)" stroke-width="1.8" /></svg>`,
  polygons: html`<svg viewBox="0 0 28 18" aria-hidden="true"><path d="M4 15L9 4H24L20 13Z" fill="none" stroke="var(--ink)" stroke-width="2" /><path d="M1.5 17L4.5 11L8 16Z" fill="var(--ink)" /></svg>`,
  edge: html`<svg viewBox="0 0 28 18" aria-hidden="true"><path d="M3 1V17M8 3H26V7H8ZM16 7V17" fill="none" stroke="var(--ink)" stroke-width="2" /></svg>`,
  loupe: html`<svg viewBox="0 0 28 18" aria-hidden="true"><circle cx="12" cy="8.5" r="6.6" fill="none" stroke="var(--ink)" stroke-width="2" /><path d="M17 13L23 17.5" stroke="var(--ink)" stroke-width="3" /></svg>`,
};

/** Ask. */
export const lens = html`<svg viewBox="0 0 24 24" width="24" height="24" aria-hidden="true"><circle cx="10" cy="10" r="7" fill="none" stroke="currentColor" stroke-width="3" /><path d="M15.5 15.5L22 22" stroke="currentColor" stroke-width="3.4" /></svg>`;

/** Take away: out of the tray. */
export const away = html`<svg viewBox="0 0 24 24" width="24" height="24" aria-hidden="true"><path d="M3 13V21H21V13M12 16V4M6.5 9L12 3.5L17.5 9" fill="none" stroke="currentColor" stroke-width="2.8" /></svg>`;

export const mark = html`<svg class="mark" viewBox="0 0 46 26" aria-hidden="true"><path d="M1 25V13L10 3V13L19 3V13L28 3V13L37 3V13L45 4V25Z" fill="currentColor" /></svg>`;

/** Warning triangle, black on yellow. */
export const caution = html`<svg viewBox="0 0 40 36" role="img" aria-label=${words.caution}><path d="M20 2L38.5 34H1.5Z" fill="var(--warn)" stroke="var(--warn-ink)" stroke-width="3" stroke-linejoin="round" /><path d="M20 12.5V23" stroke="var(--warn-ink)" stroke-width="4" stroke-linecap="round" /><circle cx="20" cy="29" r="2.3" fill="var(--warn-ink)" /></svg>`;
