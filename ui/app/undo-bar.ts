import { css, html, nothing, type TemplateResult } from 'lit';
import { labelWords, appUndoBar as words } from '../../sim/words/en.ts';
import { COMPACT, NARROW } from '../pieces/page-sizes.ts';
import type { Session } from '../session.ts';
import type { PageSize } from '../stations/station.ts';

/** One step back or forth, each named; and for a while what was undone. */

/** What was undone stands on the stage so long, s. */
const TOLD = 8;

const back = html`<svg width="22" height="18" viewBox="0 0 22 18" aria-hidden="true"><path d="M4 7H14A5 5 0 0 1 14 17H8" fill="none" stroke="currentColor" stroke-width="2.6" /><path d="M7.5 1.5L2 7L7.5 12.5" fill="none" stroke="currentColor" stroke-width="2.6" /></svg>`;

export function undoButton(session: Session, size: PageSize): TemplateResult {
  const { canUndo, lastDone } = session;
  const name = canUndo ? words.undo(lastDone) : labelWords.undo;
  return html`<button class="undo" aria-label=${name} title=${words.ctrlZ(name)} ?disabled=${!canUndo} @click=${() => session.undo()}>${back}${size === 'wide' ? html`<span class="word">${words.undo2}</span>` : nothing}</button>`;
}

/** On the stage's foot after an undo, until the next change: what it was, and the way forth again. */
export function undone(session: Session, foot: number): TemplateResult | typeof nothing {
  const { said, clock, canRedo } = session;
  const fresh = clock - said.at < TOLD;
  if (!fresh && !canRedo) return nothing;
  if (!canRedo && said.text === '') return nothing;
  return html`<div class="undone" .style=${`bottom:${foot + 8}px`}>${fresh ? html`<span role="status">${said.text}</span>` : nothing}${canRedo ? html`<button @click=${() => session.redo()}>${words.redo}</button>` : nothing}</div>`;
}

export const undoStyles = css`
  .undo { display: inline-flex; align-items: center; gap: 8px; }
  .undone { position: absolute; right: 14px; z-index: 3; display: flex; align-items: center; gap: 10px; background: var(--sheet); border: 1px solid var(--rule); padding: 3px 3px 3px 12px; font-size: 15.5px; }
  .undone button { border: 2px solid var(--ink); background: var(--sheet); padding: 0 14px; min-height: 34px; font-weight: 600; }
  @media ${COMPACT} { .undone { font-size: 14px; right: 10px; } }
  @media ${NARROW} { .undone { font-size: 15px; left: 10px; right: 10px; } .undone button { min-height: 56px; margin-left: auto; } }
`;
