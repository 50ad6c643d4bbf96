import { html, type TemplateResult } from 'lit';
import { varyBeside as words } from '../../../sim/words/en.ts';
import type { BrakeRef } from '../../record/bench.ts';
import { brakes } from '../../scenes.ts';
import type { VaryDesk } from './desk.ts';

/** Another brake beside this one: a teaching brake or one of one's own, as a list holds it. */

type Beside = Extract<BrakeRef, { kind: 'scene' | 'own' }>;

const entryOf = ({ kind, name }: Beside): string => `${kind} ${name}`;

export const chosenBeside = (ref: BrakeRef | null): string =>
  ref && ref.kind !== 'whole' ? entryOf(ref) : '';

/** The reference of an entry; none for the first. */
export function refOf(value: string): Beside | null {
  const at = value.indexOf(' ');
  const kind = value.slice(0, at);
  const name = value.slice(at + 1);
  return kind === 'scene' || kind === 'own' ? { kind, name } : null;
}

export function besideOptions({ session, bench }: VaryDesk, chosen: string): TemplateResult[] {
  const mine = bench.brake.kind === 'whole' ? '' : entryOf(bench.brake);
  const all: readonly { readonly ref: Beside; readonly title: string }[] = [
    ...brakes.map((b) => ({ ref: { kind: 'scene', name: b.name } as const, title: b.title })),
    ...session.moment.shelf.brakes.map((b) => ({
      ref: { kind: 'own', name: b.name } as const,
      title: b.name,
    })),
  ];
  return [
    html`<option value="" ?selected=${chosen === ''}>${words.noOtherBrake}</option>`,
    ...all
      .filter(({ ref }) => entryOf(ref) !== mine)
      .map(
        ({ ref, title }) =>
          html`<option value=${entryOf(ref)} ?selected=${entryOf(ref) === chosen}>${title}</option>`,
      ),
  ];
}
