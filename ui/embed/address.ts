import { embedAddress as texts } from '../../sim/words/en.ts';
import type { Moment } from '../record/moment.ts';
import type { Kit } from './kit.ts';

/**
 * The address of the embedded view: `embed.html?controls=pedal,drum&view=board&station=…&brake=…&state=…#…`. All but
 * the first two is what stands behind the question mark in a link of the bench.
 */

/** What can be had beside the drawing. */
export const controlNames = ['pedal', 'drum', 'readings', 'names', 'zoom', 'link'] as const;
type ControlName = (typeof controlNames)[number];
/** Where nothing is said. */
const USUAL: readonly ControlName[] = ['pedal', 'readings', 'link'];
const viewNames = ['sheet', 'board'] as const;

export interface Asked {
  readonly controls: ReadonlySet<ControlName>;
  readonly moment: Moment;
}

/** What is wrong with an address, in words. */
interface Refused {
  readonly wrong: string;
}

const isIn = <T extends string>(all: readonly T[], name: string): name is T =>
  (all as readonly string[]).includes(name);

const refused = (path: string, found: string, allowed: string): Refused => ({
  wrong: texts.foundAllowed(path, found.slice(0, 60), allowed),
});

/**
 * @param search with its question mark, or empty
 * @param hash with its hash, or empty
 */
export async function readAsked(
  { readLink }: Kit,
  search: string,
  hash: string,
): Promise<Asked | Refused> {
  const query = new URLSearchParams(search);
  const told = query.get('controls');
  const names = told === null ? USUAL : told.split(',').filter((n) => n !== '' && n !== 'none');
  const stranger = names.find((name) => !isIn(controlNames, name));
  if (stranger !== undefined) {
    return refused('controls', stranger, texts.noneOrSomeOf(controlNames.join(', ')));
  }
  const view = query.get('view') ?? viewNames[0];
  if (!isIn(viewNames, view)) return refused('view', view, viewNames.join(', '));
  const read = await readLink(search, hash);
  if (!read.ok) {
    const [w] = read.wrong;
    return refused(w?.path || texts.allOfIt, w?.found ?? '', w?.allowed ?? '');
  }
  const { moment } = read;
  return {
    controls: new Set(names as readonly ControlName[]),
    // Quiet, and as large as its place: neither sound nor the layout of a classroom's wall.
    moment: { ...moment, view: { ...moment.view, theme: view, sound: false, wall: false } },
  };
}
