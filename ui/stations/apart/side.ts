import { html, nothing, type TemplateResult } from 'lit';
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
const goes: Readonly<Partial<Record<PartId, string>>> = {
  strut: 'flat on the bench, fork to the parking lever',
  'toothed lever': 'its slot over the pin, teeth in the strut’s',
  'lever pin': 'through the slot, its head riveted behind',
  'lever spring': 'pulls the lever into its tooth',
  'strut spring': 'last: from the strut to the rear web',
  'strut fork': 'over the front web, notch to the lever’s nose',
  screw: 'into its sleeve, right in, then half a turn back',
  sleeve: 'its end to the parking lever',
  'star wheel': 'on the screw, teeth to the lever',
  'wheel lever': 'its nose into the notch, its blade on the wheel',
  'wheel lever pin': 'joins the lever to the front web',
  wedge: 'thin end down, right up',
  'wedge spring': 'hooked last, pulls the wedge down',
  'hot lock': 'bimetal side as it came off',
};

export const nextPart = (desk: ApartDesk): PartId | undefined => desk.order[desk.fitted];

/** Puts a part on when it is the next; else says which one is. */
export function fitPart(desk: ApartDesk, part: PartId): void {
  const { order, fitted, session } = desk;
  const at = order.indexOf(part);
  if (at === fitted) session.do(fitTo, fitted + 1);
  else if (at > fitted)
    session.say(
      `First the ${nameOf(order[fitted] as PartId).toLowerCase()}: this one has nothing to go on yet.`,
    );
}

function list(desk: ApartDesk): TemplateResult {
  const { order, fitted, session, spring } = desk;
  const away = desk.part.without === 'adjuster' ? spring : null;
  return html`<ol class="ap-l">${order.map((part, i) => {
    const on = i < fitted && part !== away;
    return html`<li class=${on ? 'on' : ''} aria-current=${i === fitted ? 'step' : nothing}><button @click=${() => (i < fitted ? session.do(fitTo, i) : fitPart(desk, part))} title=${partNames[part][1]}><i>${i + 1}</i><span><b>${nameOf(part)}</b> ${goes[part] ?? ''}</span><em>${part === away ? 'missing' : on ? 'on' : i === fitted ? 'next' : ''}</em></button></li>`;
  })}</ol>`;
}

const rows: readonly (readonly [name: string, of: (t: Tried) => string])[] = [
  ['Strut longer by, mm', (t) => number(t.longer, 2)],
  ['Clearance at rest, mm', (t) => number(t.clearance, 2)],
  ['Force on the strut, N', (t) => number(t.strut, 0)],
  ['Pedal at 40 bar, mm', (t) => number(t.travel, 1)],
  ['Brake torque, N·m', (t) => number(t.torque, 0)],
];

/** What the missing spring did, in a sentence of the figures. */
function verdict(desk: ApartDesk, whole: Tried, less: Tried): string {
  const { without } = desk.part;
  const name = desk.springs.find((s) => s.of === without)?.name.toLowerCase() ?? '';
  if (less.clicks < whole.clicks)
    return `Without the ${name} the adjuster takes up ${less.clicks === 0 ? 'nothing' : `${number(less.longer, 2)} of ${number(whole.longer, 2)} mm`}: the gap stays, and the pedal goes ${number(less.travel - whole.travel, 1)} mm farther.`;
  if (less.strut < 1 && whole.strut >= 1)
    return `Without the ${name} nothing holds the shoes on the strut: they lie where they were left.`;
  if (less.strut < whole.strut - 1)
    return `Without the ${name} the strut is held by ${number(less.strut, 0)} N instead of ${number(whole.strut, 0)} N.`;
  return `Without the ${name} these figures stay: its job is another one.`;
}

export function table(desk: ApartDesk): TemplateResult {
  const { without } = desk.part;
  const whole = desk.tried('nothing');
  const less = without === 'nothing' ? null : desk.tried(without);
  const told = isCountable(desk.brake)
    ? [['Steps taken up', (t: Tried) => number(t.clicks, 0)] as const, ...rows]
    : rows;
  return html`<table class="ap-t" aria-label="With and without"><thead><tr><th scope="col">Linings worn 0.6 mm, pressed at 40 bar until silent</th><th scope="col">with it</th>${less ? html`<th scope="col">without</th>` : nothing}</tr></thead>
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
  session.do(pair, 'with and without', bench('nothing'), bench(part.without));
  session.do(show, 'compare');
}

export function apartSide(_page: PageView, desk: ApartDesk): TemplateResult {
  const { session, part, springs } = desk;
  return html`<section class="blk h"><h1>Adjuster apart</h1><p>${wordsOf(desk.brake).idea}. What is missing here is missing in the brake.</p></section>
    <section class="blk ap-o" aria-labelledby="ap-o"><h2 id="ap-o">Put together in this order</h2>${list(desk)}</section>
    <section class="blk ap-w" aria-labelledby="ap-w"><h2 id="ap-w">Take a spring away and press</h2>
      <div class="ap-s" role="group" aria-labelledby="ap-w">${springs.map((s) => html`<button class="btn ${part.without === s.of ? 'p' : ''}" aria-pressed=${part.without === s.of} title=${s.job} @click=${() => session.do(goWithout, part.without === s.of ? 'nothing' : s.of)}>${s.name}</button>`)}</div>
      ${table(desk)}
      ${part.without === 'nothing' ? nothing : html`<button class="btn" @click=${() => sideBySide(desk)}>Both side by side</button>`}
    </section>`;
}

export function apartControls(_page: PageView, desk: ApartDesk): TemplateResult {
  const { session, fitted, order, kinds, brake } = desk;
  const end = fitted >= order.length;
  return html`<section class="blk ctl" aria-label="Controls">
    <div class="seg ap-k" role="group" aria-label="Kind of adjuster">${kinds.map((kind) => html`<button class=${brake.adjuster.kind === kind ? 'on' : ''} aria-pressed=${brake.adjuster.kind === kind} @click=${() => session.do(layKind, kind)}>${adjusterWords[kind].name}</button>`)}</div>
    <div class="row two"><button class="btn" ?disabled=${fitted === 0} @click=${() => session.do(fitTo, fitted - 1)}>Step back</button><button class="btn" ?disabled=${end} @click=${() => session.do(fitTo, fitted + 1)}>Next step</button></div>
    <button class="btn p tall" @click=${() => session.do(fitTo, end ? 0 : MOST_PARTS)}>${end ? 'Take it apart' : 'Put it together'}</button>
  </section>`;
}
