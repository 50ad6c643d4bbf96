import { css, html, svg, type TemplateResult } from 'lit';
import { COMPACT, NARROW } from '../../pieces/page-sizes.ts';
import { markOf } from '../park/marks.ts';

/**
 * Three kinds of drum brake side by side, and which of them this bench is: much that is true of one is
 * false of the others. How they are told apart is common practice.
 */

interface Kind {
  readonly id: 'leading' | 'servo' | 'in disc';
  readonly name: string;
  /** How to tell it. */
  readonly tell: string;
  readonly here: boolean;
  readonly says: string;
}

const kinds: readonly Kind[] = [
  {
    id: 'leading',
    name: 'Leading and trailing shoe',
    tell: 'Heels at the bottom on a fixed block or on two pins. The strut with its adjuster lies at the top, under the cylinder.',
    here: true,
    says: 'This bench. All of it holds.',
  },
  {
    id: 'servo',
    name: 'Servo, also duo-servo',
    tell: 'One pin at the top, over the cylinder. At the bottom nothing is fixed: a screw with a star wheel joins the shoes. The front (primary) lining is often shorter than the rear (secondary) one.',
    here: false,
    says: 'Not this bench. One shoe pushes the other round, forwards and backwards.',
  },
  {
    id: 'in disc',
    name: 'Drum inside a disc (drum in disc, drum-in-hat)',
    tell: 'A disc and its caliper outside. Small shoes inside the disc’s hat are for parking alone: a cable spreads them, there is no wheel cylinder. A star wheel is set by hand through a hole.',
    here: false,
    says: 'Not this bench. The pedal does not reach these shoes, and nothing clicks.',
  },
];

/** What does not carry over, said once. */
const CARRY =
  'Of a servo brake or a drum inside a disc do not take from here: directions (which shoe leads, forwards against backwards), the shares of the two shoes, and what turns the adjuster. What a lip, rust, a seized cable and a worn drum do holds for all of them.';

/** Words under which people look for it. */
const WORDS =
  'which kind of drum brake is mine servo duo-servo self-energising primary secondary shoe star wheel disc rotor hat handbrake parking brake shoes inside drum-in-disc drum in hat leading trailing';

/** Is it what these words look for? With no words it is. */
export const speaksOfKinds = (words: readonly string[]): boolean => {
  const text = ` ${WORDS} ${kinds.map((k) => `${k.name} ${k.tell}`).join(' ')}`
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ');
  return words.every((w) => text.includes(` ${w}`));
};

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

const pictures: Readonly<Record<Kind['id'], TemplateResult>> = {
  leading: svg`<circle class="drum" r="92" /><circle class="plate" r="82" />${shoes(82, [125, 235], [-55, 55])}
    <rect class="cyl" x="-24" y="-70" width="48" height="22" /><rect class="strut" x="-50" y="-42" width="100" height="8" /><path class="adj" d="M-50 -46l16 -2v22l-10 6z" />
    <path class="block" d="M-26 62H26V80H-26Z" /><circle class="pin" cx="-15" cy="71" r="5" /><circle class="pin" cx="15" cy="71" r="5" />
    <circle class="hub" r="22" />`,
  servo: svg`<circle class="drum" r="92" /><circle class="plate" r="82" />${shoes(82, [135, 215], [-60, 60])}
    <circle class="pin" cy="-68" r="8" /><rect class="cyl" x="-24" y="-56" width="48" height="20" />${screw(66)}
    <path class="push" d="M-30 50Q0 36 26 48" marker-end="url(#kind-arrow)" />
    <circle class="hub" r="22" />`,
  'in disc': svg`<circle class="disc" r="92" /><path class="caliper" d=${band(52, 98, 150, 200)} />
    <circle class="drum" r="58" /><circle class="plate" r="51" />${shoes(51, [125, 235], [-55, 55])}
    <rect class="cable" x="-16" y="-44" width="32" height="9" />${screw(40)}<circle class="hub" r="14" />`,
};

/** The kinds with their pictures. */
export const kindsCard =
  (): TemplateResult => html`<section class="kinds" aria-label="Which kind is yours?" data-kinds>
  <h2>Which kind is yours?</h2>
  <svg class="ends" width="0" height="0" aria-hidden="true"><defs><marker id="kind-arrow" viewBox="0 0 10 10" refX="8" refY="5" markerWidth="6" markerHeight="6" orient="auto"><path d="M0 0L10 5L0 10Z" class="tip" /></marker></defs></svg>
  <div class="three">${kinds.map(
    (k) => html`<div class="kind ${k.here ? 'here' : ''}" data-kind=${k.id}>
      <svg class="pic" viewBox="-102 -102 204 204" role="img" aria-label=${`${k.name}, drawn from outside`}>${pictures[k.id]}</svg>
      <b>${k.name}</b><p>${k.tell}</p><p class="is">${markOf(k.here ? 'tick' : 'cross')}<span>${k.says}</span></p></div>`,
  )}</div>
  <p class="carry">${CARRY}</p></section>`;

export const kindStyles = css`
  .kinds { border: 2px solid var(--ink); margin-top: 16px; background: var(--sheet); }
  .kinds h2 { margin: 0; padding: 8px 16px; border-bottom: 1px solid var(--rule); }
  .ends { position: absolute; }
  .three { display: grid; grid-template-columns: repeat(3, minmax(0, 1fr)); }
  .kind { padding: 10px 16px; border-left: 1px solid var(--rule); }
  .kind:first-child { border-left: 0; }
  .kind.here { background: var(--panel); box-shadow: inset 0 5px 0 var(--ink); }
  .kind .pic { display: block; width: 100%; max-width: 190px; height: auto; margin: 4px auto 8px; }
  .kinds p { margin: 3px 0 0; }
  .kinds .is { display: flex; gap: 8px; align-items: flex-start; font-weight: 640; }
  .kinds .is svg { width: 20px; height: 20px; flex: none; margin-top: 2px; }
  .kinds .carry { margin: 0; padding: 9px 16px 11px; border-top: 2px solid var(--ink); font-weight: 560; }
  .kind .pic * { stroke: var(--ink); stroke-width: 1.6; }
  .drum { fill: var(--drum); } .plate { fill: var(--plate); } .web { fill: var(--web); } .lining { fill: var(--lining); }
  .cyl { fill: var(--fluid); } .strut { fill: var(--strut); } .kind .pic .adj { fill: var(--adj-fill); stroke: var(--adj); } .hub { fill: var(--hub); }
  .pin { fill: var(--ink); } .block { fill: var(--rule); } .disc { fill: var(--drum); } .caliper { fill: var(--rule); } .cable { fill: var(--rule); }
  .kind .pic .push { fill: none; stroke-width: 3; } .tip { fill: var(--ink); }
  @media ${COMPACT} { .kind { padding: 8px 12px; } .kind .pic { max-width: 140px; } }
  @media ${NARROW} {
    .three { grid-template-columns: minmax(0, 1fr); }
    .kind { border-left: 0; border-top: 1px solid var(--rule); display: grid; grid-template-columns: 116px 1fr; gap: 2px 12px; align-items: start; }
    .kind b, .kind p { grid-column: 2; }
    .kind .pic { grid-column: 1; grid-row: 1 / span 3; max-width: 116px; margin: 2px 0; }
  }
`;
