import { html, type TemplateResult } from 'lit';
import { KM, roleOf } from '../../sim/index.ts';
import { cell } from '../app/cells.ts';
import { caution } from '../app/icons.ts';
import { number } from '../format.ts';
import '../plot/chart-strip.ts';
import type { WearStep } from '../session.ts';
import { dust } from '../words.ts';
import type { PageView, Station } from './station.ts';

/** Wear: wear the linings on and watch the adjuster click to the next tooth. */

const story = html`The gap grows as the linings thin. When a stroke carries the shoe past the slot play by a whole tooth, the lever drops into the next one: <b class="adj">click</b>.`;

function side({ session, find, instant: i }: PageView): TemplateResult {
  const last = session.events.findLast((e) => e.kind === 'click');
  const since = session.state.distance - (last?.distance ?? 0);
  const role = (side: 'front' | 'rear') =>
    roleOf(side, i.turning) === 'leading' ? 'lead' : 'trail';
  const share = (key: string) => `${number(Math.floor(find(key).value), 0)} %`;
  const factor = session.trace.at(-1)?.brakeFactor ?? Number.NaN;
  const distance = find('distance');
  return html`<section class="blk h"><h1>Wear</h1><p>${story}</p></section>
    <section class="blk rd" aria-label="Readings">
      <div class="c w bf two"><div><b>Distance</b><div class="v big" data-key="distance">${number(distance.value, 0)}<small>km</small></div></div>
        <div><b>${last ? 'Since the last click' : 'No click yet'}</b><div class="v mid">${number(since / KM, 0)}<small>km</small></div></div></div>
      ${cell(find('restClearanceFront'), { label: 'Clearance, front', square: role('front') })}${cell(find('restClearanceRear'), { label: 'Clearance, rear', square: role('rear') })}
      ${cell(find('liningFront'), { label: 'Lining left, front', square: role('front'), beside: share('liningShareFront'), floor: true })}
      ${cell(find('liningRear'), { label: 'Lining left, rear', square: role('rear'), beside: share('liningShareRear'), floor: true })}
      ${cell(find('drumDiameter'))}${cell(find('tooth'))}
      <div class="c" title="At the duty's pressure, forward"><b>Brake factor, after springs</b><div class="v">${number(factor, 2)}</div></div>
      ${cell(find('toNextTooth'))}
    </section>
    <section class="note">${caution}<div>${dust}</div></section>`;
}

const steps: readonly [WearStep, string][] = [
  [100, '100 km'],
  [1000, '1\u202f000 km'],
  ['click', 'to next click'],
];

function controls({ session }: PageView): TemplateResult {
  return html`<section class="blk ctl" aria-label="Controls">
    <div><div class="lab" id="by">Wear on by</div>
      <div class="seg" role="group" aria-labelledby="by">${steps.map(([s, name]) => html`<button aria-pressed=${session.wearStep === s} class=${session.wearStep === s ? 'on' : ''} @click=${() => session.chooseWearStep(s)}>${name}</button>`)}</div></div>
    <div class="row two">
      ${
        session.busy
          ? html`<button class="btn p tall" @click=${() => session.stopWear()}>Stop here</button>`
          : html`<button class="btn p tall" @click=${() => session.wear()}>Wear on</button>`
      }
      <button class="btn tall" @click=${() => session.backToNew()}>Back to new</button>
    </div>
    <div class="row two">
      <div><div class="lab" id="state">Start from</div>
        <select class="pick" aria-labelledby="state" @change=${(e: Event) => {
          const at = e.target as HTMLSelectElement;
          if (at.value) session.standing(at.value);
          at.value = '';
        }}><option value="">choose…</option>${session.brake.states.map((s) => html`<option value=${s.name}>${s.name}</option>`)}</select></div>
      <div><div class="lab" id="drawn">Gap drawn</div>
        <div class="seg" role="group" aria-labelledby="drawn">${([1, 20, 40] as const).map((m) => html`<button aria-pressed=${session.magnification === m} class=${session.magnification === m ? 'on' : ''} @click=${() => session.magnify(m)}>×${m}</button>`)}</div></div>
    </div>
  </section>`;
}

export const wear: Station = {
  id: 'wear',
  name: 'Wear',
  key: '2',
  layers: { fan: true, comb: false, forces: false, loupe: true },
  wall: { readings: ['distance', 'restClearanceMean', 'tooth'], says: () => html`<p>${story}</p>` },
  side,
  controls,
  foot: {
    height: { wide: 300, middle: 200, narrow: 210 },
    strip: ({ session }) =>
      html`<takeup-chart .session=${session} .rows=${session.trace.length + session.events.length} .theme=${session.theme}></takeup-chart>`,
  },
};
