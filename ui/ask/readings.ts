import { createRig, freshState, readings, rest } from '../../sim/index.ts';
import { askReadings as words } from '../../sim/words/en.ts';
import { meaningOf } from '../../sim/workshop/index.ts';
import { brakeOfRef } from '../record/derive.ts';
import { EMPTY_SHELF } from '../record/shelf.ts';
import { FIRST } from '../record/start.ts';
import type { Entry } from './types.ts';

const saidOf: Readonly<Record<string, readonly string[]>> = words.saidOf;

/** Readings of the brake that stands there first, each once. */
export const readingEntries: readonly Entry[] = (() => {
  const brake = brakeOfRef(FIRST, EMPTY_SHELF);
  const state = freshState(brake);
  const instant = rest(createRig(brake), state);
  return readings(brake, state, instant, instant).map((r) => ({
    key: `reading:${r.key}`,
    kind: 'reading' as const,
    title: r.name,
    text: meaningOf(r),
    leads: { to: 'table' as const },
    says: [r.name, ...(saidOf[r.key] ?? [])],
  }));
})();
