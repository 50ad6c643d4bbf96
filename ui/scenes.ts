import benchBrake from '../scenes/bench-brake.json';
import farmTrailer from '../scenes/farm-trailer.json';
import ferryRunabout from '../scenes/ferry-runabout.json';
import quayVan from '../scenes/quay-van.json';
import { recordSceneNames as words } from '../sim/words/en.ts';

interface Told {
  readonly title: string;
  readonly about: string;
  readonly duties: readonly { readonly about: string }[];
}

/**
 * A scene that says what it is in the page's language. Its name, and those of its states and roads, stay: they are
 * what it is looked up by.
 */
const told = <S extends Told>(scene: S): S => ({
  ...scene,
  title: words.named(scene.title),
  about: words.named(scene.about),
  duties: scene.duties.map((duty) => ({ ...duty, about: words.named(duty.about) })),
});

/** The teaching brakes that come with the page, as scene files; the first stands on the bench at first. */
export const brakes = [
  told(quayVan),
  told(benchBrake),
  told(farmTrailer),
  told(ferryRunabout),
] as const;
