import {
  BAR,
  balance,
  type Instant,
  isTold,
  type Quantity,
  quantitiesOf,
  readings,
  type Setting,
  tellFinding,
  Vary,
} from '../../../sim/index.ts';
import { language } from '../../../sim/words/en.ts';
import { number } from '../../format.ts';
import { MOST_BAR, PRESS_BAR } from '../../record/bench.ts';
import { brakeOf, read, restOf, rigOfBrake, sceneOf } from '../../record/derive.ts';
import { dialledFrom, dialledNow, dialsBack, dialsOn, turnDial } from '../../record/dials.ts';
import { Kept } from '../../record/kept.ts';
import { brakes } from '../../scenes.ts';
import type { Session } from '../../session.ts';
import { type Dial, dialsOf, PEDAL, stepOf } from './dials.ts';

/** One's own brake and the one that is turned, at one pressure. */
export interface Factors {
  readonly bar: number;
  /** NaN where no force is told. */
  readonly was: number;
  readonly now: number;
  /** The shoe that locks now. */
  readonly locked: string | null;
}

/** So often is the way to a place that is refused halved, to find where it becomes none. */
const HALVINGS = 6;

/** A value with as many digits as tell it. */
const short = (value: number): string => {
  const size = Math.abs(value);
  const digits = size === 0 ? 0 : Math.max(0, Math.min(6, 3 - Math.floor(Math.log10(size)) - 1));
  const told = number(value, digits);
  return told.includes('.') ? told.replace(/0+$/, '').replace(/\.$/, '') : told;
};

/** The dials on the stage: what each is at, what turning it makes, and what refuses it. */
export class DialDesk {
  readonly session: Session;
  /** The dial that was chosen last. */
  chosen: string | null = null;
  /** Why a dial went no further. */
  refused = '';
  readonly #vary = new Kept<Vary>();
  readonly #quantities = new Kept<readonly Quantity[]>();
  readonly #dials = new Kept<readonly Dial[]>();
  readonly #factors = new Kept<Factors>();

  constructor(session: Session) {
    this.session = session;
  }

  get on(): boolean {
    return dialsOn(this.session.moment);
  }
  /** Another guest's brake is not turned at. */
  get guest(): boolean {
    return dialledFrom(this.session.moment) === null;
  }

  /** One's own brake, as it waits while its dials are turned. */
  get #base() {
    const { moment } = this.session;
    const bench = dialledFrom(moment) ?? moment.bench;
    const { scene } = read(sceneOf(bench.brake, moment.shelf) ?? brakes[0]);
    return { scene, state: bench.state, bench };
  }
  /** Of the shoes nothing but the sizes is asked here: they need not bend. */
  get #varied(): Vary {
    const { scene, state } = this.#base;
    const press = { pressure: 0, turning: 1, cable: 0 } as const;
    return this.#vary.of(
      [scene, state],
      () => new Vary({ scene, state, press, bending: false, steps: false }),
    );
  }
  get dials(): readonly Dial[] {
    const vary = this.#varied;
    const { station } = this.session;
    const quantities = this.#quantities.of([vary], () => quantitiesOf(vary.base, vary.brake));
    const pedal = station === 'apply';
    return this.#dials.of([quantities, pedal], () =>
      dialsOf(quantities, vary.brake).filter((d) => d.id !== PEDAL || pedal),
    );
  }
  get now(): Dial | null {
    return this.dials.find((d) => d.id === this.chosen) ?? null;
  }

  /** What a dial snaps back to: one's own brake; of the pedal that it is up. */
  home(dial: Dial): readonly number[] {
    return dial.id === PEDAL ? [0] : dial.sets.map((q) => q.value);
  }
  /** Where a dial is. */
  at(dial: Dial): readonly number[] {
    if (dial.id === PEDAL) return [this.session.pedal];
    const set = dialledNow(this.session.moment);
    return dial.sets.map((q) => set.find((s) => s.id === q.id)?.value ?? q.value);
  }
  isTurned(dial: Dial): boolean {
    const home = this.home(dial);
    return this.at(dial).some((x, i) => x !== home[i]);
  }
  get turned(): readonly Dial[] {
    return this.dials.filter((d) => d.id !== PEDAL && this.isTurned(d));
  }

  /** "0.38", "−16, −78 mm". */
  told(dial: Dial, values: readonly number[] = this.at(dial)): string {
    const unit = dial.sets[0]?.unit ?? '';
    const text = values.map(short).join(', ');
    return unit ? `${text}\u00a0${unit}` : text;
  }

  /** Values as a dial takes them: within its range, in steps of it, on its way home exact. */
  #rounded(dial: Dial, values: readonly number[]): readonly number[] {
    const home = this.home(dial);
    return dial.sets.map((q, i) => {
      const step = dial.place ? 0.1 : stepOf(q);
      const value = values[i] as number;
      if (Math.abs(value - (home[i] as number)) < step / 2) return home[i] as number;
      const near = Number((Math.round(value / step) * step).toPrecision(10));
      const [low, high] = dial.id === PEDAL ? [0, MOST_BAR] : q.range;
      return Math.max(low, Math.min(high, near));
    });
  }

  /** All that is turned, with one dial at these values. */
  #with(dial: Dial, values: readonly number[]): readonly Setting[] {
    const others = dialledNow(this.session.moment).filter(
      (s) => !dial.sets.some((q) => q.id === s.id),
    );
    const mine = dial.sets.flatMap((q, i): Setting[] => {
      const value = values[i] as number;
      return value === q.value ? [] : [[q.id, value]];
    });
    return [...others.map((s): Setting => [s.id, s.value]), ...mine];
  }

  #refusal(dial: Dial, values: readonly number[]): string {
    const stood = this.#varied.stood(this.#with(dial, values));
    return stood.ok ? '' : tellFinding(stood.finding);
  }

  /**
   * Turns a dial to values; where there is no such brake it goes as far as there is one, and says which rule
   * refuses the rest.
   */
  turn(dial: Dial, wanted: readonly number[]): void {
    this.chosen = dial.id;
    const to = this.#rounded(dial, wanted);
    if (dial.id === PEDAL) {
      this.refused = '';
      this.session.press(to[0] as number);
      return;
    }
    if (this.guest) return;
    const why = this.#refusal(dial, to);
    if (why !== this.refused) {
      this.refused = why;
      this.session.changed();
    }
    const reached = why === '' ? to : this.#lastSound(dial, to);
    if (reached.every((x, i) => x === this.at(dial)[i])) return;
    this.#put(dial, reached);
  }

  /** On the straight way from where a dial is, the last values of which there is a brake. */
  #lastSound(dial: Dial, to: readonly number[]): readonly number[] {
    const from = this.at(dial);
    const along = (share: number): readonly number[] =>
      this.#rounded(
        dial,
        from.map((x, i) => x + ((to[i] as number) - x) * share),
      );
    let [sound, none] = [0, 1];
    for (let n = 0; n < HALVINGS; n++) {
      const half = (sound + none) / 2;
      if (this.#refusal(dial, along(half)) === '') sound = half;
      else none = half;
    }
    return sound === 0 ? from : along(sound);
  }

  #put(dial: Dial, values: readonly number[]): void {
    const set = this.#with(dial, values);
    const stood = this.#varied.stood(set);
    if (!stood.ok) return;
    const { scene, state } = stood.base;
    const turned = this.dials
      .filter((d) => d.sets.some((q) => set.some(([id]) => id === q.id)))
      .map((d) => {
        const at = d.sets.map((q) => set.find(([id]) => id === q.id)?.[1] ?? q.value);
        return `${language.inside(d.short)} ${this.told(d, at)}`;
      });
    const title = [this.#base.scene.title, ...turned].join(', ').slice(0, 120);
    const list = set.map(([id, value]) => ({ id, value }));
    this.session.do(turnDial, dial.name, list, {
      scene: { ...scene, title },
      state,
    });
  }

  /** Steps a dial by keys: across, and upward of a place. */
  step(dial: Dial, across: number, up: number): void {
    const at = this.at(dial);
    const by = dial.sets.map((q) => (dial.place ? 0.5 : stepOf(q)));
    const next = dial.place
      ? [(at[0] as number) + across * (by[0] as number), (at[1] as number) + up * (by[1] as number)]
      : [(at[0] as number) + (across + up) * (by[0] as number)];
    this.turn(dial, next);
  }

  /** A dial snaps back. */
  back(dial: Dial): void {
    this.turn(dial, this.home(dial));
    this.session.close();
  }
  allBack(): void {
    this.refused = '';
    this.session.do(dialsBack);
  }

  choose(dial: Dial): void {
    if (this.chosen === dial.id) return;
    this.chosen = dial.id;
    this.refused = '';
    this.session.changed();
  }

  /** The brake factor of both at the pedal's pressure, or at that of a plain press: by Balance, as the readings are. */
  get factors(): Factors {
    const { moment } = this.session;
    const bar = this.session.pedal || PRESS_BAR;
    const own = { ...moment, bench: this.#base.bench };
    return this.#factors.of(
      [brakeOf(own), own.bench.state, brakeOf(moment), moment.bench.state, moment.turning, bar],
      () => {
        const press = { pressure: bar * BAR, turning: moment.turning };
        const of = (m: typeof moment): { factor: number; instant: Instant } => {
          const [brake, { state }] = [brakeOf(m), m.bench];
          const rig = rigOfBrake(brake);
          const instant = balance(rig, state, press);
          const all = isTold(instant) ? readings(brake, state, instant, restOf(rig, state)) : [];
          const factor = all.find((r) => r.key === 'brakeFactor')?.value ?? Number.NaN;
          return { factor, instant };
        };
        const [was, now] = [of(own), of(moment)];
        return {
          bar,
          was: was.factor,
          now: now.factor,
          locked: now.instant.locked,
        };
      },
    );
  }
}
