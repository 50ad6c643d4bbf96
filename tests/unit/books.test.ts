import { describe, expect, it, vi } from 'vitest';
import {
  type BrakeState,
  createLife,
  createMotion,
  type Duty,
  freshState,
  KM,
  KMH,
  lostVolume,
  type Rig,
} from '../../sim/index.ts';
import { Drag } from '../../sim/wear/drag.ts';
import { Wearing } from '../../sim/wear/wearing.ts';
import { standingInside } from '../inside.ts';
import { near } from '../near.ts';

/** Give of what bears the strut's force in the model of tests/reference/drag.test.ts, mm/N. */
const SOFT = 1.7095e-4;
const AIR = 20;
const SPEED = 40 * KMH;
/** The van's drum by its scene, N·mm/K and N·mm/s/K: C = 1 564 J/K, G = 2.5 + 0.12 · 40 W/K. */
const C = 1564e3;
const G = 7.3e3;

/**
 * Energy of one stop of the van from 40 km/h in one brake, N·mm: ½ · 1 150 kg · (11.11 m/s)² · 0.3/2 = 10 648 J.
 * And of holding it at 40 km/h on the quay road, 8 % for 3 km: the weight's pull less rolling (0.015) and air
 * (0.54 kg/m), as in tests/unit/heat.test.ts, times 0.3/2.
 */
const STOP = 0.5 * 1.15 * SPEED * SPEED * 0.15;
const along = (slope: number): number => 1 / Math.sqrt(1 + slope * slope);
const HOLD = (1.15 * 9806.65 * along(0.08) * (0.08 - 0.015) - 0.54e-6 * SPEED * SPEED) * 0.15;
const HILL = HOLD * 3 * KM;

interface Books {
  /** N·mm */
  stops: number;
  hills: number;
  dragged: number;
  carried: number;
  stored: number;
  readonly end: BrakeState;
}

/**
 * Drives a life press by press and keeps its books. Between two presses the temperatures come from the same
 * released brake driven second by second, and what is carried away is their trapezium (off by h²/12 of the slope's
 * change: some joules).
 */
function drive(rig: Rig, duty: Duty, km: number): Books {
  const spy = vi.spyOn(Drag.prototype, 'drive');
  const start = { ...freshState(rig.brake), temperature: AIR };
  const life = createLife(rig, start, duty, { distance: km * KM, oneByOne: true });
  const books = { stops: 0, hills: 0, dragged: 0, carried: 0, stored: 0 };
  let before = life.state();
  while (!life.done) {
    spy.mockClear();
    life.advance(1e-3);
    const after = life.state();
    const on = spy.mock.results.reduce((sum, r) => sum + (r.value as { energy: number }).energy, 0);
    books.dragged += on;
    // The stop at a hill's foot comes with the next way.
    const presses = after.applications - before.applications;
    const stopped = presses > 0;
    const parked = !stopped && after.temperature === AIR;
    const held = !stopped && !parked && after.temperature > before.temperature + 20;
    // The way to it, but what a hill takes.
    const way = after.distance - before.distance - (held ? 3 * KM : 0);
    const foot = presses > 1 ? STOP / C : 0;
    const w = new Wearing(rig, { ...before, temperature: before.temperature + foot });
    const drag = new Drag(w);
    spy.mockClear();
    let from = w.temperature;
    const steps = Math.max(0, Math.ceil(way / SPEED));
    for (let n = 0; n < steps; n++) {
      drag.drive(way / steps, SPEED, AIR);
      books.carried += G * ((from + w.temperature) / 2 - AIR) * (way / SPEED / steps);
      from = w.temperature;
    }
    books.stops += presses;
    if (stopped) near(from + STOP / C, after.temperature, { abs: 0.3 }, 'after a stop');
    else if (parked) books.carried += C * (from - AIR);
    else if (held) {
      books.hills++;
      // C dT/dt = P − G (T − air), by the midpoint in steps of a second.
      for (let s = 0; s < 270; s++) {
        const rate = (t: number): number => (HOLD * SPEED - G * (t - AIR)) / C;
        const middle = from + rate(from) / 2;
        books.carried += G * (middle - AIR);
        from += rate(middle);
      }
      near(from, after.temperature, { abs: 0.3 }, 'foot of the hill');
    }
    before = after;
  }
  spy.mockRestore();
  books.stored = C * (before.temperature - AIR);
  return { ...books, end: before };
}

/** Stops every kilometre, a hill every 12.3, the lever pulled and the drum cold every 10.4. */
function dutyOf(rig: Rig): Duty {
  const hills = rig.brake.duties.find((d) => d.name === 'Hill descents');
  const quay = hills?.descents.find((d) => d.name === 'quay road');
  if (!hills?.parking || !quay) throw new Error('the van has hills');
  return {
    ...hills,
    descents: [{ ...quay, perKm: 1 / 12.3 }],
    parking: { ...hills.parking, perKm: 1 / 10.4 },
  };
}

describe('the energy books of a drive with its presses', () => {
  it.each([
    ['0.10 mm inside the drum: it rubs all the way between them', 0.1, SOFT],
    ['clear of the drum', -0.2, 0],
  ])('%s: work in = heat stored + carried away, to 0.1 %%', (_, z, give) => {
    const { rig } = standingInside(z, give);
    const { carried, dragged, hills, stops, stored } = drive(rig, dutyOf(rig), 40);
    // Forty kilometres: forty stops, and one more at the foot of each of three hills.
    expect([stops, hills]).toEqual([43, 3]);
    const work = stops * STOP + hills * HILL + dragged;
    near(stored + carried, work, { rel: 1e-3 }, 'books');
    // What rubs between them counts: 29 kJ a km at 0.05 mm inside and 40 km/h, where a stop from there is 10.6 kJ.
    if (z > 0) expect(dragged).toBeGreaterThan(stops * STOP);
    else expect(dragged).toBe(0);
  });
});

describe('a drive that drags, by Motion in time and by the steps of a life', () => {
  it('heats, wears and lets go alike: 0.1 mm inside, 40 km/h, the first minute', () => {
    // A turning drum shakes the hold-downs' friction off over kilometres; Motion's is kept: without it both are alike.
    const { rig } = standingInside(0.1, SOFT, (s) => {
      s.shoes.front.holdDown.friction = 0;
      s.shoes.rear.holdDown.friction = 0;
    });
    const { brake } = rig;
    const turn = SPEED / brake.vehicle.tyreRadius;
    const motion = createMotion(rig, freshState(brake));
    let state = freshState(brake);
    let time = 0;
    let torque = 0;
    /** On by a time: Motion runs, its drum turning; its mean torque heats the drum, its pressures wear the linings. */
    const on = (seconds: number): void => {
      motion.load(state, { pressure: 0, turning: 1 });
      let sum = 0;
      const steps = 6;
      for (let n = 0; n < steps; n++) {
        motion.step({ pressure: 0, turning: 1 });
        sum -= motion.instant().torqueOnDrum;
      }
      torque = sum / steps;
      const { shoes } = motion.instant();
      const sliding = turn * state.drumRadius * seconds;
      const worn = (side: 'front' | 'rear'): Float64Array => {
        const { wearRate } = brake.shoes[side].lining;
        // Cold linings: the scene's wear table is 1 up to 200 °C.
        return state.wear[side].map(
          (d, i) => d + wearRate * sliding * (shoes[side].pressure[i] ?? 0),
        );
      };
      const power = turn * torque;
      const { temperature } = state;
      state = {
        ...state,
        wear: { front: worn('front'), rear: worn('rear') },
        temperature: temperature + ((power - G * (temperature - AIR)) * seconds) / C,
      };
      time += seconds;
    };
    const w = new Wearing(rig, freshState(brake));
    const drag = new Drag(w);
    let driven = 0;
    for (const until of [0.5, 2, 10, 60]) {
      const each = until <= 2 ? 0.02 : 0.05;
      while (time < until - 1e-9) on(Math.min(each, until - time));
      drag.drive((until - driven) * SPEED, SPEED, AIR);
      driven = until;
      near(w.temperature - AIR, state.temperature - AIR, { rel: 0.01 }, `${until} s, rise`);
      near(drag.torqueAt(w.temperature), torque, { rel: 0.03 }, `${until} s, torque`);
    }
    // Worn off by the same law, k·E/mu: as much volume, and as deep (0.2 to 1.2 % off by parts as short as can be).
    const life = w.state();
    near(lostVolume(rig, life.wear), lostVolume(rig, state.wear), { rel: 0.01 }, 'volume');
    for (const side of ['front', 'rear'] as const) {
      const most = (s: BrakeState): number => Math.max(...s.wear[side]);
      near(most(life), most(state), { rel: 0.02 }, `${side}, deepest`);
      expect(most(life)).toBeGreaterThan(1e-4);
    }
    // And both as the solver written apart has it (tests/reference/drag.test.ts): 104.56 °C after a minute.
    near(state.temperature, 104.56, { abs: 1 }, 'after a minute');
  });
});
