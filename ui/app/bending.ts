import { css, html, nothing, type TemplateResult } from 'lit';
import {
  application,
  BAR,
  balance,
  type Instant,
  type Reading,
  readingOf,
  readings,
} from '../../sim/index.ts';
import { appBending as texts } from '../../sim/words/en.ts';
import { number } from '../format.ts';
import { NARROW } from '../pieces/page-sizes.ts';
import { readingName } from '../pieces/reading-name.ts';
import { restOf } from '../record/derive.ts';
import { Kept } from '../record/kept.ts';
import type { StationId } from '../record/moment.ts';
import { MOST_BAR, type Session } from '../session.ts';
import { BOW_SCALE, bow as drawBow } from '../stage/layers/bent.ts';
import type { StageInput } from '../stage/scene.ts';
import type { Drawing } from '../stage/shapes.ts';
import { deskOf, type Pair, type Station } from '../stations/station.ts';
import { Bedding, type Other } from './bedding.ts';

/** Rules for what this file puts beside the stage. */
const bendingStyles = css`
  .bend { padding: 6px 16px 8px; font-size: 15px; line-height: 1.3; order: -1; }
  .side > .h { order: -2; }
  .bend table { width: 100%; border-collapse: collapse; }
  .bend th { text-align: left; font-weight: 560; padding: 1px 0; }
  .bend thead th { color: var(--ink2); font-size: 14px; }
  .bend thead th + th, .bend td { text-align: right; width: 23%; }
  .bend td { font-weight: 700; font-size: 17px; }
  .bend td + td { font-weight: 540; }
  .bend small { color: var(--ink2); font-size: 14px; font-weight: 500; }
  .bend p { margin: 3px 0 0; color: var(--ink2); font-size: 14px; }
  @media ${NARROW} {
    .bend { order: 1; }
    .side > .h { order: 3; }
  }
`;

/** A drum this much wider than its limit is none: New shoes puts it away so. */
const AWAY = 1.05;
/** Stations of words and sheets, which compute nothing of the brake. */
const WORDS: ReadonlySet<StationId> = new Set([
  'inspect',
  'questions',
  'start',
  'ask',
  'see',
  'kind',
]);
/** Readings that are told twice, by what is done to the brake. */
const PRESSED = ['brakeFactor', 'torque', 'pistonTravelFront'];
const PULLED = ['torque', 'strutForce'];
const RELEASED = ['restClearanceMean', 'strutForce'];

/** Shoes that bend beside rigid ones: what a session's stage shows of them. */
class BendingDesk {
  readonly bedding: Bedding;
  readonly #session: Session;
  readonly #beside = new Kept<readonly Reading[]>();
  readonly #clicks = new Kept<readonly [own: number, other: number]>();

  constructor(session: Session) {
    this.#session = session;
    this.bedding = new Bedding(session);
  }

  /** Every reading of the moment with the other shoes, at the same pressure and pull. */
  readings(i: Instant, { rig, state }: Other): readonly Reading[] {
    const { cableForce: cable, pressure, turning } = i;
    return this.#beside.of([rig, state, pressure, turning, cable], () => {
      const other = balance(rig, state, { pressure, turning, cable });
      return readings(rig.brake, state, other, restOf(rig, state));
    });
  }

  /** Teeth that one hard press steps from here. */
  clicks(other: Other | null): readonly [own: number, other: number] {
    const { rig, shown, turning } = this.#session;
    const press = { pressure: MOST_BAR * BAR, turning };
    return this.#clicks.of([rig, shown, other?.rig, other?.state, turning], () => [
      application(rig, shown, press).clicked,
      other ? application(other.rig, other.state, press).clicked : Number.NaN,
    ]);
  }

  /** @param other null while it is worked on: its figures are not told then */
  pairs(i: Instant, other: Other | null): Pair[] {
    const session = this.#session;
    // With the drum away nothing is near the linings, and a press finds no end.
    if (session.shown.drumRadius > AWAY * session.brake.drum.radiusMax) return [];
    const mine = session.readings(i);
    const theirs = other && this.readings(i, other);
    const pair = (key: string): Pair => {
      const own = readingOf(mine, key);
      const rigid = theirs ? readingOf(theirs, key).value : Number.NaN;
      return {
        key,
        name: readingName(own),
        unit: own.unit,
        digits: own.digits,
        bend: own.value,
        rigid,
      };
    };
    const count = (key: string, name: string, bend: number, rigid: number): Pair => ({
      key,
      name,
      unit: '',
      digits: 0,
      bend,
      rigid,
    });
    const keys = i.pressure > 0 ? PRESSED : i.cableForce > 0 ? PULLED : RELEASED;
    const [own, others] = this.clicks(other);
    const list = [
      ...keys.map(pair),
      count('clicks', texts.clicksOfAPressTo(MOST_BAR), own, others),
    ];
    if (session.station !== 'wear') return list;
    // As much worn off by each: who has stepped more often by then?
    const { tooth } = session.shown;
    const reached = other ? (other.reached ?? tooth) : Number.NaN;
    return [...list, count('reached', texts.toothByThisMuchWear, tooth, reached)];
  }
}

const deskFor = (session: Session): BendingDesk => deskOf(BendingDesk, session);

/** Sees to it that the linings lie as the shoes ask for; called some ten times a second, at a time in ms. */
const lookAfter = (session: Session, now: number): void => deskFor(session).bedding.look(now);

/** Every reading of the moment with rigid shoes; null while they are worked on, or where the shoes do not bend. */
function rigidReadings(session: Session, i: Instant): readonly Reading[] | null {
  const { bedding } = deskFor(session);
  const other = session.bends ? bedding.other : null;
  return other && deskFor(session).readings(i, other);
}

const working = (text: string, progress: number | null): TemplateResult =>
  html`<p role="status">${text}${progress === null ? '…' : `: ${number(Math.floor(100 * progress), 0)} %`}</p>`;

/** The figures side by side, what the outlines on the drawing are, and what is still worked on. */
function beside(session: Session, i: Instant, station: Station): TemplateResult | typeof nothing {
  if (WORDS.has(session.station)) return nothing;
  const desk = deskFor(session);
  const { progress } = desk.bedding;
  if (session.bends !== session.bending) {
    const kind = session.bending ? texts.shoesThatBend : texts.rigidShoes;
    return html`<section class="blk bend" aria-label=${texts.shoesThatBend2}>${working(texts.theLiningsAreBeddedIn(kind), progress)}</section>`;
  }
  if (!session.bends) return nothing;
  const { other } = desk.bedding;
  const pairs = [...(station.pairs?.(session) ?? []), ...desk.pairs(i, other)];
  const own = session.moment.bench.brake.kind === 'own';
  return html`<section class="blk bend" aria-label=${texts.shoesThatBendBesideRigid}>
    ${
      pairs.length > 0
        ? html`<table><thead><tr><th scope="col">${texts.shoes}</th><th scope="col">${texts.thatBend}</th><th scope="col">${texts.rigid}</th></tr></thead>
    <tbody>${pairs.map(
      (p) =>
        html`<tr data-pair=${p.key}><th scope="row">${p.name}${p.unit ? html` <small>${p.unit}</small>` : nothing}</th><td>${number(p.bend, p.digits)}</td><td>${number(p.rigid, p.digits)}</td></tr>`,
    )}</tbody></table>`
        : nothing
    }
    ${
      other
        ? html`<p>${texts.outlinesTheBowOfEach(BOW_SCALE, own ? texts.webAndTableOfYour : '')}</p>`
        : working(texts.theSameWearUnderRigid, progress)
    }
  </section>`;
}

/** For the wall: one line. */
function besideOnWall(session: Session, i: Instant): string {
  const other = session.bends ? deskFor(session).bedding.other : null;
  if (!other) return session.bending ? texts.shoesThatBend2 : '';
  const [first] = deskFor(session).pairs(i, other);
  return first
    ? texts.bendingRigid(
        first.name,
        number(first.bend, first.digits),
        number(first.rigid, first.digits),
      )
    : '';
}

/** The shoes' bow on the drawing; null where there is none. */
function bow(session: Session, input: StageInput): Pick<Drawing, 'shapes' | 'labels'> | null {
  if (!session.bends) return null;
  const drawn = drawBow(session.rig, input);
  // Balloons stand where the scale would, and a sheet's brake is not pressed.
  return session.station === 'inspect' ? { ...drawn, labels: [] } : drawn;
}

/** All that the page asks of shoes that bend; loaded when they are first asked for. */
export const shoesThatBend = {
  styles: bendingStyles,
  lookAfter,
  rigidReadings,
  beside,
  besideOnWall,
  bow,
};
