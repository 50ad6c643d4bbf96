import { readFileSync } from 'node:fs';
import { vi } from 'vitest';
import { commasIn } from '../ui/decimal-comma.ts';
import type { Session } from '../ui/session.ts';
import type { PageSize, Station } from '../ui/stations/station.ts';

/** Stages drawn without a page: the same modules, in either language, on stages as the page gives them. */

export interface StageSize {
  readonly name: string;
  readonly size: PageSize;
  readonly width: number;
  readonly height: number;
  readonly wall: boolean;
}

/** Share of a wall's width that its drawing has (ui/app/styles.ts). */
const OF_WALL = 0.66;
const wall = (size: PageSize, width: number, height: number): StageSize => ({
  name: `wall ${width}`,
  size,
  width: Math.floor(OF_WALL * width),
  height,
  wall: true,
});

/** Stages as the page gives them in windows of 1920 x 1080, 1366 x 768, 1024 x 768, a phone, and on the wall; px. */
export const stages: readonly StageSize[] = [
  { name: '1920', size: 'wide', width: 1366, height: 988, wall: false },
  { name: '1366', size: 'middle', width: 885, height: 690, wall: false },
  { name: '1024', size: 'middle', width: 624, height: 690, wall: false },
  { name: '390', size: 'narrow', width: 390, height: 410, wall: false },
  wall('wide', 1920, 1080),
  wall('middle', 1366, 768),
  wall('middle', 1280, 720),
  wall('middle', 1024, 768),
];

export type Language = 'en' | 'de';
export type Made = Awaited<ReturnType<typeof madeIn>>;

/**
 * The page's own modules, loaded anew in a language: they ask the browser for its window's size while they load.
 * A test that calls it mocks `uplot` and ends with `vi.resetModules()`.
 */
export async function madeIn(language: Language) {
  vi.resetModules();
  vi.stubGlobal('matchMedia', () => ({ matches: false, addEventListener: () => undefined }));
  vi.stubGlobal('customElements', { define: () => undefined, get: () => undefined });
  const { speak } = await import('../sim/words/section.ts');
  const { default: german } = await import('../sim/words/de.ts');
  speak(language === 'de' ? commasIn(german) : null);
  const entries = await import('../ui/stations/index.ts');
  const stations = await Promise.all(entries.stations.map((entry) => entry.load()));
  const { Session: Sessions } = await import('../ui/session.ts');
  const { show } = await import('../ui/record/guest.ts');
  const { footOf } = await import('../ui/app/layout.ts');
  const drawing = await import('../ui/app/stage-drawing.ts');
  // Brings what draws the forces on each shoe.
  await import('../ui/app/forces-beside.ts');
  const { settle } = await import('../ui/stage/settle.ts');
  return { stations, Session: Sessions, show, footOf, settle, ...drawing };
}

/** A scene's file. */
export const sceneOf = (name: string): object =>
  JSON.parse(readFileSync(new URL(`../scenes/${name}.json`, import.meta.url), 'utf8'));

/** The drawing reads these alone; set here without a step of the record each. */
export function seenWith(session: Session, seen: Readonly<Record<string, unknown>>): void {
  for (const [key, value] of Object.entries(seen))
    Object.defineProperty(session, key, { value, configurable: true });
}

/** What a stage is drawn of; null: the station has none there. */
export function stageAt(
  { footOf }: Made,
  session: Session,
  station: Station,
  { size, width, height, wall }: StageSize,
) {
  if (size === 'narrow' && station.phoneStage === false) return null;
  seenWith(session, { wall });
  const foot = footOf(station, size, wall);
  const strip = size === 'narrow' ? foot : 0;
  const zoom = { factor: 1, dx: 0, dy: 0 };
  return { session, station, width, height: height + strip, foot, size, zoom };
}
