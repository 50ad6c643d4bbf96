import { html, svg, type TemplateResult } from 'lit';
import { parkHill as texts } from '../../../sim/words/en.ts';
import { number } from '../../format.ts';
import type { ParkDesk } from './desk.ts';
import { asked } from './words.ts';

/** Steepest hill that is drawn as it is, degrees. */
const STEEPEST = 24;

/** Slower than this the vehicle stands, mm/s: creep of bristles that stretch is slower. */
const STANDS = 0.01;

/** What the wheel does while the chocks are away. */
function rolling(desk: ParkDesk): TemplateResult {
  const { speed, way } = desk.rolled;
  const says =
    speed < STANDS
      ? texts.standsGaveMm(number(way, 2))
      : speed < 20
        ? texts.creepsMmS(number(speed, 1))
        : texts.rollsKmHM(number(speed * 3.6e-3, 1), number(way / 1000, 1));
  return html`<span class=${speed < STANDS ? '' : 'bad'} data-rolling=${speed.toFixed(3)}>${says}</span>`;
}

/** The van on its hill, a line figure; its nose is where the wheel's front is. The braked wheel is yellow. */
export function hillFigure(desk: ParkDesk): TemplateResult {
  const { nose, rule } = desk;
  const h = desk.hill();
  const slope = rule.percent / 100;
  const angle =
    (180 / Math.PI) * (rule.kind === 'slope' ? Math.atan(slope) : Math.asin(Math.min(1, slope)));
  const drawn = Math.min(angle, STEEPEST);
  // Nose down: the ground falls to the left.
  const turn = nose === 'down' ? -drawn : drawn;
  const steep = Math.tan((drawn * Math.PI) / 180);
  const left = nose === 'down' ? 122 : 122 - 190 * steep;
  const right = nose === 'down' ? 122 - 190 * steep : 122;
  const middle = (left + right) / 2;
  const roll = nose === 'down' ? -1 : 1;
  const can = Number.isFinite(h.can)
    ? texts.canHold(number(Math.floor(h.can / 1000), 0))
    : texts.aShoeLocks;
  return html`<div class="park-hill">
    <svg class=${desk.session.wheel === 'right' ? 'mirrored' : ''} viewBox="0 0 210 140" role="img" aria-label=${texts.vehicleNoseOn(nose, asked(rule))}>
      <path d=${`M10 ${left}L200 ${right}V134H10Z`} fill="color-mix(in srgb, var(--ink) 7%, transparent)" />
      <path d=${`M10 ${left}L200 ${right}`} stroke="var(--ink)" stroke-width="2.6" fill="none" />
      ${svg`<g transform=${`translate(105 ${middle}) rotate(${turn.toFixed(2)})`} fill="var(--sheet)" stroke="var(--ink)" stroke-width="2">
        <path d="M-66 -12V-36Q-62 -44 -52 -46L-36 -68Q-33 -72 -26 -72H64Q68 -72 68 -68V-12Z" />
        <path d="M-48 -46L-36 -63Q-34 -66 -30 -66H-16V-44H-48Z" /><path d="M-8 -72V-14M-66 -26H-58" fill="none" />
        <circle cx="-40" cy="-12" r="11.5" fill="var(--panel)" /><circle cx="-40" cy="-12" r="4" />
        <circle cx="42" cy="-12" r="11.5" fill="var(--warn)" /><circle cx="42" cy="-12" r="4" />
        ${h.holds ? '' : svg`<path d=${`M${roll * 74} -40h${roll * 14}v-8l${roll * 14} 14l${roll * -14} 14v-8h${roll * -14}Z`} fill="var(--bad)" stroke="var(--sheet)" />`}
      </g>`}
    </svg>
    <div><b>${asked(rule)}</b><span>${number(angle, 1)}°${angle > STEEPEST ? texts.drawn(STEEPEST) : ''}</span><span>${texts.needsNMAWheel(number(Math.ceil(h.need / 1000 - 1e-9), 0))}</span><span>${can}</span>${desk.loose ? rolling(desk) : h.holds ? '' : html`<span class="bad">${texts.rollsThisWay}</span>`}</div></div>`;
}
