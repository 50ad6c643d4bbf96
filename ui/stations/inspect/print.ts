import { html, nothing, render, type TemplateResult } from 'lit';
import { unsafeSVG } from 'lit/directives/unsafe-svg.js';
import type { Wheel } from '../../../sim/index.ts';
import { inspectPrint as texts } from '../../../sim/words/en.ts';
import {
  type LimitKey,
  largestBore,
  outOfRound,
  type Verdict,
  wheels,
} from '../../../sim/workshop/index.ts';
import { cautions } from '../../cautions.ts';
import { down, number } from '../../format.ts';
import { drawBrake } from '../../stage/scene.ts';
import { shapesText } from '../../stage/svg.ts';
import { fitView, toPx } from '../../stage/view.ts';
import { printTheme } from '../../theme.ts';
import { balloons } from './balloons.ts';
import { cutText } from './cut.ts';
import type { InspectDesk } from './desk.ts';
import { axleLines, heads, type Line, limitWords, lines } from './lines.ts';
import { limitKeys } from './paper.ts';
import { readAt, textAt } from './read.ts';
import { forecastText } from './words.ts';

/** The sheet on one page of A4, black and white; blank for the bench, or with what was found. */

const words: Readonly<Record<Verdict['level'], string>> = {
  good: '✓',
  watch: '!',
  bad: '✗',
  none: '',
};

function drawing(desk: InspectDesk): TemplateResult {
  const { session } = desk;
  const view = { ...fitView(session.brake, { width: 300, height: 230, band: 23 }), k: 0.72 };
  const input = {
    brake: session.brake,
    state: session.state,
    instant: session.rest,
    rest: session.rest,
    layers: {},
    view,
    theme: printTheme,
    roles: 'none' as const,
  };
  const plain = drawBrake(input);
  // Line 0 leaves no balloon filled: on paper all places count alike.
  const extra = balloons(input, { ...(lines[0] as Line), number: 0 });
  const shapes = plain.shapes.filter((s) => s.group !== 'turn arrow');
  const text = shapesText(
    { shapes: [...shapes, ...extra.shapes], labels: [], view },
    printTheme,
    'print',
  );
  return html`<svg viewBox="0 0 300 230" width="300" height="230" role="img" aria-label=${texts.theBrakeWithThePlaces}>${unsafeSVG(text)}${extra.labels.map(
    (l) => {
      const [x, y] = toPx(view, l.at);
      return unsafeSVG(
        `<text x="${x.toFixed(1)}" y="${(y + 5).toFixed(1)}" text-anchor="middle" font-size="14" font-weight="700">${l.text}</text>`,
      );
    },
  )}</svg>`;
}

function found(desk: InspectDesk, line: Line, wheel: Wheel): string {
  const { read } = desk.judged;
  if (line.kind === 'worked') {
    const f = read.found[wheel];
    const v = line.key === 'largest' ? largestBore(f) : outOfRound(f);
    return Number.isNaN(v) ? '' : number(-down(-v, 2), 2);
  }
  const text = textAt(desk.paper, read, line, wheel);
  if (line.kind === 'look') return text === 'good' ? line.good : text === 'bad' ? line.bad : '';
  const r = readAt(read, line, wheel);
  // Words as typed, with the millimetres where they were other units.
  return r?.ok && line.unit && r.echo.includes(' = ') ? `${text} = ${number(r.value, 2)}` : text;
}

/** What is asked once stands over the table. */
const asked = lines.filter((l) => l.kind === 'ask');
const rows = lines.filter((l) => l.kind !== 'ask');

/** Limits of the teaching brake are left out of a blank sheet: it is taken to a real vehicle. */
function limit(desk: InspectDesk, key: LimitKey | undefined, blank: boolean): string {
  if (!key) return '';
  const { read } = desk.judged;
  const [sense] = limitWords[key];
  const value = read.limits[key];
  const theirs = read.whose[key];
  const { id, whose } = desk.limitSet;
  if (value === null || (blank && id === 'teaching' && theirs === whose)) return `${sense} ______`;
  return `${sense} ${number(value, 2)}${theirs === 'typed here' ? ' *' : ''}`;
}

/** The sheet as a page: blank, or with what was found. */
export function measurementPage(desk: InspectDesk, blank: boolean): TemplateResult {
  const { verdict, read } = desk.judged;
  const { paper } = desk;
  const { brake } = desk.session;
  const told = blank ? '' : forecastText(desk.forecast);
  const cell = (line: Line, w: Wheel): TemplateResult => {
    const v = line.verdict && !blank ? verdict.wheels[w][line.verdict] : null;
    return html`<td class="f">${blank ? '' : found(desk, line, w)}</td><td class="v">${v?.words ? html`<b>${words[v.level]}</b> ${v.words}` : nothing}</td>`;
  };
  const set = new Set(limitKeys.filter((k) => read.limits[k] !== null).map((k) => read.whose[k]));
  const from = blank
    ? ''
    : [...set].map((w) => (w === 'typed here' ? texts.typedIn : w)).join(', ');
  return html`<article class="paper">
    <header><div><h1>${texts.brakeMeasurementSheet}</h1><p>${texts.leftRearWheelFromOutside(brake.title)}</p>
      <p class="who">${asked.map((l) => html`${l.name}: <u>${(blank ? '' : found(desk, l, 'left')) || '\u2003\u2003\u2003'}</u> mm. `)}${texts.limitsOf(from || '______________________')}</p></div>
      <dl>${heads.map(([key, name]) => html`<dt>${name}</dt><dd>${blank ? '' : (paper.head[key] ?? '')}</dd>`)}</dl></header>
    <section class="draw">${drawing(desk)}<ol>${[...new Map(lines.map((l) => [l.number, l])).values()].map((l) => html`<li value=${l.number}>${l.number === 1 ? texts.drumDiameterAt3Angles : l.number === 4 ? texts.leadingLiningToeThinnestHeel : l.number === 5 ? texts.trailingLiningFacesOfAll : l.number === 8 ? texts.adjusterToothMovesAndHolds : l.name}</li>`)}</ol></section>
    <table><thead><tr><th class="n">${texts.no}</th><th class="m">${texts.measureMm}</th>${wheels.map((w) => html`<th class="f">${w === 'left' ? texts.left : texts.right}</th><th class="v">${texts.marginVerdict}</th>`)}<th class="l">${texts.limit}</th></tr></thead>
      <tbody>${rows.map((l) => html`<tr><td>${l.number}</td><th>${('short' in l && l.short) || l.name}</th>${wheels.map((w) => cell(l, w))}<td>${limit(desk, l.limit, blank)}</td></tr>`)}</tbody></table>
    <section class="axle">${axleLines.map((l) => html`<span>${l.name}${l.unit ? `, ${l.unit}` : ''}: <u>${(blank ? '' : paper.axle[l.key]) || '\u2003\u2003\u2003'}</u></span>`)}</section>
    <section class="result"><p><b>${blank ? texts.verdict : verdict.title}</b></p>
      ${blank ? html`<p>${texts.distanceLeftMarginRateKm}</p>` : html`${verdict.reasons.slice(0, 5).map((r) => html`<p>${r}</p>`)}${verdict.reasons.length > 5 ? html`<p>${texts.andMoreOnThePage(verdict.reasons.length - 5)}</p>` : nothing}${cutText(desk) ? html`<p>${cutText(desk)}</p>` : nothing}${told ? html`<p>${told}</p>` : nothing}`}
      <p class="sign">${texts.signature}</p></section>
    <footer><p><b>${texts.sceneVersion1TeachingBrake(brake.title, brake.name)}</b></p>
      <p>${cautions.paper}</p>
      <p>${cautions.standing}</p></footer>
  </article>`;
}

/** Puts the sheet on paper: prepares the page that only the printer sees, and opens the browser's dialog. */
export function printSheet(desk: InspectDesk, blank: boolean): void {
  const at = document.querySelector('#print') ?? document.createElement('div');
  at.id = 'print';
  document.body.append(at);
  render(measurementPage(desk, blank), at as HTMLElement);
  window.print();
}
