import { describe, expect, it } from 'vitest';
import { dress } from '../../sim/balance/dress.ts';
import {
  application,
  type BrakeState,
  balance,
  createLife,
  createMotion,
  type Life,
  lostVolume,
  parked,
  type Rig,
  rest,
  restFaces,
  shoeFactor,
  standingState,
  suits,
  underShoes,
  usualPressure,
  wearOn,
} from '../../sim/index.ts';
import { KM } from '../../sim/units/units.ts';
import { Wearing } from '../../sim/wear/wearing.ts';
import { both } from '../bending-pair.ts';
import { tablesQuay } from '../brakes.ts';
import { near } from '../near.ts';
import { samples } from '../samples.ts';

const { brake } = tablesQuay();
const rigs = both(brake);
const sides = ['front', 'rear'] as const;
const factor = (rig: Rig, state: BrakeState, side: 'front' | 'rear', pressure = 2): number =>
  shoeFactor(balance(rig, state, { pressure, turning: 1 }), side);

/** Few: some of the standing states. Many: all. */
const some = (names: readonly string[]): readonly string[] =>
  names.filter((_, i) => i % samples('standingInOne') === 0);

const kept = new Map<Rig, Life>();
/** The whole life of a new brake by its first duty. */
const lifeOf = (rig: Rig): Life => {
  const known = kept.get(rig);
  if (known) return known;
  const life = createLife(rig, rigs.state, brake.duties[0], {});
  while (!life.done) life.advance(1000 * KM);
  kept.set(rig, life);
  return life;
};
const clicksOf = (life: Life) => life.events.filter((e) => e.kind === 'click');

describe('a life of shoes that bend', () => {
  it('ends where the rigid one does: Archard’s volume is the work of friction, and bedded in both do alike', () => {
    const [bent, stiff] = [lifeOf(rigs.bending), lifeOf(rigs.rigid)];
    expect([bent.end, stiff.end]).toEqual(['lining limit', 'lining limit']);
    near(bent.distance, stiff.distance, { rel: 0.005 }, 'limit');
    const volume = (life: Life) => lostVolume(rigs.rigid, life.state().wear) / life.distance;
    near(volume(bent), volume(stiff), { rel: 0.001 }, 'volume over distance');
  });

  it('wears each lining by Archard’s law: depth = k·p·s, told from one press', () => {
    // Bedded in, from 30 000 km on; the duty's presses and what each rubs over are the same for both rigs, so
    // the linings' volumes stand as the sums of their normal forces do.
    const from = wearOn(rigs.bending, rigs.state, { distance: 30000 * KM }).state;
    const to = wearOn(rigs.bending, from, { distance: 500 * KM }).state;
    const pressure = usualPressure(brake);
    const i = balance(rigs.bending, from, { pressure, turning: 1 });
    const lost = (side: 'front' | 'rear') => {
      const none = { front: new Float64Array(48), rear: new Float64Array(48) };
      const volume = (s: BrakeState) => lostVolume(rigs.bending, { ...none, [side]: s.wear[side] });
      return volume(to) - volume(from);
    };
    near(
      lost('front') / lost('rear'),
      i.shoes.front.normalSum / i.shoes.rear.normalSum,
      { rel: 0.02 },
      'front over rear',
    );
  });

  it('ends with pressure as the sine of the angle from the pin, and as the rigid shoe presses at its end', () => {
    // A hinge can only keep a shape that wears as r·sin (Archard); at the pressure that did most of the work.
    const ends = (rig: Rig) =>
      balance(rig, lifeOf(rig).state(), { pressure: usualPressure(brake), turning: 1 }).shoes;
    const [bent, stiff] = [ends(rigs.bending), ends(rigs.rigid)];
    for (const side of sides) {
      const top = Math.max(...stiff[side].pressure);
      bent[side].pressure.forEach((p, k) => {
        near(p, stiff[side].pressure[k] as number, { abs: 0.015 * top }, `${side} ${k}`);
      });
    }
    // The trailing lining's heel, which few presses reach, and the outermost elements take longer than a life.
    const [px, py] = brake.shoes.front.anchor.at;
    const { pressure, angle } = bent.front;
    const share = (k: number) =>
      (pressure[k] as number) / Math.abs(Math.sin((angle[k] as number) - Math.atan2(py, px)));
    for (let k = 0; k < 40; k++) near(share(k) / share(24), 1, { abs: 0.06 }, `sine at ${k}`);
  });

  it('clicks as often, and each time a little earlier: a press parts its seats further', () => {
    const [bent, stiff] = [clicksOf(lifeOf(rigs.bending)), clicksOf(lifeOf(rigs.rigid))];
    expect(bent.length).toBe(stiff.length);
    bent.forEach((e, k) => {
      expect(e.distance).toBeLessThan(stiff[k]?.distance ?? 0);
    });
    // What the usual press parts them further over what the seats part for each kilometre of wear. Between two
    // clicks the strut grows by a tooth.
    const pressure = usualPressure(brake);
    const at = wearOn(rigs.bending, rigs.state, { distance: 20000 * KM }).state;
    const seats = (rig: Rig, s: BrakeState) => balance(rig, s, { pressure, turning: 1 }).separation;
    const further =
      seats(rigs.bending, at) -
      seats(rigs.rigid, wearOn(rigs.rigid, rigs.state, { distance: 20000 * KM }).state);
    const [fifth, sixth] = [bent[5], bent[6]];
    const tooth = (brake.adjuster.growth[6] ?? 0) - (brake.adjuster.growth[5] ?? 0);
    const each = tooth / ((sixth?.distance ?? 0) - (fifth?.distance ?? 0));
    near(
      ((stiff[5]?.distance ?? 0) - (fifth?.distance ?? 0)) * each,
      further,
      { rel: 0.15 },
      'earlier',
    );
  });
});

describe('wear belongs to the shoes it was made under', () => {
  it('is told by the state, once there is any', () => {
    const driven = (rig: Rig) => wearOn(rig, rigs.state, { distance: 3000 * KM }).state;
    const [bent, stiff] = [driven(rigs.bending), driven(rigs.rigid)];
    expect([bent.wornBy, stiff.wornBy, 'wornBy' in stiff]).toEqual(['bending', undefined, false]);
    expect([suits(rigs.bending, bent), suits(rigs.rigid, bent)]).toEqual([true, false]);
    expect([suits(rigs.bending, stiff), suits(rigs.rigid, stiff)]).toEqual([false, true]);
    for (const rig of [rigs.rigid, rigs.bending]) expect(suits(rig, rigs.state)).toBe(true);
  });

  it('standing states are each model’s own, and stand alike once worn in', () => {
    for (const name of some(['Worn-in', 'Before a click', 'Second set', 'At its limit'])) {
      const [bent, stiff] = [standingState(rigs.bending, name), standingState(rigs.rigid, name)];
      expect(bent.wornBy).toBe('bending');
      for (const side of sides) {
        near(
          factor(rigs.bending, bent, side),
          factor(rigs.rigid, stiff, side),
          { rel: 0.005 },
          `${name}, ${side}`,
        );
      }
    }
  });

  it('changing the shoes beds the linings anew: as much volume, the other shape', () => {
    for (const name of ['Worn-in', 'Second set']) {
      for (const [from, to] of [
        [rigs.rigid, rigs.bending],
        [rigs.bending, rigs.rigid],
      ] as const) {
        const state = standingState(from, name);
        const other = underShoes(to, state);
        expect(suits(to, other)).toBe(true);
        near(
          lostVolume(to, other.wear),
          lostVolume(from, state.wear),
          { rel: 0.003 },
          `${name}, volume`,
        );
        expect([other.drumRadius, other.distance, other.condition]).toEqual([
          state.drumRadius,
          state.distance,
          state.condition,
        ]);
        expect(Math.abs(other.tooth - state.tooth)).toBeLessThanOrEqual(1);
        for (const side of sides) {
          // A ten-thousandth of a millimetre of the face is two per cent of so light a press.
          near(factor(to, other, side), factor(from, state, side), { rel: 0.02 }, name);
        }
        // Left as it was, it would be about a tenth off.
        expect(
          Math.abs(factor(to, state, 'front') / factor(from, state, 'front') - 1),
        ).toBeGreaterThan(0.08);
      }
    }
  });

  it('a standing state driven rigid and bedded in stands as one that was driven bending', () => {
    for (const name of some(['Worn-in', 'At its limit'])) {
      const bedded = underShoes(rigs.bending, standingState(rigs.rigid, name));
      const driven = standingState(rigs.bending, name);
      // The recipe drives both to its click or limit by its own kilometres: some tens of them apart.
      near(bedded.distance, driven.distance, { rel: 0.02 }, `${name}, distance`);
      expect(Math.abs(bedded.tooth - driven.tooth), name).toBeLessThanOrEqual(1);
      near(
        lostVolume(rigs.bending, bedded.wear),
        lostVolume(rigs.bending, driven.wear),
        { rel: 0.02 },
        `${name}, volume`,
      );
      for (const side of sides) {
        const told = [bedded, driven].map((s) => factor(rigs.bending, s, side));
        near(told[0] ?? Number.NaN, told[1] ?? Number.NaN, { rel: 0.003 }, `${name}, ${side}`);
      }
    }
  });

  it('leaves what suits as it is', () => {
    const state = standingState(rigs.bending, 'Worn-in');
    expect(underShoes(rigs.bending, state)).toBe(state);
    expect(underShoes(rigs.bending, rigs.state)).toBe(rigs.state);
  });
});

describe('a hard press of shoes that bend', () => {
  const hard = 10;
  // 300 km before a click: 0.015 mm at the seats, where a hard press parts them by 0.06 mm more than the usual.
  const run = wearOn(
    rigs.bending,
    wearOn(rigs.bending, rigs.state, { distance: 20000 * KM }).state,
    {
      distance: 9000 * KM,
      toNextClick: true,
    },
  );
  const before = wearOn(rigs.bending, rigs.state, {
    distance: (run.events.find((e) => e.kind === 'click')?.distance ?? 0) - 300 * KM,
  }).state;

  it('steps where the usual one does not, in balance and in time', () => {
    const press = (pressure: number) =>
      application(rigs.bending, before, { pressure, turning: 1 }).clicked;
    expect([press(usualPressure(brake)), press(hard)]).toEqual([0, 1]);
    for (const [pressure, clicks] of [
      [usualPressure(brake), 0],
      [hard, 1],
    ] as const) {
      const motion = createMotion(rigs.bending, before);
      for (let k = 0; k < 240; k++) {
        motion.step({ pressure: (pressure * Math.min(k, 120)) / 120, turning: 1 });
      }
      for (let k = 0; k < 240; k++) {
        motion.step({ pressure: pressure * Math.max(0, 1 - k / 60), turning: 1 });
      }
      expect(motion.state.tooth - before.tooth).toBe(clicks);
    }
  });

  it('settles worn in as the balance does, within 0.1 %', () => {
    for (const [pressure, turning] of [
      [2, 1],
      [hard, 1],
      [4, -1],
    ] as const) {
      const motion = createMotion(rigs.bending, before);
      for (let k = 0; k < 360; k++) {
        motion.step({ pressure: Math.min(pressure, (pressure * k) / 60), turning });
      }
      const [moved, still] = [
        motion.instant(),
        balance(rigs.bending, motion.state, { pressure, turning }),
      ];
      for (const side of sides) {
        near(
          moved.shoes[side].torqueOnDrum,
          still.shoes[side].torqueOnDrum,
          { rel: 1e-3 },
          `${side}, ${pressure} MPa`,
        );
      }
      near(moved.separation, still.separation, { abs: 1e-4 }, 'separation');
    }
  });

  it('parks on its own wear: the strut by the lever’s arms, and nearly the rigid slip torque', () => {
    const [bent, stiff] = [
      parked(rigs.bending, standingState(rigs.bending, 'Worn-in'), 500),
      parked(rigs.rigid, standingState(rigs.rigid, 'Worn-in'), 500),
    ];
    // Lever 109 : 16, less a little for the lever's turn.
    near(bent.strutForce, 500 * (109 / 16), { rel: 0.01 }, 'strut');
    near(bent.pivotForce, bent.strutForce - 500, { abs: 1e-9 }, 'pivot');
    near(bent.forward, stiff.forward, { rel: 0.15 }, 'forward');
    near(bent.backward, stiff.backward, { rel: 0.15 }, 'backward');
  });

  it('has the least gap at rest that its bent faces have', () => {
    for (const state of [rigs.state, before]) {
      const w = new Wearing(rigs.bending, state);
      const { front, rear } = rest(rigs.bending, state).shoes;
      near(
        w.restGap(state.temperature),
        dress(rigs.bending, state).restGap,
        { abs: 1e-9 },
        'middle',
      );
      near(
        w.leastGap(state.temperature),
        Math.min(...front.gap, ...rear.gap),
        { abs: 1e-5 },
        'least',
      );
      // The faces that a caliper finds with the drum off, at the elements' middles.
      const faces = restFaces(rigs.bending, state);
      for (const side of sides) {
        const { gap } = side === 'front' ? front : rear;
        gap.forEach((g, k) => {
          near(
            faces[side].radius[k] as number,
            state.drumRadius - g,
            { abs: 1e-5 },
            `${side} ${k}`,
          );
        });
      }
    }
  });
});
