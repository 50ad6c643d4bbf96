import { html } from 'lit';
import { bringSlow } from '../brought.ts';
import { AGAIN, notLoaded } from '../part.ts';
import { askField } from '../pieces/ask-field.ts';
import { handsEntry, type Loaded, stations } from '../stations/index.ts';
import type { Station } from '../stations/station.ts';
import { loadReader } from '../typed-size.ts';

/** Stations that can be shown, and why others cannot. */
const there = new Map<Loaded['id'], Station>();
const troubles = new Map<Loaded['id'], string>();
const coming = new Map<Loaded['id'], Promise<void>>();

/** Loads a station and what it needs to be shown, once; what fails, again a while later. It never rejects: what went wrong is told in the station's place. */
export function bring(entry: Loaded): Promise<void> {
  const known = coming.get(entry.id);
  if (known) return known;
  const brought = Promise.all([entry.load(), entry.readsSizes && loadReader()]).then(
    ([station]) => {
      there.set(entry.id, station);
    },
    () => {
      troubles.set(entry.id, notLoaded());
      // The station is asked for again when the page is drawn after that: a network that was gone may be back.
      setTimeout(() => coming.delete(entry.id), AGAIN);
    },
  );
  coming.set(entry.id, brought);
  return brought;
}

/** A station's place on the page before it is there, and nothing in it. */
const waiting = ({ id }: Loaded): Station => ({
  id: id === 'hands' ? 'apply' : id,
  side: () => html`<p class="waiting" role="status">${troubles.get(id) ?? ''}</p>`,
  // What is being typed into the field of Ask keeps its place meanwhile.
  controls: ({ session }) => (id === 'ask' ? askField(session) : html``),
});

/**
 * The station, or what stands in its place until it can be shown.
 *
 * @param changed called when there is something else to be shown
 */
export function ready(entry: Loaded, changed: () => void): Station {
  const station = there.get(entry.id);
  if (station) return station;
  if (!coming.has(entry.id)) bring(entry).then(changed);
  return waiting(entry);
}

/** Loads the rest of the stations, and of the readings, while nobody waits for them, so that they open without a network too. */
export async function bringRest(): Promise<void> {
  // A press may be shown at once; the rest after it.
  await bringSlow().catch(() => undefined);
  await import('../pieces/press-panel.ts').catch(() => undefined);
  // One that fails is asked for again, and its trouble told, when it is opened.
  for (const entry of [...stations, handsEntry]) await entry.load().catch(() => undefined);
  await Promise.allSettled([
    import('./bench-sheet.ts'),
    import('./wall-side.ts'),
    import('../pieces/look-back-rows.ts'),
    import('./readings-table.ts').then(({ loadMore }) => loadMore()),
    import('./bending.ts'),
    import('./class-kit.ts'),
  ]);
  performance.mark('takeup whole');
}
