import { html, nothing, type TemplateResult } from 'lit';
import type { Excess, HotPress } from '../../sim/index.ts';
import { labelWords, wearHot as words } from '../../sim/words/en.ts';
import { wordsOf } from '../adjusters.ts';
import { cautions } from '../cautions.ts';
import { down, number } from '../format.ts';
import { caution } from '../pieces/icons.ts';
import { hills } from '../record/hot.ts';
import type { PageView } from './station.ts';
import type { WearDesk } from './wear-desk.ts';
import type { HotMoment } from './wear-part.ts';

/** Hot press: down a hill, one press at its foot, a cold morning, and where the travel came from. */

const parts: readonly [keyof Excess, string, 1 | -1][] = [
  ['gap', words.gapOfTheBrakeAs, 1],
  ['linings', words.wearOfTheLinings, 1],
  ['drum', words.wearOfTheDrum, 1],
  ['takenUp', words.takenUpByTheAdjuster, -1],
  ['growth', words.growthOfTheHotDrum, 1],
  ['elasticity', words.giveUnderThePress, 1],
];

const signed = (mm: number): string => `${mm > 0 ? '+' : ''}${number(mm, 2)}`;

/** Where the travel came from, as a sum; what a step needs beside it. */
function sum({ excess }: HotPress): TemplateResult {
  return html`<table class="hotsum"><caption>${words.howFarTheSeatsOf}</caption><tbody>
    ${parts.map(([key, name, sense]) => html`<tr data-part=${key}><th scope="row">${name}</th><td>${signed(sense * excess[key])}</td></tr>`)}
    <tr class="all" data-part="sensed"><th scope="row">${words.beyondTheStrut}</th><td>${number(excess.sensed, 2)}</td></tr>
    <tr data-part="needed"><th scope="row">${words.neededForAStep}</th><td>${number(excess.needed, 2)}</td></tr>
  </tbody></table>`;
}

const good = html`<svg class="sign16" viewBox="0 0 16 16" aria-hidden="true"><path d="M1.5 8.5l4 4.5 9-10.5" fill="none" stroke="var(--good)" stroke-width="3"/></svg>`;
const bad = html`<svg class="sign16" viewBox="0 0 16 16" aria-hidden="true"><path d="M1 1h14v14H1z" fill="var(--bad)"/><path d="M5 5l6 6M5 11l6-6" stroke="var(--sheet)" stroke-width="2"/></svg>`;

function verdict(r: HotPress, d: WearDesk): TemplateResult {
  const drags = r.gapCold <= 0;
  const { brake } = d.session;
  const steps = wordsOf(brake).did(brake.adjuster, r.before.tooth, r.cold.tooth);
  const did = r.held
    ? words.theHotLockHeldIt
    : r.stepped === 0
      ? words.noStep
      : words.andWhatHeatHasLent(steps);
  return html`<p class="hotdid">${words.drumCAtTheFoot(number(r.temperature, 0), did)}</p>
    <p class="hotverdict" data-verdict=${drags ? 'drags' : 'free'}>${drags ? bad : good}<span><strong>${drags ? words.dragsCold : words.freeCold}</strong> ${
      drags
        ? words.theLiningsStandMmInside(number(-r.gapCold, 2))
        : words.clearanceMmItWasBefore(
            number(down(r.gapCold, 2), 2),
            number(r.gapBefore, 2),
            number(r.gapHot, 2),
          )
    }</span></p>`;
}

const moments: readonly [HotMoment, string][] = [
  ['before', labelWords.before],
  ['hot', words.atTheFoot],
  ['cold', words.nextMorning],
];

export function hotPage(_page: PageView, d: WearDesk): TemplateResult {
  const { hot } = d;
  return html`<section class="blk wearset wearpanel" aria-label=${words.hotPress} tabindex="0">
    <div class="lab" id="hill">${words.descentAt40KmH}</div>
    <div class="seg" role="group" aria-labelledby="hill">${hills.map((h, i) => html`<button class=${d.hill === i ? 'on' : ''} aria-pressed=${d.hill === i} @click=${() => d.chooseHill(i)}>${h.name}</button>`)}</div>
    <button class="btn hotgo" ?disabled=${d.busy} @click=${() => d.pressHot()}>${words.driveDownPressAtThe}</button>
    ${
      hot
        ? html`${verdict(hot.result, d)}
      <div class="lab" id="moment">${words.onTheStage}</div>
      <div class="seg" role="group" aria-labelledby="moment">${moments.map(([m, name]) => html`<button class=${hot.moment === m ? 'on' : ''} aria-pressed=${hot.moment === m} @click=${() => d.showHot(m)}>${name}</button>`)}</div>
      ${sum(hot.result)}`
        : nothing
    }
    <p class="hotwarns">${caution}<span>${cautions.hot}</span></p>
  </section>`;
}
