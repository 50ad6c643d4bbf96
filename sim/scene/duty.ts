import * as v from 'valibot';
import type { Duty } from '../brake/duty.ts';
import { SURFACES } from '../brake/surface.ts';
import { BAR, KG, KM, KMH } from '../units/units.ts';
import { labelWords, sceneDuty as texts } from '../words/en.ts';
import { MICRON } from './films.ts';
import { choice, LONG, list, num, part, size, words } from './parts.ts';

const perKm = (about: string) => size(texts.howOften(about), '1/km', 100);

/** A named duty in the scene file, in trade units. */
export const dutyPart = part(texts.aDuty, {
  name: words(labelWords.name),
  about: v.optional(
    v.pipe(
      v.string('text'),
      v.maxLength(LONG, texts.atMostLetters(LONG)),
      v.description(texts.whatItIs),
    ),
    '',
  ),
  heat: v.optional(
    v.pipe(v.boolean(texts.trueOrFalse), v.description(texts.whetherTheDrumHeatsAnd)),
    true,
  ),
  mass: v.optional(size(texts.massThatIsStoppedThe, 'kg', 1e5)),
  stops: list(
    texts.itsKindsOfStops,
    part(texts.oneKindOfStop, {
      name: v.optional(words(labelWords.name), 'stop'),
      speed: size(texts.stoppedFrom, 'km/h', 300),
      pressure: v.optional(size(texts.linePressureOrGiveA, 'bar', 300)),
      deceleration: v.optional(size(texts.decelerationOrGiveAPressure, 'm/s²', 15)),
      perKm: perKm(texts.itComes),
      reverse: v.optional(num(texts.shareOfThemInReverse, 'plain number', 0, 1), 0),
    }),
    20,
    1,
  ),
  descents: v.optional(
    list(
      texts.hillsDrivenDownWithThe,
      part(texts.aHill, {
        name: v.optional(words(labelWords.name), 'descent'),
        slope: size(labelWords.slope, '%', 60),
        length: size(texts.lengthAlongTheRoad, 'km', 100),
        speed: size(texts.speedHeld, 'km/h', 200),
        perKm: perKm(texts.itComes),
      }),
      20,
    ),
    [],
  ),
  parking: v.optional(
    part(texts.leavingTheVehicleParked, {
      cable: size(texts.pullOfEachCable, 'N', 5000),
      perKm: perKm(texts.itIsLeft),
      tightened: v.optional(num(texts.whatTheCableIsTightened, 'mm/1000 km', 0, 50), 0),
      rust: v.optional(num(texts.filmOfRustThatA, 'µm', 0, 1000), 0),
    }),
  ),
  weather: v.optional(
    list(
      texts.surfacesThatAShareOf,
      part(texts.aSurface, {
        surface: choice(texts.stateOfTheLinings, SURFACES),
        share: num(texts.shareOfTheStops0, 'plain number', 0, 1),
        film: v.optional(size(texts.filmThatThoseStopsFind, 'µm', 1000)),
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
