import { html, nothing, type TemplateResult } from 'lit';
import { piecesNumberField as words } from '../../sim/words/en.ts';
import { number } from '../format.ts';
import { unlessTyped } from './unless-typed.ts';

/**
 * A field of one plain number. Browsers have a kind of field for numbers, but what it takes hangs on the system's
 * language: elsewhere it drops a comma without a word, and 200,5 becomes 2005. So here a number is read from text.
 */
export interface NumberAsked {
  readonly name: string;
  /** Empty: a bare number. */
  readonly unit: string;
  readonly allowed: readonly [number, number];
  /** As the field and what is told of it write a number. */
  readonly told: (x: number) => string;
  readonly put: (x: number) => void;
  /** Tells what was not taken. */
  readonly say: (text: string) => void;
}

/** Longest part of what was typed that is told again. */
const QUOTED = 30;

/** A plain number as typed, with a point or a comma, its unit behind it or not; NaN where it is none. */
export function plainNumber(text: string, unit = ''): number {
  const typed = text.trim().replaceAll('\u2212', '-');
  const bare = unit !== '' && typed.endsWith(unit) ? typed.slice(0, -unit.length) : typed;
  // What the page itself parts thousands by.
  const digits = bare.replaceAll('\u202f', '').trim();
  return /^[+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+)$/.test(digits)
    ? Number(digits.replace(',', '.'))
    : Number.NaN;
}

/** For a field that was changed: what is no number, or not allowed, is told, and the field has its number again. */
export const takeNumber =
  ({ name, unit, allowed, told, put, say }: NumberAsked, value: number) =>
  (e: Event): void => {
    const input = e.target as HTMLInputElement;
    const x = plainNumber(input.value, unit);
    if (x >= allowed[0] && x <= allowed[1]) {
      put(x);
      return;
    }
    const ends = [told(allowed[0]), told(allowed[1])] as const;
    say(words.found(name, input.value.slice(0, QUOTED), ...ends, unit ? ` ${unit}` : ''));
    input.value = told(value);
  };

/**
 * A field with its number, which the arrow keys step.
 *
 * @param more its class; its id, where a label of its own names it
 */
export function numberField(
  asked: NumberAsked,
  value: number,
  step: number,
  more: { readonly look?: string; readonly id?: string } = {},
): TemplateResult {
  const { allowed, name, put, told, unit } = asked;
  const [least, most] = allowed;
  const key = (e: KeyboardEvent): void => {
    if (e.key !== 'ArrowUp' && e.key !== 'ArrowDown') return;
    e.preventDefault();
    const input = e.target as HTMLInputElement;
    const typed = plainNumber(input.value, unit);
    const from = Number.isNaN(typed) ? value : typed;
    const next = Math.min(most, Math.max(least, from + (e.key === 'ArrowUp' ? step : -step)));
    put(next);
    input.value = told(next);
  };
  return html`<input id=${more.id ?? nothing} class=${more.look ?? nothing} role="spinbutton" type="text" inputmode="decimal" autocomplete="off" aria-label=${more.id ? nothing : unit ? `${name}, ${unit}` : name} aria-valuemin=${least} aria-valuemax=${most} aria-valuenow=${value} aria-valuetext=${told(value)} .value=${unlessTyped(told(value))} @keydown=${key} @change=${takeNumber(asked, value)}>`;
}

/** A number with so many digits; an end of what is allowed without those that are nought. */
export const withDigits =
  (digits: number) =>
  (x: number): string =>
    number(x, digits);
