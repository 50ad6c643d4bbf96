import { recordSceneNames as words } from '../../sim/words/en.ts';

/**
 * How a spring, a standing state or a road of the teaching brakes is called in the page's language. The scene's own
 * name is what it is looked up by, in links, in lessons and in what is kept; a name that is not known is shown as it is.
 */
export const sceneName = (name: string): string => words.named(name);
