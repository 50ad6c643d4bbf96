import fc from 'fast-check';
import { type Brake, type BrakeState, freshState } from '../sim/index.ts';
import { mustRead, quayScene } from './brakes.ts';

/** A sound brake of any size: two alike shoes, springs, strut, toothed lever, parking lever. */
export interface AnyBrake {
  /** Drum radius, mm; what follows in parts of it or in its own unit. */
  readonly radius: number;
  readonly friction: number;
  readonly width: number;
  readonly modulus: number;
  readonly thickness: number;
  readonly from: number;
  readonly to: number;
  readonly pinX: number;
  readonly pinY: number;
  readonly toeX: number;
  readonly toeY: number;
  readonly table: number;
  readonly web: number;
  readonly depth: number;
  readonly spring: number;
  readonly holdDown: number;
  readonly cupFriction: number;
  /** Ground radius over the drum's. */
  readonly ground: number;
  readonly pressure: number;
  /** Worn shape: depth at heel and toe end, and a hollow, mm. */
  readonly wear: readonly [number, number, number];
  /** Null: on pins. Angle of the flat's normal from outward, degrees, and friction on it. */
  readonly abutment: { readonly slope: number; readonly friction: number } | null;
}

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const common = {
  radius: between(80, 200),
  friction: between(0.1, 0.5),
  width: between(0.2, 0.5),
  modulus: between(150, 1000),
  thickness: between(3, 8),
  from: between(-62, -40),
  to: between(35, 65),
  pinX: between(0.1, 0.25),
  pinY: between(-0.82, -0.7),
  toeX: between(0.2, 0.35),
  toeY: between(0.68, 0.82),
  table: between(1.5, 4),
  web: between(2.5, 8),
  depth: between(0.16, 0.3),
  spring: between(60, 400),
  holdDown: between(5, 40),
  cupFriction: between(0, 30),
  ground: between(0.999, 1.001),
  pressure: between(0.3, 8),
  wear: fc.tuple(between(0, 0.8), between(0, 0.8), between(0, 0.3)),
};

export const onPins: fc.Arbitrary<AnyBrake> = fc.record({ ...common, abutment: fc.constant(null) });

/** Steel heels on steel flats, greased or dry: friction of 0.05 to 0.3 (common practice). */
export const onAbutments: fc.Arbitrary<AnyBrake> = fc.record({
  ...common,
  abutment: fc.record({ slope: between(-10, 25), friction: between(0.05, 0.3) }),
});

export function built(b: AnyBrake): { brake: Brake; state: BrakeState } {
  const r = b.radius;
  const { abutment } = b;
  const pin = [b.pinX * r, b.pinY * r] as const;
  const toe = [b.toeX * r, b.toeY * r] as const;
  const seatY = 0.5 * r;
  const shoe = (s: 1 | -1) => ({
    anchor: abutment
      ? {
          kind: 'abutment',
          at: [s * pin[0], pin[1]],
          heelRadius: 0.06 * r,
          // From the flat towards the heel: outward, and up by the slope.
          normal: s > 0 ? abutment.slope : 180 - abutment.slope,
          friction: abutment.friction,
        }
      : { kind: 'pin', at: [s * pin[0], pin[1]] },
    toe: [s * toe[0], toe[1]],
    strutSeat: [s * 0.5 * r, seatY],
    // Without friction nothing is shaken off either, and no thread holds the shoe in place.
    holdDown: { at: [s * 0.8 * r, 0], friction: b.holdDown, shakenOff: b.holdDown > 0 ? 1 : 0 },
    lining: {
      from: s > 0 ? b.from : 180 - b.to,
      to: s > 0 ? b.to : 180 - b.from,
      width: b.width * r,
      thicknessNew: b.thickness,
      thicknessMin: 1,
      groundRadius: b.ground * r,
      modulus: b.modulus,
      friction: b.friction,
      wearRate: 1e-8,
    },
    steel: {
      tableThickness: b.table,
      tableArc: s > 0 ? [b.from - 3, b.to + 3] : [177 - b.to, 183 - b.from],
      webThickness: b.web,
      webDepth: b.depth * r,
    },
    mass: 0.6,
    inertia: 0.7 * r * r,
  });
  const scene = quayScene();
  const spring = (name: string, x: number, y: number, rate: number) => ({
    name,
    ends: [
      { on: 'front', at: [-x * r, y * r] },
      { on: 'rear', at: [x * r, y * r] },
    ],
    rate,
    fitted: b.spring,
  });
  const brake = mustRead({
    ...scene,
    name: 'any-brake',
    drum: {
      ...scene.drum,
      diameterNew: 2 * r,
      diameterMax: 2 * r + 2,
      lipDiameter: 2 * r,
    },
    shoes: { front: shoe(-1), rear: shoe(1) },
    // As large as there is room for, between the toes and under the rim.
    cylinder: {
      ...scene.cylinder,
      at: [0, toe[1]],
      cupFriction: b.cupFriction,
      length: Math.min(scene.cylinder.length, 2 * toe[0]),
      outerDiameter: scene.cylinder.bore + 2.05,
    },
    springs: [spring('upper', 0.55, 0.6, 8), spring('lower', 0.45, -0.62, 12)],
    adjuster: {
      kind: 'incremental',
      lengthAtZero: r - 0.004 * r,
      lostMotion: 0.9,
      teeth: 10,
      pitch: 0.1,
    },
    parkingLever: {
      ...scene.parkingLever,
      pivot: [0.46 * r, 0.66 * r],
      hook: [0.5 * r, -0.4 * r],
      cableGuide: [0.1 * r, -0.44 * r],
    },
    look: { ...scene.look, plateRadius: 1.06 * r },
    states: [],
  });
  const fresh = freshState(brake);
  const [heel, tip, hollow] = b.wear;
  const worn = (flip: boolean) =>
    fresh.wear.front.map((_, i, all) => {
      const x = i / (all.length - 1);
      const s = flip ? 1 - x : x;
      return heel * (1 - s) + tip * s + hollow * 4 * s * (1 - s);
    });
  return { brake, state: { ...fresh, wear: { front: worn(true), rear: worn(false) } } };
}
