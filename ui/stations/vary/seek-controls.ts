import { html, type TemplateResult } from 'lit';
import { labelWords, varySeekControls as words } from '../../../sim/words/en.ts';
import type { PageView } from '../station.ts';
import { field, turns } from './controls.ts';
import { varyPress } from './part.ts';
import type { SeekDesk } from './seek-desk.ts';
import { outcome, seekButton } from './seek-side.ts';

/** How the brakes of a question turned round are pressed; starts the search, and stops it. */
export function seekControls({ session }: PageView, seek: SeekDesk): TemplateResult {
  const { desk } = seek;
  const { part } = desk;
  return html`<section class="blk ctl vary-ctl" aria-label=${words.howItIsAsked}>
    <div class="row vary-two">${field(desk, labelWords.pressure, 'bar', part.bar, [0, 200], (x) => session.do(varyPress, x, desk.part.cable))}${field(desk, labelWords.cable, 'N', part.cable, [0, 5000], (x) => session.do(varyPress, desk.part.bar, x))}</div>
    <div class="seg" role="group" aria-label=${words.drum}>${turns.map(([t, name]) => html`<button aria-pressed=${session.turning === t} class=${session.turning === t ? 'on' : ''} @click=${() => session.turn(t)}>${name}</button>`)}</div>
    ${seekButton(seek)}<p class="quiet seek-far" role="status">${outcome(seek)}</p>
  </section>`;
}
