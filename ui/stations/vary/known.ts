import { html, nothing, type TemplateResult } from 'lit';
import type { Judgement, Odds, Quantity, Tolerance } from '../../../sim/index.ts';
import { language, varyKnown as texts } from '../../../sim/words/en.ts';
import { number } from '../../format.ts';
import type { Choice } from '../../pieces/picker.ts';
import { field } from './controls.ts';
import { SLOPE, type VaryDesk } from './desk.ts';
import { AMOUNTS, MOST_KNOWN, MOST_SEED, varySpread } from './part.ts';

/** How well sizes are known, and what that does to what is read: bands, and which of them matters most. */

const kinds: readonly (readonly [Tolerance['kind'], string])[] = [
  ['percent', texts.perCent],
  ['gauge', texts.byItsGauge],
  ['times', texts.timesOrOver],
];

/**
 * What is usual: friction ± 10 % from lining to lining, wear up to twice or half, springs ± 10 % (common
 * practice); a length by a caliper ± 0.1 mm; else ± 5 % (own choice).
 */
function usual({ id, unit }: Quantity): Tolerance {
  if (/wearRate/.test(id)) return { id, kind: 'times', amount: 2 };
  if (/friction|^springs|spring/i.test(id)) return { id, kind: 'percent', amount: 10 };
  return unit === 'mm' ? { id, kind: 'gauge', amount: 0.1 } : { id, kind: 'percent', amount: 5 };
}

function one(desk: VaryDesk, tolerance: Tolerance, q: Quantity): TemplateResult {
  // By what stands when it is pressed: two presses may come between two pictures.
  const put = (change: (now: Tolerance) => readonly Tolerance[]): void => {
    const { known, seed } = desk.part.spread;
    desk.session.do(
      varySpread,
      known.flatMap((t) => (t.id === tolerance.id ? change(t) : [t])),
      seed,
    );
  };
  const { kind, amount } = tolerance;
  const unit = kind === 'percent' ? '%' : kind === 'gauge' ? q.unit : '';
  const name = q.of ? `${q.name}, ${q.of}` : q.name;
  const chosen = (e: Event): void => {
    const next = (e.target as HTMLSelectElement).value as Tolerance['kind'];
    put(({ id }) => [
      { id, kind: next, amount: next === 'times' ? 2 : next === 'percent' ? 10 : 0.1 },
    ]);
  };
  return html`<li data-known=${tolerance.id}><span>${name}</span>
    <label class="vary-field">${texts.how}<select @change=${chosen}>${kinds.map(([k, told]) => html`<option value=${k} ?selected=${k === kind}>${told}</option>`)}</select></label>
    ${field(desk, 'By', unit, amount, AMOUNTS[kind], (x) => put((now) => [{ ...now, amount: x }]))}
    <button class="btn" @click=${() => put(() => [])}>${texts.remove}</button></li>`;
}

/** Ranked bars: by how much each alone moves the first of what is read. */
function ranked(desk: VaryDesk): TemplateResult | typeof nothing {
  const { read, spread } = desk;
  const [first] = read;
  const most = spread?.swings[0]?.by[0] ?? Number.NaN;
  if (!spread || !first || !(most > 0)) return nothing;
  return html`<h3>${texts.whatMattersMostFor(language.inside(first.name))}</h3><ol class="vary-rank">${spread.swings.map(
    ({ name, by: [by = Number.NaN] }) =>
      html`<li><span>${name}</span><b>${number(by, first.digits)}${first.unit ? ` ${first.unit}` : ''}</b><svg viewBox="0 0 100 10" preserveAspectRatio="none" aria-hidden="true"><rect width=${Number.isFinite(by) ? Math.max(0.5, (100 * by) / most) : 0} height="10" /></svg></li>`,
  )}</ol>`;
}

/** What a brake may turn out to be, in words. */
const judged: Readonly<Record<Judgement, string>> = texts.judged;

/** In how many of the brakes drawn each of it is so. */
function likely(desk: VaryDesk): TemplateResult | typeof nothing {
  const { spread } = desk;
  if (!spread || spread.bands.length === 0) return nothing;
  const row = (key: string, what: string, { count, of }: Pick<Odds, 'count' | 'of'>) =>
    html`<tr data-odds=${key}><th scope="row">${what}</th><td>${number(count, 0)}</td><td>${number(of, 0)}</td></tr>`;
  const seen = spread.odds.filter((o) => o.count > 0);
  const never = spread.odds.filter((o) => o.count === 0 && o.of > 0);
  const { holds } = spread;
  if (seen.length + never.length === 0) return nothing;
  return html`${
    seen.length > 0 || holds
      ? html`<table aria-label=${texts.howLikely}><thead><tr><th scope="col">${texts.howLikely}</th><th scope="col">${texts.inWord}</th><th scope="col">${texts.of}</th></tr></thead><tbody>${seen.map(
          (o) => row(o.judgement, judged[o.judgement], o),
        )}${
          holds
            ? html`${row(texts.slopeDown, texts.holdsOnNoseDown(number(SLOPE.percent, 0)), holds.down)}${row(texts.slopeUp, texts.holdsOnNoseUp(number(SLOPE.percent, 0)), holds.up)}`
            : nothing
        }</tbody></table>${holds ? html`<p class="small">${number(SLOPE.percent, 0)} %: ${SLOPE.what}.</p>` : nothing}`
      : nothing
  }${never.length > 0 ? html`<p data-odds="never">${texts.inNoneOfThem(never.map((o) => language.inside(judged[o.judgement])).join('; '))}</p>` : nothing}`;
}

/** A reading's band, with how it is told. */
function banded(desk: VaryDesk): TemplateResult | typeof nothing {
  const { read, spread } = desk;
  if (!spread) return nothing;
  return html`<table aria-label=${texts.bands}><thead><tr><th scope="col">${texts.of95Of100Brakes}</th><th scope="col">${texts.from}</th><th scope="col">${texts.middle}</th><th scope="col">${texts.to}</th></tr></thead><tbody>${read.map(
    (a, k) => {
      const band = spread.bands[k];
      const told = (x: number | undefined): string => number(x ?? Number.NaN, a.digits);
      return html`<tr data-band=${a.key}><th scope="row">${a.name}${a.unit ? html` <small>${a.unit}</small>` : nothing}</th><td>${told(band?.low)}</td><td>${told(band?.middle)}</td><td>${told(band?.high)}</td></tr>`;
    },
  )}</tbody></table>
  ${spread.untold > 0 ? html`<p>${texts.of100SuchBrakesLock(number(100 * spread.untold, 0))}</p>` : nothing}
  ${spread.done ? nothing : html`<p role="status">${texts.moreBrakesAreBeingDrawn}</p>`}`;
}

export function knownBlock(desk: VaryDesk): TemplateResult {
  const { known, part, quantities, session } = desk;
  const { seed } = part.spread;
  const taken = new Set(known.map((k) => k.quantity.id));
  const choices = quantities
    .filter((q) => !taken.has(q.id) && q.value !== 0)
    .map(
      (q): Choice => ({ id: q.id, name: q.name, more: [q.of, q.unit].filter(Boolean).join(', ') }),
    );
  const add = (e: CustomEvent<string>): void => {
    const q = desk.quantity(e.detail);
    const { known, seed } = desk.part.spread;
    if (q) session.do(varySpread, [...known, usual(q)], seed);
  };
  return html`<section class="blk vary-known" data-below="known" tabindex="-1" aria-labelledby="known"><h2 id="known">${texts.howWellItIsKnown}</h2>
    ${known.length === 0 ? html`<p>${texts.frictionIsNeverKnownExactly}</p>` : html`<ul>${known.map(({ tolerance, quantity }) => one(desk, tolerance, quantity))}</ul>`}
    ${part.spread.known.length < MOST_KNOWN ? html`<takeup-picker label=${texts.addWhatIsNotKnown} data-pick="known" .chosen=${[]} .choices=${choices} @choose=${add}></takeup-picker>` : nothing}
    ${banded(desk)}${likely(desk)}${ranked(desk)}
    ${known.length > 0 ? field(desk, texts.seedTheSameDrawsAgain, '', seed, [1, MOST_SEED], (x) => session.do(varySpread, desk.part.spread.known, Math.round(x))) : nothing}
  </section>`;
}
