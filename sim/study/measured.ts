import type { Rig } from '../balance/rig.ts';
import { usualPressure } from '../brake/duty.ts';
import { type BrakeState, freshState } from '../brake/state.ts';
import type { Brake, Side } from '../brake/types.ts';
import { fromToe } from '../brake/worn-along.ts';
import { sin } from '../math/trig.ts';
import type { Finding } from '../scene/finding.ts';
import { PI } from '../units/units.ts';
import { application } from '../wear/application.ts';
import { studyMeasured as words } from '../words/en.ts';

/** Thickness of a lining at the ends of its arc and where it is thinnest, mm. */
export interface LiningReading {
  readonly toe: number;
  readonly thinnest: number;
  readonly heel: number;
}

/** What a gauge, a rule and a look find on one wheel. What was not measured is left out. */
export interface WheelReadings {
  /** Diameters of the bore at one depth, mm: up to three, 60° apart; of two, greatest and least. */
  readonly drum: readonly number[];
  readonly lining: Readonly<Partial<Record<Side, Partial<LiningReading>>>>;
  readonly tooth?: number;
  /** How far the cable holds the parking lever off its stop, mm at the hook. */
  readonly leverOffStop?: number;
  readonly adjusterSeized?: boolean;
  /** Linings that fluid has touched. */
  readonly greasy?: Readonly<Partial<Record<Side, boolean>>>;
  /** Driven since the linings were fitted, mm. */
  readonly distance?: number;
}

/**
 * Round part and ovality of a bore from its diameters. A bore that is oval twice a turn has
 * D(θ) = D₀ + 2e·cos 2(θ − θ₀); three diameters 60° apart stand 120° apart in 2θ, so their mean is D₀
 * and the sum of their squared deviations is (3/2)·(2e)² whatever θ₀ is (cosines at thirds of a turn).
 * Of two diameters it can only be taken that they are the greatest and the least.
 *
 * @returns mean diameter and e, the ± on radius, mm; NaN without a diameter
 */
export function boreFrom(diameters: readonly number[]): { mean: number; oval: number } {
  const n = diameters.length;
  const mean = diameters.reduce((sum, d) => sum + d, 0) / n;
  let squares = 0;
  for (const d of diameters) squares += (d - mean) * (d - mean);
  // Two: (2e)² = half the sum; three: two thirds of it; one: round.
  return { mean, oval: n < 2 ? 0 : Math.sqrt(squares / (n === 2 ? 2 : 1.5)) / 2 };
}

/**
 * Depth worn along a lining, through three thicknesses: a parabola in the arc with its crest at the
 * thinnest place. With a and b the depths that the toe and the heel lack to the crest, the crest
 * stands √a/(√a + √b) along the arc from the toe, and the curvature is (√a + √b)². A pinned shoe
 * wears as A·sin ψ − B, which is this parabola to within 0.06 mm over a 110° lining worn by 2.5 (derived here, and tested).
 *
 * @returns depth at the middle of each element, from the toe, mm
 */
export function wornProfile(reading: LiningReading, fresh: number, count: number): Float64Array {
  const a = Math.sqrt(Math.max(0, reading.toe - reading.thinnest));
  const b = Math.sqrt(Math.max(0, reading.heel - reading.thinnest));
  const most = fresh - reading.thinnest;
  const place = a + b > 0 ? a / (a + b) : 0.5;
  const out = new Float64Array(count);
  for (let i = 0; i < count; i++) {
    const from = (i + 0.5) / count - place;
    out[i] = most - (a + b) * (a + b) * from * from;
  }
  // No element stands just at the crest: the nearest one takes it, so that it reads as typed.
  out[Math.min(count - 1, Math.floor(place * count))] = most;
  return out;
}

/** What a rule would find on a lining of the brake in a state, mm. */
export function liningReading(brake: Brake, state: BrakeState, side: Side): LiningReading {
  const wear = fromToe(state.wear[side], side);
  const fresh = brake.shoes[side].lining.thicknessNew;
  // The ends lie half an element out: the parabola through the last three goes on to them.
  const end = (i: number, way: 1 | -1): number => {
    const at = (k: number): number => wear[i + way * k] ?? 0;
    return (15 * at(0) - 10 * at(1) + 3 * at(2)) / 8;
  };
  let most = Number.NEGATIVE_INFINITY;
  for (const w of wear) most = Math.max(most, w);
  const thinnest = fresh - most;
  return {
    toe: Math.max(thinnest, fresh - end(0, 1)),
    thinnest,
    heel: Math.max(thinnest, fresh - end(wear.length - 1, -1)),
  };
}

/** The sheet of the brake in a state: what measuring it would find. The first angle is the oval's long axis. */
export function measure(brake: Brake, state: BrakeState): WheelReadings {
  const { oval } = state.condition;
  const at = (thirds: number): number =>
    2 * (state.drumRadius + oval * sin(PI / 2 + (2 * PI * thirds) / 3));
  return {
    drum: [at(0), at(1), at(2)],
    lining: {
      front: liningReading(brake, state, 'front'),
      rear: liningReading(brake, state, 'rear'),
    },
    tooth: state.tooth,
    leverOffStop: state.leverOffStop,
    adjusterSeized: state.condition.adjusterSeized,
    greasy: {
      front: state.condition.surface.front === 'greasy',
      rear: state.condition.surface.rear === 'greasy',
    },
    distance: state.distance,
  };
}

/** What was not measured, and what stands in its place. */
export type Filled =
  | { readonly what: 'drum as new' }
  | { readonly what: 'lining as new'; readonly side: Side }
  | { readonly what: 'lining even'; readonly side: Side; readonly thinnest: number }
  | { readonly what: 'tooth where silent'; readonly tooth: number };

export type LoadResult =
  | { readonly ok: true; readonly state: BrakeState; readonly notes: readonly Filled[] }
  | { readonly ok: false; readonly findings: readonly Finding[] };

/** A drum may be past its mark by this and still be loaded, mm on diameter: it must be seen to fail. */
const PAST_MARK = 2;
/** Gauges and rules of one brake differ by this much without meaning it, mm. */
const READS_ALIKE = 0.05;

const fixed = (value: number): string => String(Number(value.toFixed(3)));

function checked(brake: Brake, m: WheelReadings): Finding[] {
  const out: Finding[] = [];
  const low = 2 * brake.drum.radiusNew - READS_ALIKE;
  const high = 2 * brake.drum.radiusMax + PAST_MARK;
  m.drum.forEach((d, i) => {
    if (d >= low && d <= high) return;
    out.push({
      path: `drum.${i}`,
      found: `${fixed(d)} mm`,
      allowed: words.toPastMark(fixed(low), fixed(high), PAST_MARK),
    });
  });
  for (const side of ['front', 'rear'] as const) {
    const l = m.lining[side];
    if (!l) continue;
    const fresh = brake.shoes[side].lining.thicknessNew;
    for (const place of ['toe', 'thinnest', 'heel'] as const) {
      const t = l[place];
      if (t === undefined || (t >= 0 && t <= fresh + READS_ALIKE)) continue;
      out.push({
        path: `lining.${side}.${place}`,
        found: `${fixed(t)} mm`,
        allowed: words.toNewLining(fixed(fresh)),
      });
    }
    const ends = Math.min(l.toe ?? Number.POSITIVE_INFINITY, l.heel ?? Number.POSITIVE_INFINITY);
    if (l.thinnest !== undefined && l.thinnest > ends) {
      out.push({
        path: `lining.${side}.thinnest`,
        found: `${fixed(l.thinnest)} mm`,
        allowed: words.atMostAsEnds(fixed(ends)),
      });
    }
  }
  const { teeth } = brake.adjuster;
  if (m.tooth !== undefined && !(Number.isInteger(m.tooth) && m.tooth >= 0 && m.tooth <= teeth)) {
    out.push({ path: 'tooth', found: fixed(m.tooth), allowed: words.wholeTo(teeth) });
  }
  if (m.leverOffStop !== undefined && !(m.leverOffStop >= 0 && m.leverOffStop <= 50)) {
    out.push({
      path: 'leverOffStop',
      found: `${fixed(m.leverOffStop)} mm`,
      allowed: words.toMostOffStop,
    });
  }
  return out;
}

/** As many teeth as pressing until silent takes up. */
function taken(rig: Rig, start: BrakeState): BrakeState {
  const { adjuster } = rig.brake;
  const pressure = usualPressure(rig.brake);
  let state = start;
  for (let i = 0; i <= adjuster.teeth; i++) {
    const press = application(rig, state, { pressure, turning: 1 });
    if (press.clicked === 0) return state;
    state = press.state;
  }
  return state;
}

/**
 * The very brake that was measured. What was not measured is filled in and told: a lining with one
 * thickness is worn evenly, a drum without a diameter is new, an uncounted tooth is where the
 * adjuster would have stepped by now.
 *
 * @returns the state with notes, or findings: place, what was found, what is allowed
 */
export function loadMeasured(rig: Rig, m: WheelReadings): LoadResult {
  const { brake } = rig;
  const findings = checked(brake, m);
  if (findings.length > 0) return { ok: false, findings };
  const notes: Filled[] = [];
  const bore = m.drum.length > 0 ? boreFrom(m.drum) : { mean: 2 * brake.drum.radiusNew, oval: 0 };
  if (m.drum.length === 0) notes.push({ what: 'drum as new' });
  const fresh = freshState(brake);
  const worn = (side: Side): Float64Array => {
    const l = m.lining[side];
    const full = brake.shoes[side].lining.thicknessNew;
    const typed = [l?.toe, l?.thinnest, l?.heel].filter((t) => t !== undefined);
    if (typed.length === 0) {
      notes.push({ what: 'lining as new', side });
      return fresh.wear[side];
    }
    const thinnest = Math.min(...typed);
    if (typed.length < 3) {
      notes.push({ what: 'lining even', side, thinnest });
    }
    const clip = (t: number | undefined): number => Math.min(full, t ?? thinnest);
    const reading = { toe: clip(l?.toe), thinnest: clip(thinnest), heel: clip(l?.heel) };
    const profile = wornProfile(reading, full, fresh.wear[side].length);
    return side === 'front' ? profile : profile.reverse();
  };
  let state: BrakeState = {
    ...fresh,
    drumRadius: Math.max(brake.drum.radiusNew, bore.mean / 2),
    wear: { front: worn('front'), rear: worn('rear') },
    tooth: m.tooth ?? 0,
    wornBy: 'neither',
    leverOffStop: m.leverOffStop ?? 0,
    distance: m.distance ?? 0,
    condition: {
      ...fresh.condition,
      oval: bore.oval,
      adjusterSeized: m.adjusterSeized ?? false,
      surface: {
        front: m.greasy?.front ? 'greasy' : 'dry',
        rear: m.greasy?.rear ? 'greasy' : 'dry',
      },
    },
  };
  if (m.tooth === undefined) {
    state = taken(rig, state);
    notes.push({ what: 'tooth where silent', tooth: state.tooth });
  }
  return { ok: true, state, notes };
}
