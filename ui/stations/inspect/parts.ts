import { css, html, nothing, type TemplateResult } from 'lit';
import type { Brake, Wheel } from '../../../sim/index.ts';
import { inspectParts as texts } from '../../../sim/words/en.ts';
import {
  judgePart,
  largestBore,
  type NewPart,
  type PartVerdict,
  unlikeSides,
  wheels,
} from '../../../sim/workshop/index.ts';
import { marks } from '../../pieces/marks.ts';
import { NARROW } from '../../pieces/page-sizes.ts';
import { bending, ownOf, rigid, rigOfBrake } from '../../record/derive.ts';
import { Kept } from '../../record/kept.ts';
import type { Session } from '../../session.ts';
import { readTyped, type TypedSize } from '../../typed-size.ts';
import { deskOf } from '../station.ts';
import { InspectDesk } from './desk.ts';
import { newPartNames, type PartKey } from './lines.ts';
import { LONGEST, type Paper } from './paper.ts';
import { writePart } from './part.ts';

/** New parts, looked at before anything goes together. */

export const partStyles = css`
  .parts { padding: 10px 14px 12px; border-top: 2px solid var(--ink); }
  .parts p { margin: 4px 0; }
  .parts .grid { display: grid; grid-template-columns: minmax(120px, 1fr) minmax(90px, 160px) minmax(90px, 160px); gap: 6px 12px; align-items: start; max-width: 640px; }
  .parts input, .parts select { width: 100%; min-height: 33px; border: 1px solid var(--ink2); padding: 0 7px; font-weight: 650; min-width: 0; }
  .parts [aria-invalid='true'] { border: 2px solid var(--bad); }
  .parts small { display: block; font-size: 14px; color: var(--ink2); }
  .parts .bad { color: var(--bad); font-weight: 600; }
  .parts ul { list-style: none; margin: 8px 0 0; padding: 0; }
  .parts li { display: flex; gap: 8px; align-items: flex-start; padding: 3px 0; }
  .parts .mark-v { width: 20px; height: 20px; margin-top: 1px; }
  @media ${NARROW} {
    .parts { padding: 12px; font-size: 16px; }
    .parts .grid { grid-template-columns: 1fr 1fr; }
    .parts .grid > span { grid-column: 1 / 3; }
    .parts .grid > .head { grid-column: auto; }
    .parts .grid > .corner { display: none; }
    .parts input, .parts select { min-height: 58px; font-size: 17px; }
    .parts small { font-size: 14.5px; }
  }
`;

const hows: Readonly<Record<PartKey, string>> = texts.hows;
const ranges: Readonly<Record<Exclude<PartKey, 'hand'>, readonly [number, number]>> = {
  lining: [1, 25],
  ground: [40, 260],
  width: [5, 200],
  bore: [8, 60],
};
const keys = Object.keys(newPartNames) as readonly PartKey[];
const hands = texts.hands;

/** A verdict, and what it is of rigid shoes where the bench's bend. */
interface ToldVerdict extends PartVerdict {
  readonly rigid: string | null;
}
interface Judged {
  readonly reads: Readonly<Record<Wheel, Readonly<Partial<Record<PartKey, TypedSize>>>>>;
  readonly verdicts: Readonly<Record<Wheel, readonly ToldVerdict[]>>;
  readonly unlike: readonly string[];
}

export class PartDesk {
  readonly session: Session;
  readonly #judged = new Kept<Judged>();

  constructor(session: Session) {
    this.session = session;
  }
  get #desk(): InspectDesk {
    return deskOf(InspectDesk, this.session);
  }
  get paper(): Paper {
    return this.#desk.paper;
  }
  write(wheel: Wheel, key: PartKey, text: string): void {
    this.session.do(writePart, wheel, key, text);
  }

  /** Is the drum on the sheet another than the bench's? Then nothing can be said of a fit in it. */
  get otherDrum(): boolean {
    const { axle } = this.#desk.judged.read;
    const typed = axle.drumNew?.ok ? axle.drumNew.value : null;
    // New diameters of drums in use lie further apart than this (common practice), mm.
    return typed !== null && Math.abs(typed - 2 * this.session.brake.drum.radiusNew) > 0.5;
  }

  get judged(): Judged {
    const { paper } = this;
    const { bending: bends, brake, moment } = this.session;
    const plain = rigid(brake);
    const own = ownOf(moment.bench.brake, moment.shelf)?.sizes ?? null;
    const { found } = this.#desk.judged.read;
    return this.#judged.of([paper, plain, bends, own, found, this.otherDrum], () => {
      const read = (w: Wheel) => {
        const out: Partial<Record<PartKey, TypedSize>> = {};
        for (const key of keys) {
          const text = paper.parts[w][key] ?? '';
          if (key === 'hand' || text.trim() === '') continue;
          out[key] = readTyped(text, 'mm', ranges[key], paper.plain);
        }
        return out;
      };
      const reads = { left: read('left'), right: read('right') };
      const part = (w: Wheel): NewPart => {
        const sizes = Object.fromEntries(
          Object.entries(reads[w]).flatMap(([k, r]) => (r.ok ? [[k, r.value]] : [])),
        );
        const hand = paper.parts[w].hand;
        return hand === 'alike' || hand === 'this' || hand === 'other' ? { ...sizes, hand } : sizes;
      };
      const parts = { left: part('left'), right: part('right') };
      const judge = (w: Wheel): readonly ToldVerdict[] => {
        const bore = largestBore(found[w]);
        const at = Number.isNaN(bore) ? 2 * plain.drum.radiusNew : bore;
        const of = (b: Brake) => judgePart(rigOfBrake(b), parts[w], at, own);
        const beside = of(plain);
        // New linings were worn under no shoes: they suit either kind as they are.
        return bends
          ? of(bending(plain)).map((v, i) => ({
              ...v,
              rigid: v.line === 'fit' ? (beside[i]?.words ?? null) : null,
            }))
          : beside.map((v) => ({ ...v, rigid: null }));
      };
      return {
        reads,
        verdicts: this.otherDrum
          ? { left: [], right: [] }
          : { left: judge('left'), right: judge('right') },
        unlike: unlikeSides(parts),
      };
    });
  }
}

function field(desk: PartDesk, wheel: Wheel, key: PartKey): TemplateResult {
  const label = texts.label(newPartNames[key], wheel);
  const text = desk.paper.parts[wheel][key] ?? '';
  if (key === 'hand') {
    return html`<select aria-label=${label} data-part=${`${wheel}-${key}`} @change=${(e: Event) => desk.write(wheel, key, (e.target as HTMLSelectElement).value)}><option value="" ?selected=${text === ''}></option>${Object.entries(hands).map(([value, name]) => html`<option value=${value} ?selected=${text === value}>${name}</option>`)}</select>`;
  }
  const r = desk.judged.reads[wheel][key];
  return html`<div><input type="text" maxlength=${LONGEST} autocomplete="off" spellcheck="false" aria-label=${label} aria-invalid=${r !== undefined && !r.ok} data-part=${`${wheel}-${key}`} .value=${text} @input=${(e: Event) => desk.write(wheel, key, (e.target as HTMLInputElement).value)} />${r ? html`<small class=${r.ok ? '' : 'bad'}>${r.ok ? r.echo : texts.foundAllowed(r.found, r.allowed)}</small>` : nothing}</div>`;
}

/** Where the drum is another, one's own brake is made: the way there. */
const toOwn = ({ session }: PartDesk): TemplateResult =>
  html`<button class="btn" data-to-own @click=${() => deskOf(InspectDesk, session).toOwn()}>${texts.makeItInMyBrake}</button>`;

export function partsSection(desk: PartDesk): TemplateResult {
  const { verdicts, unlike } = desk.judged;
  const { brake } = desk.session;
  return html`<section class="parts" aria-label=${texts.newParts} data-parts><h2>${texts.newPartsBeforeAnythingGoes}</h2>
    <p>${desk.otherDrum ? html`${texts.theBrakeOnTheBench(brake.title)} ${toOwn(desk)}` : html`${texts.heldAgainstTheBrakeOn(brake.title)}`}</p>
    <div class="grid"><span class="corner"></span><span class="head"><b>${texts.left}</b></span><span class="head"><b>${texts.right}</b></span>${keys.map((key) => html`<span>${newPartNames[key]}${key === 'hand' ? '' : ', mm'}<small>${hows[key]}</small></span>${wheels.map((w) => field(desk, w, key))}`)}</div>
    <ul data-part-verdicts>${unlike.map((u) => html`<li>${marks.bad}<span><b>${texts.unlikeSides}</b> ${u}</span></li>`)}${wheels.flatMap((w) => verdicts[w].map((v) => html`<li>${marks[v.level]}<span><b>${w === 'left' ? texts.left : texts.right}.</b> ${v.words}${v.rigid === null ? nothing : html`<small data-rigid>${texts.rigid(v.rigid === v.words ? texts.theSame : v.rigid)}</small>`}</span></li>`))}</ul></section>`;
}
