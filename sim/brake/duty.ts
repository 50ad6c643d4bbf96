import type { Surface } from './surface.ts';

/** How hard a stop is: by the line's pressure, MPa, or by how the vehicle slows, mm/s². */
export type StopAsked =
  | { readonly by: 'pressure'; readonly pressure: number }
  | { readonly by: 'deceleration'; readonly deceleration: number };

/**
 * What is asked of a brake while it is driven: plain data, in inside units (mm, s, N, MPa). A life is
 * one duty driven until a distance or a limit.
 */
export interface Stops {
  readonly name: string;
  /** Speed the vehicle is stopped from, mm/s. */
  readonly speed: number;
  readonly asked: StopAsked;
  readonly perKm: number;
  /** Share of these stops in reverse, 0..1: leading and trailing swap. */
  readonly reverse: number;
}

/** A hill driven down with the brakes holding the speed; one stop at its foot. */
export interface Descent {
  readonly name: string;
  /** Rise over level distance. */
  readonly slope: number;
  /** mm along the road. */
  readonly length: number;
  /** mm/s */
  readonly speed: number;
  readonly perKm: number;
}

/** Leaving the vehicle: the cable is pulled, and the drum cools to the air's temperature. */
export interface Parkings {
  /** Pull of each cable, N. */
  readonly cable: number;
  readonly perKm: number;
  /** What somebody keeps tightening the cable by, mm at the hook for each km driven; 0: nobody does. */
  readonly tightened: number;
  /** Film of rust that the drum has after standing, mm; none when left out. */
  readonly rust?: number;
}

/**
 * What a share of the stops, 0..1, finds: a surface just for them, or a film of it, mm, that lies on the drum
 * and goes over the following stops.
 */
export interface Weather {
  readonly surface: Surface;
  readonly share: number;
  readonly film?: number;
}

/** What a brake is driven by: stops, descents, parkings, weather, evenly along the way. */
export interface Duty {
  readonly name: string;
  readonly about: string;
  /** Whether the drum's temperature is followed; else it stays as it is and every stop finds it so. */
  readonly heat: boolean;
  /** Mass that is stopped, tonne; the vehicle's own when null. */
  readonly mass: number | null;
  readonly stops: readonly Stops[];
  readonly descents: readonly Descent[];
  readonly parking: Parkings | null;
  /** What is left of the stops finds the brake as it is. */
  readonly weather: readonly Weather[];
}

/** Line pressure of the first duty's first stop: what the brake is asked at where nothing is said, MPa. */
export function usualPressure(brake: { readonly duties: readonly [Duty, ...Duty[]] }): number {
  const [stop] = brake.duties[0].stops;
  // No scene is read otherwise.
  if (stop?.asked.by !== 'pressure') throw new Error('The first stop of all has no pressure');
  return stop.asked.pressure;
}

/** Speed of the first duty's first stop: where nothing is said, mm/s. */
export function usualSpeed(brake: { readonly duties: readonly [Duty, ...Duty[]] }): number {
  const [stop] = brake.duties[0].stops;
  // No scene is read otherwise.
  if (!stop) throw new Error('The first duty has no stop');
  return stop.speed;
}

/** The same duty with one kind of its stops changed. */
export const withStops = (duty: Duty, index: number, change: Partial<Stops>): Duty => ({
  ...duty,
  stops: duty.stops.map((s, i) => (i === index ? { ...s, ...change } : s)),
});

/** The same duty with another share of every kind of stop in reverse, 0..1. */
export const withReverse = (duty: Duty, reverse: number): Duty => ({
  ...duty,
  stops: duty.stops.map((s) => ({ ...s, reverse })),
});
