import type { Shoe, Side } from '../brake/types.ts';
import { ROOM } from '../brake/warm.ts';
import { ln } from '../math/pow.ts';
import { rootBetween, type Until } from '../math/root.ts';
import { tableAt } from '../math/table.ts';
import { DragShoes } from './drag-shoes.ts';
import { AIR, cooled, coolingAt } from './heat.ts';
import { gathered } from './shoe-heat.ts';
import type { Warm, Wearing } from './wearing.ts';

/**
 * A released brake that is driven on while its linings stand inside the drum. It rubs all the way: with
 * w = v/r_tyre and all friction going into the drum,
 *
 *   C dT/dt = w·M(T) − G(v)·(T − air)           heat of the drum (heat.ts)
 *   bore = R·(1 + α·(T − 20))                   it grows away from its shoes: M falls as T rises
 *   dw = k·f_w(T)·p·ds, dR likewise             wear (J. F. Archard 1953), ds the sliding at the bore
 *
 * so with cold shoes it limits itself: dP/dT is negative, there is one temperature at which the drum loses what it gets, and
 * wear brings that down. The adjuster does not step: nothing is pressed.
 *
 * Over a part of the way the power falls straight with the temperature, P = P_0 + s·(T − T_0), s the slope of
 * the chord to its end. Then C dT/dt = P − G·(T − air) is linear, with λ = (G − s)/C and the rate r at its start
 *
 *   T = T_0 + r·φ(t),  φ = (1 − e^(−λt))/λ,  ∫(T − T_0) dt = r·(t − φ)/λ
 *
 * exact where P really is straight, and tending to the temperature at which the drum loses what it gets however
 * long the part is. The pressure of each element falls as straight, so its mean over the part is that of the start
 * and that of the end, weighed u and 1 − u with u = 1 − ∫(T − T_0) dt / (t·(T − T_0)) = 1 − (t − φ)/(λ·t·φ): one half
 * in a part that is short beside 1/λ, near nothing in a long one, which goes by its end. There the lining is softened
 * by what it loses meanwhile (backward Euler). With a = k·s·E/t a face that protrudes would be worn off u·a times over
 * by the start's pressure: u is kept under 1/(1 + a). So it is stable at any length; the way is parted by how far a
 * lining wears, and finely after every start, where linings part from the drum within seconds.
 */

/** First part after every start, s, and how much longer the next may be. */
const FIRST = 0.2;
const LONGER = 1.5;
/** Part of the drum's growth that a lining may lose in one part; a drum that is hardly warm counts as this warm, K. */
const LOST = 0.02;
const LEAST_RISE = 5;
/** And so much it may lose at least, mm, in a drum that does not grow: a tenth of what any real one allows. */
const LEAST_LOST = 1e-5;
/** A part that loses more than this times as much is taken back and made shorter. */
const FAR = 2;
/** Temperature is found to this, K; the chord is begun so far off; no drum gets this much hotter in a part. */
const ALIKE = 1e-3;
const NEAR = 1e-3;
const HOTTEST = 1500;
const FOUND: Until = {
  near: ALIKE,
  apart: (a, b) => Math.abs(b - a) < ALIKE / 10,
  trials: 60,
};
/** Steepest chord taken for a first guess, N·mm/s/K: rigid parts. */
const STEEP = 1e6;
/** A part this short beside the drum's settling has its mean in the middle: beyond, rounding would be told. */
const EVEN = 1e-3;
/** Share of the way that its end is. */
const LATE = 0.1;
/** Part of the time in which a drum comes to rest that a first part may take. */
const SETTLING = 0.2;
/** Most secants before a bracket. */
const SECANTS = 8;
/** Where linings begin to touch is found to this, K; not nearer to it than that a drum is free. */
const TOUCH = 0.01;
/** Change of a drum's temperature that a first part may make, K. */
const CALM = 0.05;
/** Shortest part, s. */
const LEAST = 1e-3;
/** Torque under which a brake counts as free, N·mm: a tenth of what a hub seal drags (from memory); 4 W at 40 km/h. */
const FREE = 100;

/** What a stretch of road with a released brake did. */
export interface Dragged {
  /** Friction's work, N·mm. */
  readonly energy: number;
  /** Torque at the end of the way, N·mm, and its power, N·mm/s: the mean of its last tenth. */
  readonly torque: number;
  readonly power: number;
  /** Highest of the drum, °C. */
  readonly hottest: number;
  readonly parts: number;
}

/** A part of the way whose end is sought. */
interface Sought {
  /** φ, s, and by how much the chord ends beyond a temperature, K. */
  readonly phi: (t: number) => number;
  readonly over: (t: number) => number;
  readonly from: number;
  /** K/s at its start, and its length, s. */
  readonly rate: number;
  readonly time: number;
  /** N·mm/s/K; and where the drum would come to without friction, °C. */
  readonly cooling: number;
  readonly lowest: number;
}

/** Drives on with the brake released. Reused: what one press found is where the next begins. */
export class Drag {
  readonly #w: Wearing;
  readonly #warm: Warm;
  /** Bore lost in the last part for each second of it, mm/s: taken ahead in the next. */
  #boreRate = 0;
  /** Slope of its chord, N·mm/s/K: the next part's is much alike. */
  #slope = Number.NEGATIVE_INFINITY;
  readonly #shoes: DragShoes;
  /** What lay on each element at the start of a part, N. */
  readonly #before: Readonly<Record<Side, Float64Array>>;
  /** How long its next part might be, s, and how warm it left the drum, °C. */
  #next = FIRST;
  #ended = Number.NaN;

  /** @param air °C; @param shoes as warm as they are: as the air when left out */
  constructor(w: Wearing, air = AIR, shoes = new DragShoes(w.rig.brake, air)) {
    this.#w = w;
    this.#shoes = shoes;
    // A shoe that can slide is held on its flat by that friction: without it springs would lay it on the drum.
    const pins = [w.rig.front, w.rig.rear].every(({ shoe }) => shoe.anchor.kind === 'pin');
    this.#before = {
      front: new Float64Array(w.rig.front.bed.count),
      rear: new Float64Array(w.rig.rear.bed.count),
    };
    this.#warm = w.makeWarm(pins ? 'all along' : 'off the strut');
  }

  /** Torque against the turning of the released brake, its shoes cold and its drum at a temperature, N·mm. */
  torqueAt(temperature: number): number {
    this.#w.press(this.#warm, 0, 1, null, temperature);
    return this.#w.torque;
  }

  /** Whether the released brake rubs at a temperature, its shoes cold. */
  rubs(temperature: number): boolean {
    return this.torqueAt(temperature) > FREE;
  }

  /** Temperature of the shoes, °C. */
  get shoes(): number {
    return this.#shoes.temperature;
  }

  /** Torque with the shoes as warm as they are. */
  #torque(temperature: number, sliding = 0, ahead = 0): number {
    const room = ahead - this.#shoes.growth(temperature);
    this.#w.press(this.#warm, 0, 1, null, temperature, sliding, room);
    return this.#w.torque;
  }

  /**
   * Drives on. Changes wear, drum and its temperature; not the distance.
   *
   * @param distance mm of road; @param speed mm/s; @param air °C
   */
  drive(distance: number, speed: number, air: number): Dragged {
    const w = this.#w;
    let left = distance / speed;
    let energy = 0;
    let hottest = w.temperature;
    let parts = 0;
    let next = this.#first(speed);
    let power = 0;
    const whole = left;
    let late = { energy: 0, time: 0 };
    while (left > 0) {
      const torque = this.#torque(w.temperature);
      if (!(torque > FREE)) {
        power = 0;
        late = { energy: 0, time: 0 };
        const until = this.#untilTouch(speed, air, left);
        w.temperature = cooled(w.rig.brake, w.temperature, speed, until, air);
        this.#shoes.after(until, null, air);
        left -= until;
        next = FIRST;
        continue;
      }
      const taken = this.#part(torque, Math.min(next, left), left, speed, air);
      parts++;
      energy += taken.energy;
      // The last part alone may be a sliver.
      if (left > LATE * whole) late = { energy: 0, time: 0 };
      late.energy += taken.energy;
      late.time += taken.time;
      power = late.energy / late.time;
      left -= taken.time;
      hottest = Math.max(hottest, w.temperature);
      next = taken.time * Math.min(LONGER, taken.room);
      // A part cut short by the end of the way says nothing of how long it might have been.
      if (left > 0) this.#next = next;
      if (left < 1e-9 * distance) break;
    }
    this.#ended = w.temperature;
    const torque = power * (w.rig.brake.vehicle.tyreRadius / speed);
    return { energy, torque, power, hottest, parts };
  }

  /**
   * First part of a way, s. It goes on as it was where the drum is as warm as it was left; else a part of the
   * time in which the drum comes to rest, C/(G − s) by the last chord.
   */
  #first(speed: number): number {
    const w = this.#w;
    if (Math.abs(w.temperature - this.#ended) < ALIKE) return this.#next;
    const loss = coolingAt(w.rig.brake, speed) - this.#slope;
    const settles = w.rig.brake.drum.heatCapacity / loss;
    return Math.max(FIRST, SETTLING * settles);
  }

  /** One part, shorter where a lining would lose too much; `room`: how much longer it might have been. */
  #part(
    torque: number,
    length: number,
    left: number,
    speed: number,
    air: number,
  ): { readonly time: number; readonly energy: number; readonly room: number } {
    const w = this.#w;
    const { brake } = w.rig;
    const { heatCapacity, expansion } = brake.drum;
    const turning = speed / brake.vehicle.tyreRadius;
    // To the air, and to the shoes as warm as they are: alike in form.
    const open = coolingAt(brake, speed);
    const { between, temperature } = this.#shoes;
    const cooling = open + between;
    const sink = (open * air + between * temperature) / cooling;
    const from = w.temperature;
    const before = w.record();
    w.pressed(this.#before);
    const first = turning * torque;
    const rate = (first - cooling * (from - sink)) / heatCapacity;
    // A force that is left presses alike however the drum grows: such a start need not be fine.
    const calm = this.#slope > -cooling ? CALM / Math.abs(rate) : 0;
    const still = this.#shoes.patience(from, air);
    for (let time = Math.min(left, still, Math.max(length, calm)); ; ) {
      const sliding = turning * w.drumRadius * time;
      const ahead = this.#boreRate * time;
      let power = first;
      let slope = 0;
      let worn = 0;
      /** φ at a temperature of the part's end, s. */
      const phi = (t: number): number => {
        worn = sliding * tableAt(brake.wearTable, t);
        power = turning * this.#torque(t, worn, ahead);
        slope = Math.min(0, (power - first) / (t - from));
        return gathered((slope - cooling) / heatCapacity, time);
      };
      const over = (t: number): number => from + rate * phi(t) - t;
      const lowest = Math.min(from, sink);
      const rise = rate * this.#settle({ phi, over, from, rate, time, cooling, lowest });
      // ∫(T − T_0) dt, by the linear equation itself: C·(T − T_0) = r·C·t − (G − s)·∫.
      const loss = cooling - slope;
      const gone =
        loss > 0 ? (heatCapacity * (rate * time - rise)) / loss : (rate * time * time) / 2;
      const energy = Math.max(0, first * time + slope * gone);
      const { lost } = w;
      const early = Math.min(energy, this.#early(loss, rise / rate, time, worn) * first * time);
      const late = power > 0 ? (energy - early) / (power * time) : 0;
      // The end first: what the last press lays on each element is of it.
      const bore =
        w.wearOff(worn * late) + w.wearOff((worn * early) / (first * time), this.#before);
      const warm = Math.max(LEAST_RISE, from + rise - ROOM);
      const most = Math.max(LEAST_LOST, LOST * w.radiusAt(ROOM) * expansion * warm);
      const deep = w.lost - lost;
      if (deep > FAR * most && time > LEAST) {
        w.restore({ ...before, lost: w.lost });
        time = Math.max(LEAST, (time * most) / deep);
        continue;
      }
      this.#boreRate = bore / time;
      this.#slope = slope;
      w.temperature = from + rise;
      this.#shoes.after(time, from + gone / time, air);
      return { time, energy, room: deep > 0 ? most / deep : LONGER };
    }
  }

  /**
   * Part of a part's wear that goes by the pressures of its start.
   *
   * @param loss C·λ, N·mm/s/K; @param phi φ at its end, s; @param time of it, s; @param worn mm of sliding
   */
  #early(loss: number, phi: number, time: number, worn: number): number {
    const { drum, shoes } = this.#w.rig.brake;
    const l = loss / drum.heatCapacity;
    const even = Math.abs(l * time) < EVEN ? 0.5 : 1 - (time - phi) / (l * time * phi);
    const soft = ({ lining }: Shoe): number =>
      (lining.wearRate * worn * lining.modulus) / lining.thicknessNew;
    const a = Math.max(soft(shoes.front), soft(shoes.rear));
    return Math.max(0, Math.min(even, 1 / (1 + a)));
  }

  /** φ at the part's end, s: by the last chord, corrected by secants, and in a bracket where that runs off. */
  #settle({ phi, over, from, rate, time, cooling, lowest }: Sought): number {
    const { heatCapacity } = this.#w.rig.brake.drum;
    const way = rate > 0 ? 1 : -1;
    const at = (t: number): number => (way * (t - from) > NEAR ? t : from + way * NEAR);
    const steep = Math.max(this.#slope, -STEEP) - cooling;
    let before = at(from + rate * gathered(steep / heatCapacity, time));
    let was = over(before);
    let t = at(before + was);
    for (let n = 0; n < SECANTS && Math.abs(was) > ALIKE; n++) {
      const now = over(t);
      const next = now === was ? t : t - (now * (t - before)) / (now - was);
      before = t;
      was = now;
      if (Math.abs(now) <= ALIKE || !Number.isFinite(next)) break;
      t = at(next);
    }
    if (Math.abs(was) <= ALIKE) return (was + before - from) / rate;
    const near = from + way * NEAR;
    const atNear = over(near);
    let end = near;
    if (way * atNear > 0) {
      const far = rate > 0 ? Math.min(from + rate * time, from + HOTTEST) + NEAR : lowest - NEAR;
      const atFar = over(far);
      [end] = rootBetween(over, [far, atFar], [near, atNear], FOUND);
    }
    return phi(end);
  }

  /**
   * Time until the cooling drum has closed on its linings, s, or all that is left: where they begin to rub is
   * halved out, since the pair shifts before both bear; there after C/G·ln((T_0 − air)/(T − air)).
   */
  #untilTouch(speed: number, air: number, left: number): number {
    const w = this.#w;
    const { brake } = w.rig;
    const from = w.temperature;
    const g = coolingAt(brake, speed);
    if (from <= air || !(g > 0) || !(this.#torque(air) > FREE)) return left;
    let [cold, free] = [air, from];
    while (free - cold > TOUCH) {
      const middle = (cold + free) / 2;
      if (this.#torque(middle) > FREE) cold = middle;
      else free = middle;
    }
    if (!(cold > air)) return left;
    return Math.min(left, (brake.drum.heatCapacity / g) * ln((from - air) / (cold - air)));
  }
}
