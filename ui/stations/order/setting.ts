import {
  type Brake,
  type BrakeState,
  balance,
  type FirstPresses,
  handTurn,
  type OrderOutcome,
  PRESS,
  parked,
  pedalStack,
  presetRow,
  type Rig,
  setOrders,
  turnLimits,
} from '../../../sim/index.ts';
import { orderSetting as words } from '../../../sim/words/en.ts';
import { stepsOf, wordsOf } from '../../adjusters.ts';
import { Kept } from '../../record/kept.ts';
import type { Moment } from '../../record/moment.ts';
import { fittingOf, handsOf } from '../new-shoes/fitting.ts';
import { setUp } from './part.ts';

/** A firm pull at each cable, N: what notches are counted at (common practice, as the examinations take it). */
const PULL = 300;

const fits: Readonly<Record<string, string>> = words.fits;

/** What is worth knowing while new shoes are set, with the sizes of New shoes. */
export class Setting {
  readonly bore: number;
  readonly thickness: number;
  readonly ground: number;
  readonly fitWords: string;
  readonly difference: number;
  readonly gap: number;
  readonly lip: number;
  readonly toothName: string;
  readonly felt: number;
  readonly stiff: number;
  readonly #brake: Brake;
  readonly #rig: Rig;
  readonly #preset: BrakeState;
  readonly #back: BrakeState;
  readonly #orders = new Kept<readonly OrderOutcome[]>();
  readonly #pressed: () => FirstPresses;
  readonly #then = new Kept<Afterwards>();

  constructor(moment: Moment, rig: Rig) {
    const { brake } = rig;
    const hands = handsOf(brake, moment.parts['new-shoes']);
    const { preset, back, pressed } = setUp(moment);
    const row = presetRow(rig, preset);
    this.#brake = brake;
    this.#rig = rig;
    this.#preset = preset;
    this.#back = back;
    this.#pressed = pressed;
    this.bore = hands.bore;
    this.thickness = hands.thickness;
    this.ground = hands.ground;
    this.fitWords = fits[fittingOf(rig).fit(hands).where] ?? '';
    this.difference = row.difference;
    this.gap = row.centre;
    this.lip = row.lip;
    this.toothName = wordsOf(brake).named(stepsOf(brake).at(preset.tooth));
    const { felt, stiff } = turnLimits(brake);
    this.felt = felt;
    this.stiff = stiff;
  }

  /** Pressed until nothing clicks any more, drum cold, lever home. */
  get silent(): BrakeState {
    return this.#pressed().state;
  }
  get presses(): number {
    return this.#pressed().clicks.length;
  }
  get pressText(): string {
    const { clicks } = this.#pressed();
    const teeth = clicks.reduce((a, b) => a + b, 0);
    const took = clicks.filter((n) => n > 0).length;
    const longer = stepsOf(this.#brake).amount(this.silent.tooth, teeth);
    const told = wordsOf(this.#brake).pressed(teeth, took, longer);
    return words.pressAndLetGoUntil(
      told,
      teeth > 0 ? words.theSilent(clicks.length) : words.evenAtTheFirst,
    );
  }

  get #after(): Afterwards {
    return this.#then.of([], () => afterwards(this.#rig, this.silent));
  }
  get gapThen(): number {
    return this.#after.gap;
  }
  get pedalThen(): number {
    return this.#after.pedal;
  }
  get notches(): number {
    return this.#after.notches;
  }
  /** The right order and the usual wrong ones, each worked through. */
  get orders(): readonly OrderOutcome[] {
    return this.#orders.of([], () => setOrders(this.#rig, this.#preset, this.#back, PULL));
  }
  /** What turns the wheel by hand, forward and backward, N at the tyre. */
  get turns(): readonly [number, number] {
    return this.#after.turns;
  }

  /** Not pressed at all: the pedal and the lever as the gauge left them. */
  get unpressed(): { readonly gap: number; readonly pedal: number; readonly notches: number } {
    const rig = this.#rig;
    return {
      gap: this.gap,
      pedal: pedalStack(this.#brake, balance(rig, this.#preset, PRESS)).total,
      notches: parked(rig, this.#preset, PULL).notches,
    };
  }
}

type Afterwards = ReturnType<typeof afterwards>;

/** Set by presses, with the lever home. */
function afterwards(rig: Rig, silent: BrakeState) {
  const { brake } = rig;
  const { forward, backward } = handTurn({ rig, state: silent });
  const { tyreRadius } = brake.vehicle;
  return {
    gap: presetRow(rig, silent).centre,
    pedal: pedalStack(brake, balance(rig, silent, PRESS)).total,
    notches: parked(rig, silent, PULL).notches,
    turns: [forward / tyreRadius, backward / tyreRadius] as const,
  };
}
