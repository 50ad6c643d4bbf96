import { css, html, nothing, type TemplateResult } from 'lit';
import type { Wheel } from '../../../sim/index.ts';
import { language, inspectPhone as texts } from '../../../sim/words/en.ts';
import { largestBore, outOfRound, wheels } from '../../../sim/workshop/index.ts';
import { cautions } from '../../cautions.ts';
import { down, number } from '../../format.ts';
import { caution } from '../../pieces/icons.ts';
import { marks } from '../../pieces/marks.ts';
import { NARROW } from '../../pieces/page-sizes.ts';
import { whatIfOf } from '../vary/tap.ts';
import { cutSection } from './cut.ts';
import type { InspectDesk } from './desk.ts';
import { type Line, limitWords, lines, type SizeLine } from './lines.ts';
import { LONGEST } from './paper.ts';
import { placeOf, readAt, textAt } from './read.ts';
import { forecastText } from './words.ts';

/** The sheet on the phone: one reading at a time, − and + under the thumb. */

export const phoneStyles = css`
  @media ${NARROW} {
    :host { border-width: 0; font-size: 16px; }
    .one { background: color-mix(in srgb, var(--warn) 22%, var(--sheet)); border-bottom: 2px solid var(--ink); padding: 12px; display: grid; gap: 8px; }
    .one .set { display: grid; grid-template-columns: 72px 1fr 72px; gap: 10px; align-items: start; }
    .one .step { height: 62px; border: 2px solid var(--ink); font-size: 30px; font-weight: 700; }
    .one .big { width: 100%; height: 62px; border: 2px solid var(--ink); text-align: center; font-size: 36px; font-weight: 760; }
    .one .big[aria-invalid='true'] { border-color: var(--bad); }
    .one select.big { font-size: 22px; padding: 0 8px; }
    .one small { font-size: 14.5px; color: var(--ink2); text-align: center; min-height: 18px; display: block; }
    .one .res { display: flex; align-items: center; gap: 10px; font-size: 20px; font-weight: 700; min-height: 30px; flex-wrap: wrap; }
    .one .res span { font-weight: 500; font-size: 16px; }
    .one .res .mark-v { width: 28px; height: 28px; }
    .one .bad { color: var(--bad); }
    .one .whatif { margin: 0; min-height: 56px; font-size: 16px; text-align: left; justify-self: start; }
    .seg { border: 2px solid var(--ink); display: grid; grid-auto-flow: column; grid-auto-columns: 1fr; }
    .seg button { min-height: 56px; font-size: 17px; }
    .list { margin: 0; padding: 0; list-style: none; }
    .list button { display: grid; grid-template-columns: 34px 1fr auto auto; gap: 8px; align-items: center; width: 100%; min-height: 62px; border: 0; border-bottom: 1px solid var(--rule); padding: 4px 12px; text-align: left; font-size: 16px; }
    .list .now { background: color-mix(in srgb, var(--warn) 22%, var(--sheet)); }
    .list i { display: grid; place-items: center; width: 30px; height: 30px; border: 2px solid var(--ink); border-radius: 50%; font-style: normal; font-weight: 700; font-size: 15px; }
    .list .now i { background: var(--ink); color: var(--sheet); }
    .list b { font-weight: 720; font-size: 18px; }
    .list .r { display: flex; align-items: center; gap: 6px; font-size: 14.5px; min-width: 104px; max-width: 128px; }
    .list .mark-v { width: 20px; height: 20px; flex: none; }
    .axle, .heads { grid-template-columns: 1fr; }
    .axle input, .heads input, .tools select, .lim input { min-height: 56px; font-size: 18px; }
    .axle input { width: 150px; }
    .axle label, .heads label { font-size: 16px; }
    .axle .wide { font-size: 14.5px; }
    [data-to-own] { min-height: 56px; }
    .lims { display: grid; gap: 8px; padding: 12px; border-top: 2px solid var(--ink); }
    .lims label { display: grid; grid-template-columns: 1fr 130px; gap: 4px 10px; align-items: center; font-size: 16px; }
    .lims input, .lims select { height: 56px; border: 1px solid var(--ink2); padding: 0 8px; font-size: 18px; font-weight: 650; min-width: 0; }
    .lims small { grid-column: 1 / 3; font-size: 14.5px; color: var(--ink2); }
    .verdict { max-height: none; }
    .verdict h2 { font-size: 22px; }
    .verdict p { font-size: 15.5px; }
    .said { max-height: none; font-size: 15.5px; }
    .acts { padding: 12px; gap: 10px; display: grid; grid-template-columns: 1fr 1fr; }
    .acts .btn, .acts .seg button { min-height: 58px; font-size: 16.5px; }
    .acts .btn.p, .acts .seg, .acts .ask { grid-column: 1 / 3; }
    .acts .ask { flex-wrap: wrap; }
    /* Over the way on, which is a button high with its padding. */
    .note { position: sticky; bottom: 84px; z-index: 2; background: var(--sheet); padding: 6px 12px; font-size: 14px; line-height: 1.25; border-top: 2px solid var(--ink); }
    .next { position: sticky; bottom: 0; z-index: 2; display: grid; grid-template-columns: 132px 1fr; gap: 10px; padding: 12px; background: var(--sheet); border-top: 2px solid var(--ink); }
    .next .btn { min-height: 58px; font-size: 17px; }
    .next .btn.p { min-width: 0; }
  }
  /* A phone on its side: what sticks would cover all the rest. */
  @media (max-height: 520px) { .note { position: static; } }
`;

const value = (desk: InspectDesk, line: Line, wheel: Wheel): string => {
  const { read } = desk.judged;
  if (line.kind === 'worked') {
    const found = read.found[wheel];
    return number(-down(-(line.key === 'largest' ? largestBore(found) : outOfRound(found)), 2), 2);
  }
  const text = textAt(desk.paper, read, line, wheel);
  if (line.kind === 'look') return text === 'good' ? line.good : text === 'bad' ? line.bad : '–';
  return text || '–';
};

/** A step up or down from what was read, or from new where nothing stands yet. */
function step(desk: InspectDesk, line: SizeLine, way: 1 | -1): void {
  const { read } = desk.judged;
  const { wheel } = desk;
  const r = read.sizes[wheel][line.key] ?? null;
  const { brake } = desk.session;
  const fresh = line.key.startsWith('drum')
    ? (read.asNew.drum ?? 2 * brake.drum.radiusNew)
    : line.key === 'tooth' || line.key === 'leverOff' || line.key === 'lip' || line.key === 'score'
      ? 0
      : brake.shoes.front.lining.thicknessNew;
  const now = r?.ok ? r.value + way * line.step : fresh;
  const text = Math.max(0, now).toFixed(line.digits);
  // Written as mm, whatever a plain number means: it was worked out in mm.
  const unit = line.unit && desk.paper.plain === 'in' ? ' mm' : '';
  desk.write(wheel, line.key, text + unit);
}

function one(desk: InspectDesk, note: TemplateResult): TemplateResult {
  const line = desk.open;
  const { wheel } = desk;
  const { read, verdict } = desk.judged;
  const label = placeOf(line, wheel);
  const v = line.verdict ? verdict.wheels[wheel][line.verdict] : null;
  const r = readAt(read, line, wheel);
  const text = textAt(desk.paper, read, line, wheel);
  const limit = line.limit ? read.limits[line.limit] : null;
  const inch = r?.ok && 'unit' in line && line.unit ? texts.inWord(number(r.value / 25.4, 3)) : '';
  const field =
    line.kind === 'worked'
      ? html`<span></span><output class="big" aria-label=${label}>${value(desk, line, wheel)}</output><span></span>`
      : line.kind === 'look'
        ? html`<select class="big" .style=${'grid-column:1 / 4'} aria-label=${label} data-wheel=${wheel} data-key=${line.key} @change=${(e: Event) => desk.write(wheel, line.key, (e.target as HTMLSelectElement).value)}>${(['', 'good', 'bad'] as const).map((o) => html`<option value=${o} ?selected=${(desk.paper.wheels[wheel][line.key] ?? '') === o}>${o === '' ? texts.notLookedAt : o === 'good' ? line.good : line.bad}</option>`)}</select>`
        : line.kind === 'ask'
          ? html`<input class="big" .style=${'grid-column:1 / 4'} type="text" maxlength=${LONGEST} autocomplete="off" aria-label=${label} aria-invalid=${r !== null && !r.ok} data-ask=${line.key} .value=${text} @input=${(e: Event) => desk.writeAsked(line, (e.target as HTMLInputElement).value)} />`
          : html`<button class="step" aria-label=${texts.less(line.step)} @click=${() => step(desk, line, -1)}>−</button>
          <input class="big" type="text" maxlength=${LONGEST} autocomplete="off" aria-label=${label} aria-invalid=${r !== null && !r.ok} data-wheel=${wheel} data-key=${line.key} .value=${desk.paper.wheels[wheel][line.key] ?? ''} @input=${(e: Event) => desk.write(wheel, line.key, (e.target as HTMLInputElement).value)} />
          <button class="step" aria-label=${texts.more(line.step)} @click=${() => step(desk, line, 1)}>+</button>`;
  const told =
    r && !r.ok
      ? html`<small class="bad" role="alert">${texts.foundAllowed(r.found, r.allowed)}</small>`
      : html`<small>${r?.ok ? `${r.echo}${inch ? ` · ${inch}` : ''}` : ''}</small>`;
  return html`<section class="one" aria-label=${texts.reading}>
    <div class="seg" role="group" aria-label=${texts.wheel}>${wheels.map((w) => html`<button class=${wheel === w ? 'on' : ''} aria-pressed=${wheel === w} @click=${() => desk.select(w, desk.line)}>${w === 'left' ? texts.leftWheel : texts.rightWheel}</button>`)}</div>
    <div class="set">${field}</div>${told}
    <div class="res ${v?.level === 'bad' ? 'bad' : ''}">${v?.words ? html`${marks[v.level]}${v.words}` : nothing}${line.limit ? html`<span>${limitWords[line.limit][0]} ${limit === null ? texts.notSet : number(limit, 2)}${read.whose[line.limit] ? `, ${read.whose[line.limit]}` : ''}</span>` : nothing}</div>
    ${whatIfOf(desk.session, line.key, line.name)}${note}
  </section>`;
}

function limitFields(desk: InspectDesk, tools: TemplateResult): TemplateResult {
  const { read } = desk.judged;
  return html`${tools}<div class="lims" role="group" aria-label=${texts.limits}>${(
    ['outOfRound', 'taper', 'score', 'liningMin', 'notches'] as const
  ).map((k) => {
    const [sense, name] = limitWords[k];
    const r = read.limitReads[k];
    const set = read.limits[k];
    return html`<label><span>${name}, ${sense}</span><input type="text" maxlength=${LONGEST} autocomplete="off" data-limit=${k} aria-invalid=${r !== undefined && r !== null && !r.ok} .value=${desk.paper.limits[k] ?? (set === null ? '' : set.toFixed(2))} @input=${(e: Event) => desk.writeLimit(k, (e.target as HTMLInputElement).value)} /><small>${r && !r.ok ? texts.foundAllowed(r.found, r.allowed) : read.whose[k] || texts.noneSet}</small></label>`;
  })}</div>`;
}

export function phonePage(
  desk: InspectDesk,
  parts: {
    readonly acts: TemplateResult;
    readonly said: TemplateResult;
    readonly tools: TemplateResult;
    readonly axle: TemplateResult;
    readonly note: TemplateResult;
  },
): TemplateResult {
  const { verdict } = desk.judged;
  const told = forecastText(desk.forecast);
  const next = lines[desk.line + 1];
  return html`${one(desk, parts.note)}
    <ul class="list">${lines.map((l, i) => {
      const v = l.verdict ? verdict.wheels[desk.wheel][l.verdict] : null;
      return html`<li><button class=${desk.line === i ? 'now' : ''} aria-current=${desk.line === i} data-line=${l.key} @click=${() => {
        desk.select(desk.wheel, i);
        // The field stands at the page's top.
        window.scrollTo({ top: 0 });
      }}><i>${l.number}</i>${('short' in l && l.short) || l.name}<b>${value(desk, l, desk.wheel)}</b><span class="r">${v?.words ? html`${marks[v.level]}${v.words}` : nothing}</span></button></li>`;
    })}</ul>
    <section class="verdict ${verdict.level}" aria-label=${texts.verdictOfTheSheet} data-verdict=${verdict.level}>${marks[verdict.level]}<div><div role="status"><h2>${verdict.title}</h2></div>${verdict.reasons.map((r) => html`<p>${r}</p>`)}${told ? html`<p data-forecast>${told}</p>` : nothing}</div></section>
    ${cutSection(desk)}${parts.said}${parts.axle}${limitFields(desk, parts.tools)}${parts.acts}
    <div class="note">${caution}<span>${cautions.inspect}</span></div>
    <div class="next"><button class="btn" ?disabled=${desk.line === 0} @click=${() => desk.select(desk.wheel, desk.line - 1)}>${texts.back}</button>
      <button class="btn p" @click=${() => desk.select(next ? desk.wheel : desk.wheel === 'left' ? 'right' : 'left', next ? desk.line + 1 : 0)}>${texts.next(next ? language.inside(next.short ?? next.name) : desk.wheel === 'left' ? texts.rightWheel2 : texts.leftWheel2)}</button></div>`;
}
