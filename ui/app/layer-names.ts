import { labelWords, appLayerNames as words } from '../../sim/words/en.ts';
import { fanFactor } from '../fan-factor.ts';
import { hasDials } from '../record/dials.ts';
import type { LayerName, Session } from '../session.ts';

/** The layers of the stage with their names; a magnification stands in the name. */
export const layerNames = (session: Session): readonly (readonly [LayerName, string])[] => [
  ['fan', words.gapFan(fanFactor(session))],
  ['comb', words.pressureComb],
  ['forces', labelWords.forces],
  ['names', labelWords.names],
  ['ghost', words.restGhost8],
  ['heat', labelWords.heat],
  ['loupe', labelWords.loupe],
  ['edge', words.edgeOn],
  ['polygons', words.forcePolygons],
  ...(hasDials(session.moment) ? ([['dials', labelWords.dials]] as const) : []),
];
