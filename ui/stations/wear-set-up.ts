import { html, type TemplateResult } from 'lit';
import { type AdjusterKind, adjusterKinds } from '../../sim/index.ts';
import { wearSetUp as words } from '../../sim/words/en.ts';
import { adjusterWords } from '../adjusters.ts';
import { choices, type LaneId } from '../plot/lanes.ts';
import { sceneName } from '../record/scene-names.ts';
import { roadEditor } from './road-editor.ts';
import type { PageView } from './station.ts';
import type { WearDesk } from './wear-desk.ts';

/** What the run is driven with: adjuster, hot lock, reverse, where it starts. */

const shares: readonly [number | null, string][] = [
  [null, words.asTheRoadHasIt],
  [0, 'none'],
  [0.1, words.oneStopInTen],
  [0.25, words.oneInFour],
  [0.5, words.halfOfThem],
];

const value = (e: Event): string => (e.target as HTMLSelectElement).value;

export const roadPick = (d: WearDesk, id: string): TemplateResult =>
  html`<select class="pick" id=${id} title=${d.road.duty.about} @change=${(e: Event) => d.road.choose(Number(value(e)))}>${d.road.names.map((name, i) => html`<option value=${i} ?selected=${i === d.road.number}>${sceneName(name)}</option>`)}</select>`;

/** Another kind; what only the pedal can turn does not keep a choice that was made for a star wheel. */
const fitKind = (d: WearDesk, kind: AdjusterKind): void =>
  d.adjuster.fit(
    kind,
    d.adjuster.hotLock,
    adjusterWords[kind].byLever ? d.adjuster.drivenBy : 'application',
  );

export function setUp({ session, size }: PageView, d: WearDesk): TemplateResult {
  const { brake } = session;
  return html`<section class="blk wearset wearpanel" aria-label=${words.setUp} tabindex="0">
    <label class="lab" for="kind">${words.adjuster}</label>
    <select class="pick" id="kind" @change=${(e: Event) => fitKind(d, value(e) as AdjusterKind)}>${adjusterKinds.map((k) => html`<option value=${k} ?selected=${k === d.adjuster.kind}>${adjusterWords[k].name}</option>`)}</select>
    <div class="lab" id="lock">${words.hotLockABimetalHolds}</div>
    <div class="seg" role="group" aria-labelledby="lock">${[false, true].map(
      (on) =>
        html`<button class=${d.adjuster.hotLock === on ? 'on' : ''} aria-pressed=${d.adjuster.hotLock === on} @click=${() => d.adjuster.fit(d.adjuster.kind, on)}>${on ? words.onAboveC(d.adjuster.lockAt) : words.off}</button>`,
    )}</div>
    ${
      adjusterWords[d.adjuster.kind].byLever
        ? html`<label class="lab" for="driven">${words.turnedBy}</label>
      <select class="pick" id="driven" @change=${(e: Event) => d.adjuster.fit(d.adjuster.kind, d.adjuster.hotLock, value(e) as typeof d.adjuster.drivenBy)}><option value="application" ?selected=${d.adjuster.drivenBy === 'application'}>${words.eachPressOfThePedal}</option><option value="parking pull" ?selected=${d.adjuster.drivenBy === 'parking pull'}>${words.thePullOfTheParking}</option></select>`
        : ''
    }
    <label class="lab" for="reverse">${words.stopsInReverse}</label>
    <select class="pick" id="reverse" @change=${(e: Event) => d.road.chooseReverse(shares[Number(value(e))]?.[0] ?? null)}>${shares.map(([share, name], i) => html`<option value=${i} ?selected=${share === d.road.reverse}>${name}</option>`)}</select>
    <p class="wearabout"><b>${sceneName(d.road.duty.name)}</b> ${d.road.duty.about}</p>
    ${roadEditor(d.road)}
    <label class="lab" for="from">${words.startFrom}</label>
    <select class="pick" id="from" @change=${(e: Event) => {
      const at = e.target as HTMLSelectElement;
      if (at.value) d.startFrom(at.value);
      at.value = '';
    }}><option value="">${words.choose}</option>${brake.states.map((s) => html`<option value=${s.name}>${sceneName(s.name)}</option>`)}</select>
    ${
      size === 'narrow'
        ? html`<label class="lab" for="road2">${words.road}</label>${roadPick(d, 'road2')}
      <label class="lab" for="lane">${words.secondCurve}</label>
      <select class="pick" id="lane" @change=${(e: Event) => d.chooseLane(value(e) as LaneId)}>${choices.map(([id, name]) => html`<option value=${id} ?selected=${id === d.lane}>${name}</option>`)}</select>`
        : ''
    }
  </section>`;
}
