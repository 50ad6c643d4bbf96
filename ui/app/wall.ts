import { html, nothing, type TemplateResult } from 'lit';
import { labelWords, appWall as texts } from '../../sim/words/en.ts';
import { blank } from '../lessons/wants.ts';
import type { Session } from '../session.ts';
import type { NumberedName } from '../stage/layers/names.ts';
import type { PageView, Station } from '../stations/station.ts';
import { keysOfWall, wallKey } from './wall-keys.ts';
import { keysCard, wallActions, wallSide, wallStyles } from './wall-side.ts';

/** Keys that go on, or back: on a wall that is blank they show it again first. */
const SHOWS = ['Escape', 'Enter', ' ', 'PageDown', 'PageUp', 'ArrowRight', 'ArrowLeft', 'F5'];

/** What the wall has besides the drawing: words, cards that lie over it, keys. Loaded with the first wall. */
export class Wall {
  static readonly styles = wallStyles;
  readonly #session: Session;
  readonly #again: () => void;
  /** The card that is open: the keys, or ghost and compare. */
  #card: 'keys' | 'choice' | null = null;
  /** The brake is shown in place of what the station lays over the drawing. */
  #brake = false;

  /** @param again puts the page again */
  constructor(session: Session, again: () => void) {
    this.#session = session;
    this.#again = again;
  }

  #turn(card: 'keys' | 'choice'): void {
    this.#card = this.#card === card ? null : card;
    this.#again();
  }

  readonly #turnKeys = (): void => this.#turn('keys');
  readonly #turnChoice = (): void => this.#turn('choice');

  /** A key that is the wall's whatever stands on it. */
  first(e: KeyboardEvent): boolean {
    if (this.#session.moment.parts.lessons.blank && SHOWS.includes(e.key)) this.#shown();
    else if (e.key === 'Escape' && this.#card) this.#turn(this.#card);
    else return false;
    return true;
  }

  /** A key that the station has not taken. */
  key(e: KeyboardEvent, target: Element, page: PageView, station: Station): boolean {
    if (!station.wallPage?.(page, { names: [], turnKeys: this.#turnKeys }))
      return wallKey(this.#session, e, target, wallActions(page, station), this.#turnKeys, {
        open: this.#card === 'choice',
        turn: this.#turnChoice,
      });
    if (e.key !== '?') return false;
    this.#turnKeys();
    return true;
  }

  /** What the station lays over the drawing until the brake is asked for. */
  over(page: PageView, station: Station): TemplateResult | typeof nothing {
    const over = station.wallOver?.(page) ?? null;
    if (!over) return nothing;
    const turn = () => {
      this.#brake = !this.#brake;
      this.#again();
    };
    return html`<div class="wallover ${this.#brake ? '' : 'laid'}">${this.#brake ? nothing : over}<button @click=${turn}>${this.#brake ? (station.besideIs ?? '') : labelWords.brake}</button></div>`;
  }

  /**
   * @param names parts that stand as numbers on the drawing
   * @param bending what is told of shoes that bend; may be empty
   */
  side(
    page: PageView,
    station: Station,
    names: readonly NumberedName[],
    bending: string,
  ): TemplateResult {
    const own = station.wallPage?.(page, { names, turnKeys: this.#turnKeys }) ?? null;
    const over =
      this.#card === 'keys' ? keysCard(page, own?.keys ?? keysOfWall, this.#turnKeys) : nothing;
    if (own) return html`${own.side}${over}${this.#blank()}`;
    const does = {
      leave: () => this.#session.showOnWall(false),
      keys: this.#card === 'keys',
      turnKeys: this.#turnKeys,
      choosing: this.#card === 'choice',
      turnChoice: this.#turnChoice,
    };
    return html`${wallSide(page, station, does, names, bending)}${over}${this.#blank()}`;
  }

  /** On a blank wall: what shows it again. */
  #blank(): TemplateResult | typeof nothing {
    if (!this.#session.moment.parts.lessons.blank) return nothing;
    return html`<button class="shownby" @click=${() => this.#shown()}>${texts.blankShowItAgain(html`<kbd>.</kbd>`)}</button>`;
  }

  #shown(): void {
    this.#session.do(blank, false);
  }
}
