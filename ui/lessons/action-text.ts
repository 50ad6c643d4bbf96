import * as v from 'valibot';
import { lessonsEditor, lessonsActionText as texts } from '../../sim/words/en.ts';
import { partNames } from '../stage/part-names.ts';
import { action } from './actions.ts';

/** An action of a lesson in words, for who writes the lesson: what its format says of it, and with what. */

type Node = v.GenericSchema & { readonly wrapped?: v.GenericSchema };
const about = (node: Node | undefined): string =>
  node ? (v.getDescription(node) ?? about(node.wrapped)) : '';

/** Words of the format, layers and parts among them. */
const codes: Readonly<Record<string, string>> = { ...lessonsEditor.layers, ...texts.codes };
const parts = partNames as Readonly<Record<string, readonly [name: string, does: string]>>;

/** Figures of a value; what was driven is kept to the last bit. */
const FIGURES = 6;

function valueText(value: unknown): string | number {
  if (Array.isArray(value)) return value.map(valueText).join(', ');
  if (typeof value === 'number') return Number(value.toPrecision(FIGURES));
  const word = String(value);
  if (Object.hasOwn(codes, word)) return codes[word] ?? word;
  return Object.hasOwn(parts, word) ? (parts[word]?.[0] ?? word) : word;
}

/** @param a may be a stranger's: what the format does not know stands as it is */
export function actionText(a: unknown): string {
  if (typeof a !== 'object' || a === null) return String(a);
  const { do: what, ...rest } = a as Readonly<Record<string, unknown>>;
  const known = action.options.find(({ entries }) => entries.do.literal === what);
  const entries = (known?.entries ?? {}) as Readonly<Record<string, Node>>;
  const told = Object.entries(rest).map(([key, value]) => {
    const field = Object.hasOwn(entries, key) ? entries[key] : undefined;
    // Of a choice between words the word says what it is.
    const name = field ? about(field) || (codes[key] ?? '') : key;
    if (value === true) return name;
    const said = value === false ? texts.no : valueText(value);
    return name ? texts.isValue(name, said) : String(said);
  });
  return [(known && about(known)) || String(what), ...told].join(' · ');
}
