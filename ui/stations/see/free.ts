import { css, html, LitElement, nothing } from 'lit';
import {
  axleWith,
  DRIVE,
  dragHeat,
  type FreeRow,
  freshState,
  handTurn,
  KM,
  wearsFree,
} from '../../../sim/index.ts';
import { faultOf } from '../../../sim/workshop/index.ts';
import { cautions } from '../../cautions.ts';
import { number } from '../../format.ts';
import { caution } from '../../pieces/icons.ts';
import { NARROW } from '../../pieces/page-sizes.ts';
import { ownBrakeOf, rigOfBrake } from '../../record/derive.ts';
import { Piecewise } from '../../record/piecewise.ts';
import type { Session } from '../../session.ts';
import { look } from '../faults/look.ts';
import { vanRig, vanState } from '../faults/van.ts';
import { deskOf } from '../station.ts';
import { MOST_TIGHT, openTopic, tighten } from './part.ts';
import { seeLook } from './styles.ts';

/** km/h that is driven on at. */
const KMH_ON = 40;
/** No more trips are driven: 4 000 km. */
const MOST_TRIPS = 81;
const MM = 1e-3;

/** A force that stays: what it does, on the quay van. */
interface Forced {
  readonly id: 'bearing' | 'kept pull' | 'hose' | 'stepped hot';
  readonly name: string;
  readonly rise: number;
  readonly forward: number;
  readonly tells: string;
}

const causes: readonly (readonly [Forced['id'], string])[] = [
  ['kept pull', 'Cable'],
  ['hose', 'Hose'],
  ['bearing', 'Bearing'],
  ['stepped hot', 'Adjuster'],
];

/** Will a tight brake wear free, how far, how hot; and one hot wheel told apart. Follows from the record alone. */
export class FreeDesk {
  readonly session: Session;
  readonly #rows: Piecewise<string, FreeRow>;
  readonly #forced: Piecewise<string, Forced>;

  constructor(session: Session) {
    this.session = session;
    this.#rows = new Piecewise(() => session.changed());
    this.#forced = new Piecewise(() => session.changed());
  }

  get tight(): number {
    return this.session.moment.parts.see.tight;
  }

  get driven(): { readonly results: readonly FreeRow[]; readonly working: boolean } {
    const { bench, shelf } = this.session.moment;
    const brake = ownBrakeOf(bench, shelf);
    const key = JSON.stringify([bench.brake, brake.adjuster.kind, this.tight]);
    return this.#rows.of(key, () => {
      const speed = (KMH_ON * DRIVE) / 50;
      const trips = wearsFree(rigOfBrake(brake), freshState(brake), this.tight, speed);
      return Array.from({ length: MOST_TRIPS }, () => (): FreeRow | null => {
        const next = trips.next();
        return next.done ? null : next.value;
      });
    });
  }

  get forced(): readonly Forced[] {
    return this.#forced.of('van', () =>
      causes.map(([id, name]) => (): Forced => {
        const standing = id === 'stepped hot' ? 'Just clicked' : 'Worn-in';
        const fault = faultOf(id);
        const { right } = axleWith({ rig: vanRig(), state: vanState(standing) }, fault);
        const rise = dragHeat(right, DRIVE);
        return { id, name, rise, forward: handTurn(right).forward, tells: fault.tells };
      }),
    ).results;
  }
}

export class FreeCard extends LitElement {
  static override properties = { session: { attribute: false }, rev: { type: Number } };
  declare session: Session;
  declare rev: number;

  static override styles = [
    look,
    seeLook,
    css`
      :host { background: var(--sheet); display: block; border: 2px solid var(--ink); }
      section { padding: 10px 18px 12px; border-top: 1px solid var(--rule); }
      section:first-child { border-top: 0; }
      h2 { font-size: 20px; font-weight: 750; margin-bottom: 4px; }
      p { font-size: 16px; line-height: 1.34; margin: 4px 0; }
      dl { display: grid; grid-template-columns: 1fr auto; gap: 4px 14px; margin: 8px 0; font-size: 16px; }
      dt { color: var(--ink2); } dd { margin: 0; font-weight: 700; text-align: right; }
      table { width: 100%; border-collapse: collapse; font-size: 15.5px; }
      th, td { text-align: left; padding: 6px 8px 6px 0; border-top: 1px solid var(--rule); vertical-align: top; }
      td b { white-space: nowrap; }
      .care { display: flex; gap: 10px; font-weight: 640; }
      .care svg { width: 30px; height: 27px; flex: none; }
      .btn { width: 100%; margin-top: 8px; text-align: center; }
      @media ${NARROW} { :host { border-width: 2px 0 0; } section { padding: 10px 14px 12px; } }
    `,
  ];

  #sum(rows: readonly FreeRow[], working: boolean) {
    const [first, trip] = rows;
    const last = rows.at(-1);
    if (!first || !last || !trip) return html`<p role="status">Working it out…</p>`;
    const radius = this.session.brake.vehicle.tyreRadius;
    const half = rows.find((r) => r.cold < first.cold / 2);
    const free = !working && rows.length < MOST_TRIPS;
    const km = (mm: number): string => `${number(mm / KM, 0)}\u00a0km`;
    return html`<dl data-free=${free ? 'yes' : 'no'}>
      <dt>Cold, by hand</dt><dd>${number(first.cold / radius, 0)}\u00a0N at the tyre</dd>
      <dt>Hottest in the first trip</dt><dd data-hottest>${number(trip.hottest, 0)}\u00a0°C</dd>
      <dt>Settles at, at ${KMH_ON}\u00a0km/h</dt><dd>${number(trip.settled, 0)}\u00a0°C</dd>
      <dt>Half of the cold drag is gone after</dt><dd>${half ? km(half.distance) : '…'}</dd>
      <dt>Free, cold too, after</dt><dd data-free-after>${free ? km(last.distance) : working ? `more than ${km(last.distance)}…` : `more than ${km(last.distance)}`}</dd>
      <dt>Lining gone by then</dt><dd>${number(last.lost, 2)}\u00a0mm</dd></dl>`;
  }

  override render() {
    const { session } = this;
    const desk = deskOf(FreeDesk, session);
    const { results, working } = desk.driven;
    const by = (d: number) => session.do(tighten, Number((desk.tight + d).toFixed(2)));
    return html`<section><h2>Shoes set too tight</h2>
      <p>New linings that stand inside the drum by so much. One tooth of the quay van is 0.15 mm.</p>
      <div class="opts"><span class="step" role="group" aria-label="How tight, mm"><button aria-label="less tight" ?disabled=${desk.tight <= 0.011} @click=${() => by(-0.01)}>−</button><input inputmode="decimal" aria-label="How tight, mm" .value=${number(desk.tight, 2)} @change=${(e: Event) => session.do(tighten, Number((e.target as HTMLInputElement).value.replace(',', '.')) || 0.01)} /><button aria-label="tighter" ?disabled=${desk.tight >= MOST_TIGHT} @click=${() => by(0.01)}>+</button></span><span>mm</span></div>
      ${this.#sum(results, working)}
      <p><b>Not in a few kilometres: hundreds.</b> The drum grows off its shoes as it warms, so it rubs itself free at that heat and clamps again each cold morning. Back the adjuster off instead.</p>
    </section>
    <section><h2>A force that stays</h2>
      <p>Cable, pressure or a leaning part press on however much has worn: that never wears free.</p>
      <table aria-label="One hot wheel told apart"><thead><tr><th>Cause</th><th>At 50 km/h</th><th>By hand</th><th>Told apart by</th></tr></thead><tbody>${desk.forced.map(
        (f) =>
          html`<tr data-forced=${f.id}><td><b>${f.name}</b></td><td>+${number(f.rise, 0)}\u00a0K</td><td>${f.forward < 300 ? 'free' : f.forward > 60_000 ? 'not by hand' : html`${number(f.forward * MM, 0)}\u00a0N·m`}</td><td>${f.tells}</td></tr>`,
      )}</tbody></table>
      ${desk.forced.length < causes.length ? html`<p role="status">Working it out…</p>` : nothing}
      <button class="btn p" @click=${() => session.do(openTopic, 'drag')}>Mine drags: say what I see</button>
    </section>
    <section><p class="care">${caution}<span>${cautions.hot}</span></p></section>`;
  }
}
customElements.define('takeup-free', FreeCard);
