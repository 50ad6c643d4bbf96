import { html, nothing, type TemplateResult } from 'lit';
import type { Answer, Quantity } from '../../../sim/index.ts';
import { number } from '../../format.ts';
import type { PageView } from '../station.ts';
import { short, type VaryDesk } from './desk.ts';
import { knownBlock } from './known.ts';
import {
  MOST_CURVES,
  MOST_READ,
  varyAnd,
  varyAsk,
  varyBeside,
  varyMap,
  varyOf,
  varyRead,
} from './part.ts';
import './own-formula.ts';
import '../../pieces/picker.ts';
import { varySide as words } from '../../../sim/words/en.ts';
import type { Choice } from '../../pieces/picker.ts';
import { unlessTyped } from '../../pieces/unless-typed.ts';
import { besideOptions, chosenBeside, refOf } from './beside.ts';
import { readyMade } from './ready.ts';
import { sayRoom } from './room.ts';
import { modes } from './seek-side.ts';

/** What stands beside the picture: what is asked, what is read where one looks, and questions ready made. */

const choiceOf = (q: Quantity): Choice => ({
  id: q.id,
  name: q.name,
  more: [q.of, q.unit && `${short(q.value)} ${q.unit}`].filter(Boolean).join(', '),
});
const answerChoice = (a: Answer): Choice => ({ id: a.key, name: a.name, more: a.unit });

/** Before and after of one reading. */
function row(a: Answer, before: number, now: number, moved: boolean): TemplateResult {
  const told = (x: number): string => number(x, a.digits);
  const change =
    before !== 0 && Number.isFinite(now / before) ? (100 * (now - before)) / before : Number.NaN;
  return html`<tr data-key=${a.key}><th scope="row">${a.name}${a.unit ? html` <small>${a.unit}</small>` : nothing}</th>
    <td>${told(before)}</td>
    ${moved ? html`<td class="after">${told(now)}</td><td class="by">${Number.isFinite(change) ? `${change > 0 ? '+' : ''}${number(change, 0)} %` : ''}</td>` : nothing}</tr>`;
}

/** Why nothing is told where one looks. */
function why(desk: VaryDesk): string {
  const { point } = desk;
  if (point.why === 'locks') return words.theShoeLocksTheDrum(point.locked);
  if (point.why === 'yields') return words.aPartOfTheStruts;
  if (point.why === 'lost') return words.nothingBalancesHere;
  return '';
}

/** So many rules are told at most. */
const MOST_RULES = 2;

/** What “no such brake” in the picture means: which rules of what can be built refuse it, and what they allow. */
function whyNone(desk: VaryDesk): TemplateResult | typeof nothing {
  const found = desk.curves.flatMap((c) => c.points.flatMap((p) => p.finding ?? []));
  const rules = new Map(
    found.map(({ path, allowed, reason }) => [`${path} ${reason ?? ''}`, { path, allowed }]),
  );
  if (rules.size === 0) return nothing;
  const told = [...rules.values()].slice(0, MOST_RULES).map((r) => `${r.path}: ${r.allowed}`);
  return html`<p class="quiet" data-none>${words.noSuchBrakeItCould(told.join(words.andOf), rules.size > MOST_RULES ? words.andMore : '')}</p>`;
}

/** The second quantity of a map, as it is and at the point. */
function secondRow({ and, place, up }: VaryDesk, moved: boolean): TemplateResult | typeof nothing {
  if (!up || !and) return nothing;
  const told = (x: number): string => `${short(x)}${up.unit ? ` ${up.unit}` : ''}`;
  return html`<tr><td>${up.name}</td><th scope="col">${told(and.quantity.value)}</th>${moved ? html`<th scope="col" class="after">${told(place[1])}</th><th scope="col"></th>` : nothing}</tr>`;
}

function table(desk: VaryDesk): TemplateResult {
  const moved = desk.picked !== null;
  const { of, plain, point, read } = desk;
  const told = why(desk);
  return html`<section class="blk vary-read" aria-label=${words.whatIsRead}>
    <table><thead><tr><td>${of.name}</td><th scope="col">${short(of.value)}${of.unit ? ` ${of.unit}` : ''}</th>${moved ? html`<th scope="col" class="after">${short(desk.at)}${of.unit ? ` ${of.unit}` : ''}</th><th scope="col"></th>` : nothing}</tr>${secondRow(desk, moved)}</thead>
    <tbody>${read.map((a, k) => row(a, plain.values[k] as number, point.values[k] as number, moved))}</tbody></table>
    ${told ? html`<p>${told}</p>` : nothing}
    ${whyNone(desk)}
    ${moved ? html`<button class="btn" @click=${() => desk.home()}>${words.backTo(short(of.value))}</button>` : html`<p class="quiet">${words.pressOrDragOnThe}</p>`}
  </section>`;
}

/** A second quantity at half, as it is, and one and a half: within its usual range. */
function familyOf(q: Quantity): readonly number[] {
  const [low, high] = q.usual;
  const middle = q.value > low && q.value < high ? q.value : (low + high) / 2;
  const all = [low, middle, high].map((x) => (q.whole ? Math.round(x) : Number(x.toPrecision(4))));
  return [...new Set(all)];
}

function second(desk: VaryDesk): TemplateResult {
  const { session, and, quantities, of, part } = desk;
  const choices = [
    { id: '', name: words.name, more: '' },
    ...quantities.filter((q) => q.id !== of.id).map(choiceOf),
  ];
  const choose = (e: CustomEvent<string>): void => {
    const q = quantities.find((x) => x.id === e.detail);
    session.do(varyAnd, q ? { id: q.id, values: familyOf(q) } : null);
  };
  const values = (e: Event): void => {
    const field = e.target as HTMLInputElement;
    if (!and) return;
    const { range, whole, unit } = and.quantity;
    const typed = field.value.split(/[;\s]+|,\s+/).filter(Boolean);
    const read = typed.map((t) => Number(t.replace(',', '.').replace('−', '-')));
    const bad = typed.find((_, i) => {
      const x = read[i] as number;
      return !(x >= range[0] && x <= range[1]) || (whole && !Number.isInteger(x));
    });
    if (typed.length === 0 || typed.length > MOST_CURVES || bad !== undefined) {
      const found = bad === undefined ? words.values(typed.length) : `“${bad}”`;
      session.say(
        words.foundAllowed1ToNumbers(
          and.quantity.name,
          found,
          MOST_CURVES,
          whole ? words.whole : '',
          short(range[0]),
          short(range[1]),
          unit ? ` ${unit}` : '',
        ),
      );
      field.value = and.values.map(short).join('  ');
      return;
    }
    session.do(varyAnd, { id: and.quantity.id, values: read });
  };
  const shapes = [
    [false, words.aCurveForEachValue],
    [true, words.aMapOfBoth],
  ] as const;
  return html`<takeup-picker label=${words.aSecondThingVaried} .chosen=${[and?.quantity.id ?? '']} .choices=${choices} @choose=${choose}></takeup-picker>
    ${and ? html`<div class="seg vary-shape" role="group" aria-label=${words.picture}>${shapes.map(([map, name]) => html`<button aria-pressed=${part.map === map} class=${part.map === map ? 'on' : ''} @click=${() => session.do(varyMap, map)}>${name}</button>`)}</div>` : nothing}
    ${and ? html`<label class="vary-field">${part.map ? words.fromTheLeastToThe : words.itsValues}${and.quantity.unit ? `, ${and.quantity.unit}` : ''} <input .value=${unlessTyped(and.values.map(short).join('  '))} @change=${values}></label>` : nothing}`;
}

function asked(desk: VaryDesk): TemplateResult {
  const { answers, of, part, quantities, read, session } = desk;
  const chosen = read.map((a) => a.key);
  const toggle = (e: CustomEvent<string>): void => {
    const key = e.detail;
    const next = chosen.includes(key) ? chosen.filter((k) => k !== key) : [...chosen, key];
    // The oldest makes room.
    if (next.length === 0) return;
    session.do(varyRead, next.slice(-MOST_READ));
    if (next.length > chosen.length) sayRoom(session, read);
  };
  return html`<section class="blk vary-ask" aria-label=${words.whatIsAsked}>
    <takeup-picker label=${words.vary} data-pick="of" .chosen=${[of.id]} .choices=${quantities.map(choiceOf)} @choose=${(e: CustomEvent<string>) => session.do(varyOf, e.detail)}></takeup-picker>
    <takeup-picker label=${words.readUpTo(MOST_READ)} data-pick="read" .chosen=${chosen} .choices=${answers.map(answerChoice)} @choose=${toggle}></takeup-picker>
    ${second(desk)}
    <label class="vary-field">${words.besideIt} <select @change=${(e: Event) => session.do(varyBeside, refOf((e.target as HTMLSelectElement).value))}>${besideOptions(desk, chosenBeside(part.beside))}</select></label>
  </section>`;
}

/** What lies further down is said at the top: at a laptop none of it is in sight. */
const BELOW = [
  ['known', words.howWellItIsKnown],
  ['formula', words.ownFormula],
  ['ready', words.readyMade],
] as const;

function jump(e: Event, id: string): void {
  const root = (e.currentTarget as Element).getRootNode() as ParentNode;
  const to = root.querySelector<HTMLElement>(`[data-below="${id}"]`);
  to?.scrollIntoView({ block: 'start' });
  to?.focus({ preventScroll: true });
}

const ways = (): TemplateResult =>
  html`<nav class="vary-ways" aria-label=${words.furtherDown}>${BELOW.map(([id, name]) => html`<button @click=${(e: Event) => jump(e, id)}>${name} <span aria-hidden="true">↓</span></button>`)}</nav>`;

export function varySide(page: PageView, desk: VaryDesk): TemplateResult {
  const { session } = page;
  const { brake } = desk;
  const more = desk.without ? html` <b>${desk.brake.title} ${desk.without}.</b>` : nothing;
  return html`<section class="blk h"><h1>${words.whatIf}</h1><p>${words.changeOneThingAndSee}${more}</p>${modes(page)}${ways()}</section>
    ${table(desk)}
    ${asked(desk)}
    ${knownBlock(desk)}
    <section class="blk vary-own" data-below="formula" tabindex="-1" aria-label=${words.ownFormula}><takeup-own-formula .session=${session} .rev=${session.revision}></takeup-own-formula></section>
    <section class="blk vary-ready" data-below="ready" tabindex="-1" aria-labelledby="ready"><h2 id="ready">${words.readyMade}</h2>${readyMade
      .filter((r) => r.fits?.(brake) ?? true)
      .map(
        (r) =>
          html`<button class="btn" @click=${() => session.do(varyAsk, r.ask)}>${r.name}</button>`,
      )}</section>`;
}
