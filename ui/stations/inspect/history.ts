import { css, html, nothing, svg, type TemplateResult } from 'lit';
import { labelWords, inspectHistory as words } from '../../../sim/words/en.ts';
import type { History, Trend } from '../../../sim/workshop/index.ts';
import { number } from '../../format.ts';
import { marks } from '../../pieces/marks.ts';
import { NARROW } from '../../pieces/page-sizes.ts';
import { dateOf, type KeptSheet } from './book.ts';
import type { PastDesk } from './past.ts';

/** Kept sheets of a vehicle, how fast it wears by two of them, and when to look again. */

export const historyStyles = css`
  .history { padding: 10px 14px 12px; border-top: 2px solid var(--ink); }
  .history p { margin: 4px 0; }
  .history ul { list-style: none; margin: 6px 0; padding: 0; }
  .history li { display: flex; gap: 8px; align-items: center; flex-wrap: wrap; padding: 4px 0 4px 8px; border-left: 5px solid transparent; }
  .history .on { border-left-color: var(--ink); }
  .history li span { flex: 1; min-width: 150px; }
  .history li small, .history .small { display: block; font-size: 14px; color: var(--ink2); }
  .history .row { display: flex; flex-wrap: wrap; gap: 8px; align-items: stretch; margin-top: 8px; }
  .history svg.wear { display: block; width: 100%; max-width: 440px; height: auto; }
  .history .file { position: relative; display: inline-grid; place-items: center; cursor: pointer; font-weight: 620; }
  .history .file input { position: absolute; inset: 0; width: 100%; height: 100%; min-height: 0; opacity: 0; cursor: pointer; }
  .history .file:focus-within { outline: 4px solid var(--trail); outline-offset: 1px; }
  .history .bad { color: var(--bad); font-weight: 600; }
  .history .mark-v { width: 18px; height: 18px; vertical-align: -3px; }
  @media ${NARROW} {
    .history { padding: 12px; font-size: 16px; }
    .history li small, .history .small { font-size: 14.5px; }
    .history .btn { min-height: 60px; font-size: 16.5px; }
  }
`;

/** "17 July 2027", whatever the reader's language is: the page speaks one. */
const written = (date: string): string =>
  new Date(`${date}T00:00:00Z`).toLocaleDateString('en-GB', {
    day: 'numeric',
    month: 'long',
    year: 'numeric',
    timeZone: 'UTC',
  });
const writtenDay = (day: number): string => written(dateOf(day));
/** Distances to 100 km: a straight line through two readings is an order, no promise. */
const km = (value: number): string => number(Math.round(value / 100) * 100, 0);
const odometer = (value: number): string => number(value, 0);

const nameOf = (t: Trend): string =>
  `${t.line === 'drum' ? labelWords.drum : t.line === 'leading' ? words.leadingLining : words.trailingLining}, ${t.wheel}`;

const WIDTH = 420;
const HEIGHT = 190;
/** Where the chart's field lies: left, top, right, bottom. */
const FIELD = [44, 14, 404, 150] as const;

/** Thickness over the odometer: both readings with what they may be off by, and the fan to the limit. */
function chart(before: KeptSheet, after: KeptSheet, t: Trend): TemplateResult | typeof nothing {
  if (!t.left || t.limit === null) return nothing;
  const far = Number.isFinite(t.left.most) ? t.left.most : 2 * t.left.as;
  const [x0, y0, x1, y1] = FIELD;
  const ends = [before.km, after.km + Math.max(far, (after.km - before.km) / 2)] as const;
  const grows = t.line === 'drum';
  const room = Math.abs(t.before - t.limit) || 1;
  const [low, high] = grows
    ? [t.before - 0.1 * room, t.limit + 0.15 * room]
    : [t.limit - 0.15 * room, t.before + 0.1 * room];
  const x = (at: number): number => x0 + ((x1 - x0) * (at - ends[0])) / (ends[1] - ends[0]);
  const y = (v: number): number => y1 - ((y1 - y0) * (v - low)) / (high - low);
  const reading = (at: number, v: number, up: boolean) =>
    svg`<path d="M${x(at)} ${y(v - t.error)}V${y(v + t.error)}" stroke="var(--ink)" stroke-width="1.6" /><rect x=${x(at) - 4} y=${y(v) - 4} width="8" height="8" fill="var(--lead)" /><text x=${x(at) + 8} y=${y(v) + (up ? -8 : 18)} font-weight="700">${v.toFixed(2)}</text>`;
  const end = y(t.limit);
  return html`<svg class="wear" viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label=${words.mmAtKmMmAt(nameOf(t), t.before, before.km, t.after, after.km, t.limit)} font-size="14" fill="var(--ink)">
    <path d=${`M${x(after.km)} ${y(t.after)}L${x(after.km + t.left.least)} ${end}H${x(after.km + far)}Z`} fill="var(--faint)" />
    <path d=${`M${x0} ${y0}V${y1}H${x1}`} fill="none" stroke="var(--ink)" stroke-width="1.6" />
    <path d=${`M${x0} ${end}H${x1}`} stroke="var(--ink)" stroke-width="1.6" stroke-dasharray="16 4" />
    <text x=${x1} y=${end + (grows ? -6 : -6)} text-anchor="end">${grows ? words.max : 'min'} ${number(t.limit, 2)}</text>
    <path d=${`M${x(before.km)} ${y(t.before)}L${x(after.km)} ${y(t.after)}`} stroke="var(--lead)" stroke-width="2.4" />
    <path d=${`M${x(after.km)} ${y(t.after)}L${x(after.km + t.left.as)} ${end}`} stroke="var(--lead)" stroke-width="2" stroke-dasharray="7 4" />
    ${reading(before.km, t.before, true)}${reading(after.km, t.after, !grows)}
    <text x=${x0} y=${y1 + 18}>${odometer(before.km)}</text><text x=${x(after.km)} y=${y1 + 34} text-anchor="middle">${odometer(after.km)}</text><text x=${x1} y=${y1 + 18} text-anchor="end">${odometer(Math.round(ends[1] / 100) * 100)} km</text>
    <text x=${x0 - 6} y=${y0 + 8} text-anchor="end">mm</text></svg>`;
}

function trendText(t: Trend): string {
  const each = words.each(number(Math.abs(t.rate) * 1000, 3));
  if (t.state === 'renewed between') return words.newPartsBetweenNoRate;
  if (t.state === 'too little to tell') return words.noMoreLostThanThe;
  return each;
}

/** What two sheets say, in sentences. */
function told(before: KeptSheet, after: KeptSheet, h: History, whose: string): TemplateResult {
  const { first, next, reached } = h;
  if (!first?.left) {
    return html`<p data-trend>${h.trends.length === 0 ? words.nothingWasMeasuredOnBoth : h.trends.map((t) => `${nameOf(t)}: ${trendText(t)}`).join('. ')}${h.trends.some((t) => t.limit === null) ? words.whereNoLimitIsSet : ''}.</p>`;
  }
  const { least, as, most } = first.left;
  const to = Number.isFinite(most)
    ? words.toKm(km(least), km(most))
    : words.kmOrMuchMore(km(least));
  return html`${chart(before, after, first)}
    <p data-trend><b>${words.mmIn1000Km(nameOf(first), number(first.rate * 1000, 3))}</b> ${words.toTheLimitOfAbout(number(first.limit ?? 0, 2), whose ? ` (${whose})` : '', km(as), html`<b>${to}</b>`, number(first.error, 2))}</p>
    ${reached ? html`<p data-reached>${words.atThePaceSoFar(html`<b>${writtenDay(reached.least)}</b>`, html`<b>${Number.isFinite(reached.most) ? writtenDay(reached.most) : words.aDayThatCannotBe}</b>`)}</p>` : nothing}
    ${next ? html`<p data-next>${words.halfOfTheShorterWay(html`<b>${words.nextLookAtKm(next.day === null ? '' : words.by(writtenDay(next.day)), odometer(Math.floor(next.km / 100) * 100))}</b>`)}</p>` : nothing}
    <ul>${h.trends.filter((t) => t !== first).map((t) => html`<li><span>${nameOf(t)}: ${trendText(t)}${t.left && t.state === 'worn' ? words.kmOrMoreLeft(km(t.left.least)) : ''}</span></li>`)}</ul>`;
}

async function take(desk: PastDesk, e: Event): Promise<void> {
  const input = e.target as HTMLInputElement;
  const file = input.files?.[0];
  if (!file) return;
  const text = await file.text();
  input.value = '';
  desk.takeSheets(file.name, text);
}

export function historySection(desk: PastDesk): TemplateResult {
  const { book, past, vehicle, vehicles } = desk;
  const pair = past.slice(-2);
  const h = desk.history;
  const deleting = (s: KeptSheet) => s.id === desk.dropping;
  return html`<section class="history" aria-label=${words.historyOfSheets} data-history><h2>${words.history(vehicle ? `: ${vehicle}` : '')}</h2>
    ${book.unread.length > 0 ? html`<p class="bad">${marks.bad} ${words.ofTheKeptSheetsCannot(book.unread.length, book.unread.length === 1 ? words.itIs : words.theyAre)}</p>` : nothing}
    ${past.length === 0 ? html`<p>${words.typeVehicleDateAndOdometer}</p>` : nothing}
    ${h && pair[0] && pair[1] ? told(pair[0], pair[1], h, desk.whoseOf(h.first)) : past.length === 1 ? html`<p class="small">${words.oneSheetTheNextOne}</p>` : past.length > 1 ? html`<p class="small">${words.theLastTwoSheetsHave}</p>` : nothing}
    <ul>${past.map(
      (s) =>
        html`<li class=${s.id === desk.paper.id ? 'on' : ''} data-kept=${s.id}><span>${written(s.date)}<small>${odometer(s.km)} km</small></span>${
          deleting(s)
            ? html`<button class="btn" @click=${() => desk.dropSheet(s)}>${words.takeItOut}</button><button class="btn" @click=${() => desk.askDrop('')}>${words.leaveIt}</button>`
            : html`<button class="btn" ?disabled=${s.id === desk.paper.id} aria-label=${words.theSheetOf(s.id === desk.paper.id ? words.liesHere : words.openIt, written(s.date))} @click=${() => desk.openSheet(s)}>${s.id === desk.paper.id ? words.liesHere : words.openIt}</button><button class="btn" aria-label=${words.takeOutTheSheetOf(written(s.date))} @click=${() => desk.askDrop(s.id)}>${words.takeOut}</button>`
        }</li>`,
    )}</ul>
    ${vehicles.length > 1 ? html`<p class="small">${words.otherVehiclesKeptHereType(vehicles.filter((v) => v !== vehicle).join(', '))}</p>` : nothing}
    <div class="row"><button class="btn p" @click=${() => desk.keepSheet()}>${words.keepThisSheet}</button>
      ${book.removed ? html`<button class="btn" @click=${() => desk.putBackSheet()}>${words.putBackTheSheetOf(written(book.removed.date))}</button>` : nothing}
      <button class="btn" ?disabled=${book.sheets.length + book.unread.length === 0} @click=${() => desk.saveSheets()}>${words.saveAllSheets}</button>
      <label class="btn file">${words.readAFileOfSheets}<input type="file" accept=".json,application/json" aria-label=${words.readAFileOfSheets} @change=${(e: Event) => take(desk, e)} /></label></div>
    <p class="small">${words.keptInThisBrowserOn}</p></section>`;
}
