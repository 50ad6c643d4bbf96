import { css, html, nothing, type TemplateResult } from 'lit';
import { language, appNamesBeside as texts } from '../../sim/words/en.ts';
import { NARROW, type PageSize } from '../pieces/page-sizes.ts';
import { show } from '../record/guest.ts';
import { answerName, askNames, passName, stopNames } from '../record/naming.ts';
import type { Session } from '../session.ts';
import { partsOf } from '../stage/hit.ts';
import type { NumberedName } from '../stage/layers/names.ts';
import { type PartId, partNames } from '../stage/part-names.ts';
import { drawBrake } from '../stage/scene.ts';
import type { Drawing } from '../stage/shapes.ts';
import type { WallAction } from '../stations/station.ts';
import { themes } from '../theme.ts';
import { legend, legendStyles } from './legend.ts';
import { revealNext } from './names-bar.ts';

/** The names of the parts beside the stage: the list, hidden and told one by one, or asked for; and what the lines mean. */

/** What the stage shows now. */
export interface Shown {
  readonly drawings: readonly Drawing[];
  readonly names: readonly NumberedName[];
}

/** Parts that are drawn and have a name, in the order of the drawing's numbers, then of the parts. */
export function namedParts({ drawings, names }: Shown): PartId[] {
  const whole = drawings[0];
  if (!whole) return [];
  const drawn = new Set(partsOf(whole).map((p) => p.part));
  const labelled = whole.labels.flatMap((l) => (l.part ? [l.part] : []));
  const first = names.length > 0 ? names.map((n) => n.part) : labelled;
  const known = Object.keys(partNames) as PartId[];
  return [...new Set([...first, ...known.filter((p) => drawn.has(p))])].filter((p) => drawn.has(p));
}

/** The same in another order, drawn from a seed: a linear congruential row and Fisher–Yates. */
export function shuffled(parts: readonly PartId[], seed: number): PartId[] {
  const all = [...parts];
  let x = seed >>> 0;
  for (let i = all.length - 1; i > 0; i--) {
    x = (Math.imul(x, 1664525) + 1013904223) >>> 0;
    const j = Math.floor((x / 2 ** 32) * (i + 1));
    [all[i], all[j]] = [all[j] as PartId, all[i] as PartId];
  }
  return all;
}

const lower = (part: PartId): string => language.inside(partNames[part][0]);

/** A part was tapped: the answer, told in words. */
export function answer(session: Session, part: PartId): void {
  const sought = session.moment.view.asked?.left[0];
  session.do(answerName, part);
  if (sought === part) session.say(texts.yes(lower(part)));
}

/** The part told last, with the number that it has on the drawing: whoever asked to be shown looks for it there. */
function lastTold(session: Session, names: readonly NumberedName[]): string {
  const last = session.moment.view.revealed?.at(-1);
  if (last === undefined) return '';
  const number = names.find((n) => n.part === last)?.number;
  return texts.the(number === undefined ? texts.justShown : texts.is(number), lower(last));
}

/** The question, and how it goes. */
export function asking(
  session: Session,
  names: readonly NumberedName[],
): TemplateResult | typeof nothing {
  const { asked } = session.moment.view;
  if (!session.asked || !asked) return nothing;
  const { found, hits, left, wrong } = asked;
  const sought = left[0];
  const score = texts.score(hits, found);
  if (sought === undefined)
    return html`<div class="nm-q" role="status"><b>${texts.allFound(found)}</b><span>${score}</span><em>${lastTold(session, names)}</em></div>`;
  return html`<div class="nm-q" role="status"><b>${texts.tapThe(lower(sought))}</b>
    <span>${wrong ? html`${texts.thatIsThe(lower(wrong))} ` : nothing}${texts.toGo(score, left.length)}</span><em>${lastTold(session, names)}</em></div>`;
}

function buttons(session: Session, names: readonly NumberedName[]): TemplateResult {
  const { asked, revealed } = session.moment.view;
  const hidden = names.filter((n) => !session.revealed?.has(n.part)).length;
  const ask = () => askAll(session, Date.now());
  if (asked && session.asked)
    return html`<div class="nm-b">${asked.left.length > 0 ? html`<button class="btn" @click=${() => session.do(passName)}>${texts.showIt}</button>` : html`<button class="btn" @click=${ask}>${texts.onceMore}</button>`}
      <button class="btn" @click=${() => session.do(stopNames)}>${texts.stopAsking}</button></div>`;
  return html`<div class="nm-b"><button class="btn" @click=${() => session.hideNames(revealed === null)}>${revealed ? texts.showAllNames : texts.hideTheNames}</button>
    <button class="btn" @click=${ask}>${texts.askMe}</button>
    ${revealed ? html`<button class="btn" ?disabled=${hidden === 0} @click=${() => revealNext(session, names)}>${texts.nextName}</button><span class="nm-left">${texts.hidden(hidden)}</span>` : nothing}</div>`;
}

/** Every named part of the brake on the stage that a tap can find. */
function tappable(session: Session): PartId[] {
  const { brake, rest, shown: state, theme } = session;
  const view = {
    width: 1200,
    height: 1200,
    scale: 4,
    origin: [600, 600],
    k: 1,
    text: 1,
    narrow: true,
  } as const;
  const drawn = drawBrake({
    brake,
    state,
    instant: rest,
    rest,
    layers: { names: true },
    view,
    theme: themes[theme],
  });
  return namedParts({ drawings: [drawn], names: drawn.names });
}

/** Asks for all parts, in another order each time. */
export const askAll = (session: Session, seed: number): void =>
  session.do(askNames, shuffled(tappable(session), seed));

/** On the wall: ask, or show the one that is asked for; hide the names, or show them all. */
export function namesActions(session: Session): readonly WallAction[] {
  const { asked, revealed } = session.moment.view;
  const more = session.asked && asked !== null && asked.left.length > 0;
  return [
    more
      ? { name: texts.showIt, does: () => session.do(passName) }
      : { name: texts.askForAPart, does: () => askAll(session, Date.now()) },
    asked && session.asked
      ? { name: texts.stopAsking, does: () => session.do(stopNames) }
      : {
          name: revealed ? texts.showAllNames : texts.hideTheNames,
          does: () => session.hideNames(revealed === null),
        },
  ];
}

/** Names are wanted where the drawing has none: why, and the way to where it has. */
function unnamed(session: Session, why: string): TemplateResult {
  return html`<section class="blk nameslist unnamed" aria-label=${texts.namesOfTheParts}><p role="status">${why}</p>
    <div class="nm-b"><button class="btn" @click=${() => namesInApply(session)}>${texts.namesInApply}</button><button class="btn" @click=${() => session.toggle('names')}>${texts.offHere}</button></div></section>`;
}

/** The one brake with the names of its parts. */
function namesInApply(session: Session): void {
  session.do(show, 'apply');
  if (!session.layers.names) session.toggle('names');
}

/** @param why the station's drawing names no parts: the reason; undefined where it does */
export function namesBeside(
  session: Session,
  stage: Shown | null,
  size: PageSize,
  why: string | undefined,
): TemplateResult | typeof nothing {
  if (why !== undefined) return unnamed(session, why);
  const shown = stage ?? { drawings: [], names: [] };
  const parts = namedParts(shown);
  const number = new Map(shown.names.map((n) => [n.part, n.number]));
  const told = (part: PartId) => !session.revealed || session.revealed.has(part);
  return html`<section class="blk nameslist" aria-label=${texts.namesOfTheParts}>
    ${asking(session, shown.names)}${buttons(session, shown.names)}
    ${
      session.asked
        ? nothing
        : html`<ol>${parts.map((part, i) => {
            const no = number.get(part) ?? (shown.names.length > 0 ? '' : i + 1);
            return html`<li title=${told(part) ? partNames[part][1] : nothing}>${told(part) ? html`${shown.names.length > 0 ? html`<i>${no}</i>` : nothing}${partNames[part][0]}` : html`<button @click=${() => session.reveal(part)}>${texts.whatIsIt(html`<i>${no}</i>`)}</button>`}</li>`;
          })}</ol>`
    }
    <details class="nm-l" ?open=${size === 'wide' && !session.asked}><summary>${texts.linesAndMarks}</summary>${legend(session)}</details>
  </section>`;
}

export const quizStyles = css`
  .nm-b { display: grid; grid-template-columns: 1fr 1fr; gap: 8px; }
  .nm-b .btn { min-height: 40px; font-size: 15px; padding: 0 6px; }
  .unnamed p { margin: 0 0 8px; font-size: 15.5px; line-height: 1.3; }
  .nm-left { align-self: center; font-size: 15px; color: var(--ink2); }
  .nm-q { padding: 2px 0 8px; }
  .nm-q b { display: block; font-size: 26px; line-height: 1.15; font-weight: 780; }
  .nm-q span { font-size: 15.5px; }
  .nm-q em { display: block; font-style: normal; font-weight: 640; font-size: 15.5px; }
  .nm-l summary { cursor: pointer; font-weight: 640; font-size: 15.5px; min-height: 30px; padding: 6px 0; }
  .nm-l summary:focus-visible { outline: 4px solid var(--trail); outline-offset: 2px; }
  .wall .nm-q b { font-size: calc(64 * var(--u)); }
  .wall .nm-q :is(span, em) { font-size: calc(36 * var(--u)); }
  @media ${NARROW} { .nm-b .btn { min-height: 56px; } .nm-l summary { min-height: 48px; padding: 14px 0; } }
  ${legendStyles}
`;
