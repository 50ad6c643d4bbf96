import { seatsToStep, teethPassed } from '../balance/ratchet.ts';
import { meanPressure } from '../balance/rubbing.ts';
import type { ShoeRig } from '../balance/types.ts';
import type { Duty } from '../brake/duty.ts';
import { BARE, type FilmShares, filmOrNone, glazedBy, rubbedOff } from '../brake/film.ts';
import type { Surface } from '../brake/surface.ts';
import type { Brake } from '../brake/types.ts';
import type { PressHeat } from './life-heat.ts';
import { Plan, type Seen } from './press-plan.ts';
import type { Kind, Schedule } from './schedule.ts';
import type { Wearing, WearingRecord } from './wearing.ts';

/** Where a lump began: what is taken back when it ran past a click or a limit. */
export interface Mark {
  readonly worn: WearingRecord;
  readonly due: readonly number[];
  readonly lastAt: number;
  readonly hottest: number;
  /** Temperature of the shoes, °C. */
  readonly shoes: number;
  readonly seen: readonly (Seen | null)[];
}

/** What the ratchet says at a lump's end. */
export interface Verdict {
  readonly passed: number;
  readonly apart: number;
  readonly temperature: number;
  /** How far warm shoes had swollen then, mm. */
  readonly swell: number;
  /** Share of the lump after which the tooth was passed. */
  readonly share: number;
}

/** The presses of a duty, one by one or in lumps: how they heat, wear and part the seats. */
export class Presses {
  readonly #brake: Brake;
  readonly #w: Wearing;
  readonly #schedule: Schedule;
  readonly heat: PressHeat;
  readonly plans: (Plan | undefined)[] = [];
  /** How the seats part for each mm that the bore grows. */
  gain = 0;

  constructor(brake: Brake, w: Wearing, schedule: Schedule, heat: PressHeat) {
    this.#brake = brake;
    this.#w = w;
    this.#schedule = schedule;
    this.heat = heat;
  }

  newPlan(kind: Kind, turning: 1 | -1, surface: Plan['surface']): Plan {
    return new Plan(kind, turning, surface, this.#w.makeWarm(), this.#w.makeWarm());
  }

  /** The plan of a kind, direction and place in the weather (−1: the brake's own surface). */
  plan(kind: number, turning: 1 | -1, weather: number): Plan {
    const { weather: surfaces, kinds } = this.#schedule;
    const at = (2 * kind + (turning < 0 ? 1 : 0)) * (surfaces.length + 1) + weather + 1;
    let plan = this.plans[at];
    if (!plan) {
      plan = this.newPlan(kinds[kind] as Kind, turning, surfaces[weather] ?? null);
      this.plans[at] = plan;
    }
    return plan;
  }

  /**
   * Takes the press that is due: its heat, the films on the faces and what they lose, added to its plan.
   *
   * @param alone of its plan this press alone
   */
  take(alone: boolean): Plan {
    const { due, films } = this.#schedule;
    const film = films[due.weather];
    // A film lies on the drum: the surface of the stop itself is the brake's own.
    const plan = this.plan(due.kind, due.turning, film === undefined ? due.weather : -1);
    if (alone) plan.clear();
    const { kind } = plan;
    this.heat.warm(this.#w, kind, due.at);
    const { middle, factor } = this.heat;
    const { glaze } = this.#brake.films;
    const shares = this.#rubbed(kind, film, this.#schedule.weather[due.weather]);
    plan.add(kind.energy * factor, this.heat, glaze !== null && middle > glaze.above, shares);
    return plan;
  }

  /** Lays a film where there is one, and rubs off what a press does; gives what counted meanwhile. */
  #rubbed(kind: Kind, film?: number, surface?: Surface): FilmShares | undefined {
    const w = this.#w;
    if (film !== undefined) this.#lay(surface === 'wet' ? 'water' : 'rust', film);
    if (!w.film) return undefined;
    const rubbed = rubbedOff(this.#brake, w.film, kind.energy);
    w.film = filmOrNone(rubbed.film);
    return rubbed.mean;
  }

  #lay(what: 'water' | 'rust', thick: number): void {
    const w = this.#w;
    const film = w.film ?? BARE;
    w.film = { ...film, [what]: Math.max(film[what], thick) };
  }

  /** Parked until it is cool, and has rusted. */
  park({ parking }: Duty, at: number): void {
    if (!parking) return;
    this.heat.park(this.#w, at);
    if (parking.rust) this.#lay('rust', parking.rust);
  }

  /** Glaze after the presses of a plan, just worn off over a sliding distance, mm times the wear table's factor. */
  glaze(plan: Plan, sliding: number): void {
    const { films } = this.#brake;
    if (!films.glaze) return;
    const w = this.#w;
    const film = w.film ?? BARE;
    const of = (shoe: ShoeRig): number => {
      const pressure = meanPressure(w.shoes, shoe);
      const worn = shoe.shoe.lining.wearRate * sliding * pressure;
      return glazedBy(this.#brake, film.glaze[shoe.side], plan.hot, pressure, worn);
    };
    w.film = filmOrNone({ ...film, glaze: { front: of(w.shoes.front), rear: of(w.shoes.rear) } });
  }

  /**
   * Seats apart at a press solved at one temperature, had the drum another, mm.
   *
   * @param room more that warm shoes leave then, mm: by how much less they are swollen
   */
  sensed(separation: number, solved: number, then: number, room: number): number {
    const w = this.#w;
    return separation + this.gain * (w.radiusAt(then) - w.radiusAt(solved) + room);
  }

  /** Seats apart at which the next tooth drops in, mm; Infinity past the last. */
  needed(): number {
    const { tooth, condition } = this.#w;
    return seatsToStep(this.#brake, condition, tooth);
  }

  mark(): Mark {
    return {
      worn: this.#w.record(),
      due: this.#schedule.mark(),
      lastAt: this.heat.lastAt,
      hottest: this.heat.hottest,
      shoes: this.heat.shoes.temperature,
      seen: this.plans.map((p) => p?.seen ?? null),
    };
  }

  takeBack(mark: Mark): void {
    // `lost` counts on through what is taken back: only its differences are asked for.
    this.#w.restore({ ...mark.worn, lost: this.#w.lost });
    this.#w.rest();
    this.#schedule.reset(mark.due);
    this.heat.lastAt = mark.lastAt;
    this.heat.hottest = mark.hottest;
    this.heat.shoes.temperature = mark.shoes;
    this.plans.forEach((plan, i) => {
      if (plan) plan.seen = mark.seen[i] ?? null;
    });
  }

  /**
   * Runs the heat of every press up to a distance and adds the presses up by their plans. Stops after
   * a parking when pulls matter.
   */
  gather(target: number, duty: Duty, pulls: boolean): { presses: number; parked: boolean } {
    const w = this.#w;
    const { due } = this.#schedule;
    let presses = 0;
    for (const plan of this.plans) plan?.clear();
    while (due.at <= target) {
      w.distance = due.at;
      if (due.kind < 0) {
        this.#schedule.advance();
        this.park(duty, w.distance);
        if (pulls) return { presses: presses + 1, parked: true };
        continue;
      }
      const { kind } = this.take(false);
      if (kind.length === 0) w.applications++;
      presses++;
      this.#schedule.advance();
    }
    return { presses, parked: false };
  }

  /**
   * Wears off what was gathered. Implicit in the step: with w = k·s·p at the lump's end,
   * p = (E/t)(penetration − w) gives p = penetration / (t/E + k·s): the bed is softened by k·s while
   * the lump is solved, against the bore as it will be at the lump's end. (Explicit steps checkerboard
   * when (E/t)·k·s exceeds 2.)
   */
  wear(): void {
    const w = this.#w;
    for (const plan of this.plans) {
      if (!plan || plan.count === 0) continue;
      const middle = plan.middle / plan.count;
      if (!(plan.drag > 0)) plan.press(w, middle);
      if (!(plan.drag > 0) || !(plan.energy > 0)) continue;
      plan.pressSoft(w, middle, plan.worn / plan.drag, plan.energy);
      if (!(plan.drag > 0)) continue;
      const sliding = plan.worn / plan.drag;
      plan.drumRate = w.wearOff(sliding) / plan.energy;
      this.glaze(plan, sliding);
    }
  }

  /** Asks the ratchet at the lump's end about every plan in it. */
  judge(): Verdict {
    const w = this.#w;
    const needed = this.needed();
    const { tooth, condition } = w;
    let verdict: Verdict = {
      passed: 0,
      apart: 0,
      temperature: w.temperature,
      swell: 0,
      share: 0.5,
    };
    for (const plan of this.plans) {
      if (!plan || plan.count === 0) continue;
      const middle = plan.middle / plan.count;
      const { swell, swellHottest } = plan;
      // Only near the next tooth is the press itself asked.
      const about = this.sensed(plan.softApart, middle, plan.hottest, swell - swellHottest);
      let apart = plan.softApart;
      if (!(about < needed - NEAR)) {
        plan.press(w, middle);
        apart = w.separation;
      }
      const now = this.sensed(apart, middle, plan.hottest, swell - swellHottest);
      const cold = this.sensed(apart, middle, this.heat.air, swell);
      const { seen } = plan;
      const before = seen ? seen.apart + (now - cold) : null;
      const rate =
        seen && w.distance > seen.at
          ? (cold - seen.apart) / (w.distance - seen.at)
          : (seen?.rate ?? 0);
      plan.seen = { apart: cold, at: w.distance, rate };
      plan.heated = now - cold;
      const asked = { tooth, condition, temperature: plan.hottest };
      const passed = teethPassed(this.#brake, asked, now);
      if (Math.abs(passed) > Math.abs(verdict.passed)) {
        const known = before !== null && now > before && needed > before;
        const share = known ? (needed - before) / (now - before) : 0.5;
        verdict = { passed, apart: now, temperature: plan.hottest, swell: swellHottest, share };
      }
    }
    return verdict;
  }

  /** Distance to the next tooth foreseen by how the seats parted lately, mm. */
  toNextTooth(): number {
    const needed = this.needed();
    let least = Number.POSITIVE_INFINITY;
    for (const plan of this.plans) {
      if (!plan?.seen || !(plan.seen.rate > 0)) continue;
      const { apart, at, rate } = plan.seen;
      const now = apart + rate * (this.#w.distance - at);
      // As hot as last time, or cool where such a heat would have passed already.
      const hot = now + plan.heated < needed ? now + plan.heated : now;
      if (hot < needed) least = Math.min(least, (needed - hot) / rate);
    }
    return least;
  }
}

/** A soft press tells the seats' distance to far within this, mm. */
const NEAR = 0.004;
