import { html, nothing, type TemplateResult } from 'lit';
import { piecesTimeLine as words } from '../../sim/words/en.ts';
import type { LookBack } from '../look-back.ts';
import { PACES, paceName } from '../pace.ts';
import { notLoaded } from '../part.ts';
import type { Session } from '../session.ts';

/**
 * The brake's time: how fast it runs, one step on and back, and a look back at the last ten seconds, of which
 * any stretch can be marked and played again, as slowly as one likes.
 */

/** Slower and faster. */
export function paceRow(session: Session): TemplateResult {
  return html`<div class="pace"><div class="lab" id="pace">${words.timeRunsAt}</div>
    <div class="seg" role="group" aria-labelledby="pace">${PACES.map((pace) => html`<button aria-pressed=${session.pace === pace} class=${session.pace === pace ? 'on' : ''} @click=${() => session.goAt(pace)}>${paceName(pace)}</button>`)}</div></div>`;
}

let rows: typeof import('./look-back-rows.ts') | null = null;

/** The panel of a look back: loaded with the first one. */
function lookBackRows(session: Session, back: LookBack): TemplateResult | typeof nothing {
  if (rows) return rows.lookBackRows(session, back);
  import('./look-back-rows.ts').then(
    (loaded) => {
      rows = loaded;
      session.changed();
    },
    () => {
      session.back.end();
      session.say(notLoaded());
    },
  );
  return nothing;
}

/** One step on and back, and the way into the past. */
export function stepRow(session: Session): TemplateResult {
  return html`<div class="row three">
      <button class="btn" @click=${() => session.oneStep()}>${words.oneStep}</button>
      ${
        session.frozen
          ? html`<button class="btn" @click=${() => session.go()}>${words.goOn}</button>`
          : html`<button class="btn" ?disabled=${!session.canStepBack} @click=${() => session.stepBack()}>${words.stepBack}</button>`
      }
      <button class="btn" @click=${() => session.back.begin()}>${words.lookBack}</button>
    </div>`;
}

/** All of it, where a station has the moving brake. */
export function timeRows(session: Session): TemplateResult {
  const back = session.back.look;
  return html`${paceRow(session)}${back ? lookBackRows(session, back) : stepRow(session)}`;
}
