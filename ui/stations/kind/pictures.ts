import { svg, type TemplateResult } from 'lit';
import type { KindId, SetBy } from './part.ts';

/** The kinds of drum brake and of their adjusters as one sees them from outside, drawn plainly. */

const at = (radius: number, degrees: number): string => {
  const a = (degrees * Math.PI) / 180;
  return `${(radius * Math.cos(a)).toFixed(1)} ${(-radius * Math.sin(a)).toFixed(1)}`;
};

/** A band along a circle, from one angle to another, counter-clockwise. */
const band = (inner: number, outer: number, from: number, to: number): string => {
  const large = to - from > 180 ? 1 : 0;
  return `M${at(outer, from)}A${outer} ${outer} 0 ${large} 0 ${at(outer, to)}L${at(inner, to)}A${inner} ${inner} 0 ${large} 1 ${at(inner, from)}Z`;
};

/** A pair of shoes with their linings, the left from `front` and the right from `rear`, degrees. */
const shoes = (
  radius: number,
  front: readonly [number, number],
  rear: readonly [number, number],
): TemplateResult =>
  svg`<path class="web" d=${band(radius - 24, radius - 6, 103, 257)} /><path class="web" d=${band(radius - 24, radius - 6, -77, 77)} />
    <path class="lining" d=${band(radius - 6, radius, ...front)} /><path class="lining" d=${band(radius - 6, radius, ...rear)} />`;

/** A star wheel on its screw, across the picture at a height. */
const screw = (y: number): TemplateResult =>
  svg`<rect class="strut" x="-19" y=${y - 4} width="38" height="8" /><rect class="adj" x="-4" y=${y - 10} width="8" height="20" />`;

/** Strut at the top with a bit of its adjuster. */
const strut = svg`<rect class="strut" x="-50" y="-42" width="100" height="8" /><path class="adj" d="M-50 -46l16 -2v22l-10 6z" />`;

export const kindPictures: Readonly<Record<KindId, TemplateResult>> = {
  pins: svg`<circle class="drum" r="92" /><circle class="plate" r="82" />${shoes(82, [125, 235], [-55, 55])}
    <rect class="cyl" x="-24" y="-70" width="48" height="22" />${strut}
    <path class="block" d="M-26 62H26V80H-26Z" /><circle class="pin" cx="-15" cy="71" r="5" /><circle class="pin" cx="15" cy="71" r="5" />
    <circle class="hub" r="22" />`,
  flats: svg`<circle class="drum" r="92" /><circle class="plate" r="82" />${shoes(82, [125, 235], [-55, 55])}
    <rect class="cyl" x="-24" y="-70" width="48" height="22" />${strut}
    <path class="block" d="M-9 54H9V84H-9Z" /><circle class="pin" cy="76" r="3" />
    <circle class="hub" r="22" />`,
  servo: svg`<circle class="drum" r="92" /><circle class="plate" r="82" />${shoes(82, [135, 215], [-60, 60])}
    <circle class="pin" cy="-68" r="8" /><rect class="cyl" x="-24" y="-56" width="48" height="20" />${screw(66)}
    <path class="push" d="M-30 50Q0 36 26 48" /><path class="tip" d="M26 48l-9 -8l-2 9z" />
    <circle class="hub" r="22" />`,
  'in disc': svg`<circle class="disc" r="92" /><path class="caliper" d=${band(52, 98, 150, 200)} />
    <circle class="drum" r="58" /><circle class="plate" r="51" />${shoes(51, [125, 235], [-55, 55])}
    <rect class="cable" x="-16" y="-44" width="32" height="9" />${screw(40)}<circle class="hub" r="14" />`,
};

const teeth = (y: number): TemplateResult =>
  svg`<path class="adj" d="M20 ${y - 16}h8l4 4h-4l4 6h-4l4 6h-4l4 6h-4l4 6h-12z" />`;
const thread = (y: number): TemplateResult =>
  svg`<rect class="strut" x="-46" y=${y - 6} width="40" height="12" /><rect class="strut" x="10" y=${y - 4} width="36" height="8" /><path class="adj" d="M-6 ${y - 16}h14v32h-14z" /><path class="thin" d="M-6 ${y - 10}h14M-6 ${y - 3}h14M-6 ${y + 4}h14M-6 ${y + 11}h14M14 ${y - 4}l4 8M20 ${y - 4}l4 8M26 ${y - 4}l4 8" />`;

export const setByPictures: Readonly<Record<SetBy, TemplateResult>> = {
  toothed: svg`<rect class="strut" x="-10" y="-8" width="60" height="14" /><path class="adj" d="M-40 -30l26 -4q10 26 4 52l-14 12q-14 -20 -16 -60z" />${teeth(0)}`,
  shoe: svg`<path class="web" d="M-50 -50h20v100h-20z" />${thread(8)}<path class="adj" d="M-34 -34h30l8 24h-8l-6 -14h-24z" />`,
  lever: svg`${thread(8)}<path class="lever" d="M34 -50h12v60h-12z" /><path class="adj" d="M40 -30h-40l0 12h40z" />`,
  reverse: svg`${thread(14)}<path class="adj" d="M-2 -50h8v26l8 18l-6 3l-10 -20z" /><path class="push" d="M34 -34a26 26 0 0 0 -44 -8" /><path class="tip" d="M-14 -46l12 -3l-3 12z" />`,
  taper: svg`<path class="web" d="M-50 -50h22v100h-22z" /><rect class="strut" x="-6" y="-8" width="54" height="16" /><path class="adj" d="M-28 -46h22l-8 92h-8z" />`,
  hand: svg`${thread(-2)}<path class="lever" d="M-4 50l8 0l-2 -36l-4 0z" /><path class="hub" d="M-34 36q10 -22 32 -14v28h-32zM34 36q-10 -22 -32 -14v28h32z" />`,
};
