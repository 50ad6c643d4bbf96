import { css, html, type TemplateResult } from 'lit';
import { appMomentFile as words } from '../../sim/words/en.ts';
import { pickInstead } from '../away/save.ts';
import { copyLink, JSON_FILE, openMoment, saveMoment } from '../away/share/moment.ts';
import type { Home } from '../record/home.ts';
import type { Session } from '../session.ts';

/** @param close closes the sheet: what comes of it stands on the stage behind */
export function momentFile(session: Session, home: Home, close: () => void): TemplateResult {
  const takes = async (file: File): Promise<void> => {
    await openMoment(session, home, file);
    close();
  };
  const opens = async (e: Event): Promise<void> => {
    const input = e.target as HTMLInputElement;
    const file = input.files?.[0];
    input.value = '';
    if (file) await takes(file);
  };
  const copies = async (): Promise<void> => {
    session.say(await copyLink(session));
    close();
  };
  const saves = async (): Promise<void> => {
    const said = await saveMoment(session);
    if (said) session.say(said);
  };
  return html`<section><div class="lab" id="moment">${words.thisMomentOfTheBench}</div>
      <div class="acts" role="group" aria-labelledby="moment">
        <button @click=${copies}>${words.copyItsLink}</button>
        <button @click=${saves}>${words.saveAsAFile}</button>
        <label class="file">${words.openAFile}<input type="file" accept=".json,application/json" aria-label=${words.openAMomentsFile} @click=${(e: Event) => pickInstead(e, JSON_FILE, takes)} @change=${opens} /></label>
      </div>
      <div class="acts">
        <button ?disabled=${!session.canUndo} @click=${() => session.undo()}>${words.undo(session.canUndo ? `: ${session.lastDone}` : '')}</button>
        <button ?disabled=${!session.canRedo} @click=${() => session.redo()}>${words.redo}</button>
      </div></section>`;
}

export const momentStyles = css`
  .acts { display: flex; flex-wrap: wrap; gap: 8px; margin-top: 6px; }
  .acts > * { flex: 1 1 auto; }
  .file { position: relative; display: grid; place-items: center; min-height: 44px; border: 2px solid var(--ink); padding: 0 14px; font-weight: 600; cursor: pointer; overflow: hidden; }
  .file input { position: absolute; inset: 0; opacity: 0; cursor: pointer; }
  .file:focus-within { outline: 4px solid var(--trail); outline-offset: 2px; }
`;
