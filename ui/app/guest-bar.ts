import { css, html, nothing, type TemplateResult } from 'lit';
import { KM } from '../../sim/index.ts';
import { appGuestBar as words } from '../../sim/words/en.ts';
import { isCountable } from '../adjusters.ts';
import { number } from '../format.ts';
import { COMPACT, NARROW } from '../pieces/page-sizes.ts';
import { questionOf } from '../questions/kept.ts';
import { brakeOfBench } from '../record/derive.ts';
import { dialsOn } from '../record/dials.ts';
import { backToMine, makeMine } from '../record/guest.ts';
import type { Session } from '../session.ts';
import { doesNotCarry } from '../stations/kind/carry.ts';
import { backToList, closeQuestion } from '../stations/questions/part.ts';

/** What stands on the bench as a guest, for which question, and the way back: over the whole stage. */

/** "Quay van, 23 000 km, tooth 6". */
function yours(session: Session): string {
  const { guest, shelf } = session.moment;
  if (!guest) return '';
  const { bench } = guest.mine;
  const brake = brakeOfBench(bench, shelf);
  const { distance, tooth } = bench.state;
  const step = isCountable(brake) ? words.tooth(tooth) : '';
  return `${brake.title}, ${number(distance / KM, 0)} km${step}`;
}

export function guestBar(session: Session): TemplateResult | typeof nothing {
  const { guest, parts, station } = session.moment;
  const { asked: id } = parts.questions;
  const asked = station === 'questions' ? undefined : questionOf(id);
  if (!guest && !asked) return nothing;
  // Said beside the dials: a bar that came while one of them is dragged would move the brake from under the pointer.
  if (!asked && guest?.call.kind === 'dialled' && dialsOn(session.moment)) return nothing;
  const mine = html`<button class="btn" @click=${() => session.do(makeMine)}>${words.makeItMine}</button>
    <button class="btn p" @click=${() => session.do(backToMine)}>${words.backToMine}</button>`;
  const carries = doesNotCarry(parts.kind);
  const waits = guest
    ? html`<small>${words.guestOnTheBenchYours(html`<b>${session.guest}</b>`, yours(session))}</small>`
    : nothing;
  if (asked) {
    return html`<section class="asked ${guest ? 'guest' : ''}" aria-label=${words.yourQuestion}><div tabindex="0"><b>${asked.ask}</b> ${asked.steps} <span>${asked.answer}</span>${carries ? html`<b class="carries">${carries}</b>` : nothing}${waits}</div>
      <button class="btn" @click=${() => session.do(backToList)}>${words.questions}</button>${guest ? mine : html`<button class="btn" @click=${() => session.do(closeQuestion)}>${words.close}</button>`}</section>`;
  }
  return html`<section class="asked guest" aria-label=${words.guestOnTheBench}><div tabindex="0"><b>${words.guestOnTheBench2} ${session.guest}</b><small>${words.yoursWaitsAsYouLeft(yours(session))}</small></div>${mine}</section>`;
}

export const guestStyles = css`
  .asked.guest { border-left: 0; padding-left: 40px; position: relative; }
  .asked.guest::before { content: ''; position: absolute; left: 0; top: 0; bottom: 0; width: 22px; background: repeating-linear-gradient(135deg, var(--warn) 0 9px, var(--warn-ink) 9px 18px); }
  .asked.guest small { display: block; font-size: 15px; color: var(--ink2); }
  @media ${COMPACT} {
    .asked div { max-height: 5.4em; overflow-y: auto; }
    .asked.guest { padding-left: 34px; }
    .asked.guest small { font-size: 14px; }
  }
  @media ${NARROW} {
    /* Words first, in a few lines that scroll; then what can be done, side by side under the thumb. */
    .asked { flex-wrap: wrap; gap: 6px; padding: 6px 10px 8px 12px; }
    .asked.guest { padding-left: 32px; }
    .asked div { flex: 1 0 100%; max-height: 5em; overflow-y: auto; }
    .asked .btn { flex: 1 1 auto; border: 2px solid var(--ink); align-self: auto; }
    .asked.guest small { font-size: 15px; }
  }
`;
