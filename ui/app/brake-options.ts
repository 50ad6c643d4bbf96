import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import type { BrakeRef } from '../record/bench.ts';
import { benchTitle } from '../record/guest-title.ts';
import type { Moment } from '../record/moment.ts';
import { brakes } from '../scenes.ts';
import type { Session } from '../session.ts';

/** What the lists of brakes are read by. */
const keyOf = (ref: BrakeRef): string =>
  ref.kind === 'whole' ? 'whole' : `${ref.kind} ${ref.name}`;

/** A brake of the lists by its key; null for what only stands there. */
export function brakeOfKey(key: string): BrakeRef | null {
  const [kind, name] = key.split(' ');
  return (kind === 'scene' || kind === 'own') && name ? { kind, name } : null;
}

/** Everything that can be put on the bench: the teaching brakes, then one's own. */
const choices = (m: Moment): readonly (readonly [string, string])[] => [
  ...brakes.map((b) => [keyOf({ kind: 'scene', name: b.name }), b.title] as const),
  ...m.shelf.brakes.map((b) => [keyOf({ kind: 'own', name: b.name }), b.title] as const),
];

/** Options of a list of brakes: what stands on the bench is chosen, also where it is none of them. */
export function brakeOptions(session: Session): TemplateResult {
  const { moment, guest } = session;
  const { bench } = moment;
  const listed = bench.brake.kind !== 'whole' && bench.fault === null;
  const other = guest ?? (listed ? null : benchTitle(moment));
  const shown = other === null ? keyOf(bench.brake) : 'other';
  const option = (value: string, title: string) =>
    // A list keeps what was picked in it, whatever is drawn: it is compared with that.
    html`<option value=${value} .selected=${live(value === shown)}>${title}</option>`;
  return html`${other === null ? nothing : option('other', other)}${choices(moment).map(([key, title]) => option(key, title))}`;
}
