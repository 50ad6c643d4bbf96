import { html, nothing, type TemplateResult } from 'lit';
import type { Answer, Quantity, Wish } from '../../../sim/index.ts';
import { number } from '../../format.ts';
import type { Choice } from '../../pieces/picker.ts';
import type { PageView } from '../station.ts';
import { field } from './controls.ts';
import { short } from './desk.ts';
import { MOST_FREE, MOST_WISHES, WISH_HEAT } from './part.ts';
import '../../pieces/picker.ts';
import { labelWords, language, varySeekSide as texts } from '../../../sim/words/en.ts';
import { unlessTyped } from '../../pieces/unless-typed.ts';
import type { SeekDesk, Wished } from './seek-desk.ts';
import { seekAsk, seekFree, seekMode, seekWishes } from './wants.ts';

/** What stands beside the picture of a question turned round: sizes, wishes, and what came of it. */

const named = (q: Quantity): string => (q.of ? `${q.name}, ${q.of}` : q.name);
const told = (x: number, unit: string): string => `${short(x)}${unit ? ` ${unit}` : ''}`;

/** What is wished, in words. */
export function wishTold({ least, most, hot }: Wish, unit: string): string {
  const ends =
    least === null
      ? most === null
        ? texts.nothingYet
        : texts.atMost(told(most, unit))
      : most === null
        ? texts.atLeast(told(least, unit))
        : texts.to(short(least), told(most, unit));
  return hot === null ? ends : texts.drumAtC(ends, short(hot));
}

/** The two ways to ask, side by side. */
export function modes({ session }: PageView): TemplateResult {
  const { on } = session.moment.parts.vary.seek;
  const each = (turned: boolean, name: string): TemplateResult =>
    html`<button aria-pressed=${on === turned} class=${on === turned ? 'on' : ''} @click=${() => session.do(seekMode, turned)}>${name}</button>`;
  return html`<div class="seg vary-mode" role="group" aria-label=${texts.whatIsAsked}>${each(false, texts.whatFollows)}${each(true, texts.whichSizesDoIt)}</div>`;
}

/** How far the search is; starts it, or stops it. */
export function seekButton(desk: SeekDesk): TemplateResult {
  const { busy, found, ready } = desk;
  if (busy)
    return html`<button class="btn seek-go" @click=${() => desk.stop()}>${texts.stopLooking}</button>`;
  return html`<button class="btn seek-go" ?disabled=${!ready} @click=${() => desk.start()}>${found ? texts.lookOnceMore : texts.lookForThem}</button>`;
}

/** One line of what came of it, for eyes and for who hears the page. */
export function outcome(desk: SeekDesk): string {
  const { busy, found, free, ready } = desk;
  if (!found)
    return busy ? texts.looking : ready ? texts.nothingHasBeenLookedFor : texts.nameASizeToChoose;
  const brakes = texts.brakes(number(found.brakes, 0));
  const going = busy ? (found.stage === 'looking' ? texts.looking2 : texts.drawingTheRegion) : '';
  const stopped = !busy && found.stage !== 'done' ? texts.stopped : '';
  if (!found.reach)
    return `${busy ? texts.noneYet : texts.noneOfThemDoesIt}: ${brakes}${going}${stopped}.`;
  const some = free.map(({ quantity }, k) => {
    const [low, high] = found.reach?.[k] ?? [Number.NaN, Number.NaN];
    return texts.to2(language.inside(quantity.name), short(low), told(high, quantity.unit));
  });
  return `${some.join('; ')}: ${brakes}${going}${stopped}.`;
}

function reachRows(desk: SeekDesk): TemplateResult | typeof nothing {
  const { found, free, picked } = desk;
  if (!found?.reach) return nothing;
  const { reach, best } = found;
  return html`<table class="seek-reach" aria-label=${texts.howFarEachSizeReaches}><thead><tr><th scope="col">${texts.doesIt}</th><th scope="col">${texts.from}</th><th scope="col">${texts.to3}</th><th scope="col">${texts.mostRoom}</th></tr></thead><tbody>${free.map(
    ({ quantity: q }, k) =>
      html`<tr data-reach=${q.id}><th scope="row">${named(q)}${q.unit ? html` <small>${q.unit}</small>` : nothing}</th><td>${short(reach[k]?.[0] as number)}</td><td>${short(reach[k]?.[1] as number)}</td><td>${short(best.at[k] as number)}</td></tr>`,
  )}</tbody></table>
  ${free.length > 1 ? html`<p class="quiet">${texts.notEveryPairOfThese}</p>` : nothing}
  <button class="btn" ?disabled=${picked !== null && picked.join() === best.at.join()} @click=${() => desk.pick(best.at)}>${texts.putTheOneWithMost}</button>`;
}

/** None does: how near one comes, and the bound in the way. */
function inTheWay(desk: SeekDesk): TemplateResult | typeof nothing {
  const { busy, found, free, wished } = desk;
  if (!found || found.reach || busy) return nothing;
  const { best, leaning } = found;
  const place = free
    .map(({ quantity: q }, k) => `${language.inside(q.name)} ${told(best.at[k] as number, q.unit)}`)
    .join(', ');
  const off = wished.filter(({ wish }) => wish.least !== null || wish.most !== null);
  const missed = off.flatMap(({ answer, wish }, k) =>
    (best.miss.each[k] as number) > 0
      ? [
          texts.isNot(
            language.inside(answer.name),
            told(Number((best.miss.values[k] as number).toPrecision(4)), answer.unit),
            wishTold(wish, answer.unit),
          ),
        ]
      : [],
  );
  const bounds = leaning.map(({ id, end, value }) => {
    const q = free.find((f) => f.free.id === id)?.quantity;
    return texts.atIts(q ? language.inside(q.name) : id, end, told(value, q?.unit ?? ''));
  });
  return html`<div class="seek-none" role="status"><p><b>${texts.noneBetweenTheseBoundsDoes}</b> ${texts.nearestThere(place, missed.join(texts.alsoMissed))}</p>
    <p data-in-the-way>${bounds.length > 0 ? html`${texts.inTheWay(html`<b>${bounds.join(texts.alsoMissed)}</b>`)}` : texts.noBoundIsInThe}</p>
    <button class="btn" @click=${() => desk.pick(best.at)}>${texts.putTheNearestOnThe}</button></div>`;
}

function wishRow(desk: SeekDesk, { answer, wish }: Wished, k: number): TemplateResult {
  const { plain, point } = desk;
  const value = (x: number | undefined): string => number(x ?? Number.NaN, answer.digits);
  const met = point ? (point.each[k] as number) <= 0 : false;
  const some = wish.least !== null || wish.most !== null;
  const mark = met ? texts.asWished : texts.notAsWished;
  return html`<tr data-wish=${answer.key}><th scope="row">${answer.name}${answer.unit ? html` <small>${answer.unit}</small>` : nothing}<small class="seek-want">${wishTold(wish, answer.unit)}</small></th><td>${value(plain.values[k])}</td>${point ? html`<td class="after">${value(point.values[k])}${some ? html`<small class=${met ? '' : 'bad'}>${mark}</small>` : nothing}</td>` : nothing}</tr>`;
}

function read(desk: SeekDesk): TemplateResult {
  const { found, picked, trouble, wished } = desk;
  if (!found && !trouble && wished.length === 0) return html``;
  return html`<section class="blk vary-read seek-read" aria-label=${texts.whatCameOfIt}>
    ${trouble ? html`<p role="alert">${texts.itBrokeOff(trouble)}</p>` : nothing}
    ${reachRows(desk)}${inTheWay(desk)}
    ${wished.length > 0 ? html`<table aria-label=${texts.whatIsWished}><thead><tr><th scope="col">${texts.wished}</th><th scope="col">${texts.asItIs}</th>${picked ? html`<th scope="col" class="after">${texts.onTheStage}</th>` : nothing}</tr></thead><tbody>${wished.map((w, k) => wishRow(desk, w, k))}</tbody></table>` : nothing}
    ${picked ? html`<button class="btn" @click=${() => desk.desk.home()}>${texts.backToTheBrakeAs}</button>` : nothing}
  </section>`;
}

function freeRow(desk: SeekDesk, k: number): TemplateResult | typeof nothing {
  const { session } = desk;
  const one = desk.free[k];
  if (!one) return nothing;
  const { quantity: q, free: size } = one;
  // The other end, and the other sizes, as they stand when it is changed: two changes may come between two pictures.
  const put = (change: { readonly from?: number; readonly to?: number }): void => {
    const { free } = desk.part;
    const { from, to } = {
      ...(free.find((f) => f.id === q.id) ?? size),
      ...change,
    };
    if (from < to)
      session.do(
        seekFree,
        free.map((f) => (f.id === q.id ? { ...f, from, to } : f)),
      );
    else session.say(texts.foundToAllowedTwoEnds(q.name, short(from), short(to)));
  };
  return html`<li data-free=${q.id}><span>${texts.now(named(q), told(q.value, q.unit))}</span>
    ${field(desk.desk, labelWords.from, q.unit, size.from, q.range, (from) => put({ from }))}
    ${field(desk.desk, texts.upTo, q.unit, size.to, q.range, (to) => put({ to }))}
    <button class="btn" @click=${() =>
      session.do(
        seekFree,
        desk.part.free.filter((f) => f.id !== q.id),
      )}>${texts.remove}</button></li>`;
}

/** A field that may be left blank: no such end. */
function endField(
  desk: SeekDesk,
  name: string,
  unit: string,
  value: number | null,
  allowed: readonly [number, number],
  put: (x: number | null) => void,
): TemplateResult {
  const change = (e: Event): void => {
    const input = e.target as HTMLInputElement;
    const text = input.value.trim();
    const x = text === '' ? null : Number(text.replace(',', '.').replace('−', '-'));
    if (x === null || (x >= allowed[0] && x <= allowed[1])) {
      put(x);
      return;
    }
    desk.session.say(
      texts.foundAllowedANumberFrom(
        name,
        text.slice(0, 30),
        short(allowed[0]),
        short(allowed[1]),
        unit ? ` ${unit}` : '',
      ),
    );
    input.value = value === null ? '' : short(value);
  };
  return html`<label class="vary-field"><span>${name}${unit ? html` <small>${unit}</small>` : ''}</span> <input inputmode="decimal" placeholder="–" .value=${unlessTyped(value === null ? '' : short(value))} @change=${change}></label>`;
}

const ANY = [-1e9, 1e9] as const;

function wishFields(desk: SeekDesk, { answer, wish, place }: Wished): TemplateResult {
  const { session } = desk;
  const put = (change: Partial<Wish>): void =>
    session.do(
      seekWishes,
      desk.part.wishes.map((w, k) => (k === place ? { ...w, ...change } : w)),
    );
  return html`<li data-ask=${answer.key}><span>${answer.name}</span>
    ${endField(desk, texts.atLeast2, answer.unit, wish.least, ANY, (least) => put({ least }))}
    ${endField(desk, texts.atMost2, answer.unit, wish.most, ANY, (most) => put({ most }))}
    ${endField(desk, texts.drumAt, '°C', wish.hot, WISH_HEAT, (hot) => put({ hot }))}
    <button class="btn" @click=${() =>
      session.do(
        seekWishes,
        desk.part.wishes.filter((_, k) => k !== place),
      )}>${texts.remove}</button></li>`;
}

/** Where a size goes when it is first named: near enough to be a brake. */
const usual = ({ usual: [low, high] }: Quantity): { from: number; to: number } => ({
  from: Number(low.toPrecision(4)),
  to: Number(high.toPrecision(4)),
});

function asked(desk: SeekDesk): TemplateResult {
  const { free, part, readings, session, wished } = desk;
  const { quantities } = desk.desk;
  const sizes = quantities
    .filter((q) => !free.some((f) => f.free.id === q.id) && q.usual[0] < q.usual[1])
    .map(
      (q): Choice => ({
        id: q.id,
        name: q.name,
        more: [q.of, q.unit && told(q.value, q.unit)].filter(Boolean).join(', '),
      }),
    );
  const readable = readings.map((a: Answer): Choice => ({ id: a.key, name: a.name, more: a.unit }));
  const addSize = (e: CustomEvent<string>): void => {
    const q = quantities.find((x) => x.id === e.detail);
    if (q) session.do(seekFree, [...desk.part.free, { id: q.id, ...usual(q) }]);
  };
  const addWish = (e: CustomEvent<string>): void =>
    session.do(seekWishes, [
      ...desk.part.wishes,
      { key: e.detail, least: null, most: null, hot: null },
    ]);
  return html`<section class="blk vary-known seek-ask" aria-labelledby="seek-sizes"><h2 id="seek-sizes">${texts.sizesToChoose}</h2>
    <ul>${free.map((_, k) => freeRow(desk, k))}</ul>
    ${part.free.length < MOST_FREE ? html`<takeup-picker label=${texts.addOneUpTo(MOST_FREE)} data-pick="free" .chosen=${[]} .choices=${sizes} @choose=${addSize}></takeup-picker>` : nothing}
    <h2>${texts.whatIsWished}</h2>
    <ul class="seek-wishes">${wished.map((w) => wishFields(desk, w))}</ul>
    ${part.wishes.length < MOST_WISHES ? html`<takeup-picker label=${texts.addAReadingUpTo(MOST_WISHES)} data-pick="wish" .chosen=${[]} .choices=${readable} @choose=${addWish}></takeup-picker>` : nothing}
  </section>`;
}

function ready(desk: SeekDesk): TemplateResult {
  return html`<section class="blk vary-ready" data-below="ready" tabindex="-1" aria-labelledby="ready"><h2 id="ready">${texts.readyMade}</h2>${desk.readyMade.map(
    (r) =>
      html`<button class="btn seek-ready" @click=${(e: Event) => {
        const root = (e.currentTarget as Element).getRootNode() as ParentNode;
        root.querySelector('main h1')?.scrollIntoView({ block: 'start' });
        desk.session.do(seekAsk, r.ask);
        desk.start();
      }}><span>${r.name}<small>${r.from}</small></span></button>`,
  )}</section>`;
}

export function seekSide(page: PageView, desk: SeekDesk): TemplateResult {
  const without = desk.desk.without;
  const more = without ? html` <b>${desk.desk.brake.title} ${without}.</b>` : nothing;
  return html`<section class="blk h"><h1>${texts.whatIf}</h1><p>${texts.sayWhatABrakeShall}${more}</p>${modes(page)}</section>
    ${read(desk)}${asked(desk)}${ready(desk)}`;
}
