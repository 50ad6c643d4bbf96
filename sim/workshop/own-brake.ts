import { type OwnSizes, ownKeys, type Scene } from '../index.ts';

/** What the scene of one's own brake says of itself. */
export const ownWords = (
  base: Scene,
  sizes: OwnSizes,
  names: Pick<Scene, 'name' | 'title'>,
): Pick<Scene, 'name' | 'title' | 'about' | 'source'> => ({
  name: names.name,
  title: names.title,
  about: `Own brake, made from ${base.title}.`,
  source: `Measured by its owner: ${ownKeys.filter((k) => sizes[k] !== undefined).join(', ') || 'nothing yet'}. All else assumed in the proportions of ${base.title}.`,
});
