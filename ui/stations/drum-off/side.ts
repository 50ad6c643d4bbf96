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
  if (r.locks.includes('cable keeps its pull')) return 'drawn off its stop by the kept pull';
  if (off === 0) return 'back on its stop';
  const by = r.fit.greatest - r.leverHome;
  if (r.leverHome <= 0 && r.fit.greatest > 0)
    return `${mm(off, 0)} off its stop; slack clears it by ${mm(-r.leverHome)}`;
  return `${mm(off, 0)} off its stop; slack gives ${mm(by)}`;
}

function locks(desk: DrumDesk): TemplateResult {
  const { now: r, held, session } = desk;
  const { greatest, height } = r.fit;
  const has = (lock: Lock) => r.locks.includes(lock);
  const caught = height > 0 && greatest > 0;
  const lipHolds = caught && (has('lip') || has('adjuster too far out'));
  const lip =
    height === 0
      ? 'none yet: the drum is not worn'
      : caught
        ? `overlaps by up to ${overlapText(greatest)}\u00a0mm${r.locks.some(isForceLock) ? ', pushed out by what is left' : ''}`
        : `passes with ${mm(-greatest)} in hand`;
  return html`<section class="blk locks ${r.locks.length + (held.aside !== 0 ? 1 : 0) > 2 ? 'many' : ''}" aria-label="What holds it?">
    <div class="ask">What holds it?</div>
    ${r.locks.filter(isForceLock).map((lock) => row(desk, lock, releases[lock].name, true, 'holds the drum; no tooth frees it'))}
    ${row(desk, has('adjuster too far out') ? 'adjuster too far out' : 'lip', 'Lip on the drum', lipHolds, lip)}
    ${
      r.tooFar
        ? row(
            desk,
            'adjuster too far out',
            'Adjuster',
            !lipHolds && has('adjuster too far out'),
            'further out than it clicks by itself',
          )
        : nothing
    }
    ${row(desk, 'lever off its stop', 'Parking lever', session.state.leverOffStop > 0, leverSays(r, session.state.leverOffStop))}
    ${
      held.aside === 0
        ? nothing
        : row(
            desk,
            'shoes not centred',
            'Shoes',
            true,
            `stand ${mm(Math.abs(held.aside))} to the ${held.aside > 0 ? 'front' : 'rear'}; centred, ${r.centred > 0 ? `still ${mm(r.centred)}` : `it clears by ${mm(-r.centred)}`}`,
          )
    }
    ${row(desk, 'rust at the hub', 'Hub fit', held.hubRust, held.hubRust ? 'rusted on: no slide, no rocking' : 'free, no rust ring')}
    ${row(desk, 'linings rusted on', 'Lining to drum', held.liningsRusted, held.liningsRusted ? `rusted on: about ${number(r.signs.forward / 1000, 0)}\u00a0N·m to break` : 'not stuck')}
  </section>`;
}

function adjuster(desk: DrumDesk): TemplateResult {
  const { brake, state } = desk.session;
  const { need, back } = desk;
  const steps = stepsOf(brake);
  const from = state.tooth + back;
  const cells = need !== null && need > 0 && need <= 20 ? need : 0;
  return html`<section class="blk teeth" aria-label="Back off the adjuster">
    <div class="lab" id="backoff">${steps.task}</div>
    <div class="step" role="group" aria-labelledby="backoff">
      <button class="btn" aria-label=${steps.on} ?disabled=${state.tooth >= brake.adjuster.teeth} @click=${() => desk.backOff(-steps.press)}>−</button>
      <div class="count"><strong data-back>${steps.amount(from, back)}</strong>${need === null ? '; even all of it is not enough' : need <= 0 ? '; none needed' : ` ${steps.of(from, need)}`}</div>
      <button class="btn p" aria-label=${steps.back} ?disabled=${state.tooth <= 0} @click=${() => desk.backOff(steps.press)}>+</button>
    </div>
    ${cells ? html`<div class="bars" aria-hidden="true">${Array.from({ length: cells }, (_, i) => html`<i class=${i < back ? 'on' : ''}></i>`)}</div>` : nothing}
    <div class="two row facts">
      <div><b>${steps.now}</b><div><strong data-tooth>${steps.at(state.tooth)}</strong> ${steps.after}</div></div>
      <div><b>Drum comes off at</b><div><strong data-need>${need === null ? '–' : steps.at(from - need)}</strong> ${steps.after}</div></div>
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
    return html`<div class="force" data-force><b>Pull harder?</b> So little is caught that the lining’s edge would give way under the hands. Back off the last tooth all the same: crumbs stay in the brake, and the next pull may catch more.</div>`;
  }
  const gives =
    f.givesFirst === 'lining edge' ? 'the lining’s edge crumbles' : 'a hold-down pin stretches';
  return html`<div class="force" data-force><b>Pull harder?</b> A puller’s ${kn(PULLER)} goes through lip, lining and shoe into the hold-down pins: ${kn(f.onShoe)} each, ${number(f.pinStress, 0)}\u00a0MPa in the pin and ${number(f.edgePressure, 0)}\u00a0MPa on the lining’s edge. From somewhere about ${kn(f.givesAt)} ${gives} (strengths: their order only). The hub feels none of it.</div>`;
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
  return html`<table class="rows"><thead><tr><th scope="col">${steps.head}</th><th scope="col">toe</th><th scope="col">centre</th><th scope="col">heel</th></tr></thead>
    <tbody>${shown.map((i) => {
      const r = rows[i];
      if (!r) return nothing;
      return html`<tr class=${i === now ? 'now' : ''}><th scope="row">${steps.amount(from, r.back)}${i === now ? html`<small>now</small>` : nothing}</th>${value(r.toe)}${value(r.centre)}${value(r.heel)}</tr>`;
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
    return html`<section class="blk strip-bb" aria-label="Section B–B">${section}
      <div>${
        tried
          ? html`<p>${tried}</p>`
          : over > 0.0005 && r.fit.height > 0
            ? html`<p><b>Lip</b> holds the ${word} by <strong class="bad">${overlapText(over)}</strong>&nbsp;mm</p>`
            : html`<p><b>Lip</b> ${r.fit.height > 0 ? html`clear by <strong>${(-r.fit.greatest).toFixed(2)}</strong>&nbsp;mm` : 'none'}</p>`
      }<small>section B–B, steps ×10</small></div></section>`;
  }
  const under =
    r.fit.height === 0
      ? 'An unworn drum has no lip.'
      : over > 0.0005
        ? `The lip meets the edge of the lining.${word === 'heel' ? ' The heel is last to clear: it lies nearest its pin, so it moves least.' : ''}`
        : 'The lining passes the lip.';
  return html`<div class="bb"><div class="cap"><b>B–B</b> at the ${word} of the ${roleWord} lining, steps ×10</div>${section}<p>${under}</p></div>`;
}

/** A new drum has nothing that holds it: a worn one to try is a tap away. */
const tryWorn = (desk: DrumDesk): TemplateResult | typeof nothing =>
  desk.canTryWorn
    ? html`<section class="tryworn"><button class="btn" data-try-worn @click=${() => desk.tryWorn()}>Try a worn drum</button></section>`
    : nothing;

export function brakeSide({ size }: PageView, desk: DrumDesk): TemplateResult {
  const r = desk.now;
  const narrow = size === 'narrow';
  return html`${narrow ? sectionCard(desk, true) : nothing}
    <section class="blk h onbrake"><h1>Drum off</h1><p data-found>${desk.found || howItStands(r)}</p>${narrow ? nothing : tryWorn(desk)}</section>
    ${narrow ? tryWorn(desk) : nothing}${locks(desk)}${adjuster(desk)}
    ${narrow ? html`<section class="blk pages"><div class="row three">${pageButtons(desk)}</div></section>` : nothing}
    <section class="note">${caution}<div>${desk.off ? `${cautions.piston} ${cautions.springs}` : cautions.drumOff}</div></section>
    ${narrow ? html`<section class="blk more">${teethTable(desk)}${forcePath(desk)}</section>` : nothing}
    <p class="foot">${cautions.standing}</p>`;
}
