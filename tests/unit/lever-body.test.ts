import { describe, expect, it } from 'vitest';
import benchBrake from '../../scenes/bench-brake.json';
import farmTrailer from '../../scenes/farm-trailer.json';
import {
  type Brake,
  type BrakeState,
  createMotion,
  createRig,
  type Drop,
  freshState,
  growthAt,
  hitOf,
  type Instant,
  type LeverForm,
  leverForm,
  leverMass,
  leverOutline,
  type Motion,
  noseAngle,
  ringOf,
  SOUND,
  withAdjuster,
} from '../../sim/index.ts';
import { apply, type Frame } from '../../ui/stage/geometry.ts';
import { windowBox } from '../../ui/stage/parts/shoe.ts';
import { windowFrame } from '../../ui/stage/parts/strut.ts';
import { placesOf } from '../../ui/stage/place.ts';
import { mustRead, quay, quayScene } from '../brakes.ts';
import { near } from '../near.ts';
import { samples } from '../samples.ts';

const must = <T>(value: T | null | undefined): T => {
  if (value === null || value === undefined) throw new Error('a toothed lever is needed');
  return value;
};
const van = quay().brake;

/** The van's lever of so much mass and with such a spring: the plate is cut as thick as it takes. */
function leverOf(grams: number, fitted: number, rate: number): LeverForm {
  const scene = quayScene();
  scene.adjuster.spring = { ...scene.adjuster.spring, fitted, rate };
  const { area } = leverMass(must(leverForm(van)));
  scene.strutPath.lever.thickness = (grams * 1e-6) / (7.85e-9 * area);
  return must(leverForm(mustRead(scene)));
}
const still = { at: 0, tooth: 1, rise: 0, ahead: 0, pace: 0, strength: 1 };

describe('a drop over the crest', () => {
  // Worked out apart from this code, on a lever of 5.4 and 8.1 g over a tooth of 1 mm, restitution 0.4:
  // spring N and N/mm, mass g, fall ms, hit mm/s, energy mJ, ring ms.
  it.each([
    [5, 0.5, 5.4, 1.41, 1393, 5.25, 2.0],
    [5, 0.5, 8.1, 1.73, 1137, 5.25, 2.4],
    [15, 1.5, 5.4, 0.82, 2413, 15.75, 1.2],
    [15, 1.5, 8.1, 1.0, 1970, 15.75, 1.4],
    [25, 2.5, 5.4, 0.63, 3115, 26.25, 0.9],
    [25, 2.5, 8.1, 0.77, 2543, 26.25, 1.1],
  ])(
    '%d N, %d N/mm, %d g: falls, hits and rings as worked out',
    (f, k, grams, fall, speed, energy, ring) => {
      const form = leverOf(grams, f, k);
      const hit = hitOf(form, still);
      near(hit.after * 1000, fall, { abs: 0.006 }, 'fall');
      near(hit.speed, speed, { rel: 0.003 }, 'hit');
      near(hit.energy, energy, { rel: 1e-9 }, 'energy');
      near(ringOf(form, still, hit) * 1000, ring, { abs: 0.06 }, 'ring');
      // 0.3 of the spring: by the same sums 1.82 times as long and 0.3 of the energy.
      const weak = hitOf(form, { ...still, strength: 0.3 });
      near(weak.after, hit.after / Math.sqrt(0.3), { rel: 1e-9 });
      near(weak.energy, 0.3 * energy, { rel: 1e-9 });
    },
  );

  it('gives out what the climb has put in, whatever the lever weighs', () => {
    for (const grams of [4, 9, 30])
      near(hitOf(leverOf(grams, 15, 1.5), still).energy, 15.75, { rel: 1e-9 });
  });

  it('meets the next flank sooner, and harder, while the edge still pulls', () => {
    const form = leverOf(18.9, 15, 1.5);
    const moving = { ...still, pace: 240 };
    expect(hitOf(form, moving).after).toBeLessThan(hitOf(form, still).after);
    const { after } = hitOf(form, moving);
    // Where it hits, both stand at one height: the fall by hand, by small steps.
    let [s, v] = [form.toothHeight, 0];
    const n = 20_000;
    const { mass } = leverMass(form);
    for (let i = 0; i < n; i++) {
      v -= ((15 + 1.5 * s) / mass) * (after / n);
      s += v * (after / n);
    }
    near(s, form.toothHeight * 240 * after, { abs: 1e-4 });
  });
});

/**
 * The lever as a free body, judge of the closed forms: it slides in its slot and turns about its pin, its
 * finger is pulled by the window's edge, its row of teeth lies on the tip of the block's tooth; both
 * contacts are stiff springs with friction on the tip. Steps of 1/240 s over so many.
 */
function judged(
  form: LeverForm,
  growth: readonly number[],
  edgeSpeed: number,
  subSteps: number,
): number {
  const { mass, inertia } = leverMass(form);
  const { noseRadius: r, startAngle, toothHeight: h, toothRadius: R, spring } = form;
  const dt = 1 / 240 / subSteps;
  const STIFF = 2e4;
  // Critical, so that the finger stays on its edge: 2·√(k·I/r²).
  const DAMP = 2 * Math.sqrt((STIFF * inertia) / (r * r));
  const RUB = 0.15;
  const tooth = 9;
  const angleAt = (phase: number) => noseAngle(form, growthAt(growth, phase)) - startAngle;
  const [crest, next] = [angleAt(tooth), angleAt(tooth + 1)];
  const pitch = next - crest;
  // On the crest between tooth 8 and 9, a hair past it, turning with the edge.
  const swing = r * Math.sin(startAngle + crest);
  let [s, v, turn, w] = [h, 0, crest + 1e-7, edgeSpeed / swing];
  let edge = -r * Math.cos(startAngle + turn) - edgeSpeed * dt;
  for (let t = 0; t < 0.02; t += dt) {
    edge += edgeSpeed * dt;
    let [force, moment] = [-(spring.fitted + spring.rate * s), 0];
    // The edge pulls the finger, never pushes.
    const nose = -r * Math.cos(startAngle + turn);
    const noseSpeed = r * Math.sin(startAngle + turn) * w;
    const pull = Math.max(0, STIFF * (edge - nose) + DAMP * (edgeSpeed - noseSpeed));
    moment += pull * r * Math.sin(startAngle + turn);
    // The tip stands at R + s below the pin; the saw there.
    const place = (turn - crest) / pitch;
    const saw = R + h * Math.max(0, place);
    const deep = saw - (R + s);
    if (deep > 0) return t;
    // The steep face beside the tip: it brushes past as long as the lever has not turned clear of it.
    const aside = -(turn - crest) * R;
    if (aside > 0) {
      const press = STIFF * aside;
      moment += press * R;
      force -= Math.sign(v) * RUB * press;
    }
    v += (force / mass) * dt;
    s += v * dt;
    w += (moment / inertia) * dt;
    turn += w * dt;
  }
  return Number.NaN;
}

it('a body in contact with its teeth falls as the closed form does, within 2.5 % at 400 sub-steps', () => {
  for (const [brake, speeds] of [
    [van, [0, 20, 120, 240]],
    [mustRead(benchBrake), [0, 20, 120, 240]],
  ] as const) {
    const form = must(leverForm(brake));
    const { growth } = brake.adjuster;
    const tall = (growth[10] ?? (growth.at(-1) as number)) - (growth[9] as number);
    for (const speed of speeds) {
      const fall = hitOf(form, { ...still, pace: speed / tall }).after;
      near(judged(form, growth, speed, 400), fall, { rel: 0.025 }, `${speed} mm/s`);
    }
  }
});

/** A press of the pedal as the bench's own tests make them: rise, hold, let go, and home. */
interface Press {
  readonly rise: number;
  readonly bar: number;
  readonly letGo: number;
}
type Seen = (before: Instant, after: Instant, motion: Motion, drops: readonly Drop[]) => void;

function pressed(motion: Motion, { rise, bar, letGo }: Press, seen: Seen = () => {}): number {
  let clicked = 0;
  let before = motion.instant();
  const step = (pressure: number): void => {
    clicked += motion.step({ pressure, turning: 1 }).clicked;
    const after = motion.instant();
    seen(before, after, motion, motion.drops);
    before = after;
  };
  const { dt } = motion;
  for (let t = 0; t < rise; t += dt) step(((bar / 10) * (t + dt)) / rise);
  for (let t = 0; t < letGo; t += dt) step((bar / 10) * Math.max(0, 1 - (t + dt) / letGo));
  for (let t = 0; t < 0.08; t += dt) step(0);
  return clicked;
}

/** Chance that can be repeated (Lehmer's generator, 48271). */
function dice(seed: number): () => number {
  let s = seed;
  return () => {
    s = (s * 48271) % 2147483647;
    return s / 2147483647;
  };
}

/** Worn evenly by a share of what its next few teeth take up: presses that click, and some that do not. */
function worn(brake: Brake, tooth: number, chance: () => number, condition = SOUND): BrakeState {
  const { growth, lostMotion } = brake.adjuster;
  const fresh = freshState(brake);
  const reach = (growth[tooth] as number) * 0.62 + (lostMotion - 0.9) * 0.5 + chance() * 0.9;
  const wear = new Float64Array(fresh.wear.front.length).fill(Math.max(0, reach * 0.8));
  return { ...fresh, tooth, wear: { front: wear, rear: wear.slice() }, condition };
}

const finger = (brake: Brake, frame: Frame): number => {
  const form = must(leverForm(brake));
  return apply(frame, leverOutline(form).nose)[0] + form.window.x / 2;
};

const brakes: readonly [string, Brake][] = [
  ['quay van', van],
  ['quay van, one a press', withAdjuster(van, 'incremental')],
  ['bench brake', mustRead(benchBrake)],
  ['farm trailer with such a lever', withAdjuster(mustRead(farmTrailer), 'toothed lever')],
];

describe.each(brakes)('random presses: %s', (_, brake) => {
  const chance = dice(20261128);
  const rig = createRig(brake);
  const form = must(leverForm(brake));
  const box = must(windowBox(brake));
  /** How far the pulling edge is off the finger of a lever at a phase, mm. */
  const off = (i: Instant, phase: number): number => {
    const places = placesOf(brake, { ...i, lever: { phase, lift: 0 } });
    return apply(windowFrame(brake, places), [box.right, 0])[0] - finger(brake, must(places.lever));
  };

  it('crests at the drawn edge, rests on the tooth that is counted, shows none that is not', () => {
    let clicks = 0;
    const wrong: string[] = [];
    const count = samples('leverPresses');
    for (let n = 0; n < count; n++) {
      const strength = n % 5 === 3 ? 0.3 : n % 5 === 4 ? 0 : 1;
      const condition = { ...SOUND, leverSpring: strength };
      const tooth = Math.floor(chance() * (brake.adjuster.teeth - 3));
      const motion = createMotion(rig, worn(brake, tooth, chance, condition));
      const press = {
        rise: 0.05 + chance() * 0.3,
        bar: 20 + chance() * 40,
        letGo: 0.01 + chance() * 0.1,
      };
      clicks += pressed(motion, press, (before, after, _, drops) => {
        const lever = must(after.lever);
        // Never beyond the next crest of what is counted, never below it; and the tip never in the flank.
        const flank = form.toothHeight * (lever.phase - after.tooth);
        const sound =
          lever.phase >= after.tooth &&
          lever.phase <= after.tooth + 1 &&
          lever.lift >= 0 &&
          lever.lift >= flank - 1e-12;
        if (!sound) wrong.push(`press ${n}: ${JSON.stringify(lever)} at tooth ${after.tooth}`);
        for (const drop of drops) {
          if (strength < 1) continue;
          // Where the edge is drawn at that moment, between the two drawn ones: at the finger of that tooth.
          const share = (drop.at - (motion.time - motion.dt)) / motion.dt;
          const [a, b] = [off(before, drop.tooth), off(after, drop.tooth)];
          near(a + share * (b - a), 0, { abs: 0.02 }, `crest into ${drop.tooth}`);
        }
      });
      const home = must(motion.instant().lever);
      expect(home, `press ${n}`).toEqual({ phase: motion.tooth, lift: 0 });
    }
    expect(wrong).toEqual([]);
    expect(clicks).toBeGreaterThan(0.16 * count);
  });
});

describe('where law and body part', () => {
  const rig = createRig(van);
  const state = worn(van, 5, () => 0.9);

  it('one tooth that may be taken a press: the second lies on its crest, and slides home', () => {
    const single = withAdjuster(van, 'incremental');
    const motion = createMotion(
      createRig(single),
      worn(single, 4, () => 1.9),
    );
    let most = 0;
    pressed(motion, { rise: 0.3, bar: 30, letGo: 0.05 }, (_, i) => {
      if (i.tooth === 5) most = Math.max(most, must(i.lever).lift);
    });
    expect(motion.tooth).toBe(5);
    near(most, must(leverForm(single)).toothHeight, { rel: 1e-9 });
    expect(motion.instant().lever).toEqual({ phase: 5, lift: 0 });
  });

  it('let go before its crest it slides down no faster than its spring drives it', () => {
    const motion = createMotion(rig, state);
    const heights: number[] = [];
    motion.setStep(1 / 24000);
    const press = (pressure: number, n: number, keep = false): void => {
      for (let i = 0; i < n; i++) {
        motion.step({ pressure, turning: 1 });
        if (keep) heights.push(must(motion.instant().lever).lift);
      }
    };
    let bar = 0;
    while (motion.instant().climb < 0.5 && motion.tooth === state.tooth) {
      bar += 0.01;
      press(bar / 10, 8);
    }
    const from = must(motion.instant().lever).lift;
    press(0, 60, true);
    // Free on the flank: s″ = (F0 + k·s)/M, M = m + I·(turn/height)², by hand from the outline's mass.
    const form = must(leverForm(van));
    const { mass, inertia } = leverMass(form);
    const M = mass + inertia * (form.toothAngle / form.toothHeight) ** 2;
    const { at, phase } = must(motion.snapshot().lever.letGo);
    const start = form.toothHeight * phase;
    near(start, from, { abs: 0.01 });
    heights.forEach((s, i) => {
      const t = motion.time - (heights.length - 1 - i) / 24000 - at;
      const free = start - (((15 + 1.5 * start) / M) * t * t) / 2;
      expect(s).toBeGreaterThan(free - 1e-9);
    });
    expect(heights.at(-1)).toBeLessThan(from);
  });

  it('the same clicks at every step of slow motion', () => {
    const teeth = [240, 1200, 6000].map((rate) => {
      const motion = createMotion(rig, state, 1 / rate);
      return [1, 2, 3].map(() => pressed(motion, { rise: 0.2, bar: 40, letGo: 0.03 }));
    });
    expect(teeth[1]).toEqual(teeth[0]);
    expect(teeth[2]).toEqual(teeth[0]);
    expect((teeth[0] as number[])[0]).toBeGreaterThan(0);
  });

  it('adjusters without a toothed lever have no such body', () => {
    for (const kind of ['screw strut', 'wedge'] as const) {
      const brake = withAdjuster(van, kind);
      const motion = createMotion(createRig(brake), freshState(brake));
      pressed(motion, { rise: 0.1, bar: 40, letGo: 0.02 });
      expect(motion.instant().lever).toBeUndefined();
      expect(motion.drops).toEqual([]);
    }
  });
});

describe('a record of the lever', () => {
  it('goes on bit for bit in the middle of a drop, in another Motion, at another step, twice the same', () => {
    const rig = createRig(van);
    const state = worn(van, 5, () => 0.9);
    const one = createMotion(rig, state);
    let at = 0;
    while (one.drops.length === 0) {
      at += 0.02;
      one.step({ pressure: Math.min(4, at), turning: 1 });
    }
    one.setStep(1 / 24000);
    const kept = one.snapshot();
    const onFrom = (motion: Motion): unknown[] => {
      const seen: unknown[] = [];
      for (let n = 0; n < 90; n++) {
        motion.step({ pressure: 4, turning: 1 });
        seen.push(motion.instant().lever, motion.time);
      }
      return [...seen, motion.snapshot()];
    };
    const first = onFrom(one);
    const other = createMotion(rig, freshState(van));
    for (let n = 0; n < 5; n++) other.step({ pressure: 1, turning: 1 });
    other.restore(kept);
    expect(other.dt).toBe(1 / 24000);
    const again = onFrom(other);
    expect(again).toEqual(first);
    // It was falling, and rang: its height goes down, up and down again.
    const lifts = first.flatMap((v) => (v as { lift?: number }).lift ?? []);
    const turns = lifts.filter(
      (v, i) =>
        i > 1 &&
        Math.sign(v - (lifts[i - 1] as number)) *
          Math.sign((lifts[i - 1] as number) - (lifts[i - 2] as number)) <
          0,
    );
    expect(turns.length).toBeGreaterThan(2);
  });
});
