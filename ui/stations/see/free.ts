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
import { bending, ownBrakeOf, rigOfBrake } from '../../record/derive.ts';
import { Piecewise } from '../../record/piecewise.ts';
import type { Session } from '../../session.ts';
import { look } from '../faults/look.ts';
import { Vans } from '../faults/vans.ts';
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

/** What is told of a drive. */
interface FreeTold {
  readonly free: boolean;
  readonly cold: string;
  readonly hottest: string;
  readonly settled: string;
  readonly half: string;
  readonly after: string;
  readonly lost: string;
}

/** What is driven so far, and whether more is coming. */
interface Driven {
  readonly results: readonly FreeRow[];
  readonly working: boolean;
}

/** Will a tight brake wear free, how far, how hot; and one hot wheel told apart. Follows from the record alone. */
export class FreeDesk {
  readonly session: Session;
  readonly #rows: Piecewise<string, FreeRow>;
  readonly #bentRows: Piecewise<string, FreeRow>;
  readonly #forced: Piecewise<string, Forced>;
  readonly #bentForced: Piecewise<string, Forced>;
  readonly #vans: Vans;

  constructor(session: Session) {
    this.session = session;
    const tell = () => session.changed();
    this.#rows = new Piecewise(tell);
    this.#bentRows = new Piecewise(tell);
    this.#forced = new Piecewise(tell);
    this.#bentForced = new Piecewise(tell);
    this.#vans = new Vans(tell);
  }

  get tight(): number {
    return this.session.moment.parts.see.tight;
  }

  /** Of the bench's brake under its own shoes. */
  get driven(): Driven {
    const { bending: bends } = this.session;
    return this.#driven(bends ? this.#bentRows : this.#rows, bends);
  }
  /** The same under rigid shoes; null where its own are. */
  get rigidDriven(): Driven | null {
    return this.session.bending ? this.#driven(this.#rows, false) : null;
  }
  #driven(rows: Piecewise<string, FreeRow>, bends: boolean): Driven {
    const { bench, shelf } = this.session.moment;
    const plain = ownBrakeOf(bench, shelf);
    const brake = bends ? bending(plain) : plain;
    const key = JSON.stringify([bench.brake, brake.adjuster.kind, this.tight]);
    return rows.of(key, () => {
      const speed = (KMH_ON * DRIVE) / 50;
      const trips = wearsFree(rigOfBrake(brake), freshState(brake), this.tight, speed);
      return Array.from({ length: MOST_TRIPS }, () => (): FreeRow | null => {
        const next = trips.next();
        return next.done ? null : next.value;
      });
    });
  }

  /** What stays pressed on the van: under shoes as the bench's, once its linings are bedded in under them. */
  get forced(): readonly Forced[] {
    return (this.session.bending ? this.#forcedOf(true) : null) ?? this.#forcedOf(false) ?? [];
  }
  /** The same under rigid shoes; null where the van's are. */
  get rigidForced(): readonly Forced[] | null {
    return this.session.bending && this.#forcedOf(true) ? this.#forcedOf(false) : null;
  }
  #forcedOf(bends: boolean): readonly Forced[] | null {
    const van = (standing: string) =>
      bends ? this.#vans.bending(standing) : this.#vans.rigid(standing);
    const [worn, clicked] = [van('Worn-in'), van('Just clicked')];
    if (!worn || !clicked) return null;
    return (bends ? this.#bentForced : this.#forced).of('van', () =>
      causes.map(([id, name]) => (): Forced => {
        const { own } = id === 'stepped hot' ? clicked : worn;
        const fault = faultOf(id);
        const { right } = axleWith(own, fault);
        const rise = dragHeat(right, DRIVE);
        return { id, name, rise, forward: handTurn(right).forward, tells: fault.tells };
      }),
    ).results;
  }
}

const ofRigid = (text: string | null, own: string) =>
  text === null
    ? nothing
    : html`<small class="rigid">rigid: ${text === own ? 'the same' : text}</small>`;

const byHand = (forward: number): string =>
  forward < 300 ? 'free' : forward > 60_000 ? 'not by hand' : `${number(forward * MM, 0)}\u00a0N·m`;

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

  /** What is told of a drive, each under its name. */
  #told(rows: readonly FreeRow[], working: boolean): FreeTold | null {
    const [first, trip] = rows;
    const last = rows.at(-1);
    if (!first || !last || !trip) return null;
    const radius = this.session.brake.vehicle.tyreRadius;
    const half = rows.find((r) => r.cold < first.cold / 2);
    const free = !working && rows.length < MOST_TRIPS;
    const km = (mm: number): string => `${number(mm / KM, 0)}\u00a0km`;
    return {
      free,
      cold: `${number(first.cold / radius, 0)}\u00a0N at the tyre`,
      hottest: `${number(trip.hottest, 0)}\u00a0°C`,
      settled: `${number(trip.settled, 0)}\u00a0°C`,
      half: half ? km(half.distance) : '…',
      after: free ? km(last.distance) : `more than ${km(last.distance)}${working ? '…' : ''}`,
      lost: `${number(last.lost, 2)}\u00a0mm`,
    };
  }

  #sum(driven: Driven, beside: Driven | null) {
    const told = this.#told(driven.results, driven.working);
    if (!told) return html`<p role="status">Working it out…</p>`;
    const rigid = beside && this.#told(beside.results, beside.working);
    const row = (name: string, key: Exclude<keyof FreeTold, 'free'>) =>
      html`<dt>${name}</dt><dd data-free-told=${key}>${told[key]}${ofRigid(rigid?.[key] ?? null, told[key])}</dd>`;
    return html`<dl data-free=${told.free ? 'yes' : 'no'}>
      ${row('Cold, by hand', 'cold')}
      ${row('Hottest in the first trip', 'hottest')}
      ${row(`Settles at, at ${KMH_ON}\u00a0km/h`, 'settled')}
      ${row('Half of the cold drag is gone after', 'half')}
      ${row('Free, cold too, after', 'after')}
      ${row('Lining gone by then', 'lost')}</dl>`;
  }

  override render() {
    const { session } = this;
    const desk = deskOf(FreeDesk, session);
    const plain = desk.rigidForced;
    const plainOf = (id: Forced['id']) => plain?.find((f) => f.id === id) ?? null;
    const by = (d: number) => session.do(tighten, Number((desk.tight + d).toFixed(2)));
    return html`<section><h2>Shoes set too tight</h2>
      <p>New linings that stand inside the drum by so much. One tooth of the quay van is 0.15 mm.</p>
      <div class="opts"><span class="step" role="group" aria-label="How tight, mm"><button aria-label="less tight" ?disabled=${desk.tight <= 0.011} @click=${() => by(-0.01)}>−</button><input inputmode="decimal" aria-label="How tight, mm" .value=${number(desk.tight, 2)} @change=${(e: Event) => session.do(tighten, Number((e.target as HTMLInputElement).value.replace(',', '.')) || 0.01)} /><button aria-label="tighter" ?disabled=${desk.tight >= MOST_TIGHT} @click=${() => by(0.01)}>+</button></span><span>mm</span></div>
      ${this.#sum(desk.driven, desk.rigidDriven)}
      <p><b>Not in a few kilometres: hundreds.</b> The drum grows off its shoes as it warms, so it rubs itself free at that heat and clamps again each cold morning. Back the adjuster off instead.</p>
    </section>
    <section><h2>A force that stays</h2>
      <p>Cable, pressure or a leaning part press on however much has worn: that never wears free.</p>
      <table aria-label="One hot wheel told apart"><thead><tr><th>Cause</th><th>At 50 km/h</th><th>By hand</th><th>Told apart by</th></tr></thead><tbody>${desk.forced.map(
        (f) => {
          const [rigid, rise] = [plainOf(f.id), `+${number(f.rise, 0)}\u00a0K`];
          return html`<tr data-forced=${f.id}><td><b>${f.name}</b></td><td>${rise}${ofRigid(rigid && `+${number(rigid.rise, 0)}\u00a0K`, rise)}</td><td>${byHand(f.forward)}${ofRigid(rigid && byHand(rigid.forward), byHand(f.forward))}</td><td>${f.tells}</td></tr>`;
        },
      )}</tbody></table>
      ${desk.forced.length < causes.length ? html`<p role="status">Working it out…</p>` : nothing}
      <button class="btn p" @click=${() => session.do(openTopic, 'drag')}>Mine drags: say what I see</button>
    </section>
    <section><p class="care">${caution}<span>${cautions.hot}</span></p></section>`;
  }
}
customElements.define('takeup-free', FreeCard);
