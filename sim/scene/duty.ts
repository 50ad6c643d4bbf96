import * as v from 'valibot';
import type { Duty } from '../brake/duty.ts';
import { SURFACES } from '../brake/surface.ts';
import { BAR, KG, KM, KMH } from '../units/units.ts';
import { MICRON } from './films.ts';
import { choice, LONG, list, num, part, size, words } from './parts.ts';

const perKm = (about: string) => size(`How often ${about}`, '1/km', 100);

/** A named duty in the scene file, in trade units. */
export const dutyPart = part('A duty', {
  name: words('Name'),
  about: v.optional(
    v.pipe(
      v.string('text'),
      v.maxLength(LONG, `at most ${LONG} letters`),
      v.description('What it is'),
    ),
    '',
  ),
  heat: v.optional(
    v.pipe(
      v.boolean('true or false'),
      v.description('Whether the drum heats and cools; else it stays as it stands'),
    ),
    true,
  ),
  mass: v.optional(size('Mass that is stopped; the vehicle’s when left out', 'kg', 1e5)),
  stops: list(
    'Its kinds of stops',
    part('One kind of stop', {
      name: v.optional(words('Name'), 'stop'),
      speed: size('Stopped from', 'km/h', 300),
      pressure: v.optional(size('Line pressure; or give a deceleration', 'bar', 300)),
      deceleration: v.optional(size('Deceleration; or give a pressure', 'm/s²', 15)),
      perKm: perKm('it comes'),
      reverse: v.optional(num('Share of them in reverse, 0 to 1', 'plain number', 0, 1), 0),
    }),
    20,
    1,
  ),
  descents: v.optional(
    list(
      'Hills driven down with the brakes holding the speed',
      part('A hill', {
        name: v.optional(words('Name'), 'descent'),
        slope: size('Slope', '%', 60),
        length: size('Length along the road', 'km', 100),
        speed: size('Speed held', 'km/h', 200),
        perKm: perKm('it comes'),
      }),
      20,
    ),
    [],
  ),
  parking: v.optional(
    part('Leaving the vehicle parked', {
      cable: size('Pull of each cable', 'N', 5000),
      perKm: perKm('it is left'),
      tightened: v.optional(num('What the cable is tightened by', 'mm/1000 km', 0, 50), 0),
      rust: v.optional(num('Film of rust that a drum has after standing', 'µm', 0, 1000), 0),
    }),
  ),
  weather: v.optional(
    list(
      'Surfaces that a share of the stops meet',
      part('A surface', {
        surface: choice('State of the linings', SURFACES),
        share: num('Share of the stops, 0 to 1', 'plain number', 0, 1),
        film: v.optional(
          size(
            'Film that those stops find on the drum, water when wet and rust when damp, and that goes over the following ones; when left out the surface stays for just those stops',
            'µm',
            1000,
          ),
        ),
      }),
      SURFACES.length,
    ),
    [],
  ),
});

type DutyPart = v.InferOutput<typeof dutyPart>;

/** From trade units to inside units. */
export function toDuty(d: DutyPart): Duty {
  return {
    name: d.name,
    about: d.about,
    heat: d.heat,
    mass: d.mass === undefined ? null : d.mass * KG,
    stops: d.stops.map((s) => ({
      name: s.name,
      speed: s.speed * KMH,
      asked:
        s.pressure === undefined
          ? { by: 'deceleration', deceleration: (s.deceleration ?? 0) * 1000 }
          : { by: 'pressure', pressure: s.pressure * BAR },
      perKm: s.perKm,
      reverse: s.reverse,
    })),
    descents: d.descents.map((h) => ({
      name: h.name,
      slope: h.slope / 100,
      length: h.length * KM,
      speed: h.speed * KMH,
      perKm: h.perKm,
    })),
    parking: d.parking
      ? {
          cable: d.parking.cable,
          perKm: d.parking.perKm,
          tightened: d.parking.tightened / 1000,
          rust: d.parking.rust * MICRON,
        }
      : null,
    weather: d.weather.map(({ surface, share, film }) =>
      film === undefined ? { surface, share } : { surface, share, film: film * MICRON },
    ),
  };
}
