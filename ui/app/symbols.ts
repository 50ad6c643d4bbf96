import { html, type TemplateResult } from 'lit';

/**
 * Symbols of a formula with their indices set low: `T_lead` is drawn T with a low "lead". Read aloud it
 * stays as it is written, since a low index alone would run into its letter.
 */
export function withIndices(text: string): TemplateResult | string {
  const parts = text.split(/_([A-Za-z0-9]+)/);
  if (parts.length === 1) return text;
  return html`<span role="math" aria-label=${text}>${parts.map((p, i) => (i % 2 ? html`<sub>${p}</sub>` : p))}</span>`;
}
