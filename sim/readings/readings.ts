import type { Instant, ShoeInstant } from '../balance/instant.ts';
import type { BrakeState } from '../brake/state.ts';
import type { Brake, Side } from '../brake/types.ts';
import { BAR, KM } from '../units/units.ts';
import { pedalReadings } from './pedal.ts';
import type { Reading } from './reading.ts';
import { gapsOf, type Role, roleOf } from './roles.ts';

/** Torque of a shoe against the turning, N·mm. Standing still: 0. */
export const dragOf = (i: Instant, side: Side): number =>
  i.locked || i.turning === 0 ? 0 : -i.turning * i.shoes[side].torqueOnDrum;

/** Share of a piston's push below which no lining bears: no factor is told. */
const TOUCH = 1e-6;

/** Shoe factor: drag at the drum radius over the push left on its toe after the springs. */
export function shoeFactor(i: Instant, side: Side): number {
  const s = i.shoes[side];
  if (i.locked || i.turning === 0 || !(s.normalSum > TOUCH) || !(s.toeForce > 0)) return Number.NaN;
  return dragOf(i, side) / i.drumRadius / s.toeForce;
}

/** Shoe factor on the full piston force. */
export function shoeFactorFull(i: Instant, side: Side): number {
  const s = i.shoes[side];
  if (i.locked || i.turning === 0 || !(s.normalSum > TOUCH) || !(s.pistonForce > 0))
    return Number.NaN;
  return dragOf(i, side) / i.drumRadius / s.pistonForce;
}

/**
 * Highest pressure anywhere on the lining. Elements stand half a step inside the ends; where the
 * pressure still rises there, it goes on along the line through the last two.
 */
export function peak(values: Float64Array): number {
  const n = values.length;
  let most = 0;
  for (const v of values) most = Math.max(most, v);
  if (n < 2) return most;
  const end = (a: number, b: number): number => a + (a - b) / 2;
  return Math.max(
    most,
    end(values[0] as number, values[1] as number),
    end(values[n - 1] as number, values[n - 2] as number),
  );
}

function liningLeft(brake: Brake, state: BrakeState, side: Side, s: ShoeInstant): number {
  // Unworn thickness by element differs from the new thickness only by the ground radius.
  const l = brake.shoes[side].lining;
  let least = l.thicknessNew;
  for (let i = 0; i < s.gap.length; i++) {
    least = Math.min(least, l.thicknessNew - (state.wear[side][i] as number));
  }
  return least;
}

/**
 * All readings of an instant.
 *
 * @param rest the released brake in the same state: gives the clearances at rest
 */
export function readings(brake: Brake, state: BrakeState, i: Instant, rest: Instant): Reading[] {
  const out: Reading[] = [];
  const add = (
    key: string,
    name: string,
    symbol: string,
    value: number,
    unit: string,
    digits: number,
    means: string,
    formula: string,
    side?: Side,
  ) =>
    out.push({ key, name, symbol, value, unit, digits, means, formula, ...(side ? { side } : {}) });

  const factor = { front: shoeFactor(i, 'front'), rear: shoeFactor(i, 'rear') };
  const full = { front: shoeFactorFull(i, 'front'), rear: shoeFactorFull(i, 'rear') };
  const byRole = (role: Role, of: { front: number; rear: number }) =>
    roleOf('front', i.turning) === role ? of.front : of.rear;
  add(
    'brakeFactor',
    'Brake factor, after springs',
    'C*',
    factor.front + factor.rear,
    '',
    2,
    'How many newtons of drag at the drum one newton on each toe makes, springs already paid.',
    'C* = (T_lead + T_trail) / (R · F_toe)',
  );
  add(
    'brakeFactorFull',
    'Brake factor on full piston force',
    'C*_p',
    full.front + full.rear,
    '',
    2,
    'The same drag over the whole push of the piston, springs not taken off.',
    'C*_p = (T_lead + T_trail) / (R · p · A)',
  );
  add(
    'shoeFactorLeading',
    'Leading',
    'C_lead',
    byRole('leading', factor),
    '',
    2,
    'Drag of the shoe that the drum drags tighter, per newton on its toe.',
    'C_lead = T_lead / (R · F_toe)',
  );
  add(
    'shoeFactorTrailing',
    'Trailing',
    'C_trail',
    byRole('trailing', factor),
    '',
    2,
    'Drag of the shoe that the drum pushes away, per newton on its toe.',
    'C_trail = T_trail / (R · F_toe)',
  );
  add(
    'torque',
    'Brake torque',
    'T',
    i.locked ? Number.NaN : (dragOf(i, 'front') + dragOf(i, 'rear')) / 1000,
    'N·m',
    1,
    'Both shoes together against the turning of the drum.',
    'T = R · Σ μ N',
  );
  add(
    'linePressure',
    'Line pressure',
    'p',
    i.pressure / BAR,
    'bar',
    1,
    'Pressure of the fluid behind the pistons.',
    'p',
  );
  add(
    'pistonForce',
    'Piston force, each',
    'F_p',
    i.pressure * brake.cylinder.area,
    'N',
    0,
    'Push of the fluid on each piston.',
    'F_p = p · π d² / 4',
  );
  for (const side of ['front', 'rear'] as const) {
    const s = i.shoes[side];
    const where = side === 'front' ? 'front' : 'rear';
    const key = side === 'front' ? 'Front' : 'Rear';
    const now = gapsOf(brake.shoes[side], s);
    const free = gapsOf(brake.shoes[side], rest.shoes[side]);
    const l = brake.shoes[side].lining;
    const left = liningLeft(brake, state, side, s);
    add(
      `toeForce${key}`,
      'Left on the toe after springs',
      'F_toe',
      Math.max(0, s.toeForce),
      'N',
      0,
      `What the piston has left to push the ${where} shoe with once the return springs are paid.`,
      'F_toe = F_p − M_springs / h',
      side,
    );
    add(
      `pistonTravel${key}`,
      'Piston travel',
      'x',
      s.pistonTravel,
      'mm',
      2,
      `How far the ${where} piston has come out since rest.`,
      'x = toe now − toe at rest',
      side,
    );
    add(
      `drag${key}`,
      'Drag',
      'F_d',
      i.locked ? Number.NaN : dragOf(i, side) / i.drumRadius,
      'N',
      0,
      `Friction of the ${where} lining at the drum's face.`,
      'F_d = Σ μ N',
      side,
    );
    add(
      `peak${key}`,
      'Highest pressure',
      'p_max',
      i.locked ? Number.NaN : peak(s.pressure),
      'MPa',
      2,
      `Greatest pressure anywhere on the ${where} lining.`,
      'p = E / t · penetration',
      side,
    );
    add(
      `clearance${key}`,
      'Clearance',
      'g',
      now.centre,
      'mm',
      2,
      `Gap between the middle of the ${where} lining and the drum now.`,
      'g = R − face of the lining',
      side,
    );
    add(
      `restClearance${key}`,
      'Clearance at rest',
      'g_0',
      free.centre,
      'mm',
      2,
      `Gap at the middle of the ${where} lining when the pedal is let go.`,
      'g_0 = R − face of the lining',
      side,
    );
    add(
      `lining${key}`,
      'Lining left',
      't',
      left,
      'mm',
      1,
      `Thickness of the ${where} lining at its thinnest point.`,
      't = t_new − wear',
      side,
    );
    add(
      `liningShare${key}`,
      'Lining left above its limit',
      '',
      (100 * (left - l.thicknessMin)) / (l.thicknessNew - l.thicknessMin),
      '%',
      0,
      `Part of the usable ${where} lining that is left.`,
      '(t − t_min) / (t_new − t_min)',
      side,
    );
    add(
      `anchorForce${key}`,
      'Force at the anchor',
      'R_a',
      i.locked
        ? Number.NaN
        : Math.sqrt(s.anchorForce[0] * s.anchorForce[0] + s.anchorForce[1] * s.anchorForce[1]),
      'N',
      0,
      `Force of the pin on the ${where} shoe.`,
      'R_a = −Σ of all other forces on the shoe',
      side,
    );
  }
  add(
    'clearanceMean',
    'Clearance, both linings',
    'g',
    (gapsOf(brake.shoes.front, i.shoes.front).centre +
      gapsOf(brake.shoes.rear, i.shoes.rear).centre) /
      2,
    'mm',
    2,
    "Mean of the two gaps at the linings' middles now.",
    'g = (g_front + g_rear) / 2',
  );
  add(
    'restClearanceMean',
    'Clearance at rest, both linings',
    'g_0',
    (gapsOf(brake.shoes.front, rest.shoes.front).centre +
      gapsOf(brake.shoes.rear, rest.shoes.rear).centre) /
      2,
    'mm',
    2,
    "Mean of the two gaps at the linings' middles with the pedal let go.",
    'g_0 = (g_front + g_rear) / 2',
  );
  add(
    'tooth',
    'Adjuster tooth',
    'n',
    state.tooth,
    `of ${brake.adjuster.teeth}`,
    0,
    'How many teeth the adjuster has stepped out.',
    'n',
  );
  add(
    'strutForce',
    'Strut force',
    'S',
    i.strutForce,
    'N',
    0,
    'Clamp of the shoes on the strut; nothing once the pistons have spread them.',
    'S from the balance of both shoes',
  );
  add(
    'separation',
    'Strut play sensed',
    's − L',
    i.separation - i.strutLength,
    'mm',
    2,
    'How far the strut seats have parted beyond the strut.',
    's − L(n)',
  );
  add(
    'toNextTooth',
    'Needed for the next tooth',
    '',
    brake.adjuster.lostMotion +
      ((brake.adjuster.growth[state.tooth + 1] ?? Number.NaN) -
        (brake.adjuster.growth[state.tooth] ?? Number.NaN)),
    'mm',
    2,
    'Lost motion plus one tooth: the play at which the lever drops in.',
    'lost motion + L(n+1) − L(n)',
  );
  add(
    'climb',
    'Tooth climbed',
    '',
    100 * i.climb,
    '%',
    0,
    'Part of the next tooth that the lever has climbed.',
    '(s − L − lost motion) / (L(n+1) − L(n))',
  );
  add(
    'drumDiameter',
    'Drum diameter',
    'D',
    2 * state.drumRadius,
    'mm',
    2,
    'Inner diameter of the cold drum where it is swept.',
    'D = 2 R',
  );
  add('temperature', 'Drum', 'ϑ', state.temperature, '°C', 0, 'Temperature of the drum.', 'ϑ');
  add(
    'distance',
    'Distance',
    '',
    state.distance / KM,
    'km',
    0,
    'Driven since new.',
    'sum of the lumps driven',
  );
  add(
    'leverOffStop',
    'Parking lever off its stop',
    '',
    state.leverOffStop,
    'mm',
    1,
    'How far the cable holds the parking lever off its stop, at the hook.',
    'hook travel',
  );
  i.springs.forEach((spring, n) => {
    const name = brake.springs[n]?.name ?? 'spring';
    add(
      `spring${n}`,
      `Pull of the ${name}`,
      'F_s',
      spring.force,
      'N',
      0,
      `What the ${name} pulls with now.`,
      'F_s = fitted + rate · stretch',
    );
  });
  out.push(...pedalReadings(brake, i));
  return out;
}

/** The reading of a key; throws when there is none by that name. */
export function readingOf(list: readonly Reading[], key: string): Reading {
  const found = list.find((r) => r.key === key);
  if (!found) throw new Error(`No reading "${key}"`);
  return found;
}
