import {
  type Answer,
  atLeast,
  BAR,
  type Band,
  type Base,
  type Brake,
  bandOf,
  type Instant,
  type MapSide,
  type Odds,
  oddsOf,
  type Quantity,
  quantitiesOf,
  type Setting,
  type SweepAsk,
  startState,
  type Tolerance,
  Vary,
  type VaryPoint,
} from '../../../sim/index.ts';
import { language, varyDesk as words } from '../../../sim/words/en.ts';
import { type ParkingRule, parkingRules } from '../../../sim/workshop/index.ts';
import { number } from '../../format.ts';
import type { Known } from '../../formula-reader.ts';
import type { Bench } from '../../record/bench.ts';
import { brakeOfBench, brakeOfRef, read, sceneOf } from '../../record/derive.ts';
import { Kept } from '../../record/kept.ts';
import { brakes } from '../../scenes.ts';
import type { Session } from '../../session.ts';
import { hasFormulas, loadFormulas } from '../../typed-formula.ts';
import { type Curve, VaryBook } from '../../vary-book.ts';
import type { CurveAsk } from '../../vary-messages.ts';
import { asAnswer, keysFor, knownNames, pointFor, type ReadOwn, readAll } from './formulas.ts';
import { FRICTION, type VaryPart, varyHome, varyPick } from './part.ts';
import { nearestPoint, type Panel, panelsOf, type Region, regionsOf } from './scale.ts';

/** A value with as many digits as tell it. */
export const short = (value: number): string => {
  const size = Math.abs(value);
  const digits = size === 0 ? 0 : Math.max(0, Math.min(6, 3 - Math.floor(Math.log10(size)) - 1));
  const told = number(value, digits);
  return told.includes('.') ? told.replace(/0+$/, '').replace(/\.$/, '') : told;
};

const withUnit = (value: string, unit: string): string => (unit ? `${value} ${unit}` : value);

/** A value that can be set, as it is told. */
function rounded(value: number, { range, whole }: Quantity): number {
  const x = whole ? Math.round(value) : Number(value.toPrecision(6));
  return Math.max(range[0], Math.min(range[1], x));
}

const SLOPES = ['slopeDown', 'slopeUp'] as const;
/** The slope that is asked of cars both ways round, with who asks it. */
export const SLOPE = parkingRules.find((r) => r.id === '20') as ParkingRule;

/** Brakes drawn for the band of one brake, and at each of so many places of a curve. */
const SAMPLES = 200;
const ON_CURVE = 48;
const PLACES = 9;

/** What is not known exactly, carried to what is read. */
export interface Spread {
  /** Of the brake as it is, by the order of what is read. */
  readonly bands: readonly Band[];
  /** Of brakes drawn, those that lock or cannot be. */
  readonly untold: number;
  /** In how many of them it is so. */
  readonly odds: readonly Odds[];
  /** In how many the pulled cable holds the slope that is asked of cars; null without a pull. */
  readonly holds: Readonly<Record<'up' | 'down', Pick<Odds, 'count' | 'of'>>> | null;
  /** The first curve's bands, place by place. */
  readonly curve: readonly { readonly x: number; readonly bands: readonly Band[] }[];
  /** By how much each alone moves what is read, the most first; by the order of what is read. */
  readonly swings: readonly { readonly name: string; readonly by: readonly number[] }[];
  readonly done: boolean;
}

/** A scale so wide that the bands lie on it, unless they run away as beside a lock. */
function withBands(panel: Panel, read: readonly Answer[], spread: Spread | null): Panel {
  const keys = new Set(panel.lines.map((l) => l.key));
  const bands = (spread?.curve ?? []).flatMap((at) =>
    at.bands.filter((band, k) => band.told === 1 && keys.has(read[k]?.key ?? '')),
  );
  const high = Math.max(panel.high, ...bands.map((band) => 1.04 * band.high));
  const low = Math.min(panel.low, ...bands.map((band) => band.low));
  const most = panel.high + RUNAWAY * (panel.high - panel.low);
  return { ...panel, low, high: Math.min(most, high) };
}
/** A band may widen the scale by so much of it. */
const RUNAWAY = 0.5;

/** What the What-if station works out: curves by a worker, and the brake of the point on the stage. */
export class VaryDesk {
  readonly session: Session;
  readonly #book: VaryBook;
  /** Samples of what is not known exactly. */
  readonly #samples: VaryBook;
  readonly #spread = new Kept<Spread | null>();
  readonly #base = new Kept<Base>();
  readonly #vary = new Kept<Vary>();
  readonly #quantities = new Kept<readonly Quantity[]>();
  readonly #answers = new Kept<readonly Answer[]>();
  readonly #known = new Kept<readonly Known[]>();
  readonly #own = new Kept<readonly ReadOwn[]>();
  readonly #all = new Kept<readonly Answer[]>();
  readonly #points = new Kept<readonly Curve[]>();
  readonly #shown = new Kept<Instant | null>();
  readonly #panels = new Kept<readonly Panel[]>();
  readonly #regions = new Kept<readonly Region[]>();

  constructor(session: Session) {
    this.session = session;
    this.#book = new VaryBook(() => session.changed());
    this.#samples = new VaryBook(() => session.changed());
  }

  get part(): VaryPart {
    return this.session.moment.parts.vary;
  }

  /** The bench as it is without the point that stands on the stage. */
  get bench(): Bench {
    const { guest, bench } = this.session.moment;
    return guest?.call.kind === 'varied' ? guest.mine.bench : bench;
  }

  /** The brake as it is, and how it is pressed. */
  get base(): Base {
    const { moment } = this.session;
    const { bar, cable, steps } = this.part;
    const { bench } = this;
    const scene = read(sceneOf(bench.brake, moment.shelf) ?? brakes[0]).scene;
    const bending = this.session.bends;
    return this.#base.of([scene, bench.state, moment.turning, bar, cable, steps, bending], () => ({
      scene,
      state: bench.state,
      press: { pressure: bar * BAR, turning: moment.turning, cable },
      bending,
      steps,
    }));
  }

  /** What of the bench no scene says: the curve is of the brake without it. */
  get without(): string {
    const { adjuster, fault } = this.bench;
    if (fault !== null) return words.withoutTheFaultThatIs;
    return adjuster === null ? '' : words.withItsOwnAdjuster;
  }

  get vary(): Vary {
    return this.#vary.of([this.base], () => new Vary(this.base));
  }
  get brake(): Brake {
    return brakeOfBench(this.bench, this.session.moment.shelf);
  }
  get quantities(): readonly Quantity[] {
    return this.#quantities.of([this.base], () => quantitiesOf(this.base, this.vary.brake));
  }
  /** What the bench itself can tell of this brake. */
  get #told(): readonly Answer[] {
    return this.#answers.of([this.vary], () => this.vary.answers);
  }
  /** What a formula may name. */
  get names(): readonly Known[] {
    const { quantities } = this;
    return this.#known.of([this.#told, quantities], () => knownNames(this.#told, quantities));
  }
  /** Formulas of one's own as they are read here; none until their reader is there. */
  get own(): readonly ReadOwn[] {
    const { formulas } = this.part;
    if (formulas.length > 0 && !hasFormulas()) {
      loadFormulas().then(
        () => this.session.changed(),
        () => undefined,
      );
    }
    return this.#own.of([formulas, this.names, hasFormulas()], () => readAll(formulas, this.names));
  }
  /** All that can be read: one's own first. */
  get answers(): readonly Answer[] {
    const { own, vary } = this;
    return this.#all.of([own, vary], () => [
      ...own
        .filter((f) => f.read.ok)
        .map((f) => {
          const keys = keysFor([f.key], own);
          const [value = Number.NaN] = pointFor([f.key], own, keys, vary.point([], keys)).values;
          return asAnswer(f, value);
        }),
      ...this.#told,
    ]);
  }
  /** Keys that the mechanics are asked for. */
  get #keys(): readonly string[] {
    return keysFor(
      this.read.map((a) => a.key),
      this.own,
    );
  }
  /** A point as it is read. */
  #pointOf(set: readonly Setting[]): VaryPoint {
    const keys = this.#keys;
    return pointFor(
      this.read.map((a) => a.key),
      this.own,
      keys,
      this.vary.point(set, keys),
    );
  }

  quantity(id: string): Quantity | undefined {
    return this.quantities.find((q) => q.id === id);
  }
  /** What is varied; friction, or the pressure, where this brake has nothing of that name. */
  get of(): Quantity {
    return (this.quantity(this.part.of) ??
      this.quantity(FRICTION) ??
      this.quantity('pressure')) as Quantity;
  }
  get range(): readonly [number, number] {
    const { range, of: asked } = this.part;
    const { id, usual, range: allowed } = this.of;
    if (!range || id !== asked) return usual;
    return [Math.max(allowed[0], range[0]), Math.min(allowed[1], range[1])];
  }
  /** What is read; where the brake has none of it, its torque. */
  get read(): readonly Answer[] {
    const found = this.part.read
      .map((key) => this.answers.find((a) => a.key === key))
      .filter((a) => a !== undefined);
    return found.length > 0 ? found : this.answers.filter((a) => a.key === 'torque');
  }
  /** The second quantity, where this brake has it. */
  get and(): { readonly quantity: Quantity; readonly values: readonly number[] } | null {
    const { and } = this.part;
    const quantity = and ? this.quantity(and.id) : undefined;
    return and && quantity && quantity.id !== this.of.id ? { quantity, values: and.values } : null;
  }

  /** Sides of the map; null: curves are drawn. */
  get across(): (MapSide & Pick<Quantity, 'name' | 'unit'>) | null {
    if (!this.up) return null;
    const { of, range } = this;
    return {
      id: of.id,
      from: range[0],
      to: range[1],
      whole: of.whole,
      name: of.name,
      unit: of.unit,
    };
  }
  /** Between the ends of its values; within its usual range where they leave no room. */
  get up(): (MapSide & Pick<Quantity, 'name' | 'unit'>) | null {
    const { and, part } = this;
    if (!and || !part.map) return null;
    const { id, name, unit, usual, whole } = and.quantity;
    const ends = [Math.min(...and.values), Math.max(...and.values)] as const;
    const [from, to] = ends[0] < ends[1] ? ends : usual;
    return { id, from, to, whole, name, unit };
  }

  /** The brake beside this one, new, pressed alike; null: none, or it is gone. */
  #besideBase(): { readonly base: Base; readonly title: string } | null {
    const { beside } = this.part;
    const { shelf } = this.session.moment;
    const scene = beside && sceneOf(beside, shelf);
    if (!beside || !scene) return null;
    const brake = brakeOfRef(beside, shelf);
    const base = { ...this.base, scene: read(scene).scene, state: startState(brake) };
    return { base, title: brake.title };
  }

  get busy(): boolean {
    return this.#book.busy;
  }
  /** What the program says where it broke off. */
  get trouble(): string {
    return this.#book.trouble;
  }

  /** What is asked of a worker: a curve for each value of the second quantity, or one for each brake. */
  #asks(): readonly (CurveAsk & { readonly label: string })[] {
    const { and, base, of, range } = this;
    const keys = this.#keys;
    const { across, up } = this;
    if (across && up) return [{ base, ask: { across, up, keys }, label: '' }];
    const ask: SweepAsk = { id: of.id, from: range[0], to: range[1], whole: of.whole, keys };
    if (and) {
      const { quantity, values } = and;
      return values.map((value) => ({
        base,
        ask: { ...ask, also: [[quantity.id, value]] },
        label: withUnit(short(value), quantity.unit),
      }));
    }
    const other = this.#besideBase();
    const has = other && quantitiesOf(other.base, new Vary(other.base).brake);
    if (!other || !has?.some((q) => q.id === of.id)) return [{ base, ask, label: '' }];
    return [
      { base, ask, label: this.brake.title },
      { base: other.base, ask, label: other.title },
    ];
  }

  get curves(): readonly Curve[] {
    const { and, base, of, part, range } = this;
    const key = [
      base,
      of.id,
      ...range,
      part.read,
      and?.quantity.id,
      and?.values,
      part.beside,
      part.map,
    ];
    const { own } = this;
    this.#book.ask([...key, own], () => this.#asks());
    const { curves } = this.#book;
    return this.#points.of([curves], () => {
      const keys = this.#keys;
      const wanted = this.read.map((a) => a.key);
      return curves.map((c) => ({
        ...c,
        points: c.points.map((p) => pointFor(wanted, own, keys, p)),
      }));
    });
  }
  get panels(): readonly Panel[] {
    const { curves, read: told, spread } = this;
    return this.#panels.of([curves, this.part.read, spread], () =>
      panelsOf(
        curves.map((c) => c.points),
        told,
      ).map((panel) => withBands(panel, told, spread)),
    );
  }
  get regions(): readonly Region[] {
    const { curves } = this;
    return this.#regions.of([curves], () => regionsOf(curves.map((c) => c.points)));
  }

  /** Tolerances on what this brake has. */
  get known(): readonly { readonly tolerance: Tolerance; readonly quantity: Quantity }[] {
    return this.part.spread.known.flatMap((tolerance) => {
      const quantity = this.quantity(tolerance.id);
      return quantity ? [{ tolerance, quantity }] : [];
    });
  }

  #sampleAsks(): readonly (CurveAsk & { readonly label: string })[] {
    const { base, of, range } = this;
    const tolerances = this.known.map((k) => k.tolerance);
    const { seed } = this.part.spread;
    const ask = { tolerances, seed, keys: this.#keys };
    const [low, high] = range;
    const places = Array.from(
      { length: PLACES },
      (_, k) => low + ((high - low) * k) / (PLACES - 1),
    );
    const values = [...new Set(of.whole ? places.map(Math.round) : places)];
    const here = base.press.cable > 0 ? [...ask.keys, ...SLOPES] : ask.keys;
    return [
      { base, ask: { ...ask, keys: here, samples: SAMPLES }, label: 'here' },
      { base, ask: { ...ask, samples: 1, alone: true }, label: 'alone' },
      { base, ask: { ...ask, samples: ON_CURVE, over: { id: of.id, values } }, label: 'over' },
    ];
  }

  /** What is not known exactly, carried to what is read; null where all is taken as known. */
  get spread(): Spread | null {
    const { base, own, part, of, range, known } = this;
    if (known.length === 0) return null;
    this.#samples.ask([base, of.id, ...range, part.read, part.spread, own], () =>
      this.#sampleAsks(),
    );
    const { curves, busy } = this.#samples;
    return this.#spread.of([curves, busy], () => this.#spreadOf(curves, !busy));
  }

  #spreadOf(curves: readonly Curve[], done: boolean): Spread {
    const keys = this.#keys;
    const wanted = this.read.map((a) => a.key);
    const pointsOf = (label: string): readonly VaryPoint[] =>
      (curves.find((c) => c.label === label)?.points ?? []).map((p) =>
        pointFor(wanted, this.own, keys, p),
      );
    const bandsOf = (points: readonly VaryPoint[]): readonly Band[] =>
      wanted.map((_, k) => bandOf(points.map((p) => p.values[k] as number)));
    const here = pointsOf('here');
    const drawn = curves.find((c) => c.label === 'here')?.points ?? [];
    const [down, up] = SLOPES.map((_, k) => atLeast(drawn, keys.length + k, SLOPE.percent));
    const alone = pointsOf('alone');
    const over = pointsOf('over');
    const swings = this.known
      .map(({ quantity }, which) => {
        const end = (e: 0 | 1) => alone.find((p) => p.at[0] === which && p.at[1] === e);
        const by = wanted.map((_, k) =>
          Math.abs((end(1)?.values[k] ?? Number.NaN) - (end(0)?.values[k] ?? Number.NaN)),
        );
        return { name: quantity.of ? `${quantity.name}, ${quantity.of}` : quantity.name, by };
      })
      .sort((a, b) => (b.by[0] ?? 0) - (a.by[0] ?? 0));
    const places = [...new Set(over.map((p) => p.at[0] as number))];
    return {
      bands: bandsOf(here),
      untold: here.filter((p) => p.why !== 'sound').length / Math.max(1, here.length),
      odds: oddsOf(drawn),
      holds: this.base.press.cable > 0 && up && down ? { up, down } : null,
      curve: places.map((x) => ({ x, bands: bandsOf(over.filter((p) => p.at[0] === x)) })),
      swings,
      done,
    };
  }

  /** Where the point on the stage is; null: the brake as it is. */
  get picked(): number | null {
    const { guest } = this.session.moment;
    return guest?.call.kind === 'varied' && guest.call.of === this.of.id ? guest.call.value : null;
  }
  /** The second quantity there, where a map was picked from. */
  get pickedUp(): number | null {
    const { guest } = this.session.moment;
    const { up } = this;
    if (this.picked === null || guest?.call.kind !== 'varied' || !up) return null;
    return guest.call.and?.id === up.id ? guest.call.and.value : null;
  }
  /** What is set at the point on the stage. */
  get #set(): readonly Setting[] {
    const { picked, pickedUp, up } = this;
    if (picked === null) return [];
    return [[this.of.id, picked], ...(up && pickedUp !== null ? [[up.id, pickedUp] as const] : [])];
  }
  /** Where one looks on the map. */
  get place(): readonly [number, number] {
    return [this.at, this.pickedUp ?? this.and?.quantity.value ?? Number.NaN];
  }
  /** Where one looks: the point on the stage, or the value as it is. */
  get at(): number {
    return this.picked ?? this.of.value;
  }
  /** The first curve's readings there. */
  get point(): VaryPoint {
    return this.#pointOf(this.#set);
  }
  /** The readings of the brake as it is. */
  get plain(): VaryPoint {
    return this.#pointOf([]);
  }

  /** The pressed brake on the stage. */
  get instant(): Instant | null {
    const { vary, picked, pickedUp } = this;
    return this.#shown.of([vary, picked, pickedUp, this.up?.id], () => {
      const shown = vary.shown(this.#set);
      return shown?.instant ?? null;
    });
  }

  /**
   * Puts the brake of a point onto the stage; where there is no such brake it says why.
   *
   * @param high the second quantity, of a map
   */
  pick(value: number, high?: number): void {
    const { of, up } = this;
    const second = up && high !== undefined ? this.quantity(up.id) : undefined;
    const and = second && high !== undefined ? [{ quantity: second, value: high }] : [];
    this.put([{ quantity: of, value }, ...and], this.vary);
  }

  /** Puts a brake with up to three quantities otherwise onto the stage. */
  put(
    settings: readonly { readonly quantity: Quantity; readonly value: number }[],
    vary: Vary,
  ): void {
    const { session } = this;
    const told = settings.map(({ quantity: q, value }) => ({ q, value: rounded(value, q) }));
    const set = told.map(({ q, value }): Setting => [q.id, value]);
    const shown = vary.shown(set);
    if (!shown) {
      const { finding } = vary.point(set, []);
      session.say(
        finding
          ? words.noSuchBrakeAllowed(finding.path, finding.found, finding.allowed)
          : words.noSuchBrake,
      );
      return;
    }
    const named = told.map(
      ({ q, value }) => `${language.inside(q.name)} ${withUnit(short(value), q.unit)}`,
    );
    const title = [this.brake.title, ...named].join(', ').slice(0, 120);
    const brake = { scene: { ...shown.scene, title }, state: shown.state };
    const [first, and, third] = told.map(({ q, value }) => ({ id: q.id, value }));
    if (first) session.do(varyPick, first.id, first.value, brake, and, third);
  }

  /** What has come of the picture stays; no more is worked out. */
  stop(): void {
    this.#book.stop();
    this.#samples.stop();
  }

  home(): void {
    this.session.do(varyHome);
  }

  nearest(x: number): VaryPoint | null {
    return nearestPoint(this.curves[0]?.points ?? [], x);
  }
}
