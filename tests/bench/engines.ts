import RAPIER from '@dimforge/rapier2d-compat';
import Matter from 'matter-js';
import { Box, DistanceJoint, RevoluteJoint, Vec2, World } from 'planck-js';

/**
 * The same load for three general engines: a chain of boxes lying on a floor of tiles. Boxes and
 * tiles stand a little apart, so that each box touches its own tiles alone.
 */
export const BOXES = 12;
const TILES = 5;
/** Half sizes: 4.9 × 1 boxes, 0.98 × 1 tiles. */
const BOX = 2.45;
const TILE = 0.49;
const HALF = 0.5;
const FRICTION = 0.4;
export const STEP = 1 / 240;
/** Steps until the chain lies still. */
const SETTLE = 120;

export interface EngineLoad {
  readonly name: string;
  readonly step: () => void;
  /** Pairs of bodies that touch now, and joints. */
  readonly contacts: () => number;
  readonly joints: () => number;
}

const tiles = Array.from({ length: BOXES * TILES }, (_, n) => n + HALF);
const boxes = Array.from({ length: BOXES }, (_, n) => (n + HALF) * TILES);

function settled(load: EngineLoad): EngineLoad {
  for (let n = 0; n < SETTLE; n++) load.step();
  return load;
}

function planck(): EngineLoad {
  const world = new World({ gravity: new Vec2(0, -10), allowSleep: false });
  for (const x of tiles) {
    world.createBody(new Vec2(x, -HALF)).createFixture(new Box(TILE, HALF), { friction: FRICTION });
  }
  const bodies = boxes.map((x) => {
    const body = world.createDynamicBody(new Vec2(x, HALF));
    body.createFixture(new Box(BOX, HALF), { density: 1, friction: FRICTION });
    return body;
  });
  bodies.forEach((body, n) => {
    const next = bodies[n + 1];
    if (next) {
      world.createJoint(new RevoluteJoint({}, body, next, new Vec2((n + 1) * TILES, HALF)));
    }
  });
  const [first, last] = [bodies[0], bodies.at(-1)];
  if (first && last) {
    world.createJoint(new DistanceJoint({}, first, last, first.getPosition(), last.getPosition()));
  }
  return {
    name: 'planck, the engine under Motion',
    step: () => world.step(STEP, 8, 3),
    contacts: () => {
      let count = 0;
      for (let c = world.getContactList(); c; c = c.getNext()) if (c.isTouching()) count++;
      return count;
    },
    joints: () => world.getJointCount(),
  };
}

function matter(): EngineLoad {
  const engine = Matter.Engine.create({ enableSleeping: false });
  // Its own lengths are pixels, its y points down.
  const px = 20;
  const options = { friction: FRICTION };
  const fixed = { ...options, isStatic: true };
  const floor = tiles.map((x) =>
    Matter.Bodies.rectangle(x * px, HALF * px, 2 * TILE * px, 2 * HALF * px, fixed),
  );
  const bodies = boxes.map((x) =>
    Matter.Bodies.rectangle(x * px, -HALF * px, 2 * BOX * px, 2 * HALF * px, options),
  );
  const joints = bodies.map((bodyA, n) => {
    const next = bodies[n + 1];
    // The last ties the chain's ends to each other at the distance they have.
    if (!next) return Matter.Constraint.create({ bodyA: bodies[0] ?? bodyA, bodyB: bodyA });
    const end = (TILES / 2) * px;
    return Matter.Constraint.create({
      bodyA,
      bodyB: next,
      pointA: { x: end, y: 0 },
      pointB: { x: -end, y: 0 },
      length: 0,
    });
  });
  Matter.Composite.add(engine.world, [...floor, ...bodies, ...joints]);
  return {
    name: 'matter-js',
    step: () => {
      Matter.Engine.update(engine, 1000 * STEP);
    },
    contacts: () => engine.pairs.list.filter((pair: Matter.Pair) => pair.isActive).length,
    joints: () => Matter.Composite.allConstraints(engine.world).length,
  };
}

async function rapier(): Promise<EngineLoad> {
  await RAPIER.init();
  const world = new RAPIER.World({ x: 0, y: -10 });
  world.timestep = STEP;
  for (const x of tiles) {
    const body = world.createRigidBody(RAPIER.RigidBodyDesc.fixed().setTranslation(x, -HALF));
    world.createCollider(RAPIER.ColliderDesc.cuboid(TILE, HALF).setFriction(FRICTION), body);
  }
  const colliders: RAPIER.Collider[] = [];
  const bodies = boxes.map((x) => {
    const place = RAPIER.RigidBodyDesc.dynamic().setTranslation(x, HALF).setCanSleep(false);
    const body = world.createRigidBody(place);
    const shape = RAPIER.ColliderDesc.cuboid(BOX, HALF).setFriction(FRICTION);
    colliders.push(world.createCollider(shape, body));
    return body;
  });
  const end = TILES / 2;
  bodies.forEach((body, n) => {
    const next = bodies[n + 1];
    const ends = RAPIER.JointData.revolute({ x: end, y: 0 }, { x: -end, y: 0 });
    if (next) world.createImpulseJoint(ends, body, next, true);
  });
  const [first, last] = [bodies[0], bodies.at(-1)];
  if (first && last) {
    const middle = { x: 0, y: 0 };
    const rope = RAPIER.JointData.rope((BOXES - 1) * TILES, middle, middle);
    world.createImpulseJoint(rope, first, last, true);
  }
  return {
    name: 'rapier (compiled to WebAssembly)',
    step: () => world.step(),
    contacts: () => {
      let count = 0;
      for (const box of colliders) {
        world.contactPairsWith(box, (other) => {
          // A pair that is only near has a manifold without points.
          let points = 0;
          world.contactPair(box, other, (manifold) => {
            points += manifold.numSolverContacts();
          });
          if (points > 0) count++;
        });
      }
      return count;
    },
    joints: () => world.impulseJoints.len(),
  };
}

export const engineLoads = async (): Promise<EngineLoad[]> =>
  [planck(), matter(), await rapier()].map(settled);
