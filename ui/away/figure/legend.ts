import { awayFigureLegend as words } from '../../../sim/words/en.ts';
import { hatchKey } from '../../stage/hatch.ts';
import type { Drawing, Hatch, Shape } from '../../stage/shapes.ts';
import { DASH } from '../../stage/shapes.ts';
import type { Ink } from '../../theme.ts';

/** What stands in a drawing and wants to be told: hatches, roles, lines. */
export interface Mark {
  readonly name: string;
  readonly hatch?: Hatch;
  readonly fill?: Ink;
  readonly stroke?: Ink;
  readonly dash?: readonly number[];
}

const HATCHES: Readonly<Record<Extract<Hatch, string>, string>> = words.hatches;

const shows = (all: readonly Shape[], group: string): boolean => all.some((s) => s.group === group);

/**
 * The marks of some drawings, in the order in which they are told.
 *
 * @param fan how many times wider than they are gaps are drawn; 0: they are not
 */
export function marksOf(drawings: readonly Drawing[], fan: number): Mark[] {
  const all = drawings.flatMap((d) => d.shapes);
  const hatches = new Set(all.flatMap((s) => (s.style.hatch ? [hatchKey(s.style.hatch)] : [])));
  const out: Mark[] = [];
  for (const [hatch, name] of Object.entries(HATCHES))
    if (hatches.has(hatch)) out.push({ name, hatch: hatch as Hatch });
  const told = all.filter((s) => s.role !== undefined);
  if (told.some((s) => s.role === 'leading'))
    out.push({ name: words.leadingShoeSolid, fill: 'lead', stroke: 'lead' });
  if (told.some((s) => s.role === 'trailing'))
    out.push({ name: words.trailingShoeOpen, fill: 'sheet', stroke: 'trail' });
  if (fan > 0 && shows(all, 'fan'))
    out.push({
      name: fan === 1 ? words.gapTrueSize : words.gapDrawn(fan),
      fill: 'leadFill',
      stroke: 'ink',
    });
  if (shows(all, 'ghost')) out.push({ name: words.restPosition, stroke: 'ink2', dash: DASH.ghost });
  if (shows(all, 'heat'))
    out.push({
      name: words.heatLargerDotsAreHotter,
      hatch: { dots: 0.6, colour: 'bad', veil: 0.2 },
    });
  return out;
}
