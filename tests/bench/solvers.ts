import RAPIER from '@dimforge/rapier2d-compat';
import Matter from 'matter-js';
import { Box, DistanceJoint, RevoluteJoint, Vec2, World } from 'planck-js';
import quayVan from '../../scenes/quay-van.json';
import {
  application,
  balance,
  createMotion,
  createRig,
  freshState,
  KM,
  readScene,
  sin,
  solveBalance,
  thinnest,
} from '../../sim/index.ts';
import { newRun, wearLump } from '../../sim/wear/lump.ts';

/** What the solvers cost: medians over rounds of one run, so that ratios can be compared. */

const clock = (): number => performance.now();

/** Median time of one call, µs. */
function time(call: () => void, calls: number, rounds = 7): number {
  call();
  const all: number[] = [];
  for (let r = 0; r < rounds; r++) {
    const from = clock();
    for (let n = 0; n < calls; n++) call();
    all.push(((clock() - from) * 1000) / calls);
  }
  all.sort((a, b) => a - b);
  return all[Math.floor(rounds / 2)] as number;
}

const read = readScene(quayVan);
if (!read.ok) throw new Error('scene not read');
const { brake } = read;
const rig = createRig(brake);
const fresh = freshState(brake);

/** Load for the engines: 12 boxes in a chain with 12 joints, each lying on 5 tiles: 60 contacts. */
const BOXES = 12;
const TILES = 5;

function planckLoad(): { step: () => void; contacts: () => number } {
  const world = new World({ gravity: new Vec2(0, -10), allowSleep: false });
  for (let n = 0; n < BOXES * TILES; n++) {
    world.createBody(new Vec2(n + 0.5, -0.5)).createFixture(new Box(0.49, 0.5), { friction: 0.4 });
  }
  const boxes = Array.from({ length: BOXES }, (_, n) => {
    const body = world.createDynamicBody(new Vec2(n * TILES + 2.5, 0.5));
    body.createFixture(new Box(2.45, 0.5), { density: 1, friction: 0.4 });
    return body;
  });
  boxes.forEach((body, n) => {
    const next = boxes[n + 1];
    if (next) world.createJoint(new RevoluteJoint({}, body, next, new Vec2((n + 1) * TILES, 0.5)));
  });
  const [first, last] = [boxes[0], boxes.at(-1)];
  if (first && last)
    world.createJoint(new DistanceJoint({}, first, last, first.getPosition(), last.getPosition()));
  const step = () => world.step(1 / 240, 8, 3);
  for (let n = 0; n < 120; n++) step();
  const contacts = () => {
    let count = 0;
    for (let c = world.getContactList(); c; c = c.getNext()) if (c.isTouching()) count++;
    return count;
  };
  return { step, contacts };
}

function matterLoad(): { step: () => void; contacts: () => number } {
  const engine = Matter.Engine.create({ enableSleeping: false });
  const scale = 20;
  const tiles = Array.from({ length: BOXES * TILES }, (_, n) =>
    Matter.Bodies.rectangle((n + 0.5) * scale, 0.5 * scale, 0.98 * scale, scale, {
      isStatic: true,
    }),
  );
  const boxes = Array.from({ length: BOXES }, (_, n) =>
    Matter.Bodies.rectangle((n * TILES + 2.5) * scale, -0.5 * scale, 4.9 * scale, scale),
  );
  const joints = boxes.slice(1).map((b, n) =>
    Matter.Constraint.create({
      bodyA: boxes[n] as Matter.Body,
      bodyB: b,
      pointA: { x: 2.5 * scale, y: 0 },
      pointB: { x: -2.5 * scale, y: 0 },
      length: 0,
    }),
  );
  joints.push(
    Matter.Constraint.create({
      bodyA: boxes[0] as Matter.Body,
      bodyB: boxes.at(-1) as Matter.Body,
    }),
  );
  Matter.Composite.add(engine.world, [...tiles, ...boxes, ...joints]);
  const step = () => {
    Matter.Engine.update(engine, 1000 / 240);
  };
  for (let n = 0; n < 120; n++) step();
  return { step, contacts: () => engine.pairs.list.filter((p: Matter.Pair) => p.isActive).length };
}

async function rapierLoad(): Promise<{ step: () => void; contacts: () => number }> {
  await RAPIER.init();
  const world = new RAPIER.World({ x: 0, y: -10 });
  world.timestep = 1 / 240;
  const tiles = Array.from({ length: BOXES * TILES }, (_, n) => {
    const body = world.createRigidBody(RAPIER.RigidBodyDesc.fixed().setTranslation(n + 0.5, -0.5));
    return world.createCollider(RAPIER.ColliderDesc.cuboid(0.49, 0.5), body);
  });
  const colliders: RAPIER.Collider[] = [];
  const boxes = Array.from({ length: BOXES }, (_, n) => {
    const body = world.createRigidBody(
      RAPIER.RigidBodyDesc.dynamic()
        .setTranslation(n * TILES + 2.5, 0.5)
        .setCanSleep(false),
    );
    colliders.push(world.createCollider(RAPIER.ColliderDesc.cuboid(2.45, 0.5), body));
    return body;
  });
  boxes.forEach((body, n) => {
    const next = boxes[n + 1];
    if (next)
      world.createImpulseJoint(
        RAPIER.JointData.revolute({ x: 2.5, y: 0 }, { x: -2.5, y: 0 }),
        body,
        next,
        true,
      );
  });
  const [first, last] = [boxes[0], boxes.at(-1)];
  if (first && last)
    world.createImpulseJoint(
      RAPIER.JointData.rope((BOXES - 1) * TILES, { x: 0, y: 0 }, { x: 0, y: 0 }),
      first,
      last,
      true,
    );
  const step = () => world.step();
  for (let n = 0; n < 120; n++) step();
  const contacts = () => {
    let count = 0;
    for (const c of colliders)
      world.contactPairsWith(c, (other) => {
        if (tiles.includes(other)) count++;
      });
    return count;
  };
  return { step, contacts };
}

const us = (v: number): string => `${v.toFixed(1).padStart(9)} µs`;
const say = (text: string): void => console.log(text);
const met = (ok: boolean): string => (ok ? 'reached' : 'NOT reached');

const solved = solveBalance(rig, fresh, { pressure: 4, turning: 1 });
const guess = { pose: solved.pose, strutOn: false, leverFree: false };
let n = 0;
const warm = time(() => {
  solveBalance(rig, fresh, { pressure: 4 + (n++ % 10) * 1e-3, turning: 1 }, guess);
}, 5000);
say('Balance');
say(`  one warm solve        ${us(warm)}   goal 15 µs: ${met(warm <= 15)}`);

const motion = createMotion(rig, fresh);
const motionStep = time(() => {
  motion.step({ pressure: 4 + sin(n++ / 20), turning: 1 });
}, 3000);
const engines = [
  ['planck', planckLoad()],
  ['matter', matterLoad()],
  ['rapier (compiled)', await rapierLoad()],
] as const;
say(`\nOne step of 1/240 s; engines with ${BOXES} bodies, ${BOXES} joints`);
say(`  Motion (the brake)    ${us(motionStep)}`);
for (const [name, load] of engines) {
  const t = time(load.step, 1000);
  const goal = name === 'planck' ? `   goal 0.5: ${met(motionStep / t <= 0.5)}` : '';
  say(
    `  ${name.padEnd(20)}  ${us(t)}   ${load.contacts()} contacts   Motion is ${(motionStep / t).toFixed(2)} of it${goal}`,
  );
}

say('\nA life of 10 000 applications, one stop each');
const from = clock();
let state = fresh;
const run = newRun();
for (let a = 0; a < 10000; a++) {
  state = wearLump(rig, state, KM, 1, run);
  state = application(rig, state, { pressure: brake.duty.pressure, turning: 1 }, run.guess).state;
}
const life = clock() - from;
say(
  `  ${life.toFixed(0)} ms, ${((life * 1000) / 10000).toFixed(0)} µs each; tooth ${state.tooth}, lining ${thinnest(rig, state, 'front').toFixed(3)} mm left`,
);

say('\nConvergence: torque at 4 MPa against 768 elements; Motion settled against Balance');
const torque = (elements: number): number => {
  const r = createRig(brake, { elements });
  const i = balance(r, freshState(brake, brake.drum.radiusNew, elements), {
    pressure: 4,
    turning: 1,
  });
  return i.shoes.front.torqueOnDrum + i.shoes.rear.torqueOnDrum;
};
const fine = torque(768);
for (const elements of [12, 24, 48, 96, 192])
  say(
    `  ${String(elements).padStart(4)} elements   ${((torque(elements) / fine - 1) * 100).toFixed(5)} %`,
  );
const still = balance(rig, fresh, { pressure: 4, turning: 1 });
for (const rate of [60, 120, 240, 480, 960]) {
  const m = createMotion(rig, fresh, 1 / rate);
  for (let k = 0; k < rate; k++) m.step({ pressure: 4, turning: 1 });
  const i = m.instant();
  const off =
    (i.shoes.front.torqueOnDrum + i.shoes.rear.torqueOnDrum) /
      (still.shoes.front.torqueOnDrum + still.shoes.rear.torqueOnDrum) -
    1;
  say(`  1/${String(rate).padEnd(4)} s   ${(off * 100).toExponential(1)} %`);
}
