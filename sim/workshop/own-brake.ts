import { type OwnSizes, ownKeys, type Scene } from '../index.ts';
import { workshopOwnBrake as words } from '../words/en.ts';

/** What the scene of one's own brake says of itself. */
export const ownWords = (
  base: Scene,
  sizes: OwnSizes,
  names: Pick<Scene, 'name' | 'title'>,
): Pick<Scene, 'name' | 'title' | 'about' | 'source'> => ({
  name: names.name,
  title: names.title,
  about: words.ownBrakeMadeFrom(base.title),
  source: words.measuredByItsOwnerAll(
    ownKeys.filter((k) => sizes[k] !== undefined).join(', ') || words.nothingYet,
    base.title,
  ),
});
