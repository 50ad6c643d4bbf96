import type { Duty } from '../brake/duty.ts';
import { meanSpeed, torqueFor } from '../brake/stopping.ts';
import type { Surface } from '../brake/surface.ts';
import type { Brake } from '../brake/types.ts';
import { KM } from '../units/units.ts';
import { descentForce, stopEnergyOf } from './heat.ts';

/** How hard a press is: by the line's pressure, MPa, or as the torque needs it, N·mm against the turning. */
export type PressAsked =
  | { readonly by: 'pressure'; readonly pressure: number }
  | { readonly by: 'torque'; readonly torque: number };

/** One kind of press that a duty repeats. Energies are those of one brake. */
export interface Kind {
  readonly name: string;
  readonly asked: PressAsked;
  /** N·mm */
  readonly energy: number;
  /** Speed before it, mm/s: at that the drum cools. */
  readonly speed: number;
  /** Length over which the energy comes in, mm; 0 for a stop. */
  readonly length: number;
  readonly perKm: number;
  readonly reverse: number;
  /** A stop at the foot of the descent before it in the list: comes with it. */
  readonly foot: boolean;
}

/** Mean speed over the way of a kind of press, mm/s: a descent's own. */
export const waySpeed = ({ speed, length }: Kind): number =>
  length > 0 ? speed : meanSpeed(speed);

/**
 * Kinds of a duty in the order of the list: stops, then each descent with the stop at its foot.
 * A deceleration asks for a torque (brake/stopping.ts).
 */
export function kindsOf(brake: Brake, duty: Duty): Kind[] {
  const { vehicle } = brake;
  const mass = duty.mass ?? vehicle.mass;
  const slowing = (deceleration: number): PressAsked => ({
    by: 'torque',
    torque: torqueFor(vehicle, deceleration, mass),
  });
  const stops = duty.stops.map(
    (s): Kind => ({
      name: s.name,
      asked: s.asked.by === 'pressure' ? s.asked : slowing(s.asked.deceleration),
      energy: stopEnergyOf(brake, s.speed, mass),
      speed: s.speed,
      length: 0,
      perKm: s.perKm,
      reverse: s.reverse,
      foot: false,
    }),
  );
  const [first] = stops;
  const hills = duty.descents.flatMap((h): Kind[] => {
    const force = descentForce(brake, h.slope, h.speed, mass);
    const hold: Kind = {
      name: h.name,
      asked: { by: 'torque', torque: force * vehicle.tyreRadius },
      energy: force * h.length,
      speed: h.speed,
      length: h.length,
      perKm: h.perKm,
      reverse: 0,
      foot: false,
    };
    if (!first) return [hold];
    const energy = stopEnergyOf(brake, h.speed, mass);
    return [hold, { ...first, energy, speed: h.speed, reverse: 0, perKm: h.perKm, foot: true }];
  });
  return [...stops, ...hills];
}

/** What comes next: a press by its kind's place in the list, or a parking. */
export interface Due {
  /** Place in the list of kinds; −1: parking. */
  kind: number;
  /** Distance from new, mm. */
  at: number;
  turning: 1 | -1;
  /** Place in the duty's weather; −1: the brake's own surface. */
  weather: number;
}

/** In occurrences: what rounding may make of a whole number. */
const ROUNDING = 1e-9;
const HAIR = 1e-6;
/** (√5 − 1)/2: its multiples are spread evenly over 0..1, so any stretch has its shares. */
const GOLDEN = 0.6180339887498949;

/**
 * Where a duty's presses fall. The n-th of a kind comes at n / perKm from new, whatever was driven
 * before in one piece or in many, so a life can be taken up at any distance. Every (1/share)-th stop is
 * in reverse; weather follows the multiples of the golden section.
 */
export class Schedule {
  readonly kinds: readonly Kind[];
  readonly weather: readonly Surface[];
  /** Film that a place in the weather lays on the drum, mm; undefined: its surface is for its own stops alone. */
  readonly films: readonly (number | undefined)[];
  readonly #shares: readonly number[];
  readonly #perKm: number[];
  readonly #of: number[];
  readonly #done: number[];
  readonly due: Due = { kind: -1, at: Number.POSITIVE_INFINITY, turning: 1, weather: -1 };
  #next = -1;
  #foot = false;

  constructor(brake: Brake, duty: Duty, from: number) {
    this.kinds = kindsOf(brake, duty);
    this.weather = duty.weather.map((w) => w.surface);
    this.films = duty.weather.map((w) => w.film);
    this.#shares = duty.weather.map((w) => w.share);
    const own = this.kinds.map((_, i) => i).filter((i) => !this.kinds[i]?.foot);
    this.#of = own;
    this.#perKm = own.map((i) => (this.kinds[i] as Kind).perKm);
    if (duty.parking) {
      this.#of.push(-1);
      this.#perKm.push(duty.parking.perKm);
    }
    this.#done = this.#perKm.map((often) => Math.floor(((from + 0.5) / KM) * often + ROUNDING));
    this.#look();
  }

  /** How far it has come, for `reset`. */
  mark(): number[] {
    return [...this.#done, this.#foot ? 1 : 0];
  }

  reset(mark: readonly number[]): void {
    for (let i = 0; i < this.#done.length; i++) this.#done[i] = mark[i] as number;
    this.#foot = mark[this.#done.length] === 1;
    this.#look();
    if (this.#foot) this.#toFoot();
  }

  /** Goes on to the one after `due`. */
  advance(): void {
    const i = this.#next;
    if (i < 0) return;
    const { kind } = this.due;
    if (!this.#foot && kind >= 0 && this.kinds[kind + 1]?.foot) {
      this.#foot = true;
      this.#toFoot();
      return;
    }
    this.#foot = false;
    this.#done[i] = (this.#done[i] as number) + 1;
    this.#look();
  }

  #toFoot(): void {
    this.due.kind++;
    this.due.turning = 1;
  }

  #look(): void {
    let next = -1;
    let at = Number.POSITIVE_INFINITY;
    for (let i = 0; i < this.#done.length; i++) {
      // On whole millimetres, so that the end of a way and the start of the next mean the same.
      const there = Math.round((((this.#done[i] as number) + 1) / (this.#perKm[i] as number)) * KM);
      if (there < at) {
        at = there;
        next = i;
      }
    }
    this.#next = next;
    const { due } = this;
    due.at = at;
    if (next < 0) return;
    due.kind = this.#of[next] as number;
    const n = (this.#done[next] as number) + 1;
    const reverse = due.kind < 0 ? 0 : (this.kinds[due.kind] as Kind).reverse;
    due.turning = Math.floor(n * reverse + HAIR) > Math.floor((n - 1) * reverse + HAIR) ? -1 : 1;
    due.weather = -1;
    if (this.#shares.length > 0) {
      let u = n * GOLDEN;
      u -= Math.floor(u);
      for (let k = 0; k < this.#shares.length; k++) {
        u -= this.#shares[k] as number;
        if (u < 0) {
          due.weather = k;
          break;
        }
      }
    }
  }
}
