import { html, nothing, type TemplateResult } from 'lit';
import { labelWords, piecesLookBackRows as words } from '../../sim/words/en.ts';
import { number } from '../format.ts';
import type { LookBack } from '../look-back.ts';
import type { Session } from '../session.ts';
import { agoText } from './ago-text.ts';

const lengthText = ({ stretch: { from, to } }: LookBack): string =>
  to - from < 0.1
    ? words.msMarked(number((to - from) * 1000, 1))
    : words.sMarked(number(to - from, 2));

function slider(session: Session, back: LookBack): TemplateResult {
  const { begin, end } = back;
  const long = Math.max(1e-3, end - begin);
  const at = (time: number): string =>
    `${(100 * Math.max(0, Math.min(1, (time - begin) / long))).toFixed(2)}%`;
  const { from, to } = back.stretch;
  const seek = (e: Event): void =>
    session.back.seek(begin + Number((e.target as HTMLInputElement).value));
  const ticks = session.back.reel.crests.filter((t) => t <= end);
  return html`<div class="reel"><i class="marked" .style=${`left:${at(from)};right:${(100 - Number.parseFloat(at(to))).toFixed(2)}%`}></i>
    ${ticks.map((t) => html`<i class="click" title=${words.click} .style=${`left:${at(t)}`}></i>`)}
    <input type="range" aria-label=${words.lookBack} aria-valuetext=${agoText(back)} min="0" max=${long} step=${1 / 240} .value=${String(back.time - begin)} @input=${seek}></div>`;
}

/** The panel of a look back. */
export function lookBackRows(session: Session, back: LookBack): TemplateResult {
  const on = (text: string, act: () => void, more: { pressed?: boolean; off?: boolean } = {}) =>
    html`<button class="btn ${more.pressed ? 'p' : ''}" aria-pressed=${more.pressed === undefined ? nothing : more.pressed} ?disabled=${more.off === true} @click=${act}>${text}</button>`;
  return html`<div class="back" role="group" aria-label=${words.lookBack}>
    <div class="said"><b>${agoText(back)}</b><span>${lengthText(back)}</span></div>
    ${slider(session, back)}
    <div class="row four">
      ${on(words.stepBack, () => session.stepBack())}
      ${back.playing ? on(labelWords.stop, () => session.back.stop()) : on(labelWords.play, () => session.back.play(back.loop))}
      ${on(words.stepOn, () => session.oneStep())}
      ${on(labelWords.loop, () => session.back.play(!back.loop), { pressed: back.loop })}
    </div>
    <div class="row four">
      ${on(words.lastClick, () => session.back.lastClick(), { off: session.back.reel.crests.length === 0 })}
      ${on(words.fromHere, () => session.back.markHere('from'))}
      ${on(words.toHere, () => session.back.markHere('to'))}
      ${on(labelWords.now, () => session.back.end())}
    </div></div>`;
}
