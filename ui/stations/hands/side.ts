import { html, nothing, type TemplateResult } from 'lit';
import { type Instant, pressingHoldDown, type Side, unhooking } from '../../../sim/index.ts';
import { cautions } from '../../cautions.ts';
import { capital, number } from '../../format.ts';
import { caution } from '../../pieces/icons.ts';
import {
  chooseHand,
  hookSpring,
  largen,
  openHands,
  takeDrum,
  takeTool,
  turnHoldDown,
} from '../../record/hands.ts';
import { stationNames } from '../../record/moment.ts';
import type { PageView } from '../station.ts';
import type { HandsDesk } from './desk.ts';
import './pad.ts';
import { labelWords, handsSide as texts } from '../../../sim/words/en.ts';
import { sceneName } from '../../record/scene-names.ts';
import { LARGE } from './places.ts';
import { rows, tells } from './words.ts';

interface Told {
  readonly key: string;
  readonly name: string;
  readonly value: string;
  readonly unit: string;
}

const told = (key: string, name: string, value: number, digits: number, unit: string): Told => ({
  ...{ key, name, unit, value: number(value, digits) },
});

/** What is felt and seen at the part that is held: three figures. */
function figures(desk: HandsDesk, now: Instant): readonly Told[] {
  const { part, second } = desk.record;
  const strut = told('strut', texts.strutForce, now.strutForce, 0, 'N');
  const home = told('strut-home', texts.strutLetGo, desk.home.strutForce, 0, 'N');
  const side = (s: Side) =>
    told('toe', texts.toeMoved(s), Math.abs(desk.toeMoved(now, s)), 2, 'mm');
  const parted = told(
    'parted',
    texts.offTheStrut,
    Math.max(0, now.separation - now.strutLength),
    2,
    'mm',
  );
  if (second)
    return [told('second', texts.secondHand, desk.secondForce(now), 0, 'N'), parted, strut];
  switch (part) {
    case 'front shoe':
    case 'strut':
      return [side('front'), strut, home];
    case 'rear shoe':
      return [side('rear'), strut, home];
    case 'both toes':
      return [parted, strut, home];
    case 'adjuster lever': {
      const lever = desk.lever;
      return [
        told('lift', texts.offItsToothsRoot, lever?.lift ?? 0, 2, 'mm'),
        told('tooth', labelWords.tooth, now.tooth, 0, ''),
        told('holds', texts.toHoldItWhenFree, lever?.holds ?? 0, 0, 'N'),
      ];
    }
    case 'parking lever':
    case 'cable':
      return [told('hook', texts.hookMoved, desk.hookMoved(now), 1, 'mm'), strut, home];
    case 'front piston':
    case 'rear piston': {
      const s = part === 'front piston' ? 'front' : 'rear';
      const { behind, fluid } = desk.pistonBack(now, s);
      return [
        told('back', texts.offItsToe, behind, 2, 'mm'),
        told('fluid', texts.fluidGoneHome, fluid / 1000, 2, 'ml'),
        told('push', texts.leftOnTheToe, now.shoes[s].pistonForce, 0, 'N'),
      ];
    }
    case 'drum pulled':
    case 'drum rocked': {
      const d = desk.drum;
      return [
        told(
          'slid',
          part === 'drum pulled' ? texts.drumOut : texts.thatSideOut,
          d?.slid ?? 0,
          1,
          'mm',
        ),
        told('lip', texts.theLipBears, d?.lip ?? 0, 0, 'N'),
        told('lifted', texts.shoesOffTheirPads, d?.give ?? 0, 1, 'mm'),
      ];
    }
    case 'drum':
      return [
        told('turned', labelWords.turned, ((180 / Math.PI) * now.drumAngle) % 360, 0, '°'),
        told('torque', texts.torqueOfTheHand, desk.torque / 1000, 1, 'N·m'),
        told('drag', texts.dragOfTheLinings, Math.abs(now.torqueOnDrum) / 1000, 1, 'N·m'),
      ];
  }
}

function readings(desk: HandsDesk, now: Instant): TemplateResult {
  return html`<section class="blk rd hands-rd" aria-label=${texts.readings}>${figures(
    desk,
    now,
  ).map(
    ({ key, name, value, unit }) =>
      html`<div class="c" data-key=${key}><b>${name}</b><div class="v">${value}<small>${unit}</small></div></div>`,
  )}</section>`;
}

function springRows(desk: HandsDesk, now: Instant): TemplateResult[] {
  const { session } = desk;
  const { brake, state } = session;
  return brake.springs.map(({ name }, i) => {
    const off = state.condition.unhooked?.includes(i) === true;
    const u = unhooking(brake, now, i);
    const says = off
      ? texts.offTookN(number(u?.takes ?? 0, 0))
      : texts.takesNStoresJ(number(u?.takes ?? 0, 0), number((u?.stored ?? 0) / 1000, 1));
    const label = off ? texts.hookOnThe(sceneName(name)) : texts.unhookThe(sceneName(name));
    return html`<li><div data-spring=${i}><b>${capital(sceneName(name))}</b><span>${says}</span><button class="do" aria-label=${label} @click=${() => session.do(hookSpring, i, !off)}>${off ? texts.hookOn : texts.unhook}</button></div></li>`;
  });
}

function holdDownRows(desk: HandsDesk): TemplateResult[] {
  const { session } = desk;
  const { brake, state } = session;
  return (['front', 'rear'] as const).map((side) => {
    const off = state.condition.unheld?.includes(side) === true;
    const takes = number(pressingHoldDown(brake, side), 0);
    const does = off ? texts.putOn : texts.takeOff;
    return html`<li><div data-hold-down=${side}><b>${texts.holdDown(side)}</b><span>${off ? texts.offTheShoeLeansFree : texts.pressWithNAndTurn(takes)}</span><button class="do" aria-label=${texts.theHoldDown(does, side)} @click=${() => session.do(turnHoldDown, side, !off)}>${does}</button></div></li>`;
  });
}

/** The drum does not go on as it is. */
function tooFar(desk: HandsDesk): TemplateResult {
  const { back, lock } = desk;
  return html`<li><div><b>${texts.noWayForTheDrum}</b><span>${lock}</span>${
    back
      ? html`<button class="do" @click=${() => desk.windBack()}>${texts.windBack(back)}</button>`
      : nothing
  }</div></li>`;
}

function list(desk: HandsDesk, now: Instant): TemplateResult {
  const { session, record, lock } = desk;
  const key = (e: KeyboardEvent): void => {
    const by = { ArrowDown: 1, ArrowUp: -1 }[e.key] as 1 | -1 | undefined;
    if (!by) return;
    desk.choose(by);
    e.preventDefault();
    const root = (e.currentTarget as HTMLElement).getRootNode() as ShadowRoot;
    requestAnimationFrame(() => root.querySelector<HTMLElement>('.hands-list .on')?.focus());
  };
  return html`<section class="blk hands-list" aria-label=${texts.takeHoldOf}>
    <div class="head"><span>${texts.takeHoldOf}</span><span>${texts.choose}</span></div>
    <ul @keydown=${key}>${desk.parts.map((part) => {
      const on = record.part === part;
      const [name, does] = rows[part];
      return html`<li><button class=${on ? 'on' : ''} data-part=${part} aria-current=${on ? 'true' : 'false'} @click=${() => session.do(chooseHand, part)}><b>${name}</b><span>${does}</span></button></li>`;
    })}</ul>
    ${record.drumOff ? html`<ul>${springRows(desk, now)}${holdDownRows(desk)}${lock ? tooFar(desk) : nothing}</ul>` : html`<p class="hands-why">${lock ? html`${texts.theDrumStaysOnSee(lock)}` : texts.springsAndHoldDownsWith}</p>`}
  </section>`;
}

export function handsSide({ session, instant, size }: PageView, desk: HandsDesk): TemplateResult {
  const { part, drumOff } = desk.record;
  return html`<section class="blk h hands-h"><div><h1>${texts.hands}</h1><button class="btn" ?disabled=${drumOff && desk.lock !== null} @click=${() => session.do(openHands, false)}>${texts.backTo(stationNames[session.station])}</button></div><p>${tells[part]}</p></section>
    ${list(desk, instant)}
    ${readings(desk, instant)}
    ${drumOff ? html`<section class="note">${caution}<div>${cautions.springs}${size === 'middle' || desk.lock ? '' : html` ${cautions.drumOff}`}</div></section>` : nothing}
    ${choices(desk)}`;
}

const two = (
  label: string,
  [a, b]: readonly [string, string],
  second: boolean,
  put: (second: boolean) => void,
  off = false,
): TemplateResult =>
  html`<div class="seg" role="group" aria-label=${label}>${[a, b].map(
    (name, i) =>
      html`<button aria-current=${second === (i === 1) ? 'true' : 'false'} class=${second === (i === 1) ? 'on' : ''} ?disabled=${off && second !== (i === 1)} @click=${() => put(i === 1)}>${name}</button>`,
  )}</div>`;

/** What the hand is, how movements are drawn, and the drum. */
function choices(desk: HandsDesk): TemplateResult {
  const { session, lock } = desk;
  const { tool, large, drumOff } = desk.record;
  return html`<section class="blk hands-segs" aria-label=${texts.handScaleAndDrum}>
    ${two(labelWords.hand, [labelWords.hand, labelWords.bar], tool, (b) => session.do(takeTool, b))}
    ${two(texts.movementsOfTheShoes, ['×1', `×${LARGE}`], large, (b) => session.do(largen, b))}
    ${two(labelWords.drum, [texts.drumOn, labelWords.off], drumOff, (b) => session.do(takeDrum, b), lock !== null)}
  </section>`;
}

export function handsControls({ instant }: PageView, desk: HandsDesk): TemplateResult {
  const force = desk.force(instant);
  return html`<section class="blk ctl hands-ctl" aria-label=${texts.controls}>
    <takeup-hand-pad .desk=${desk} .force=${force} .level=${desk.level}></takeup-hand-pad>
    <button class="btn ${desk.record.hold ? 'p' : ''}" ?disabled=${desk.record.hold === null} @click=${() => desk.letGo()}>${texts.letGo(html`<kbd>${texts.esc}</kbd>`)}</button>
  </section>`;
}
