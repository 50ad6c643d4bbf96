import { html, nothing, type TemplateResult } from 'lit';
import { number } from '../format.ts';
import type { LookBack } from '../look-back.ts';
import type { Session } from '../session.ts';
import { agoText } from './ago-text.ts';

const lengthText = ({ stretch: { from, to } }: LookBack): string =>
  to - from < 0.1
    ? `${number((to - from) * 1000, 1)}\u00a0ms marked`
    : `${number(to - from, 2)}\u00a0s marked`;

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
    ${ticks.map((t) => html`<i class="click" title="Click" .style=${`left:${at(t)}`}></i>`)}
    <input type="range" aria-label="Look back" aria-valuetext=${agoText(back)} min="0" max=${long} step=${1 / 240} .value=${String(back.time - begin)} @input=${seek}></div>`;
}

/** The panel of a look back. */
export function lookBackRows(session: Session, back: LookBack): TemplateResult {
  const on = (text: string, act: () => void, more: { pressed?: boolean; off?: boolean } = {}) =>
    html`<button class="btn ${more.pressed ? 'p' : ''}" aria-pressed=${more.pressed === undefined ? nothing : more.pressed} ?disabled=${more.off === true} @click=${act}>${text}</button>`;
  return html`<div class="back" role="group" aria-label="Look back">
    <div class="said"><b>${agoText(back)}</b><span>${lengthText(back)}</span></div>
    ${slider(session, back)}
    <div class="row four">
      ${on('Step back', () => session.stepBack())}
      ${back.playing ? on('Stop', () => session.back.stop()) : on('Play', () => session.back.play(back.loop))}
      ${on('Step on', () => session.oneStep())}
      ${on('Loop', () => session.back.play(!back.loop), { pressed: back.loop })}
    </div>
    <div class="row four">
      ${on('Last click', () => session.back.lastClick(), { off: session.back.reel.crests.length === 0 })}
      ${on('From here', () => session.back.markHere('from'))}
      ${on('To here', () => session.back.markHere('to'))}
      ${on('Now', () => session.back.end())}
    </div></div>`;
}
