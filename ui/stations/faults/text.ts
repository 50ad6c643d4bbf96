import { html, nothing, type TemplateResult } from 'lit';
import { faultsText as texts } from '../../../sim/words/en.ts';
import {
  type FindingOf,
  findingText,
  foundText,
  type Observed,
} from '../../../sim/workshop/index.ts';
import { number } from '../../format.ts';

/** Findings in words and figures, as they stand in a list. */

interface Named {
  readonly of: FindingOf;
  /** Wheel, where the two are not alike. */
  readonly where: string;
  readonly what: string;
  readonly f: Observed;
}

const named = (f: Observed): Named => ({ ...findingText(f), f });

/** A finding alone: value with its unit, or the words. */
const valueText = (f: Observed): string =>
  f.kind === 'words'
    ? foundText(f.says)
    : `${number(f.value, f.digits)}${f.unit ? `\u00a0${f.unit}` : ''}`;

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
  const order = [...new Set(all.map((n) => n.of))];
  return order
    .map((of) => {
      const its = all.filter((n) => n.of === of);
      const where = its[0]?.where;
      return where ? `${where}: ${told(its)}` : told(its);
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
  const text = none ? texts.noChange : other.length > 0 ? line(other) : texts.theSame;
  return html`<small class="rigid">${texts.rigid(text)}</small>`;
}
