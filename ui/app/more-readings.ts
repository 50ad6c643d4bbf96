import { html, nothing, type TemplateResult } from 'lit';
import {
  BAR,
  curveReadings,
  curveWorkings,
  type Derivations,
  dragReadings,
  dragWorkings,
  type Instant,
  KMH,
  lineAt,
  parkedReadings,
  parkedWorkings,
  partReadings,
  partWorkings,
  pedalCurve,
  pedalStack,
  type Reading,
  roadDrag,
  stopAt,
  stopReadings,
  stopWorkings,
  suits,
  turnReadings,
  turnWorkings,
  usualPressure,
  wheelReadings,
  wheelWorkings,
} from '../../sim/index.ts';
import { appMoreReadings as words } from '../../sim/words/en.ts';
import { dragNotes, pedalNotes, stopNotes } from '../../sim/workshop/index.ts';
import { number } from '../format.ts';
import { pedalPlot, plotKey } from '../plot/pedal-plot.ts';
import { bothOf } from '../record/across.ts';
import { PRESS_BAR } from '../record/bench.ts';
import type { Session } from '../session.ts';

export { ownRows } from '../stations/vary/own-rows.ts';

/** Pull of the cable for which the parked brake is told, N: an ordinary pull (own choice). */
const CABLE = 300;
/** Speed that a stop is told from, km/h: in town (own choice). */
const TOWN = 50;

/** Readings under one heading, and what stands beneath them. */
export interface Group {
  readonly title: string;
  readonly list: readonly Reading[];
  readonly below: TemplateResult | typeof nothing;
  /** How each came about, worked out when it is asked for. */
  work(): Derivations;
}

const notes = (texts: readonly string[]): TemplateResult =>
  html`${texts.map((text) => html`<p class="note">${text}</p>`)}`;

/**
 * What takes many instants to tell: a stop, drag on the road, the pedal's way down, the brake parked, and
 * once around its drum. A released brake is stopped by its usual pressure.
 */
export function moreReadings(session: Session, instant: Instant): Group[] {
  const { moment, rig, shown: state } = session;
  // Of unlike wheels both are stopped by, where the shoes suit both; not while one is only being fitted.
  const told = state === session.state ? bothOf(moment) : null;
  const both = told && suits(rig, told.left) && suits(rig, told.right) ? told : null;
  const states = both ? [both.left, both.right] : state;
  const { pressure, turning } = instant;
  const { brake } = rig;
  const hard = pressure > 0 ? pressure : usualPressure(brake);
  const way = turning === -1 ? -1 : 1;
  const speed = TOWN * KMH;
  const most = Math.max(pressure, PRESS_BAR * BAR);
  const curve = pedalCurve(rig, state, most, way);
  const { total: travel, force } = pedalStack(brake, instant);
  const group = (
    title: string,
    list: readonly Reading[],
    work: Group['work'],
    below: Group['below'] = nothing,
  ): Group => ({ title, list, work, below });
  return [
    group(
      words.aStopFromKmH(TOWN, number(hard / BAR, 0)),
      stopReadings(rig, states, speed, hard, way),
      () => stopWorkings(rig, states, speed, hard, way),
      notes(stopNotes(brake, stopAt(rig, states, speed, hard, way))),
    ),
    ...(both
      ? [
          group(
            words.bothWheelsAtThatPress,
            wheelReadings(rig, both, lineAt(brake, hard), way, speed),
            () => wheelWorkings(rig, both, lineAt(brake, hard), way, speed),
          ),
        ]
      : []),
    group(
      words.drivenAtKmHWith(TOWN),
      dragReadings(rig, state, speed),
      () => dragWorkings(rig, state, speed),
      notes(dragNotes(roadDrag(rig, state, speed))),
    ),
    group(
      words.thePedalPushedToBar(number(most / BAR, 0)),
      curveReadings(curve),
      () => curveWorkings(brake, curve),
      html`${pedalPlot(curve, { travel, force })}${notes([plotKey, ...pedalNotes(curve)])}`,
    ),
    group(words.whereThatTravelGoes, partReadings(curve), () => partWorkings(brake, curve)),
    group(words.parkedWithNInThe(CABLE), parkedReadings(rig, state, CABLE), () =>
      parkedWorkings(rig, state, CABLE),
    ),
    group(words.onceAroundTheDrum, turnReadings(rig, state, { pressure, turning }), () =>
      turnWorkings(rig, state, { pressure, turning }),
    ),
  ];
}
