import { type Duty, type Stops, withReverse, withStops } from '../../sim/index.ts';
import type { Session } from '../session.ts';

/** The road of the Wear station: one of the brake's duties, its stops and reverse as changed by hand. */
export class RoadChoice {
  readonly #session: Session;
  readonly #changed: () => void;
  /** Number of the road in the brake's list. */
  number = 0;
  /** Share of the stops in reverse; null: as the road has it. */
  reverse: number | null = null;
  /** The road with its stops changed by hand; null: as the scene has it. */
  edited: Duty | null = null;
  /** What was typed into a field of the road and cannot be. */
  refused: { readonly id: string; readonly text: string } | null = null;

  constructor(session: Session, changed: () => void) {
    this.#session = session;
    this.#changed = changed;
  }

  get names(): readonly string[] {
    return this.#session.brake.duties.map((d) => d.name);
  }

  get #chosen(): Duty {
    const { duties } = this.#session.brake;
    return this.edited ?? duties[this.number] ?? (duties[0] as Duty);
  }

  /** The road as chosen, with the share of reverse. */
  get duty(): Duty {
    return this.reverse === null ? this.#chosen : withReverse(this.#chosen, this.reverse);
  }

  choose(number: number): void {
    this.number = number;
    this.edited = null;
    this.refused = null;
    this.#changed();
  }

  /** Changes a figure of one kind of the road's stops. */
  edit(index: number, change: Partial<Stops>): void {
    this.edited = withStops(this.#chosen, index, change);
    this.refused = null;
    this.#changed();
  }

  /** Keeps what was typed and cannot be, to be shown with what is allowed. */
  refuse(typed: { readonly id: string; readonly text: string }): void {
    this.refused = typed;
    this.#changed();
  }

  chooseReverse(share: number | null): void {
    this.reverse = share;
    this.#changed();
  }

  /** The brake's plain duty, by which its standing states were made. */
  plain(): void {
    this.number = 0;
    this.edited = null;
    this.reverse = null;
  }
}
