import type { Duty } from '../../sim/index.ts';
import { dutyOn, type StopKey } from '../record/road.ts';
import type { Session } from '../session.ts';
import { chooseReverse, chooseRoad, editRoad, openRoad, refuseRoad } from './wear-part.ts';

/** The road of the Wear station: one of the brake's duties, its stops and reverse as changed by hand. */
export class RoadChoice {
  readonly #session: Session;

  constructor(session: Session) {
    this.#session = session;
  }

  get #part() {
    return this.#session.moment.parts.wear;
  }
  /** Number of the road in the brake's list. */
  get number(): number {
    return this.#part.road.number;
  }
  /** Share of the stops in reverse; null: as the road has it. */
  get reverse(): number | null {
    return this.#part.road.reverse;
  }
  /** Were its stops changed by hand? */
  get edited(): boolean {
    return this.#part.road.edits.length > 0;
  }
  /** What was typed into a field of the road and cannot be. */
  get refused(): { readonly id: string; readonly text: string } | null {
    return this.#part.refused;
  }
  /** Are its stops open to be changed? */
  get open(): boolean {
    return this.#part.roadOpen;
  }
  get names(): readonly string[] {
    return this.#session.brake.duties.map((d) => d.name);
  }
  /** The road as chosen, with the share of reverse. */
  get duty(): Duty {
    return dutyOn(this.#session.brake, this.#part.road);
  }

  choose(number: number): void {
    this.#session.do(chooseRoad, number);
  }

  /** Changes a figure of one kind of the road's stops, inside units. */
  edit(index: number, key: StopKey, value: number): void {
    this.#session.do(editRoad, index, key, value);
  }

  refuse(id: string, text: string): void {
    this.#session.do(refuseRoad, id, text);
  }

  show(open: boolean): void {
    if (open !== this.open) this.#session.do(openRoad, open);
  }

  chooseReverse(share: number | null): void {
    this.#session.do(chooseReverse, share);
  }
}
