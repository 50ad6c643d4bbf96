import benchBrake from '../scenes/bench-brake.json';
import farmTrailer from '../scenes/farm-trailer.json';
import ferryRunabout from '../scenes/ferry-runabout.json';
import quayVan from '../scenes/quay-van.json';

/** The teaching brakes that come with the page, as scene files; the first stands on the bench at first. */
export const brakes = [quayVan, benchBrake, farmTrailer, ferryRunabout] as const;
