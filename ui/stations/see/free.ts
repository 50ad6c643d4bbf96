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
import { labelWords, seeFree as words } from '../../../sim/words/en.ts';
import { faultOf } from '../../../sim/workshop/index.ts';
import { cautions } from '../../cautions.ts';
import { number } from '../../format.ts';
import { caution } from '../../pieces/icons.ts';
import { NARROW } from '../../pieces/page-sizes.ts';
import { unlessTyped } from '../../pieces/unless-typed.ts';
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
  ['kept pull', labelWords.cable],
  ['hose', labelWords.hose],
  ['bearing', labelWords.bearing],
  ['stepped hot', labelWords.adjuster],
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
    : html`<small class="rigid">${words.rigid(text === own ? words.theSame : text)}</small>`;

const byHand = (forward: number): string =>
  forward < 300
    ? words.free
    : forward > 60_000
      ? words.notByHand
      : `${number(forward * MM, 0)}\u00a0N·m`;

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
      cold: words.nAtTheTyre(number(first.cold / radius, 0)),
      hottest: `${number(trip.hottest, 0)}\u00a0°C`,
      settled: `${number(trip.settled, 0)}\u00a0°C`,
      half: half ? km(half.distance) : '…',
      after: free ? km(last.distance) : words.moreThan(km(last.distance), working ? '…' : ''),
      lost: `${number(last.lost, 2)}\u00a0mm`,
    };
  }

  #sum(driven: Driven, beside: Driven | null) {
    const told = this.#told(driven.results, driven.working);
    if (!told) return html`<p role="status">${words.workingItOut}</p>`;
    const rigid = beside && this.#told(beside.results, beside.working);
    const row = (name: string, key: Exclude<keyof FreeTold, 'free'>) =>
      html`<dt>${name}</dt><dd data-free-told=${key}>${told[key]}${ofRigid(rigid?.[key] ?? null, told[key])}</dd>`;
    return html`<dl data-free=${told.free ? 'yes' : 'no'}>
      ${row(words.coldByHand, 'cold')}
      ${row(words.hottestInTheFirstTrip, 'hottest')}
      ${row(words.settlesAtAtKmH(KMH_ON), 'settled')}
      ${row(words.halfOfTheColdDrag, 'half')}
      ${row(words.freeColdTooAfter, 'after')}
      ${row(words.liningGoneByThen, 'lost')}</dl>`;
  }

  override render() {
    const { session } = this;
    const desk = deskOf(FreeDesk, session);
    const plain = desk.rigidForced;
    const plainOf = (id: Forced['id']) => plain?.find((f) => f.id === id) ?? null;
    const by = (d: number) => session.do(tighten, Number((desk.tight + d).toFixed(2)));
    return html`<section><h2>${words.shoesSetTooTight}</h2>
      <p>${words.newLiningsThatStandInside}</p>
      <div class="opts"><span class="step" role="group" aria-label=${words.howTightMm}><button aria-label=${words.lessTight} ?disabled=${desk.tight <= 0.011} @click=${() => by(-0.01)}>−</button><input inputmode="decimal" aria-label=${words.howTightMm} .value=${unlessTyped(number(desk.tight, 2))} @change=${(e: Event) => session.do(tighten, Number((e.target as HTMLInputElement).value.replace(',', '.')) || 0.01)} /><button aria-label=${words.tighter} ?disabled=${desk.tight >= MOST_TIGHT} @click=${() => by(0.01)}>+</button></span><span>mm</span></div>
      ${this.#sum(desk.driven, desk.rigidDriven)}
      <p><b>${words.notInAFewKilometres}</b> ${words.theDrumGrowsOffIts}</p>
    </section>
    <section><h2>${words.aForceThatStays}</h2>
      <p>${words.cablePressureOrALeaning}</p>
      <table aria-label=${words.oneHotWheelToldApart}><thead><tr><th>${words.cause}</th><th>${words.at50KmH}</th><th>${words.byHand}</th><th>${words.toldApartBy}</th></tr></thead><tbody>${desk.forced.map(
        (f) => {
          const [rigid, rise] = [plainOf(f.id), `+${number(f.rise, 0)}\u00a0K`];
          return html`<tr data-forced=${f.id}><td><b>${f.name}</b></td><td>${rise}${ofRigid(rigid && `+${number(rigid.rise, 0)}\u00a0K`, rise)}</td><td>${byHand(f.forward)}${ofRigid(rigid && byHand(rigid.forward), byHand(f.forward))}</td><td>${f.tells}</td></tr>`;
        },
      )}</tbody></table>
      ${desk.forced.length < causes.length ? html`<p role="status">${words.workingItOut}</p>` : nothing}
      <button class="btn p" @click=${() => session.do(openTopic, 'drag')}>${words.mineDragsSayWhatI}</button>
    </section>
    <section><p class="care">${caution}<span>${cautions.hot}</span></p></section>`;
  }
}
customElements.define('takeup-free', FreeCard);
