import { html, nothing, type TemplateResult } from 'lit';
import { labelWords, language, compareSide as words } from '../../../sim/words/en.ts';
import { number } from '../../format.ts';
import type { PageView } from '../station.ts';
import { type Choice, choices, others, toothOn } from './choices.ts';
import type { CompareDesk } from './desk.ts';
import { LAYERS } from './draw.ts';
import { forget, keep, pair, pushBy, pushTo, swap, take } from './wants.ts';

/** What stands beside the two brakes: what differs, what is alike, and what can be set against what. */

/** A torque from which a brake is said to brake, N·m. */
const BRAKES = 0.5;

/** What one sees, in a sentence or two. */
export function sentence(desk: CompareDesk): string {
  const { at, by } = desk.part;
  if (desk.differs.length === 0) return words.aAndBAreThe;
  if (at === 0) return words.onePedalForBothPush;
  const [a, b] = desk.reading('torque').map(Math.abs) as [number, number];
  const same = by === 'travel' ? words.sameFootSameTravel : words.samePressure;
  const told = (x: number): string => `${number(x, 0)} N·m`;
  if (!Number.isFinite(a) || !Number.isFinite(b))
    return words.inAShoeLocksAnd(same, Number.isFinite(a) ? 'B' : 'A');
  if (a < BRAKES && b < BRAKES) return words.neitherBrakesYet(same);
  if (b < BRAKES) return words.aBrakesWithInB(same, told(a));
  if (a < BRAKES) return words.bBrakesWithInA(same, told(b));
  if (Math.abs(a - b) < 0.005 * Math.max(a, b)) return words.bothBrakeWith(same, told(a));
  return words.aBrakesWithBWith(
    same,
    told(a),
    told(b),
    number((100 * Math.abs(b - a)) / a, 0),
    b > a ? words.more : words.less,
  );
}

const list = (desk: CompareDesk): TemplateResult =>
  html`<dl class="cmp-d">${desk.differs.map((d) => html`<div class=${d.follows ? 'follows' : ''}><dt>${d.follows ? words.so : ''}${d.name}</dt><dd>${d.a}<span aria-hidden="true"> → </span><span class="hidden">${words.inAInB} </span>${d.b}</dd></div>`)}</dl>`;

/** How many things differ, and what. */
export function differing(desk: CompareDesk): TemplateResult {
  const causes = desk.differs.filter((d) => !d.follows).length;
  if (causes === 0)
    return html`<section class="blk cmp-n" aria-labelledby="cmp-n"><h2 id="cmp-n">${words.nothingDiffers}</h2></section>`;
  const more = causes > 1;
  return html`<section class="blk cmp-n ${more ? 'more' : ''}" aria-labelledby="cmp-n">
    <h2 id="cmp-n">${more ? words.thingsDiffer(causes) : words.oneThingDiffers}</h2>
    ${more ? html`<p>${words.whatFollowsCannotBeLaid}</p>` : nothing}
    ${list(desk)}</section>`;
}

function choose(desk: CompareDesk, choice: Choice | undefined): void {
  const { session } = desk;
  const made = choice?.make(session.moment);
  if (choice && made) session.do(pair, language.inside(choice.name), ...made);
  else if (choice) session.say(words.thisBrakeHasNoTwo);
}

function choosing(desk: CompareDesk): TemplateResult {
  const { session } = desk;
  const { other } = desk.part;
  const groups = others(session.moment);
  const step = (by: 1 | -1) => {
    const next = other && toothOn(session.moment, other, by);
    const does = () => {
      if (next && desk.part.kept)
        session.do(pair, words.bAtTooth(next.bench.state.tooth), desk.part.kept, next);
    };
    return html`<button class="btn" ?disabled=${!next} @click=${does}>${words.bOneTooth(by > 0 ? words.on : words.back)}</button>`;
  };
  const pick = (e: Event): void => {
    const field = e.target as HTMLSelectElement;
    choose(
      desk,
      groups.flatMap((g) => g.list).find((c) => c.id === field.value),
    );
    field.value = '';
  };
  return html`<section class="blk cmp-c" aria-labelledby="cmp-c"><h2 id="cmp-c">${words.setAgainstEachOther}</h2>
    <div class="cmp-two">${choices.map((c) => html`<button class="btn" data-choice=${c.id} @click=${() => choose(desk, c)}>${c.name}</button>`)}
    ${other ? html`${step(-1)}${step(1)}` : nothing}</div>
    <label>${words.somethingElseInB} <select class="pick" @change=${pick}><option value="">${words.choose}</option>${groups.map((g) => html`<optgroup label=${g.group}>${g.list.map((c) => html`<option value=${c.id}>${c.name}</option>`)}</optgroup>`)}</select></label>
    <div class="cmp-three"><button class="btn" @click=${() => session.do(swap)}>${words.swap}</button>
      <button class="btn" ?disabled=${!other} @click=${() => session.do(take)}>${words.bOnTheBench}</button>
      <button class="btn" @click=${() => session.do(keep)}>${words.benchIsA}</button></div>
    <p>${words.aIsKeptInEvery} <button class="txt" @click=${() => session.do(forget)}>${words.forgetIt}</button></p>
  </section>`;
}

export function compareSide({ size }: PageView, desk: CompareDesk): TemplateResult {
  const same = desk.alike;
  return html`<section class="blk h"><h1>${words.compare}</h1><p role="status">${sentence(desk)}</p></section>
    ${size === 'narrow' ? compareTable(desk) : nothing}
    ${differing(desk)}
    ${choosing(desk)}
    ${same ? html`<section class="blk cmp-a" aria-labelledby="cmp-a"><h2 id="cmp-a">${words.alike}</h2><p>${same}.</p></section>` : nothing}`;
}

/** Figures of both, under the drawing. */
const ROWS: readonly (readonly [name: string, keys: readonly string[], digits: number])[] = [
  [words.pedalTravelMm, ['pedalTravel'], 1],
  [words.linePressureBar, ['linePressure'], 1],
  [words.brakeTorqueNM, ['torque'], 0],
  [words.brakeFactor, ['brakeFactor'], 2],
  [words.clearanceNowFrontAndRear, ['clearanceFront', 'clearanceRear'], 2],
  [words.clearanceAtRestMm, ['restClearanceMean'], 2],
];

/** Figures of both at the pedal; what is the same in both is quieter. */
export function compareTable(desk: CompareDesk): TemplateResult {
  // At one travel the pedal stands where it was put.
  const rows = ROWS.slice(desk.part.by === 'travel' ? 1 : 0).map(([name, keys, digits]) => {
    const told = keys.map((key) => desk.reading(key));
    const of = (one: 0 | 1): string =>
      told.map((t) => (Number.isFinite(t[one]) ? number(t[one], digits) : '–')).join(' · ');
    return { name, a: of(0), b: of(1) };
  });
  return html`<table class="cmp-t" aria-label=${words.figuresOfBoth}><thead><tr><th scope="col">${words.atThisPedal}</th><th scope="col">A</th><th scope="col">B</th></tr></thead>
    <tbody>${rows.map((r) => html`<tr class=${r.a === r.b ? 'same' : ''} data-row=${r.name}><th scope="row">${r.name}</th><td>${r.a}</td><td>${r.b}</td></tr>`)}</tbody></table>`;
}

/** The one pedal. */
export function compareControls({ session, size }: PageView, desk: CompareDesk): TemplateResult {
  const { at, by } = desk.part;
  const travel = by === 'travel';
  const { end, a, b } = desk.scale;
  const most = travel ? end : 60;
  const unit = travel ? 'mm' : 'bar';
  const mark = (x: number, letter: string) =>
    html`<i class="cmp-m" .style=${`left:${(100 * Math.min(x, end)) / end}%`}>${letter}</i>`;
  const marks =
    Math.abs(a - b) < 0.04 * end
      ? mark((a + b) / 2, a < b ? 'A B' : 'B A')
      : html`${mark(a, 'A')}${mark(b, 'B')}`;
  return html`<section class="blk ctl cmp-p" aria-label=${words.controls}>
    ${size === 'wide' ? html`<div class="seg" role="group" aria-label=${words.show}>${LAYERS.filter((l) => l !== 'ghost').map((l) => html`<button class=${session.layers[l] ? 'on' : ''} aria-pressed=${session.layers[l]} @click=${() => session.toggle(l)}>${{ fan: words.gapFan, comb: labelWords.comb, heat: labelWords.heat }[l as 'fan']}</button>`)}</div>` : nothing}
    <div class="seg" role="group" aria-label=${words.theOnePedal}>${(['travel', 'pressure'] as const).map((x) => html`<button class=${by === x ? 'on' : ''} aria-pressed=${by === x} @click=${() => session.do(pushBy, x)}>${words.same(x)}</button>`)}</div>
    <div class="cmp-s"><label for="one-pedal">${words.onePedal(html`<b>${number(at, 1)} ${unit}</b>`)}</label>
      ${travel ? html`<div class="cmp-ms" aria-hidden="true">${marks}</div>` : nothing}
      <input id="one-pedal" type="range" min="0" max=${most} step=${travel ? 0.1 : 1} .value=${String(at)} aria-valuetext=${`${number(at, 1)} ${unit}`} @input=${(e: Event) => session.do(pushTo, Number((e.target as HTMLInputElement).value))} @change=${() => session.close()} />
      ${travel ? html`<p>${words.of40BarAAtMm(number(a, 1), number(b, 1))}</p>` : nothing}</div>
    <button class="btn p tall" @click=${() => desk.press()}>${at > 0 ? words.letGo : words.pressBoth}</button>
  </section>`;
}
