import { html, nothing, type TemplateResult } from 'lit';
import {
  HAND_PULL,
  isForceLock,
  type Lock,
  lipForce,
  PULLER,
  type Removal,
} from '../../../sim/index.ts';
import { stepsOf } from '../../adjusters.ts';
import { cautions } from '../../cautions.ts';
import { number } from '../../format.ts';
import { caution } from '../../pieces/icons.ts';
import { overlapText } from '../../stage/layers/overlap.ts';
import type { PageView } from '../station.ts';
import { pageButtons } from './controls.ts';
import type { DrumDesk } from './desk.ts';
import { cross, tick } from './marks.ts';
import { cutAt } from './section.ts';
import { howItStands, releases } from './words.ts';
import './section.ts';
import { labelWords, drumOffSide as texts } from '../../../sim/words/en.ts';

const mm = (value: number, digits = 2): string => `${number(value, digits)}\u00a0mm`;

/** One line of "What holds it?": mark, name, what is so; where it holds, the button of its release. */
function row(
  desk: DrumDesk,
  lock: Lock,
  name: string,
  holds: boolean,
  says: string,
): TemplateResult {
  const release = releases[lock];
  return html`<div class="lock ${holds ? 'holds' : ''}" data-lock=${lock} data-holds=${holds}>
    ${holds ? cross : tick}<div><b>${name}</b> <span>${says}</span></div>
    ${holds ? html`<button class="btn" @click=${() => desk.release(lock)} aria-label="${release.name}: ${release.button}">${release.button}</button>` : nothing}
  </div>`;
}

/** What slackening the cable does for the overlap. */
function leverSays(r: Removal, off: number): string {
  if (r.locks.includes('cable keeps its pull')) return texts.drawnOffItsStopBy;
  if (off === 0) return texts.backOnItsStop;
  const by = r.fit.greatest - r.leverHome;
  if (r.leverHome <= 0 && r.fit.greatest > 0)
    return texts.offItsStopSlackClears(mm(off, 0), mm(-r.leverHome));
  return texts.offItsStopSlackGives(mm(off, 0), mm(by));
}

function locks(desk: DrumDesk): TemplateResult {
  const { now: r, held, session } = desk;
  const { greatest, height } = r.fit;
  const has = (lock: Lock) => r.locks.includes(lock);
  const caught = height > 0 && greatest > 0;
  const lipHolds = caught && (has('lip') || has('adjuster too far out'));
  const lip =
    height === 0
      ? texts.noneYetTheDrumIs
      : caught
        ? texts.overlapsByUpToMm(
            overlapText(greatest),
            r.locks.some(isForceLock) ? texts.pushedOutByWhatIs : '',
          )
        : texts.passesWithInHand(mm(-greatest));
  return html`<section class="blk locks ${r.locks.length + (held.aside !== 0 ? 1 : 0) > 2 ? 'many' : ''}" aria-label=${texts.whatHoldsIt}>
    <div class="ask">${texts.whatHoldsIt}</div>
    ${r.locks.filter(isForceLock).map((lock) => row(desk, lock, releases[lock].name, true, texts.holdsTheDrumNoTooth))}
    ${row(desk, has('adjuster too far out') ? 'adjuster too far out' : 'lip', texts.lipOnTheDrum, lipHolds, lip)}
    ${
      r.tooFar
        ? row(
            desk,
            'adjuster too far out',
            labelWords.adjuster,
            !lipHolds && has('adjuster too far out'),
            texts.furtherOutThanItClicks,
          )
        : nothing
    }
    ${row(desk, 'lever off its stop', texts.parkingLever, session.state.leverOffStop > 0, leverSays(r, session.state.leverOffStop))}
    ${
      held.aside === 0
        ? nothing
        : row(
            desk,
            'shoes not centred',
            labelWords.shoes,
            true,
            texts.standToTheCentred(
              mm(Math.abs(held.aside)),
              held.aside > 0 ? texts.front : texts.rear,
              r.centred > 0 ? texts.still(mm(r.centred)) : texts.itClearsBy(mm(-r.centred)),
            ),
          )
    }
    ${row(desk, 'rust at the hub', texts.hubFit, held.hubRust, held.hubRust ? texts.rustedOnNoSlideNo : texts.freeNoRustRing)}
    ${row(desk, 'linings rusted on', texts.liningToDrum, held.liningsRusted, held.liningsRusted ? texts.rustedOnAboutNM(number(r.signs.forward / 1000, 0)) : texts.notStuck)}
  </section>`;
}

function adjuster(desk: DrumDesk): TemplateResult {
  const { brake, state } = desk.session;
  const { need, back } = desk;
  const steps = stepsOf(brake);
  const from = state.tooth + back;
  const cells = need !== null && need > 0 && need <= 20 ? need : 0;
  return html`<section class="blk teeth" aria-label=${texts.backOffTheAdjuster}>
    <div class="lab" id="backoff">${steps.task}</div>
    <div class="step" role="group" aria-labelledby="backoff">
      <button class="btn" aria-label=${steps.on} ?disabled=${state.tooth >= brake.adjuster.teeth} @click=${() => desk.backOff(-steps.press)}>−</button>
      <div class="count"><strong data-back>${steps.amount(from, back)}</strong>${need === null ? texts.evenAllOfItIs : need <= 0 ? texts.noneNeeded : ` ${steps.of(from, need)}`}</div>
      <button class="btn p" aria-label=${steps.back} ?disabled=${state.tooth <= 0} @click=${() => desk.backOff(steps.press)}>+</button>
    </div>
    ${cells ? html`<div class="bars" aria-hidden="true">${Array.from({ length: cells }, (_, i) => html`<i class=${i < back ? 'on' : ''}></i>`)}</div>` : nothing}
    <div class="two row facts">
      <div><b>${steps.now}</b><div><strong data-tooth>${steps.at(state.tooth)}</strong> ${steps.after}</div></div>
      <div><b>${texts.drumComesOffAt}</b><div><strong data-need>${need === null ? '–' : steps.at(from - need)}</strong> ${steps.after}</div></div>
    </div>
  </section>`;
}

/** Where a puller's force goes while the lip holds. */
export function forcePath(desk: DrumDesk): TemplateResult | typeof nothing {
  const r = desk.now;
  if (r.signs.slides !== 'a little') return nothing;
  const f = lipForce(desk.session.brake, r.fit, PULLER);
  const kn = (n: number) => `${number(n / 1000, 1)}\u00a0kN`;
  if (f.givesAt < 2 * HAND_PULL) {
    return html`<div class="force" data-force><b>${texts.pullHarder}</b> ${texts.soLittleIsCaughtThat}</div>`;
  }
  const gives =
    f.givesFirst === 'lining edge' ? texts.theLiningsEdgeCrumbles : texts.aHoldDownPinStretches;
  return html`<div class="force" data-force><b>${texts.pullHarder}</b> ${texts.aPullersGoesThroughLip(kn(PULLER), kn(f.onShoe), number(f.pinStress, 0), number(f.edgePressure, 0), kn(f.givesAt), gives)}</div>`;
}

/** Rows that tell most: as it stands, and the last two before it clears. */
export function teethTable(desk: DrumDesk): TemplateResult {
  const { rows } = desk.backOffs;
  const { brake, state } = desk.session;
  const steps = stepsOf(brake);
  const from = state.tooth + Math.max(0, desk.back);
  const n = rows.length;
  const now = Math.max(0, desk.back);
  const shown = [...new Set([0, now, n - 2, n - 1])]
    .filter((i) => i >= 0 && i < n)
    .sort((x, y) => x - y);
  const value = (v: number) =>
    html`<td class=${v > 0.0005 ? 'bad' : 'good'}>${overlapText(v)}</td>`;
  return html`<table class="rows"><thead><tr><th scope="col">${steps.head}</th><th scope="col">${texts.toe}</th><th scope="col">${texts.centre}</th><th scope="col">${texts.heel}</th></tr></thead>
    <tbody>${shown.map((i) => {
      const r = rows[i];
      if (!r) return nothing;
      return html`<tr class=${i === now ? 'now' : ''}><th scope="row">${steps.amount(from, r.back)}${i === now ? html`<small>${texts.now}</small>` : nothing}</th>${value(r.toe)}${value(r.centre)}${value(r.heel)}</tr>`;
    })}</tbody></table>`;
}

const roleWord = 'leading';

/** Section B–B with its caption: on the stage, or as a strip under it on the phone. */
export function sectionCard(desk: DrumDesk, narrow: boolean): TemplateResult {
  const { now: r, session } = desk;
  const { word, mm: over } = cutAt(r.fit);
  const section = html`<takeup-section class="drawn" .session=${session} .narrow=${narrow} .rev=${[session.state, desk.held, desk.tried, session.theme]}></takeup-section>`;
  const tried = desk.found;
  if (narrow) {
    return html`<section class="blk strip-bb" aria-label=${texts.sectionBB}>${section}
      <div>${
        tried
          ? html`<p>${tried}</p>`
          : over > 0.0005 && r.fit.height > 0
            ? html`<p>${texts.holdsTheByMm(html`<b>${texts.lip}</b>`, word, html`<strong class="bad">${overlapText(over)}</strong>`)}</p>`
            : html`<p><b>${texts.lip}</b> ${r.fit.height > 0 ? html`${texts.clearByMm(html`<strong>${number(-r.fit.greatest, 2)}</strong>`)}` : texts.none}</p>`
      }<small>${texts.sectionBBSteps10}</small></div></section>`;
  }
  const under =
    r.fit.height === 0
      ? texts.anUnwornDrumHasNo
      : over > 0.0005
        ? texts.theLipMeetsTheEdge(word === 'heel' ? texts.theHeelIsLastTo : '')
        : texts.theLiningPassesTheLip;
  return html`<div class="bb"><div class="cap">${texts.atTheOfTheLining(html`<b>B–B</b>`, word, roleWord)}</div>${section}<p>${under}</p></div>`;
}

/** A new drum has nothing that holds it: a worn one to try is a tap away. */
const tryWorn = (desk: DrumDesk): TemplateResult | typeof nothing =>
  desk.canTryWorn
    ? html`<section class="tryworn"><button class="btn" data-try-worn @click=${() => desk.tryWorn()}>${texts.tryAWornDrum}</button></section>`
    : nothing;

export function brakeSide({ size }: PageView, desk: DrumDesk): TemplateResult {
  const r = desk.now;
  const narrow = size === 'narrow';
  return html`${narrow ? sectionCard(desk, true) : nothing}
    <section class="blk h onbrake"><h1>${texts.drumOff}</h1><p data-found>${desk.found || howItStands(r)}</p>${narrow ? nothing : tryWorn(desk)}</section>
    ${narrow ? tryWorn(desk) : nothing}${locks(desk)}${adjuster(desk)}
    ${narrow ? html`<section class="blk pages"><div class="row three">${pageButtons(desk)}</div></section>` : nothing}
    <section class="note">${caution}<div>${desk.off ? `${cautions.piston} ${cautions.springs}` : cautions.drumOff}</div></section>
    ${narrow ? html`<section class="blk more">${teethTable(desk)}${forcePath(desk)}</section>` : nothing}
    <p class="foot">${cautions.standing}</p>`;
}
