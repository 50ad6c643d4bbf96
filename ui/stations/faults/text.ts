import { html, nothing, type TemplateResult } from 'lit';
import type { Observed } from '../../../sim/workshop/index.ts';
import { number } from '../../format.ts';

/** Findings in words and figures, as they stand in a list. */

interface Named {
  /** Wheel or wheels; empty where there is none. */
  readonly where: string;
  readonly what: string;
  readonly f: Observed;
}

function named(f: Observed): Named {
  const split = /^(both|left|right)(?:, )?(.*)$/.exec(f.name);
  return split
    ? { where: split[1] as string, what: split[2] as string, f }
    : { where: '', what: f.name, f };
}

/** A finding alone: value with its unit, or the words. */
const valueText = (f: Observed): string =>
  f.kind === 'words' ? f.says : `${number(f.value, f.digits)}${f.unit ? `\u00a0${f.unit}` : ''}`;

function told(list: readonly Named[]): string {
  return list
    .map(({ what, f }, i) => {
      const next = list[i + 1]?.f;
      const same = f.kind === 'number' && next?.kind === 'number' && next.unit === f.unit;
      const value = same ? number(f.value, f.digits) : valueText(f);
      return what ? `${what} ${value}` : value;
    })
    .join(', ');
}

/** All findings of a check in one line: wheel by wheel, a unit once where it stays the same. */
export function line(list: readonly Observed[]): string {
  const all = list.map(named);
  const order = [...new Set(all.map((n) => n.where))];
  return order
    .map((where) => {
      const text = told(all.filter((n) => n.where === where));
      return where && where !== 'both' ? `${where}: ${text}` : text;
    })
    .join(' · ');
}

/**
 * What rigid shoes read where it is another figure or word, under the findings of shoes that bend; nothing where
 * there is none to tell.
 */
export function ofRigid(
  list: readonly Observed[] | null | undefined,
  own: readonly Observed[],
): TemplateResult | typeof nothing {
  if (!list) return nothing;
  const told = new Map(own.map((f) => [f.name, valueText(f)]));
  const other = list.filter((f) => told.get(f.name) !== valueText(f));
  const none = list.length === 0 && own.length > 0;
  const text = none ? 'no change' : other.length > 0 ? line(other) : 'the same';
  return html`<small class="rigid">rigid: ${text}</small>`;
}
