import { css, html, nothing, type TemplateResult } from 'lit';
import type { Reading } from '../../sim/index.ts';
import { appWallSide as texts } from '../../sim/words/en.ts';
import { down, number } from '../format.ts';
import { paceName } from '../pace.ts';
import { agoText } from '../pieces/ago-text.ts';
import { NARROW, WALL_PX } from '../pieces/page-sizes.ts';
import { backToMine } from '../record/guest.ts';
import { stationNames } from '../record/moment.ts';
import { PRESS_BAR } from '../session.ts';
import type { NumberedName } from '../stage/layers/names.ts';
import { presenterKeys } from '../stations/lessons/part.ts';
import type { KeyRows, PageView, Station, WallAction } from '../stations/station.ts';
import { namesList } from './names-bar.ts';
import { asking, namesActions } from './names-beside.ts';
import { ghostCard, ghostCardStyles } from './wall-ghost.ts';
import { wallLayers } from './wall-keys.ts';

/** What stands beside the drawing on the wall: what the class is asked to look at, and what to do, in large type. */

const big = (r: Reading): TemplateResult => {
  // A lining is never shown thicker than it is.
  const value = r.key.startsWith('lining') ? down(r.value, r.digits) : r.value;
  return html`<div class="figure" data-key=${r.key}><b>${r.name}</b><div>${number(value, r.digits)}${r.unit ? html`<small>${r.unit}</small>` : nothing}</div></div>`;
};

/** The station's one or two main things to do; the first is the next. */
export function wallActions(page: PageView, station: Station): readonly WallAction[] {
  // Names shown on the wall are hidden, told and asked for there.
  if (page.session.layers.names && !station.unnamed) return namesActions(page.session);
  const own = station.wall?.actions?.(page);
  if (own) return own;
  if (!station.pedal) return [];
  const { session } = page;
  return [
    {
      name: session.pedal > 0 ? texts.letGo : texts.pressName,
      does: () => session.pressTo(PRESS_BAR),
      letGo: () => session.release(),
    },
    { name: texts.turnRoundName, does: () => session.turn(session.turning > 0 ? -1 : 1) },
  ];
}

/** What the wall tells: the look back, why no names are shown, or the station's own sentence. */
function says(page: PageView, station: Station): TemplateResult | string | typeof nothing {
  const { back, pace, layers } = page.session;
  if (back.look) return html`<p>${texts.timeAt(agoText(back.look), paceName(pace))}</p>`;
  if (layers.names && station.unnamed)
    return html`<p class="unnamed" role="status">${station.unnamed}</p>`;
  return station.wall?.says?.(page) ?? nothing;
}

const ACTION_KEYS = [texts.space, 'B'];

function action(a: WallAction, index: number): TemplateResult {
  const end = a.letGo;
  const enter = (e: KeyboardEvent): void => {
    if (e.key === 'Enter' && !e.repeat) a.does();
  };
  const face = html`<span>${a.name}</span><kbd>${ACTION_KEYS[index]}</kbd>`;
  const looks = index === 0 ? 'main' : '';
  return end
    ? html`<button class="act ${looks}" @pointerdown=${a.does} @pointerup=${end} @pointerleave=${end} @keydown=${enter} @keyup=${end}>${face}</button>`
    : html`<button class="act ${looks}" ?disabled=${a.off === true} @click=${a.does}>${face}</button>`;
}

/** The keys of the wall, told where they are asked for, and switched off. */
export function keysCard(page: PageView, rows: KeyRows, close: () => void): TemplateResult {
  const { session } = page;
  const { keys } = session.moment.parts.lessons;
  return html`<section class="keycard" role="dialog" aria-label=${texts.keysOfTheWall}>
    <dl>${rows.map(([key, does]) => html`<div><dt>${key}</dt><dd>${does}</dd></div>`)}</dl>
    <div class="foot"><label><input type="checkbox" .checked=${keys} @change=${(e: Event) => session.do(presenterKeys, (e.target as HTMLInputElement).checked)} />${texts.keysOfOneLetterWork}</label>
    <button @click=${close}>${texts.close(html`<kbd>?</kbd>`)}</button></div></section>`;
}

export interface WallDoes {
  leave(): void;
  /** The list of keys is open; opens or closes it. */
  readonly keys: boolean;
  turnKeys(): void;
  /** Ghost and compare are chosen; opens or closes that. */
  readonly choosing: boolean;
  turnChoice(): void;
}

/**
 * @param beside what is told of shoes that bend, in place of the layers; may be empty
 * @param names the parts' names where the drawing shows their numbers alone: they take the readings' place
 */
export function wallSide(
  page: PageView,
  station: Station,
  wall: WallDoes,
  names: readonly NumberedName[],
  beside: string,
): TemplateResult {
  const { session, find } = page;
  const keys = station.wall?.readings ?? ['restClearanceMean', 'strutForce', 'tooth'];
  const press = session.showing || (station.pedal && session.layers.loupe);
  const figures = session.asked
    ? asking(session, names)
    : names.length > 0
      ? namesList(session, names)
      : press
        ? html`<takeup-press wall .session=${session}></takeup-press>${big(find('tooth'))}`
        : html`<div class="figures">${keys.map((key) => big(find(key)))}</div>`;
  const letters = session.moment.parts.lessons.keys;
  return html`<section class="words ${!session.asked && names.length > 0 ? 'listed' : ''}" aria-label=${texts.forTheClass}>
      <h1>${stationNames[station.id]}</h1>
      ${session.guest ? html`<p class="guestline">${texts.guest(session.guest)}</p>` : nothing}
      <div class="says">${says(page, station)}</div>
      ${figures}
      <div class="acts">${wallActions(page, station).map(action)}</div>
      ${
        beside
          ? html`<p class="besides">${beside}</p>`
          : html`<div class="layers" role="group" aria-label=${texts.show}>${wallLayers
              .filter(([, layer]) => station.layers?.includes(layer) ?? true)
              .map(
                ([key, layer, name]) =>
                  html`<button class=${session.layers[layer] ? 'on' : ''} aria-pressed=${session.layers[layer]} @click=${() => session.toggle(layer)}>${letters ? html`<kbd>${key}</kbd>` : nothing}${name}</button>`,
              )}</div>`
      }
      <div class="hands">
        ${session.guest ? html`<button @click=${() => session.do(backToMine)}>${texts.backToMine}</button>` : nothing}
        <button aria-label=${texts.keys} aria-expanded=${wall.keys} @click=${() => wall.turnKeys()}><kbd>?</kbd>${session.guest ? nothing : texts.keys2}</button>
        <button aria-label=${texts.mCompareAndGhost} aria-expanded=${wall.choosing} @click=${() => wall.turnChoice()}>${texts.compare(html`<kbd>M</kbd>`)}</button>
        <button class="leave" aria-label=${texts.escDeskLeaveTheWall} @click=${() => wall.leave()}><kbd>${texts.esc}</kbd>${session.guest ? nothing : texts.desk}</button>
      </div>
      ${wall.choosing ? ghostCard(session, () => wall.turnChoice()) : nothing}
    </section>`;
}

export const wallStyles = css`
  .wall { --u: ${WALL_PX}; }
  /* Blank is dark: no beam in the class's eyes. */
  .wall.blank { background: #000; }
  .wall.blank > :not(.shownby) { visibility: hidden; }
  .wall .shownby { z-index: 4; position: absolute; left: calc(34 * var(--u)); bottom: calc(22 * var(--u)); font-size: calc(34 * var(--u)); background: none; color: #9aa3a8; }
  .wall .stage { border: 0; }
  .wallover { position: absolute; left: calc(24 * var(--u)); bottom: calc(22 * var(--u)); }
  .wallover.laid { inset: 0; display: grid; grid-template-rows: minmax(0, 1fr) auto; background: var(--sheet); padding: calc(14 * var(--u)) calc(24 * var(--u)) calc(22 * var(--u)); }
  .wallover button { justify-self: start; border: calc(4 * var(--u)) solid var(--ink); background: var(--sheet); min-height: calc(76 * var(--u)); padding: 0 calc(30 * var(--u)); font-size: calc(38 * var(--u)); font-weight: 700; }
  .wall .words { position: relative; display: flex; flex-direction: column; gap: calc(14 * var(--u)); padding: calc(22 * var(--u)) calc(34 * var(--u)) calc(22 * var(--u)) calc(14 * var(--u)); min-height: 0; min-width: 0; overflow: hidden; font-size: calc(40 * var(--u)); line-height: 1.16; }
  .wall h1 { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); margin: 0; font-size: calc(40 * var(--u)); }
  .wall .guestline { margin: 0; font-size: calc(34 * var(--u)); padding-left: calc(36 * var(--u)); background: repeating-linear-gradient(135deg, var(--warn) 0 9px, var(--warn-ink) 9px 18px) 0 0 / calc(22 * var(--u)) 100% no-repeat; }
  .wall .says p { margin: 0; }
  .wall .says b { font-weight: 780; }
  .wall .figures { display: grid; }
  .wall .figure { border-top: calc(4 * var(--u)) solid var(--ink); padding: calc(4 * var(--u)) 0; display: flex; align-items: baseline; justify-content: space-between; gap: calc(14 * var(--u)); }
  .wall .figure b { font-size: calc(36 * var(--u)); font-weight: 580; line-height: 1.1; }
  .wall .figure div { font-size: calc(72 * var(--u)); line-height: 1.08; font-weight: 760; white-space: nowrap; }
  .wall .figure small { font-size: calc(36 * var(--u)); margin-left: calc(10 * var(--u)); font-weight: 600; }
  .wall .acts { display: grid; gap: calc(12 * var(--u)); margin-top: auto; }
  .wall .act { border: calc(4 * var(--u)) solid var(--ink); min-height: calc(92 * var(--u)); padding: 0 calc(24 * var(--u)); font-size: calc(40 * var(--u)); font-weight: 700; display: flex; align-items: center; justify-content: space-between; gap: calc(14 * var(--u)); line-height: 1.05; }
  .wall .act.main { background: var(--ink); color: var(--sheet); }
  .wall .act:disabled { background: var(--sheet); color: var(--off); border-color: var(--off); }
  .wall kbd { font: inherit; font-size: calc(34 * var(--u)); font-weight: 640; border: calc(3 * var(--u)) solid currentcolor; padding: 0 calc(12 * var(--u)); line-height: 1.25; min-width: 1.7em; text-align: center; flex: none; }
  .wall .layers { display: grid; grid-template-columns: 1fr 1fr; gap: calc(6 * var(--u)) calc(14 * var(--u)); }
  .wall .layers button { display: flex; align-items: center; gap: calc(12 * var(--u)); font-size: calc(34 * var(--u)); min-height: calc(54 * var(--u)); font-weight: 560; white-space: nowrap; }
  .wall .layers .on { font-weight: 740; }
  .wall .layers .on kbd { background: var(--ink); color: var(--sheet); border-color: var(--ink); }
  .wall .layers .on:not(:has(kbd)) { text-decoration: underline; }
  .wall .hands { display: flex; justify-content: space-between; gap: calc(12 * var(--u)); }
  .wall .hands button { display: flex; align-items: center; gap: calc(10 * var(--u)); font-size: calc(34 * var(--u)); color: var(--ink2); white-space: nowrap; }
  .wall .besides { margin: 0; font-size: calc(34 * var(--u)); color: var(--ink2); }
  .wall .keycard { position: absolute; inset: calc(14 * var(--u)) calc(20 * var(--u)) calc(14 * var(--u)) 0; background: var(--sheet); border: calc(4 * var(--u)) solid var(--ink); padding: calc(14 * var(--u)) calc(20 * var(--u)); display: flex; flex-direction: column; justify-content: space-between; font-size: calc(34 * var(--u)); line-height: 1.1; z-index: 3; }
  .wall > .keycard { left: 50%; bottom: auto; gap: calc(14 * var(--u)); }
  .wall .keycard dl { margin: 0; }
  .wall .keycard dl div { display: grid; grid-template-columns: 6.2em 1fr; gap: calc(12 * var(--u)); border-bottom: 1px solid var(--rule); padding: calc(3 * var(--u)) 0; }
  .wall .keycard dt { font-weight: 740; }
  .wall .keycard dd { margin: 0; }
  .wall .keycard label { display: flex; align-items: center; gap: calc(12 * var(--u)); }
  .wall .keycard input { width: calc(34 * var(--u)); height: calc(34 * var(--u)); margin: 0; accent-color: var(--ink); }
  .wall .keycard .foot { display: grid; gap: calc(10 * var(--u)); padding: 0; font-size: calc(34 * var(--u)); color: var(--ink); }
  .wall .keycard button { border: calc(4 * var(--u)) solid var(--ink); min-height: calc(64 * var(--u)); padding: 0 calc(18 * var(--u)); display: flex; align-items: center; justify-content: space-between; font-weight: 700; }
  ${ghostCardStyles}
  /* Thirty names and what is pressed have the height between them: the sentence gives way. */
  .wall .listed { gap: calc(10 * var(--u)); }
  .wall .listed .says { display: none; }
  .wall .listed .act { min-height: calc(70 * var(--u)); font-size: calc(36 * var(--u)); }
  .wall .listed .layers { grid-template-columns: 1fr 1fr 1fr; }
  .wall .listed .nameslist li { padding: 1px 0; }
  @media ${NARROW} {
    .wall { display: flex; flex-direction: column; overflow: auto; --u: 0.55px; }
    .wall .stage { height: 420px; }
    .wall .words { overflow: visible; }
  }
`;
