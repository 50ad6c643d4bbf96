import type { Moment } from '../record/moment.ts';
import { layersOf } from '../record/parts.ts';
import { layerNames } from '../record/view.ts';
import type { Action } from './actions.ts';
import { LESSON_VERSION } from './format.ts';

/**
 * A lesson being written without code: its file in the making, which may lack what a lesson needs. What was
 * done on the stage becomes the actions that lead there from the lesson's start.
 */

export interface WrittenChoice {
  readonly says: string;
  readonly holds: boolean;
}

export interface WrittenStep {
  readonly ask: string;
  readonly choices: readonly WrittenChoice[];
  readonly shows: string;
  readonly why: string;
  readonly hand: readonly Action[];
  readonly layers: readonly string[];
  readonly readings: readonly string[];
}

export interface Written {
  readonly title: string;
  readonly idea: string;
  /** A teaching brake by its name, or a whole scene. */
  readonly brake: string | null;
  readonly scene: unknown;
  readonly state: string | null;
  readonly steps: readonly WrittenStep[];
}

export const MOST_STEPS = 60;
export const MOST_CHOICES = 4;

type Data = Readonly<Record<string, unknown>>;
const isData = (x: unknown): x is Data => typeof x === 'object' && x !== null && !Array.isArray(x);
const data = (x: unknown): Data => (isData(x) ? x : {});
const text = (x: unknown): string => (typeof x === 'string' ? x : '');
const many = (x: unknown): readonly unknown[] => (Array.isArray(x) ? x : []);

function stepOf(x: unknown): WrittenStep {
  const step = data(x);
  const look = data(step['look']);
  return {
    ask: text(step['ask']),
    choices: many(step['choices']).map((c): WrittenChoice => {
      const pieces = many(data(c)['says']).map(data);
      return {
        says: pieces.map((p) => text(p['words'])).join(' '),
        holds: pieces.length > 0 && pieces.every((p) => p['holds'] === true),
      };
    }),
    shows: text(step['shows']),
    why: text(step['why']),
    // Judged with the whole file, before it is tried or kept.
    hand: many(step['hand']).filter(isData) as unknown as readonly Action[],
    layers: many(look['layers']).map(text),
    readings: many(look['readings']).map(text),
  };
}

/** A draft as its text has it; null where that is no file at all. What it lacks is empty. */
export function writtenOf(draft: string): Written | null {
  let read: unknown;
  try {
    read = JSON.parse(draft);
  } catch {
    return null;
  }
  if (!isData(read)) return null;
  return {
    title: text(read['title']),
    idea: text(read['idea']),
    brake: typeof read['brake'] === 'string' ? read['brake'] : null,
    scene: read['scene'],
    state: typeof read['state'] === 'string' ? read['state'] : null,
    steps: many(read['steps']).map(stepOf),
  };
}

/** "The gap grows" as a name among all lessons. */
const named = (title: string): string =>
  title
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 40) || 'my-lesson';

/** The lesson's file, as it is kept, tried and saved. */
export function fileOf(w: Written): string {
  const file = {
    format: 'takeup-lesson',
    version: LESSON_VERSION,
    name: `own-${named(w.title)}`,
    title: w.title,
    ...(w.idea ? { idea: w.idea } : {}),
    ...(w.brake === null ? { scene: w.scene } : { brake: w.brake }),
    ...(w.state === null ? {} : { state: w.state }),
    steps: w.steps.map((s) => ({
      hand: s.hand,
      look: { layers: s.layers, readings: s.readings },
      ask: s.ask,
      choices: s.choices.map((c) => ({ says: [{ words: c.says, holds: c.holds }] })),
      ...(s.shows ? { shows: s.shows } : {}),
      ...(s.why ? { why: s.why } : {}),
    })),
  };
  return `${JSON.stringify(file, null, 2)}\n`;
}

/** A lesson that begins with the brake on the bench. */
export function begunFrom({ bench }: Moment, scene: object | null): Written {
  const byName = bench.brake.kind === 'scene';
  return {
    title: '',
    idea: '',
    brake: byName ? bench.brake.name : null,
    scene: byName ? undefined : scene,
    state: bench.standing,
    steps: [],
  };
}

const WAYS = { 1: 'forward', 0: 'stands', '-1': 'backward' } as const;
/** mm in a kilometre. */
const KM = 1e6;
const near = (a: number, b: number): boolean => Math.abs(a - b) < 1e-6;
const rounded = (x: number, digits: number): number => Number(x.toFixed(digits));

/** What is out of order now and was not, as a lesson says it. */
function conditionBetween(start: Moment, now: Moment): Action[] {
  const [was, is] = [start.bench.state.condition, now.bench.state.condition];
  const change = {
    ...(near(was.springFactor, is.springFactor) ? {} : { springFactor: is.springFactor }),
    ...(was.adjusterSeized === is.adjusterSeized ? {} : { adjusterSeized: is.adjusterSeized }),
    ...(is.teethHold === null || was.teethHold === is.teethHold ? {} : { teethHold: is.teethHold }),
    // The record has MPa, a lesson bar.
    ...(near(was.keptPressure, is.keptPressure) ? {} : { keptPressure: 10 * is.keptPressure }),
    ...(near(was.lean.front, is.lean.front) ? {} : { leanFront: is.lean.front }),
    ...(near(was.lean.rear, is.lean.rear) ? {} : { leanRear: is.lean.rear }),
    ...(near(was.offCentre, is.offCentre) ? {} : { offCentre: is.offCentre }),
    ...(near(was.oval, is.oval) ? {} : { oval: is.oval }),
  };
  return Object.keys(change).length > 0 ? [{ do: 'condition', ...change }] : [];
}

/** What has to be done from a lesson's start to come to a moment on the bench: its state first, then hands and pedal. */
export function actionsBetween(start: Moment, now: Moment): Action[] {
  const out: Action[] = [];
  const stands = now.bench.standing !== null && now.bench.standing !== start.bench.standing;
  if (stands) out.push({ do: 'state', name: now.bench.standing as string });
  const [was, is] = [start.bench.state, now.bench.state];
  const km = (is.distance - was.distance) / KM;
  const drives = !stands && km >= 0.5;
  if (drives) out.push({ do: 'wear', km: rounded(km, 1) });
  else if (!stands && was.tooth !== is.tooth) out.push({ do: 'tooth', to: is.tooth });
  if (!near(was.leverOffStop, is.leverOffStop))
    out.push({ do: 'lever', mm: rounded(is.leverOffStop, 2) });
  if (is.temperature > was.temperature + 0.5)
    out.push({ do: 'grow', kelvin: rounded(is.temperature - was.temperature, 0) });
  out.push(...conditionBetween(start, now));
  if (start.turning !== now.turning) out.push({ do: 'drum', way: WAYS[now.turning] });
  const cable = now.station === 'park' ? now.parts.park.cable : 0;
  if (cable > 0) out.push({ do: 'cable', newton: rounded(cable, 0) });
  if (now.pedal > 0) out.push({ do: 'pedal', bar: rounded(Math.min(80, now.pedal), 0) });
  return out;
}

/** Layers on the stage now. */
export const layersNow = (m: Moment): string[] => layerNames.filter((l) => layersOf(m)[l]);

/** What a step that was done on the stage begins as: two choices to be written, and what is usually read. */
export const stepFrom = (start: Moment, now: Moment): WrittenStep => ({
  ask: '',
  choices: [
    { says: '', holds: true },
    { says: '', holds: false },
  ],
  shows: '',
  why: '',
  hand: actionsBetween(start, now),
  layers: layersNow(now),
  readings: ['restClearanceMean', 'torque'],
});

/** An action in words, for who writes the lesson. */
export function actionText(a: Action): string {
  const { do: what, ...rest } = a;
  const told = Object.entries(rest)
    .map(([k, x]) => (k === 'name' || k === 'way' ? String(x) : `${k} ${String(x)}`))
    .join(', ');
  return told ? `${what}: ${told}` : what;
}
