import { html, type TemplateResult } from 'lit';
import { piecesFew as words } from '../../sim/words/en.ts';
import { cell, type Find } from './cells.ts';

/** What tells most: three readings. All others are one key away. */
export const fewReadings = (find: Find, keys: readonly string[]): TemplateResult =>
  html`<section class="blk rd few" aria-label=${words.readings}>${keys.slice(0, 3).map((key) => cell(find(key)))}</section>`;

/**
 * What is asked for by whoever wants to know why.
 *
 * @param open all is shown: no one has to ask
 */
export const why = (open: boolean, text: TemplateResult): TemplateResult =>
  open ? text : html`<details class="why"><summary>${words.why}</summary>${text}</details>`;
