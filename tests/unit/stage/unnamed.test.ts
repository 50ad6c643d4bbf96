import { expect, it, vi } from 'vitest';
import quayVan from '../../../scenes/quay-van.json';
import { show } from '../../../ui/record/guest.ts';
import { askNames } from '../../../ui/record/naming.ts';

/** With the layer of names on, every station's drawing names parts of the brake, or the station says why not. */

vi.mock('uplot', () => ({ default: class {} }));
vi.stubGlobal('matchMedia', () => ({ matches: false, addEventListener: () => undefined }));
vi.stubGlobal('HTMLElement', class {});
vi.stubGlobal('customElements', { get: () => true, define: () => undefined });

const { Session } = await import('../../../ui/session.ts');
const { stations } = await import('../../../ui/stations/index.ts');
const { drawStage } = await import('../../../ui/app/stage-drawing.ts');
const { wallActions } = await import('../../../ui/app/wall-side.ts');

it.each(stations.map((s) => [s.id, s] as const))('%s', async (id, entry) => {
  const session = Session.of(quayVan, true);
  session.do(show, id);
  const station = await entry.load();
  if (!session.layers.names) session.toggle('names');
  const zoom = { factor: 1, dx: 0, dy: 0 };
  const at = { session, station, width: 1366, height: 988, foot: 0, size: 'wide', zoom } as const;
  const drawn = drawStage(at);
  const words = drawn.drawings.flatMap((d) => d.labels).map((l) => l.text);
  const named = drawn.names.length > 0 || words.includes('Wheel cylinder');
  expect(named).toBe(station.unnamed === undefined);
  // Where none is named, none can be asked for, on the wall neither.
  session.do(askNames, ['strut', 'drum']);
  if (id !== 'lessons') expect(session.asked).toBe(named);
  const page = {
    session,
    instant: session.instant(),
    find: () => {
      throw new Error('no reading is asked for');
    },
    size: 'wide',
    full: true,
  } as const;
  const asks = wallActions(page, station).some((a) => a.name === 'Show it');
  if (id !== 'lessons') expect(asks).toBe(named);
});
