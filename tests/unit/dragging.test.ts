import { describe, expect, it } from 'vitest';
import {
  application,
  createMotion,
  createRig,
  driveLife,
  freshState,
  KM,
  KMH,
  type LifeEvent,
  roadPower,
  slidesAt,
  standingState,
} from '../../sim/index.ts';
import { Drag } from '../../sim/wear/drag.ts';
import { cooled } from '../../sim/wear/heat.ts';
import { Wearing } from '../../sim/wear/wearing.ts';
import { toldEvent } from '../../sim/workshop/index.ts';
import { mustRead, quayScene } from '../brakes.ts';
import { standingInside } from '../inside.ts';
import { near } from '../near.ts';

/** Give of what bears the strut's force in the model that the figures below come from, mm/N. */
const SOFT = 1.7095e-4;

const descents = (give: number) => {
  const brake = mustRead(quayScene());
  const duty = brake.duties.find((d) => d.name === 'Hill descents');
  if (!duty) throw new Error('the van has hills');
  return { brake, duty, rig: createRig(brake, { strutGive: give }) };
};

describe('the step on a hot drum, and the morning after', () => {
  // Figures by a solver written apart for even linings 0.1 mm inside (tests/reference/drag.test.ts). The life up
  // to there is this project's: its linings are worn in by then and stand as deep at their crown alone.
  const WORN_IN = 0.25;
  const { brake, duty, rig } = descents(SOFT);
  const life = driveLife(rig, freshState(brake), duty, { distance: 2010 * KM });
  const hot = life.events.find((e) => e.kind === 'stepped hot' && e.temperature > 340) as LifeEvent;
  const speed = 40 * KMH;

  /** The pass ends at 351 °C, and a press there steps too far: 0.10 mm inside. */
  const foot = (): void => {
    near(hot.temperature, 351, { abs: 2 }, 'foot of the pass');
    const drags = life.events.find((e) => e.kind === 'drag at rest' && e.distance === hot.distance);
    near(drags?.value ?? 0, -0.1, { abs: 0.006 }, 'deepest');
    expect(hot.value).toBeLessThan(-0.05);
    // A brake that was set cold, its next tooth near, takes three at once there, and one just stepped two.
    const set = (name: string) => {
      const state = { ...standingState(rig, name), temperature: 351 };
      return application(rig, state, { pressure: 2, turning: 1 });
    };
    expect([set('Before a click').clicked, set('Just clicked').clicked]).toEqual([3, 2]);
  };

  /** Parked it cools onto its linings at 111 °C, after a quarter of an hour; cold it takes 340 N·m. */
  const parked = (): void => {
    const w = new Wearing(rig, hot.state);
    const drag = new Drag(w);
    expect(drag.rubs(351)).toBe(false);
    let touch = 351;
    while (!drag.rubs(touch)) touch -= 0.5;
    near(touch, 111, { abs: 12 }, 'touches at');
    // Cooling of a standing drum: C/G·ln(331/91) = 1564/2.5 · 1.29 = 808 s.
    near(cooled(brake, 351, 0, 808), 111, { abs: 0.5 }, '13.5 min');
    near(drag.torqueAt(20) / 1000, 337, { rel: WORN_IN }, 'cold torque');
    near(w.strutForce, 1765 + 185, { rel: WORN_IN }, 'strut, with the springs’ clamp');
  };

  /** Pulling away: 72 °C after 10 s, 105 °C after a minute and 0.7 km, and then hardly felt. */
  const pulling = (): void => {
    const w = new Wearing(rig, { ...hot.state, temperature: 20 });
    const drag = new Drag(w);
    drag.drive(10 * speed, speed, 20);
    near(w.temperature - 20, 52, { rel: WORN_IN }, '10 s');
    near(drag.torqueAt(w.temperature) / 1000, 117, { rel: WORN_IN }, '10 s');
    drag.drive(50 * speed, speed, 20);
    near(w.temperature - 20, 85, { rel: WORN_IN }, 'a minute');
    near(drag.torqueAt(w.temperature) / 1000, 17, { abs: 5 }, 'a minute');
  };

  /** The cold torque is back every morning, and halved after 380 to 520 km. */
  const mornings = (): void => {
    const half = (give: number): number => {
      const { rig: on } = standingInside(0.1, give);
      const w = new Wearing(on, freshState(on.brake));
      const drag = new Drag(w);
      const first = drag.torqueAt(20);
      for (let km = 2; ; km += 2) {
        drag.drive(2 * KM, speed, 20);
        if (drag.torqueAt(20) < first / 2) return km;
      }
    };
    near(half(0), 382, { rel: 0.03 }, 'rigid parts');
    near(half(SOFT), 524, { rel: 0.03 }, 'parts that give');
  };

  it('is one story: 351 °C and a step too far, clamped at 111 °C, 340 N·m when cold, 105 °C after a minute, halved after 380 to 520 km', () => {
    foot();
    parked();
    pulling();
    mornings();
  });

  it('in the life it drags, heats and frees itself, and every row tells it', () => {
    const on = driveLife(rig, freshState(brake), duty, { distance: 3200 * KM });
    const step = on.events.find((e) => e.kind === 'stepped hot' && e.temperature > 340)?.distance;
    const from = on.events.find((e) => e.kind === 'drag at rest' && e.distance === step);
    const to = on.events.find((e) => e.kind === 'drag ends' && e.distance > (step ?? 0));
    if (!from || !to) throw new Error('it drags and ends');
    near(from.torque / 1000, 337, { rel: WORN_IN }, 'at first');
    // By dragging alone 1 937 km; presses wear it free sooner.
    expect((to.distance - from.distance) / KM).toBeGreaterThan(500);
    expect((to.distance - from.distance) / KM).toBeLessThan(1937);
    const rows = on.rows.filter((r) => r.distance > from.distance && r.distance < to.distance);
    expect(rows.length).toBeGreaterThan(4);
    for (const [i, row] of rows.entries()) {
      expect(row.drag.torque).toBeGreaterThan(0);
      if (i > 0) expect(row.drag.torque).toBeLessThan((rows[i - 1] as typeof row).drag.torque);
    }
    expect(on.rows.at(-1)?.drag).toEqual({ torque: 0, power: 0 });
    expect(toldEvent(brake, from).text).toMatch(/0\.10 mm inside it, and [34]\d\d N·m turn it/);
  });
});

describe('what cannot be driven', () => {
  it('is seized where the wheel would slide: 0.8 · 0.4 · m·g/2 · r = 487 N·m', () => {
    const { rig } = standingInside(0.05, 0);
    near(slidesAt(rig.brake.vehicle) / 1000, (0.8 * 0.4 * 1150 * 9.80665 * 0.27) / 2, {
      rel: 1e-4,
    });
    const life = driveLife(rig, freshState(rig.brake), rig.brake.duties[0], { distance: 50 * KM });
    expect(life.end).toBe('seized');
    expect(life.distance).toBe(0);
    near((life.events.at(-1)?.value ?? 0) / 1000, 1771, { rel: 0.02 }, 'torque to turn it');
  });

  it('or where a part gives way first', () => {
    const { rig } = standingInside(0.1, SOFT, (s) => {
      s.strutPath.lever = { thickness: 3, depth: 10, nose: 12, arm: 27 };
      s.strutPath.yield = 350;
    });
    const life = driveLife(rig, freshState(rig.brake), rig.brake.duties[0], { distance: 50 * KM });
    expect([life.end, life.distance]).toEqual(['gave way', 0]);
    // 350 MPa on 3 · 10²/6 mm³ over 12 mm.
    near(life.events.at(-1)?.value ?? 0, (350 * 50) / 12, { rel: 1e-9 }, 'nose');
  });
});

it('a force that is left drags all the way and heats to where the drum loses as much', () => {
  const { rig } = descents(SOFT);
  const start = freshState(rig.brake);
  const held = { ...start, condition: { ...start.condition, keptPressure: 1.2 } };
  const w = new Wearing(rig, held);
  const drag = new Drag(w);
  const speed = 40 * KMH;
  const torque = drag.torqueAt(20);
  const { power } = drag.drive(60 * KM, speed, 20);
  // Steady heat: P = G·(T − air), G = 2.5 + 0.12 · 40 W/K; the force presses alike however the drum grows.
  near(w.temperature, 20 + power / 1000 / 7.3, { rel: 0.01 }, 'temperature');
  // The springs pull a little harder in a wider drum.
  expect(power).toBeLessThan((torque * speed) / 270);
  expect(power).toBeGreaterThan((0.8 * torque * speed) / 270);
  const life = driveLife(rig, held, rig.brake.duties[0], { distance: 20 * KM, rowEvery: KM });
  // It beds in meanwhile, by the work of some 300 stops.
  const told = life.rows.at(-1)?.drag.torque ?? 0;
  expect(told).toBeGreaterThan(torque);
  expect(told).toBeLessThan(1.3 * torque);
});

it('Motion, its drum turning, drags with the torque that the drive goes by', () => {
  const { rig } = standingInside(0.05, SOFT, (s) => {
    s.shoes.front.holdDown.friction = 0;
    s.shoes.rear.holdDown.friction = 0;
  });
  for (const temperature of [20, 45]) {
    const state = { ...freshState(rig.brake), temperature };
    const motion = createMotion(rig, state);
    let torque = 0;
    for (let n = 0; n < 600; n++) motion.step({ pressure: 0, turning: 1 });
    torque = -motion.instant().torqueOnDrum;
    near(torque, new Drag(new Wearing(rig, state)).torqueAt(temperature), { rel: 0.01, abs: 50 });
  }
});

it('an even road asks for rolling and air: 1150 kg at 40 km/h', () => {
  const { brake } = descents(0);
  // 0.015 · 1150 · 9.80665 + 0.54 · 11.11² = 235.8 N at 11.11 m/s.
  near(roadPower(brake.vehicle, 40 * KMH) / 1e6, 2.62, { rel: 0.002 }, 'kW');
});
