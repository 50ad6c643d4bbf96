import { hasDials } from '../record/dials.ts';
import type { LayerName, Session } from '../session.ts';

/** The layers of the stage with their names; a magnification stands in the name. */
export const layerNames = (session: Session): readonly (readonly [LayerName, string])[] => [
  ['fan', `Gap fan ×${session.magnification}`],
  ['comb', 'Pressure comb'],
  ['forces', 'Forces'],
  ['names', 'Names'],
  ['ghost', 'Rest ghost ×8'],
  ['heat', 'Heat'],
  ['loupe', 'Loupe'],
  ['edge', 'Edge-on'],
  ['polygons', 'Force polygons'],
  ...(hasDials(session.moment) ? ([['dials', 'Dials']] as const) : []),
];
