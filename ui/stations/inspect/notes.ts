import { css, html, nothing, type TemplateResult } from 'lit';
import { inspectNotes as words } from '../../../sim/words/en.ts';
import { COMPACT, NARROW } from '../../pieces/page-sizes.ts';
import type { PastDesk } from './past.ts';

/**
 * A photo beside a line of the sheet. It stays on this device: drawn anew (so no place or camera data goes
 * along) and kept in this browser's own store; in no link, file, report or print.
 */
export const noteStyles = css`
  .note-photo { display: flex; flex-wrap: wrap; gap: 8px 12px; align-items: center; font-size: 14px; }
  .note-photo canvas { display: block; max-width: 100%; height: 38px; border: 1px solid var(--ink); }
  .note-photo .btn { border: 2px solid var(--ink); background: var(--sheet); color: inherit; font: inherit; font-weight: 620; min-height: 38px; padding: 0 10px; }
  .note-photo .file { position: relative; display: inline-grid; place-items: center; cursor: pointer; }
  .note-photo .file input { position: absolute; inset: 0; width: 100%; height: 100%; min-height: 0; opacity: 0; cursor: pointer; }
  .note-photo .btn:focus-visible, .note-photo .file:focus-within { outline: 4px solid var(--trail); outline-offset: 1px; }
  .note-photo small { font-size: 13px; color: var(--ink2); }
  @media ${COMPACT} {
    .note-photo { gap: 4px 8px; }
    .note-photo canvas { height: 32px; }
    .note-photo .btn { min-height: 32px; font-size: 13.5px; }
  }
  @media ${NARROW} {
    .note-photo canvas { height: auto; width: 100%; max-height: 220px; object-fit: contain; }
    .note-photo .btn { min-height: 60px; font-size: 16.5px; }
    .note-photo small { font-size: 14.5px; text-align: left; min-height: 0; }
  }
`;

export function photoNote(desk: PastDesk): TemplateResult {
  const picture = desk.notePicture;
  const take = async (e: Event): Promise<void> => {
    const input = e.target as HTMLInputElement;
    const [file] = input.files ?? [];
    if (file) await desk.takeNote(file);
    input.value = '';
  };
  return html`<div class="note-photo" data-note>${picture ? html`${picture}<button class="btn" @click=${() => desk.dropNote()}>${words.takeThePhotoAway}</button>` : nothing}<label class="btn file">${picture ? words.anotherPhoto : words.photoNote}<input type="file" accept="image/*" aria-label=${picture ? words.anotherPhoto : words.photoNote} @change=${take} /></label><small>${words.staysOnThisDevice}</small></div>`;
}
