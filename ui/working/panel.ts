import { html, type TemplateResult } from 'lit';
import {
  type Derivations,
  freeBody,
  type Instant,
  isTold,
  nowWorkings,
  type Reading,
  type Side,
  shoeSteps,
  workingsOf,
} from '../../sim/index.ts';
import { restOf } from '../record/derive.ts';
import type { Session } from '../session.ts';
import type { Body } from './body-polygon.ts';
import './sheet.ts';

/** What is laid under a reading's row: loaded when the first working is asked for. */

/** Readings that rest on the shoes' own factors: their working goes all the way from the pressure. */
const FROM_PRESSURE: ReadonlySet<string> = new Set([
  'brakeFactor',
  'brakeFactorFull',
  'shoeFactorLeading',
  'shoeFactorTrailing',
  'torque',
]);
const ON_THE_SHOE = /^(toeForce|drag|anchorForce)(Front|Rear)$|^strutForce$/;

const SIDES: readonly Side[] = ['front', 'rear'];

/** How all readings of the moment on the stage came about. */
export function nowWork(session: Session, instant: Instant): Derivations {
  const { rig, shown: state } = session;
  return nowWorkings({ rig, state, instant, rest: restOf(rig, state) });
}

/** The working of one reading of a list. @param list it stands in; @param work how they came about */
export function workingPanel(
  session: Session,
  instant: Instant,
  r: Reading,
  work: () => Derivations,
): TemplateResult {
  const { rig, shown: state } = session;
  const now = { rig, state, instant, rest: restOf(rig, state) };
  const working = workingsOf([r], work()).get(r.key) ?? null;
  const steps =
    FROM_PRESSURE.has(r.key) && working ? SIDES.flatMap((side) => shoeSteps(now, side) ?? []) : [];
  const shows = isTold(instant) && (FROM_PRESSURE.has(r.key) || ON_THE_SHOE.test(r.key));
  const sides = r.side ? [r.side] : SIDES;
  const bodies = shows
    ? sides.map((side): Body => ({ side, forces: freeBody(rig, state, instant, side) }))
    : [];
  return html`<takeup-working .reading=${r} .working=${working} .steps=${steps} .bodies=${bodies}></takeup-working>`;
}
