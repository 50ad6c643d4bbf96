import { BAR, type Brake, pressureToSlow, shareTorque } from '../../../sim/index.ts';
import { varySeekReady as words } from '../../../sim/words/en.ts';
import { rigOfBrake } from '../../record/derive.ts';
import { short, type VaryDesk } from './desk.ts';
import type { SeekPart, VaryPart } from './part.ts';

/** Questions turned round, ready made. Their numbers are those of the scene, or one's own choice, which can be typed over. */
export interface SeekReady {
  readonly name: string;
  /** Where its numbers come from. */
  readonly from: string;
  readonly ask: Pick<SeekPart, 'free' | 'wishes'> & Partial<Pick<VaryPart, 'bar' | 'cable'>>;
}

/** Greatest clearance that one may wish before a tooth drops in, mm (own choice). */
const CLEARANCE = 0.4;
/** A share of a stop is met within so much of it (own choice). */
const WITHIN = 0.02;
/** Pins may go so far up or down, mm (own choice). */
const PINS = 6;

const half = (x: number): number => Number((0.6 * x).toPrecision(3));
const more = (x: number): number => Number((1.5 * x).toPrecision(3));

/** The first stop of the scene's duties that says how the vehicle slows. */
const slowDown = ({ duties }: Brake): { deceleration: number; speed: number } | null =>
  duties
    .flatMap((d) => d.stops)
    .flatMap(({ asked, speed }) =>
      asked.by === 'deceleration' ? [{ deceleration: asked.deceleration, speed }] : [],
    )[0] ?? null;

/** What a pitch must keep: its clearance, and no tooth too many down a hill. */
function pitch(desk: VaryDesk): readonly SeekReady[] {
  const { brake } = desk;
  const size =
    desk.quantity('adjuster.lever.toothAngle') ?? desk.quantity('adjuster.pitch') ?? null;
  if (!size || !(size.value > 0) || !brake.duties.some((d) => d.descents.length > 0)) return [];
  const wishes = [
    { key: 'gapAtClick', least: null, most: CLEARANCE, hot: null },
    { key: 'hillTeeth', least: null, most: 0, hot: null },
  ];
  const free = [{ id: size.id, from: half(size.value), to: more(size.value) }];
  const from = words.from(short(CLEARANCE));
  const play = desk.quantity('adjuster.lostMotion');
  const one = {
    name: words.whichKeepsClearanceUnderAnd(
      size.id.endsWith('toothAngle') ? words.tooth : words.pitch,
      short(CLEARANCE),
    ),
    from,
    ask: { free, wishes },
  };
  if (!play || !(play.value > 0)) return [one];
  const two = [...free, { id: play.id, from: half(play.value), to: more(play.value) }];
  return [one, { name: words.theSameWithName, from, ask: { free: two, wishes } }];
}

/** Which sizes give the axle what the scene says is its share. */
function share(desk: VaryDesk): readonly SeekReady[] {
  const { brake } = desk;
  const stop = slowDown(brake);
  const bore = desk.quantity('cylinder.bore');
  const pins = desk.quantity('shoes.anchor.at.1');
  if (!stop || !bore || !pins) return [];
  const { share: part } = brake.vehicle;
  const torque = shareTorque(brake, part, stop.deceleration / 1000);
  const rig = rigOfBrake(brake);
  const pressure = pressureToSlow(rig, desk.bench.state, stop.deceleration, stop.speed);
  if (!Number.isFinite(pressure) || !(pressure > 0)) return [];
  const end = (x: number): number => Number(x.toPrecision(4));
  const wishes = [
    {
      key: 'torque',
      least: end((1 - WITHIN) * torque),
      most: end((1 + WITHIN) * torque),
      hot: null,
    },
  ];
  const free = [
    { id: bore.id, from: half(bore.value), to: more(bore.value) },
    { id: pins.id, from: pins.value - PINS, to: pins.value + PINS },
  ];
  const bar = end(pressure / BAR);
  const told = words.told(short(100 * part), short(stop.deceleration / 1000));
  const from = words.from2(short(bar), short(100 * WITHIN));
  const friction = desk.quantity('shoes.lining.friction');
  const one = {
    name: words.whichBoreAndArmGive(told),
    from,
    ask: { free, wishes, bar },
  };
  if (!friction) return [one];
  const three = [
    ...free,
    { id: friction.id, from: end(0.8 * friction.value), to: end(1.2 * friction.value) },
  ];
  return [one, { name: words.theSameWithName2, from, ask: { free: three, wishes, bar } }];
}

export const seekReady = (desk: VaryDesk): readonly SeekReady[] => [...pitch(desk), ...share(desk)];
