/**
 * Whose the space bar is: the pedal's, or that of what has the focus. Who clicks with the mouse looks at
 * the brake and means the pedal, as in front of a class; who came to a button by keys means the button.
 */

/** What a press of the space bar would work. */
const PRESSED = 'button, select, summary, input, [role="button"]';
/** Fields in which a space is a letter. */
const WRITTEN =
  'textarea, input:not([type="checkbox"], [type="radio"], [type="range"], [type="button"])';

/**
 * Does the focused element keep the space bar?
 *
 * @param pedal is there a pedal that would take it
 * @param byPointer was the focus moved by the pointer
 */
export function keepsSpace(target: Element, pedal: boolean, byPointer: boolean): boolean {
  if (target.closest(`${WRITTEN}, dialog[open]`)) return true;
  return target.closest(PRESSED) !== null && !(pedal && byPointer);
}

/**
 * Remembers by what the focus was last moved. Tab is asked, not the focus: of a move inside one part of
 * the page no event comes out of that part.
 */
export class FocusMover {
  /** Was it the pointer? What was clicked while it had the focus already counts as moved there. */
  byPointer = false;

  connect(): void {
    window.addEventListener('pointerdown', this.#pointer, true);
    window.addEventListener('keydown', this.#key, true);
  }

  disconnect(): void {
    window.removeEventListener('pointerdown', this.#pointer, true);
    window.removeEventListener('keydown', this.#key, true);
  }

  #pointer = (): void => {
    this.byPointer = true;
  };

  #key = (e: KeyboardEvent): void => {
    if (e.key === 'Tab') this.byPointer = false;
  };
}
