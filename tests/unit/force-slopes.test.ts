import { describe, expect, it } from 'vitest';
import runabout from '../../scenes/ferry-runabout.json';
import { assemble } from '../../sim/balance/assemble.ts';
import { dress, drumAt, noDrum, workFor } from '../../sim/balance/dress.ts';
import type { Acting, Force, Hand, Rig, Work } from '../../sim/balance/types.ts';
import { type Condition, createRig, freshState, SOUND } from '../../sim/index.ts';
import { mustRead, quayScene } from '../brakes.ts';
import { near } from '../near.ts';

/**
 * What every force of the list owes mechanics, at a few fixed poses, so that it is asked in a moment (at random ones:
 * force-list.test.ts and hands/tangent.test.ts):
 * - its tangent is the difference quotient of its force, dQ/dy, and its force that of its energy, −dE/dy;
 * - virtual work: its moment in a shoe's turn is that of its arrows about the shoe's anchor as it stands, in a shift
 *   their sum, and in the lever's turn that of what pulls on the lever about its pivot;
 * - the outer balance of a shoe has the sum of its arrows, and that of springs their moment.
 */

const brakes = { 'on pins': mustRead(quayScene()), 'on abutments': mustRead(runabout) } as const;

/** A hundredth of a millimetre in each freedom. */
const stepOf = (rig: Rig, j: number): number => {
  const shoe = j >= rig.rear.at ? rig.rear : rig.front;
  const local = j - shoe.at;
  if (j === rig.leverAt || local === shoe.freedoms - 1) return 1e-4;
  return local < shoe.freedoms ? 0.01 : 0.01 / (shoe.reach[local - shoe.freedoms] as number);
};

/** Hands on shoes, strut and lever, a few within what they can and a few beyond. */
function handsOn(rig: Rig, on: readonly Hand['on'][]): Hand[] {
  const { shoes, parkingLever } = rig.brake;
  const at = {
    front: shoes.front.holdDown.at,
    rear: shoes.rear.toe,
    strut: [10, shoes.front.strutSeat[1]] as const,
    lever: parkingLever.hook,
    'front piston': shoes.front.toe,
    'rear piston': shoes.rear.toe,
  };
  return on.map((part, i) => {
    const [x, y] = at[part];
    return { on: part, at: at[part], to: [x + 7 - 5 * i, y - 9 + 4 * i], rate: 20, limit: 150 };
  });
}

interface Case {
  readonly ill?: Partial<Condition>;
  readonly act?: Partial<Acting>;
  readonly hands?: readonly Hand['on'][];
  readonly off?: boolean;
  /** Both shoes turned outward from rest, rad, heels shifted, mm, and the lever off its stop, rad. */
  readonly out: number;
  readonly shift?: number;
  readonly lever: number;
}

const cases: Readonly<Record<string, Case>> = {
  'pressed to the drum': {
    act: { pressure: 1, cable: 200 },
    out: 0.012,
    shift: -0.05,
    lever: 0.03,
  },
  'as its hold-downs stick': { act: { shaken: 0 }, out: 2e-6, shift: -0.001, lever: 0.01 },
  'half shaken off, climbing': { act: { shaken: 0.5 }, out: 0.0075, shift: -0.02, lever: 0 },
  'grooved, leant on, its springs weak': {
    ill: { groove: 60, lean: { front: 20, rear: -8 }, springFactor: 0.6, unheld: ['rear'] },
    act: { pressure: 0.4 },
    out: 0.01,
    lever: 0.02,
  },
  'with stuck pistons, its shoes behind them': {
    ill: { pistonStuck: { front: true, rear: true }, unhooked: [0] },
    act: { pressure: 1 },
    out: -0.002,
    lever: 0.02,
  },
  'in hands': { hands: ['front', 'rear', 'strut'], out: 0.008, lever: 0.05 },
  'its lever in a hand': { hands: ['lever', 'strut', 'front'], out: 0.004, lever: 0.2 },
  'its drum off, far out': { off: true, out: 0.2, shift: 1, lever: 0.1 },
  'its drum off, far in': { off: true, out: -0.35, lever: 0.3 },
};

function fitted(rig: Rig, c: Case) {
  const state = { ...freshState(rig.brake), condition: { ...SOUND, ...c.ill } };
  const d = dress(rig, state);
  const w = workFor(d);
  w.memory.set(d.home);
  const law = { kind: 'slide', mu: 0.3, sense: 1 } as const;
  const act: Acting = {
    ...{ pressure: 0, cable: 0, frontLaw: law, rearLaw: law, memory: w.memory, home: d.home },
    ...{ strutLength: d.strutLength, strutRest: d.strutRest, shaken: 0.7 },
    ...c.act,
    ...(c.off ? { drumOff: true, drum: noDrum(rig) } : { drum: drumAt(d, 0) }),
    ...(c.hands ? { hands: handsOn(rig, c.hands) } : {}),
  };
  const y = d.restPose.slice();
  for (const shoe of [rig.front, rig.rear]) {
    const turn = shoe.at + shoe.freedoms - 1;
    y[turn] = (y[turn] as number) + shoe.opening * c.out;
    if (shoe.freedoms === 3) {
      y[shoe.at] = (y[shoe.at] as number) + shoe.outward * (c.shift ?? 0);
      y[shoe.at + 1] = (y[shoe.at + 1] as number) + 0.4 * (c.shift ?? 0);
    }
  }
  y[rig.leverAt] = (y[rig.leverAt] as number) + c.lever;
  // No two freedoms alike.
  if (Math.abs(c.out) > 1e-3)
    for (let j = 0; j < rig.n; j++)
      y[j] = (y[j] as number) + stepOf(rig, j) * (0.3 + ((7 * j) % 5) / 6) * (j % 2 ? -1 : 1);
  return { w, act, y };
}

/** One force alone at a pose. */
function alone(rig: Rig, w: Work, force: Force, y: Float64Array, act: Acting) {
  for (const shoe of [rig.front, rig.rear]) shoe.rub.gather.knownTurn = null;
  assemble(rig, { ...w, forces: [force] }, y, act);
  return { q: w.q.slice(), k: w.k.slice(), energy: force.energy() };
}

const most = (of: Iterable<number>): number => Math.max(0, ...[...of].map(Math.abs));

/** Tangent and energy against central differences. @returns whether there was a force */
function slopes(rig: Rig, w: Work, force: Force, y: Float64Array, act: Acting): boolean {
  const { n } = rig;
  const here = alone(rig, w, force, y, act);
  const scale = Array.from({ length: n }, (_, j) => stepOf(rig, j));
  const s = (j: number): number => scale[j] as number;
  const stiff = most(here.k.map((v, i) => v * s(Math.floor(i / n)) * s(i % n)));
  const strong = most(here.q.map((v, j) => v * s(j)));
  // How a bent section turns a lever that is turned itself is left out of the slopes (place.ts).
  const bends = rig.front.modes > 0;
  for (let l = 0; l < n; l++) {
    if (bends && l === rig.leverAt) continue;
    const h = 1e-3 * s(l);
    const at = (by: number) => {
      const moved = y.slice();
      moved[l] = (moved[l] as number) + by;
      return alone(rig, w, force, moved, act);
    };
    const [up, down] = [at(h), at(-h)];
    for (let j = 0; j < n; j++) {
      if (bends && j === rig.leverAt) continue;
      const quotient = ((up.q[j] as number) - (down.q[j] as number)) / (2 * h);
      const told = here.k[j * n + l] as number;
      const abs = (bends ? 1e-3 : 1e-4) * stiff + 1e-6;
      near((quotient - told) * s(j) * s(l), 0, { abs }, `${force.name} ${j} ${l}`);
    }
    if (here.energy === null || up.energy === null || down.energy === null) continue;
    const gradient = (up.energy - down.energy) / (2 * h);
    const abs = 1e-4 * strong + 1e-6;
    near((gradient + (here.q[l] as number)) * s(l), 0, { abs }, `${force.name} energy ${l}`);
  }
  return strong > 0;
}

/** What it changes with the part shaken off against central differences. */
function byShaken(rig: Rig, w: Work, force: Force, y: Float64Array, act: Acting): void {
  const at = (shaken: number) => alone(rig, w, force, y, { ...act, shaken }).q;
  const h = 1e-4;
  const [up, down] = [at(act.shaken + h), at(act.shaken - h)];
  at(act.shaken);
  for (let j = 0; j < rig.n; j++) {
    const quotient = ((up[j] as number) - (down[j] as number)) / (2 * h);
    const told = w.byShaken[j] as number;
    near(told, quotient, { rel: 1e-6, abs: 1e-4 }, `${force.name} shaken ${j}`);
  }
}

/** Its generalised forces against its arrows. */
function work(rig: Rig, w: Work, force: Force, y: Float64Array, act: Acting): void {
  const { q } = alone(rig, w, force, y, act);
  const arrows = force.arrows();
  for (const [i, shoe] of [rig.front, rig.rear].entries()) {
    const turn = shoe.at + shoe.freedoms - 1;
    const free = shoe.freedoms === 3;
    const shift = free ? [y[shoe.at] as number, y[shoe.at + 1] as number] : [0, 0];
    const [ax, ay] = shoe.shoe.anchor.at;
    const from = [ax + (shift[0] as number), ay + (shift[1] as number)] as const;
    let [x, yy, moment] = [0, 0, 0];
    for (const { on, at, force: f } of arrows) {
      if (on !== shoe.side) continue;
      x += f[0];
      yy += f[1];
      moment += (at[0] - from[0]) * f[1] - (at[1] - from[1]) * f[0];
    }
    const label = `${force.name} ${shoe.side}`;
    const size = 1e-9 * (1 + most(arrows.flatMap((a) => a.force)));
    near(q[turn] as number, moment, { abs: 200 * size }, `${label} turn`);
    if (free) {
      near(q[shoe.at] as number, x, { abs: size }, `${label} x`);
      near(q[shoe.at + 1] as number, yy, { abs: size }, `${label} y`);
    }
    if (/heel/.test(force.name)) continue;
    near(w.outer[2 * i] as number, x, { abs: size }, `${label} outer x`);
    near(w.outer[2 * i + 1] as number, yy, { abs: size }, `${label} outer y`);
    const spring = force.name === 'climbing lever' || /spring/.test(force.name);
    near(w.springMoment[i] as number, spring ? moment : 0, { abs: 200 * size }, `${label} moment`);
  }
}

describe.each(Object.entries(brakes))('every force of a brake %s', (name, brake) => {
  it.each(Object.entries(cases))('%s: tangent and energy are those of the force', (_, c) => {
    const rig = createRig(brake);
    const { w, act, y } = fitted(rig, c);
    for (const force of w.forces) slopes(rig, w, force, y, act);
  });

  it.each(Object.entries(cases))('%s: its arrows do the same work', (_, c) => {
    const rig = createRig(brake);
    const { w, act, y } = fitted(rig, c);
    for (const force of w.forces)
      if (!/lining|bending/.test(force.name)) work(rig, w, force, y, act);
  });

  it('changes by the part shaken off as it says', () => {
    const rig = createRig(brake);
    const { w, act, y } = fitted(rig, cases['half shaken off, climbing'] as Case);
    for (const force of w.forces) byShaken(rig, w, force, y, act);
    alone(rig, w, w.forces.find((f) => f.name === 'rear hold-down') as Force, y, act);
    expect(most(w.byShaken)).toBeGreaterThan(100);
  });

  it.each([
    'pressed to the drum',
    'half shaken off, climbing',
    'in hands',
    'its drum off, far out',
  ])('bending, %s: both', (which) => {
    const rig = createRig(brake, { flexible: true });
    const { w, act, y } = fitted(rig, cases[which] as Case);
    let some = 0;
    for (const force of w.forces) {
      if (slopes(rig, w, force, y, act)) some++;
      if (!/lining|bending/.test(force.name)) work(rig, w, force, y, act);
    }
    expect(some).toBeGreaterThan(4);
  });

  it('all of them were there', () => {
    const seen = new Set<string>();
    for (const c of Object.values(cases)) {
      const rig = createRig(brake);
      const { w, act, y } = fitted(rig, c);
      for (const force of w.forces)
        if (most(alone(rig, w, force, y, act).q) > 0) seen.add(force.name);
    }
    // A wedge has no lever that climbs.
    const own = name === 'on pins' ? ['climbing lever'] : ['front heel', 'rear heel'];
    const parts = ['lining', 'piston', 'hold-down'].flatMap((p) => [`front ${p}`, `rear ${p}`]);
    for (const part of [...parts, ...own, 'parking cable', 'stop', 'hand'])
      expect(seen, part).toContain(part);
  });
});
