import { noChange } from 'lit';
import { Directive, directive, type PropertyPart } from 'lit/directive.js';

/**
 * The value of a field that is told when it is done (`change`): what stands on the page, but never over what is
 * being typed. The page is drawn a tenth of a second after what it shows has changed; somebody who is quick, or whose
 * machine is slow, has by then begun with the next figure, and a redraw would take it from under their fingers.
 */
class UnlessTyped extends Directive {
  #field: HTMLInputElement | null = null;
  #typing = false;

  render(value: string): unknown {
    return value;
  }

  override update(part: PropertyPart, [value]: [string]): unknown {
    if (!this.#field) {
      this.#field = part.element as HTMLInputElement;
      this.#field.addEventListener('input', () => {
        this.#typing = true;
      });
      // Who types and takes it back leaves without a change.
      for (const done of ['change', 'blur'])
        this.#field.addEventListener(done, () => {
          this.#typing = false;
        });
    }
    return this.#typing ? noChange : value;
  }
}

/** @param value what the field shows as long as nobody types in it */
export const unlessTyped = directive(UnlessTyped);
