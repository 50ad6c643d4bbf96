import { html, nothing, svg, type TemplateResult } from 'lit';
import type { Point } from '../../../sim/index.ts';
import { parkLever as words } from '../../../sim/words/en.ts';
import { number } from '../../format.ts';
import { after, turnAbout } from '../../stage/geometry.ts';
import { leverBody } from '../../stage/parts/parking.ts';
import { shoeFrame } from '../../stage/place.ts';
import { pathData } from '../../stage/svg.ts';
import { toPx, type View } from '../../stage/view.ts';
import type { ParkDesk } from './desk.ts';

/** Picture of the lever alone: its size, px, and the length of an arrow, px per N. */
const WIDE = 330;
const HIGH = 300;
const PER_NEWTON = 0.034;

const arrow = ([x, y]: Point, force: Point): TemplateResult => {
  const size = Math.hypot(...force);
  const length = Math.max(16, size * PER_NEWTON);
  const [u, v] = [force[0] / size, -force[1] / size];
  const half = Math.max(2, Math.min(5, size * 0.003));
  const head = Math.min(14, length * 0.6);
  const at = (along: number, across: number): string =>
    `${(x + u * along - v * across).toFixed(1)} ${(y + v * along + u * across).toFixed(1)}`;
  return svg`<path d=${`M${at(0, half)}L${at(length - head, half)}L${at(length - head, half * 2.4)}L${at(length, 0)}L${at(length - head, -half * 2.4)}L${at(length - head, -half)}L${at(0, -half)}Z`} fill="var(--ink)" stroke="var(--sheet)" stroke-width="1.2" />`;
};

const text = (x: number, y: number, value: string, anchor: 'start' | 'end', word = '') =>
  svg`<text x=${x} y=${y} text-anchor=${anchor}><tspan class="n">${value}</tspan>${word ? svg`<tspan x=${x} dy="19">${word}</tspan>` : nothing}</text>`;

/** Double-headed dimension between two heights. */
const dimension = (x: number, y1: number, y2: number): TemplateResult =>
  svg`<path d=${`M${x} ${y1}V${y2}`} stroke="var(--ink)" stroke-width="1.3" /><path d=${`M${x} ${y1}l-3.5 9h7ZM${x} ${y2}l-3.5 -9h7Z`} fill="var(--ink)" />`;

/** The free body: the lever, the three forces on it, their arms as dimensions; the sum below. */
export function leverAlonePanel(desk: ParkDesk): TemplateResult {
  const { brake } = desk.session;
  const { wheel, alone, instant } = desk;
  // There the stop bears too, and cable and strut are no balance by themselves.
  const onStop = !(alone.turn > 1e-9);
  if (desk.cable === 0) {
    return html`<h2>${words.theLeverAlone}</h2><p>${words.theHandLeverIsLet}</p>`;
  }
  const scale = 204 / Math.max(80, alone.pivot[1] - alone.hook[1]);
  const view: View = {
    width: WIDE,
    height: HIGH,
    scale,
    origin: [172 - scale * alone.pivot[0], 58 + scale * alone.pivot[1]],
    k: 1,
    text: 1,
    narrow: false,
  };
  const sense =
    (brake.parkingLever.hook[0] - brake.parkingLever.pivot[0]) * brake.parkingLever.pull[1] -
      (brake.parkingLever.hook[1] - brake.parkingLever.pivot[1]) * brake.parkingLever.pull[0] >=
    0
      ? 1
      : -1;
  const frame = after(
    shoeFrame(brake, instant, 'rear'),
    turnAbout(brake.parkingLever.pivot, sense * instant.leverAngle),
  );
  const [pivot, notch, hook] = [alone.pivot, alone.notch, alone.hook].map((p) => toPx(view, p)) as [
    Point,
    Point,
    Point,
  ];
  const strut = Math.hypot(...alone.strut);
  const back = (at: Point, force: Point): Point => {
    // The strut pushes: its arrow ends at the notch.
    const length = Math.max(16, strut * PER_NEWTON);
    const size = Math.hypot(...force);
    return [at[0] - (force[0] / size) * length, at[1] + (force[1] / size) * length];
  };
  const edge = WIDE - 8;
  const short = WIDE - 78;
  const n = (value: number, digits = 0): string => number(value, digits);
  const right = (y: number, to: number) =>
    svg`<path d=${`M${hook[0] + 24} ${y}H${to}`} stroke="var(--rule)" stroke-width="1" />`;
  return html`<h2>${words.theLeverAlone}</h2>
    <svg class="park-lever" viewBox="0 0 ${WIDE} ${HIGH}" role="img" aria-label=${words.parkingLeverCutFreeCable(n(desk.cable), n(strut), n(wheel.pivotForce))}>
      ${right(pivot[1], edge)}${right(notch[1], short + 6)}${right(hook[1], edge)}
      <path d=${pathData(leverBody(brake), view, frame)} fill="var(--parking-lever)" stroke="var(--ink)" stroke-width="1.6" />
      <circle cx=${pivot[0]} cy=${pivot[1]} r="8" fill="var(--sheet)" stroke="var(--ink)" stroke-width="1.6" />
      <circle cx=${hook[0]} cy=${hook[1]} r="3.4" fill="var(--sheet)" stroke="var(--ink)" stroke-width="1.2" />
      ${arrow(pivot, alone.pivotOnLever)}${arrow(back(notch, alone.strut), alone.strut)}${arrow(hook, alone.cable)}
      ${text(pivot[0] - 14, pivot[1] - 36, `${n(wheel.pivotForce)} N`, 'end', words.itsPivot)}
      ${text(notch[0] - 6, notch[1] + 30, `${n(strut)} N`, 'end', words.strut)}
      ${text(hook[0] - 24, hook[1] + 6, `${n(desk.cable)} N`, 'end', words.cable)}
      ${dimension(short, pivot[1], notch[1])}${text(short + 8, (pivot[1] + notch[1]) / 2 + 6, n(alone.strutArm, 1), 'start')}
      ${dimension(edge - 6, pivot[1], hook[1])}${text(edge - 14, (notch[1] + hook[1]) / 2 + 6, n(alone.cableArm, 1), 'end')}
    </svg>
    <div class="park-sum" data-sum>
      ${
        onStop
          ? html`<div>${words.stillOnItsStopThe(html`<b>${n(desk.cable)} N</b>`)}</div>`
          : html`<div>${words.nFrontShoe(n(desk.cable), n(alone.cableArm, 3), n(alone.strutArm, 3), html`<b>${n(strut)} N</b>`)}</div>
      <div>${words.rearShoe(n(strut), n(desk.cable), html`<b>${n(wheel.pivotForce)} N</b>`)}</div>`
      }
      <small>${words.armsInMmSquareTo(n(alone.ratio, 2), n(alone.ratioAtRest, 2))}</small>
    </div>`;
}
