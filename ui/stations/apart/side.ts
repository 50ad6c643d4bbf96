import { html, nothing, type TemplateResult } from 'lit';
import { kindLaws, type StrutSpring } from '../../../sim/index.ts';
import { language, apartSide as texts } from '../../../sim/words/en.ts';
import { adjusterWords, isCountable, wordsOf } from '../../adjusters.ts';
import { number } from '../../format.ts';
import { freshBench } from '../../record/bench.ts';
import { show } from '../../record/guest.ts';
import { nameOf, type PartId, partNames } from '../../stage/part-names.ts';
import { keptNow, pair } from '../compare/wants.ts';
import type { PageView } from '../station.ts';
import type { ApartDesk, Tried } from './desk.ts';
import { MOST_PARTS, type Without } from './part.ts';
import { fitTo, goWithout, layKind } from './wants.ts';

/** What stands beside the adjuster: its parts in their order, and what it does without one of its springs. */

/** Where each goes, in a few words. */
const goes: Readonly<Partial<Record<PartId, string>>> = texts.goes;

/** Where the strut's spring goes, and what is missing with it. */
const ofStrutSpring: Readonly<
  Record<StrutSpring, { readonly goes: string; readonly why: string }>
> = {
  'holds it back': texts.holdsItBack,
  'takes it along': texts.takesItAlong,
};

export const nextPart = (desk: ApartDesk): PartId | undefined => desk.order[desk.fitted];

/** Puts a part on when it is the next; else says which one is. */
export function fitPart(desk: ApartDesk, part: PartId): void {
  const { order, fitted, session } = desk;
  const at = order.indexOf(part);
  if (at === fitted) session.do(fitTo, fitted + 1);
  else if (at > fitted)
    session.say(texts.firstTheThisOneHas(language.inside(nameOf(order[fitted] as PartId))));
}

function list(desk: ApartDesk): TemplateResult {
  const { order, fitted, session, away, brake } = desk;
  const strut = kindLaws[brake.adjuster.kind].strutSpring;
  const goesTo = (part: PartId): string =>
    part === desk.strutSpring && strut ? ofStrutSpring[strut].goes : (goes[part] ?? '');
  return html`<ol class="ap-l">${order.map((part, i) => {
    const on = i < fitted && part !== away;
    return html`<li class=${on ? 'on' : ''} aria-current=${i === fitted ? 'step' : nothing}><button @click=${() => (i < fitted ? session.do(fitTo, i) : fitPart(desk, part))} title=${partNames[part][1]}><i>${i + 1}</i><span><b>${nameOf(part)}</b> ${goesTo(part)}</span><em>${part === away ? texts.missing : on ? texts.on : i === fitted ? texts.next : ''}</em></button></li>`;
  })}</ol>`;
}

const STRUT_ROW = texts.strutRow;
const rows: readonly (readonly [name: string, of: (t: Tried) => string])[] = [
  [texts.strutLongerByMm, (t) => number(t.longer, 2)],
  [texts.clearanceAtRestMm, (t) => number(t.clearance, 2)],
  [STRUT_ROW, (t) => number(t.strut, 0)],
  [texts.dragPedalUpNM, (t) => number(t.drag, 0)],
  [texts.pedalAt40BarMm, (t) => number(t.travel, 1)],
  [texts.brakeTorqueNM, (t) => number(t.torque, 0)],
];

/** A drag that is told of, N·m. */
const DRAGS = 0.5;

/** What the missing spring did, in a sentence of the figures. */
function verdict(desk: ApartDesk, whole: Tried, less: Tried): string {
  const { without } = desk.part;
  const name = language.inside(desk.springs.find((s) => s.of === without)?.name ?? '');
  const strut = kindLaws[desk.brake.adjuster.kind].strutSpring;
  const why = without === 'strut' && strut ? ` ${ofStrutSpring[strut].why}` : '';
  if (less.clicks < whole.clicks)
    return texts.withoutTheTheAdjusterTakes(
      name,
      less.clicks === 0
        ? texts.nothingWord
        : texts.ofMm(number(less.longer, 2), number(whole.longer, 2)),
      number(less.travel - whole.travel, 1),
      why,
    );
  if (less.clicks > whole.clicks)
    return texts.withoutTheTheAdjusterTakes2(
      name,
      number(less.longer - whole.longer, 2),
      less.drag > DRAGS ? texts.theLiningsLieOnThe(number(less.drag, 0)) : '',
      why,
    );
  if (less.strut < 1 && whole.strut >= 1) return texts.withoutTheNothingHoldsThe(name);
  if (less.strut < whole.strut - 1)
    return texts.withoutTheTheStrutIs(name, number(less.strut, 0), number(whole.strut, 0));
  return texts.withoutTheTheseFiguresStay(name);
}

/** @param few on the wall: without the force on the strut */
export function table(desk: ApartDesk, few = false): TemplateResult {
  const { without } = desk.part;
  const whole = desk.tried('nothing');
  const less = without === 'nothing' ? null : desk.tried(without);
  const some = few ? rows.filter(([name]) => name !== STRUT_ROW) : rows;
  const told = isCountable(desk.brake)
    ? [[texts.stepsTakenUp, (t: Tried) => number(t.clicks, 0)] as const, ...some]
    : some;
  return html`<table class="ap-t" aria-label=${texts.withAndWithout}><thead><tr><th scope="col">${texts.liningsWorn06Mm}</th><th scope="col">${texts.withIt}</th>${less ? html`<th scope="col">${texts.without}</th>` : nothing}</tr></thead>
    <tbody>${told.map(([name, of]) => html`<tr data-row=${name}><th scope="row">${name}</th><td>${of(whole)}</td>${less ? html`<td>${of(less)}</td>` : nothing}</tr>`)}</tbody></table>
    ${less ? html`<p role="status">${verdict(desk, whole, less)}</p>` : nothing}`;
}

/** Both, with and without, side by side under one pedal. */
function sideBySide(desk: ApartDesk): void {
  const { session, part, brake } = desk;
  const base = { ...keptNow(session.moment), pedal: 0, cable: 0, bending: false };
  const bench = (without: Without) => {
    const { state } = desk.tried(without);
    const fresh = freshBench(base.bench.brake, state);
    const own = base.bench.adjuster?.kind ?? null;
    const kind = part.kind ?? own;
    return {
      ...base,
      bench: {
        ...fresh,
        fault: base.bench.fault,
        adjuster:
          kind === null || part.kind === null
            ? base.bench.adjuster
            : { kind, hotLock: false, drivenBy: brake.adjuster.drivenBy },
      },
    };
  };
  session.do(pair, texts.withAndWithout2, bench('nothing'), bench(part.without));
  session.do(show, 'compare');
}

export function apartSide(_page: PageView, desk: ApartDesk): TemplateResult {
  const { session, part, springs } = desk;
  return html`<section class="blk h"><h1>${texts.adjusterApart}</h1><p>${texts.whatIsMissingHereIs(wordsOf(desk.brake).idea)}</p></section>
    <section class="blk ap-o" aria-labelledby="ap-o"><h2 id="ap-o">${texts.putTogetherInThisOrder}</h2>${list(desk)}</section>
    <section class="blk ap-w" aria-labelledby="ap-w"><h2 id="ap-w">${texts.takeASpringAwayAnd}</h2>
      <div class="ap-s" role="group" aria-labelledby="ap-w">${springs.map((s) => html`<button class="btn ${part.without === s.of ? 'p' : ''}" aria-pressed=${part.without === s.of} title=${s.job} @click=${() => session.do(goWithout, part.without === s.of ? 'nothing' : s.of)}>${s.name}</button>`)}</div>
      ${table(desk)}
      ${part.without === 'nothing' ? nothing : html`<button class="btn" @click=${() => sideBySide(desk)}>${texts.bothSideBySide}</button>`}
    </section>`;
}

export function apartControls(_page: PageView, desk: ApartDesk): TemplateResult {
  const { session, fitted, order, kinds, brake } = desk;
  const end = fitted >= order.length;
  return html`<section class="blk ctl" aria-label=${texts.controls}>
    <div class="seg ap-k" role="group" aria-label=${texts.kindOfAdjuster}>${kinds.map((kind) => html`<button class=${brake.adjuster.kind === kind ? 'on' : ''} aria-pressed=${brake.adjuster.kind === kind} @click=${() => session.do(layKind, kind)}>${adjusterWords[kind].name}</button>`)}</div>
    <div class="row two"><button class="btn" ?disabled=${fitted === 0} @click=${() => session.do(fitTo, fitted - 1)}>${texts.stepBack}</button><button class="btn" ?disabled=${end} @click=${() => session.do(fitTo, fitted + 1)}>${texts.nextStep}</button></div>
    <button class="btn p tall" @click=${() => session.do(fitTo, end ? 0 : MOST_PARTS)}>${end ? texts.takeItApart : texts.putItTogether}</button>
  </section>`;
}
