import { css, html, type TemplateResult } from 'lit';
import { otherFile } from '../record/file-kind.ts';
import type { Home } from '../record/home.ts';
import { fromText, toText } from '../record/json.ts';
import { linkOf, MOST_LINK, sendable } from '../record/link.ts';
import type { Session } from '../session.ts';

/** What stands on the bench, to be sent: as a link, or as a file where it is too much for one. */

/** Largest file that is read, bytes. */
const MOST_FILE = 4 * 1024 * 1024;

async function copyLink(session: Session): Promise<void> {
  const link = await linkOf(session.moment);
  if (link.length > MOST_LINK) {
    session.say('Too much for a link: save it as a file.');
    return;
  }
  try {
    await navigator.clipboard.writeText(`${location.origin}${location.pathname}${link}`);
    session.say('Link copied.');
  } catch {
    session.say('The browser does not let the page copy: take the address from its own bar.');
  }
}

function save(session: Session): void {
  const blob = new Blob([`${toText(sendable(session.moment))}\n`], { type: 'application/json' });
  const url = URL.createObjectURL(blob);
  const a = document.createElement('a');
  a.href = url;
  a.download = `takeup-${session.brake.name}-${session.station}.json`;
  a.click();
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
}

async function open(session: Session, home: Home, input: HTMLInputElement): Promise<void> {
  const file = input.files?.[0];
  if (!file) return;
  input.value = '';
  if (file.size > MOST_FILE) {
    home.tell(`${file.name} was not opened: found ${file.size} bytes; allowed: ${MOST_FILE}.`);
    return;
  }
  const text = await file.text();
  const other = otherFile(text, 'moment');
  if (other) {
    home.tell(`${file.name} was not opened; nothing else has changed. ${other}`);
    return;
  }
  const read = fromText(text);
  if (read.ok) {
    session.put({ ...read.moment, shelf: session.moment.shelf }, `${file.name} opened`);
    return;
  }
  const [w] = read.wrong;
  home.tell(
    `${file.name} was not opened; nothing else has changed. ${w?.path || 'All of it'}: found ${w?.found}; allowed: ${w?.allowed}.`,
  );
}

/** @param close closes the sheet: what comes of it stands on the stage behind */
export function momentFile(session: Session, home: Home, close: () => void): TemplateResult {
  const opens = async (e: Event): Promise<void> => {
    await open(session, home, e.target as HTMLInputElement);
    close();
  };
  const copies = async (): Promise<void> => {
    await copyLink(session);
    close();
  };
  return html`<section><div class="lab" id="moment">This moment of the bench</div>
      <div class="acts" role="group" aria-labelledby="moment">
        <button @click=${copies}>Copy its link</button>
        <button @click=${() => save(session)}>Save as a file</button>
        <label class="file">Open a file<input type="file" accept=".json,application/json" aria-label="Open a moment’s file" @change=${opens} /></label>
      </div>
      <div class="acts">
        <button ?disabled=${!session.canUndo} @click=${() => session.undo()}>Undo${session.canUndo ? `: ${session.lastDone}` : ''}</button>
        <button ?disabled=${!session.canRedo} @click=${() => session.redo()}>Redo</button>
      </div></section>`;
}

export const momentStyles = css`
  .acts { display: flex; flex-wrap: wrap; gap: 8px; margin-top: 6px; }
  .acts > * { flex: 1 1 auto; }
  .file { position: relative; display: grid; place-items: center; min-height: 44px; border: 2px solid var(--ink); padding: 0 14px; font-weight: 600; cursor: pointer; overflow: hidden; }
  .file input { position: absolute; inset: 0; opacity: 0; cursor: pointer; }
  .file:focus-within { outline: 4px solid var(--trail); outline-offset: 2px; }
`;
