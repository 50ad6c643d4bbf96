import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { benchScenes } from '../own-brakes.ts';

/** Value of the option that tells of a guest on the bench. */
const GUEST = -1;

/**
 * What a list of brakes offers; a guest of the bench heads it, so that it never names a brake that
 * does not stand there.
 */
export function brakeOptions(chosen: number, guest: string | null): TemplateResult {
  const shown = guest === null ? chosen : GUEST;
  const option = (value: number, title: string) =>
    // A list keeps what was picked in it, whatever is drawn: it is compared with that.
    html`<option value=${value} .selected=${live(value === shown)}>${title}</option>`;
  return html`${guest === null ? nothing : option(GUEST, guest)}${benchScenes().map((b, i) => option(i, b.title))}`;
}
