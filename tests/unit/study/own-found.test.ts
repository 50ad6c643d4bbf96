import { describe, expect, it } from 'vitest';
import {
  createRig,
  expected,
  firstClick,
  KM,
  type OwnFound,
  type OwnSizes,
  ownFigures,
  ownScene,
  readScene,
  type Scene,
  wearRatio,
} from '../../../sim/index.ts';
import { ownSays } from '../../../sim/workshop/index.ts';
import { quayScene } from '../../brakes.ts';
import { near } from '../../near.ts';

const names = { name: 'own-1', title: 'Mine', about: 'One.', source: 'Measured.' };
const read = readScene(quayScene());
if (!read.ok) throw new Error(JSON.stringify(read.findings));
const quay: Scene = read.scene;
const own = (sizes: OwnSizes): Scene => ownScene(quay, sizes, names);
const rig = createRig(read.brake);

/** Strut's growth at a tooth, as the quay van's quadrant is drawn: a finger of 12 mm, 70° at the start, 2.39° a tooth. */
const growth = (n: number): number => {
  const at = (angle: number): number => Math.cos((angle * Math.PI) / 180);
  return 12 * (at(70) - at(70 + 2.39 * n));
};
/**
 * Mean of both gaps by hand: each lining's loss, the drum's on radius twice, 0.60 mm as new, less the
 * strut's growth in the ratio of the lever arms about the heel: 78 mm to the middle, 130 to the strut.
 */
const gapByHand = (worn: number, drum: number, n: number): number =>
  (worn + drum + 0.6 - (growth(n) * 78) / 130) / 2;

describe('what a size changes', () => {
  it('a larger cylinder: by its area, less what the springs hold back', () => {
    const was = ownFigures(quay, 40);
    const now = ownFigures(own({ bore: 20.64 }), 40);
    if (!was || !now) throw new Error('a brake');
    // Hand sum: 4 N/mm² on 285.0 and on 334.6 mm², the springs take 150 N of each (teaching tables).
    near(now.torque / was.torque, (4 * 334.6 - 150) / (4 * 285.0 - 150), { rel: 0.01 });
    near(now.factor, was.factor, { rel: 0.005 }, 'the shoes are the same');
    near(now.clearance, was.clearance, { abs: 0.005 });
    // The pistons take more fluid for the same way: more pedal.
    expect(now.pedal).toBeGreaterThan(was.pedal + 1);
  });

  it('more slot play: the gap stays, the first click comes later by the play over the rate of wear', () => {
    const was = firstClick(quay);
    const now = firstClick(own({ lostMotion: 1.05 }));
    if (was === null || now === null) throw new Error('a click');
    // Hand sum: 0.15 mm at the strut is 0.09 mm of both linings together; they lose some 0.067 mm in
    // 1 000 km (0.150 and 0.051 in 3 000), drum aside: some 1 300 km more.
    near((now - was) / KM, (0.15 * 0.6) / (0.201 / 3000), { rel: 0.2 });
  });

  it('friction a tenth less and more: the closed form of a shoe on a pin', () => {
    // Pressure as sin ψ from 23.4° to 133.4° of the line from centre to pin (79.6 mm), toe's arm 156 mm,
    // radius 100: C = μ r S h / (a S₂ ∓ μ (r S − a S₁)) for leading and trailing (handbooks' short form).
    const [a, r, h] = [79.6, 100, 156];
    const [from, to] = [23.4, 133.4].map((d) => (d * Math.PI) / 180) as [number, number];
    const S = Math.cos(from) - Math.cos(to);
    const S2 = (to - from) / 2 - (Math.sin(2 * to) - Math.sin(2 * from)) / 4;
    const S1 = (Math.sin(to) ** 2 - Math.sin(from) ** 2) / 2;
    const factor = (mu: number): number =>
      [1, -1].reduce((sum, way) => sum + (mu * S * h) / (a * S2 - way * mu * (r * S - a * S1)), 0);
    for (const mu of [0.342, 0.38, 0.418]) {
      near(ownFigures(own({ friction: mu }), 40)?.factor ?? 0, factor(mu), { rel: 0.004 });
    }
  });

  it('a friction at which it locks has no factor, torque or pedal', () => {
    const locked = ownFigures(own({ friction: 0.9 }), 40);
    expect(locked).not.toBeNull();
    expect(locked?.factor).toBeNaN();
    expect(locked?.torque).toBeNaN();
    expect(locked?.pedal).toBeNaN();
  });
});

describe('what a brake so worn should show', () => {
  const found: OwnFound = { drumNow: 200.3, leading: 3.1, trailing: 4, tooth: 3 };
  const e = expected(rig, found);
  if (!e) throw new Error('expected');

  it('stands at the tooth that travel over the slot and one tooth leaves silent', () => {
    // By hand: at tooth n both shoes travel 2·gap·130/78 at the strut; a click needs 0.90 and one tooth.
    const clicks = (n: number): boolean =>
      (2 * gapByHand(1.9, 0.3, n) * 130) / 78 >= 0.9 + growth(n + 1) - growth(n);
    const silent = Array.from({ length: 20 }, (_, n) => n).find((n) => !clicks(n));
    expect(silent).toBe(7);
    expect(e.tooth.as).toBe(silent);
    expect(e.tooth.least).toBeLessThanOrEqual(7);
    expect(e.tooth.most).toBeGreaterThanOrEqual(7);
    near(e.clearance, gapByHand(1.9, 0.3, 7), { abs: 0.03 });
    near(e.clearanceFound ?? 0, gapByHand(1.9, 0.3, 3), { abs: 0.03 });
  });

  it('the pedal grows with the gap as the pistons’ fluid says', () => {
    const at7 = expected(rig, { ...found, tooth: 7 });
    // Hand sum: 13.6 mm of pedal for a millimetre at all four toes (pedal ratio 4, four pistons of 19.05
    // on a master of 20.64); a toe moves twice what the lining's middle does (arms 156 and 78).
    const byHand = 13.63 * 2 * (gapByHand(1.9, 0.3, 3) - gapByHand(1.9, 0.3, 7));
    near(e.pedal.as - (at7?.pedal.as ?? 0), byHand, { rel: 0.05 });
    // A gap of the strut's arm (130) over the hook's 109 to 16, two wheels on one lever of 2 mm a notch.
    expect(e.notches.as).toBeGreaterThan((at7?.notches.as ?? 0) + 4);
  });

  it('is not told where only one lining was measured, or the sizes contradict the brake', () => {
    expect(expected(rig, { leading: 3 })).toBeNull();
    expect(expected(rig, { leading: 3, trailing: 6 })).toBeNull();
    expect(expected(rig, { leading: 3, trailing: 4, drumNow: 199 })).toBeNull();
  });

  it('wears its linings as unlike as its shoes are pressed: 1.72 to 0.57', () => {
    // Archard: wear goes with pressure; peaks 0.87 and 0.29 MPa, factors 1.72 and 0.57 (teaching tables).
    near(wearRatio(rig), 1.72 / 0.57, { rel: 0.06 });
  });
});

describe('what my numbers say', () => {
  const sizes: OwnSizes = { drumNew: 200, drumMax: 201.5, liningNew: 4.5, liningMin: 1.5 };
  const says = (found: OwnFound, s: OwnSizes = sizes) =>
    ownSays(read.brake, s, found, expected(rig, found), 3);
  const one = (found: OwnFound, word: RegExp, s: OwnSizes = sizes) => {
    const hit = says(found, s).find((x) => word.test(`${x.head} ${x.why}`));
    return hit ? `${hit.level}: ${hit.head} ${hit.why}` : 'nothing';
  };
  const worn: OwnFound = { drumNow: 200.3, leading: 3.1, trailing: 4 };

  it('an adjuster that stopped: tooth 3 where 7 is due, notches and pedal fit that gap', () => {
    const e = expected(rig, { ...worn, tooth: 3 });
    const found = {
      ...worn,
      tooth: 3,
      notches: Math.round(e?.notches.as ?? 0),
      pedal: Math.round(e?.pedal.as ?? 0),
    };
    expect(one(found, /^Tooth 3/)).toMatch(/^watch: .*tooth 7 .*stopped stepping/);
    expect(one(found, /notches/)).toMatch(/^good: .*The cable is not the cause/);
    expect(one(found, /pedal fit/)).toMatch(/^good/);
  });

  it('notches too many with the right pedal: the cable; with a long pedal: the gap', () => {
    const e = expected(rig, { ...worn, tooth: 7 });
    if (!e) throw new Error('expected');
    const many = { ...worn, tooth: 7, notches: Math.round(e.notches.as) + 5 };
    expect(one({ ...many, pedal: e.pedal.as }, /notches are more/)).toMatch(/^watch: .*cable/);
    expect(one({ ...many, pedal: 60 }, /notches are more/)).toMatch(/^watch: .*pedal is long too/);
    expect(one({ ...worn, tooth: 7, notches: 0 }, /fewer/)).toMatch(/^watch: .*on its stop/);
    const long = { ...worn, tooth: 7, notches: Math.round(e.notches.as), pedal: 60 };
    expect(one(long, /pedal are more/)).toMatch(/^watch: .*air/);
    expect(one({ ...worn, tooth: 7, pedal: 5 }, /pedal are less/)).toMatch(/^watch/);
  });

  it('a tooth further out than presses bring it, and one that the adjuster does not have', () => {
    expect(one({ ...worn, tooth: 12 }, /^Tooth 12/)).toMatch(/^watch: .*hot drum/);
    expect(one({ ...worn, tooth: 99 }, /no tooth 99/)).toMatch(/^watch/);
    expect(one(worn, /Tooth 7/)).toMatch(/^none: .*Count the teeth/);
    expect(one({ ...worn, tooth: 7 }, /^Tooth 7/)).toMatch(/^good/);
  });

  it('a lining worn more than the other: the mechanism, or a fault', () => {
    expect(one(worn, /Worn/)).toMatch(/^good: Worn 1\.40 and 0\.50: 2\.8 to 1/);
    expect(one({ leading: 4, trailing: 3 }, /Worn/)).toMatch(
      /^watch: .*trailing lining is the thin/,
    );
    expect(one({ leading: 2, trailing: 4.5 }, /Worn/)).toMatch(/^watch: .*stuck piston/);
    expect(one({ leading: 2, trailing: 2.1 }, /Worn/)).toMatch(/^watch: .*more than its share/);
    expect(one({ leading: 4.4, trailing: 4.4 }, /Worn/)).toBe('nothing');
  });

  it('drum and linings against what was typed of them, and against new', () => {
    expect(one({ drumNow: 200.6 }, /mark/)).toMatch(/^good: Drum: 0\.90 left/);
    expect(one({ drumNow: 201.62 }, /mark/)).toMatch(/^bad: The drum is 0\.12 over/);
    expect(one({ drumNow: 200.6 }, /mark/, {})).toMatch(/^none: .*no mark typed/);
    expect(one({ drumNow: 199.5 }, /smaller/)).toMatch(
      /^watch: The drum is 0\.50 smaller than new/,
    );
    expect(one({ leading: 1.3, trailing: 3 }, /least/)).toMatch(/^bad: .*0\.20 under/);
    expect(one({ leading: 5.2, trailing: 3 }, /thicker/)).toMatch(
      /^watch: .*0\.70 thicker than new/,
    );
    expect(says({})).toEqual([]);
  });
});
