import { describe, expect, it } from 'vitest';
import benchScene from '../../scenes/bench-brake.json';
import trailerScene from '../../scenes/farm-trailer.json';
import runaboutScene from '../../scenes/ferry-runabout.json';
import {
  bedIn,
  bedRow,
  cableFirst,
  createRig,
  fitOf,
  freshState,
  KM,
  lipFit,
  presetRow,
  presetRows,
  presetTooth,
  pressUntilSilent,
  type Rig,
  restFaces,
  withNewLinings,
} from '../../sim/index.ts';
import { mustRead, tablesQuay } from '../brakes.ts';
import { near } from '../near.ts';

/** New shoes into a drum worn to 200.60, lip 200.00: table 10 of the teaching tables. */
const { rig, brake } = tablesQuay();
const own = { thickness: 4.5, groundRadius: 100 };
const fitted = (tooth: number) => withNewLinings(rig, own, 100.3, tooth);
const RAD = Math.PI / 180;

describe('preset by gauge', () => {
  it('rows against hand geometry: the strut’s growth, 78 of 130 of it at each middle', () => {
    for (const row of presetRows(rig, fitted(0)).slice(0, 6)) {
      // Growth of the strut 12·[cos 70° − cos(70° + 2.39°·n)]; of it the middle of a lining, 78 over
      // its pin, makes 78/130. New drum: 0.60 between both middles at tooth 0, and 0.60 more here.
      const grown = 12 * (Math.cos(70 * RAD) - Math.cos((70 + 2.39 * row.tooth) * RAD));
      near(row.difference, 0.6 + 0.6 - (grown * 78) / 130, { abs: 0.012 }, `tooth ${row.tooth}`);
      near(row.across, 200.6 - row.difference, { abs: 1e-9 }, 'across');
    }
  });

  it('as the teaching tables have them: across, clearance, lip', () => {
    const rows = presetRows(rig, fitted(0));
    [199.4, 199.68, 199.97, 200.26].forEach((across, tooth) => {
      near(rows[tooth]?.across ?? 0, across, { abs: 0.005 }, `across at ${tooth}`);
    });
    [0.6, 0.46, 0.31, 0.17].forEach((gap, tooth) => {
      near(rows[tooth]?.centre ?? 0, gap, { abs: 0.005 }, `clearance at ${tooth}`);
    });
    const two = rows[2];
    for (const key of ['toe', 'centre', 'heel'] as const)
      near(two?.[key] ?? 0, 0.31, { abs: 0.01 });
    near(two?.lip ?? 0, 0.01, { abs: 0.005 }, 'passes the lip');
    near(rows[3]?.lip ?? 0, -0.13, { abs: 0.006 }, 'over by');
    near(rows[15]?.lip ?? 0, -1.9, { abs: 0.07 }, 'left at tooth 15');
    expect(rows.map((r) => r.slidesOn).slice(0, 4)).toEqual([true, true, true, false]);
    expect(presetTooth(rows, 0.63 - 0.005)?.tooth).toBe(2);
    expect(presetTooth(rows, 0.9)?.tooth).toBe(1);
    expect(presetTooth(rows, 1.3)).toBe(null);
  });

  it('agrees with the overlap at the lip that Drum off tells, where no lining touches', () => {
    for (const tooth of [0, 1, 2, 3]) {
      const state = fitted(tooth);
      const row = presetRow(rig, state);
      near(row.lip, -lipFit(rig, state).greatest, { abs: 2e-4 }, `tooth ${tooth}`);
    }
    const aside = presetRow(rig, fitted(1), 0.05).lip;
    near(aside, -lipFit(rig, fitted(1), 0.05).greatest, { abs: 2e-3 }, 'aside');
  });

  it('a pair that is not centred reaches the lip on one side', () => {
    const row = presetRow(rig, fitted(2), 0.1);
    near(row.across, presetRow(rig, fitted(2)).across, { abs: 1e-3 }, 'across stays');
    near(row.lip, 0.006 - 0.1, { abs: 0.01 }, 'lip');
    expect(row.slidesOn).toBe(false);
  });
});

describe('right parts', () => {
  const lies = (on: Rig, thickness: number, ground: number, bore: number) =>
    fitOf(on, { thickness, groundRadius: ground }, bore);

  /**
   * By hand, the front shoe seen mirrored: its face's circle of radius r stands off the axis by c along
   * the middle as built; turned about its pin (16, −78) it goes s along (78, 16)/79.6. A ray at d from
   * the middle then finds the gap R − r − e·(cos d, sin d), e = (c + s·0.980, s·0.201), in the first order.
   */
  const swung = (r: number, R: number, c: number, touches: number, at: number): number => {
    const [px, py] = [78 / Math.hypot(16, 78), 16 / Math.hypot(16, 78)];
    const [ct, st] = [Math.cos(touches * RAD), Math.sin(touches * RAD)];
    const s = (R - r - c * ct) / (px * ct + py * st);
    return R - r - (c + s * px) * Math.cos(at * RAD) - s * py * Math.sin(at * RAD);
  };

  it('crown: touches where it swings straight out, 11.6° over the middle, and is off at the heel', () => {
    const crown = lies(rig, 4.5, 100, 100.3);
    expect(crown.where).toBe('crown');
    // 0.18 less what the lining gives under 40 bar.
    near(crown.gap, swung(100, 100.3, 0, 11.6, -55), { abs: 0.015 }, 'heel');
    expect(crown.along[47]).toBe(crown.gap);
  });

  it('ends: ground too large, less than the closed form leaves in the middle, since they give', () => {
    const ends = lies(rig, 4.5, 100.3, 100);
    expect(ends.where).toBe('ends');
    expect(ends.gap).toBeGreaterThan(0.1);
    expect(ends.gap).toBeLessThan(0.3 * (1 / Math.cos(55 * RAD) - 1));
  });

  it('the bore’s own radius, but too thin: on a pin it bears at the toe, and grabs', () => {
    const thin = lies(rig, 4.5, 100.3, 100.3);
    expect(thin.where).toBe('toe');
    near(thin.gap, swung(100.3, 100.3, -0.3, 55, -55), { abs: 0.015 }, 'heel');
    const state = withNewLinings(rig, { thickness: 4.5, groundRadius: 100.3 }, 100.3, 0);
    near(bedRow(rig, state, 0).torque / 1000, 332, { rel: 0.01 });
  });

  it('all along: new parts, thick enough ones for a larger bore, and a shoe that shifts on its abutment', () => {
    expect(lies(rig, 4.5, 100, 100)).toMatchObject({ where: 'all along', gap: 0 });
    expect(lies(rig, 4.8, 100.3, 100.3)).toMatchObject({ where: 'all along', gap: 0 });
    const runabout = createRig(mustRead(runaboutScene));
    expect(lies(runabout, 4.4, 95.3, 95.3)).toMatchObject({ where: 'all along', gap: 0 });
  });

  it('a lining made for the larger drum is thicker and lies all along', () => {
    const state = withNewLinings(rig, { thickness: 4.8, groundRadius: 100.3 }, 100.3, 0);
    for (const w of state.wear.front) near(w, -0.3, { abs: 1e-9 }, 'stands out evenly');
    // The same brake, 0.3 larger all round: the gap of new parts at tooth 0, 0.30.
    near(presetRow(rig, state).centre, 0.3, { abs: 0.01 }, 'clearance');
  });

  it('the scene’s own lining is the fresh brake', () => {
    const state = withNewLinings(rig, own, 100, 0);
    for (const w of state.wear.rear) near(w, 0, { abs: 1e-12 });
    const a = restFaces(rig, state);
    const b = restFaces(rig, freshState(brake));
    near(a.front.most, b.front.most, { abs: 1e-12 }, 'faces');
  });
});

describe('first presses', () => {
  it('the toothed lever takes all passed teeth at once, then is silent', () => {
    const p = pressUntilSilent(rig, fitted(0));
    expect(p.clicks).toEqual([2, 0]);
    expect(p.state.tooth).toBe(2);
    expect(p.silent).toBe(true);
    expect(pressUntilSilent(rig, fitted(2)).clicks).toEqual([0]);
  });

  it('the screw takes one a press: 37 presses, 37 teeth', () => {
    const trailer = createRig(mustRead(trailerScene));
    const state = withNewLinings(trailer, { thickness: 6, groundRadius: 125 }, 125.5, 0);
    const p = pressUntilSilent(trailer, state);
    expect(p.clicks.filter((n) => n === 1)).toHaveLength(37);
    expect(p.clicks.at(-1)).toBe(0);
    expect(p.state.tooth).toBe(37);
  });

  it('one tooth a press on the bench brake, as many presses as teeth', () => {
    const bench = createRig(mustRead(benchScene));
    const state = withNewLinings(bench, { thickness: 4.2, groundRadius: 82.5 }, 83.2, 0);
    const p = pressUntilSilent(bench, state);
    expect(p.state.tooth).toBeGreaterThan(0);
    expect(p.clicks).toEqual([...Array(p.state.tooth).fill(1), 0]);
  });
});

describe('bedding in and cable', () => {
  it('contact and torque from the first stop on', () => {
    const rows = bedIn(rig, fitted(2), [0, 1000, 2000]);
    near((rows[0]?.torque ?? 0) / 1000, 195, { rel: 0.02 }, 'new');
    near(rows[0]?.contactFront ?? 0, 0.42, { abs: 0.02 }, 'front');
    near(rows[0]?.contactRear ?? 0, 0.29, { abs: 0.02 }, 'rear');
    near((rows[1]?.torque ?? 0) / 1000, 214, { rel: 0.02 }, '1 000 km');
    near((rows[2]?.torque ?? 0) / 1000, 217, { rel: 0.02 }, '2 000 km');
    expect(rows[2]?.contactFront ?? 0).toBeGreaterThan(0.75);
  });

  it('cable first: clearance 0.18 and a late click', () => {
    near(presetRow(rig, { ...fitted(2), leverOffStop: 3 }).centre, 0.18, { abs: 0.01 }, 'held');
    const home = presetRow(rig, fitted(2)).centre;
    const held = presetRow(rig, { ...fitted(2), leverOffStop: 3 }).centre;
    near(home - held, 0.13, { abs: 0.01 }, 'jump when slackened');
    const c = cableFirst(rig, fitted(2), 3);
    // About 3 600 km at the settled rate of wear; new shoes wear faster while they bed in.
    near(c.late / KM, 3600, { rel: 0.12 }, 'late');
    expect(c.late).toBe(c.held - c.home);
  });
});
