import { css, html, type TemplateResult } from 'lit';
import { appNamesBar as texts } from '../../sim/words/en.ts';
import type { Session } from '../session.ts';
import type { NumberedName } from '../stage/layers/names.ts';

/**
 * Names of the parts hidden behind their numbers and told one by one: by pointing at a part, by the
 * list, or the next in turn. For asking a class.
 */

/** Tells the first name that is still hidden. */
export function revealNext(session: Session, names: readonly NumberedName[]): void {
  const next = names.find((n) => !session.revealed?.has(n.part));
  if (next) session.reveal(next.part);
}

/** Where there is no room for words: the numbers with their names, below or beside the drawing. */
export function namesList(session: Session, names: readonly NumberedName[]): TemplateResult {
  if (!session.layers.names) return html``;
  const hidden = session.revealed !== null;
  return html`<section class="blk nameslist" aria-label=${texts.namesOfTheParts}>
      <button class="btn" @click=${() => session.hideNames(!hidden)}>${hidden ? texts.showAllNames : texts.hideTheNames}</button>
      <ol>${names.map((n) => {
        const told = !session.revealed || session.revealed.has(n.part);
        return html`<li>${told ? html`<i>${n.number}</i>${n.name}` : html`<button @click=${() => session.reveal(n.part)}>${texts.whatIsIt(html`<i>${n.number}</i>`)}</button>`}</li>`;
      })}</ol>
    </section>`;
}

export const namesStyles = css`
  .nameslist { order: 1; padding: 12px 16px; }
  .nameslist .btn { width: 100%; }
  .nameslist ol { list-style: none; margin: 8px 0 0; padding: 0; }
  .nameslist li { border-top: 1px solid var(--rule); min-height: 56px; display: flex; align-items: center; font-size: 17px; }
  .nameslist li button { width: 100%; min-height: 56px; text-align: left; color: var(--ink2); }
  @media (min-width: 901px) and (min-height: 521px) {
    .nameslist { order: 0; padding: 8px 12px; }
    .nameslist ol { columns: 2; column-gap: 12px; margin-top: 6px; }
    .nameslist li { min-height: 0; font-size: 14.5px; line-height: 1.3; padding: 2px 0; break-inside: avoid; }
    .nameslist li button { min-height: 24px; }
  }
  .wall .nameslist { border: 0; padding: 0; overflow: hidden; }
  .wall .nameslist .btn { display: none; }
  .wall .nameslist ol { columns: 2; margin: 0; }
  .wall .nameslist li { font-size: clamp(22px, 2.4vh, 34px); line-height: 1.2; padding: 3px 0; min-height: 0; }
  .nameslist i { display: inline-block; min-width: 2.2em; font-style: normal; font-weight: 700; color: var(--ink); }
`;
